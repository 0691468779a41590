// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/practice/lesson.h"
#include "core/seal/document.h"

namespace taut::practice {

/// Who practised. Practice knows people by id and name and nothing else: nobody's key, PIN or role is in its file.
struct Who {
    std::string id, name;
    friend bool operator==(const Who&, const Who&) = default;
};

/// A lesson that has ended, as it is kept: enough to play it again, and what it came to.
struct Attempt {
    std::string id;
    Who who;
    run::Source scenario;  ///< its text and the hash of it
    run::Sources sources;  ///< texts of definitions are left out, as in a run; the roll's stays
    std::uint64_t seed = 0;
    Mode mode = Mode::Free;
    bool atOnce = false;
    std::vector<Fault> faults;  ///< named and drawn
    Instant begun, ended;       ///< on the wall; what happened when is told by the time in the practice press
    double simulated = 0;       ///< s
    std::vector<Logged> log;
    std::vector<Contradiction> contradictions;
    std::vector<Consequence> consequences;
    Score score;
    Detection detection;
    std::string traceSha256;
};
/// `scenario`: the file that the lesson was made from; where the lesson went by another seed, mode or showing, those
/// are told beside it.
[[nodiscard]] Attempt attemptOf(const Lesson& lesson, run::Source scenario, Who who, std::string id, Instant begun,
                                Instant ended);

/// Attempts are sealed in the practice logbook: kind "attempt", `subject` the person's id, so that all of somebody's
/// are found. {"format","kind","id","subject","practice":true,"person" {"id","name"},"scenario" {"id","sha256","text"},
/// "seed","mode","contradictions_shown","faults" [{"what","item","amount"}],"inputs" and "procedure" as in a run,
/// "begun","ended","offset","simulated","actions" [{"at","do",...}],"contradictions" [{"at","step","item","text"}],
/// "consequences" [{"at","code","where","text","cause"}],"score" as `practice --json` has it,"trace_sha256"}.
[[nodiscard]] seal::Document attemptDocument(const Attempt& attempt);
/// And back, strictly: what is written again has to be the same, member for member. Code document.broken.
[[nodiscard]] Result<Attempt> attemptFrom(const seal::Document& document);
[[nodiscard]] Json scoreJson(const Score& score, const Detection& detection);

}  // namespace taut::practice
