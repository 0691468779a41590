// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

#include "core/logbook/logbook.h"

namespace taut::app {

/// Takes what a TOML file holds into the logbook: a press, a job, substrates or a procedure, each as a new edition
/// where it differs from the newest. What is wrong with the file is refused before anything of it is kept
/// (take_in.not_a_definition, the reader's own codes, and
/// those of inputs::findingsAround).
[[nodiscard]] Result<Done> takeInFile(logbook::Writer& writer, const std::filesystem::path& file,
                                      const people::Actor& by);

/// The same with the text itself; its name serves messages only.
[[nodiscard]] Result<Done> takeInText(logbook::Writer& writer, const std::string& text, const std::string& name,
                                      const people::Actor& by);

}  // namespace taut::app
