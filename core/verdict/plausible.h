// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/base/finding.h"
#include "core/targets/target.h"

namespace taut::verdict {

/// Why nobody can have read this, nullopt when they can. It is asked before a reading is judged, of readings without a
/// window too, and never of what stands in a record. `target` may be nullptr or not ready: then only the kind counts.
/// The subject is left to the caller. Codes: reading.no_sign (a step, to either side), reading.below_zero (a pressure,
/// a mass, a diameter; a draw, or what is measured about a zero point, may be below it), reading.no_time (none at all,
/// of what takes some), reading.beyond_end (more than the control or gauge shows, by more than its instrument's
/// uncertainty), reading.beyond_belief (more than anything of its kind on a press; inputs/sane.h).
[[nodiscard]] std::optional<Finding> implausible(const Quantity& reading, const targets::Target* target);

}  // namespace taut::verdict
