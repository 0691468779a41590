// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <mutex>
#include <variant>
#include <vector>

#include "core/logbook/database.h"
#include "core/records/records.h"

// Inside this folder only.
namespace taut::logbook {

/// Conditions that narrow a question, with their values in order.
class Narrowed {
public:
    using Value = std::variant<std::string, std::int64_t>;
    void with(std::string_view condition, const std::vector<Value>& values)
    {
        m_sql.append(m_sql.empty() ? " WHERE " : " AND ").append(condition);
        m_values.insert(m_values.end(), values.begin(), values.end());
    }
    [[nodiscard]] const std::string& sql() const { return m_sql; }
    void bind(SQLite::Statement& statement) const;

private:
    std::string m_sql;
    std::vector<Value> m_values;
};

/// At most so many rows a page.
inline constexpr std::size_t kMostRows = 500;
/// The whole number that stands after `before` in a page's mark; nothing when it is none.
[[nodiscard]] std::optional<std::int64_t> numberAfter(std::string_view mark, std::string_view before);
[[nodiscard]] Finding badPage(std::string_view after);

/// Narrows a list of sealed runs, `r`, to those that began in this time. They stand in the order of their seals, which
/// is not that of time: a clock can be set back. So the seals between the first and the last of those days are looked
/// through; `seq` is the column that the list goes by.
void betweenTimes(SQLite::Database& db, Narrowed& where, const char* seq, const std::optional<std::int64_t>& sinceMs,
                  const std::optional<std::int64_t>& untilMs);

/// Answers from one logbook file over a connection of its own.
class FileReader final : public records::Reader {
public:
    FileReader(std::unique_ptr<SQLite::Database> db, std::filesystem::path file)
        : m_db(std::move(db)),
          m_file(std::move(file))
    {}
    [[nodiscard]] Result<records::Page<records::RunRow>> runs(const records::RunQuery& query,
                                                              std::string_view after) const override;
    [[nodiscard]] Result<records::Page<records::Reading>> readings(const records::SeriesQuery& query,
                                                                   std::string_view after) const override;
    [[nodiscard]] Result<std::int64_t> count(const records::RunQuery& query, std::int64_t most) const override;
    [[nodiscard]] Result<std::vector<records::SeriesName>> seriesNames() const override;
    [[nodiscard]] Result<records::Page<records::StageTime>> stageTimes(const records::CourseQuery& query,
                                                                       std::string_view after) const override;
    [[nodiscard]] Result<records::Page<records::Incident>> incidents(const records::CourseQuery& query,
                                                                     std::string_view after) const override;
    [[nodiscard]] Result<seal::Seal> seal(std::uint64_t seq) const override;
    [[nodiscard]] Result<seal::Seal> sealOfRun(std::string_view runId) const override;
    [[nodiscard]] Result<std::vector<seal::Sealing>> sealsAbout(std::string_view runId) const override;
    [[nodiscard]] Result<std::int64_t> wantingReview() const override;
    [[nodiscard]] Result<run::Run> openRun(std::string_view runId) const override;
    [[nodiscard]] Result<seal::Anchor> anchor() const override;
    [[nodiscard]] Result<std::vector<records::Withdrawal>> withdrawals() const override;
    [[nodiscard]] Result<std::vector<people::PersonRecord>> people() const override;
    [[nodiscard]] Result<std::vector<run::Source>> definitions(std::string_view what) const override;
    [[nodiscard]] Result<std::optional<run::Source>> definition(std::string_view what,
                                                                std::string_view sha256) const override;
    [[nodiscard]] Result<std::optional<std::string>> attachment(std::string_view sha256) const override;
    [[nodiscard]] Result<std::vector<records::Edition>> editions(std::string_view what) const override;

private:
    /// One question at a time on this connection; its statements end with it.
    template <class F>
    auto ask(F&& question) const -> std::invoke_result_t<F>
    {
        const std::lock_guard lock(m_mutex);
        return guarded(m_file, question);
    }
    std::unique_ptr<SQLite::Database> m_db;
    std::filesystem::path m_file;
    mutable std::mutex m_mutex;
};

/// A definition from the columns id, edition, sha256, text.
[[nodiscard]] run::Source sourceFrom(SQLite::Statement& row);
[[nodiscard]] std::optional<run::Source> findDefinition(SQLite::Database& db, std::string_view what,
                                                        std::string_view sha256);
/// The newest edition of each definition of a kind.
[[nodiscard]] std::vector<run::Source> newestDefinitions(SQLite::Database& db, std::string_view what);

/// A seal from the columns seq, kind, id, subject, sealed_at, person, document, previous_link, link.
[[nodiscard]] seal::Seal sealFrom(SQLite::Statement& row);
inline constexpr const char* kSealColumns =
    "SELECT seq, kind, id, subject, sealed_at, person, document, previous_link, link FROM seal_rows ";

}  // namespace taut::logbook
