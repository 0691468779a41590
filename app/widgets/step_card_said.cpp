// SPDX-License-Identifier: GPL-3.0-or-later
// What a step's card says of how the step stands.
#include <algorithm>

#include <QLabel>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/step_card.h"
#include "core/run/words.h"
#include "core/units/format.h"
#include "core/verdict/near.h"
#include "core/verdict/slip.h"

namespace taut::app {

namespace {

/// The verdict of a reading, and why it is only near though it lies within its limits.
QString verdictSaid(const run::Answered& answer, UnitSystem system)
{
    const QString word = verdictText(answer.judgement);
    const auto why = verdict::whyNear(*answer.value, answer.uncertainty, answer.window);
    return why ? StepCard::tr("It is %1: %2.").arg(word, words(*why, system)) : StepCard::tr("It is %1.").arg(word);
}

}  // namespace

void StepCard::addLine(const QString& text, const char* role)
{
    if (text.isEmpty()) return;
    QLabel* line = wrapped(text, role, m_linesBox);
    m_lines->addWidget(line);
    line->show();  // at once: a layout would show it only after the next round of events
}

void StepCard::showStanding()
{
    const run::StepStanding& s = m_content.standing;
    if (m_content.step.hands && m_content.step.kind != procedure::StepKind::Hold)
        addLine(tr("Hands go in here: only while a stop is held."), "strong");
    // What the step takes for granted, and what the targets say is not so.
    if (const targets::Ready* ready = m_content.target ? m_content.target->ready() : nullptr)
        if (const bool* yes = std::get_if<bool>(&ready->value); yes && !*yes)
            addLine(words(ready->advice, m_content.units), "strong");
    if (s.state == run::StepState::Stale)
        addLine(m_content.staleBecause.isEmpty()
                    ? tr("An input changed after this was answered. Answer it again.")
                    : tr("%1 changed after this was answered. Answer it again.").arg(m_content.staleBecause),
                "strong");
    if (s.state == run::StepState::Open && s.answer)
        addLine(tr("Asked again because its stage is done again. Look, and answer anew."), "strong");
    if (s.state == run::StepState::Reconfirm)
        addLine(tr("Look and say it again: interrupted or handed over since."), "strong");
    if (s.state == run::StepState::NotApplicable)
        addLine(tr("Does not apply: %1").arg(QString::fromStdString(s.skipReason)), "strong");
    if (s.deviation)
        addLine(tr("Accepted as a deviation by %1: %2")
                    .arg(QString::fromStdString(s.deviation->byName), QString::fromStdString(s.deviation->reason)),
                "strong");
    if (s.state == run::StepState::Outside) {
        const int first = m_lines->count();
        showOutside();
        if (QLayoutItem* item = m_lines->itemAt(first)) m_wrong = item->widget();
    }
    if (s.answer) {
        const QString entered = dataText(words(run::enteredSaid(&m_content.step, s.answer->entered), m_content.units));
        const QString by = QString::fromStdString(s.byName), at = clockText(s.at, s.offset);
        const bool hold = m_content.step.kind == procedure::StepKind::Hold;
        // Who puts a stop on mostly says so themselves: one name once.
        QString said = !hold ? tr("Answered \u201c%1\u201d by %2, %3.").arg(entered, by, at)
                       : s.answer->entered == s.byName
                           ? tr("The stop was put on by %1, %2.").arg(by, at)
                           : tr("The stop was put on by %1; %2 said so, %3.").arg(dataText(s.answer->entered), by, at);
        const bool stillHeld = std::any_of(m_content.held.begin(), m_content.held.end(),
                                           [&](const run::HeldStop& one) { return one.holder == s.answer->entered; });
        if (hold && !stillHeld) said += QLatin1Char(' ') + tr("It has been given up since.");
        if (s.answer->value) said += QLatin1Char(' ') + verdictSaid(*s.answer, m_content.units);
        addLine(said, "");
        for (const QString& before : m_content.earlier) addLine(before, "");
        if (!m_content.cutShort.isEmpty())
            addLine(tr("Answered before its time was over: %1. The sheet says so.").arg(m_content.cutShort), "strong");
    }
}

void StepCard::showOutside()
{
    const run::Answered* answer = m_content.standing.answer ? &*m_content.standing.answer : nullptr;
    if (answer && answer->value) {
        const double si = answer->value->si();
        const targets::Window& w = answer->window;
        const Quantity& read = *answer->value;
        if (w.high && si > w.high->si())
            addLine(tr("%1 above the upper limit.")
                        .arg(quantityText(Quantity(si - w.high->si(), read.kind(), read.unit()), m_content.units)),
                    "strong");
        if (w.low && si < w.low->si())
            addLine(tr("%1 below the lower limit.")
                        .arg(quantityText(Quantity(w.low->si() - si, read.kind(), read.unit()), m_content.units)),
                    "strong");
        if (const auto slip = verdict::likelySlip(read, w)) {
            // Whoever typed inches is told in inches what it would be.
            const Unit* unit = findUnit(read.kind(), mannerOf(read.unit()).symbol);
            const UnitSystem typed = unit == nullptr || (unit->metric && unit->us) ? m_content.units
                                     : unit->us                                    ? UnitSystem::Us
                                                                                   : UnitSystem::Metric;
            addLine(words(slip->text, typed), "strong");
            addLine(words(slip->remedy, typed), "");
        }
        if (answer->judgement.doubtful) addLine(tr("That is less than the instrument can tell: read it again."), "");
    } else if (answer && m_content.step.kind == procedure::StepKind::Scan) {
        addLine(
            tr("This is not the tag of roll %1, for which the run was begun. Bring that roll, or change the roll of "
               "this run below.")
                .arg(m_content.roll),
            "strong");
    } else if (answer) {
        addLine(tr("That is not what this step wants. Put it right and answer again."), "strong");
        for (const procedure::Choice& choice : m_content.step.choices)
            if (choice.word == answer->entered && !choice.remedy.empty())
                addLine(words(Text(choice.remedy), m_content.units), "");
    }
    if (m_content.step.tries.empty()) return;
    QStringList tries{tr("Try, in this order:")};
    for (const Text& attempt : m_content.step.tries)
        tries << tr("%1. %2").arg(tries.size()).arg(words(attempt, m_content.units));
    addLine(tries.join(QLatin1Char('\n')), "");
}

}  // namespace taut::app
