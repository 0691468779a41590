// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json_quick.h"

#include <algorithm>
#include <simdjson.h>

namespace taut {

namespace {

namespace dom = simdjson::dom;

/// Makes values of what the library found. What is not wanted is gone over as well: a name that stands twice in one
/// object is refused wherever it stands.
class Maker {
public:
    /// false: to be judged by the other library.
    bool make(const dom::element& found, const JsonMask* wanted, std::size_t depth, Json* into)
    {
        using Type = dom::element_type;
        switch (found.type()) {
        case Type::OBJECT: return object(dom::object(found), wanted, depth + 1, into);
        case Type::ARRAY: return array(dom::array(found), wanted, depth + 1, into);
        default: break;
        }
        if (into == nullptr) return true;
        switch (found.type()) {
        case Type::STRING: *into = Json(std::string_view(found)); break;
        case Type::INT64: *into = Json(std::int64_t(found)); break;
        case Type::UINT64: *into = Json(static_cast<double>(std::uint64_t(found))); break;
        case Type::DOUBLE: *into = Json(double(found)); break;
        case Type::BOOL: *into = Json(bool(found)); break;
        default: *into = Json();
        }
        return true;
    }

private:
    bool array(const dom::array& found, const JsonMask* wanted, std::size_t depth, Json* into)
    {
        if (depth > kDeepestJson) return false;
        Json::Array items;
        if (into != nullptr) items.reserve(found.size());
        for (const dom::element item : found)
            if (!make(item, wanted, depth, into != nullptr ? &items.emplace_back() : nullptr)) return false;
        if (into != nullptr) *into = Json(std::move(items));
        return true;
    }
    bool object(const dom::object& found, const JsonMask* wanted, std::size_t depth, Json* into)
    {
        if (depth > kDeepestJson) return false;
        Json::Object members;
        if (into != nullptr && isWhole(wanted)) members.reserve(found.size());
        const std::size_t first = m_keys.size();
        for (const dom::key_value_pair member : found) {
            m_keys.push_back(member.key);
            const JsonMask* own = into != nullptr && !isWhole(wanted) ? wanted->find(member.key) : nullptr;
            const bool kept = into != nullptr && (isWhole(wanted) || own != nullptr);
            Json* const value = kept ? &members.emplace_back(std::string(member.key), Json()).second : nullptr;
            if (!make(member.value, own, depth, value)) return false;
        }
        if (!eachOnce(first)) return false;
        m_keys.resize(first);
        if (into != nullptr) *into = Json(std::move(members));
        return true;
    }
    static bool isWhole(const JsonMask* wanted) { return wanted == nullptr || wanted->members.empty(); }

    /// A few are compared as they are, many are put in order first.
    bool eachOnce(std::size_t from)
    {
        constexpr std::ptrdiff_t kFew = 16;
        const auto begin = m_keys.begin() + static_cast<std::ptrdiff_t>(from), end = m_keys.end();
        if (end - begin > kFew) {
            std::sort(begin, end);
            return std::adjacent_find(begin, end) == end;
        }
        for (auto one = begin; one != end; ++one)
            if (std::find(begin, one, *one) != one) return false;
        return true;
    }

    std::vector<std::string_view> m_keys;  ///< of the objects that are open, the outermost first
};

}  // namespace

std::optional<Json> quickJson(std::string_view text, const JsonMask& wanted)
{
    // The library skips a mark of byte order, and what it needs room for grows with the largest text that it has seen.
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    constexpr std::size_t kKept = 1U << 20U;
    if (text.starts_with(kMark)) return std::nullopt;
    thread_local dom::parser kept;
    dom::parser once;
    dom::parser& parser = text.size() > kKept ? once : kept;
    dom::element root;
    if (parser.parse(text.data(), text.size()).get(root) != simdjson::SUCCESS) return std::nullopt;
    Json value;
    if (!Maker().make(root, &wanted, 0, &value)) return std::nullopt;
    return value;
}

}  // namespace taut
