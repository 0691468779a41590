// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/job.h"

namespace taut::inputs {

struct Layer {
    std::string name, family;  ///< family "" = a coating
    Maybe<Kind::Length> caliper;
    Maybe<Kind::Grammage> grammage;
    Maybe<Kind::Pressure> modulus;
    Maybe<Kind::ForcePerWidth> strength;
    bool carriesAlone = false;
};
/// The data of a splice tape at the overlap used; there is no default tape.
struct SpliceTape {
    Maybe<Kind::ForcePerWidth> strength, shear;
    std::string source;
    std::optional<bool> bothFaces;
    std::string joint = "butt";  ///< butt overlap
};
/// The material. family: paper board paper_label film_label pet bopp pp pe nylon foil thermal
/// vinyl acetate cellophane polystyrene
struct Substrate {
    std::string id, name, family;
    Maybe<Kind::Length> caliper, roughness;
    std::optional<double> caliperTolerance, friction;
    Maybe<Kind::Grammage> grammage;
    Maybe<Kind::Pressure> modulus;
    Maybe<Kind::ForcePerWidth> strength;
    bool clear = false;   ///< light passes: an optical edge sensor may not see it
    bool porous = false;  ///< sound or air passes
    std::optional<TensionRange> tension;
    std::vector<Layer> layers;
    std::optional<SpliceTape> spliceTape;
};

}  // namespace taut::inputs
