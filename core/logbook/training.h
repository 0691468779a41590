// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string_view>
#include <vector>

#include "core/logbook/logbook.h"
#include "core/practice/training.h"

namespace taut::logbook {

/// What a practice logbook has of somebody; read on a connection of its own. training.nobody, document.broken, and what
/// openReader refuses.
[[nodiscard]] Result<practice::TrainingRecord> trainingOf(const std::filesystem::path& file, std::string_view personId);
/// Everybody who has practised, by id.
[[nodiscard]] Result<std::vector<practice::Who>> traineesIn(const std::filesystem::path& file);

}  // namespace taut::logbook
