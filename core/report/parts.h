// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/report/report.h"
#include "core/run/run.h"

namespace taut::report {

// The pieces that the sheet of a run and the blank sheet have in common. Each gives what it can from what is known.

/// What a sheet is made from, whether somebody has answered anything or not.
struct Ground {
    inputs::Inputs inputs;  ///< a member is null when its file cannot be read any more
    const run::Sources* sources = nullptr;
    const targets::Targets* targets = nullptr;
    const procedure::Plan* plan = nullptr;
    const std::vector<std::string>* facts = nullptr;
    UnitSystem units{};
};
/// The four inputs out of a run's own files; nothing is looked up elsewhere.
[[nodiscard]] inputs::Inputs inputsOf(const run::Sources& sources);

/// Words that are data: a name, a tag, a remark.
[[nodiscard]] Text data(std::string words);
/// A number of things, as an argument of a text.
[[nodiscard]] inline TextArg whole(std::size_t n) { return static_cast<std::int64_t>(n); }
/// "2026-11-25 07:41" where it happened.
[[nodiscard]] std::string localTime(std::int64_t utcMs, int offsetMinutes);
/// "Ana (latch at the panel), Ben (latch at the table)".
[[nodiscard]] std::vector<Text> holders(const procedure::Plan& plan, const std::vector<run::StopHeld>& held);
[[nodiscard]] Cell cell(Text text);
[[nodiscard]] Cell cell(const Quantity& quantity);
/// A target's value as it is aimed at in these units: a quantity, a word, yes or no; nothing when it is not ready.
[[nodiscard]] Cell valueCell(const targets::Target* target, UnitSystem system);
[[nodiscard]] Cell windowCell(const targets::Window& window);
/// A text up to its first full stop or question mark: enough to know a step again. Not up to a colon: what stands
/// before it is often the place alone, and that is the same for every step there.
[[nodiscard]] Text firstSentence(const Text& text);
/// What people call a step: the name of what it reads, else the first thing it says.
[[nodiscard]] Text nameOf(const procedure::Step& step, const targets::Target* target);
/// The word and mark of where a step stands.
[[nodiscard]] Cell markCell(const run::StepStanding& standing);

/// Job, press, substrate, roll: the pairs that every sheet begins with.
[[nodiscard]] std::vector<std::pair<Text, Cell>> inputFacts(const Ground& ground);
/// The press with every path, as the targets hang the roll; nothing when the profile has no drawing.
[[nodiscard]] std::optional<Elevation> elevation(const Ground& ground);
/// The schedules of settings in numbers.
[[nodiscard]] std::vector<Table> schedules(const Ground& ground);
/// What stands in each print station; nothing when neither press nor job says.
[[nodiscard]] std::optional<Table> stations(const Ground& ground);
/// What must be read before anything is touched: that other rules come first, what the targets found, the gravest
/// cautions of the steps.
[[nodiscard]] std::vector<Caution> cautions(const Ground& ground);
/// Targets that no step reads: for the continuation pages.
[[nodiscard]] std::optional<Table> otherTargets(const Ground& ground);
/// How a reading is judged, as every sheet says it.
[[nodiscard]] Paragraph decisionRule();

}  // namespace taut::report
