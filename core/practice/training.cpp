// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/training.h"

#include <algorithm>
#include <cmath>

#include "core/practice/attempt_report.h"
#include "core/report/parts.h"

namespace taut::practice {

namespace {

Json whoJson(const Who& who) { return Json::object().set("id", who.id).set("name", who.name); }
Json named(const run::Source& source)
{
    return Json::object().set("id", source.id).set("edition", source.edition).set("sha256", source.sha256);
}

Json observedJson(const Observed& one)
{
    return Json::object()
        .set("seq", one.seq)
        .set("link", one.link)
        .set("note", one.said.note)
        .set("follow_up", one.said.followUp)
        .set("by", whoJson(one.by))
        .set("key", one.key)
        .set("at", utcText(one.at.utcMs));
}

Json attemptJson(const KeptAttempt& kept)
{
    const Attempt& attempt = kept.attempt;
    Json observations = Json::array();
    for (const Observed& one : kept.observations) observations.add(observedJson(one));
    return Json::object()
        .set("seq", kept.seq)
        .set("link", kept.link)
        .set("id", attempt.id)
        .set("scenario", Json::object().set("id", attempt.scenario.id).set("sha256", attempt.scenario.sha256))
        .set("press", named(attempt.sources.press))
        .set("procedure", named(attempt.sources.procedure))
        .set("seed", attempt.seed)
        .set("mode", modeWord(attempt.mode))
        .set("begun", utcText(attempt.begun.utcMs))
        .set("ended", utcText(attempt.ended.utcMs))
        .set("offset", offsetText(attempt.begun.offsetMinutes))
        .set("score", scoreJson(attempt.score, attempt.detection))
        .set("trace_sha256", attempt.traceSha256)
        .set("observations", std::move(observations));
}

report::Cell words(std::string text) { return report::cell(report::data(std::move(text))); }

/// "42.5 of 46 (92 %)".
Text scoreText(const Score& score)
{
    return {
        "%1 of %2 (%3 %)",
        {shortest(score.earned), shortest(score.total), static_cast<std::int64_t>(std::floor(100 * score.share()))}};
}
Text foundText(const Detection& found)
{
    return {"%1 of %2, %3 in vain",
            {static_cast<std::int64_t>(found.hits), static_cast<std::int64_t>(found.hits + found.misses),
             static_cast<std::int64_t>(found.falseAlarms)}};
}

report::Table attemptsTable(const TrainingRecord& record)
{
    report::Table table{"Attempts",
                        {{"Attempt", report::Align::Left, 4},
                         {"When", report::Align::Left, 4},
                         {"Lesson", report::Align::Left, 6},
                         {"Press", report::Align::Left, 2},
                         {"How", report::Align::Left, 3},
                         {"Score", report::Align::Left, 3},
                         {"Vital missed", report::Align::Left, 2},
                         {"Happened", report::Align::Left, 3},
                         {"Found", report::Align::Left, 3},
                         {"Result", report::Align::Left, 3}},
                        {},
                        report::Size::Small};
    for (const KeptAttempt& kept : record.attempts) {
        const Attempt& one = kept.attempt;
        const bool passed = one.score.passed();
        report::Cell result = report::cell(passed ? Text("passed") : Text("not yet"));
        result.mark = passed ? report::Mark::Inside : report::Mark::Open;
        table.rows.push_back({words(one.id), words(report::localTime(one.begun.utcMs, one.begun.offsetMinutes)),
                              words(lessonName(one)), words(one.sources.press.id), report::cell(modeText(one.mode)),
                              report::cell(scoreText(one.score)), words(std::to_string(one.score.vitalMissed.size())),
                              words(std::to_string(one.consequences.size())), report::cell(foundText(one.detection)),
                              std::move(result)});
    }
    return table;
}

report::Table observationsTable(const TrainingRecord& record)
{
    report::Table table{"What trainers saw and signed for",
                        {{"Attempt"}, {"Trainer"}, {"What was seen"}, {"What is taught again"}, {"Signed"}},
                        {},
                        report::Size::Small};
    for (const KeptAttempt& kept : record.attempts)
        for (const Observed& one : kept.observations)
            table.rows.push_back({words(kept.attempt.id), words(one.by.name), words(one.said.note),
                                  words(one.said.followUp),
                                  words(report::localTime(one.at.utcMs, one.at.offsetMinutes))});
    return table;
}

}  // namespace

std::size_t inARow(const TrainingRecord& record)
{
    std::vector<Tried> tries;
    for (const KeptAttempt& kept : record.attempts)
        if (kept.attempt.mode == Mode::Test) tries.push_back({kept.attempt.score.passed(), kept.attempt.faults});
    return inARow(tries);
}

bool isReadyToBeObserved(const TrainingRecord& record) { return inARow(record) >= kInARow; }

Detection detectionIn(const TrainingRecord& record)
{
    Detection all;
    for (const KeptAttempt& kept : record.attempts)
        if (kept.attempt.mode == Mode::Test) all += kept.attempt.detection;
    return all;
}

std::vector<const KeptAttempt*> followUpsIn(const TrainingRecord& record)
{
    std::vector<const KeptAttempt*> open;
    for (const KeptAttempt& kept : record.attempts)
        if (kept.attempt.mode == Mode::Test && !kept.attempt.score.passed() && kept.observations.empty())
            open.push_back(&kept);
    return open;
}

std::vector<const Observed*> unknownHands(const TrainingRecord& record, std::span<const people::PersonRecord> people)
{
    std::vector<const Observed*> unknown;
    for (const KeptAttempt& kept : record.attempts)
        for (const Observed& one : kept.observations) {
            const bool known = std::any_of(people.begin(), people.end(), [&](const people::PersonRecord& person) {
                return person.id.value == one.by.id && person.key && hex(*person.key) == one.key;
            });
            if (!known) unknown.push_back(&one);
        }
    return unknown;
}

Json recordJson(const TrainingRecord& record)
{
    Json attempts = Json::array(), followUps = Json::array();
    for (const KeptAttempt& kept : record.attempts) attempts.add(attemptJson(kept));
    for (const KeptAttempt* kept : followUpsIn(record)) followUps.add(kept->attempt.id);
    return Json::object()
        .set("format", 1)
        .set("kind", "training_record")
        .set("practice", true)
        .set("person", whoJson(record.who))
        .set("attempts", std::move(attempts))
        .set("in_a_row", static_cast<std::int64_t>(inARow(record)))
        .set("ready_to_be_observed", isReadyToBeObserved(record))
        .set("follow_ups", std::move(followUps));
}

std::string recordSha256(const TrainingRecord& record) { return hex(sha256(recordJson(record).dump())); }

report::Report trainingReport(const TrainingRecord& record)
{
    using report::cell;
    report::Report sheet;
    sheet.title = "Training record";
    sheet.subtitle = report::data(record.who.name);
    sheet.practice = "PRACTICE";
    sheet.foot = "What was done at the practice press. It qualifies nobody alone.";
    const auto count = [](std::size_t n) { return words(std::to_string(n)); };
    const Detection found = detectionIn(record);
    report::Facts facts;
    facts.pairs = {{"Person", words(record.who.name + " (" + record.who.id + ")")},
                   {"Attempts", count(record.attempts.size())},
                   {"Tests passed in a row, with other faults each", count(inARow(record))},
                   {"Ready to be observed at a press", cell(isReadyToBeObserved(record) ? Text("yes") : Text("no"))},
                   {"What was not right, found in tests", cell(foundText(found))},
                   {"Tests that a trainer still has to look at", count(followUpsIn(record).size())}};
    if (const auto told = found.sensitivity(); told && found.hits + found.misses > 0)
        facts.pairs.emplace_back("How well it was told from the rest (d')",
                                 words(shortest(std::round(100 * told->dPrime) / 100)));
    sheet.sections.emplace_back(std::move(facts));
    sheet.sections.emplace_back(report::Paragraph{
        "Practice alone qualifies nobody. Who may work a press alone is said by a supervisor in the shop's logbook, "
        "for "
        "one press and until a day, after set-ups at that press that somebody watched. Who may lock out energy is for "
        "the site's own procedure and local law."});
    sheet.sections.emplace_back(attemptsTable(record));
    if (report::Table seen = observationsTable(record); !seen.rows.empty())
        sheet.sections.emplace_back(std::move(seen));
    sheet.sections.emplace_back(
        report::Paragraph{Text("This record by its SHA-256: %1", {recordSha256(record)}), true});
    report::SignatureBlock block;
    for (const KeptAttempt& kept : record.attempts)
        for (const Observed& one : kept.observations)
            block.entries.push_back({Text("Trainer: I looked at the attempt %1", {kept.attempt.id}), one.by.name,
                                     report::localTime(one.at.utcMs, one.at.offsetMinutes)});
    if (block.entries.empty()) block.entries.push_back({"Trainer: I looked at these attempts", {}, {}});
    sheet.sections.emplace_back(std::move(block));
    return sheet;
}

}  // namespace taut::practice
