// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/text.h"
#include "core/inputs/press.h"

namespace taut::practice {

/// Something that is not as files and labels say, or that somebody left so. `what` is one of faultNames().
struct Fault {
    std::string what;
    std::string item = {};  ///< which guard, zone or station, where there are several; "" = all of them
    double amount = 0;      ///< what it takes: a share of torque, diameter, range, radius or sight that is left or
                            ///< too much
    friend bool operator==(const Fault&, const Fault&) = default;
};
[[nodiscard]] const std::vector<std::string>& faultNames();
/// What a fault takes where a scenario does not say.
[[nodiscard]] double usualAmount(std::string_view fault);

/// One thing at a press that may be as it should or not: a fault and its item.
struct Suspect {
    std::string what, item;
    // NOLINTNEXTLINE(modernize-use-nullptr): what the compiler makes of it compares with zero
    friend auto operator<=>(const Suspect&, const Suspect&) = default;
};
/// Whatever can be wrong at this press, each once; sorted as faultNames(), then in the order of its file.
[[nodiscard]] std::vector<Suspect> suspectsOf(const inputs::Press& press);
/// Whether this suspect is meant by a fault, or by what somebody named: an item that is not said means every one.
[[nodiscard]] bool isMeant(const Suspect& suspect, std::string_view what, std::string_view item);
/// "The switch of Guard at the infeed nip sticks."
[[nodiscard]] Text suspectText(const Suspect& suspect, const inputs::Press& press);

/// So many faults out of what can be wrong at this press, each with its usual amount: the same for the same seed.
[[nodiscard]] std::vector<Fault> drawnFaults(const inputs::Press& press, std::uint64_t seed, std::size_t number);

}  // namespace taut::practice
