// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/difference.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace taut::seal {

namespace {

constexpr std::array<std::string_view, 8> kByPlace{"targets", "schedules", "findings", "because",
                                                   "rows",    "stages",    "places",   "steps"};
/// The symbol of a term is not said again: it stands beside its place in the formula of a target that has a name.
constexpr std::string_view kSymbol = "symbol";
constexpr std::array<std::string_view, 3> kNames{"id", "code", kSymbol};

template <std::size_t N>
bool among(const std::array<std::string_view, N>& names, std::string_view name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// The member by which people know an item of a list; empty when it has none.
std::string_view nameOf(const Json& item)
{
    for (const std::string_view name : kNames)
        if (item.has(name)) return name;
    return {};
}

Json without(const Json& object, std::string_view key)
{
    Json::Object rest;
    for (const Json::Member& member : object.members())
        if (member.first != key) rest.push_back(member);
    return rest;
}

/// The places of a list that is told by another one; each can be taken once.
class Places {
public:
    explicit Places(const Json::Array& before) : m_before(before), m_taken(before.size(), false) {}

    /// The place of an equal item, looked for at the same place first.
    [[nodiscard]] std::optional<std::size_t> same(const Json& item, std::size_t at) const
    {
        if (isFree(at) && m_before[at] == item) return at;
        for (std::size_t i = 0; i < m_before.size(); ++i)
            if (isFree(i) && m_before[i] == item) return i;
        return std::nullopt;
    }
    /// The place of the item that goes by the same name.
    [[nodiscard]] std::optional<std::size_t> namesake(const Json& item, std::size_t at) const
    {
        const std::string_view name = nameOf(item);
        if (name.empty()) return std::nullopt;
        const auto is = [&](std::size_t i) {
            return isFree(i) && m_before[i].has(name) && m_before[i][name] == item[name];
        };
        if (is(at)) return at;
        for (std::size_t i = 0; i < m_before.size(); ++i)
            if (is(i)) return i;
        return std::nullopt;
    }
    [[nodiscard]] bool isFree(std::size_t i) const { return i < m_before.size() && !m_taken[i]; }
    const Json& take(std::size_t i)
    {
        m_taken[i] = true;
        return m_before[i];
    }

private:
    const Json::Array& m_before;
    std::vector<bool> m_taken;
};

std::string runText(std::size_t first, std::size_t last)
{
    std::string text = std::to_string(first);
    return first == last ? text : text + ".." + std::to_string(last);
}

/// A member or an item that would be read as what a difference says of others.
bool speaksOf(std::string_view key) { return key == "was" || key == "without" || key == "since"; }

/// Whether what is stated one by one gives the members of `after` in their order: those kept first, then the new ones.
bool canBeTold(const Json& before, const Json& after)
{
    std::size_t at = 0;
    bool anew = false;
    const Json::Object& old = before.members();
    for (const Json::Member& member : after.members()) {
        if (speaksOf(member.first)) return false;
        const bool kept = before.has(member.first);
        if (kept && anew) return false;
        anew = !kept;
        while (kept && at < old.size() && old[at].first != member.first) ++at;
        if (kept && at == old.size()) return false;
    }
    return true;
}

Json itemDifference(const Json& before, std::size_t place, const Json& item)
{
    const auto difference = differenceOf(before, item);
    if (!difference) return item;
    const std::string_view name = nameOf(item);
    Json json = Json::object();
    json.set("was", static_cast<std::int64_t>(place));
    if (name != kSymbol) json.set(std::string(name), item[name]);
    for (const Json::Member& member : difference->members()) json.set(member.first, member.second);
    return json;
}

bool isFigure(const Json& value) { return value.isNumber() || value.isNull(); }

/// "value" of each item, where nothing else has changed and none goes by an id or a code, which is always said.
std::optional<Json> figuresOf(const Json::Array& before, const Json::Array& after)
{
    if (before.size() != after.size()) return std::nullopt;
    Json figures = Json::array();
    for (std::size_t i = 0; i < after.size(); ++i) {
        const Json& value = after[i]["value"];
        if (!after[i].has("value") || !before[i].has("value") || !isFigure(value)) return std::nullopt;
        if (after[i].has("id") || after[i].has("code")) return std::nullopt;
        if (Json(before[i]).set("value", value) != after[i]) return std::nullopt;
        figures.add(value);
    }
    return figures;
}

std::optional<Json> listWithFigures(const Json::Array& before, const Json::Array& figures)
{
    if (before.size() != figures.size()) return std::nullopt;
    Json::Array list = before;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (!list[i].has("value")) return std::nullopt;
        list[i].set("value", figures[i]);
    }
    return Json(std::move(list));
}

std::optional<Json> listDifference(const Json::Array& before, const Json::Array& after)
{
    const auto speaks = [](const Json& item) { return item.isString() || isFigure(item) || item.has("was"); };
    if (std::any_of(after.begin(), after.end(), speaks)) return std::nullopt;
    Places places(before);
    Json list = Json::array();
    std::optional<std::pair<std::size_t, std::size_t>> kept;
    const auto tellKept = [&] {
        if (kept) list.add(runText(kept->first, kept->second));
        kept.reset();
    };
    for (std::size_t at = 0; at < after.size(); ++at) {
        if (const auto same = places.same(after[at], at)) {
            places.take(*same);
            if (kept && kept->second + 1 == *same) {
                kept->second = *same;
                continue;
            }
            tellKept();
            kept.emplace(*same, *same);
            continue;
        }
        tellKept();
        const auto namesake = places.namesake(after[at], at);
        list.add(namesake ? itemDifference(places.take(*namesake), *namesake, after[at]) : after[at]);
    }
    tellKept();
    auto figures = figuresOf(before, after);
    return figures && figures->dump().size() <= list.dump().size() ? std::move(*figures) : std::move(list);
}

std::optional<Json> listWith(const Json::Array& before, const Json::Array& difference)
{
    if (!difference.empty() && std::all_of(difference.begin(), difference.end(), isFigure))
        return listWithFigures(before, difference);
    Places places(before);
    Json list = Json::array();
    for (const Json& item : difference) {
        if (item.isString()) {
            const auto run = placesIn(item.text());
            if (!run) return std::nullopt;
            for (std::size_t i = run->first; i <= run->second; ++i) {
                if (!places.isFree(i)) return std::nullopt;
                list.add(places.take(i));
            }
        } else if (item.has("was")) {
            const auto place = static_cast<std::size_t>(item["was"].integer(-1));
            if (!item["was"].isWhole() || !places.isFree(place)) return std::nullopt;
            auto changed = withDifference(places.take(place), without(item, "was"));
            if (!changed) return std::nullopt;
            list.add(*std::move(changed));
        } else {
            list.add(item);
        }
    }
    return list;
}

/// What stands in the place of a member of which the difference says this.
std::optional<Json> changed(std::string_view key, const Json& was, const Json& stated)
{
    if (was.isObject() && stated.isObject()) return withDifference(was, stated);
    if (was.isArray() && stated.isArray() && among(kByPlace, key)) return listWith(was.items(), stated.items());
    return stated;
}

}  // namespace

std::optional<std::pair<std::size_t, std::size_t>> placesIn(const std::string& text)
{
    std::size_t first = 0, last = 0;
    const char* const end = text.data() + text.size();
    const auto one = std::from_chars(text.data(), end, first);
    if (one.ec != std::errc{}) return std::nullopt;
    if (one.ptr == end) return std::pair{first, first};
    if (end - one.ptr < 3 || one.ptr[0] != '.' || one.ptr[1] != '.') return std::nullopt;
    const auto two = std::from_chars(one.ptr + 2, end, last);
    if (two.ec != std::errc{} || two.ptr != end || last <= first) return std::nullopt;
    return std::pair{first, last};
}

std::optional<Json> differenceOf(const Json& before, const Json& after)
{
    if (!before.isObject() || !after.isObject() || !canBeTold(before, after)) return std::nullopt;
    Json difference = Json::object();
    for (const auto& [key, value] : after.members()) {
        const Json& was = before[key];
        if (before.has(key) && was == value) continue;
        if (was.isObject() && value.isObject()) {
            auto inner = differenceOf(was, value);
            if (!inner) return std::nullopt;
            difference.set(key, *std::move(inner));
        } else if (was.isArray() && value.isArray() && among(kByPlace, key)) {
            auto list = listDifference(was.items(), value.items());
            if (!list) return std::nullopt;
            difference.set(key, *std::move(list));
        } else {
            difference.set(key, value);
        }
    }
    Json gone = Json::array();
    for (const Json::Member& member : before.members())
        if (!after.has(member.first)) gone.add(member.first);
    if (!gone.items().empty()) difference.set("without", std::move(gone));
    return difference;
}

std::optional<Json> withDifference(const Json& before, const Json& difference)
{
    if (!before.isObject() || !difference.isObject()) return std::nullopt;
    Json::Object members;
    for (const Json::Member& member : before.members()) {
        const std::string& key = member.first;
        if (key == "without" || !difference.has(key)) {
            members.push_back(member);
            continue;
        }
        auto now = changed(key, member.second, difference[key]);
        if (!now) return std::nullopt;
        members.emplace_back(key, *std::move(now));
    }
    for (const Json::Member& member : difference.members())
        if (member.first != "without" && !before.has(member.first)) members.push_back(member);
    Json after(std::move(members));
    for (const Json& gone : difference["without"].items()) {
        if (!gone.isString() || !after.has(gone.text())) return std::nullopt;
        after = without(after, gone.text());
    }
    return after;
}

Json inDifferences(Json::Array values)
{
    // From the back, so that each still finds the one before it whole.
    for (std::size_t i = values.size(); i-- > 1;) {
        const auto difference = differenceOf(values[i - 1], values[i]);
        if (!difference) continue;
        Json told = Json::object();
        told.set("since", static_cast<std::int64_t>(i) - 1);
        for (const Json::Member& member : difference->members()) told.set(member.first, member.second);
        values[i] = std::move(told);
    }
    return Json(std::move(values));
}

std::optional<Json::Array> wholeAgain(const Json::Array& list)
{
    Json::Array whole;
    whole.reserve(list.size());
    for (const Json& told : list) {
        if (!told.has("since")) {
            whole.push_back(told);
            continue;
        }
        const auto since = static_cast<std::size_t>(told["since"].integer(-1));
        if (!told["since"].isWhole() || since >= whole.size()) return std::nullopt;
        auto value = withDifference(whole[since], without(told, "since"));
        if (!value) return std::nullopt;
        whole.push_back(*std::move(value));
    }
    return whole;
}

}  // namespace taut::seal
