// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/replay.h"

#include <algorithm>
#include <cmath>

namespace taut::practice {

namespace {

std::int64_t ticksIn(double seconds) { return std::llround(seconds / World::kTick.si()); }
Time ticks(std::int64_t n) { return World::kTick * static_cast<double>(n); }

TimeMark::What whatOf(const Act& act)
{
    if (std::holds_alternative<Deed>(act)) return TimeMark::What::Deed;
    if (std::holds_alternative<Answer>(act)) return TimeMark::What::Answer;
    return std::holds_alternative<Suspect>(act) ? TimeMark::What::Found : TimeMark::What::Hint;
}

/// The first input that is not the one that was practised with; "" = none.
std::string otherInput(const run::Sources& was, const run::Sources& is)
{
    const std::pair<const run::Source*, const run::Source*> pairs[] = {{&was.press, &is.press},
                                                                       {&was.job, &is.job},
                                                                       {&was.substrate, &is.substrate},
                                                                       {&was.roll, &is.roll},
                                                                       {&was.procedure, &is.procedure}};
    for (const auto& [one, other] : pairs)
        if (one->sha256 != other->sha256) return one->id;
    return {};
}

}  // namespace

std::vector<TimeMark> timeLineOf(const Attempt& attempt)
{
    std::vector<TimeMark> marks;
    for (std::size_t i = 0; i < attempt.log.size(); ++i)
        marks.push_back({whatOf(attempt.log[i].act), attempt.log[i].at, i});
    for (std::size_t i = 0; i < attempt.contradictions.size(); ++i)
        marks.push_back({TimeMark::What::Contradiction, attempt.contradictions[i].at, i});
    for (std::size_t i = 0; i < attempt.consequences.size(); ++i)
        marks.push_back({TimeMark::What::Consequence, attempt.consequences[i].at, i});
    std::stable_sort(marks.begin(), marks.end(), [](const TimeMark& a, const TimeMark& b) { return a.at < b.at; });
    return marks;
}

Result<Replay> Replay::of(Attempt attempt, run::Basis basis)
{
    if (const std::string other = otherInput(attempt.sources, basis.sources); !other.empty())
        return refuse("practice.other_inputs", other, {"%1 is not the one with which this was practised.", {other}},
                      "Take the edition that the attempt names.");
    Findings notes;
    auto scenario = readScenario(attempt.scenario.text, attempt.scenario.id, notes);
    if (!scenario) return scenario.error();
    scenario->seed = attempt.seed;
    scenario->mode = attempt.mode;
    scenario->atOnce = attempt.atOnce;
    // What was seeded is known by now; it is not drawn again.
    scenario->faults = attempt.faults;
    scenario->draw = 0;
    auto lesson = Lesson::begin(std::move(basis), *std::move(scenario));
    if (!lesson) return lesson.error();

    Replay replay(std::move(attempt));
    const auto& log = replay.m_attempt.log;
    const std::int64_t every = ticksIn(kEvery), end = ticksIn(replay.m_attempt.simulated);
    std::size_t next = 0;
    for (std::int64_t now = 0;;) {
        if (now % every == 0) replay.m_kept.push_back({lesson->world(), next});
        for (; next < log.size() && ticksIn(log[next].at) <= now; ++next) (void)lesson->perform(log[next].act);
        if (now >= end) break;
        std::int64_t until = std::min(end, (now / every + 1) * every);
        if (next < log.size()) until = std::min(until, ticksIn(log[next].at));
        lesson->advance(ticks(until - now));
        now = until;
    }
    replay.m_traceSha256 = lesson->trace().sha256();
    return replay;
}

World Replay::at(double seconds) const
{
    const std::int64_t wanted = ticksIn(std::clamp(seconds, 0.0, length()));
    const auto kept = static_cast<std::size_t>(wanted / ticksIn(kEvery));
    World world = m_kept[kept].world;
    std::size_t next = m_kept[kept].next;
    const auto& log = m_attempt.log;
    for (std::int64_t now = ticksIn(world.time());;) {
        for (; next < log.size() && ticksIn(log[next].at) <= now; ++next)
            if (const auto* deed = std::get_if<Deed>(&log[next].act)) (void)world.perform(*deed);
        if (now >= wanted) return world;
        const std::int64_t until = next < log.size() ? std::min(wanted, ticksIn(log[next].at)) : wanted;
        world.advance(ticks(until - now));
        now = until;
    }
}

}  // namespace taut::practice
