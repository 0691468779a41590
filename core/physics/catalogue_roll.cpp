// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/catalogue.h"
#include "core/physics/material.h"
#include "core/physics/roll.h"

namespace taut::physics::catalogue {
namespace {

Argument outer() { return argument("D", "outer diameter", Kind::Length); }
Argument core() { return argument("d", "outer diameter of the core", Kind::Length); }
Argument caliper() { return argument("t", "caliper", Kind::Length); }
Argument grammage() { return argument("g", "grammage", Kind::Grammage); }
constexpr std::string_view kRoll = "D > d > 0, 0 < t << d";
constexpr std::string_view kWraps = "N >= 0, t > 0, 2 N t < D";

}  // namespace

std::vector<Formula> rollFormulas()
{
    return {
        entry<&rollLength>("R1", "L = pi (D^2 - d^2) / (4 t)", {outer(), core(), caliper()}, {Kind::Length}, kRoll,
                           "S1"),
        entry<&rollCaliper>("R1.caliper", "t = pi (D^2 - d^2) / (4 L)",
                            {outer(), core(), argument("L", "length of the roll", Kind::Length)}, {Kind::Length},
                            "D > d > 0, L > 0, 0 < t << d", "S1"),
        entry<&rollWraps>("R2", "N = (D - d) / (2 t)", {outer(), core(), caliper()}, {Kind::Count}, kRoll, "S1"),
        entry<&spiralLength>("R3", "L = integral of sqrt(1 + (2 pi r / t)^2) dr from d/2 to D/2",
                             {outer(), core(), caliper()}, {Kind::Length}, kRoll, "S2"),
        entry<&lengthFromMass>("R4", "L = m / (w g)",
                               {argument("m", "mass of the web on the roll", Kind::Mass), width(), grammage()},
                               {Kind::Length}, "m >= 0, w > 0, g > 0", "S7, S8"),
        entry<&rollMass>("R5", "m = (pi/4) (D^2 - d^2) w g / t", {outer(), core(), caliper(), width(), grammage()},
                         {Kind::Mass}, "D > d > 0, 0 < t << d, w > 0, g > 0", "S7"),
        entry<&rollDiameter>("R6", "D = sqrt(d^2 + 4 t L / pi)",
                             {core(), caliper(), argument("L", "length on the roll", Kind::Length)}, {Kind::Length},
                             "L >= 0, d > 0, 0 < t << d", "S1"),
        entry<&strippedLength>("R7.length", "L = pi N (D - N t)",
                               {outer(), caliper(), argument("N", "wraps taken off", Kind::Count)}, {Kind::Length},
                               kWraps, "S1"),
        entry<&strippedDiameter>("R7.diameter", "D' = D - 2 N t",
                                 {outer(), caliper(), argument("N", "wraps taken off", Kind::Count)}, {Kind::Length},
                                 kWraps, "S1"),
        entry<&runTime>("R8", "tau = (L - Lr) / v",
                        {argument("L", "length on the roll", Kind::Length),
                         argument("Lr", "reserve left on the core", Kind::Length),
                         argument("v", "web speed", Kind::Speed)},
                        {Kind::Time}, "L >= Lr >= 0, v > 0", "definition"),
        entry<&grammageOfReam>(
            "W1", "g = W / (500 A)",
            {argument("W", "mass of a ream of 500 sheets", Kind::Mass), argument("A", "area of one sheet", Kind::Area)},
            {Kind::Grammage}, "W > 0, A > 0", "S9, S10"),
        entry<&yield>("W3", "Y = 1 / (rho t)",
                      {argument("rho", "density", Kind::Density), argument("t", "caliper", Kind::Length)},
                      {Kind::AreaPerMass}, "rho > 0, t > 0", "S13, S16"),
        entry<&webArea>("W4", "A = w L", {width(), argument("L", "length of web", Kind::Length)}, {Kind::Area},
                        "w > 0, L >= 0", "S13"),
    };
}

}  // namespace taut::physics::catalogue
