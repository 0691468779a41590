// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>

#include "core/base/crypto.h"
#include "core/base/file.h"
#include "tests/app/verbs/verbs_support.h"

using namespace taut;
using namespace taut::app::test;

namespace {

Ran practised(const std::string& scenario, const std::string& actions, std::vector<std::string> more = {})
{
    std::vector<std::string> args{"practice", "--scenario", (resources() / "demo/scenarios" / scenario).string(),
                                  "--actions", (resources() / "demo/actions" / actions).string()};
    args.insert(args.end(), more.begin(), more.end());
    return runInside(args);
}

bool happened(const Json& json, const std::string& code)
{
    const auto& all = json["consequences"].items();
    return std::any_of(all.begin(), all.end(), [&](const Json& one) { return one["code"].text() == code; });
}

void write(const std::string& file, const std::string& text) { std::ofstream(file) << text; }

}  // namespace

TEST_CASE("practice by the book ends well, in a hurry it ends in a mess that says what would have prevented it")
{
    const Ran good = practised("quiet_morning.toml", "by_the_book.toml", {"--json"});
    CHECK(good.exit == 0);
    const Json well = good.json();
    CHECK(well["scenario"].text() == "quiet_morning");
    CHECK(well["seed"].integer() == 7);
    CHECK(well["consequences"].items().empty());
    CHECK(well["refusals"].items().empty());
    CHECK(well["simulated"].number() > 200);

    const Ran bad = practised("quiet_morning.toml", "in_a_hurry.toml", {"--json"});
    CHECK(bad.exit == 1);
    const Json mess = bad.json();
    for (const char* code : {"lift.stays", "web.slack", "web.wrapped", "tail.caught", "web.broke"}) {
        CAPTURE(code);
        CHECK(happened(mess, code));
    }
    REQUIRE(mess["refusals"].items().size() == 1);
    CHECK(mess["refusals"].items()[0]["code"].text() == "press.guard_open");
    CHECK(mess["refusals"].items()[0]["subject"].text() == "outfeed_guard");
    for (const Json& one : mess["consequences"].items()) {
        CHECK_FALSE(one["cause"].items().empty());
        CHECK_FALSE(one["prevented_by"].text().empty());
        if (one["code"].text() == "web.slack") CHECK(one["prevented_by"].text() == "tension.settings.setting/rewind");
        if (one["code"].text() == "tail.caught") CHECK(one["prevented_by"].text() == "splice.table.trim");
    }
    // The same in words.
    const Ran said = practised("quiet_morning.toml", "in_a_hurry.toml");
    CHECK(said.out.find("because: The tension of Rewind was not set at all.") != std::string::npos);
}

TEST_CASE("practice gives the same trace for the same seed and actions, to the last figure")
{
    Folder folder;
    const Json once =
        practised("knocked_roll.toml", "in_a_hurry.toml", {"--json", "--trace", folder / "once.csv"}).json();
    const Json twice = practised("knocked_roll.toml", "in_a_hurry.toml", {"--json"}).json();
    CHECK(once["trace_sha256"].text() == twice["trace_sha256"].text());
    const auto trace = readFile(folder / "once.csv");
    REQUIRE(trace);
    CHECK(hex(sha256(*trace)) == once["trace_sha256"].text());
    CHECK(trace->starts_with("t,speed,unwind_radius,rewind_radius,tension.unwind,tension.table_entry,"));
    CHECK(std::count(trace->begin(), trace->end(), '\n') > 1000);
    CHECK(happened(once, "web.broke"));
}

TEST_CASE("practice says what is wrong with a scenario or with what is to be done, and where")
{
    Folder folder;
    write(folder / "s.toml",
          "format = 1\n[scenario]\nid = \"s\"\npress = \"north\"\njob = \"J-2101\"\nroll = \"R0041\"\n"
          "[[fault]]\nwhat = \"gremlins\"\n");
    const Ran fault = runInside({"practice", "--scenario", folder / "s.toml", "--actions",
                                 (resources() / "demo/actions/by_the_book.toml").string()});
    CHECK(fault.exit == 2);
    CHECK(fault.err.find("s.toml:8") != std::string::npos);
    write(folder / "a.toml", "format = 1\n[[action]]\ndo = \"lift_presure\"\nto = \"1 bar\"\n"
                             "[[action]]\ndo = \"lift_pressure\"\nto = \"1 m\"\n");
    const Ran deed = runInside({"practice", "--scenario", (resources() / "demo/scenarios/quiet_morning.toml").string(),
                                "--actions", folder / "a.toml"});
    CHECK(deed.exit == 2);
    CHECK(deed.err.find("a.toml:3") != std::string::npos);
    CHECK(deed.err.find("lift_pressure") != std::string::npos);
    CHECK(deed.err.find("a.toml:7") != std::string::npos);
    const Ran none = runInside({"practice", "--actions", folder / "a.toml"});
    CHECK(none.exit == 2);
    CHECK(none.err.find("--scenario") != std::string::npos);
    CHECK(runInside({"check", (resources() / "demo/scenarios/knocked_roll.toml").string()}).exit == 0);
}

TEST_CASE("practice holds answers against the press, scores them and tells what was found")
{
    Folder folder;
    write(folder / "s.toml",
          "format = 1\n[scenario]\nid = \"s\"\npress = \"north\"\njob = \"J-2101\"\nroll = \"R0041\"\nmode = \"test\"\n"
          "parts = [\"safety.walk_round\"]\n[[fault]]\nwhat = \"guard.sticks\"\nitem = \"infeed_guard\"\n");
    write(folder / "a.toml",
          "format = 1\naction = [\n"
          "{ do = \"guard\", item = \"infeed_guard\" },\n"
          "{ after = \"3 s\", do = \"answer\", step = \"safety.walk_round.all_round\", tick = true },\n"
          "{ do = \"found\", what = \"guard.sticks\", item = \"infeed_guard\" },\n"
          "{ do = \"found\", what = \"tail.left\" },\n]\n");
    const std::vector<std::string> args{"practice", "--scenario", folder / "s.toml", "--actions", folder / "a.toml"};
    auto asJson = args;
    asJson.emplace_back("--json");
    const Ran ran = runInside(asJson);
    CHECK(ran.exit == 1);
    const Json json = ran.json();
    CHECK(json["mode"].text() == "test");
    REQUIRE(json["contradictions"].items().size() == 1);
    const Json& one = json["contradictions"].items()[0];
    CHECK(one["at"].number() == Approx(3));
    CHECK(one["step"].text() == "safety.walk_round.all_round");
    CHECK(one["text"].text().find("stands open") != std::string::npos);
    const Json& score = json["score"];
    CHECK(score["earned"].number() == 0);
    CHECK(score["total"].number() > 10);
    CHECK(score["result"].text() == "not_yet");
    CHECK(score["hits"].integer() == 1);
    CHECK(score["misses"].integer() == 0);
    CHECK(score["false_alarms"].integer() == 1);
    const auto& missed = score["vital_missed"].items();
    CHECK(std::any_of(missed.begin(), missed.end(), [&](const Json& step) { return step == one["step"]; }));
    const Ran said = runInside(args);
    CHECK(said.out.find("answered, and not so: safety.walk_round.all_round") != std::string::npos);
    CHECK(said.out.find("not yet") != std::string::npos);
    CHECK(said.out.find("found: 1 of 1 that were not right, 1 named in vain") != std::string::npos);
}

TEST_CASE("practice only checks a lesson where that is asked, and plays nothing")
{
    const Ran good = practised("quiet_morning.toml", "in_a_hurry.toml", {"--check"});
    CHECK(good.exit == 0);
    CHECK(good.out.find("in order") != std::string::npos);
    Folder folder;
    write(folder / "a.toml", "format = 1\n[[action]]\ndo = \"answer\"\nstep = \"safety.people.dres\"\ntick = true\n");
    const Ran bad =
        runInside({"practice", "--check", "--scenario", (resources() / "demo/scenarios/quiet_morning.toml").string(),
                   "--actions", folder / "a.toml"});
    CHECK(bad.exit == 2);
    CHECK(bad.err.find("a.toml:4") != std::string::npos);
    CHECK(bad.err.find("safety.people.dress") != std::string::npos);
}

TEST_CASE("practice keeps attempts in a logbook of its own, and tells the training record out of it")
{
    Folder folder;
    const std::string file = folder / "practice.logbook";
    const std::vector<std::string> who{"--keep", file, "--person", "p-4", "--name", "Lotte Wren", "--json"};
    const Ran first = practised("knocked_roll.toml", "in_a_hurry.toml", who);
    CHECK(first.json()["attempt"].text() == "p-4-attempt-1");
    CHECK(practised("quiet_morning.toml", "by_the_book.toml", who).json()["attempt"].text() == "p-4-attempt-2");
    const Ran record =
        runProgram({"practice", "--record", file, "--person", "p-4", "--pdf", folder / "record.pdf", "--json"});
    CHECK(record.exit == 0);
    const Json json = record.json();
    CHECK(json["record"]["person"]["name"].text() == "Lotte Wren");
    CHECK(json["record"]["attempts"].items().size() == 2);
    CHECK(json["record"]["practice"].boolean());
    CHECK(json["sha256"].text() == hex(sha256(json["record"].dump())));
    const Ran pdf = runTool("pdftotext", {"-layout", folder / "record.pdf", "-"});
    CHECK(pdf.out.find("PRACTICE") != std::string::npos);
    CHECK(pdf.out.find("Lotte Wren") != std::string::npos);
    // The chain is that of any logbook.
    CHECK(runInside({"verify", file}).exit == 0);
    CHECK(runInside({"practice", "--record", file, "--person", "p-9"}).exit == 2);
    CHECK(practised("quiet_morning.toml", "by_the_book.toml", {"--keep", file}).exit == 2);
}

TEST_CASE("the lesson of the demo is passed by somebody who looks before they say so")
{
    const Ran ran = practised("first_round.toml", "first_round.toml", {"--json"});
    INFO(ran.out << ran.err);
    const Json json = ran.json();
    CHECK(ran.exit == 0);
    CHECK(json["refusals"].items().empty());
    CHECK(json["contradictions"].items().empty());
    CHECK(json["score"]["result"].text() == "passed");
    CHECK(json["score"]["earned"].number() == json["score"]["total"].number());
    CHECK(json["score"]["hits"].integer() == 1);
    CHECK(json["score"]["false_alarms"].integer() == 0);
}

TEST_CASE("whoever does and answers a whole procedure is passed and nothing happens, on a quiet and on a bad morning")
{
    const Ran quiet = practised("quiet_morning.toml", "quiet_morning.toml", {"--json"});
    INFO(quiet.out << quiet.err);
    CHECK(quiet.exit == 0);
    for (const char* none : {"consequences", "refusals", "contradictions"}) CHECK(quiet.json()[none].items().empty());
    CHECK(quiet.json()["score"]["result"].text() == "passed");
    CHECK(quiet.json()["score"]["earned"].number() == quiet.json()["score"]["total"].number());

    // The roll was knocked and the last shift left a tail: the same work, and what was found on the way.
    std::string actions = *readFile((resources() / "demo/actions/quiet_morning.toml").string());
    const auto put = [&](const std::string& before, const std::string& more) {
        const std::size_t at = actions.find(before);
        REQUIRE(at != std::string::npos);
        actions.insert(at, more + "\n  ");
    };
    put("{ do = \"guide_middle\"", R"({ do = "found", what = "tail.left" }, { do = "trim_old_joint" },)");
    put("{ after = \"20 s\", do = \"strip_wraps\"", R"({ do = "found", what = "wraps.nicked" },)");
    Folder folder;
    const std::string file = folder / "bad_morning.toml";
    write(file, actions);
    const Ran bad = practised("knocked_roll.toml", file, {"--json"});
    INFO(bad.out << bad.err);
    CHECK(bad.exit == 0);
    CHECK(bad.json()["consequences"].items().empty());
    CHECK(bad.json()["score"]["result"].text() == "passed");
    CHECK(bad.json()["score"]["hits"].integer() == 2);
    CHECK(bad.json()["score"]["misses"].integer() == 0);
}
