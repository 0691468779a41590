// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/inputs/inputs.h"

namespace taut::targets {

using TargetId = std::string;  ///< "tension.unwind.setting": stable, used by procedure files, sheets, charts and verbs

/// Which rule made a window; of the first five earlier ones win. Alarm: beyond the limit work stops, and within it
/// nothing is proved, so that a reading there is recorded and never called inside.
enum class Rule : std::uint8_t { Job, Maker, Press, Table, Policy, None, Alarm };
[[nodiscard]] const char* ruleWord(Rule rule) noexcept;

/// The limits a reading is judged against, and who says so. Not rounded.
struct Window {
    std::optional<Quantity> low, high;
    Rule rule = Rule::None;
    Text source;
    std::optional<Rule> lowRule{};  ///< of the lower end, where another rule gave it than the upper
    friend bool operator==(const Window&, const Window&) = default;
};
using TargetValue = std::variant<Quantity, bool, std::string>;
/// One input of a value: its symbol in the formula, what it is, the value, and where it came from ("roll.core",
/// "target:lift.load").
struct Given {
    SharedString symbol;
    Text name;
    TargetValue value;
    SharedString from;
    friend bool operator==(const Given&, const Given&) = default;
};
/// Why a value is what it is. `formula` is an id of physics/formula.h, or "stated", "rule", "lookup".
struct Because {
    SharedString formula, symbols;
    std::vector<Given> given;
    SharedString source;
    friend bool operator==(const Because&, const Because&) = default;
};
struct Ready {
    TargetValue value;
    std::optional<Quantity> uncertainty;  ///< of the target, expanded, k = 2; shown, never moves a limit
    std::optional<Quantity> instrument;   ///< of the instrument it is read on, expanded, k = 2; decides inside and near
    std::optional<Quantity> most;         ///< where what it is set or read with ends; nothing is read beyond it
    Window window;
    Because because;
    Text advice;
    friend bool operator==(const Ready&, const Ready&) = default;
};
/// Cannot be computed until these keys are known ("press.zone.unwind.torque_per_setting").
struct Needs {
    std::vector<std::string> keys;
    Text advice{};          ///< what it is for, or what to do until the keys are known
    SharedString source{};  ///< whose relation would give it
    friend bool operator==(const Needs&, const Needs&) = default;
};
/// This press cannot deliver it, or it contradicts something: known before anybody lifts a roll. With a reason that is
/// a note it merely never comes to it with this roll, and nothing is to be done.
struct Cannot {
    Finding why;
    Text advice{};          ///< what to do instead
    SharedString source{};  ///< whose relation or fact says so
    [[nodiscard]] bool never() const { return why.severity == Severity::Note; }
    friend bool operator==(const Cannot&, const Cannot&) = default;
};
enum class Shape : std::uint8_t { Quantity, YesNo, Word };
struct Target {
    TargetId id;
    Shape shape{};
    Text name;  ///< what people call it
    std::variant<Ready, Needs, Cannot> state;
    [[nodiscard]] const Ready* ready() const { return std::get_if<Ready>(&state); }
    /// The quantity of a ready target, or nullptr.
    [[nodiscard]] const Quantity* quantity() const;
    friend bool operator==(const Target&, const Target&) = default;
};
/// A target against a running variable: brake pressure against diameter.
struct Schedule {
    TargetId id;
    std::vector<std::string> columns;
    std::vector<std::vector<Quantity>> rows;
    friend bool operator==(const Schedule&, const Schedule&) = default;
};
/// Everything that follows from the inputs. A value: computed once, then carried, stored and compared.
struct Targets {
    std::vector<Target> all;  ///< sorted by id
    std::vector<Schedule> schedules;
    Findings findings;  ///< worst first
    [[nodiscard]] const Target* find(std::string_view id) const;
    [[nodiscard]] const Schedule* schedule(std::string_view id) const;
    friend bool operator==(const Targets&, const Targets&) = default;
};

/// The target set of these inputs. presentDiameter: the roll as it is now, when it is no longer what its file says.
/// webInPress: a web lies in the press, so that the new one is drawn from the splice table on; without one it is drawn
/// all the way from the roll. Never fails: what is missing is named by the targets that miss it.
[[nodiscard]] Targets computeTargets(const inputs::Inputs& inputs, std::optional<Length> presentDiameter = {},
                                     bool webInPress = true);

/// Ids whose state, value or window differs: what goes stale, and nothing else.
[[nodiscard]] std::vector<TargetId> changed(const Targets& before, const Targets& after);

/// True when the id, or its pattern with {zone}, {guide} ... for the instance, is one that this program can compute.
[[nodiscard]] bool isKnownTarget(std::string_view idOrPattern);

}  // namespace taut::targets
