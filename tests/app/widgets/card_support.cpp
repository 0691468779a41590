// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/widgets/card_support.h"

namespace taut::app::cards {

StepContent stepOf(procedure::StepKind kind, bool vital)
{
    StepContent content;
    content.step.id = {"stage.place.step"};
    content.step.kind = kind;
    content.step.vital = vital;
    content.step.say = Text("Look at it and say what you see");
    content.step.why = Text("Because it matters.");
    content.step.at = "lift";
    content.stage = QStringLiteral("Threading");
    content.place = QStringLiteral("The roll");
    content.of = 3;
    content.people = {{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator},
                      {QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor}};
    if (kind == procedure::StepKind::Choice)
        content.step.choices = {{"over", "From the top", false, ""}, {"under", "From underneath", false, ""}};
    if (kind == procedure::StepKind::Motion) content.step.needs = {"guards_closed", "power_on", "people_clear"};
    return content;
}

StepContent readingStep()
{
    StepContent content = stepOf(procedure::StepKind::Reading);
    const auto bar = [](double v) { return Quantity(v * 1e5, Kind::Pressure, "bar"); };
    targets::Ready ready;
    ready.value = bar(1.5);
    ready.instrument = bar(0.1);
    ready.window = {bar(1.0), bar(2.0), targets::Rule::Press, Text("its plate")};
    content.step.target = "air.supply";
    content.target = targets::Target{"air.supply", targets::Shape::Quantity, Text("Air"), ready};
    return content;
}

StepContent outsideStep(double bar)
{
    StepContent content = readingStep();
    run::Answered answer;
    answer.step = content.step.id;
    answer.entered = std::to_string(bar) + " bar";
    answer.value = Quantity(bar * 1e5, Kind::Pressure, "bar", answer.entered);
    answer.window = content.target->ready()->window;
    answer.judgement = {verdict::Verdict::Outside, false};
    content.standing.state = run::StepState::Outside;
    content.standing.answer = answer;
    content.standing.byName = "Ines Falk";
    content.standing.n = 7;
    content.step.tries = {Text("Look for a leak"), Text("Look at the regulator")};
    return content;
}

std::vector<StepContent> everyStep()
{
    using K = procedure::StepKind;
    std::vector<StepContent> all;
    for (const K kind : {K::Confirm, K::Reading, K::Choice, K::Scan, K::Hold, K::Motion, K::Call}) {
        all.push_back(stepOf(kind));
        all.push_back(stepOf(kind, true));
    }
    all.push_back(readingStep());
    all.push_back(outsideStep(2.6));
    StepContent held = stepOf(K::Motion, true);
    held.held = {{"Ines Falk", "panel", false}, {"Tom Ried", "rewind", false}};
    held.closed = refuse("gate.stop_held", "x", "A stop is held.");
    all.push_back(held);
    StepContent closed = stepOf(K::Confirm);
    closed.closed = refuse("gate.order", "x", "Something comes first.", "Do that first.");
    all.push_back(closed);
    return all;
}

std::optional<run::Command> sent(const QSignalSpy& spy)
{
    if (spy.size() != 1) return std::nullopt;
    return spy.at(0).at(0).value<run::Command>();
}

std::optional<run::Answer> answered(const QSignalSpy& spy)
{
    const auto command = sent(spy);
    if (!command || !std::holds_alternative<run::Answer>(*command)) return std::nullopt;
    return std::get<run::Answer>(*command);
}

}  // namespace taut::app::cards
