// SPDX-License-Identifier: GPL-3.0-or-later
// A run to practise with. The practice logbook is a file of its own kind, which no door of the shop opens.
#include <algorithm>

#include <QCoreApplication>

#include "app/sessions/practice_secrets.h"
#include "app/sessions/session_impl.h"
#include "core/practice/attempt.h"

namespace taut::app {

namespace {

const people::Chosen kChosen{kPracticePin, kPracticePassphrase};
/// Whoever accepts deviations and keeps files there; nobody of the shop has a number so low.
constexpr const char* kKeeper = "p-0";

/// The supervisor of the practice logbook, put into it when it is new.
Result<people::Signer> keeperOf(logbook::Writer& writer)
{
    const auto known = writer.reader().people();
    if (!known) return known.error();
    if (known->empty()) {
        const std::string name =
            QCoreApplication::translate("taut::app::Session", "Supervisor of the practice press").toStdString();
        const auto enrolled =
            people::makePerson(people::PersonId{kKeeper}, name, people::Role::Supervisor, kChosen, PinCost::Least);
        if (!enrolled) return enrolled.error();
        const auto self = people::unlock(&*enrolled, kPracticePassphrase);
        if (!self) return self.error();
        if (auto added = writer.addFirst(*enrolled, *self); !added) return added.error();
    }
    return writer.unlock(kKeeper, kPracticePassphrase);
}

/// Several shops may practise on one PC, and their numbers mean other people: known is who has the name.
Result<people::Actor> trainee(logbook::Writer& writer, const std::string& name, const people::Signer& keeper)
{
    const auto known = writer.reader().people();
    if (!known) return known.error();
    for (const people::PersonRecord& one : *known) {
        if (one.name != name) continue;
        if (auto actor = writer.signIn(one.id.value, kPracticePin)) return actor;
        // Wrong tries close this door as any other, and nothing lies behind it that is worth the wait.
        const auto code = writer.invite(one, keeper);
        if (!code) return code.error();
        if (auto chosen = writer.choose(one.id.value, *code, kChosen, PinCost::Least); !chosen) return chosen.error();
        return writer.signIn(one.id.value, kPracticePin);
    }
    const auto enrolled =
        people::makePerson(people::nextId(*known), name, people::Role::Operator, kChosen, PinCost::Least);
    if (!enrolled) return enrolled.error();
    if (auto added = writer.addPerson(*enrolled, keeper); !added) return added.error();
    return writer.signIn(enrolled->person.id.value, kPracticePin);
}

/// A press is practised on by one run at a time, and nobody comes back to a lesson that was left.
Result<Done> endEarlier(logbook::Writer& writer, const people::Signer& keeper)
{
    if (const auto withdrawn = writer.reader().withdrawals())
        for (const records::Withdrawal& one : *withdrawn)
            if (auto back = writer.giveBack(one.press, "The next lesson begins.", keeper.actor()); !back)
                return back.error();
    const auto open = logbook::OpenRun::openRuns(writer);
    if (!open) return open.error();
    for (const std::string& id : *open) {
        auto run = logbook::OpenRun::resume(writer, id, keeper.actor());
        if (!run) return run.error();
        const run::Phase phase = run->run().phase();
        if (phase != run::Phase::Completed && phase != run::Phase::Abandoned)
            if (auto ended = run->perform(run::Abandon{"The next lesson began."}, keeper.actor()); !ended)
                return ended.error();
        if (auto sealed = run->seal(keeper); !sealed) return sealed.error();
    }
    return Done{};
}

Result<run::Sources> keptSources(logbook::Writer& writer, run::Sources sources, const people::Actor& keeper)
{
    for (const auto& [what, source] :
         {std::pair("press", &sources.press), std::pair("job", &sources.job),
          std::pair("substrate", &sources.substrate), std::pair("procedure", &sources.procedure)}) {
        auto kept = writer.keepDefinition(what, source->id, source->text, keeper);
        if (!kept) return kept.error();
        *source = *std::move(kept);
    }
    return sources;
}

}  // namespace

void Session::keepAttempt(const practice::Attempt& attempt)
{
    m_impl->post([attempt](Impl::Alive& a) -> Impl::Outcome {
        Impl::Outcome outcome;
        if (!a.writer) return outcome;
        if (const auto seal = a.writer->keepAttempt(attempt))
            outcome.sealed = seal->seq;
        else
            outcome.refusal = seal.error();
        return outcome;
    });
}

void Session::beginLesson(const std::string& person, const run::Sources& sources)
{
    m_impl->post([options = m_options, person, sources](Impl::Alive& a) -> Impl::Outcome {
        Impl::Outcome outcome;
        const auto stopped = [&](const Finding& why) {
            outcome.refusal = why;
            return outcome;
        };
        // Whatever was asked: nothing of a lesson goes into a logbook of another kind.
        if (!options.practice)
            return stopped(refuse("session.not_practice", options.logbook.string(),
                                  "A lesson is begun in a practice logbook alone.", "Open the practice press."));
        if (!a.writer) {
            if (auto open = Impl::takePen(a, options, {}); !open) return stopped(open.error());
            outcome.opened = true;
        }
        a.run.reset();
        const auto keeper = keeperOf(*a.writer);
        if (!keeper) return stopped(keeper.error());
        auto actor = trainee(*a.writer, person, *keeper);
        if (!actor) return stopped(actor.error());
        a.actor = *std::move(actor);
        outcome.actorChanged = outcome.runChanged = outcome.withdrawalsChanged = true;
        if (auto ended = endEarlier(*a.writer, *keeper); !ended) return stopped(ended.error());
        const auto kept = keptSources(*a.writer, sources, keeper->actor());
        if (!kept) return stopped(kept.error());
        auto begun = logbook::OpenRun::begin(*a.writer, {*kept, {}, {}}, *a.actor);
        if (!begun) return stopped(begun.error());
        a.run = *std::move(begun);
        return outcome;
    });
}

}  // namespace taut::app
