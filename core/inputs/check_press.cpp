// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/inputs/cross_check.h"
#include "core/inputs/policy.h"
#include "core/inputs/spoken.h"

namespace taut::inputs {

namespace {

/// The centreline lies between the frames, and so do both edges of the widest web: else every distance across the press
/// would be one that nobody can measure.
void checkCentreline(const Press& press, Findings& out)
{
    if (!press.centreline || !press.betweenFrames) return;
    const double centre = press.centreline->si(), other = press.betweenFrames->si();
    if (centre >= other) {
        out.push_back(refuse("input.centreline_outside", "press.centreline",
                             {"The centreline is said to lie %1 from the frame face, but the other face is %2 away.",
                              {arg(press.centreline), arg(press.betweenFrames)}},
                             "Measure from the inner face that measure_from names to the middle of the web."));
        return;
    }
    if (!press.webMost) return;
    const double half = press.webMost->si() / 2;
    if (centre - half < 0 || centre + half > other)
        out.push_back(
            refuse("input.web_into_frame", "press.web_width.most",
                   {"A web of %1 about a centreline at %2 would run into the frame: %3 lie between the faces.",
                    {arg(press.webMost), arg(press.centreline), arg(press.betweenFrames)}},
                   "Check the greatest width, the centreline and the distance between the frames."));
}

/// The rollers that unwind and rewinds name are of that kind: the web's path begins and ends at them.
void checkShafts(const Press& press, Findings& out)
{
    const auto kindOf = [&](const std::string& id) -> const Roller* {
        const auto found =
            std::find_if(press.rollers.begin(), press.rollers.end(), [&](const Roller& r) { return r.id == id; });
        return found == press.rollers.end() ? nullptr : &*found;
    };
    const auto wrong = [&](const Roller& roller, const std::string& wanted) {
        out.push_back(refuse(
            "input.shaft_kind", "press.web.roller." + roller.id + ".kind",
            {"Roller %1 is of the kind %2; where it is named, only %3 can stand.", {roller.id, roller.kind, wanted}},
            "Correct its kind, or name another roller there."));
    };
    if (press.unwind)
        if (const Roller* r = kindOf(press.unwind->roller); r != nullptr && r->kind != "unwind") wrong(*r, "unwind");
    for (const Rewind& rewind : press.rewinds)
        if (const Roller* r = kindOf(rewind.roller); r != nullptr && r->kind != "rewind" && r->kind != "waste_rewind")
            wrong(*r, rewind.waste ? "waste_rewind" : "rewind");
}

void checkZones(const Press& press, Findings& out)
{
    for (const Zone& zone : press.zones)
        if (!zone.from.empty() && zone.from == zone.to)
            out.push_back(
                refuse("input.zone_without_web", "press.zone." + zone.id + ".to",
                       {"Zone %1 begins and ends at roller %2: no web lies between.", {spokenName(zone), zone.to}},
                       "Name the roller where this zone's tension ends."));
}

/// Crawl, idle and the largest speed come in that order.
void checkSpeeds(const Press& press, Findings& out)
{
    const auto order = [&](const Sourced& lower, const Sourced& higher, const char* key, const Text& text) {
        if (!lower.value || !higher.value || lower.value->si() <= higher.value->si()) return;
        Text said = text;
        said.args = {higher.value->magnitude(), lower.value->magnitude()};
        out.push_back(refuse("input.speeds_out_of_order", key, std::move(said),
                             "Look at both speeds and their units, and correct the one that is wrong."));
    };
    order(press.crawl, press.idle, "press.speeds.idle", "This press is said to idle at %1 and to crawl faster, at %2.");
    order(press.idle, press.largest, "press.speeds.largest",
          "This press is said to run %1 at most and to idle faster, at %2.");
    order(press.crawl, press.largest, "press.speeds.largest",
          "This press is said to run %1 at most and to crawl faster, at %2.");
}

/// What works with air on this press, by its key; "" for nothing.
std::string worksWithAir(const Press& press)
{
    if (press.unwind && press.unwind->mandrel.kind == "air_shaft") return "press.unwind.mandrel";
    if (press.unwind && press.unwind->lift && press.unwind->lift->kind == "pneumatic") return "press.unwind.lift";
    for (const Rewind& rewind : press.rewinds)
        if (rewind.mandrel.kind == "air_shaft") return "press.rewind." + rewind.id + ".mandrel";
    for (const Zone& zone : press.zones)
        if (zone.actuator == Actuator::Pneumatic || (zone.dancer && zone.dancer->load == "pneumatic"))
            return "press.zone." + zone.id;
    return {};
}

/// The most that the supply gives: this shop's own window, else the policy row.
Quantity supplyMost(const Press& press)
{
    for (const auto& [id, range] : press.limits)
        if (id == "air.supply" && range.high && range.high->kind() == Kind::Pressure) return *range.high;
    for (const auto& [row, value] : press.policy)
        if (row == "air_supply_most") return value;
    return Quantity(findPolicy("air_supply_most")->si, Kind::Pressure, press.units == UnitSystem::Us ? "psi" : "bar");
}

/// Air that cannot be there: on a press without any, or above what its supply gives.
void checkAir(const Press& press, Findings& out)
{
    if (!press.hasAir) {
        if (const std::string key = worksWithAir(press); !key.empty())
            out.push_back(refuse("input.no_air", "press.air",
                                 {"This press is said to have no air, and %1 works with air.", {key}},
                                 "Take air = false out, or correct what works with air."));
        return;
    }
    const Quantity most = supplyMost(press);
    const auto check = [&](const Mandrel& mandrel, const std::string& key) {
        if (mandrel.kind != "air_shaft" || !mandrel.airLeast || mandrel.airLeast->si() <= most.si()) return;
        out.push_back(warn("input.air_above_supply", key,
                           {"The shaft's plate wants at least %1; the air supply gives %2 at most.",
                            {arg(mandrel.airLeast), most.magnitude()}},
                           "Look at the plate and at the supply: a shaft short of air lets its core turn."));
    };
    if (press.unwind) check(press.unwind->mandrel, "press.unwind.mandrel.pressure");
    for (const Rewind& rewind : press.rewinds) check(rewind.mandrel, "press.rewind." + rewind.id + ".mandrel.pressure");
}

}  // namespace

void checkFrame(const Inputs& inputs, Findings& out)
{
    if (!inputs.press) return;
    checkCentreline(*inputs.press, out);
    checkShafts(*inputs.press, out);
    checkZones(*inputs.press, out);
    checkSpeeds(*inputs.press, out);
    checkAir(*inputs.press, out);
}

}  // namespace taut::inputs
