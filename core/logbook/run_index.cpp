// SPDX-License-Identifier: GPL-3.0-or-later
#include <string_view>

#include "core/logbook/index.h"
#include "core/logbook/open_runs.h"
#include "core/logbook/writer_impl.h"

// What a run's document answers: its row, readings, course, words and place in the series.
namespace taut::logbook {

namespace {

constexpr std::int64_t kDayMs = 86'400'000;
constexpr std::size_t kMostJobs = 5'000;
constexpr std::string_view kWaste = "setup.web";

std::int64_t msOf(const Json& at)
{
    const auto ms = readUtc(at.text());
    return ms ? *ms : 0;
}

std::string nameIn(const Json& people, const std::string& id)
{
    for (const Json& person : people.items())
        if (person["id"].text() == id) return person["name"].text();
    return {};
}

void bindNumber(SQLite::Statement& put, int index, const Json& value)
{
    if (value.isNumber())
        put.bind(index, value.number());
    else
        put.bind(index);
}

bool isReading(const Json& step) { return step["value"].isNumber() && !step["target"].text().empty(); }

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

void Index::runRow(std::uint64_t seq, const Json& body, const seal::Course& course, const JobWords& job,
                   const Json::Array& steps)
{
    const Json& inputs = body["inputs"];
    const std::string person = body["operator"].text();
    const std::int64_t begun = msOf(body["begun"]);
    const auto offset = readOffset(body["offset"].text());
    const int minutes = offset ? *offset : 0;
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
    put.with(body["id"].text(), asInt(seq), inputs["press"]["id"].text(), dayOf(begun, minutes),
             inputs["job"]["id"].text(), inputs["substrate"]["id"].text(), inputs["roll"]["id"].text(), person,
             nameIn(body["people"], person), begun, msOf(body["ended"]), body["state"].text(), body["verdict"].text(),
             static_cast<std::int64_t>(body["deviations"].items().size()), body["run_kind"].text(),
             inputs["press"]["edition"].integer(), inputs["press"]["sha256"].text(), job.title, job.customer,
             course.outside, static_cast<std::int64_t>(course.incidents.size()), hourOf(begun, minutes));
    put->bind(23);
    for (const Json& step : steps)
        if (step["target"].text() == kWaste && step["value"].isNumber()) put->bind(23, step["value"].number());
    put->exec();
}

void Index::reading(std::uint64_t seq, const std::string& press, const Json& step, const seal::Course& course)
{
    const std::string id = step["step"].text(), target = step["target"].text(), unit = step["unit"].text();
    {
        const auto put = m_prepared("INSERT INTO reading_rows (seq, step, press, target, unit, verdict, entered_text, "
                                    "at, person, si_value, low, high, uncertainty, first_verdict, aimed) "
                                    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
        put.with(asInt(seq), id, press, target, unit, step["verdict"].text(), step["entered"].text(), msOf(step["at"]),
                 step["by"].text());
        bindNumber(*put, 10, step["value"]);
        bindNumber(*put, 11, step["low"]);
        bindNumber(*put, 12, step["high"]);
        bindNumber(*put, 13, step["uncertainty"]);
        const auto answer = course.answers.find(id);
        const bool known = answer != course.answers.end();
        put->bind(14, known ? answer->second.first : step["verdict"].text());
        if (known && answer->second.aimed)
            put->bind(15, *answer->second.aimed);
        else
            put->bind(15);
        put->exec();
    }
    const auto more = m_prepared("INSERT INTO series_rows (press, target, unit, readings) VALUES (?, ?, ?, 1) "
                                 "ON CONFLICT (press, target) DO UPDATE SET unit = excluded.unit, "
                                 "readings = readings + 1");
    more.with(press, target, unit);
    more->exec();
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

void Index::run(std::uint64_t seq, const Json& body)
{
    const seal::Course course = m_courses.of(body);
    const JobWords job = jobOf(body["inputs"]["job"]);
    const Json::Array steps = seal::stepsOf(body);
    const std::string run = body["id"].text();
    std::int64_t openRow = 0;
    {
        const auto open = m_prepared("SELECT number FROM run_rows WHERE run_id = ? AND seq IS NULL");
        open.with(run);
        if (open->executeStep()) openRow = open->getColumn(0).getInt64();
    }
    if (openRow > 0) dropWords(m_prepared, -openRow);
    runRow(seq, body, course, job, steps);
    const std::string press = body["inputs"]["press"]["id"].text();
    for (const Json& step : steps)
        if (isReading(step)) reading(seq, press, step, course);
    this->course(seq, course);
    putWords(m_prepared, asInt(seq), wordsOf(body, job, nameIn(body["people"], body["operator"].text())));
    const auto day = m_prepared("INSERT INTO day_rows (day, first, last) VALUES (?1, ?2, ?2) ON CONFLICT (day) DO "
                                "UPDATE SET first = min(first, excluded.first), last = max(last, excluded.last)");
    day.with(msOf(body["begun"]) / kDayMs, asInt(seq));
    day->exec();
}

void Index::leaveSeries(std::int64_t seq)
{
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
