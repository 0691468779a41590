// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/policy.h"

#include <catch2/catch.hpp>

#include <algorithm>

#include "core/inputs/inputs.h"
#include "core/units/unit.h"

using namespace taut;
using namespace taut::inputs;

namespace {

Press pressWith(const std::string& rows, Findings& notes)
{
    auto press = readPress("format = 1\n[press]\nid = \"p\"\n[policy]\n" + rows, "p.toml", notes);
    REQUIRE(press);
    return *press;
}

}  // namespace

TEST_CASE("every policy row is believable itself, says what it limits and where its default comes from")
{
    const auto rows = policyRows();
    CHECK(rows.size() > 40);
    CHECK(std::is_sorted(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.name < b.name; }));
    for (const PolicyRow& row : rows) {
        CAPTURE(row.name);
        CHECK(findPolicy(row.name) == &row);
        CHECK(row.si >= row.least);
        CHECK(row.si <= row.most);
        CHECK(row.says.size() > 10);
        CHECK_FALSE(row.source.empty());
        if (!row.unit.empty()) CHECK(findUnit(row.kind, row.unit) != nullptr);
    }
    CHECK(findPolicy("no_such_row") == nullptr);
}

TEST_CASE("a row of a press's policy is read as typed")
{
    Findings notes;
    const Press press =
        pressWith("centre_guided = \"1/16 in\"\nsplice_factor = 5\nair_supply_least = \"6 bar\"\n", notes);
    CHECK(notes.empty());
    REQUIRE(press.policy.size() == 3);
    for (const auto& [row, value] : press.policy) {
        if (row == "centre_guided") CHECK(value.si() == Approx(0.0254 / 16));
        if (row == "splice_factor") CHECK(value.si() == 5);
        if (row == "air_supply_least") CHECK(value.si() == Approx(6e5));
    }
}

TEST_CASE("a row that is a factor is a number or a share of one, and nothing else")
{
    for (const char* five : {"5", "5.0", "\"5\"", "\"500 %\""}) {
        CAPTURE(five);
        Findings notes;
        const Press press = pressWith(std::string("splice_factor = ") + five + "\n", notes);
        CHECK(notes.empty());
        REQUIRE(press.policy.size() == 1);
        CHECK(press.policy[0].second.kind() == Kind::Count);
        CHECK(press.policy[0].second.si() == Approx(5));
    }
    for (const char* wrong : {"\"5 mm\"", "true", "\"50 %\"", "\"-500 %\""}) {
        CAPTURE(wrong);
        Findings notes;
        CHECK(pressWith(std::string("splice_factor = ") + wrong + "\n", notes).policy.empty());
        REQUIRE(notes.size() == 1);
        CHECK_FALSE(notes[0].remedy.empty());
    }
}

TEST_CASE("a bad policy row is refused with what to do, and the usual value holds")
{
    const struct {
        const char *row, *code, *remedy;
    } cases[] = {
        {"center_guided = \"1 mm\"", "input.unknown_key", "centre_guided"},  // the nearest row is offered
        {"centre_guided = \"1 bar\"", "quantity.wrong_kind", ""},
        {"centre_guided = \"1 m\"", "input.absurd", ""},
        {"centre_guided = \"-1 mm\"", "input.negative", ""},
        {"splice_factor = 1", "input.absurd", ""},
        {"outer_wraps = 3.5", "input.not_whole", ""},
        {"outer_wraps = \"350 %\"", "input.not_whole", ""},
        {"air_supply_least = \"7.5 bar\"", "input.order", ""},
        {"label_stock_film_low = \"0.3 N/mm\"", "input.order", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.row);
        Findings notes;
        CHECK(pressWith(std::string(c.row) + "\n", notes).policy.empty());
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == c.code);
        CHECK(notes[0].severity == Severity::Stop);
        CHECK_FALSE(notes[0].remedy.empty());
        CHECK(notes[0].subject.find("p.toml:5:") == 0);
        if (*c.remedy) {
            REQUIRE(notes[0].remedy.args.size() == 1);
            CHECK(notes[0].remedy.args[0] == TextArg(std::string(c.remedy)));
        }
    }
}

TEST_CASE("a unit is offered in place of one of another kind only where it was meant")
{
    const auto remedyOf = [](const std::string& row) {
        Findings notes;
        (void)pressWith(row + "\n", notes);
        REQUIRE(notes.size() == 1);
        return notes[0].remedy;
    };
    // Nobody who writes minutes for a length means mil; a slip in what is no unit may be one.
    CHECK(remedyOf("proving_length = \"2 min\"").args.empty());
    CHECK(remedyOf("outer_wraps = \"2 mm\"").args.empty());
    CHECK(remedyOf("centre_guided = \"60 mli\"").args == std::vector<TextArg>{std::string("mil")});
    // Pounds of force are often written as pounds.
    CHECK(remedyOf("label_stock_film_low = \"1 lb/in\"").args == std::vector<TextArg>{std::string("lbf/in")});
}
