// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/schedule.h"

#include <algorithm>
#include <cmath>

namespace taut::targets {

double tapered(const inputs::Zone& zone, double t0, double d0, double diameter, double largest)
{
    const double fraction = zone.taperFraction.value_or(0);
    if (zone.taper == inputs::TaperShape::None || fraction == 0) return t0;
    const Arguments common{{"T0", known(Quantity(t0, Kind::Force), "")},
                           {"tau", known(Quantity(fraction, Kind::Share), "")},
                           {"D", known(Quantity(diameter, Kind::Length), "")},
                           {"d0", known(Quantity(d0, Kind::Length), "")}};
    Arguments arguments = common;
    const bool linear = zone.taper == inputs::TaperShape::Linear;
    if (linear) arguments.emplace_back("Dm", known(Quantity(largest, Kind::Length), ""));
    const Term t = evaluated(linear ? "B6.linear" : "B6.hyperbolic", arguments, "");
    return t.known() ? t.value->si() : t0;
}

void stateSchedule(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& settingUnit)
{
    const bool us = book.press().units == UnitSystem::Us;
    const bool unwinding = endOf(book.press(), zone) == ZoneEnd::Unwind;
    const Term from = terms.diameter;
    Term to = unwinding ? book.coreOuter() : term(book.job().rewindDiameter, "job.rewind_diameter");
    if (!from.known() || !to.known() || !terms.total.known() || !zone.torquePerSetting || !zone.zeroSetting) return;
    const double start = from.value->si();
    const double end = to.value->si();
    if (unwinding ? end >= start : end <= start) return;

    // Round diameters between the ends, as a person would tick them off on a tape.
    const double step = us ? 0.0508 * 2 : 0.1;
    std::vector<double> diameters{start};
    const double low = std::min(start, end);
    const double high = std::max(start, end);
    std::vector<double> round;
    for (double d = std::ceil(low / step + 0.05) * step; d < high - 0.05 * step; d += step) round.push_back(d);
    if (unwinding) std::reverse(round.begin(), round.end());
    diameters.insert(diameters.end(), round.begin(), round.end());
    diameters.push_back(end);

    Schedule schedule{"tension." + zone.id + ".schedule", {"diameter", "torque", "setting"}, {}};
    for (const double d : diameters) {
        const double t = unwinding ? terms.total.value->si() : tapered(zone, terms.total.value->si(), start, d, end);
        const Term force = known(Quantity(t, Kind::Force), "");
        const Term diameter = known(Quantity(d, Kind::Length, us ? "in" : "mm"), "");
        const Term torque = evaluated("B1", {{"T", force}, {"D", diameter}}, "");
        const Term setting = evaluated(
            "B5",
            {{"T", force}, {"D", diameter}, {"k", term(zone.torquePerSetting, "")}, {"p0", term(zone.zeroSetting, "")}},
            "");
        if (!torque.known() || !setting.known()) return;
        schedule.rows.push_back(
            {*diameter.value, torque.value->in(us ? "lbf in" : "N m"), setting.value->in(settingUnit)});
    }
    book.schedule(std::move(schedule));
}

}  // namespace taut::targets
