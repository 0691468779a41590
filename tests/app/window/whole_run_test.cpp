// SPDX-License-Identifier: GPL-3.0-or-later
// All six stages of one demo job on each press, from the sign-in to the seal, with one hand: by mouse alone, and by
// keyboard alone.
#include <catch2/catch.hpp>

#include <QAbstractButton>

#include "core/logbook/logbook.h"
#include "core/seal/document.h"
#include "tests/app/window/crew_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::hands;

namespace {

void walkWholeRun(Way way, const Choice& choice)
{
    Crew crew(way);
    crew.signIn("p-2");
    crew.begin(choice);
    const std::size_t steps = crew.run().plan().steps.size();
    const std::string id = crew.run().id();
    crew.walkTo({});
    CHECK(crew.run().openSteps().empty());
    crew.sign(QStringLiteral("left in good order"));
    CHECK_FALSE(crew.session().run());

    const auto sealed = crew.sealedRuns();
    REQUIRE(sealed.size() == 1);
    const auto document = seal::read(sealed.front());
    REQUIRE(document);
    CHECK(sealed.front().find(id) != std::string::npos);
    CHECK(sealed.front().find("left in good order") != std::string::npos);
    CHECK(steps > 50);
    const auto verified = logbook::verify(crew.file(), {});
    REQUIRE(verified);
    CHECK(verified->findings.empty());
}

}  // namespace

TEST_CASE("by mouse alone the north press comes from the sign-in to a sealed run") { walkWholeRun(Way::Mouse, kNorth); }

TEST_CASE("by keyboard alone the north press comes from the sign-in to a sealed run")
{
    walkWholeRun(Way::Keys, kNorth);
}

TEST_CASE("by mouse alone the south press comes from the sign-in to a sealed run") { walkWholeRun(Way::Mouse, kSouth); }

TEST_CASE("by keyboard alone the south press comes from the sign-in to a sealed run")
{
    walkWholeRun(Way::Keys, kSouth);
}
