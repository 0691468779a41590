// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/practice/attempt.h"

namespace taut::practice {

/// Something on the time line of an attempt.
struct TimeMark {
    enum class What : std::uint8_t { Deed, Answer, Found, Hint, Contradiction, Consequence };
    What what{};
    double at = 0;          ///< s
    std::size_t index = 0;  ///< in the attempt's log, contradictions or consequences
    friend bool operator==(const TimeMark&, const TimeMark&) = default;
};
/// In the order in which it happened; what was done before what came of it.
[[nodiscard]] std::vector<TimeMark> timeLineOf(const Attempt& attempt);

/// An attempt played anew from its seed, so that one can look at its press at any time. Every kEvery seconds the press
/// is kept, so that going back is no longer than going on.
class Replay {
public:
    static constexpr double kEvery = 20;
    /// `basis`: of the sources that the attempt names. Refuses what Lesson::begin and readScenario refuse, and
    /// practice.other_inputs where the basis is of other editions or another roll.
    [[nodiscard]] static Result<Replay> of(Attempt attempt, run::Basis basis);

    [[nodiscard]] const Attempt& attempt() const { return m_attempt; }
    /// Whether the same happened, to the last figure: a program of another version may reckon otherwise.
    [[nodiscard]] bool isFaithful() const { return m_traceSha256 == m_attempt.traceSha256; }
    [[nodiscard]] double length() const { return m_attempt.simulated; }
    /// The press at this time; what was done at that very moment is done.
    [[nodiscard]] World at(double seconds) const;

private:
    struct Kept {
        World world;
        std::size_t next = 0;  ///< of the log, the first that is not done yet
    };
    explicit Replay(Attempt attempt) : m_attempt(std::move(attempt)) {}
    Attempt m_attempt;
    std::vector<Kept> m_kept;
    std::string m_traceSha256;
};

}  // namespace taut::practice
