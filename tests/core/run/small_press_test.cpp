// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/run/small_press.h"

#include <catch2/catch.hpp>
#include <map>
#include <sstream>

#include "tests/core/people/crew.h"

namespace taut::run::small {

namespace {

using people::Role;

Step step(std::size_t place, const std::string& id, StepKind kind, const std::string& say)
{
    Step s;
    s.id = {id};
    s.place = place;
    s.kind = kind;
    s.say = say;
    s.validFor = procedure::ValidFor::Run;
    return s;
}

Quantity inBar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }

targets::Target ready(const std::string& id, targets::TargetValue value, targets::Window window = {})
{
    targets::Ready r;
    r.value = std::move(value);
    r.window = std::move(window);
    r.because.formula = "stated";
    const bool quantity = std::holds_alternative<Quantity>(r.value);
    if (quantity) r.instrument = inBar(0.1);
    return {id, quantity ? targets::Shape::Quantity : targets::Shape::Word, Text(id), std::move(r)};
}

targets::Window window(double low, double high)
{
    return {inBar(low), inBar(high), targets::Rule::Job, Text("the job")};
}

}  // namespace

namespace {

const people::test::Member& member(const std::string& id)
{
    using people::test::member;
    static const std::map<std::string, people::test::Member> all = {
        {"ana", member("ana", "Ana Wetherby", Role::Operator)},
        {"ben", member("ben", "Ben Oxley", Role::Operator)},
        {"sue", member("sue", "Sue Marlpit", Role::Supervisor)},
        {"sol", member("sol", "Sol Fenwick", Role::Supervisor)},
        {"tom", member("tom", "Tom Askrigg", Role::Trainer)},
        {"pip", member("pip", "Pip Rudd", Role::Trainee)}};
    return all.at(id);
}

}  // namespace

const people::Actor& person(const std::string& id) { return member(id).actor; }
std::shared_ptr<const people::Signer> signer(const std::string& id) { return member(id).signer; }

const std::vector<std::string>& everybody()
{
    static const std::vector<std::string> all{"ana", "ben", "sue", "sol", "tom", "pip"};
    return all;
}

Plan plan()
{
    using enum StepKind;
    Plan p;
    p.kind = "full";
    p.stages = {{"safety", "Safety", 0, 1}, {"threading", "Threading", 1, 2}, {"tension", "Tension", 3, 1}};
    p.places = {{0, "walk", "Walk round", "press", "latch at the panel", false, 0, 0},
                {1, "roll", "At the roll", "lift", "", true, 0, 0},
                {1, "splice", "At the splice table", "splice_table", "latch at the table", false, 0, 0},
                {2, "settings", "Set every zone", "panel", "", true, 0, 0}};
    const auto add = [&](Step s) -> Step& {
        p.steps.push_back(std::move(s));
        return p.steps.back();
    };
    const auto vital = [](Step& s) {
        s.vital = true;
        s.waivable = false;
    };
    add(step(0, "safety.walk.order", Confirm, "The order is at hand")).external = true;
    for (const char* item : {"a", "b"}) {
        Step& guard = add(step(0, std::string("safety.walk.guard/") + item, Confirm, "The guard is closed"));
        vital(guard);
        guard.item = item;
        guard.gives = {"guards_closed"};
    }
    Step& clear = add(step(0, "safety.walk.clear", Confirm, "Everybody is clear"));
    vital(clear);
    clear.gives = {"people_clear"};
    add(step(0, "safety.walk.done", Call, "Safety is done"));

    Step& tag = add(step(1, "threading.roll.tag", Scan, "Scan the tag"));
    tag.external = true;
    tag.uses = {"roll"};
    Step& lift = add(step(1, "threading.roll.lift", Reading, "Read the lift's gauge"));
    lift.target = "lift.pressure";
    Step& feed = add(step(1, "threading.roll.feed", Choice, "How does the roll hang"));
    feed.target = "roll.feed";
    feed.choices = {
        {"over", "Over", false, ""}, {"under", "Under", false, ""}, {"loose", "Loose", true, "Take it off"}};
    Step& mounted = add(step(1, "threading.roll.mounted", Confirm, "The roll is on the shaft"));
    mounted.vital = true;
    mounted.uses = {"roll"};
    mounted.gives = {"roll_mounted"};
    mounted.validFor = procedure::ValidFor::Roll;

    vital(add(step(2, "threading.splice.stop", Hold, "Hold the stop")));
    Step& clamp = add(step(2, "threading.splice.clamp", Confirm, "Both webs are clamped"));
    vital(clamp);
    clamp.hands = true;
    clamp.gives = {"webs_clamped"};
    Step& tape = add(step(2, "threading.splice.tape", Confirm, "Taped, clamps off"));
    tape.hands = true;
    tape.needs = {"roll_mounted", "webs_clamped"};
    tape.gives = {"web_joined"};
    tape.ends = {"webs_clamped"};
    tape.validFor = procedure::ValidFor::Shift;
    Step& draw = add(step(2, "threading.splice.draw", Motion, "Draw the splice through"));
    vital(draw);
    draw.needs = {"guards_closed", "people_clear", "stops_released", "web_joined"};
    draw.gives = {"web_moved"};
    draw.validFor = procedure::ValidFor::Power;
    add(step(2, "threading.splice.done", Call, "Threading is done"));

    for (const char* zone : {"unwind", "rewind"}) {
        Step& setting =
            add(step(3, std::string("tension.settings.setting/") + zone, Reading, "Set it and read it back"));
        setting.vital = true;
        setting.item = zone;
        setting.target = std::string("tension.") + zone + ".setting";
        setting.gives = {"tension_on"};
    }
    add(step(3, "tension.settings.strain", Reading, "Read the strain")).target = "tension.print.strain";
    add(step(3, "tension.settings.done", Call, "Tension is set"));

    for (std::size_t i = 0; i < p.steps.size(); ++i) {
        procedure::PlanPlace& place = p.places[p.steps[i].place];
        if (place.count++ == 0) place.first = i;
    }
    return p;
}

targets::Targets targets(double low, double high, bool cannot)
{
    targets::Targets t;
    if (cannot)
        t.all.push_back(
            {"lift.pressure", targets::Shape::Quantity, "lift pressure",
             targets::Cannot{refuse("lift.too_heavy", "roll", "The lift cannot carry this roll.", "Use the hoist.")}});
    else
        t.all.push_back(ready("lift.pressure", inBar(1.1)));  // recorded, not judged
    t.all.push_back(ready("roll.feed", std::string("over")));
    t.all.push_back(
        {"tension.print.strain", targets::Shape::Quantity, "strain", targets::Needs{{"substrate.modulus"}}});
    t.all.push_back(ready("tension.rewind.setting", inBar(1.0), window(0.8, 1.3)));
    t.all.push_back(ready("tension.unwind.setting", inBar((low + high) / 2), window(low, high)));
    return t;
}

Basis basis(Plan plan, targets::Targets targets)
{
    Basis b;
    b.sources = {sourceOf("small", 2, "press"), sourceOf("J-1", 1, "job"), sourceOf("paper", 1, "substrate"),
                 sourceOf("R0042", 0,
                          "format = 1\n[roll]\nid = \"R0042\"\n"
                          "tag = \"]C10199521000001018\\u001D10LOT31C\\u001D21R0042\"\nsubstrate = \"paper\"\n"),
                 sourceOf("walk", 1, "procedure")};
    b.facts = {"web_in_press"};
    b.targets = std::move(targets);
    b.plan = std::move(plan);
    return b;
}

Step& at(Plan& plan, const std::string& id)
{
    for (Step& s : plan.steps)
        if (s.id.value == id) return s;
    FAIL("no step " << id);
    return plan.steps.front();
}

const std::vector<std::string>& allStates()
{
    static const std::vector<std::string> all{"guards_closed", "people_clear", "stops_released"};
    return all;
}

const std::vector<GoodEntry>& goodEntries()
{
    static const std::vector<GoodEntry> all{
        {"safety.walk.order", "yes"},
        {"safety.walk.guard/a", "yes"},
        {"safety.walk.guard/b", "yes"},
        {"safety.walk.clear", "yes"},
        {"safety.walk.done", "yes"},
        {"threading.roll.tag", "R0042"},
        {"threading.roll.lift", "1.2 bar"},
        {"threading.roll.feed", "over"},
        {"threading.roll.mounted", "yes"},
        {"threading.splice.stop", "Ana"},
        {"threading.splice.clamp", "yes"},
        {"threading.splice.tape", "yes"},
        {"threading.splice.draw", "done"},
        {"threading.splice.done", "yes"},
        {"tension.settings.setting/unwind", "1.4 bar"},
        {"tension.settings.setting/rewind", "1.05 bar"},
        {"tension.settings.strain", "0.05 %"},
        {"tension.settings.done", "yes"},
    };
    return all;
}

Walk::Walk(Basis basis, Beginning beginning)
{
    m_stamp.utcMs = 1'795'000'000'000;
    m_stamp.offsetMinutes = 60;
    const auto began = begin(basis, beginning, m_stamp, person("ana"));
    REQUIRE(began);
    m_run = Run::fold(std::vector<Event>{*began});
}

std::optional<Finding> Walk::tryTo(const Command& command, const std::string& by)
{
    m_stamp.utcMs += 1000;
    const auto event = decide(*m_run, command, m_stamp, person(by.empty() ? m_run->operatorId() : by));
    if (!event) return event.error();
    m_run = m_run->after(*event);
    return std::nullopt;
}

void Walk::must(const Command& command, const std::string& by)
{
    const auto refused = tryTo(command, by);
    if (refused) FAIL(refused->code << " " << refused->subject << ": " << refused->text.source);
}

std::string Walk::codeOf(const Command& command, const std::string& by)
{
    const auto refused = tryTo(command, by);
    return refused ? refused->code : "";
}

void Walk::answer(const std::string& id, const std::string& by)
{
    const Step* s = m_run->plan().find({id});
    REQUIRE(s != nullptr);
    if (const auto closed = closedBecause(*m_run, {id}); closed && closed->code == "gate.stop_held")
        while (!m_run->heldStops().empty()) must(GiveUpStop{m_run->heldStops().front().holder}, by);
    if (s->hands && !has("stop_held")) must(HoldStop{"Ana", "latch at the table"}, by);
    for (const GoodEntry& e : goodEntries())
        if (e.step == id)
            must(Answer{{id}, e.entered, s->kind == StepKind::Motion ? allStates() : std::vector<std::string>{}}, by);
}

void Walk::upTo(const std::string& id, const std::string& by)
{
    for (const GoodEntry& e : goodEntries()) {
        if (e.step == id) return;
        if (m_run->plan().find({e.step}) != nullptr && isOpen(state(e.step))) answer(e.step, by);
    }
}

std::string Walk::closed(const std::string& id) const
{
    const auto why = closedBecause(*m_run, {id});
    return why ? why->code : "";
}

std::string pictureOf(const Run& run)
{
    std::ostringstream out;
    out << static_cast<int>(run.phase()) << ' ' << run.operatorId() << ' ' << run.operatorName() << ' '
        << run.deviations() << ' ' << run.stageInWork() << ' ' << run.sources().roll.sha256 << '\n';
    if (run.presentDiameter()) out << run.presentDiameter()->si() << '\n';
    for (const Event& e : run.events()) out << e.json() << '\n';
    for (std::size_t i = 0; i < run.plan().stages.size(); ++i) out << static_cast<int>(run.stageState(i)) << ' ';
    for (const Step& s : run.plan().steps) {
        const StepStanding st = run.standing(s.id);
        out << '\n'
            << s.id.value << ' ' << stateWord(st.state) << ' ' << st.n << ' ' << st.since << ' ' << st.by << ' '
            << st.at << ' ' << st.skipReason << ' ' << (st.answer ? st.answer->entered : "-") << ' '
            << (st.deviation ? st.deviation->reason : "-");
        const auto closed = closedBecause(run, s.id);
        out << ' ' << (closed ? closed->code : "free");
    }
    out << '\n';
    for (const std::string& c : run.conditions()) out << c << ' ';
    for (const HeldStop& h : run.heldStops()) out << h.holder << '/' << h.where << '/' << h.before << ' ';
    const auto next = run.next();
    out << (next ? next->value : "-");
    return out.str();
}

}  // namespace taut::run::small

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

TEST_CASE("the small press is walked from its first step to a signed run")
{
    Walk walk;
    CHECK(walk.run().operatorName() == "Ana Wetherby");
    for (const GoodEntry& e : goodEntries()) {
        INFO(e.step);
        REQUIRE(walk.run().next() == StepId{e.step});
        walk.answer(e.step);
        CHECK(walk.state(e.step) == StepState::Answered);
    }
    CHECK(walk.run().openSteps().empty());
    CHECK_FALSE(walk.run().next());
    walk.must(SignOff{"two rolls left"});
    CHECK(walk.run().phase() == Phase::Completed);
    CHECK(walk.run().deviations() == 0);
    for (std::size_t i = 0; i < 3; ++i) CHECK(walk.run().stageState(i) == StageState::Done);
}

TEST_CASE("the same events folded at once give the same run as one after the other")
{
    Walk walk;
    for (const GoodEntry& e : goodEntries()) {
        walk.answer(e.step);
        REQUIRE(pictureOf(walk.refolded()) == pictureOf(walk.run()));
    }
}
