// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/ramp.h"

#include <algorithm>
#include <cmath>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

/// Web tension under the zone's taper; without one, what it was at the start.
std::optional<double> taperedTension(const Ramp& ramp, double diameter)
{
    const double fraction = ramp.zone.taperFraction.value_or(0);
    if (ramp.unwinding || ramp.zone.taper == inputs::TaperShape::None || fraction == 0) return ramp.total;
    Arguments arguments{{"T0", known(Quantity(ramp.total, Kind::Force), "")},
                        {"tau", known(Quantity(fraction, Kind::Share), "")},
                        {"D", known(Quantity(diameter, Kind::Length), "")},
                        {"d0", known(Quantity(ramp.start, Kind::Length), "")}};
    const bool linear = ramp.zone.taper == inputs::TaperShape::Linear;
    if (linear) arguments.emplace_back("Dm", known(Quantity(ramp.end, Kind::Length), ""));
    const Term t = evaluated(linear ? "B6.linear" : "B6.hyperbolic", arguments, "");
    if (!t.known()) return std::nullopt;
    return t.value->si();
}

std::optional<double> settingAt(const Ramp& ramp, double diameter)
{
    const auto point = pointAt(ramp, diameter);
    if (!point || !point->setting) return std::nullopt;
    return point->setting->si();
}

}  // namespace

std::optional<RampPoint> pointAt(const Ramp& ramp, double diameter)
{
    const std::optional<double> tension = taperedTension(ramp, diameter);
    if (!tension) return std::nullopt;
    const Term force = known(Quantity(*tension, Kind::Force, ramp.forceUnit), "");
    const Term across = known(Quantity(diameter, Kind::Length, ramp.lengthUnit), "");
    const Term torque = evaluated("B1", {{"T", force}, {"D", across}}, "");
    if (!torque.known()) return std::nullopt;
    RampPoint point{*across.value, *force.value, torque.value->in(ramp.torqueUnit),
                    Quantity(ramp.total * ramp.start / diameter, Kind::Force, ramp.forceUnit), std::nullopt};
    if (!ramp.byHand || !ramp.zone.torquePerSetting || !ramp.zone.zeroSetting) return point;
    const Term setting = evaluated("B5",
                                   {{"T", force},
                                    {"D", across},
                                    {"k", term(ramp.zone.torquePerSetting, "")},
                                    {"p0", term(ramp.zone.zeroSetting, "")}},
                                   "");
    if (!setting.known()) return std::nullopt;
    point.setting = setting.value->in(ramp.settingUnit);
    return point;
}

std::vector<double> changeDiameters(const Ramp& ramp)
{
    constexpr std::size_t kMany = 60;
    constexpr double kNoStep = 0.005;  // a window so narrow that it would have to be followed all the time
    std::vector<double> all;
    const std::optional<double>& end = ramp.unwinding ? ramp.high : ramp.low;
    if (!ramp.byHand || !end || *end <= 0) return all;
    double at = ramp.start;
    while (all.size() < kMany) {
        const std::optional<double> tension = taperedTension(ramp, at);
        if (!tension) break;
        const double next = at * *tension / *end;
        const double step = ramp.unwinding ? at / next - 1 : next / at - 1;
        if (step < kNoStep || (ramp.unwinding ? next <= ramp.end : next >= ramp.end)) break;
        all.push_back(next);
        at = next;
    }
    return all;
}

std::vector<Crossing> rangeCrossings(const Ramp& ramp)
{
    constexpr int kSteps = 64;
    std::vector<Crossing> all;
    for (const bool below : {true, false}) {
        const std::optional<Quantity>& limit = below ? ramp.zone.setting.least : ramp.zone.setting.most;
        if (!limit) continue;
        const auto beyond = [&](double diameter) {
            const std::optional<double> s = settingAt(ramp, diameter);
            return s && s.value() != limit->si() ? std::optional((*s < limit->si()) == below) : std::nullopt;
        };
        double before = ramp.start;
        for (int i = 1; i <= kSteps; ++i) {
            const double here = ramp.start + (ramp.end - ramp.start) * i / kSteps;
            const auto was = beyond(before), is = beyond(here);
            if (was && is && *was != *is) {
                double one = before, other = here;
                for (int halving = 0; halving < 60; ++halving) {
                    const double middle = (one + other) / 2;
                    (beyond(middle).value_or(*is) == *was ? one : other) = middle;
                }
                all.push_back({(one + other) / 2, below});
            }
            if (is) before = here;
        }
    }
    return all;
}

std::optional<Ramp> rampOf(const inputs::Press& press, const Targets& targets, const std::string& zoneId)
{
    const std::string id = "tension." + zoneId + ".";
    const Schedule* schedule = targets.schedule(id + "schedule");
    const Target* total = targets.find(id + "total");
    const inputs::Zone* zone = press.zone(zoneId);
    if (schedule == nullptr || schedule->rows.size() < 2 || zone == nullptr || total == nullptr ||
        total->quantity() == nullptr)
        return std::nullopt;
    const Quantity &first = schedule->rows.front().front(), &last = schedule->rows.back().front();
    Ramp ramp;
    ramp.zone = *zone;
    ramp.unwinding = endOf(press, *zone) == ZoneEnd::Unwind;
    ramp.byHand = zone->control == inputs::Control::OpenLoop;
    ramp.total = total->quantity()->si();
    ramp.start = first.si();
    ramp.end = last.si();
    const Window& window = total->ready()->window;
    if (window.low) ramp.low = window.low->si();
    if (window.high) ramp.high = window.high->si();
    ramp.lengthUnit = first.unit();
    ramp.forceUnit = total->quantity()->unit();
    for (std::size_t i = 0; i < schedule->columns.size(); ++i) {
        const std::string& unit = schedule->rows.front()[i].unit();
        if (schedule->columns[i] == "torque") ramp.torqueUnit = unit;
        if (schedule->columns[i] == "setting") ramp.settingUnit = unit;
    }
    return ramp;
}

}  // namespace taut::targets
