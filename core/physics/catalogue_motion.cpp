// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/belt.h"
#include "core/physics/catalogue.h"
#include "core/physics/motion.h"

namespace taut::physics::catalogue {
namespace {

Argument reaction() { return argument("tr", "time before it slows", Kind::Time); }
Argument slowing() { return argument("a", "deceleration", Kind::Acceleration); }
Argument way() { return argument("s", "length of the path", Kind::Length); }
Argument rollRadius() { return argument("R", "radius of the roll", Kind::Length); }
Argument inertia() { return argument("J", "moment of inertia", Kind::Inertia); }
Argument oneRadius() { return argument("R", "radius of one roller", Kind::Length); }
Argument otherRadius() { return argument("r", "radius of the other", Kind::Length); }
Argument oneDiameter() { return argument("D", "diameter of one roller", Kind::Length); }
Argument otherDiameter() { return argument("d", "diameter of the other", Kind::Length); }
Argument centres() { return argument("C", "distance between centres", Kind::Length); }
constexpr std::string_view kStop = "v >= 0, tr >= 0, a > 0";

}  // namespace

std::vector<Formula> motionFormulas()
{
    return {
        entry<&stopDistance>("V1.distance", "s = v tr + v^2 / (2 a)", {speed(), reaction(), slowing()}, {Kind::Length},
                             kStop, "definition"),
        entry<&stopTime>("V1.time", "t = tr + v / a", {speed(), reaction(), slowing()}, {Kind::Time}, kStop,
                         "definition"),
        entry<&inches>("V2.inches", "N = s / i, rounded up to whole presses",
                       {way(), argument("i", "travel of one press", Kind::Length)}, {Kind::Count}, "s >= 0, i > 0",
                       "definition"),
        entry<&crawlTime>("V2.crawl", "t = s / v", {way(), argument("v", "crawl speed", Kind::Speed)}, {Kind::Time},
                          "s >= 0, v > 0", "definition"),
        entry<&openTangent>("V3.same", "L = sqrt(C^2 - (R - r)^2)", {oneRadius(), otherRadius(), centres()},
                            {Kind::Length}, "R > 0, r > 0, C > 0, C >= |R - r|", "S82"),
        entry<&crossedTangent>("V3.crossed", "L = sqrt(C^2 - (R + r)^2)", {oneRadius(), otherRadius(), centres()},
                               {Kind::Length}, "R > 0, r > 0, C >= R + r", "S82"),
        entry<&openBelt>("V3.open_belt",
                         "L = 2 sqrt(C^2 - (R - r)^2) + pi (R + r) + 2 (R - r) asin((R - r) / C), R = D/2, r = d/2",
                         {oneDiameter(), otherDiameter(), centres()}, {Kind::Length},
                         "D > 0, d > 0, C > 0, C >= |D - d| / 2", "S82, S83"),
        entry<&crossedBelt>(
            "V3.crossed_belt", "L = 2 sqrt(C^2 - (R + r)^2) + (R + r) (pi + 2 asin((R + r) / C)), R = D/2, r = d/2",
            {oneDiameter(), otherDiameter(), centres()}, {Kind::Length}, "D > 0, d > 0, C >= (D + d) / 2", "S82"),
        entry<&rollInertia>("V4", "J = m (R^2 + r^2) / 2",
                            {argument("m", "mass", Kind::Mass), argument("R", "outer radius", Kind::Length),
                             argument("r", "inner radius", Kind::Length)},
                            {Kind::Inertia}, "m >= 0, R >= r >= 0, R > 0", "S84"),
        entry<&woundRollInertia>(
            "V4.roll", "J = (m (R^2 + r^2) + mc (r^2 + b^2)) / 2",
            {argument("m", "mass of the web", Kind::Mass), argument("R", "outer radius", Kind::Length),
             argument("r", "outer radius of the core", Kind::Length), argument("mc", "mass of the core", Kind::Mass),
             argument("b", "radius of the core's bore", Kind::Length)},
            {Kind::Inertia}, "m >= 0, mc >= 0, R >= r >= b >= 0, r > 0", "S84"),
        entry<&accelerationTorque>("V5", "M = J a / R",
                                   {inertia(), argument("a", "acceleration", Kind::Acceleration), rollRadius()},
                                   {Kind::Torque}, "J >= 0, a >= 0, R > 0", "S24"),
        entry<&unwindStopTension>("V6", "T = (M - J a / R) / R",
                                  {argument("M", "brake torque", Kind::Torque), inertia(), slowing(), rollRadius()},
                                  {Kind::Force}, "M >= 0, J >= 0, a >= 0, R > 0; zero or less: the web is slack",
                                  "follows from B1 and V5"),
        entry<&unwindHoldTorque>("V6.hold", "M = T R + J a / R",
                                 {argument("T", "tension to keep", Kind::Force), inertia(), slowing(), rollRadius()},
                                 {Kind::Torque}, "T >= 0, J >= 0, a >= 0, R > 0", "follows from B1 and V5"),
        entry<&rewindStopTension>("V7", "T = T0 + J a / R^2",
                                  {argument("T0", "running tension", Kind::Force), inertia(), slowing(), rollRadius()},
                                  {Kind::Force}, "T0 >= 0, J >= 0, a >= 0, R > 0", "follows from B1 and V5"),
    };
}

}  // namespace taut::physics::catalogue
