// SPDX-License-Identifier: GPL-3.0-or-later
// The practice press without a window: for tests, and for lessons that others write.
#include <cstdio>
#include <ostream>

#include "app/verbs/inputs_from.h"
#include "app/verbs/practice.h"
#include "core/base/file.h"
#include "core/practice/attempt.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

using practice::Consequence;

Json causesJson(const Consequence& one, const procedure::Plan& plan, std::string& prevented)
{
    Json causes = Json::array();
    for (const practice::Cause& cause : one.causes) {
        Json said = Json::object();
        if (!cause.target.empty()) said.set("target", cause.target);
        if (!cause.condition.empty()) said.set("condition", cause.condition);
        causes.add(said.set("text", plain(cause.text, UnitSystem::Metric)));
        if (prevented.empty()) prevented = practice::preventedBy(cause, plan);
    }
    return causes;
}

/// A scenario with what it stands on, and what is done.
struct Played {
    std::string scenarioText;
    practice::Scenario scenario;
    run::Basis basis;
    std::vector<practice::Action> actions;
};

Result<Played> readLesson(const Options& options, Findings& notes)
{
    for (const char* option : {"--scenario", "--actions"})
        if (!options.has(option))
            return refuse("input.missing_option", option, {"%1 is not said.", {std::string(option)}},
                          {"Add %1 with a file.", {std::string(option)}});
    Played played;
    const auto scenarioText = readFile(options.value("--scenario"));
    if (!scenarioText) return scenarioText.error();
    played.scenarioText = *scenarioText;
    auto scenario = practice::readScenario(*scenarioText, options.value("--scenario"), notes);
    if (!scenario) return scenario.error();
    played.scenario = *std::move(scenario);
    const auto files = inputFiles(InputNames{played.scenario.press, played.scenario.job, played.scenario.roll, {}, {}});
    if (!files) return files.error();
    const auto sources = sourcesOf(*files, played.scenario.procedure);
    if (!sources) return sources.error();
    auto basis = run::basisFor(*sources, {});
    if (!basis) return basis.error();
    played.basis = *std::move(basis);
    const auto actionsText = readFile(options.value("--actions"));
    if (!actionsText) return actionsText.error();
    auto actions = practice::readActions(*actionsText, options.value("--actions"), played.basis, notes);
    if (!actions) return actions.error();
    played.actions = *std::move(actions);
    return played;
}

std::string saidAt(double at)
{
    char said[32];
    std::snprintf(said, sizeof said, "%.1f s  ", at);
    return said;
}

const char* nameOf(const practice::Act& act)
{
    if (const auto* deed = std::get_if<practice::Deed>(&act)) return deed->what.c_str();
    if (std::holds_alternative<practice::Answer>(act)) return "answer";
    return std::holds_alternative<practice::Hint>(act) ? "hint" : "found";
}

Json consequencesJson(const practice::Lesson& lesson, bool json, const Console& console)
{
    Json consequences = Json::array();
    for (const Consequence& one : lesson.world().consequences()) {
        std::string prevented;
        Json causes = causesJson(one, lesson.basis().plan, prevented);
        const std::string said = plain(one.text, UnitSystem::Metric);
        consequences.add(Json::object()
                             .set("at", one.at)
                             .set("code", one.code)
                             .set("where", one.where)
                             .set("cause", causes)
                             .set("prevented_by", prevented.empty() ? Json() : Json(prevented))
                             .set("text", said));
        if (json) continue;
        console.out << saidAt(one.at) << said << '\n';
        for (const Json& cause : causes.items()) console.out << "    because: " << cause["text"].text() << '\n';
        if (!prevented.empty()) console.out << "    guarded against by the step " << prevented << '\n';
    }
    return consequences;
}

Json refusalsJson(const practice::Lesson& lesson, bool json, const Console& console)
{
    Json refusals = Json::array();
    for (const practice::Logged& one : lesson.log()) {
        if (!one.refused) continue;
        const std::string said = plain(one.refused->text, UnitSystem::Metric);
        refusals.add(Json::object()
                         .set("at", one.at)
                         .set("do", nameOf(one.act))
                         .set("code", one.refused->code)
                         .set("subject", one.refused->subject)
                         .set("text", said));
        if (!json) console.out << "refused: " << nameOf(one.act) << ": " << said << '\n';
    }
    return refusals;
}

Json contradictionsJson(const practice::Lesson& lesson, bool json, const Console& console)
{
    Json contradictions = Json::array();
    for (const practice::Contradiction& one : lesson.contradictions()) {
        const std::string said = plain(one.text, UnitSystem::Metric);
        contradictions.add(Json::object().set("at", one.at).set("step", one.step).set("text", said));
        if (!json) console.out << saidAt(one.at) << "answered, and not so: " << one.step << "\n    " << said << '\n';
    }
    return contradictions;
}

Json scoreJson(const practice::Lesson& lesson, bool json, const Console& console)
{
    const practice::Score score = lesson.score();
    const practice::Detection found = lesson.detection();
    if (!json && !lesson.outcomes().empty()) {
        console.out << "score: " << shortest(score.earned) << " of " << shortest(score.total) << ", "
                    << score.vitalMissed.size() << " vital steps missed: " << (score.passed() ? "passed" : "not yet")
                    << '\n';
        if (!lesson.faults().empty())
            console.out << "found: " << found.hits << " of " << found.hits + found.misses << " that were not right, "
                        << found.falseAlarms << " named in vain\n";
    }
    return practice::scoreJson(score, found);
}

/// Tells how it went, once in words and once for programs.
Exit tell(const practice::Lesson& lesson, const std::string& kept, bool json, const Console& console)
{
    Json consequences = consequencesJson(lesson, json, console);
    Json refusals = refusalsJson(lesson, json, console);
    Json contradictions = contradictionsJson(lesson, json, console);
    Json score = scoreJson(lesson, json, console);
    const bool inOrder = consequences.items().empty() && contradictions.items().empty();
    if (!json && !kept.empty()) console.out << "kept as " << kept << '\n';
    if (json)
        print(console, answer()
                           .set("attempt", kept.empty() ? Json() : Json(kept))
                           .set("scenario", lesson.scenario().id)
                           .set("seed", lesson.scenario().seed)
                           .set("mode", practice::modeWord(lesson.scenario().mode))
                           .set("simulated", lesson.world().time())
                           .set("consequences", std::move(consequences))
                           .set("refusals", std::move(refusals))
                           .set("contradictions", std::move(contradictions))
                           .set("score", std::move(score))
                           .set("trace_sha256", lesson.trace().sha256()));
    else if (inOrder)
        console.out << "PRACTICE: nothing happened that should not have.\n";
    return inOrder ? Exit::Done : Exit::NotInOrder;
}

Exit run(const Options& options, const Console& console)
{
    if (options.has("--record")) return trainingRecord(options, console);
    const bool json = options.json();
    const Instant begun = SystemClock().now();
    Findings notes;
    auto played = readLesson(options, notes);
    if (!played) return refused(console, json, played.error());
    if (stops(notes)) return refused(console, json, notes);
    if (options.has("--check")) {
        if (json)
            print(console, answer().set("in_order", true).set("findings", findingsJson(notes)));
        else
            console.out << options.value("--scenario") << ", " << options.value("--actions") << ": in order\n";
        return Exit::Done;
    }
    auto lesson =
        practice::Lesson::begin(std::move(played->basis), std::move(played->scenario), options.has("--trace"));
    if (!lesson) return refused(console, json, lesson.error());
    practice::play(*lesson, played->actions);
    if (options.has("--trace"))
        if (const auto written = writeFile(options.value("--trace"), lesson->trace().text()); !written)
            return refused(console, json, written.error());
    std::string kept;
    if (options.has("--keep")) {
        auto id = keepAttempt(options, *lesson, played->scenarioText, begun);
        if (!id) return refused(console, json, id.error());
        kept = *std::move(id);
    }
    return tell(*lesson, kept, json, console);
}

}  // namespace

Verb practiceVerb()
{
    return {{"practice",
             "",
             "does what a file says at a simulated press and tells what comes of it; nothing of it is a record",
             {{"--scenario", "FILE", "press, job, roll, seed and faults"},
              {"--actions", "FILE", "what is done, one thing after the other"},
              {"--check", "", "only says what is wrong with the two files"},
              {"--trace", "FILE", "writes speed, tensions and places of the web as CSV"},
              {"--keep", "FILE", "keeps the attempt in this practice logbook, with --person and --name"},
              {"--record", "FILE", "instead: what this practice logbook has of --person"},
              {"--person", "ID", "whoever practised, by id"},
              {"--name", "NAME", "and by name"},
              {"--pdf", "FILE", "with --record: writes the training record as PDF"}},
             0,
             0},
            run,
            false,
            "--pdf"};
}

}  // namespace taut::app::verbs
