// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/attempt_report.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/practice/handles.h"
#include "core/report/parts.h"
#include "core/run/parts.h"

namespace taut::practice {

namespace {

using report::cell;
using report::data;

Text stepName(const std::string& id, const run::Basis& basis)
{
    const procedure::Step* step = basis.plan.find({id});
    return step == nullptr ? data(id) : report::nameOf(*step, run::targetOf(basis.targets, *step));
}

/// What a deed is called at this press.
Text deedText(const Deed& deed, const inputs::Press& press)
{
    for (const Handle& handle : handlesOf(press)) {
        const bool one = handle.deed.what == deed.what && (handle.deed.item.empty() || handle.deed.item == deed.item ||
                                                           handle.sort == Handle::Sort::Either);
        if (!one) continue;
        const std::vector<Text> name{handle.name};
        if (deed.to && handle.sort == Handle::Sort::Value) return {"%1: set to %2", {name, deed.to->magnitude()}};
        const bool other = handle.sort == Handle::Sort::Either ? deed.item == handle.ways[1] : !deed.on;
        const Text& did = other && !handle.undoes.empty() ? handle.undoes : handle.does;
        return {"%1: %2", {name, std::vector<Text>{did}}};
    }
    return data(deed.what);
}

report::Table missedTable(const Attempt& attempt, const run::Basis& basis)
{
    report::Table table{"Vital steps that were missed: one is enough", {{"Step"}}, {}, report::Size::Normal};
    for (const std::string& step : attempt.score.vitalMissed) table.rows.push_back({cell(stepName(step, basis))});
    return table;
}

report::Table contradictionsTable(const Attempt& attempt, const run::Basis& basis)
{
    report::Table table{
        "Where the press said otherwise",
        {{"At", report::Align::Left, 2}, {"Step", report::Align::Left, 6}, {"The press", report::Align::Left, 8}},
        {},
        report::Size::Normal};
    for (const Contradiction& one : attempt.contradictions)
        table.rows.push_back({cell(data(lessonTime(one.at))), cell(stepName(one.step, basis)), cell(one.text)});
    return table;
}

report::Table happenedTable(const Attempt& attempt, const run::Basis& basis)
{
    report::Table table{"What happened",
                        {{"At", report::Align::Left, 2},
                         {"What", report::Align::Left, 6},
                         {"Because", report::Align::Left, 6},
                         {"The step that guards against it", report::Align::Left, 5}},
                        {},
                        report::Size::Normal};
    for (const Consequence& one : attempt.consequences) {
        bool first = true;
        const auto add = [&](Text because, Text step) {
            table.rows.push_back({first ? cell(data(lessonTime(one.at))) : report::Cell{},
                                  first ? cell(one.text) : report::Cell{}, cell(std::move(because)),
                                  cell(std::move(step))});
            first = false;
        };
        for (const Cause& cause : one.causes) {
            const std::string step = preventedBy(cause, basis.plan);
            add(cause.text, step.empty() ? Text() : stepName(step, basis));
        }
        if (first) add({}, {});
    }
    return table;
}

/// What was seeded, and whether it was named; and what was named in vain.
report::Table foundTable(const Attempt& attempt, const inputs::Press& press)
{
    report::Table table{"What was not as it should be",
                        {{"What", report::Align::Left, 3}, {"Found", report::Align::Left, 1}},
                        {},
                        report::Size::Normal};
    std::vector<Suspect> named;
    for (const Logged& one : attempt.log)
        if (const auto* suspect = std::get_if<Suspect>(&one.act)) named.push_back(*suspect);
    for (const Suspect& suspect : suspectsOf(press)) {
        const auto meant = [&](const auto& all) {
            return std::any_of(all.begin(), all.end(),
                               [&](const auto& one) { return isMeant(suspect, one.what, one.item); });
        };
        const bool wrong = meant(attempt.faults), said = meant(named);
        if (!wrong && !said) continue;
        report::Cell found = cell(!wrong ? Text("said in vain") : said ? Text("found") : Text("not found"));
        found.mark = wrong && said ? report::Mark::Inside : report::Mark::Open;
        table.rows.push_back({cell(suspectText(suspect, press)), std::move(found)});
    }
    return table;
}

}  // namespace

Text modeText(Mode mode)
{
    switch (mode) {
    case Mode::Do: return "do it";
    case Mode::TellSteps: return "tell the steps";
    case Mode::TellKeyPoints: return "tell the key points";
    case Mode::TellReasons: return "tell the reasons";
    case Mode::Free: return "free practice";
    case Mode::Test: return "test";
    }
    return {};
}

std::string lessonName(const Attempt& attempt)
{
    Findings notes;
    const auto scenario = readScenario(attempt.scenario.text, attempt.scenario.id, notes);
    return scenario && !scenario->title.empty() ? scenario->title : attempt.scenario.id;
}

std::string lessonTime(double seconds)
{
    constexpr int kMinute = 60, kHour = 3600;
    const int whole = static_cast<int>(std::max(0.0, seconds));
    char text[24];
    std::snprintf(text, sizeof text, "%d:%02d:%02d", whole / kHour, whole % kHour / kMinute, whole % kMinute);
    return text;
}

Text actText(const Act& act, const run::Basis& basis)
{
    if (const auto* deed = std::get_if<Deed>(&act)) return deedText(*deed, *basis.inputs.press);
    if (const auto* answer = std::get_if<Answer>(&act))
        return {"Answered: %1: %2", {std::vector<Text>{stepName(answer->step, basis)}, answer->entered}};
    if (const auto* suspect = std::get_if<Suspect>(&act))
        return {"Said to be wrong: %1", {std::vector<Text>{suspectText(*suspect, *basis.inputs.press)}}};
    return {"Asked for help: %1", {std::vector<Text>{stepName(std::get<Hint>(act).step, basis)}}};
}

report::Report attemptReport(const Attempt& attempt, const run::Basis& basis)
{
    report::Report sheet;
    const inputs::Press& press = *basis.inputs.press;
    const bool passed = attempt.score.passed();
    sheet.title = "An attempt at the practice press";
    sheet.subtitle = data(attempt.who.name);
    sheet.practice = "PRACTICE";
    sheet.units = press.units;
    sheet.foot = "What was done at the practice press. It qualifies nobody alone.";
    const auto number = [](double value) { return cell(data(shortest(value))); };
    report::Cell result = cell(passed ? Text("passed") : Text("not yet"));
    result.mark = passed ? report::Mark::Inside : report::Mark::Open;
    result.strong = true;
    report::Facts facts;
    facts.pairs = {{"Person", cell(data(attempt.who.name))},
                   {"Begun", cell(data(report::localTime(attempt.begun.utcMs, attempt.begun.offsetMinutes)))},
                   {"Lesson", cell(data(lessonName(attempt)))},
                   {"Press", cell(data(press.name))},
                   {"How", cell(modeText(attempt.mode))},
                   {"Number of the chances", cell(data(std::to_string(attempt.seed)))},
                   {"Result", std::move(result)},
                   {"Score", cell(Text("%1 of %2", {shortest(attempt.score.earned), shortest(attempt.score.total)}))},
                   {"Help asked for", number(attempt.score.hints)},
                   {"Out of order", number(attempt.score.orderErrors)}};
    sheet.sections.emplace_back(std::move(facts));
    sheet.sections.emplace_back(report::Paragraph{
        !attempt.score.vitalMissed.empty() ? Text("Not yet: a vital step was missed, and no sum makes up for that.")
        : passed ? Text("Passed: nothing vital was missed, and nine tenths of the rest are there.")
                 : Text("Not yet: less than nine tenths are there. How long it took counts nothing."),
        true});
    if (attempt.consequences.empty())
        sheet.sections.emplace_back(report::Paragraph{"Nothing happened that should not have.", false});
    for (report::Table table : {happenedTable(attempt, basis), contradictionsTable(attempt, basis),
                                foundTable(attempt, press), missedTable(attempt, basis)})
        if (!table.rows.empty()) sheet.sections.emplace_back(std::move(table));
    return sheet;
}

}  // namespace taut::practice
