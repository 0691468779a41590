// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/open_steps.h"

#include <algorithm>

#include "core/seal/document.h"

namespace taut::history {

namespace {

using run::StepState;

bool isIn(const Json& step, StepState state) { return step["state"].text() == run::stateWord(state); }

/// The steps of a document at which it stood open.
std::vector<Json> openIn(const Json& body)
{
    const Json::Array& steps = body["steps"].items();
    const auto begun = [](const Json& step) { return !isIn(step, StepState::Open); };
    // Behind the last step that anybody came to only the next one was due.
    const auto last = std::find_if(steps.rbegin(), steps.rend(), begun);
    const auto reached = static_cast<std::size_t>(steps.rend() - last);
    std::vector<Json> open;
    for (std::size_t i = 0; i < std::min(reached + 1, steps.size()); ++i)
        // What had been answered and was only to be said again kept nobody.
        if (isIn(steps[i], StepState::Open) || isIn(steps[i], StepState::Outside) || isIn(steps[i], StepState::Stale))
            open.push_back(steps[i]);
    return open;
}

}  // namespace

Result<Done> addOpenSteps(const records::Reader& reader, Times& times, const std::function<bool()>& goOn,
                          std::size_t most)
{
    for (const RunTime& run : times.runs) {
        if (run.finished) continue;
        if (times.lookedInto == most || (goOn && !goOn())) break;
        const auto seal = reader.sealOfRun(run.run);
        if (!seal) return seal.error();
        const auto document = seal::read(seal->document);
        if (!document) return document.error();
        ++times.lookedInto;
        for (const Json& step : openIn(document->body))
            times.incidents.push_back({run.seq,
                                       run.run,
                                       run.press,
                                       run.job,
                                       run.substrate,
                                       0,
                                       kLeftOpen,
                                       step["step"].text(),
                                       step["target"].text(),
                                       {},
                                       seal->sealedAtMs});
    }
    return Done{};
}

}  // namespace taut::history
