// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string_view>

#include "core/run/basis.h"

namespace taut::app {

/// The words of this procedure in another language, from the translations that lie beside the procedures in the
/// resources folder. Nothing (an empty id) where the procedure is in that language itself, where there is no
/// translation of its edition, or where that does not pass its lint: the steps are then read as the procedure says
/// them.
[[nodiscard]] run::Source translationFor(const std::filesystem::path& resources, const run::Source& procedure,
                                         std::string_view language);

}  // namespace taut::app
