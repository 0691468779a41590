// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/tag_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "core/inputs/cross_check.h"
#include "core/inputs/fill.h"
#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

/// What a field tells of the roll, by its key in the roll's file and in words.
struct TellsOf {
    TagGives gives;
    const char *key, *name;
};
constexpr std::array kEntries{TellsOf{TagGives::Serial, "roll.id", "number"},
                              TellsOf{TagGives::Width, "roll.width", "width"},
                              TellsOf{TagGives::Core, "roll.core", "core, inner diameter"},
                              TellsOf{TagGives::Length, "roll.length", "length"},
                              TellsOf{TagGives::Winding, "roll.winding", "winding"},
                              TellsOf{TagGives::Splices, "roll.splices", "splices inside"}};

/// A count of metres of an amount is a length; its mass is net and fills nothing.
TagGives toldBy(const TagField& field)
{
    const auto* value = std::get_if<Quantity>(&field.value);
    if (field.gives != TagGives::Amount || value == nullptr) return field.gives;
    return value->kind() == Kind::Length ? TagGives::Length
           : value->kind() == Kind::Mass ? TagGives::Mass
                                         : TagGives::Nothing;
}

const TellsOf* entryOf(const TagField& field)
{
    const auto found = std::find_if(kEntries.begin(), kEntries.end(),
                                    [gives = toldBy(field)](const TellsOf& entry) { return entry.gives == gives; });
    return found == kEntries.end() ? nullptr : &*found;
}

/// Of two fields that tell the same, the one that is taken; the other is only compared.
bool isTaken(const TagField& field, const RollTag& tag)
{
    const auto* value = std::get_if<Quantity>(&field.value);
    const auto is = [&](const auto& taken) {
        return taken && value != nullptr && std::abs(taken->si() - value->si()) <= 1e-9 * std::abs(value->si());
    };
    switch (toldBy(field)) {
    case TagGives::Serial: return tag.serial == field.text;
    case TagGives::Width: return is(tag.width);
    case TagGives::Length: return is(tag.length);
    case TagGives::Core: return is(tag.core);
    case TagGives::Winding: return tag.winding.has_value();
    case TagGives::Splices: return tag.splices.has_value();
    default: return false;
    }
}

/// What of a roll stands under a key, as something that can be compared.
auto standsAt(const Roll& roll, std::string_view key)
{
    const auto si = [](const auto& entry) { return entry ? std::optional(entry->si()) : std::nullopt; };
    std::optional<double> number;
    if (key == "roll.width") number = si(roll.width);
    if (key == "roll.core") number = si(roll.core);
    if (key == "roll.length") number = si(roll.length);
    if (key == "roll.splices" && roll.splices) number = *roll.splices;
    if (key == "roll.winding" && roll.winding != Winding::Unknown) number = static_cast<double>(roll.winding);
    return std::pair(number, key == "roll.id" ? roll.id : std::string());
}

TagUse useOf(const TagField& field, const TellsOf& entry, const RollTag& tag, const Roll& before, const Roll& after)
{
    if (!isTaken(field, tag)) return TagUse::Shown;
    const auto stood = standsAt(before, entry.key), stands = standsAt(after, entry.key);
    if (stood != stands) return TagUse::Fills;
    // What nobody has entered and the tag does not fill: the length of a roll that was opened.
    if (!stands.first && stands.second.empty()) return TagUse::Shown;
    if (entry.gives == TagGives::Serial) return stands.second == field.text ? TagUse::Agrees : TagUse::Differs;
    const auto alone = standsAt(takenOver({}, tag, {}), entry.key);
    // A tag gives whole millimetres; beyond what a check of the inputs says is a difference (checkTag).
    const double apart = entry.gives == TagGives::Length ? 0.05 * *alone.first : 0.0011;
    return std::abs(*stands.first - *alone.first) <= apart ? TagUse::Agrees : TagUse::Differs;
}

std::vector<Text> heldAgainst(const TagField& field, const Inputs& around, const Roll& roll)
{
    std::vector<Text> out;
    const Press* press = around.press.get();
    const Unwind* unwind = press != nullptr && press->unwind ? &*press->unwind : nullptr;
    switch (toldBy(field)) {
    case TagGives::Item:
        if (around.substrate) out.push_back({"the material of this job, %1", {around.substrate->id}});
        break;
    case TagGives::Width:
        if (around.job && around.job->webWidth) out.push_back({"the job's width, %1", {arg(around.job->webWidth)}});
        if (press != nullptr && press->webLeast && press->webMost)
            out.push_back({"what the press takes, %1 to %2", {arg(press->webLeast), arg(press->webMost)}});
        break;
    case TagGives::Length:
        if (roll.outerDiameter)
            out.push_back({"what the outer diameter of %1 gives", {arg(roll.outerDiameter)}});
        else
            out.emplace_back("the outer diameter, once it is entered");
        break;
    case TagGives::Core:
        if (unwind != nullptr && unwind->mandrel.gripsLeast && unwind->mandrel.gripsMost)
            out.push_back(
                {"what the unwind holds, %1 to %2", {arg(unwind->mandrel.gripsLeast), arg(unwind->mandrel.gripsMost)}});
        break;
    case TagGives::Winding:
        if (press != nullptr && press->printWinding)
            out.emplace_back(*press->printWinding == Winding::FaceOut ? "how this press has its rolls, face out"
                                                                      : "how this press has its rolls, face in");
        break;
    case TagGives::Mass:
        if (around.substrate && around.substrate->grammage)
            out.push_back({"the material's grammage, %1", {arg(around.substrate->grammage)}});
        break;
    default: break;
    }
    return out;
}

std::string dayText(const TagDate& day)
{
    const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    return std::to_string(day.year) + '-' + two(day.month) + '-' + two(day.day);
}

std::optional<Finding> past(const TagField& field, const std::optional<TagDate>& today)
{
    const auto* day = std::get_if<TagDate>(&field.value);
    const bool ends = field.system == TagSystem::Application ? field.id == "15" || field.id == "17" : field.id == "14D";
    if (day == nullptr || !today || !ends) return std::nullopt;
    if (std::tie(day->year, day->month, day->day) >= std::tie(today->year, today->month, today->day))
        return std::nullopt;
    return warn("input.tag_expired", "roll.tag", {"This day is past: %1.", {dayText(*day)}},
                "Ask whoever answers for the material whether this roll may still be run.");
}

/// Which line a finding of the cross check belongs to; nullptr = none, or it is not about the tag.
TagRow* rowOf(std::vector<TagRow>& rows, const Finding& finding)
{
    TagGives gives = TagGives::Nothing;
    for (const TellsOf& entry : kEntries)
        if (finding.subject == entry.key) gives = entry.gives;
    if (finding.code == "input.tag_of_another_roll") gives = TagGives::Serial;
    if (finding.code == "input.tag_of_other_material" || finding.subject == "roll.mass") gives = TagGives::Mass;
    const auto told = [&](const TagRow& row) { return gives != TagGives::Nothing && toldBy(row.field) == gives; };
    // Of several that tell the same, the one that is taken.
    auto found = std::find_if(rows.begin(), rows.end(),
                              [&](const TagRow& row) { return told(row) && row.use != TagUse::Shown; });
    if (found == rows.end()) found = std::find_if(rows.begin(), rows.end(), told);
    return found == rows.end() ? nullptr : &*found;
}

}  // namespace

bool TagRows::fills() const
{
    return std::any_of(rows.begin(), rows.end(), [](const TagRow& row) { return row.use == TagUse::Fills; });
}

TagDate dayOf(const Instant& moment)
{
    const std::string text = utcText(moment.utcMs + moment.offsetMinutes * 60000LL);
    return {std::stoi(text.substr(0, 4)), std::stoi(text.substr(5, 2)), std::stoi(text.substr(8, 2)), false};
}

Roll takenOver(Roll roll, const RollTag& tag, std::string_view text)
{
    if (!tag.serial.empty() && !roll.id.empty() && tag.serial != roll.id) return roll;
    if (roll.id.empty()) roll.id = tag.serial;
    for (const char* key : {"roll.tag", "roll.width", "roll.core", "roll.length", "roll.splices", "roll.winding"})
        (void)fillFromTag(roll, key, tag, text);
    return roll;
}

TagRows tagRows(const Inputs& around, const RollTag& tag, std::string_view text, const std::optional<TagDate>& today)
{
    const Roll before = around.roll ? *around.roll : Roll();
    const Roll after = takenOver(before, tag, text);
    TagRows out;
    for (const TagField& field : tag.fields) {
        TagRow row{field, TagUse::Shown, {}, heldAgainst(field, around, before), {}};
        if (const TellsOf* entry = entryOf(field)) {
            row.entry = Text(entry->name);
            row.use = useOf(field, *entry, tag, before, after);
        }
        if (auto late = past(field, today)) row.findings.push_back(*std::move(late));
        for (const Finding& note : tag.notes)
            if (const auto place = tagPlace(note); place >= field.first && place < field.first + field.length)
                row.findings.push_back(note);
        out.rows.push_back(std::move(row));
    }
    Inputs checked = around;
    Roll roll = after;
    roll.tag = text;
    checked.roll = std::make_shared<const Roll>(std::move(roll));
    for (Finding& finding : crossCheck(checked)) {
        if (finding.subject.rfind("roll.", 0) != 0 || finding.code.rfind("tag.", 0) == 0) continue;
        TagRow* row = rowOf(out.rows, finding);
        if (row != nullptr)
            row->findings.push_back(std::move(finding));
        else if (finding.subject == "roll.tag")
            out.findings.push_back(std::move(finding));
    }
    for (TagRow& row : out.rows)
        std::stable_sort(row.findings.begin(), row.findings.end(),
                         [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return out;
}

}  // namespace taut::inputs
