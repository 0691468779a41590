// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include "app/verbs/options.h"
#include "core/seal/envelope.h"

namespace taut::app::verbs {

/// --anchor, as often as it was given.
[[nodiscard]] Result<std::vector<seal::PartialAnchor>> anchorsIn(const Options& options);

/// Whether a file is an exported run rather than a logbook, by its first sign.
[[nodiscard]] bool isExport(const std::filesystem::path& file);
/// An exported run as it stands in its file, not checked yet. file.*, export.*.
[[nodiscard]] Result<seal::Envelope> importedFrom(const std::filesystem::path& file);

}  // namespace taut::app::verbs
