// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/logbook/open_runs.h"
#include "core/run/parts.h"

namespace taut::logbook {

namespace {

Finding roleGate(const std::string& press, const people::Actor& by)
{
    return refuse(
        "gate.role", press,
        {"%1 is enrolled as %2, which does not allow this.", {by.name(), std::string(people::roleWord(by.role()))}},
        "Let somebody do it whose role allows it.");
}

/// The same command in every run of the press that stands in one of these phases.
Result<Done> inOpenRuns(SQLite::Database& db, const std::string& press, const run::Command& command,
                        std::initializer_list<run::Phase> phases, Instant now, const people::Actor& by)
{
    for (const std::string& id : unsealedRuns(db, press)) {
        const auto run = foldStored(db, id);
        if (!run) return run.error();
        if (std::find(phases.begin(), phases.end(), run->phase()) == phases.end()) continue;
        const auto event = run::decide(*run, command, stampFor(run->events().size() + 1, now, by), by);
        if (!event) return event.error();
        appendEvent(db, run->after(*event));
    }
    return Done{};
}

}  // namespace

Result<Done> Writer::withdraw(std::string_view press, std::string_view reason, const people::Actor& by)
{
    const std::string id(press);
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        if (!people::may(by.role(), people::Act::WithdrawPress)) return roleGate(id, by);
        if (const auto standing = findWithdrawal(db, id))
            return refuse("press.already_withdrawn", id,
                          {"%1 has withdrawn the press %2 already: %3", {standing->byName, id, standing->reason}},
                          "Tell a supervisor what else you found.");
        if (!run::saysSomething(reason))
            return refuse("gate.no_reason", id, "Withdrawing the press needs a sentence.",
                          "Say in a few words what is wrong with it.");
        SQLite::Statement known(db, "SELECT 1 FROM definition_rows WHERE what = 'press' AND id = ?");
        known.bind(1, id);
        if (!known.executeStep())
            return refuse("press.unknown", id, {"This logbook knows no press %1.", {id}},
                          "Choose one of the presses that are kept here.");
        known.reset();
        const Instant now = m_impl->clock->now();
        auto told = inOpenRuns(db, id, run::Withdraw{std::string(reason)},
                               {run::Phase::Running, run::Phase::Interrupted}, now, by);
        if (!told) return told;
        const seal::Seal seal = appendSeal(db, seal::withdrawalOf(id, true, reason, by, now), sealer(by), now);
        return Done{};
    });
}

Result<Done> Writer::giveBack(std::string_view press, std::string_view done, const people::Actor& by)
{
    const std::string id(press);
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        if (!people::may(by.role(), people::Act::ReturnPress)) return roleGate(id, by);
        const auto standing = findWithdrawal(db, id);
        if (!standing)
            return refuse("press.not_withdrawn", id, {"The press %1 is not withdrawn from use.", {id}},
                          "Nothing has to be given back.");
        if (standing->byId == by.id().value)
            return refuse("gate.own_return", id, "Nobody gives back a press that they withdrew themselves.",
                          "Ask another supervisor to look at it and give it back.");
        if (!run::saysSomething(done))
            return refuse("gate.no_reason", id, "It was not said what was put right.", "Say it in a few words.");
        const Instant now = m_impl->clock->now();
        auto told = inOpenRuns(db, id, run::Return{std::string(done)}, {run::Phase::Withdrawn}, now, by);
        if (!told) return told;
        const seal::Seal seal = appendSeal(db, seal::withdrawalOf(id, false, done, by, now), sealer(by), now);
        return Done{};
    });
}

}  // namespace taut::logbook
