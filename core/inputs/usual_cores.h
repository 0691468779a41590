// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace taut::inputs {

/// A core as the trade sells it (common practice, no source): its inside diameter, and the whole millimetres under
/// which it goes by name.
struct UsualCore {
    double inside;  ///< m
    std::array<double, 3> names;
};
inline constexpr std::array<UsualCore, 5> kUsualCores{{{0.0254, {0.025, 0.026, 0.025}},
                                                       {0.0381, {0.038, 0.040, 0.039}},
                                                       {0.0508, {0.050, 0.051, 0.052}},
                                                       {0.0762, {0.075, 0.076, 0.077}},
                                                       {0.1524, {0.150, 0.152, 0.153}}}};

}  // namespace taut::inputs
