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

std::string deviationText(std::string_view run, const Json& deviation)
{
    std::string text = "run=" + Json(run).dump() + '\n';
    for (const char* key : {"step", "entered", "unit", "value", "low", "high", "reason", "by", "at"})
        text += std::string(key) + '=' + deviation[key].dump() + '\n';
    return text;
}

}  // namespace taut::run
