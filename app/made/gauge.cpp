// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/gauge.h"

#include <algorithm>
#include <cmath>

#include "core/targets/aim.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace taut::app::made {

namespace {

/// The shares of a window's width that readings keep from its middle (one deviation), and from its ends.
constexpr double kSpread = 0.11, kMargin = 0.03;
/// Of a limit that stands alone: what is usual against it.
constexpr double kUsual = 0.3;

bool isSplice(const std::string& target) { return target == "splice.gap" || target == "splice.step"; }
bool isGuideRest(const std::string& target) { return target.starts_with("guide.") && target.ends_with(".rest"); }

const Unit& unitOf(const Quantity& q, UnitSystem system)
{
    const Manner manner = mannerOf(q.unit());
    const Unit* unit = findUnit(q.kind(), manner.symbol);
    return unit != nullptr ? *unit : usualUnit(q.kind(), system, q.si());
}

/// So many decimals that a fortieth of what there is between the limits can still be told.
int decimalsFor(double scale, const Unit& unit)
{
    constexpr int kMost = 4;
    constexpr double kParts = 40;
    const double step = scale / unit.toSi / kParts;
    if (!(step > 0)) return unit.leastDecimals;
    return std::clamp(static_cast<int>(std::ceil(-std::log10(step))), 0, kMost);
}

Reading typed(double si, Kind kind, const Unit& unit, int decimals)
{
    Reading reading{si, roundedDecimal(si / unit.toSi, decimals, Rounding::Nearest)};
    if (kind != Kind::Count) reading.entered += ' ' + std::string(unit.symbol);
    return reading;
}

/// A reading on the wrong side of a limit, by 0.05 to 0.5 of what there is between the limits or below one alone.
double beyond(std::optional<double> low, std::optional<double> high, Chance& chance)
{
    const double by = chance.between(0.08, 0.5);
    if (low && high) return chance.is(0.5) ? *high + by * (*high - *low) : *low - by * (*high - *low);
    return high ? *high * (1 + by) : *low * (1 - by);
}

/// Metres that a set-up uses: those planned, more or less, more where the roll runs badly or the web broke.
double webUsed(const Quantity& planned, const Tale& tale, Chance& chance)
{
    constexpr double kUsualShare = 0.9, kScatter = 0.22, kBroke = 1.6;
    const double usual = planned.si() * kUsualShare * (0.7 + 0.3 * tale.wander);
    return usual * (tale.trouble.webBreak ? kBroke : 1) * std::exp(kScatter * chance.normal());
}

double within(const Quantity& aim, std::optional<double> low, std::optional<double> high, const Tale& tale,
              const std::string& target, Chance& chance)
{
    if (target == "setup.web" && !low && !high) return webUsed(aim, tale, chance);
    const double wander = isSplice(target) || isGuideRest(target) ? tale.wander : 1;
    const double noise = chance.normal();
    if (low && high) {
        const double width = *high - *low;
        double middle = aim.si();
        // Aimed at may be an end of the window; nobody stands there.
        double room = std::min(middle - *low, *high - middle);
        if (room <= 0) {
            middle = (*low + *high) / 2;
            room = width / 2;
        }
        // Close to an end the same hand keeps closer to the aim.
        double spread = std::min(kSpread * width, room * 0.4) * wander;
        if (target == "tension.unwind.setting") {
            middle = aim.si() * tale.brake + 0.004 * noise * aim.si();
            spread = 0.02 * aim.si();
        }
        const double margin = std::min(kMargin * width, room * 0.3);
        return std::clamp(middle + spread * noise, *low + margin, *high - margin);
    }
    // What may only be so much, and is aimed at: the lift's pressure rises to about its aim.
    if (high && aim.si() > 0.5 * *high && aim.si() < *high && wander == 1)
        return std::clamp(aim.si() * (1 + 0.03 * noise), 0.0, *high - 0.1 * (*high - aim.si()));
    if (high) return std::clamp(*high * kUsual * (1 + 0.45 * noise) * (0.6 + 0.4 * wander), 0.0, *high * (1 - kMargin));
    if (low)
        return aim.kind() == Kind::Count ? std::ceil(*low) + static_cast<double>(chance.below(3))
                                         : std::max(*low * (1 + kMargin), aim.si() * (1 + 0.02 * noise));
    return aim.si() * (1 + 0.015 * noise);
}

}  // namespace

std::optional<double> tensionMade(const targets::Targets& targets, double setting, const Tale& tale)
{
    const targets::Target* set = targets.find("tension.unwind.setting");
    const targets::Target* pull = targets.find("tension.unwind.total");
    if (set == nullptr || pull == nullptr || set->quantity() == nullptr || pull->quantity() == nullptr)
        return std::nullopt;
    // Above where it begins the torque goes with the setting (B5).
    for (const targets::Given& given : set->ready()->because.given)
        if (const auto* zero = std::get_if<Quantity>(&given.value); zero != nullptr && given.symbol.str() == "p0")
            return pull->quantity()->si() * (setting / tale.brake - zero->si()) / (set->quantity()->si() - zero->si());
    return std::nullopt;
}

double outsideShare(const std::string& target, const Tale& tale)
{
    // A display shows what the setting makes, and that was read inside.
    if (target == "tension.unwind.total") return 0;
    constexpr double kUsually = 0.012, kAtSplice = 0.035, kAMore = 0.25;
    if (!isSplice(target) && !isGuideRest(target)) return kUsually;
    return kAtSplice + kAMore * (tale.wander - 1);
}

std::optional<Reading> readingOf(const targets::Target& target, const Tale& tale, UnitSystem units, bool outside,
                                 Chance& chance, std::optional<double> there)
{
    const targets::Ready* ready = target.ready();
    const Quantity* value = target.quantity();
    if (ready == nullptr || value == nullptr) return std::nullopt;
    const auto si = [](const std::optional<Quantity>& q) { return q ? std::optional(q->si()) : std::nullopt; };
    std::optional<double> low = si(ready->window.low);
    const std::optional<double> high = si(ready->window.high);
    // Nothing is less than no gap: such a window has one end.
    if (low && high && *low == 0) low.reset();
    if (outside && !low && !high) return std::nullopt;
    const targets::TargetValue aimed = targets::aimOf(*ready, units);
    const Quantity* aim = std::get_if<Quantity>(&aimed);
    const Unit& unit = unitOf(aim != nullptr ? *aim : *value, units);
    double scale = std::abs(value->si());
    if (low && high)
        scale = *high - *low;
    else if (high)
        scale = *high;
    const int decimals = value->kind() == Kind::Count ? 0 : decimalsFor(scale, unit);
    double read = outside ? beyond(low, high, chance)
                          : within(aim != nullptr ? *aim : *value, low, high, tale, target.id, chance);
    if (there && !outside) {
        constexpr double kSeen = 0.01;
        const double margin = low && high ? kMargin * (*high - *low) : 0;
        read = *there * (1 + kSeen * chance.normal());
        if (low) read = std::max(read, *low + margin);
        if (high) read = std::min(read, *high - margin);
    }
    if (outside && value->kind() == Kind::Count) read = low ? *low - 1 : *high + 1;
    // No gauge shows less than nothing where nothing is the least.
    if (read < 0 && (!low || *low >= 0)) read = 0;
    return typed(read, value->kind(), unit, decimals);
}

}  // namespace taut::app::made
