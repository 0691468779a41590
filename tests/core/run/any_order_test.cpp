// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <random>

#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;

// Whatever anybody sends in whatever order, these hold. Commands are drawn at random from a fixed seed; most of them
// are what a crew would do next, so that many runs get to their end. The checks look at the events alone and keep their
// own books: they ask nothing of the gates that they test.
namespace {

class Chance {
public:
    explicit Chance(unsigned seed) : m_engine(seed) {}
    /// 0 .. n-1, the same on every machine.
    std::size_t below(std::size_t n) { return m_engine() % n; }
    bool percent(std::size_t p) { return below(100) < p; }
    template <class T>
    const T& of(const std::vector<T>& all)
    {
        return all[below(all.size())];
    }

private:
    std::mt19937 m_engine;
};

const std::vector<std::string> kSafe(std::begin(kMakeSafe), std::end(kMakeSafe));

std::string anyEntry(Chance& chance)
{
    static const std::vector<std::string> all{"yes",   "no",    "done",    "Ana",     "Ben",   "over",
                                              "under", "loose", "1.4 bar", "2.5 bar", "9 bar", "R0042",
                                              "R0041", "R0047", "1 m",     ""};
    return chance.of(all);
}
std::vector<std::string> anyStates(Chance& chance)
{
    std::vector<std::string> all;
    for (const std::string& condition : procedure::allConditions())
        if (chance.percent(70)) all.push_back(condition);
    return all;
}
StepId anyStep(const Run& run, Chance& chance) { return chance.of(run.plan().steps).id; }
/// An open or outside step more often than another one.
StepId likelyStep(const Run& run, Chance& chance)
{
    const std::vector<StepId> open = run.openSteps();
    return open.empty() || chance.percent(30) ? anyStep(run, chance)
                                              : open[chance.below(std::min<std::size_t>(4, open.size()))];
}
people::Actor anybody(Chance& chance) { return small::person(chance.of(small::everybody())); }

Command anyCommand(const Run& run, Chance& chance, bool realRolls)
{
    const std::vector<std::string> holders{"Ana", "Ben"}, causes{"web_break", "wrong_roll", "other", "fun"};
    switch (chance.below(18)) {
    case 0:
    case 1: return Answer{likelyStep(run, chance), anyEntry(chance), anyStates(chance)};
    case 2: return Answer{anyStep(run, chance), anyEntry(chance), {}};
    case 3: return Correct{anyStep(run, chance), anyEntry(chance), chance.percent(80) ? "misread" : ""};
    case 4: {
        std::optional<people::Actor> second;
        if (chance.percent(70)) second = anybody(chance);
        return SkipStep{likelyStep(run, chance), "not here", second};
    }
    case 5:
    case 6: return AcceptDeviation{likelyStep(run, chance), "agreed", small::signer(anybody(chance).id().value)};
    case 7: return Note{anyStep(run, chance), "seen"};
    case 8: return HoldStop{chance.of(holders), "a latch"};
    case 9: return GiveUpStop{chance.of(holders)};
    case 10: return RepeatStage{chance.of(run.plan().stages).id, chance.of(causes)};
    case 11: return Interrupt{chance.percent(50) ? "power" : "break"};
    case 12:
        return Resume{chance.percent(80) ? kSafe : std::vector<std::string>{}, chance.percent(30), chance.percent(30)};
    case 13: return HandOver{anybody(chance)};
    case 14: return chance.percent(10) ? Command(Withdraw{"smoke"}) : Command(Return{"mended"});
    case 15: return SignOff{""};
    case 16: return chance.percent(3) ? Command(Abandon{"enough"}) : Command(Return{"mended"});
    default:
        if (!realRolls || !chance.percent(30)) return SignOff{"done"};
        if (chance.percent(50)) return MeasuredDiameter{Length::si(0.3 + 0.01 * static_cast<double>(chance.below(20)))};
        const std::vector<std::string> rolls{"R0041", "R0042", "R0047"};
        return ChangeRoll{demo::rollText(chance.of(rolls)), std::nullopt};
    }
}

/// What keeps a run going: the next step rightly answered, or whatever its phase wants.
Command helpfulCommand(const Run& run)
{
    if (run.phase() == Phase::Interrupted) return Resume{kSafe, false};
    if (run.phase() == Phase::Withdrawn) return Return{"mended"};
    const auto next = run.next();
    if (next && run.stateOf(*next) == StepState::Outside) {
        const procedure::Step& step = *run.plan().find(*next);
        return demo::rightAnswer(run, step);
    }
    return demo::nextCommand(run).value_or(Command(Note{{}, "stuck"}));
}

struct Books {
    std::vector<std::string> held;  // holders whose stop counts
    std::vector<std::string> all;   // every holder who has not given up
    bool ended = false;
    std::map<std::string, std::string> reader;  // step -> who read it last

    void hold(const std::string& who)
    {
        if (std::find(held.begin(), held.end(), who) == held.end()) held.push_back(who);
        if (std::find(all.begin(), all.end(), who) == all.end()) all.push_back(who);
    }

    void check(const Run& before, const Event& event, const Run& after)
    {
        REQUIRE_FALSE(ended);
        const Happening& what = event.happening();
        const std::string role = event.stamp().byRole;
        if (role == "trainee")
            REQUIRE((std::holds_alternative<Withdrawn>(what) || std::holds_alternative<Interrupted>(what)));
        if (const auto* e = std::get_if<Answered>(&what)) answered(before, *e, event);
        if (const auto* e = std::get_if<Deviated>(&what)) {
            const procedure::Step& step = *before.plan().find(e->step);
            REQUIRE(step.kind == procedure::StepKind::Reading);
            REQUIRE(step.waivable);
            REQUIRE(small::person(e->by).role() == people::Role::Supervisor);
            REQUIRE(e->by != reader[e->step.value]);
            REQUIRE((e->window.low || e->window.high));
        }
        if (const auto* e = std::get_if<NotApplicable>(&what)) {
            const procedure::Step& step = *before.plan().find(e->step);
            REQUIRE(step.waivable);
            REQUIRE(step.kind != procedure::StepKind::Call);
            if (step.vital) {
                REQUIRE(small::person(e->approvedBy).role() == people::Role::Supervisor);
                REQUIRE(e->approvedBy != event.stamp().by.value);
            }
        }
        if (const auto* e = std::get_if<StopHeld>(&what)) hold(e->holder);
        if (const auto* e = std::get_if<StopGivenUp>(&what)) {
            std::erase(held, e->holder);
            std::erase(all, e->holder);
        }
        if (std::holds_alternative<Interrupted>(what) || std::holds_alternative<HandedOver>(what) ||
            std::holds_alternative<Withdrawn>(what)) {
            held.clear();
            for (const std::string& condition : after.conditions()) REQUIRE_FALSE(procedure::isMachineState(condition));
        }
        if (const auto* e = std::get_if<Resumed>(&what)) REQUIRE(e->stated == kSafe);
        if (std::holds_alternative<Returned>(what)) REQUIRE(role == "supervisor");
        if (std::holds_alternative<Completed>(what)) completed(after);
        ended = std::holds_alternative<Completed>(what) || std::holds_alternative<Abandoned>(what);
    }
    void answered(const Run& before, const Answered& e, const Event& event)
    {
        const procedure::Step& step = *before.plan().find(e.step);
        reader[e.step.value] = event.stamp().by.value;
        if (step.kind == procedure::StepKind::Motion) {
            REQUIRE(all.empty());
            for (const std::string& need : step.needs)
                if (procedure::isMachineState(need))
                    REQUIRE(std::find(e.stated.begin(), e.stated.end(), need) != e.stated.end());
        }
        if (step.hands && !e.correction && step.kind != procedure::StepKind::Hold)
            REQUIRE((!held.empty() || before.conditions().contains("locked_out")));
        if (step.kind == procedure::StepKind::Hold) hold(e.entered);
    }
    static void completed(const Run& run)
    {
        REQUIRE(run.openSteps().empty());
        for (const procedure::Step& step : run.plan().steps) {
            INFO(step.id.value);
            const StepState state = run.stateOf(step.id);
            if (!step.waivable || step.kind == procedure::StepKind::Call) REQUIRE(state == StepState::Answered);
            REQUIRE_FALSE(isOpen(state));
        }
    }
};

/// One random run; true when it was completed.
bool play(Run run, Chance& chance, std::size_t commands, bool realRolls)
{
    Books books;
    Stamp stamp;
    stamp.utcMs = run.events().back().stamp().utcMs;
    for (std::size_t i = 0; i < commands; ++i) {
        stamp.utcMs += static_cast<std::int64_t>(chance.below(120'000));
        const bool help = chance.percent(75);
        const Command command = help ? helpfulCommand(run) : anyCommand(run, chance, realRolls);
        const std::string who = help && chance.percent(90) ? (std::holds_alternative<Return>(command) ? "sol" : "ana")
                                                           : chance.of(small::everybody());
        const auto event = decide(run, command, stamp, small::person(who));
        if (!event) {
            REQUIRE_FALSE(event.error().code.empty());
            REQUIRE_FALSE(event.error().text.empty());
            continue;
        }
        const Run after = run.after(*event);
        INFO("event " << event->json().substr(0, 400));
        books.check(run, *event, after);
        run = after;
        if (chance.percent(1)) REQUIRE(small::pictureOf(Run::fold(run.events())) == small::pictureOf(run));
    }
    return run.phase() == Phase::Completed;
}

}  // namespace

TEST_CASE("no role and no order of commands finishes a run with an open step, or moves a press that somebody holds")
{
    Chance chance(20261125);
    std::size_t completed = 0;
    const Run fresh = small::Walk().run();
    for (int i = 0; i < 2000; ++i) completed += play(fresh, chance, 60, false) ? 1U : 0U;
    // Enough of them end, else nothing was tried.
    CHECK(completed > 200);
    INFO(completed << " of 2000 completed");
    SUCCEED();
}

TEST_CASE("the same holds on the demo shop's own procedure while rolls are changed")
{
    Chance chance(42);
    std::size_t completed = 0;
    const Run fresh = Run::fold(std::vector<Event>{
        demo::begun(demo::sources("north", "quince-jelly", "R0041"), {"next_roll", true, std::nullopt})});
    for (int i = 0; i < 40; ++i) completed += play(fresh, chance, 150, true) ? 1U : 0U;
    CHECK(completed > 5);
}
