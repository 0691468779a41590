// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/input_file.h"
#include "core/inputs/inputs.h"
#include "core/inputs/parts.h"
#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

/// A gear needs its teeth and one pitch; of several pitches none is believed.
std::optional<Gear> readGear(KeyReader& above)
{
    std::optional<KeyReader> keys = above.table("gear");
    if (!keys) return std::nullopt;
    Gear gear;
    const std::optional<int> teeth = keys->whole("teeth", 6, 2000);
    gear.circularPitch = keys->get<Kind::Length>("circular_pitch", sane::kPitch);
    gear.module = keys->get<Kind::Length>("module", sane::kPitch);
    gear.diametralPitch = keys->number("diametral_pitch", {0.5, 200});
    keys->done();
    const int pitches = (gear.circularPitch ? 1 : 0) + (gear.module ? 1 : 0) + (gear.diametralPitch ? 1 : 0);
    if (pitches > 1) {
        keys->complain("", refuse("input.several_pitches", {}, "The gear's pitch is given in more than one way.",
                                  "Keep one of circular_pitch, module and diametral_pitch."));
        return std::nullopt;
    }
    if (!teeth || pitches == 0) return std::nullopt;
    gear.teeth = *teeth;
    return gear;
}

std::optional<Deck> readDeck(KeyReader keys)
{
    Deck deck;
    const std::optional<int> station = keys.whole("station", 1, 99);
    deck.ink = keys.text("ink");
    deck.coverage = keys.share("coverage", sane::kShare);
    deck.inkDensity = keys.get<Kind::Density>("ink_density", sane::kInkDensity);
    if (std::optional<KeyReader> anilox = keys.table("anilox")) {
        deck.aniloxScreen = anilox->get<Kind::CountPerLength>("screen", sane::kScreen);
        deck.aniloxVolume = anilox->get<Kind::VolumePerArea>("volume", sane::kVolume);
        anilox->done();
    }
    if (std::optional<KeyReader> plate = keys.table("plate")) {
        deck.plate = plate->get<Kind::Length>("thickness", sane::kPlate);
        deck.plateBase = plate->get<Kind::Length>("base", sane::kPlate);
        checkOrder(*plate, "base", deck.plateBase, deck.plate);
        plate->done();
    }
    deck.tape = keys.get<Kind::Length>("tape", sane::kPlate);
    if (!station && !keys.has("station"))
        keys.complain("station", refuse("input.missing_key", {}, "This deck does not say at which station it stands.",
                                        "Write station = 1 (or its number); the deck is left out until then."));
    keys.done();
    if (!station) return std::nullopt;
    deck.station = *station;
    return deck;
}

}  // namespace

Result<Job> readJob(std::string_view toml, FileNotes& found)
{
    const Result<Toml> root = openInput(toml, "job", found);
    if (!root) return root.error();
    KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    KeyReader keys = *top.table("job");

    Job job;
    job.id = keys.id("id", false);
    job.title = keys.text("title");
    job.customerReference = keys.text("customer_reference");
    job.substrate = keys.text("substrate");
    job.webWidth = keys.get<Kind::Length>("web_width", sane::kPressWidth);
    job.gear = readGear(keys);
    job.across = keys.whole("across", 1, 500);
    job.around = keys.whole("around", 1, 500);
    job.quantity = keys.number("quantity", {1, 1e10});
    job.waste = keys.share("waste", {0, 0.95, true});
    job.speed = keys.get<Kind::Speed>("speed", sane::kSpeed);
    job.winding = keys.oneOf<Winding>("winding", kWindingWords);
    job.rewindCore = keys.get<Kind::Length>("rewind_core", sane::kCore);
    job.rewindDiameter = keys.get<Kind::Length>("rewind_diameter", sane::kRollDiameter);
    job.makeReady = keys.get<Kind::Length>("make_ready", {0, 20e3, true});
    job.spliceWaste = keys.get<Kind::Length>("splice_waste", {0, 2000, true});
    job.repeatWanted = keys.get<Kind::Length>("repeat_wanted", sane::kSmallLength);
    job.tension = readTension(keys);
    keys.done();
    for (KeyReader& deck : top.tables("deck")) {
        std::optional<Deck> read = readDeck(deck);
        if (!read) continue;
        const bool twice =
            std::any_of(job.decks.begin(), job.decks.end(), [&](const Deck& d) { return d.station == read->station; });
        if (twice)
            deck.complain("station", refuse("input.duplicate_id", {},
                                            {"Station %1 is given twice.", {std::int64_t{read->station}}},
                                            "Give this deck another station; it is left out until then."));
        else
            job.decks.push_back(std::move(*read));
    }
    top.done();
    return job;
}

Result<Job> readJob(std::string_view toml, std::string_view file, Findings& notes)
{
    FileNotes found(file);
    Result<Job> read = readJob(toml, found);
    if (read) found.moveTo(notes);
    return read;
}

}  // namespace taut::inputs
