// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"

// What a set of targets states, for tests: a missing target or one without a value fails the test by name.
namespace demo {
inline namespace stated {

inline const taut::targets::Ready& ready(const taut::targets::Targets& t, const std::string& id)
{
    const taut::targets::Target* target = t.find(id);
    INFO(id);
    REQUIRE(target != nullptr);
    REQUIRE(target->ready() != nullptr);
    return *target->ready();
}
inline const taut::targets::Cannot& cannot(const taut::targets::Targets& t, const std::string& id)
{
    const taut::targets::Target* target = t.find(id);
    INFO(id);
    REQUIRE(target != nullptr);
    const auto* no = std::get_if<taut::targets::Cannot>(&target->state);
    REQUIRE(no != nullptr);
    return *no;
}
inline double si(const taut::targets::Targets& t, const std::string& id)
{
    return std::get<taut::Quantity>(ready(t, id).value).si();
}
inline bool noted(const taut::targets::Targets& t, const std::string& code)
{
    return std::any_of(t.findings.begin(), t.findings.end(), [&](const auto& f) { return f.code == code; });
}

inline bool contains(const taut::Text& text, const char* part) { return text.source.find(part) != std::string::npos; }

/// The targets of a demo combination whose press was changed.
template <class Change>
taut::targets::Targets withPress(const char* press, const char* job, const char* roll, Change change)
{
    taut::inputs::Inputs in = inputs(press, job, roll);
    taut::inputs::Press changed = *in.press;
    change(changed);
    in.press = std::make_shared<const taut::inputs::Press>(std::move(changed));
    return taut::targets::computeTargets(in);
}
inline const taut::Finding& finding(const taut::targets::Targets& t, const std::string& code)
{
    for (const taut::Finding& f : t.findings)
        if (f.code == code) return f;
    FAIL("no finding " << code);
    return t.findings.front();
}
inline taut::inputs::Zone& zone(taut::inputs::Press& press, const std::string& id)
{
    for (taut::inputs::Zone& z : press.zones)
        if (z.id == id) return z;
    FAIL("no zone " << id);
    return press.zones.front();
}

}  // namespace stated
}  // namespace demo
