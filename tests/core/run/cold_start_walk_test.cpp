// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/run/decide.h"
#include "core/targets/aim.h"
#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

// The delivered procedure through the gates: a procedure that lint passes and nobody can finish would be found here.
using namespace taut;
using namespace taut::run;
using procedure::StepKind;

namespace {

struct Case {
    const char *press, *job, *substrate, *roll;
};
constexpr Case kCases[] = {{"resources/presses/north.toml", "quince-jelly", "paper-label-80", "R0041"},
                           {"resources/presses/south.toml", "cold-brew", "bopp-50", "R0048"},
                           {"resources/presses/south.toml", "cold-brew", "bopp-50", "R0043"},
                           {"tests/data/presses/bare.toml", "parcel-tag", "thermal-75", "R0045"}};

std::string text(const std::string& path)
{
    const auto read = readFile(std::string(TAUTWEB_SOURCE_DIR) + '/' + path);
    REQUIRE(read);
    return *read;
}

Sources sourcesOf(const Case& c)
{
    Sources s;
    s.press = sourceOf("press", 1, text(c.press));
    s.job = sourceOf(c.job, 1, text("resources/demo/jobs/" + std::string(c.job) + ".toml"));
    s.substrate = sourceOf(c.substrate, 1, text("resources/substrates.toml"));
    s.roll = sourceOf(c.roll, 0, text("resources/demo/rolls/" + std::string(c.roll) + ".toml"));
    s.procedure = sourceOf("cold_start", 1, text("resources/procedures/cold_start.toml"));
    return s;
}

/// What its card says to aim at; any length where the target is not known.
std::string reading(const Run& run, const procedure::Step& step)
{
    const targets::Target* target = run.targets().find(step.target);
    if (target == nullptr || target->quantity() == nullptr) return "5 mm";
    const auto aim = std::get<Quantity>(targets::aimOf(*target->ready(), run.began().units));
    if (aim.kind() == Kind::Count) return shortest(aim.si());
    if (aim.kind() == Kind::Share) return shortest(aim.si() * 100) + " %";
    return shortest(aim.si()) + ' ' + std::string(siUnit(aim.kind()).symbol);
}

std::string choice(const Run& run, const procedure::Step& step)
{
    const targets::Target* target = run.targets().find(step.target);
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    const auto* word = ready == nullptr ? nullptr : std::get_if<std::string>(&ready->value);
    return word == nullptr ? step.choices.front().word : *word;
}

Answer goodAnswer(const Run& run, const procedure::Step& step, const std::string& roll)
{
    Answer answer{step.id, "yes", {}};
    if (step.kind == StepKind::Hold) answer.entered = "Ana";
    if (step.kind == StepKind::Scan) answer.entered = roll;
    if (step.kind == StepKind::Choice) answer.entered = choice(run, step);
    if (step.kind == StepKind::Reading) answer.entered = reading(run, step);
    if (step.kind == StepKind::Motion) {
        answer.entered = "done";
        for (const std::string& need : step.needs)
            if (procedure::isMachineState(need)) answer.stated.push_back(need);
    }
    return answer;
}

void walkThrough(const Case& c, const std::string& kind, bool webInPress)
{
    const BasisQuestion question{kind, webInPress, {}};
    const auto basis = basisFor(sourcesOf(c), question);
    REQUIRE(basis);
    Stamp stamp;
    stamp.n = 1;
    stamp.utcMs = 1'790'000'000'000;
    const people::Actor& ana = small::person("ana");
    const auto began = begin(*basis, {"run-1", "pc-1", false, question, nullptr}, stamp, ana);
    REQUIRE(began);
    Run run = Run::fold(std::span(&*began, 1));
    const auto must = [&](const Command& command) {
        ++stamp.n;
        stamp.utcMs += 10'000;
        const auto event = decide(run, command, stamp, ana);
        if (!event) FAIL(sentence(event.error()));
        run = run.after(*event);
    };
    for (const procedure::Step& step : basis->plan.steps) {
        INFO(step.id.value);
        const bool out = std::find(step.ends.begin(), step.ends.end(), "stop_held") != step.ends.end();
        while (out && !run.heldStops().empty()) must(GiveUpStop{run.heldStops().front().holder});
        must(goodAnswer(run, step, c.roll));
        CHECK_FALSE(isOpen(run.standing(step.id).state));
    }
    CHECK(run.openSteps().empty());
    must(SignOff{"walked"});
    CHECK(run.phase() == Phase::Completed);
}

}  // namespace

TEST_CASE("the delivered procedure can be walked from its first step to its signature, on every press in every kind")
{
    for (const Case& c : kCases)
        for (const std::string& kind : procedure::allRunKinds())
            for (const bool web : {true, false}) {
                INFO(c.press << ' ' << c.roll << ' ' << kind << (web ? " with web" : " empty"));
                walkThrough(c, kind, web);
            }
}

// Held stops and hands: practice of the trade, no source. Two people hold; the movement waits for both.
TEST_CASE("nothing of the delivered procedure moves while anybody holds a stop")
{
    const Case& c = kCases[0];
    const BasisQuestion question{"next_roll", true, {}};
    const auto basis = basisFor(sourcesOf(c), question);
    REQUIRE(basis);
    Stamp stamp;
    stamp.n = 1;
    const people::Actor& ana = small::person("ana");
    const auto began = begin(*basis, {"run-1", "pc-1", false, question, nullptr}, stamp, ana);
    REQUIRE(began);
    Run run = Run::fold(std::span(&*began, 1));
    std::string refused;
    const auto send = [&](const Command& command) {
        ++stamp.n;
        const auto event = decide(run, command, stamp, ana);
        refused = event ? "" : event.error().code;
        if (event) run = run.after(*event);
        return bool(event);
    };
    for (const procedure::Step& step : basis->plan.steps) {
        const bool out = step.id.value == "splice.through.hands_out";
        if (out) {
            // "Everybody is out and each has given up their own stop" is not said while anybody holds one.
            REQUIRE(send(HoldStop{"Ben", "rewind"}));
            while (!run.heldStops().empty()) {
                CHECK_FALSE(send(goodAnswer(run, step, c.roll)));
                CHECK(refused == "gate.stop_held");
                REQUIRE(send(GiveUpStop{run.heldStops().front().holder}));
            }
        }
        if (step.kind != StepKind::Motion) {
            REQUIRE(send(goodAnswer(run, step, c.roll)));
            continue;
        }
        // Whoever goes in again after that holds the movement too.
        REQUIRE(send(HoldStop{"Ben", "rewind"}));
        CHECK_FALSE(send(goodAnswer(run, step, c.roll)));
        CHECK(refused == "gate.stop_held");
        REQUIRE(send(GiveUpStop{run.heldStops().front().holder}));
        CHECK(send(goodAnswer(run, step, c.roll)));
        break;
    }
}
