// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include <QRectF>

#include "app/print/print.h"

class QPainter;
class QPagedPaintDevice;

namespace taut::app::print {

/// Draws the code of a badge as a scanner reads it, black on white with its quiet zone, into the square.
void drawBadgeCode(QPainter& painter, const QRectF& square, const std::string& code);
/// A badge of the size of a bank card (ISO/IEC 7810, ID-1), to be cut out of the page. Codes font.missing,
/// print.failed.
[[nodiscard]] Result<Done> paintBadge(QPagedPaintDevice& device, const std::string& name, const std::string& code);
/// The same as a PDF that only its owner may read. Codes font.missing, file.unwritable, print.failed.
[[nodiscard]] Result<Done> writeBadge(const std::string& name, const std::string& code,
                                      const std::filesystem::path& file, Paper paper);

}  // namespace taut::app::print
