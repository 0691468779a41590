// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string_view>

#include "core/seal/envelope.h"

namespace taut::logbook {

/// A sealed run with all that is needed to check it alone (seal/envelope.h): no PIN material, and of people only those
/// whose signatures it rests on. run.unknown, run.not_sealed, document.broken; else as openReader, which also reads a
/// logbook of a newer layout and says so in `notes`.
[[nodiscard]] Result<seal::Envelope> envelopeOf(const std::filesystem::path& file, std::string_view runId,
                                                Findings* notes = nullptr);

}  // namespace taut::logbook
