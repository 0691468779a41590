// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/roll_tag.h"

#include <cmath>

namespace taut::inputs {

namespace {

/// Takes a quantity where nothing was said before, and from AI 8001 always.
template <Kind K>
void take(Maybe<K>& into, const TagField& field)
{
    const auto* value = std::get_if<Quantity>(&field.value);
    if (value == nullptr || value->kind() != K || (into && field.id != "8001")) return;
    // A width is spoken of in millimetres, whichever decimals the tag gives it with.
    const bool small = field.gives == TagGives::Width && value->unit() == "m";
    into = Entry<K>(small ? value->in("mm") : *value);
}

void take(std::string& into, const TagField& field)
{
    if (into.empty()) into = field.text;
}

void take(RollTag& tag, const TagField& field)
{
    switch (field.gives) {
    case TagGives::Nothing: return;
    case TagGives::Item: return take(tag.item, field);
    case TagGives::Lot: return take(tag.lot, field);
    case TagGives::Serial: return take(tag.serial, field);
    case TagGives::Width: return take(tag.width, field);
    case TagGives::Length: return take(tag.length, field);
    case TagGives::Core: return take(tag.core, field);
    case TagGives::Mass: return take(tag.mass, field);
    case TagGives::Amount: take(tag.length, field); return take(tag.mass, field);
    case TagGives::Winding:
        if (field.text != "9") tag.winding = field.text == "0" ? Winding::FaceOut : Winding::FaceIn;
        return;
    case TagGives::Splices:
        if (const auto* count = std::get_if<Quantity>(&field.value))
            tag.splices = static_cast<int>(std::lround(count->si()));
        return;
    }
}

}  // namespace

Result<RollTag> readRollTag(std::string_view scanned, const TagOptions& options)
{
    Result<Tag> read = readTag(scanned, options);
    if (!read) return read.error();
    RollTag out;
    for (const TagField& field : read->fields) take(out, field);
    out.fields = std::move(read->fields);
    out.notes = std::move(read->notes);
    return out;
}

}  // namespace taut::inputs
