// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <set>

#include "core/report/parts.h"
#include "tests/core/report/report_walk.h"

// How a sheet says what became of a run: its steps as a record, its end, who signed, and times that a clock made odd.

using namespace taut;
using namespace taut::report;
using namespace taut::report::test;

namespace {

constexpr const char* kSteps = "Every step, what was answered, by whom and when";
constexpr const char* kHistory = "What happened under way";
constexpr std::int64_t kMinute = 60'000;

/// What stands under a head, up to the next one that is no paragraph.
std::string under(const Report& report, const std::string& head)
{
    std::string all;
    bool inside = false;
    for (const Section& section : report.sections) {
        if (const auto* heading = std::get_if<Heading>(&section)) {
            inside = plain(heading->text) == head;
            continue;
        }
        const auto* paragraph = std::get_if<Paragraph>(&section);
        if (paragraph == nullptr) inside = false;
        if (inside) all += plain(paragraph->text) + '\n';
    }
    return all;
}

std::vector<std::string> namesBehind(const Report& report, const std::string& meaning)
{
    std::vector<std::string> names;
    for (const SignatureBlock& block : allOf<SignatureBlock>(report))
        for (const SignatureBlock::Entry& entry : block.entries)
            if (plain(entry.meaning) == meaning) names.push_back(entry.name);
    return names;
}

}  // namespace

TEST_CASE("every step stands on the sheet with all that it says, numbered, under the place where it is done")
{
    Walk walk;
    walk.answerUpTo();
    const Table table = tableOf(walk.sheet(), kSteps);
    std::size_t i = 0;
    std::set<std::string> rows, places;
    for (const auto& row : table.rows) {
        if (row.size() == 1) {
            places.insert(wordsOf(row[0]));
            continue;
        }
        const procedure::Step& step = walk.run->plan().steps.at(i++);
        INFO(step.id.value);
        CHECK(wordsOf(row[0]) == std::to_string(i));
        CHECK(wordsOf(row[1]) == plain(step.say));
        CHECK(rows.insert(wordsOf(row[1])).second);
    }
    CHECK(i == walk.run->plan().steps.size());
    CHECK(places == std::set<std::string>{"Safety: Walk round", "Set: At the lift"});
}

TEST_CASE("a step is not known again by the place alone")
{
    CHECK(plain(firstSentence("At rewind 1: tension on. The web goes taut.")) == "At rewind 1: tension on");
    CHECK(plain(firstSentence("How does the web look? Look twice.")) == "How does the web look?");
    CHECK(plain(firstSentence("Walked")) == "Walked");
}

TEST_CASE("an abandoned run says so in large words and tells why under a head of its own")
{
    Walk walk;
    walk.answerUpTo("set.lift.seen");
    CHECK(walk.sheet().banner.empty());
    walk.must(run::Abandon{"The core is crushed."});
    const seal::Anchor anchor{17, sha256("anything")};
    for (const Report& report : {walk.sheet(), walk.sheet(anchor)}) {
        CHECK(plain(report.banner).find("ABANDONED") == 0);
        CHECK(under(report, "Why it was abandoned") == "The core is crushed.\n");
        CHECK(everyWord(report).find("What the next person must know") == std::string::npos);
        CHECK(namesBehind(report, "Abandoned by") == std::vector<std::string>{"Inka Thorsby"});
    }
    // Ended and not yet sealed: both are said.
    CHECK_FALSE(walk.sheet().draft.empty());
    CHECK(walk.sheet(anchor).draft.empty());
}

TEST_CASE("a run on a withdrawn press says so in large words until the press is given back")
{
    Walk walk;
    walk.answerUpTo("set.lift.seen");
    walk.must(run::Withdraw{"The brake smells of burning."});
    const Report report = walk.sheet();
    CHECK(plain(report.banner).find("PRESS WITHDRAWN") == 0);
    CHECK(under(report, "Why the press was withdrawn") == "The brake smells of burning.\n");
    walk.must(run::Return{"Brake lining replaced."}, walk.matteo);
    CHECK(walk.sheet().banner.empty());
    CHECK(under(walk.sheet(), "Why the press was withdrawn").empty());
}

TEST_CASE("a completed run and a blank sheet have no large words")
{
    Walk walk;
    walk.answerUpTo();
    walk.must(run::SignOff{"all quiet"});
    CHECK(walk.sheet().banner.empty());
    CHECK(blankSheet(walk.basis).banner.empty());
}

TEST_CASE("who accepted a deviation has a line of their own, also when the same name stands in another")
{
    const char* const meaning = "Supervisor: I accepted the deviations";
    Walk walk;
    walk.answerUpTo("set.lift.setting/unwind");
    SECTION("a supervisor who took the run over and gave it up")
    {
        walk.must(run::Answer{{"set.lift.setting/unwind"}, "3.00 bar", {}});
        walk.must(run::AcceptDeviation{{"set.lift.setting/unwind"}, "gauge under repair", walk.accepts});
        walk.must(run::HandOver{walk.matteo});
        walk.must(run::Abandon{"The order was cancelled"}, walk.matteo);
        CHECK(namesBehind(walk.sheet(), "Abandoned by") == std::vector<std::string>{"Matteo Quill"});
        CHECK(namesBehind(walk.sheet(), meaning) == std::vector<std::string>{"Matteo Quill"});
    }
    SECTION("two supervisors of one name")
    {
        const auto other = people::test::member("p-9", "Matteo Quill", people::Role::Supervisor);
        walk.must(run::Answer{{"set.lift.setting/unwind"}, "3.00 bar", {}});
        walk.must(run::AcceptDeviation{{"set.lift.setting/unwind"}, "gauge under repair", walk.accepts});
        walk.answerUpTo("set.lift.setting/rewind");
        walk.must(run::Answer{{"set.lift.setting/rewind"}, "3.00 bar", {}});
        walk.must(run::AcceptDeviation{{"set.lift.setting/rewind"}, "this one too", other.signer});
        CHECK(namesBehind(walk.sheet(), meaning) == std::vector<std::string>{"Matteo Quill", "Matteo Quill"});
    }
}

TEST_CASE("a clock that was set back under way is told where it happened, and the order of the rows stays")
{
    Walk walk;
    walk.answerUpTo("set.lift.setting/unwind");
    walk.must(run::Answer{{"set.lift.setting/unwind"}, "3.00 bar", {}});
    walk.now -= 90 * kMinute + kMinute;  // the next event is a minute later by its own clock
    walk.must(run::Answer{{"set.lift.setting/unwind"}, "1.40 bar", {}});
    walk.answerUpTo();
    walk.must(run::SignOff{"all quiet"});
    const Report report = walk.sheet();
    const Table history = tableOf(report, kHistory);
    std::vector<std::string> order;
    for (const auto& row : history.rows) order.push_back(wordsOf(row[1]));
    CHECK(order ==
          std::vector<std::string>{"run begun", "read outside", "clock set back", "read again", "run completed"});
    CHECK(wordsOf(rowOf(history, "clock set back")[3]) ==
          "by 90 min; what follows stands in the order in which it happened");
    // Both readings stand in the order in which they were taken, whatever their times say.
    const Table readings = tableOf(report, "Every reading in the order in which it was taken");
    std::vector<std::string> read;
    for (const auto& row : readings.rows)
        if (wordsOf(row[1]).find("BRAKE") != std::string::npos) read.push_back(wordsOf(row[0]) + ' ' + wordsOf(row[2]));
    REQUIRE(read.size() == 2);
    CHECK(read[0].substr(read[0].size() - 8) == "3.00 bar");
    CHECK(read[1] < read[0]);
    CHECK(everyWord(report).find("the clock was set back") != std::string::npos);  // it ended before it began
    // A setting of the clock by less than a second is nobody's business.
    Walk steady;
    steady.answerUpTo();
    steady.now -= kMinute + 400;
    steady.must(run::SignOff{""});
    CHECK(everyWord(steady.sheet()).find("set back") == std::string::npos);
}

TEST_CASE("a change of the local time under way is told, since times that are printed jump with it")
{
    Walk walk;
    walk.answerUpTo("set.lift.seen");
    run::Stamp stamp = walk.stamp(walk.inka);
    stamp.offsetMinutes = 120;
    const auto event = run::decide(*walk.run, run::Answer{{"set.lift.seen"}, "good", {}}, stamp, walk.inka);
    REQUIRE(event);
    walk.run = walk.run->after(*event);
    CHECK(wordsOf(rowOf(tableOf(walk.sheet(), kHistory), "local time changed")[3]) ==
          "from UTC+01:00 to UTC+02:00; what follows stands in the order in which it happened");
}
