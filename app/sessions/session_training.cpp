// SPDX-License-Identifier: GPL-3.0-or-later
// What trainers sign in a practice logbook. Their keys are the shop's: the one session opens the key, the other writes.
#include "app/sessions/session_impl.h"
#include "app/text/secret.h"

namespace taut::app {

void Session::lendKey(const QString& secret, UseKey use)
{
    m_impl->post([secret = secretText(secret), use = std::move(use)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        auto signer = a.writer->unlock(a.actor->id().value, secret);
        if (!signer) return Impl::refusedWith(signer.error());
        Impl::Outcome outcome;
        outcome.then = [use, key = std::make_shared<const people::Signer>(*std::move(signer))] { use(key); };
        return outcome;
    });
}

void Session::observe(quint64 attempt, const seal::Observation& observation,
                      const std::shared_ptr<const people::Signer>& by)
{
    m_impl->post([options = m_options, attempt, observation, by](Impl::Alive& a) -> Impl::Outcome {
        if (!options.practice)
            return Impl::refusedWith(refuse("session.not_practice", options.logbook.string(),
                                            "What trainers say of attempts stands in a practice logbook alone.",
                                            "Open the practice press."));
        Impl::Outcome outcome;
        // Nobody has to practise for it: the logbook may not be open yet.
        if (!a.writer) {
            if (auto open = Impl::takePen(a, options, {}); !open) return Impl::refusedWith(open.error());
            outcome.opened = true;
        }
        const auto sealed = a.writer->observe(attempt, observation, *by);
        if (sealed)
            outcome.observed = attempt;
        else
            outcome.refusal = sealed.error();
        return outcome;
    });
}

}  // namespace taut::app
