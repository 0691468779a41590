// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>

namespace taut::app {

/// What this PC keeps for itself: how the screen looks, when it locks. Nothing of the record.
[[nodiscard]] inline QSettings keptSettings()
{
    return QSettings(QStringLiteral("tautweb"), QStringLiteral("tautweb"));
}

}  // namespace taut::app
