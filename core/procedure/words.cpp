// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <utility>

#include "core/inputs/words.h"
#include "core/procedure/procedure.h"

namespace taut::procedure {
namespace {

using namespace std::string_view_literals;

/// What a condition is: asked again by every motion step; given by a step that nobody may waive.
struct Condition {
    std::string_view name;
    bool machineState, protective;
};
constexpr std::array kConditions{
    Condition{"people_clear", true, true},     Condition{"guards_closed", true, true},
    Condition{"stops_released", true, true},   Condition{"stops_tested", false, true},
    Condition{"stop_held", false, true},       Condition{"locked_out", false, true},
    Condition{"energy_released", false, true}, Condition{"blades_covered", true, true},
    Condition{"air_on", false, false},         Condition{"power_on", false, false},
    Condition{"lamps_parked", true, true},     Condition{"stations_off", true, false},
    Condition{"roll_mounted", false, false},   Condition{"roll_retained", false, true},
    Condition{"lift_lowered", false, true},    Condition{"webs_clamped", false, false},
    Condition{"web_joined", false, false},     Condition{"splice_seen", false, false},
    Condition{"rewind_locked", false, true},   Condition{"web_at_rewind", false, false},
    Condition{"nips_closed", false, false},    Condition{"tension_on", false, false},
    Condition{"web_moved", false, false},      Condition{"sensors_calibrated", false, false},
    Condition{"guide_middle", false, false},   Condition{"roll_lifted", false, false},
};

const Condition* conditionOf(std::string_view name) noexcept
{
    const auto* const found =
        std::find_if(kConditions.begin(), kConditions.end(), [&](const Condition& c) { return c.name == name; });
    return found == kConditions.end() ? nullptr : found;
}

constexpr std::string_view kSetting = inputs::kSettingRole;

/// The zone of "unwind_setting"; empty when it is no such role.
std::string_view zoneOfRole(std::string_view role) noexcept
{
    if (role.size() <= kSetting.size() || !role.ends_with(kSetting)) return {};
    const std::string_view zone = role.substr(0, role.size() - kSetting.size());
    const bool lowerSnake = std::all_of(
        zone.begin(), zone.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
    return lowerSnake ? zone : std::string_view{};
}

template <class E, std::size_t N>
bool wordFrom(const std::array<const char*, N>& words, std::string_view word, E& out) noexcept
{
    for (std::size_t i = 0; i < N; ++i) {
        if (words[i] != word) continue;
        out = static_cast<E>(i);
        return true;
    }
    return false;
}

constexpr std::array kStepKinds{"confirm", "reading", "choice", "scan", "hold", "motion", "call"};
constexpr std::array kValidFor{"run", "roll", "shift", "power"};
constexpr std::array kSignalWords{"none", "notice", "caution", "warning", "danger"};

}  // namespace

const char* stepKindWord(StepKind kind) noexcept { return kStepKinds[static_cast<std::size_t>(kind)]; }
const char* validForWord(ValidFor validFor) noexcept { return kValidFor[static_cast<std::size_t>(validFor)]; }
const char* signalWordWord(SignalWord word) noexcept { return kSignalWords[static_cast<std::size_t>(word)]; }
bool stepKindFrom(std::string_view word, StepKind& out) noexcept { return wordFrom(kStepKinds, word, out); }
bool validForFrom(std::string_view word, ValidFor& out) noexcept { return wordFrom(kValidFor, word, out); }
bool signalWordFrom(std::string_view word, SignalWord& out) noexcept { return wordFrom(kSignalWords, word, out); }

const std::vector<std::string>& allRunKinds()
{
    static const std::vector<std::string> kinds{"full", "next_roll", "re_web", "restart"};
    return kinds;
}

const std::vector<std::string>& allConditions()
{
    static const std::vector<std::string> names = [] {
        std::vector<std::string> all;
        all.reserve(kConditions.size());
        for (const Condition& c : kConditions) all.emplace_back(c.name);
        return all;
    }();
    return names;
}

bool isMachineState(std::string_view condition) noexcept
{
    const Condition* c = conditionOf(condition);
    return c != nullptr && c->machineState;
}

bool isProtective(std::string_view condition) noexcept
{
    const Condition* c = conditionOf(condition);
    return c != nullptr && c->protective;
}

bool isControlRole(std::string_view role) noexcept
{
    const bool plain = std::any_of(inputs::kControlRoles.begin(), inputs::kControlRoles.end(),
                                   [&](const auto& r) { return r.first == role; });
    return plain || !zoneOfRole(role).empty();
}

Text defaultLabel(std::string_view role)
{
    for (const auto& [name, label] : inputs::kControlRoles)
        if (name == role) return SharedString::ofTable(label);
    std::string zone(zoneOfRole(role));
    if (zone.empty()) return {"%1", {std::string(role)}};
    std::replace(zone.begin(), zone.end(), '_', ' ');
    return {"the %1 setting", {zone}};
}

}  // namespace taut::procedure
