// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "core/physics/formula.h"
#include "tests/app/verbs/verbs_support.h"

using namespace taut;
using namespace taut::app::test;

TEST_CASE("formula works out a relation from values with units")
{
    // Roll length from its diameters and caliper: L = pi (D^2 - d^2) / (4 t), by hand for 500 mm, 102.2 mm, 140 um.
    const double byHand = std::acos(-1.0) * (0.5 * 0.5 - 0.1022 * 0.1022) / (4 * 140e-6);
    const Ran plain = runProgram({"formula", "R1", "D=500 mm", "d=102.2 mm", "t=140 um"});
    CHECK(plain.exit == 0);
    CHECK(plain.err.empty());
    CHECK(plain.out.substr(plain.out.find(' ')) == " m\n");
    CHECK(std::stod(plain.out) == Approx(byHand).epsilon(1e-12));

    const Json json = runProgram({"formula", "R1", "t=140 um", "d=102.2 mm", "D=500 mm", "--json"}).json();
    CHECK(json["format"].integer() == 1);
    CHECK(json["id"].text() == "R1");
    CHECK(json["value"].number() == Approx(byHand).epsilon(1e-12));
    CHECK(json["unit"].text() == "m");
    REQUIRE(json["arguments"].items().size() == 3);
    CHECK(json["arguments"].items()[0]["symbol"].text() == "D");
    CHECK(json["arguments"].items()[1]["value"].number() == Approx(0.1022));
    for (const char* key : {"symbols", "valid", "source", "findings"}) CHECK(json.has(key));
}

TEST_CASE("formula says a setting exactly in SI and rounded in the unit of a press")
{
    // p = p0 + T D / (2 k): 15000 Pa + 59.4 N * 0.5 m / (2 * 12 N m / 100000 Pa) = 138750 Pa, worked by hand.
    const std::vector<std::string> metric{"formula", "B5", "T=59.4 N", "D=500 mm", "k=12 N m/bar", "p0=0.15 bar"};
    CHECK(runInside(metric).out == "138750 Pa (1.39 bar)\n");
    // Typed in inches and pounds it is answered in psi; 1 psi is 6894.757 Pa (NIST SP 811, 2008, appendix B.8).
    const Ran us = runInside({"formula", "B5", "T=13.35 lbf", "D=20 in", "k=12 N m/bar", "p0=2 psi"});
    const double pascals = std::stod(us.out), psi = std::stod(us.out.substr(us.out.find('(') + 1));
    CHECK(psi == Approx(pascals / 6894.757).margin(0.05));
    CHECK(us.out.substr(us.out.size() - 6) == " psi)\n");
    // What people say in the SI unit anyway is said once, and programs get the one number.
    CHECK(runInside({"formula", "R1", "D=500 mm", "d=102.2 mm", "t=140 um"}).out.find('(') == std::string::npos);
    std::vector<std::string> json = metric;
    json.emplace_back("--json");
    CHECK(runInside(json).json()["unit"].text() == "Pa");
}

TEST_CASE("formula lists every relation in the catalogue once")
{
    const Json json = runInside({"formula", "--list", "--json"}).json();
    std::set<std::string> ids;
    for (const Json& one : json["formulas"].items()) {
        CHECK(ids.insert(one["id"].text()).second);
        CHECK_FALSE(one["arguments"].items().empty());
        CHECK_FALSE(one["source"].text().empty());
    }
    CHECK(ids.size() == physics::formulas().size());
    const Ran plain = runInside({"formula", "--list"});
    CHECK(static_cast<std::size_t>(std::count(plain.out.begin(), plain.out.end(), '\n')) == ids.size());
}

TEST_CASE("formula refuses what it cannot use with exit 2 and says what would do")
{
    struct Row {
        std::vector<std::string> args;
        const char* says;
    };
    for (const Row& row :
         {Row{{"formula", "R1", "D=500 mum", "d=102.2 mm", "t=140 um"}, "mum"},
          Row{{"formula", "R1", "D=5 bar", "d=102.2 mm", "t=140 um"}, "length"},
          Row{{"formula", "R1", "D=500 mm"}, "d"}, Row{{"formula", "R1", "q=500 mm"}, "D d t"},
          Row{{"formula", "R1", "500 mm"}, "name=VALUE"}, Row{{"formula", "R99"}, "--list"}, Row{{"formula"}, "--list"},
          Row{{"formula", "R1", "D=1,234.5 mm", "d=102.2 mm", "t=140 um"}, "1,234.5"}}) {
        const Ran ran = runInside(row.args);
        INFO(ran.err);
        CHECK(ran.exit == 2);
        CHECK(ran.out.empty());
        CHECK(ran.err.find(row.says) != std::string::npos);
        std::vector<std::string> args = row.args;
        args.emplace_back("--json");
        const Ran json = runInside(args);
        CHECK(json.exit == 2);
        CHECK_FALSE(json.json()["findings"].items().empty());
    }
}

TEST_CASE("each target's formula fed with its own reasons gives its value back")
{
    struct Row {
        const char *press, *job, *roll;
    };
    std::set<std::string> used;
    for (const auto& [press, job, roll] :
         {Row{"north", "J-2101", "R0041"}, Row{"north", "J-2101", "R0042"}, Row{"north", "J-2102", "R0050"},
          Row{"south", "J-2103", "R0043"}, Row{"south", "J-2103", "R0048"}, Row{"south", "J-2104", "R0049"}}) {
        const Ran ran = runInside({"targets", "--press", press, "--job", job, "--roll", roll, "--json"});
        REQUIRE(ran.exit == 0);
        const Json json = ran.json();
        for (const Json& target : json["targets"].items()) {
            const std::string formula = target["formula"].text();
            if (target["state"].text() != "ready") continue;
            if (physics::findFormula(formula) == nullptr) {
                INFO(target["id"].text() << " " << formula);
                CHECK((formula == "stated" || formula == "rule" || formula == "lookup"));
                continue;
            }
            std::vector<std::string> args{"formula", formula, "--json"};
            for (const Json& given : target["because"].items())
                args.push_back(given["symbol"].text() + '=' + shortest(given["value"].number()) + ' ' +
                               given["unit"].text());
            const Ran again = runInside(args);
            INFO(press << " " << target["id"].text() << " " << formula << " " << again.err);
            REQUIRE(again.exit == 0);
            CHECK(again.json()["value"].number() == Approx(target["value"].number()).epsilon(1e-9).margin(1e-300));
            CHECK(again.json()["unit"].text() == target["unit"].text());
            used.insert(formula);
        }
    }
    CHECK(used.size() > 20);
}
