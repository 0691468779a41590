// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/open_runs.h"

#include <set>
#include <span>

#include "core/logbook/index.h"

namespace taut::logbook {

namespace {

/// Readings that were outside when they were first entered.
std::int64_t outsideOf(const run::Run& run)
{
    std::set<std::string> entered;
    std::int64_t outside = 0;
    for (const run::Event& event : run.events()) {
        const auto* answer = std::get_if<run::Answered>(&event.happening());
        if (answer == nullptr || !entered.insert(answer->step.value).second) continue;
        if (answer->value && answer->judgement.verdict == verdict::Verdict::Outside) ++outside;
    }
    return outside;
}

}  // namespace

void putOpenRow(SQLite::Database& db, const run::Run& run)
{
    // A run's press, job, substrate and beginning never change.
    Prepared prepared(db);
    const run::Stamp& first = run.events().front().stamp();
    const run::Sources& sources = run.sources();
    const JobWords job = jobWords(sources.job.text);
    prepared("INSERT INTO run_rows (run_id, press, day, job, substrate, roll, operator, operator_name, begun, "
             "deviations, kind, press_edition, press_sha, title, customer, outside, hour, ended, state, verdict, "
             "present, reviewed_by) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, 'open', "
             "'incomplete', 'open', '') ON CONFLICT (run_id) DO UPDATE SET roll = excluded.roll, "
             "operator = excluded.operator, operator_name = excluded.operator_name, "
             "deviations = excluded.deviations, kind = excluded.kind, press_edition = excluded.press_edition, "
             "press_sha = excluded.press_sha, title = excluded.title, customer = excluded.customer, "
             "outside = excluded.outside, hour = excluded.hour")
        .with(run.id(), sources.press.id, dayOf(first.utcMs, first.offsetMinutes), sources.job.id, sources.substrate.id,
              sources.roll.id, run.operatorId(), run.operatorName(), first.utcMs,
              static_cast<std::int64_t>(run.deviations()), run.began().kind, sources.press.edition,
              sources.press.sha256, job.title, job.customer, outsideOf(run), hourOf(first.utcMs, first.offsetMinutes))
        ->exec();
    const auto row = prepared("SELECT number FROM run_rows WHERE run_id = ?");
    row.with(run.id());
    row->executeStep();
    putWords(prepared, -row->getColumn(0).getInt64(), wordsOf(run, job));
}

std::string dayOf(std::int64_t utcMs, int offsetMinutes)
{
    return utcText(utcMs + std::int64_t{offsetMinutes} * 60'000).substr(0, 10);
}

run::Stamp stampFor(std::size_t n, Instant at, const people::Actor& by)
{
    return {n, at.utcMs, at.offsetMinutes, by.id(), by.name(), people::roleWord(by.role())};
}

Result<std::vector<run::Event>> eventsAfter(SQLite::Database& db, std::string_view runId, std::size_t n)
{
    SQLite::Statement query(db, "SELECT n, event FROM open_events WHERE run_id = ? AND n > ? ORDER BY n");
    query.bind(1, std::string(runId));
    query.bind(2, static_cast<std::int64_t>(n));
    std::vector<run::Event> events;
    while (query.executeStep()) {
        auto event = run::eventFrom(query.getColumn(1).getString());
        if (!event) return event.error();
        const bool inOrder =
            event->stamp().n == n + events.size() + 1 && query.getColumn(0).getInt64() == asInt(event->stamp().n);
        if (!inOrder)
            return refuse(
                "event.broken", std::string(runId),
                {"Event %1 of run %2 stands out of its order.", {query.getColumn(0).getInt64(), std::string(runId)}},
                "Verify the logbook and restore it from a backup.");
        events.push_back(std::move(*event));
    }
    return events;
}

std::optional<Finding> notOpen(SQLite::Database& db, std::string_view runId)
{
    const std::string id(runId);
    SQLite::Statement row(db, "SELECT seq FROM run_rows WHERE run_id = ?");
    row.bind(1, id);
    if (!row.executeStep())
        return refuse("run.unknown", id, {"This logbook has no run %1.", {id}}, "Choose one from the list of runs.");
    if (!row.getColumn(0).isNull())
        return refuse("run.sealed", id, {"Run %1 is sealed: nothing can be added to it.", {id}},
                      "Begin a new run that continues it.");
    return std::nullopt;
}

Result<run::Run> foldStored(SQLite::Database& db, std::string_view runId)
{
    const std::string id(runId);
    if (auto why = notOpen(db, id)) return *std::move(why);
    const auto events = eventsAfter(db, runId, 0);
    if (!events) return events.error();
    if (events->empty() || !std::holds_alternative<run::Began>(events->front().happening()))
        return refuse("event.broken", id, {"Run %1 does not start with its beginning.", {id}},
                      "Verify the logbook and restore it from a backup.");
    return run::Run::fold(*events);
}

void appendEvent(SQLite::Database& db, const run::Run& run)
{
    putOpenRow(db, run);
    const run::Event& event = run.events().back();
    SQLite::Statement put(db, "INSERT INTO open_events (run_id, n, event) VALUES (?, ?, ?)");
    put.bind(1, run.id());
    put.bind(2, asInt(event.stamp().n));
    put.bind(3, event.json());
    put.exec();
}

std::vector<std::string> unsealedRuns(SQLite::Database& db, std::string_view press)
{
    SQLite::Statement query(db, "SELECT run_id FROM run_rows WHERE seq IS NULL AND (?1 = '' OR press = ?1) "
                                "ORDER BY number");
    query.bind(1, std::string(press));
    std::vector<std::string> ids;
    while (query.executeStep()) ids.push_back(query.getColumn(0).getString());
    return ids;
}

std::string nextRunId(SQLite::Database& db, const std::string& press, Instant at)
{
    const std::string day = dayOf(at.utcMs, at.offsetMinutes);
    SQLite::Statement query(db, "SELECT count(*) FROM run_rows WHERE press = ? AND day = ?");
    query.bind(1, press);
    query.bind(2, day);
    query.executeStep();
    const std::string number = std::to_string(query.getColumn(0).getInt64() + 1);
    return press + "-" + day + "-" + (number.size() < 2 ? "0" : "") + number;
}

}  // namespace taut::logbook
