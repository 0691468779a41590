// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/base/text.h"

namespace taut::inputs {

/// What a key of a form means, in a sentence for whoever fills it in: the group's name ("zone", "web.roller") and the
/// key in it ("setting.least"). Empty where nobody has said.
[[nodiscard]] Text keyMeaning(std::string_view group, std::string_view key);

}  // namespace taut::inputs
