// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "app/shell/tongue.h"
#include "app/widgets/theme.h"

class QPushButton;
class QWidget;

namespace taut::app {

/// Light or dark and the size of type as they were left; nothing kept = light, 100 %.
[[nodiscard]] ThemeChoice keptTheme();

/// How the screen is to look, and in which language and units it speaks, stands in one menu: side by side the choices
/// push the sign-in off a small screen.
[[nodiscard]] QPushButton* screenMenu(QWidget* parent, const std::function<void(const Wish&)>& wished);

}  // namespace taut::app
