// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/widgets/ask_panel.h"
#include "core/people/person.h"

namespace taut::app {

/// The fields, in the order in which they are asked.
enum OwnSecret : std::uint8_t { kOldPin, kNewPin, kNewPinAgain, kNewPassphrase, kNewPassphraseAgain };

/// Another PIN or passphrase, by whoever still knows the old ones.
[[nodiscard]] AskPanel::Question ownSecretsQuestion();
/// What was typed; where the two of a pair are not the same, it is said at the second and nothing comes.
[[nodiscard]] std::optional<people::Chosen> ownSecretsFrom(const QStringList& values, AskPanel* ask);

}  // namespace taut::app
