// SPDX-License-Identifier: GPL-3.0-or-later
// All six stages of one demo job on each press, from the sign-in to the seal, with one hand: by mouse alone, and by
// keyboard alone.
#include <catch2/catch.hpp>

#include <iostream>

#include <QAbstractButton>

#include "core/logbook/logbook.h"
#include "core/seal/document.h"
#include "tests/app/window/crew_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::hands;

namespace {

/// How long so many touches take somebody in a hurry who knows what comes next: a touch a second, two keys of a pad a
/// second, what is held down 0.8 s longer (common practice, no source).
double secondsOf(const Hand::Touches& touches)
{
    const double seconds = touches.others + 0.5 * touches.keys + 1.8 * touches.holds;
    std::cout << "touches of a whole run: " << touches.others << ", held " << touches.holds << ", keys " << touches.keys
              << ": " << seconds << " s\n";
    return seconds;
}

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
    if (way == Way::Mouse) CHECK(secondsOf(crew.hand.touches()) < 6 * 60);
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
