// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/checks.h"

#include <algorithm>

#include "core/history/names.h"
#include "core/inputs/inputs.h"
#include "core/procedure/procedure.h"
#include "core/report/parts.h"
#include "core/seal/document.h"

namespace taut::history {

namespace {

using report::cell;
using report::data;

constexpr std::size_t kPage = 50;

/// Whether this is the step itself or an item of it.
bool isOf(std::string_view step, std::string_view of)
{
    return step.starts_with(of) && (step.size() == of.size() || step[of.size()] == '/');
}

bool isWell(std::string_view verdict) { return verdict != "outside" && verdict != "missing"; }

/// When the last item of this step was answered, if all were answered well; nullopt too where the run has none.
std::optional<std::int64_t> doneIn(const Json::Array& steps, const std::string& of)
{
    std::optional<std::int64_t> last;
    for (const Json& step : steps) {
        if (!isOf(step["step"].text(), of)) continue;
        const auto at = readUtc(step["at"].text());
        if (step["state"].text() != run::stateWord(run::StepState::Answered) || !isWell(step["verdict"].text()) || !at)
            return std::nullopt;
        last = std::max(last.value_or(*at), *at);
    }
    return last;
}

/// Whether somebody has since put on record that one of these answers was none.
bool isTakenBack(const std::vector<seal::Sealing>& story, const std::string& of)
{
    for (const seal::Sealing& sealing : story) {
        const auto* correction = sealing.sequel ? std::get_if<seal::Correction>(&*sealing.sequel) : nullptr;
        if (correction == nullptr) continue;
        for (const seal::CorrectedStep& step : correction->steps)
            if (isOf(step.step, of) && (step.verdict.empty() ? step.shouldBe != "yes" : !isWell(step.verdict)))
                return true;
    }
    return false;
}

/// Looks through runs of one press, newest first, until each of its checks was seen done.
class Search {
public:
    Search(const records::Reader& reader, std::vector<CheckStanding>& checks) : m_reader(reader), m_checks(checks) {}

    [[nodiscard]] bool foundAll() const { return std::none_of(m_checks.begin(), m_checks.end(), isOpen); }

    Result<Done> look(const records::RunRow& row)
    {
        const auto seal = m_reader.sealOfRun(row.run);
        if (!seal) return seal.error();
        const auto named = [&](const CheckStanding& one) {
            return isOpen(one) && seal->document.find('"' + one.check.step) != std::string::npos;
        };
        // Reading a document takes a hundred times as long as seeing that it has none of these steps.
        if (std::none_of(m_checks.begin(), m_checks.end(), named)) return Done{};
        const auto document = seal::read(seal->document);
        if (!document) return document.error();
        const Json::Array steps = seal::stepsOf(document->body);
        for (CheckStanding& one : m_checks) {
            const auto done = isOpen(one) ? doneIn(steps, one.check.step) : std::nullopt;
            if (!done) continue;
            const auto story = m_reader.sealsAbout(row.run);
            if (!story) return story.error();
            if (isTakenBack(*story, one.check.step)) continue;
            one.run = row.run;
            one.doneMs = *done;
        }
        return Done{};
    }

private:
    [[nodiscard]] static bool isOpen(const CheckStanding& one) { return one.run.empty() && !one.check.step.empty(); }
    const records::Reader& m_reader;
    std::vector<CheckStanding>& m_checks;
};

/// False: it was told to end.
Result<bool> lookThrough(const records::Reader& reader, const std::string& press, std::vector<CheckStanding>& checks,
                         const std::function<bool()>& goOn, std::size_t most)
{
    Search search(reader, checks);
    records::RunQuery query;
    query.press = press;
    query.limit = kPage;
    std::string after;
    std::size_t looked = 0;
    do {
        const auto page = reader.runs(query, after);
        if (!page) return page.error();
        for (const records::RunRow& row : page->rows) {
            if (row.seq == 0 || row.present == seal::presentWord(seal::Present::Void)) continue;
            if (search.foundAll() || looked == most) return true;
            if (goOn && !goOn()) return false;
            ++looked;
            if (const auto done = search.look(row); !done) return done.error();
        }
        after = page->next;
    } while (!after.empty());
    for (CheckStanding& one : checks) one.allLooked = true;
    return true;
}

/// The steps that the newest procedures of a store have.
Result<std::vector<std::string>> stepsIn(const records::Reader& reader)
{
    const auto procedures = reader.definitions("procedure");
    if (!procedures) return procedures.error();
    std::vector<std::string> steps;
    for (const run::Source& source : *procedures) {
        Findings lint;
        const auto read = procedure::readProcedure(source.text, source.id, lint);
        if (!read) continue;
        for (const procedure::StageSpec& stage : read->stages)
            for (const procedure::PlaceSpec& place : stage.places)
                for (const procedure::StepSpec& step : place.steps)
                    steps.push_back(stage.id + '.' + place.id + '.' + step.id);
    }
    return steps;
}

report::Cell dayCell(std::int64_t ms, int offsetMinutes) { return cell(data(dayText(ms, offsetMinutes))); }

/// What a check that nobody was seen to do is told as.
Text neverSaid(const CheckStanding& one)
{
    if (!one.check.every || one.check.step.empty()) return "the profile does not say how often, or by which step";
    if (!one.asked) return "no procedure here has its step";
    return one.allLooked ? Text("never") : Text("not in the newest runs");
}

}  // namespace

std::optional<std::int64_t> CheckStanding::dueMs() const
{
    if (run.empty() || !check.every) return std::nullopt;
    return doneMs + static_cast<std::int64_t>(check.every->si() * 1000);
}

bool CheckStanding::overdue(std::int64_t nowMs) const
{
    const auto due = dueMs();
    return !due || *due < nowMs;
}

Result<std::vector<CheckStanding>> checksOf(const records::Reader& reader, const std::function<bool()>& goOn,
                                            std::size_t most)
{
    const auto presses = reader.definitions("press");
    if (!presses) return presses.error();
    std::optional<std::vector<std::string>> known;
    std::vector<CheckStanding> all;
    for (const run::Source& source : *presses) {
        Findings notes;
        const auto press = inputs::readPress(source.text, source.id, notes);
        if (!press || press->checks.empty()) continue;
        if (!known) {
            auto steps = stepsIn(reader);
            if (!steps) return steps.error();
            known = *std::move(steps);
        }
        std::vector<CheckStanding> own;
        for (const inputs::Check& check : press->checks)
            own.push_back({source.id,
                           press->name,
                           check,
                           std::find(known->begin(), known->end(), check.step) != known->end(),
                           {},
                           0,
                           false});
        const auto whole = lookThrough(reader, source.id, own, goOn, most);
        if (!whole) return whole.error();
        if (!*whole) break;
        all.insert(all.end(), own.begin(), own.end());
    }
    return all;
}

std::vector<CheckStanding> overdueOf(std::vector<CheckStanding> checks, std::int64_t nowMs)
{
    std::erase_if(checks, [nowMs](const CheckStanding& one) { return !one.overdue(nowMs); });
    // Never done is due since ever.
    std::stable_sort(checks.begin(), checks.end(),
                     [](const auto& a, const auto& b) { return a.dueMs().value_or(0) < b.dueMs().value_or(0); });
    return checks;
}

report::Report checksReport(const std::vector<CheckStanding>& checks, std::int64_t nowMs, int offsetMinutes)
{
    std::vector<CheckStanding> rows = overdueOf(checks, nowMs);
    const std::size_t overdue = rows.size();
    std::copy_if(checks.begin(), checks.end(), std::back_inserter(rows),
                 [nowMs](const CheckStanding& one) { return !one.overdue(nowMs); });
    report::Report report;
    report.title = "Periodic checks";
    report.subtitle =
        Text("%1 of %2 overdue on %3", {static_cast<std::int64_t>(overdue), static_cast<std::int64_t>(rows.size()),
                                        dayText(nowMs, offsetMinutes)});
    report.foot = "Told from sealed runs";
    report::Table table;
    table.columns = {{Text("Press"), report::Align::Left, 3}, {"Check", report::Align::Left, 6},
                     {"Every", report::Align::Right, 2},      {"Last done", report::Align::Left, 4},
                     {Text("Run"), report::Align::Left, 5},   {"Due", report::Align::Left, 3},
                     {Text("State"), report::Align::Left, 3}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const CheckStanding& one = rows[i];
        const auto due = one.dueMs();
        report::Cell state = cell(i < overdue ? Text("overdue") : Text("in time"));
        state.strong = i < overdue;
        table.rows.push_back({cell(data(one.pressName)), cell(data(one.check.name)),
                              one.check.every ? cell(data(one.check.every->quantity().entered().str())) : cell(Text()),
                              due ? dayCell(one.doneMs, offsetMinutes) : cell(neverSaid(one)), cell(data(one.run)),
                              due ? dayCell(*due, offsetMinutes) : cell(Text()), std::move(state)});
    }
    report.sections.emplace_back(std::move(table));
    report.sections.emplace_back(report::Paragraph{
        "What is looked after, and how often, stands in the profile of the press: a step of its procedure that was "
        "answered well in a signed run shows that it was done. What the press manual, this site's procedures or local "
        "law ask for besides is not told here. Who does the work has to be authorised for it.",
        false});
    return report;
}

}  // namespace taut::history
