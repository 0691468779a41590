// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "core/report/readings.h"
#include "core/report/sequels.h"
#include "core/run/pace.h"

namespace taut::report {

namespace {

constexpr std::size_t kChartsInRow = 3;

const char* resultOf(const run::Run& run)
{
    using run::Phase;
    switch (run.phase()) {
    case Phase::Completed: return run.deviations() > 0 ? "completed, with deviations" : "completed";
    case Phase::Abandoned: return "abandoned";
    case Phase::Interrupted: return "interrupted, not ended";
    case Phase::Withdrawn: return "press withdrawn, not ended";
    case Phase::Running: break;
    }
    return "not ended";
}

Text kindText(const std::string& kind)
{
    if (kind == "next_roll") return "next roll of the same job";
    if (kind == "re_web") return "re-web after a break";
    if (kind == "restart") return "restart after a stand";
    return "full set-up";
}

std::string timeOf(const run::Stamp& stamp) { return localTime(stamp.utcMs, stamp.offsetMinutes); }

bool isEnd(const run::Event& event)
{
    return std::holds_alternative<run::Completed>(event.happening()) ||
           std::holds_alternative<run::Abandoned>(event.happening());
}

/// A language by its id; one that is not known here by the id itself.
Text languageSaid(const std::string& id)
{
    if (id == "es") return "Spanish";
    if (id == "de") return "German";
    return {"%1", {id}};
}

/// Everybody who answered steps, with how many, when it was more than one person; in the order in which they came.
Text answeredBySaid(const run::Run& run)
{
    std::vector<std::pair<const run::Stamp*, std::int64_t>> all;
    for (const run::Event& event : run.events()) {
        if (!std::holds_alternative<run::Answered>(event.happening())) continue;
        const auto known =
            std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first->by == event.stamp().by; });
        if (known == all.end())
            all.emplace_back(&event.stamp(), 1);
        else
            ++known->second;
    }
    if (all.size() < 2) return {};
    std::vector<Text> said;
    said.reserve(all.size());
    for (const auto& [who, answers] : all) said.emplace_back("%1 (%2)", std::vector<TextArg>{who->byName, answers});
    return {"%1", {std::move(said)}};
}

/// Who answered, and what was mended on the way: what is right now, and one name under it, hide both.
Text onTheWay(const run::Run& run)
{
    std::int64_t outside = 0, corrected = 0;
    for (const run::Event& event : run.events())
        if (const auto* answered = std::get_if<run::Answered>(&event.happening())) {
            corrected += answered->correction ? 1 : 0;
            outside += answered->judgement.verdict == verdict::Verdict::Outside ? 1 : 0;
        }
    std::vector<Text> all;
    if (outside > 0) all.push_back(Text("read outside at first: %1", {outside}));
    if (corrected > 0) all.push_back(Text("corrected: %1", {corrected}));
    if (const Text people = answeredBySaid(run); !people.empty())
        all.push_back(Text("answers by: %1", {std::vector<Text>{people}}));
    if (all.empty()) return {};
    return Text("On the way to this: %1.", {std::move(all)});
}

Facts factsOf(const Ground& ground, const run::Run& run, const Text& present)
{
    Facts facts{inputFacts(ground)};
    Cell result = cell(resultOf(run));
    result.strong = true;
    result.mark = run.deviations() > 0 ? Mark::Deviation : Mark::None;
    facts.pairs.emplace_back("Run", cell(data(run.id())));
    facts.pairs.emplace_back("Kind of run", cell(kindText(run.began().kind)));
    facts.pairs.emplace_back("Result", std::move(result));
    if (Text deviations = deviationsSaid(run); !deviations.empty())
        facts.pairs.emplace_back("Deviations", cell(std::move(deviations)));
    if (!present.empty()) facts.pairs.emplace_back("Record", Cell{present, Mark::None, true});
    const run::Stamp& begun = run.events().front().stamp();
    const run::Stamp& last = run.events().back().stamp();
    facts.pairs.emplace_back("Begun", cell(data(timeOf(begun))));
    if (isEnd(run.events().back())) {
        const bool setBack = last.utcMs < begun.utcMs;
        facts.pairs.emplace_back(
            "Ended", cell(setBack ? Text("%1, the clock was set back", {timeOf(last)}) : data(timeOf(last))));
    }
    facts.pairs.emplace_back("Operator", cell(data(run.operatorName())));
    // Where it happened stands further back; whoever reviews the run must not have to look for it there.
    if (const std::size_t hasty = run::hasteOf(run).size(); hasty > 0)
        facts.pairs.emplace_back(
            "Times of answers",
            Cell{Text("to be looked at: %1", {static_cast<std::int64_t>(hasty)}), Mark::Near, true});
    const run::Source& procedure = run.sources().procedure;
    const Text edition("%1, edition %2", {procedure.id, std::int64_t{procedure.edition}});
    const std::string& language = run.sources().translation.id;
    facts.pairs.emplace_back("Procedure", cell(language.empty() ? edition
                                                                : Text("%1, edition %2, read in %3",
                                                                       {procedure.id, std::int64_t{procedure.edition},
                                                                        std::vector<Text>{languageSaid(language)}})));
    return facts;
}

std::string remarksOf(const run::Run& run)
{
    const auto* completed = std::get_if<run::Completed>(&run.events().back().happening());
    return completed == nullptr ? std::string() : completed->remarks;
}

/// What nobody may overlook on any page, else nothing.
Text bannerOf(const run::Run& run)
{
    if (run.phase() == run::Phase::Abandoned) return "ABANDONED: this set-up was not finished";
    if (run.phase() == run::Phase::Withdrawn) return "PRESS WITHDRAWN: out of use until it is given back";
    return {};
}

/// Why it came to that, under a head of its own, before anything that could be taken for a finished set-up.
void addWhy(const run::Run& run, std::vector<Section>& sections)
{
    if (const auto* abandoned = std::get_if<run::Abandoned>(&run.events().back().happening())) {
        sections.emplace_back(Heading{"Why it was abandoned"});
        sections.emplace_back(Paragraph{data(abandoned->reason), true});
        if (const std::vector<Text> held = holders(run.plan(), abandoned->held); !held.empty())
            sections.emplace_back(
                Paragraph{Text("When this run was abandoned a stop was still held by %1.", {held}), true});
        return;
    }
    if (run.phase() != run::Phase::Withdrawn) return;
    for (auto event = run.events().rbegin(); event != run.events().rend(); ++event)
        if (const auto* withdrawn = std::get_if<run::Withdrawn>(&event->happening())) {
            sections.emplace_back(Heading{"Why the press was withdrawn"});
            sections.emplace_back(Paragraph{data(withdrawn->reason), true});
            return;
        }
}

/// Who recorded and who accepted; the names and times are the record's, the rules are for ink.
SignatureBlock signatures(const run::Run& run, const seal::Document* sealed, std::span<const seal::Sealing> sealings)
{
    SignatureBlock block;
    const run::Event& last = run.events().back();
    if (std::holds_alternative<run::Abandoned>(last.happening()))
        block.entries.push_back({"Abandoned by", last.stamp().byName, timeOf(last.stamp())});
    else
        block.entries.push_back({"Operator: this is what I saw and did", run.operatorName(),
                                 isEnd(last) ? timeOf(last.stamp()) : std::string()});
    std::map<std::string, std::size_t> accepted;
    for (const run::Event& event : run.events()) {
        const auto* deviated = std::get_if<run::Deviated>(&event.happening());
        if (deviated == nullptr) continue;
        // One line for each supervisor, told apart by id: the operator's line, with the same name or of the same
        // person, does not say who accepted. Its time is that of the last.
        const auto [at, isNew] = accepted.try_emplace(deviated->by, block.entries.size());
        if (isNew) block.entries.push_back({"Supervisor: I accepted the deviations", deviated->byName, {}});
        block.entries[at->second].at = timeOf(event.stamp());
    }
    if (const auto* completed = std::get_if<run::Completed>(&last.happening());
        completed != nullptr && !completed->supervisorName.empty())
        block.entries.push_back(
            {"Supervisor: I looked at this set-up and sign beside", completed->supervisorName, timeOf(last.stamp())});
    for (SignatureBlock::Entry& entry : sequelSignatures(sealings)) block.entries.push_back(std::move(entry));
    block.entries.push_back({"Taken over by the next shift", {}, {}});
    if (sealed == nullptr) {
        block.notice = "Not sealed: this is a working copy of a run that is still open.";
    } else {
        const std::string by = sealed->body["sealed_by"]["name"].text();
        const auto ms = readUtc(sealed->body["sealed_at"].text());
        const std::string at = ms ? localTime(*ms, last.stamp().offsetMinutes) : std::string();
        block.notice =
            Text("Signed in the logbook by %1 with their own key, %2: %3. Whoever doubts it checks the logbook "
                 "against the count and link at the foot of this page.",
                 {by, at, std::vector<Text>{seal::meaningOf(*sealed)}});
    }
    if (const Text way = onTheWay(run); !way.empty())
        block.notice = Text("%1 %2", {std::vector<Text>{way}, std::vector<Text>{block.notice}});
    return block;
}

/// Checks that came out near a limit or outside: they belong where everybody looks. Accepted ones have a table already.
Table notInside(const Table& checks)
{
    Table table = checks;
    table.rows.clear();
    for (const auto& row : checks.rows) {
        const Mark mark = row.back().mark;
        if (mark == Mark::Near || mark == Mark::Outside) table.rows.push_back(row);
    }
    return table;
}

/// Which charts stand on the first page, in this order: what is set by hand, then the tension of a roll that is set by
/// hand and tapers. A loop that tapers by itself asks nothing of the operator and comes later.
enum class Place : std::uint8_t { Set, Tapers, Later };

Place placeOf(const Chart& chart)
{
    if (chart.yName == Text("setting")) return Place::Set;
    const auto& points = chart.lines.front().points;
    const bool tapers = points.front().second.si() != points.back().second.si();
    return tapers && chart.lines.size() > 1 ? Place::Tapers : Place::Later;
}

std::vector<Chart> sheetCharts(const Ground& ground)
{
    std::vector<Chart> all = chartsOf(ground.inputs, *ground.targets);
    std::stable_sort(all.begin(), all.end(), [](const Chart& x, const Chart& y) { return placeOf(x) < placeOf(y); });
    return all;
}

/// How many of them the first page takes.
std::size_t onFirstPage(const std::vector<Chart>& charts)
{
    const auto later =
        std::find_if(charts.begin(), charts.end(), [](const Chart& chart) { return placeOf(chart) == Place::Later; });
    return std::min(kChartsInRow, static_cast<std::size_t>(later - charts.begin()));
}

/// One row of charts beside each other, from the nth on.
void addChartRow(const std::vector<Chart>& charts, std::size_t from, std::vector<Section>& sections)
{
    const std::size_t count = std::min(charts.size() - from, kChartsInRow);
    const int share = 100 / static_cast<int>(std::max<std::size_t>(count, 2));
    for (std::size_t i = 0; i < count; ++i) {
        sections.emplace_back(Beside{i == 0 ? Beside::What::Begin : Beside::What::Next, share});
        sections.emplace_back(charts[from + i]);
    }
    sections.emplace_back(Beside{Beside::What::End, 100});
}

/// Everything of the first page between its head and its foot.
void addSetUp(const Ground& ground, const Settings& settings, std::vector<Section>& sections)
{
    if (auto drawing = elevation(ground)) sections.emplace_back(std::move(*drawing));
    sections.emplace_back(settings.ofJob);
    std::vector<Chart> drawn = sheetCharts(ground);
    drawn.resize(onFirstPage(drawn));
    const auto table = stations(ground);
    const auto put = [&](const auto& all) {
        for (const auto& one : all) sections.emplace_back(one);
    };
    // A single chart stands beside the stations, several in a row above them.
    const bool alone = drawn.size() == 1;
    if (drawn.size() > 1) addChartRow(drawn, 0, sections);
    sections.emplace_back(Beside{Beside::What::Begin, alone ? 45 : 62});
    if (alone) sections.emplace_back(drawn.front());
    if (alone) sections.emplace_back(Beside{Beside::What::Next, 55});
    if (table) sections.emplace_back(*table);
    if (!alone) sections.emplace_back(Beside{table ? Beside::What::Next : Beside::What::Begin, table ? 38 : 100});
    put(cautions(ground));
    sections.emplace_back(Beside{Beside::What::End, 100});
    if (Table checks = notInside(settings.ofPress); !checks.rows.empty()) {
        checks.caption = "Checks of this press that were not plainly inside";
        sections.emplace_back(std::move(checks));
    }
}

void addSchedules(const Ground& ground, std::vector<Section>& sections)
{
    const std::vector<Chart> all = sheetCharts(ground);
    for (std::size_t i = onFirstPage(all); i < all.size(); i += kChartsInRow) addChartRow(all, i, sections);
    for (Table& table : schedules(ground)) sections.emplace_back(std::move(table));
}

Text titleOf(const Ground& ground, const run::Sources& sources)
{
    const std::string press = ground.inputs.press ? ground.inputs.press->name : sources.press.id;
    return {"%1: job %2, roll %3", {press, sources.job.id, sources.roll.id}};
}

}  // namespace

Result<Report> reportOf(const seal::Document& document, const std::optional<seal::Anchor>& anchor,
                        const TextBySha& texts, std::span<const seal::Sealing> sealings)
{
    if (document.kind != seal::Kind::Run)
        return refuse("report.not_a_run", std::string(seal::kindWord(document.kind)),
                      "A set-up sheet is made from the record of a run; this is another kind of record.",
                      "Choose a run.");
    const auto events = seal::eventsOf(document, texts);
    if (!events) return events.error();
    const run::Run run = run::Run::fold(*events);
    run::Sources sources = run.sources();
    for (const auto& [what, source] :
         {std::pair{"press", &sources.press}, std::pair{"job", &sources.job},
          std::pair{"substrate", &sources.substrate}, std::pair{"procedure", &sources.procedure}})
        if (source->text.empty() && texts) source->text = texts(what, source->sha256);
    const Ground ground{inputsOf(sources), &sources, &run.targets(), &run.plan(), &run.facts(), run.began().units};

    Report report;
    report.title = titleOf(ground, run.sources());
    // The title stands on every page: a page may be torn off.
    if (seal::stateOf(sealings).present == seal::Present::Void)
        report.title = Text("VOID: %1", {std::vector<Text>{report.title}});
    report.subtitle = "Set-up sheet: what each setting should be here, what was read, by whom and when";
    if (!anchor) {
        report.subtitle = "Draft of a set-up sheet: what each setting should be here, and what has been read so far";
        report.draft = isEnd(run.events().back()) ? Text("DRAFT: ended, but not sealed yet")
                                                  : Text("DRAFT: this run is still open and nobody has signed it");
    }
    report.banner = bannerOf(run);
    if (run.began().practice) report.practice = "PRACTICE: nothing of this happened on a press";
    report.runId = run.id();
    report.units = ground.units;
    report.anchor = anchor;
    std::vector<Section>& sections = report.sections;
    if (anchor) {
        sections.emplace_back(Beside{Beside::What::Begin, 87});
        sections.emplace_back(factsOf(ground, run, presentText(sealings)));
        sections.emplace_back(Beside{Beside::What::Next, 13});
        sections.emplace_back(QrText{seal::anchorUri(run.id(), *anchor), "finds this run"});
        sections.emplace_back(Beside{Beside::What::End, 100});
    } else {
        sections.emplace_back(factsOf(ground, run, {}));
    }
    if (auto notice = sequelNotice(sealings)) sections.emplace_back(*std::move(notice));
    addWhy(run, sections);
    const Settings settings = settingsOf(ground, &run);
    addSetUp(ground, settings, sections);
    const auto deviations = deviationsTable(ground, run);
    if (deviations) sections.emplace_back(*deviations);
    if (auto corrections = correctionsTable(run, sealings)) sections.emplace_back(*std::move(corrections));
    if (const std::string remarks = remarksOf(run); !remarks.empty())
        sections.emplace_back(Paragraph{Text("What the next person must know: %1", {remarks}), true});
    sections.emplace_back(signatures(run, anchor ? &document : nullptr, sealings));
    sections.emplace_back(PageBreak{});
    if (auto sequels = sequelsTable(sealings)) sections.emplace_back(*std::move(sequels));
    if (auto history = historyTable(run)) sections.emplace_back(std::move(*history));
    if (auto attachments = attachmentsTable(run)) sections.emplace_back(std::move(*attachments));
    sections.emplace_back(decisionRule());
    if (!settings.ofPress.rows.empty()) sections.emplace_back(settings.ofPress);
    if (auto readings = readingsTable(run)) sections.emplace_back(std::move(*readings));
    sections.emplace_back(stepsTable(ground, run));
    if (auto others = otherTargets(ground)) sections.emplace_back(std::move(*others));
    addSchedules(ground, sections);
    return report;
}

Report blankSheet(const run::Basis& basis)
{
    const Ground ground{basis.inputs,   &basis.sources,
                        &basis.targets, &basis.plan,
                        &basis.facts,   basis.inputs.press ? basis.inputs.press->units : UnitSystem::Metric};
    Report report;
    report.title = titleOf(ground, basis.sources);
    report.subtitle = "Blank set-up sheet: write the readings in, type them in afterwards as a transcription";
    report.units = ground.units;
    std::vector<Section>& sections = report.sections;
    Facts facts{inputFacts(ground)};
    facts.pairs.emplace_back("Operator", Cell{Ruled{}, Mark::None, false});
    facts.pairs.emplace_back("Date and time", Cell{Ruled{}, Mark::None, false});
    sections.emplace_back(std::move(facts));
    const Settings settings = settingsOf(ground, nullptr);
    addSetUp(ground, settings, sections);
    SignatureBlock block;
    block.entries = {{"Operator: this is what I saw and did", {}, {}},
                     {"Supervisor: I accepted the deviations", {}, {}},
                     {"Taken over by the next shift", {}, {}}};
    block.notice = "Not a record until it has been typed in and sealed.";
    sections.emplace_back(std::move(block));
    sections.emplace_back(PageBreak{});
    sections.emplace_back(decisionRule());
    if (!settings.ofPress.rows.empty()) sections.emplace_back(settings.ofPress);
    sections.emplace_back(blankStepsTable(ground));
    if (auto others = otherTargets(ground)) sections.emplace_back(std::move(*others));
    addSchedules(ground, sections);
    return report;
}

}  // namespace taut::report
