// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/base/file.h"
#include "core/inputs/inputs.h"
#include "core/units/plain.h"

// The demo shop's files, for tests.

inline std::string demoText(const std::string& file)
{
    const auto text = taut::readFile(std::filesystem::path(TAUTWEB_SOURCE_DIR) / file);
    if (!text) throw std::runtime_error(file);
    return *text;
}

inline std::vector<std::string> demoFiles()
{
    std::vector<std::string> out{"resources/substrates.toml", "tests/data/presses/bare.toml"};
    for (const char* folder : {"resources/presses", "resources/demo/jobs", "resources/demo/rolls"})
        for (const auto& entry :
             std::filesystem::directory_iterator(std::filesystem::path(TAUTWEB_SOURCE_DIR) / folder))
            out.push_back(std::string(folder) + '/' + entry.path().filename().string());
    std::sort(out.begin(), out.end());
    return out;
}

inline taut::inputs::Press demoPress(const std::string& name)
{
    taut::Findings notes;
    const std::string folder = name == "bare" ? "tests/data/presses/" : "resources/presses/";
    return *taut::inputs::readPress(demoText(folder + name + ".toml"), name + ".toml", notes);
}
inline taut::inputs::Job demoJob(const std::string& name)
{
    taut::Findings notes;
    return *taut::inputs::readJob(demoText("resources/demo/jobs/" + name + ".toml"), name, notes);
}
inline taut::inputs::Roll demoRoll(const std::string& name)
{
    taut::Findings notes;
    return *taut::inputs::readRoll(demoText("resources/demo/rolls/" + name + ".toml"), name, notes);
}
inline std::vector<taut::inputs::Substrate> demoSubstrates()
{
    taut::Findings notes;
    return *taut::inputs::readSubstrates(demoText("resources/substrates.toml"), "substrates.toml", notes);
}
inline taut::inputs::Substrate demoSubstrate(const std::string& id)
{
    for (const taut::inputs::Substrate& s : demoSubstrates())
        if (s.id == id) return s;
    throw std::runtime_error(id);
}
inline taut::inputs::Inputs demoInputs(taut::inputs::Press press, taut::inputs::Job job, taut::inputs::Roll roll)
{
    using namespace taut::inputs;
    const std::string substrate = job.substrate;
    return {std::make_shared<Press>(std::move(press)), std::make_shared<Job>(std::move(job)),
            std::make_shared<Substrate>(demoSubstrate(substrate)), std::make_shared<Roll>(std::move(roll))};
}
inline taut::inputs::Inputs demoInputs(const std::string& press, const std::string& job, const std::string& roll)
{
    return demoInputs(demoPress(press), demoJob(job), demoRoll(roll));
}
