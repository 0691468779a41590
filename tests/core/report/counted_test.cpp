// SPDX-License-Identifier: GPL-3.0-or-later
// What a sheet counts and names: deviations in force and not, what was measured, whose stop it was.
#include <catch2/catch.hpp>

#include "core/report/readings.h"
#include "core/run/deviation.h"
#include "tests/core/report/report_walk.h"

using namespace taut;
using namespace taut::report;
using namespace taut::report::test;

namespace {

const char* const kUnwind = "set.lift.setting/unwind";

/// The words of a row, from what happened on.
std::string told(const Report& report, const std::string& what)
{
    std::string all;
    const auto row = rowOf(tableOf(report, "What happened under way"), what);
    for (std::size_t i = 1; i + 1 < row.size(); ++i) all += wordsOf(row[i]) + '|';
    return all;
}

}  // namespace

TEST_CASE("a deviation that a changed roll took back is counted apart, wherever deviations are counted")
{
    Walk walk;
    CHECK(everyWord(walk.sheet()).find("Deviations=") == std::string::npos);
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "3.00 bar", {}});
    walk.must(run::AcceptDeviation{{kUnwind}, "gauge under repair", walk.accepts});
    CHECK(everyWord(walk.sheet()).find("Deviations=1 in force\n") != std::string::npos);
    walk.answerUpTo("set.lift.done");
    walk.must(run::ChangeRoll{run::mini::otherRoll("R0999", "420 mm"), std::nullopt});
    CHECK(run::countAccepted(*walk.run).inForce == 0);
    CHECK(run::countAccepted(*walk.run).lapsed == 1);
    CHECK(walk.run->deviations() == 0);
    walk.answerUpTo(kUnwind);
    walk.must(run::Answer{{kUnwind}, "2.90 bar", {}});
    walk.must(run::AcceptDeviation{{kUnwind}, "still under repair", walk.accepts});
    const Report report = walk.sheet();
    CHECK(everyWord(report).find("Deviations=1 in force, 1 no longer in force\n") != std::string::npos);
    const Table table = tableOf(report, "Deviations");
    REQUIRE(table.rows.size() == 2);
    CHECK(wordsOf(rowOf(table, "3.00 bar")[3]) == "No longer in force. gauge under repair");
    CHECK(wordsOf(rowOf(table, "2.90 bar")[3]) == "still under repair");
    // What lists of runs count, of an open one and of a sealed one.
    CHECK(walk.run->deviations() == 1);
    CHECK(seal::documentOf(*walk.run).body["deviations"].items().size() == 1);
}

TEST_CASE("a diameter measured under way and a stop given up are told by figure, by place and by name")
{
    Walk walk;
    walk.answerUpTo(kUnwind);
    walk.must(run::MeasuredDiameter{Length::si(0.4405)});
    CHECK(told(walk.sheet(), "diameter measured").find("now 440.5 mm; steps") != std::string::npos);
    walk.must(run::HoldStop{"Jorun", "latch at the panel"});
    walk.must(run::HoldStop{"Pat", "latch at the table"});
    walk.must(run::HoldStop{"Jorun", "latch at the rewind"});
    walk.must(run::GiveUpStop{"Jorun"});
    CHECK(told(walk.sheet(), "stop given up") == "stop given up|latch at the panel, latch at the rewind|by Jorun|");
}
