// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/at_press.h"

#include <cstdio>
#include <cstdlib>

#include "app/made/gauge.h"
#include "core/run/decide.h"
#include "core/units/plain.h"

namespace taut::bench {

namespace {

run::Source newest(const logbook::Writer& writer, const char* what, const std::string& id)
{
    const auto all = writer.definitions(what);
    if (all)
        for (const logbook::Definition& one : *all)
            if (one.source.id == id) return one.source;
    std::fprintf(stderr, "the logbook keeps no %s %s\n", what, id.c_str());
    std::exit(4);
}

std::string chosen(const run::Run& run, const procedure::Step& step)
{
    const targets::Target* target = run.targets().find(step.target);
    if (target != nullptr && target->ready() != nullptr)
        if (const auto* word = std::get_if<std::string>(&target->ready()->value)) return *word;
    for (const procedure::Choice& choice : step.choices)
        if (!choice.stops) return choice.word;
    return {};
}

run::Answer answerTo(const run::Run& run, const procedure::Step& step, Chance& chance)
{
    using procedure::StepKind;
    switch (step.kind) {
    case StepKind::Motion: {
        run::Answer answer{step.id, "done", {}};
        for (const std::string& need : step.needs)
            if (procedure::isMachineState(need)) answer.stated.push_back(need);
        return answer;
    }
    case StepKind::Reading: {
        const targets::Target* target = run.targets().find(step.target);
        const auto gauge = target == nullptr ? std::nullopt : app::made::Gauge::at(*target, run.began().units);
        const auto read = gauge ? gauge->read({}, false, chance) : std::nullopt;
        // Of a draw without an aim the display shows a share of the speed.
        const std::string unaimed = step.target.ends_with(".setting") ? "0.2 %" : "1 mm";
        return {step.id, read ? read->entered : unaimed, {}};
    }
    case StepKind::Hold: return {step.id, run.operatorName(), {}};
    case StepKind::Scan: return {step.id, run.sources().roll.id, {}};
    case StepKind::Choice: return {step.id, chosen(run, step), {}};
    default: return {step.id, "yes", {}};
    }
}

}  // namespace

logbook::OpenRun::Beginning beginningBy(const logbook::Writer& writer, const std::string& procedure)
{
    const std::string roll =
        "format = 1\n[roll]\nid = \"R0041\"\nsubstrate = \"paper-label-80\"\nwidth = \"330 mm\"\n"
        "outer_diameter = \"500 mm\"\ncore = \"76.2 mm\"\ncore_wall = \"13 mm\"\nlength = \"1360 m\"\n";
    return {{newest(writer, "press", "north"),
             newest(writer, "job", "J-2101"),
             newest(writer, "substrate", "paper-label-80"),
             run::sourceOf("R0041", 0, roll),
             newest(writer, "procedure", procedure),
             {}},
            {"full", true, {}},
            {}};
}

run::Command nextDeed(const run::Run& run, Chance& chance)
{
    const auto next = run.next();
    if (!next) return run::SignOff{};
    const auto closed = run::closedBecause(run, *next);
    if (closed && closed->code == "gate.stop_held" && !run.heldStops().empty())
        return run::GiveUpStop{run.heldStops().front().holder};
    return answerTo(run, *run.plan().find(*next), chance);
}

}  // namespace taut::bench
