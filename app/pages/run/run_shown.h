// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/drawing/elevation.h"
#include "app/drawing/taut_line.h"
#include "app/widgets/answer.h"
#include "core/inputs/inputs.h"
#include "core/run/run.h"

namespace taut::app {

/// What the run page shows of a run: values made from the run, nothing kept.

/// The files a run was based on, read again for drawing and headings. Kept while their hashes stay the same.
struct RunFiles {
    run::Sources sources;
    std::optional<inputs::Press> press;
    std::optional<inputs::Job> job;
    std::optional<inputs::Roll> roll;
    std::string substrateName;
    std::string language;  ///< in which its steps are read
    /// False when the run has other files since.
    [[nodiscard]] bool isOf(const run::Run& run) const { return sources == run.sources(); }
};
/// Reads them; what cannot be read stays empty.
[[nodiscard]] RunFiles filesOf(const run::Run& run);

/// What the run goes by, for what a roll's tag is compared with; empty where it cannot be read.
[[nodiscard]] inputs::Inputs inputsOf(const run::Run& run);

/// What changing to this roll would undo, said before anybody confirms it; or why it cannot be used.
[[nodiscard]] QString effectOfRoll(const run::Run& run, const std::string& rollToml);
/// Of the run's press.
[[nodiscard]] UnitSystem unitsOf(const run::Run& run);
/// True when somebody is signed in who is not the person in whose hands the run is.
[[nodiscard]] bool isInOtherHands(const run::Run& run, const PersonChoice& actor);
/// The held stops with the place in the words of whoever reads it.
[[nodiscard]] std::vector<run::HeldStop> heldShown(const run::Run& run);
/// "Stops held: Ana (latch at the table)"; "" when none is.
[[nodiscard]] QString stopsHeldText(const run::Run& run);
/// One span for each stage, the shown one marked.
[[nodiscard]] std::vector<TautSpan> tautSpansOf(const run::Run& run, std::size_t shownStage);
/// Press, job, roll, operator, kind of run and its id, in the order of a sheet's head.
[[nodiscard]] QStringList headingOf(const run::Run& run, const RunFiles& files);
/// In which language the run is read, when it is not that of the window; "" when it is.
[[nodiscard]] QString spokenText(const RunFiles& files);
/// What stood at a step before it was corrected, the oldest first: what, by whom, when, and why it was not right.
[[nodiscard]] QStringList earlierOf(const run::Run& run, const procedure::Step& step);
/// That a step has notes, or pictures and files, and how many; "" when it has none.
[[nodiscard]] QString marksOf(const run::Run& run, const run::StepId& step);
/// The step must be one of the run's plan.
[[nodiscard]] StepContent stepContentOf(const run::Run& run, const procedure::Step& step,
                                        const std::vector<PersonChoice>& people);
/// The target that a step refers to; nullptr when it has none.
[[nodiscard]] const targets::Target* targetOfStep(const run::Run& run, const procedure::Step& step);
/// The drawing with the web as far as the run's conditions say it is threaded, and of the step where one stands, what
/// is touched there and the zone it acts on.
[[nodiscard]] ElevationView elevationOfRun(const run::Run& run, const RunFiles& files, const procedure::Step& step);
/// "1.39 bar, inside" of an answered reading; the state's word of anything else.
[[nodiscard]] QString standingLine(const run::StepStanding& standing, UnitSystem system);
/// The step to show first of a stage: the first open one, else its first.
[[nodiscard]] const procedure::Step* firstOfStage(const run::Run& run, std::size_t stage);

}  // namespace taut::app
