// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "core/inputs/input_file.h"
#include "core/inputs/inputs.h"
#include "core/inputs/parts.h"
#include "core/inputs/words.h"

namespace taut::inputs {

Result<Roll> readRoll(std::string_view toml, FileNotes& found)
{
    const Result<Toml> root = openInput(toml, "roll", found);
    if (!root) return root.error();
    KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    KeyReader keys = *top.table("roll");
    top.done();

    Roll roll;
    roll.id = keys.id("id", false);
    roll.tag = keys.text("tag");
    roll.substrate = keys.text("substrate");
    roll.width = keys.get<Kind::Length>("width", sane::kPressWidth);
    roll.outerDiameter = keys.get<Kind::Length>("outer_diameter", sane::kRollDiameter);
    roll.strippedDiameter = keys.get<Kind::Length>("stripped_diameter", sane::kRollDiameter);
    roll.core = keys.get<Kind::Length>("core", sane::kCore);
    roll.coreWall = keys.get<Kind::Length>("core_wall", sane::kCoreWall);
    roll.coreMass = keys.get<Kind::Mass>("core_mass", sane::kMass);
    roll.length = keys.get<Kind::Length>("length", sane::kWebLength);
    roll.mass = keys.get<Kind::Mass>("mass", sane::kMass);
    roll.winding = keys.oneOf<Winding>("winding", kWindingWords).value_or(Winding::Unknown);
    roll.splices = keys.whole("splices", 0, 1000);
    roll.offCentre = keys.get<Kind::Length>("off_centre", sane::kOffCentre);
    roll.condition = keys.word("condition", kConditionWords);
    roll.opened = keys.flag("opened").value_or(false);
    keys.done();
    return roll;
}

Result<Roll> readRoll(std::string_view toml, std::string_view file, Findings& notes)
{
    FileNotes found(file);
    Result<Roll> read = readRoll(toml, found);
    if (read) found.moveTo(notes);
    return read;
}

namespace {

template <Kind K>
void put(std::string& out, std::string_view key, const Maybe<K>& value)
{
    if (value) out += std::string(key) + " = " + tomlQuoted(asWritten(value->quantity())) + '\n';
}
void put(std::string& out, std::string_view key, const std::string& value)
{
    if (!value.empty()) out += std::string(key) + " = " + tomlQuoted(value) + '\n';
}

}  // namespace

std::string writeRoll(const Roll& roll)
{
    std::string out = "format = 1\n\n[roll]\n";
    put(out, "id", roll.id);
    put(out, "tag", roll.tag);
    put(out, "substrate", roll.substrate);
    put(out, "width", roll.width);
    put(out, "outer_diameter", roll.outerDiameter);
    put(out, "stripped_diameter", roll.strippedDiameter);
    put(out, "core", roll.core);
    put(out, "core_wall", roll.coreWall);
    put(out, "core_mass", roll.coreMass);
    put(out, "length", roll.length);
    put(out, "mass", roll.mass);
    put(out, "winding", std::string(wordFor<Winding>(kWindingWords, roll.winding)));
    if (roll.splices) out += "splices = " + std::to_string(*roll.splices) + '\n';
    put(out, "off_centre", roll.offCentre);
    put(out, "condition", roll.condition);
    if (roll.opened) out += "opened = true\n";
    return out;
}

}  // namespace taut::inputs
