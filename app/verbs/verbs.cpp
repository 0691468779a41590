// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/verbs.h"

#include <algorithm>
#include <exception>
#include <ostream>
#include <vector>

#include "app/verbs/completion.h"

namespace taut::app::verbs {

namespace {

void printHelp(std::ostream& out)
{
    out << "tautweb [--demo] [--logbook FILE] opens the window. --demo: on a made-up shop with a logbook of its own;\n"
           "--logbook: on this logbook. With a verb it works without a window:\n\n";
    std::vector<std::vector<std::string>> rows;
    for (const Verb& verb : allVerbs()) {
        const std::string called = "  tautweb " + std::string(verb.spec.name);
        rows.push_back({called, std::string(verb.spec.summary)});
    }
    out << table(rows)
        << "\ntautweb VERB --help tells more. Every verb takes --json for programs to read.\n"
           "Exit codes: 0 done, 1 done and not in order, 2 wrong input, 3 refused by a rule, 4 the machine failed.\n";
}

Finding unknownVerb(const std::string& word)
{
    std::vector<std::string> known;
    for (const Verb& verb : allVerbs()) known.emplace_back(verb.spec.name);
    const std::string near = nearest(word, known);
    return refuse("verb.unknown", word, "tautweb has no such verb.",
                  near.empty() ? Text("tautweb --help lists them.")
                               : Text("Did you mean %1? tautweb --help lists them all.", {near}));
}

Exit run(const Verb& verb, std::span<const std::string> args, const Console& console)
{
    // Programs that asked for JSON must get an object even when another option is wrong.
    const bool json = std::find(args.begin(), args.end(), "--json") != args.end();
    const auto options = readOptions(verb.spec, args);
    if (!options) return refused(console, json, options.error());
    if (options->has("--help")) {
        console.out << helpFor(verb.spec);
        return Exit::Done;
    }
    return verb.run(*options, console);
}

}  // namespace

std::span<const Verb> allVerbs()
{
    static const std::vector<Verb> kVerbs{demoVerb(),   targetsVerb(), formulaVerb(), checkVerb(),
                                          sheetVerb(),  runsVerb(),    verifyVerb(),  exportVerb(),
                                          backupVerb(), restoreVerb(), practiceVerb()};
    return kVerbs;
}

const Verb* findVerb(std::string_view name)
{
    for (const Verb& verb : allVerbs())
        if (verb.spec.name == name) return &verb;
    return nullptr;
}

Exit runCommand(std::span<const std::string> args, const Console& console)
{
    if (args.empty() || args[0] == "--help" || args[0] == "-h" || args[0] == "help") {
        const Verb* asked = args.size() > 1 ? findVerb(args[1]) : nullptr;
        if (asked != nullptr)
            console.out << helpFor(asked->spec);
        else
            printHelp(console.out);
        return Exit::Done;
    }
    if (args[0] == "--version") {
        console.out << "tautweb " TAUTWEB_VERSION "\n";
        return Exit::Done;
    }
    if (args[0] == "--completion") {
        console.out << bashCompletion();
        return Exit::Done;
    }
    const Verb* verb = findVerb(args[0]);
    if (verb == nullptr) return refused(console, false, unknownVerb(args[0]));
    try {
        return run(*verb, args.subspan(1), console);
    } catch (const std::exception& error) {
        return refused(console, false,
                       refuse("machine.failed", args[0],
                              {"The program failed inside; it says: %1.", {std::string(error.what())}},
                              "Nothing half done was kept. Please report the command line and this sentence."));
    }
}

bool drawsSomething(std::span<const std::string> args)
{
    const Verb* verb = args.empty() ? nullptr : findVerb(args[0]);
    if (verb == nullptr || verb->draws || verb->drawsWith.empty()) return verb != nullptr && verb->draws;
    return std::any_of(args.begin(), args.end(),
                       [&](const std::string& arg) { return arg.rfind(verb->drawsWith, 0) == 0; });
}

}  // namespace taut::app::verbs
