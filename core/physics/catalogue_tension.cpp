// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"
#include "core/physics/catalogue.h"
#include "core/physics/dancer.h"
#include "core/physics/taper.h"
#include "core/physics/tension.h"

namespace taut::physics::catalogue {
namespace {

Argument tension() { return argument("T", "tension", Kind::Force); }
Argument diameter() { return argument("D", "present diameter", Kind::Length); }
Argument startTension() { return argument("T0", "tension at the start", Kind::Force); }
Argument taper() { return argument("tau", "taper fraction", Kind::Share); }
Argument startDiameter() { return argument("d0", "diameter at the start", Kind::Length); }
Argument cylinders() { return argument("n", "cylinders", Kind::Count); }
Argument piston() { return argument("A", "area of one piston", Kind::Area); }
Argument cylinderArm() { return argument("a", "arm of the cylinder", Kind::Length); }
Argument rollerArm() { return argument("b", "arm of the dancer roller", Kind::Length); }
Argument dancerWrap() { return argument("theta", "wrap angle on the dancer roller", Kind::Angle); }

// What is set at a brake or clutch: air pressure, current, or percent. The kinds go together by their place.
std::vector<Kind> settings() { return {Kind::Pressure, Kind::Current, Kind::Share}; }
Argument perSetting()
{
    return {"k", "torque per setting", {Kind::TorquePerPressure, Kind::TorquePerCurrent, Kind::TorquePerShare}};
}
Argument zeroSetting() { return {"p0", "setting where torque begins", settings()}; }
Argument setting() { return {"p", "setting", settings()}; }

}  // namespace

std::vector<Formula> tensionFormulas()
{
    return {
        entry<&totalTension>(
            "T1", "T = Tw w",
            {argument("Tw", "tension per width", Kind::ForcePerWidth), argument("w", "web width", Kind::Length)},
            {Kind::Force}, "Tw >= 0, w > 0", "S18, S19"),
        entry<&tensionFromStress>(
            "T2", "Tw = s t",
            {argument("s", "tension per width and thickness", Kind::Pressure), argument("t", "caliper", Kind::Length)},
            {Kind::ForcePerWidth}, "s >= 0, t > 0", "S18a, S20"),
        entry<&tensionFromStrength>("T4", "Tw = c S",
                                    {argument("c", "share of the strength", Kind::Share),
                                     argument("S", "breaking strength per width", Kind::ForcePerWidth)},
                                    {Kind::ForcePerWidth}, "0 < c <= 1 (0.10 to 0.25 usual), S > 0; a ceiling",
                                    "S26, S27"),
        entry<&rollTorque>("B1", "M = T D / 2", {tension(), diameter()}, {Kind::Torque}, "T >= 0, D > 0", "S24, S30"),
        entry<&rollFrequency>("B2", "n = v / (pi D)", {speed(), diameter()}, {Kind::Frequency}, "v >= 0, D > 0", "S21"),
        entry<&brakeHeat>("B3", "P = T v", {tension(), speed()}, {Kind::Power},
                          "T >= 0, v >= 0; a brake, not a slip clutch", "S21, S24"),
        entry<&clutchHeat>("B3.clutch", "P = 2 pi M (ni - no)",
                           {argument("M", "torque", Kind::Torque),
                            argument("ni", "turns per time of the input", Kind::Frequency),
                            argument("no", "turns per time of the roll", Kind::Frequency)},
                           {Kind::Power}, "M >= 0, ni >= no >= 0", "definition"),
        entry<&buildRatio>(
            "B4", "r = D / d",
            {argument("D", "outer diameter", Kind::Length), argument("d", "outer diameter of the core", Kind::Length)},
            {Kind::Count}, "D >= d > 0", "follows from B1"),
        entry<&brakeSetting<Pressure>>("B5", "p = p0 + T D / (2 k)",
                                       {tension(), diameter(), perSetting(), zeroSetting()}, settings(),
                                       "T >= 0, D > 0, k > 0, p0 >= 0; p0 in the unit of k", "S32, S33"),
        entry<&brakeDiameter<Pressure>>("B5.diameter", "D = 2 k (p - p0) / T",
                                        {tension(), perSetting(), zeroSetting(), setting()}, {Kind::Length},
                                        "T > 0, k > 0, p >= p0 >= 0; p and p0 in the unit of k", "S32, S33"),
        entry<&brakeTension<Pressure>>("B5.tension", "T = 2 k (p - p0) / D",
                                       {diameter(), perSetting(), zeroSetting(), setting()}, {Kind::Force},
                                       "D > 0, k > 0, p >= p0 >= 0; p and p0 in the unit of k", "S32, S33"),
        entry<&caliperTorque>("B5.torque", "M = 2 n mu A r p",
                              {argument("n", "calipers in use", Kind::Count),
                               argument("mu", "friction of the lining", Kind::Count), piston(),
                               argument("r", "radius of the lining", Kind::Length),
                               argument("p", "pressure above the one where torque begins", Kind::Pressure)},
                              {Kind::Torque}, "n whole, mu >= 0, A > 0, r > 0, p >= 0", "S32"),
        entry<&hyperbolicTaper>("B6.hyperbolic", "T = T0 (1 - tau (1 - d0 / D))",
                                {startTension(), taper(), diameter(), startDiameter()}, {Kind::Force},
                                "T0 >= 0, 0 <= tau <= 1, D >= d0 > 0", "S34"),
        entry<&linearTaper>(
            "B6.linear", "T = T0 (1 - tau (D - d0) / (Dm - d0))",
            {startTension(), taper(), diameter(), startDiameter(), argument("Dm", "finished diameter", Kind::Length)},
            {Kind::Force}, "T0 >= 0, 0 <= tau <= 1, Dm >= D >= d0 > 0, Dm > d0",
            "from memory: Lee, Kang, Kim, Shin 2009, S35"),
        entry<&dancerTension>("B7", "T = n p A (a / b) / (2 sin(theta / 2))",
                              {cylinders(), argument("p", "air pressure", Kind::Pressure), piston(), cylinderArm(),
                               rollerArm(), dancerWrap()},
                              {Kind::Force}, "n whole, p >= 0, A > 0, a > 0, b > 0, 0 < theta < 2 pi", "S38"),
        entry<&dancerPressure>("B7.setting", "p = 2 T sin(theta / 2) b / (n A a)",
                               {tension(), cylinders(), piston(), cylinderArm(), rollerArm(), dancerWrap()},
                               {Kind::Pressure}, "T >= 0, n whole, A > 0, a > 0, b > 0, 0 < theta < 2 pi", "S38"),
        entry<&dancerWeight>("B7.weight", "m = 2 T sin(theta / 2) b / (a g)",
                             {tension(), argument("a", "arm of the weight", Kind::Length), rollerArm(), dancerWrap()},
                             {Kind::Mass}, "T >= 0, a > 0, b > 0, 0 < theta < 2 pi; g = 9.80665 m/s2", "S38"),
        entry<&rollerForce>("B8", "F = 2 T sin(beta / 2)", {tension(), argument("beta", "wrap angle", Kind::Angle)},
                            {Kind::Force}, "T >= 0, 0 <= beta < 2 pi; the roller's weight comes on top", "S31b"),
        entry<&shareOfRange>("B8.setting", "r = T / range",
                             {tension(), argument("range", "range of the load cell", Kind::Force)}, {Kind::Share},
                             "T >= 0, range > 0", "definition"),
    };
}

}  // namespace taut::physics::catalogue
