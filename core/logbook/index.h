// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <span>
#include <string>
#include <unordered_map>
#include <utility>

#include "core/logbook/answers.h"
#include "core/logbook/prepared.h"
#include "core/logbook/search.h"
#include "core/seal/course.h"
#include "core/seal/signature.h"

// Inside this folder only.
namespace taut::logbook {

/// Whether runs may stand in the tables already that are sealed now.
enum class Standing : std::uint8_t { Maybe, Never };

/// Writes seals and what their documents answer, one after the other, over one connection. Whoever writes more than one
/// keeps it: its statements are prepared once, and what documents name by hash is read once.
class Index {
public:
    explicit Index(SQLite::Database& db, Standing standing = Standing::Maybe);
    Index(const Index&) = delete;
    Index& operator=(const Index&) = delete;

    /// A seal as it is, with its signatures and what its document answers; nullptr: nobody can read it.
    void put(const seal::Seal& seal, const seal::Document* document, std::span<const seal::SealSignature> signatures);
    /// A run's seal whose answers are known.
    void put(const seal::Seal& seal, const RunAnswers& answers, std::span<const seal::SealSignature> signatures);
    /// What a document answers, alone.
    void answer(std::uint64_t seq, const seal::Document& document);
    /// Writes what was counted over many seals. Before the end of every transaction.
    void settle();

private:
    void put(const seal::Seal& seal, std::span<const seal::SealSignature> signatures);
    void person(std::uint64_t seq, const Json& body);
    void definition(std::uint64_t seq, const Json& body);
    void withdrawal(std::uint64_t seq, const Json& body);
    void run(std::uint64_t seq, const RunAnswers& answers);
    void runRow(std::uint64_t seq, const RunAnswers& answers);
    void reading(std::uint64_t seq, const std::string& press, const ReadingAnswer& reading);
    void course(std::uint64_t seq, const seal::Course& course);
    void sequel(const seal::Document& document);
    void leaveSeries(std::int64_t seq);
    [[nodiscard]] JobWords jobOf(const Json& job);

    struct Series {
        std::string unit;
        std::int64_t readings = 0;
    };
    struct Day {
        std::int64_t first = 0, last = 0;
    };
    Prepared m_prepared;
    Standing m_standing;
    seal::CourseReader m_courses;
    std::unordered_map<std::string, JobWords> m_jobs;  ///< by hash of their text
    // Since settle():
    std::map<std::pair<std::string, std::string>, Series> m_series;  ///< by press and target
    std::map<std::int64_t, Day> m_days;
};

/// When a run began in hours of the day where the press stands.
[[nodiscard]] int hourOf(std::int64_t utcMs, int offsetMinutes);

}  // namespace taut::logbook
