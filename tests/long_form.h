// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdlib>

namespace taut {

/// Whether everything is to be gone through (packaging/test.sh --long), which takes an hour. Without it a test that
/// goes through many alike looks at each sort of them, and at some of each.
inline bool isLongForm() { return std::getenv("TAUTWEB_LONG") != nullptr; }

}  // namespace taut
