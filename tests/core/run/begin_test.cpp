// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "core/base/crypto.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

const std::vector<std::string> kSafe(std::begin(kMakeSafe), std::end(kMakeSafe));

Walk finished()
{
    Walk walk;
    walk.upTo("");
    walk.must(SignOff{""});
    return walk;
}
std::set<std::string> carriedInto(const std::string& kind, const Run& parent)
{
    const Walk child(basis(), {"run-2", "pc-1", false, {kind, true, std::nullopt}, &parent});
    std::set<std::string> all;
    for (const Carried& c : child.run().began().carried) all.insert(c.condition);
    CHECK(child.run().conditions() == all);
    return all;
}
using Set = std::set<std::string>;

}  // namespace

TEST_CASE("a run is begun by somebody who may answer steps, and says what it began from")
{
    for (const std::string& who : everybody()) {
        const Beginning beginning{"run-7", "pc-3", true, {"re_web", false, Length::si(0.4)}, nullptr};
        const auto event = begin(basis(), beginning, {}, person(who));
        INFO(who);
        REQUIRE(static_cast<bool>(event) == (who != "pip"));
        if (!event) {
            CHECK(event.error().code == "gate.role");
            continue;
        }
        const Run run = Run::fold(std::vector<Event>{*event});
        CHECK(run.id() == "run-7");
        CHECK(run.began().workplace == "pc-3");
        CHECK(run.began().practice);
        CHECK(run.began().kind == "re_web");
        CHECK_FALSE(run.began().webInPress);
        CHECK(run.presentDiameter() == Length::si(0.4));
        CHECK(run.operatorId() == who);
        CHECK(run.phase() == Phase::Running);
        CHECK(run.conditions().empty());
        CHECK(run.openSteps().size() == run.plan().steps.size());  // nothing is pre-answered
    }
}

TEST_CASE("a child run takes over what the procedure says outlasts its parent")
{
    const Walk parent = finished();
    REQUIRE(parent.has("roll_mounted"));  // valid for a roll
    REQUIRE(parent.has("web_joined"));    // for a shift
    REQUIRE(parent.has("web_moved"));     // until the power is off
    REQUIRE(parent.has("tension_on"));    // for the run
    CHECK(carriedInto("full", parent.run()).empty());
    CHECK(carriedInto("next_roll", parent.run()) == Set{"web_joined", "web_moved"});
    CHECK(carriedInto("re_web", parent.run()) == Set{"roll_mounted", "web_joined", "web_moved"});
    CHECK(carriedInto("restart", parent.run()) == Set{"roll_mounted", "web_joined", "web_moved"});
}

TEST_CASE("what was said about the machine is never carried into another run")
{
    Plan p = plan();
    for (Step& step : p.steps) step.validFor = procedure::ValidFor::Power;
    Walk parent(basis(p));
    parent.upTo("threading.splice.draw");
    REQUIRE(parent.has("guards_closed"));
    parent.must(Abandon{"job cancelled"});
    CHECK(carriedInto("restart", parent.run()) == Set{"roll_mounted", "web_joined"});
}

TEST_CASE("a grandchild still knows how long what it took over holds")
{
    const Walk parent = finished();
    Plan small;
    small.kind = "re_web";
    small.stages = {{"only", "Only", 0, 1}};
    small.places = {{0, "only", "Only", "press", "", true, 0, 1}};
    Step call;
    call.id = {"only.only.done"};
    call.kind = StepKind::Call;
    call.say = "Done";
    small.steps = {call};
    Walk child(basis(small), {"run-2", "pc-1", false, {"re_web", true, std::nullopt}, &parent.run()});
    child.must(Answer{{"only.only.done"}, "yes", {}});
    child.must(SignOff{""});
    REQUIRE(child.has("roll_mounted"));
    CHECK(carriedInto("re_web", child.run()) == Set{"roll_mounted", "web_joined", "web_moved"});
    CHECK(carriedInto("next_roll", child.run()) == Set{"web_joined", "web_moved"});
}

TEST_CASE("a run that ended interrupted or on a withdrawn press leaves nothing to rely on")
{
    Walk cut;
    cut.upTo("tension.settings.strain");
    cut.must(Interrupt{"power"});
    cut.must(Abandon{"not today"});
    CHECK(carriedInto("restart", cut.run()).empty());
    Walk out;
    out.upTo("tension.settings.strain");
    out.must(Withdraw{"smoke"});
    out.must(Abandon{"press out of use"});
    CHECK(carriedInto("restart", out.run()).empty());
    Walk back;
    back.upTo("tension.settings.strain");
    back.must(Interrupt{"break"});
    back.must(Resume{kSafe, false});
    back.must(Abandon{"not today"});
    CHECK_FALSE(carriedInto("restart", back.run()).empty());
}

TEST_CASE("a carried condition is given up when its stage is done again")
{
    const Walk parent = finished();
    Walk child(basis(), {"run-2", "pc-1", false, {"re_web", true, std::nullopt}, &parent.run()});
    child.upTo("threading.splice.clamp");
    REQUIRE(child.has("web_joined"));
    child.must(RepeatStage{"threading", "web_break"});
    CHECK_FALSE(child.has("web_joined"));
}

TEST_CASE("a run rests on no stop that was timed from another speed than its own, but on the one of its own")
{
    // The targets of the demo shop's next roll: what a full set-up timed for the shift it does not ask again.
    const Sources from = demo::sources("north", "quince-jelly", "R0041");
    const auto next = basisFor(from, {"next_roll", true, std::nullopt});
    REQUIRE(next);
    CHECK(std::count(next->restsOn.begin(), next->restsOn.end(), "stop.trial_time") == 1);
    for (const std::string& id : next->restsOn) CHECK(next->targets.find(id) != nullptr);
    CHECK(basisFor(from, {"full", true, std::nullopt})->restsOn.empty());

    const Run full = Run::fold(std::vector<Event>{demo::begun(from, {"full", true, std::nullopt})});
    Run ended = demo::done(full, Abandon{"job cancelled"});
    Sources faster = from;
    const std::string speed = "speed = \"90 m/min\"";
    REQUIRE(faster.job.text.find(speed) != std::string::npos);
    faster.job.text.replace(faster.job.text.find(speed), speed.size(), "speed = \"60 m/min\"");
    for (const bool same : {true, false})
        for (const char* kind : {"next_roll", "re_web", "restart", "full"}) {
            INFO(kind << same);
            const auto basis = basisFor(same ? from : faster, {kind, true, std::nullopt});
            REQUIRE(basis);
            const auto event =
                begin(*basis, {"run-2", "pc-1", false, {kind, true, std::nullopt}, &ended}, {}, person("ana"));
            REQUIRE(static_cast<bool>(event) == (same || std::string(kind) == "full"));
            if (event) continue;
            CHECK(event.error().code == "gate.parent_differs");
            CHECK_FALSE(event.error().remedy.empty());
        }
}

TEST_CASE("a run continues one that has ended, on the same press")
{
    const Walk open;
    const auto refused =
        begin(basis(), {"run-2", "pc-1", false, {"restart", true, std::nullopt}, &open.run()}, {}, person("ana"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "gate.parent_open");
    const Walk parent = finished();
    Basis elsewhere = basis();
    elsewhere.sources.press.id = "other";
    const auto wrong =
        begin(elsewhere, {"run-2", "pc-1", false, {"restart", true, std::nullopt}, &parent.run()}, {}, person("ana"));
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().code == "gate.parent_press");
    Basis another = basis();
    another.sources.job.id = "J-2";
    for (const char* kind : {"next_roll", "re_web", "restart"}) {
        INFO(kind);
        const auto other =
            begin(another, {"run-2", "pc-1", false, {kind, true, std::nullopt}, &parent.run()}, {}, person("ana"));
        REQUIRE_FALSE(other);
        CHECK(other.error().code == "gate.parent_job");
    }
    CHECK(begin(another, {"run-2", "pc-1", false, {"full", true, std::nullopt}, &parent.run()}, {}, person("ana")));
    const Walk child(basis(), {"run-2", "pc-1", false, {"restart", true, std::nullopt}, &parent.run()});
    CHECK(child.run().began().parent == "run-1");
}

// FIPS 180-4, the example of a one-block message: SHA-256 of "abc".
TEST_CASE("a source is known by the SHA-256 of its text")
{
    CHECK(sourceOf("x", 3, "abc").sha256 == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sourceOf("x", 3, "abc").edition == 3);
}

TEST_CASE("a basis is computed from the bytes of its files alone")
{
    const Sources sources = demo::sources("north", "quince-jelly", "R0041");
    const auto a = basisFor(sources, {"full", true, std::nullopt});
    const auto b = basisFor(sources, {"full", true, std::nullopt});
    REQUIRE(a);
    REQUIRE(b);
    CHECK(a->targets == b->targets);
    CHECK(a->plan == b->plan);
    CHECK(a->inputs.substrate->id == sources.substrate.id);
    const auto empty = basisFor(sources, {"full", false, std::nullopt});
    REQUIRE(empty);
    CHECK_FALSE(empty->facts == a->facts);
    CHECK_FALSE(empty->plan == a->plan);
    const auto smaller = basisFor(sources, {"full", true, Length::si(0.3)});
    REQUIRE(smaller);
    CHECK_FALSE(targets::changed(a->targets, smaller->targets).empty());
    CHECK(basisFor(sources, {"next_roll", true, std::nullopt})->plan.steps.size() < a->plan.steps.size());
}

TEST_CASE("a file that cannot be used gives no basis")
{
    const Sources good = demo::sources("north", "quince-jelly", "R0041");
    Source Sources::*const files[] = {&Sources::press, &Sources::job, &Sources::substrate, &Sources::roll,
                                      &Sources::procedure};
    for (const auto file : files) {
        Sources spoilt = good;
        (spoilt.*file).text = "no TOML = = at all";
        CHECK_FALSE(basisFor(spoilt, {}));
        spoilt = good;
        (spoilt.*file).text += "\nunheard_of = 7\n";  // a key of our own format that nobody knows
        const auto refused = basisFor(spoilt, {});
        REQUIRE_FALSE(refused);
        CHECK_FALSE(refused.error().subject.empty());
    }
    Sources other = good;
    other.substrate.id = "cardboard";
    const auto missing = basisFor(other, {});
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == "basis.no_substrate");
    const auto kind = basisFor(good, {"sideways", true, std::nullopt});
    REQUIRE_FALSE(kind);
    CHECK(kind.error().code == "basis.no_kind");
}

TEST_CASE("a run is not begun with a roll that cannot work here")
{
    // R0042 is heavier than the north press can lift.
    const auto heavy = basisFor(demo::sources("north", "quince-jelly", "R0042"), {"full", true, std::nullopt});
    REQUIRE(heavy);
    const auto refused =
        begin(*heavy, {"run-8", "pc-1", false, {"full", true, std::nullopt}, nullptr}, {}, person("ana"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "gate.cannot_work");
    CHECK_FALSE(refused.error().remedy.source.empty());
}
