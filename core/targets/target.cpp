// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/target.h"

#include <algorithm>

#include "core/inputs/cross_check.h"
#include "core/inputs/fill.h"
#include "core/targets/book.h"

namespace taut::targets {

const char* ruleWord(Rule rule) noexcept
{
    switch (rule) {
    case Rule::Job: return "job";
    case Rule::Maker: return "maker";
    case Rule::Press: return "press";
    case Rule::Table: return "table";
    case Rule::Policy: return "policy";
    case Rule::None: return "none";
    case Rule::Alarm: return "alarm";
    }
    return "none";
}

const Quantity* Target::quantity() const
{
    const Ready* r = ready();
    return r ? std::get_if<Quantity>(&r->value) : nullptr;
}

const Target* Targets::find(std::string_view id) const
{
    auto it = std::find_if(all.begin(), all.end(), [&](const Target& t) { return t.id == id; });
    return it == all.end() ? nullptr : &*it;
}

const Schedule* Targets::schedule(std::string_view id) const
{
    auto it = std::find_if(schedules.begin(), schedules.end(), [&](const Schedule& s) { return s.id == id; });
    return it == schedules.end() ? nullptr : &*it;
}

namespace {

/// A roll only gets smaller: one measured at least as large when its wraps had come off was not stripped, or was
/// measured as a whole after that.
inputs::Inputs withoutVainStrip(inputs::Inputs in, std::optional<Length> presentDiameter)
{
    if (!in.roll || !in.roll->strippedDiameter) return in;
    inputs::Roll roll = *in.roll;
    roll.strippedDiameter.reset();
    const std::optional<Length> whole = inputs::diameterAsItRuns(roll, presentDiameter);
    if (whole && in.roll->strippedDiameter->si() >= whole->si()) in.roll = std::make_shared<const inputs::Roll>(roll);
    return in;
}

}  // namespace

Targets computeTargets(const inputs::Inputs& given, std::optional<Length> presentDiameter, bool webInPress)
{
    // What the roll's file leaves open its own tag may say.
    const inputs::Inputs in = inputs::filledFromTag(given);
    Findings found = inputs::crossCheck(in, presentDiameter);
    // A slip of the hand stops, and the roll's file counts until it is mended.
    if (presentDiameter && !inputs::isRollDiameter(*presentDiameter)) presentDiameter.reset();
    Book book(withoutVainStrip(in, presentDiameter), presentDiameter);
    for (Finding& f : found) {
        if (inputs::blamesDiameter(f)) book.blame(f);
        if (inputs::blamesStripped(f)) book.blameStripped(f);
        book.note(std::move(f));
    }
    stateRoll(book);
    stateJob(book);
    stateCoreAndLift(book);
    stateThreading(book, webInPress);
    stateTension(book);
    stateTraction(book);
    stateStops(book);
    stateSplice(book);
    stateGuides(book);
    stateAlignment(book);
    stateRegisterAndInk(book);
    stateShopReadings(book);
    return std::move(book).finish();
}

namespace {

double givenOf(const Ready& ready, std::string_view symbol)
{
    for (const Given& given : ready.because.given)
        if (const auto* quantity = std::get_if<Quantity>(&given.value); quantity && given.symbol == symbol)
            return quantity->si();
    return 0;
}

/// Two noes are not the same where more is lacking by more than it is known to: what is needed (N), what there is (U),
/// how well both are known (u).
bool lacksMore(const Ready& before, const Ready& after)
{
    const auto* no = std::get_if<bool>(&after.value);
    if (no == nullptr || *no || before.value != after.value) return false;
    const auto lacking = [](const Ready& ready) { return givenOf(ready, "N") - givenOf(ready, "U"); };
    return lacking(after) > lacking(before) + givenOf(before, "u");
}

/// What a reading is judged by: how it is explained may change without making an answer stale.
bool sameToOperator(const Target& a, const Target& b)
{
    if (a.state.index() != b.state.index()) return false;
    const Ready* ra = a.ready();
    const Ready* rb = b.ready();
    if (ra == nullptr || rb == nullptr) return true;
    if (lacksMore(*ra, *rb)) return false;
    return ra->value == rb->value && ra->window.low == rb->window.low && ra->window.high == rb->window.high;
}

}  // namespace

std::vector<TargetId> changed(const Targets& before, const Targets& after)
{
    std::vector<TargetId> ids;
    for (const Target& t : after.all) {
        const Target* old = before.find(t.id);
        if (old == nullptr || !sameToOperator(*old, t)) ids.push_back(t.id);
    }
    for (const Target& t : before.all)
        if (after.find(t.id) == nullptr) ids.push_back(t.id);
    std::sort(ids.begin(), ids.end());
    return ids;
}

}  // namespace taut::targets
