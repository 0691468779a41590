// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>
#include <ostream>

#include "app/seams/resources.h"
#include "app/verbs/verbs.h"
#include "core/base/clock.h"
#include "core/logbook/logbook.h"
#include "core/records/listed.h"
#include "core/records/texts.h"
#include "core/report/readings.h"
#include "core/run/run.h"
#include "core/run/words.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

/// The names of "--columns", in the order in which they were said.
Result<records::Columns> columnsOf(const Options& options)
{
    records::Columns columns;
    const std::string said = options.value("--columns");
    for (std::size_t from = 0; from < said.size();) {
        const std::size_t to = std::min(said.find(',', from), said.size());
        std::string name = said.substr(from, to - from);
        if (std::find(columns.begin(), columns.end(), name) == columns.end()) columns.push_back(std::move(name));
        from = to + 1;
    }
    if (const auto fit = records::checkColumns(columns); !fit) return fit.error();
    return columns;
}

/// A word of a file as people write it: "with deviations".
std::string spoken(std::string word)
{
    std::replace(word.begin(), word.end(), '_', ' ');
    return word;
}

/// What has become of a run, as the history of the window says it.
std::string presentSaid(const std::string& present, const std::string& reviewedBy)
{
    if (present == seal::presentWord(seal::Present::Reviewed)) return "accepted by " + reviewedBy;
    if (present == seal::presentWord(seal::Present::Corrected)) return "corrected, to be reviewed";
    return spoken(present);
}

std::string shownTime(std::int64_t utcMs)
{
    if (utcMs == 0) return "-";
    std::string text = utcText(utcMs + SystemClock().now().offsetMinutes * 60000LL).substr(0, 16);
    text[10] = ' ';
    return text;
}

Exit list(const records::Reader& reader, const records::RunQuery& query, const Options& options, const Console& console)
{
    const bool json = options.json();
    const auto columns = columnsOf(options);
    if (!columns) return refused(console, json, columns.error());
    const auto page = reader.runs(query, options.value("--after"));
    if (!page) return refused(console, json, page.error());
    if (json) {
        Json all = Json::array();
        for (const records::RunRow& row : page->rows) all.add(records::runJson(row, *columns));
        print(console,
              answer().set("runs", std::move(all)).set("next", page->next.empty() ? Json() : Json(page->next)));
        return Exit::Done;
    }
    if (page->rows.empty()) {
        console.out << "No run fits.\n";
        return Exit::Done;
    }
    std::vector<std::vector<std::string>> rows;
    if (!columns->empty()) {
        rows.push_back(*columns);
        for (const records::RunRow& row : page->rows) {
            std::vector<std::string> cells;
            const Json said = records::runJson(row, *columns);
            for (const auto& [name, value] : said.members())
                cells.push_back(value.isNull() ? "-" : value.isString() ? value.text() : value.dump());
            rows.push_back(std::move(cells));
        }
    } else {
        rows = {
            {"run", "press", "job", "substrate", "roll", "operator", "begun", "ended", "state", "present", "verdict"}};
        for (const records::RunRow& row : page->rows)
            rows.push_back({row.run, row.press, row.job, row.substrate, row.roll, row.operatorName,
                            shownTime(row.begunMs), shownTime(row.endedMs), row.state,
                            presentSaid(row.present, row.reviewedBy), spoken(row.verdict)});
    }
    console.out << table(rows);
    if (!page->next.empty()) console.out << "There are more: tautweb runs --after " << page->next << '\n';
    return Exit::Done;
}

/// One line for each stage of the record, and what was out of the ordinary.
void tell(const seal::Seal& seal, const seal::State& state, const run::Run& run, const Console& console)
{
    const run::Began& began = run.began();
    console.out << "run " << run.id() << ", press " << began.sources.press.id << ", job " << began.sources.job.id
                << ", roll " << run.sources().roll.id << ", by " << run.operatorName() << "\nseal " << seal.seq
                << ", link " << hex(seal.link)
                << "\npresent state: " << presentSaid(seal::presentWord(state.present), state.reviewedBy) << "\n\n";
    const UnitSystem system = run.began().units;
    std::vector<std::vector<std::string>> rows{{"step", "state", "entered", "verdict", "by", "what it is"}};
    for (const procedure::Step& step : run.plan().steps) {
        const run::StepStanding standing = run.standing(step.id);
        const bool answered = standing.answer.has_value();
        // A fact has nothing to be judged by.
        const bool judged = answered && standing.answer->value;
        rows.push_back({step.id.value, spoken(run::stateWord(standing.state)),
                        answered ? plain(run::enteredSaid(&step, standing.answer->entered), system) : "",
                        judged ? verdict::verdictWord(standing.answer->judgement.verdict) : "", standing.byName,
                        plain(report::nameOf(step, run.targets().find(step.target)), system)});
    }
    console.out << table(rows);
    const std::vector<Text> hasty = report::hasteSaid(run);
    if (!hasty.empty()) console.out << "\nTo be looked at, by the times of the answers:\n";
    for (const Text& one : hasty) console.out << "  " << plain(one, system) << '\n';
}

Exit one(const records::Reader& reader, const Options& options, const Console& console)
{
    const auto seal = reader.sealOfRun(options.words().front());
    if (!seal) return refused(console, options.json(), seal.error());
    if (options.json()) {
        // The sealed bytes, unchanged, so that they can be hashed.
        console.out << seal->document;
        return Exit::Done;
    }
    const auto document = seal::read(seal->document);
    if (!document) return refused(console, false, document.error());
    const auto events = seal::eventsOf(*document, records::textsOf(reader));
    if (!events) return refused(console, false, events.error());
    const auto story = reader.sealsAbout(options.words().front());
    if (!story) return refused(console, false, story.error());
    tell(*seal, seal::stateOf(*story), run::Run::fold(*events), console);
    return Exit::Done;
}

Exit run(const Options& options, const Console& console)
{
    const auto query = queryOf(options);
    if (!query) return refused(console, options.json(), query.error());
    Findings notes;
    const auto reader = logbook::openReader(logbookOf(options), false, &notes);
    if (!reader) return refused(console, options.json(), reader.error());
    noted(console, notes);
    if (options.has("--report")) return weekReports(**reader, *query, options, console);
    return options.words().empty() ? list(**reader, *query, options, console) : one(**reader, options, console);
}

}  // namespace

std::filesystem::path logbookOf(const Options& options)
{
    return options.has("--logbook") ? std::filesystem::path(options.value("--logbook")) : usualLogbook();
}

Result<records::RunQuery> queryOf(const Options& options)
{
    records::RunQuery query;
    query.press = options.value("--press");
    query.job = options.value("--job");
    query.substrate = options.value("--substrate");
    query.person = options.value("--person");
    query.withDeviations = options.has("--deviations");
    query.text = options.value("--text");
    query.state = options.value("--state");
    if (!query.state.empty() && query.state != "open" && query.state != "completed" && query.state != "abandoned")
        return refuse("option.no_value", "--state", {"No run is in a state called %1.", {query.state}},
                      "Write open, completed or abandoned.");
    for (const auto& [option, member] :
         {std::pair{"--since", &records::RunQuery::sinceMs}, std::pair{"--until", &records::RunQuery::untilMs}}) {
        if (!options.has(option)) continue;
        const auto day = records::dayBegins(options.value(option), SystemClock().now().offsetMinutes);
        if (!day) return refuse("option.no_value", option, day.error().text, day.error().remedy);
        // The end includes its day.
        query.*member = *day + (std::string_view(option) == "--until" ? 24 * 3600000LL : 0);
    }
    if (options.has("--limit")) {
        const std::string said = options.value("--limit");
        const auto [end, error] = std::from_chars(said.data(), said.data() + said.size(), query.limit);
        if (error != std::errc{} || end != said.data() + said.size() || query.limit == 0 || query.limit > 1000)
            return refuse("option.no_value", "--limit", {"%1 is not a number of runs.", {said}},
                          "Write a whole number from 1 to 1000.");
    }
    return query;
}

Verb runsVerb()
{
    return {{"runs",
             "[RUN]",
             "lists the runs of a logbook, or shows one; RUN --json gives the sealed bytes unchanged",
             {{"--logbook", "FILE", "the logbook; else the usual one of this user"},
              {"--press", "ID", "only this press"},
              {"--job", "ID", "only this job"},
              {"--substrate", "ID", "only on this substrate"},
              {"--person", "ID", "only those that this person had in hand last"},
              {"--deviations", "", "only those in which a supervisor accepted something outside"},
              {"--text", "WORDS", "only those with words that begin so: ids, title, customer, name, remarks"},
              {"--state", "S", "only open, completed or abandoned"},
              {"--since", "DATE", "begun on this day or later, 2026-11-25"},
              {"--until", "DATE", "begun on this day or earlier"},
              {"--report", "DIR", "writes a week of each press on one page, as PDF: that of --since, else this week"},
              {"--columns", "A,B", "only these columns, by the names that --json has, in this order"},
              {"--limit", "N", "at most so many (50)"},
              {"--after", "NEXT", "go on where the last list ended"}},
             0,
             1},
            taut::app::verbs::run,
            false,
            "--report"};
}

}  // namespace taut::app::verbs
