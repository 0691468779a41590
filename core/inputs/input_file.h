// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/inputs/key_reader.h"

namespace taut::inputs {

/// The format number that this version writes and fully reads.
inline constexpr int kFormat = 1;

/// Reads a file's TOML, checks that it holds what is wanted ("press", "job", "substrates", "roll") and notes its
/// format. Refuses: toml.*, input.not_this (says what the file is), input.bad_format.
[[nodiscard]] Result<Toml> openInput(std::string_view toml, std::string_view wanted, FileNotes& notes);

}  // namespace taut::inputs
