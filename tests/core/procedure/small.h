// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <stdexcept>
#include <string>
#include <string_view>

#include "core/procedure/lint.h"

// A procedure small enough to be read at a glance and sound in every rule, for tests that spoil one thing in it.
namespace taut::procedure::small {

inline constexpr const char* kProcedure = R"toml(format = 1
[procedure]
id = "small"
title = "Small"
edition = 1
revised = "2026-11-25"
language = "en"
purpose = "To be spoilt in one place"

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
    in = ["full", "restart"]
    say = "Everybody is out, covers are closed, no stop is latched"
    why = "A nip takes a hand."
    gives = ["people_clear", "guards_closed", "stops_released"]
    [[stage.place.step]]
    id = "guard"
    for_each = "guard"
    kind = "confirm"
    say = "{guard} is closed"
    [[stage.place.step]]
    id = "done"
    kind = "call"
    in = ["full", "restart"]
    say = "Walked"

[[stage]]
id = "set"
title = "Set"
  [[stage.place]]
  id = "table"
  title = "At the table"
  at = "splice_table"
  style = "do_confirm"
    [[stage.place.step]]
    id = "hold"
    kind = "hold"
    vital = true
    waivable = false
    control = "hold_stop"
    say = "Hold {control}: by whom?"
    why = "Hands go in."
    gives = ["stop_held"]
    [[stage.place.step]]
    id = "tape"
    kind = "confirm"
    hands = true
    unless = ["has_lift"]
    say = "Tape it"
    why = "A weak joint parts."
    caution = { word = "caution", text = "The blade cuts" }
    gives = ["web_joined"]
    [[stage.place.step]]
    id = "out"
    kind = "confirm"
    say = "Hands out, stop given up"
    ends = ["stop_held"]
    [[stage.place.step]]
    id = "setting"
    for_each = "zone"
    kind = "reading"
    target = "tension.{zone}.setting"
    control = "{zone}_setting"
    wait = "5 s"
    uses = ["roll"]
    say = "{zone}: set {control} to {target}"
    tries = ["Is the gauge at rest on zero?"]
    [[stage.place.step]]
    id = "seen"
    kind = "choice"
    at = "unwind"
    say = "How does it look?"
    choices = [{ word = "good", say = "Good" }, { word = "bad", say = "Bad", stops = true, remedy = "Mend it" }]
    [[stage.place.step]]
    id = "move"
    kind = "motion"
    waivable = false
    in = ["full", "restart"]
    control = "run"
    needs = ["guards_closed", "stops_released", "people_clear"]
    say = "Call out, look along, then {control}"
    why = "The web must move."
    gives = ["web_moved"]
    [[stage.place.step]]
    id = "done"
    kind = "call"
    in = ["full", "restart"]
    say = "Set"
)toml";

inline bool knownTarget(std::string_view id)
{
    return id == "tension.{zone}.setting" || id == "lift.pressure" || id == "roll.feed";
}
inline const Known& known()
{
    static const std::vector<std::string> facts{"has_lift", "has_air", "zone_draw"};
    static const std::vector<std::string> repetitions{"guard", "zone", "rewind"};
    static const Known known{&knownTarget, facts, repetitions};
    return known;
}

/// The small procedure with its first `from` replaced; a test whose `from` is not there is wrong.
inline std::string spoilt(std::string_view from, std::string_view to, std::string text = kProcedure)
{
    const std::size_t at = text.find(from);
    if (at == std::string::npos) throw std::logic_error("not in the small procedure: " + std::string(from));
    return text.replace(at, from.size(), to);
}

inline std::set<std::string> codesOf(const Findings& findings)
{
    std::set<std::string> codes;
    for (const Finding& f : findings) codes.insert(f.code);
    return codes;
}

}  // namespace taut::procedure::small
