// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string_view>

#include "core/targets/target.h"

namespace taut::targets {

/// Values tried in the place of the real ones; what is left out stays as it is.
struct WhatIf {
    inputs::Maybe<Kind::Length> diameter, width;
    inputs::Maybe<Kind::Speed> speed;
    std::shared_ptr<const inputs::Substrate> substrate;
    [[nodiscard]] bool empty() const { return !diameter && !width && !speed && !substrate; }
};

/// What the four inputs would be. `present`: the roll as it was measured, as for computeTargets; a tried diameter takes
/// its place. The real inputs stay untouched. A tried width is the roll's and the job's. What label, scale and tag say
/// of the real roll is left out where the tried one is another: its length and mass are then those of its geometry.
struct Tried {
    inputs::Inputs inputs;
    std::optional<Length> present;
    bool webInPress = true;
    [[nodiscard]] Targets targets() const { return computeTargets(inputs, present, webInPress); }
};
[[nodiscard]] Tried tryOut(const Tried& real, const WhatIf& whatIf);

/// What somebody typed to try: "400 mm". Findings of parseQuantity; code whatif.absurd beyond what can be believed of
/// such a value.
[[nodiscard]] Result<Entry<Kind::Length>> readTriedDiameter(std::string_view text);
[[nodiscard]] Result<Entry<Kind::Length>> readTriedWidth(std::string_view text);
[[nodiscard]] Result<Entry<Kind::Speed>> readTriedSpeed(std::string_view text);

}  // namespace taut::targets
