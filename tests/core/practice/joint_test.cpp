// SPDX-License-Identifier: GPL-3.0-or-later
// How well the joint was made, what a rule laid against it shows, and what comes of it; each beside its twin.
#include <cmath>

#include "core/practice/truth.h"
#include "tests/core/practice/shift.h"

using namespace taut;
using namespace taut::practice;
using namespace taut::practice::shift;

namespace {

/// The north press with its joint made in one of the two ways, ready to run.
struct Joined : Shift {
    Joined(std::uint64_t seed, const std::string& cut, const std::string& tape, double off = 0) : Shift({}, seed)
    {
        offCentre = off;
        powerUp();
        hang();
        does({"lead_web"});
        does({"clamp_web"});
        does({"cut_ends", cut});
        does({"tape_joint", tape});
        does({"trim_tails"});
        does({"clamp_web", {}, {}, false});
        does({"mandrel_air", "rewind"});
        does({"infeed_nip"});
        does({"outfeed_nip"});
        does({"tape_core"});
        set();
    }
    [[nodiscard]] const Joint& joint() const { return world.press().joint; }
};

}  // namespace

TEST_CASE("along a rule a joint is square, close and in line, as policy asks, and by eye as the seed has it")
{
    int crooked = 0, stepped = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Joined rule(seed, "rule", "rule"), eye(seed, "eye", "eye");
        CHECK(std::abs(rule.joint().square.si()) <= 0.001);
        CHECK(std::abs(rule.joint().gap.si()) <= 0.0005);
        CHECK(std::abs(rule.joint().step.si()) <= 0.0005);
        crooked += eye.joint().square.si() > 0.001 ? 1 : 0;
        stepped += std::abs(eye.joint().step.si()) > 0.0005 ? 1 : 0;
        CHECK(Joined(seed, "eye", "eye").joint() == eye.joint());
    }
    CHECK(crooked > 6);
    CHECK(stepped > 6);
}

TEST_CASE("whoever measures a joint is held to what hands made of it, and may make it again while it lies on the table")
{
    Shift s({}, 13);
    s.powerUp();
    s.hang();
    const auto said = [&](const char* target, double millimetres) {
        return readingNow(s.world, target, Quantity(millimetres / 1000, Kind::Length, "mm")).truth;
    };
    CHECK(said("splice.square", 0) == Truth::Contradicted);
    s.does({"lead_web"});
    s.does({"clamp_web"});
    s.does({"cut_ends", "eye"});
    CHECK(readNow(s.world, "splice.square")->si() == Approx(0.008).margin(1e-4));
    CHECK(said("splice.square", 0) == Truth::Contradicted);
    CHECK(said("splice.square", 8) == Truth::Holds);
    CHECK(said("splice.gap", 0) == Truth::Contradicted);
    s.does({"tape_joint", "eye"});
    CHECK(said("splice.step", 2.6) == Truth::Holds);
    CHECK(said("splice.step", 0) == Truth::Contradicted);
    s.does({"trim_tails"});

    s.does({"cut_ends", "rule"});
    CHECK_FALSE(s.world.press().joint.taped);
    CHECK_FALSE(s.world.press().joint.trimmed);
    CHECK_FALSE(s.world.joint());
    CHECK(said("splice.square", 0) == Truth::Holds);
    s.does({"tape_joint", "rule"});
    REQUIRE(s.world.joint());
    CHECK(s.world.joint()->span == s.world.table());
    CHECK(said("splice.step", 0) == Truth::Holds);
    CHECK(s.world.hasTail());

    CHECK(s.world.perform({"cut_ends", "blindfold"}).error().code == "practice.deed");
    s.does({"clamp_web", {}, {}, false});
    CHECK(s.world.perform({"cut_ends"}).error().subject == "clamp_web");
    s.does({"mandrel_air", "rewind"});
    s.does({"infeed_nip"});
    s.does({"outfeed_nip"});
    s.does({"tape_core"});
    s.set();
    s.runs(30);
    s.does({"stop"});
    s.passes(10);
    s.does({"clamp_web"});
    CHECK(s.world.perform({"tape_joint"}).error().code == "practice.first");
}

TEST_CASE("a joint taped with a step catches by its corner in a dryer, one laid along an edge goes through")
{
    for (const bool eye : {true, false}) {
        Joined s(20, "rule", eye ? "eye" : "rule");
        s.runs(90);
        INFO(s.all());
        CHECK(s.blames("corner.caught", "splice.step") == eye);
        CHECK(s.blames("web.broke", "splice.step") == eye);
        CHECK(s.world.consequences().empty() != eye);
    }
}

TEST_CASE("a web joined with a step lies beside where it lay, behind the joint, until it has come to where it is led")
{
    Joined s(9, "rule", "eye");
    const double step = s.joint().step.si();
    REQUIRE(std::abs(step) > 0.001);
    const std::size_t at = s.world.table() + 1;
    s.does({"hold_to_run"});
    double before = 0;
    while (s.world.joint() && s.world.joint()->span <= at) {
        before = s.world.lateral().at[at];
        s.passes(0.01);
    }
    // The new web leaves the roll in the middle, so that the line has begun to go back before the joint comes.
    CHECK(before * step < 0);
    CHECK(s.world.lateral().at[at] - before == Approx(step).epsilon(0.02));
    s.does({"hold_to_run", {}, {}, false});
    s.does({"run"});
    s.passes(120);
    CHECK(std::abs(s.world.lateral().at[at]) < 0.1 * std::abs(step));
}

TEST_CASE("the short side of a crooked joint parts under a pull that a square one bears")
{
    for (const bool eye : {true, false}) {
        Joined s(13, eye ? "eye" : "rule", "rule");
        s.does({"unwind_setting", {}, bar(5.5)});
        s.does({"rewind_setting", {}, bar(2)});
        s.runs(90);
        INFO(s.all() << s.pull(3));
        CHECK(s.blames("web.broke", "splice.square") == eye);
    }
}

TEST_CASE("a roll hung far off the middle brings its web beside the old one further than it can be led")
{
    const Joined middle(13, "rule", "rule"), off(13, "rule", "rule", 0.03);
    CHECK(std::abs(middle.joint().step.si()) < 0.0005);
    CHECK(off.joint().step.si() > 0.005);
}
