// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/set_up_ratio.h"

#include <algorithm>
#include <map>
#include <memory>

#include "core/inputs/inputs.h"
#include "core/targets/target.h"

namespace taut::history {

std::optional<double> SetUpRatio::ratio() const
{
    if (!runningSeconds || !(*runningSeconds > 0)) return std::nullopt;
    return setUp.median / *runningSeconds;
}

std::optional<double> runningSecondsOf(const inputs::Job& job)
{
    if (!job.speed || !(job.speed->si() > 0)) return std::nullopt;
    inputs::Inputs alone;
    alone.job = std::make_shared<const inputs::Job>(job);
    const targets::Targets all = targets::computeTargets(alone);
    const targets::Target* length = all.find("job.length");
    const Quantity* metres = length == nullptr ? nullptr : length->quantity();
    return metres == nullptr ? std::nullopt : std::optional(metres->si() / job.speed->si());
}

Result<std::vector<SetUpRatio>> setUpRatiosOf(const records::Reader& reader, const Times& times)
{
    std::map<std::string, std::vector<double>> seconds;
    for (const RunTime& run : times.runs)
        if (run.finished && run.kind == "full") seconds[run.job].push_back(static_cast<double>(run.wholeMs()) / 1000);
    std::vector<SetUpRatio> all;
    if (seconds.empty()) return all;
    const auto jobs = reader.definitions("job");
    if (!jobs) return jobs.error();
    for (auto& [named, took] : seconds) {
        const std::string& id = named;  // clang 14 has no lambda take what a binding names
        const auto setUp = stats::quartilesOf(std::move(took));
        if (!setUp) continue;
        SetUpRatio one{id, *setUp, {}};
        const auto source = std::find_if(jobs->begin(), jobs->end(), [&](const auto& job) { return job.id == id; });
        Findings notes;
        if (source != jobs->end())
            if (const auto job = inputs::readJob(source->text, source->id, notes))
                one.runningSeconds = runningSecondsOf(*job);
        all.push_back(std::move(one));
    }
    // What has no ratio is less than any that has one.
    std::stable_sort(all.begin(), all.end(), [](const SetUpRatio& a, const SetUpRatio& b) {
        return a.ratio().value_or(-1) > b.ratio().value_or(-1);
    });
    return all;
}

}  // namespace taut::history
