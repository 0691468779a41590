// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson: deeds and answers held against each other, and what they come to.
#include "core/practice/lesson.h"
#include "core/practice/scenario_text.h"

#include "core/units/plain.h"
#include "tests/core/practice/basis.h"
#include "tests/core/practice/shift.h"

using namespace taut;
using namespace taut::practice;
using namespace taut::practice::shift;

namespace {

Lesson lesson(Scenario scenario = {})
{
    auto begun = Lesson::begin(basis(), std::move(scenario));
    REQUIRE(begun);
    return *std::move(begun);
}
void does(Lesson& l, const Act& act) { CHECK(l.perform(act)); }
void powerUp(Lesson& l, const std::string& butGuard = {})
{
    does(l, Deed{"main_disconnect"});
    does(l, Deed{"air_supply"});
    for (const auto& guard : l.basis().inputs.press->guards)
        if (guard.id != butGuard) does(l, Deed{"guard", guard.id});
}
Scenario about(std::vector<std::string> parts, bool atOnce = false)
{
    Scenario scenario;
    scenario.parts = std::move(parts);
    scenario.atOnce = atOnce;
    return scenario;
}
const Outcome* outcome(const std::vector<Outcome>& all, const std::string& step)
{
    for (const Outcome& one : all)
        if (one.step == step) return &one;
    return nullptr;
}
std::vector<Action> read(const std::string& toml, Findings& notes)
{
    const auto actions = readActions(toml, "a.toml", basis(), notes);
    REQUIRE(actions);
    return *actions;
}

}  // namespace

TEST_CASE("a tick that the press contradicts is kept with what the press showed, and its vital step is missed")
{
    Lesson l = lesson(about({"safety.walk_round"}));
    powerUp(l, "outfeed_guard");
    l.advance(Time::si(12));
    does(l, Answer{"safety.walk_round.all_round", "yes"});
    REQUIRE(l.contradictions().size() == 1);
    const Contradiction& one = l.contradictions().front();
    CHECK(one.at == Approx(12));
    CHECK(one.step == "safety.walk_round.all_round");
    CHECK(plain(one.text, UnitSystem::Metric) == "Guard at the outfeed nip stands open.");
    const Score score = l.score();
    CHECK(std::count(score.vitalMissed.begin(), score.vitalMissed.end(), one.step) == 1);
    CHECK_FALSE(score.passed());

    Lesson good = lesson(about({"safety.walk_round"}));
    powerUp(good);
    for (const Item& item : itemsOf(good.basis().plan, good.scenario().parts)) does(good, Answer{item.step, "yes"});
    CHECK(good.contradictions().empty());
    CHECK(good.score().earned == good.score().total);
    CHECK(good.score().passed());
}

TEST_CASE("what was put right counts: in full where nobody pointed it out, by half where it was shown at once")
{
    for (const bool atOnce : {true, false}) {
        Lesson l = lesson(about({"safety.walk_round"}, atOnce));
        powerUp(l, "outfeed_guard");
        does(l, Answer{"safety.walk_round.all_round", "yes"});
        does(l, Deed{"guard", "outfeed_guard"});
        does(l, Answer{"safety.walk_round.all_round", "yes"});
        const auto outcomes = l.outcomes();
        const Outcome* one = outcome(outcomes, "safety.walk_round.all_round");
        REQUIRE(one != nullptr);
        CHECK(one->fate == Fate::Done);
        CHECK(one->hinted == atOnce);
        CHECK(l.score().earned == (atOnce ? 1.5 : 3));
    }
}

TEST_CASE("a reading outside its window leaves the step open where it was set, not where it is as it is")
{
    Scenario scenario = about({"threading.lift.diameter", "power_up.switch_on.air_supply"});
    scenario.faults = {{"roll.mislabelled", {}, 1.15}};
    Lesson l = lesson(scenario);
    // The roll is larger than its label says: whoever measures it has seen it.
    does(l, Answer{"threading.lift.diameter", "575 mm"});
    does(l, Answer{"power_up.switch_on.air_supply", "6.2 bar"});  // and the valve is still shut
    const auto outcomes = l.outcomes();
    CHECK(outcome(outcomes, "threading.lift.diameter")->fate == Fate::Done);
    CHECK(outcome(outcomes, "power_up.switch_on.air_supply")->fate == Fate::Contradicted);

    Lesson wrong = lesson(about({"tension.settings"}));
    powerUp(wrong);
    does(wrong, Deed{"unwind_setting", {}, bar(3)});
    does(wrong, Answer{"tension.settings.setting/unwind", "3 bar"});
    CHECK(wrong.contradictions().empty());
    CHECK(wrong.outcomes().front().fate == Fate::Left);
}

TEST_CASE("speed never raises a score: the same answers, slower, come to the same")
{
    std::vector<Score> scores;
    for (const double wait : {0.0, 0.5, 60.0}) {
        Lesson l = lesson(about({"safety"}));
        powerUp(l, "outfeed_guard");
        for (const Item& item : itemsOf(l.basis().plan, l.scenario().parts)) {
            l.advance(Time::si(wait));
            const procedure::Step* step = l.basis().plan.find({item.step});
            does(l, Answer{item.step, step->choices.empty() ? "yes" : step->choices.front().word});
        }
        CHECK(l.contradictions().size() == 1);
        scores.push_back(l.score());
    }
    CHECK(scores[0] == scores[1]);
    CHECK(scores[0] == scores[2]);
    CHECK(scores[0].earned > 0);
}

TEST_CASE("help that was asked for shows all of a step and halves it, each pass of instruction hides what is told")
{
    CHECK(helpIn(Mode::Do) == Help{true, true, true});
    CHECK(helpIn(Mode::TellSteps) == Help{false, true, true});
    CHECK(helpIn(Mode::TellKeyPoints) == Help{false, false, true});
    CHECK(helpIn(Mode::TellReasons) == Help{false, false, false});
    CHECK(helpIn(Mode::Free) == Help{true, true, true});
    CHECK(helpIn(Mode::Test) == Help{false, false, false});
    Scenario scenario = about({"safety.people"});
    scenario.mode = Mode::Test;
    Lesson l = lesson(scenario);
    CHECK(l.helpFor("safety.people.dress") == Help{false, false, false});
    does(l, Hint{"safety.people.dress"});
    CHECK(l.helpFor("safety.people.dress") == Help{});
    CHECK(l.helpFor("safety.people.blades") == Help{false, false, false});
    does(l, Answer{"safety.people.dress", "yes"});
    CHECK(l.score().earned == 1.5);
    CHECK(l.score().hints == 1);
    CHECK(l.perform(Hint{"no.such.step"}).error().code == "practice.no_step");
    CHECK(l.perform(Answer{"safety.people.dress", "maybe"}).error().code == "answer.not_yes");
    CHECK(l.score().hints == 1);
    CHECK(l.log().size() == 4);
}

TEST_CASE("what was named as not right is held against what was seeded")
{
    Scenario scenario;
    scenario.faults = {{"guard.sticks", "infeed_guard"}, {"air.low"}};
    Lesson l = lesson(scenario);
    does(l, Suspect{"air.low", ""});
    does(l, Suspect{"tail.left", ""});
    const Detection found = l.detection();
    CHECK(found.hits == 1);
    CHECK(found.misses == 1);
    CHECK(found.falseAlarms == 1);
}

TEST_CASE("faults that are drawn follow from the seed, and a lesson is told of parts that there are not")
{
    Scenario scenario;
    scenario.draw = 2;
    scenario.seed = 41;
    Lesson once = lesson(scenario), twice = lesson(scenario);
    CHECK(once.faults().size() == 2);
    CHECK(once.faults() == twice.faults());
    CHECK(Lesson::begin(basis(), about({"threading.nowhere"})).error().code == "practice.part");
    scenario.faults = {{"guard.sticks", "no_such_guard"}};
    CHECK(Lesson::begin(basis(), scenario).error().code == "practice.fault");
}

TEST_CASE("every step of a plan is an item: vital, measured or other, in order but where it is done and confirmed")
{
    const auto plan = basis().plan;
    const auto items = itemsOf(plan);
    REQUIRE(items.size() == plan.steps.size());
    std::set<int> weights;
    for (std::size_t i = 0; i < items.size(); ++i) {
        weights.insert(items[i].weight);
        CHECK((items[i].weight == 3) == plan.steps[i].vital);
        if (i == 0) continue;
        const bool together =
            plan.steps[i].place == plan.steps[i - 1].place && plan.places[plan.steps[i].place].doConfirm;
        CHECK((items[i].rank == items[i - 1].rank) == together);
    }
    CHECK(weights == std::set<int>{1, 2, 3});
    const std::vector<std::string> parts{"splice.table"};
    for (const Item& item : itemsOf(plan, parts)) CHECK(item.step.starts_with("splice.table."));
    CHECK(isOf("splice.table.cut", "splice"));
    CHECK_FALSE(isOf("splice.table.cut", "splice.tab"));
}

TEST_CASE("a file of actions says answers as a tick, a choice or what was entered, and is told where it is wrong")
{
    Findings notes;
    const auto good = read(R"(format = 1
action = [
  { do = "answer", step = "safety.people.different_today", choice = "nothing" },
  { after = "2 s", do = "answer", step = "tension.settings.setting", item = "unwind", entered = "1.4 bar" },
  { do = "answer", step = "tension.idle.idle", tick = true },
  { do = "found", what = "guard.sticks", item = "infeed_guard" },
  { do = "hint", step = "safety.people.dress" },
  { do = "wait", after = "1 s" },
]
)",
                           notes);
    for (const Finding& note : notes) UNSCOPED_INFO(sentence(note));
    CHECK(notes.empty());
    REQUIRE(good.size() == 6);
    CHECK(std::get<Answer>(*good[0].act) == Answer{"safety.people.different_today", "nothing"});
    CHECK(std::get<Answer>(*good[1].act) == Answer{"tension.settings.setting/unwind", "1.4 bar"});
    CHECK(std::get<Answer>(*good[2].act) == Answer{"tension.idle.idle", "done"});
    CHECK(std::get<Suspect>(*good[3].act) == Suspect{"guard.sticks", "infeed_guard"});
    CHECK_FALSE(good[5].act);

    const struct {
        const char* line;
        const char* code;
    } bad[] = {
        {R"({ do = "answer", step = "safety.people.dres", tick = true })", "practice.no_step"},
        {R"({ do = "answer", step = "safety.people.different_today", choice = "all" })", "answer.not_a_choice"},
        {R"({ do = "answer", step = "tension.settings.setting", item = "unwind", entered = "1.4 m" })",
         "quantity.wrong_kind"},
        {R"({ do = "answer", step = "safety.people.dress" })", "answer.not_yes"},
        {R"({ do = "answer", step = "safety.people.dress", tick = true, enterd = "x" })", "input.unknown_key"},
        {R"({ do = "found", what = "guard.sticks", item = "no_such" })", "practice.fault"},
        {R"({ do = "hint", step = "nowhere" })", "practice.no_step"},
    };
    for (const auto& row : bad) {
        CAPTURE(row.line);
        notes.clear();
        (void)read(std::string("format = 1\naction = [\n") + row.line + "\n]\n", notes);
        REQUIRE(notes.size() == 1);
        CHECK(notes.front().code == row.code);
        CHECK(notes.front().subject.starts_with("a.toml:3"));
    }
}

TEST_CASE("a scenario says how much help is given, when contradictions are shown and what counts")
{
    Findings notes;
    const auto full = readScenario(
        "format = 1\n[scenario]\nid = \"s\"\npress = \"north\"\njob = \"J-2101\"\nroll = \"R0041\"\nseed = 41\n"
        "draw = 2\nmode = \"tell_key_points\"\ncontradictions = \"at_once\"\nparts = [\"splice\"]\n",
        "s.toml", notes);
    REQUIRE(full);
    CHECK(notes.empty());
    CHECK(full->mode == Mode::TellKeyPoints);
    CHECK(full->atOnce == std::optional(true));
    CHECK(full->draw == 2);
    CHECK(full->parts == std::vector<std::string>{"splice"});
    const auto plainOne = readScenario("format = 1\n[scenario]\nid = \"s\"\nmode = \"do\"\n", "s.toml", notes);
    CHECK(showsAtOnce(*plainOne));
    CHECK(readScenario("format = 1\n[scenario]\nid = \"s\"\n", "s.toml", notes)->mode == Mode::Free);
    // What it does not say goes by the pass in which it is gone through, and so it is written again.
    Scenario unsaid = *plainOne;
    CHECK_FALSE(unsaid.atOnce);
    CHECK_FALSE(readScenario(scenarioText(unsaid), "s.toml", notes)->atOnce);
    unsaid.mode = Mode::Test;
    CHECK_FALSE(showsAtOnce(unsaid));
    CHECK_FALSE(showsAtOnce(*readScenario("format = 1\n[scenario]\nid = \"s\"\n", "s.toml", notes)));
    for (const Mode mode : {Mode::Do, Mode::TellSteps, Mode::TellKeyPoints, Mode::TellReasons, Mode::Free, Mode::Test})
        CHECK(modeFrom(modeWord(mode)) == mode);
    CHECK_FALSE(modeFrom("exam"));
}
