// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/ramp.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <initializer_list>
#include <span>

#include "core/physics/formula.h"
#include "core/targets/book.h"

namespace taut::targets {

namespace {

/// A formula of the catalogue on plain numbers in the order of its arguments, SI; nullopt outside its domain.
std::optional<double> answer(const char* formulaId, std::initializer_list<double> si)
{
    const physics::Formula* formula = physics::findFormula(formulaId);
    assert(formula != nullptr && formula->arguments.size() == si.size());
    const double value = formula->value(std::span(si.begin(), si.size()));
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// Web tension under the zone's taper; without one, what it was at the start.
std::optional<double> taperedTension(const Ramp& ramp, double diameter)
{
    const double fraction = ramp.zone.taperFraction.value_or(0);
    if (ramp.unwinding || ramp.zone.taper == inputs::TaperShape::None || fraction == 0) return ramp.total;
    return ramp.zone.taper == inputs::TaperShape::Linear
               ? answer("B6.linear", {ramp.total, fraction, diameter, ramp.start, ramp.end})
               : answer("B6.hyperbolic", {ramp.total, fraction, diameter, ramp.start});
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
    const std::optional<double> torque = answer("B1", {*tension, diameter});
    if (!torque) return std::nullopt;
    RampPoint point{Quantity(diameter, Kind::Length, ramp.lengthUnit), Quantity(*tension, Kind::Force, ramp.forceUnit),
                    Quantity(*torque, Kind::Torque, ramp.torqueUnit),
                    Quantity(ramp.total * ramp.start / diameter, Kind::Force, ramp.forceUnit), std::nullopt};
    if (!ramp.byHand || !ramp.zone.torquePerSetting || !ramp.zone.zeroSetting) return point;
    const std::optional<double> setting =
        answer("B5", {*tension, diameter, ramp.zone.torquePerSetting->si(), ramp.zone.zeroSetting->si()});
    if (!setting) return std::nullopt;
    point.setting = Quantity(*setting, ramp.zone.zeroSetting->kind(), ramp.settingUnit);
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
