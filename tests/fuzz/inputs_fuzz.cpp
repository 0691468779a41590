// SPDX-License-Identifier: GPL-3.0-or-later
#include <filesystem>
#include <memory>

#include "core/base/file.h"
#include "core/inputs/inputs.h"
#include "core/targets/target_json.h"
#include "tests/fuzz/property.h"

// One of the four inputs is a text from outside, the others are the demo shop's: whatever a reader took, the cross
// checks and the computation of every target must stand.

using namespace taut;
using namespace taut::fuzz;
using inputs::Inputs;

namespace {

std::string resource(const char* name)
{
    const auto text = readFile(std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources" / name);
    require(static_cast<bool>(text), "the demo shop is at hand", name);
    return *text;
}

/// Puts the text in its place; false when no reader takes it.
bool put(std::string_view text, Inputs& into)
{
    Findings notes;
    const std::string what = inputs::whatIs(text);
    if (what == "press") {
        const auto press = inputs::readPress(text, "press.toml", notes);
        if (press) into.press = std::make_shared<const inputs::Press>(*press);
        return static_cast<bool>(press);
    }
    if (what == "job") {
        const auto job = inputs::readJob(text, "job.toml", notes);
        if (job) into.job = std::make_shared<const inputs::Job>(*job);
        return static_cast<bool>(job);
    }
    if (what == "substrates") {
        const auto all = inputs::readSubstrates(text, "substrates.toml", notes);
        if (!all || all->empty()) return false;
        into.substrate = std::make_shared<const inputs::Substrate>(all->front());
        return true;
    }
    const auto roll = inputs::readRoll(text, "roll.toml", notes);
    if (roll) into.roll = std::make_shared<const inputs::Roll>(*roll);
    return static_cast<bool>(roll);
}

const Inputs& demo()
{
    static const Inputs kDemo = [] {
        Inputs all;
        for (const char* name :
             {"presses/north.toml", "demo/jobs/quince-jelly.toml", "substrates.toml", "demo/rolls/R0041.toml"})
            require(put(resource(name), all), "the demo shop is read", name);
        return all;
    }();
    return kDemo;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Inputs inputs = demo();
    if (!put(textOf(data, size), inputs)) return 0;
    checkFindings(inputs::crossCheck(inputs));
    const targets::Targets targets = targets::computeTargets(inputs);
    checkFindings(targets.findings);
    for (const targets::Target& target : targets.all) {
        require(targets::isKnownTarget(target.id) || target.id.empty(), "every target is a known one", target.id);
        if (const auto* cannot = std::get_if<targets::Cannot>(&target.state)) checkFinding(cannot->why);
        if (const auto* needs = std::get_if<targets::Needs>(&target.state))
            require(!needs->keys.empty(), "a target that needs something names it", target.id);
        if (target.ready() != nullptr) checkText(target.ready()->advice);
    }
    const std::string stored = targets::targetsJson(targets, UnitSystem::Metric).dump();
    const auto json = Json::parse(stored);
    const auto back = json ? targets::targetsFrom(*json) : Result<targets::Targets>(json.error());
    require(back && *back == targets, "computed targets are stored and read back the same");
    (void)inputs::factsOf(inputs, true);
    (void)inputs::feedFor(*inputs.press, *inputs.roll);
    for (const std::string& repetition : inputs::allRepetitions()) (void)inputs::itemsOf(*inputs.press, repetition);
    return 0;
}
