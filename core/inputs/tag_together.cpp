// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/inputs/tag_text.h"

// What the fields of a tag say together: which need and which exclude each other, and what may not be said twice.
namespace taut::inputs {

namespace {

/// GS1 General Specifications, association of element strings: an identifier needs one of a list, separated by blanks.
struct Need {
    std::string_view id, one;
    bool refuses = false;  ///< else it is noted: the other field may stand in another bar code of the same label
};
constexpr std::array kNeeds{
    Need{"8001", "01", true}, Need{"02", "37"},      Need{"37", "00"},      Need{"37", "02"},
    Need{"10", "01 02"},      Need{"11", "01 02"},   Need{"13", "01 02"},   Need{"15", "01 02"},
    Need{"17", "01 02"},      Need{"20", "01 02"},   Need{"21", "01"},      Need{"30", "01 02"},
    Need{"310n", "01 02"},    Need{"311n", "01 02"}, Need{"312n", "01 02"}, Need{"320n", "01 02"},
    Need{"321n", "01 02"},    Need{"322n", "01 02"}, Need{"323n", "01 02"}, Need{"324n", "01 02"}};

/// How far fields that tell the same of a roll may lie apart: what their roundings make. One metre between lengths and
/// a millimetre between widths, since 8001 tells both in whole ones; of a mass half a hundredth (policy).
struct Apart {
    TagGives gives;
    double si, share;
};
constexpr std::array kApart{Apart{TagGives::Length, 1, 0}, Apart{TagGives::Width, 0.001, 0},
                            Apart{TagGives::Mass, 0, 0.005}};

/// Of one sort: the same identifier; a measure is one identifier whatever its decimals.
bool isSort(const TagField& field, std::string_view id)
{
    if (field.system != TagSystem::Application || field.id.size() != id.size()) return false;
    const std::size_t fixed = id.size() - (id.back() == 'n' ? 1 : 0);
    return std::string_view(field.id).substr(0, fixed) == id.substr(0, fixed);
}

bool has(const std::vector<TagField>& fields, std::string_view ids)
{
    for (; !ids.empty(); ids.remove_prefix(std::min(ids.find(' '), ids.size() - 1) + 1)) {
        const std::string_view id = ids.substr(0, ids.find(' '));
        if (std::any_of(fields.begin(), fields.end(), [&](const TagField& f) { return isSort(f, id); })) return true;
    }
    return false;
}

/// ISO 15394: a transport unit has one number, AI 00 or a data identifier that ends in J.
bool isTransportUnit(const TagField& field)
{
    return field.system == TagSystem::Application ? field.id == "00" : field.id.back() == 'J';
}

const Quantity* measureOf(const TagField& field)
{
    const auto* value = std::get_if<Quantity>(&field.value);
    return value == nullptr || value->kind() == Kind::Count ? nullptr : value;
}

bool saysTwoThings(const TagField& a, const TagField& b)
{
    if (isTransportUnit(a) && isTransportUnit(b)) return a.text != b.text;
    if (a.system != b.system || a.part != b.part) return false;
    if (a.id == b.id) return a.text != b.text;
    const Quantity *one = measureOf(a), *other = measureOf(b);
    return one != nullptr && other != nullptr && a.system == TagSystem::Application && a.id.size() == 4 &&
           a.id.substr(0, 3) == b.id.substr(0, 3) && std::abs(one->si() - other->si()) > 1e-9 * std::abs(one->si());
}

bool liesApart(const TagField& a, const TagField& b)
{
    const Quantity *one = measureOf(a), *other = measureOf(b);
    if (a.gives != b.gives || one == nullptr || other == nullptr || one->kind() != other->kind()) return false;
    return std::any_of(kApart.begin(), kApart.end(), [&](const Apart& apart) {
        return apart.gives == a.gives &&
               std::abs(one->si() - other->si()) > apart.si + apart.share * std::abs(one->si()) + 1e-9;
    });
}

Finding noted(const char* code, const char* what, const TagField& field, std::vector<TextArg> with, Severity severity,
              Text remedy)
{
    Finding out = tagFinding(code, what, field.first, std::move(with));
    out.severity = severity;
    out.remedy = std::move(remedy);
    return out;
}

std::optional<Finding> checkNeeds(const std::vector<TagField>& fields, Findings& notes)
{
    for (const TagField& field : fields)
        for (const Need& need : kNeeds) {
            if (field.part != 0 || !isSort(field, need.id) || has(fields, need.one)) continue;
            if (need.refuses)
                return tagFinding("tag.alone", "Character %1: field %2 describes a roll without saying of which item.",
                                  field.first, {field.id});
            notes.push_back(noted("tag.alone", "Character %1: field %2 of the tag says nothing without one of: %3.",
                                  field, {field.id, std::string(need.one)}, Severity::Note,
                                  "Look whether the label has a second bar code, and scan that too."));
        }
    return std::nullopt;
}

}  // namespace

std::optional<Finding> checkTogether(const std::vector<TagField>& fields, Findings& notes)
{
    for (std::size_t i = 0; i < fields.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            if (saysTwoThings(fields[k], fields[i]))
                return tagFinding("tag.fields_disagree",
                                  "Character %1: field %2 stands on the tag twice and says two things.",
                                  fields[i].first, {fields[i].id});
            if (liesApart(fields[k], fields[i]))
                notes.push_back(noted("tag.fields_disagree", "Character %1: the tag says %2 here and %3 before.",
                                      fields[i], {measureOf(fields[i])->magnitude(), measureOf(fields[k])->magnitude()},
                                      Severity::Warn, "Measure the roll, and enter what you measured."));
        }
    const auto item = std::find_if(fields.begin(), fields.end(), [](const TagField& f) { return isSort(f, "01"); });
    if (item != fields.end() && has(fields, "02 37"))
        return tagFinding("tag.fields_disagree",
                          "Character %1: the tag names one item and the content of a pallet at once.", item->first, {});
    if (auto wrong = checkNeeds(fields, notes)) return wrong;
    if (item != fields.end() && has(fields, "8001") && item->text.front() != '9')
        notes.push_back(noted(
            "tag.not_variable", "Character %1: the item's number should begin with 9 where rolls of it differ: \"%2\".",
            *item, {item->text}, Severity::Warn, "See whether the label names the right item, and tell the supplier."));
    return std::nullopt;
}

}  // namespace taut::inputs
