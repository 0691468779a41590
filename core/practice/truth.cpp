// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/truth.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/practice/readings.h"
#include "core/verdict/verdict.h"

namespace taut::practice {

namespace {

using inputs::Device;

Verity holdsIf(bool so, Text seen)
{
    return so ? Verity{Truth::Holds, {}} : Verity{Truth::Contradicted, std::move(seen)};
}

std::string nameOf(const std::vector<Device>& devices, const std::string& id)
{
    for (const Device& device : devices)
        if (device.id == id) return device.name.empty() ? id : device.name;
    return id;
}

/// Which of these is the first that the item does not rule out; "" = none.
std::string firstOf(const std::set<std::string>& ids, std::string_view item)
{
    for (const std::string& id : ids)
        if (item.empty() || id == item) return id;
    return {};
}

Verity guardsClosed(const World& w, std::string_view item)
{
    const std::string open = firstOf(w.press().open, item);
    return holdsIf(open.empty(), {"%1 stands open.", {nameOf(w.truly().press->guards, open)}});
}
Verity stopsReleased(const World& w, std::string_view item)
{
    const std::string latched = firstOf(w.press().stops, item);
    return holdsIf(latched.empty(), {"%1 is latched.", {nameOf(w.truly().press->emergencyStops, latched)}});
}
Verity stopsTested(const World& w, std::string_view)
{
    if (w.truly().press->emergencyStops.empty()) return {};
    return holdsIf(!w.press().tried.empty(), "No emergency stop was pressed while the press moved.");
}
Verity stopHeld(const World& w, std::string_view) { return holdsIf(w.press().held, "Nobody holds the press stopped."); }
Verity energyReleased(const World& w, std::string_view)
{
    constexpr double kStill = 0.01;  // radians per second
    if (w.press().roll == RollAt::Lift && w.press().lifted > 0)
        return holdsIf(false, "A roll hangs raised on the lift.");
    const bool turns = w.speed() > Speed{} || std::abs(w.web().unwindSpeed) > kStill || w.web().rewindSpeed > kStill;
    return holdsIf(!turns, "Something still turns.");
}
Verity airOn(const World& w, std::string_view) { return holdsIf(w.press().air, "The air is off."); }
Verity powerOn(const World& w, std::string_view) { return holdsIf(w.press().mains, "The power is off."); }
Verity lampsParked(const World& w, std::string_view item)
{
    const std::string open = firstOf(w.press().lampsOpen, item);
    return holdsIf(open.empty(), {"The dryer of station %1 stands open.", {open}});
}
Verity rollMounted(const World& w, std::string_view)
{
    return holdsIf(w.press().roll == RollAt::Shaft, "No roll hangs on the shaft.");
}
Verity rollRetained(const World& w, std::string_view item)
{
    if (Verity on = rollMounted(w, item); on.truth != Truth::Holds) return on;
    const auto& unwind = w.truly().press->unwind;
    const bool byAir = unwind && unwind->mandrel.kind == "air_shaft";
    if (byAir && !w.press().shaftAir) return holdsIf(false, "There is no air in the shaft that holds the roll.");
    return holdsIf(w.coreHolds(), "Pulled hard by hand, the core turns on its shaft.");
}
Verity liftLowered(const World& w, std::string_view) { return holdsIf(w.press().lifted == 0, "The lift is not down."); }
Verity rollLifted(const World& w, std::string_view)
{
    const auto& unwind = w.truly().press->unwind;
    if (!unwind || !unwind->lift) return {};
    return holdsIf(w.press().roll == RollAt::Shaft || (w.press().roll == RollAt::Lift && w.press().lifted >= 1),
                   "The roll is not up at the shaft.");
}
Verity websClamped(const World& w, std::string_view)
{
    return holdsIf(w.press().tableClamps, "Nothing clamps the webs on the table.");
}
Verity webJoined(const World& w, std::string_view)
{
    return holdsIf(w.press().joint.taped, "The new web is not joined to the old one.");
}
/// That it was drawn on from the table.
Verity webMoved(const World& w, std::string_view item)
{
    if (Verity joined = webJoined(w, item); joined.truth != Truth::Holds) return joined;
    const auto joint = w.joint();
    return holdsIf(!joint || joint->span > w.table(), "The joint still lies on the table.");
}
Verity spliceSeen(const World& w, std::string_view item)
{
    if (Verity moved = webMoved(w, item); moved.truth != Truth::Holds) return moved;
    const auto joint = w.joint();
    return holdsIf(!joint || joint->span + 1 == w.line().web.spans.size(), "The joint has not come to the rewind yet.");
}
Verity rewindLocked(const World& w, std::string_view)
{
    if (!w.truly().press->hasAir) return {};
    return holdsIf(w.press().rewindAir, "There is no air in the rewind's shaft.");
}
Verity webAtRewind(const World& w, std::string_view)
{
    return holdsIf(w.press().coreHeld && !isParted(w.web(), w.line().web.spans.size() - 1),
                   "The web is not on the rewind's core.");
}
/// That something draws the web: a closed nip, or the web on the rewind.
Verity nipsClosed(const World& w, std::string_view)
{
    return holdsIf(!w.press().nips.empty() || w.press().coreHeld, "No nip is closed, so nothing draws the web.");
}
Verity tensionOn(const World& w, std::string_view item)
{
    for (const LineZone& zone : w.line().zones) {
        const inputs::Zone& said = *w.truly().press->zone(zone.id);
        if (said.control == inputs::Control::Draw || (!item.empty() && item != zone.id)) continue;
        const auto set = w.press().settings.find(zone.id);
        if (set == w.press().settings.end() || set->second.si() <= 0)
            return holdsIf(false, {"The tension of %1 is not on.", {said.name}});
    }
    return holdsIf(true, {});
}
Verity sensorsCalibrated(const World& w, std::string_view item)
{
    for (std::size_t g = 0; g < w.guides().size(); ++g) {
        const std::string& guide = w.guides()[g].id;
        if (!item.empty() && item != guide) continue;
        if (w.sees(guide) < 1)
            return holdsIf(false, {"The sensor of guide %1 is dirty: it hardly tells web from none.", {guide}});
        if (!w.guideStates()[g].calibrated)
            return holdsIf(false, {"The sensor of guide %1 was not calibrated on this web.", {guide}});
    }
    return w.guides().empty() ? Verity{} : holdsIf(true, {});
}
Verity guideMiddle(const World& w, std::string_view item)
{
    constexpr double kMiddle = 5e-4;
    for (std::size_t g = 0; g < w.guides().size(); ++g)
        if ((item.empty() || item == w.guides()[g].id) && std::abs(w.guideStates()[g].moved) > kMiddle)
            return holdsIf(false, {"Guide %1 does not stand in the middle of its stroke.", {w.guides()[g].id}});
    return w.guides().empty() ? Verity{} : holdsIf(true, {});
}

struct ConditionRow {
    std::string_view name;
    Verity (*now)(const World&, std::string_view item);
    Text (*lingers)() = nullptr;  ///< what is seen where a step says that this has ended and it has not
};
constexpr std::array kConditions{
    ConditionRow{"guards_closed", guardsClosed},
    ConditionRow{"stops_released", stopsReleased},
    ConditionRow{"stops_tested", stopsTested},
    ConditionRow{"stop_held", stopHeld, [] { return Text("Somebody still holds the press stopped."); }},
    ConditionRow{"energy_released", energyReleased},
    ConditionRow{"air_on", airOn},
    ConditionRow{"power_on", powerOn},
    ConditionRow{"lamps_parked", lampsParked},
    ConditionRow{"roll_mounted", rollMounted},
    ConditionRow{"roll_retained", rollRetained},
    ConditionRow{"lift_lowered", liftLowered},
    ConditionRow{"roll_lifted", rollLifted},
    ConditionRow{"webs_clamped", websClamped, [] { return Text("The webs are still clamped on the table."); }},
    ConditionRow{"web_joined", webJoined},
    ConditionRow{"web_moved", webMoved},
    ConditionRow{"splice_seen", spliceSeen},
    ConditionRow{"rewind_locked", rewindLocked},
    ConditionRow{"web_at_rewind", webAtRewind},
    ConditionRow{"nips_closed", nipsClosed},
    ConditionRow{"tension_on", tensionOn},
    ConditionRow{"sensors_calibrated", sensorsCalibrated},
    ConditionRow{"guide_middle", guideMiddle},
};
const ConditionRow* rowOf(std::string_view condition)
{
    const auto* const found = std::find_if(kConditions.begin(), kConditions.end(),
                                           [&](const ConditionRow& row) { return row.name == condition; });
    return found == kConditions.end() ? nullptr : found;
}

/// Targets that are ticked or chosen, not read.
Verity tickedNow(const World& w, const std::string& target, const std::string& entered)
{
    if (target == "splice.margin")
        return holdsIf(w.press().joint.trimmed && !w.hasTail(), "Web or tape stands over at a joint.");
    if (target == "thread.main.length") return holdsIf(w.press().joint.led, "The web is not led.");
    if (target == "roll.feed" && w.press().feed) {
        const std::string hangs = *w.press().feed == inputs::Feed::Over ? "over" : "under";
        return holdsIf(entered == hangs, *w.press().feed == inputs::Feed::Over
                                             ? Text("The web leaves the roll from its top.")
                                             : Text("The web leaves the roll from its underside."));
    }
    return {};
}

/// The first that contradicts, else holds where anything was known.
void take(Verity& sum, Verity next)
{
    if (sum.truth == Truth::Contradicted || next.truth == Truth::NotKnown) return;
    sum = std::move(next);
}

}  // namespace

Verity conditionNow(const World& world, std::string_view condition, std::string_view item)
{
    const ConditionRow* row = rowOf(condition);
    return row == nullptr ? Verity{} : row->now(world, item);
}

Verity readingNow(const World& world, std::string_view target, const Quantity& said)
{
    const auto shown = shownAt(world, target);
    if (!shown) return {};
    if (!shown->missing.empty()) return holdsIf(false, shown->missing);
    if (shown->value.kind() != said.kind()) return {};
    const double entered = shown->sized ? std::abs(said.si()) : said.si();
    const double apart = std::abs(entered - shown->value.si());
    const double may = std::max(shown->tolerance, verdict::uncertaintyOf(said, std::nullopt));
    const Quantity now = said.unit().empty() ? shown->value : shown->value.in(said.unit());
    return holdsIf(apart <= may, {"%1 was said, and the press shows %2.", {said.magnitude(), now.magnitude()}});
}

std::optional<Quantity> readNow(const World& world, std::string_view target)
{
    const auto shown = shownAt(world, target);
    if (!shown || !shown->missing.empty()) return std::nullopt;
    return shown->value;
}

Verity answerNow(const World& world, const procedure::Step& step, const Answer& answer,
                 const std::optional<Quantity>& read)
{
    for (const procedure::Choice& choice : step.choices)
        if (choice.word == answer.entered && choice.stops) return {};
    Verity sum;
    if (step.kind == procedure::StepKind::Motion)
        for (const std::string& need : step.needs)
            if (procedure::isMachineState(need)) take(sum, conditionNow(world, need, step.item));
    for (const std::string& given : step.gives) take(sum, conditionNow(world, given, step.item));
    for (const std::string& ended : step.ends) {
        const ConditionRow* row = rowOf(ended);
        if (row == nullptr || row->lingers == nullptr) continue;
        const bool still = row->now(world, step.item).truth == Truth::Holds;
        take(sum, holdsIf(!still, still ? row->lingers() : Text()));
    }
    if (step.target.empty()) return sum;
    if (step.kind == procedure::StepKind::Reading) {
        if (read) take(sum, readingNow(world, step.target, *read));
    } else {
        take(sum, tickedNow(world, step.target, answer.entered));
    }
    return sum;
}

}  // namespace taut::practice
