// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/drawing/palette.h"

namespace taut::app {

/// How a person at this screen wants to see the program.
struct ThemeChoice {
    bool dark = false;
    double textScale = 1.0;   ///< 1 to 2
    double rulerScale = 1.0;  ///< corrected once by holding a ruler to a bar
    bool still = false;       ///< nothing moves by itself
    bool contrast = false;    ///< more of it than usual
};
/// Sets palette, font and style sheet of the whole application; may be called again at any time.
void applyTheme(const ThemeChoice& choice);
/// As it was applied last.
[[nodiscard]] const ThemeChoice& themeChoice();
/// While somebody practises everything has another accent, whatever is chosen.
void setPractisingLook(bool practises);

/// What the drawings of widgets use now.
[[nodiscard]] Look currentLook(double factor = 1.0, bool bold = false);
/// Millimetres of this screen in pixels. A screen that reports nonsense counts as 96 dots per inch.
[[nodiscard]] int millimetres(double mm);

/// Heights of what is touched: 15 mm for ordinary controls, 20 mm for what answers a step, 25 mm for a vital answer,
/// 10 mm for rows of lists, 3 mm between targets.
struct Sizes {
    int control, answer, vital, row, gap;
};
/// In pixels of this screen, for the type chosen.
[[nodiscard]] Sizes sizes();

/// Roles that the style sheet knows; set before the widget is shown.
/// Buttons: "main" (the one action that goes on), "vital" (the same, larger), "answer" (one of several answers),
/// "quiet" (a word in a row), "row" (a row of a list), "key" (of a number pad), "bare" (painted by its owner). Labels:
/// "say", "longSay", "big", "head", "strong", "soft", "small". Fields: "number", "answer".
template <class W>
W* withRole(W* widget, const char* role)
{
    widget->setProperty("role", QString::fromLatin1(role));
    return widget;
}
/// A horizontal ruled line.
[[nodiscard]] QWidget* ruledLine(QWidget* parent);

}  // namespace taut::app
