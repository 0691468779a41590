// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <utility>

#include "core/base/clock.h"
#include "core/report/readings.h"
#include "core/run/attachment.h"
#include "core/run/pace.h"
#include "core/run/parts.h"
#include "core/run/remedy.h"
#include "core/run/words.h"

namespace taut::report {

namespace {

std::int64_t count(std::size_t n) { return static_cast<std::int64_t>(n); }

/// What an event tells in a history: what happened, and the words that belong to it. Nothing for ordinary answers.
struct Told {
    Text what;
    std::vector<Text> words;
};

/// How long, in the unit that people would say it in.
Text lastingText(std::int64_t ms)
{
    constexpr std::int64_t kSecond = 1000, kMinute = 60 * kSecond, kHour = 60 * kMinute;
    if (ms < 2 * kMinute) return {"%1 s", {ms / kSecond}};
    if (ms < 2 * kHour) return {"%1 min", {ms / kMinute}};
    return {"%1 h", {ms / kHour}};
}

Text nameIn(const run::Run& run, const procedure::StepId& id)
{
    const procedure::Step* step = run.plan().find(id);
    return step == nullptr ? data(id.value) : nameOf(*step, run.targets().find(step->target));
}

class Teller {
public:
    explicit Teller(const run::Run& run) : m_run(run) {}

    std::optional<Told> operator()(const run::Began& began)
    {
        if (began.parent.empty()) return Told{"run begun", {}};
        return Told{"run begun", {Text("continues run %1", {began.parent})}};
    }
    std::optional<Told> operator()(const run::Answered& answered)
    {
        const procedure::Step* step = m_run.plan().find(answered.step);
        if (step != nullptr && step->kind == procedure::StepKind::Hold)
            holds(answered.entered, run::stopSaid(m_run.plan(), run::placeOfStop(m_run.plan(), *step)));
        const bool outside = answered.judgement.verdict == verdict::Verdict::Outside;
        const Said before = std::exchange(m_said[answered.step.value], Said{answered.entered, outside});
        if (answered.correction)
            return Told{
                "corrected",
                {name(answered.step),
                 Text("from %1 to %2: %3", {said(answered.step, before.entered), said(answered.step, answered.entered),
                                            std::vector<Text>{run::correctionSaid(answered.reason)}})}};
        if (outside) return Told{"read outside", {name(answered.step), said(answered.step, answered.entered).front()}};
        if (before.outside)
            return Told{"read again",
                        {name(answered.step), Text("%1, before it %2", {said(answered.step, answered.entered),
                                                                        said(answered.step, before.entered)})}};
        if (answered.filled && !answered.filled->stale.empty())
            return Told{"found at the roll",
                        {name(answered.step),
                         Text("%1; steps to be done again: %2",
                              {said(answered.step, answered.entered), count(answered.filled->stale.size())})}};
        return std::nullopt;
    }
    std::optional<Told> operator()(const run::NotApplicable& skipped)
    {
        return Told{"does not apply", {name(skipped.step), data(skipped.reason)}};
    }
    std::optional<Told> operator()(const run::Deviated& deviated)
    {
        return Told{"deviation accepted", {name(deviated.step), data(deviated.entered)}};
    }
    std::optional<Told> operator()(const run::InputsChanged& changed)
    {
        const std::int64_t stale = count(changed.stale.size());
        if (changed.what == "roll")
            return Told{"roll changed", {Text("now %1; steps to be done again: %2", {changed.sources.roll.id, stale})}};
        // On its shaft it is what is left of the roll that was measured, and the roll says so.
        Findings notes;
        const run::Source& source = changed.sources.roll;
        const auto roll = inputs::readRoll(source.text, source.id, notes);
        const auto measured = roll ? inputs::diameterAsItRuns(*roll, changed.presentDiameter) : changed.presentDiameter;
        if (!measured) return Told{"diameter measured", {Text("steps to be done again: %1", {stale})}};
        const Quantity now(*measured, Kind::Length, m_run.began().units == UnitSystem::Us ? "in" : "mm");
        return Told{"diameter measured", {Text("now %1; steps to be done again: %2", {now.magnitude(), stale})}};
    }
    std::optional<Told> operator()(const run::StopHeld& held)
    {
        const Text where = run::stopSaid(m_run.plan(), held.where);
        holds(held.holder, where);
        return Told{"stop held", {Text("by %1, %2", {held.holder, std::vector<Text>{where}})}};
    }
    std::optional<Told> operator()(const run::StopGivenUp& given)
    {
        const bool own = given.saidBy.empty() || given.saidByName == given.holder;
        Told told{"stop given up", {}};
        // One holder gives up everything that they hold.
        if (std::vector<Text> where = std::exchange(m_held[given.holder], {}); !where.empty())
            told.words.emplace_back("%1", std::vector<TextArg>{std::move(where)});
        told.words.push_back(own ? Text("by %1", {given.holder})
                                 : Text("of %1, by %2: %3", {given.holder, given.saidByName, given.reason}));
        return told;
    }
    std::optional<Told> operator()(const run::Interrupted& stopped)
    {
        // Who opened the run again tells it, and not who had it when the program ended.
        if (stopped.reason == "ended_without_sign_off")
            return Told{"interrupted", {Text("the program ended, some time after what stands before; found now")}};
        return Told{"interrupted", {run::interruptionSaid(stopped.reason)}};
    }
    std::optional<Told> operator()(const run::Resumed& resumed)
    {
        const Text again("made safe first; steps to be said again: %1", {count(resumed.reconfirm.size())});
        if (resumed.from.empty()) return Told{"resumed", {again}};
        return Told{"resumed, taken over", {Text("from %1", {resumed.from}), again}};
    }
    std::optional<Told> operator()(const run::HandedOver& handed)
    {
        return Told{"handed over",
                    {Text("to %1; steps to be said again: %2", {handed.toName, count(handed.reconfirm.size())})}};
    }
    std::optional<Told> operator()(const run::Repeated& repeated)
    {
        return Told{"stage done again", {stage(repeated.stage), run::causeSaid(repeated.cause)}};
    }
    std::optional<Told> operator()(const run::Noted& noted)
    {
        return Told{"note", {name(noted.step), data(noted.text)}};
    }
    std::optional<Told> operator()(const run::Attached& attached)
    {
        const Text file("%1 (%2)", {attached.name, std::vector<Text>{run::typeSaid(attached.type)}});
        if (attached.step.value.empty()) return Told{"attached", {file}};
        return Told{"attached", {name(attached.step), file}};
    }
    std::optional<Told> operator()(const run::Helped& helped)
    {
        return Told{"what helped", {name(helped.step), run::remedySaid(m_run, helped)}};
    }
    std::optional<Told> operator()(const run::ClockJumped& jumped)
    {
        const bool back = jumped.byMs < 0;
        const Text far = lastingText(back ? -jumped.byMs : jumped.byMs);
        return Told{back ? "clock set back" : "clock set forward",
                    {Text("by %1; what follows stands in the order in which it happened", {std::vector<Text>{far}})}};
    }
    std::optional<Told> operator()(const run::Withdrawn& withdrawn)
    {
        return Told{"press withdrawn", {data(withdrawn.reason)}};
    }
    std::optional<Told> operator()(const run::Returned& returned)
    {
        return Told{"press returned", {data(returned.done)}};
    }
    std::optional<Told> operator()(const run::Completed& completed)
    {
        if (completed.supervisorName.empty()) return Told{"run completed", {data(completed.remarks)}};
        return Told{"run completed",
                    {Text("countersigned by %1", {completed.supervisorName}), data(completed.remarks)}};
    }
    std::optional<Told> operator()(const run::Abandoned& abandoned)
    {
        const std::vector<Text> held = holders(m_run.plan(), abandoned.held);
        if (held.empty()) return Told{"run abandoned", {data(abandoned.reason)}};
        return Told{"run abandoned", {Text("stop still held by %1", {held}), data(abandoned.reason)}};
    }

private:
    /// Where somebody holds a stop, by a step or by an act, each place once.
    void holds(const std::string& who, const Text& where)
    {
        std::vector<Text>& mine = m_held[who];
        if (std::find(mine.begin(), mine.end(), where) == mine.end()) mine.push_back(where);
    }
    struct Said {
        std::string entered;
        bool outside = false;
    };
    [[nodiscard]] Text name(const procedure::StepId& id) const { return nameIn(m_run, id); }
    /// What was answered, as an argument.
    [[nodiscard]] std::vector<Text> said(const procedure::StepId& id, const std::string& entered) const
    {
        return {run::enteredSaid(m_run.plan().find(id), entered)};
    }
    [[nodiscard]] Text stage(const std::string& id) const
    {
        for (const procedure::PlanStage& one : m_run.plan().stages)
            if (one.id == id) return one.title;
        return data(id);
    }
    const run::Run& m_run;
    std::map<std::string, Said> m_said;
    std::map<std::string, std::vector<Text>> m_held;  // by holder: where
};

constexpr std::int64_t kSetBackMs = 1000;  // less is a clock being kept right

/// What the clock of the PC did between two events, so that nobody takes the times for the order.
std::optional<Told> clockTold(const run::Stamp& before, const run::Stamp& now)
{
    const std::int64_t back = before.utcMs - now.utcMs;
    if (back >= kSetBackMs)
        return Told{
            "clock set back",
            {Text("by %1 min; what follows stands in the order in which it happened", {(back + 59'999) / 60'000})}};
    if (before.offsetMinutes != now.offsetMinutes)
        return Told{"local time changed",
                    {Text("from UTC%1 to UTC%2; what follows stands in the order in which it happened",
                          {offsetText(before.offsetMinutes), offsetText(now.offsetMinutes)})}};
    return std::nullopt;
}

/// How long answers took that were given too fast. What was quick is told in whole seconds that it did not reach, what
/// was watched in those that it did.
Text howLong(const run::Haste& haste)
{
    if (haste.what == run::Haste::What::CutShort)
        return {"%1 s of %2 s", {haste.tookMs / 1000, (haste.leastMs + 999) / 1000}};
    return {"%1 answers in less than %2 s", {count(haste.steps.size()), haste.tookMs / 1000 + 1}};
}

Told hasteTold(const run::Run& run, const run::Haste& haste)
{
    const Text first = nameIn(run, haste.steps.front());
    if (haste.what == run::Haste::What::CutShort) return {"watched too short", {first, howLong(haste)}};
    return {"answered fast",
            {first, Text("%1, the last of them: %2",
                         {std::vector<Text>{howLong(haste)}, std::vector<Text>{nameIn(run, haste.steps.back())}})}};
}

/// The verdict of one reading as it was given, whatever came after it.
Cell verdictCell(const run::Answered& answered)
{
    run::StepStanding standing;
    standing.state = run::StepState::Answered;
    standing.answer = answered;
    return markCell(standing);
}

}  // namespace

std::string timeInRun(const run::Run& run, std::int64_t utcMs, int offsetMinutes)
{
    const run::Stamp& begun = run.events().front().stamp();
    const std::string day = localTime(begun.utcMs, begun.offsetMinutes).substr(0, 10);
    const std::string time = localTime(utcMs, offsetMinutes);
    return time.rfind(day, 0) == 0 ? time.substr(11) : time;
}

std::optional<Table> readingsTable(const run::Run& run)
{
    Table table;
    table.caption = "Every reading in the order in which it was taken";
    table.size = Size::Small;
    table.columns = {{"at", Align::Left, 1},     {"what", Align::Left, 3},    {"read", Align::Right, 1},
                     {"window", Align::Left, 1}, {"verdict", Align::Left, 1}, {"by", Align::Left, 1}};
    for (const run::Event& event : run.events()) {
        const auto* answered = std::get_if<run::Answered>(&event.happening());
        if (answered == nullptr || !answered->value) continue;
        const procedure::Step* step = run.plan().find(answered->step);
        const run::Stamp& stamp = event.stamp();
        Cell read = cell(data(answered->entered));
        read.strong = true;
        table.rows.push_back(
            {cell(data(timeInRun(run, stamp.utcMs, stamp.offsetMinutes))),
             step == nullptr ? cell(data(answered->step.value)) : cell(nameOf(*step, run.targets().find(step->target))),
             std::move(read), windowCell(answered->window), verdictCell(*answered), cell(data(stamp.byName))});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

std::vector<Text> hasteSaid(const run::Run& run)
{
    std::vector<Text> all;
    for (const run::Haste& haste : run::hasteOf(run)) {
        const Told told = hasteTold(run, haste);
        all.emplace_back("%1: %2: %3",
                         std::vector<TextArg>{std::vector<Text>{told.what}, std::vector<Text>{told.words[0]},
                                              std::vector<Text>{told.words[1]}});
    }
    return all;
}

Text cutShortSaid(const run::Run& run, const procedure::StepId& step)
{
    const run::StepStanding standing = run.standing(step);
    for (const run::Haste& haste : run::hasteOf(run))
        if (haste.what == run::Haste::What::CutShort && haste.steps.front() == step && standing.answer &&
            (haste.n == standing.n || haste.n == standing.since))
            return howLong(haste);
    return {};
}

std::optional<Table> historyTable(const run::Run& run)
{
    Table table;
    table.caption = "What happened under way";
    table.size = Size::Small;
    table.columns = {{"at", Align::Left, 10},
                     {"what", Align::Left, 10},
                     {"where", Align::Left, 24},
                     {"more", Align::Left, 20},
                     {"by", Align::Left, 10}};
    const auto add = [&](const run::Stamp& stamp, const Told& told, const std::string& by) {
        Cell what = cell(told.what);
        what.strong = true;
        // One word alone tells more under "more" than under "where".
        const std::size_t n = told.words.size();
        table.rows.push_back({cell(data(timeInRun(run, stamp.utcMs, stamp.offsetMinutes))), std::move(what),
                              n > 1 ? cell(told.words[0]) : Cell{}, n > 0 ? cell(told.words[n - 1]) : Cell{},
                              cell(data(by))});
    };
    Teller teller(run);
    const std::vector<run::Haste> hasty = run::hasteOf(run);
    auto haste = hasty.begin();
    const run::Stamp* before = nullptr;
    for (const run::Event& event : run.events()) {
        const run::Stamp& stamp = event.stamp();
        if (before != nullptr && !std::holds_alternative<run::ClockJumped>(event.happening()))
            if (const auto told = clockTold(*before, stamp)) add(stamp, *told, {});
        before = &stamp;
        const auto* accepted = std::get_if<run::Deviated>(&event.happening());
        if (const auto told = std::visit(teller, event.happening()))
            add(stamp, *told, accepted != nullptr ? accepted->byName : stamp.byName);
        for (; haste != hasty.end() && haste->n == stamp.n; ++haste) add(stamp, hasteTold(run, *haste), stamp.byName);
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

}  // namespace taut::report
