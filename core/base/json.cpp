// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>
#include <optional>

#include "core/base/json_quick.h"
#include "core/base/utf8.h"

namespace taut {

namespace {

Finding broken(std::size_t byte, const char* why, const char* remedy, std::string word = {})
{
    const std::string at = "byte " + std::to_string(byte);
    return refuse("json.broken", at, {why, {static_cast<std::int64_t>(byte), std::move(word)}}, remedy);
}

constexpr const char* kFetchAgain = "Fetch the text again from where it came, or mend it at that place.";

/// Index of the bracket that opens one level too many, npos when there is none. Strings are skipped, nothing is judged.
std::size_t tooDeep(std::string_view text)
{
    std::size_t depth = 0;
    bool inString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (inString) {
            if (c == '\\')
                ++i;
            else if (c == '"')
                inString = false;
        } else if (c == '"') {
            inString = true;
        } else if (c == '[' || c == '{') {
            if (++depth > kDeepestJson) return i;
        } else if ((c == ']' || c == '}') && depth > 0) {
            --depth;
        }
    }
    return std::string_view::npos;
}

std::optional<std::string> keyTwice(const Json::Object& members)
{
    std::vector<std::string_view> keys;
    keys.reserve(members.size());
    for (const Json::Member& member : members) keys.emplace_back(member.first);
    std::sort(keys.begin(), keys.end());
    const auto twin = std::adjacent_find(keys.begin(), keys.end());
    if (twin == keys.end()) return std::nullopt;
    return std::string(*twin);
}

/// Builds our value from the parser's events, so that the order of keys survives.
class Builder {
public:
    bool null() { return put(nullptr); }
    bool boolean(bool b) { return put(b); }
    bool number_integer(std::int64_t n) { return put(n); }
    bool number_unsigned(std::uint64_t n)
    {
        constexpr auto kMost = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
        return n <= kMost ? put(n) : put(static_cast<double>(n));
    }
    bool number_float(double d, const std::string& /*text*/) { return put(d); }
    bool string(std::string& s) { return put(std::move(s)); }
    bool binary(std::vector<std::uint8_t>& /*bytes*/) { return false; }  // JSON text has none
    bool start_object(std::size_t /*size*/) { return open(Json::object()); }
    bool start_array(std::size_t /*size*/) { return open(Json::array()); }
    bool key(std::string& k)
    {
        m_open.back().keys.push_back(std::move(k));
        return true;
    }
    bool end_array()
    {
        Json::Array items = std::move(m_open.back().items);
        m_open.pop_back();
        return put(std::move(items));
    }
    bool end_object()
    {
        Json::Object members;
        Level& level = m_open.back();
        for (std::size_t i = 0; i < level.items.size(); ++i)
            members.emplace_back(std::move(level.keys[i]), std::move(level.items[i]));
        m_open.pop_back();
        m_twice = keyTwice(members);
        return !m_twice && put(std::move(members));
    }
    bool parse_error(std::size_t position, const std::string& /*last*/, const nlohmann::json::exception& error)
    {
        constexpr int kNumberTooLarge = 406;
        m_error = error.id == kNumberTooLarge
                      ? broken(position, "At byte %1 stands a number that is too large to hold.",
                               "Check the number; the largest is about 1.8e308.")
                      : broken(position, "This is not JSON: it cannot be read on from byte %1.", kFetchAgain);
        return false;
    }

    [[nodiscard]] Json take() { return std::move(m_root); }
    [[nodiscard]] Finding error() const
    {
        if (m_twice)
            return refuse("json.broken", *m_twice, {"The name \"%1\" stands twice in one object.", {*m_twice}},
                          "Take one of the two out.");
        return m_error;
    }

private:
    struct Level {
        std::vector<std::string> keys;
        Json::Array items;
    };
    bool open(const Json& /*kind*/)
    {
        m_open.emplace_back();
        return true;
    }
    bool put(Json value)
    {
        if (m_open.empty())
            m_root = std::move(value);
        else
            m_open.back().items.push_back(std::move(value));
        return true;
    }

    std::vector<Level> m_open;
    Json m_root;
    std::optional<std::string> m_twice;
    Finding m_error = broken(0, "This is not JSON: it cannot be read on from byte %1.", kFetchAgain);
};

}  // namespace

bool Json::isNumber() const noexcept
{
    return std::holds_alternative<std::int64_t>(m_value) || std::holds_alternative<double>(m_value);
}

std::string Json::text(std::string fallback) const
{
    const auto* s = std::get_if<std::string>(&m_value);
    if (s != nullptr) return *s;
    return fallback;
}

double Json::number(double fallback) const
{
    if (const auto* n = std::get_if<std::int64_t>(&m_value)) return static_cast<double>(*n);
    const auto* d = std::get_if<double>(&m_value);
    return d != nullptr ? *d : fallback;
}

std::int64_t Json::integer(std::int64_t fallback) const
{
    if (const auto* n = std::get_if<std::int64_t>(&m_value)) return *n;
    // A double that is a whole number and fits is one: 3.0 may have been written by another program.
    constexpr double kBound = 9223372036854775808.0;
    const auto* d = std::get_if<double>(&m_value);
    if (d == nullptr || !(*d >= -kBound && *d < kBound)) return fallback;
    const auto whole = static_cast<std::int64_t>(*d);
    return static_cast<double>(whole) == *d ? whole : fallback;
}

bool Json::boolean(bool fallback) const
{
    const auto* b = std::get_if<bool>(&m_value);
    return b != nullptr ? *b : fallback;
}

const Json::Array& Json::items() const
{
    static const Array kNone;
    const auto* a = std::get_if<Array>(&m_value);
    return a != nullptr ? *a : kNone;
}

const Json::Object& Json::members() const
{
    static const Object kNone;
    const auto* o = std::get_if<Object>(&m_value);
    return o != nullptr ? *o : kNone;
}

const Json& Json::operator[](std::string_view key) const
{
    static const Json kNull;
    for (const Member& member : members())
        if (member.first == key) return member.second;
    return kNull;
}

bool Json::has(std::string_view key) const
{
    return std::any_of(members().begin(), members().end(), [&](const Member& m) { return m.first == key; });
}

Json& Json::set(std::string key, Json value)
{
    if (isNull()) m_value = Object{};
    auto& object = std::get<Object>(m_value);
    for (Member& member : object) {
        if (member.first != key) continue;
        member.second = std::move(value);
        return *this;
    }
    object.emplace_back(std::move(key), std::move(value));
    return *this;
}

Json& Json::add(Json value)
{
    if (isNull()) m_value = Array{};
    std::get<Array>(m_value).push_back(std::move(value));
    return *this;
}

const JsonMask* JsonMask::find(std::string_view name) const noexcept
{
    const auto found =
        std::find_if(members.begin(), members.end(), [name](const JsonMask& one) { return one.key == name; });
    return found == members.end() ? nullptr : &*found;
}

Json Json::narrowed(const JsonMask& wanted) const
{
    if (wanted.members.empty()) return *this;
    if (isArray()) {
        Array all;
        for (const Json& item : items()) all.push_back(item.narrowed(wanted));
        return all;
    }
    if (!isObject()) return *this;
    Object all;
    for (const auto& [key, value] : members())
        if (const JsonMask* own = wanted.find(key)) all.emplace_back(key, value.narrowed(*own));
    return all;
}

Result<Json> Json::parse(std::string_view text) { return parse(text, {}); }

Result<Json> Json::parse(std::string_view text, const JsonMask& wanted)
{
    if (auto quick = quickJson(text, wanted)) return *std::move(quick);
    const auto whole = judgedJson(text);
    if (!whole) return whole.error();
    return whole->narrowed(wanted);
}

Result<Json> judgedJson(std::string_view text)
{
    if (const std::size_t bad = firstBadUtf8(text); bad != std::string_view::npos)
        return broken(bad + 1, "Byte %1 is not UTF-8 text.", kFetchAgain);
    if (const std::size_t deep = tooDeep(text); deep != std::string_view::npos)
        return broken(deep + 1, "At byte %1 lists and objects stand more than 200 deep in each other.", kFetchAgain);
    Builder builder;
    if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) return builder.error();
    return builder.take();
}

}  // namespace taut
