// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/practice/world.h"
#include "core/procedure/plan.h"

namespace taut::practice {

// What the press says to a statement. One table by the names of conditions and targets; no step is named, so that any
// procedure is held against it.

/// NotKnown: the practice press has nothing by which to tell (who stands behind it, how much tape stands over). Nobody
/// is contradicted of that.
enum class Truth : std::uint8_t { Holds, Contradicted, NotKnown };
struct Verity {
    Truth truth = Truth::NotKnown;
    Text seen;  ///< what the press shows instead; empty unless it contradicts
};

/// A condition of a procedure, said to be so now. `item` is that of the step, where the press has several.
[[nodiscard]] Verity conditionNow(const World& world, std::string_view condition, std::string_view item = {});
/// What somebody reads at the press now for a target ("tension.unwind.setting"): as its gauges show it and as a rule
/// laid against it does; nullopt where there is nothing to read.
[[nodiscard]] std::optional<Quantity> readNow(const World& world, std::string_view target);
/// A reading said to be so now. It may differ by what the instrument may, or by what such a reading usually does.
[[nodiscard]] Verity readingNow(const World& world, std::string_view target, const Quantity& said);

/// What was answered to a step: "yes", "done", a holder's name, a choice's word, a tag or a value with its unit
/// (run/command.h).
struct Answer {
    std::string step, entered;
    friend bool operator==(const Answer&, const Answer&) = default;
};
/// Whether an answer is so: what its step gives and ends, of a movement also the statements about the machine that it
/// needs, and its target, read or ticked. `read` is the reading as a quantity. An answer that stops the run says that
/// something is not so; nobody is contradicted of that.
[[nodiscard]] Verity answerNow(const World& world, const procedure::Step& step, const Answer& answer,
                               const std::optional<Quantity>& read);

}  // namespace taut::practice
