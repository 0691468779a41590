// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "app/widgets/ask_panel.h"
#include "core/run/run.h"

namespace taut::app {

/// What can be done to a run besides answering its step.
enum class RunAct : std::uint8_t {
    Note,
    NotApplicable,
    Correct,
    Diameter,
    ChangeRoll,
    Withdraw,
    Repeat,
    HandOver,
    Interrupt,
    HoldStop,  ///< one more person has hands in, with a stop of their own
    Review,
    Sheet,
    Abandon,
    Attach,  ///< pictures and files: looked at, and more of them attached
    Helped,  ///< what brought a reading back within its window
    GiveUp,  ///< somebody else's held stop: begun by the refusal of whoever has the run (run/held.h)
    Leave
};
/// The button's words, with their mnemonic.
[[nodiscard]] QString actName(RunAct act);
/// False when the rules would refuse it whatever was said.
[[nodiscard]] bool actOffered(RunAct act, const run::Run& run, const procedure::Step* step, const PersonChoice& actor);

/// What has to be asked for it, in line. Not for ChangeRoll, GiveUp, Review, Sheet, Attach and Leave.
[[nodiscard]] AskPanel::Question questionFor(RunAct act, const run::Run& run, const procedure::Step* step,
                                             const std::vector<PersonChoice>& people);
/// The same for GiveUp, of this holder's stop.
[[nodiscard]] AskPanel::Question giveUpQuestion(const run::Run& run, const std::string& holder,
                                                const std::vector<PersonChoice>& people);

/// What is to be sent when it was given: exactly one of these.
struct ActRequest {
    std::optional<run::Command> command;
    WithSecond second;                       ///< with the person and PIN that were given
    std::optional<run::Command> finish;      ///< ends the run, with the passphrase that was given
    std::optional<std::string> withdrawFor;  ///< the press is withdrawn for this reason
};
/// Of an act that questionFor asks for. Codes: those of reading a quantity; act.not_asked of any other act.
[[nodiscard]] Result<ActRequest> requestFor(RunAct act, const run::Run& run, const procedure::Step* step,
                                            const QStringList& values);
/// The holder, or a supervisor in their place, says that their stop is given up.
[[nodiscard]] ActRequest giveUpRequest(const std::string& holder, const QStringList& values);

}  // namespace taut::app
