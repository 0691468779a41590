// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/practice/world.h"

namespace taut::practice {

/// What there is to read for one target at the practice press now.
struct Shown {
    Quantity value;
    Text missing;          ///< why there is nothing to read though somebody says so; empty = there is
    double tolerance = 0;  ///< how far two who read it differ, SI
    bool sized = false;    ///< by how much, to whichever side
};
/// nullopt: this press does not show such a thing, or there is nothing there yet.
[[nodiscard]] std::optional<Shown> shownAt(const World& world, std::string_view target);

}  // namespace taut::practice
