// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/records.h"
#include "core/report/report.h"

namespace taut::records {

/// What the sheet of a run is made from: the sealed document, or that of a run still open, which has no seal.
struct Kept {
    seal::Document document;
    bool sealed = false;
};
/// run.unknown; document.broken, event.broken.
[[nodiscard]] Result<Kept> documentOf(const Reader& reader, std::string_view runId);

/// A run of this store folded from its events, sealed or not; run.unknown, document.broken, document.words,
/// event.broken.
[[nodiscard]] Result<run::Run> runOf(const Reader& reader, std::string_view runId);

/// The set-up sheet of any run of this store: of a sealed one as its seal says and those that
/// followed it, of an open one as it stands now, marked
/// as a draft. Refuses as documentOf and report::reportOf do.
[[nodiscard]] Result<report::Report> sheetOf(const Reader& reader, std::string_view runId);

}  // namespace taut::records
