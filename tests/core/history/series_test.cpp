// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/series.h"

#include "tests/core/history/fake_reader.h"

namespace taut::history::test {

namespace {

records::SeriesQuery brakeQuery()
{
    records::SeriesQuery query;
    query.press = "north";
    query.target = "tension.unwind.setting";
    return query;
}
Series mustSeries(const FakeReader& reader, Measure measure = Measure::Read, std::size_t most = 2000)
{
    auto series = seriesOf(reader, brakeQuery(), measure, most);
    if (!series) FAIL(series.error().code << " " << series.error().text.source);
    return *std::move(series);
}
std::vector<double> rising(std::size_t count)
{
    std::vector<double> bar;
    for (std::size_t i = 0; i < count; ++i) bar.push_back(1 + 0.01 * static_cast<double>(i));
    return bar;
}

}  // namespace

TEST_CASE("a series stands oldest first, whatever the pages in which a store gives it")
{
    FakeReader reader;
    reader.readingRows = barReadings(rising(23));
    for (const std::size_t perPage : {1U, 7U, 23U, 500U}) {
        reader.perPage = perPage;
        const Series series = mustSeries(reader);
        REQUIRE(series.points.size() == 23);
        for (std::size_t i = 0; i < 23; ++i) {
            CHECK(series.points[i].seq == i + 1);
            CHECK(series.points[i].value == Approx(1e5 + 1e3 * static_cast<double>(i)));
        }
        CHECK_FALSE(series.older);
    }
}

TEST_CASE("of many readings the newest are taken, and it is said that there are older ones")
{
    FakeReader reader;
    reader.readingRows = barReadings(rising(23));
    const Series ten = mustSeries(reader, Measure::Read, 10);
    REQUIRE(ten.points.size() == 10);
    CHECK(ten.points.front().seq == 14);
    CHECK(ten.points.back().seq == 23);
    CHECK(ten.older);
    CHECK_FALSE(mustSeries(reader, Measure::Read, 23).older);
}

TEST_CASE("a point knows its run, and counts as outside by what was entered first")
{
    FakeReader reader;
    records::Reading row = barReading(1, 1.4);
    row.first = "outside";  // read again and inside
    reader.readingRows = {row};
    const Series series = mustSeries(reader);
    const Point& point = series.points.front();
    CHECK(point.run == "run-1");
    CHECK(point.press == "north");
    CHECK(point.job == "J-1");
    CHECK(point.substrate == "paper");
    CHECK(point.roll == "R-1");
    CHECK(point.atMs == kJune + kHourMs);
    CHECK(point.outside);
    CHECK(point.low->si() == 1e5);
    CHECK(point.high->si() == 2e5);
}

TEST_CASE("from target a reading is what it is less its aim, and so is its window")
{
    FakeReader reader;
    std::vector<records::Reading> rows = barReadings({1.4, 1.5, 1.7});
    rows[1].aimed = 1.45e5;
    rows[1].high.reset();
    reader.readingRows = rows;
    const Series series = mustSeries(reader, Measure::FromTarget);
    REQUIRE(series.points.size() == 3);
    CHECK(series.points[0].value == Approx(-1e4));
    CHECK(series.points[1].value == Approx(5e3));
    CHECK(series.points[2].value == Approx(2e4));
    CHECK(series.points[2].low->si() == Approx(-5e4));
    CHECK(series.points[2].high->si() == Approx(5e4));
    CHECK(series.points[1].low->si() == Approx(-4.5e4));
    CHECK_FALSE(series.points[1].high);
}

TEST_CASE("readings without an aim are left out from target, counted, and take no place of the others")
{
    FakeReader reader;
    std::vector<records::Reading> rows = barReadings(rising(30));
    for (std::size_t i = 0; i < rows.size(); i += 3) rows[i].aimed.reset();
    reader.readingRows = rows;
    const Series all = mustSeries(reader, Measure::FromTarget);
    CHECK(all.points.size() == 20);
    CHECK(all.unaimed == 10);
    const Series some = mustSeries(reader, Measure::FromTarget, 12);
    CHECK(some.points.size() == 12);
    CHECK(some.older);
    CHECK(mustSeries(reader, Measure::Read).unaimed == 0);
    for (records::Reading& row : reader.readingRows) row.aimed.reset();
    CHECK(seriesOf(reader, brakeQuery(), Measure::FromTarget).error().code == "stats.too_few");
}

TEST_CASE("a series narrows as its query does")
{
    FakeReader reader;
    std::vector<records::Reading> rows = barReadings(rising(12));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].press = i % 2 ? "north" : "south";
        rows[i].job = i % 3 ? "J-1" : "J-2";
    }
    reader.readingRows = rows;
    CHECK(mustSeries(reader).points.size() == 6);
    records::SeriesQuery query = brakeQuery();
    query.job = "J-2";
    CHECK(seriesOf(reader, query, Measure::Read)->points.size() == 2);
    query.press.clear();
    CHECK(seriesOf(reader, query, Measure::Read)->points.size() == 4);
    query.untilMs = kJune + 7 * kHourMs;
    CHECK(seriesOf(reader, query, Measure::Read)->points.size() == 2);
}

TEST_CASE("a reading speaks the unit in which it was entered, and SI where its text does not say it")
{
    records::Reading row = barReading(1, 1.4);
    REQUIRE(quantityOf(row));
    CHECK(quantityOf(row)->kind() == Kind::Pressure);
    CHECK(quantityOf(row)->unit() == "bar");
    row.entered = "20.3 psi";  // 139,963 Pa: not what was kept
    CHECK(quantityOf(row)->unit() != "psi");
    CHECK(quantityOf(row)->si() == 1.4e5);
    row.entered = "see note";
    CHECK(quantityOf(row)->kind() == Kind::Pressure);
    row.unit = "1";
    row.value = 0.05;
    row.entered = "5 %";
    CHECK(quantityOf(row)->kind() == Kind::Share);
    CHECK(quantityOf(row)->unit() == "%");
    row.value = 3;
    row.entered = "3";
    CHECK(quantityOf(row)->kind() == Kind::Count);
    row.unit = "furlong";
    CHECK_FALSE(quantityOf(row));
}

TEST_CASE("a series is in the unit of its newest reading")
{
    FakeReader reader;
    std::vector<records::Reading> rows = barReadings({1.4, 1.5});
    rows[0].value = 1.5e5;
    rows[0].entered = "150 kPa";
    reader.readingRows = rows;
    const Series series = mustSeries(reader);
    CHECK(series.unit == "kPa");
    CHECK(series.kind == Kind::Pressure);
    CHECK(series.quantity(1e5).unit() == "kPa");
}

TEST_CASE("a series that cannot be had says why")
{
    FakeReader reader;
    CHECK(seriesOf(reader, brakeQuery(), Measure::Read).error().code == "stats.too_few");
    reader.readingRows = barReadings({1.4});
    reader.readingRows.front().unit = "furlong";
    CHECK(seriesOf(reader, brakeQuery(), Measure::Read).error().code == "history.kind");
    reader.broken = "readings";
    CHECK(seriesOf(reader, brakeQuery(), Measure::Read).error().code == "store.failed");
}

}  // namespace taut::history::test
