// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <unordered_map>

#include "core/logbook/prepared.h"
#include "core/logbook/search.h"
#include "core/seal/course.h"
#include "core/seal/signature.h"

// Inside this folder only.
namespace taut::logbook {

/// Writes seals and what their documents answer, one after the other, over one connection. Whoever writes more than one
/// keeps it: its statements are prepared once, and what documents name by hash is read once.
class Index {
public:
    explicit Index(SQLite::Database& db);
    Index(const Index&) = delete;
    Index& operator=(const Index&) = delete;

    /// A seal as it is, with its signatures and what its document answers; nullptr: nobody can read it.
    void put(const seal::Seal& seal, const seal::Document* document, std::span<const seal::SealSignature> signatures);
    /// What a document answers, alone.
    void answer(std::uint64_t seq, const seal::Document& document);

private:
    void person(std::uint64_t seq, const Json& body);
    void definition(std::uint64_t seq, const Json& body);
    void withdrawal(std::uint64_t seq, const Json& body);
    void run(std::uint64_t seq, const Json& body);
    void runRow(std::uint64_t seq, const Json& body, const seal::Course& course, const JobWords& job,
                const Json::Array& steps);
    void reading(std::uint64_t seq, const std::string& press, const Json& step, const seal::Course& course);
    void course(std::uint64_t seq, const seal::Course& course);
    void sequel(const seal::Document& document);
    void leaveSeries(std::int64_t seq);
    [[nodiscard]] JobWords jobOf(const Json& job);

    Prepared m_prepared;
    seal::CourseReader m_courses;
    std::unordered_map<std::string, JobWords> m_jobs;  ///< by hash of their text
};

/// When a run began in hours of the day where the press stands.
[[nodiscard]] int hourOf(std::int64_t utcMs, int offsetMinutes);

}  // namespace taut::logbook
