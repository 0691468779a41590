// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/inputs/cross_check.h"
#include "core/inputs/roll_tag.h"
#include "core/inputs/spoken.h"

namespace taut::inputs {

namespace {

/// A tag gives widths and cores in whole millimetres.
constexpr double kTagMillimetre = 0.0011;
/// A net mass says what material it is: caliper and grammage of a web keep within a tenth, tags round (policy).
constexpr double kTagGrammage = 0.15;
/// Scales and labels of a roll agree so far (policy).
constexpr double kTagMass = 0.02;
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

/// Net mass, length and width of the tag make a grammage; another one than the material's is another material.
void checkGrammage(const Inputs& inputs, const RollTag& tag, Findings& out)
{
    if (!inputs.substrate || !inputs.substrate->grammage || !tag.mass || !tag.length || !tag.width) return;
    const double area = tag.length->si() * tag.width->si(), grammage = inputs.substrate->grammage->si();
    if (area <= 0 || std::abs(tag.mass->si() / area / grammage - 1) <= kTagGrammage) return;
    const Quantity& said = inputs.substrate->grammage->quantity();
    out.push_back(warn("input.tag_of_other_material", "roll.tag",
                       {"By net mass, length and width on its tag the roll is of %1; the material has %2.",
                        {Magnitude{tag.mass->si() / area, Kind::Grammage, said.unit()}, said.magnitude()}},
                       "See whether tag and material belong to this roll: every tension goes by the material."));
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
        differs("roll.winding", std::vector<Text>{spokenName(roll.winding)},
                std::vector<Text>{spokenName(*tag->winding)}, out);
    if (tag->splices && roll.splices && *tag->splices != *roll.splices)
        differs("roll.splices", std::int64_t{*roll.splices}, std::int64_t{*tag->splices}, out);
    // What is entered is the roll with its core; the tag's mass is net.
    if (!roll.opened && roll.mass && tag->mass && roll.mass->si() < (1 - kTagMass) * tag->mass->si())
        differs("roll.mass", arg(roll.mass), arg(tag->mass), out);
    checkGrammage(inputs, *tag, out);
    out.insert(out.end(), tag->notes.begin(), tag->notes.end());
}

Maybe<Kind::Length> statedLength(const Roll& roll)
{
    if (roll.length || roll.tag.empty()) return roll.length;
    const Result<RollTag> tag = readRollTag(roll.tag);
    return tag ? tag->length : std::nullopt;
}

}  // namespace taut::inputs
