// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "tests/app/verbs/verbs_support.h"

using namespace taut;
using namespace taut::app::test;

TEST_CASE("the demo writes a history, and the other verbs read it")
{
    const Folder folder;
    const std::string file = folder / "made.logbook";
    const Ran made =
        runInside({"demo", "--history", "1y", "--runs", "30", "--short", "--seed", "7", "--logbook", file, "--json"});
    INFO(made.err);
    REQUIRE(made.exit == 0);
    CHECK(made.json()["runs"].integer() == 30);
    CHECK(made.json()["seals"].integer() > 30);
    CHECK(made.json()["from"].text().starts_with("2025-11-2"));
    CHECK(runInside({"verify", file, "--deep"}).exit == 0);
    const Ran runs = runInside({"runs", "--logbook", file, "--limit", "100", "--json"});
    REQUIRE(runs.exit == 0);
    CHECK(runs.json()["runs"].items().size() == 30);
    // A file that is there is never written over.
    const Ran again = runInside({"demo", "--history", "1y", "--runs", "30", "--short", "--logbook", file});
    CHECK(again.exit == 2);
    CHECK(again.err.find("is there already") != std::string::npos);
    CHECK(runInside({"verify", file, "--deep"}).exit == 0);
}

TEST_CASE("options of a history are refused where they say nothing")
{
    const Folder folder;
    const std::string file = folder / "made.logbook";
    const std::vector<std::vector<std::string>> wrong{
        {"demo", "--history", "2y"},
        {"demo", "--runs", "30"},
        {"demo", "--history", "2y", "--logbook", file, "--press", "north"},
        {"demo", "--history", "two", "--logbook", file},
        {"demo", "--history", "0y", "--logbook", file},
        {"demo", "--history", "2y", "--logbook", file, "--runs", "-3"},
        {"demo", "--history", "2y", "--logbook", file, "--drift", "much"},
        {"demo", "--history", "2y", "--logbook", file, "--lot", "7"},
        {"demo", "--history", "2y", "--logbook", file, "--until", "yesterday"},
        {"demo", "--history", "1y", "--logbook", file, "--runs", "99999999"},
    };
    for (const std::vector<std::string>& args : wrong) {
        CAPTURE(args);
        const Ran ran = runInside(args);
        CHECK(ran.exit == 2);
        CHECK(!ran.err.empty());
        CHECK(!std::filesystem::exists(file));
    }
}
