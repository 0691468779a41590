// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/keep.h"

#include "core/logbook/open_run.h"

namespace taut::logbook {

std::optional<Finding> whyNotKeeper(const std::optional<people::Actor>& actor)
{
    if (!actor) return refuse("gate.nobody", {}, "Nobody is signed in.", "Have a supervisor sign in and do it.");
    if (people::may(actor->role(), people::Act::KeepLogbook)) return std::nullopt;
    return people::notAllowed(*actor, actor->id().value);
}

std::optional<Finding> whyNotReplaced(const Writer& writer)
{
    const auto open = OpenRun::openRuns(writer);
    if (!open) return open.error();
    if (open->empty()) return std::nullopt;
    return refuse("restore.run_open", open->front(), {"Run %1 is open in this logbook.", {open->front()}},
                  "Finish it or abandon it first: what is open here goes on only in the file that is set aside.");
}

}  // namespace taut::logbook
