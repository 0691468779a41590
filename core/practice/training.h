// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/practice/attempt.h"
#include "core/report/report.h"
#include "core/seal/training.h"

namespace taut::practice {

/// What a trainer said of an attempt, and where that is sealed.
struct Observed {
    std::uint64_t seq = 0;
    std::string link;  ///< lower-case hex
    seal::Observation said;
    Who by;
    std::string key;  ///< of whoever signed, hex
    Instant at;
};
struct KeptAttempt {
    std::uint64_t seq = 0;
    std::string link;
    Attempt attempt;
    std::vector<Observed> observations;
};
/// Everything that the practice logbook has of one person.
struct TrainingRecord {
    Who who;
    std::vector<KeptAttempt> attempts;  ///< oldest first
};

/// How many tests were passed in a row, each with other faults (score.h).
[[nodiscard]] std::size_t inARow(const TrainingRecord& record);
[[nodiscard]] bool isReadyToBeObserved(const TrainingRecord& record);
/// Found, missed and named in vain in all tests together.
[[nodiscard]] Detection detectionIn(const TrainingRecord& record);
/// Tests that were not passed and that no trainer has looked at yet: what trainers still have to teach again.
[[nodiscard]] std::vector<const KeptAttempt*> followUpsIn(const TrainingRecord& record);

/// What trainers signed with a key that is not the one by which the shop's logbook knows them (or not any more): a
/// practice logbook enrols nobody, so whoever goes by a record asks this. `people`: the shop's.
[[nodiscard]] std::vector<const Observed*> unknownHands(const TrainingRecord& record,
                                                        std::span<const people::PersonRecord> people);

/// {"format","kind":"training_record","practice":true,"person","attempts" [{"seq","link","id","scenario" {"id",
/// "sha256"},"press","procedure","seed","mode","begun","ended","offset","score","trace_sha256","observations" [{"seq",
/// "link","note","follow_up","by","key","at"}]}],"in_a_row","ready_to_be_observed","follow_ups"}. The same attempts
/// give the same bytes.
[[nodiscard]] Json recordJson(const TrainingRecord& record);
/// SHA-256 of recordJson() as it is dumped, lower-case hex: what a competence in the shop's logbook names.
[[nodiscard]] std::string recordSha256(const TrainingRecord& record);
/// The record for paper and screen; every page says PRACTICE.
[[nodiscard]] report::Report trainingReport(const TrainingRecord& record);

}  // namespace taut::practice
