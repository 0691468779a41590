// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/logbook/logbook.h"

namespace taut::logbook {

/// The one door through which a run changes: decide, write and sync, fold, in that order. What perform() returns is on
/// disk.
class OpenRun {
public:
    struct Beginning {
        run::Sources sources;  ///< as kept by Writer::keepDefinition; the roll's text as it is
        run::BasisQuestion question;
        std::string parent;  ///< run id this one continues, "" = none
    };
    /// run.press_withdrawn when the press is out of use; run.press_busy when another run is open on it;
    /// run.definition_not_kept.
    [[nodiscard]] static Result<OpenRun> begin(Writer& writer, const Beginning& beginning, const people::Actor& actor);
    /// Opens a run again after the program ended under it: appends `interrupted` when it was going on, so that the next
    /// command must be Resume. One that has ended and only waits for its seal is given as it is. run.unknown,
    /// run.sealed.
    [[nodiscard]] static Result<OpenRun> resume(Writer& writer, std::string_view runId, const people::Actor& actor);
    /// Ids of runs that have begun and are not sealed, oldest first.
    [[nodiscard]] static Result<std::vector<std::string>> openRuns(const Writer& writer);

    [[nodiscard]] const run::Run& run() const { return m_run; }
    /// The run after the command, or why not. On a refusal nothing was written.
    /// Withdraw and Return go to the press and with it to every open run on it.
    [[nodiscard]] Result<Done> perform(const run::Command& command, const people::Actor& actor);
    /// Takes in what reached this run by another way: a press withdrawn or given back by Writer.
    [[nodiscard]] Result<Done> refresh();
    /// Seals a run that has ended: document, link, signature, row, readings and the removal of its open events in one
    /// transaction. run.not_ended, run.sealed.
    [[nodiscard]] Result<seal::Seal> seal(const people::Signer& signer);

private:
    OpenRun(Writer& writer, run::Run run) : m_writer(&writer), m_run(std::move(run)), m_look(look(writer.clock())) {}
    Writer* m_writer;
    run::Run m_run;
    ClockLook m_look;  // when it was last written in
};

}  // namespace taut::logbook
