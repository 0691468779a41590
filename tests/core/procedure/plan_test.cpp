// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/procedure/plan.h"
#include "core/units/plain.h"
#include "small.h"

using namespace taut;
using namespace taut::procedure;
using namespace taut::procedure::small;

namespace {

inputs::Inputs pressWith(int guards, std::vector<std::string> zones)
{
    inputs::Press press;
    press.id = "p";
    press.unwind.emplace();
    press.unwind->roller = "reel";
    for (int i = 1; i <= guards; ++i) {
        const std::string n = std::to_string(i);
        press.guards.push_back({"g" + n, "Guard " + n, "roller " + n, ""});
    }
    for (const std::string& id : zones) {
        inputs::Zone zone;
        zone.id = id;
        zone.name = "Zone " + id;
        press.zones.push_back(zone);
    }
    press.labels = {{"run", "SLOW"}, {"a_setting", "BRAKE"}};
    inputs::Place table;
    table.id = "splice_table";
    table.holdStop = "red latch";
    press.places = {table};
    inputs::Inputs in;
    in.press = std::make_shared<inputs::Press>(press);
    return in;
}

targets::Target readyTarget(const std::string& id)
{
    targets::Ready ready;
    ready.value = Quantity(1.4e5, Kind::Pressure, "bar");
    return {id, targets::Shape::Quantity, "Setting", ready};
}

/// Zone a is ready, b lacks a key, c is none that this press has.
targets::Targets someTargets()
{
    targets::Targets t;
    t.all = {readyTarget("tension.a.setting"),
             {"tension.b.setting", targets::Shape::Quantity, "Setting", targets::Needs{{"press.zone.b.x"}}}};
    return t;
}

Plan plan(const inputs::Inputs& in, const targets::Targets& t = someTargets(), std::vector<std::string> facts = {},
          std::string_view kind = "full", const std::string& text = kProcedure)
{
    Findings lint;
    const Result<Procedure> procedure = readProcedure(text, "small.toml", known(), lint);
    REQUIRE(procedure);
    return planFor(*procedure, in, t, facts, kind);
}

std::vector<std::string> idsOf(const Plan& plan)
{
    std::vector<std::string> ids;
    for (const Step& s : plan.steps) ids.push_back(s.id.value);
    return ids;
}

}  // namespace

TEST_CASE("a step is repeated for every item and named after it")
{
    const Plan p = plan(pressWith(2, {"a", "b", "c"}));
    CHECK(idsOf(p) == std::vector<std::string>{"safety.walk.clear", "safety.walk.guard/g1", "safety.walk.guard/g2",
                                               "safety.walk.done", "set.table.hold", "set.table.tape", "set.table.out",
                                               "set.table.setting/a", "set.table.setting/b", "set.table.seen",
                                               "set.table.move", "set.table.done"});
    CHECK_FALSE(p.find({"safety.walk.guard/g1"})->lastOfItems);
    CHECK(p.find({"safety.walk.guard/g2"})->lastOfItems);
    CHECK_FALSE(p.find({"set.table.setting/a"})->lastOfItems);
    CHECK(p.find({"set.table.setting/b"})->lastOfItems);  // c is absent: its target is none of this press
    CHECK(p.find({"set.table.setting/c"}) == nullptr);
    CHECK(p.find({"safety.walk.clear"})->lastOfItems);
    CHECK(plain(p.find({"safety.walk.guard/g2"})->say) == "Guard 2 is closed");
}

TEST_CASE("labels, names and quantities are filled in and the words stay the file's")
{
    const Plan p = plan(pressWith(0, {"a", "b"}));
    const Step& a = *p.find({"set.table.setting/a"});
    CHECK(a.say.source == "%1: set %2 to %3");
    REQUIRE(a.say.args.size() == 3);
    CHECK(a.say.args[0] == TextArg(std::string("Zone a")));
    CHECK(a.say.args[1] == TextArg(std::string("BRAKE")));
    CHECK(a.say.args[2] == TextArg(Magnitude{1.4e5, Kind::Pressure, "bar"}));
    CHECK(a.target == "tension.a.setting");
    CHECK(a.control == "a_setting");
    CHECK(a.item == "a");
    CHECK(a.waitSeconds == 5);
    // no label in the profile, no value yet
    CHECK(plain(p.find({"set.table.setting/b"})->say) == "Zone b: set the b setting to the value on the sheet");
    CHECK(plain(p.find({"set.table.move"})->say) == "Call out, look along, then SLOW");
}

TEST_CASE("the stop to hold is the one of the place, else the isolator")
{
    inputs::Inputs in = pressWith(0, {});
    const Plan named = plan(in);
    CHECK(plain(named.find({"set.table.hold"})->say) == "Hold red latch: by whom?");
    CHECK(named.places[named.find({"set.table.hold"})->place].holdStop == "red latch");
    auto press = *in.press;
    press.places.clear();
    in.press = std::make_shared<inputs::Press>(press);
    const Plan bare = plan(in);
    CHECK(plain(bare.find({"set.table.hold"})->say) == "Hold the isolator, locked by your site's procedure: by whom?");
    CHECK(bare.places[bare.find({"set.table.hold"})->place].holdStop.empty());
}

TEST_CASE("facts take steps in and out")
{
    CHECK(plan(pressWith(0, {}), {}, {"has_lift"}).find({"set.table.tape"}) == nullptr);
    CHECK(plan(pressWith(0, {}), {}, {}).find({"set.table.tape"}) != nullptr);
    const std::string only = spoilt("unless = [\"has_lift\"]", "when = [\"has_lift\", \"has_air\"]");
    CHECK(plan(pressWith(0, {}), {}, {"has_lift"}, "full", only).find({"set.table.tape"}) == nullptr);
    CHECK(plan(pressWith(0, {}), {}, {"has_air", "has_lift"}, "full", only).find({"set.table.tape"}) != nullptr);
}

TEST_CASE("an item's own facts count for it alone")
{
    inputs::Inputs in = pressWith(0, {"a", "b"});
    auto press = *in.press;
    press.zones[0].control = inputs::Control::Draw;
    press.zones[1].control = inputs::Control::Dancer;
    in.press = std::make_shared<inputs::Press>(press);
    const std::string text = spoilt("uses = [\"roll\"]", "unless = [\"zone_draw\"]");
    const Plan p = plan(in, someTargets(), {}, "full", text);
    CHECK(p.find({"set.table.setting/a"}) == nullptr);
    CHECK(p.find({"set.table.setting/b"}) != nullptr);
}

TEST_CASE("a kind of run has its own steps, and what is empty vanishes")
{
    const Plan restart = plan(pressWith(2, {"a"}), someTargets(), {}, "restart");
    CHECK(restart.kind == "restart");
    CHECK(idsOf(restart) ==
          std::vector<std::string>{"safety.walk.clear", "safety.walk.done", "set.table.move", "set.table.done"});
    const Plan none = plan(pressWith(2, {"a"}), someTargets(), {}, "re_web");
    CHECK(none.stages.empty());
    CHECK(none.places.empty());
    CHECK(none.steps.empty());
}

TEST_CASE("a place that grows past nine is shown in even parts")
{
    struct Row {
        int guards;
        std::vector<std::size_t> parts;
    };
    // two steps of the place are not guards
    for (const Row& row : {Row{7, {9}}, Row{8, {5, 5}}, Row{17, {7, 6, 6}}, Row{26, {7, 7, 7, 7}}}) {
        const Plan p = plan(pressWith(row.guards, {}));
        std::vector<std::size_t> parts;
        for (std::size_t i = 0; i < p.stages[0].count; ++i) parts.push_back(p.places[i].count);
        CHECK(parts == row.parts);
        CHECK(plain(p.places[0].title) ==
              (row.parts.size() == 1 ? "Walk round" : "Walk round (1 of " + std::to_string(row.parts.size()) + ")"));
        CHECK(p.places[0].id == (row.parts.size() == 1 ? "walk" : "walk/1"));
        for (std::size_t i = 0; i < p.steps.size(); ++i) {
            const PlanPlace& place = p.places[p.steps[i].place];
            CHECK(i >= place.first);
            CHECK(i < place.first + place.count);
        }
    }
}

TEST_CASE("a call does not need a place of its own")
{
    const std::string apart = spoilt("    [[stage.place.step]]\n    id = \"done\"",
                                     "  [[stage.place]]\n  id = \"end\"\n  title = \"The end\"\n  at = \"unwind\"\n"
                                     "  style = \"read_do\"\n    [[stage.place.step]]\n    id = \"done\"");
    const Plan p = plan(pressWith(1, {}), {}, {}, "full", apart);
    CHECK(p.stages[0].count == 1);
    const Step& call = *p.find({"safety.end.done"});
    CHECK(p.places[call.place].id == "walk");
    CHECK(p.places[call.place].count == 3);
    CHECK(call.at == "press");
    // but where its place is full it keeps its own
    CHECK(plan(pressWith(8, {}), {}, {}, "full", apart).stages[0].count == 2);
}

TEST_CASE("a need that nothing in the plan gives is left out, but never what a movement asks")
{
    const std::string needing =
        spoilt("needs = [\"guards_closed\"", "needs = [\"power_on\", \"guards_closed\"",
               spoilt("gives = [\"people_clear\", \"guards_closed\"", "gives = [\"people_clear\""));
    const Plan p = plan(pressWith(0, {}), {}, {}, "full", needing);
    CHECK(p.find({"set.table.move"})->needs ==
          std::vector<std::string>{"guards_closed", "stops_released", "people_clear"});
}

TEST_CASE("where to stand is a roller of this press or one of five words")
{
    inputs::Inputs in = pressWith(1, {});
    auto press = *in.press;
    inputs::Roller reel, one;
    reel.id = "reel";
    one.id = "roller 1";
    press.rollers = {reel, one};
    in.press = std::make_shared<inputs::Press>(press);
    const Plan p = plan(in);
    CHECK(p.find({"set.table.seen"})->at == "reel");          // at = "unwind"
    CHECK(p.find({"set.table.tape"})->at == "splice_table");  // its place's
    CHECK(p.places[0].at == "press");
}

TEST_CASE("a plan reads back from JSON to an equal one")
{
    const Plan p = plan(pressWith(8, {"a", "b"}));
    const Result<Plan> back = planFrom(planJson(p));
    REQUIRE(back);
    CHECK(*back == p);
    const Result<Json> text = Json::parse(planJson(p).dump());
    REQUIRE(text);
    const Result<Plan> stored = planFrom(*text);
    REQUIRE(stored);
    CHECK(*stored == p);
}

TEST_CASE("what is no plan is refused")
{
    const Json good = planJson(plan(pressWith(1, {"a"})));
    REQUIRE(planFrom(good));
    const auto spoil = [&](const char* list, std::size_t index, const char* key, Json value) {
        Json::Array items = good[list].items();
        items.at(index).set(key, std::move(value));
        Json bad = good;
        bad.set(list, Json(items));
        return bad;
    };
    for (const Json& bad :
         {Json(), Json::object(), spoil("steps", 0, "kind", "tick"), spoil("steps", 0, "id", ""),
          spoil("steps", 0, "signal", "peril"), spoil("steps", 0, "valid_for", "week"), spoil("places", 0, "count", 99),
          spoil("places", 0, "first", -1), spoil("places", 0, "stage", 7), spoil("places", 1, "first", 0),
          spoil("stages", 0, "count", 2), spoil("stages", 0, "first", 9)}) {
        const Result<Plan> read = planFrom(bad);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "plan.broken");
    }
}
