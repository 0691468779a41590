// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/set_up_ratio.h"

#include "core/history/times_report.h"
#include "core/inputs/inputs.h"
#include "tests/core/history/times_rows.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

run::Source jobSource(const std::string& id, const std::string& file)
{
    std::string text = run::mini::resource("demo/jobs/" + file + ".toml");
    const std::size_t at = text.find("id = \"");
    text.replace(at, text.find('"', at + 6) - at, "id = \"" + id);
    return run::sourceOf(id, 1, text);
}
void addRuns(FakeReader& reader, const std::string& job, std::size_t many, std::int64_t minutes,
             const std::string& kind = "full", const std::string& state = "completed")
{
    for (std::size_t i = 0; i < many; ++i) {
        Row row;
        row.seq = 1000 - reader.stageRows.size();
        row.job = job;
        row.kind = kind;
        row.state = state;
        row.workedMs = minutes * 60000;
        add(reader, row);
    }
}

}  // namespace

TEST_CASE("a job runs for its length at its speed")
{
    Findings notes;
    const auto job = inputs::readJob(run::mini::resource("demo/jobs/quince-jelly.toml"), "", notes);
    REQUIRE(job);
    // 42000 pieces, three across and four around, of twelve inches of repeat and 7 % waste, at 90 m/min.
    const double metres = 42000.0 / (3 * 4) * 12 * 0.0254 / (1 - 0.07);
    REQUIRE(runningSecondsOf(*job));
    CHECK(*runningSecondsOf(*job) == Approx(metres / 1.5));
    auto still = *job;
    still.speed.reset();
    CHECK_FALSE(runningSecondsOf(still));
    auto unknown = *job;
    unknown.quantity.reset();
    CHECK_FALSE(runningSecondsOf(unknown));
}

TEST_CASE("jobs that are mostly setting up come first, and those that do not say how long they run last")
{
    FakeReader reader;
    reader.perPage = 500;
    addRuns(reader, "J-short", 5, 60);
    addRuns(reader, "J-long", 5, 20);
    addRuns(reader, "J-long", 9, 300, "next_roll");
    addRuns(reader, "J-long", 3, 1, "full", "abandoned");
    addRuns(reader, "J-none", 2, 30);
    addRuns(reader, "J-gone", 2, 30);
    run::Source none = jobSource("J-none", "quince-jelly");
    none.text.replace(none.text.find("quantity"), 8, "# quantity");
    reader.defined["job"] = {jobSource("J-long", "quince-jelly"), none, jobSource("J-short", "quince-jelly")};
    const Times times = timesOf(reader, {}).value();
    const auto ratios = setUpRatiosOf(reader, times);
    REQUIRE(ratios);
    REQUIRE(ratios->size() == 4);
    CHECK((*ratios)[0].job == "J-short");
    CHECK((*ratios)[1].job == "J-long");
    CHECK((*ratios)[1].setUp.count == 5);
    CHECK(*(*ratios)[1].ratio() == Approx(20 * 60 / *(*ratios)[1].runningSeconds));
    CHECK_FALSE((*ratios)[2].ratio());
    CHECK_FALSE((*ratios)[3].ratio());
    Names names(reader);
    const report::Report page = timesReport(times, {}, Group::Job, names, 0, *ratios);
    const report::Table table = report::test::tableOf(
        page, "Setting up against running: the median full set-up over the running time planned for the job");
    REQUIRE(table.rows.size() == 3);
    CHECK(report::test::wordsOf(table.rows[0][0]) == "J-short");
    CHECK(report::test::wordsOf(table.rows[2][0]).find("2 jobs do not say how long they run") == 0);
    reader.broken = "definitions";
    CHECK(setUpRatiosOf(reader, times).error().code == "store.failed");
    CHECK(setUpRatiosOf(reader, {})->empty());
}

}  // namespace taut::history::test
