// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/pace.h"

#include <algorithm>
#include <set>

namespace taut::run {

namespace {

using procedure::Plan;
using procedure::Step;

constexpr double kLongestWatchS = 24.0 * 3600;  // a record from outside may say anything

/// The place of "stage.place.step/item", also where it is shown in parts.
std::string_view placeOf(const StepId& id)
{
    const std::string_view all = id.value;
    return all.substr(0, all.find('.', all.find('.') + 1));
}

std::int64_t inMs(double seconds) { return static_cast<std::int64_t>(std::clamp(seconds, 0.0, kLongestWatchS) * 1000); }

std::int64_t leastOf(const Step& step)
{
    return step.kind == procedure::StepKind::Reading ? kLeastReadingMs : kLeastAnswerMs;
}

class Timekeeper {
public:
    void take(const Event& event)
    {
        m_at = event.stamp().utcMs;
        m_n = event.stamp().n;
        std::visit(*this, event.happening());
    }
    std::vector<Haste> found()
    {
        closeRow();
        // A row is known to be one only when it has ended; what was cut short within it was found before.
        std::stable_sort(m_found.begin(), m_found.end(), [](const Haste& x, const Haste& y) { return x.n < y.n; });
        return std::move(m_found);
    }

    void operator()(const Answered& e)
    {
        const Step* step = m_plan == nullptr ? nullptr : m_plan->find(e.step);
        const bool saidAgain = m_done.contains(e.step);
        if (e.judgement.verdict == verdict::Verdict::Outside)
            m_done.erase(e.step);
        else
            m_done.insert(e.step);
        const bool known = m_ready && m_at >= *m_ready;
        if (step == nullptr || !known || e.correction || saidAgain || step->external)
            closeRow();
        else
            judge(*step, m_plan->places[step->place].doConfirm);
        m_ready = m_at;
        if (e.filled) change(*e.filled);
    }
    void operator()(const Began& e)
    {
        m_plan = &e.plan;
        m_targets = &e.targets;
        m_ready = m_at;
    }
    void operator()(const InputsChanged& e)
    {
        change(e);
        somethingElse();
    }
    void operator()(const Repeated& e)
    {
        for (const StepId& id : e.reopened) m_done.erase(id);
        somethingElse();
    }
    void operator()(const Deviated& e)
    {
        m_done.insert(e.step);
        if (e.filled) change(*e.filled);
        somethingElse();
    }
    // Written while one looks at a step: they open nothing.
    void operator()(const Noted&) {}
    void operator()(const Attached&) {}
    void operator()(const Helped&) {}
    void operator()(const ClockJumped&)
    {
        closeRow();
        m_ready.reset();
    }
    template <class Other>
    void operator()(const Other&)
    {
        somethingElse();
    }

private:
    /// Answers that count together: one, or what was confirmed in one go at a place.
    struct Group {
        std::string_view place;
        std::int64_t from = 0;
        Haste all;
    };

    void judge(const Step& step, bool doConfirm)
    {
        if (m_group && (!doConfirm || m_group->place != placeOf(step.id))) closeGroup();
        if (!m_group) m_group = Group{placeOf(step.id), *m_ready, {}};
        Haste& all = m_group->all;
        all.steps.push_back(step.id);
        all.n = m_n;
        all.tookMs = m_at - m_group->from;
        all.leastMs += leastOf(step);
        // To the second, as the card counts it down.
        const std::int64_t watchMs = inMs(step.waitSeconds);
        if (all.tookMs + 500 < watchMs) m_found.push_back({Haste::What::CutShort, {step.id}, m_n, all.tookMs, watchMs});
        const std::int64_t movesMs = inMs(reckonedSeconds(step));
        if (static_cast<double>(all.tookMs) < kLeastOfMovement * static_cast<double>(movesMs))
            m_found.push_back({Haste::What::CutShort, {step.id}, m_n, all.tookMs, movesMs});
        if (!doConfirm) closeGroup();
    }
    /// How long a movement takes by its target, where that is a time; nothing for all else.
    [[nodiscard]] double reckonedSeconds(const Step& step) const
    {
        const targets::Target* target =
            step.kind == procedure::StepKind::Motion && m_targets != nullptr ? m_targets->find(step.target) : nullptr;
        const Quantity* time = target == nullptr ? nullptr : target->quantity();
        return time != nullptr && time->kind() == Kind::Time ? time->si() : 0;
    }
    void closeGroup()
    {
        if (!m_group) return;
        const Haste group = std::move(m_group->all);
        m_group.reset();
        if (group.tookMs >= group.leastMs) return endRow();
        m_row.steps.insert(m_row.steps.end(), group.steps.begin(), group.steps.end());
        m_row.n = group.n;
        m_row.tookMs += group.tookMs;
        m_row.leastMs += group.leastMs;
    }
    void endRow()
    {
        if (m_row.steps.size() >= kQuickInARow) m_found.push_back(std::move(m_row));
        m_row = Haste{};
    }
    void closeRow()
    {
        closeGroup();
        endRow();
    }
    void somethingElse()
    {
        closeRow();
        m_ready = m_at;
    }
    void change(const InputsChanged& e)
    {
        m_plan = &e.plan;
        m_targets = &e.targets;
        for (const StepId& id : e.stale) m_done.erase(id);
    }

    const Plan* m_plan = nullptr;  // the ones in force; the events keep them alive
    const targets::Targets* m_targets = nullptr;
    std::set<StepId> m_done;              // answered, and not to be done anew
    std::optional<std::int64_t> m_ready;  // since when what is open could be answered; nullopt: the clock was set
    std::int64_t m_at = 0;
    std::uint64_t m_n = 0;
    std::optional<Group> m_group;
    Haste m_row;  // quick answers so far
    std::vector<Haste> m_found;
};

}  // namespace

std::vector<Haste> hasteOf(const Run& run)
{
    Timekeeper keeper;
    for (const Event& event : run.events()) keeper.take(event);
    return keeper.found();
}

}  // namespace taut::run
