// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <stdexcept>
#include <string>

#include "core/base/file.h"
#include "core/procedure/plan.h"
#include "core/units/plain.h"

// The demo shop's files and the procedure that is delivered, for tests that plan it.
namespace taut::procedure::shop {

inline std::string fileText(const std::string& path)
{
    const Result<std::string> text = readFile(std::string(TAUTWEB_SOURCE_DIR) + '/' + path);
    if (!text) throw std::runtime_error(sentence(text.error()));
    return text.value();
}

template <class T>
T sound(Result<T> read, const Findings& notes)
{
    if (!read) throw std::runtime_error(sentence(read.error()));
    for (const Finding& f : notes)
        if (f.severity == Severity::Stop) throw std::runtime_error(sentence(f));
    return std::move(read).value();
}

inline const Procedure& coldStart()
{
    static const Procedure procedure = [] {
        Findings lint;
        const std::string path = "resources/procedures/cold_start.toml";
        return sound(readProcedure(fileText(path), path, lint), lint);
    }();
    return procedure;
}

inline inputs::Inputs inputsOf(const std::string& press, const std::string& job, const std::string& roll)
{
    Findings notes;
    inputs::Inputs in;
    in.press = std::make_shared<inputs::Press>(sound(inputs::readPress(fileText(press), press, notes), notes));
    in.job = std::make_shared<inputs::Job>(
        sound(inputs::readJob(fileText("resources/demo/jobs/" + job + ".toml"), job, notes), notes));
    in.roll = std::make_shared<inputs::Roll>(
        sound(inputs::readRoll(fileText("resources/demo/rolls/" + roll + ".toml"), roll, notes), notes));
    const std::string path = "resources/substrates.toml";
    for (inputs::Substrate& s : sound(inputs::readSubstrates(fileText(path), path, notes), notes))
        if (s.id == in.job->substrate) in.substrate = std::make_shared<inputs::Substrate>(std::move(s));
    return in;
}

/// One press, job and roll with the question whether web was left in the press, in one kind of run.
struct Case {
    std::string press, job, roll, kind;
    bool webInPress = true;
    [[nodiscard]] std::string name() const { return press + ' ' + kind + (webInPress ? " with web" : " empty"); }
};

inline std::vector<Case> allCases()
{
    std::vector<Case> all;
    for (const Case& c : {Case{"resources/presses/north.toml", "quince-jelly", "R0041", "", true},
                          Case{"resources/presses/south.toml", "cold-brew", "R0044", "", true},
                          Case{"tests/data/presses/bare.toml", "quince-jelly", "R0041", "", true}})
        for (const std::string& kind : allRunKinds())
            for (const bool web : {true, false}) all.push_back({c.press, c.job, c.roll, kind, web});
    return all;
}

inline Plan planOf(const Case& c)
{
    const inputs::Inputs in = inputsOf(c.press, c.job, c.roll);
    return planFor(coldStart(), in, targets::computeTargets(in), inputs::factsOf(in, c.webInPress), c.kind);
}

}  // namespace taut::procedure::shop
