// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/inputs/inputs.h"

namespace taut::inputs {

/// How a roll's core sits on the unwind's mandrel.
enum class CoreFit : std::uint8_t {
    Unknown,    ///< the core or the grips are not known
    Held,       ///< as it is
    Adapter,    ///< with an adapter that is at hand
    NoAdapter,  ///< larger than the mandrel, and no adapter for it is at hand
    TooSmall    ///< does not go over the mandrel
};
/// An adapter fits a core that differs from it by no more than this: tags and people name cores in whole millimetres.
inline constexpr Length kAdapterPlay = Length::si(0.001);

[[nodiscard]] CoreFit fitOf(const Press& press, const Roll& roll);
/// The adapter for this core, or nullptr.
[[nodiscard]] const Adapter* adapterFor(const Unwind& unwind, Length core);
/// False when this guide's sensor works with light that this substrate lets pass.
[[nodiscard]] bool seesEdge(const Guide& guide, const Substrate& substrate);

}  // namespace taut::inputs
