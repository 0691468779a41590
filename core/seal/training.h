// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/seal/seal.h"

namespace taut::seal {

/// A trainer was beside an attempt, or looked at it afterwards: what they saw and, where it was not passed, what they
/// teach again. If the worker has not learned, the instructor has not taught (job instruction, 1940s, public).
struct Observation {
    std::string note, followUp;
    friend bool operator==(const Observation&, const Observation&) = default;
};
/// The attempt that is observed, out of its own seal.
struct SealedAttempt {
    std::string id, subject;  ///< subject: lower-case hex of its link
    std::string personId, personName;
    bool passed = false;
};
[[nodiscard]] SealedAttempt sealedAttempt(const Seal& seal, const Document& document);
/// Why this may not be said by this person: training.own (of themselves), training.no_trainer (their role),
/// gate.no_reason (nothing was seen; or it was not passed, and it was not said what is taught again).
[[nodiscard]] std::optional<Finding> whyNot(const SealedAttempt& attempt, const Observation& observation,
                                            const people::PersonRecord& by);
/// {"format","kind":"observation","id","subject","practice":true,"person","note","follow_up","by" {"id","name","role",
/// "key"},"at","offset"}. A practice logbook enrols nobody: the key stands in the document that it signs, and whose it
/// is, the shop's logbook tells.
[[nodiscard]] Document observationOf(const Observation& observation, const SealedAttempt& attempt,
                                     const people::PersonRecord& by, Instant at);
[[nodiscard]] Result<Observation> observationIn(const Document& document);  ///< document.broken

}  // namespace taut::seal
