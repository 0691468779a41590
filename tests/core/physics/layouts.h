// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/physics/path.h"

// Two invented presses: one runs from left to right and was measured in millimetres, one from right to left in inches.

[[nodiscard]] inline taut::physics::RollerPlace roller(std::string id, double x, double y, double diameter,
                                                       std::string_view turn, double unit = 0.001)
{
    using taut::Length;
    return {std::move(id), Length::si(x * unit), Length::si(y * unit), Length::si(diameter * unit), turn == "ccw",
            Length{}};
}

/// Both rolls over: the web leaves the top of the unwind and meets the top of the rewind.
[[nodiscard]] inline std::vector<taut::physics::RollerPlace> leftToRight(double unwind, double rewind)
{
    return {
        roller("unwind", 0, 700, unwind, "cw"),       roller("table entry", 650, 400, 80, "ccw"),
        roller("table exit", 1350, 400, 80, "ccw"),   roller("guide entry", 1430, 1100, 80, "cw"),
        roller("guide exit", 1730, 1100, 80, "cw"),   roller("turn up", 1810, 600, 80, "ccw"),
        roller("infeed", 2250, 800, 120, "cw"),       roller("impression 1", 2900, 780, 160, "cw"),
        roller("after 1", 3250, 640, 80, "ccw"),      roller("impression 2", 3600, 780, 160, "cw"),
        roller("after 2", 3950, 640, 100, "ccw"),     roller("outfeed", 4500, 760, 120, "cw"),
        roller("rewind idler", 4900, 480, 80, "ccw"), roller("rewind", 5500, 700, rewind, "cw"),
    };
}

enum class Lane { First, Second, Waste };

/// The web leaves the bottom of the unwind; every rewind is met at its top.
[[nodiscard]] inline std::vector<taut::physics::RollerPlace> rightToLeft(double unwind, double rewind, Lane lane)
{
    const auto in = [](std::string id, double x, double y, double diameter, std::string_view turn) {
        return roller(std::move(id), x, y, diameter, turn, 0.0254);
    };
    std::vector<taut::physics::RollerPlace> path{
        in("unwind", 0, 30, unwind, "cw"),     in("steer", -40, 18, 4, "cw"),     in("table entry", -44, 54, 3, "ccw"),
        in("table exit", -70, 54, 3, "ccw"),   in("dancer", -75, 36, 4, "cw"),    in("infeed", -81, 54, 5, "ccw"),
        in("impression 1", -108, 36, 8, "cw"), in("after 1", -122, 48, 4, "ccw"), in("impression 2", -136, 36, 8, "cw"),
        in("after 2", -150, 48, 4, "ccw"),     in("die", -166, 36, 6, "cw"),      in("strip", -180, 48, 3, "ccw"),
    };
    if (lane == Lane::Waste) {
        path.push_back(in("waste idler", -200, 57, 3, "cw"));
        path.push_back(in("waste rewind", -206, 86, rewind, "ccw"));
        return path;
    }
    path.push_back(in("outfeed", -196, 40, 5, "cw"));
    path.push_back(in("slitter", -210, 50, 4, "ccw"));
    if (lane == Lane::First) {
        path.push_back(in("cell 1", -222, 36, 3, "cw"));
        path.push_back(in("rewind 1", -252, 40, rewind, "ccw"));
    } else {
        path.push_back(in("cell 2", -228, 60, 3, "cw"));
        path.push_back(in("rewind 2", -238, 96, rewind, "ccw"));
    }
    return path;
}
