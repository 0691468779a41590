// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/kind.h"
#include "core/base/text.h"

namespace taut {

/// "Pa, kPa, MPa, GPa, bar, mbar, psi, kpsi"
[[nodiscard]] std::string unitList(Kind kind);
/// What to write instead of a unit that is not known, or not of the expected kind, when it is plain what was meant
/// ("PSI": psi, "daN": N, "lb" for a force: lbf). A slip of one letter is looked for only in what is no unit at all:
/// whoever wrote "min" did not mean mil.
enum class Written : std::uint8_t { NoUnit, OtherKind };
[[nodiscard]] std::optional<Text> nearUnit(std::string_view written, Kind expected, Written as);

}  // namespace taut
