// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include "app/sessions/session.h"
#include "core/practice/scenario.h"

namespace taut::app {

/// A scenario that somebody may practise, and what its file says wrong.
struct LessonFile {
    std::filesystem::path file;
    practice::Scenario scenario;
    Findings notes;
    std::string text;  ///< of the file
};
/// Reads one; the Result fails for a file that cannot be used at all.
[[nodiscard]] Result<LessonFile> lessonFrom(const std::filesystem::path& file);
/// The scenarios that come with the program, by their files' names; one that cannot be read is left out.
[[nodiscard]] std::vector<LessonFile> lessonsIn(const std::filesystem::path& resources);

/// A scenario with the files that it names.
struct Lesson {
    practice::Scenario scenario;
    run::Source file;  ///< the scenario as it was written
    run::Sources sources;
    inputs::Inputs inputs;
    targets::Targets targets;
    /// What a world is built from.
    [[nodiscard]] practice::Setup setup() const { return {inputs, scenario.seed, scenario.faults}; }
};
/// What the shop keeps comes before what comes with the program. `text`: the scenario as it was written. Codes:
/// practice.unknown names what is known nowhere; those of run::basisFor.
[[nodiscard]] Result<Lesson> lessonOf(const practice::Scenario& scenario, std::string text, const Session& shop);

}  // namespace taut::app
