// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/sessions/session.h"
#include "core/practice/training.h"

namespace taut::app {

/// What the scenario of an attempt is called.
[[nodiscard]] QString lessonText(const practice::Attempt& attempt);
/// "passed" or "not yet".
[[nodiscard]] QString resultText(const practice::Score& score);
/// What came of it, in a line: the first thing that should not have happened and how many more, or that nothing did.
[[nodiscard]] QString happenedText(const practice::Attempt& attempt);
/// What a trainer reads of an attempt before they sign for it: what it came to, what happened at the practice press,
/// the first vital steps that were missed in the words of the procedure as the shop has it, and what others said of it.
[[nodiscard]] QString attemptText(const practice::KeptAttempt& kept, const Session& shop);

}  // namespace taut::app
