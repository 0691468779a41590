// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/records.h"

namespace taut::records {

/// The code of a printed sheet, held against a store.
struct ScannedSheet {
    std::string run;        ///< the run that it is of
    std::uint64_t count{};  ///< seals that the logbook had when it was printed
    std::optional<Finding>
        differs;  ///< that the store is not the one it was printed from: anchor.missing, anchor.differs
};
/// Reads such a code ("tautweb:run/RUN?n=COUNT&link=HEX") and looks its run and its anchor up. The links are compared
/// as they are kept: whether they are right is verify's question. anchor.unreadable; records.no_seal: its run is not
/// here.
[[nodiscard]] Result<ScannedSheet> sheetScanned(const Reader& reader, std::string_view code);
/// Whether a text begins as such a code does.
[[nodiscard]] bool isSheetCode(std::string_view text) noexcept;

}  // namespace taut::records
