// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace taut::app {

/// What everybody signs in and signs with in a practice logbook. No secret: nobody types their own into a file that
/// proves nothing, and the page says these where they are asked for.
inline constexpr const char* kPracticePin = "4826";
inline constexpr const char* kPracticePassphrase = "practice press only";

}  // namespace taut::app
