// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>

#include "app/shell/tongue.h"
#include "app/widgets/theme.h"

class QPushButton;
class QWidget;

namespace taut::app {

/// On what ground somebody wants to read.
enum class Ground : std::uint8_t { AsSystem, Light, Dark, HighContrast };
/// As it was chosen here; nothing kept = as the system.
[[nodiscard]] Ground keptGround();

/// What the desktop wishes, as far as it was ever heard.
struct SystemWish {
    bool dark = false;
    bool contrast = false;
};
[[nodiscard]] SystemWish systemWish();
/// The desktop says so: it is kept, and worn at once where nothing else was chosen here.
void followSystem(const SystemWish& wish);

/// The millimetres of this screen, as a ruler says them: worn at once, and kept.
void setByRuler(double scale);

/// Ground, size of type and whether anything moves, as they were left.
[[nodiscard]] ThemeChoice keptTheme();

/// How the screen is to look, and in which language and units it speaks, stands in one menu: side by side the choices
/// push the sign-in off a small screen.
[[nodiscard]] QPushButton* screenMenu(QWidget* parent, const std::function<void(const Wish&)>& wished);

}  // namespace taut::app
