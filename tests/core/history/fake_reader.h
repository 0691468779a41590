// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <map>
#include <random>
#include <string>
#include <vector>

#include "core/records/records.h"
#include "core/stats/quantile.h"
#include "tests/core/seal/walk.h"

// A store that is a few vectors: what is asked of many runs needs rows, not a file. Rows stand newest first, as a
// reader gives them; pages are as small as a test wants them.
namespace taut::history::test {

inline constexpr std::int64_t kHourMs = 3'600'000;
inline constexpr std::int64_t kJune = 1'780'272'000'000;  ///< 1 June 2026, a Monday, 0:00 UTC

class FakeReader : public records::Reader {
public:
    std::vector<records::RunRow> runRows;
    std::vector<records::Reading> readingRows;
    std::vector<records::StageTime> stageRows;
    std::vector<records::Incident> incidentRows;
    std::vector<records::Withdrawal> withdrawn;
    std::map<std::string, std::vector<records::Edition>> editionRows;
    std::map<std::string, std::int64_t> begun;  ///< by run: when it began, where that is not when it was read
    std::map<std::string, run::Run> sealed, open;
    std::map<std::string, std::vector<run::Source>> defined;    ///< by what they are
    std::map<std::string, std::vector<seal::Sealing>> stories;  ///< what followed a run
    mutable std::size_t documents = 0;                          ///< how many were given
    std::size_t perPage = 7;                                    ///< no page is larger, whatever is asked for
    std::string broken;                                         ///< the question that this store fails to answer
    mutable int pages = 0;                                      ///< how many were given

    /// A run as a store has it once it was sealed: its document, and a row in the list.
    void addSealed(const run::Run& run, records::RunRow row)
    {
        row.run = run.id();
        row.press = run.sources().press.id;
        row.job = run.sources().job.id;
        row.begunMs = run.events().front().stamp().utcMs;
        runRows.insert(runRows.begin(), std::move(row));
        sealed.emplace(run.id(), run);
    }

    [[nodiscard]] Result<records::Page<records::RunRow>> runs(const records::RunQuery& query,
                                                              std::string_view after) const override
    {
        if (broken == "runs") return failed();
        return page(runRows, query.limit, after, [&](const records::RunRow& row) {
            return same(query.press, row.press) && same(query.job, row.job) && same(query.state, row.state) &&
                   same(query.present, row.present) && within(query, row.begunMs);
        });
    }
    [[nodiscard]] Result<records::Page<records::Reading>> readings(const records::SeriesQuery& query,
                                                                   std::string_view after) const override
    {
        if (broken == "readings") return failed();
        return page(readingRows, query.limit, after, [&](const records::Reading& row) {
            const auto found = begun.find(row.run);
            return row.target == query.target && same(query.press, row.press) && same(query.job, row.job) &&
                   same(query.substrate, row.substrate) &&
                   within(query, found == begun.end() ? row.atMs : found->second);
        });
    }
    [[nodiscard]] Result<records::Page<records::StageTime>> stageTimes(const records::CourseQuery& query,
                                                                       std::string_view after) const override
    {
        if (broken == "stageTimes") return failed();
        return page(stageRows, query.limit, after,
                    [&](const records::StageTime& row) { return fits(query, row, row.begunMs); });
    }
    [[nodiscard]] Result<records::Page<records::Incident>> incidents(const records::CourseQuery& query,
                                                                     std::string_view after) const override
    {
        if (broken == "incidents") return failed();
        return page(incidentRows, query.limit, after, [&](const records::Incident& row) {
            const auto found = begun.find(row.run);
            return fits(query, row, found == begun.end() ? row.atMs : found->second);
        });
    }
    [[nodiscard]] Result<std::int64_t> count(const records::RunQuery&, std::int64_t) const override { return failed(); }
    [[nodiscard]] Result<std::vector<records::SeriesName>> seriesNames() const override
    {
        if (broken == "seriesNames") return failed();
        std::map<std::pair<std::string, std::string>, records::SeriesName> names;
        for (const records::Reading& row : readingRows) {
            records::SeriesName& name = names[{row.press, row.target}];
            name = {row.press, row.target, row.unit, name.readings + 1};
        }
        std::vector<records::SeriesName> all;
        for (const auto& [key, name] : names) all.push_back(name);
        return all;
    }
    [[nodiscard]] Result<seal::Seal> seal(std::uint64_t) const override { return failed(); }
    [[nodiscard]] Result<seal::Seal> sealOfRun(std::string_view runId) const override
    {
        const auto found = sealed.find(std::string(runId));
        if (found == sealed.end()) return unknown(runId);
        ++documents;
        seal::Seal one;
        one.id = found->first;
        one.document = seal::write(seal::documentOf(found->second));
        return one;
    }
    [[nodiscard]] Result<std::vector<seal::Sealing>> sealsAbout(std::string_view runId) const override
    {
        const auto found = stories.find(std::string(runId));
        return found == stories.end() ? std::vector<seal::Sealing>() : found->second;
    }
    [[nodiscard]] Result<std::int64_t> wantingReview() const override { return failed(); }
    [[nodiscard]] Result<run::Run> openRun(std::string_view runId) const override
    {
        if (const auto found = open.find(std::string(runId)); found != open.end()) return found->second;
        if (!sealed.contains(std::string(runId))) return unknown(runId);
        return refuse("run.sealed", std::string(runId), "It is sealed.", "Read its seal.");
    }
    [[nodiscard]] Result<seal::Anchor> anchor() const override { return failed(); }
    [[nodiscard]] Result<std::vector<records::Withdrawal>> withdrawals() const override { return withdrawn; }
    [[nodiscard]] Result<std::vector<people::PersonRecord>> people() const override { return failed(); }
    [[nodiscard]] Result<std::vector<run::Source>> definitions(std::string_view what) const override
    {
        if (broken == "definitions") return failed();
        const auto found = defined.find(std::string(what));
        return found == defined.end() ? std::vector<run::Source>() : found->second;
    }
    [[nodiscard]] Result<std::optional<run::Source>> definition(std::string_view, std::string_view sha) const override
    {
        for (const auto& [id, run] : sealed)
            for (const run::Source* one :
                 {&run.sources().press, &run.sources().job, &run.sources().substrate, &run.sources().procedure})
                if (one->sha256 == sha) return std::optional(*one);
        return std::optional<run::Source>();
    }
    [[nodiscard]] Result<std::optional<std::string>> attachment(std::string_view) const override { return failed(); }
    [[nodiscard]] Result<std::vector<records::Edition>> editions(std::string_view what) const override
    {
        const auto found = editionRows.find(std::string(what));
        return found == editionRows.end() ? std::vector<records::Edition>() : found->second;
    }

private:
    static Finding failed() { return refuse("store.failed", "store", "The store did not answer.", "Ask again."); }
    static Finding unknown(std::string_view run)
    {
        return refuse("run.unknown", std::string(run), "There is no such run.", "Choose another.");
    }
    static bool same(const std::string& wanted, const std::string& has) { return wanted.empty() || wanted == has; }
    template <class Query>
    static bool within(const Query& query, std::int64_t atMs)
    {
        return (!query.sinceMs || atMs >= *query.sinceMs) && (!query.untilMs || atMs < *query.untilMs);
    }
    template <class Row>
    static bool fits(const records::CourseQuery& query, const Row& row, std::int64_t atMs)
    {
        return same(query.press, row.press) && same(query.job, row.job) && same(query.substrate, row.substrate) &&
               within(query, atMs);
    }
    /// The mark of a page is the place of its last row.
    template <class Row, class Fits>
    records::Page<Row> page(const std::vector<Row>& rows, std::size_t limit, std::string_view after, Fits fits) const
    {
        ++pages;
        limit = std::max<std::size_t>(1, std::min(limit, perPage));
        records::Page<Row> one;
        std::size_t last = 0;
        for (std::size_t i = after.empty() ? 0 : std::stoul(std::string(after)) + 1; i < rows.size(); ++i) {
            if (!fits(rows[i])) continue;
            if (one.rows.size() == limit) {
                one.next = std::to_string(last);
                break;
            }
            one.rows.push_back(rows[i]);
            last = i;
        }
        return one;
    }
};

/// A run of the mini procedure under an id of its own, begun when a test wants it.
struct NamedWalk : run::mini::Walk {
    explicit NamedWalk(const std::string& id, std::int64_t atMs = kJune,
                       const run::Sources& with = run::mini::sources())
        : run::mini::Walk(60'000)
    {
        run.reset();
        now = atMs - betweenMs;
        basis = run::basisFor(with, {}).value();
        const auto event = run::begin(basis, {id, "pc-1", false, {}, nullptr}, stamp(inka), inka);
        REQUIRE(event);
        run = run::Run::fold(std::span(&*event, 1));
    }
};

/// The setting of a brake, read in bar.
inline records::Reading barReading(std::uint64_t seq, double bar)
{
    records::Reading one;
    one.seq = seq;
    one.run = "run-" + std::to_string(seq);
    one.step = "set.brake";
    one.target = "tension.unwind.setting";
    one.unit = "Pa";
    one.verdict = one.first = "inside";
    one.value = bar * 1e5;
    one.entered = shortest(bar) + " bar";
    one.atMs = kJune + static_cast<std::int64_t>(seq) * kHourMs;
    one.press = "north";
    one.job = "J-1";
    one.substrate = "paper";
    one.roll = "R-" + std::to_string(seq);
    one.pressSha = "first";
    one.low = 1e5;
    one.high = 2e5;
    one.aimed = 1.5e5;
    one.uncertainty = 1e3;
    return one;
}
/// One reading a run, oldest first, as a store gives them: newest first.
inline std::vector<records::Reading> barReadings(const std::vector<double>& oldestFirst, std::uint64_t firstSeq = 1)
{
    std::vector<records::Reading> rows;
    for (std::size_t i = oldestFirst.size(); i-- > 0;) rows.push_back(barReading(firstSeq + i, oldestFirst[i]));
    return rows;
}

/// Normal values, the same with every compiler.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_dice(seed) {}
    double share() { return (static_cast<double>(m_dice() >> 11U) + 0.5) / 9007199254740992.0; }
    double normal() { return stats::normalQuantile(share()); }
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(share() * static_cast<double>(n)); }

private:
    std::mt19937_64 m_dice;
};

}  // namespace taut::history::test
