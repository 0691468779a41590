// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report.h"
#include "core/seal/envelope.h"

namespace taut::records {

/// The set-up sheet of an exported run, marked on every page as read from a file and no record itself. It says what the
/// file says: seal::checkEnvelope tells whether that can be trusted. export.no_run; else as report::reportOf.
[[nodiscard]] Result<report::Report> sheetOf(const seal::Envelope& envelope);

}  // namespace taut::records
