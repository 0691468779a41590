// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/print/print.h"
#include "app/verbs/verbs.h"
#include "core/base/clock.h"
#include "core/base/file.h"
#include "core/logbook/export.h"
#include "core/logbook/logbook.h"
#include "core/records/csv.h"
#include "core/records/sheet.h"

namespace taut::app::verbs {

namespace {

namespace fs = std::filesystem;

/// What was made, for whoever asked.
Exit made(const fs::path& file, const Json& more, const std::string& said, const Options& options,
          const Console& console)
{
    if (options.json()) {
        Json json = answer().set("file", file.string());
        for (const Json::Member& member : more.members()) json.set(member.first, member.second);
        print(console, json);
    } else {
        console.out << file.string() << ": " << said << '\n';
    }
    return Exit::Done;
}

fs::path outOf(const Options& options, const std::string& usual)
{
    return options.has("--out") ? fs::path(options.value("--out")) : fs::path(usual);
}

Exit asJson(const std::string& run, const Options& options, const Console& console)
{
    const fs::path logbook = logbookOf(options), file = outOf(options, run + ".json");
    Findings notes;
    const auto envelope = logbook::envelopeOf(logbook, run, &notes);
    if (!envelope) return refused(console, options.json(), envelope.error());
    noted(console, notes);
    const seal::Envelope::Sealed* own = seal::runOf(*envelope);
    if (own == nullptr) return refused(console, options.json(), seal::checkEnvelope(*envelope, {}).findings);
    if (options.has("--bare")) {
        // Nothing but the sealed bytes: their SHA-256 after the previous link is the link.
        const auto written = writeFile(file, own->seal.document);
        if (!written) return refused(console, options.json(), written.error());
        return made(file, Json::object().set("link", hex(own->seal.link)),
                    "the sealed bytes, " + std::to_string(own->seal.document.size()), options, console);
    }
    const auto text = seal::writeEnvelope(*envelope, SystemClock().now());
    if (!text) return refused(console, options.json(), text.error());
    const auto written = writeFile(file, *text);
    if (!written) return refused(console, options.json(), written.error());
    const auto count = static_cast<std::int64_t>(envelope->seals.size());
    return made(file, Json::object().set("seals", count).set("link", hex(own->seal.link)),
                std::to_string(count) + " seals, checked by tautweb verify " + file.string(), options, console);
}

Exit asCsv(const records::Reader& reader, const Options& options, const Console& console)
{
    std::string name = "readings";
    Result<std::string> csv = std::string();
    if (options.words().empty()) {
        const auto query = queryOf(options);
        if (!query) return refused(console, options.json(), query.error());
        csv = records::readingsCsv(reader, *query);
    } else {
        name = options.words().front();
        const auto seal = reader.sealOfRun(name);
        if (!seal) return refused(console, options.json(), seal.error());
        const auto sealings = reader.sealsAbout(name);
        if (!sealings) return refused(console, options.json(), sealings.error());
        csv = records::readingsCsvOf(*seal, seal::presentWord(seal::stateOf(*sealings).present));
    }
    if (!csv) return refused(console, options.json(), csv.error());
    const fs::path file = outOf(options, name + ".csv");
    const auto written = writeFile(file, *csv);
    if (!written) return refused(console, options.json(), written.error());
    std::int64_t lines = -1;
    bool quoted = false;
    for (const char c : *csv) {
        if (c == '"') quoted = !quoted;
        if (c == '\n' && !quoted) ++lines;
    }
    return made(file, Json::object().set("readings", lines), std::to_string(lines) + " readings", options, console);
}

Exit asPdf(const records::Reader& reader, const std::string& run, const Options& options, const Console& console)
{
    const auto report = records::sheetOf(reader, run);
    if (!report) return refused(console, options.json(), report.error());
    const fs::path file = outOf(options, run + ".pdf");
    const auto printed = print::writePdf(*report, file, print::paperFor(*report));
    if (!printed) return refused(console, options.json(), printed.error());
    return made(file, Json::object().set("pages", printed->pages), std::to_string(printed->pages) + " pages", options,
                console);
}

Exit run(const Options& options, const Console& console)
{
    const std::string as = options.value("--as");
    if (as != "json" && as != "csv" && as != "pdf")
        return refused(console, options.json(),
                       refuse("option.no_value", "--as", "It was not said as what to export.",
                              "Write --as json (to be checked by others), csv (readings) or pdf (the sheet)."));
    if (options.words().empty() && as != "csv")
        return refused(console, options.json(),
                       refuse("option.too_few_words", "export", "It was not said which run to export.",
                              "tautweb runs lists the runs; only readings (--as csv) are exported of several."));
    if (options.has("--bare") && as != "json")
        return refused(console, options.json(),
                       refuse("option.unwanted_value", "--bare", "Only --as json can be bare.",
                              "Leave --bare out, or write --as json."));
    if (as == "json") return asJson(options.words().front(), options, console);
    Findings notes;
    const auto reader = logbook::openReader(logbookOf(options), false, &notes);
    if (!reader) return refused(console, options.json(), reader.error());
    noted(console, notes);
    return as == "csv" ? asCsv(**reader, options, console) : asPdf(**reader, options.words().front(), options, console);
}

}  // namespace

Verb exportVerb()
{
    return {{"export",
             "[RUN] --as json|csv|pdf",
             "writes a sealed run so that others can check it, its readings as a table, or its sheet",
             {{"--as", "FORM", "json: the sealed texts with links and signatures; csv: readings; pdf: the sheet"},
              {"--out", "FILE", "where to write it; else RUN.json, RUN.csv or RUN.pdf in this folder"},
              {"--bare", "", "with --as json: the sealed bytes of the run and nothing else"},
              {"--logbook", "FILE", "the logbook; else the usual one of this user"},
              {"--press", "ID", "without RUN: readings of this press only"},
              {"--job", "ID", "without RUN: of this job only"},
              {"--state", "S", "without RUN: of completed or abandoned runs only"},
              {"--since", "DATE", "without RUN: begun on this day or later, 2026-11-25"},
              {"--until", "DATE", "without RUN: begun on this day or earlier"}},
             0,
             1},
            run,
            false,
            "--as"};
}

}  // namespace taut::app::verbs
