// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace taut {

/// The whole of a file as bytes, or a sentence: file.missing, file.unreadable, file.too_large.
[[nodiscard]] Result<std::string> readFile(const std::filesystem::path& path, std::size_t most = 16U << 20U);
/// Writes beside the target, syncs, renames over it: never a half file. file.unwritable says what to do.
[[nodiscard]] Result<Done> writeFile(const std::filesystem::path& path, std::string_view bytes);
/// Why a file cannot be written, from what the system said (errno): file.unwritable, with the remedy that helps here.
[[nodiscard]] Finding whyUnwritable(const std::filesystem::path& path, int error);

}  // namespace taut
