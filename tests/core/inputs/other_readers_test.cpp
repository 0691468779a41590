// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <functional>

#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

namespace {

template <Kind K>
double si(const Maybe<K>& value)
{
    REQUIRE(value);
    return value->si();
}

/// Takes one line out of a file, or puts another in its place.
std::string instead(std::string text, const std::string& line, const std::string& by)
{
    const std::size_t at = text.find(line);
    REQUIRE(at != std::string::npos);
    const std::size_t end = text.find('\n', at);
    return text.replace(at, end - at, by);
}

}  // namespace

// SI values by exact definitions (inch 25.4 mm, pound 0.45359237 kg) and, for BCM and lines, GNU units 2.22.
TEST_CASE("a job reads to the values of its file")
{
    const Job job = demoJob("quince-jelly");
    CHECK(job.id == "J-2101");
    CHECK(job.title == "Quince jelly, front");
    CHECK(job.customerReference == "PL-31-4");
    CHECK(job.substrate == "paper-label-80");
    CHECK(si(job.webWidth) == 0.330);
    REQUIRE(job.gear);
    CHECK(job.gear->teeth == 96);
    CHECK(si(job.gear->circularPitch) == Approx(0.003175).epsilon(1e-14));
    CHECK_FALSE(job.gear->module);
    CHECK(job.across == 3);
    CHECK(job.around == 4);
    CHECK(job.quantity == 42000.0);
    CHECK(job.waste == Approx(0.07));
    CHECK(si(job.speed) == Approx(1.5));
    CHECK(job.winding == Winding::FaceOut);
    CHECK(si(job.rewindCore) == Approx(0.0762));
    CHECK(si(job.rewindDiameter) == Approx(0.56));
    REQUIRE(job.tension);
    CHECK(si(job.tension->low) == Approx(140));
    CHECK(si(job.tension->high) == Approx(220));
    CHECK(job.tension->source == "last good run");
    REQUIRE(job.decks.size() == 2);
    CHECK(job.decks[0].station == 1);
    CHECK(job.decks[1].ink == "quince yellow");
    CHECK(job.decks[0].coverage == Approx(0.35));
    CHECK(si(job.decks[0].inkDensity) == Approx(1050));
    CHECK(si(job.decks[0].aniloxScreen) == Approx(16000));
    CHECK(si(job.decks[0].aniloxVolume) == Approx(4.6500093e-6).epsilon(1e-7));
    CHECK(si(job.decks[0].plate) == Approx(0.0017));
    CHECK(si(job.decks[0].plateBase) == Approx(0.00013));
    CHECK(si(job.decks[0].tape) == Approx(0.00038));
    CHECK(demoJob("cold-brew").gear->diametralPitch == 10.0);
    CHECK(demoJob("cold-brew").gear->teeth == 60);
    CHECK(si(demoJob("cold-brew").speed) == Approx(350 * 0.3048 / 60));
    CHECK(si(demoJob("parcel-tag").gear->module) == Approx(0.001));
}

TEST_CASE("substrates read to the values of their file")
{
    const std::vector<Substrate> all = demoSubstrates();
    REQUIRE(all.size() == 4);
    const Substrate& paper = all[0];
    CHECK(paper.id == "paper-label-80");
    CHECK(paper.family == "paper_label");
    CHECK(si(paper.caliper) == Approx(140e-6));
    CHECK(paper.caliperTolerance == Approx(0.05));
    CHECK(si(paper.grammage) == Approx(0.155));
    CHECK(si(paper.modulus) == Approx(3.8e9));
    CHECK(paper.friction == Approx(0.30));
    CHECK(si(paper.roughness) == Approx(1.2e-6));
    REQUIRE(paper.tension);
    CHECK(si(paper.tension->low) == Approx(120));
    REQUIRE(paper.layers.size() == 3);
    CHECK(paper.layers[0].name == "paper face");
    CHECK(si(paper.layers[0].strength) == Approx(3500));
    CHECK_FALSE(paper.layers[0].carriesAlone);
    CHECK(paper.layers[2].carriesAlone);
    CHECK(si(paper.layers[2].modulus) == Approx(4e9));
    // A laminate is as thick as its layers together.
    CHECK(si(paper.layers[0].caliper) + si(paper.layers[1].caliper) + si(paper.layers[2].caliper) ==
          Approx(si(paper.caliper)));
    REQUIRE(paper.spliceTape);
    CHECK(si(paper.spliceTape->strength) == Approx(6000));
    CHECK(si(paper.spliceTape->shear) == Approx(2200));
    CHECK(paper.spliceTape->bothFaces);
    CHECK(all[2].clear);
    CHECK_FALSE(all[1].clear);
    CHECK(all[3].porous);
    CHECK_FALSE(all[3].modulus);
    CHECK(si(all[3].strength) == Approx(4500));
}

TEST_CASE("a roll reads to the values of its file, keeps what was entered, and its tag keeps its separators")
{
    const Roll roll = demoRoll("R0048");
    CHECK(roll.id == "R0048");
    CHECK(roll.tag == "]C10199521000001025800103050387107601\x1d"
                      "10B09\x1d"
                      "21R0048");
    CHECK(roll.substrate == "bopp-50");
    CHECK(si(roll.width) == Approx(12 * 0.0254));
    CHECK(si(roll.outerDiameter) == Approx(20 * 0.0254));
    CHECK(si(roll.core) == Approx(3 * 0.0254));
    CHECK(si(roll.coreWall) == Approx(0.5 * 0.0254));
    CHECK(roll.coreWall->quantity().entered() == "1/2 in");
    CHECK(si(roll.coreMass) == Approx(1.1 * 0.45359237));
    CHECK(si(roll.length) == Approx(12700 * 0.3048));
    CHECK_FALSE(roll.mass);
    CHECK(si(demoRoll("R0049").mass) == Approx(95.5 * 0.45359237));
    CHECK(roll.winding == Winding::FaceOut);
    CHECK(roll.splices == 1);
    CHECK(si(roll.offCentre) == Approx(0.0254 / 32));
    CHECK(roll.condition == "clean");
    CHECK_FALSE(roll.opened);
    CHECK(demoRoll("R0046").opened);
    CHECK(demoRoll("R0044").winding == Winding::FaceIn);
}

TEST_CASE("what is written of a roll reads back to an equal roll with the texts as entered")
{
    for (int n = 41; n <= 50; ++n) {
        const Roll roll = demoRoll("R00" + std::to_string(n));
        Findings notes;
        const Result<Roll> back = readRoll(writeRoll(roll), "written", notes);
        REQUIRE(back);
        CHECK(notes.empty());
        CHECK(*back == roll);
        CHECK(back->width->quantity().entered() == roll.width->quantity().entered());
        CHECK(writeRoll(*back) == writeRoll(roll));
    }
    // Computed values, a bare roll, and texts that need escapes.
    Roll roll;
    roll.id = "odd \"one\"";
    roll.tag = "tab\tback\\slash\x1d\n";
    roll.width = Entry<Kind::Length>(Length::si(0.1 + 0.2), "in");
    roll.outerDiameter = Entry<Kind::Length>(Length::si(1.0 / 3), "mm");
    roll.mass = Entry<Kind::Mass>(Mass::si(41.7), "");
    roll.opened = true;
    roll.winding = Winding::FaceIn;
    Findings notes;
    const Result<Roll> back = readRoll(writeRoll(roll), "written", notes);
    REQUIRE(back);
    CHECK(notes.empty());
    CHECK(*back == roll);
}

TEST_CASE("a wrong key of a job, substrate or roll is named and only it is lost")
{
    struct Row {
        std::string file, line, by, code, subject;
    };
    const std::string job = "resources/demo/jobs/quince-jelly.toml", roll = "resources/demo/rolls/R0041.toml";
    const std::string substrates = "resources/substrates.toml";
    const std::vector<Row> rows{
        {job, "web_width", "web_width = \"330 g\"", "quantity.wrong_kind", "f:9:13 job.web_width"},
        {job, "gear", "gear = { circular_pitch = \"1/8 in\", module = \"1 mm\", teeth = 96 }", "input.several_pitches",
         "f:10:1 job.gear"},
        {job, "gear", "gear = { circular_pitch = \"1/8 in\", teeth = \"96\" }", "input.wrong_type",
         "f:10:45 job.gear.teeth"},
        {job, "across", "across = 0", "input.absurd", "f:11:10 job.across"},
        {job, "quantity", "quantity = -5", "input.negative", "f:13:12 job.quantity"},
        {job, "waste", "waste = \"107 %\"", "input.absurd", "f:14:9 job.waste"},
        {job, "speed", "speed = \"9000 m/min\"", "input.absurd", "f:15:9 job.speed"},
        {job, "winding", "winding = \"inside out\"", "input.unknown_word", "f:16:11 job.winding"},
        {job, "tension", "tension = { low = \"3 N/mm\", high = \"0.2 N/mm\" }", "input.order",
         "f:19:19 job.tension.low"},
        {job, "coverage", "coverage = \"135 %\"", "input.absurd", "f:24:12 deck[0].coverage"},
        {job, "coverage", "coverge = \"35 %\"", "input.unknown_key", "f:24:11 deck[0].coverge"},
        {job, "station = 2", "station = 1", "input.duplicate_id", "f:30:11 deck[1].station"},
        {job, "station = 2", "", "input.missing_key", "f:29:1 deck[1].station"},
        {substrates, "caliper =", "caliper = \"4 mm\"", "input.absurd", "f:8:11 substrate[0].caliper"},
        {substrates, "caliper =", "caliper = \"4 um\"", "input.absurd", "f:8:11 substrate[0].caliper"},
        {substrates, "caliper =", "caliper = \"120 um\"", "input.layers_above_whole", "f:8:11 substrate[0].caliper"},
        {substrates, "grammage =", "grammage = \"15.5 g/m2\"", "input.layers_above_whole",
         "f:10:12 substrate[0].grammage"},
        {substrates, "family", "family = \"stone\"", "input.unknown_word", "f:7:10 substrate[0].family"},
        {substrates, "id = \"bopp-50\"", "id = \"paper-label-80\"", "input.duplicate_id", "f:23:6 substrate[1].id"},
        {substrates, "id = \"bopp-50\"", "", "input.missing_key", "f:22:1 substrate[1].id"},
        {roll, "outer_diameter", "outer_diameter = \"4 m\"", "input.absurd", "f:9:18 roll.outer_diameter"},
        {roll, "core =", "core = 76", "quantity.no_unit", "f:10:8 roll.core"},
        {roll, "core_mass", "core_mass = \"2 lbf\"", "quantity.wrong_kind", "f:12:13 roll.core_mass"},
        {roll, "length", "length = \"1,360.5 m\"", "quantity.group_separator", "f:13:10 roll.length"},
        {roll, "length", "length = \"1,360 m\"", "quantity.group_separator", "f:13:10 roll.length"},
        {roll, "length", "length = \"1,36 m\"", "input.absurd", "f:13:10 roll.length"},  // a comma is a decimal mark
        {roll, "splices", "splices = \"one\"", "input.wrong_type", "f:15:11 roll.splices"},
        {roll, "condition", "condition = \"nice\"", "input.unknown_word", "f:17:13 roll.condition"},
        {roll, "id =", "", "input.missing_key", "f:4:2 roll.id"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.file, row.by, row.code);
        const std::string text = instead(demoText(row.file), row.line, row.by);
        Findings notes;
        const bool read = row.file == job    ? static_cast<bool>(readJob(text, "f", notes))
                          : row.file == roll ? static_cast<bool>(readRoll(text, "f", notes))
                                             : static_cast<bool>(readSubstrates(text, "f", notes));
        CHECK(read);
        for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == row.code);
        CHECK(notes[0].subject == row.subject);
        CHECK(notes[0].severity == Severity::Stop);
        CHECK_FALSE(notes[0].remedy.empty());
    }
}

TEST_CASE("a comma means decimal as a dot does")
{
    Findings notes;
    const Result<Roll> roll =
        readRoll(instead(demoText("resources/demo/rolls/R0041.toml"), "core =", "core = \"76,2 mm\""), "f", notes);
    REQUIRE(roll);
    CHECK(notes.empty());
    CHECK(si(roll->core) == Approx(0.0762));
    CHECK(roll->core->quantity().entered() == "76,2 mm");
}

TEST_CASE("a file tells what it is")
{
    CHECK(whatIs(demoText("resources/presses/north.toml")) == "press");
    CHECK(whatIs(demoText("resources/substrates.toml")) == "substrates");
    CHECK(whatIs(demoText("resources/demo/jobs/cold-brew.toml")) == "job");
    CHECK(whatIs(demoText("resources/demo/rolls/R0041.toml")) == "roll");
    CHECK(whatIs("format = 1\n[procedure]\nid = \"p\"\n") == "procedure");
    CHECK(whatIs("[[answer]]\nstep = \"a.b.c\"\n") == "answers");
    CHECK(whatIs("[weather]\n") == "");
    CHECK(whatIs("[[press]]\n") == "");
    CHECK(whatIs("not toml") == "");
    CHECK(whatIs("") == "");
}

TEST_CASE("findings come in the file's order, several at once")
{
    const std::string text = "format = 1\nweather = 1\n[roll]\nid = \"a\"\nwidth = 3\ncore = \"x\"\nsplices = 0.5\n";
    Findings notes;
    const Result<Roll> roll = readRoll(text, "r.toml", notes);
    REQUIRE(roll);
    CHECK(roll->id == "a");
    std::vector<std::string> codes;
    for (const Finding& f : notes) codes.push_back(f.code);
    CHECK(codes == std::vector<std::string>{"input.unknown_key", "quantity.no_unit", "quantity.not_a_number",
                                            "input.wrong_type"});
}
