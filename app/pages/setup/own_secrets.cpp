// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/own_secrets.h"

#include "app/pages/setup/setup_page.h"

namespace taut::app {

AskPanel::Question ownSecretsQuestion()
{
    const QString stays = SetupPage::tr("left empty, it stays as it is");
    AskPanel::Question q;
    q.title = SetupPage::tr("Another PIN or passphrase");
    q.text = SetupPage::tr("You show that you know the old ones, and nobody else has to be there. With another "
                           "passphrase you get another key to sign with, and a badge of before no longer works; what "
                           "you signed stays yours.");
    q.fields = {{SetupPage::tr("PIN until now"), {}, true, {}, true},
                {SetupPage::tr("New PIN"), {}, false, stays, true},
                {SetupPage::tr("New PIN, once more"), {}, false, {}, true},
                {SetupPage::tr("New passphrase"), {}, false, stays, true},
                {SetupPage::tr("New passphrase, once more"), {}, false, {}, true}};
    q.secret = AskPanel::Question::Secret::Passphrase;
    q.secretLabel = SetupPage::tr("Passp&hrase until now, or scan the badge");
    q.accept = SetupPage::tr("Change it");
    return q;
}

std::optional<people::Chosen> ownSecretsFrom(const QStringList& values, AskPanel* ask)
{
    for (const auto& [one, again, english] :
         {std::tuple(kNewPin, kNewPinAgain, "The two PINs are not the same."),
          std::tuple(kNewPassphrase, kNewPassphraseAgain, "The two passphrases are not the same.")}) {
        if (values[one] == values[again]) continue;
        ask->refuseField(again, refuse("choose.differ", {}, english, "Type it once more."), UnitSystem::Metric);
        return std::nullopt;
    }
    return people::Chosen{values[kNewPin].toStdString(), values[kNewPassphrase].toStdString()};
}

}  // namespace taut::app
