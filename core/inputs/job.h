// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/press.h"

namespace taut::inputs {

/// A running tension per width and who says so; an end left out is open.
struct TensionRange {
    Maybe<Kind::ForcePerWidth> low, high;
    std::string source;
};
/// The plate cylinder's gear: teeth, and a pitch in one of three ways.
struct Gear {
    Maybe<Kind::Length> circularPitch, module;
    std::optional<double> diametralPitch;  ///< teeth per inch of diameter
    int teeth{};
};
struct Deck {
    int station{};
    std::string ink;
    std::optional<double> coverage;
    Maybe<Kind::Density> inkDensity;
    Maybe<Kind::CountPerLength> aniloxScreen;
    Maybe<Kind::VolumePerArea> aniloxVolume;
    Maybe<Kind::Length> plate, plateBase, tape;
};
/// What is to be printed.
struct Job {
    std::string id, title, customerReference, substrate;
    Maybe<Kind::Length> webWidth;
    std::optional<Gear> gear;
    std::optional<int> across, around;
    std::optional<double> quantity, waste;
    Maybe<Kind::Speed> speed;
    std::optional<Winding> winding;  ///< of the finished roll
    Maybe<Kind::Length> rewindCore, rewindDiameter;
    Maybe<Kind::Length> makeReady, spliceWaste;  ///< web that setting up takes; web lost at each splice
    Maybe<Kind::Length> repeatWanted;            ///< to find the teeth for
    std::optional<TensionRange> tension;
    std::vector<Deck> decks;
};

}  // namespace taut::inputs
