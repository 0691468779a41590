// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/input_file.h"
#include "core/inputs/inputs.h"
#include "core/inputs/parts.h"
#include "core/inputs/words.h"

namespace taut::inputs {

std::optional<TensionRange> readTension(KeyReader& above)
{
    std::optional<KeyReader> keys = above.table("tension");
    if (!keys) return std::nullopt;
    TensionRange out;
    out.low = keys->get<Kind::ForcePerWidth>("low", sane::kTension);
    out.high = keys->get<Kind::ForcePerWidth>("high", sane::kTension);
    out.source = keys->text("source");
    checkOrder(*keys, "low", out.low, out.high);
    keys->done();
    if (!out.low && !out.high) return std::nullopt;
    return out;
}

namespace {

Layer readLayer(KeyReader keys)
{
    Layer layer;
    layer.name = keys.text("name");
    layer.family = keys.word("family", kFamilyWords);
    layer.grammage = keys.get<Kind::Grammage>("grammage", sane::kGrammage);
    layer.caliper = keys.get<Kind::Length>("caliper", sane::kCaliper);
    layer.modulus = keys.get<Kind::Pressure>("modulus", sane::kModulus);
    layer.strength = keys.get<Kind::ForcePerWidth>("strength", sane::kStrength);
    layer.carriesAlone = keys.flag("carries_alone").value_or(false);
    keys.done();
    return layer;
}

SpliceTape readTape(KeyReader keys)
{
    SpliceTape tape;
    tape.strength = keys.get<Kind::ForcePerWidth>("strength", sane::kStrength);
    tape.shear = keys.get<Kind::ForcePerWidth>("shear", sane::kStrength);
    tape.source = keys.text("source");
    tape.bothFaces = keys.flag("both_faces");
    if (const std::string joint = keys.word("joint", kJointWords); !joint.empty()) tape.joint = joint;
    keys.done();
    return tape;
}

/// The layers together are no more than the whole, as well as both are known (policy).
template <Kind K>
void checkWhole(KeyReader& keys, const char* key, Maybe<K>& whole, const std::vector<Layer>& layers,
                Maybe<K> Layer::*part)
{
    constexpr double kKnown = 0.05;
    double sum = 0;
    for (const Layer& layer : layers)
        if (layer.*part) sum += (layer.*part)->si();
    if (!whole || sum <= whole->si() * (1 + kKnown)) return;
    keys.complain(key, refuse("input.layers_above_whole", {},
                              {"The layers add up to %1, more than the whole, %2.",
                               {Magnitude{sum, K, whole->quantity().unit()}, whole->quantity().magnitude()}},
                              "Look at the whole and at each layer, and correct the figure that is wrong."));
    whole.reset();
}

Substrate readSubstrate(KeyReader& keys)
{
    Substrate s;
    s.id = keys.id("id", false);
    s.name = keys.text("name");
    s.family = keys.word("family", kFamilyWords);
    s.caliper = keys.get<Kind::Length>("caliper", sane::kCaliper);
    s.caliperTolerance = keys.share("caliper_tolerance", sane::kShare);
    s.grammage = keys.get<Kind::Grammage>("grammage", sane::kGrammage);
    s.modulus = keys.get<Kind::Pressure>("modulus", sane::kModulus);
    s.strength = keys.get<Kind::ForcePerWidth>("strength", sane::kStrength);
    s.friction = keys.share("friction", sane::kFriction);
    s.roughness = keys.get<Kind::Length>("roughness", sane::kRoughness);
    s.clear = keys.flag("clear").value_or(false);
    s.porous = keys.flag("porous").value_or(false);
    s.tension = readTension(keys);
    for (KeyReader layer : keys.tables("layers")) s.layers.push_back(readLayer(std::move(layer)));
    checkWhole(keys, "grammage", s.grammage, s.layers, &Layer::grammage);
    checkWhole(keys, "caliper", s.caliper, s.layers, &Layer::caliper);
    if (std::optional<KeyReader> tape = keys.table("splice_tape")) s.spliceTape = readTape(std::move(*tape));
    keys.done();
    return s;
}

}  // namespace

Result<std::vector<Substrate>> readSubstrates(std::string_view toml, FileNotes& found)
{
    const Result<Toml> root = openInput(toml, "substrates", found);
    if (!root) return root.error();
    KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    std::vector<Substrate> out;
    for (KeyReader& keys : top.tables("substrate")) {
        Substrate s = readSubstrate(keys);
        if (!s.id.empty() && !isTaken(keys, s.id, out)) out.push_back(std::move(s));
    }
    top.done();
    return out;
}

Result<std::vector<Substrate>> readSubstrates(std::string_view toml, std::string_view file, Findings& notes)
{
    FileNotes found(file);
    Result<std::vector<Substrate>> read = readSubstrates(toml, found);
    if (read) found.moveTo(notes);
    return read;
}

}  // namespace taut::inputs
