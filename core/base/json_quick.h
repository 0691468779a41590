// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/base/json.h"

// Inside this folder and its tests only.
namespace taut {

inline constexpr std::size_t kDeepestJson = 200;  ///< lists and objects in each other

/// The value of a text, by the parser library that is quick and tells nothing of what it refuses. nullopt: the other
/// one has to judge the text.
[[nodiscard]] std::optional<Json> quickJson(std::string_view text, const JsonMask& wanted);
/// The value of a text, or why it is refused and where, by the other library; code json.broken.
[[nodiscard]] Result<Json> judgedJson(std::string_view text);

}  // namespace taut
