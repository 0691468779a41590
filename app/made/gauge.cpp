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

/// Metres that a set-up uses: those planned, more or less, more where the roll runs badly or the web broke.
double webUsed(double planned, const Tale& tale, Chance& chance)
{
    constexpr double kUsualShare = 0.9, kScatter = 0.22, kBroke = 1.6;
    const double usual = planned * kUsualShare * (0.7 + 0.3 * tale.wander);
    return usual * (tale.trouble.webBreak ? kBroke : 1) * std::exp(kScatter * chance.normal());
}

}  // namespace

/// A reading on the wrong side of a limit, by 0.05 to 0.5 of what there is between the limits or below one alone.
double Gauge::beyond(Chance& chance) const
{
    const double by = chance.between(0.08, 0.5);
    if (m_low && m_high) return chance.is(0.5) ? *m_high + by * (*m_high - *m_low) : *m_low - by * (*m_high - *m_low);
    return m_high ? *m_high * (1 + by) : *m_low * (1 - by);
}

double Gauge::within(const Tale& tale, Chance& chance) const
{
    if (m_isWeb && !m_low && !m_high) return webUsed(m_aim, tale, chance);
    const double wander = m_wanders ? tale.wander : 1;
    const double noise = chance.normal();
    if (m_low && m_high) {
        const double width = *m_high - *m_low;
        double middle = m_aim;
        // Aimed at may be an end of the window; nobody stands there.
        double room = std::min(middle - *m_low, *m_high - middle);
        if (room <= 0) {
            middle = (*m_low + *m_high) / 2;
            room = width / 2;
        }
        // Close to an end the same hand keeps closer to the aim.
        double spread = std::min(kSpread * width, room * 0.4) * wander;
        if (m_isBrake) {
            middle = m_aim * tale.brake + 0.004 * noise * m_aim;
            spread = 0.02 * m_aim;
        }
        const double margin = std::min(kMargin * width, room * 0.3);
        return std::clamp(middle + spread * noise, *m_low + margin, *m_high - margin);
    }
    // What may only be so much, and is aimed at: the lift's pressure rises to about its aim.
    if (m_high && m_aim > 0.5 * *m_high && m_aim < *m_high && wander == 1)
        return std::clamp(m_aim * (1 + 0.03 * noise), 0.0, *m_high - 0.1 * (*m_high - m_aim));
    if (m_high)
        return std::clamp(*m_high * kUsual * (1 + 0.45 * noise) * (0.6 + 0.4 * wander), 0.0, *m_high * (1 - kMargin));
    if (m_low)
        return m_counted ? std::ceil(*m_low) + static_cast<double>(chance.below(3))
                         : std::max(*m_low * (1 + kMargin), m_aim * (1 + 0.02 * noise));
    return m_aim * (1 + 0.015 * noise);
}

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

std::optional<Gauge> Gauge::at(const targets::Target& target, UnitSystem units)
{
    const targets::Ready* ready = target.ready();
    const Quantity* value = target.quantity();
    if (ready == nullptr || value == nullptr) return std::nullopt;
    const auto si = [](const std::optional<Quantity>& q) { return q ? std::optional(q->si()) : std::nullopt; };
    Gauge gauge;
    gauge.m_low = si(ready->window.low);
    gauge.m_high = si(ready->window.high);
    // Nothing is less than no gap: such a window has one end.
    if (gauge.m_low && gauge.m_high && *gauge.m_low == 0) gauge.m_low.reset();
    const targets::TargetValue aimed = targets::aimOf(*ready, units);
    const Quantity* aim = std::get_if<Quantity>(&aimed);
    if (aim == nullptr) aim = value;
    gauge.m_aim = aim->si();
    gauge.m_unit = &unitOf(*aim, units);
    gauge.m_counted = value->kind() == Kind::Count;
    gauge.m_wanders = isSplice(target.id) || isGuideRest(target.id);
    gauge.m_isBrake = target.id == "tension.unwind.setting";
    gauge.m_isWeb = target.id == "setup.web";
    double scale = std::abs(value->si());
    if (gauge.m_low && gauge.m_high)
        scale = *gauge.m_high - *gauge.m_low;
    else if (gauge.m_high)
        scale = *gauge.m_high;
    gauge.m_decimals = gauge.m_counted ? 0 : decimalsFor(scale, *gauge.m_unit);
    return gauge;
}

std::optional<Reading> Gauge::read(const Tale& tale, bool outside, Chance& chance, std::optional<double> there) const
{
    if (outside && !m_low && !m_high) return std::nullopt;
    double read = outside ? beyond(chance) : within(tale, chance);
    if (there && !outside) {
        constexpr double kSeen = 0.01;
        const double margin = m_low && m_high ? kMargin * (*m_high - *m_low) : 0;
        read = *there * (1 + kSeen * chance.normal());
        if (m_low) read = std::max(read, *m_low + margin);
        if (m_high) read = std::min(read, *m_high - margin);
    }
    if (outside && m_counted) read = m_low ? *m_low - 1 : *m_high + 1;
    // No gauge shows less than nothing where nothing is the least.
    if (read < 0 && (!m_low || *m_low >= 0)) read = 0;
    Reading reading{read, roundedDecimal(read / m_unit->toSi, m_decimals, Rounding::Nearest)};
    if (!m_counted) reading.entered += ' ' + std::string(m_unit->symbol);
    return reading;
}

}  // namespace taut::app::made
