// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/practice/attempt.h"
#include "core/report/report.h"

namespace taut::practice {

/// What a mode is called: "tell the key points".
[[nodiscard]] Text modeText(Mode mode);
/// What the lesson is called: the title of its scenario, or the id of one without a title.
[[nodiscard]] std::string lessonName(const Attempt& attempt);
/// What an act was, for a time line: "LOAD set to 1.2 bar", "answered: ...", "said to be wrong: ...". `basis`: of what
/// the attempt went by; steps have their names in it.
[[nodiscard]] Text actText(const Act& act, const run::Basis& basis);
/// One attempt for paper and screen: what it came to, vital steps that were missed, where the press said otherwise,
/// what happened and which step would have prevented it, what was found. Every page says PRACTICE.
[[nodiscard]] report::Report attemptReport(const Attempt& attempt, const run::Basis& basis);
/// "0:02:31" of a lesson.
[[nodiscard]] std::string lessonTime(double seconds);

}  // namespace taut::practice
