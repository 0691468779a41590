// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/procedure/keys.h"
#include "core/procedure/placeholders.h"
#include "core/procedure/procedure.h"
#include "core/units/plain.h"

using namespace taut;
using namespace taut::procedure;

TEST_CASE("what a motion asks again and what nobody waives are among the conditions")
{
    const std::vector<std::string>& all = allConditions();
    int machine = 0, protective = 0;
    for (const std::string& c : all) {
        machine += isMachineState(c) ? 1 : 0;
        protective += isProtective(c) ? 1 : 0;
        CHECK(std::count(all.begin(), all.end(), c) == 1);
    }
    CHECK(machine == 6);
    CHECK(protective == 12);
    for (const char* c : {"people_clear", "guards_closed", "stops_released", "lamps_parked", "blades_covered"}) {
        CHECK(isMachineState(c));
        CHECK(isProtective(c));
    }
    for (const char* c :
         {"locked_out", "stop_held", "stops_tested", "roll_retained", "rewind_locked", "energy_released"}) {
        CHECK(isProtective(c));
        CHECK_FALSE(isMachineState(c));
    }
    CHECK_FALSE(isProtective("web_joined"));
    CHECK_FALSE(isMachineState("no_such"));
}

TEST_CASE("a role has a plain label where the profile has none")
{
    CHECK(isControlRole("hold_to_run"));
    CHECK(isControlRole("unwind_setting"));
    CHECK_FALSE(isControlRole("_setting"));
    CHECK_FALSE(isControlRole("Unwind_setting"));
    CHECK_FALSE(isControlRole("start"));
    CHECK(defaultLabel("main_disconnect") == "the main disconnect");
    CHECK(plain(defaultLabel("rewind_2_setting")) == "the rewind 2 setting");
    CHECK(defaultLabel("hold_stop") == "the isolator, locked by your site's procedure");
}

TEST_CASE("words and enumerations go both ways")
{
    for (const char* word : {"confirm", "reading", "choice", "scan", "hold", "motion", "call"}) {
        StepKind kind{};
        REQUIRE(stepKindFrom(word, kind));
        CHECK(stepKindWord(kind) == std::string(word));
    }
    for (const char* word : {"run", "roll", "shift", "power"}) {
        ValidFor validFor{};
        REQUIRE(validForFrom(word, validFor));
        CHECK(validForWord(validFor) == std::string(word));
    }
    for (const char* word : {"none", "notice", "caution", "warning", "danger"}) {
        SignalWord signal{};
        REQUIRE(signalWordFrom(word, signal));
        CHECK(signalWordWord(signal) == std::string(word));
    }
    StepKind kind{};
    CHECK_FALSE(stepKindFrom("tick", kind));
}

TEST_CASE("placeholders become arguments and the words stay the file's")
{
    const Magnitude bar{1.4e5, Kind::Pressure, "bar"};
    const Text text =
        filled("Set {control} to {target}, and {control} again", {{"control", std::string("BRAKE")}, {"target", bar}});
    CHECK(text.source == "Set %1 to %2, and %1 again");
    REQUIRE(text.args.size() == 2);
    CHECK(text.args[0] == TextArg(std::string("BRAKE")));
    CHECK(text.args[1] == TextArg(bar));
    CHECK(filled("No braces", {}) == Text("No braces"));
    CHECK(filled("An open { brace", {}) == Text("An open { brace"));
    CHECK(withItem("tension.{zone}.setting", "zone", "unwind") == "tension.unwind.setting");
    CHECK(withItem("tension.{zone}.setting", "guide", "web") == "tension.{zone}.setting");
}

TEST_CASE("a quantity in a text is said in the units of whoever reads it")
{
    const Text text = filled("within {= 0.5 mm} to either side", {});
    CHECK(text.source == "within %1 to either side");
    CHECK(plain(text, UnitSystem::Metric) == "within 0.5 mm to either side");
    CHECK(plain(text, UnitSystem::Us) == "within 19.7 mil to either side");
    // As the people of each say it.
    constexpr const char* kBoth = "within {= 0.5 mm | 0.02 in} to either side";
    CHECK(plain(filled(kBoth, {}, UnitSystem::Us), UnitSystem::Us) == "within 0.020 in to either side");
    CHECK(plain(filled(kBoth, {}), UnitSystem::Metric) == "within 0.5 mm to either side");
    const auto read = [](const char* placeholder, UnitSystem system = UnitSystem::Metric) {
        return quantityOf({true, placeholder}, system);
    };
    CHECK(read("= 1 1/4 in")->si() == Approx(0.03175));
    CHECK(read("= 0.5 mm | 0.02 in", UnitSystem::Us)->si() == Approx(0.000508));
    CHECK_FALSE(read("= 0.5 mm | half an inch", UnitSystem::Us));
    CHECK_FALSE(read("= half a millimetre"));
    CHECK_FALSE(read("= 12"));
    CHECK_FALSE(read("target"));
    CHECK_FALSE(quantityOf({false, "= 0.5 mm"}, UnitSystem::Metric));
}

TEST_CASE("the nearest word is near or none")
{
    const std::vector<std::string> known{"vital", "waivable", "valid_for"};
    CHECK(nearest("vitl", known) == "vital");
    CHECK(nearest("validfor", known) == "valid_for");
    CHECK(nearest("temperature", known).empty());
}
