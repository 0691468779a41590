// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QImage>
#include <QString>

#include "core/report/report.h"

namespace taut::app {

/// Charts as one picture for a file: black on white, two beside each other, under a headline.
struct ChartPicture {
    QString title;  ///< press, job, roll
    QString mark;   ///< what makes the picture no picture of the real roll; "" when it is one
    std::vector<report::Chart> charts;
    UnitSystem units{};
};
/// In pixels.
[[nodiscard]] QSize pictureSize(const ChartPicture& picture);
/// The charts one below the other, as a picture of that size.
[[nodiscard]] QImage paintPicture(const ChartPicture& picture);
/// The picture as the bytes of a PNG file.
[[nodiscard]] QByteArray pngOf(const ChartPicture& picture);

}  // namespace taut::app
