// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include <QString>

#include "core/people/person.h"
#include "core/procedure/procedure.h"
#include "core/run/run.h"
#include "core/targets/target.h"
#include "core/verdict/verdict.h"

namespace taut::app {

/// What core only numbers or names by a word, in a person's language.

/// Words of a state, as lists show it.
[[nodiscard]] QString stageStateText(run::StageState state);
[[nodiscard]] QString stepStateText(run::StepState state);
/// The state of an answered step with its verdict: "inside", "near a limit", "recorded".
[[nodiscard]] QString standingText(const run::StepStanding& standing);
/// "inside", "near a limit", "outside, in doubt".
[[nodiscard]] QString verdictText(const verdict::Judgement& judgement);
/// The standards' words for how bad it can get: DANGER, WARNING, CAUTION, NOTICE; "" for none.
[[nodiscard]] QString signalText(procedure::SignalWord word);
/// Words of a role, or of who made a window.
[[nodiscard]] QString roleText(people::Role role);
[[nodiscard]] QString ruleText(targets::Rule rule);
/// "full set-up", "next roll of the same job" ...
[[nodiscard]] QString runKindText(std::string_view kind);
/// Why a stage is done again: web_break, wrong_roll, other.
[[nodiscard]] QString causeText(std::string_view cause);

/// What somebody affirms who states a condition ("guards_closed"): a whole sentence about what they see now.
[[nodiscard]] QString statementText(std::string_view condition, UnitSystem system);
/// What must be said before a run goes on after an interruption (run::kMakeSafe).
[[nodiscard]] QString makeSafeText(std::string_view word, UnitSystem system);
/// Where to stand: "at the roll lift". A roller, as the press names it, only for a step of one repeated item: another
/// step that is done among many rollers is done at none of them alone.
[[nodiscard]] QString whereText(std::string_view at, bool ofItem);
/// A target's word or yes/no as people say it ("over" -> "over the top"); an unknown word is data.
[[nodiscard]] QString valueText(const targets::TargetValue& value, UnitSystem system);
/// "1.39 bar", "yes", "over the top"; "needs roll.core", "cannot" or "never" where there is no value.
[[nodiscard]] QString targetValue(const targets::Target& target, UnitSystem system);
/// Its limits in words, "" when it has none.
[[nodiscard]] QString targetWindow(const targets::Target& target, UnitSystem system);

}  // namespace taut::app
