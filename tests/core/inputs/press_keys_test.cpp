// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

#include "tests/core/inputs/demo.h"
#include "tests/core/inputs/dump.h"
#include "tests/core/inputs/toml_text.h"

using namespace taut;
using namespace taut::inputs;

namespace {

/// Rows of tests/data/presses/NAME.values: SI numbers from GNU units 2.22, an outside referee.
std::vector<std::pair<std::string, std::string>> valuesOf(const std::string& name)
{
    std::istringstream in(demoText("tests/data/presses/" + name + ".values"));
    std::vector<std::pair<std::string, std::string>> out;
    for (std::string line; std::getline(in, line);) {
        const std::size_t tab = line.find('\t');
        if (tab != std::string::npos) out.emplace_back(line.substr(0, tab), line.substr(tab + 1));
    }
    return out;
}

bool isUnder(const std::string& key, const std::string& cut)
{
    return key == cut || key.rfind(cut + '.', 0) == 0 || key.rfind(cut + '[', 0) == 0;
}

std::string lastPart(const std::string& key) { return key.substr(key.rfind('.') + 1); }

/// Keys that may say what holds without them.
bool holdsAnyway(const std::string& key)
{
    for (const char* usual : {"press.units", "press.air", "press.wakes_stopped", "press.name", "safety.trip_bars",
                              "unwind.lift.kind", "needs_diameter", "taper.shape", "takes"})
        if (key.find(usual) != std::string::npos) return true;
    return false;
}

}  // namespace

TEST_CASE("every key of both demo presses reads to the value that GNU units gives")
{
    const auto name = GENERATE(as<std::string>{}, "north", "south");
    PressDump::Rows rows = PressDump::of(demoPress(name));
    const auto values = valuesOf(name);
    REQUIRE(values.size() > 330);
    for (const auto& [key, value] : values) {
        CAPTURE(name, key, value);
        REQUIRE(rows.count(key) == 1);
        const std::string& read = rows[key];
        if (value.front() == '"')
            CHECK(read == value.substr(1, value.size() - 2));
        else if (value == "true" || value == "false")
            CHECK(read == value);
        else
            CHECK(std::stod(read) == Approx(std::stod(value)).epsilon(1e-13));
        rows.erase(key);
    }
    // What is left was not in the file: only what stands for "not said" may be there.
    for (const auto& [key, value] : rows) {
        CAPTURE(name, key, value);
        const std::string part = lastPart(key);
        const bool unsaid = (part == "needs_diameter" && value == "false") || (part == "shape" && value == "none");
        CHECK(unsaid);
    }
}

TEST_CASE("a press cut by any one key stays readable, loses that key and nothing else")
{
    const auto name = GENERATE(as<std::string>{}, "north", "south", "bare");
    const std::string folder = name == "bare" ? "tests/data/presses/" : "resources/presses/";
    const Result<Toml> root = readToml(demoText(folder + name + ".toml"), name);
    REQUIRE(root);
    Findings none;
    const Result<Press> whole = readPress(tomlFile(*root), name, none);
    REQUIRE(whole);
    REQUIRE(none.empty());
    const PressDump::Rows before = PressDump::of(*whole);

    std::vector<std::string> keys;
    eachKey(*root, "", [&](const std::string& path, const Toml&) { keys.push_back(path); });
    REQUIRE(keys.size() > 40);
    int named = 0;
    for (const std::string& cut : keys) {
        if (cut == "press") continue;  // then it is no press file
        CAPTURE(name, cut);
        Findings notes;
        const Result<Press> press = readPress(tomlFile(without(*root, "", cut)), name, notes);
        REQUIRE(press);
        const std::string part = lastPart(cut);
        if (part == "id" || part == "number" || part == "control" || cut == "unwind.adapters[0].core") {
            // What others refer to, and what decides how a zone is read: said by name.
            CHECK(std::any_of(notes.begin(), notes.end(), [&](const Finding& f) {
                return f.code == "input.missing_key" && f.severity == Severity::Stop &&
                       f.subject.find(' ' + cut) != std::string::npos;
            }));
            ++named;
            continue;
        }
        for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
        CHECK_FALSE(stops(notes));
        CHECK(notes.size() == (cut == "format" ? 1U : 0U));
        const PressDump::Rows after = PressDump::of(*press);
        bool gone = cut == "format";
        std::vector<std::string> lost, kept;
        for (const auto& [key, value] : before) {
            const auto it = after.find(key);
            const bool same = it != after.end() && it->second == value;
            const bool follows = part == "kind" && lastPart(key) == "takes";
            if (isUnder(key, cut)) {
                gone = true;
                if (same && !holdsAnyway(key)) kept.push_back(key);
            } else if (!same && !follows) {
                lost.push_back(key);
            }
        }
        CHECK(lost == std::vector<std::string>{});
        CHECK(kept == std::vector<std::string>{});
        CHECK(gone);
    }
    CHECK(named >= 3);
}

TEST_CASE("a label for a control that no press has is named, with the role that was probably meant")
{
    const std::string text = demoText("resources/presses/north.toml");
    const auto warned = [&](const std::string& from, const std::string& to) {
        std::string spoilt = text;
        const std::size_t at = spoilt.find(from);
        REQUIRE(at != std::string::npos);
        spoilt.replace(at, from.size(), to);
        Findings notes;
        const auto press = readPress(spoilt, "north.toml", notes);
        REQUIRE(press);
        Findings about;
        for (const Finding& f : notes)
            if (f.code == "input.unknown_role") about.push_back(f);
        CHECK_FALSE(stops(notes));
        return about;
    };
    CHECK(warned("lift_up =", "lift_up =").empty());
    struct Row {
        const char *from, *to, *meant;
    };
    for (const Row& row : {Row{"lift_up =", "lift_upp =", "Was lift_up meant"},
                           Row{"unwind_setting =", "unwinder_setting =", "Was unwind_setting meant"},
                           Row{"stop = \"STOP\"", "cup_of_tea_for_the_crew = \"TEA\"", "Take it out"}}) {
        INFO(row.to);
        const Findings about = warned(row.from, row.to);
        REQUIRE(about.size() == 1);
        CHECK(about.front().severity == Severity::Warn);
        CHECK(about.front().subject.find("labels.") != std::string::npos);
        CHECK(plain(about.front().remedy).find(row.meant) != std::string::npos);
    }
}
