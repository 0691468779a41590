// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/procedure/procedure.h"

namespace taut::procedure {

/// What the lint asks the rooms to its left: which targets, facts and repetitions there are.
struct Known {
    bool (*target)(std::string_view idOrPattern);
    const std::vector<std::string>& facts;
    const std::vector<std::string>& repetitions;
};

/// The longest a text may be, in characters: what fits on a card and is read before it is answered.
inline constexpr std::size_t kLongestSay = 240;
inline constexpr std::size_t kLongestWhy = 400;
inline constexpr std::size_t kMostSteps = 9;  ///< in a place
inline constexpr std::size_t kMostTries = 4;
/// The three statements that every motion step needs.
inline constexpr const char* kMotionNeeds[] = {"guards_closed", "stops_released", "people_clear"};

/// readProcedure with what is known given from outside.
[[nodiscard]] Result<Procedure> readProcedure(std::string_view toml, std::string_view file, const Known& known,
                                              Findings& lint);

/// What is wrong with each step by itself: words, targets, texts, what nobody may waive.
void lintSteps(const Procedure& procedure, std::string_view file, const Known& known, Findings& lint);
/// What is wrong with the order: needs, held stops, calls, vital steps too late, places too long; in each kind of run.
void lintOrder(const Procedure& procedure, std::string_view file, Findings& lint);

/// "file:line stage.place.step"
[[nodiscard]] std::string subjectOf(std::string_view file, const StageSpec& stage, const PlaceSpec& place,
                                    const StepSpec& step);
[[nodiscard]] bool contains(const std::vector<std::string>& list, std::string_view word);

}  // namespace taut::procedure
