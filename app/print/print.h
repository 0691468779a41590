// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/report/report.h"

class QPagedPaintDevice;

namespace taut::app::print {

/// Sizes of paper that sheets come on.
enum class Paper : std::uint8_t { A4, Letter };
/// All of a sheet, or page 1 alone, to be taped up: its foot still says of how many.
enum class Pages : std::uint8_t { All, First };
/// How the file's name ends where nobody says it: page 1 alone does not take the place of the whole sheet.
[[nodiscard]] constexpr const char* endingOf(Pages pages) noexcept
{
    return pages == Pages::First ? "-page-1.pdf" : ".pdf";
}

/// What came out. `overflow` names everything that did not fit its place: empty on a good sheet, and tests say so.
struct Printed {
    int pages = 0;
    std::vector<std::string> overflow;
};

/// Draws a report on paper, page by page: the device is a PDF or a printer, its page size is already chosen, by
/// choosePaper or by a person in the print dialog; no margin is less than the sheet's own. Text is set in the program's
/// one family; code font.missing when another one would come out.
[[nodiscard]] Result<Printed> paintReport(QPagedPaintDevice& device, const report::Report& report,
                                          Pages which = Pages::All);

/// Writes a PDF, all of it or none. Codes font.missing, file.unwritable, print.failed.
[[nodiscard]] Result<Printed> writePdf(const report::Report& report, const std::filesystem::path& file, Paper paper,
                                       Pages which = Pages::All);

/// The paper of a shop where this press stands: Letter where it speaks inches and pounds, else A4.
[[nodiscard]] Paper paperFor(const report::Report& report);
/// Which paper lies in the printer of this PC: a setting of it.
enum class PaperWish : std::uint8_t { AsPress, A4, Letter };
[[nodiscard]] PaperWish keptPaperWish();
void keepPaperWish(PaperWish wish);
/// The paper for a sheet that is shown, saved or printed in the window: as this PC wishes, else paperFor.
[[nodiscard]] Paper paperHere(const report::Report& report);
/// Sets the page size and the margins that every sheet has.
void choosePaper(QPagedPaintDevice& device, Paper paper);

}  // namespace taut::app::print
