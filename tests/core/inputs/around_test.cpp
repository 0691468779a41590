// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/around.h"

#include <algorithm>
#include <filesystem>

#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/inputs/form.h"

using namespace taut;
using namespace taut::inputs;

namespace {

const std::filesystem::path kResources = std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources";

std::string textOf(const char* file) { return *readFile(kResources / file); }
std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    if (at == std::string::npos) FAIL("the file has no " << from);
    return text.replace(at, from.size(), to);
}
const Finding* with(const Findings& all, const std::string& code)
{
    const auto it = std::find_if(all.begin(), all.end(), [&](const Finding& f) { return f.code == code; });
    return it == all.end() ? nullptr : &*it;
}

}  // namespace

TEST_CASE("a check that can never be told as done is told in its row", "[around]")
{
    const std::string good = textOf("presses/north.toml");
    const std::string often = replaced(good, "every = \"90 d\"\n", "");
    const Findings found = findingsAround("press", often, "north.toml", {});
    REQUIRE(found.size() == 1);
    CHECK(found[0].code == "input.check_needs");
    CHECK(found[0].severity == Severity::Warn);
    CHECK(foundAt(found[0]).path == "check[1].every");
    const std::string by = replaced(good, "step = \"power_up.tests.stop_test\"\n", "");
    const Findings other = findingsAround("press", by, "north.toml", {});
    REQUIRE(other.size() == 1);
    CHECK(foundAt(other[0]).path == "check[0].step");
    // What is there and wrong the reader tells already.
    CHECK(findingsAround("press", replaced(good, "every = \"90 d\"", "every = \"90 m\""), "north.toml", {}).empty());
}

TEST_CASE("a press that cannot be threaded is found in its own text, at the roller's row", "[around]")
{
    const std::string good = textOf("presses/north.toml");
    CHECK(findingsAround("press", good, "", {}).empty());
    const Form before = formOf("press", good);
    const auto rollers = std::find_if(before.groups.begin(), before.groups.end(),
                                      [](const FormGroup& g) { return g.name == "web.roller"; });
    REQUIRE(rollers != before.groups.end());
    // The sixth roller onto the one before it.
    std::string bad = good;
    for (const std::size_t half : {std::size_t{0}, std::size_t{1}}) {
        const TomlPath to = {std::string("web"), std::string("roller"), std::size_t{5}, std::string("at"), half};
        const auto column = std::find(rollers->keys.begin(), rollers->keys.end(), half == 0 ? "at[0]" : "at[1]");
        const auto k = static_cast<std::size_t>(column - rollers->keys.begin());
        bad = *setToml(bad, to, tomlWritten(rollers->items[4][k].said));
    }
    const Findings found = findingsAround("press", bad, "north.toml", {});
    const Finding* path = with(found, "input.no_path");
    REQUIRE(path);
    CHECK(path->severity == Severity::Stop);
    CHECK(path->subject.rfind("north.toml:", 0) == 0);
    const FoundAt at = foundAt(*path);
    CHECK((at.path == "web.roller[4]" || at.path == "web.roller[5]"));
    CHECK(at.line > 1);
    // In the form it belongs to a cell of that row.
    const Form form = formOf("press", bad);
    CHECK(stops(form.findings));
    std::size_t about = 0;
    for (const FormGroup& one : form.groups)
        for (const auto& item : one.items)
            for (const FormCell& cell : item) about += cell.findings.size();
    CHECK(about == form.findings.size());
}

TEST_CASE("an id that another definition has is refused, one's own is not", "[around]")
{
    const std::string south = textOf("presses/south.toml");
    const Around asNew{"", {"north", "south"}, {}}, asOwn{"south", {"north", "south"}, {}};
    const Findings found = findingsAround("press", south, "", asNew);
    REQUIRE(with(found, "input.id_taken"));
    CHECK(with(found, "input.id_taken")->severity == Severity::Stop);
    CHECK(foundAt(*with(found, "input.id_taken")).path == "press.id");
    CHECK(findingsAround("press", south, "", asOwn).empty());
    // Opened as one and written into another.
    CHECK(with(findingsAround("press", south, "", {"north", {"north", "south"}, {}}), "input.id_taken"));
    const std::string film = "format = 1\n[[substrate]]\nid = \"film\"\n";
    CHECK(foundAt(*with(findingsAround("substrate", film, "", {"", {"film"}, {}}), "input.id_taken")).path ==
          "substrate[0].id");
}

TEST_CASE("a job says what a run of it lacks, and a substrate that nobody knows", "[around]")
{
    const std::string good = textOf("demo/jobs/cold-brew.toml");
    const Around around{"J-2103", {"J-2103"}, {"bopp-50", "paper-label-80"}};
    CHECK(findingsAround("job", good, "", around).empty());
    const Findings unknown =
        findingsAround("job", replaced(good, "substrate = \"bopp-50\"", "substrate = \"0 m/min\""), "", around);
    REQUIRE(unknown.size() == 1);
    CHECK(unknown[0].code == "input.substrate_unknown");
    CHECK(foundAt(unknown[0]).path == "job.substrate");
    CHECK(foundAt(unknown[0]).line == 8);

    const Findings empty = findingsAround("job", "format = 1\n[job]\nid = \"new\"\ntitle = \"\"\n", "", around);
    CHECK(with(empty, "input.no_title"));
    std::vector<std::string> needs;
    for (const Finding& one : empty)
        if (one.code == "input.run_needs") needs.push_back(foundAt(one).path);
    CHECK(needs == std::vector<std::string>{"job.substrate", "job.web_width", "job.speed"});
    CHECK_FALSE(stops(empty));
    // What stands there and cannot be read is the reader's to tell, once.
    CHECK(findingsAround("job", replaced(good, "\"350 ft/min\"", "\"350 kg\""), "", around).empty());
    // A form offers the substrates that there are.
    const Form form = formOf("job", good, around);
    bool offered = false;
    for (const FormGroup& one : form.groups)
        for (const auto& item : one.items)
            for (const FormCell& cell : item) offered = offered || cell.words == around.substrates;
    CHECK(offered);
}
