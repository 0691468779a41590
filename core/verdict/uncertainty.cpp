// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/units/format.h"
#include "core/units/number_text.h"
#include "core/units/unit.h"
#include "core/verdict/verdict.h"

namespace taut::verdict {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

/// The whole number at the front; 0 when there is none.
double digitsOf(std::string_view text)
{
    double value = 0;
    for (const char c : text) {
        if (!isDigit(c)) break;
        value = value * 10 + (c - '0');
    }
    return value;
}

/// What the last digit of a number stands for: 0.01 of "1.25" and "1,25", 1/4 of "13 1/4", 1 of "7", 1e-4 of "2.5e-3".
double lastDigitOf(std::string_view number)
{
    if (const std::size_t slash = number.find('/'); slash != std::string_view::npos) {
        const double parts = digitsOf(number.substr(slash + 1));
        return parts > 0 ? 1 / parts : 0;
    }
    double power = 0;
    const std::size_t e = number.find_first_of("eE");
    if (e != std::string_view::npos) {
        const std::string_view exponent = number.substr(e + 1);
        const bool negative = exponent.substr(0, 1) == "-";
        const double size = digitsOf(exponent.substr(!exponent.empty() && !isDigit(exponent.front()) ? 1 : 0));
        power = negative ? -size : size;
        number = number.substr(0, e);
    }
    if (const std::size_t mark = number.find_first_of(".,"); mark != std::string_view::npos)
        power -= static_cast<double>(
            std::count_if(number.begin() + static_cast<std::ptrdiff_t>(mark), number.end(), isDigit));
    return std::pow(10.0, power);
}

/// The last digit typed, in SI; 0 when the text says nothing of it.
double lastDigitSi(const Quantity& reading)
{
    const std::string plain = plainTyped(reading.entered());
    const auto number = readNumber(plain);
    if (!number) return 0;
    const auto typedOf = [](std::string_view from, std::string_view rest) {
        return from.substr(0, from.size() - rest.size());
    };
    // Feet and inches: the inches are what was read last.
    const std::string_view rest = number->rest;
    const std::size_t word = rest.substr(0, 1) == "'" ? 1 : rest.substr(0, 2) == "ft" ? 2 : 0;
    if (reading.kind() == Kind::Length && word > 0) {
        std::string_view after = rest.substr(word);
        if (after.substr(0, 1) == " ") after.remove_prefix(1);
        if (const auto inches = readNumber(after)) return lastDigitOf(typedOf(after, inches->rest)) * 0.0254;
    }
    const double last = lastDigitOf(typedOf(plain, rest));
    if (const Unit* unit = findUnit(reading.kind(), mannerOf(reading.unit()).symbol)) return toSi(last, *unit);
    const auto value = static_cast<double>(number->value);
    return value == 0 ? 0 : last * std::fabs(reading.si() / value);
}

}  // namespace

double uncertaintyOf(const Quantity& reading, const std::optional<Quantity>& instrument)
{
    if (instrument) return std::fabs(instrument->si());
    // Somebody counted: three wraps are three wraps.
    if (reading.entered().empty() || reading.kind() == Kind::Count) return 0;
    return 2 * lastDigitSi(reading) / std::sqrt(12.0);
}

}  // namespace taut::verdict
