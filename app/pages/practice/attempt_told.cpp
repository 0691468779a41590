// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/attempt_told.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/sessions/lesson.h"
#include "app/text/words.h"
#include "core/practice/attempt_report.h"
#include "core/report/parts.h"

namespace taut::app {

namespace {

struct Told {
    Q_DECLARE_TR_FUNCTIONS(taut::app::Told)
};

/// The steps in words; by their ids where the shop no longer has what the attempt was about.
QStringList stepsText(const practice::Attempt& attempt, const Session& shop)
{
    std::optional<run::Basis> basis;
    Findings notes;
    if (const auto scenario = practice::readScenario(attempt.scenario.text, attempt.scenario.id, notes))
        if (const auto lesson = lessonOf(*scenario, attempt.scenario.text, shop))
            if (auto made = run::basisFor(lesson->sources, {})) basis = *std::move(made);
    QStringList all;
    for (const std::string& id : attempt.score.vitalMissed) {
        const procedure::Step* step = basis ? basis->plan.find(procedure::StepId{id}) : nullptr;
        all << (step == nullptr
                    ? dataText(id)
                    : words(report::nameOf(*step, basis->targets.find(step->target)), basis->inputs.press->units));
    }
    return all;
}

}  // namespace

QString lessonText(const practice::Attempt& attempt) { return dataText(practice::lessonName(attempt)); }

QString resultText(const practice::Score& score) { return score.passed() ? Told::tr("passed") : Told::tr("not yet"); }

QString happenedText(const practice::Attempt& attempt)
{
    if (attempt.consequences.empty()) return words(Text("Nothing happened that should not have."), UnitSystem::Metric);
    const QString first = Told::tr("It happened: %1").arg(words(attempt.consequences.front().text, UnitSystem::Metric));
    const std::size_t more = attempt.consequences.size() - 1;
    return more == 0 ? first : Told::tr("%1 And %2 more.").arg(first).arg(more);
}

QString attemptText(const practice::KeptAttempt& kept, const Session& shop)
{
    const practice::Attempt& one = kept.attempt;
    QStringList lines;
    lines << Told::tr("%1, %2: %3 of %4 points, %5.")
                 .arg(lessonText(one), momentText(one.begun.utcMs, one.begun.offsetMinutes),
                      numberText(one.score.earned), numberText(one.score.total), resultText(one.score));
    lines << Told::tr("Not right and found: %1. Missed: %2. Named in vain: %3.")
                 .arg(one.detection.hits)
                 .arg(one.detection.misses)
                 .arg(one.detection.falseAlarms);
    if (one.consequences.empty()) lines << happenedText(one);
    for (const practice::Consequence& what : one.consequences)
        lines << Told::tr("It happened: %1").arg(words(what.text, UnitSystem::Metric));
    // Whoever missed most of them is not told by the whole list: what has to be written stands below it.
    constexpr qsizetype kNamed = 4;
    if (const QStringList missed = stepsText(one, shop); missed.size() > kNamed + 1)
        lines << Told::tr("Vital steps missed: %1; and %2 more, which the sheet of the attempt names.")
                     .arg(missed.first(kNamed).join(QStringLiteral("; ")))
                     .arg(missed.size() - kNamed);
    else if (!missed.isEmpty())
        lines << Told::tr("Vital steps missed: %1.").arg(missed.join(QStringLiteral("; ")));
    for (const practice::Observed& said : kept.observations)
        lines << Told::tr("%1 signed: %2 %3")
                     .arg(dataText(said.by.name), dataText(said.said.note), dataText(said.said.followUp));
    return lines.join(QLatin1Char('\n'));
}

}  // namespace taut::app
