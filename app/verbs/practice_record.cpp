// SPDX-License-Identifier: GPL-3.0-or-later
// What a practice logbook keeps of somebody: an attempt goes in, the training record comes out.
#include <ostream>

#include "app/print/print.h"
#include "app/verbs/practice.h"
#include "core/base/id_source.h"
#include "core/logbook/training.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

Finding missing(const char* option, const char* value)
{
    return refuse("input.missing_option", option, {"%1 is not said.", {std::string(option)}},
                  {"Add %1 with %2.", {std::string(option), std::string(value)}});
}

void tell(const practice::TrainingRecord& record, const Console& console)
{
    console.out << "PRACTICE: training record of " << record.who.name << " (" << record.who.id << ")\n";
    std::vector<std::vector<std::string>> rows;
    for (const practice::KeptAttempt& kept : record.attempts) {
        const practice::Attempt& one = kept.attempt;
        rows.push_back({one.id, utcText(one.begun.utcMs).substr(0, 10), one.scenario.id, practice::modeWord(one.mode),
                        shortest(one.score.earned) + " of " + shortest(one.score.total),
                        one.score.passed() ? "passed" : "not yet",
                        one.consequences.empty() ? "" : "happened: " + std::to_string(one.consequences.size()),
                        kept.observations.empty() ? "" : "seen by " + kept.observations.back().by.name});
    }
    console.out << table(rows);
    console.out << "tests passed in a row: " << inARow(record)
                << (isReadyToBeObserved(record) ? ": ready to be observed at a press" : "") << '\n';
    for (const practice::KeptAttempt* open : followUpsIn(record))
        console.out << "a trainer still has to look at " << open->attempt.id << '\n';
    console.out << "SHA-256 " << recordSha256(record) << '\n';
}

}  // namespace

Result<std::string> keepAttempt(const Options& options, const practice::Lesson& lesson, const std::string& scenarioText,
                                Instant begun)
{
    for (const char* option : {"--person", "--name"})
        if (!options.has(option)) return missing(option, "that of whoever practised");
    SystemClock clock;
    RandomIds ids;
    auto writer = logbook::Writer::open(options.value("--keep"), clock, ids, {true, "tautweb practice", 0});
    if (!writer) return writer.error();
    const auto attempt =
        practice::attemptOf(lesson, run::sourceOf(lesson.scenario().id, 0, scenarioText),
                            {options.value("--person"), options.value("--name")}, {}, begun, clock.now());
    const auto sealed = (*writer)->keepAttempt(attempt);
    if (!sealed) return sealed.error();
    return sealed->id;
}

Exit trainingRecord(const Options& options, const Console& console)
{
    const bool json = options.json();
    if (!options.has("--person")) return refused(console, json, missing("--person", "the id of whoever practised"));
    const std::filesystem::path file = options.value("--record");
    const auto record = logbook::trainingOf(file, options.value("--person"));
    if (!record) return refused(console, json, record.error());
    const auto verified = logbook::verify(file, {});
    if (!verified) return refused(console, json, verified.error());
    if (options.has("--pdf")) {
        const report::Report report = practice::trainingReport(*record);
        const auto printed = print::writePdf(report, options.value("--pdf"), print::paperFor(report));
        if (!printed) return refused(console, json, printed.error());
    }
    if (json)
        print(console, answer()
                           .set("record", practice::recordJson(*record))
                           .set("sha256", practice::recordSha256(*record))
                           .set("findings", findingsJson(verified->findings)));
    else {
        tell(*record, console);
        noted(console, verified->findings);
    }
    return worst(verified->findings, Exit::Done);
}

}  // namespace taut::app::verbs
