// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/print/strip.h"
#include "app/print/type.h"
#include "core/report/report.h"

namespace taut::app::print {

// Each kind of section, measured and cut into strips of a given width.

/// Body sizes in points: the first page is read at arm's length, taped to a press.
inline constexpr double kBody = 8.5, kFact = 8.0, kLarge = 9.5, kFine = 7.5, kSmall = 7.0, kHead = 10.0, kTitle = 17.0;

[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Heading& heading, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Paragraph& paragraph, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Caution& caution, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Facts& facts, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Table& table, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Elevation& elevation, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Chart& chart, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::ControlFigure& figure, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::Bars& bars, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::SignatureBlock& block, double width);
[[nodiscard]] std::vector<Strip> strips(Type& type, const report::QrText& qr, double width);
/// Room between two sections.
[[nodiscard]] Strip space(const Type& type, double millimetres);

/// A cell's words, as they are printed.
[[nodiscard]] QString cellText(const report::Cell& cell, UnitSystem system);

}  // namespace taut::app::print
