// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <memory>
#include <string>
#include <vector>

#include "core/base/file.h"
#include "core/inputs/inputs.h"

// The demo shop's files as values, and every combination that belongs together.
namespace demo {

inline std::string text(const std::string& file)
{
    taut::Result<std::string> bytes = taut::readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/" + file);
    REQUIRE(bytes);
    return *bytes;
}
inline std::shared_ptr<const taut::inputs::Press> pressOf(const std::string& toml)
{
    taut::Findings notes;
    auto press = taut::inputs::readPress(toml, "press.toml", notes);
    REQUIRE(press);
    return std::make_shared<const taut::inputs::Press>(std::move(*press));
}
inline std::shared_ptr<const taut::inputs::Press> press(const std::string& id)
{
    return pressOf(text("presses/" + id + ".toml"));
}
inline std::shared_ptr<const taut::inputs::Job> job(const std::string& name)
{
    taut::Findings notes;
    auto j = taut::inputs::readJob(text("demo/jobs/" + name + ".toml"), name, notes);
    REQUIRE(j);
    return std::make_shared<const taut::inputs::Job>(std::move(*j));
}
inline std::shared_ptr<const taut::inputs::Substrate> substrate(const std::string& id)
{
    taut::Findings notes;
    auto all = taut::inputs::readSubstrates(text("substrates.toml"), "substrates.toml", notes);
    REQUIRE(all);
    for (auto& s : *all)
        if (s.id == id) return std::make_shared<const taut::inputs::Substrate>(s);
    FAIL("no substrate " << id);
    return nullptr;
}
inline std::shared_ptr<const taut::inputs::Roll> rollOf(const std::string& toml)
{
    taut::Findings notes;
    auto r = taut::inputs::readRoll(toml, "roll.toml", notes);
    REQUIRE(r);
    return std::make_shared<const taut::inputs::Roll>(std::move(*r));
}
inline std::shared_ptr<const taut::inputs::Roll> roll(const std::string& id)
{
    return rollOf(text("demo/rolls/" + id + ".toml"));
}

inline taut::inputs::Inputs inputs(const std::string& pressId, const std::string& jobName, const std::string& rollId)
{
    taut::inputs::Inputs in;
    in.press = press(pressId);
    in.job = job(jobName);
    in.substrate = substrate(in.job->substrate);
    in.roll = roll(rollId);
    return in;
}
struct Case {
    std::string press, job, roll;
};
inline const std::vector<Case>& cases()
{
    static const std::vector<Case> all{{"north", "quince-jelly", "R0041"}, {"north", "quince-jelly", "R0042"},
                                       {"north", "quince-jelly", "R0046"}, {"north", "quince-jelly", "R0047"},
                                       {"north", "parcel-tag", "R0045"},   {"north", "parcel-tag", "R0050"},
                                       {"south", "cold-brew", "R0043"},    {"south", "cold-brew", "R0044"},
                                       {"south", "cold-brew", "R0048"},    {"south", "seed-window", "R0049"}};
    return all;
}

}  // namespace demo
