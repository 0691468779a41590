// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/fill.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

template <Kind K>
bool enter(Maybe<K>& into, const Learnt& learnt)
{
    const auto* value = std::get_if<Quantity>(&learnt);
    if (value == nullptr || value->kind() != K) return false;
    // 33 cm and 330 mm are one width, whatever their last bits.
    if (!into || std::abs(into->si() - value->si()) > 1e-12 * std::abs(into->si())) into = Entry<K>(*value);
    return true;
}

bool enterCount(std::optional<int>& into, const Learnt& learnt)
{
    const auto* value = std::get_if<Quantity>(&learnt);
    if (value == nullptr || value->kind() != Kind::Count || value->si() < 0) return false;
    into = static_cast<int>(std::lround(value->si()));
    return true;
}

bool enterWinding(Winding& into, const std::string& word)
{
    for (const Word<Winding>& w : kWindingWords)
        if (w.first == word) {
            into = w.second;
            return true;
        }
    return false;
}

bool enterCondition(std::string& into, const std::string& word)
{
    if (std::find(kConditionWords.begin(), kConditionWords.end(), word) == kConditionWords.end()) return false;
    into = word;
    return true;
}

template <class T>
bool fillGap(std::optional<T>& into, const std::optional<T>& said)
{
    if (!into) into = said;
    return true;
}

}  // namespace

bool fill(Roll& roll, std::string_view key, const Learnt& learnt)
{
    if (key == "roll.width") return enter(roll.width, learnt);
    if (key == "roll.outer_diameter") return enter(roll.outerDiameter, learnt);
    if (key == "roll.stripped_diameter") return enter(roll.strippedDiameter, learnt);
    if (key == "roll.core") return enter(roll.core, learnt);
    if (key == "roll.core_wall") return enter(roll.coreWall, learnt);
    if (key == "roll.core_mass") return enter(roll.coreMass, learnt);
    if (key == "roll.length") return enter(roll.length, learnt);
    if (key == "roll.mass") return enter(roll.mass, learnt);
    if (key == "roll.off_centre") return enter(roll.offCentre, learnt);
    if (key == "roll.splices") return enterCount(roll.splices, learnt);
    const auto* word = std::get_if<std::string>(&learnt);
    if (word == nullptr) return false;
    if (key == "roll.winding") return enterWinding(roll.winding, *word);
    if (key == "roll.condition") return enterCondition(roll.condition, *word);
    if (key != "roll.opened" || (*word != "yes" && *word != "no")) return false;
    roll.opened = *word == "yes";
    return true;
}

bool fillFromTag(Roll& roll, std::string_view key, const RollTag& tag, std::string_view text)
{
    if (key == "roll.tag") {
        if (roll.tag.empty()) roll.tag = text;
        return true;
    }
    if (key == "roll.width") return fillGap(roll.width, tag.width);
    if (key == "roll.core") return fillGap(roll.core, tag.core);
    // Of an opened roll, the length on the tag is the one that it had when it was full.
    if (key == "roll.length") return roll.opened || fillGap(roll.length, tag.length);
    if (key == "roll.splices") return fillGap(roll.splices, tag.splices);
    if (key != "roll.winding") return false;
    if (roll.winding == Winding::Unknown && tag.winding) roll.winding = *tag.winding;
    return true;
}

Roll filledFromTag(Roll roll)
{
    if (roll.tag.empty()) return roll;
    const Result<RollTag> tag = readRollTag(roll.tag);
    if (!tag || (!tag->serial.empty() && !roll.id.empty() && tag->serial != roll.id)) return roll;
    for (const char* key : {"roll.width", "roll.core", "roll.length", "roll.splices", "roll.winding"}) {
        const Roll before = roll;
        if (fillFromTag(roll, key, *tag, roll.tag) && !(roll == before)) roll.fromTag.emplace_back(key);
    }
    return roll;
}

Inputs filledFromTag(Inputs inputs)
{
    if (inputs.roll && !inputs.roll->tag.empty())
        inputs.roll = std::make_shared<const Roll>(filledFromTag(*inputs.roll));
    return inputs;
}

}  // namespace taut::inputs
