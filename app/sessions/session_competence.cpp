// SPDX-License-Identifier: GPL-3.0-or-later
// Who may sign set-ups of a press alone, as a supervisor says it in the shop's logbook.
#include "app/sessions/session_impl.h"
#include "app/text/secret.h"

namespace taut::app {

Session::Impl::Outcome Session::Impl::afterSaid(Alive& a, const Result<seal::Seal>& sealed)
{
    if (!sealed) return refusedWith(sealed.error());
    Outcome outcome;
    outcome.shopChanged = true;
    if (auto all = a.writer->competences()) outcome.competences = *std::move(all);
    return outcome;
}

void Session::askCompetences()
{
    m_impl->post([](Impl::Alive& a) -> Impl::Outcome {
        if (!a.writer) return {};
        auto all = a.writer->competences();
        if (!all) return Impl::refusedWith(all.error());
        Impl::Outcome outcome;
        outcome.competences = *std::move(all);
        return outcome;
    });
}

void Session::qualify(const logbook::Qualifying& who, const QString& secret)
{
    m_impl->post([who, secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(
            a, secret, [&](const people::Signer& self) { return Impl::afterSaid(a, a.writer->qualify(who, self)); });
    });
}

void Session::endCompetence(const std::string& personId, const std::string& press, const QString& reason,
                            const QString& secret)
{
    m_impl->post([personId, press, why = reason.toStdString(), secret = secretText(secret)](Impl::Alive& a) {
        return Impl::signedBy(a, secret, [&](const people::Signer& self) {
            return Impl::afterSaid(a, a.writer->endCompetence(personId, press, why, self));
        });
    });
}

void Session::finishBeside(const QString& remarks, const QString& personId, const QString& pin,
                           const QString& passphrase)
{
    m_impl->post([remarks = remarks.toStdString(), id = personId.toStdString(), pin = secretText(pin),
                  secret = secretText(passphrase)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto beside = a.writer->signIn(id, pin);
        if (!beside) return Impl::refusedWith(beside.error());
        return Impl::finished(a, run::SignOff{remarks, *std::move(beside)}, secret);
    });
}

}  // namespace taut::app
