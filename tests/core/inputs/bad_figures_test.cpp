// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <numbers>

#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

namespace {

Inputs good() { return demoInputs("north", "quince-jelly", "R0041"); }

/// The north press with one thing of it bent.
template <class Bend>
Findings bent(Bend bend)
{
    Press press = demoPress("north");
    bend(press);
    return crossCheck({std::make_shared<Press>(std::move(press)), {}, {}, {}});
}

Maybe<Kind::Length> mm(double value) { return Entry<Kind::Length>(Quantity(value / 1000, Kind::Length, "mm")); }

Roller& roller(Press& press, const std::string& id)
{
    return *std::find_if(press.rollers.begin(), press.rollers.end(), [&](const Roller& r) { return r.id == id; });
}

bool says(const Finding& finding, const std::string& words)
{
    return sentence(finding).find(words) != std::string::npos;
}

Findings readLine(const std::string& line)
{
    Findings notes;
    const auto read = readRoll("format = 1\n[roll]\nid = \"R1\"\n" + line + '\n', "r.toml", notes);
    return notes;
}

}  // namespace

TEST_CASE("a diameter measured now is judged like one in the roll's file")
{
    CHECK(crossCheck(good(), Length::si(0.48)).empty());
    const Findings below = crossCheck(good(), Length::si(0.09));
    REQUIRE(below.size() == 1);
    CHECK(below[0].code == "input.diameter_below_core");
    CHECK(below[0].severity == Severity::Stop);
    CHECK(says(below[0], "90 mm"));
    CHECK(says(below[0], "102.2 mm"));
}

TEST_CASE("a measured diameter that no roll has stops by its figure, and what can be is told")
{
    for (const double absurd : {-0.005, 0.0, 0.009, 50.0, 1e308}) {
        CAPTURE(absurd);
        CHECK_FALSE(isRollDiameter(Length::si(absurd)));
        const Findings found = crossCheck(good(), Length::si(absurd));
        REQUIRE(found.size() == 1);
        CHECK(found[0].code == "input.diameter_absurd");
        CHECK(found[0].severity == Severity::Stop);
        CHECK(says(found[0], "3000 mm"));
        CHECK_FALSE(says(found[0], "inf"));
    }
}

TEST_CASE("the way round the roll typed as measured diameter is offered as the diameter it is")
{
    const Findings found = crossCheck(good(), Length::si(0.495 * std::numbers::pi));
    REQUIRE_FALSE(found.empty());
    CHECK(found[0].code == "input.diameter_looks_like_circumference");
    CHECK(says(found[0], "1555 mm"));
    CHECK(says(found[0], "495 mm"));
}

TEST_CASE("an opened roll whose length stands on its tag alone is told with that length")
{
    Roll roll = demoRoll("R0041");
    roll.length.reset();
    roll.opened = true;
    const Findings found = crossCheck(demoInputs(demoPress("north"), demoJob("quince-jelly"), roll));
    REQUIRE(found.size() == 1);
    INFO(sentence(found[0]));
    CHECK(says(found[0], "1360 m"));
}

TEST_CASE("a tag of another roll is asked about by both numbers")
{
    Roll roll = demoRoll("R0041");
    roll.id = "R0099";
    const Findings found = crossCheck(demoInputs(demoPress("north"), demoJob("quince-jelly"), roll));
    REQUIRE(found.size() == 1);
    CHECK(found[0].code == "input.tag_of_another_roll");
    CHECK(found[0].severity == Severity::Warn);
    CHECK(says(found[0], "R0041"));
    CHECK(says(found[0], "R0099"));
}

TEST_CASE("a finished roll no larger than its core is refused")
{
    Job job = demoJob("quince-jelly");
    job.rewindDiameter = mm(102);
    const Findings found = crossCheck(demoInputs(demoPress("north"), job, demoRoll("R0041")));
    REQUIRE(found.size() == 1);
    CHECK(found[0].code == "input.finished_roll_below_core");
    CHECK(found[0].severity == Severity::Stop);
}

TEST_CASE("a press whose figures contradict each other is refused by key")
{
    CHECK(bent([](Press&) {}).empty());
    struct Row {
        std::string code, subject;
        Findings found;
    };
    const std::vector<Row> rows{
        {"input.centreline_outside", "press.centreline", bent([](Press& p) { p.centreline = mm(900); })},
        {"input.web_into_frame", "press.web_width.most", bent([](Press& p) { p.webMost = mm(431); })},
        {"input.web_into_frame", "press.web_width.most", bent([](Press& p) { p.centreline = mm(100); })},
        {"input.shaft_kind", "press.web.roller.unwind.kind",
         bent([](Press& p) { roller(p, "unwind").kind = "rewind"; })},
        {"input.shaft_kind", "press.web.roller.rewind.kind",
         bent([](Press& p) { roller(p, "rewind").kind = "idler"; })},
        {"input.zone_without_web", "press.zone.unwind.to", bent([](Press& p) { p.zones[0].to = p.zones[0].from; })},
    };
    for (const Row& row : rows) {
        CAPTURE(row.code, row.subject);
        REQUIRE_FALSE(row.found.empty());
        CHECK(row.found[0].code == row.code);
        CHECK(row.found[0].subject == row.subject);
        CHECK(row.found[0].severity == Severity::Stop);
        CHECK_FALSE(row.found[0].remedy.empty());
    }
}

TEST_CASE("what can be believed is never said as nought")
{
    const Findings mass = readLine("core_mass = \"0 kg\"");
    REQUIRE(mass.size() == 1);
    INFO(sentence(mass[0]));
    CHECK(says(mass[0], "between 1"));
    CHECK(says(mass[0], " g and 10000 kg"));
}

TEST_CASE("a name that a list or a sheet cannot show is refused")
{
    for (const std::string& name : {std::string("a\\nb"), std::string("a\\u0000b"), std::string(101, 'x')}) {
        Findings notes;
        const auto read = readRoll("format = 1\n[roll]\nid = \"" + name + "\"\n", "r.toml", notes);
        CAPTURE(name);
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == "input.bad_id");
        CHECK(notes[0].subject == "r.toml:3:6 roll.id");
    }
}

TEST_CASE("a file full of unknown keys is refused in a hundred sentences and one")
{
    std::string lines;
    for (int i = 0; i < 20000; ++i) lines += "k" + std::to_string(i) + " = 1\n";
    const Findings found = readLine(lines);
    CHECK(found.size() == 101);
    CHECK(stops(found));
    CHECK(sentence(found.back()).find("more keys") != std::string::npos);
}

TEST_CASE("speeds of a press come in their order")
{
    Inputs in = good();
    Press press = *in.press;
    press.idle.value = Quantity(0.5 / 60, Kind::Speed, "m/min");
    in.press = std::make_shared<const Press>(press);
    const Findings idle = crossCheck(in);
    REQUIRE(idle.size() == 1);
    CHECK(idle[0].code == "input.speeds_out_of_order");
    CHECK(idle[0].subject == "press.speeds.idle");
    CHECK(says(idle[0], "0.50 m/min"));
}

TEST_CASE("a core heavier than steel, and labels smaller than a die cuts, are refused or asked about by name")
{
    Inputs in = good();
    Roll roll = *in.roll;
    roll.coreMass = Entry<Kind::Mass>(Quantity(90, Kind::Mass, "kg"));
    in.roll = std::make_shared<const Roll>(roll);
    const Findings heavy = crossCheck(in);
    REQUIRE(heavy.size() == 1);
    CHECK(heavy[0].code == "input.core_mass");
    CHECK(heavy[0].subject == "roll.core_mass");

    in = good();
    Job job = *in.job;
    job.across = 300;
    job.around = 400;
    in.job = std::make_shared<const Job>(job);
    const Findings small = crossCheck(in);
    REQUIRE(small.size() == 2);
    CHECK(small[0].subject == "job.across");
    CHECK(small[1].subject == "job.around");
    for (const Finding& f : small) CHECK(f.code == "input.labels_too_small");
}
