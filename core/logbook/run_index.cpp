// SPDX-License-Identifier: GPL-3.0-or-later
#include <string_view>

#include "core/logbook/index.h"
#include "core/logbook/open_runs.h"
#include "core/logbook/writer_impl.h"

// What a run's document answers: its row, readings, course, words and place in the series.
namespace taut::logbook {

namespace {

constexpr std::size_t kMostJobs = 5'000;
constexpr std::string_view kWaste = "setup.web";

void bindReal(SQLite::Statement& put, int index, const std::optional<double>& value)
{
    if (value)
        put.bind(index, *value);
    else
        put.bind(index);
}

}  // namespace

int hourOf(std::int64_t utcMs, int offsetMinutes)
{
    const std::int64_t ms = (utcMs + std::int64_t{offsetMinutes} * 60'000) % kDayMs;
    return static_cast<int>((ms < 0 ? ms + kDayMs : ms) / 3'600'000);
}

JobWords Index::jobOf(const Json& job)
{
    const std::string sha256 = job["sha256"].text();
    if (const auto found = m_jobs.find(sha256); found != m_jobs.end()) return found->second;
    const auto query = m_prepared("SELECT text FROM definition_rows WHERE what = 'job' AND id = ? AND sha256 = ?");
    query.with(job["id"].text(), sha256);
    // What is not to be had now may be there the next time.
    if (!query->executeStep()) return {};
    if (m_jobs.size() >= kMostJobs) m_jobs.clear();
    return m_jobs[sha256] = jobWords(query->getColumn(0).getString());
}

void Index::runRow(std::uint64_t seq, const RunAnswers& run)
{
    const auto put = m_prepared(
        "INSERT INTO run_rows (run_id, seq, press, day, job, substrate, roll, operator, operator_name, "
        "begun, ended, state, verdict, deviations, kind, press_edition, press_sha, title, customer, outside, "
        "incidents, hour, waste_m, present, reviewed_by) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'sealed', '') "
        "ON CONFLICT (run_id) DO UPDATE SET seq = excluded.seq, roll = excluded.roll, "
        "operator = excluded.operator, operator_name = excluded.operator_name, "
        "ended = excluded.ended, state = excluded.state, verdict = excluded.verdict, "
        "present = excluded.present, reviewed_by = excluded.reviewed_by, deviations = excluded.deviations, "
        "kind = excluded.kind, press_edition = excluded.press_edition, press_sha = excluded.press_sha, "
        "title = excluded.title, customer = excluded.customer, outside = excluded.outside, "
        "incidents = excluded.incidents, hour = excluded.hour, waste_m = excluded.waste_m");
    put.with(run.run, asInt(seq), run.press, dayOf(run.begunMs, run.offsetMinutes), run.job, run.substrate, run.roll,
             run.person, run.personName, run.begunMs, run.endedMs, run.state, run.verdict, run.deviations, run.kind,
             run.pressEdition, run.pressSha, run.words.title, run.words.customer, run.course.outside,
             static_cast<std::int64_t>(run.course.incidents.size()), hourOf(run.begunMs, run.offsetMinutes));
    std::optional<double> waste;
    for (const ReadingAnswer& reading : run.readings)
        if (reading.target == kWaste) waste = reading.value;
    bindReal(*put, 23, waste);
    put->exec();
}

void Index::reading(std::uint64_t seq, const std::string& press, const ReadingAnswer& reading)
{
    const auto put = m_prepared("INSERT INTO reading_rows (seq, step, press, target, unit, verdict, entered_text, "
                                "at, person, si_value, low, high, uncertainty, first_verdict, aimed) "
                                "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    put.with(asInt(seq), reading.step, press, reading.target, reading.unit, reading.verdict, reading.entered,
             reading.atMs, reading.person, reading.value);
    bindReal(*put, 11, reading.low);
    bindReal(*put, 12, reading.high);
    bindReal(*put, 13, reading.uncertainty);
    put->bind(14, reading.first);
    bindReal(*put, 15, reading.aimed);
    put->exec();
    Series& series = m_series[{press, reading.target}];
    series.unit = reading.unit;
    ++series.readings;
}

void Index::course(std::uint64_t seq, const seal::Course& course)
{
    std::int64_t place = 0;
    for (const seal::StageCourse& stage : course.stages) {
        const auto put = m_prepared("INSERT INTO stage_rows (seq, place, stage, worked, watched, away, external) "
                                    "VALUES (?, ?, ?, ?, ?, ?, ?)");
        put.with(asInt(seq), place++, stage.stage, stage.workedMs, stage.watchedMs, stage.awayMs, stage.externalMs);
        put->exec();
    }
    for (const seal::CourseIncident& one : course.incidents) {
        const auto put = m_prepared("INSERT OR IGNORE INTO incident_rows (seq, n, what, step, target, detail, at) "
                                    "VALUES (?, ?, ?, ?, ?, ?, ?)");
        put.with(asInt(seq), one.n, one.what, one.step, one.target, one.detail, one.atMs);
        put->exec();
    }
}

void Index::run(std::uint64_t seq, const RunAnswers& run)
{
    std::int64_t openRow = 0;
    if (m_standing == Standing::Maybe) {
        const auto open = m_prepared("SELECT number FROM run_rows WHERE run_id = ? AND seq IS NULL");
        open.with(run.run);
        if (open->executeStep()) openRow = open->getColumn(0).getInt64();
    }
    if (openRow > 0) dropWords(m_prepared, -openRow);
    runRow(seq, run);
    for (const ReadingAnswer& one : run.readings) reading(seq, run.press, one);
    course(seq, run.course);
    (m_standing == Standing::Maybe ? putWords : putNewWords)(m_prepared, asInt(seq), run.words);
    const auto [day, isFirst] = m_days.try_emplace(run.begunMs / kDayMs, Day{asInt(seq), asInt(seq)});
    if (!isFirst) day->second.last = asInt(seq);
}

void Index::settle()
{
    for (const auto& [key, series] : m_series) {
        const auto more = m_prepared("INSERT INTO series_rows (press, target, unit, readings) VALUES (?, ?, ?, ?) "
                                     "ON CONFLICT (press, target) DO UPDATE SET unit = excluded.unit, "
                                     "readings = readings + excluded.readings");
        more.with(key.first, key.second, series.unit, series.readings);
        more->exec();
    }
    for (const auto& [day, seals] : m_days) {
        const auto put = m_prepared("INSERT INTO day_rows (day, first, last) VALUES (?, ?, ?) ON CONFLICT (day) DO "
                                    "UPDATE SET first = min(first, excluded.first), last = max(last, excluded.last)");
        put.with(day, seals.first, seals.last);
        put->exec();
    }
    m_series.clear();
    m_days.clear();
}

void Index::leaveSeries(std::int64_t seq)
{
    settle();
    {
        const auto fewer = m_prepared(
            "UPDATE series_rows SET readings = readings - m.n FROM (SELECT press, target, count(*) AS n FROM "
            "reading_rows WHERE seq = ? GROUP BY press, target) AS m WHERE series_rows.press = m.press AND "
            "series_rows.target = m.target");
        fewer.with(seq);
        fewer->exec();
    }
    m_prepared("DELETE FROM series_rows WHERE readings <= 0")->exec();
}

}  // namespace taut::logbook
