// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/report/parts.h"
#include "core/seal/after.h"

namespace taut::report {

// What a sheet says of the seals that follow its run. Without any they all say nothing.

/// The present state in words: "reviewed by Matteo Quill"; empty while only the run's own seal stands.
[[nodiscard]] Text presentText(std::span<const seal::Sealing> sealings);
/// What everybody must see before the settings: that the run is void, sent back or corrected.
[[nodiscard]] std::optional<Paragraph> sequelNotice(std::span<const seal::Sealing> sealings);
/// What stood in each corrected step, what it should be, why, by whom and when.
[[nodiscard]] std::optional<Table> correctionsTable(const run::Run& run, std::span<const seal::Sealing> sealings);
/// How the run came to stand as it does: its own seal and those after it, each with who, when, meaning and words.
[[nodiscard]] std::optional<Table> sequelsTable(std::span<const seal::Sealing> sealings);
/// Who accepted the record as it stands now, or voided it.
[[nodiscard]] std::vector<SignatureBlock::Entry> sequelSignatures(std::span<const seal::Sealing> sealings);

}  // namespace taut::report
