// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/roll_tag.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/base/utf8.h"
#include "core/units/number_text.h"

namespace taut::inputs {

namespace {

constexpr char kGs = '\x1d';
constexpr const char* kScanAgain = "Scan it again. If it stays so, type in what the tag says in plain figures.";

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool allDigits(std::string_view s) { return std::all_of(s.begin(), s.end(), isDigit); }
int number(std::string_view digits)
{
    int out = 0;
    for (const char c : digits) out = out * 10 + (c - '0');
    return out;
}

/// What stands at the front, as a message may carry it: whole characters, up to so many bytes.
std::string firstSigns(std::string_view text, std::size_t most)
{
    std::size_t end = 0;
    while (end < text.size()) {
        const std::size_t step = std::max<std::size_t>(utf8Step(text.substr(end)), 1);
        if (end + step > most) break;
        end += step;
    }
    return quoted(text.substr(0, end));
}

/// The 82 characters of a free field.
bool isFreeText(std::string_view s)
{
    constexpr std::string_view kSigns = "!\"%&'()*+,-./:;<=>?_";
    return std::all_of(s.begin(), s.end(), [&](char c) {
        return isDigit(c) || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
               kSigns.find(c) != std::string_view::npos;
    });
}

/// From the right, weights 3 1 3 1 ..., then the check digit.
bool checkDigitHolds(std::string_view digits)
{
    int sum = 0, weight = 1;
    for (auto it = digits.rbegin(); it != digits.rend(); ++it, weight = 4 - weight) sum += weight * (*it - '0');
    return sum % 10 == 0;
}

enum class Form : std::uint8_t { Checked, Date, Digits, Free, RollProduct, Count };
struct Field {
    std::string_view ai;  ///< 'n' stands for the number of decimals
    Form form;
    std::size_t size;  ///< exact, or the most when it is free or a count
    bool predefined;   ///< no separator needed after it
};
constexpr std::array<Field, 16> kFields{{{"00", Form::Checked, 18, true},
                                         {"01", Form::Checked, 14, true},
                                         {"02", Form::Checked, 14, true},
                                         {"10", Form::Free, 20, false},
                                         {"11", Form::Date, 6, true},
                                         {"13", Form::Date, 6, true},
                                         {"15", Form::Date, 6, true},
                                         {"17", Form::Date, 6, true},
                                         {"20", Form::Digits, 2, true},
                                         {"21", Form::Free, 20, false},
                                         {"30", Form::Count, 8, false},
                                         {"37", Form::Count, 8, false},
                                         {"310n", Form::Digits, 6, true},
                                         {"311n", Form::Digits, 6, true},
                                         {"312n", Form::Digits, 6, true},
                                         {"8001", Form::RollProduct, 14, false}}};

const Field* fieldAt(std::string_view rest)
{
    for (const Field& field : kFields) {
        if (rest.size() < field.ai.size()) continue;
        const bool decimals = field.ai.back() == 'n';
        const std::size_t fixed = field.ai.size() - (decimals ? 1 : 0);
        if (rest.substr(0, fixed) == field.ai.substr(0, fixed) &&
            (!decimals || (rest[fixed] >= '0' && rest[fixed] <= '5')))
            return &field;
    }
    return nullptr;
}

Finding broken(const char* code, Text text) { return refuse(code, "roll.tag", std::move(text), kScanAgain); }

bool isDate(std::string_view yymmdd)
{
    constexpr std::array<int, 12> kDays{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const int month = number(yymmdd.substr(2, 2)), day = number(yymmdd.substr(4, 2));
    return month >= 1 && month <= 12 && day <= kDays[static_cast<std::size_t>(month - 1)];
}

/// Width (mm), length (m), core (mm), winding, splices in 4 5 3 1 1 digits.
bool isRollProduct(std::string_view v)
{
    return number(v.substr(0, 4)) > 0 && number(v.substr(4, 5)) > 0 && number(v.substr(9, 3)) > 0 &&
           (v[12] == '0' || v[12] == '1' || v[12] == '9');
}

std::optional<Finding> wrong(const Field& field, const std::string& ai, std::string_view value)
{
    const auto says = [&](const char* code, const char* what) { return broken(code, {what, {ai, quoted(value)}}); };
    const bool free = field.form == Form::Free || field.form == Form::Count;
    if (free ? value.empty() : value.size() < field.size)
        return says("tag.too_short", "Field %1 of the tag is cut off: \"%2\".");
    if (value.size() > field.size) return says("tag.bad_value", "Field %1 of the tag is too long: \"%2\".");
    if (field.form == Form::Free)
        return isFreeText(value) ? std::nullopt
                                 : std::optional(says("tag.bad_value",
                                                      "Field %1 of the tag has a sign that cannot be there: \"%2\"."));
    if (!allDigits(value)) return says("tag.bad_value", "Field %1 of the tag should be figures: \"%2\".");
    if (field.form == Form::Checked && !checkDigitHolds(value))
        return says("tag.check_digit", "The check digit of field %1 does not fit: \"%2\". A figure was read wrongly.");
    if (field.form == Form::Date && !isDate(value))
        return says("tag.bad_value", "Field %1 of the tag is no date: \"%2\".");
    if (field.form == Form::RollProduct && !isRollProduct(value))
        return says("tag.bad_value", "Field %1 of the tag does not describe a roll: \"%2\".");
    return std::nullopt;
}

using Fields = std::map<std::string, std::string>;

Result<Fields> split(std::string_view rest)
{
    Fields out;
    while (!rest.empty()) {
        if (rest.front() == kGs) {
            rest.remove_prefix(1);
            continue;
        }
        const Field* field = fieldAt(rest);
        if (field == nullptr)
            return broken("tag.unknown_field",
                          {"The tag has a field that is not known: \"%1\".", {firstSigns(rest, 4)}});
        const std::string ai(rest.substr(0, field->ai.size()));
        rest.remove_prefix(field->ai.size());
        const std::size_t end = std::min(rest.find(kGs), rest.size());
        const bool exact = field->form != Form::Free && field->form != Form::Count;
        const std::string value(rest.substr(0, exact ? std::min(field->size, end) : end));
        if (const std::optional<Finding> why = wrong(*field, ai, value)) return *why;
        rest.remove_prefix(value.size());
        if (!field->predefined && !rest.empty() && rest.front() != kGs)
            return broken("tag.separator_missing", {"The separator after field %1 of the tag is missing.", {ai}});
        if (!out.emplace(ai, value).second && out[ai] != value)
            return broken("tag.fields_disagree", {"Field %1 stands on the tag twice and says two things.", {ai}});
    }
    return out;
}

Maybe<Kind::Length> length(int n, double scale, const char* unit)
{
    return Entry<Kind::Length>(Length::si(n * scale), unit);
}

/// 311n and the like: the last figure of the identifier says how many decimals.
std::optional<double> decimal(const Fields& fields, std::string_view ai)
{
    for (const auto& [key, value] : fields) {
        if (key.size() != 4 || key.substr(0, 3) != ai) continue;
        double out = number(value);
        for (char n = key[3]; n > '0'; --n) out /= 10;
        return out;
    }
    return std::nullopt;
}

}  // namespace

Result<RollTag> readRollTag(std::string_view scanned)
{
    if (!scanned.empty() && scanned.front() == ']') {
        const std::string_view prefix = scanned.substr(0, 3);
        if (prefix != "]C1" && prefix != "]e0" && prefix != "]d2" && prefix != "]Q3")
            return broken("tag.not_gs1",
                          {"The scanner says that this is another kind of code: \"%1\".", {firstSigns(prefix, 3)}});
        scanned.remove_prefix(3);
    }
    const Result<Fields> fields = split(scanned);
    if (!fields) return fields.error();
    if (fields->empty()) return broken("tag.empty", "Nothing stands on the tag.");
    const auto has = [&](const char* ai) { return fields->count(ai) == 1; };
    if (has("01") && (has("02") || has("37")))
        return broken("tag.fields_disagree", "The tag names one item and the content of a pallet at once.");
    if (has("8001") && !has("01"))
        return broken("tag.fields_disagree", "The tag describes a roll without saying of which item.");

    RollTag tag;
    const auto textOf = [&](const char* ai) { return has(ai) ? fields->at(ai) : std::string(); };
    tag.item = textOf("01");
    tag.lot = textOf("10");
    tag.serial = textOf("21");
    if (const auto metres = decimal(*fields, "311")) tag.length = Entry<Kind::Length>(Length::si(*metres), "m");
    if (const auto metres = decimal(*fields, "312")) tag.width = Entry<Kind::Length>(Length::si(*metres), "mm");
    if (const auto kilograms = decimal(*fields, "310")) tag.mass = Entry<Kind::Mass>(Mass::si(*kilograms), "kg");
    if (has("8001")) {
        const std::string& v = fields->at("8001");
        tag.width = length(number(v.substr(0, 4)), 1e-3, "mm");
        tag.length = length(number(v.substr(4, 5)), 1, "m");
        tag.core = length(number(v.substr(9, 3)), 1e-3, "mm");
        if (v[12] != '9') tag.winding = v[12] == '0' ? Winding::FaceOut : Winding::FaceIn;
        if (v[13] != '9') tag.splices = v[13] - '0';
    }
    return tag;
}

}  // namespace taut::inputs
