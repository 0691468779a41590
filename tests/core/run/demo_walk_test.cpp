// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/run/demo_walk.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/inputs/inputs.h"
#include "core/units/plain.h"
#include "core/units/unit.h"
#include "tests/core/run/small_press.h"

namespace taut::run::demo {

namespace {

std::string text(const std::string& file)
{
    auto bytes = readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/" + file);
    REQUIRE(bytes);
    return *bytes;
}

/// In SI, which every parser of quantities reads.
std::string written(const Quantity& q) { return shortest(q.si()) + ' ' + std::string(siUnit(q.kind()).symbol); }

Stamp stampAfter(const Run& run)
{
    Stamp stamp;
    stamp.utcMs = run.events().back().stamp().utcMs + 5000;
    return stamp;
}

}  // namespace

Sources sources(const std::string& press, const std::string& job, const std::string& roll)
{
    const std::string jobText = text("demo/jobs/" + job + ".toml");
    Findings notes;
    const auto read = inputs::readJob(jobText, job, notes);
    REQUIRE(read);
    return {sourceOf(press, 1, text("presses/" + press + ".toml")), sourceOf(read->id, 1, jobText),
            sourceOf(read->substrate, 1, text("substrates.toml")), sourceOf(roll, 0, rollText(roll)),
            sourceOf("cold_start", 1, text("procedures/cold_start.toml"))};
}

std::string rollText(const std::string& roll) { return text("demo/rolls/" + roll + ".toml"); }

Answer rightAnswer(const Run& run, const procedure::Step& step)
{
    using procedure::StepKind;
    const targets::Target* target = step.target.empty() ? nullptr : run.targets().find(step.target);
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    Answer answer{step.id, "yes", {}};
    if (step.kind == StepKind::Motion) {
        answer.entered = "done";
        for (const std::string& need : step.needs)
            if (procedure::isMachineState(need)) answer.stated.push_back(need);
    }
    if (step.kind == StepKind::Hold) answer.entered = "Ana";
    if (step.kind == StepKind::Scan) answer.entered = run.sources().roll.id;
    if (step.kind == StepKind::Choice) {
        const auto* word = ready == nullptr ? nullptr : std::get_if<std::string>(&ready->value);
        for (auto choice = step.choices.rbegin(); choice != step.choices.rend(); ++choice)
            if (!choice->stops) answer.entered = choice->word;
        for (const procedure::Choice& choice : step.choices)
            if (word != nullptr && choice.word == *word) answer.entered = choice.word;
    }
    if (step.kind == StepKind::Reading) {
        answer.entered = "1 m";
        if (const Quantity* value = target == nullptr ? nullptr : target->quantity()) {
            const targets::Window& w = ready->window;
            const bool both = w.low && w.high;
            answer.entered = written(both ? Quantity((w.low->si() + w.high->si()) / 2, value->kind()) : *value);
        }
    }
    return answer;
}

std::optional<Command> nextCommand(const Run& run)
{
    const auto next = run.next();
    if (!next && !run.heldStops().empty()) return GiveUpStop{run.heldStops().front().holder};
    if (!next) return SignOff{"ready for ink"};
    const procedure::Step& step = *run.plan().find(*next);
    const auto closed = closedBecause(run, *next);
    if (!closed) return rightAnswer(run, step);
    if (closed->code == "gate.stop_held") return GiveUpStop{run.heldStops().front().holder};
    if (closed->code == "gate.stop_not_held") return HoldStop{"Ana", "the stop within reach"};
    return std::nullopt;
}

Event begun(const Sources& from, const BasisQuestion& question, const Run* parent)
{
    const auto basis = basisFor(from, question);
    if (!basis) FAIL(sentence(basis.error()));
    Stamp stamp;
    stamp.utcMs = parent == nullptr ? 1'795'000'000'000 : parent->events().back().stamp().utcMs + 60'000;
    const auto event = begin(*basis, {"run-1", "pc-1", false, question, parent}, stamp, small::person("ana"));
    if (!event) FAIL(sentence(event.error()));
    return *event;
}

Run done(const Run& run, const Command& command, const std::string& by)
{
    const auto event = decide(run, command, stampAfter(run), small::person(by));
    if (!event) FAIL(event.error().code << ' ' << sentence(event.error()));
    return run.after(*event);
}

Run handedOver(Run run)
{
    while (run.conditions().contains("roll_lifted")) {
        const auto refused = decide(run, HandOver{small::person("ben")}, stampAfter(run), small::person("ana"));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "gate.roll_lifted");
        run = done(run, *nextCommand(run));
    }
    return done(run, HandOver{small::person("ben")});
}

Run until(Run run, const procedure::StepId& step)
{
    while (run.next() && !(*run.next() == step)) {
        const auto command = nextCommand(run);
        REQUIRE(command);
        run = done(run, *command);
    }
    REQUIRE(run.next() == step);
    return run;
}

Run walked(Run run, std::string& stuck, const std::string& by)
{
    stuck.clear();
    while (run.phase() == Phase::Running) {
        const auto command = nextCommand(run);
        const auto event = command ? decide(run, *command, stampAfter(run), small::person(by))
                                   : Result<Event>(*closedBecause(run, *run.next()));
        if (!event) {
            stuck = event.error().code + ' ' + sentence(event.error());
            break;
        }
        run = run.after(*event);
    }
    return run;
}

}  // namespace taut::run::demo

using namespace taut;
using namespace taut::run;

namespace {

struct Case {
    const char* press;
    const char* job;
    const char* roll;
    const char* kind;
    bool web;
};
const Case kCases[] = {
    {"north", "quince-jelly", "R0041", "full", true},      {"north", "quince-jelly", "R0041", "full", false},
    {"south", "cold-brew", "R0048", "full", true},         {"south", "cold-brew", "R0048", "full", false},
    {"north", "quince-jelly", "R0047", "next_roll", true}, {"north", "quince-jelly", "R0041", "re_web", true},
    {"north", "quince-jelly", "R0041", "restart", true},   {"south", "cold-brew", "R0048", "next_roll", true},
    {"south", "cold-brew", "R0048", "re_web", false},      {"south", "cold-brew", "R0048", "restart", true},
};
Run fresh(const Case& c)
{
    return Run::fold(std::vector<Event>{demo::begun(demo::sources(c.press, c.job, c.roll), {c.kind, c.web, {}})});
}
std::string nameOf(const Case& c)
{
    return std::string(c.press) + ' ' + c.roll + ' ' + c.kind + (c.web ? " joined" : " empty");
}

}  // namespace

TEST_CASE("every kind of run on both presses can be walked to its end")
{
    for (const Case& c : kCases) {
        INFO(nameOf(c));
        std::string stuck;
        const Run run = demo::walked(fresh(c), stuck);
        CHECK(stuck.empty());
        CHECK(run.phase() == Phase::Completed);
        CHECK(run.openSteps().empty());
    }
}

// Everything below disturbs a run after each of its events in turn (every few of them for the longer ones) and asks
// that the crew can still finish it: no gate may lead into a corner.
namespace {

template <class Disturb>
void disturbEach(const Case& c, std::size_t every, const Disturb& disturb)
{
    Run run = fresh(c);
    while (run.phase() == Phase::Running) {
        if (run.events().size() % every == 0) {
            INFO(nameOf(c) << ", after event " << run.events().size());
            Run disturbed = disturb(run);
            std::string stuck;
            disturbed = demo::walked(disturbed, stuck, disturbed.operatorId());
            INFO("stuck: " << stuck);
            REQUIRE(disturbed.phase() == Phase::Completed);
        }
        const auto command = demo::nextCommand(run);
        REQUIRE(command);
        run = demo::done(run, *command);
    }
}

}  // namespace

TEST_CASE("a run that lost its power after any step goes on to its end")
{
    const std::vector<std::string> safe(std::begin(kMakeSafe), std::end(kMakeSafe));
    for (const Case& c : kCases)
        disturbEach(c, 5, [&](const Run& run) {
            return demo::done(demo::done(run, Interrupt{"power"}), Resume{safe, false});
        });
}

TEST_CASE("a run handed over after any step goes on to its end")
{
    for (const Case& c : {kCases[0], kCases[3], kCases[4]})
        disturbEach(c, 3, [](const Run& run) { return demo::handedOver(run); });
}

TEST_CASE("what is asked again after an interruption or a hand-over comes in the order of the plan")
{
    const std::vector<std::string> safe(std::begin(kMakeSafe), std::end(kMakeSafe));
    for (const Case& c : {kCases[0], kCases[2], kCases[4], kCases[6]}) {
        for (Run run = fresh(c); run.phase() == Phase::Running; run = demo::done(run, *demo::nextCommand(run))) {
            const auto reached = run.next();
            if (!reached) break;
            for (const bool handedOver : {false, true}) {
                if (handedOver && run.conditions().contains("roll_lifted")) continue;  // refused there
                Run again = handedOver ? demo::done(run, HandOver{small::person("ben")})
                                       : demo::done(demo::done(run, Interrupt{"power"}), Resume{safe, false});
                INFO(nameOf(c) << ", at " << reached->value << (handedOver ? ", handed over" : ", interrupted"));
                const procedure::Step* before = nullptr;
                while (again.next() != reached) {
                    const procedure::Step* asked = again.plan().find(*again.next());
                    REQUIRE((before == nullptr || before <= asked));  // steps stand in the plan's order
                    before = asked;
                    again = demo::done(again, *demo::nextCommand(again), again.operatorId());
                }
            }
        }
    }
}

TEST_CASE("a stage done again after any step leads to the end")
{
    for (const Case& c : {kCases[0], kCases[3], kCases[4], kCases[5]})
        disturbEach(c, 4, [](const Run& run) {
            std::size_t stage = run.stageInWork();
            const procedure::Plan& plan = run.plan();
            const bool begun = std::any_of(plan.steps.begin(), plan.steps.end(), [&](const procedure::Step& s) {
                return plan.stageOf(s) == stage && !isOpen(run.stateOf(s.id));
            });
            if (!begun && stage > 0) --stage;
            if (!begun && stage == run.stageInWork()) return run;
            return demo::done(run, RepeatStage{plan.stages[stage].id, "web_break"});
        });
}

TEST_CASE("a roll changed after any step leads to the end")
{
    const std::string other = demo::rollText("R0047");
    disturbEach(kCases[0], 7, [&](const Run& run) { return demo::done(run, ChangeRoll{other, std::nullopt}); });
    disturbEach(kCases[0], 11, [&](const Run& run) { return demo::done(run, MeasuredDiameter{Length::si(0.42)}); });
}

// Practice of the trade: nobody leaves while a roll hangs on the lift (common practice, no source).
TEST_CASE("a run is not handed over while a roll is lifted and not yet held, with a lift or without one")
{
    int refused = 0, allowed = 0;
    for (Run run = fresh(kCases[0]); run.phase() == Phase::Running; run = demo::done(run, *demo::nextCommand(run))) {
        const bool lifted = run.conditions().contains("roll_lifted");
        const auto handed = decide(run, HandOver{small::person("ben")}, {}, small::person("ana"));
        CHECK(static_cast<bool>(handed) == !lifted);
        ++(lifted ? refused : allowed);
        // Whoever stops in the midst of it stops: that is always allowed.
        if (lifted) CHECK(decide(run, Interrupt{"power"}, {}, small::person("ana")));
    }
    CHECK(refused >= 3);
    CHECK(allowed > 50);
}
