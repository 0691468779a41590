// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift.h"

#include "tests/core/history/fake_reader.h"

namespace taut::history::test {

namespace {

/// Adds a series of one target to a store, newest first, one reading a run.
void add(FakeReader& reader, const std::string& press, const std::string& target, const std::vector<double>& bar)
{
    std::vector<records::Reading> rows = barReadings(bar);
    for (records::Reading& row : rows) {
        row.press = press;
        row.target = target;
    }
    reader.readingRows.insert(reader.readingRows.end(), rows.begin(), rows.end());
}
std::vector<double> noisy(Dice& dice, std::size_t count, std::size_t since = SIZE_MAX, double sigmas = 0)
{
    std::vector<double> bar;
    for (std::size_t i = 0; i < count; ++i) bar.push_back(1.5 + 0.02 * (dice.normal() + (i >= since ? sigmas : 0)));
    return bar;
}
std::vector<std::string> targetsOf(const std::vector<Watched>& all)
{
    std::vector<std::string> targets;
    for (const Watched& one : all) targets.push_back(one.name.target);
    return targets;
}
FakeReader shop()
{
    FakeReader reader;
    reader.perPage = 500;
    return reader;
}

}  // namespace

TEST_CASE("what moved most stands first, then what was outside most often")
{
    FakeReader reader = shop();
    Dice dice(1);
    add(reader, "north", "a.calm", noisy(dice, 60));
    add(reader, "north", "b.little", noisy(dice, 60, 40, 2));
    add(reader, "north", "c.much", noisy(dice, 60, 40, -4));
    add(reader, "north", "d.outside", noisy(dice, 60));
    for (std::size_t i = 180; i < 190; ++i) reader.readingRows[i].first = "outside";
    const auto all = watchedOf(reader, "");
    REQUIRE(all);
    CHECK(targetsOf(*all) == std::vector<std::string>{"c.much", "b.little", "d.outside", "a.calm"});
    const Watched& much = all->front();
    CHECK(much.worth);
    CHECK(much.points == 60);
    const auto since = (much.sinceMs - kJune) / kHourMs;  // a run an hour, the 41st is the first of it
    CHECK(since >= 38);
    CHECK(since <= 41);
    CHECK(much.sinceRun == "run-" + std::to_string(since));
    CHECK(much.kind == Kind::Pressure);
    CHECK(much.unit == "bar");
    CHECK_FALSE(all->back().worth);
    CHECK((*all)[2].outside == 10);
    CHECK((*all)[2].of == kBaseline);
}

TEST_CASE("a press is watched by itself, and a phase of few readings not at all")
{
    FakeReader reader = shop();
    Dice dice(2);
    add(reader, "north", "long", noisy(dice, 30));
    add(reader, "north", "short", noisy(dice, kFewestWatched - 1));
    add(reader, "south", "long", noisy(dice, 30));
    add(reader, "south", "changed", noisy(dice, 30));
    for (std::size_t i = reader.readingRows.size() - 30; i < reader.readingRows.size() - 20; ++i)
        reader.readingRows[i].pressSha = "second";
    CHECK(watchedOf(reader, "north")->size() == 1);
    CHECK(targetsOf(*watchedOf(reader, "south")) == std::vector<std::string>{"long"});
    CHECK(watchedOf(reader, "")->size() == 2);
    CHECK(watchedOf(reader, "west")->empty());
}

TEST_CASE("what has an aim is watched as its distance from it, what has none as it was read")
{
    FakeReader reader = shop();
    Dice dice(3);
    // The jobs want another pressure from run 20 on, and the press gives it: nothing has drifted.
    std::vector<double> bar = noisy(dice, 40);
    for (std::size_t i = 20; i < 40; ++i) bar[i] += 0.3;
    add(reader, "north", "aimed", bar);
    for (std::size_t i = 0; i < 20; ++i) *reader.readingRows[i].aimed += 0.3e5;
    add(reader, "north", "unaimed", noisy(dice, 40));
    for (std::size_t i = 40; i < 80; ++i) reader.readingRows[i].aimed.reset();
    const auto all = watchedOf(reader, "north");
    REQUIRE(all);
    REQUIRE(all->size() == 2);
    for (const Watched& one : *all) {
        CHECK(one.measure == (one.name.target == "aimed" ? Measure::FromTarget : Measure::Read));
        CHECK_FALSE(one.worth);
    }
}

TEST_CASE("watching looks at the newest readings only, and not beyond the moment that it is asked for")
{
    FakeReader reader = shop();
    Dice dice(4);
    add(reader, "north", "moved", noisy(dice, 200, 100, 4));
    CHECK(watchedOf(reader, "north")->front().worth);
    CHECK_FALSE(watchedOf(reader, "north", {}, 90)->front().worth);
    CHECK(watchedOf(reader, "north", {}, 90)->front().points == 90);
    const auto before = watchedOf(reader, "north", {}, 500, kJune + 100 * kHourMs);
    CHECK_FALSE(before->front().worth);
    CHECK(before->front().points == 99);
}

TEST_CASE("watching ends where it is told to, with what there is")
{
    FakeReader reader = shop();
    Dice dice(5);
    for (const char* target : {"a", "b", "c", "d"}) add(reader, "north", target, noisy(dice, 20));
    int asked = 0;
    const auto some = watchedOf(reader, "north", [&] { return ++asked <= 2; });
    REQUIRE(some);
    CHECK(some->size() == 2);
    CHECK(asked == 3);
    CHECK(watchedOf(reader, "north", [] { return false; })->empty());
}

TEST_CASE("a shop of two hundred calm readings has a handful of lines that are worth a look")
{
    FakeReader reader = shop();
    Dice dice(6);
    for (int i = 0; i < 200; ++i)
        add(reader, "press-" + std::to_string(i / 20), "t" + std::to_string(i % 20), noisy(dice, 20 + dice.below(60)));
    const auto all = watchedOf(reader, "");
    REQUIRE(all);
    REQUIRE(all->size() == 200);
    const auto worth = std::count_if(all->begin(), all->end(), [](const Watched& one) { return one.worth; });
    INFO(worth);
    CHECK(worth <= 4);
    CHECK(std::is_partitioned(all->begin(), all->end(), [](const Watched& one) { return one.worth; }));
}

TEST_CASE("a store that does not say what it has is not watched, a series that it does not give is left out")
{
    FakeReader reader = shop();
    Dice dice(7);
    add(reader, "north", "a", noisy(dice, 20));
    reader.broken = "seriesNames";
    CHECK(watchedOf(reader, "").error().code == "store.failed");
    reader.broken = "readings";
    CHECK(watchedOf(reader, "")->empty());
}

}  // namespace taut::history::test
