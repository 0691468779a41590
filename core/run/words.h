// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/base/text.h"

namespace taut::run {

/// A condition as a statement that a person can make, for a card and for messages: "Every guard is closed". Empty for a
/// word that is no condition.
[[nodiscard]] Text conditionSaid(std::string_view condition);
/// The same as a refusal: "Nobody has said that every guard is closed."
[[nodiscard]] Text conditionMissing(std::string_view condition);
/// A statement of kMakeSafe: "Nobody is in the press".
[[nodiscard]] Text makeSafeSaid(std::string_view word);

}  // namespace taut::run
