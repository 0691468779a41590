// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verdict/near.h"

#include <catch2/catch.hpp>

#include "core/units/plain.h"

using namespace taut;
using namespace taut::verdict;

namespace {

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }

std::string why(double reading, double u, const targets::Window& window)
{
    const auto said = whyNear(bar(reading), u * 1e5, window);
    return said ? plain(*said) : std::string();
}

}  // namespace

// ILAC-G8:09/2019, 4.2.3: with a guard band w = U nothing can be accepted where the limits are less than 2 U apart.
TEST_CASE("a reading in the middle of a window that its gauge is too coarse for says that it is the gauge")
{
    const targets::Window narrow{bar(1.0), bar(1.08), targets::Rule::Press, {}};
    CHECK(why(1.04, 0.05, narrow) == "it can be read to 0.05 bar either way, more than half of the window");
    CHECK(why(1.04, 0.04, narrow).empty());  // just fine enough: inside
    CHECK(why(1.10, 0.05, narrow).empty());  // outside says its own
}

TEST_CASE("a reading by a limit says that the limit is closer than it can be read")
{
    const targets::Window wide{bar(1.0), bar(2.0), targets::Rule::Press, {}};
    CHECK(why(1.95, 0.1, wide).find("the limit is closer than that") != std::string::npos);
    CHECK(why(1.5, 0.1, wide).empty());
    // Open at one end there is no half of it.
    const targets::Window least{bar(1.0), std::nullopt, targets::Rule::Press, {}};
    CHECK(why(1.05, 0.1, least).find("closer") != std::string::npos);
    CHECK(why(1.5, 0.1, {}).empty());  // without a window it is recorded
}
