// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/practice/world.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "tests/core/targets/demo_inputs.h"

// Somebody at the north press of the demo, by its controls alone.
namespace taut::practice::shift {

inline Quantity bar(double bars) { return {bars * 1e5, Kind::Pressure, "bar"}; }

/// The north press from cold to running, by the book but for what a test leaves out.
struct Shift {
    World world;
    std::set<std::string> left;  ///< deeds that are left out, "what" or "what item"
    double brake = 1.39, wind = 0.45, draw = 0.0005;
    std::string feed = "over";
    double offCentre = 0;
    double lift = 1.12;  ///< times the balance

    explicit Shift(std::vector<Fault> faults = {}, std::uint64_t seed = 7) : world(make(std::move(faults), seed)) {}
    static World make(std::vector<Fault> faults, std::uint64_t seed)
    {
        auto made = World::build({demo::inputs("north", "quince-jelly", "R0041"), seed, std::move(faults)});
        REQUIRE(made);
        return *std::move(made);
    }
    void does(Deed deed)
    {
        if (left.count(deed.what) != 0 || left.count(deed.what + ' ' + deed.item) != 0) return;
        const auto done = world.perform(deed);
        INFO(deed.what << ' ' << deed.item << ": " << (done ? "" : done.error().code));
        CHECK(done);
    }
    void passes(double seconds) { world.advance(Time::si(seconds)); }
    void powerUp()
    {
        does({"main_disconnect"});
        does({"air_supply"});
        const auto press = demo::press("north");
        for (const auto& stop : press->emergencyStops) does({"emergency_stop", stop.id, {}, false});
        for (const auto& guard : press->guards) does({"guard", guard.id});
        for (const char* station : {"1", "2"}) does({"lamp_park", station});
        does({"emergency_reset"});
    }
    void hang()
    {
        does({"roll_to_lift"});
        does({"lift_pressure", {}, Quantity(lift * world.liftBalance().si(), Kind::Pressure, "bar")});
        does({"lift_up"});
        passes(30);
        does({"hang_roll", feed, Quantity(offCentre, Kind::Length, "mm")});
        does({"mandrel_air", "unwind"});
        does({"lift_down"});
        does({"strip_wraps"});
    }
    void join()
    {
        does({"lead_web"});
        does({"clamp_web"});
        does({"cut_ends"});
        does({"tape_joint"});
        does({"trim_tails"});
        does({"clamp_web", {}, {}, false});
        does({"mandrel_air", "rewind"});
        does({"infeed_nip"});
        does({"outfeed_nip"});
        does({"tape_core"});
    }
    void set()
    {
        for (const char* station : {"1", "2"})
            for (const char* way : {"register_along", "register_across"})
                does({way, station, Quantity(0, Kind::Length, "mm")});
        does({"unwind_setting", {}, bar(brake)});
        does({"rewind_setting", {}, bar(wind)});
        does({"print_setting", {}, Quantity(draw, Kind::Share, "%")});
    }
    void ready()
    {
        powerUp();
        hang();
        join();
        set();
    }
    void runs(double seconds = 60)
    {
        does({"hold_to_run"});
        passes(4);
        does({"run"});
        passes(seconds);
    }
    [[nodiscard]] const Consequence* what(const std::string& code) const
    {
        const auto& all = world.consequences();
        const auto found = std::find_if(all.begin(), all.end(), [&](const auto& c) { return c.code == code; });
        return found == all.end() ? nullptr : &*found;
    }
    [[nodiscard]] bool blames(const std::string& code, const std::string& guarded) const
    {
        const Consequence* one = what(code);
        return one != nullptr && std::any_of(one->causes.begin(), one->causes.end(), [&](const Cause& c) {
                   return c.target == guarded || c.condition == guarded;
               });
    }
    [[nodiscard]] double pull(std::size_t span) const { return tensionIn(world.line().web, world.web(), span).si(); }
    [[nodiscard]] std::string all() const
    {
        std::string said;
        for (const Consequence& one : world.consequences()) said += one.code + '@' + one.where + ' ';
        return said;
    }
};

}  // namespace taut::practice::shift
