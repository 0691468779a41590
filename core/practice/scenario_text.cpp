// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/scenario_text.h"

#include <sstream>

#include "core/base/json.h"

namespace taut::practice {

std::string scenarioText(const Scenario& scenario)
{
    // What JSON writes between quotes TOML reads alike.
    const auto quoted = [](const std::string& text) { return Json(text).dump(); };
    std::ostringstream out;
    out << "format = 1\n\n[scenario]\n";
    const std::pair<const char*, const std::string*> rows[] = {
        {"id", &scenario.id},   {"title", &scenario.title}, {"press", &scenario.press},
        {"job", &scenario.job}, {"roll", &scenario.roll},   {"procedure", &scenario.procedure}};
    for (const auto& [key, value] : rows) out << key << " = " << quoted(*value) << '\n';
    out << "seed = " << scenario.seed << "\ndraw = " << scenario.draw << "\nmode = \"" << modeWord(scenario.mode)
        << "\"\n";
    if (scenario.atOnce)
        out << "contradictions"
            << " = \"" << (*scenario.atOnce ? "at_once" : "afterwards") << "\"\n";
    if (!scenario.parts.empty()) {
        out << "parts"
            << " = [";
        for (std::size_t i = 0; i < scenario.parts.size(); ++i)
            out << (i == 0 ? "" : ", ") << quoted(scenario.parts[i]);
        out << "]\n";
    }
    for (const Fault& fault : scenario.faults) {
        out << "\n[[fault]]\nwhat = " << quoted(fault.what) << '\n';
        if (!fault.item.empty()) out << "item = " << quoted(fault.item) << '\n';
        if (fault.amount > 0) out << "amount = " << shortest(fault.amount) << '\n';
    }
    return out.str();
}

}  // namespace taut::practice
