// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>

#include "core/logbook/file_reader.h"

namespace taut::logbook {

namespace {

constexpr std::size_t kMostRows = 500;
/// As seal::wantsReview says.
constexpr const char* kWanting = "present IN ('sealed', 'corrected')";
constexpr std::string_view kOpen = "open/";
constexpr std::string_view kSealed = "sealed/";

/// The whole number that stands after `before` in a page's mark.
std::optional<std::int64_t> numberAfter(std::string_view mark, std::string_view before)
{
    if (!mark.starts_with(before)) return std::nullopt;
    mark.remove_prefix(before.size());
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(mark.data(), mark.data() + mark.size(), number);
    if (error != std::errc{} || end != mark.data() + mark.size()) return std::nullopt;
    return number;
}

Finding badPage(std::string_view after)
{
    return refuse("records.bad_page", std::string(after), {"The list cannot go on after \"%1\".", {std::string(after)}},
                  "Ask for the list from its beginning.");
}

/// As a LIKE pattern: begins with this text.
std::string beginsWith(const std::string& text)
{
    std::string pattern;
    for (const char c : text) {
        if (c == '%' || c == '_' || c == '\\') pattern += '\\';
        pattern += c;
    }
    return pattern + '%';
}

Narrowed narrowed(const records::RunQuery& query)
{
    Narrowed where;
    if (!query.press.empty()) where.with("press = ?", {query.press});
    if (!query.job.empty()) where.with("job = ?", {query.job});
    if (!query.substrate.empty()) where.with("substrate = ?", {query.substrate});
    if (!query.person.empty()) where.with("operator = ?", {query.person});
    if (query.withDeviations) where.with("deviations > 0", {});
    if (!query.state.empty()) where.with("state = ?", {query.state});
    if (query.present == records::kWantsReview)
        where.with(kWanting, {});
    else if (!query.present.empty())
        where.with("present = ?", {query.present});
    if (query.sinceMs) where.with("begun >= ?", {*query.sinceMs});
    if (query.untilMs) where.with("begun < ?", {*query.untilMs});
    if (!query.text.empty()) {
        const std::string pattern = beginsWith(query.text);
        where.with("(run_id LIKE ? ESCAPE '\\' OR job LIKE ? ESCAPE '\\' OR roll LIKE ? ESCAPE '\\')",
                   {pattern, pattern, pattern});
    }
    return where;
}

records::RunRow runRowFrom(SQLite::Statement& row)
{
    records::RunRow run;
    run.seq = asUint(row.getColumn(1).getInt64());
    run.run = row.getColumn(2).getString();
    run.press = row.getColumn(3).getString();
    run.job = row.getColumn(4).getString();
    run.substrate = row.getColumn(5).getString();
    run.roll = row.getColumn(6).getString();
    run.operatorName = row.getColumn(7).getString();
    run.state = row.getColumn(8).getString();
    run.verdict = row.getColumn(9).getString();
    run.begunMs = row.getColumn(10).getInt64();
    run.endedMs = row.getColumn(11).getInt64();
    run.deviations = row.getColumn(12).getInt64();
    run.present = row.getColumn(13).getString();
    run.reviewedBy = row.getColumn(14).getString();
    return run;
}

/// Fills the page from one half of the list, in falling order of `key`; false when there is more than fits.
bool fill(SQLite::Database& db, records::Page<records::RunRow>& page, std::size_t limit, Narrowed where,
          const std::string& key, std::string_view mark)
{
    SQLite::Statement list(db, "SELECT " + key +
                                   ", coalesce(seq, 0), run_id, press, job, substrate, roll, operator_name, state, "
                                   "verdict, begun, ended, deviations, present, reviewed_by FROM run_rows" +
                                   where.sql() + " ORDER BY " + key + " DESC LIMIT " +
                                   std::to_string(limit - page.rows.size() + 1));
    where.bind(list);
    while (list.executeStep()) {
        if (page.rows.size() == limit) return false;
        page.rows.push_back(runRowFrom(list));
        page.next = std::string(mark) + std::to_string(list.getColumn(0).getInt64());
    }
    return true;
}

records::Reading readingFrom(SQLite::Statement& row)
{
    records::Reading reading;
    reading.seq = asUint(row.getColumn(0).getInt64());
    reading.run = row.getColumn(1).getString();
    reading.step = row.getColumn(2).getString();
    reading.target = row.getColumn(3).getString();
    reading.unit = row.getColumn(4).getString();
    reading.verdict = row.getColumn(5).getString();
    reading.entered = row.getColumn(6).getString();
    reading.value = row.getColumn(7).getDouble();
    if (!row.getColumn(8).isNull()) reading.low = row.getColumn(8).getDouble();
    if (!row.getColumn(9).isNull()) reading.high = row.getColumn(9).getDouble();
    reading.atMs = row.getColumn(10).getInt64();
    if (!row.getColumn(11).isNull()) reading.uncertainty = row.getColumn(11).getDouble();
    reading.press = row.getColumn(12).getString();
    reading.job = row.getColumn(13).getString();
    reading.substrate = row.getColumn(14).getString();
    reading.roll = row.getColumn(15).getString();
    reading.first = reading.verdict;
    return reading;
}

}  // namespace

void Narrowed::bind(SQLite::Statement& statement) const
{
    int index = 0;
    for (const Value& value : m_values) {
        ++index;
        if (const auto* text = std::get_if<std::string>(&value))
            statement.bind(index, *text);
        else
            statement.bind(index, std::get<std::int64_t>(value));
    }
}

Result<records::Page<records::RunRow>> FileReader::runs(const records::RunQuery& query, std::string_view after) const
{
    // Two lists one after the other: runs still open, newest begun first; then sealed ones, newest seal first. Time
    // orders neither: a clock can be set back.
    const auto openAfter = numberAfter(after, kOpen);
    const auto sealedAfter = numberAfter(after, kSealed);
    if (!after.empty() && !openAfter && !sealedAfter) return badPage(after);
    const std::size_t limit = std::clamp<std::size_t>(query.limit, 1, kMostRows);
    return ask([&]() -> Result<records::Page<records::RunRow>> {
        records::Page<records::RunRow> page;
        bool all = true;
        if (!sealedAfter) {
            Narrowed where = narrowed(query);
            where.with("seq IS NULL", {});
            if (openAfter) where.with("number < ?", {*openAfter});
            all = fill(*m_db, page, limit, std::move(where), "number", kOpen);
        }
        if (all) {
            Narrowed where = narrowed(query);
            if (sealedAfter)
                where.with("seq < ?", {*sealedAfter});
            else
                where.with("seq IS NOT NULL", {});
            all = fill(*m_db, page, limit, std::move(where), "seq", kSealed);
        }
        if (all) page.next.clear();
        return page;
    });
}

Result<std::int64_t> FileReader::wantingReview() const
{
    return ask([&]() -> Result<std::int64_t> {
        return numberOf(*m_db, (std::string("SELECT count(*) FROM run_rows WHERE ") + kWanting).c_str());
    });
}

Result<records::Page<records::Reading>> FileReader::readings(const records::SeriesQuery& query,
                                                             std::string_view after) const
{
    // A page's mark is the seal and the step of its last reading: "17/threading.lift.lift_pressure".
    const std::size_t slash = after.find('/');
    const auto seq = slash == std::string_view::npos ? std::nullopt : numberAfter(after.substr(0, slash), "");
    if (!after.empty() && !seq) return badPage(after);
    const std::size_t limit = std::clamp<std::size_t>(query.limit, 1, kMostRows);
    return ask([&]() -> Result<records::Page<records::Reading>> {
        Narrowed where;
        where.with("m.target = ?", {query.target});
        if (!query.press.empty()) where.with("m.press = ?", {query.press});
        if (!query.substrate.empty()) where.with("r.substrate = ?", {query.substrate});
        if (!query.job.empty()) where.with("r.job = ?", {query.job});
        if (query.sinceMs) where.with("r.begun >= ?", {*query.sinceMs});
        if (query.untilMs) where.with("r.begun < ?", {*query.untilMs});
        if (seq) where.with("(m.seq, m.step) < (?, ?)", {*seq, std::string(after.substr(slash + 1))});
        SQLite::Statement list(
            *m_db, "SELECT m.seq, r.run_id, m.step, m.target, m.unit, m.verdict, m.entered_text, "
                   "m.si_value, m.low, m.high, m.at, m.uncertainty, r.press, r.job, r.substrate, r.roll "
                   "FROM reading_rows AS m "
                   "JOIN run_rows AS r ON r.seq = m.seq" +
                       where.sql() + " ORDER BY m.seq DESC, m.step DESC LIMIT " + std::to_string(limit + 1));
        where.bind(list);
        records::Page<records::Reading> page;
        while (list.executeStep()) {
            if (page.rows.size() == limit) {
                page.next = std::to_string(page.rows.back().seq) + "/" + page.rows.back().step;
                break;
            }
            page.rows.push_back(readingFrom(list));
        }
        return page;
    });
}

Result<std::int64_t> FileReader::count(const records::RunQuery& query, std::int64_t most) const
{
    return ask([&]() -> Result<std::int64_t> {
        const Narrowed where = narrowed(query);
        SQLite::Statement count(*m_db, "SELECT count(*) FROM (SELECT 1 FROM run_rows" + where.sql() + " LIMIT " +
                                           std::to_string(most) + ")");
        where.bind(count);
        count.executeStep();
        return count.getColumn(0).getInt64();
    });
}

Result<std::vector<records::SeriesName>> FileReader::seriesNames() const
{
    return ask([&]() -> Result<std::vector<records::SeriesName>> {
        SQLite::Statement query(*m_db, "SELECT press, target, max(unit), count(*) FROM reading_rows "
                                       "GROUP BY press, target ORDER BY press, target");
        std::vector<records::SeriesName> all;
        while (query.executeStep())
            all.push_back({query.getColumn(0).getString(), query.getColumn(1).getString(),
                           query.getColumn(2).getString(), query.getColumn(3).getInt64()});
        return all;
    });
}

Result<records::Page<records::StageTime>> FileReader::stageTimes(const records::CourseQuery&, std::string_view) const
{
    return records::Page<records::StageTime>{};  // no table of this layout tells
}

Result<records::Page<records::Incident>> FileReader::incidents(const records::CourseQuery&, std::string_view) const
{
    return records::Page<records::Incident>{};  // no table of this layout tells
}

}  // namespace taut::logbook
