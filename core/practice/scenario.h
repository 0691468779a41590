// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/practice/truth.h"
#include "core/practice/world.h"
#include "core/run/basis.h"

namespace taut::practice {

/// The four passes of job instruction (do; again telling the steps; the key points; the reasons), free practice, test.
enum class Mode : std::uint8_t { Do, TellSteps, TellKeyPoints, TellReasons, Free, Test };
[[nodiscard]] const char* modeWord(Mode mode) noexcept;  ///< do tell_steps tell_key_points tell_reasons free test
[[nodiscard]] std::optional<Mode> modeFrom(std::string_view word) noexcept;
/// What of a step is shown: what is to be done, on what it depends (the caution, the figure, what is seen when it went
/// right), why.
struct Help {
    bool say = true, keyPoint = true, why = true;
    friend bool operator==(const Help&, const Help&) = default;
};
/// Each pass hides what the trainee is to tell in it, and what they told in the passes before. Whoever asks for help
/// with a step is shown all of it.
[[nodiscard]] Help helpIn(Mode mode) noexcept;

/// What a trainer sets somebody to: a press, a job and a roll by their ids, what is not as it should be, how much help
/// is given and when an answer that the press contradicts is shown.
struct Scenario {
    std::string id, title, press, job, roll;
    std::string procedure = "cold_start";
    std::uint64_t seed = 1;
    std::vector<Fault> faults;
    int draw = 0;  ///< so many more faults, drawn by the seed
    Mode mode = Mode::Free;
    std::optional<bool> atOnce;      ///< contradictions are shown at once, or afterwards; empty: as the mode has it
    std::vector<std::string> parts;  ///< stages and places that count; none = all
};
/// Whether an answer that the press contradicts is shown at once: in the first pass errors are put right at once, later
/// nobody is helped unless it was asked for.
[[nodiscard]] bool showsAtOnce(const Scenario& scenario) noexcept;
/// Those that it names, and those that its seed draws at this press.
[[nodiscard]] std::vector<Fault> faultsOf(const Scenario& scenario, const inputs::Press& press);

/// Help that was asked for with a step.
struct Hint {
    std::string step;
    friend bool operator==(const Hint&, const Hint&) = default;
};
/// What somebody in a lesson does: at the press, to a step, with their eyes (a suspect is what they say is wrong), or
/// in need of help.
using Act = std::variant<Deed, Answer, Suspect, Hint>;
/// Something done after so much time has gone on; nothing: they only wait.
struct Action {
    Time after;
    std::optional<Act> act;
};

/// Scenario and actions are TOML files that people write (DEVELOPERS.md, "Lessons"). What is wrong stands in `notes`
/// with its place, as in the files of core/inputs; the Result fails only for a file that cannot be used at all.
[[nodiscard]] Result<Scenario> readScenario(std::string_view toml, std::string_view file, Findings& notes);
/// For this press and plan: what its controls can be set to and its steps can be answered is known only there.
[[nodiscard]] Result<std::vector<Action>> readActions(std::string_view toml, std::string_view file,
                                                      const run::Basis& basis, Findings& notes);

/// The step of a plan that guards against this: the first that sets its target or gives its condition; "" = none does.
[[nodiscard]] std::string preventedBy(const Cause& cause, const procedure::Plan& plan);

}  // namespace taut::practice
