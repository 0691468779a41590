// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/inputs/cross_check.h"
#include "core/inputs/roll_tag.h"
#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

/// A tag gives widths and cores in whole millimetres.
constexpr double kTagMillimetre = 0.0011;
/// Lengths of tag and file come from the same winder; more apart than this, one of them is of another roll (policy).
constexpr double kTagLength = 0.05;

void differs(const char* key, TextArg file, TextArg tag, Findings& out)
{
    out.push_back(warn("input.tag_differs", key, {"Entered is %1; the tag says %2.", {std::move(file), std::move(tag)}},
                       "See whether the tag belongs to this roll; measure, and enter what you measured."));
}

void compare(const char* key, const Maybe<Kind::Length>& file, const Maybe<Kind::Length>& tag, double apart,
             Findings& out)
{
    if (file && tag && std::abs(file->si() - tag->si()) > apart) differs(key, arg(file), arg(tag), out);
}

}  // namespace

void checkTag(const Inputs& inputs, Findings& out)
{
    if (!inputs.roll || inputs.roll->tag.empty()) return;
    const Roll& roll = *inputs.roll;
    const Result<RollTag> tag = readRollTag(roll.tag);
    if (!tag) {
        out.push_back(note("input.tag_unreadable", "roll.tag", tag.error().text,
                           "What was entered by hand counts. Scan the tag again if it should be readable."));
        return;
    }
    if (!tag->serial.empty() && !roll.id.empty() && tag->serial != roll.id)
        out.push_back(warn("input.tag_of_another_roll", "roll.tag",
                           {"The tag is that of roll %1; entered is roll %2.", {tag->serial, roll.id}},
                           "See which roll hangs there, and take its own tag: two tags are easily swapped."));
    compare("roll.width", roll.width, tag->width, kTagMillimetre, out);
    compare("roll.core", roll.core, tag->core, kTagMillimetre, out);
    if (!roll.opened && tag->length)
        compare("roll.length", roll.length, tag->length, kTagLength * tag->length->si(), out);
    if (tag->winding && roll.winding != Winding::Unknown && *tag->winding != roll.winding)
        differs("roll.winding", std::string(wordFor<Winding>(kWindingWords, roll.winding)),
                std::string(wordFor<Winding>(kWindingWords, *tag->winding)), out);
}

Maybe<Kind::Length> statedLength(const Roll& roll)
{
    if (roll.length || roll.tag.empty()) return roll.length;
    const Result<RollTag> tag = readRollTag(roll.tag);
    return tag ? tag->length : std::nullopt;
}

}  // namespace taut::inputs
