// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>

#include "app/drawing/palette.h"

namespace taut::app {

/// The drawings of the help, by the same hand that draws them on the pages: taut-line, limit-bar, signs, card.
[[nodiscard]] QStringList helpPictureNames();
/// One of them, so many points wide and as high as it must be; null when there is none of that name.
[[nodiscard]] QImage helpPicture(const QString& name, const Look& look, double width, double pixelRatio = 1);

}  // namespace taut::app
