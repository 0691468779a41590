// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/verbs/verbs.h"
#include "core/practice/lesson.h"

namespace taut::app::verbs {

/// `practice --keep FILE --person ID --name NAME`: seals what was played in a practice logbook, made when there is
/// none; gives the id of the attempt.
[[nodiscard]] Result<std::string> keepAttempt(const Options& options, const practice::Lesson& lesson,
                                              const std::string& scenarioText, Instant begun);
/// `practice --record FILE --person ID`: what such a logbook has of somebody.
[[nodiscard]] Exit trainingRecord(const Options& options, const Console& console);

}  // namespace taut::app::verbs
