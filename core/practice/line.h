// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/inputs.h"
#include "core/physics/path.h"
#include "core/practice/web.h"

namespace taut::practice {

/// What turns a roller of the line.
enum class Turned : std::uint8_t { Free, Drive };
/// A roller's place in the press, beside its physics in WebLine::rollers.
struct LinePlace {
    std::string id;
    Turned turned = Turned::Free;
    bool nip = false;            ///< a nip can be closed on it
    std::optional<int> station;  ///< a print cylinder's
};
/// A zone of tension: the spans from `first` to `last`, both included.
struct LineZone {
    std::string id;
    std::size_t first = 0, last = 0;
};
/// The main path of a press with this substrate on it, from this roll to an empty core.
struct Line {
    WebLine web;
    Force breaks;  ///< what sound web bears
    std::vector<LinePlace> places;
    std::vector<LineZone> zones;
    physics::WebPath path;
    Findings assumed;  ///< what the files do not say and what was taken instead
};
/// Builds it from the same path as targets and drawings. Refuses with practice.needs what it cannot do without, by the
/// key of its file; what can be taken as usual (a modulus, a roller's inertia) is, and said in `assumed`.
[[nodiscard]] Result<Line> lineOf(const inputs::Inputs& inputs, inputs::Feed feed);
/// Web at rest on a roll of this radius (R1).
[[nodiscard]] Length webOn(const WebLine& line, Length outer, Length core);

}  // namespace taut::practice
