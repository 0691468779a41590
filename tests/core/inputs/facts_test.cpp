// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <set>

#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

namespace {

using Words = std::set<std::string>;

Words facts(const std::string& press, const std::string& job, const std::string& roll, bool web = false)
{
    const std::vector<std::string> all = factsOf(demoInputs(press, job, roll), web);
    return {all.begin(), all.end()};
}

std::vector<std::string> ids(const std::vector<Item>& items)
{
    std::vector<std::string> out;
    for (const Item& i : items) out.push_back(i.id);
    return out;
}

Words factsOfItem(const std::vector<Item>& items, const std::string& id)
{
    for (const Item& i : items)
        if (i.id == id) return {i.facts.begin(), i.facts.end()};
    return {"no such item"};
}

}  // namespace

TEST_CASE("the facts of a press, a roll and a material")
{
    const Words north{
        "has_air",          "has_lift",      "air_shaft",          "has_uv",     "has_guide", "guide_centre",
        "has_splice_table", "wakes_stopped", "has_automatic_stop", "has_guards", "has_zones"};
    const Words south{"has_air",   "has_lift",           "has_uv",     "has_hot_air", "has_die",
                      "has_waste", "two_rewinds",        "has_guide",  "guide_edge",  "has_splice_table",
                      "trip_bars", "has_automatic_stop", "has_guards", "has_zones"};
    const auto with = [](Words words, const Words& more) {
        words.insert(more.begin(), more.end());
        return words;
    };
    CHECK(facts("north", "quince-jelly", "R0041") == with(north, {"feed_over", "roll_has_splices"}));
    CHECK(facts("north", "quince-jelly", "R0047", true) == with(north, {"feed_over", "web_in_press"}));
    CHECK(facts("south", "cold-brew", "R0043") == with(south, {"feed_under", "needs_adapter"}));
    CHECK(facts("south", "cold-brew", "R0044") == with(south, {"feed_over"}));
    CHECK(facts("south", "seed-window", "R0049") == with(south, {"feed_under", "sensor_clear"}));
    CHECK(facts("bare", "quince-jelly", "R0041") == Words{"feed_over", "roll_has_splices"});
}

TEST_CASE("a fact needs its inputs: nothing is guessed for what is missing")
{
    Inputs none;
    CHECK(factsOf(none, false).empty());
    CHECK(factsOf(none, true) == std::vector<std::string>{"web_in_press"});
    Roll roll = demoRoll("R0041");
    roll.winding = Winding::Unknown;
    roll.core.reset();
    CHECK_FALSE(feedFor(demoPress("north"), roll));
    const std::vector<std::string> facts = factsOf(demoInputs(demoPress("south"), demoJob("cold-brew"), roll), false);
    for (const char* fact : {"feed_over", "feed_under", "needs_adapter"})
        CHECK(std::find(facts.begin(), facts.end(), fact) == facts.end());
}

TEST_CASE("the feed that shows the right face: flip the winding, flip the feed")
{
    Roll roll = demoRoll("R0041");
    const Press north = demoPress("north"), south = demoPress("south");
    CHECK(feedFor(north, roll) == Feed::Over);
    CHECK(feedFor(south, roll) == Feed::Under);
    roll.winding = Winding::FaceIn;
    CHECK(feedFor(north, roll) == Feed::Under);
    CHECK(feedFor(south, roll) == Feed::Over);
}

TEST_CASE("items repeat in the file's order, each with its place and its facts")
{
    const Press north = demoPress("north"), south = demoPress("south"), bare = demoPress("bare");
    CHECK(ids(itemsOf(north, "zone")) == std::vector<std::string>{"unwind", "print", "rewind"});
    CHECK(ids(itemsOf(south, "zone")) == std::vector<std::string>{"unwind", "print", "rewind_1", "rewind_2", "waste"});
    CHECK(itemsOf(bare, "zone").empty());
    CHECK(ids(itemsOf(north, "guard")) ==
          std::vector<std::string>{"infeed_guard", "station_1_guard", "station_2_guard", "outfeed_guard"});
    CHECK(itemsOf(north, "guard")[1].name == "Guard of station 1");
    CHECK(itemsOf(north, "guard")[1].place == "stations");
    CHECK(ids(itemsOf(south, "emergency_stop")) == std::vector<std::string>{"stop_unwind", "stop_rewind"});
    CHECK(ids(itemsOf(north, "station")) == std::vector<std::string>{"1", "2"});
    CHECK(ids(itemsOf(north, "clamp")) == std::vector<std::string>{"roll_side", "press_side"});
    CHECK(itemsOf(bare, "clamp").empty());
    CHECK(ids(itemsOf(south, "rewind")) == std::vector<std::string>{"rewind_1", "rewind_2", "waste"});
    CHECK(itemsOf(south, "rewind")[0].place == "rewinds");
    CHECK(itemsOf(north, "rewind")[0].place == "rewind");
    CHECK(ids(itemsOf(north, "sensor")) == std::vector<std::string>{"web-operator", "web-drive"});
    CHECK(itemsOf(north, "sensor")[0].name == "operator-side sensor of the guide");
    CHECK(itemsOf(north, "sensor")[0].place == "guide");
    CHECK(ids(itemsOf(south, "sensor")) == std::vector<std::string>{"web-drive"});
    CHECK(itemsOf(south, "guide")[0].place == "unwind");
    CHECK(itemsOf(bare, "sensor").empty());
    CHECK(itemsOf(north, "weather").empty());

    CHECK(factsOfItem(itemsOf(north, "zone"), "unwind") == Words{"zone_open_loop", "zone_pneumatic", "zone_unwind"});
    CHECK(factsOfItem(itemsOf(north, "zone"), "print") == Words{"zone_draw"});
    CHECK(factsOfItem(itemsOf(north, "zone"), "rewind") == Words{"zone_open_loop", "zone_pneumatic", "zone_rewind"});
    CHECK(factsOfItem(itemsOf(south, "zone"), "unwind") == Words{"zone_dancer", "zone_particle", "zone_unwind"});
    CHECK(factsOfItem(itemsOf(south, "zone"), "rewind_1") ==
          Words{"zone_load_cell", "zone_shows_tension", "zone_servo", "zone_needs_diameter", "zone_rewind"});
    CHECK(factsOfItem(itemsOf(south, "zone"), "waste") == Words{"zone_open_loop", "zone_particle", "zone_rewind"});
    CHECK(factsOfItem(itemsOf(south, "station"), "1") == Words{"station_uv"});
    CHECK(factsOfItem(itemsOf(south, "station"), "2") == Words{"station_air"});
    CHECK(factsOfItem(itemsOf(bare, "station"), "1").empty());
    CHECK(factsOfItem(itemsOf(south, "rewind"), "waste") == Words{"rewind_waste"});
    CHECK(factsOfItem(itemsOf(south, "rewind"), "rewind_2") == Words{"rewind_product"});
    CHECK(factsOfItem(itemsOf(north, "guide"), "web") == Words{"guide_displacement", "guide_centre"});
    CHECK(factsOfItem(itemsOf(south, "guide"), "web") == Words{"guide_steering", "guide_edge"});
}

TEST_CASE("the fixed lists hold every word that can come out, each once")
{
    const Words known(allFacts().begin(), allFacts().end());
    CHECK(known.size() == allFacts().size());
    CHECK(Words(allRepetitions().begin(), allRepetitions().end()) ==
          Words{"guard", "emergency_stop", "station", "zone", "guide", "sensor", "rewind", "clamp"});
    Words seen;
    for (const char* press : {"north", "south", "bare"}) {
        for (const char* roll : {"R0041", "R0043", "R0044"}) {
            const Words some = facts(press, "quince-jelly", roll, true);
            seen.insert(some.begin(), some.end());
        }
        for (const std::string& repetition : allRepetitions())
            for (const Item& item : itemsOf(demoPress(press), repetition))
                seen.insert(item.facts.begin(), item.facts.end());
    }
    for (const std::string& fact : seen) {
        CAPTURE(fact);
        CHECK(known.count(fact) == 1);
    }
    // All but what neither press has.
    Words unseen;
    for (const std::string& fact : known)
        if (seen.count(fact) == 0) unseen.insert(fact);
    CHECK(unseen == Words{"has_infrared", "station_infrared", "sensor_clear"});
}
