// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/limits.h"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>
#include <vector>

#include "core/inputs/key_reader.h"
#include "core/targets/book.h"
#include "core/targets/known_ids.h"

namespace taut::targets {

namespace {

/// The part of an id that stands for an instance in a pattern; "" where the pattern has none.
std::string instanceIn(std::string_view pattern, std::string_view id, std::string& of)
{
    const std::size_t open = pattern.find('{');
    if (open == std::string_view::npos) return {};
    of = pattern.substr(open + 1, pattern.find('}') - open - 1);
    return std::string(id.substr(open, id.find('.', open) - open));
}

/// The instances that a press has; empty where its file does not tell.
std::vector<std::string> instancesOf(const inputs::Press& press, const std::string& of)
{
    std::vector<std::string> all;
    if (of == "zone")
        for (const inputs::Zone& z : press.zones) all.push_back(z.id);
    if (of == "rewind") {
        for (const inputs::Rewind& r : press.rewinds) all.push_back(r.id);
        if (!all.empty()) all.emplace_back("unwind");  // stop and start speak of both
    }
    if (of == "guide")
        for (const inputs::Guide& g : press.guides) all.push_back(g.id);
    if (of == "station")
        for (const inputs::Station& s : press.stations) all.push_back(std::to_string(s.number));
    if (of == "roller")
        for (const inputs::Roller& r : press.rollers) all.push_back(r.id);
    if (of == "path") all = inputs::pathNames(press);
    return all;
}

/// Every id that this press can have.
std::vector<std::string> idsOf(const inputs::Press& press)
{
    std::vector<std::string> ids;
    for (const KnownId& known : knownIds()) {
        const std::string_view pattern = known.pattern;
        const std::size_t open = pattern.find('{');
        if (open == std::string_view::npos) {
            ids.emplace_back(pattern);
            continue;
        }
        const std::size_t close = pattern.find('}');
        for (const std::string& instance : instancesOf(press, std::string(pattern.substr(open + 1, close - open - 1))))
            ids.push_back(std::string(pattern.substr(0, open)) + instance + std::string(pattern.substr(close + 1)));
    }
    return ids;
}

/// Whether some pattern fits and this press has the instance, or does not tell.
bool canHave(const inputs::Press& press, std::string_view id)
{
    for (const KnownId& known : knownIds()) {
        const std::string_view pattern = known.pattern;
        if (!fitsPattern(pattern, id)) continue;
        std::string of;
        const std::string instance = instanceIn(pattern, id, of);
        const std::vector<std::string> all = instancesOf(press, of);
        if (all.empty() || std::find(all.begin(), all.end(), instance) != all.end()) return true;
    }
    return false;
}

std::string keyOf(std::string_view id) { return "press.limits." + std::string(id); }

Finding said(const std::string& code, Severity severity, std::string_view id, Text text, Text remedy)
{
    return {"limits." + code, severity, keyOf(id), std::move(text), std::move(remedy)};
}

/// The zone of a tension that a window of per_width is entered for here, and nowhere else: stripped matrix.
bool isWaste(const inputs::Press& press, std::string_view id)
{
    return std::any_of(press.zones.begin(), press.zones.end(), [&](const inputs::Zone& z) {
        return id == "tension." + z.id + ".per_width" && endOf(press, z) == ZoneEnd::Waste;
    });
}

std::optional<Finding> whyNever(const inputs::Press& press, const std::string& id)
{
    if (!canHave(press, id)) {
        const std::string near = inputs::nearest(id, idsOf(press));
        return said("unknown_id", Severity::Warn, id,
                    Text("Limits are set for %1, and nothing of this press bears that name: they never hold.", {id}),
                    near.empty() ? Text("Take them out, or name a target as \"tautweb targets\" lists it.")
                                 : Text("Was %1 meant? Else take them out.", {near}));
    }
    if (ownLimitsOf(id) == OwnLimits::NotJudged)
        return said("not_judged", Severity::Warn, id,
                    Text("Limits are set for %1, which is never judged: it proves nothing.", {id}), "Take them out.");
    const bool perWidth = fitsPattern("tension.{zone}.per_width", id) && !isWaste(press, id);
    if (perWidth || ownLimitsOf(id) == OwnLimits::ByTension)
        return said("by_tension", Severity::Warn, id,
                    Text("Limits are set for %1, whose window comes from the range of tension of job, material or "
                         "table: they do not hold.",
                         {id}),
                    "Enter the range with the job or the material, and take them out here.");
    return std::nullopt;
}

/// The narrower of two lower or upper ends; whether it is the limit.
bool takeNarrower(std::optional<Quantity>& own, const std::optional<Quantity>& limit, bool lower)
{
    if (!limit || (own && (lower ? limit->si() <= own->si() : limit->si() >= own->si()))) return false;
    own = limit;
    return true;
}

/// A limit that is not said reaches beyond nothing.
bool reachesBeyond(const Window& own, const Range& limits)
{
    return (own.low && limits.low && limits.low->si() < own.low->si()) ||
           (own.high && limits.high && limits.high->si() > own.high->si());
}

const Text kSource("limits of this press's profile");

/// What somebody sets or makes lies inside the limits: at the middle of what is left, or at its one end. Never beyond
/// where the control itself ends.
void aimInside(Target& target, Ready& ready)
{
    const Quantity value = std::get<Quantity>(ready.value);
    const auto& [low, high] = std::tie(ready.window.low, ready.window.high);
    if (Range{low, high}.contains(value.si())) return;
    double aim = low && high ? (low->si() + high->si()) / 2 : low ? low->si() : high->si();
    if (ready.most) aim = std::min(aim, ready.most->si());
    if (!Range{low, high}.contains(aim)) return;
    ready.value = Quantity(aim, value.kind(), value.unit());
    ready.because = {"stated", "as entered", {{"x", target.name, ready.value, keyOf(target.id)}}, "press profile"};
    ready.uncertainty.reset();
}

/// A figure that is as it is, or an aim that cannot be put inside, beyond what the shop has set for itself: one that is
/// too heavy stops.
std::optional<Finding> broken(const Target& target, const Range& limits)
{
    const Quantity& value = *target.quantity();
    if (limits.contains(value.si())) return std::nullopt;
    const bool over = limits.high && value.si() > limits.high->si();
    const bool lifted = over && (target.id == "lift.load" || target.id == "roll.mass");
    return said(
        "broken", lifted ? Severity::Stop : Severity::Warn, target.id,
        Text(over ? "%1: %2 is over this press's own limit of %3." : "%1: %2 is under this press's own limit of %3.",
             {std::vector<Text>{target.name}, value.magnitude(), (over ? limits.high : limits.low)->magnitude()}),
        lifted ? Text("Take a smaller roll. Do not lift this one here.")
               : Text("Change what it follows from, or have whoever set this limit look at it."));
}

/// The window of what may only be narrower, where the limits leave something of it.
Findings narrow(Target& target, Window& own, const Range& limits)
{
    Findings out;
    Window left = own;
    const bool low = takeNarrower(left.low, limits.low, true), high = takeNarrower(left.high, limits.high, false);
    const bool apart = left.low && left.high && left.low->si() > left.high->si();
    // A limit that is wider than the window breaks nothing: what holds there is judged by its own rule.
    if (!isAim(target.id))
        if (auto why = broken(target, {low ? limits.low : std::nullopt, high ? limits.high : std::nullopt}))
            out.push_back(*std::move(why));
    const std::vector<TextArg> what{target.id, std::vector<Text>{own.source}};
    if (apart && out.empty())
        out.push_back(said("nothing_left", Severity::Warn, target.id,
                           Text("The limits of %1 in this press's profile leave nothing of what else holds there: %2. "
                                "They do not hold.",
                                what),
                           "Mend them, or the figure of the plate or the policy row."));
    if (!apart && reachesBeyond(own, limits))
        out.push_back(said("only_narrower", Severity::Warn, target.id,
                           Text("The limits of %1 in this press's profile are wider than what else holds there: %2. "
                                "Where somebody or something could be hurt they may only be narrower.",
                                what),
                           "Set narrower ones, or mend the figure of the plate or the policy row."));
    if (apart || (!low && !high)) return out;
    const Rule lowRule = low ? Rule::Press : own.lowRule.value_or(own.rule), highRule = high ? Rule::Press : own.rule;
    left.rule = own.high || high ? highRule : lowRule;
    left.lowRule.reset();
    if (left.low && lowRule != left.rule) left.lowRule = lowRule;
    left.source = own.source.empty() || !(own.low || own.high)
                      ? kSource
                      : Text("%1; narrower by %2", {std::vector<Text>{own.source}, std::vector<Text>{kSource}});
    own = std::move(left);
    return out;
}

}  // namespace

bool onlyNarrows(std::string_view id) { return ownLimitsOf(id) == OwnLimits::OnlyNarrow; }

Findings checkLimits(const inputs::Press& press)
{
    Findings out;
    for (const auto& [id, range] : press.limits)
        if (auto why = whyNever(press, id)) out.push_back(*std::move(why));
    return out;
}

Findings layLimits(Target& target, const Range& limits)
{
    auto* ready = std::get_if<Ready>(&target.state);
    const Quantity* value = target.quantity();
    if (ready == nullptr || value == nullptr) return {};
    const Quantity& some = limits.low ? *limits.low : *limits.high;
    if (some.kind() != value->kind())
        return {said("other_kind", Severity::Warn, target.id,
                     Text("The limits of %1 are not of its kind: they do not hold.", {target.id}),
                     "Mend their unit, or the name.")};
    Window& own = ready->window;
    if (own.rule < Rule::Press)
        return {said("job_comes_first", Severity::Note, target.id,
                     Text("The limits of %1 in this press's profile do not hold: its window comes from job or "
                          "material, %2.",
                          {target.id, std::vector<Text>{own.source}}),
                     "Enter with the job or the material what is to hold, and take them out here.")};
    Findings out;
    const Window before = own;
    if (onlyNarrows(target.id)) {
        out = narrow(target, own, limits);
    } else {
        own = Window{limits.low, limits.high, Rule::Press, kSource};
        if (!isAim(target.id))
            if (auto why = broken(target, limits)) out.push_back(*std::move(why));
    }
    if (!isAim(target.id) || own == before) return out;
    aimInside(target, *ready);
    if (auto why = broken(target, {own.low, own.high})) out.push_back(*std::move(why));
    return out;
}

void Book::settle(Entry& entry)
{
    // A shop's own limits come before our policy and the tables; those of the job and the maker come before them.
    if (std::exchange(entry.settled, true)) return;
    for (const auto& [id, range] : m_press->limits)
        if (id == entry.target.id && !whyNever(*m_press, id))
            for (Finding& f : layLimits(entry.target, range)) m_limitsSaid.push_back(std::move(f));
}

void Book::layOwnLimits()
{
    for (Entry& e : m_all) settle(e);
    Findings wrong = checkLimits(*m_press);
    std::move(m_limitsSaid.begin(), m_limitsSaid.end(), std::back_inserter(wrong));
    for (Finding& f : wrong) {
        // What must not be lifted is given no load and no pressure to lift it with.
        if (f.severity == Severity::Stop)
            for (Entry& e : m_all)
                if ((e.target.id == "lift.load" || e.target.id == "lift.pressure") &&
                    !std::holds_alternative<Cannot>(e.target.state))
                    Stated(e.target, &e.doubt).cannot(f);
        note(std::move(f));
    }
}

}  // namespace taut::targets
