// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/procedure/lint.h"

namespace taut::procedure {
namespace {

/// A step of one kind of run, with where it stands.
struct Walked {
    const StageSpec* stage;
    const PlaceSpec* place;
    const StepSpec* step;
};

std::vector<Walked> walk(const Procedure& procedure, std::string_view kind)
{
    std::vector<Walked> all;
    for (const StageSpec& stage : procedure.stages)
        for (const PlaceSpec& place : stage.places)
            for (const StepSpec& step : place.steps)
                if (contains(step.kinds, kind)) all.push_back({&stage, &place, &step});
    return all;
}

bool within(const std::vector<std::string>& inner, const std::vector<std::string>& outer)
{
    return std::all_of(inner.begin(), inner.end(), [&](const std::string& w) { return contains(outer, w); });
}

/// Wherever b is asked, a is asked too.
bool goesWith(const StepSpec& a, const StepSpec& b)
{
    return a.forEach.empty() ? within(a.when, b.when) && within(a.unless, b.unless)
                             : a.forEach == b.forEach && within(a.when, b.when) && within(a.unless, b.unless);
}

bool overlap(const std::vector<std::string>& a, const std::vector<std::string>& b)
{
    return std::any_of(a.begin(), a.end(), [&](const std::string& w) { return contains(b, w); });
}

/// There are presses and runs on which both are asked.
bool together(const StepSpec& a, const StepSpec& b) { return !overlap(a.when, b.unless) && !overlap(a.unless, b.when); }

bool unconditional(const StepSpec& s) { return s.when.empty() && s.unless.empty() && s.forEach.empty(); }

class OrderLint {
public:
    OrderLint(const Procedure& procedure, std::string_view file, Findings& lint)
        : m_procedure(procedure),
          m_file(file),
          m_lint(lint)
    {}

    void all()
    {
        for (const StageSpec& stage : m_procedure.stages) lengthAndVital(stage);
        for (const std::string& kind : allRunKinds()) {
            const std::vector<Walked> steps = walk(m_procedure, kind);
            for (std::size_t i = 0; i < steps.size(); ++i) {
                needs(steps, i, kind);
                heldStops(steps, i, kind);
                call(steps, i, kind);
            }
        }
    }

private:
    void wrong(std::string code, std::string subject, Text text, Text remedy)
    {
        // the same fault shows in several kinds of run: say it once
        const bool said = std::any_of(m_lint.begin(), m_lint.end(), [&](const Finding& f) {
            return f.code == code && f.subject == subject && f.remedy == remedy;
        });
        if (!said) m_lint.push_back(refuse(std::move(code), std::move(subject), std::move(text), std::move(remedy)));
    }
    [[nodiscard]] std::string subject(const Walked& w) const { return subjectOf(m_file, *w.stage, *w.place, *w.step); }

    void lengthAndVital(const StageSpec& stage)
    {
        std::vector<Walked> steps;
        for (const PlaceSpec& place : stage.places) {
            if (place.steps.size() > kMostSteps)
                wrong("lint.too_many_steps", m_file + " place " + stage.id + '.' + place.id,
                      {"%1 steps are written in one place; the most is %2.",
                       {static_cast<std::int64_t>(place.steps.size()), static_cast<std::int64_t>(kMostSteps)}},
                      "Make two places of it, each where one stands for its steps.");
            for (const StepSpec& step : place.steps) steps.push_back({&stage, &place, &step});
        }
        for (std::size_t i = 0; i < steps.size(); ++i)
            if (steps[i].step->vital && 2 * i >= steps.size() && steps[i].step->late.empty())
                wrong("lint.vital_late", subject(steps[i]),
                      "A vital step stands in the second half of its stage, where an interruption is likelier.",
                      "Move it forward, or write in late why it can only be done there.");
    }

    /// What a step needs must be given before it. In a run that goes on from another one, what that run left standing
    /// may be needed; what protects people is given anew, unless it stands for a shift or until power-off anyway.
    void needs(const std::vector<Walked>& steps, std::size_t at, const std::string& kind)
    {
        const StepSpec& step = *steps[at].step;
        for (const std::string& need : step.needs) {
            if (kind != "full" && !isMachineState(need) && (!isProtective(need) || standsBeyondRun(need))) continue;
            bool given = false;
            for (std::size_t i = 0; i < at; ++i) {
                const StepSpec& before = *steps[i].step;
                if (contains(before.ends, need) && goesWith(before, step)) given = false;
                if (contains(before.gives, need) && together(before, step)) given = true;
            }
            if (!given)
                wrong("lint.need_not_given", subject(steps[at]), {"Nothing before this step gives %1.", {need}},
                      {"Put a step that gives %1 before it, in the kind of run %2 too.", {need, kind}});
        }
    }

    /// Every step that gives it says that its answer outlives the run.
    [[nodiscard]] bool standsBeyondRun(const std::string& condition) const
    {
        bool given = false;
        for (const StageSpec& stage : m_procedure.stages)
            for (const PlaceSpec& place : stage.places)
                for (const StepSpec& step : place.steps) {
                    if (!contains(step.gives, condition)) continue;
                    if (step.validFor != ValidFor::Shift && step.validFor != ValidFor::Power) return false;
                    given = true;
                }
        return given;
    }

    /// Hands only under a stop that is held in the same stage; a movement only when every stop is given up.
    void heldStops(const std::vector<Walked>& steps, std::size_t at, const std::string& kind)
    {
        const StepSpec& step = *steps[at].step;
        const bool moves = step.kind == StepKind::Motion;
        if (!moves && !step.hands) return;
        bool covered = false, outstanding = false;
        for (std::size_t i = 0; i < at; ++i) {
            const StepSpec& before = *steps[i].step;
            const bool releases = contains(before.ends, "stop_held");
            if (before.kind == StepKind::Hold && steps[i].stage == steps[at].stage && goesWith(before, step))
                covered = true;
            if ((releases || before.kind == StepKind::Motion) && together(before, step)) covered = false;
            if (before.kind == StepKind::Hold && together(before, step)) outstanding = !releasedBetween(steps, i, at);
        }
        if (step.hands && !moves && !covered && !contains(step.needs, "locked_out"))
            wrong("lint.hands_without_stop", subject(steps[at]), "Hands go into the press here and no stop is held.",
                  {"Put a step of kind hold before it in its stage, in the kind of run %1 too, or need locked_out.",
                   {kind}});
        if (moves && outstanding)
            wrong("lint.motion_while_held", subject(steps[at]), "The press moves here while a stop may still be held.",
                  "Put a step with ends = [\"stop_held\"] before it: everybody out, each holder gives the stop up.");
    }

    /// Whether the hold at `from` is surely given up before `to`.
    static bool releasedBetween(const std::vector<Walked>& steps, std::size_t from, std::size_t to)
    {
        for (std::size_t i = from + 1; i < to; ++i) {
            const StepSpec& s = *steps[i].step;
            if (contains(s.ends, "stop_held") && (goesWith(s, *steps[from].step) || goesWith(s, *steps[to].step)))
                return true;
        }
        return false;
    }

    /// A stage ends with its call, in every kind of run that has steps of it.
    void call(const std::vector<Walked>& steps, std::size_t at, const std::string& kind)
    {
        const bool last = at + 1 == steps.size() || steps[at + 1].stage != steps[at].stage;
        const bool isCall = steps[at].step->kind == StepKind::Call;
        if (last && !(isCall && unconditional(*steps[at].step)))
            wrong("lint.stage_without_call", m_file + " stage " + steps[at].stage->id,
                  {"In the kind of run %1 this stage does not end with a call.", {kind}},
                  "Let its last step be of kind call, in every kind of run that the stage has steps in, always asked.");
        if (!last && isCall)
            wrong("lint.call_not_last", subject(steps[at]), "Steps follow the call that closes this stage.",
                  "Move the call to the end of its stage.");
    }

    const Procedure& m_procedure;
    std::string m_file;
    Findings& m_lint;
};

}  // namespace

void lintOrder(const Procedure& procedure, std::string_view file, Findings& lint)
{
    OrderLint(procedure, file, lint).all();
}

}  // namespace taut::procedure
