// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/run/basis.h"
#include "tests/core/targets/demo_inputs.h"

// What a lesson of the demo shop stands on.
namespace taut::practice::shift {

inline run::Basis basis(const std::string& press = "north", const std::string& job = "quince-jelly",
                        const std::string& roll = "R0041")
{
    const std::string substrate = demo::job(job)->substrate;
    auto made = run::basisFor({run::sourceOf(press, 1, demo::text("presses/" + press + ".toml")),
                               run::sourceOf(demo::job(job)->id, 1, demo::text("demo/jobs/" + job + ".toml")),
                               run::sourceOf(substrate, 1, demo::text("substrates.toml")),
                               run::sourceOf(roll, 0, demo::text("demo/rolls/" + roll + ".toml")),
                               run::sourceOf("cold_start", 1, demo::text("procedures/cold_start.toml"))},
                              {});
    INFO((made ? std::string() : made.error().code + " " + made.error().subject));
    REQUIRE(made);
    return *std::move(made);
}

}  // namespace taut::practice::shift
