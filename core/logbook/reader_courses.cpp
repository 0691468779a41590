// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <functional>
#include <limits>

#include "core/logbook/file_reader.h"

// What many runs have in common: readings one after the other, times of stages, incidents. Void runs are in none.
namespace taut::logbook {

namespace {

/// Which sealed runs, newest seal first, from one of them on.
Narrowed narrowed(SQLite::Database& db, const records::CourseQuery& query, const std::optional<std::int64_t>& from)
{
    Narrowed where;
    if (!query.press.empty()) where.with("r.press = ?", {query.press});
    if (!query.job.empty()) where.with("r.job = ?", {query.job});
    if (!query.substrate.empty()) where.with("r.substrate = ?", {query.substrate});
    where.with("r.present <> 'void'", {});
    where.with("r.seq > 0", {});
    if (from) where.with("r.seq <= ?", {*from});
    betweenTimes(db, where, "r.seq", query.sinceMs, query.untilMs);
    return where;
}

/// The index by which runs are gone through: that of which the fewest are to be expected.
const char* wayOf(const records::CourseQuery& query, const char* otherwise)
{
    if (!query.job.empty()) return " INDEXED BY run_rows_by_job";
    if (!query.substrate.empty()) return " INDEXED BY run_rows_by_substrate";
    if (!query.press.empty()) return " INDEXED BY run_rows_by_press";
    return otherwise;
}

/// Of what a run said here, "17/rest": its seal, and where to go on in it.
struct Mark {
    std::optional<std::int64_t> seq;
    std::string rest;
};
std::optional<Mark> markFrom(std::string_view after)
{
    if (after.empty()) return Mark{};
    const std::size_t slash = after.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const auto seq = numberAfter(after.substr(0, slash), "");
    if (!seq) return std::nullopt;
    return Mark{seq, std::string(after.substr(slash + 1))};
}

/// What stands of each run in a list.
struct OfRun {
    std::uint64_t seq{};
    std::string run, press, job, substrate, roll, kind, pressSha;
    std::int64_t begunMs{};
    int hour{};
    std::string state;
};
constexpr const char* kOfRun = "r.seq, r.run_id, r.press, r.job, r.substrate, r.roll, r.kind, r.press_sha, r.begun, "
                               "r.hour, r.state";
OfRun ofRunFrom(SQLite::Statement& row)
{
    const auto text = [&row](int column) { return row.getColumn(column).getString(); };
    return {asUint(row.getColumn(0).getInt64()),
            text(1),
            text(2),
            text(3),
            text(4),
            text(5),
            text(6),
            text(7),
            row.getColumn(8).getInt64(),
            row.getColumn(9).getInt(),
            text(10)};
}

template <class T>
// NOLINTNEXTLINE(performance-unnecessary-value-param): its words are moved on, which the check misses in a template
T headed(OfRun run)
{
    T row;
    row.seq = run.seq;
    row.run = std::move(run.run);
    row.press = std::move(run.press);
    row.job = std::move(run.job);
    row.substrate = std::move(run.substrate);
    return row;
}

/// How the rows of one run are found: a statement with ?1 its seal and ?2 where the page before ended, and whoever
/// reads a row of it and says where it stands.
template <class T>
struct Rows {
    std::string sql;
    std::function<void(SQLite::Statement&, const OfRun&, const Mark&)> bind;
    std::function<T(SQLite::Statement&, const OfRun&)> read;
    std::function<std::string(const T&)> place;
};

/// A page of rows run by run: runs from an index, the rows of each from their own key.
template <class T>
records::Page<T> pageOf(SQLite::Database& db, const std::string& way, const Narrowed& where, const Rows<T>& rows,
                        const Mark& mark, std::size_t limit)
{
    SQLite::Statement runs(db, std::string("SELECT ") + kOfRun + " FROM run_rows AS r" + way + where.sql() +
                                   " ORDER BY r.seq DESC");
    where.bind(runs);
    SQLite::Statement inner(db, rows.sql);
    records::Page<T> page;
    while (runs.executeStep()) {
        const OfRun run = ofRunFrom(runs);
        rows.bind(inner, run, mark.seq && run.seq == asUint(*mark.seq) ? mark : Mark{});
        while (inner.executeStep()) {
            if (page.rows.size() == limit) {
                const T& last = page.rows.back();
                page.next = std::to_string(last.seq) + "/" + rows.place(last);
                return page;
            }
            page.rows.push_back(rows.read(inner, run));
        }
        inner.reset();
    }
    return page;
}

std::optional<double> realIn(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional(column.getDouble());
}

constexpr int kOfRunColumns = 11;
constexpr const char* kOfReading = "m.step, m.target, m.unit, m.verdict, m.entered_text, m.si_value, m.low, m.high, "
                                   "m.at, m.aimed, m.uncertainty, m.first_verdict";

records::Reading readingFrom(SQLite::Statement& row, int from, OfRun run)
{
    const auto text = [&](int column) { return row.getColumn(from + column).getString(); };
    std::string roll = std::move(run.roll), pressSha = std::move(run.pressSha);
    auto reading = headed<records::Reading>(std::move(run));
    reading.roll = std::move(roll);
    reading.pressSha = std::move(pressSha);
    reading.step = text(0);
    reading.target = text(1);
    reading.unit = text(2);
    reading.verdict = text(3);
    reading.entered = text(4);
    reading.value = row.getColumn(from + 5).getDouble();
    reading.low = realIn(row.getColumn(from + 6));
    reading.high = realIn(row.getColumn(from + 7));
    reading.atMs = row.getColumn(from + 8).getInt64();
    reading.aimed = realIn(row.getColumn(from + 9));
    reading.uncertainty = realIn(row.getColumn(from + 10));
    reading.first = text(11);
    return reading;
}

/// Readings of a target along its own index.
records::Page<records::Reading> readingsOf(SQLite::Database& db, const records::SeriesQuery& query, const Mark& mark,
                                           std::size_t limit)
{
    Narrowed where;
    where.with("m.target = ?", {query.target});
    if (!query.press.empty()) where.with("m.press = ?", {query.press});
    where.with("r.present <> 'void'", {});
    if (mark.seq) where.with("(m.seq, m.step) < (?, ?)", {*mark.seq, mark.rest});
    betweenTimes(db, where, "m.seq", query.sinceMs, query.untilMs);
    SQLite::Statement list(db, std::string("SELECT ") + kOfRun + ", " + kOfReading +
                                   " FROM reading_rows AS m INDEXED BY " +
                                   (query.press.empty() ? "reading_rows_by_target" : "reading_rows_by_series") +
                                   " CROSS JOIN run_rows AS r ON r.seq = m.seq" + where.sql() +
                                   " ORDER BY m.seq DESC, m.step DESC LIMIT " + std::to_string(limit + 1));
    where.bind(list);
    records::Page<records::Reading> page;
    page.rows.reserve(limit);
    while (list.executeStep()) {
        if (page.rows.size() == limit) {
            page.next = std::to_string(page.rows.back().seq) + "/" + page.rows.back().step;
            break;
        }
        page.rows.push_back(readingFrom(list, kOfRunColumns, ofRunFrom(list)));
    }
    return page;
}

/// The same of one job or substrate, of which there are far fewer runs than readings of the target.
records::Page<records::Reading> readingsByRun(SQLite::Database& db, const records::SeriesQuery& query, const Mark& mark,
                                              std::size_t limit)
{
    const records::CourseQuery runs{query.press, query.job, query.substrate, query.sinceMs, query.untilMs, limit};
    const Rows<records::Reading> rows{std::string("SELECT ") + kOfReading +
                                          " FROM reading_rows AS m INDEXED BY reading_rows_by_series "
                                          "WHERE m.target = ?1 AND m.press = ?2 AND m.seq = ?3 AND "
                                          "(?4 IS NULL OR m.step < ?4) ORDER BY m.step DESC",
                                      [&](SQLite::Statement& row, const OfRun& run, const Mark& from) {
                                          row.bind(1, query.target);
                                          row.bind(2, run.press);
                                          row.bind(3, asInt(run.seq));
                                          if (from.seq)
                                              row.bind(4, from.rest);
                                          else
                                              row.bind(4);
                                      },
                                      [](SQLite::Statement& row, const OfRun& run) { return readingFrom(row, 0, run); },
                                      [](const records::Reading& reading) { return reading.step; }};
    return pageOf(db, wayOf(runs, ""), narrowed(db, runs, mark.seq), rows, mark, limit);
}

records::StageTime stageFrom(SQLite::Statement& row, const OfRun& run)
{
    auto stage = headed<records::StageTime>(run);
    stage.kind = run.kind;
    stage.begunMs = run.begunMs;
    stage.hour = run.hour;
    stage.state = run.state;
    stage.stage = row.getColumn(0).getString();
    stage.workedMs = row.getColumn(1).getInt64();
    stage.watchedMs = row.getColumn(2).getInt64();
    stage.awayMs = row.getColumn(3).getInt64();
    stage.externalMs = row.getColumn(4).getInt64();
    return stage;
}

records::Incident incidentFrom(SQLite::Statement& row, const OfRun& run)
{
    auto incident = headed<records::Incident>(run);
    incident.n = row.getColumn(0).getInt64();
    incident.what = row.getColumn(1).getString();
    incident.step = row.getColumn(2).getString();
    incident.target = row.getColumn(3).getString();
    incident.detail = row.getColumn(4).getString();
    incident.atMs = row.getColumn(5).getInt64();
    return incident;
}

std::size_t pageSize(std::size_t asked) { return std::clamp<std::size_t>(asked, 1, kMostRows); }

}  // namespace

Result<records::Page<records::Reading>> FileReader::readings(const records::SeriesQuery& query,
                                                             std::string_view after) const
{
    // A page's mark is the seal and the step of its last reading: "17/threading.lift.lift_pressure".
    const auto mark = markFrom(after);
    if (!mark) return badPage(after);
    const bool byRun = !query.job.empty() || !query.substrate.empty();
    return ask([&]() -> Result<records::Page<records::Reading>> {
        return (byRun ? readingsByRun : readingsOf)(*m_db, query, *mark, pageSize(query.limit));
    });
}

Result<std::vector<records::SeriesName>> FileReader::seriesNames() const
{
    return ask([&]() -> Result<std::vector<records::SeriesName>> {
        SQLite::Statement query(*m_db, "SELECT press, target, unit, readings FROM series_rows ORDER BY press, target");
        std::vector<records::SeriesName> all;
        while (query.executeStep())
            all.push_back({query.getColumn(0).getString(), query.getColumn(1).getString(),
                           query.getColumn(2).getString(), query.getColumn(3).getInt64()});
        return all;
    });
}

Result<records::Page<records::StageTime>> FileReader::stageTimes(const records::CourseQuery& query,
                                                                 std::string_view after) const
{
    // The mark is the seal and the stage of the last row.
    const auto mark = markFrom(after);
    if (!mark) return badPage(after);
    static const Rows<records::StageTime> kRows{
        "SELECT stage, worked, watched, away, external FROM stage_rows WHERE seq = ?1 AND place > "
        "coalesce((SELECT place FROM stage_rows WHERE seq = ?1 AND stage = ?2), -1) ORDER BY place",
        [](SQLite::Statement& row, const OfRun& run, const Mark& from) {
            row.bind(1, asInt(run.seq));
            row.bind(2, from.rest);
        },
        stageFrom, [](const records::StageTime& stage) { return stage.stage; }};
    return ask([&]() -> Result<records::Page<records::StageTime>> {
        return pageOf(*m_db, wayOf(query, ""), narrowed(*m_db, query, mark->seq), kRows, *mark, pageSize(query.limit));
    });
}

Result<records::Page<records::Incident>> FileReader::incidents(const records::CourseQuery& query,
                                                               std::string_view after) const
{
    // The mark is the seal, the event and the word of the last row: "17/36/outside".
    const auto mark = markFrom(after);
    const std::size_t slash = mark ? mark->rest.find('/') : std::string::npos;
    const auto n = mark ? numberAfter(std::string_view(mark->rest).substr(0, slash), "") : std::nullopt;
    if (!mark || (mark->seq && (!n || slash == std::string::npos))) return badPage(after);
    const Rows<records::Incident> rows{
        "SELECT n, what, step, target, detail, at FROM incident_rows WHERE seq = ?1 AND (n, what) < (?2, ?3) "
        "ORDER BY n DESC, what DESC",
        [&](SQLite::Statement& row, const OfRun& run, const Mark& from) {
            row.bind(1, asInt(run.seq));
            row.bind(2, from.seq ? *n : std::numeric_limits<std::int64_t>::max());
            row.bind(3, from.seq ? from.rest.substr(slash + 1) : std::string());
        },
        incidentFrom, [](const records::Incident& one) { return std::to_string(one.n) + "/" + one.what; }};
    return ask([&]() -> Result<records::Page<records::Incident>> {
        Narrowed where = narrowed(*m_db, query, mark->seq);
        where.with("r.incidents > 0", {});
        return pageOf(*m_db, wayOf(query, " INDEXED BY run_rows_by_incidents"), where, rows, *mark,
                      pageSize(query.limit));
    });
}

}  // namespace taut::logbook
