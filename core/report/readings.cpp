// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/readings.h"
#include "core/run/answer.h"
#include "core/run/deviation.h"
#include "core/run/words.h"

namespace taut::report {

namespace {

using procedure::Step;
using procedure::StepKind;

/// A heading row for each place where steps are done, put in when its first row comes, and a number for every step: the
/// same words may be said at two places.
class ByPlace {
public:
    explicit ByPlace(const procedure::Plan& plan) : m_plan(plan) {}
    void add(Table& table, const Step& step, std::vector<Cell> row)
    {
        if (m_last != step.place) {
            const procedure::PlanPlace& place = m_plan.places[step.place];
            Cell head = cell(
                Text("%1: %2", {std::vector<Text>{m_plan.stages[place.stage].title}, std::vector<Text>{place.title}}));
            head.strong = true;
            table.rows.push_back({std::move(head)});
            m_last = step.place;
        }
        row.insert(row.begin(), cell(Text("%1", {++m_number})));
        table.rows.push_back(std::move(row));
    }

private:
    const procedure::Plan& m_plan;
    std::optional<std::size_t> m_last;
    std::int64_t m_number = 0;
};

/// Whether a target's value comes from the job, the substrate or the roll, by itself or through other targets.
bool followsFromJob(const targets::Targets& all, const targets::Target& target, int depth = 0)
{
    const targets::Ready* ready = target.ready();
    if (ready == nullptr) return true;  // what is missing must be seen
    if (ready->window.rule == targets::Rule::Job || ready->window.rule == targets::Rule::Maker) return true;
    for (const targets::Given& given : ready->because.given) {
        for (const std::string_view start : {"job.", "substrate.", "roll."})
            if (given.from.starts_with(start)) return true;
        constexpr std::string_view kTarget = "target:";
        const targets::Target* other =
            given.from.starts_with(kTarget) ? all.find(given.from.view().substr(kTarget.size())) : nullptr;
        if (other != nullptr && depth < 8 && followsFromJob(all, *other, depth + 1)) return true;
    }
    return false;
}

/// Width and diameter of the roll stand at the head of a run's sheet as they were measured; page one has no room for
/// both where they are as they should be.
bool standsInTheHead(const Step& step, const std::optional<run::StepStanding>& standing)
{
    if (step.target != "roll.width" && step.target != "roll.diameter") return false;
    using verdict::Verdict;
    if (!standing || standing->state == run::StepState::Deviated || !standing->answer) return false;
    const Verdict verdict = standing->answer->judgement.verdict;
    return verdict == Verdict::Inside || verdict == Verdict::Recorded;
}

/// What a set-up used is known when it is over: it belongs to the job, and is nothing that anybody sets.
bool isUsed(const targets::Target& target) { return target.id == "setup.web"; }

Cell ruled() { return {Ruled{}, Mark::None, false}; }

/// What was typed for a reading, on one line: a number that is parted from its unit is another number.
Cell typed(std::string entered)
{
    constexpr std::string_view kKept = "\u00A0";
    for (std::size_t at = 0; (at = entered.find(' ', at)) != std::string::npos; at += kKept.size())
        entered.replace(at, 1, kKept);
    return cell(data(std::move(entered)));
}

/// What was entered, as it was typed; a fact said is told by its mark alone.
Cell enteredCell(const Step& step, const run::StepStanding& standing)
{
    if (!standing.answer) return {};
    if (step.kind == StepKind::Confirm || step.kind == StepKind::Call || step.kind == StepKind::Motion) return {};
    Cell entered = step.kind == StepKind::Reading ? typed(standing.answer->entered)
                                                  : cell(run::enteredSaid(&step, standing.answer->entered));
    entered.strong = true;
    return entered;
}

/// The window the reading was judged against, else the one it will be.
const targets::Window* windowOf(const targets::Target* target, const run::StepStanding* standing)
{
    if (standing != nullptr && standing->deviation) return &standing->deviation->window;
    if (standing != nullptr && standing->answer) return &standing->answer->window;
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    return ready == nullptr ? nullptr : &ready->window;
}

Cell atCell(const run::Run& run, const run::StepStanding& standing)
{
    if (standing.at == 0) return {};
    return cell(data(timeInRun(run, standing.at, standing.offset)));
}

}  // namespace

Settings settingsOf(const Ground& ground, const run::Run* run)
{
    Settings settings;
    settings.ofJob.size = Size::Large;
    settings.ofPress.size = Size::Small;
    settings.ofJob.caption = "Settings of this job and roll";
    settings.ofPress.caption = "Checks that are the same in every run of this press";
    const Text last = run == nullptr ? Text("by") : Text("verdict");
    for (Table* table : {&settings.ofJob, &settings.ofPress})
        table->columns = {{"what", Align::Left, 3},
                          {"target", Align::Right, 1},
                          {"window", Align::Left, 1},
                          {"read", Align::Right, 1},
                          {last, Align::Left, 1}};
    for (const Step& step : ground.plan->steps) {
        if (step.kind != StepKind::Reading) continue;
        // Of a run, what was aimed at: the target as it stood before the reading itself became part of it.
        const targets::Target* target = run != nullptr        ? run::judgedBy(*run, step)
                                        : step.target.empty() ? nullptr
                                                              : ground.targets->find(step.target);
        std::optional<run::StepStanding> standing;
        if (run != nullptr) standing = run->standing(step.id);
        if (standsInTheHead(step, standing)) continue;
        Cell value = valueCell(target, ground.units);
        value.strong = true;
        const targets::Window* window = windowOf(target, standing ? &*standing : nullptr);
        const bool isSet = target != nullptr && !isUsed(*target) && followsFromJob(*ground.targets, *target);
        Table& table = isSet ? settings.ofJob : settings.ofPress;
        table.rows.push_back(
            {cell(nameOf(step, target)), std::move(value), window == nullptr ? Cell{} : windowCell(*window),
             standing ? enteredCell(step, *standing) : ruled(), standing ? markCell(*standing) : ruled()});
    }
    return settings;
}

Table stepsTable(const Ground& ground, const run::Run& run)
{
    Table table;
    table.caption = "Every step, what was answered, by whom and when";
    table.size = Size::Small;
    table.columns = {{"no.", Align::Right, 1},    {"step", Align::Left, 40}, {"entered", Align::Left, 11},
                     {"result", Align::Left, 10}, {"by", Align::Left, 11},   {"at", Align::Left, 11}};
    ByPlace byPlace(*ground.plan);
    for (const Step& step : ground.plan->steps) {
        const run::StepStanding standing = run.standing(step.id);
        byPlace.add(table, step,
                    {cell(step.say), enteredCell(step, standing), markCell(standing), cell(data(standing.byName)),
                     atCell(run, standing)});
    }
    return table;
}

namespace {

Text cautionSaid(const Step& step)
{
    using procedure::SignalWord;
    const std::vector<Text> said{step.caution};
    switch (step.caution.empty() ? SignalWord::None : step.signal) {
    case SignalWord::Danger: return Text("Danger: %1", {said});
    case SignalWord::Warning: return Text("Warning: %1", {said});
    case SignalWord::Caution: return Text("Caution: %1", {said});
    case SignalWord::Notice: return Text("Notice: %1", {said});
    case SignalWord::None: break;
    }
    return {};
}

/// What whoever works from paper has to read: the hazard first, the step, and the choices to mark.
Text onPaper(const Step& step)
{
    Text said = step.say;
    if (const Text caution = cautionSaid(step); !caution.empty())
        said = Text("%1 %2", {std::vector<Text>{caution}, std::vector<Text>{said}});
    std::vector<Text> choices;
    for (const procedure::Choice& choice : step.choices) choices.push_back(Text("[  ] %1", {choice.say}));
    if (!choices.empty()) said = Text("%1 %2", {std::vector<Text>{said}, choices});
    return said;
}

}  // namespace

Table blankStepsTable(const Ground& ground)
{
    Table table;
    table.caption = "Every step, to be ticked by hand and typed in afterwards as a transcription";
    table.size = Size::Small;
    table.columns = {{"no.", Align::Right, 1},
                     {"", Align::Left, 1},
                     {"step", Align::Left, 46},
                     {"window", Align::Left, 8},
                     {"done or read", Align::Left, 11},
                     {"by", Align::Left, 6},
                     {"at", Align::Left, 6}};
    ByPlace byPlace(*ground.plan);
    for (const Step& step : ground.plan->steps) {
        const targets::Target* target = ground.targets->find(step.target);
        const targets::Ready* ready = target != nullptr ? target->ready() : nullptr;
        byPlace.add(table, step,
                    {step.vital ? cell("vital") : Cell{}, cell(onPaper(step)),
                     ready != nullptr ? windowCell(ready->window) : Cell{}, ruled(), ruled(), ruled()});
    }
    return table;
}

Text deviationsSaid(const run::Run& run)
{
    const auto [inForce, lapsed] = run::countAccepted(run);
    const auto count = [](std::size_t n) { return static_cast<std::int64_t>(n); };
    if (lapsed > 0) return {"%1 in force, %2 no longer in force", {count(inForce), count(lapsed)}};
    return inForce == 0 ? Text() : Text("%1 in force", {count(inForce)});
}

std::optional<Table> deviationsTable(const Ground& ground, const run::Run& run)
{
    Table table;
    table.caption = "Deviations";
    table.size = Size::Small;
    table.columns = {{"what", Align::Left, 12},   {"read", Align::Right, 6},       {"window", Align::Left, 11},
                     {"reason", Align::Left, 18}, {"accepted by", Align::Left, 9}, {"at", Align::Left, 8}};
    for (const auto& [event, deviated, inForce] : run::acceptedIn(run)) {
        const Step* step = run.plan().find(deviated->step);
        const targets::Target* target = step == nullptr ? nullptr : ground.targets->find(step->target);
        Cell entered = typed(deviated->entered);
        entered.strong = inForce;
        table.rows.push_back(
            {step == nullptr ? cell(data(deviated->step.value)) : cell(nameOf(*step, target)), std::move(entered),
             windowCell(deviated->window),
             cell(inForce ? data(deviated->reason) : Text("No longer in force. %1", {deviated->reason})),
             cell(data(deviated->byName)),
             cell(data(timeInRun(run, event->stamp().utcMs, event->stamp().offsetMinutes)))});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

}  // namespace taut::report
