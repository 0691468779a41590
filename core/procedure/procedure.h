// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/base/text.h"

namespace taut::procedure {

/// "tension.settings.setting/unwind": stage, place, step, and the item of a repetition after the slash.
struct StepId {
    std::string value;
    friend auto operator<=>(const StepId&, const StepId&) = default;
};
/// confirm states a fact; reading a value with its unit; choice one of a few words; scan a tag; hold a maintained stop
/// put on by somebody named; motion: the press will move; call closes the stage.
enum class StepKind : std::uint8_t { Confirm, Reading, Choice, Scan, Hold, Motion, Call };
[[nodiscard]] const char* stepKindWord(StepKind kind) noexcept;
/// How long an answer holds: this run, this roll, this shift, or until the press is powered off.
enum class ValidFor : std::uint8_t { Run, Roll, Shift, Power };
/// Signal words as the standards define them (danger: will kill or maim; warning: could; caution: minor or moderate).
enum class SignalWord : std::uint8_t { None, Notice, Caution, Warning, Danger };
/// The words of files and JSON: "run", "warning" ... and back (false: no such word).
[[nodiscard]] const char* validForWord(ValidFor validFor) noexcept;
[[nodiscard]] const char* signalWordWord(SignalWord word) noexcept;
[[nodiscard]] bool stepKindFrom(std::string_view word, StepKind& out) noexcept;
[[nodiscard]] bool validForFrom(std::string_view word, ValidFor& out) noexcept;
[[nodiscard]] bool signalWordFrom(std::string_view word, SignalWord& out) noexcept;
struct Caution {
    SignalWord word{};
    std::string text;
};
struct Choice {
    std::string word;    ///< stored
    std::string say;     ///< shown
    bool stops = false;  ///< this answer keeps the run from going on
    std::string remedy;  ///< what to do then
    friend bool operator==(const Choice&, const Choice&) = default;
};
/// A step as the file says it, before repetition and labels.
struct StepSpec {
    std::string id, forEach;
    StepKind kind{};
    bool vital = false;
    bool hands = false;     ///< fingers, tape or blade in the web path, a nip, a roll, a core: a stop must be held
    bool waivable = true;   ///< false: nobody may pass it by; it ends done or the press is withdrawn
    bool external = false;  ///< may be done before this stage, while the press still runs
    std::string late;       ///< why a vital step stands in the second half of its stage
    std::string target, control, at;
    std::vector<std::string> when, unless, needs, gives, ends, uses, fills;
    std::vector<std::string> kinds;  ///< kinds of run it belongs to: full next_roll re_web restart
    ValidFor validFor = ValidFor::Run;
    std::vector<Choice> choices;
    std::optional<Caution> caution;
    std::vector<std::string> tries;  ///< up to four ordered remedies when outside
    std::string say, why, see;
    std::string wait;  ///< a time that is part of the step ("60 s")
    std::string done;  ///< a movement: what was seen when it went as it should; "" = it moved as expected
    int line = 0;
};
/// Where one stands while doing up to nine steps. read_do: one after the other; do_confirm: do them, then say so.
struct PlaceSpec {
    std::string id, title, at;
    bool doConfirm = false;
    std::vector<StepSpec> steps;
};
struct StageSpec {
    std::string id, title;
    std::vector<PlaceSpec> places;
};
/// A procedure as its file says it: data with an edition.
struct Procedure {
    std::string id, title, language, purpose, revised;
    int edition = 0;
    std::vector<StageSpec> stages;
    std::string text;  ///< the file's bytes: hashed and kept with the run
};

/// Reads and lints. The Result's error is a file that is no procedure; everything else that is wrong stands in `lint`
/// (codes "lint.*", subject "file:line step id"); a procedure with a Stop among its lint is not run.
[[nodiscard]] Result<Procedure> readProcedure(std::string_view toml, std::string_view file, Findings& lint);

/// The fixed list of conditions (formats §4 and DEVELOPERS.md).
[[nodiscard]] const std::vector<std::string>& allConditions();
/// Conditions that are statements about the machine's present state: they hold for one movement only and are asked
/// again by every motion step; never carried over an interruption, a change of person or of run.
[[nodiscard]] bool isMachineState(std::string_view condition) noexcept;
/// Conditions whose giving steps nobody may waive.
[[nodiscard]] bool isProtective(std::string_view condition) noexcept;
/// Kinds of run, in the order full next_roll re_web restart.
[[nodiscard]] const std::vector<std::string>& allRunKinds();
/// Roles of controls, and the plain default label of each ("the unwind setting" for unwind_setting). hold_stop is the
/// maintained stop of the place where a step is done.
[[nodiscard]] bool isControlRole(std::string_view role) noexcept;
[[nodiscard]] Text defaultLabel(std::string_view role);

}  // namespace taut::procedure
