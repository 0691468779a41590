// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>

#include "core/logbook/file_reader.h"
#include "core/logbook/search.h"

namespace taut::logbook {

namespace {

/// As seal::wantsReview says.
constexpr const char* kWanting = "present IN ('sealed', 'corrected')";
constexpr std::string_view kOpen = "open/";
constexpr std::string_view kSealed = "sealed/";

Narrowed narrowed(const records::RunQuery& query)
{
    Narrowed where;
    if (!query.press.empty()) where.with("r.press = ?", {query.press});
    if (!query.job.empty()) where.with("r.job = ?", {query.job});
    if (!query.substrate.empty()) where.with("r.substrate = ?", {query.substrate});
    if (!query.person.empty()) where.with("r.operator = ?", {query.person});
    if (!query.state.empty()) where.with("r.state = ?", {query.state});
    if (query.withDeviations) where.with("r.deviations > 0", {});
    if (query.present == records::kWantsReview)
        where.with(std::string("r.") + kWanting, {});
    else if (!query.present.empty())
        where.with("r.present = ?", {query.present});
    return where;
}

/// The index by which sealed runs are gone through: that of which the fewest are to be expected. Each holds what else a
/// list is narrowed by.
const char* wayOf(const records::RunQuery& query)
{
    if (!query.job.empty()) return " INDEXED BY run_rows_by_job";
    if (!query.person.empty()) return " INDEXED BY run_rows_by_person";
    // Of all runs few are sent back, corrected or void.
    if (!query.present.empty() && query.present != records::kWantsReview && query.present != "reviewed" &&
        query.present != "sealed")
        return " INDEXED BY run_rows_by_present";
    if (!query.substrate.empty()) return " INDEXED BY run_rows_by_substrate";
    if (!query.press.empty()) return " INDEXED BY run_rows_by_press";
    if (query.withDeviations) return " INDEXED BY run_rows_by_deviations";
    if (query.present == records::kWantsReview) return " INDEXED BY run_rows_by_wanting";
    if (!query.state.empty()) return " INDEXED BY run_rows_by_state";
    if (!query.present.empty()) return " INDEXED BY run_rows_by_present";
    return "";
}

/// One half of the list of runs: where its rows come from, what narrows it, and the order in which they stand.
struct Half {
    std::string from;
    Narrowed where;
    std::string order;
};

/// The runs that are still open, newest begun first, after the one of this number.
Half openHalf(const records::RunQuery& query, const std::string& match, const std::optional<std::int64_t>& after)
{
    Half half;
    Narrowed& where = half.where;
    if (match.empty()) {
        half.from = "run_rows AS r INDEXED BY run_rows_by_open";
        half.order = " ORDER BY r.number DESC";
        where = narrowed(query);
        where.with("r.seq IS NULL", {});
        if (after) where.with("r.number < ?", {*after});
    } else {
        half.from = "word_search CROSS JOIN run_rows AS r ON r.number = -word_search.rowid";
        half.order = " ORDER BY word_search.rowid";
        where = narrowed(query);
        where.with("word_search MATCH ?", {match});
        where.with("word_search.rowid < 0", {});
        if (after) where.with("word_search.rowid > ?", {-*after});
    }
    if (query.sinceMs) where.with("r.begun >= ?", {*query.sinceMs});
    if (query.untilMs) where.with("r.begun < ?", {*query.untilMs});
    return half;
}

/// Whether any run is open: what is looked for need not be looked for among none.
bool anyOpen(SQLite::Database& db)
{
    return numberOf(db, "SELECT count(*) FROM (SELECT 1 FROM run_rows INDEXED BY run_rows_by_open WHERE seq IS NULL "
                        "LIMIT 1)") > 0;
}

constexpr std::string_view kRun = "run";

/// Whether runs of this press have its name before theirs, the oldest as the newest: so each was named when it began.
bool isNamedByPress(SQLite::Database& db, const std::string& press)
{
    if (press.empty()) return false;
    for (const char* order : {"", " DESC"}) {
        SQLite::Statement run(db,
                              std::string("SELECT run_id FROM run_rows INDEXED BY run_rows_by_press WHERE press = ? "
                                          "AND seq > 0 ORDER BY seq") +
                                  order + " LIMIT 1");
        run.bind(1, press);
        if (run.executeStep() && !run.getColumn(0).getString().starts_with(press + '-')) return false;
    }
    return true;
}

/// What is looked for, narrowed as well by what else the search knows of a run: so runs that do not fit are passed over
/// where the words lie, and none of them is looked up. What is exactly meant the list itself asks.
std::string narrowedMatch(SQLite::Database& db, const records::RunQuery& query, const std::string& match)
{
    std::string whole = match;
    const auto with = [&whole](std::string_view column, const std::string& words) {
        // A phrase without a word in it would fit nothing.
        const auto isOfWord = [](char c) {
            return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        };
        if (std::none_of(words.begin(), words.end(), isOfWord)) return;
        std::string phrase;
        for (const char c : words) phrase.append(c == '"' ? 2 : 1, c);
        whole =
            '(' + whole + ") AND (" + std::string(column) + " : " + (column == kRun ? "^ \"" : "\"") + phrase + "\")";
    };
    if (isNamedByPress(db, query.press)) with(kRun, query.press);
    with("job", query.job);
    with("substrate", query.substrate);
    if (!query.person.empty()) {
        SQLite::Statement name(db, "SELECT name FROM person_rows WHERE person = ?");
        name.bind(1, query.person);
        if (name.executeStep()) with("operator", name.getColumn(0).getString());
    }
    return whole;
}

/// The sealed runs, newest seal first, after the one of this seal.
Half sealedHalf(SQLite::Database& db, const records::RunQuery& query, const std::string& match,
                const std::optional<std::int64_t>& after)
{
    const bool searched = !match.empty();
    const std::string seq = searched ? "word_search.rowid" : "r.seq";
    // The sign before the column keeps the engine from going through all of the index for every word that is found.
    const std::string runs = std::string("run_rows AS r") + wayOf(query);
    Half half{searched ? "word_search CROSS JOIN " + runs + " ON r.seq = +word_search.rowid" : runs, narrowed(query),
              " ORDER BY " + seq + " DESC"};
    if (searched) half.where.with("word_search MATCH ?", {narrowedMatch(db, query, match)});
    half.where.with(seq + " > 0", {});
    if (after) half.where.with(seq + " < ?", {*after});
    betweenTimes(db, half.where, seq.c_str(), query.sinceMs, query.untilMs);
    return half;
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
    run.kind = row.getColumn(15).getString();
    run.title = row.getColumn(16).getString();
    run.customer = row.getColumn(17).getString();
    run.outside = row.getColumn(18).getInt64();
    if (!row.getColumn(19).isNull()) run.wasteM = row.getColumn(19).getDouble();
    return run;
}

/// Fills the page from one half of the list; false when there is more than fits.
bool fill(SQLite::Database& db, records::Page<records::RunRow>& page, std::size_t limit, const Half& half,
          const char* key, std::string_view mark)
{
    SQLite::Statement list(db, std::string("SELECT ") + key +
                                   ", coalesce(r.seq, 0), r.run_id, r.press, r.job, r.substrate, r.roll, "
                                   "r.operator_name, r.state, r.verdict, r.begun, r.ended, r.deviations, r.present, "
                                   "r.reviewed_by, r.kind, r.title, r.customer, r.outside, r.waste_m FROM " +
                                   half.from + half.where.sql() + half.order + " LIMIT " +
                                   std::to_string(limit - page.rows.size() + 1));
    half.where.bind(list);
    while (list.executeStep()) {
        if (page.rows.size() == limit) return false;
        page.rows.push_back(runRowFrom(list));
        page.next = std::string(mark) + std::to_string(list.getColumn(0).getInt64());
    }
    return true;
}

/// How many of one half there are, counted no further than this.
std::int64_t countOf(SQLite::Database& db, const Half& half, std::int64_t most)
{
    SQLite::Statement count(db, "SELECT count(*) FROM (SELECT 1 FROM " + half.from + half.where.sql() + " LIMIT " +
                                    std::to_string(std::max<std::int64_t>(most, 0)) + ")");
    half.where.bind(count);
    return count.executeStep() ? count.getColumn(0).getInt64() : 0;
}

std::optional<std::int64_t> wholeIn(SQLite::Statement& query)
{
    if (!query.executeStep() || query.getColumn(0).isNull()) return std::nullopt;
    return query.getColumn(0).getInt64();
}

}  // namespace

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

void betweenTimes(SQLite::Database& db, Narrowed& where, const char* seq, const std::optional<std::int64_t>& sinceMs,
                  const std::optional<std::int64_t>& untilMs)
{
    const auto bound = [&](const char* sql, std::int64_t ms, const char* condition) {
        SQLite::Statement query(db, sql);
        query.bind(1, ms / kDayMs);
        where.with(std::string(seq) + condition, {wholeIn(query).value_or(0)});
    };
    if (sinceMs) {
        // Of no such day: after the last seal that can be.
        bound("SELECT coalesce(min(first), 9223372036854775807) FROM day_rows WHERE day >= ?", *sinceMs, " >= ?");
        where.with("r.begun >= ?", {*sinceMs});
    }
    if (untilMs) {
        bound("SELECT max(last) FROM day_rows WHERE day <= ?", *untilMs, " <= ?");
        where.with("r.begun < ?", {*untilMs});
    }
}

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
    const std::string match = matchOf(query.text);
    return ask([&]() -> Result<records::Page<records::RunRow>> {
        records::Page<records::RunRow> page;
        bool all = true;
        if (!sealedAfter && anyOpen(*m_db))
            all = fill(*m_db, page, limit, openHalf(query, match, openAfter), "r.number", kOpen);
        if (all) all = fill(*m_db, page, limit, sealedHalf(*m_db, query, match, sealedAfter), "r.seq", kSealed);
        if (all) page.next.clear();
        return page;
    });
}

Result<std::int64_t> FileReader::count(const records::RunQuery& query, std::int64_t most) const
{
    const std::string match = matchOf(query.text);
    return ask([&]() -> Result<std::int64_t> {
        const std::int64_t open = anyOpen(*m_db) ? countOf(*m_db, openHalf(query, match, {}), most) : 0;
        return open + countOf(*m_db, sealedHalf(*m_db, query, match, {}), most - open);
    });
}

Result<std::int64_t> FileReader::wantingReview() const
{
    return ask([&]() -> Result<std::int64_t> {
        return numberOf(
            *m_db,
            (std::string("SELECT count(*) FROM run_rows INDEXED BY run_rows_by_wanting WHERE ") + kWanting).c_str());
    });
}

}  // namespace taut::logbook
