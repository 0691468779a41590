// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/secret.h"

namespace taut::app {

std::string secretText(const QString& typed) { return typed.normalized(QString::NormalizationForm_KC).toStdString(); }

people::Chosen secretText(const people::Chosen& chosen)
{
    return {secretText(QString::fromStdString(chosen.pin)), secretText(QString::fromStdString(chosen.passphrase))};
}

}  // namespace taut::app
