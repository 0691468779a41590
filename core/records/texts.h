// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/records.h"
#include "core/report/report.h"

namespace taut::records {

/// The texts of definitions out of a store, for report::reportOf. The reader must outlive what is made from it.
[[nodiscard]] report::TextBySha textsOf(const Reader& reader);

}  // namespace taut::records
