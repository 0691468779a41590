// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/scenario.h"

#include <algorithm>
#include <array>

#include "core/inputs/input_file.h"
#include "core/inputs/sane.h"
#include "core/inputs/words.h"
#include "core/practice/handles.h"
#include "core/practice/lesson.h"
#include "core/practice/score.h"

namespace taut::practice {

namespace {

constexpr inputs::Sane kWait{0, 4 * 3600, true};
constexpr inputs::Sane kAmount{0.01, 10};
constexpr int kMostSeed = 1'000'000'000, kMostDrawn = 100;
constexpr std::array<inputs::Word<Mode>, 6> kModes{{{"do", Mode::Do},
                                                    {"tell_steps", Mode::TellSteps},
                                                    {"tell_key_points", Mode::TellKeyPoints},
                                                    {"tell_reasons", Mode::TellReasons},
                                                    {"free", Mode::Free},
                                                    {"test", Mode::Test}}};
constexpr std::array<inputs::Word<bool>, 2> kShown{{{"at_once", true}, {"afterwards", false}}};

/// The id of a step as the file names it: with its item where it is repeated.
std::string stepIn(inputs::KeyReader& table)
{
    std::string step = table.text("step"), item = table.text("item");
    return item.empty() ? step : step + '/' + item;
}

const procedure::Step* findStep(inputs::KeyReader& table, const std::string& id, const procedure::Plan& plan)
{
    if (const procedure::Step* step = plan.find({id})) return step;
    std::vector<std::string> known;
    for (const procedure::Step& step : plan.steps) known.push_back(step.id.value);
    const std::string near = inputs::nearest(id, known);
    table.complain(
        "step",
        refuse("practice.no_step", {}, {"There is no step \"%1\" on this press with this job and roll.", {id}},
               near.empty() ? Text("Name a step as stage.place.step, and its item.") : Text("Is %1 meant?", {near})));
    return nullptr;
}

/// What was answered, under whichever key the file says it: entered, choice or tick.
std::optional<Answer> answerIn(inputs::KeyReader& table, const run::Basis& basis)
{
    Answer answer{stepIn(table), table.text("entered")};
    const std::string choice = table.text("choice");
    const std::optional<bool> tick = table.flag("tick");
    const procedure::Step* step = findStep(table, answer.step, basis.plan);
    if (step == nullptr) return std::nullopt;
    if (!choice.empty()) answer.entered = choice;
    if (tick.value_or(false)) answer.entered = step->kind == procedure::StepKind::Motion ? "done" : "yes";
    if (const auto read = readAnswer(basis, answer); !read) {
        Finding why = read.error();
        table.complain("step", std::move(why));
        return std::nullopt;
    }
    return answer;
}

std::optional<Suspect> suspectIn(inputs::KeyReader& table, const inputs::Press& press)
{
    Suspect suspect{table.text("what"), table.text("item")};
    std::vector<std::string> known;
    for (const Suspect& one : suspectsOf(press)) {
        if (isMeant(one, suspect.what, suspect.item)) return suspect;
        known.push_back(one.item.empty() ? one.what : one.what + " of " + one.item);
    }
    table.complain("what",
                   refuse("practice.fault", {},
                          {"Nothing at this press can be wrong like that: %1.", {suspect.what + ' ' + suspect.item}},
                          {"Choose among: %1.", {inputs::listedWords(known)}}));
    return std::nullopt;
}

std::optional<Act> deedIn(inputs::KeyReader& table, const std::string& what, const inputs::Press& press)
{
    Deed deed{what, table.text("item"), {}, table.flag("on").value_or(true)};
    const std::vector<Kind> kinds = kindsOf(what, press);
    if (!kinds.empty()) deed.to = table.quantity("to", kinds, std::nullopt);
    return Act(std::move(deed));
}

std::optional<Act> actIn(inputs::KeyReader& table, const std::string& what, const run::Basis& basis)
{
    if (what == "answer") {
        auto answer = answerIn(table, basis);
        return answer ? std::optional<Act>(*std::move(answer)) : std::nullopt;
    }
    if (what == "found") {
        auto suspect = suspectIn(table, *basis.inputs.press);
        return suspect ? std::optional<Act>(*std::move(suspect)) : std::nullopt;
    }
    if (what == "hint") {
        Hint hint{stepIn(table)};
        return findStep(table, hint.step, basis.plan) == nullptr ? std::nullopt : std::optional<Act>(std::move(hint));
    }
    return deedIn(table, what, *basis.inputs.press);
}

std::vector<std::string_view> views(const std::vector<std::string>& all) { return {all.begin(), all.end()}; }

}  // namespace

Result<Scenario> readScenario(std::string_view toml, std::string_view file, Findings& notes)
{
    inputs::FileNotes found(file);
    const auto root = inputs::openInput(toml, "scenario", found);
    if (!root) return root.error();
    inputs::KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    inputs::KeyReader keys = *top.table("scenario");
    Scenario scenario;
    scenario.id = keys.id("id", true);
    scenario.title = keys.text("title");
    scenario.press = keys.id("press", false);
    scenario.job = keys.id("job", false);
    scenario.roll = keys.id("roll", false);
    if (const std::string procedure = keys.text("procedure"); !procedure.empty()) scenario.procedure = procedure;
    scenario.seed = static_cast<std::uint64_t>(keys.whole("seed", 0, kMostSeed).value_or(1));
    scenario.draw = keys.whole("draw", 0, kMostDrawn).value_or(0);
    scenario.mode = keys.oneOf<Mode>("mode", kModes).value_or(Mode::Free);
    scenario.atOnce = keys.oneOf<bool>("contradictions", kShown);
    scenario.parts = keys.texts("parts");
    keys.done();
    for (inputs::KeyReader& table : top.tables("fault")) {
        Fault fault;
        fault.what = table.word("what", views(faultNames()));
        fault.item = table.text("item");
        fault.amount = table.share("amount", kAmount).value_or(usualAmount(fault.what));
        table.done();
        if (!fault.what.empty()) scenario.faults.push_back(fault);
    }
    top.done();
    found.moveTo(notes);
    return scenario;
}

Result<std::vector<Action>> readActions(std::string_view toml, std::string_view file, const run::Basis& basis,
                                        Findings& notes)
{
    inputs::FileNotes found(file);
    const auto root = inputs::openInput(toml, "actions", found);
    if (!root) return root.error();
    inputs::KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    const inputs::Press& press = *basis.inputs.press;
    std::vector<std::string> known = deedNames();
    for (const char* word : {"wait", "answer", "found", "hint"}) known.emplace_back(word);
    for (const inputs::Zone& zone : press.zones) {
        known.push_back(zone.id + "_setting");
        if (zone.needsDiameter) known.push_back(zone.id + "_diameter");
    }
    for (const inputs::Roller& roller : press.rollers)
        if (roller.kind == "nip") known.push_back(roller.id + "_nip");
    std::vector<Action> actions;
    for (inputs::KeyReader& table : top.tables("action")) {
        Action action;
        const std::string what = table.word("do", views(known));
        if (const auto after = table.get<Kind::Time>("after", kWait)) action.after = after->measure();
        if (what.empty())
            table.ignoreRest();
        else if (what != "wait")
            action.act = actIn(table, what, basis);
        table.done();
        if (what == "wait" || action.act) actions.push_back(std::move(action));
    }
    top.done();
    found.moveTo(notes);
    return actions;
}

const char* modeWord(Mode mode) noexcept { return kModes[static_cast<std::size_t>(mode)].first.data(); }

std::optional<Mode> modeFrom(std::string_view word) noexcept
{
    for (const auto& [name, mode] : kModes)
        if (name == word) return mode;
    return std::nullopt;
}

Help helpIn(Mode mode) noexcept
{
    switch (mode) {
    case Mode::Do:
    case Mode::Free: return {true, true, true};
    case Mode::TellSteps: return {false, true, true};
    case Mode::TellKeyPoints: return {false, false, true};
    case Mode::TellReasons:
    case Mode::Test: return {false, false, false};
    }
    return {};
}

bool showsAtOnce(const Scenario& scenario) noexcept { return scenario.atOnce.value_or(scenario.mode == Mode::Do); }

std::vector<Fault> faultsOf(const Scenario& scenario, const inputs::Press& press)
{
    std::vector<Fault> all = scenario.faults;
    for (Fault& drawn : drawnFaults(press, scenario.seed, static_cast<std::size_t>(scenario.draw))) {
        const bool named = std::any_of(all.begin(), all.end(), [&](const Fault& fault) {
            return isMeant({drawn.what, drawn.item}, fault.what, fault.item);
        });
        if (!named) all.push_back(std::move(drawn));
    }
    return all;
}

std::string preventedBy(const Cause& cause, const procedure::Plan& plan)
{
    for (const procedure::Step& step : plan.steps) {
        if (!cause.target.empty() && step.target == cause.target) return step.id.value;
        if (!cause.condition.empty() &&
            std::find(step.gives.begin(), step.gives.end(), cause.condition) != step.gives.end())
            return step.id.value;
    }
    return {};
}

}  // namespace taut::practice
