// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/inputs.h"
#include "core/procedure/plan.h"
#include "core/targets/target.h"

namespace taut::run {

/// A file that a run was based on: its bytes, and how it is known.
struct Source {
    std::string id;
    int edition = 0;     ///< 0 = not numbered (a roll)
    std::string sha256;  ///< of text
    std::string text;    ///< TOML
    friend bool operator==(const Source&, const Source&) = default;
};
[[nodiscard]] Source sourceOf(std::string id, int edition, std::string text);
struct Sources {
    Source press, job, substrate, roll, procedure;
    /// The procedure's words in the language in which the run is read (its id); an empty id: in the procedure's own.
    Source translation{};
    friend bool operator==(const Sources&, const Sources&) = default;
};

/// Everything a run starts from, computed once from the bytes of its files.
struct Basis {
    Sources sources;
    inputs::Inputs inputs;
    std::vector<std::string> facts;
    targets::Targets targets;
    procedure::Plan plan;
    /// Of a run that goes on from another one: the targets of what a full set-up answers for a shift or until power-off
    /// and this kind of run does not ask. It rests on the answers of before, as long as these are the same.
    std::vector<targets::TargetId> restsOn;
};
struct BasisQuestion {
    std::string kind = "full";  ///< kind of run: full next_roll re_web restart
    bool webInPress = true;
    std::optional<Length> presentDiameter;
};
/// Reads the files, cross-checks, computes the targets and plans. Refuses when a file has a Stop among its notes or the
/// procedure does not pass its lint; what merely does not fit stands in targets.findings.
[[nodiscard]] Result<Basis> basisFor(const Sources& sources, const BasisQuestion& question);

}  // namespace taut::run
