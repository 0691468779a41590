// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "core/base/crypto.h"
#include "core/base/file.h"
#include "core/logbook/logbook.h"
#include "core/units/plain.h"
#include "tests/app/verbs/verbs_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

/// A logbook with a clean run, its next roll and one that was given up; the pen laid down.
struct Shop {
    Folder folder;
    std::string file, first, second, third;
    Shop()
    {
        Stage stage;
        const auto tell = [&](const char* name, const std::string& parent) {
            const auto told = stage.tell(answersOf(name), parent);
            if (!told) FAIL(sentence(told.error()));
            return told->runId;
        };
        first = tell("clean", "");
        second = tell("next_roll", first);
        third = tell("abandoned", "");
        stage.writer.reset();
        file = folder / "shop.logbook";
        std::filesystem::copy_file(stage.folder / "demo.logbook", file);
    }
};
Shop& shop()
{
    static Shop one;
    return one;
}

}  // namespace

TEST_CASE("runs lists newest first, page by page, with every column")
{
    const Ran all = runProgram({"runs", "--logbook", shop().file, "--json"});
    INFO(all.err);
    CHECK(all.exit == 0);
    const Json listed = all.json();
    const Json::Array& runs = listed["runs"].items();
    REQUIRE(runs.size() == 3);
    CHECK(runs[0]["run"].text() == shop().third);
    CHECK(runs[0]["state"].text() == "abandoned");
    CHECK(runs[2]["verdict"].text() == "clean");
    for (const char* key : {"seq", "run", "press", "job", "substrate", "roll", "operator", "begun", "ended", "state",
                            "present", "verdict", "deviations", "reviewed_by"})
        CHECK(runs[0].has(key));
    CHECK(listed["next"].isNull());

    // The same in columns, as people read them.
    const Ran columns = runInside({"runs", "--logbook", shop().file, "--columns", "run,press,state"});
    CHECK(columns.exit == 0);
    for (const Json& run : runs)
        CHECK(columns.out.find(run["run"].text() + "  " + run["press"].text() + "  " + run["state"].text()) !=
              std::string::npos);
    CHECK(columns.out.find("run ") == 0);
    const Json page = runInside({"runs", "--logbook", shop().file, "--limit", "2", "--json"}).json();
    CHECK(page["runs"].items().size() == 2);
    const Json rest = runInside({"runs", "--logbook", shop().file, "--after", page["next"].text(), "--json"}).json();
    REQUIRE(rest["runs"].items().size() == 1);
    CHECK(rest["runs"].items()[0]["run"].text() == shop().first);
}

TEST_CASE("the lists for people hold words, not the words of a file")
{
    Stage stage;
    const auto told = stage.tell(answersOf("north"));
    if (!told) FAIL(sentence(told.error()));
    stage.writer.reset();
    const std::string file = stage.folder / "demo.logbook";
    const Ran all = runInside({"runs", "--logbook", file});
    CHECK(all.out.find("with deviations") != std::string::npos);
    CHECK(all.out.find('_') == std::string::npos);
    const Ran one = runInside({"runs", told->runId, "--logbook", file});
    // A step's id stands in its first column, for the answers of a demo, and what it is stands beside it.
    for (const char* words : {"held by Inka Thorsby", "From the top of the roll", "Roll centre from the frame", "yes"})
        CHECK(one.out.find(words) != std::string::npos);
    std::size_t lines = 0;
    std::istringstream rows(one.out.substr(one.out.find("\n\n") + 2));
    for (std::string line; std::getline(rows, line); ++lines) {
        INFO(line);
        const std::size_t id = line.find(' ');
        CHECK(line.find('_', id) == std::string::npos);
    }
    CHECK(lines > 50);
    CHECK(runInside({"runs", "--logbook", file, "--json"}).json()["runs"].items()[0]["verdict"].text() ==
          "with_deviations");
}

TEST_CASE("runs says what has become of each run since it was sealed")
{
    Stage stage;
    const auto tell = [&](const char* name) {
        const auto told = stage.tell(answersOf(name));
        if (!told) FAIL(sentence(told.error()));
        return told->runId;
    };
    const auto signer = [&](const char* id) {
        for (const DemoPerson& person : stage.people)
            if (person.id.value == id) return stage.writer->unlock(id, person.chosen.passphrase).value();
        throw std::logic_error("nobody is called that");
    };
    const std::string file = stage.folder / "demo.logbook", run = tell("clean"), other = tell("abandoned");
    const people::Signer matteo = signer("p-1"), jorun = signer("p-3");
    const auto is = [&](const std::string& which, const char* word, const char* said) {
        const Json listed = runInside({"runs", "--logbook", file, "--json"}).json();
        for (const Json& row : listed["runs"].items())
            if (row["run"].text() == which) CHECK(row["present"].text() == word);
        INFO(word);
        const std::string all = runInside({"runs", "--logbook", file}).out;
        const std::size_t line = all.find(which);
        REQUIRE(line != std::string::npos);
        CHECK(all.substr(line, all.find('\n', line) - line).find(said) != std::string::npos);
        CHECK(runInside({"runs", which, "--logbook", file}).out.find("present state: " + std::string(said)) !=
              std::string::npos);
    };
    is(run, "sealed", "sealed");
    REQUIRE(stage.writer->review(run, {true, {}}, matteo));
    is(run, "reviewed", "accepted by Matteo Quill");
    REQUIRE(stage.writer->correct(run, {{}, "the second reading was the first", "looked again"}, jorun));
    is(run, "corrected", "corrected, to be reviewed");
    REQUIRE(stage.writer->review(run, {false, "say which step"}, matteo));
    is(run, "sent_back", "sent back");
    REQUIRE(stage.writer->voidRun(other, "never set up", matteo));
    is(other, "void", "void");
    is(run, "sent_back", "sent back");
}

TEST_CASE("runs narrows by press, substrate, person, deviations, words, state and day")
{
    const auto count = [](std::vector<std::string> more) {
        std::vector<std::string> args{"runs", "--logbook", shop().file, "--json"};
        args.insert(args.end(), more.begin(), more.end());
        return runInside(args).json()["runs"].items().size();
    };
    CHECK(count({"--press", "north"}) == 2);
    CHECK(count({"--press", "south"}) == 1);
    CHECK(count({"--state", "abandoned"}) == 1);
    CHECK(count({"--state", "open"}) == 0);
    CHECK(count({"--since", "2025-11-24"}) == 3);
    CHECK(count({"--since", "2025-11-28"}) == 0);
    CHECK(count({"--until", "2025-11-23"}) == 0);
    CHECK(runInside({"runs", "--logbook", shop().file, "--state", "lost"}).exit == 2);
    // By what stands in the rows themselves.
    const auto reader = logbook::openReader(shop().file);
    REQUIRE(reader);
    const std::vector<records::RunRow> rows = (*reader)->runs({}, "")->rows;
    const std::vector<people::PersonRecord> people = (*reader)->people().value();
    const auto having = [&](const auto& what) {
        return static_cast<std::size_t>(std::count_if(rows.begin(), rows.end(), what));
    };
    for (const records::RunRow& one : rows) {
        CHECK(count({"--substrate", one.substrate}) ==
              having([&](const records::RunRow& row) { return row.substrate == one.substrate; }));
        const auto person = std::find_if(people.begin(), people.end(),
                                         [&](const auto& known) { return known.name == one.operatorName; });
        REQUIRE(person != people.end());
        CHECK(count({"--person", person->id.value}) ==
              having([&](const records::RunRow& row) { return row.operatorName == one.operatorName; }));
        CHECK(count({"--text", one.run}) == 1);
        CHECK(count({"--text", one.run, "--press", "nowhere"}) == 0);
    }
    CHECK(count({"--substrate", "none"}) == 0);
    CHECK(count({"--person", "p-99"}) == 0);
    CHECK(count({"--deviations"}) == having([](const records::RunRow& row) { return row.deviations > 0; }));
    CHECK(count({"--text", "nor 2025"}) == 2);
    CHECK(count({"--text", "orth"}) == 0);
    CHECK(runInside({"runs", "--logbook", shop().file, "--limit", "many"}).exit == 2);
}

TEST_CASE("a run's JSON is its sealed bytes, unchanged")
{
    const Ran ran = runProgram({"runs", shop().first, "--logbook", shop().file, "--json"});
    CHECK(ran.exit == 0);
    // Read from outside: the sqlite3 command line knows nothing of us.
    const Ran sql = runTool("sqlite3", {shop().file, "select hex(document), hex(previous_link), hex(link) from "
                                                     "sealed_runs where run_id = '" +
                                                         shop().first + "'"});
    REQUIRE(sql.exit == 0);
    const std::string stored = sql.out.substr(0, sql.out.find('|'));
    std::string upper = hex(bytesOf(ran.out));
    std::transform(upper.begin(), upper.end(), upper.begin(), [](unsigned char c) { return std::toupper(c); });
    CHECK(upper == stored);
    CHECK(ran.json()["kind"].text() == "run");
    const Ran none = runInside({"runs", "no-such-run", "--logbook", shop().file});
    CHECK(none.exit == 2);
}

TEST_CASE("a logbook that is missing or foreign is refused with a sentence")
{
    Folder folder;
    CHECK(runInside({"runs", "--logbook", folder / "none.logbook"}).exit == 2);
    std::ofstream(folder / "text.logbook") << "not a logbook";
    const Ran foreign = runProgram({"runs", "--logbook", folder / "text.logbook"});
    CHECK(foreign.exit == 2);
    CHECK(foreign.err.find("text.logbook") != std::string::npos);
}

TEST_CASE("verify holds anchors against the chain and names the first thing that was changed")
{
    const Json whole = runInside({"verify", shop().file, "--json"}).json();
    CHECK(whole["in_order"].boolean());
    const std::string anchor = std::to_string(whole["count"].integer()) + ':' + whole["link"].text();
    const Ran held = runProgram({"verify", shop().file, "--anchor", anchor.substr(0, anchor.find(':') + 33), "--json"});
    CHECK(held.exit == 0);
    CHECK(held.json()["anchors"].items()[0]["holds"].boolean());

    std::string other = anchor;
    other.back() = other.back() == '0' ? '1' : '0';
    const Ran wrong = runInside({"verify", shop().file, "--anchor", anchor, "--anchor", other, "--json"});
    CHECK(wrong.exit == 1);
    const Json json = wrong.json();
    CHECK(json["anchors"].items()[0]["holds"].boolean());
    CHECK_FALSE(json["anchors"].items()[1]["holds"].boolean(true));
    CHECK_FALSE(json["findings"].items().empty());
    CHECK(runInside({"verify", shop().file, "--anchor", "5:xyz"}).exit == 2);

    Folder folder;
    std::filesystem::copy_file(shop().file, folder / "t.logbook");
    std::string bytes = *readFile(folder / "t.logbook", 1U << 28U);
    // A piece of the sealed document itself, from its middle: the same words in an index prove nothing.
    const std::string document = runInside({"runs", shop().first, "--logbook", shop().file, "--json"}).out;
    std::size_t at = std::string::npos;
    for (std::size_t from = document.size() / 2; at == std::string::npos && from + 60 < document.size(); from += 20)
        at = bytes.find(document.substr(from, 60));
    REQUIRE(at != std::string::npos);
    bytes[at + 30] = bytes[at + 30] == '0' ? '1' : '0';
    std::ofstream(folder / "t.logbook", std::ios::binary) << bytes;
    const Ran changed = runInside({"verify", folder / "t.logbook", "--json"});
    CHECK(changed.exit == 1);
    CHECK(changed.json()["findings"].items()[0]["subject"].text().find("seal ") == 0);
    CHECK_FALSE(changed.json()["in_order"].boolean(true));
}

TEST_CASE("verify says what it did not look at, and which option does")
{
    const Ran plain = runProgram({"verify", shop().file});
    CHECK(plain.exit == 0);
    CHECK(plain.out.find(": in order, ") != std::string::npos);
    CHECK(plain.out.find("The index tables, from which lists and charts are read, were NOT compared with the seals; "
                         "--deep compares them.") != std::string::npos);
    CHECK_FALSE(runInside({"verify", shop().file, "--json"}).json()["deep"].boolean(true));
    const Ran deep = runProgram({"verify", shop().file, "--deep"});
    CHECK(deep.exit == 0);
    CHECK(deep.out.find("seals, and every index table says what they say") != std::string::npos);
    CHECK(deep.out.find("NOT compared") == std::string::npos);
    CHECK(runInside({"verify", shop().file, "--deep", "--json"}).json()["deep"].boolean());

    // A table changed behind the seals' backs: only the deep look sees it, and neither claims more than it saw.
    Folder folder;
    const std::string file = folder / "t.logbook";
    std::filesystem::copy_file(shop().file, file);
    const Ran changed = runTool("sqlite3", {file, "UPDATE run_rows SET state = 'completed'"});
    INFO(changed.err);
    REQUIRE(changed.exit == 0);
    const Ran shallow = runProgram({"verify", file});
    CHECK(shallow.exit == 0);
    CHECK(shallow.out.find("NOT compared") != std::string::npos);
    const Ran found = runProgram({"verify", file, "--deep"});
    CHECK(found.exit == 1);
    CHECK(found.out.find("every index table says") == std::string::npos);
}

TEST_CASE("the sheet of a run still open is a draft, and says so on every page")
{
    Stage stage;
    verbs::Answers half = answersOf("clean");
    half.entries.resize(40);
    REQUIRE_FALSE(stage.tell(half));  // nothing signs it, so it stays open
    const auto open = logbook::OpenRun::openRuns(*stage.writer);
    REQUIRE(open);
    REQUIRE(open->size() == 1);
    const std::string id = open->front(), file = stage.folder / "demo.logbook";
    const Folder folder;
    // While the program that has the run open holds the pen.
    const Ran sheet = runProgram({"sheet", id, "--logbook", file, "--json"}, folder.path());
    INFO(sheet.err);
    REQUIRE(sheet.exit == 0);
    CHECK(sheet.json()["sheet"].text() == id + "-draft.pdf");
    const std::int64_t pages = sheet.json()["pages"].integer();
    REQUIRE(pages > 1);
    for (std::int64_t page = 1; page <= pages; ++page) {
        const std::string n = std::to_string(page);
        INFO("page " << n);
        const std::string text = runTool("pdftotext", {"-f", n, "-l", n, folder / (id + "-draft.pdf"), "-"}).out;
        CHECK(text.find("DRAFT: this run is still open and nobody has signed it") != std::string::npos);
        CHECK(text.find("not sealed") != std::string::npos);
    }
    const std::string all = runTool("pdftotext", {"-layout", folder / (id + "-draft.pdf"), "-"}).out;
    CHECK(all.find("not ended") != std::string::npos);
    CHECK(runTool("pdftotext", {folder / (id + "-draft.pdf"), "-"}).out.find("finds this run") == std::string::npos);
    CHECK(runProgram({"sheet", id, "--blank", "--logbook", file, "--out", folder / "b.pdf"}).exit == 0);
}

TEST_CASE("a sheet can be made of a run, blank of a run, and blank of inputs, without any environment")
{
    Folder folder;
    const Ran sheet = runProgram({"sheet", shop().first, "--logbook", shop().file, "--json"}, folder.path());
    INFO(sheet.err);
    CHECK(sheet.exit == 0);
    CHECK(sheet.err.empty());
    CHECK(sheet.json()["sheet"].text() == shop().first + ".pdf");
    CHECK(runTool("pdftotext", {folder / (shop().first + ".pdf"), "-"}).out.find("DRAFT") == std::string::npos);
    CHECK(sheet.json()["pages"].integer() > 2);
    CHECK(std::filesystem::exists(folder / (shop().first + ".pdf")));
    CHECK(runProgram({"sheet", shop().second, "--blank", "--logbook", shop().file, "--out", folder / "b.pdf"}).exit ==
          0);
    CHECK(runProgram({"sheet", "--blank", "--press", "south", "--job", "J-2103", "--roll", "R0043", "--paper", "letter",
                      "--out", folder / "c.pdf"})
              .exit == 0);
    const std::string blank = runTool("pdftotext", {folder / "b.pdf", "-"}).out;
    CHECK(blank.find("Blank set-up sheet") != std::string::npos);
    // Whoever works by paper sees from it what is outside.
    for (const char* named : {"Outer diameter, measured", "Width of the web, measured"})
        CHECK(blank.find(named) != std::string::npos);
    CHECK(runTool("pdfinfo", {folder / "c.pdf"}).out.find("612 x 792") != std::string::npos);
    // Nobody said a paper: it is that of the shop where the press stands.
    CHECK(runTool("pdfinfo", {folder / (shop().first + ".pdf")}).out.find("595 x 842") != std::string::npos);
    REQUIRE(runProgram({"sheet", "--blank", "--press", "south", "--job", "J-2103", "--roll", "R0043", "--out",
                        folder / "d.pdf"})
                .exit == 0);
    CHECK(runTool("pdfinfo", {folder / "d.pdf"}).out.find("612 x 792") != std::string::npos);
    // Page 1 alone is the page that stands first in the whole sheet, foot and all.
    const Ran first =
        runProgram({"sheet", shop().first, "--logbook", shop().file, "--first-page", "--out", folder / "first.pdf"});
    CHECK(first.out.find("(1 page)") != std::string::npos);
    CHECK(runTool("pdfinfo", {folder / "first.pdf"}).out.find("Pages:           1\n") != std::string::npos);
    CHECK(runTool("pdftotext", {"-layout", folder / "first.pdf", "-"}).out ==
          runTool("pdftotext", {"-layout", "-l", "1", folder / (shop().first + ".pdf"), "-"}).out);
    const Ran nowhere = runProgram({"sheet", shop().first, "--logbook", shop().file, "--out", "/proc/none/x.pdf"});
    CHECK(nowhere.exit == 4);
    // The run that was given up while a stop was held says so on its first page.
    REQUIRE(runProgram({"sheet", shop().third, "--logbook", shop().file, "--out", folder / "c.pdf"}).exit == 0);
    CHECK(runTool("pdftotext", {"-layout", "-l", "1", folder / "c.pdf", "-"})
              .out.find("a stop was still held by Jorun Adeleke-Vane") != std::string::npos);
    CHECK(runInside({"sheet", "no-such-run", "--logbook", shop().file}).exit == 2);
    CHECK(runInside({"sheet"}).exit == 2);
}

TEST_CASE("a sheet comes on the paper that is asked for, whatever the press speaks")
{
    Folder folder;
    for (const std::string& run : {shop().first, shop().third})
        for (const auto& [paper, size] : {std::pair{"letter", "612 x 792"}, std::pair{"a4", "595 x 842"}}) {
            const std::string file = folder / "s.pdf";
            REQUIRE(runProgram({"sheet", run, "--logbook", shop().file, "--paper", paper, "--out", file}).exit == 0);
            CHECK(runTool("pdfinfo", {file}).out.find(size) != std::string::npos);
        }
    const Ran ran = runProgram({"sheet", shop().first, "--logbook", shop().file, "--paper", "napkin"});
    CHECK(ran.exit == 2);
    CHECK(ran.err.find("Write --paper a4 or --paper letter.") != std::string::npos);
}

TEST_CASE("a run under which the clock of the PC was set back is sealed, listed, verified and printed in its order")
{
    Stage stage;
    verbs::Answers answers = answersOf("clean");
    answers.entries[30].seconds = -7200;
    const auto told = stage.tell(answers);
    if (!told) FAIL(sentence(told.error()));
    std::uint64_t n = 0;
    bool back = false;
    for (const run::Event& event : told->run.events()) {
        back = back || (n > 0 && event.stamp().utcMs < told->run.events()[n - 1].stamp().utcMs);
        CHECK(event.stamp().n == ++n);
    }
    CHECK(back);
    stage.writer.reset();
    const std::string file = stage.folder / "demo.logbook", sheet = stage.folder / "s.pdf";
    CHECK(runProgram({"verify", file, "--deep"}).exit == 0);
    CHECK(runProgram({"runs", "--logbook", file}).out.find(told->runId) != std::string::npos);
    REQUIRE(runProgram({"sheet", told->runId, "--logbook", file, "--out", sheet}).exit == 0);
    std::string text = runTool("pdftotext", {"-raw", sheet, "-"}).out;
    std::replace(text.begin(), text.end(), '\n', ' ');
    CHECK(text.find("clock set back") != std::string::npos);
    CHECK(text.find("the clock was set back") != std::string::npos);
}

TEST_CASE("inputs may be named by the ids that a logbook keeps")
{
    const Ran ran = runInside({"targets", "--press", "north", "--job", "J-2101", "--roll",
                               (resources() / "demo/rolls/R0041.toml").string(), "--logbook", shop().file, "--json"});
    INFO(ran.err);
    CHECK(ran.exit == 0);
    CHECK(ran.out == runInside({"targets", "--press", "north", "--job", "J-2101", "--roll", "R0041", "--json"}).out);
}

TEST_CASE("a sheet tells the diameter that was measured on the shaft, and why the reading of the strip became another")
{
    Stage stage;
    verbs::Answers answers = answersOf("clean");
    const auto at = [&answers](const char* step) {
        return std::find_if(answers.entries.begin(), answers.entries.end(),
                            [&](const verbs::AnswerEntry& e) { return e.step == step; });
    };
    const auto measured = [](const char* diameter) {
        verbs::AnswerEntry entry;
        entry.act = "diameter";
        entry.diameter = diameter;
        return entry;
    };
    answers.entries.insert(at("threading.lead.strip"), measured("485 mm"));
    at("threading.lead.strip")->entered = "484.5 mm";
    answers.entries.insert(at("threading.lead.lead_edge"), measured("484 mm"));
    const auto told = stage.tell(answers);
    if (!told) FAIL(sentence(told.error()));
    stage.writer.reset();
    const std::string sheet = stage.folder / "s.pdf";
    REQUIRE(runProgram({"sheet", told->runId, "--logbook", stage.folder / "demo.logbook", "--out", sheet}).exit == 0);
    std::string text = runTool("pdftotext", {"-raw", sheet, "-"}).out;
    std::replace(text.begin(), text.end(), '\n', ' ');
    CHECK(text.find("now 485 mm") != std::string::npos);
    CHECK(text.find("from 484.5 mm to 484 mm: measured again") != std::string::npos);
    CHECK(text.find("stripped 484 mm") != std::string::npos);
    // Stops held by a step are given up where they were held, as those held by an act.
    CHECK(text.find("stop given up") != std::string::npos);
    CHECK(text.find("stop given up by ") == std::string::npos);
}

TEST_CASE("a second deviation parts no number from its unit on page one")
{
    Stage stage;
    verbs::Answers answers = answersOf("south");
    const auto stop = std::find_if(answers.entries.begin(), answers.entries.end(), [](const verbs::AnswerEntry& e) {
        return e.step == "web_guide.at_speed.stop_time";
    });
    REQUIRE(stop != answers.entries.end());
    stop->entered = "4.5 s";
    verbs::AnswerEntry accepted = *std::find_if(answers.entries.begin(), answers.entries.end(),
                                                [](const verbs::AnswerEntry& e) { return e.act == "deviation"; });
    accepted.step = stop->step;
    answers.entries.insert(stop + 1, accepted);
    const auto told = stage.tell(answers);
    if (!told) FAIL(sentence(told.error()));
    stage.writer.reset();
    const std::string sheet = stage.folder / "s.pdf";
    REQUIRE(runProgram({"sheet", told->runId, "--logbook", stage.folder / "demo.logbook", "--out", sheet}).exit == 0);
    const std::string page = runTool("pdftotext", {"-raw", "-l", "1", sheet, "-"}).out;
    const std::string deviations = page.substr(page.find("Deviations\nwhat"));
    for (const char* whole : {"3.8 lbf", "2.96 to 3.54 lbf", "4.5 s", "1.75 to 4.20 s"}) {
        INFO(whole << " in\n" << deviations);
        CHECK(deviations.find(whole) != std::string::npos);
    }
}
