// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include <QImage>

#include "app/verbs/console.h"
#include "app/verbs/verbs.h"
#include "core/base/file.h"
#include "tests/app/verbs/verbs_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

TEST_CASE("every verb explains itself without a display or a home folder")
{
    const Ran help = runProgram({"--help"});
    CHECK(help.exit == 0);
    CHECK(help.err.empty());
    for (const char* ofTheWindow : {"--demo", "--logbook FILE"}) CHECK(help.out.find(ofTheWindow) != std::string::npos);
    for (const verbs::Verb& verb : verbs::allVerbs()) {
        const std::string name(verb.spec.name);
        CHECK(help.out.find("tautweb " + name) != std::string::npos);
        const Ran own = runInside({name, "--help"});
        CHECK(own.exit == 0);
        for (const verbs::OptionSpec& option : verb.spec.options)
            CHECK(own.out.find(std::string(option.name)) != std::string::npos);
    }
    CHECK(runProgram({"--version"}).out == "tautweb " TAUTWEB_VERSION "\n");
}

TEST_CASE("a wrong word is refused with exit 2, one sentence and the nearest right one")
{
    struct Row {
        std::vector<std::string> args;
        const char* says;
    };
    for (const Row& row :
         {Row{{"targts"}, "targets"}, Row{{"targets", "--pres", "north"}, "--press"},
          Row{{"targets", "--press"}, "--press"},
          Row{{"targets", "--press", "nort", "--job", "x", "--roll", "y"}, "north"}, Row{{"targets", "spare"}, "spare"},
          Row{{"verify"}, "LOGBOOK"}, Row{{"demo", "--press", "sout"}, "south"},
          Row{{"targets", "--press", "north", "--press", "south"}, "twice"},
          Row{{"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--diameter", "1e308 m"},
              "1e308 m"},
          Row{{"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--diameter", "-5 mm"}, "-5 mm"},
          Row{{"sheet", "x", "--paper", "a3"}, "letter"}, Row{{"runs", "--since", "yesterday"}, "yesterday"}}) {
        const Ran ran = runInside(row.args);
        INFO(ran.err);
        CHECK(ran.exit == 2);
        CHECK(ran.err.find(row.says) != std::string::npos);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
        CHECK(ran.out.empty());
    }
}

TEST_CASE("the window needs a display and says so with exit 4")
{
    for (const std::vector<std::string>& args : {std::vector<std::string>{}, {"--demo"}}) {
        const Ran ran = runProgram(args);
        INFO(ran.err);
        CHECK(ran.exit == 4);
        CHECK(ran.err.find("--help") != std::string::npos);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    }
}

TEST_CASE("the window's options are judged before it looks for a display")
{
    const Ran ran = runProgram({"--dakr"});
    INFO(ran.err);
    CHECK(ran.exit == 2);
    CHECK(ran.err.find("dakr") != std::string::npos);
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
}

TEST_CASE("check finds what cannot be within one file")
{
    const Folder folder;
    const auto bent = [&](const std::string& file, const std::string& from, const std::string& to) {
        std::string text = *readFile(resources() / file);
        const std::size_t at = text.find(from);
        REQUIRE(at != std::string::npos);
        text.replace(at, from.size(), to);
        REQUIRE(writeFile(folder / "bent.toml", text));
        return runInside({"check", folder / "bent.toml"});
    };
    struct Row {
        const char *file, *from, *to, *says;
    };
    for (const Row& row :
         {Row{"demo/rolls/R0041.toml", "500 mm", "90 mm", "roll.outer_diameter"},
          Row{"presses/north.toml", "[\"1460 mm\", \"220 mm\"]", "[\"770 mm\", \"220 mm\"]", "overlap"},
          Row{"presses/north.toml", "centreline = \"215 mm\"", "centreline = \"900 mm\"", "press.centreline"},
          Row{"presses/north.toml", "air = true", "air = false", "press.air"}}) {
        const Ran ran = bent(row.file, row.from, row.to);
        INFO(ran.out);
        CHECK(ran.exit == 1);
        CHECK(ran.out.find("wrong") == 0);
        CHECK(ran.out.find(row.says) != std::string::npos);
    }
    // Limits that never hold are no reason to refuse the press, and are named.
    const Ran slip = bent("presses/north.toml", "\"air.supply\" =", "\"air.suply\" =");
    CHECK(slip.exit == 0);
    CHECK(slip.out.find("think") == 0);
    CHECK(slip.out.find("air.suply") != std::string::npos);
    CHECK(slip.out.find("Was air.supply meant?") != std::string::npos);
}

TEST_CASE("a sheet does not take the place of a pipe or a device")
{
    const Folder folder;
    const std::filesystem::path pipe = folder.path() / "pipe";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    const Ran ran = runProgram(
        {"sheet", "--blank", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--out", pipe.string()});
    INFO(ran.err);
    CHECK(ran.exit == 4);
    CHECK(std::filesystem::is_fifo(pipe));
}

TEST_CASE("a refusal with --json prints its findings as one object")
{
    const Ran ran = runInside({"targets", "--pres", "north", "--json"});
    CHECK(ran.exit == 2);
    const Json json = ran.json();
    CHECK(json["format"].integer() == 1);
    REQUIRE(json["findings"].items().size() == 1);
    const Json& finding = json["findings"].items()[0];
    CHECK(finding["code"].text() == "option.unknown");
    for (const char* key : {"severity", "subject", "text", "remedy"}) CHECK(finding[key].isString());
}

TEST_CASE("exit codes follow from what refused")
{
    const auto exitFor = [](const char* code) { return verbs::exitFor(refuse(code, "x", "y")); };
    CHECK(exitFor("quantity.unknown_unit") == verbs::Exit::WrongInput);
    CHECK(exitFor("file.missing") == verbs::Exit::WrongInput);
    CHECK(exitFor("logbook.not_a_logbook") == verbs::Exit::WrongInput);
    CHECK(exitFor("gate.open_steps") == verbs::Exit::Refused);
    CHECK(exitFor("run.press_busy") == verbs::Exit::Refused);
    CHECK(exitFor("file.unwritable") == verbs::Exit::Machine);
    CHECK(exitFor("logbook.pen_held") == verbs::Exit::Machine);
    CHECK(exitFor("font.missing") == verbs::Exit::Machine);
}

TEST_CASE("columns line up by characters and lines end without blanks")
{
    CHECK(verbs::table({{"a", "b"}, {"§§§", "c"}}) == "a    b\n§§§  c\n");
    CHECK(verbs::table({{"long", ""}, {}, {"x", "y"}}) == "long\n\nx     y\n");
}

TEST_CASE("targets prints findings first, then a table by family")
{
    const Ran ran = runProgram({"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    const std::size_t finding = ran.out.find("The label says"), head = ran.out.find("\ntarget ");
    REQUIRE(finding != std::string::npos);
    REQUIRE(head != std::string::npos);
    CHECK(finding < head);
    CHECK(ran.out.find("\ntension.unwind.setting") > ran.out.find("\nroll.length"));
    CHECK(ran.out.find("needs roll.mass") != std::string::npos);
}

TEST_CASE("targets takes a file, FILE#id and an id, and knows a substrate beside the job")
{
    const std::string base = resources().string();
    const std::vector<std::string> byId{"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--json"};
    const std::vector<std::string> byFile{"targets",
                                          "--press",
                                          base + "/presses/north.toml",
                                          "--job",
                                          base + "/demo/jobs/quince-jelly.toml",
                                          "--roll",
                                          base + "/demo/rolls/R0041.toml",
                                          "--substrate",
                                          base + "/substrates.toml#paper-label-80",
                                          "--json"};
    const Ran one = runInside(byId), two = runInside(byFile);
    CHECK(one.exit == 0);
    CHECK(one.out == two.out);

    Folder shop;
    std::filesystem::create_directories(shop.path() / "jobs");
    std::filesystem::copy_file(resources() / "demo" / "jobs" / "quince-jelly.toml", shop / "jobs/j.toml");
    std::filesystem::copy_file(resources() / "substrates.toml", shop / "substrates.toml");
    std::vector<std::string> beside = byId;
    beside[4] = shop / "jobs/j.toml";
    CHECK(runInside(beside).out == one.out);

    std::vector<std::string> several = byFile;
    several[8] = base + "/substrates.toml";
    const Ran which = runInside(several);
    CHECK(which.exit == 2);
    CHECK(which.err.find("#") != std::string::npos);
}

TEST_CASE("targets says inputs, facts, targets, schedules and findings, and hears of the diameter")
{
    const Json json = runInside({"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--diameter",
                                 "400 mm", "--web-in-press", "no", "--json"})
                          .json();
    CHECK(json["inputs"]["press"].text() == "north");
    CHECK(json["inputs"]["substrate"].text() == "paper-label-80");
    CHECK(json["inputs"]["present_diameter"].number() == Approx(0.4));
    for (const Json& fact : json["facts"].items()) CHECK(fact.text() != "web_in_press");
    CHECK_FALSE(json["facts"].items().empty());
    CHECK_FALSE(json["schedules"].items().empty());
    for (const Json& target : json["targets"].items())
        if (target["id"].text() == "tension.unwind.torque")
            // M = T D / 2 with 59.4 N on 400 mm
            CHECK(target["value"].number() == Approx(59.4 * 0.4 / 2).epsilon(1e-9));
    CHECK(
        runInside({"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--diameter", "4 bar"}).exit ==
        2);
}

TEST_CASE("check names every wrong key with file, line and column and ends with exit 1")
{
    Folder folder;
    const std::string file = folder / "press.toml";
    std::ofstream(file) << "format = 1\n[press]\nid = \"p\"\nname = \"P\"\nunits = \"metric\"\n"
                           "centreline = \"215 bar\"\nweb_widht = { least = \"1 mm\", most = \"2 mm\" }\n";
    const Ran ran = runProgram({"check", file});
    CHECK(ran.exit == 1);
    CHECK(ran.out.find(file + ":6:") != std::string::npos);
    CHECK(ran.out.find(file + ":7:") != std::string::npos);
    CHECK(ran.out.find("web_width") != std::string::npos);
    const Json json = runInside({"check", file, "--json"}).json();
    CHECK_FALSE(json["in_order"].boolean(true));
    CHECK(json["files"].items()[0]["is"].text() == "press");
    CHECK(json["files"].items()[0]["findings"].items().size() >= 2);
    CHECK(runInside({"check", folder / "none.toml"}).exit == 2);
    CHECK(runInside({"check", std::string(TAUTWEB_SOURCE_DIR) + "/CMakeLists.txt"}).exit == 1);
}

TEST_CASE("check finds every file of the resources in order")
{
    std::vector<std::string> args{"check"};
    for (const auto& entry : std::filesystem::recursive_directory_iterator(resources()))
        if (entry.path().extension() == ".toml" && entry.path().parent_path().filename() != "scenarios")
            args.push_back(entry.path().string());
    CHECK(args.size() > 20);
    const Ran ran = runInside(args);
    INFO(ran.out << ran.err);
    CHECK(ran.exit == 0);
}

TEST_CASE("check reads answers files and finds misspelt keys and acts")
{
    Folder folder;
    const std::string file = folder / "a.toml";
    std::ofstream(file) << "format = 1\n[run]\npress = \"north\"\njob = \"j\"\nroll = \"r\"\nby = \"p-2\"\n"
                           "[[answer]]\nstep = \"a.b.c\"\nenterd = \"yes\"\n[[answer]]\nact = \"repeat_stag\"\n";
    const Ran ran = runInside({"check", file});
    CHECK(ran.exit == 1);
    CHECK(ran.out.find("entered") != std::string::npos);
    CHECK(ran.out.find("repeat_stage") != std::string::npos);
}

TEST_CASE("targets writes its charts as a picture, and says so when it cannot")
{
    const Folder folder;
    const std::string file = folder / "charts.png";
    const std::vector<std::string> inputs{"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041"};
    const auto with = [&](const std::string& chart) {
        std::vector<std::string> args = inputs;
        args.push_back(chart);
        return args;
    };
    CHECK(runProgram(with("--chart=" + file)).exit == 0);
    const QImage image(QString::fromStdString(file));
    CHECK(image.width() == 1600);
    CHECK(image.height() > 1000);
    const Ran refused = runProgram(with("--chart=" + (folder / "no such folder") + "/charts.png"));
    CHECK(refused.exit != 0);
    CHECK(refused.err.find("charts.png") != std::string::npos);
    CHECK(runProgram(with("--chart")).exit == 2);
}

TEST_CASE("bash completes every verb, every option, and files where an option takes one")
{
    const Ran script = runInside({"--completion"});
    CHECK(script.exit == 0);
    const Folder folder;
    std::ofstream(folder / "tautweb.bash") << script.out;
    std::ofstream(folder / "shop.logbook") << "";
    std::filesystem::create_directory(folder / "sheets");
    // As bash would: the words so far, the last of them not finished yet.
    const auto offers = [&](const std::string& words) {
        const Ran ran = runTool("bash", {"-c",
                                         "cd \"$0\"; . ./tautweb.bash; compopt() { :; }; COMP_WORDS=($1); "
                                         "[[ $1 == *' ' ]] && COMP_WORDS+=(''); COMP_CWORD=$((${#COMP_WORDS[@]} - "
                                         "1)); _tautweb; printf '%s\\n' \"${COMPREPLY[@]}\"",
                                         folder.path().string(), words});
        INFO(ran.err);
        CHECK(ran.exit == 0);
        std::set<std::string> found;
        std::istringstream lines(ran.out);
        for (std::string line; std::getline(lines, line);)
            if (!line.empty()) found.insert(line);
        return found;
    };
    std::set<std::string> all;
    for (const verbs::Verb& verb : verbs::allVerbs()) {
        all.emplace(verb.spec.name);
        std::set<std::string> options{"--json", "--help"};
        for (const verbs::OptionSpec& option : verb.spec.options) options.emplace(option.name);
        CHECK(offers("tautweb " + std::string(verb.spec.name) + " --") == options);
    }
    CHECK(offers("tautweb ") == all);
    CHECK(offers("tautweb ver") == std::set<std::string>{"verify"});
    CHECK(offers("tautweb runs --logbook sh") == std::set<std::string>{"sheets", "shop.logbook"});
    CHECK(offers("tautweb runs --report sh") == std::set<std::string>{"sheets"});
    CHECK(offers("tautweb runs --job ").empty());
    CHECK(offers("tautweb verify sh") == std::set<std::string>{"sheets", "shop.logbook"});
    CHECK(offers("tautweb --logbook shop") == std::set<std::string>{"shop.logbook"});
    CHECK(offers("tautweb --la") == std::set<std::string>{"--language"});
    const std::set<std::string> spoken{"de", "en", "es"};
    CHECK(offers("tautweb --language ") == spoken);
    CHECK(offers("tautweb sheet --language ") == spoken);
    CHECK(offers("tautweb sheet --paper l") == std::set<std::string>{"letter"});
}
