// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/base/json.h"
#include "core/people/person.h"
#include "core/run/command.h"
#include "core/run/run.h"

namespace taut::run {

/// The gates, pure. What may happen next and, when not, why not and what to do: the Finding's code is "gate.*" or
/// "answer.*". Gates read conditions, roles and open steps; no step id or stage name stands in the code.
[[nodiscard]] Result<Event> decide(const Run& run, const Command& command, const Stamp& stamp,
                                   const people::Actor& actor);

/// That the clock of this PC was set while the run was open, by so many milliseconds; nobody decides it.
[[nodiscard]] Event clockJumped(const Run& run, std::int64_t byMs, const Stamp& stamp, const people::Actor& actor);

/// The first event of a run. parent: the sealed run it continues, whose standing conditions (not statements about the
/// machine's state) are taken over; refused when the actor's role may not answer steps (gate.role).
struct Beginning {
    std::string runId, workplace;
    bool practice = false;
    BasisQuestion question;
    const Run* parent = nullptr;
};
[[nodiscard]] Result<Event> begin(const Basis& basis, const Beginning& beginning, const Stamp& stamp,
                                  const people::Actor& actor);

/// Why this step cannot be answered now; nullopt = it can. The screen shows what this says; decide() refuses with it.
[[nodiscard]] std::optional<Finding> closedBecause(const Run& run, const StepId& step);

/// Why this person cannot carry the run on: it is in somebody else's hands (gate.other_hands). nullopt = it is theirs.
/// Anybody may still hold a stop, write a note, interrupt, withdraw the press or abandon the run, as their role allows.
[[nodiscard]] std::optional<Finding> inOtherHands(const Run& run, const people::PersonId& who);

/// The step whose statement no longer holds and that must be said again before this one can be answered; nullopt =
/// none.
[[nodiscard]] std::optional<StepId> lapsedBefore(const Run& run, const StepId& step);

/// Which steps go stale between two sets of targets when `input` ("roll") changed: those whose target differs and those
/// that name the input in `uses`.
[[nodiscard]] std::vector<StepId> staleSteps(const procedure::Plan& plan, const targets::Targets& before,
                                             const targets::Targets& after, std::string_view input);

/// Reads an event back from a store (code event.broken).
[[nodiscard]] Result<Event> eventFrom(std::string_view json);
/// The same of an event whose JSON was read already.
[[nodiscard]] Result<Event> eventFromJson(Json body);

}  // namespace taut::run
