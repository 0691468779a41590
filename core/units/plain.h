// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/finding.h"
#include "core/base/json.h"
#include "core/units/unit.h"

namespace taut {

/// A Text as an English sentence in the C locale: for files, JSON and the command line. Screens and paper use app/text.
[[nodiscard]] std::string plain(const Text& text, UnitSystem system = UnitSystem::Metric);
/// The words as a sentence: closed with one full stop where they have no stop of their own. Closing brackets and
/// quotation marks are looked through.
[[nodiscard]] std::string closedSentence(std::string words);
/// Two sentences beside each other, the first of them closed; an empty one leaves the other as it stands. What a
/// person typed comes without its stop as often as with it: nothing else joins a text and its remedy.
[[nodiscard]] std::string joinedSentences(std::string first, std::string_view second);
/// "subject: text remedy": one line for stderr.
[[nodiscard]] std::string sentence(const Finding& finding, UnitSystem system = UnitSystem::Metric);
/// {"code","severity","subject","text","remedy"} as every JSON of the program prints a finding. text and remedy also
/// carry "source" and "args" members in "say"/"do" so that a stored finding can be said in another language later.
[[nodiscard]] Json findingJson(const Finding& finding, UnitSystem system = UnitSystem::Metric);
[[nodiscard]] Finding findingFrom(const Json& json);
/// {"source":"...","args":[...]}, a quantity as {"si":1.5,"kind":"length","unit":"mm"}; a bare text reads as source.
[[nodiscard]] Json textJson(const Text& text);
[[nodiscard]] Text textFrom(const Json& json);
/// Stable lower_snake name of a kind ("force_per_width") and back.
[[nodiscard]] const char* kindWord(Kind kind) noexcept;
[[nodiscard]] bool kindFromWord(std::string_view word, Kind& out) noexcept;

}  // namespace taut
