// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include "app/drawing/palette.h"
#include "core/inputs/path_of.h"
#include "core/report/report.h"

class QPainter;

namespace taut::app {

/// A stretch of the main path that is threaded, from where it leaves one roller to where it meets another; "" = the end
/// of the path.
using Stretch = std::pair<std::string, std::string>;

/// The press from the operator's side, drawn from its profile: paths, what stands on them, how far the web is threaded,
/// and where one stands now.
struct ElevationView {
    std::vector<inputs::NamedPath> paths;
    std::map<std::string, std::string> kinds;  ///< roller -> kind
    std::map<std::string, int> stations;       ///< roller -> number
    std::string lit;                           ///< roller, or press lift splice_table panel disconnect; "" = nowhere
    QString touch;                             ///< the control of the step, as this shop calls it; empty = none
    std::optional<Stretch> zone;               ///< the tension zone of the step: its web is drawn heavier
    QString zoneName;
    std::string spliceAfter;        ///< the table lies on the span after this roller; "" = unknown
    std::vector<Stretch> threaded;  ///< of the main path; everything else is dashed
    bool sidePathsThreaded = false;
    bool nobodyThere = false;  ///< nothing is ever lit: no room is kept below for where one stands
};
/// As the report carries it: everything threaded.
[[nodiscard]] ElevationView elevationOf(const report::Elevation& elevation);
/// From a profile; empty paths when the profile has no coordinates.
[[nodiscard]] ElevationView elevationOf(const inputs::Press& press, std::optional<Length> rollDiameter,
                                        inputs::Feed feed, std::optional<inputs::Winding> finished = {});

/// Metres of the press to points of the drawing: one scale both ways, y turned over.
struct ElevationScale {
    double perMetre = 1;
    QPointF origin;  ///< where (0, 0) of the press lies
    /// A point of the press, in metres from the origin of its profile, on the paper.
    [[nodiscard]] QPointF at(double x, double y) const
    {
        return {origin.x() + x * perMetre, origin.y() - y * perMetre};
    }
    [[nodiscard]] QPointF at(Length x, Length y) const { return at(x.si(), y.si()); }
};
/// The largest scale at which the whole press and its names stand in the box.
[[nodiscard]] ElevationScale elevationScale(const ElevationView& view, const QRectF& box, const Look& look);
/// The web of one path as it is painted: arcs round the rollers, straight between them.
[[nodiscard]] QPolygonF webLine(const physics::WebPath& path, const ElevationScale& scale);
/// The height that the drawing takes at this width.
[[nodiscard]] double elevationHeight(const ElevationView& view, double width, const Look& look);
/// Draws the view into the box at that scale.
void paintElevation(QPainter& painter, const QRectF& box, const ElevationView& view, const Look& look);

/// "From the operator's side, the web runs right", for those who cannot see the drawing.
[[nodiscard]] QString elevationInWords(const ElevationView& view);
/// "At the control panel: BRAKE \u2192 Unwind": where one stands, what is touched there and which zone it acts on;
/// empty when nothing is lit.
[[nodiscard]] QString standInWords(const ElevationView& view);

}  // namespace taut::app
