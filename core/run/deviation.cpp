// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/deviation.h"

#include "core/base/clock.h"

namespace taut::run {

Json deviationJson(const Deviated& deviation)
{
    const targets::Window& window = deviation.window;
    Json json = Json::object();
    json.set("step", deviation.step.value).set("entered", deviation.entered).set("value", deviation.value.si());
    json.set("unit", siUnit(deviation.value.kind()).symbol);
    json.set("low", window.low ? Json(window.low->si()) : Json());
    json.set("high", window.high ? Json(window.high->si()) : Json());
    return json.set("reason", deviation.reason).set("by", deviation.by).set("at", utcText(deviation.atMs));
}

std::vector<Accepted> acceptedIn(const Run& run)
{
    std::vector<Accepted> all;
    for (const Event& event : run.events()) {
        const auto* deviated = std::get_if<Deviated>(&event.happening());
        if (deviated == nullptr) continue;
        const bool stands = run.plan().find(deviated->step) != nullptr &&
                            run.stateOf(deviated->step) == StepState::Deviated &&
                            run.standing(deviated->step).n == event.stamp().n;
        all.push_back({&event, deviated, stands});
    }
    return all;
}

AcceptedCount countAccepted(const Run& run)
{
    AcceptedCount count;
    for (const Accepted& one : acceptedIn(run)) ++(one.inForce ? count.inForce : count.lapsed);
    return count;
}

std::string deviationText(std::string_view run, const Json& deviation)
{
    std::string text = "run=" + Json(run).dump() + '\n';
    for (const char* key : {"step", "entered", "unit", "value", "low", "high", "reason", "by", "at"})
        text += std::string(key) + '=' + deviation[key].dump() + '\n';
    return text;
}

}  // namespace taut::run
