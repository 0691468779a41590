// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>
#include <utility>

#include "core/base/file.h"
#include "core/inputs/inputs.h"

// What the demo shop has, for programs that measure; they end with 4 where it cannot be read.
namespace taut::bench {

template <class T>
T must(Result<T> result, const std::string& what)
{
    if (result) return std::move(*result);
    std::fprintf(stderr, "%s: %s\n", what.c_str(), result.error().code.c_str());
    std::exit(4);
}

inline std::string resource(const std::string& file)
{
    return must(readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/" + file), file);
}

/// `press` is the text of a profile.
inline inputs::Inputs inputsOf(const std::string& press, const std::string& job, const std::string& roll)
{
    Findings notes;
    inputs::Inputs in;
    in.press = std::make_shared<const inputs::Press>(must(inputs::readPress(press, "press", notes), "press"));
    in.job = std::make_shared<const inputs::Job>(
        must(inputs::readJob(resource("demo/jobs/" + job + ".toml"), job, notes), job));
    in.roll = std::make_shared<const inputs::Roll>(
        must(inputs::readRoll(resource("demo/rolls/" + roll + ".toml"), roll, notes), roll));
    for (auto& s : must(inputs::readSubstrates(resource("substrates.toml"), "substrates.toml", notes), "substrates"))
        if (s.id == in.job->substrate) in.substrate = std::make_shared<const inputs::Substrate>(s);
    return in;
}

}  // namespace taut::bench
