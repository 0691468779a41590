// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/run/decide.h"

// A run on the demo shop's real files, and a crew that always does the right thing next.
namespace taut::run::demo {

/// The files of the demo shop: press "north" or "south", the name of a job, the id of a roll.
[[nodiscard]] Sources sources(const std::string& press, const std::string& job, const std::string& roll);
[[nodiscard]] std::string rollText(const std::string& roll);

/// What a careful person would enter for this step now; a reading is the target's own value.
[[nodiscard]] Answer rightAnswer(const Run& run, const procedure::Step& step);

/// The command that takes a running run one step further; nullopt when the crew is stuck. Only what a screen offers:
/// the next step, holding and giving up stops. Signs off when nothing is open.
[[nodiscard]] std::optional<Command> nextCommand(const Run& run);

/// The first event of a run as ana, "" = no parent.
[[nodiscard]] Event begun(const Sources& sources, const BasisQuestion& question, const Run* parent = nullptr);
/// The run after the command; fails the test when it is refused.
[[nodiscard]] Run done(const Run& run, const Command& command, const std::string& by = "ana");
/// Handed over to Ben as soon as it may be: not while a roll is lifted.
[[nodiscard]] Run handedOver(Run run);
/// Goes on until this step is next; fails the test when the crew is stuck before.
[[nodiscard]] Run until(Run run, const procedure::StepId& step);
/// Goes on to the end, or until nothing can be done; says in `stuck` where and why.
[[nodiscard]] Run walked(Run run, std::string& stuck, const std::string& by = "ana");

}  // namespace taut::run::demo
