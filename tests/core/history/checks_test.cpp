// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/checks.h"

#include "tests/core/history/fake_reader.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

using report::test::wordsOf;

constexpr const char* kBrake = "set.lift.setting";

run::Source pressWith(const std::string& checks)
{
    return run::sourceOf("north", 1, "format = 1\n[press]\nid = \"north\"\nname = \"North press\"\n" + checks);
}
std::string check(const std::string& id, const std::string& every, const std::string& step)
{
    return "[[check]]\nid = \"" + id + "\"\nname = \"The " + id + "\"\nevery = \"" + every + "\"\nstep = \"" + step +
           "\"\n";
}
/// Runs a day from each other, sealed; the newest is the last.
struct Store : FakeReader {
    explicit Store(const std::string& checks)
    {
        defined["press"] = {pressWith(checks)};
        defined["procedure"] = {run::sourceOf("mini", 1, run::mini::kProcedure)};
    }
    void keep(const run::Run& run, const std::string& present = "sealed")
    {
        records::RunRow row;
        row.seq = runRows.size() + 1;
        row.state = "completed";
        row.present = present;
        addSealed(run, row);
    }
    [[nodiscard]] CheckStanding only(std::size_t most = kMostLookedThrough) const
    {
        const auto all = checksOf(*this, {}, most);
        REQUIRE(all);
        REQUIRE(all->size() == 1);
        return all->front();
    }
};
run::Run finished(const std::string& id, std::int64_t day)
{
    NamedWalk walk(id, kJune + day * kDayMs);
    walk.answerUpTo();
    walk.must(run::SignOff{""});
    return *walk.run;
}
/// One whose brakes were not both read well.
run::Run given(const std::string& id, std::int64_t day, const std::string& second)
{
    NamedWalk walk(id, kJune + day * kDayMs);
    walk.answerUpTo("set.lift.setting/rewind");
    if (!second.empty()) walk.must(run::Answer{{"set.lift.setting/rewind"}, second, {}});
    walk.must(run::Abandon{"given up"});
    return *walk.run;
}

}  // namespace

TEST_CASE("a check was last done in the newest signed run in which all items of its step were answered well")
{
    Store store(check("brakes", "30 d", kBrake));
    store.keep(finished("a", 0));
    store.keep(finished("b", 10));
    store.keep(given("c", 20, ""));         // one of the two stood open
    store.keep(given("d", 21, "5.9 bar"));  // read, and far outside
    store.keep(finished("e", 22), "void");
    const CheckStanding one = store.only();
    CHECK(one.run == "b");
    CHECK(one.asked);
    CHECK(one.pressName == "North press");
    REQUIRE(one.dueMs());
    CHECK(*one.dueMs() == one.doneMs + 30 * kDayMs);
    CHECK(one.doneMs > kJune + 10 * kDayMs);
    CHECK_FALSE(one.overdue(*one.dueMs()));
    CHECK(one.overdue(*one.dueMs() + 1));
}

TEST_CASE("what was accepted outside or corrected into something else shows nothing as done")
{
    Store store(check("brakes", "30 d", kBrake));
    store.keep(finished("a", 0));
    NamedWalk walk("b", kJune + 5 * kDayMs);
    walk.answerUpTo("set.lift.setting/unwind");
    walk.must(run::Answer{{"set.lift.setting/unwind"}, "5.9 bar", {}});
    walk.must(run::AcceptDeviation{{"set.lift.setting/unwind"}, "the gauge reads high", walk.accepts});
    walk.answerUpTo();
    walk.must(run::SignOff{""});
    store.keep(*walk.run);
    CHECK(store.only().run == "a");

    store.keep(finished("c", 6));
    CHECK(store.only().run == "c");
    seal::Sealing corrected;
    seal::Correction correction{
        {{"set.lift.setting/unwind", "1.35 bar", "5.9 bar", 5.9e5, "Pa", "outside"}}, {}, "misread"};
    corrected.sequel = correction;
    store.stories["c"] = {corrected};
    CHECK(store.only().run == "a");
    // Corrected into something that is well, it was done all the same.
    correction.steps.front() = {"set.lift.setting/unwind", "1.35 bar", "1.36 bar", 1.36e5, "Pa", "inside"};
    corrected.sequel = correction;
    store.stories["c"] = {corrected};
    CHECK(store.only().run == "c");
    correction.steps.front() = {"set.lift.seen", "good", "bad", {}, {}, "outside"};
    corrected.sequel = correction;
    store.stories["c"] = {corrected};
    CHECK(store.only().run == "c");
}

TEST_CASE("a step whose name begins alike is another step")
{
    Store store(check("brakes", "30 d", "set.lift.set"));
    store.keep(finished("a", 0));
    const CheckStanding one = store.only();
    CHECK(one.run.empty());
    CHECK_FALSE(one.asked);
    CHECK(one.allLooked);
    CHECK_FALSE(one.dueMs());
    CHECK(one.overdue(kJune));
}

TEST_CASE("no more runs are looked through than one wants, and none once all is found")
{
    Store store(check("brakes", "30 d", kBrake) + check("other", "30 d", "set.lift.other"));
    for (int i = 0; i < 12; ++i) store.keep(finished("run-" + std::to_string(i), i));
    const auto some = checksOf(store, {}, 5);
    REQUIRE(some);
    REQUIRE(some->size() == 2);
    CHECK((*some)[0].run == "run-11");
    CHECK((*some)[1].run.empty());
    CHECK_FALSE((*some)[1].allLooked);
    CHECK(store.documents == 5);
    store.defined["press"] = {pressWith(check("brakes", "30 d", kBrake))};
    store.documents = 0;
    REQUIRE(checksOf(store));
    CHECK(store.documents == 1);
    int asked = 0;
    const auto ended = checksOf(store, [&] { return ++asked > 3; });
    REQUIRE(ended);
    CHECK(ended->empty());
    for (const char* question : {"definitions", "runs"}) {
        store.broken = question;
        CHECK(checksOf(store).error().code == "store.failed");
    }
}

TEST_CASE("overdue ones come first: never done, then the longest overdue - and the sheet says of each how it stands")
{
    Store store(check("late", "2 d", "set.lift.pressure") + check("later", "1 d", kBrake) +
                check("intime", "90 d", "set.lift.seen") + check("never", "90 d", "set.lift.never") +
                "[[check]]\nid = \"half\"\n");
    store.keep(finished("a", 0));
    const auto all = checksOf(store);
    REQUIRE(all);
    REQUIRE(all->size() == 5);
    const std::int64_t now = kJune + 10 * kDayMs;
    const auto overdue = overdueOf(*all, now);
    std::vector<std::string> ids;
    for (const CheckStanding& one : overdue) ids.push_back(one.check.id);
    CHECK(ids == std::vector<std::string>{"never", "half", "later", "late"});
    const report::Report page = checksReport(*all, now, 0);
    CHECK(plain(page.subtitle) == "4 of 5 overdue on 2026-06-11");
    const auto tables = report::test::allOf<report::Table>(page);
    REQUIRE(tables.size() == 1);
    REQUIRE(tables[0].rows.size() == 5);
    CHECK(wordsOf(tables[0].rows[0][3]) == "no procedure here has its step");
    CHECK(wordsOf(tables[0].rows[1][3]) == "the profile does not say how often, or by which step");
    CHECK(wordsOf(tables[0].rows[2][2]) == "1 d");
    CHECK(wordsOf(tables[0].rows[2][3]) == "2026-06-01");
    CHECK(wordsOf(tables[0].rows[2][5]) == "2026-06-02");
    CHECK(wordsOf(tables[0].rows[2][6]) == "overdue");
    CHECK(wordsOf(tables[0].rows[4][1]) == "The intime");
    CHECK(wordsOf(tables[0].rows[4][6]) == "in time");
}

}  // namespace taut::history::test
