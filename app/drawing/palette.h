// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>

#include "core/procedure/procedure.h"

namespace taut::app {

/// The colours that everything is drawn with. Text is ink, soft or accent, always 7:1 or more against what it stands
/// on; rule, inside, near and outside are graphics, 3:1 or more, and never the only carrier of a meaning.
struct Palette {
    QColor ground;  ///< behind everything
    QColor sheet;   ///< fields and cards
    QColor wash;    ///< what is chosen or lit
    QColor ink, soft;
    QColor rule;  ///< ruled lines and frames
    QColor accent, onAccent;
    QColor inside, near, outside;  ///< marks of a verdict, with a shape and a word
    bool dark = false;
};
/// The two palettes of the program.
[[nodiscard]] const Palette& lightPalette();
[[nodiscard]] const Palette& darkPalette();
/// For whoever needs more: text 12:1 or more, graphics 7:1. Black on white, or white on black.
[[nodiscard]] const Palette& contrastPalette(bool dark);
/// The same with the accent of the practice press, which nothing else has.
[[nodiscard]] Palette practicePalette(const Palette& palette);
/// Black on white, for paper: no grey that a copier loses.
[[nodiscard]] const Palette& paperPalette();

/// Panel of a signal word: the standards' red, orange, yellow and blue, deepened until white or black on it has 7:1.
struct SignalColours {
    QColor ground, ink;
};
/// Ground and ink of a signal word; the same in light and dark.
[[nodiscard]] SignalColours signalColours(procedure::SignalWord word);

/// Contrast ratio of two colours, 1 to 21 (WCAG 2.2, relative luminance).
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

/// Palette, type and the width of a fine line, for a screen or for paper.
struct Look {
    Palette palette;
    QFont font;         ///< body size
    double unit = 1.0;  ///< 1/96 inch in the device's pixels: 1 on a screen, 12.5 at 1200 dpi
};
/// The program's one family at so many points.
[[nodiscard]] QFont appFont(double points, bool bold = false);
/// The same font in another size or weight.
[[nodiscard]] QFont scaled(const QFont& font, double factor, bool bold = false);

}  // namespace taut::app
