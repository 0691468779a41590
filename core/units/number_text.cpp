// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <system_error>
#include <utility>

#include "core/base/utf8.h"

namespace taut {

namespace {

constexpr auto kWritings = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"\t", " "},        {"\u00A0", " "},    {"\u2007", " "},    {"\u2009", " "},    {"\u200A", " "},
    {"\u202F", " "},    {"\u2002", " "},    {"\u2003", " "},    {"\u2212", "-"},    {"\u2013", "-"},
    {"\u2010", "-"},    {"\u2011", "-"},    {"\u2019", "'"},    {"\u2032", "'"},    {"\u201D", "\""},
    {"\u2033", "\""},   {"\u2044", "/"},    {"\u00B5", "u"},    {"\u03BC", "u"},    {"\u00B2", "2"},
    {"\u00B3", "3"},    {"\u00BD", " 1/2"}, {"\u00BC", " 1/4"}, {"\u00BE", " 3/4"}, {"\u215B", " 1/8"},
    {"\u215C", " 3/8"}, {"\u215D", " 5/8"}, {"\u215E", " 7/8"},
});

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isMark(char c) { return c == '.' || c == ','; }

char charAt(std::string_view text, std::size_t i) { return i < text.size() ? text[i] : '\0'; }

std::size_t endOfDigits(std::string_view text, std::size_t i)
{
    while (isDigit(charAt(text, i))) ++i;
    return i;
}

/// True when a space or an apostrophe at i parts thousands: just three digits follow, and they do not begin a fraction.
bool partsThousands(std::string_view text, std::size_t i)
{
    if (text[i] != ' ' && text[i] != '\'') return false;
    const std::size_t end = endOfDigits(text, i + 1);
    return end == i + 4 && !(charAt(text, end) == '/' && isDigit(charAt(text, end + 1)));
}

/// "12,500" may be twelve and a half or twelve thousand and more: which, no shop can tell another. "0,500" is half, and
/// a point before three digits is how inches are written.
bool partsOneThousand(std::string_view figures)
{
    const std::size_t comma = figures.find(',');
    return comma != std::string_view::npos && comma >= 1 && comma <= 3 && figures.size() == comma + 4 &&
           figures.front() != '0' && figures.find_first_not_of("0123456789", comma + 1) == std::string_view::npos &&
           figures.find_first_not_of("0123456789") == comma;
}

/// One past the digits, decimal marks and group separators at i.
std::size_t endOfFigures(std::string_view text, std::size_t i)
{
    const std::size_t begin = i;
    while (i < text.size() &&
           (isDigit(text[i]) || isMark(text[i]) || (i > begin && isDigit(text[i - 1]) && partsThousands(text, i))))
        ++i;
    return i;
}

Finding notANumber(std::string_view text)
{
    return refuse("quantity.not_a_number", {},
                  {"\"%1\" does not begin with a number that can be read.", {quoted(text)}},
                  "Write it like 13.25, 13,25 or 13 1/4.");
}

/// The figures with a decimal point at one place and every other separator left out.
std::string withPointAt(std::string_view figures, std::size_t point)
{
    std::string out;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (isDigit(figures[i]))
            out += figures[i];
        else if (i == point)
            out += '.';
    }
    return out;
}

Finding groupSeparator(std::string_view whole, std::string_view sign, std::string_view figures, std::string_view after)
{
    const auto notDigit = [](char c) { return !isDigit(c); };
    const auto first =
        static_cast<std::size_t>(std::find_if(figures.begin(), figures.end(), notDigit) - figures.begin());
    const std::size_t last = figures.find_last_not_of("0123456789");
    const bool lastIsPoint = isMark(figures[last]) && figures[last] != figures[first];
    const auto with = [&](std::size_t point) {
        return quoted(std::string(sign) + withPointAt(figures, point) + std::string(after));
    };
    const std::string large = with(lastIsPoint ? last : std::string_view::npos);
    const std::string small = with(first);
    return refuse("quantity.group_separator", {},
                  {"\"%1\" can be read in two ways: as %2 or as %3.", {quoted(whole), large, small}},
                  {"Write %1 or %2: one decimal mark at most, and nothing between thousands.", {large, small}});
}

/// Digits with at most one decimal mark and an exponent, in either style, kept beyond the last bit of a double.
Result<long double> decimalValue(std::string figures, std::string_view whole)
{
    std::replace(figures.begin(), figures.end(), ',', '.');
    long double value = 0;
    const auto read = std::from_chars(figures.data(), figures.data() + figures.size(), value);
    const bool lost = value != 0 && static_cast<double>(value) == 0;
    if (read.ec == std::errc::result_out_of_range || lost || !std::isfinite(static_cast<double>(value)))
        return refuse("quantity.not_finite", {}, {"The number in \"%1\" is too large or too small.", {quoted(whole)}},
                      "Check the exponent.");
    if (read.ec != std::errc{} || read.ptr != figures.data() + figures.size()) return notANumber(whole);
    return value;
}

constexpr std::size_t kMostFractionDigits = 9;  // exact in a double, products too

long double wholeValue(std::string_view digits)
{
    long double n = 0;
    for (const char c : digits) n = n * 10 + (c - '0');
    return n;
}

/// "1/4" or " 1/4" or "-1/4" at `at`; `whole` stands before it, or is empty.
struct Fraction {
    long double numerator;
    long double denominator;
    std::size_t end;
    bool good;
};
std::optional<Fraction> fractionAt(std::string_view text, std::size_t at)
{
    const std::size_t slash = endOfDigits(text, at);
    if (slash == at || charAt(text, slash) != '/' || !isDigit(charAt(text, slash + 1))) return std::nullopt;
    const std::size_t end = endOfDigits(text, slash + 1);
    const std::string_view above = text.substr(at, slash - at);
    const std::string_view below = text.substr(slash + 1, end - slash - 1);
    Fraction f{wholeValue(above), wholeValue(below), end, true};
    const char next = charAt(text, end);
    f.good = above.size() <= kMostFractionDigits && below.size() <= kMostFractionDigits && f.denominator != 0 &&
             !isMark(next) && next != '/';
    return f;
}

}  // namespace

std::string plainTyped(std::string_view text)
{
    const std::string clean = cleanUtf8(text);
    std::string plain;
    for (std::size_t i = 0; i < clean.size();) {
        const std::string_view here = std::string_view(clean).substr(i, utf8Step(std::string_view(clean).substr(i)));
        const auto it =
            std::find_if(kWritings.begin(), kWritings.end(), [&](const auto& w) { return w.first == here; });
        for (const char c : it == kWritings.end() ? here : it->second)
            if (c != ' ' || (!plain.empty() && plain.back() != ' ')) plain += c;
        i += here.size();
    }
    if (!plain.empty() && plain.back() == ' ') plain.pop_back();
    return plain;
}

std::string quoted(std::string_view text)
{
    constexpr std::size_t kMost = 60;
    std::string clean = cleanUtf8(text);
    if (clean.size() <= kMost) return clean;
    std::size_t end = kMost;
    while ((static_cast<unsigned char>(clean[end]) & 0xC0U) == 0x80U) --end;
    return clean.substr(0, end) + "…";
}

Result<NumberRead> readNumber(std::string_view plain)
{
    NumberRead read;
    std::size_t begin = 0;
    if (const char sign = charAt(plain, 0); sign == '-' || sign == '+') {
        read.negative = sign == '-';
        begin = charAt(plain, 1) == ' ' ? 2 : 1;
    }
    const std::string_view sign = read.negative ? "-" : "";
    std::size_t end = endOfFigures(plain, begin);
    const std::string_view figures = plain.substr(begin, end - begin);
    const auto separators = std::count_if(figures.begin(), figures.end(), [](char c) { return !isDigit(c); });
    if (static_cast<std::size_t>(separators) == figures.size()) return notANumber(plain);
    if (separators > 1 || (separators == 1 && figures.find_first_of(" '") != std::string_view::npos)) {
        // "1..2", ",1.2" and "1.2," are slips, not groups
        for (std::size_t i = 0; i < figures.size(); ++i)
            if (!isDigit(figures[i]) && (i == 0 || !isDigit(figures[i - 1]) || !isDigit(charAt(figures, i + 1))))
                return notANumber(plain);
        return groupSeparator(plain, sign, figures, plain.substr(end));
    }

    const bool exponent = charAt(plain, end) == 'e' || charAt(plain, end) == 'E';
    if (!exponent && partsOneThousand(figures)) return groupSeparator(plain, sign, figures, plain.substr(end));

    read.whole = separators == 0;
    std::optional<Fraction> fraction;
    bool mixed = false;
    if (read.whole) {
        fraction = fractionAt(plain, begin);
        mixed = !fraction && (charAt(plain, end) == ' ' || charAt(plain, end) == '-');
        if (mixed) fraction = fractionAt(plain, end + 1);
    }
    if (fraction) {
        const bool proper = !mixed || fraction->numerator < fraction->denominator;
        if (!fraction->good || !proper || figures.size() > kMostFractionDigits) return notANumber(plain);
        const long double before = mixed ? wholeValue(figures) * fraction->denominator : 0;
        read.value = (before + fraction->numerator) / fraction->denominator;
        read.whole = false;
        end = fraction->end;
    } else {
        if (charAt(plain, end) == 'e' || charAt(plain, end) == 'E') {
            const char next = charAt(plain, end + 1);
            const std::size_t digits = end + (next == '-' || next == '+' ? 2 : 1);
            if (isDigit(charAt(plain, digits))) {
                end = endOfDigits(plain, digits);
                read.whole = false;
            }
        }
        const Result<long double> value = decimalValue(std::string(plain.substr(begin, end - begin)), plain);
        if (!value) return value.error();
        read.value = *value;
    }
    if (read.negative) read.value = -read.value;
    if (charAt(plain, end) == ' ') ++end;
    read.rest = plain.substr(end);
    return read;
}

}  // namespace taut
