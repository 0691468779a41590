// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/format.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/base/json.h"
#include "core/units/parse.h"

namespace taut {

namespace {

/// A decimal number as digits: value = 0.DIGITS * 10^point. No leading zero; "" is zero.
struct Decimal {
    std::string digits;
    int point = 0;
    bool negative = false;
};

Decimal decimalOf(double value)
{
    Decimal out;
    out.negative = value < 0;
    if (value == 0) return out;
    std::array<char, 32> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), std::fabs(value), std::chars_format::scientific).ptr;
    const std::string_view all(text.data(), static_cast<std::size_t>(end - text.data()));
    const std::size_t e = all.find('e');
    const bool plus = all[e + 1] == '+';
    int exponent = 0;
    std::from_chars(text.data() + e + (plus ? 2 : 1), end, exponent);
    for (const char c : all.substr(0, e))
        if (c != '.') out.digits += c;
    out.point = exponent + 1;
    return out;
}

/// Whether what is cut off moves the last kept digit away from zero.
bool roundsAway(const Decimal& number, std::size_t kept, Rounding rounding)
{
    const std::string_view cut = std::string_view(number.digits).substr(kept);
    if (cut.find_first_not_of('0') == std::string_view::npos) return false;
    if (rounding == Rounding::Up) return !number.negative;
    if (rounding == Rounding::Down) return number.negative;
    if (cut.front() != '5') return cut.front() > '5';
    if (cut.find_first_not_of('0', 1) != std::string_view::npos) return true;
    return kept > 0 && (number.digits[kept - 1] - '0') % 2 == 1;
}

Decimal rounded(Decimal number, int decimals, Rounding rounding)
{
    const int wanted = number.point + decimals;
    // Everything lies behind the last place: zeros in front make the cut fall inside the digits.
    if (wanted < 0) {
        number.digits.insert(0, static_cast<std::size_t>(-wanted), '0');
        number.point -= wanted;
    }
    const auto kept = static_cast<std::size_t>(std::max(wanted, 0));
    if (kept >= number.digits.size()) return number;
    const bool away = roundsAway(number, kept, rounding);
    number.digits.resize(kept);
    if (!away) return number;
    std::size_t i = kept;
    while (i > 0 && number.digits[i - 1] == '9') number.digits[--i] = '0';
    if (i > 0) {
        ++number.digits[i - 1];
    } else {
        number.digits.insert(0, 1, '1');
        ++number.point;
    }
    return number;
}

std::string written(const Decimal& number, int decimals)
{
    const auto digitAt = [&](int place) {  // place 0: the one left of the decimal point
        const int i = number.point - 1 - place;
        return i >= 0 && i < static_cast<int>(number.digits.size()) ? number.digits[static_cast<std::size_t>(i)] : '0';
    };
    std::string out;
    for (int place = std::max(number.point - 1, 0); place >= 0; --place) out += digitAt(place);
    // Digits rounded up into a new first place leave none in front; digits shifted in leave some.
    out.erase(0, std::min(out.find_first_not_of('0'), out.size() - 1));
    if (decimals > 0) out += '.';
    for (int place = -1; place >= -decimals; --place) out += digitAt(place);
    if (number.negative && out.find_first_of("123456789") != std::string::npos) out.insert(0, 1, '-');
    return out;
}

/// Decimals for three significant digits of the number as it will stand there.
int decimalsFor(double value, const Unit& unit)
{
    if (value == 0) return unit.leastDecimals;
    const Decimal exact = decimalOf(value);
    const Decimal three = rounded(exact, 3 - exact.point, Rounding::Nearest);
    if (three.point > 3) return 0;
    return std::clamp(3 - three.point, unit.leastDecimals, unit.mostDecimals);
}

/// Trailing zeros beyond so many decimals say nothing and go.
int decimalsWithZeros(const Unit& unit)
{
    switch (unit.kind) {
    case Kind::Count:
    case Kind::Share:
    case Kind::CountPerLength: return 0;
    case Kind::Length: return unit.metric ? 0 : unit.mostDecimals;
    case Kind::Angle: return unit.symbol == "deg" ? 1 : unit.mostDecimals;
    case Kind::ForcePerWidth: return unit.symbol == "N/mm" ? unit.leastDecimals : unit.mostDecimals;
    default: return unit.mostDecimals;
    }
}

/// A converted number carries the noise of its last bits, which must not decide a tie nor push a limit a step further.
double withoutNoise(double value)
{
    std::array<char, 32> text{};
    constexpr int kDigitsBehindFirst = 13;
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific, kDigitsBehindFirst)
            .ptr;
    double clean = value;
    std::from_chars(text.data(), end, clean);
    return clean;
}

}  // namespace

const Unit& shownUnit(const Quantity& q, UnitSystem system)
{
    const Manner manner = mannerOf(q.unit());
    const Unit* own = findUnit(q.kind(), manner.symbol);
    if (own != nullptr && (manner.fixed || (system == UnitSystem::Metric ? own->metric : own->us))) return *own;
    return usualUnit(q.kind(), system, q.si());
}

Manner mannerOf(std::string_view unit)
{
    Manner manner;
    if (const std::size_t plus = unit.rfind('+'); plus != std::string_view::npos) {
        const std::string_view digits = unit.substr(plus + 1);
        std::from_chars(digits.data(), digits.data() + digits.size(), manner.finer);
        manner.finer = std::clamp(manner.finer, 0, 9);
        unit = unit.substr(0, plus);
    }
    manner.fixed = unit.ends_with('!');
    if (manner.fixed) unit.remove_suffix(1);
    manner.symbol = unit;
    return manner;
}

std::string unitIn(const Manner& manner)
{
    std::string unit(manner.symbol);
    if (manner.fixed) unit += '!';
    if (manner.finer > 0) unit += '+' + std::to_string(manner.finer);
    return unit;
}

std::string panelUnit(Kind kind, std::string_view symbol, UnitSystem system)
{
    Manner manner = mannerOf(symbol);
    const Unit* unit = findUnit(kind, manner.symbol);
    manner.fixed = unit != nullptr && !(system == UnitSystem::Metric ? unit->metric : unit->us);
    return unitIn(manner);
}

std::string roundedDecimal(double value, int decimals, Rounding rounding)
{
    if (!std::isfinite(value)) return std::isnan(value) ? "nan" : value > 0 ? "inf" : "-inf";
    return written(rounded(decimalOf(value), decimals, rounding), decimals);
}

namespace {

/// show(), with so many decimals more than usual.
Shown shownFiner(const Quantity& q, UnitSystem system, Rounding rounding, int more)
{
    const Unit& unit = shownUnit(q, system);
    const double value = withoutNoise(fromSi(q.si(), unit));
    const int finer = more + mannerOf(q.unit()).finer;
    const int decimals = std::isfinite(value) ? decimalsFor(value, unit) + finer : 0;
    Shown shown{roundedDecimal(value, decimals, rounding), unit.symbol == "1" ? "" : std::string(unit.symbol)};
    for (int left = decimals; left > decimalsWithZeros(unit) && shown.number.back() == '0'; --left) {
        shown.number.pop_back();
        if (shown.number.back() == '.') shown.number.pop_back();
    }
    return shown;
}

}  // namespace

Shown show(const Quantity& q, UnitSystem system, Rounding rounding) { return shownFiner(q, system, rounding, 0); }

bool showsNothing(const Quantity& q, UnitSystem system)
{
    const Unit& unit = shownUnit(q, system);
    // As much as the finest place shows, without writing it out.
    if (std::fabs(q.si() / unit.toSi) > 2 * std::pow(10, -unit.mostDecimals)) return false;
    return show(q, system).number.find_first_of("123456789") == std::string::npos;
}

namespace {

/// Whether two ends lie so far apart that rounding each inward by a last place cannot make them meet, told without
/// writing them out.
bool farApart(const Quantity& low, const Quantity& high, UnitSystem system)
{
    constexpr double kThreePlaces = 3, kLastWithDecimals = 999;
    const Unit &from = shownUnit(low, system), &to = shownUnit(high, system);
    if (&from != &to) return false;
    const double least = low.si() / from.toSi, most = high.si() / to.toSi;
    const bool withDecimals = std::fabs(least) < kLastWithDecimals && std::fabs(most) < kLastWithDecimals;
    const int places = withDecimals ? from.leastDecimals : std::min(from.leastDecimals, 0);
    return most - least > kThreePlaces * std::pow(10, -places);
}

}  // namespace

int finerFor(const Quantity& low, const Quantity& high, UnitSystem system)
{
    if (farApart(low, high, system)) return 0;
    constexpr int kMostMore = 3;
    for (int more = 0; more < kMostMore; ++more) {
        const Shown least = shownFiner(low, system, Rounding::Up, more),
                    most = shownFiner(high, system, Rounding::Down, more);
        const auto from = parseNumber(least.number), to = parseNumber(most.number);
        // Ends in two units are far apart.
        if (least.unit != most.unit || !from || !to || *from <= *to || low.si() > high.si()) return more;
    }
    return kMostMore;
}

std::pair<Shown, Shown> showRange(const Quantity& low, const Quantity& high, UnitSystem system)
{
    const int more = finerFor(low, high, system);
    return {shownFiner(low, system, Rounding::Up, more), shownFiner(high, system, Rounding::Down, more)};
}

std::string format(const Quantity& q, UnitSystem system, Rounding rounding) { return show(q, system, rounding).text(); }

}  // namespace taut
