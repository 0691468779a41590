// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/tag_identifiers.h"

#include <algorithm>
#include <array>

#include "core/units/unit.h"

namespace taut::inputs {

namespace {

using F = TagForm;
using G = TagGives;
constexpr TagSystem kAi = TagSystem::Application, kDi = TagSystem::Data;
constexpr Kind kLength = Kind::Length, kMass = Kind::Mass;
/// Data identifiers set no common limit; what is longer is no field of a label (policy).
constexpr std::size_t kLongest = 50;

constexpr std::array kRows{
    TagIdentifier{kAi, "00", "shipping unit", F::Checked, 18, 18, true},
    TagIdentifier{kAi, "01", "item", F::Checked, 14, 14, true, G::Item, {}, "", 1},
    TagIdentifier{kAi, "02", "item inside", F::Checked, 14, 14, true},
    TagIdentifier{kAi, "10", "lot", F::Free, 1, 20, false, G::Lot, {}, "", 2},
    TagIdentifier{kAi, "11", "made on", F::ShortDate, 6, 6, true},
    TagIdentifier{kAi, "13", "packed on", F::ShortDate, 6, 6, true},
    TagIdentifier{kAi, "15", "best before", F::ShortDate, 6, 6, true},
    TagIdentifier{kAi, "17", "use by", F::ShortDate, 6, 6, true},
    TagIdentifier{kAi, "20", "variant", F::Digits, 2, 2, true},
    TagIdentifier{kAi, "21", "serial number", F::Free, 1, 20, false, G::Serial, {}, "", 3},
    TagIdentifier{kAi, "30", "count", F::Count, 1, 8},
    TagIdentifier{kAi, "310n", "net mass", F::Measure, 6, 6, true, G::Mass, kMass, "kg"},
    TagIdentifier{kAi, "311n", "length", F::Measure, 6, 6, true, G::Length, kLength, "m"},
    TagIdentifier{kAi, "312n", "width", F::Measure, 6, 6, true, G::Width, kLength, "m"},
    TagIdentifier{kAi, "320n", "net mass", F::Measure, 6, 6, true, G::Mass, kMass, "lb"},
    TagIdentifier{kAi, "321n", "length", F::Measure, 6, 6, true, G::Length, kLength, "in"},
    TagIdentifier{kAi, "322n", "length", F::Measure, 6, 6, true, G::Length, kLength, "ft"},
    TagIdentifier{kAi, "323n", "length", F::Measure, 6, 6, true, G::Length, kLength, "yd"},
    TagIdentifier{kAi, "324n", "width", F::Measure, 6, 6, true, G::Width, kLength, "in"},
    TagIdentifier{kAi, "37", "count inside", F::Count, 1, 8},
    TagIdentifier{kAi, "8001", "slit width", F::Size, 4, 4, false, G::Width, kLength, "mm"},
    TagIdentifier{kAi, "8001", "length", F::Size, 5, 5, false, G::Length, kLength, "m"},
    TagIdentifier{kAi, "8001", "inside of the core", F::Size, 3, 3, false, G::Core, kLength, "mm"},
    TagIdentifier{kAi, "8001", "winding", F::Winding, 1, 1, false, G::Winding},
    TagIdentifier{kAi, "8001", "splices", F::Splices, 1, 1, false, G::Splices},
    TagIdentifier{kDi, "P", "customer's item", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "1P", "supplier's item", F::Printable, 1, kLongest, false, G::Item},
    TagIdentifier{kDi, "Q", "count", F::Count, 1, 9},
    TagIdentifier{kDi, "7Q", "quantity", F::WithUnit, 3, 14, false, G::Amount},
    TagIdentifier{kDi, "1T", "supplier's lot", F::Printable, 1, kLongest, false, G::Lot},
    TagIdentifier{kDi, "S", "serial number", F::Printable, 1, kLongest, false, G::Serial},
    TagIdentifier{kDi, "3S", "package", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "4S", "package", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "5S", "package", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "1J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "2J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "3J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "4J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "5J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "6J", "transport unit", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "K", "order", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "V", "supplier", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "H", "name of a party", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "1H", "employee", F::Printable, 1, kLongest},
    TagIdentifier{kDi, "6D", "date", F::LongDate, 11, 11},
    TagIdentifier{kDi, "14D", "use by", F::LongDate, 8, 8},
    TagIdentifier{kDi, "16D", "made on", F::LongDate, 8, 8},
};
constexpr std::array kOther{TagIdentifier{kDi, "", "not known here", F::Printable, 1, kLongest}};

/// Two letters of ANSI X12 element 355 behind a quantity (from memory); any other is left as text.
struct UnitCode {
    std::string_view code;
    Kind kind;
    const char* unit;
};
constexpr std::array kUnitCodes{
    UnitCode{"MR", kLength, "m"},     UnitCode{"LM", kLength, "m"},    UnitCode{"CM", kLength, "cm"},
    UnitCode{"MM", kLength, "mm"},    UnitCode{"FT", kLength, "ft"},   UnitCode{"LF", kLength, "ft"},
    UnitCode{"IN", kLength, "in"},    UnitCode{"YD", kLength, "yd"},   UnitCode{"KG", kMass, "kg"},
    UnitCode{"GR", kMass, "g"},       UnitCode{"LB", kMass, "lb"},     UnitCode{"OZ", kMass, "oz"},
    UnitCode{"EA", Kind::Count, "1"}, UnitCode{"PC", Kind::Count, "1"}};

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isCapital(char c) { return c >= 'A' && c <= 'Z'; }
bool isPrintable(char c) { return c >= ' ' && c <= '~'; }
/// The 82 characters of a free field of GS1.
bool isFree(char c)
{
    constexpr std::string_view kSigns = "!\"%&'()*+,-./:;<=>?_";
    return isDigit(c) || isCapital(c) || (c >= 'a' && c <= 'z') || kSigns.find(c) != std::string_view::npos;
}

int number(std::string_view digits)
{
    int out = 0;
    for (const char c : digits) out = out * 10 + (c - '0');
    return out;
}

/// From the right, weights 3 1 3 1 ...
char checkDigitOf(std::string_view body)
{
    int sum = 0, weight = 3;
    for (auto it = body.rbegin(); it != body.rend(); ++it, weight = 4 - weight) sum += weight * (*it - '0');
    return static_cast<char>('0' + (10 - sum % 10) % 10);
}

Quantity measure(double number, Kind kind, const char* unit)
{
    return {number * findUnit(kind, unit)->toSi, kind, unit};
}

int lastDayOf(int year, int month)
{
    constexpr std::array<int, 12> kDays{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return kDays[static_cast<std::size_t>(month - 1)] + (month == 2 && leap ? 1 : 0);
}

/// GS1 General Specifications, century of a date: what would lie 51 years ahead or more is past, what 50 years back or
/// more is to come.
int fullYear(int yy, int thisYear)
{
    const int apart = yy - thisYear % 100;
    return thisYear - thisYear % 100 + yy + (apart >= 51 ? -100 : apart <= -50 ? 100 : 0);
}

using Outcome = std::variant<TagValue, TagFault>;

/// `day` is where the day begins in the text; two figures of the month stand before it.
Outcome date(std::string_view text, std::size_t day, int year, bool wholeMonth, bool yearKnown)
{
    const int m = number(text.substr(day - 2, 2)), d = number(text.substr(day, 2));
    constexpr const char* kNoDate = "Character %1: field %2 of the tag is no date: \"%3\".";
    if (m < 1 || m > 12) return TagFault{"tag.bad_value", kNoDate, day - 2, {}};
    const int last = lastDayOf(year, m);
    if (d > last || (d == 0 && !wholeMonth)) return TagFault{"tag.bad_value", kNoDate, day, {}};
    if (!yearKnown) return TagValue{};
    return TagValue(TagDate{year, m, d == 0 ? last : d, d == 0});
}

Outcome shortDate(std::string_view text, const TagOptions& options)
{
    const int yy = number(text.substr(0, 2));
    // Of the years that two figures may mean, 2000 is the one with a leap day.
    return date(text, 4, options.year ? fullYear(yy, *options.year) : 2000 + yy, true, options.year.has_value());
}

Outcome withUnit(std::string_view text)
{
    constexpr const char* kNone =
        "Character %1: field %2 of the tag should be a number and two letters of its unit: \"%3\".";
    const std::string_view code = text.substr(text.size() - 2), figures = text.substr(0, text.size() - 2);
    double value = 0, step = 1;
    bool behindPoint = false;
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (figures[i] == '.' && !behindPoint && i > 0 && i + 1 < figures.size()) {
            behindPoint = true;
            continue;
        }
        if (!isDigit(figures[i])) return TagFault{"tag.bad_value", kNone, i, {}};
        value = value * 10 + (figures[i] - '0');
        if (behindPoint) step *= 10;
    }
    for (std::size_t i = 0; i < 2; ++i)
        if (!isCapital(code[i]) && !isDigit(code[i])) return TagFault{"tag.bad_value", kNone, figures.size() + i, {}};
    for (const UnitCode& known : kUnitCodes)
        if (known.code == code) return TagValue(measure(value / step, known.kind, known.unit));
    return TagValue{};
}

Outcome measured(const TagIdentifier& row, std::string_view id, std::string_view text)
{
    double value = number(text);
    if (row.form == F::Size && value == 0)
        return TagFault{"tag.bad_value",
                        "Character %1: field %2 of the tag does not describe a roll: \"%3\" cannot be nought.",
                        0,
                        {}};
    if (row.id.back() == 'n')
        for (char n = id.back(); n > '0'; --n) value /= 10;
    return TagValue(measure(value, row.kind, row.unit));
}

}  // namespace

std::span<const TagIdentifier> identifierAt(TagSystem system, std::string_view text)
{
    const auto stands = [&](const TagIdentifier& row) {
        if (row.system != system || text.size() < row.id.size()) return false;
        const bool decimals = system == kAi && row.id.back() == 'n';
        const std::size_t fixed = row.id.size() - (decimals ? 1 : 0);
        return text.substr(0, fixed) == row.id.substr(0, fixed) &&
               (!decimals || (text[fixed] >= '0' && text[fixed] <= '5'));
    };
    const auto first = std::find_if(kRows.begin(), kRows.end(), stands);
    const auto last =
        std::find_if(first, kRows.end(), [&](const TagIdentifier& row) { return row.id != first->id || !stands(row); });
    return {first, last};
}

std::size_t dataIdentifierSize(std::string_view text)
{
    std::size_t digits = 0;
    while (digits < 3 && digits < text.size() && isDigit(text[digits])) ++digits;
    return digits < text.size() && isCapital(text[digits]) ? digits + 1 : 0;
}

std::span<const TagIdentifier> otherDataIdentifier() { return kOther; }

Outcome tagValue(const TagIdentifier& row, std::string_view id, std::string_view text, const TagOptions& options)
{
    const bool words = row.form == F::Free || row.form == F::Printable;
    const auto may = row.form == F::Free ? isFree : words || row.form == F::WithUnit ? isPrintable : isDigit;
    const std::size_t figures = row.form == F::LongDate ? std::min<std::size_t>(text.size(), 8) : text.size();
    const auto odd = std::find_if_not(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(figures), may);
    const std::size_t at = static_cast<std::size_t>(odd - text.begin());
    if (at < figures)
        return TagFault{"tag.bad_value",
                        words ? "Character %1: field %2 of the tag has a sign that cannot be there: \"%3\"."
                              : "Character %1: field %2 of the tag should be figures: \"%3\".",
                        at,
                        {}};
    switch (row.form) {
    case F::Checked: {
        const char wanted = checkDigitOf(text.substr(0, text.size() - 1));
        if (text.back() == wanted) return TagValue{};
        return TagFault{"tag.check_digit",
                        "Character %1: the check digit of field %2 is %4, and \"%3\" needs %5. A figure was read "
                        "wrongly.",
                        text.size() - 1, std::string(1, text.back()), std::string(1, wanted)};
    }
    case F::Digits:
    case F::Free:
    case F::Printable: return TagValue{};
    case F::Count: return TagValue(Quantity(number(text), Kind::Count, "1"));
    case F::Measure:
    case F::Size: return measured(row, id, text);
    case F::ShortDate: return shortDate(text, options);
    case F::LongDate: {
        const auto behind =
            std::find_if_not(text.begin() + 8, text.end(), [](char c) { return isDigit(c) || isCapital(c); });
        if (behind != text.end())
            return TagFault{"tag.bad_value",
                            "Character %1: field %2 of the tag is no date: \"%3\".",
                            static_cast<std::size_t>(behind - text.begin()),
                            {}};
        return date(text, 6, number(text.substr(0, 4)), false, true);
    }
    case F::Winding:
        if (text == "0") return TagValue(Text("face out"));
        if (text == "1") return TagValue(Text("face in"));
        if (text == "9") return TagValue(Text("not known"));
        return TagFault{"tag.bad_value",
                        "Character %1: field %2 of the tag does not describe a roll: a winding \"%3\" there is not, "
                        "only 0 (face out), 1 (face in) and 9 (not known).",
                        0,
                        {}};
    case F::Splices:
        if (text == "9") return TagValue(Text("not known"));
        return TagValue(Quantity(number(text), Kind::Count, "1"));
    case F::WithUnit: return withUnit(text);
    }
    return TagValue{};
}

}  // namespace taut::inputs
