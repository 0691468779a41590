// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/schedule.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/spoken.h"
#include "core/targets/ramp.h"

namespace taut::targets {

std::optional<Ramp> courseOf(const Book& book, const inputs::Zone& zone, const SettingTerms& terms,
                             const SharedString& settingUnit)
{
    Ramp ramp;
    ramp.zone = zone;
    ramp.byHand = zone.control == inputs::Control::OpenLoop;
    ramp.unwinding = endOf(book.press(), zone) == ZoneEnd::Unwind;
    if (zone.control == inputs::Control::Draw || endOf(book.press(), zone) == ZoneEnd::Between) return std::nullopt;
    const Term to = lastDiameterOf(book, zone);
    if (!terms.diameter.known() || !to.known() || !terms.total.known()) return std::nullopt;
    ramp.total = terms.total.value->si();
    ramp.start = terms.diameter.value->si();
    ramp.end = to.value->si();
    if (ramp.unwinding ? ramp.end >= ramp.start : ramp.end <= ramp.start) return std::nullopt;
    if (terms.low.known()) ramp.low = terms.low.value->si();
    if (terms.high.known()) ramp.high = terms.high.value->si();
    ramp.swing = book.limit("tension_swing").si();
    const bool us = book.press().units == UnitSystem::Us;
    ramp.lengthUnit = us ? "in" : "mm";
    ramp.forceUnit = us ? "lbf" : "N";
    ramp.torqueUnit = us ? "lbf in" : "N m";
    ramp.settingUnit = settingUnit;
    return ramp;
}

namespace {

/// The ends, and round diameters between them, as a person would tick them off on a tape.
std::vector<double> tapeDiameters(const Ramp& ramp)
{
    const double step = ramp.lengthUnit == "in" ? 0.0508 * 2 : 0.1;
    std::vector<double> round;
    for (double d = std::ceil(ramp.least() / step + 0.05) * step; d < ramp.most() - 0.05 * step; d += step)
        round.push_back(d);
    if (ramp.unwinding) std::reverse(round.begin(), round.end());
    round.insert(round.begin(), ramp.start);
    round.push_back(ramp.end);
    return round;
}

/// Every stretch on which the tension leaves its window for want of a finer gauge; of many the worst and the last. That
/// a control ends before is said where its range is looked at.
void sayOutside(Book& book, const Ramp& ramp, const Changes& changes)
{
    constexpr std::size_t kMost = 5;
    const inputs::Zone& zone = ramp.zone;
    std::vector<Changes::Outside> all = changes.outside;
    std::erase_if(all, [](const Changes::Outside& o) { return o.byEnd; });
    if (all.empty() || !zone.setting.uncertainty) return;
    const bool some = all.size() > kMost;
    if (some) {
        const Changes::Outside last = all.back();
        all.pop_back();
        const auto farther = [&](const Changes::Outside& a, const Changes::Outside& b) {
            return ramp.unwinding ? a.tension > b.tension : a.tension < b.tension;
        };
        std::partial_sort(all.begin(), all.begin() + kMost - 1, all.end(), farther);
        all.resize(kMost - 1);
        all.push_back(last);
        std::sort(all.begin(), all.end(), [&](const Changes::Outside& a, const Changes::Outside& b) {
            return ramp.unwinding ? a.from > b.from : a.from < b.from;
        });
    }
    std::vector<Text> stretches;
    stretches.reserve(all.size());
    for (const Changes::Outside& o : all)
        stretches.emplace_back("%1 to %2 (%3)",
                               std::vector<TextArg>{Magnitude{o.from, Kind::Length, ramp.lengthUnit},
                                                    Magnitude{o.to, Kind::Length, ramp.lengthUnit},
                                                    Magnitude{o.tension, Kind::Force, ramp.forceUnit}});
    book.note(Finding{
        "tension." + zone.id + ".steps_too_fine", Severity::Note, "press.zone." + zone.id,
        Text(some
                 ? "%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it "
                   "between the changes listed; the worst stretches and the last, with the tension there: %3."
                 : "%1: the window wants smaller steps than the %2 that the gauge shows, so that the tension leaves it "
                   "between the changes listed, with the tension there: %3.",
             {inputs::spokenName(zone), zone.setting.uncertainty->magnitude(), stretches}),
        Text("Watch the web there, or use a finer gauge.")});
}

}  // namespace

void stateSchedule(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const SharedString& settingUnit)
{
    const std::optional<Ramp> ramp = courseOf(book, zone, terms, settingUnit);
    if (!ramp) return;
    const bool tapers = zone.taper != inputs::TaperShape::None && zone.taperFraction.value_or(0) > 0;
    if (ramp->byHand ? !zone.torquePerSetting || !zone.zeroSetting : ramp->unwinding || !tapers) return;
    Schedule schedule{"tension." + zone.id + ".schedule", {"diameter", "torque", "setting", "tension"}, {}};
    if (!ramp->byHand) schedule.columns = {"diameter", "torque", "tension"};
    for (const double d : tapeDiameters(*ramp)) {
        const std::optional<RampPoint> p = pointAt(*ramp, d);
        if (!p) return;
        if (p->setting)
            schedule.rows.push_back({p->diameter, p->torque, *p->setting, p->tension});
        else
            schedule.rows.push_back({p->diameter, p->torque, p->tension});
    }
    book.schedule(std::move(schedule));

    Schedule list{"tension." + zone.id + ".changes", {"diameter", "setting"}, {}};
    const Changes changes = changesOf(*ramp);
    for (const Changes::One& change : changes.all)
        list.rows.push_back({Quantity(change.diameter, Kind::Length, ramp->lengthUnit),
                             Quantity(zone.zeroSetting->si() + change.torque / zone.torquePerSetting->si(),
                                      zone.zeroSetting->kind(), settingUnit)});
    if (!list.rows.empty()) book.schedule(std::move(list));
    sayOutside(book, *ramp, changes);
}

}  // namespace taut::targets
