// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace taut::app::verbs {

/// What bash completes of this program's command line, as a script that bash reads: verbs, their options, and files or
/// folders where an option takes one. Made of the verbs themselves, so that it has all of them.
[[nodiscard]] std::string bashCompletion();

}  // namespace taut::app::verbs
