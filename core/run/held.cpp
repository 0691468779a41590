// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/held.h"

#include "core/run/parts.h"

namespace taut::run {

std::optional<Finding> whyNotGivenUp(const GiveUpStop& command, const people::Actor& atRun, const PersonNamed& enrolled)
{
    const auto holder = enrolled(trimmed(command.holder));
    if (!holder || holder->id == atRun.id()) return std::nullopt;
    const std::string& name = holder->name;
    if (!command.saidBy)
        return refuse(kHoldersOwn, name, {"%1 holds this stop, and nobody else gives it up.", {name}},
                      {"%1 gives their PIN here. If they are away, a supervisor looks and says so.", {name}});
    const people::Actor& by = *command.saidBy;
    if (by.id() == holder->id) return std::nullopt;
    if (!people::may(by.role(), people::Act::WaiveVital) || by.id() == atRun.id())
        return refuse(
            "gate.supervisor", name,
            {"%1 holds this stop. For %1 only a supervisor speaks who does not have the run in hand.", {name}},
            "Ask them, or a supervisor who has looked that nobody is in.");
    if (!saysSomething(command.reason))
        return refuse("gate.no_reason", name, {"It was not said why %1 does not give it up.", {name}},
                      "Say where they are, and that you have seen that nobody is in.");
    return std::nullopt;
}

}  // namespace taut::run
