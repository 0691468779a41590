// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/finding.h"
#include "core/base/json.h"
#include "core/units/unit.h"

namespace taut {

/// A Text as an English sentence in the C locale: for files, JSON and the command line. Screens and paper use app/text.
[[nodiscard]] std::string plain(const Text& text, UnitSystem system = UnitSystem::Metric);
/// "subject: text remedy": one line for stderr.
[[nodiscard]] std::string sentence(const Finding& finding, UnitSystem system = UnitSystem::Metric);
/// {"code","severity","subject","text","remedy"} as every JSON of the program prints a finding. text and remedy also
/// carry "source" and "args" members in "say"/"do" so that a stored finding can be said in another language later.
[[nodiscard]] Json findingJson(const Finding& finding, UnitSystem system = UnitSystem::Metric);
[[nodiscard]] Finding findingFrom(const Json& json);
/// {"source":"...","args":[...]}; arguments of quantity are {"si":1.5,"kind":"length","unit":"mm"}.
[[nodiscard]] Json textJson(const Text& text);
[[nodiscard]] Text textFrom(const Json& json);
/// Stable lower_snake name of a kind ("force_per_width") and back.
[[nodiscard]] const char* kindWord(Kind kind) noexcept;
[[nodiscard]] bool kindFromWord(std::string_view word, Kind& out) noexcept;

}  // namespace taut
