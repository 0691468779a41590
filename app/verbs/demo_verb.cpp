// SPDX-License-Identifier: GPL-3.0-or-later
#include <cerrno>
#include <cstdlib>
#include <ostream>
#include <system_error>

#include "app/print/print.h"
#include "app/seams/resources.h"
#include "app/verbs/history_verb.h"
#include "app/verbs/story.h"
#include "app/verbs/verbs.h"
#include "core/base/file.h"
#include "core/records/texts.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

namespace fs = std::filesystem;

Finding noFolder(const fs::path& folder, const std::error_code& error)
{
    if (error == std::errc::no_space_on_device)
        return refuse("folder.unwritable", folder.string(),
                      {"There is no room left to make the folder %1.", {folder.string()}},
                      "Free some room on that disk, or name a folder on another one with --out.");
    return refuse("folder.unwritable", folder.string(),
                  {"The folder %1 cannot be made; the system says: %2.", {folder.string(), error.message()}},
                  "Name one with --out in which this user may write.");
}

/// A folder that is there and can be written to: the one that was said, or a fresh one.
Result<fs::path> outFolder(const Options& options)
{
    if (!options.has("--out")) {
        std::string name = (fs::temp_directory_path() / "tautweb-demo-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) return noFolder(name, {errno, std::generic_category()});
        return fs::path(name);
    }
    const fs::path folder = options.value("--out");
    std::error_code error;
    fs::create_directories(folder, error);
    if (error) return noFolder(folder, error);
    return folder;
}

/// DIR/NAME.EXT, or NAME-2.EXT and so on: a demo never writes over a file that is there.
fs::path newFile(const fs::path& folder, const std::string& name, const std::string& extension)
{
    std::error_code error;
    fs::path file = folder / (name + extension);
    for (int n = 2; fs::exists(file, error); ++n)
        file = folder / std::string(name).append(1, '-').append(std::to_string(n)).append(extension);
    return file;
}

Result<Answers> answersFrom(const fs::path& file)
{
    const auto text = readFile(file);
    if (!text) return text.error();
    Findings notes;
    auto answers = readAnswers(*text, file.string(), notes);
    if (answers && stops(notes)) return notes.front();
    return answers;
}

/// The answers to play, and before them those of the run that they continue.
Result<std::vector<Answers>> chapters(const fs::path& file)
{
    std::vector<Answers> all;
    for (fs::path next = file; !next.empty();) {
        auto answers = answersFrom(next);
        if (!answers) return answers.error();
        next = answers->after.empty() ? fs::path() : next.parent_path() / answers->after;
        all.insert(all.begin(), std::move(*answers));
        if (all.size() > 9)
            return refuse("answers.endless", file.string(), "These answers continue each other in a circle.",
                          "Correct `after` in [run].");
    }
    return all;
}

Result<fs::path> answersFile(const Options& options, const fs::path& resources)
{
    if (options.has("--answers")) return fs::path(options.value("--answers"));
    const std::string press = options.has("--press") ? options.value("--press") : "north";
    const fs::path file = resources / "demo" / "answers" / (press + ".toml");
    std::error_code error;
    if (fs::exists(file, error)) return file;
    std::vector<std::string> known;
    std::string list;
    for (const InputFile& one : shopFiles(resources, "press")) {
        known.push_back(one.id);
        list += (list.empty() ? "" : ", ") + one.id;
    }
    const std::string near = nearest(press, known);
    return refuse("input.unknown", "--press", {"There is no demo for a press called %1.", {press}},
                  near.empty() ? Text("There are: %1.", {list}) : Text("Did you mean %1?", {near}));
}

void tellStages(const run::Run& run, const Console& console)
{
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < run.plan().stages.size(); ++i) {
        const procedure::PlanStage& stage = run.plan().stages[i];
        std::size_t steps = 0;
        for (std::size_t p = stage.first; p < stage.first + stage.count; ++p) steps += run.plan().places[p].count;
        const char* state = "open";
        if (run.stageState(i) == run::StageState::Done) state = "done";
        if (run.stageState(i) == run::StageState::DoneWithDeviation) state = "done with a deviation";
        rows.push_back({"  " + plain(stage.title, run.began().units), std::to_string(steps) + " steps", state});
    }
    console.out << table(rows);
}

std::string verdictOf(const seal::Seal& seal)
{
    const auto document = seal::read(seal.document);
    return document ? document->body["verdict"].text() : std::string();
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    if (const auto misused = historyMisused(options)) return refused(console, json, *misused);
    if (options.has("--history")) return makeHistory(options, console);
    const auto resources = resourcesFolder();
    if (!resources) return refused(console, json, resources.error());
    const auto file = answersFile(options, *resources);
    if (!file) return refused(console, json, file.error());
    const auto story = chapters(*file);
    if (!story) return refused(console, json, story.error());
    const auto folder = outFolder(options);
    if (!folder) return refused(console, json, folder.error());

    // The story is told in a moment and ends now: its clock begins as much earlier as its entries take.
    Instant start = SystemClock().now();
    for (const Answers& answers : *story) start.utcMs -= Storyteller::milliseconds(answers);
    SteppedClock clock(start);
    RandomIds ids;
    const fs::path logbookFile = newFile(*folder, "demo", ".logbook");
    auto writer = logbook::Writer::open(logbookFile, clock, ids, {false, "tautweb demo", 0});
    if (!writer) return refused(console, json, writer.error());
    auto people = fillWithDemoShop(**writer, *resources);
    if (!people) return refused(console, json, people.error());
    Storyteller teller(**writer, clock, *resources, *people);

    std::string parent;
    std::optional<Told> told;
    for (const Answers& answers : *story) {
        auto one = teller.tell(answers, parent);
        if (!one) {
            refused(console, json, one.error());
            // A machine that failed stays that; anything else that stops a run here is a missing or wrong answer.
            return exitFor(one.error()) == Exit::Machine ? Exit::Machine : Exit::Refused;
        }
        parent = one->runId;
        told = std::move(*one);
    }
    const auto anchor = (*writer)->reader().anchor();
    if (!anchor) return refused(console, json, anchor.error());
    const auto document = seal::read(told->seal.document);
    if (!document) return refused(console, json, document.error());
    const auto report = report::reportOf(*document, *anchor, records::textsOf((*writer)->reader()));
    if (!report) return refused(console, json, report.error());
    const fs::path sheet = newFile(*folder, told->runId, ".pdf");
    if (auto printed = print::writePdf(*report, sheet, print::paperFor(*report)); !printed)
        return refused(console, json, printed.error());

    const std::string state = told->run.phase() == run::Phase::Abandoned ? "abandoned" : "completed";
    if (json) {
        print(console, answer()
                           .set("run", told->runId)
                           .set("state", state)
                           .set("verdict", verdictOf(told->seal))
                           .set("logbook", logbookFile.string())
                           .set("sheet", sheet.string())
                           .set("seq", told->seal.seq)
                           .set("link", hex(told->seal.link))
                           .set("steps", static_cast<std::int64_t>(told->run.plan().steps.size()))
                           .set("deviations", static_cast<std::int64_t>(told->run.deviations())));
        return Exit::Done;
    }
    console.out << "The demo shop set up the " << story->back().press << " press for job " << story->back().job
                << "; answers from " << story->back().file << ".\n\n";
    tellStages(told->run, console);
    if (!told->happened.empty()) console.out << "\nOn the way:\n";
    for (const std::string& line : told->happened) console.out << "  " << line << '\n';
    console.out << "\nrun " << told->runId << ' ' << state << ", " << told->run.plan().steps.size() << " steps, "
                << told->run.deviations() << (told->run.deviations() == 1 ? " deviation" : " deviations")
                << ", sealed as number " << told->seal.seq
                << "\nThe times in it are told: a demo plays an hour in a moment.\n\n"
                << "sheet    " << sheet.string() << "\nlogbook  " << logbookFile.string() << '\n';
    return Exit::Done;
}

}  // namespace

Verb demoVerb()
{
    return {{"demo",
             "",
             "walks a demo job through all stages, signs it and writes the logbook and the sheet",
             {{"--out", "DIR", "where to write; else a fresh folder that is printed"},
              {"--press", "ID", "which demo press (north)"},
              {"--answers", "FILE", "answers of your own instead"},
              {"--history", "YEARS", "instead: some years of a shop, as a logbook to look for findings in (2y)"},
              {"--logbook", "FILE", "history: where; the file must not be there yet"},
              {"--runs", "N", "history: how many runs (1200)"},
              {"--short", "", "history: runs of seven steps, for very many of them"},
              {"--seed", "N", "history: another one, the same each time (1)"},
              {"--until", "DATE", "history: the day after its last one (2026-11-27)"},
              {"--drift", "X", "history: how far the north press's unwind brake drifts; 0 not at all (1)"},
              {"--lot", "X", "history: how badly one lot of label paper runs; 0 as any other (1)"},
              {"--shift", "X", "history: how much longer nights take; 0 no longer (1)"}},
             0,
             0},
            run,
            true};
}

}  // namespace taut::app::verbs
