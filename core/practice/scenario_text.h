// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/practice/scenario.h"

namespace taut::practice {

/// A scenario as the file that readScenario reads back alike.
[[nodiscard]] std::string scenarioText(const Scenario& scenario);

}  // namespace taut::practice
