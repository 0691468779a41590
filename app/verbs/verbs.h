// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>

#include "app/verbs/console.h"
#include "app/verbs/options.h"

namespace taut::app::verbs {

/// One verb: how it is called and what does it.
struct Verb {
    VerbSpec spec;
    Exit (*run)(const Options& options, const Console& console);
    bool draws = false;               ///< needs fonts: an application object must stand before it runs
    std::string_view drawsWith = {};  ///< an option with which it does
};

/// All verbs, in the order of the help.
[[nodiscard]] std::span<const Verb> allVerbs();
[[nodiscard]] const Verb* findVerb(std::string_view name);

/// The whole command line after the program's name: a verb, --help or --version. Never throws: what went wrong inside
/// is a sentence and exit code 4.
[[nodiscard]] Exit runCommand(std::span<const std::string> args, const Console& console);
/// Whether this command line needs an application object (fonts).
[[nodiscard]] bool drawsSomething(std::span<const std::string> args);

// The verbs, each in a file of its own.
[[nodiscard]] Verb formulaVerb();
[[nodiscard]] Verb targetsVerb();
[[nodiscard]] Verb checkVerb();
[[nodiscard]] Verb demoVerb();
[[nodiscard]] Verb sheetVerb();
[[nodiscard]] Verb runsVerb();
[[nodiscard]] Verb verifyVerb();

}  // namespace taut::app::verbs
