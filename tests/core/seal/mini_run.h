// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "core/base/file.h"
#include "core/run/decide.h"
#include "core/units/unit.h"

// A short procedure on the demo shop's north press, for tests of documents and stores: real target sets, real plans,
// each kind of step that matters to a record.
namespace taut::run::mini {

inline constexpr const char* kProcedure = R"toml(format = 1
[procedure]
id = "mini"
title = "Mini"
edition = 1
revised = "2026-11-25"
language = "en"
purpose = "Short enough to be walked many times"

[[stage]]
id = "safety"
title = "Safety"
  [[stage.place]]
  id = "walk"
  title = "Walk round"
  at = "press"
  style = "read_do"
    [[stage.place.step]]
    id = "clear"
    kind = "confirm"
    vital = true
    waivable = false
    say = "Everybody is out and no stop is latched"
    why = "A nip takes a hand."
    gives = ["people_clear", "stops_released"]
    [[stage.place.step]]
    id = "guard"
    for_each = "guard"
    kind = "confirm"
    vital = true
    waivable = false
    say = "{guard} is closed"
    why = "A nip takes a hand."
    gives = ["guards_closed"]
    [[stage.place.step]]
    id = "done"
    kind = "call"
    say = "Walked"

[[stage]]
id = "set"
title = "Set"
  [[stage.place]]
  id = "lift"
  title = "At the lift"
  at = "lift"
  style = "read_do"
    [[stage.place.step]]
    id = "pressure"
    kind = "reading"
    waivable = false
    target = "lift.pressure"
    control = "lift_pressure"
    uses = ["roll"]
    say = "Set {control} to {target}"
    [[stage.place.step]]
    id = "setting"
    for_each = "zone"
    unless = ["zone_draw"]
    kind = "reading"
    target = "tension.{zone}.setting"
    control = "{zone}_setting"
    uses = ["roll"]
    say = "{zone}: set {control} to {target}"
    [[stage.place.step]]
    id = "seen"
    kind = "choice"
    say = "How does the web look?"
    choices = [{ word = "good", say = "Good" }, { word = "bad", say = "Bad", stops = true, remedy = "Mend it" }]
    [[stage.place.step]]
    id = "done"
    kind = "call"
    say = "Set"
)toml";

inline std::string resource(const std::string& name)
{
    auto text = readFile(std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources" / name);
    if (!text) throw std::runtime_error("no resource " + name);
    return *text;
}
inline std::string rollText(const std::string& id) { return resource("demo/rolls/" + id + ".toml"); }
inline Sources sources()
{
    return {sourceOf("north", 1, resource("presses/north.toml")),
            sourceOf("J-2101", 1, resource("demo/jobs/quince-jelly.toml")),
            sourceOf("paper-label-80", 1, resource("substrates.toml")), sourceOf("R0041", 0, rollText("R0041")),
            sourceOf("mini", 1, kProcedure)};
}

/// The roll R0041 as it would be with another diameter and id.
inline std::string otherRoll(const std::string& id, const std::string& diameter)
{
    std::string text = rollText("R0041");
    const auto put = [&](const std::string& from, const std::string& to) {
        const std::size_t at = text.find(from);
        if (at == std::string::npos) throw std::runtime_error("not in the roll: " + from);
        text.replace(at, from.size(), to);
    };
    put("tag = ", "# tag = ");
    put("id = \"R0041\"", "id = \"" + id + "\"");
    put("outer_diameter = \"500 mm\"", "outer_diameter = \"" + diameter + "\"");
    put("length = ", "# length = ");
    return text;
}

/// An entry with which this step can be closed: a reading in the middle of its window.
inline std::string entryFor(const Run& run, const procedure::Step& step)
{
    using procedure::StepKind;
    if (step.kind == StepKind::Choice) return step.choices.front().word;
    if (step.kind != StepKind::Reading) return "yes";
    const targets::Target* target = run.targets().find(step.target);
    if (target == nullptr || target->quantity() == nullptr) throw std::runtime_error("no target for " + step.id.value);
    const targets::Window& window = target->ready()->window;
    const double value =
        window.low && window.high ? (window.low->si() + window.high->si()) / 2 : target->quantity()->si();
    return shortest(value) + " " + std::string(siUnit(target->quantity()->kind()).symbol);
}

}  // namespace taut::run::mini
