// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/remedy.h"

#include <catch2/catch.hpp>

#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

constexpr const char* kUnwind = "tension.settings.setting/unwind";

Basis withRemedies()
{
    Plan plan = small::plan();
    at(plan, kUnwind).tries = {"Open the valve from below", "Look at the needle at rest"};
    return basis(std::move(plan));
}
Walk atUnwind()
{
    Walk walk(withRemedies());
    walk.upTo(kUnwind);
    return walk;
}

}  // namespace

TEST_CASE("what helped is asked of a reading that was outside and is so no longer, once")
{
    Walk walk = atUnwind();
    CHECK(walk.codeOf(SayHelped{{kUnwind}, 1, {}}) == "gate.nothing_helped");
    walk.must(Answer{{kUnwind}, "2.50 bar", {}});
    REQUIRE(walk.state(kUnwind) == StepState::Outside);
    CHECK_FALSE(cameRight(walk.run(), {kUnwind}));
    walk.must(Answer{{kUnwind}, "2.40 bar", {}});
    walk.must(Answer{{kUnwind}, "1.40 bar", {}});
    CHECK(cameRight(walk.run()) == std::vector<StepId>{{kUnwind}});
    CHECK(walk.codeOf(SayHelped{{kUnwind}, 3, {}}) == "gate.no_remedy");
    CHECK(walk.codeOf(SayHelped{{kUnwind}, -2, {}}) == "gate.no_remedy");
    CHECK(walk.codeOf(SayHelped{{kUnwind}, 0, " - "}) == "gate.no_reason");
    CHECK(walk.codeOf(SayHelped{{"tension.settings.sing"}, 1, {}}) == "gate.no_step");
    walk.must(SayHelped{{kUnwind}, 2, {}});
    CHECK(cameRight(walk.run()).empty());
    CHECK(walk.codeOf(SayHelped{{kUnwind}, 1, {}}) == "gate.nothing_helped");
    const auto& helped = std::get<Helped>(walk.run().events().back().happening());
    CHECK(plain(remedySaid(walk.run(), helped)) == "Look at the needle at rest");
    // It answers nothing and takes nothing back.
    CHECK(walk.state(kUnwind) == StepState::Answered);
}

TEST_CASE("something else that helped is said in words")
{
    Walk walk = atUnwind();
    walk.must(Answer{{kUnwind}, "2.50 bar", {}});
    walk.must(Answer{{kUnwind}, "1.40 bar", {}});
    walk.must(SayHelped{{kUnwind}, 0, " the hose was kinked "});
    const auto& helped = std::get<Helped>(walk.run().events().back().happening());
    CHECK(plain(remedySaid(walk.run(), helped)) == "the hose was kinked");
}

TEST_CASE("that nobody knows what helped can be said, and is not asked again")
{
    Walk walk = atUnwind();
    walk.must(Answer{{kUnwind}, "2.50 bar", {}});
    walk.must(Answer{{kUnwind}, "1.40 bar", {}});
    walk.must(SayHelped{{kUnwind}, kNotKnown, {}});
    CHECK(cameRight(walk.run()).empty());
    const auto& helped = std::get<Helped>(walk.run().events().back().happening());
    CHECK(plain(remedySaid(walk.run(), helped)) == "not known");
}

TEST_CASE("nothing helped where a reading was only written down wrongly, or was accepted as it was")
{
    Walk corrected = atUnwind();
    corrected.must(Answer{{kUnwind}, "2.50 bar", {}});
    corrected.must(Correct{{kUnwind}, "1.50 bar", "read the wrong ring"});
    CHECK(cameRight(corrected.run()).empty());

    Walk accepted = atUnwind();
    accepted.must(Answer{{kUnwind}, "2.50 bar", {}});
    accepted.must(AcceptDeviation{{kUnwind}, "new brake pads", signer("sue")});
    CHECK(cameRight(accepted.run()).empty());

    Walk fine = atUnwind();
    fine.must(Answer{{kUnwind}, "1.40 bar", {}});
    CHECK(cameRight(fine.run()).empty());
}
