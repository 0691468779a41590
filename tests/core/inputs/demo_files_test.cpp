// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

TEST_CASE("every file of the demo shop reads without a finding")
{
    for (const std::string& file : demoFiles()) {
        CAPTURE(file);
        Findings notes;
        const std::string text = demoText(file);
        const std::string kind = whatIs(text);
        CAPTURE(kind);
        if (kind == "press") {
            REQUIRE(readPress(text, file, notes));
        } else if (kind == "job") {
            REQUIRE(readJob(text, file, notes));
        } else if (kind == "roll") {
            REQUIRE(readRoll(text, file, notes));
        } else {
            REQUIRE(kind == "substrates");
            REQUIRE(readSubstrates(text, file, notes));
        }
        for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
        CHECK(notes.empty());
    }
}

TEST_CASE("the demo shop has two presses, four substrates, four jobs and a roll for each job")
{
    const std::vector<std::string> files = demoFiles();
    const auto count = [&](std::string_view folder) {
        return std::count_if(files.begin(), files.end(),
                             [&](const std::string& f) { return f.find(folder) != std::string::npos; });
    };
    CHECK(count("resources/presses/") == 2);
    CHECK(count("resources/demo/jobs/") == 4);
    CHECK(count("resources/demo/rolls/") == 10);
    CHECK(demoSubstrates().size() == 4);
}
