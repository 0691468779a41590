// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/inputs/find_constant.h"
#include "core/inputs/press.h"
#include "core/physics/regression.h"
#include "core/records/records.h"
#include "core/report/report.h"

// What a brake, clutch or drive makes of its setting, learned from the runs in which both the setting and the tension
// that it gave were read: has the constant of the profile drifted?
namespace taut::history {

/// Fewer runs tell nothing that one would change a press profile for (a proposal, no source).
inline constexpr std::size_t kFewestPulls = 12;
/// The settings must be this far apart, largest over smallest, or a line through them is told by chance.
inline constexpr double kLeastSpread = 1.15;

/// What one run read: the setting, and the torque that the tension makes at the roll's radius.
struct RunPull {
    std::string run;
    std::int64_t atMs{};
    Quantity setting;  ///< in the control's own unit
    Quantity tension;
    Quantity diameter;
    double torque{};  ///< N m
};
struct Refit {
    std::string press, zone;
    std::string pressName, zoneName;  ///< as people say them
    std::vector<RunPull> pulls;       ///< oldest first
    physics::Fit fit;                 ///< torque on setting, SI
    inputs::Constant now;             ///< what it makes, to be written into the profile
    double profileSlope{};            ///< torque per setting as the profile says it, SI
    bool drifted = false;             ///< the profile's lies outside the interval of the fit (95 %)
};
/// The zones of a press for which this can be asked: those whose profile states a torque per setting.
[[nodiscard]] std::vector<std::string> refittable(const inputs::Press& press);
/// The line through the pulls, oldest first. Codes refit.no_zone, refit.too_few, refit.no_spread, and what
/// inputs::constantOf refuses.
[[nodiscard]] Result<Refit> refitFrom(std::vector<RunPull> pulls, const inputs::Press& press, const std::string& zone);
/// The same from the newest `most` signed runs that read both the setting and the tension of this zone; the diameter is
/// the one with which their targets reckoned its torque. Refuses as the reader as well.
[[nodiscard]] Result<Refit> refitOf(const records::Reader& reader, const inputs::Press& press, const std::string& zone,
                                    std::size_t most = 200);
/// As a sheet: the line through the pulls, the interval, outliers, the profile's constant beside it, the runs.
[[nodiscard]] report::Report refitReport(const Refit& refit, UnitSystem units, int offsetMinutes);
/// The profile's text with the constant of this zone as it is now, naming the runs. As inputs::withConstant refuses.
[[nodiscard]] Result<std::string> refitted(std::string_view pressToml, const Refit& refit);

}  // namespace taut::history
