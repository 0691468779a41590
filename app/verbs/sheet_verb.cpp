// SPDX-License-Identifier: GPL-3.0-or-later
#include <optional>
#include <ostream>

#include "app/print/print.h"
#include "app/seams/resources.h"
#include "app/seams/translations.h"
#include "app/text/language.h"
#include "app/verbs/inputs_from.h"
#include "app/verbs/verbs.h"
#include "core/logbook/logbook.h"
#include "core/records/imported.h"
#include "core/records/sheet.h"
#include "core/records/texts.h"
#include "core/report/report.h"

namespace taut::app::verbs {

namespace {

/// As said; nothing when the press is to decide.
Result<std::optional<print::Paper>> paperOf(const Options& options)
{
    const std::string said = options.value("--paper");
    if (said.empty()) return std::optional<print::Paper>();
    if (said == "a4") return std::optional(print::Paper::A4);
    if (said == "letter") return std::optional(print::Paper::Letter);
    return refuse("option.no_value", "--paper", {"There is no paper called %1 here.", {said}},
                  "Write --paper a4 or --paper letter.");
}

/// Sheets are drawn in the language that was said, else in English: a script must get the same on every PC.
std::optional<Finding> speak(const Options& options)
{
    const std::string said = options.value("--language");
    if (said.empty()) return std::nullopt;
    std::string known;
    for (const Language& one : languages()) {
        if (said == one.id) {
            setLanguage(QString::fromLatin1(one.id));
            return std::nullopt;
        }
        known += (known.empty() ? "" : ", ") + std::string(one.id);
    }
    return refuse("option.no_value", "--language", {"No sheet is written in \"%1\".", {said}},
                  {"Write one of: %1.", {known}});
}

/// A sheet to be drawn, and what its file is called when nothing was said.
struct Wanted {
    report::Report report;
    std::string name;
};

Result<Wanted> sheetOfRun(const Options& options, Findings& notes)
{
    const std::string& id = options.words().front();
    const auto reader = logbook::openReader(logbookOf(options), false, &notes);
    if (!reader) return reader.error();
    if (options.has("--blank")) {
        const auto kept = records::documentOf(**reader, id);
        if (!kept) return kept.error();
        // What the run ended with, not what it began with: a roll changed under way stays changed.
        const report::TextBySha texts = records::textsOf(**reader);
        const auto events = seal::eventsOf(kept->document, texts);
        if (!events) return events.error();
        const run::Run run = run::Run::fold(*events);
        InputFiles files;
        run::Sources sources = run.sources();
        for (const auto& [what, source] : {std::pair{"press", &sources.press}, std::pair{"job", &sources.job},
                                           std::pair{"substrate", &sources.substrate}})
            source->text = texts(what, source->sha256);
        files.press = {sources.press.id, sources.press.text, sources.press.id};
        files.job = {sources.job.id, sources.job.text, sources.job.id};
        files.substrate = {sources.substrate.id, sources.substrate.text, sources.substrate.id};
        files.roll = {sources.roll.id, sources.roll.text, sources.roll.id};
        Findings unsaid;
        auto inputs = readInputs(files, unsaid);
        if (!inputs) return inputs.error();
        return Wanted{report::blankSheet({sources, std::move(*inputs), run.facts(), run.targets(), run.plan(), {}}),
                      id + "-blank"};
    }
    auto report = records::sheetOf(**reader, id);
    if (!report) return report.error();
    const std::string name = report->draft.empty() ? id : id + "-draft";
    return Wanted{*std::move(report), name};
}

Result<Wanted> blankSheet(const Options& options)
{
    const auto files = inputFiles(options);
    if (!files) return files.error();
    const auto when = circumstances(options);
    if (!when) return when.error();
    auto sources = sourcesOf(*files, "cold_start");
    if (!sources) return sources.error();
    if (const auto resources = resourcesFolder())
        sources->translation = translationFor(*resources, sources->procedure, language().toStdString());
    run::BasisQuestion question;
    question.webInPress = when->webInPress;
    question.presentDiameter = when->presentDiameter;
    const auto basis = run::basisFor(*sources, question);
    if (!basis) return basis.error();
    return Wanted{report::blankSheet(*basis), files->press.id + '-' + files->job.id + "-blank"};
}

/// Shown only when all that can be checked of it is in order.
Result<Wanted> sheetOfImport(const Options& options, Findings& notes)
{
    const std::string file = options.value("--import");
    const auto anchors = anchorsIn(options);
    if (!anchors) return anchors.error();
    const auto envelope = importedFrom(file);
    if (!envelope) return envelope.error();
    const seal::EnvelopeCheck check = seal::checkEnvelope(*envelope, *anchors);
    for (const Finding& finding : check.findings)
        if (finding.severity == Severity::Stop) return finding;
    notes.insert(notes.end(), check.findings.begin(), check.findings.end());
    auto report = records::sheetOf(*envelope);
    if (!report) return report.error();
    return Wanted{*std::move(report), envelope->run + "-imported"};
}

Result<Wanted> wanted(const Options& options, Findings& notes)
{
    if (options.has("--import")) return sheetOfImport(options, notes);
    if (!options.words().empty()) return sheetOfRun(options, notes);
    if (options.has("--blank")) return blankSheet(options);
    return refuse("option.too_few_words", "sheet", "tautweb sheet needs the id of a run, or --blank and the inputs.",
                  "tautweb runs lists the runs; tautweb sheet --help tells more.");
}

bool isAboutSeal(const Finding& finding) { return finding.subject.rfind("seal ", 0) == 0; }

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    const auto paper = paperOf(options);
    if (!paper) return refused(console, json, paper.error());
    if (const auto wrong = speak(options)) return refused(console, json, *wrong);
    Findings notes;
    const auto sheet = wanted(options, notes);
    if (!sheet) {
        const Exit exit = refused(console, json, sheet.error());
        // An exported run that was changed is an answer, not a wrong question.
        const bool changed = options.has("--import") && isAboutSeal(sheet.error());
        return changed ? Exit::NotInOrder : exit;
    }
    noted(console, notes);
    const print::Pages pages = options.has("--first-page") ? print::Pages::First : print::Pages::All;
    const std::filesystem::path file = options.has("--out")
                                           ? std::filesystem::path(options.value("--out"))
                                           : std::filesystem::path(sheet->name + print::endingOf(pages));
    const auto printed = print::writePdf(sheet->report, file, paper->value_or(print::paperFor(sheet->report)), pages);
    if (!printed) return refused(console, json, printed.error());
    if (json)
        print(console, answer().set("sheet", file.string()).set("pages", printed->pages));
    else
        console.out << file.string() << " (" << printed->pages << (printed->pages == 1 ? " page)\n" : " pages)\n");
    return worst(notes, Exit::Done);
}

}  // namespace

Verb sheetVerb()
{
    VerbSpec spec{"sheet",
                  "RUN | --blank --press P --job J --roll R | --import FILE",
                  "writes the set-up sheet of a run, of an open one as a draft, or a blank one",
                  inputOptions(),
                  0,
                  1};
    spec.options.push_back({"--blank", "", "targets filled, readings empty"});
    spec.options.push_back({"--import", "FILE.json", "the sheet of an exported run, checked and for reading only"});
    spec.options.push_back(
        {"--anchor", "COUNT:LINK", "with --import: from the foot of a sheet; may be repeated", true});
    spec.options.push_back(
        {"--out", "FILE.pdf", "where to write it; else RUN.pdf (RUN-draft.pdf, RUN-page-1.pdf) in this folder"});
    spec.options.push_back({"--first-page", "", "page 1 alone: the set-up, to tape to the press"});
    spec.options.push_back(
        {"--language", "en|es|de", "what the sheet says besides the steps as they were read; else en"});
    spec.options.push_back({"--paper", "a4|letter", "when not said: letter where the press speaks inches, else a4"});
    return {std::move(spec), run, true};
}

}  // namespace taut::app::verbs
