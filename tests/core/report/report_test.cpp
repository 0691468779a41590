// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/report/readings.h"
#include "core/units/format.h"
#include "tests/core/report/report_walk.h"

using namespace taut;
using namespace taut::report;
using namespace taut::report::test;

namespace {

constexpr const char* kSettings = "Settings of this job and roll";
constexpr const char* kUnwind = "set.lift.setting/unwind";

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

}  // namespace

TEST_CASE("a sheet shows each setting with its target, window, reading as typed and verdict")
{
    Walk walk;
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "1.40 bar", {}});
    walk.answerUpTo();
    const auto row = rowOf(tableOf(walk.sheet(), kSettings), "BRAKE");
    REQUIRE(row.size() == 5);
    const targets::Target* target = walk.run->targets().find("tension.unwind.setting");
    CHECK(wordsOf(row[1]) == format(*target->quantity(), UnitSystem::Metric));
    CHECK(wordsOf(row[2]) == format(*target->ready()->window.low, UnitSystem::Metric, Rounding::Up) + ".." +
                                 format(*target->ready()->window.high, UnitSystem::Metric, Rounding::Down));
    CHECK(wordsOf(row[3]) == "1.40 bar");
    CHECK(wordsOf(row[4]) == "inside");
    CHECK(row[4].mark == Mark::Inside);
}

TEST_CASE("a verdict is told by mark and by word")
{
    struct Row {
        const char* entered;
        Mark mark;
        const char* word;
    };
    // The window of this press and job is 1.1125 to 1.6625 bar, its gauge is known to 0.1 bar.
    for (const Row& want :
         {Row{"1.40 bar", Mark::Inside, "inside"}, Row{"1.60 bar", Mark::Near, "near"},
          Row{"1.70 bar", Mark::Outside, "outside, doubtful"}, Row{"3.00 bar", Mark::Outside, "outside"}}) {
        Walk walk;
        walk.answerUpTo(kUnwind);
        walk.must(run::Answer{{kUnwind}, want.entered, {}});
        const auto row = rowOf(tableOf(walk.sheet(), kSettings), "BRAKE");
        INFO(want.entered);
        CHECK(row[4].mark == want.mark);
        CHECK(wordsOf(row[4]) == want.word);
    }
}

TEST_CASE("a step without an answer is open on the sheet and nothing is filled in")
{
    Walk walk;
    const auto row = rowOf(tableOf(walk.sheet(), kSettings), "BRAKE");
    CHECK(wordsOf(row[3]).empty());
    CHECK(row[4].mark == Mark::Open);
    CHECK(everyWord(walk.sheet()).find("Not sealed") != std::string::npos);
}

TEST_CASE("a deviation stands with its reading, window, reason, who accepted it and when")
{
    Walk walk;
    CHECK_FALSE(hasTable(walk.sheet(), "Deviations"));
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "3.00 bar", {}});
    walk.must(run::AcceptDeviation{{kUnwind}, "gauge under repair", walk.accepts});
    const Report report = walk.sheet();
    const auto row = rowOf(tableOf(report, "Deviations"), "gauge under repair");
    CHECK(wordsOf(row[1]) == "3.00 bar");
    CHECK(wordsOf(row[2]) == "1.12 bar..1.66 bar");
    CHECK(wordsOf(row[4]) == "Matteo Quill");
    const auto setting = rowOf(tableOf(report, kSettings), "BRAKE");
    CHECK(setting[4].mark == Mark::Deviation);
    const auto signatures = allOf<SignatureBlock>(report);
    REQUIRE(signatures.size() == 1);
    CHECK(std::any_of(signatures[0].entries.begin(), signatures[0].entries.end(),
                      [](const auto& entry) { return entry.name == "Matteo Quill"; }));
}

TEST_CASE("every reading stays on the sheet, also those of a roll that was changed")
{
    Walk walk;
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "1.41 bar", {}});
    walk.answerUpTo("set.lift.done");
    walk.must(run::ChangeRoll{run::mini::otherRoll("R0999", "420 mm"), std::nullopt});
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "1.15 bar", {}});
    const Report report = walk.sheet();
    const Table readings = tableOf(report, "Every reading in the order in which it was taken");
    CHECK(rowOf(readings, "1.41 bar").size() == 6);
    CHECK(rowOf(readings, "1.15 bar").size() == 6);
    CHECK(wordsOf(rowOf(tableOf(report, "What happened under way"), "roll changed")[3]).find("R0999") !=
          std::string::npos);
    CHECK(plain(report.title).find("R0999") != std::string::npos);
}

TEST_CASE("the history tells readings outside, corrections, interruptions, hand-overs and stages done again")
{
    Walk walk;
    walk.must(run::Answer{{"safety.walk.clear"}, "yes", {}});
    walk.must(run::Interrupt{"power"});
    walk.must(run::Resume{{std::begin(run::kMakeSafe), std::end(run::kMakeSafe)}, false});
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "3.00 bar", {}});
    walk.must(run::Answer{{kUnwind}, "1.40 bar", {}});
    walk.answerUpTo("set.lift.done");
    walk.must(run::Correct{{kUnwind}, "1.45 bar", "read from the side"});
    walk.must(run::RepeatStage{"set", "web_break"});
    walk.must(run::HandOver{walk.matteo});
    // The first page, which hides it under one name and right values, says that there was something.
    CHECK(everyWord(walk.sheet()).find("On the way to this: read outside at first: 1, corrected: 1") !=
          std::string::npos);
    const Table history = tableOf(walk.sheet(), "What happened under way");
    for (const char* words :
         {"run begun", "interrupted power cut", "resumed made safe first", "read outside Unwind", "read again Unwind",
          "from 1.40 bar to 1.45 bar: read from the side", "stage done again Set web break", "to Matteo Quill"}) {
        bool found = false;
        for (const auto& row : history.rows) {
            std::string all;
            for (std::size_t i = 1; i < row.size(); ++i)
                if (const std::string one = wordsOf(row[i]); !one.empty()) all += one + ' ';
            found = found || all.find(words) != std::string::npos;
        }
        INFO(words);
        CHECK(found);
    }
}

TEST_CASE("answers given too fast are told under way, and the head of the sheet says that there are some")
{
    Walk calm;
    calm.answerUpTo();
    CHECK(everyWord(calm.sheet()).find("answered fast") == std::string::npos);
    CHECK(everyWord(calm.sheet()).find("Times of answers") == std::string::npos);

    Walk walk;
    walk.betweenMs = 1000;
    walk.answerUpTo("set.lift.pressure");
    walk.betweenMs = 60'000;
    walk.answerUpTo();
    const Report report = walk.sheet(seal::Anchor{17, sha256("anything")});
    const auto row = rowOf(tableOf(report, "What happened under way"), "answered fast");
    CHECK(wordsOf(row[2]) == "Everybody is out and no stop is latched");
    CHECK(wordsOf(row[3]).find(" answers in less than ") != std::string::npos);
    CHECK(wordsOf(row[3]).find("the last of them: Walked") != std::string::npos);
    CHECK(wordsOf(row[4]) == "Inka Thorsby");
    CHECK(everyWord(report).find("Times of answers=to be looked at: 1\n") != std::string::npos);
    CHECK(hasteSaid(*walk.run).size() == 1);
}

TEST_CASE("the drawing, stations and charts come from the run's own definitions")
{
    Walk walk;
    const Report report = walk.sheet();
    const auto drawings = allOf<Elevation>(report);
    REQUIRE(drawings.size() == 1);
    REQUIRE_FALSE(drawings[0].paths.empty());
    const targets::Target* length = walk.run->targets().find("thread.main.length");
    // One geometry: what is drawn is as long as what is said.
    CHECK(drawings[0].paths[0].path.length().si() == Approx(length->quantity()->si()).epsilon(1e-12));
    CHECK(wordsOf(rowOf(tableOf(report, "Stations"), "quince yellow")[0]) == "2");
    const auto charts = allOf<Chart>(report);
    REQUIRE(charts.size() == 4);
    CHECK(plain(charts[0].caption) == "Unwind: setting");
    const auto now = std::find_if(charts[0].spots.begin(), charts[0].spots.end(),
                                  [](const Chart::Spot& spot) { return spot.what == Chart::What::Now; });
    REQUIRE(now != charts[0].spots.end());
    CHECK(now->y == *walk.run->targets().find("tension.unwind.setting")->quantity());
}

TEST_CASE("without the definitions a sheet leaves out what they would tell and keeps the record")
{
    Walk walk;
    walk.answerUpTo();
    const auto report = reportOf(seal::documentOf(*walk.run), std::nullopt, {});
    REQUIRE(report);
    CHECK(hasTable(*report, kSettings));
    CHECK(hasTable(*report, "Every step, what was answered, by whom and when"));
    // A record that was read back holds no texts, a run that is open still does.
    const auto read = reportOf(seal::read(seal::write(seal::documentOf(*walk.run))).value(), std::nullopt, {});
    REQUIRE(read);
    CHECK(allOf<Elevation>(*read).empty());
    CHECK_FALSE(hasTable(*read, "Stations"));
    CHECK(hasTable(*read, kSettings));
}

TEST_CASE("an anchor gives the sheet a code that finds the run")
{
    Walk walk;
    walk.answerUpTo();
    CHECK(allOf<QrText>(walk.sheet()).empty());
    const seal::Anchor anchor{17, sha256("anything")};
    const Report report = walk.sheet(anchor);
    const auto codes = allOf<QrText>(report);
    REQUIRE(codes.size() == 1);
    const auto uri = seal::readAnchorUri(codes[0].content);
    REQUIRE(uri);
    CHECK(uri->run == "north-2025-11-25-01");
    CHECK(uri->anchor == anchor);
    CHECK(report.anchor == anchor);
}

TEST_CASE("a blank sheet holds every target and no reading")
{
    Walk walk;
    const Report report = blankSheet(walk.basis);
    CHECK(report.runId.empty());
    const Table settings = tableOf(report, kSettings);
    REQUIRE(settings.rows.size() == 3);
    for (const auto& row : settings.rows) {
        CHECK(std::holds_alternative<Quantity>(row[1].value));
        CHECK(std::holds_alternative<Ruled>(row[3].value));
        CHECK(row[4].mark == Mark::None);
    }
    const Table steps = tableOf(report, "Every step, to be ticked by hand and typed in afterwards as a transcription");
    std::size_t asked = 0;
    for (const auto& row : steps.rows) asked += row.size() > 1 ? 1U : 0U;
    CHECK(asked == walk.basis.plan.steps.size());
}

TEST_CASE("a sheet names its decision rule and never calls a press safe")
{
    Walk walk;
    walk.answerUpTo();
    walk.must(run::SignOff{"all quiet"});
    for (const Report& report : {walk.sheet(), blankSheet(walk.basis)}) {
        const std::string words = lower(everyWord(report));
        CHECK(words.find("decision rule") != std::string::npos);
        CHECK(words.find("guard bands") != std::string::npos);
        for (const char* never : {"safe to start", "safe to run", "certified", "press is safe", "approved for"}) {
            INFO(never);
            CHECK(words.find(never) == std::string::npos);
        }
        CHECK(words.find("come before it") != std::string::npos);
    }
    CHECK(everyWord(walk.sheet()).find("What the next person must know: all quiet") != std::string::npos);
}

TEST_CASE("a sheet is made from a run only")
{
    const auto other = reportOf(seal::definitionOf("press", run::mini::sources().press), std::nullopt, {});
    REQUIRE_FALSE(other);
    CHECK(other.error().code == "report.not_a_run");
}

TEST_CASE("the set-up comes before the first page break and what follows after it")
{
    Walk walk;
    walk.answerUpTo();
    const Report report = walk.sheet();
    bool broken = false, settingsBefore = false, readingsAfter = false;
    for (const Section& section : report.sections) {
        if (std::holds_alternative<PageBreak>(section)) broken = true;
        const auto* table = std::get_if<Table>(&section);
        if (table == nullptr) continue;
        if (plain(table->caption) == kSettings) settingsBefore = !broken;
        if (plain(table->caption).find("Every reading") == 0) readingsAfter = broken;
    }
    CHECK(broken);
    CHECK(settingsBefore);
    CHECK(readingsAfter);
}

TEST_CASE("every value of a sheet stands inside the window printed beside it")
{
    run::Sources sources = run::mini::sources();
    sources.job = run::sourceOf("J-2104", 1, run::mini::resource("demo/jobs/seed-window.toml"));
    sources.substrate.id = "pet-36";
    sources.roll = run::sourceOf("R0049", 0, run::mini::rollText("R0049"));
    const run::Basis basis = run::basisFor(sources, {}).value();
    const auto read = [](const Quantity& q, Rounding rounding) {
        return std::stod(show(q, UnitSystem::Metric, rounding).number);
    };
    int rows = 0;
    for (const Table& table : allOf<Table>(blankSheet(basis)))
        for (const auto& row : table.rows)
            for (std::size_t i = 0; i + 1 < row.size(); ++i) {
                const auto* value = std::get_if<Quantity>(&row[i].value);
                const auto* limits = std::get_if<Limits>(&row[i + 1].value);
                if (value == nullptr || limits == nullptr) continue;
                INFO(wordsOf(row[i]) << " of " << wordsOf(row[i + 1]));
                ++rows;
                if (limits->low) CHECK(read(*value, Rounding::Nearest) >= read(*limits->low, Rounding::Up));
                if (limits->high) CHECK(read(*value, Rounding::Nearest) <= read(*limits->high, Rounding::Down));
            }
    CHECK(rows > 10);
}

TEST_CASE("a sheet tells a choice in the words that its button shows, in its steps and in its history")
{
    Walk walk;
    walk.answerUpTo("set.lift.seen");
    walk.must(run::Answer{{"set.lift.seen"}, "bad", {}});
    walk.must(run::Answer{{"set.lift.seen"}, "good", {}});
    walk.answerUpTo();
    walk.must(run::Correct{{"set.lift.seen"}, "bad", "looked again"});
    walk.must(run::Correct{{"set.lift.seen"}, "good", "and again"});
    const Report report = walk.sheet();
    CHECK(wordsOf(rowOf(tableOf(report, "Every step, what was answered, by whom and when"), "How does the web")[2]) ==
          "Good");
    const Table history = tableOf(report, "What happened under way");
    CHECK(wordsOf(rowOf(history, "read outside")[3]) == "Bad");
    CHECK(wordsOf(rowOf(history, "read again")[3]) == "Good, before it Bad");
    CHECK(wordsOf(rowOf(history, "and again")[3]) == "from Bad to Good: and again");
}
