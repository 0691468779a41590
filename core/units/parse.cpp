// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/parse.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/units/number_text.h"
#include "core/units/unit.h"
#include "core/units/unit_hint.h"

namespace taut {

namespace {

constexpr long double kInch = 0.0254L;
constexpr long double kPound = 0.45359237L;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string withoutSpaces(std::string_view text)
{
    std::string out(text);
    out.erase(std::remove(out.begin(), out.end(), ' '), out.end());
    return out;
}

/// A unit as our table writes it: no space beside a slash, a space for a multiplication dot, words for signs.
std::string unitWriting(std::string_view typed)
{
    if (typed == "\"") return "in";
    if (typed == "'") return "ft";
    if (typed == "°") return "deg";
    std::string out;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        constexpr std::string_view kDot = "·";
        constexpr std::string_view kDotOperator = "⋅";
        const std::string_view rest = typed.substr(i);
        if (rest.substr(0, kDot.size()) == kDot || rest.substr(0, kDotOperator.size()) == kDotOperator) {
            i += (rest.substr(0, kDot.size()) == kDot ? kDot.size() : kDotOperator.size()) - 1;
            out += ' ';
        } else if (!(typed[i] == ' ' && (rest.substr(1, 1) == "/" || (!out.empty() && out.back() == '/')))) {
            out += typed[i];
        }
    }
    return out;
}

/// "Nm" is as good as "N m"; "in 2" is not "in2".
bool names(std::string_view written, const Unit& unit)
{
    return unit.symbol == written ||
           (written.find(' ') == std::string_view::npos && withoutSpaces(unit.symbol) == written);
}

const Unit* unitNamed(std::span<const Unit> units, std::string_view written)
{
    const auto it = std::find_if(units.begin(), units.end(), [&](const Unit& u) { return names(written, u); });
    return it == units.end() ? nullptr : &*it;
}

/// What is wanted, as an argument that is said in the reader's language.
std::vector<Text> said(Kind kind) { return {kindName(kind)}; }

Text inOneOf(Kind kind) { return {"Write it in one of: %1.", {unitList(kind)}}; }

Finding wrongKind(std::string_view text, Kind found, Kind expected, std::string_view written)
{
    return refuse("quantity.wrong_kind", {},
                  {"\"%1\" is %2; %3 is wanted: %4.", {quoted(text), said(found), said(expected), unitList(expected)}},
                  nearUnit(written, expected, Written::OtherKind).value_or("Write it in one of these units."));
}

Finding noUnit(std::string_view text, Kind expected)
{
    return refuse("quantity.no_unit", {}, {"\"%1\" has no unit; %2 is wanted.", {quoted(text), said(expected)}},
                  inOneOf(expected));
}

/// Lengths in feet and inches, and basis weights with their sheet: a number, a word, and more numbers.
struct Compound {
    long double si;
    Kind kind;
    const char* unit;
};

std::string_view afterWord(std::string_view text, std::string_view word)
{
    text.remove_prefix(word.size());
    if (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    return text;
}

/// "5 ft 3 1/4 in" and 5' 3"
std::optional<Result<Compound>> feetAndInches(const NumberRead& feet, std::string_view whole)
{
    const std::string_view word = feet.rest.substr(0, 1) == "'" ? "'" : "ft";
    if (feet.rest.substr(0, word.size()) != word) return std::nullopt;
    const std::string_view after = afterWord(feet.rest, word);
    if (after.empty() || !isDigit(after.front())) return std::nullopt;
    const Finding slip =
        refuse("quantity.not_a_number", {}, {"\"%1\" is not a length in feet and inches.", {quoted(whole)}},
               "Write it like 5 ft 3 1/4 in: whole feet, and fewer than 12 inches.");
    const Result<NumberRead> inches = readNumber(after);
    if (!inches) return Result<Compound>(inches.error());
    if (!feet.whole || inches->value >= 12 || (inches->rest != "in" && inches->rest != "\""))
        return Result<Compound>(slip);
    const long double size = (std::fabs(feet.value) * 12 + inches->value) * kInch;
    return Result<Compound>(Compound{feet.negative ? -size : size, Kind::Length, "ft"});
}

/// "60 lb 25x38 in": 500 sheets of that size weigh so much (TAPPI T 410, ISO 536 for the conversion).
std::optional<Result<Compound>> basisWeight(const NumberRead& pounds)
{
    if (pounds.rest.substr(0, 3) != "lb ") return std::nullopt;
    const Result<NumberRead> across = readNumber(afterWord(pounds.rest, "lb"));
    if (!across || across->rest.substr(0, 1) != "x") return std::nullopt;
    const Result<NumberRead> along = readNumber(afterWord(across->rest, "x"));
    if (!along || along->rest != "in") return std::nullopt;
    if (!(across->value > 0 && along->value > 0))
        return Result<Compound>(refuse("quantity.not_a_number", {}, "A sheet of no size has no basis weight.",
                                       "Write it like 60 lb 25x38 in."));
    constexpr long double kSheets = 500;
    const long double sheet = across->value * along->value * kInch * kInch;
    return Result<Compound>(Compound{pounds.value * kPound / (kSheets * sheet), Kind::Grammage, ""});
}

Result<Quantity> finite(long double exact, Kind kind, std::string_view unit, std::string_view entered)
{
    const auto si = static_cast<double>(exact);
    if (!std::isfinite(si))
        return refuse("quantity.not_finite", {}, {"\"%1\" is too large to compute with.", {quoted(entered)}},
                      "Check the number and its unit.");
    return Quantity(si, kind, std::string(unit), std::string(entered));
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view kBlank = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(kBlank);
    if (begin == std::string_view::npos) return {};
    return text.substr(begin, text.find_last_not_of(kBlank) - begin + 1);
}

/// Nothing that a person types into a field is longer.
constexpr std::size_t kLongest = 200;

/// How a value of this kind is written: "Write a number and its unit, like 12 s."
Text wayToWrite(Kind kind)
{
    const auto like = [kind](UnitSystem system) { return "12 " + std::string(usualUnit(kind, system, 0).symbol); };
    const std::string metric = like(UnitSystem::Metric), us = like(UnitSystem::Us);
    if (kind == Kind::Count) return "Write a number.";
    if (metric == us) return {"Write a number and its unit, like %1.", {metric}};
    return {"Write a number and its unit, like %1 or %2.", {metric, us}};
}

/// kind: of a quantity; none of a number alone.
Result<std::string> plainOrWhyNot(std::string_view typed, Kind kind = Kind::Count)
{
    if (typed.size() > kLongest)
        return refuse("quantity.not_a_number", {}, {"\"%1\" is too long to be a value.", {quoted(typed)}},
                      wayToWrite(kind));
    std::string plain = plainTyped(typed);
    if (plain.empty()) return refuse("quantity.empty", {}, "Nothing was entered.", wayToWrite(kind));
    return plain;
}

}  // namespace

Result<Quantity> parseQuantity(std::string_view text, Kind expected, Bare bare)
{
    const std::string_view typed = trimmed(text);
    const Result<std::string> plain = plainOrWhyNot(typed, expected);
    if (!plain) return plain.error();
    const Result<NumberRead> number = readNumber(*plain);
    if (!number) return number.error();

    if (number->rest.empty()) {
        const bool may = bare == Bare::Accept && (expected == Kind::Count || expected == Kind::Share);
        if (!may) return noUnit(typed, expected);
        return finite(number->value, expected, siUnit(expected).symbol, typed);
    }
    auto compound = feetAndInches(*number, *plain);
    if (!compound) compound = basisWeight(*number);
    if (compound) {
        if (!*compound) return compound->error();
        const Compound& found = **compound;
        if (found.kind != expected) return wrongKind(typed, found.kind, expected, {});
        return finite(found.si, found.kind, found.unit, typed);
    }
    const std::string written = unitWriting(number->rest);
    if (const Unit* unit = unitNamed(unitsOf(expected), written))
        return finite(toSi(number->value, *unit), expected, unit->symbol, typed);
    if (const Unit* other = unitNamed(allUnits(), written)) return wrongKind(typed, other->kind, expected, written);
    return refuse("quantity.unknown_unit", {},
                  {"\"%1\" in \"%2\" is not a unit that is read here; %3 is wanted.",
                   {quoted(number->rest), quoted(typed), said(expected)}},
                  nearUnit(written, expected, Written::NoUnit).value_or(inOneOf(expected)));
}

Result<double> parseNumber(std::string_view text)
{
    const std::string_view typed = trimmed(text);
    const Result<std::string> plain = plainOrWhyNot(typed);
    if (!plain) return plain.error();
    const Result<NumberRead> number = readNumber(*plain);
    if (!number) return number.error();
    if (!number->rest.empty())
        return refuse("quantity.not_a_number", {}, {"\"%1\" is more than a number.", {quoted(typed)}},
                      "Write the number alone, without a unit.");
    return static_cast<double>(number->value);
}

}  // namespace taut
