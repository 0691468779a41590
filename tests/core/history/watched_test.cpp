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
records::CourseQuery ofPress(const std::string& press)
{
    records::CourseQuery query;
    query.press = press;
    return query;
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
    const auto all = watchedOf(reader, {});
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

TEST_CASE("a press is watched by itself, and a phase of few readings stands last and is not judged")
{
    FakeReader reader = shop();
    Dice dice(2);
    add(reader, "north", "short", noisy(dice, kFewestWatched - 1, 4, 9));
    add(reader, "north", "long", noisy(dice, 30));
    add(reader, "south", "changed", noisy(dice, 30));
    for (std::size_t i = reader.readingRows.size() - 30; i < reader.readingRows.size() - 20; ++i)
        reader.readingRows[i].pressSha = "second";
    add(reader, "south", "long", noisy(dice, 30));
    const auto north = watchedOf(reader, ofPress("north")), south = watchedOf(reader, ofPress("south"));
    CHECK(targetsOf(*north) == std::vector<std::string>{"long", "short"});
    CHECK(targetsOf(*south) == std::vector<std::string>{"long", "changed"});
    for (const auto* all : {&*north, &*south}) {
        CHECK(all->front().tells());
        CHECK_FALSE(all->back().tells());
        CHECK_FALSE(all->back().moved);
    }
    CHECK(south->back().points == 10);
    CHECK(watchedOf(reader, {})->size() == 4);
    CHECK(watchedOf(reader, ofPress("west"))->empty());
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
    const auto all = watchedOf(reader, ofPress("north"));
    REQUIRE(all);
    REQUIRE(all->size() == 2);
    for (const Watched& one : *all) {
        CHECK(one.measure == (one.name.target == "aimed" ? Measure::FromTarget : Measure::Read));
        CHECK_FALSE(one.worth);
    }
}

TEST_CASE("the chart of a line says of its reading what the line says, however long the series and whatever was asked")
{
    FakeReader reader = shop();
    Dice dice(4);
    // It moved 800 readings ago and has stayed there since: whoever looks at the newest 500 only finds it calm, and
    // whoever takes the beginning of those for where it began finds in the other one a move that there is not.
    add(reader, "north", "moved", noisy(dice, 1200, 400, 4));
    std::vector<double> back = noisy(dice, 1200);
    for (std::size_t i = 700; i < 730; ++i) back[i] -= 0.06;
    add(reader, "north", "dipped", back);
    for (std::size_t i = 0; i < reader.readingRows.size(); ++i) reader.readingRows[i].job = i % 3 == 0 ? "tea" : "jam";
    records::CourseQuery day = ofPress("north"), tea = ofPress("north");
    day.sinceMs = kJune + 500 * kHourMs;
    day.untilMs = kJune + 850 * kHourMs;
    tea.job = "tea";
    for (const records::CourseQuery& within : {records::CourseQuery{}, ofPress("north"), day, tea}) {
        const auto all = watchedOf(reader, within);
        REQUIRE(all);
        REQUIRE(all->size() == 2);
        for (const Watched& one : *all) {
            INFO(one.name.target << " of " << one.points);
            const auto chart = driftOf(seriesOf(reader, one.query, one.measure).value());
            REQUIRE(chart);
            CHECK(chart->series.points.size() == one.points);
            REQUIRE(chart->moved.has_value() == one.moved.has_value());
            if (!one.moved) continue;
            CHECK(chart->moved->since == one.moved->since);
            CHECK(chart->moved->by == one.moved->by);
            CHECK(chart->moved->stands == one.moved->stands);
        }
    }
    const auto all = watchedOf(reader, {});
    CHECK(all->front().name.target == "moved");
    CHECK(all->front().worth);
    CHECK(all->front().points == 1200);
    CHECK_FALSE(all->back().worth);
    const auto inDays = watchedOf(reader, day);
    for (const Watched& one : *inDays) {
        INFO(one.name.target << " by " << (one.moved ? one.moved->sigmas : 0) << " since " << one.sinceRun);
        CHECK(one.points == 350);
        CHECK_FALSE(one.worth);
    }
}

TEST_CASE("watching ends where it is told to, with what there is")
{
    FakeReader reader = shop();
    Dice dice(5);
    for (const char* target : {"a", "b", "c", "d"}) add(reader, "north", target, noisy(dice, 20));
    int asked = 0;
    const auto some = watchedOf(reader, ofPress("north"), [&] { return ++asked <= 2; });
    REQUIRE(some);
    CHECK(some->size() == 2);
    CHECK(asked == 3);
    CHECK(watchedOf(reader, ofPress("north"), [] { return false; })->empty());
}

TEST_CASE("a shop of two hundred calm readings has a handful of lines that are worth a look")
{
    FakeReader reader = shop();
    Dice dice(6);
    for (int i = 0; i < 200; ++i)
        add(reader, "press-" + std::to_string(i / 20), "t" + std::to_string(i % 20), noisy(dice, 20 + dice.below(60)));
    const auto all = watchedOf(reader, {});
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
    CHECK(watchedOf(reader, {}).error().code == "store.failed");
    reader.broken = "readings";
    CHECK(watchedOf(reader, {})->empty());
}

}  // namespace taut::history::test
