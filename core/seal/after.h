// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/seal/seal.h"

namespace taut::seal {

// What follows a sealed run. The run's own document never changes: a review, a correction and a void are seals of
// their own, which name the run's link as their subject and the run's id as theirs.

/// A supervisor's countersignature, or that the run is sent back, with what is wrong.
struct Review {
    bool accepted = true;
    std::string note;  ///< must say something when the run is sent back
    friend bool operator==(const Review&, const Review&) = default;
};
/// What was answered in a step, as it stood, and what it should be.
struct CorrectedStep {
    std::string step, stood, shouldBe;
    std::optional<double> value;  ///< of a reading: shouldBe in SI, its unit, and how its window judges it
    std::string unit, verdict;
    friend bool operator==(const CorrectedStep&, const CorrectedStep&) = default;
};
struct Correction {
    std::vector<CorrectedStep> steps;
    std::string remark;  ///< what belongs to no step; one of the two must be there
    std::string reason;
    friend bool operator==(const Correction&, const Correction&) = default;
};
struct Voiding {
    std::string reason;
    friend bool operator==(const Voiding&, const Voiding&) = default;
};
using Sequel = std::variant<Review, Correction, Voiding>;
[[nodiscard]] Kind kindOf(const Sequel& sequel) noexcept;
/// The reason, of a review the note.
[[nodiscard]] const std::string& wordsOf(const Sequel& sequel) noexcept;

/// The present state of a sealed run, as readers from outside see it.
enum class Present : std::uint8_t { Sealed, Reviewed, SentBack, Corrected, Void };
[[nodiscard]] const char* presentWord(Present present) noexcept;  ///< sealed reviewed sent_back corrected void
[[nodiscard]] std::optional<Present> presentFrom(std::string_view word) noexcept;
/// Whether a supervisor has to look at it: sealed or corrected, and not reviewed since.
[[nodiscard]] bool wantsReview(Present present) noexcept;

struct State {
    Present present = Present::Sealed;
    std::string reviewedBy;  ///< name of who accepted it as it stands now; "" = nobody has
    friend bool operator==(const State&, const State&) = default;
};
/// The one rule for the present state. Void is for ever.
[[nodiscard]] State stateAfter(const State& state, const Sequel& sequel, std::string_view byName);

/// A sealed run and who may not judge it: the fold of its own seal and those about it, oldest first.
struct SealedRun {
    std::string id, subject;              ///< subject: lower-case hex of its link
    std::vector<std::string> hands;       ///< person ids: who had it in hand at any time, and who sealed it
    std::vector<std::string> correctors;  ///< person ids: who corrected it since it was last accepted
    State state;
    std::string press = {};  ///< id
};
[[nodiscard]] SealedRun sealedRun(const Seal& seal, const Document& document);
[[nodiscard]] SealedRun after(SealedRun run, const Sequel& sequel, const std::string& byId, std::string_view byName);

/// Why this person may not add this now; nullopt = they may. Codes, subject the run's id: gate.role, gate.own_run,
/// gate.own_correction, run.void, run.sent_back (accepting it wants a correction first), run.reviewed (nothing is new
/// since), and those of saysTooLittle.
[[nodiscard]] std::optional<Finding> whyNot(const SealedRun& run, const Sequel& sequel, const people::PersonRecord& by);
/// What every such document must say: gate.no_reason, correction.empty, correction.same (it stands so already),
/// correction.twice (a step named more than once).
[[nodiscard]] std::optional<Finding> saysTooLittle(const Sequel& sequel, const std::string& subject);

/// {"format","kind","id","subject", of a review "verdict" (accepted sent_back) and "note", of a correction "steps"
/// [{"step","stood","should_be","value","unit","verdict"}], "remark" and "reason", of a void "reason", "by" {"id",
/// "name","role"}, "at","offset"}.
[[nodiscard]] Document sequelOf(const Sequel& sequel, const SealedRun& run, const people::PersonRecord& by, Instant at);
/// And back; code document.broken, also when it says too little or names another person than its seal.
[[nodiscard]] Result<Sequel> sequelIn(const Document& document);

/// One seal in the story of a run: its own, or one that followed it.
struct Sealing {
    std::uint64_t seq{};
    Kind kind{};
    std::string meaning;  ///< of the signature: performed abandoned reviewed corrected voided
    std::string byId, byName;
    std::int64_t atMs{};
    int offsetMinutes{};
    std::optional<Sequel> sequel;  ///< nothing for the run's own
};
[[nodiscard]] Result<Sealing> sealingOf(const Seal& seal);  ///< document.broken
[[nodiscard]] State stateOf(std::span<const Sealing> sealings);

/// What a step of this run says now: as it was answered, or as it was last corrected.
[[nodiscard]] std::string saidNow(const run::Run& run, std::span<const Sealing> sealings, std::string_view step);
/// Where a correction says that something stood which its run, as corrected before, does not say: correction.misquoted,
/// subject "seal 17". What else may be wrong with any of these documents is told elsewhere (nullopt).
[[nodiscard]] std::optional<Finding> misquoted(const Seal& correction, const Document& run,
                                               std::span<const Sealing> before, const TextBySha& texts);
/// The correction with each step looked up in the run, each reading read and judged by its step's window. Codes,
/// subject the step: gate.no_step, gate.not_correctable (a movement, a held stop), correction.stale (what stands is not
/// what the correction says stood), answer.* and quantity.* (a reading or choice that cannot be).
[[nodiscard]] Result<Correction> readCorrection(const run::Run& run, std::span<const Sealing> sealings,
                                                Correction correction);

}  // namespace taut::seal
