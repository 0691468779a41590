// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "app/seams/resources.h"
#include "app/verbs/options.h"
#include "core/inputs/inputs.h"
#include "core/run/basis.h"

namespace taut::app::verbs {

/// The options by which a verb is told its inputs: --press --job --roll --substrate --logbook --diameter
/// --web-in-press.
[[nodiscard]] std::vector<OptionSpec> inputOptions();

/// The four files as texts, found from what was said: each is a file, FILE#id for one of several, or an id known to the
/// resources or to --logbook.
struct InputFiles {
    InputFile press, job, substrate, roll;
};
/// What was said of each: a file, FILE#id, or an id known to the resources or the logbook; "" = nothing.
struct InputNames {
    std::string press, job, roll, substrate, logbook;
};
[[nodiscard]] Result<InputFiles> inputFiles(const InputNames& names);
/// Codes: input.missing_option, input.unknown (names the nearest), input.not_in_file, file.*, logbook.*.
[[nodiscard]] Result<InputFiles> inputFiles(const Options& options);

/// Reads them. What is wrong in a file stands in `notes`; the Result fails only for a file that cannot be used at all.
[[nodiscard]] Result<inputs::Inputs> readInputs(const InputFiles& files, Findings& notes);

/// --diameter and --web-in-press.
struct Circumstances {
    std::optional<Length> presentDiameter;
    bool webInPress = true;
};
/// From --diameter and --web-in-press. Codes: those of reading a quantity.
[[nodiscard]] Result<Circumstances> circumstances(const Options& options);

/// What a run or a blank sheet starts from: the four files and a procedure of the resources.
[[nodiscard]] Result<run::Sources> sourcesOf(const InputFiles& files, std::string_view procedure);

}  // namespace taut::app::verbs
