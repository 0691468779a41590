// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/ramp.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <initializer_list>
#include <limits>
#include <span>

#include "core/inputs/policy.h"
#include "core/physics/formula.h"
#include "core/targets/book.h"
#include "core/targets/reach.h"

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

}  // namespace

std::optional<double> taperedTension(const Ramp& ramp, double diameter)
{
    const double fraction = ramp.zone.taperFraction.value_or(0);
    if (ramp.unwinding || ramp.zone.taper == inputs::TaperShape::None || fraction == 0) return ramp.total;
    return ramp.zone.taper == inputs::TaperShape::Linear
               ? answer("B6.linear", {ramp.total, fraction, diameter, ramp.start, ramp.end})
               : answer("B6.hyperbolic", {ramp.total, fraction, diameter, ramp.start});
}

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
    // What cannot be set stands at the end of its range, and the web gets what that makes of it.
    const std::optional<Quantity> end = endBeyond(settingRange(ramp.zone, point.setting->kind()), *setting);
    if (!end) return point;
    const std::optional<double> held =
        answer("B5.tension", {diameter, ramp.zone.torquePerSetting->si(), ramp.zone.zeroSetting->si(), end->si()});
    if (!held) return point;
    point.setting = Quantity(end->si(), end->kind(), ramp.settingUnit);
    point.tension = Quantity(*held, Kind::Force, ramp.forceUnit);
    point.torque = Quantity(*held * diameter / 2, Kind::Torque, ramp.torqueUnit);
    return point;
}

std::optional<double> actuatorAt(const Ramp& ramp, double diameter)
{
    if (!ramp.zone.torquePerSetting || !ramp.zone.zeroSetting) return std::nullopt;
    const std::optional<double> tension = taperedTension(ramp, diameter);
    if (!tension) return std::nullopt;
    return answer("B5", {*tension, diameter, ramp.zone.torquePerSetting->si(), ramp.zone.zeroSetting->si()});
}

namespace {

double torqueAt(const Ramp& ramp, double diameter) { return taperedTension(ramp, diameter).value_or(0) * diameter / 2; }

/// The first diameter on the way from `from` to the end where a condition holds, to the accuracy of a double.
template <class Condition>
std::optional<double> firstWhere(const Ramp& ramp, double from, const Condition& holds)
{
    constexpr int kSteps = 64;
    double before = from;
    for (int i = 1; i <= kSteps; ++i) {
        const double here = from + (ramp.end - from) * i / kSteps;
        if (holds(here)) {
            double one = before, other = here;
            for (int halving = 0; halving < 60; ++halving) {
                const double middle = (one + other) / 2;
                (holds(middle) ? other : one) = middle;
            }
            return other;
        }
        before = here;
    }
    return std::nullopt;
}

constexpr double kSame = 1e-9;

/// Whether a window is there that a torque can leave.
bool hasWindow(const Ramp& ramp) { return ramp.low && ramp.high && *ramp.low > 0 && ramp.total > 0; }

/// Whether the taper leads below the window before the roll is done.
bool taperLeaves(const Ramp& ramp)
{
    const std::optional<double> last = taperedTension(ramp, ramp.end);
    return ramp.low && last && *last < *ramp.low;
}

/// What a torque may give at a diameter, the ends of the window themselves no longer.
struct Bounds {
    const Ramp& ramp;
    bool below;  ///< the taper leads below the window
    explicit Bounds(const Ramp& of) : ramp(of), below(taperLeaves(of)) {}
    [[nodiscard]] double lowest(double diameter) const
    {
        const double tapered = below ? taperedTension(ramp, diameter).value_or(0) : *ramp.low;
        return tapered < *ramp.low ? tapered * (1 - ramp.swing) : *ramp.low;
    }
    [[nodiscard]] bool holds(double torque, double diameter) const
    {
        const double tension = 2 * torque / diameter;
        return tension > lowest(diameter) && tension < *ramp.high;
    }
    /// Where a torque that was set at a diameter leads the tension out of its window.
    [[nodiscard]] std::optional<double> firstOutside(double torque, double from) const
    {
        // Before the taper itself leaves the window the end counts, however soon after it no longer does.
        if (const double end = 2 * torque / *ramp.low;
            below && end >= from && taperedTension(ramp, end).value_or(0) > *ramp.low * (1 + kSame))
            return end;
        return firstWhere(ramp, from, [&](double d) { return !holds(torque, d); });
    }
};

}  // namespace

std::optional<Force> lowestTension(const Ramp& ramp, Length diameter)
{
    return ramp.low ? std::optional(Force::si(Bounds(ramp).lowest(diameter.si()))) : std::nullopt;
}

std::optional<Length> leavesAt(const Ramp& ramp)
{
    if (!hasWindow(ramp)) return std::nullopt;
    const std::optional<double> at = Bounds(ramp).firstOutside(torqueAt(ramp, ramp.start), ramp.start);
    return at ? std::optional(Length::si(*at)) : std::nullopt;
}

namespace {

/// How a torque is changed on the way: its steps and its ends.
struct Steps {
    const Ramp& ramp;
    Bounds bounds;
    double resolution = 0, least = 0, most = 0;  ///< N m
    explicit Steps(const Ramp& of) : ramp(of), bounds(of)
    {
        // B5: the setting grows with the torque by k, so that a step of it is a step of torque.
        const double k = of.zone.torquePerSetting->si(), zero = of.zone.zeroSetting->si();
        const inputs::Setting range = settingRange(of.zone, of.zone.zeroSetting->kind());
        if (of.zone.setting.uncertainty) resolution = k * of.zone.setting.uncertainty->si();
        if (range.least) least = std::max(0.0, k * (range.least->si() - zero));
        most = range.most ? k * (range.most->si() - zero) : std::numeric_limits<double>::infinity();
    }
    /// What to set next where the torque left leads out of the window.
    [[nodiscard]] double after(double left, double diameter) const
    {
        double wanted = torqueAt(ramp, diameter);
        // A taper about to leave the window wants no change on every wrap: half a swing above the end is inside too.
        const double clear = *ramp.low * (1 + ramp.swing / 2) * diameter / 2;
        if (bounds.below && wanted < clear && wanted >= *ramp.low * diameter / 2 && bounds.holds(clear, diameter))
            wanted = clear;
        if (std::abs(wanted - left) < resolution) wanted = left + std::copysign(resolution, wanted - left);
        return settable(wanted, left);
    }
    /// Whether the end of what can be set keeps the torque out of its window, however fine the gauge.
    [[nodiscard]] bool endsBefore(double left, double diameter) const
    {
        return !bounds.holds(settable(torqueAt(ramp, diameter), left), diameter);
    }
    /// The nearest that can be set; what is left alone can stay where it is.
    [[nodiscard]] double settable(double wanted, double left) const
    {
        return std::clamp(wanted, std::min(least, left), std::max(most, left));
    }
    /// From where on a torque is inside the window.
    [[nodiscard]] std::optional<double> inside(double torque, double from) const
    {
        const auto holds = [&](double d) { return bounds.holds(torque, d); };
        return holds(from) ? std::optional(from) : firstWhere(ramp, from, holds);
    }
};

}  // namespace

Changes changesOf(const Ramp& ramp)
{
    constexpr std::size_t kMany = 60;
    Changes changes;
    if (!ramp.byHand || !hasWindow(ramp) || !ramp.zone.torquePerSetting || !ramp.zone.zeroSetting) return changes;
    const Steps steps(ramp);
    double at = ramp.start, left = torqueAt(ramp, at);
    while (changes.all.size() + changes.outside.size() < kMany) {
        const std::optional<double> leaves = steps.bounds.firstOutside(left, at);
        if (!leaves || *leaves == at || *leaves == ramp.end) break;
        const double wanted = steps.after(left, *leaves);
        const bool changed = std::abs(wanted - left) > kSame * left;
        const std::optional<double> back = steps.inside(wanted, *leaves);
        if (!back || *back != *leaves) {
            const double to = back.value_or(ramp.end);
            changes.outside.push_back({*leaves, to, 2 * left / to, steps.endsBefore(left, *leaves)});
        }
        if (!back || *back == ramp.end) break;
        if (changed) changes.all.push_back({*back, wanted});
        at = *back;
        left = wanted;
    }
    return changes;
}

std::vector<Crossing> crossings(const Ramp& ramp, const inputs::Setting& range, const FigureAt& figure)
{
    constexpr int kSteps = 64;
    constexpr double kEqual = 1e-9;
    std::vector<Crossing> all;
    if (!range.least && !range.most) return all;
    const auto place = [&ramp](int i) { return ramp.start + (ramp.end - ramp.start) * i / kSteps; };
    constexpr std::size_t kPlaces = kSteps + 1;
    std::array<std::optional<double>, kPlaces> figures;
    for (int i = 0; i <= kSteps; ++i) figures[static_cast<std::size_t>(i)] = figure(place(i));
    for (const bool below : {true, false}) {
        const std::optional<Quantity>& limit = below ? range.least : range.most;
        if (!limit) continue;
        const auto beyond = [&](const std::optional<double>& s) {
            return s && s.value() != limit->si() ? std::optional((*s < limit->si()) == below) : std::nullopt;
        };
        double before = ramp.start;
        std::optional<bool> was = beyond(figures.front());
        // What was moved to the limit stands on it, whichever side arithmetic puts it.
        if (figures.front() && std::abs(*figures.front() - limit->si()) <= kEqual * std::abs(limit->si())) was = false;
        for (int i = 1; i <= kSteps; ++i) {
            const std::optional<bool> is = beyond(figures[static_cast<std::size_t>(i)]);
            if (was && is && *was != *is) {
                double one = before, other = place(i);
                for (int halving = 0; halving < 60; ++halving) {
                    const double middle = (one + other) / 2;
                    (beyond(figure(middle)).value_or(*is) == *was ? one : other) = middle;
                }
                all.push_back({(one + other) / 2, below});
            }
            if (!is) continue;
            before = place(i);
            was = is;
        }
    }
    return all;
}

std::vector<Crossing> rangeCrossings(const Ramp& ramp)
{
    if (!ramp.byHand) return {};
    return crossings(ramp, ramp.zone.setting, [&ramp](double diameter) { return actuatorAt(ramp, diameter); });
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
    ramp.swing = inputs::findPolicy("tension_swing")->si;
    for (const auto& [name, value] : press.policy)
        if (name == "tension_swing") ramp.swing = value.si();
    ramp.lengthUnit = first.unit();
    ramp.forceUnit = total->quantity()->unit();
    for (std::size_t i = 0; i < schedule->columns.size(); ++i) {
        const SharedString& unit = schedule->rows.front()[i].unit();
        if (schedule->columns[i] == "torque") ramp.torqueUnit = unit;
        if (schedule->columns[i] == "setting") ramp.settingUnit = unit;
    }
    return ramp;
}

}  // namespace taut::targets
