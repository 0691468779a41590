// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

#include "core/targets/target.h"

// What a set of targets states, for tests: a missing target or one without a value fails the test by name.
namespace demo {

inline const taut::targets::Ready& ready(const taut::targets::Targets& t, const std::string& id)
{
    const taut::targets::Target* target = t.find(id);
    INFO(id);
    REQUIRE(target != nullptr);
    REQUIRE(target->ready() != nullptr);
    return *target->ready();
}
inline double si(const taut::targets::Targets& t, const std::string& id)
{
    return std::get<taut::Quantity>(ready(t, id).value).si();
}
inline bool noted(const taut::targets::Targets& t, const std::string& code)
{
    return std::any_of(t.findings.begin(), t.findings.end(), [&](const auto& f) { return f.code == code; });
}

}  // namespace demo
