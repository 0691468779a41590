// SPDX-License-Identifier: GPL-3.0-or-later
// What the press says to what is said of it: nothing is contradicted that the press does not know.
#include "core/practice/truth.h"

#include <functional>
#include <map>

#include "core/units/plain.h"
#include "tests/core/practice/basis.h"
#include "tests/core/practice/shift.h"

using namespace taut;
using namespace taut::practice;
using namespace taut::practice::shift;

namespace {

Truth now(const Shift& s, const char* condition, const char* item = "")
{
    const Verity verity = conditionNow(s.world, condition, item);
    CHECK(verity.seen.empty() == (verity.truth != Truth::Contradicted));
    return verity.truth;
}
Truth reads(const Shift& s, const char* target, Quantity said) { return readingNow(s.world, target, said).truth; }
Quantity mm(double value) { return {value / 1000, Kind::Length, "mm"}; }

}  // namespace

TEST_CASE("every condition of a procedure holds, is contradicted, or is nothing that the press knows")
{
    const std::set<std::string> unknown{"people_clear", "locked_out", "blades_covered", "stations_off"};
    Shift cold, ready;
    ready.ready();
    for (const std::string& condition : procedure::allConditions()) {
        CAPTURE(condition);
        CHECK((now(cold, condition.c_str()) == Truth::NotKnown) == unknown.contains(condition));
        CHECK((now(ready, condition.c_str()) == Truth::NotKnown) == unknown.contains(condition));
    }
    CHECK(now(cold, "no_such_condition") == Truth::NotKnown);
}

TEST_CASE("a condition is contradicted until somebody has done it, and holds from then on")
{
    Shift s;
    const auto turns = [&](const char* condition, const std::function<void()>& done, const char* item = "") {
        CAPTURE(condition);
        CHECK(now(s, condition, item) == Truth::Contradicted);
        done();
        CHECK(now(s, condition, item) == Truth::Holds);
    };
    turns("power_on", [&] { s.does({"main_disconnect"}); });
    turns("air_on", [&] { s.does({"air_supply"}); });
    turns("stops_released", [&] {
        const auto press = demo::press("north");
        for (const auto& stop : press->emergencyStops) s.does({"emergency_stop", stop.id, {}, false});
    });
    // One guard may be closed while the next stands open.
    turns(
        "guards_closed",
        [&] {
            s.does({"guard", "infeed_guard"});
        },
        "infeed_guard");
    turns("guards_closed", [&] { s.powerUp(); });
    CHECK(now(s, "lamps_parked") == Truth::Holds);
    s.does({"lamp_park", "2", {}, false});
    CHECK(now(s, "lamps_parked", "1") == Truth::Holds);
    turns("lamps_parked", [&] { s.does({"lamp_park", "2"}); });
    turns("stop_held", [&] { s.does({"hold_stop"}); });
    s.does({"hold_stop", {}, {}, false});
    turns("roll_mounted", [&] { s.hang(); });
    CHECK(now(s, "lift_lowered") == Truth::Holds);
    s.does({"mandrel_air", "unwind", {}, false});
    turns("roll_retained", [&] { s.does({"mandrel_air", "unwind"}); });
    s.does({"lead_web"});
    turns("webs_clamped", [&] { s.does({"clamp_web"}); });
    s.does({"cut_ends"});
    turns("web_joined", [&] { s.does({"tape_joint"}); });
    s.does({"trim_tails"});
    s.does({"clamp_web", {}, {}, false});
    turns("rewind_locked", [&] { s.does({"mandrel_air", "rewind"}); });
    turns("nips_closed", [&] { s.does({"infeed_nip"}); });
    s.does({"outfeed_nip"});
    turns("web_at_rewind", [&] { s.does({"tape_core"}); });
    CHECK(now(s, "tension_on", "unwind") == Truth::Contradicted);
    turns("tension_on", [&] { s.set(); });
    turns("sensors_calibrated", [&] { s.does({"guide_sensor"}); });
    CHECK(now(s, "web_moved") == Truth::Contradicted);
    turns("splice_seen", [&] { s.runs(90); });
    CHECK(now(s, "web_moved") == Truth::Holds);
    turns("stops_tested", [&] { s.does({"emergency_stop", "stop_unwind"}); });
    CHECK(now(s, "energy_released") == Truth::Contradicted);
    s.passes(5);
    CHECK(now(s, "energy_released") == Truth::Holds);
}

TEST_CASE("a stop that was pressed while the press stood was not tried, and without power nothing was")
{
    Shift s;
    s.ready();
    s.does({"emergency_stop", "stop_unwind"});
    CHECK(now(s, "stops_tested") == Truth::Contradicted);
    s.does({"emergency_stop", "stop_unwind", {}, false});
    s.does({"emergency_reset"});
    s.does({"hold_to_run"});
    s.passes(3);
    s.does({"emergency_stop", "stop_unwind"});
    CHECK(now(s, "stops_tested") == Truth::Holds);
    s.does({"main_disconnect", {}, {}, false});
    CHECK(now(s, "stops_tested") == Truth::Contradicted);
}

TEST_CASE("a reading is held against what the gauge shows, within what gauge and reader may")
{
    Shift s;
    CHECK(reads(s, "tension.unwind.setting", bar(1.39)) == Truth::Contradicted);
    s.ready();
    CHECK(reads(s, "tension.unwind.setting", bar(1.39)) == Truth::Holds);
    CHECK(reads(s, "tension.unwind.setting", bar(1.42)) == Truth::Holds);  // the gauge is good to 0.1 bar
    CHECK(reads(s, "tension.unwind.setting", bar(1.7)) == Truth::Contradicted);
    CHECK(reads(s, "tension.nowhere.setting", bar(1.39)) == Truth::NotKnown);
    CHECK(reads(s, "air.supply", bar(6.2)) == Truth::Holds);
    CHECK(reads(s, "air.supply", bar(5)) == Truth::Contradicted);
    CHECK(reads(s, "mandrel.rewind.air", bar(6.2)) == Truth::Holds);
    CHECK(reads(s, "roll.width", mm(330)) == Truth::Holds);
    CHECK(reads(s, "roll.width", mm(340)) == Truth::Contradicted);
    CHECK(reads(s, "align.centre", mm(215)) == Truth::Holds);
    CHECK(reads(s, "align.centre", mm(218)) == Truth::Contradicted);
    CHECK(reads(s, "splice.overhang", mm(0.2)) == Truth::NotKnown);
    REQUIRE(readNow(s.world, "tension.unwind.setting"));
    CHECK(readNow(s.world, "tension.unwind.setting")->si() == Approx(139000));
    CHECK_FALSE(readNow(s.world, "splice.overhang"));
}

TEST_CASE("register adjusters stand where the last job left them, until somebody sets them to their mid marks")
{
    Shift s, other({}, 8);
    CHECK(s.world.press().registers != other.world.press().registers);
    s.does({"register_along", "1", mm(-3)});
    CHECK(reads(s, "register.1.along", mm(6)) == Truth::Contradicted);
    s.does({"register_along", "1", mm(0)});
    CHECK(reads(s, "register.1.along", mm(6)) == Truth::Holds);
    CHECK(reads(s, "register.1.centre", mm(0)) == Truth::Holds);
    s.does({"register_along", "1", mm(-4)});
    CHECK(readNow(s.world, "register.1.along")->si() == Approx(0.002));
    CHECK(readNow(s.world, "register.1.centre")->si() == Approx(0.004));
    // It stands at its end and goes no further.
    s.does({"register_across", "1", mm(50)});
    CHECK(readNow(s.world, "register.1.across")->si() == Approx(0).margin(1e-9));
    CHECK(s.world.press().registers.at("1").across.si() == Approx(0.003));
    CHECK(s.world.perform({"register_along", "7", mm(0)}).error().code == "practice.deed");
}

TEST_CASE("a roll that hangs off the middle is read where it hangs, from the frame of the press")
{
    Shift s;
    s.offCentre = 0.004;
    s.ready();
    CHECK(readNow(s.world, "align.centre")->si() == Approx(0.219));
    CHECK(reads(s, "align.centre", mm(215)) == Truth::Contradicted);
}

TEST_CASE("a mislabelled roll is measured as it is, and its label is contradicted")
{
    Shift honest, lying({{"roll.mislabelled", {}, 1.15}});
    CHECK(reads(honest, "roll.diameter", mm(500)) == Truth::Holds);
    CHECK(reads(lying, "roll.diameter", mm(500)) == Truth::Contradicted);
    CHECK(reads(lying, "roll.diameter", mm(575)) == Truth::Holds);
}

TEST_CASE("low air shows on its gauge")
{
    Shift s({{"air.low", {}, 0.4}});
    s.powerUp();
    CHECK(reads(s, "air.supply", bar(6.2)) == Truth::Contradicted);
    CHECK(reads(s, "air.supply", bar(2.48)) == Truth::Holds);
}

TEST_CASE("the outer wraps are seen to be on though three of them hardly change the diameter")
{
    for (const bool forgot : {true, false}) {
        Shift s;
        if (forgot) s.left = {"strip_wraps"};
        s.ready();
        CHECK((reads(s, "strip.diameter", mm(499)) == Truth::Contradicted) == forgot);
    }
}

TEST_CASE("an answer is held against what its step gives, ends, needs of a movement, and reads or ticks")
{
    const run::Basis on = basis();
    const auto says = [&](const Shift& s, const char* id, const char* entered) {
        const procedure::Step* step = on.plan.find({id});
        INFO(id);
        REQUIRE(step != nullptr);
        return answerNow(s.world, *step, {id, entered}, {}).truth;
    };
    Shift s;
    CHECK(says(s, "safety.walk_round.all_round", "yes") == Truth::Contradicted);
    CHECK(says(s, "safety.walk_round.clear_away", "yes") == Truth::NotKnown);
    CHECK(says(s, "power_up.stations.hold", "Inka Thorsby") == Truth::Contradicted);
    s.ready();
    CHECK(says(s, "safety.walk_round.all_round", "yes") == Truth::Holds);
    // A movement says anew that guards are closed.
    s.does({"guard", "outfeed_guard", {}, false});
    CHECK(says(s, "tension.idle.idle", "done") == Truth::Contradicted);
    s.does({"guard", "outfeed_guard"});
    CHECK(says(s, "splice.table.trim", "yes") == Truth::Holds);
    // The hold is said to be given up.
    s.does({"hold_stop"});
    CHECK(says(s, "splice.through.hands_out", "yes") == Truth::Contradicted);
    s.does({"hold_stop", {}, {}, false});
    CHECK(says(s, "splice.through.hands_out", "yes") == Truth::Holds);
    CHECK(says(s, "web_guide.sensors.calibrate/web", "yes") == Truth::Contradicted);
    // Who says that it is not so is not contradicted.
    CHECK(says(s, "web_guide.sensors.calibrate/web", "no") == Truth::NotKnown);
    CHECK(says(s, "threading.lift.feed", "over") == Truth::Holds);
    CHECK(says(s, "threading.lift.feed", "under") == Truth::Contradicted);

    Shift sloppy({{"tail.left"}});
    sloppy.left = {"trim_tails"};
    sloppy.ready();
    CHECK(says(sloppy, "splice.table.trim", "yes") == Truth::Contradicted);
}
