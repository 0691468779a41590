// SPDX-License-Identifier: GPL-3.0-or-later
// People and what a run is begun from; the runs themselves stand in session.cpp.
#include <algorithm>

#include "app/seams/resources.h"
#include "app/seams/take_in.h"
#include "app/sessions/session_impl.h"
#include "app/text/secret.h"

namespace taut::app {

void Session::enrolFirst(const QString& name, const people::Chosen& chosen)
{
    m_impl->post([name = name.toStdString(), chosen = secretText(chosen),
                  resources = m_options.resources](Impl::Alive& a) -> Impl::Outcome {
        if (!a.writer) return Impl::refusedWith(*Impl::notReady(a, false));
        const auto enrolled =
            people::makePerson(people::nextId({}), name, people::Role::Supervisor, chosen, PinCost::Shop);
        if (!enrolled) return Impl::refusedWith(enrolled.error());
        const auto self = people::unlock(&*enrolled, chosen.passphrase);
        if (!self) return Impl::refusedWith(self.error());
        if (auto added = a.writer->addFirst(*enrolled, *self); !added) return Impl::refusedWith(added.error());
        Impl::Outcome outcome;
        outcome.shopChanged = outcome.actorChanged = true;
        a.actor = self->actor();
        for (const InputFile& file : shopFiles(resources, "procedure"))
            if (auto kept = a.writer->keepDefinition("procedure", file.id, file.text, *a.actor); !kept)
                outcome.refusal = kept.error();
        return outcome;
    });
}

void Session::choose(const QString& personId, const QString& code, const people::Chosen& chosen)
{
    m_impl->post([id = personId.toStdString(), code = secretText(code),
                  chosen = secretText(chosen)](Impl::Alive& a) -> Impl::Outcome {
        if (!a.writer) return Impl::refusedWith(*Impl::notReady(a, false));
        if (auto done = a.writer->choose(id, code, chosen); !done) return Impl::refusedWith(done.error());
        auto actor = a.writer->signIn(id, chosen.pin);
        if (!actor) return Impl::refusedWith(actor.error());
        a.actor = *std::move(actor);
        Impl::Outcome outcome;
        outcome.shopChanged = outcome.actorChanged = true;
        return outcome;
    });
}

void Session::enrol(const QString& name, people::Role role, const QString& secret)
{
    m_impl->post([name = name.toStdString(), role, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            const auto known = a.writer->reader().people();
            if (!known) return Impl::refusedWith(known.error());
            const auto person = people::newPerson(people::nextId(*known), name, role);
            if (!person) return Impl::refusedWith(person.error());
            auto code = a.writer->invite(*person, self);
            if (!code) return Impl::refusedWith(code.error());
            Impl::Outcome outcome;
            outcome.shopChanged = true;
            outcome.invited = std::pair(person->name, *std::move(code));
            return outcome;
        });
    });
}

void Session::inviteAgain(const QString& personId, const QString& secret)
{
    m_impl->post([id = personId.toStdString(), secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            const auto known = a.writer->reader().people();
            if (!known) return Impl::refusedWith(known.error());
            for (const people::PersonRecord& person : *known) {
                if (person.id.value != id) continue;
                auto code = a.writer->invite(person, self);
                if (!code) return Impl::refusedWith(code.error());
                Impl::Outcome outcome;
                outcome.shopChanged = true;
                outcome.invited = std::pair(person.name, *std::move(code));
                return outcome;
            }
            return Impl::refusedWith(
                refuse("person.unknown", id, {"Nobody here has the id %1.", {id}}, "Choose somebody from the list."));
        });
    });
}

void Session::changePerson(const people::PersonRecord& person, const QString& secret)
{
    m_impl->post([person, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            if (auto done = a.writer->changePerson(person, self); !done) return Impl::refusedWith(done.error());
            Impl::Outcome outcome;
            outcome.shopChanged = true;
            return outcome;
        });
    });
}

void Session::chooseAgain(const people::Chosen& old, const people::Chosen& anew)
{
    m_impl->post([old = secretText(old), anew = secretText(anew)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        const std::string id = a.actor->id().value;
        const auto badgeOf = [&] {
            const auto doors = a.writer->doors();
            return doors && std::any_of(doors->begin(), doors->end(), [&](const logbook::DoorState& door) {
                       return door.person.value == id && door.badge;
                   });
        };
        const bool badge = badgeOf();
        if (auto done = a.writer->chooseAgain(id, old, anew); !done) return Impl::refusedWith(done.error());
        Impl::Outcome outcome;
        outcome.shopChanged = true;
        outcome.secretsChanged = badge && !badgeOf();
        return outcome;
    });
}

void Session::giveBadge(const QString& secret, const QString& pin)
{
    m_impl->post([secret = secretText(secret), pin = secretText(pin)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            const std::string code = people::newBadgeCode();
            if (auto done = a.writer->giveBadge(self, code, pin); !done) return Impl::refusedWith(done.error());
            Impl::Outcome outcome;
            outcome.shopChanged = true;
            outcome.badge = code;
            return outcome;
        });
    });
}

namespace {

/// What follows a sealed run is signed and told alike, whatever it says.
template <class Outcome>
Outcome told(const Result<seal::Seal>& sealed, const std::string& run)
{
    Outcome outcome;
    if (sealed)
        outcome.recordOf = run;
    else
        outcome.refusal = sealed.error();
    return outcome;
}

}  // namespace

void Session::review(const QString& runId, const seal::Review& review, const QString& secret)
{
    m_impl->post([id = runId.toStdString(), review, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) {
            return told<Impl::Outcome>(a.writer->review(id, review, self), id);
        });
    });
}

void Session::acceptAll(const std::vector<std::string>& runs, const std::string& note, const history::Opened& opened,
                        const QString& secret)
{
    m_impl->post([runs, note, opened, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            if (const auto may = opened.mayAccept(a.writer->reader(), runs); !may)
                return Impl::refusedWith(may.error());
            Impl::Outcome outcome;
            for (const std::string& run : runs) {
                const auto sealed = a.writer->review(run, {true, note}, self);
                if (!sealed) {
                    outcome.refusal = sealed.error();
                    break;
                }
                outcome.recordOf = run;
            }
            return outcome;
        });
    });
}

void Session::correct(const QString& runId, const seal::Correction& correction, const QString& secret)
{
    m_impl->post([id = runId.toStdString(), correction, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) {
            return told<Impl::Outcome>(a.writer->correct(id, correction, self), id);
        });
    });
}

void Session::voidRun(const QString& runId, const QString& reason, const QString& secret)
{
    m_impl->post(
        [id = runId.toStdString(), reason = reason.toStdString(), secret = secretText(secret)](Impl::Alive& a) {
            return Impl::signedBy(a, secret, [&](const people::Signer& self) {
                return told<Impl::Outcome>(a.writer->voidRun(id, reason, self), id);
            });
        });
}

void Session::takeIn(const std::vector<std::filesystem::path>& files)
{
    m_impl->post([files](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        Impl::Outcome outcome;
        outcome.shopChanged = true;
        for (const std::filesystem::path& file : files)
            if (auto taken = takeInFile(*a.writer, file, *a.actor); !taken) {
                outcome.refusal = taken.error();
                break;
            }
        return outcome;
    });
}

void Session::keepText(const std::string& toml)
{
    m_impl->post([toml](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        if (auto taken = takeInText(*a.writer, toml, {}, *a.actor); !taken) return Impl::refusedWith(taken.error());
        Impl::Outcome outcome;
        outcome.shopChanged = true;
        return outcome;
    });
}

}  // namespace taut::app
