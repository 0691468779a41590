// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/limits.h"

#include <algorithm>
#include <vector>

#include "core/inputs/key_reader.h"
#include "core/targets/book.h"

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
    for (const auto& [pattern, limits] : knownIds()) {
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
    for (const auto& [pattern, limits] : knownIds()) {
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

bool reachesBeyond(const Window& own, const Range& limits)
{
    return (own.low && (!limits.low || limits.low->si() < own.low->si())) ||
           (own.high && (!limits.high || limits.high->si() > own.high->si()));
}

const Text kSource("limits of this press's profile");

/// What a step aims at where no formula gives it: the middle of what is left, or its one end.
void aimInside(Target& target, Ready& ready)
{
    const Quantity value = std::get<Quantity>(ready.value);
    const Range window{ready.window.low, ready.window.high};
    if (window.contains(value.si()) || ready.because.formula != "stated" || ready.because.given.size() != 1 ||
        ready.because.given.front().from.find("policy") == std::string::npos)
        return;
    const double aim = window.low && window.high ? (window.low->si() + window.high->si()) / 2
                       : window.low              ? window.low->si()
                                                 : window.high->si();
    ready.value = Quantity(aim, value.kind(), value.unit());
    ready.because.given.front().value = ready.value;
    ready.because.given.front().from = keyOf(target.id);
    ready.because.source = "press profile";
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

std::optional<Finding> layLimits(Target& target, const Range& limits)
{
    auto* ready = std::get_if<Ready>(&target.state);
    const Quantity* value = target.quantity();
    if (ready == nullptr || value == nullptr) return std::nullopt;
    const Quantity& some = limits.low ? *limits.low : *limits.high;
    if (some.kind() != value->kind())
        return said("other_kind", Severity::Warn, target.id,
                    Text("The limits of %1 are not of its kind: they do not hold.", {target.id}),
                    "Mend their unit, or the name.");
    Window& own = ready->window;
    if (own.rule < Rule::Press)
        return said("job_comes_first", Severity::Note, target.id,
                    Text("The limits of %1 do not hold: its window comes from job or material.", {target.id}),
                    "Nothing to do.");
    if (!onlyNarrows(target.id)) {
        own = Window{limits.low, limits.high, Rule::Press, kSource};
    } else {
        Window narrow = own;
        const bool low = takeNarrower(narrow.low, limits.low, true),
                   high = takeNarrower(narrow.high, limits.high, false);
        const bool beyond = reachesBeyond(own, limits);
        const bool apart = narrow.low && narrow.high && narrow.low->si() > narrow.high->si();
        if (!apart && (low || high)) {
            const Rule lowRule = low ? Rule::Press : own.lowRule.value_or(own.rule),
                       highRule = high ? Rule::Press : own.rule;
            narrow.rule = own.high || high ? highRule : lowRule;
            narrow.lowRule.reset();
            if (narrow.low && lowRule != narrow.rule) narrow.lowRule = lowRule;
            narrow.source =
                own.source.empty() || !(own.low || own.high)
                    ? kSource
                    : Text("%1; narrower by %2", {std::vector<Text>{own.source}, std::vector<Text>{kSource}});
            own = std::move(narrow);
        }
        if (beyond || apart)
            return said("only_narrower", Severity::Warn, target.id,
                        Text("The limits of %1 in this press's profile are wider than what else holds there: %2. Where "
                             "somebody or something could be hurt they may only be narrower.",
                             {target.id, std::vector<Text>{own.source}}),
                        "Set narrower ones, or mend the figure of the plate or the policy row.");
    }
    aimInside(target, *ready);
    return std::nullopt;
}

}  // namespace taut::targets
