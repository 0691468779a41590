// SPDX-License-Identifier: GPL-3.0-or-later
// The practice press without a window: for tests, and for lessons that others write.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ostream>

#include "app/verbs/inputs_from.h"
#include "app/verbs/verbs.h"
#include "core/base/crypto.h"
#include "core/base/file.h"
#include "core/practice/scenario.h"
#include "core/procedure/plan.h"
#include "core/targets/target.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

using practice::Consequence;
using practice::World;

/// What a tenth of a second of practice looked like, a line each.
class Trace {
public:
    explicit Trace(const World& world)
    {
        m_text = "t,speed,unwind_radius,rewind_radius";
        m_text += ",tension.unwind";
        for (const auto& place : world.line().places) m_text += ",tension." + spaceless(place.id);
        for (const auto& place : world.line().places) m_text += ",place." + spaceless(place.id);
        m_text += "\r\n";
    }
    void add(const World& world)
    {
        const auto& web = world.line().web;
        put(world.time());
        put(world.speed().si());
        put(unwindRadius(web, world.web()).si());
        put(rewindRadius(web, world.web()).si());
        for (std::size_t s = 0; s < web.spans.size(); ++s) put(tensionIn(web, world.web(), s).si());
        for (std::size_t i = 0; i < web.rollers.size(); ++i) put(world.lateral().at[i]);
        m_text.back() = '\r';
        m_text += '\n';
    }
    [[nodiscard]] const std::string& text() const { return m_text; }

private:
    static std::string spaceless(std::string id)
    {
        std::replace(id.begin(), id.end(), ' ', '_');
        return id;
    }
    /// Seven figures: what two machines' libraries may round otherwise stands behind them.
    void put(double value)
    {
        char figures[32];
        std::snprintf(figures, sizeof figures, "%.7g,", value);
        m_text += figures;
    }
    std::string m_text;
};

struct Played {
    struct Refused {
        double at = 0;
        std::string what;
        Finding why;
    };
    std::vector<Refused> refused;
    std::string trace;
};

/// Does one thing after the other; the trace has a line a tenth of a second.
Played play(World& world, const std::vector<practice::Action>& actions)
{
    constexpr int kTicksALine = 10;
    Played played;
    Trace trace(world);
    trace.add(world);
    std::int64_t ticks = 0;
    for (const practice::Action& action : actions) {
        for (auto left = std::llround((action.after / World::kTick).si()); left > 0; --left) {
            world.advance(World::kTick);
            if (++ticks % kTicksALine == 0) trace.add(world);
        }
        if (action.deed.what == "wait") continue;
        if (const auto done = world.perform(action.deed); !done)
            played.refused.push_back({world.time(), action.deed.what, done.error()});
    }
    played.trace = trace.text();
    return played;
}

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

struct Lesson {
    practice::Scenario scenario;
    inputs::Inputs inputs;
    std::vector<practice::Action> actions;
    procedure::Plan plan;
};

Result<Lesson> lessonOf(const Options& options, Findings& notes)
{
    for (const char* option : {"--scenario", "--actions"})
        if (!options.has(option))
            return refuse("input.missing_option", option, {"%1 is not said.", {std::string(option)}},
                          {"Add %1 with a file.", {std::string(option)}});
    Lesson lesson;
    const auto scenarioText = readFile(options.value("--scenario"));
    if (!scenarioText) return scenarioText.error();
    auto scenario = practice::readScenario(*scenarioText, options.value("--scenario"), notes);
    if (!scenario) return scenario.error();
    lesson.scenario = *std::move(scenario);
    const auto files = inputFiles(InputNames{lesson.scenario.press, lesson.scenario.job, lesson.scenario.roll, {}, {}});
    if (!files) return files.error();
    auto inputs = readInputs(*files, notes);
    if (!inputs) return inputs.error();
    lesson.inputs = *std::move(inputs);
    const auto actionsText = readFile(options.value("--actions"));
    if (!actionsText) return actionsText.error();
    auto actions = practice::readActions(*actionsText, options.value("--actions"), *lesson.inputs.press, notes);
    if (!actions) return actions.error();
    lesson.actions = *std::move(actions);
    const auto sources = sourcesOf(*files, "cold_start");
    if (!sources) return sources.error();
    const auto procedure = procedure::readProcedure(sources->procedure.text, sources->procedure.id, notes);
    if (!procedure) return procedure.error();
    lesson.plan = procedure::planFor(*procedure, lesson.inputs, targets::computeTargets(lesson.inputs),
                                     inputs::factsOf(lesson.inputs, true), "full");
    return lesson;
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    Findings notes;
    const auto lesson = lessonOf(options, notes);
    if (!lesson) return refused(console, json, lesson.error());
    if (stops(notes)) return refused(console, json, notes);
    practice::Setup setup{lesson->inputs, lesson->scenario.seed, lesson->scenario.faults};
    auto world = World::build(setup);
    if (!world) return refused(console, json, world.error());
    const Played played = play(*world, lesson->actions);
    if (options.has("--trace"))
        if (const auto written = writeFile(options.value("--trace"), played.trace); !written)
            return refused(console, json, written.error());

    Json consequences = Json::array();
    for (const Consequence& one : world->consequences()) {
        std::string prevented;
        Json causes = causesJson(one, lesson->plan, prevented);
        const std::string said = plain(one.text, UnitSystem::Metric);
        consequences.add(Json::object()
                             .set("at", one.at)
                             .set("code", one.code)
                             .set("where", one.where)
                             .set("cause", causes)
                             .set("prevented_by", prevented.empty() ? Json() : Json(prevented))
                             .set("text", said));
        if (json) continue;
        console.out << std::to_string(one.at).substr(0, std::to_string(one.at).find('.') + 2) << " s  " << said << '\n';
        for (const Json& cause : causes.items()) console.out << "    because: " << cause["text"].text() << '\n';
        if (!prevented.empty()) console.out << "    guarded against by the step " << prevented << '\n';
    }
    Json refusals = Json::array();
    for (const Played::Refused& one : played.refused) {
        refusals.add(Json::object()
                         .set("at", one.at)
                         .set("do", one.what)
                         .set("code", one.why.code)
                         .set("subject", one.why.subject)
                         .set("text", plain(one.why.text, UnitSystem::Metric)));
        if (!json) console.out << "refused: " << one.what << ": " << plain(one.why.text, UnitSystem::Metric) << '\n';
    }
    if (json)
        print(console, answer()
                           .set("scenario", lesson->scenario.id)
                           .set("seed", lesson->scenario.seed)
                           .set("simulated", world->time())
                           .set("consequences", std::move(consequences))
                           .set("refusals", std::move(refusals))
                           .set("trace_sha256", hex(sha256(played.trace))));
    else if (world->consequences().empty())
        console.out << "PRACTICE: nothing happened that should not have.\n";
    return world->consequences().empty() ? Exit::Done : Exit::NotInOrder;
}

}  // namespace

Verb practiceVerb()
{
    return {{"practice",
             "",
             "does what a file says at a simulated press and tells what comes of it; nothing of it is a record",
             {{"--scenario", "FILE", "press, job, roll, seed and faults"},
              {"--actions", "FILE", "what is done, one thing after the other"},
              {"--trace", "FILE", "writes speed, tensions and places of the web as CSV"}},
             0,
             0},
            run};
}

}  // namespace taut::app::verbs
