// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include <QPolygonF>
#include <QRectF>
#include <QString>

#include "app/drawing/elevation.h"

class QPainter;

namespace taut::app {

/// What the rollers of a view take up, in metres of the press, y upwards.
struct Bounds {
    double left = 0, right = 1, bottom = 0, top = 1;
    [[nodiscard]] double width() const { return std::max(right - left, 1e-3); }
    [[nodiscard]] double height() const { return std::max(top - bottom, 1e-3); }
};
[[nodiscard]] Bounds boundsOf(const ElevationView& view);

[[nodiscard]] QString drawnWord(const char* english);
/// nullptr = not on any path of the view.
[[nodiscard]] const physics::RollerPlace* rollerOf(const ElevationView& view, const std::string& id);
/// Where the roller stands on the path; `whenEmpty` when the id is empty or stands elsewhere.
[[nodiscard]] std::size_t indexOn(const physics::WebPath& path, const std::string& id, std::size_t whenEmpty);
/// The web round the i-th roller of a path, as chords.
[[nodiscard]] QPolygonF arcPoints(const physics::WebPath& path, std::size_t i, const ElevationScale& scale);

/// The stretch of the drawing that `lit` means, in the drawing's coordinates; nullopt when it has no place there.
[[nodiscard]] std::optional<QRectF> litBox(const ElevationView& view, const ElevationScale& scale, const Look& look);
/// The font, made smaller until the text is no wider, down to half.
[[nodiscard]] QFont fittedFont(const QFont& font, const QString& text, double width);
/// A roll of web: the spiral says "wound material" in any print; `turned` is how far it has turned, in radians.
void paintRoll(QPainter& painter, const QPointF& centre, double radius, const Look& look, double turned = 0);
/// A roller by its kind: what drives the web has a filled centre.
void paintElevationRoller(QPainter& painter, const ElevationView& view, const physics::RollerPlace& roller,
                          const ElevationScale& scale, const Look& look);
/// The number of a print station, above its roller.
void paintStationNumber(QPainter& painter, const physics::RollerPlace& roller, int number, const ElevationScale& scale,
                        const Look& look);
/// The web of the step's zone, drawn heavier over the path.
void paintZone(QPainter& painter, const ElevationView& view, const ElevationScale& scale, const Look& look);
/// Where one stands and what is touched, on a flag under the drawing.
void paintStand(QPainter& painter, const QRectF& box, const ElevationView& view, const ElevationScale& scale,
                const Look& look);

}  // namespace taut::app
