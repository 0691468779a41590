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
    /// run.press_withdrawn when the press is out of use; run.press_busy when another run is open on it.
    [[nodiscard]] static Result<OpenRun> begin(Writer& writer, const Beginning& beginning, const people::Actor& actor);
    /// Opens a run again after the program ended under it: appends `interrupted`, so that the next command must be
    /// Resume.
    [[nodiscard]] static Result<OpenRun> resume(Writer& writer, std::string_view runId, const people::Actor& actor);
    /// Ids of runs that have begun and not ended, oldest first.
    [[nodiscard]] static Result<std::vector<std::string>> openRuns(const Writer& writer);

    [[nodiscard]] const run::Run& run() const { return m_run; }
    /// The run after the command, or why not. On a refusal nothing was written.
    [[nodiscard]] Result<Done> perform(const run::Command& command, const people::Actor& actor);
    /// Seals a run that has ended: document, link, row, readings and the removal of its open events in one transaction.
    [[nodiscard]] Result<seal::Seal> seal(const people::Actor& actor);

private:
    OpenRun(Writer& writer, run::Run run) : m_writer(&writer), m_run(std::move(run)) {}
    Writer* m_writer;
    run::Run m_run;
};

}  // namespace taut::logbook
