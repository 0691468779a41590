// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <fstream>
#include <set>
#include <span>
#include <sstream>
#include <tuple>

#include "app/verbs/console.h"
#include "core/base/file.h"
#include "core/records/texts.h"
#include "core/run/pace.h"
#include "core/seal/document.h"
#include "core/units/plain.h"
#include "tests/app/verbs/verbs_support.h"
#include "tests/core/base/tiny_disk.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

std::size_t verdicts(const run::Run& run, verdict::Verdict wanted)
{
    std::size_t n = 0;
    for (const run::Event& event : run.events())
        if (const auto* answered = std::get_if<run::Answered>(&event.happening()))
            if (answered->value && answered->judgement.verdict == wanted) ++n;
    return n;
}

template <class T>
std::size_t happened(const run::Run& run)
{
    std::size_t n = 0;
    for (const run::Event& event : run.events()) n += std::holds_alternative<T>(event.happening()) ? 1U : 0U;
    return n;
}

bool endsAnswered(const verbs::Answers& answers) { return answers.ends == "signed"; }

}  // namespace

TEST_CASE("the demo of each press signs a run in which everything happens that can come between")
{
    for (const char* press : {"north", "south"}) {
        Stage stage;
        const auto told = stage.tell(answersOf(press));
        if (!told) FAIL(press << ": " << sentence(told.error()));
        INFO(press);
        CHECK(told->run.phase() == run::Phase::Completed);
        CHECK(told->run.openSteps().empty());
        CHECK(told->run.deviations() == 1);
        CHECK(happened<run::Deviated>(told->run) == 1);
        CHECK(verdicts(told->run, verdict::Verdict::Near) >= 1);
        CHECK(verdicts(told->run, verdict::Verdict::Outside) >= 2);  // one read again, one accepted
        CHECK(happened<run::InputsChanged>(told->run) == 1);
        CHECK(happened<run::Repeated>(told->run) == 1);
        CHECK(happened<run::HandedOver>(told->run) == 1);
        std::set<std::string> people;
        for (const run::Event& event : told->run.events()) people.insert(event.stamp().by.value);
        CHECK(people.size() >= 2);
        CHECK(run::hasteOf(told->run).empty());
    }
}

TEST_CASE("a clean run is clean, the next roll continues it, and a given up run says why")
{
    Stage stage;
    const auto clean = stage.tell(answersOf("clean"));
    if (!clean) FAIL(sentence(clean.error()));
    CHECK(clean->run.deviations() == 0);
    CHECK(verdicts(clean->run, verdict::Verdict::Outside) == 0);
    const auto next = stage.tell(answersOf("next_roll"), clean->runId);
    if (!next) FAIL(sentence(next.error()));
    CHECK(next->run.began().parent == clean->runId);
    CHECK(next->run.began().kind == "next_roll");
    CHECK(next->run.plan().steps.size() < clean->run.plan().steps.size() / 2);
    const auto given = stage.tell(answersOf("abandoned"));
    if (!given) FAIL(sentence(given.error()));
    CHECK(given->run.phase() == run::Phase::Abandoned);
    CHECK_FALSE(given->run.openSteps().empty());
    for (const auto* told : {&clean, &next, &given}) CHECK(run::hasteOf((*told)->run).empty());
}

TEST_CASE("answers given too fast are named when the run is looked at, and stop nothing")
{
    Stage stage;
    verbs::Answers answers = answersOf("clean");
    for (verbs::AnswerEntry& entry : answers.entries) {
        if (entry.step == "power_up.tests.no_motion") entry.seconds = 2;
        if (entry.step.rfind("safety.walk_round.guard_closed/", 0) == 0) entry.seconds = 1;
    }
    const auto told = stage.tell(answers);
    if (!told) FAIL(sentence(told.error()));
    CHECK(told->run.phase() == run::Phase::Completed);
    REQUIRE(run::hasteOf(told->run).size() == 2);
    const Ran shown = runInside({"runs", told->runId, "--logbook", stage.writer->file().string()});
    CHECK(shown.exit == 0);
    CHECK(shown.out.find("watched too short: Every emergency stop is released: 2 s of 10 s\n") != std::string::npos);
    CHECK(shown.out.find("answered fast: ") != std::string::npos);
    CHECK(shown.out.find("4 answers in less than 5 s") != std::string::npos);
}

TEST_CASE("the sealed document of each demo is small and gives back what the live run had")
{
    // Each limit is what the document takes, and a twentieth more: north changes its roll and fills a diameter, south
    // does so on a press with 157 targets.
    const std::vector<std::tuple<const char*, const char*, std::size_t>> cases{{"north", "", 95'000},
                                                                               {"south", "", 115'000},
                                                                               {"clean", "", 66'000},
                                                                               {"next_roll", "clean", 45'000},
                                                                               {"abandoned", "", 62'000}};
    for (const auto& [name, parent, most] : cases) {
        Stage stage;
        std::string parentId;
        if (*parent != '\0') parentId = stage.tell(answersOf(parent)).value().runId;
        const auto told = stage.tell(answersOf(name), parentId);
        INFO(name);
        REQUIRE(told);
        const auto document = seal::read(told->seal.document);
        REQUIRE(document);
        CHECK(told->seal.document.size() < most);
        const Json::Array& sets = document->body["target_sets"].items();
        for (std::size_t i = 1; i < sets.size(); ++i) CHECK(sets[i].dump().size() < 9'000);
        const auto events = seal::eventsOf(*document, records::textsOf(stage.writer->reader()));
        REQUIRE(events);
        REQUIRE(events->size() == told->run.events().size());
        for (std::size_t n = 1; n <= events->size(); ++n) {
            const run::Run live = run::Run::fold(std::span(told->run.events().data(), n));
            const run::Run again = run::Run::fold(std::span(events->data(), n));
            INFO("event " << n);
            REQUIRE(again.targets() == live.targets());
            REQUIRE(again.plan() == live.plan());
            REQUIRE(again.facts() == live.facts());
            REQUIRE(again.sources().roll == live.sources().roll);
            REQUIRE(again.presentDiameter() == live.presentDiameter());
            REQUIRE(again.openSteps() == live.openSteps());
            REQUIRE(again.conditions() == live.conditions());
            REQUIRE(again.operatorName() == live.operatorName());
            const run::Stamp &then = live.events().back().stamp(), &now = again.events().back().stamp();
            REQUIRE(std::tie(now.n, now.utcMs, now.offsetMinutes, now.by.value, now.byName, now.byRole) ==
                    std::tie(then.n, then.utcMs, then.offsetMinutes, then.by.value, then.byName, then.byRole));
            for (const procedure::Step& step : live.plan().steps)
                REQUIRE(again.stateOf(step.id) == live.stateOf(step.id));
        }
    }
}

TEST_CASE("taking any one line out of a demo stops it at that step")
{
    const auto& [name, parent] = GENERATE(
        table<const char*, const char*>({{"north", ""}, {"south", ""}, {"clean", ""}, {"next_roll", "clean"}}));
    const verbs::Answers whole = answersOf(name);
    REQUIRE(endsAnswered(whole));
    for (std::size_t gone = 0; gone < whole.entries.size(); ++gone) {
        const verbs::AnswerEntry left = whole.entries[gone];
        // What is only written down beside a step can be missed by nobody.
        if (left.act == "note" || left.act == "attach" || left.act == "helped") continue;
        Stage stage;
        std::string parentId;
        if (*parent != '\0') {
            const auto before = stage.tell(answersOf(parent));
            if (!before) FAIL(sentence(before.error()));
            parentId = before->runId;
        }
        verbs::Answers cut = whole;
        cut.entries.erase(cut.entries.begin() + static_cast<std::ptrdiff_t>(gone));
        const auto told = stage.tell(cut, parentId);
        INFO(name << " line " << left.line << " " << left.act << " " << left.step);
        REQUIRE_FALSE(told);
        INFO(sentence(told.error()));
        // An answer or a deviation names its own step; what belongs to no step stops at one that needed it.
        if (!left.step.empty())
            CHECK(told.error().subject == left.step);
        else
            CHECK_FALSE(told.error().subject.empty());
    }
}

TEST_CASE("the demo as a process leaves a logbook, a sheet and its story, twice in one folder")
{
    Folder folder;
    for (int time = 1; time <= 2; ++time) {
        const Ran ran = runProgram({"demo", "--out", folder.path().string(), "--json"});
        INFO(ran.err);
        REQUIRE(ran.exit == 0);
        CHECK(ran.err.empty());
        const Json json = ran.json();
        CHECK(json["state"].text() == "completed");
        CHECK(json["verdict"].text() == "with_deviations");
        CHECK(json["deviations"].integer() == 1);
        CHECK(json["steps"].integer() > 50);
        CHECK(json["link"].text().size() == 64);
        CHECK(std::filesystem::file_size(json["sheet"].text()) > 20000);
        CHECK(std::filesystem::file_size(json["logbook"].text()) > 20000);
        CHECK(runInside({"verify", json["logbook"].text()}).exit == 0);
    }
    const Ran plain = runProgram({"demo", "--out", folder.path().string(), "--press", "south"});
    CHECK(plain.exit == 0);
    for (const char* words : {"Safety", "Hand-over to inking", "web break", "done", "outside the window",
                              "accepted the deviation", "1 deviation,", "sheet", "logbook"})
        CHECK(plain.out.find(words) != std::string::npos);
    // The story is for people: no word of a file in it.
    const std::size_t story = plain.out.find("\n\n"), files = plain.out.find("\nrun ");
    CHECK(plain.out.substr(story, files - story).find('_') == std::string::npos);
}

TEST_CASE("each sentence of a demo ends with one full stop, also where a person's words stand at its end")
{
    for (const char* reason : {"It drew its way back", "It drew its way back."}) {
        Stage stage;
        verbs::Answers answers = answersOf("north");
        for (verbs::AnswerEntry& entry : answers.entries)
            if (entry.act == "deviation") entry.reason = reason;
        const auto told = stage.tell(answers);
        if (!told) FAIL(sentence(told.error()));
        REQUIRE(told->happened.size() > 3);
        bool deviation = false;
        for (const std::string& line : told->happened) {
            INFO(line);
            CHECK(line.back() == '.');
            CHECK(line.find("..") == std::string::npos);
            deviation = deviation || line.find("accepted the deviation: It drew its way back.") != std::string::npos;
        }
        CHECK(deviation);
    }
    // A refusal is a text and its remedy, and the text may be a person's words too.
    std::ostringstream out, err;
    const Finding finding = refuse("demo.x", "roll R0048", {"%1", {"Its core is crushed"}}, "Bring another roll.");
    CHECK(verbs::refused(verbs::Console{out, err}, false, finding) == verbs::Exit::Refused);
    CHECK(err.str() == "tautweb: roll R0048: Its core is crushed. Bring another roll.\n");
}

TEST_CASE("a demo with a line missing or wrong ends with that step's name and exit 3")
{
    Folder folder;
    const std::string whole = *readFile(answersFile("north"));
    const std::string entry = "[[answer]]\nstep = \"safety.people.dress\"\nentered = \"yes\"\n";
    REQUIRE(whole.find(entry) != std::string::npos);
    for (const std::string& instead :
         {std::string(), std::string("[[answer]]\nstep = \"safety.people.dress\"\nentered = \"maybe\"\n")}) {
        std::string text = whole;
        text.replace(text.find(entry), entry.size(), instead);
        std::ofstream(folder / "a.toml") << text;
        const Ran ran = runProgram({"demo", "--out", folder / "out", "--answers", folder / "a.toml", "--json"});
        INFO(ran.err);
        CHECK(ran.exit == 3);
        CHECK(ran.err.find("safety.people.dress") != std::string::npos);
        CHECK(ran.json()["findings"].items()[0]["subject"].text() == "safety.people.dress");
    }
}

TEST_CASE("a demo that ends early is not signed and names the first open step")
{
    Stage stage;
    verbs::Answers answers = answersOf("clean");
    answers.entries.resize(3);
    const auto told = stage.tell(answers);
    REQUIRE_FALSE(told);
    CHECK(told.error().code == "gate.open_steps");
    CHECK(told.error().subject == answersOf("clean").entries[3].step);
}

TEST_CASE("a folder that cannot be written gives one sentence and exit 4")
{
    // Below /proc nobody can make a file, the superuser included.
    for (const char* where : {"/proc/tautweb", "/dev/null/tautweb", "/proc"}) {
        const Ran ran = runProgram({"demo", "--out", where});
        INFO(where << ": " << ran.err);
        CHECK(ran.exit == 4);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
        CHECK(ran.err.find(where) != std::string::npos);
    }
}

TEST_CASE("a demo or a sheet that finds no room says so in one sentence, and works when there is room")
{
    taut::test::TinyDisk disk(16U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    const auto isClear = [](const Ran& ran) {
        INFO(ran.err);
        CHECK(ran.exit == 4);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
        CHECK(ran.err.find("There is no room left to write") != std::string::npos);
        CHECK(ran.err.find("Free some room on this disk") != std::string::npos);
    };
    const std::string folder = (disk / "demo").string();
    disk.fill(300U << 10U);
    isClear(runProgram({"demo", "--out", folder}));
    disk.empty();
    const Ran demo = runProgram({"demo", "--out", folder, "--json"});
    INFO(demo.err);
    REQUIRE(demo.exit == 0);
    const std::string logbook = demo.json()["logbook"].text(), id = demo.json()["run"].text();
    disk.fill(8U << 10U);
    const std::string file = (disk / "sheet.pdf").string();
    isClear(runProgram({"sheet", id, "--logbook", logbook, "--out", file}));
    CHECK_FALSE(std::filesystem::exists(file));  // all of it or none
    disk.empty();
    CHECK(runProgram({"sheet", id, "--logbook", logbook, "--out", file}).exit == 0);
}

TEST_CASE("a demo that is killed in the middle goes on after it was made safe")
{
    Stage stage;
    verbs::Answers answers = answersOf("clean");
    const auto at = std::find_if(answers.entries.begin(), answers.entries.end(),
                                 [](const auto& entry) { return entry.step == "power_up.switch_on.air_clear"; });
    REQUIRE(at != answers.entries.end());
    verbs::AnswerEntry kill, resume, again;
    kill.act = "kill";
    resume.act = "resume";
    resume.stated = {std::begin(run::kMakeSafe), std::end(run::kMakeSafe)};
    again = *(at - 1);
    const auto index = at - answers.entries.begin();
    // The last answered step is said again.
    answers.entries.insert(answers.entries.begin() + index, {kill, resume, again});
    const auto told = stage.tell(answers);
    if (!told) FAIL(sentence(told.error()));
    CHECK(happened<run::Interrupted>(told->run) == 1);
    CHECK(happened<run::Resumed>(told->run) == 1);
}
