// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/records.h"

namespace taut::records {

/// Looks whether every seal about a run still has the bytes that its link was made of, and continues the seal before
/// it: how many they are. seal.broken, subject "seal 17": the bytes were changed, or the seal stands in another place.
/// Signatures, and every other seal, are for `tautweb verify`.
[[nodiscard]] Result<std::size_t> sealsHold(const Reader& reader, std::string_view runId);

}  // namespace taut::records
