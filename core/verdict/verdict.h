// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/targets/coarse.h"
#include "core/targets/target.h"

namespace taut::verdict {

/// Inside: U or more away from both limits. Near: within the limits, less than U from one. Outside: beyond a limit.
/// Missing: nothing read. Recorded: there is no window to judge against, or only an alarm that was not reached; the
/// reading is kept as it is.
enum class Verdict : std::uint8_t { Inside, Near, Outside, Missing, Recorded };
[[nodiscard]] const char* verdictWord(Verdict verdict) noexcept;
[[nodiscard]] std::optional<Verdict> verdictFrom(std::string_view word) noexcept;

struct Judgement {
    Verdict verdict = Verdict::Missing;
    bool doubtful = false;  ///< outside, but no more than U beyond the limit: read again
    friend bool operator==(const Judgement&, const Judgement&) = default;
};

/// Guarded acceptance (ILAC-G8:09/2019 4.2.3 with w = U; formats §8). Edges belong to the better verdict; a limit is
/// never widened. A length has no guard band at a lower limit of nought: edges touch or they do not; nor has what may
/// not be there at all. Comparison is in decimal to 12 significant digits, so that 0.1 + 0.2 meets a limit of 0.3. A
/// reading that is no number is missing. The window must be of the reading's kind and U not negative (asserted).
[[nodiscard]] Judgement judge(const Quantity& reading, double uncertaintySi, const targets::Window& window);

/// U of a reading, SI: the instrument's, else 2 r / sqrt(12) of the last digit typed (r in the unit typed: 0.1 bar for
/// "1.4 bar", 1/4 in for "13 1/4 in"); 0 for a reading that nobody typed,
/// and for a count, which is exact.
[[nodiscard]] double uncertaintyOf(const Quantity& reading, const std::optional<Quantity>& instrument);

/// window.too_coarse: with this U nothing can be inside. The targets say it of every instrument before anybody reads.
using targets::tooCoarse;

}  // namespace taut::verdict
