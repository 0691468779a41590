// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/catalogue.h"
#include "core/physics/gearing.h"
#include "core/physics/ink.h"

namespace taut::physics::catalogue {
namespace {

Argument teeth() { return argument("Z", "teeth", Kind::Count); }
Argument repeat() { return argument("R", "repeat", Kind::Length); }
Argument volume() { return argument("V", "anilox volume", Kind::VolumePerArea); }

}  // namespace

std::vector<Formula> printFormulas()
{
    return {
        entry<&repeatByPitch>("F1.circular", "R = Z p", {teeth(), argument("p", "circular pitch", Kind::Length)},
                              {Kind::Length}, "Z whole, p > 0", "S76, S77"),
        entry<&repeatByDiametralPitch>("F1.diametral", "R = Z pi / P",
                                       {teeth(), argument("P", "diametral pitch", Kind::CountPerLength)},
                                       {Kind::Length}, "Z whole, P > 0", "S76"),
        entry<&repeatByModule>("F1.module", "R = Z pi m", {teeth(), argument("m", "module", Kind::Length)},
                               {Kind::Length}, "Z whole, m > 0", "S76"),
        entry<&teethFor>("F2", "Z = R / p, rounded up to whole teeth",
                         {repeat(), argument("p", "circular pitch", Kind::Length)}, {Kind::Count}, "R > 0, p > 0",
                         "S76"),
        entry<&teethForDiametralPitch>("F2.diametral", "Z = R P / pi, rounded up to whole teeth",
                                       {repeat(), argument("P", "diametral pitch", Kind::CountPerLength)},
                                       {Kind::Count}, "R > 0, P > 0", "S76"),
        entry<&teethForModule>("F2.module", "Z = R / (pi m), rounded up to whole teeth",
                               {repeat(), argument("m", "module", Kind::Length)}, {Kind::Count}, "R > 0, m > 0", "S76"),
        entry<&plateStretch>("F3", "r = 1 - 2 pi (tp - tb) / R",
                             {repeat(), argument("tp", "plate thickness", Kind::Length),
                              argument("tb", "thickness of the plate's base", Kind::Length)},
                             {Kind::Share}, "tp >= tb >= 0, R > 2 pi (tp - tb)",
                             "S78, base from memory: plate makers' charts"),
        entry<&registerAngle>("F4", "phi = 2 pi s / R", {repeat(), argument("s", "shift along the web", Kind::Length)},
                              {Kind::Angle}, "R > 0", "definition"),
        entry<&jobLength>("F5", "L = Q R / (across around (1 - waste))",
                          {argument("Q", "labels wanted", Kind::Count),
                           argument("across", "labels across the web", Kind::Count),
                           argument("around", "labels around the repeat", Kind::Count), repeat(),
                           argument("waste", "waste", Kind::Share)},
                          {Kind::Length}, "Q >= 0, across and around whole, R > 0, 0 <= waste < 1", "definition"),
        entry<&webLength>("F5.total", "L = Lj + Lm + n Ls + Lp",
                          {argument("Lj", "web for the labels, waste included", Kind::Length),
                           argument("Lm", "web that make-ready takes", Kind::Length),
                           argument("n", "splices", Kind::Count), argument("Ls", "web lost at a splice", Kind::Length),
                           argument("Lp", "web that fills the path", Kind::Length)},
                          {Kind::Length}, "none negative", "definition"),
        entry<&wetFilm>("F7", "h = V c", {volume(), argument("c", "share that reaches the web", Kind::Share)},
                        {Kind::Length}, "V > 0, 0 <= c <= 1", "S79"),
        entry<&inkMass>("F8", "m = A c V k rho",
                        {argument("A", "area of web", Kind::Area), argument("c", "coverage", Kind::Share), volume(),
                         argument("k", "share that reaches the web", Kind::Share),
                         argument("rho", "density of the ink", Kind::Density)},
                        {Kind::Mass}, "A >= 0, 0 <= c <= 1, V > 0, 0 <= k <= 1, rho > 0", "S79, S80"),
    };
}

}  // namespace taut::physics::catalogue
