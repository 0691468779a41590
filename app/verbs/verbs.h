// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>

#include "app/verbs/console.h"
#include "app/verbs/imported.h"
#include "app/verbs/options.h"
#include "core/records/records.h"

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
/// nullptr when there is none of that name.
[[nodiscard]] const Verb* findVerb(std::string_view name);

/// The whole command line after the program's name: a verb, --help or --version. Never throws: what went wrong inside
/// is a sentence and exit code 4.
[[nodiscard]] Exit runCommand(std::span<const std::string> args, const Console& console);
/// Whether this command line needs an application object (fonts).
[[nodiscard]] bool drawsSomething(std::span<const std::string> args);

/// --logbook, else the usual one of this user.
[[nodiscard]] std::filesystem::path logbookOf(const Options& options);
/// --press --job --state --since --until --limit.
[[nodiscard]] Result<records::RunQuery> queryOf(const Options& options);
/// `runs --report DIR`: the week report of the press of the query, or of each press, written as PDF into the folder.
[[nodiscard]] Exit weekReports(const records::Reader& reader, const records::RunQuery& query, const Options& options,
                               const Console& console);

// The verbs.
[[nodiscard]] Verb formulaVerb();
[[nodiscard]] Verb targetsVerb();
[[nodiscard]] Verb checkVerb();
[[nodiscard]] Verb demoVerb();
[[nodiscard]] Verb sheetVerb();
[[nodiscard]] Verb runsVerb();
[[nodiscard]] Verb verifyVerb();
[[nodiscard]] Verb backupVerb();
[[nodiscard]] Verb restoreVerb();
[[nodiscard]] Verb exportVerb();
[[nodiscard]] Verb practiceVerb();

}  // namespace taut::app::verbs
