// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace taut::app {

/// The pseudo language: every translation stands between ⟦ and ⟧, everything people named or typed too. Whatever a
/// person then sees outside the brackets went past Text and tr(). For tests and for `--pseudo`.
void setPseudo(bool on);
/// Whether texts come longer and in brackets, for tests.
[[nodiscard]] bool isPseudo();
/// Text between the brackets while the pseudo language is on, else as it is.
[[nodiscard]] QString pseudoWrapped(const QString& text);
/// The letters of a text that stand outside all brackets: "" when it is clean.
[[nodiscard]] QString outsideBrackets(const QString& text);

}  // namespace taut::app
