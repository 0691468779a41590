// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "app/drawing/elevation.h"
#include "core/practice/world.h"

class QPainter;

namespace taut::app {

/// A practice press at one moment, drawn over the geometry of its elevation: where the web hangs, is torn or is not
/// yet, what runs along with it, what stands open.
struct LivePress {
    ElevationView view;    ///< the main path, its rolls as large as they are now
    ElevationView extent;  ///< the same with the rolls as large as they come to be: the drawing keeps its scale
    struct Span {
        enum class State : std::uint8_t { None, Taut, Slack, Broken };
        State state{};
        double hangs = 0;           ///< how deep, m
        std::vector<double> marks;  ///< what goes with the web, as shares of the span from its beginning
    };
    std::vector<Span> spans;
    double unwindTurned = 0, rewindTurned = 0;  ///< radians
    bool hung = false;                          ///< the roll, on its shaft
    bool onLift = false;
    double lifted = 0;      ///< share of the lift's way
    double rollRadius = 0;  ///< of the roll that is not hung yet, m
    struct Guard {
        std::string by;  ///< roller
        bool open = false;
    };
    std::vector<Guard> guards;
    struct Dryer {
        std::string roller;
        bool open = false, rag = false;
    };
    std::vector<Dryer> dryers;
    std::vector<std::pair<std::string, bool>> nips;  ///< roller, and whether it is closed
    bool clamped = false;
    std::optional<std::size_t> table;                     ///< the span over the splice table
    std::optional<std::pair<std::size_t, double>> joint;  ///< span, and share of it
};
/// From the state of a world; `step` is how far web goes on from one picture to the next, so that marks do not seem to
/// run backwards.
[[nodiscard]] LivePress livePressOf(const practice::World& world, const inputs::Press& press, Length step);
/// The height that the drawing takes at this width.
[[nodiscard]] double livePressHeight(const LivePress& press, double width, const Look& look);
/// Draws it into the box at one scale.
void paintLivePress(QPainter& painter, const QRectF& box, const LivePress& press, const Look& look);
/// What hangs, is torn, stands open or runs, for those who cannot see the drawing.
[[nodiscard]] QString livePressInWords(const LivePress& press);

}  // namespace taut::app
