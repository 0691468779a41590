// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/base/text.h"
#include "core/units/quantity.h"

namespace taut::physics {

/// One argument of a formula: its symbol as in the printed formula, its name for people, and the kinds it may be of.
/// Where several are allowed (torque per bar, per ampere, per percent) the result's kind follows the one given.
struct Argument {
    std::string_view symbol;
    std::string_view name;  ///< English source, "outer diameter"
    std::vector<Kind> kinds;
};

/// A published relation under a stable id ("R1", "B5.diameter"): what the `formula` verb evaluates and every target
/// names.
struct Formula {
    std::string_view id;
    std::string_view symbols;  ///< "L = pi (D^2 - d^2) / (4 t)"
    std::vector<Argument> arguments;
    std::vector<Kind> results;                    ///< one, or one for each kind of the first argument that has several
    std::string_view valid;                       ///< "D > d > 0, 0 < t << d"
    std::string_view source;                      ///< ids of tests/published: "S1", "S32, S33"
    double (*value)(std::span<const double> si);  ///< arguments in order, SI; NaN outside the domain
};

/// An argument's value as given: by symbol.
struct Named {
    SharedString symbol;
    Quantity value;
};

/// The same of a value that stands elsewhere.
struct NamedRef {
    std::string_view symbol;
    const Quantity* value = nullptr;
};

/// No formula has more arguments.
inline constexpr std::size_t kMostArguments = 12;

/// All formulas, sorted by id.
[[nodiscard]] std::span<const Formula> formulas();
[[nodiscard]] const Formula* findFormula(std::string_view id);
/// The kind of the result for these arguments.
[[nodiscard]] Kind resultKind(const Formula& formula, std::span<const Named> given);
/// Evaluates by symbol, in any order. Arguments of several kinds go together by their place: torque per bar wants its
/// zero as a pressure. A plain number and a share stand for each other. Codes: formula.missing_argument,
/// .unknown_argument, .repeated_argument, .wrong_kind, .outside_domain (names the rule). The subject is the formula's
/// id.
[[nodiscard]] Result<Quantity> evaluate(const Formula& formula, std::span<const Named> given);
[[nodiscard]] Result<Quantity> evaluate(const Formula& formula, std::span<const NamedRef> given);

}  // namespace taut::physics
