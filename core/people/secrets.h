// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/people/person.h"

namespace taut::people {

/// The rules of people::choose(), each by itself, for whoever chooses only one of the two anew. nullopt = it will do;
/// person.weak_pin, person.weak_passphrase.
[[nodiscard]] std::optional<Finding> weakPin(std::string_view pin);
[[nodiscard]] std::optional<Finding> weakPassphrase(const Chosen& chosen, const std::string& name);

}  // namespace taut::people
