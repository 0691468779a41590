// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/catalogue.h"
#include "core/physics/gearing.h"
#include "core/physics/span.h"
#include "core/physics/splice.h"
#include "core/physics/traction.h"

namespace taut::physics::catalogue {
namespace {

Argument stiffness() { return argument("K", "stiffness of the web, E w t", Kind::Force); }
Argument before() { return argument("v1", "speed before", Kind::Speed); }
Argument after() { return argument("v2", "speed after", Kind::Speed); }
Argument tensionBefore() { return argument("T1", "tension before", Kind::Force); }
Argument strainBefore() { return argument("e1", "strain before", Kind::Share); }
Argument friction() { return argument("mu", "friction", Kind::Count); }
Argument perWidth() { return argument("Tw", "tension per width", Kind::ForcePerWidth); }
Argument stress() { return argument("s", "stress along the web", Kind::Pressure); }
Argument lean() { return argument("alpha", "angle from the straight cross cut", Kind::Angle); }
constexpr std::string_view kLean = "s >= 0, 0 <= alpha < pi/2";

}  // namespace

std::vector<Formula> spanFormulas()
{
    return {
        entry<&strain>("D1", "e = T / (E w t)",
                       {argument("T", "tension", Kind::Force), argument("E", "modulus", Kind::Pressure),
                        argument("w", "web width", Kind::Length), argument("t", "caliper", Kind::Length)},
                       {Kind::Share}, "T >= 0, E > 0, w > 0, t > 0", "S41"),
        entry<&strainAfterDraw>("D2", "e2 = (1 + e1) v2 / v1 - 1", {strainBefore(), before(), after()}, {Kind::Share},
                                "e1 > -1, v1 > 0, v2 > 0; negative: the web is slack", "S44"),
        entry<&tensionAfterDraw>("D2.first_order", "T2 = (K (v2 - v1) + v1 T1) / v2",
                                 {stiffness(), before(), after(), tensionBefore()}, {Kind::Force},
                                 "K > 0, v1 > 0, v2 > 0, T1 >= 0; negative: the web is slack", "S43"),
        entry<&drawForStrain>("D2.draw", "draw = (e2 - e1) / (1 + e1)",
                              {strainBefore(), argument("e2", "strain after", Kind::Share)}, {Kind::Share},
                              "e1 > -1, e2 > -1", "S44"),
        entry<&drawError>("D3", "dTw = E t dv / v",
                          {argument("E", "modulus", Kind::Pressure), argument("t", "caliper", Kind::Length), speed(),
                           argument("dv", "speed error", Kind::Speed)},
                          {Kind::ForcePerWidth}, "E > 0, t > 0, v > 0, dv small against v", "follows from D2"),
        entry<&repeatRelaxed>("D1.repeat", "dR = R e / (1 + e)",
                              {argument("R", "repeat", Kind::Length), argument("e", "strain of the web", Kind::Share)},
                              {Kind::Length}, "R > 0, e >= 0", "definition"),
        entry<&spanTime>("D5", "tau = L / v", {span(), speed()}, {Kind::Time}, "L >= 0, v > 0", "S45"),
        entry<&spanTension>("D6", "T2 = Tss + (T0 - Tss) e^(-v2 t / L), Tss = (K (v2 - v1) + v1 T1) / v2",
                            {stiffness(), span(), before(), after(), tensionBefore(),
                             argument("T0", "tension in the span at the start", Kind::Force), time()},
                            {Kind::Force},
                            "K > 0, L > 0, v1 > 0, v2 > 0, T1 >= 0, T0 >= 0, t >= 0; negative: the web is slack",
                            "S43, solved for constant speeds"),
        entry<&cascadeShare>("D7", "r = P(n, v t / L), regularised lower incomplete gamma",
                             {argument("n", "equal spans", Kind::Count), speed(), span(), time()}, {Kind::Share},
                             "n whole and at most 1000, v > 0, L > 0, t >= 0", "n equal lags of D5"),
        entry<&capstanRatio>("C1", "r = e^(mu beta)", {friction(), argument("beta", "wrap angle", Kind::Angle)},
                             {Kind::Count}, "mu >= 0, beta >= 0", "S47, S49"),
        entry<&capstanOverAir>(
            "C1.air", "r = e^(mu_e beta), mu_e = mu (3 - h / s) / 2, between mu at h <= s and 0 at h >= 3 s",
            {friction(), argument("beta", "wrap angle", Kind::Angle), argument("h", "air film", Kind::Length),
             argument("s", "combined roughness", Kind::Length)},
            {Kind::Count}, "mu >= 0, beta >= 0, h >= 0, s > 0",
            "S47, S55, S56, line between from memory: Ducotey and Good 1999"),
        entry<&coreHold>("C2", "r = e^(2 pi mu n)", {friction(), argument("n", "wraps on the core", Kind::Count)},
                         {Kind::Count}, "mu >= 0, n >= 0", "S47, S49"),
        entry<&airFilm>("C4", "h = 0.643 R (6 eta U / Tw)^(2/3)",
                        {argument("R", "radius of the roller", Kind::Length),
                         argument("eta", "viscosity of air", Kind::Viscosity),
                         argument("U", "speed of the web plus speed of the roller", Kind::Speed), perWidth()},
                        {Kind::Length}, "R > 0, eta > 0, U >= 0, Tw > 0; measured for Tw / (eta U) 1e5 to 1e6",
                        "S53, S54, constant from memory: Knox and Sweeney 1971"),
        entry<&frictionOverAir>(
            "C5", "mu_e = mu (3 - h / s) / 2, between mu at h <= s and 0 at h >= 3 s",
            {friction(), argument("h", "air film", Kind::Length), argument("s", "combined roughness", Kind::Length)},
            {Kind::Count}, "mu >= 0, h >= 0, s > 0", "S55, S56, line between from memory: Ducotey and Good 1999"),
        entry<&spliceMargin>("P1", "r = S / Tw", {argument("S", "strength per width", Kind::ForcePerWidth), perWidth()},
                             {Kind::Count}, "S >= 0, Tw > 0", "definition"),
        entry<&spliceNormalStress>("P5.normal", "s' = s cos^2(alpha)", {stress(), lean()}, {Kind::Pressure}, kLean,
                                   "S60"),
        entry<&spliceShearStress>("P5.shear", "s' = s sin(alpha) cos(alpha)", {stress(), lean()}, {Kind::Pressure},
                                  kLean, "S60"),
    };
}

}  // namespace taut::physics::catalogue
