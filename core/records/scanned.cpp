// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/scanned.h"

namespace taut::records {

namespace {

Finding differs(const char* code, const std::string& run, std::uint64_t count, const char* english)
{
    Finding finding = refuse(
        code, run, Text(english, {static_cast<std::int64_t>(count)}),
        "Keep the sheet and the logbook as they are, and have a supervisor verify the logbook against this sheet.");
    finding.severity = Severity::Warn;
    return finding;
}

}  // namespace

bool isSheetCode(std::string_view text) noexcept { return text.starts_with("tautweb:run/"); }

Result<ScannedSheet> sheetScanned(const Reader& reader, std::string_view code)
{
    const auto uri = seal::readAnchorUri(code);
    if (!uri) return uri.error();
    ScannedSheet sheet{uri->run, uri->anchor.count, {}};
    if (!reader.sealOfRun(uri->run))
        return refuse("records.no_seal", uri->run,
                      {"The run %1, which this sheet is of, is not sealed in this logbook.", {uri->run}},
                      "Look for it in the logbook of the PC at the press where it was printed.");
    const auto there = reader.seal(sheet.count);
    if (!there)
        sheet.differs = differs("anchor.missing", sheet.run, sheet.count,
                                "The sheet was printed when the logbook held seal %1, and now it ends before that: "
                                "newer records were cut off, or an older copy was restored.");
    else if (there->link != uri->anchor.link)
        sheet.differs = differs("anchor.differs", sheet.run, sheet.count,
                                "Seal %1 of this logbook is not the one that the sheet names: a record was changed, or "
                                "the sheet is another logbook's.");
    return sheet;
}

}  // namespace taut::records
