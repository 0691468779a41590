// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/words.h"

#include <algorithm>
#include <iterator>

#include "core/run/parts.h"
#include "core/units/plain.h"

namespace taut::run {

namespace {

struct Words {
    std::string_view word;
    const char* said;
    const char* missing;
};

constexpr Words kConditions[] = {
    {"people_clear", "Everybody is clear of the press", "Nobody has said that everybody is clear of the press."},
    {"guards_closed", "Every guard is closed", "Nobody has said that every guard is closed."},
    {"stops_released", "Every emergency stop is released", "Nobody has said that every emergency stop is released."},
    {"stops_tested", "The emergency stops are tested", "The emergency stops are not tested yet."},
    {"stop_held", "A stop is held", "No stop is held."},
    {"locked_out", "The isolator is locked by your site's procedure",
     "Nobody has said that the isolator is locked by your site's procedure."},
    {"energy_released", "Stored energy is let off or held", "Nobody has said that stored energy is let off or held."},
    {"blades_covered", "Blades and knives are covered", "Nobody has said that blades and knives are covered."},
    {"air_on", "The air is on", "The air is not on yet."},
    {"power_on", "The power is on", "The power is not on yet."},
    {"lamps_parked", "The lamps are parked", "Nobody has said that the lamps are parked."},
    {"stations_off", "The stations are off impression", "Nobody has said that the stations are off impression."},
    {"roll_mounted", "The roll is on the shaft", "The roll is not on the shaft yet."},
    {"roll_retained", "The roll is held on the shaft", "The roll is not held on the shaft yet."},
    {"lift_lowered", "The lift is down", "The lift is not down yet."},
    {"webs_clamped", "Both webs are clamped", "The webs are not clamped."},
    {"web_joined", "The web is joined", "The web is not joined yet."},
    {"splice_seen", "The splice has been watched through", "The splice has not been watched through yet."},
    {"rewind_locked", "The rewind core is locked", "The rewind core is not locked yet."},
    {"web_at_rewind", "The web is on the rewind core", "The web is not on the rewind core yet."},
    {"nips_closed", "The nips are closed", "The nips are not closed yet."},
    {"tension_on", "Tension is on", "Tension is not on yet."},
    {"web_moved", "The web has been moved", "The web has not been moved yet."},
    {"sensors_calibrated", "The sensors are calibrated", "The sensors are not calibrated yet."},
    {"roll_lifted", "The roll is lifted", "The roll is not lifted yet."},
    {"guide_middle", "The guide is at mid-stroke", "The guide is not at mid-stroke yet."},
};

constexpr Words kSafe[] = {
    {"nobody_in", "Nobody is in the press", ""},
    {"roll_supported", "The roll is supported", ""},
    {"web_secured", "The web is secured", ""},
    {"lamps_parked", "The lamps are parked", ""},
};

template <std::size_t N>
const Words* find(const Words (&table)[N], std::string_view word)
{
    const auto* const found =
        std::find_if(std::begin(table), std::end(table), [&](const Words& w) { return w.word == word; });
    return found == std::end(table) ? nullptr : found;
}

}  // namespace

Text conditionSaid(std::string_view condition)
{
    const Words* words = find(kConditions, condition);
    return words == nullptr ? Text() : Text(words->said);
}

Text conditionMissing(std::string_view condition)
{
    const Words* words = find(kConditions, condition);
    return words == nullptr ? Text() : Text(words->missing);
}

Text makeSafeSaid(std::string_view word)
{
    const Words* words = find(kSafe, word);
    return words == nullptr ? Text() : Text(words->said);
}

Text stopSaid(const procedure::Plan& plan, const std::string& where)
{
    const bool named = std::any_of(plan.places.begin(), plan.places.end(),
                                   [&](const procedure::PlanPlace& p) { return p.holdStop == where; });
    if (named) return {"%1", {where}};
    const bool isId = where.starts_with(kPlace);
    const std::string_view id = std::string_view(where).substr(isId ? kPlace.size() : 0);
    for (const procedure::PlanPlace& place : plan.places)
        if (isId ? place.id == id : plain(place.title) == where) return place.title;
    return {"%1", {std::string(id)}};
}

std::vector<std::string> stopsOf(const procedure::Plan& plan)
{
    std::vector<std::string> all;
    for (const procedure::Step& step : plan.steps) {
        if (step.kind != procedure::StepKind::Hold) continue;
        std::string stop = placeOfStop(plan, step);
        if (std::find(all.begin(), all.end(), stop) == all.end()) all.push_back(std::move(stop));
    }
    return all;
}

Text holderSaid(const procedure::Plan& plan, const std::string& holder, const std::string& where)
{
    return {"%1 (%2)", {holder, std::vector<Text>{stopSaid(plan, where)}}};
}

Text causeSaid(std::string_view cause)
{
    if (cause == "web_break") return "web break";
    if (cause == "wrong_roll") return "wrong roll";
    return cause == "other" ? Text("another cause") : Text("%1", {std::string(cause)});
}

Text correctionSaid(std::string_view reason)
{
    return reason == kMeasuredAgain ? Text("measured again") : Text("%1", {std::string(reason)});
}

Text interruptionSaid(std::string_view reason)
{
    if (reason == "ended_without_sign_off") return "the program ended";
    if (reason == "power") return "power cut";
    if (reason == "break") return "break";
    if (reason == "stop_by_other") return "somebody else stopped the press";
    if (reason == "left_alone") return "nobody was at the screen";
    if (reason == "left_page") return "the page was left, the run kept open";
    return {"%1", {std::string(reason)}};
}

Text enteredSaid(const procedure::Step* step, const std::string& entered)
{
    using procedure::StepKind;
    if (entered.empty()) return {};
    if (step != nullptr) {
        for (const procedure::Choice& choice : step->choices)
            if (choice.word == entered && !choice.say.empty()) return choice.say;
        const bool stated =
            step->kind == StepKind::Confirm || step->kind == StepKind::Call || step->kind == StepKind::Motion;
        if (stated && entered == "yes") return "yes";
        if (stated && entered == "done") return "done";
        if (step->kind == StepKind::Hold) return {"held by %1", {entered}};
    }
    // What separates the fields of a tag is seen nowhere: with nothing in its place two fields would read as one.
    std::string seen;
    for (const char sign : entered) sign == '\x1d' ? seen += "<GS>" : seen += sign;
    return {"%1", {std::move(seen)}};
}

}  // namespace taut::run
