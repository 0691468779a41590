// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

#include "core/base/kind.h"

namespace taut::inputs {

struct Press;

/// A limit or an assumption that no formula gives, under a name by which a shop may set its own: the table [policy] of
/// a press file, `centre_guided = "1.5 mm"`. What stands here holds until then.
struct PolicyRow {
    std::string_view name;
    Kind kind{};
    double si{};              ///< the default
    std::string_view unit;    ///< in which the default is spoken of on a metric press
    double least{}, most{};   ///< what can be believed, SI; beyond it the row is refused
    std::string_view says;    ///< English: what it limits
    std::string_view source;  ///< where the default comes from
    bool whole = false;       ///< counted one by one: half of one is a slip
    bool people = false;      ///< of who may sign: no target follows from it
};

/// All rows, sorted by name.
[[nodiscard]] std::span<const PolicyRow> policyRows() noexcept;
[[nodiscard]] const PolicyRow* findPolicy(std::string_view name) noexcept;
/// What holds at this press, SI: what its shop has set, else the default.
[[nodiscard]] double policyFigure(const Press& press, std::string_view name) noexcept;

}  // namespace taut::inputs
