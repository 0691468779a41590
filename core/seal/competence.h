// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/inputs/press.h"
#include "core/seal/seal.h"

namespace taut::seal {

// What a supervisor makes of somebody's training, in the shop's logbook. Practice alone qualifies nobody: competence is
// for one press, wants set-ups that were watched at it, and ends. Of the practice logbook nothing comes here but the
// hash of a training record. Who may lock out is another matter, for the site's own procedure, and not touched by it.

/// A run at a real press that somebody did while a trainer watched.
struct ObservedRun {
    std::string run, link;  ///< of its seal, lower-case hex
    friend bool operator==(const ObservedRun&, const ObservedRun&) = default;
};
/// Somebody may work a press alone, from now until a day; or may not any more, and why.
struct Competence {
    bool granted = true;
    std::string personId, personName;
    std::string press;
    int pressEdition = 0;
    std::string pressSha256, safety;  ///< of its profile, and of what in it protects people (safetyStamp)
    std::string trainingRecord;       ///< SHA-256 of the record out of the practice logbook, lower-case hex
    std::vector<ObservedRun> observed;
    std::int64_t validUntilMs = 0;
    std::string reason;  ///< why it ends: an accident, what an inspection showed
    friend bool operator==(const Competence&, const Competence&) = default;
};
/// Of the guards, stops, trip bars, lift, mandrel and stopping times of a profile: another one, and whoever learned it
/// as it was has to be shown.
[[nodiscard]] std::string safetyStamp(const inputs::Press& press);
/// {"format","kind":"competence","id": the press,"subject": the person's id,"what": granted or ended,"person","press"
/// {"id","edition","sha256","safety"},"training_record","observed" [{"run","link"}],"valid_until","reason","by","at",
/// "offset"}.
[[nodiscard]] Document competenceOf(const Competence& competence, const people::PersonRecord& by, Instant at);
[[nodiscard]] Result<Competence> competenceIn(const Document& document);  ///< document.broken
/// Why this may not be said by this person, as far as the document tells: gate.role, competence.own, competence.record
/// (no SHA-256), competence.twice (a run named twice), competence.date (over before it begins), gate.no_reason.
[[nodiscard]] std::optional<Finding> whyNot(const Competence& competence, const people::PersonRecord& by,
                                            std::int64_t nowMs);

/// What the present state of somebody's competence is asked against.
struct CompetenceNow {
    std::int64_t nowMs = 0;
    std::string safety;                  ///< of the press's profile as it is
    std::optional<std::int64_t> lastMs;  ///< when they last set this press up
    double awayMost = 0;                 ///< s without setting it up after which it ends
};
/// Why somebody is not competent at a press; nullopt: they are. `newest`: the last that was said of them there. Codes:
/// competence.none, .ended, .over (its date), .changed (the profile's safety), .away.
[[nodiscard]] std::optional<Finding> notCompetent(const std::optional<Competence>& newest, std::int64_t grantedMs,
                                                  const std::string& name, const std::string& press,
                                                  const CompetenceNow& now);

}  // namespace taut::seal
