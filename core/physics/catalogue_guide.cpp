// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/catalogue.h"
#include "core/physics/guide.h"
#include "core/physics/lateral.h"
#include "core/physics/lift.h"

namespace taut::physics::catalogue {
namespace {

Argument misalignment() { return argument("theta", "angle out of square", Kind::Angle); }
Argument guideAngle() { return argument("alpha", "angle of the guide", Kind::Angle); }
Argument bore() { return argument("D", "bore", Kind::Length); }
Argument efficiency() { return argument("eta", "efficiency", Kind::Share); }

}  // namespace

std::vector<Formula> guideFormulas()
{
    return {
        entry<&lateralShare>("G2", "r = 1 - e^(-v t / L)", {time(), span(), speed()}, {Kind::Share},
                             "t >= 0, L > 0, v > 0", "S62"),
        entry<&misalignmentShift>(
            "G3", "y = f theta L, f = (x cosh x - sinh x) / (x (cosh x - 1)), x = L sqrt(T / (E I)), I = t w^3 / 12",
            {argument("T", "tension", Kind::Force), argument("E", "modulus", Kind::Pressure), width(),
             argument("t", "caliper", Kind::Length), span(), misalignment()},
            {Kind::Length}, "T >= 0, E > 0, w > 0, t > 0, L > 0, |theta| <= 0.2; full traction, no slack edge", "S63"),
        entry<&lateralStep>("G4", "step response of y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2",
                            {argument("KL", "stiffness number K L", Kind::Count), span(), speed(), time()},
                            {Kind::Share}, "KL >= 0, L > 0, v >= 0, t >= 0; entry slope fixed",
                            "S64, equations from memory: Shelton and Reid 1971"),
        entry<&steeringEdgeStrain>("G5", "e = theta w / L", {misalignment(), width(), span()}, {Kind::Share},
                                   "|theta| <= 0.2, w > 0, L > 0; without sign", "follows from G3"),
        entry<&steeringSlackAngle>("G5.limit", "theta = e L / w",
                                   {argument("e", "running strain", Kind::Share), width(), span()}, {Kind::Angle},
                                   "e >= 0, w > 0, L > 0", "follows from G5"),
        entry<&guideShift>("G7", "y = L sin(alpha)", {argument("L", "span of the guide", Kind::Length), guideAngle()},
                           {Kind::Length}, "L > 0, |alpha| < pi/2", "geometry, S67"),
        entry<&twistEdgeStrain>("G8", "e = sqrt(1 + (alpha w / (2 L))^2) - 1", {guideAngle(), width(), span()},
                                {Kind::Share}, "|alpha| <= 0.5, w > 0, L > 0", "geometry"),
        entry<&twistSlackAngle>(
            "G8.limit", "alpha = (L / w) sqrt(24 e)", {argument("e", "running strain", Kind::Share), width(), span()},
            {Kind::Angle}, "e >= 0, w > 0, L > 0; small twist, tension kept", "follows from G8, mean over the width"),
        entry<&strokeShare>("G11", "r = y / s",
                            {argument("y", "what the guide has to make good", Kind::Length),
                             argument("s", "stroke each way", Kind::Length)},
                            {Kind::Share}, "y >= 0, s > 0", "definition"),
        entry<&edgeInWindow>("G10", "x = W (V - V0) / (V1 - V0)",
                             {argument("V", "reading of the sensor", Kind::Count),
                              argument("V0", "reading with the web in view", Kind::Count),
                              argument("V1", "reading with the web out of view", Kind::Count),
                              argument("W", "window of the sensor", Kind::Length)},
                             {Kind::Length}, "V0 != V1, W > 0; all readings in one unit", "definition"),
        entry<&edgePlace>("G10.edge", "x = c + side w / 2",
                          {argument("c", "web centreline from the frame face", Kind::Length), width(),
                           argument("side", "-1 the nearer edge, +1 the farther", Kind::Count)},
                          {Kind::Length}, "c >= 0, w > 0, side = -1 or +1", "definition"),
        entry<&shiftForce>(
            "G12", "F = c (mu m g + m a)",
            {argument("m", "mass moved", Kind::Mass), argument("mu", "rolling friction", Kind::Count),
             argument("a", "acceleration", Kind::Acceleration), argument("c", "safety factor", Kind::Count)},
            {Kind::Force}, "m > 0, mu >= 0, a >= 0, c >= 1 (2.0 for this estimate); g = 9.80665 m/s2", "S72"),
        entry<&cylinderForce>("N1", "F = p (pi/4) D^2 eta",
                              {argument("p", "air pressure", Kind::Pressure), bore(), efficiency()}, {Kind::Force},
                              "p >= 0, D > 0, 0 < eta <= 1", "S38, S74"),
        entry<&liftPressure>(
            "N2", "p = m g i / (n (pi/4) D^2 eta)",
            {argument("m", "roll, core and carriage", Kind::Mass), argument("n", "pistons", Kind::Count), bore(),
             efficiency(), argument("i", "travel ratio", Kind::Count)},
            {Kind::Pressure}, "m >= 0, n whole, D > 0, 0 < eta <= 1, i > 0; g = 9.80665 m/s2", "S74, S75"),
    };
}

}  // namespace taut::physics::catalogue
