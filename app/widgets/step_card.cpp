// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/step_card.h"

#include <algorithm>

#include <QAbstractButton>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// The zone whose setting has no value as long as nobody knows what it does; "" = it is no such target.
QString unknownSettingOf(const std::optional<targets::Target>& target)
{
    constexpr std::string_view kBegins = "press.zone.", kEnds = ".torque_per_setting";
    const auto* needs = target ? std::get_if<targets::Needs>(&target->state) : nullptr;
    if (needs == nullptr) return {};
    for (const std::string& key : needs->keys)
        if (key.starts_with(kBegins) && key.ends_with(kEnds))
            return QString::fromStdString(key.substr(kBegins.size(), key.size() - kBegins.size() - kEnds.size()));
    return {};
}

}  // namespace

StepCard::StepCard(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("stepCard"));
    build();
}

void StepCard::show(const StepContent& content)
{
    // A note, a stop given up or another person at the screen shows the same step anew: what was typed so far stays.
    const bool same = m_content.step.id == content.step.id && m_content.standing.n == content.standing.n;
    const bool asking = same && m_supervisor->isVisibleTo(this);
    QString typed;
    if (same && m_area && m_area->field()) typed = m_area->field()->text();
    m_content = content;
    m_wrong = nullptr;
    showWhere();
    QString number = tr("Step %1 of %2").arg(content.number).arg(content.of);
    if (content.step.vital) number = tr("%1, vital").arg(number);
    if (!content.marks.isEmpty()) number += QStringLiteral(" \u00B7 ") + content.marks;
    m_number->setText(number);
    const QString say = words(content.step.say, content.units);
    m_say->setText(say);
    m_caution->setCaution(content.step.signal, words(content.step.caution, content.units));
    m_finding->clear();

    while (QLayoutItem* item = m_lines->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    if (m_area) {
        m_area->foot()->hide();
        m_area->foot()->deleteLater();
        m_area->hide();
        m_area->deleteLater();
        m_area = nullptr;
    }
    m_first->hide();
    if (!asking) askSupervisor(false);
    showStanding();
    showAnswer();
    if (m_area && m_area->field()) m_area->field()->setText(typed);
    m_linesBox->setVisible(m_lines->count() > 0);
    settleCrowd();
    refit();
    m_scroll->verticalScrollBar()->setValue(0);
    // Whoever answered has read the step: on a small screen what was wrong with the answer is seen first.
    m_scroll->widget()->setMinimumHeight(0);
    if (m_wrong) QTimer::singleShot(0, this, &StepCard::showWrong);
    setAccessibleName(m_say->text());
}

void StepCard::showWrong()
{
    if (!m_wrong || seenWhole()) return;
    const int top = m_wrong->mapTo(m_scroll->widget(), QPoint(0, 0)).y();
    // Long enough that it begins with a whole line, also where less than a screen of it follows.
    m_scroll->widget()->setMinimumHeight(top + m_scroll->viewport()->height());
    layout()->activate();
    m_scroll->verticalScrollBar()->setValue(top);
}

void StepCard::setNamesStage(bool names)
{
    if (names == m_namesStage) return;
    m_namesStage = names;
    showWhere();
}

void StepCard::showWhere()
{
    QStringList parts{m_content.place};
    if (m_namesStage) parts.prepend(m_content.stage);
    if (const QString where = whereText(m_content.step.at, !m_content.step.item.empty()); !where.isEmpty())
        parts.append(where);
    m_where->setText(parts.join(QStringLiteral(" \u00B7 ")));
}

void StepCard::showAnswer()
{
    const bool held = m_content.closed && m_content.closed->code == "gate.stop_held";
    const bool settled = !run::isOpen(m_content.standing.state) && m_content.closed;
    // Whoever looked something up goes on where the work stands.
    const bool lookedUp = m_content.elsewhere && !run::isOpen(m_content.standing.state);
    const QString leads = lookedUp ? tr("Back to what is to be &done") : tr("Show what comes &first");
    m_first->setText(leads);
    named(m_first, QString(leads).remove(QLatin1Char('&')));
    m_first->setVisible(lookedUp);
    if (m_content.closed && !held) {
        if (!settled) {
            addLine(tr("Not yet."), "strong");
            addLine(words(m_content.closed->text, m_content.units), "");
            addLine(words(m_content.closed->remedy, m_content.units), "");
            m_first->show();
        }
        return;
    }
    m_area = makeAnswerArea(m_content, this);
    m_area->openPad(m_padOpen);
    connect(m_area, &AnswerArea::padOpened, this, &StepCard::openPad);
    m_bodyLayout->insertWidget(m_bodyLayout->count() - 1, m_area);
    m_footLayout->addWidget(m_area->foot());
    m_area->show();
    m_area->foot()->show();
    tabsBefore(m_first, m_area);
    tabsBefore(m_first, m_area->foot());
    connect(m_area, &AnswerArea::command, this, &StepCard::command);
    connect(m_area, &AnswerArea::refused, this, &StepCard::refuse);
    connect(
        m_area, &AnswerArea::resized, this,
        [this] {
            refit();
            // Whoever opened the pad has read the step: the pad is seen whole, with what enters the value.
            QTimer::singleShot(0, this, &StepCard::showAnswers);
        },
        Qt::QueuedConnection);
    connect(m_area, &AnswerArea::mended, this, &StepCard::forgive);
    connect(m_area, &AnswerArea::followed, this, &StepCard::followFoot, Qt::QueuedConnection);
    if (const QString zone = unknownSettingOf(m_content.target); !zone.isEmpty()) {
        auto* find = worded(tr("&Find what this setting does"), "answer", m_area->foot());
        find->setObjectName(QStringLiteral("findConstant"));
        connect(find, &QPushButton::clicked, this, [this, zone] { emit constantWanted(zone); });
        m_area->addBeside(find);
        find->show();
    }
    const bool deviable = m_content.standing.state == run::StepState::Outside && m_content.step.waivable &&
                          m_content.step.kind == procedure::StepKind::Reading;
    if (!deviable) return;
    auto* ask = worded(tr("Ask a &supervisor"), "answer", m_area->foot());
    ask->setObjectName(QStringLiteral("askSupervisor"));
    connect(ask, &QPushButton::clicked, this, [this] { askSupervisor(true); });
    m_area->addBeside(ask);
    ask->show();
}

void StepCard::askSupervisor(bool ask)
{
    if (ask) placeAsked(false);
    m_answers->setVisible(!ask);
    m_supervisor->setVisible(ask);
    m_scroll->setVisible(!ask);
    if (!m_pinned && ask) pinFoot(true);
    static_cast<QVBoxLayout*>(layout())->setStretchFactor(m_foot, ask ? 1 : 0);
    if (!ask) return;
    m_finding->reserve(false);  // the panel has a room of its own
    // Opened again for the same answer it still holds the reason that was typed.
    if (m_supervisorAsked == m_content.standing.n) return m_supervisor->takeFocus();
    m_supervisorAsked = m_content.standing.n;
    AskPanel::Question question;
    question.title = tr("Accept this value as a deviation");
    const auto& read = m_content.standing.answer;
    question.text = tr("%1, %2. For this step, this value and this window only. It is printed on the sheet.")
                        .arg(read ? QString::fromStdString(read->entered) : QString(),
                             read ? verdictText(read->judgement) : QString());
    question.fields = {AskPanel::prose(tr("Why it may &stay as it is"))};
    question.person = true;
    question.secret = AskPanel::Question::Secret::Passphrase;
    question.accept = tr("&Accept the deviation");
    for (const PersonChoice& p : m_content.people)
        if (people::may(p.role, people::Act::AcceptDeviation)) question.people.push_back(p);
    m_supervisor->ask(question);
    m_supervisor->first()->setFocus();
}

void StepCard::setBusy(bool busy)
{
    m_sayKept = busy;  // the word that it is being written comes and goes
    m_writing->setVisible(busy);
    m_foot->setEnabled(!busy);
    if (m_area) m_area->setEnabled(!busy);
}

void StepCard::forgetPin() { m_supervisor->forgetPin(); }

void StepCard::forgetTyped()
{
    m_supervisorAsked.reset();
    if (m_supervisor->isVisibleTo(this)) askSupervisor(false);
    if (m_area && m_area->field()) m_area->field()->clear();
}

void StepCard::refuse(const Finding& finding)
{
    // It is the supervisor's panel that was refused: what is typed next goes there, hidden as before.
    if (m_supervisor->isVisibleTo(this)) return m_supervisor->refuse(finding, m_content.units);
    m_finding->say(finding, m_content.units);
    if (m_area) m_area->setRefused(true);
    settleCrowd();
    // In the room that was kept for it nothing moves.
    if (m_finding->isReserved() && m_finding->wantedHeight(width() - 40) <= m_finding->minimumHeight()) return;
    refit();
    // What is to be put right is seen beside what is wrong with it.
    QTimer::singleShot(0, this, &StepCard::showAnswers);
}

/// What is typed now is not what was refused.
void StepCard::forgive()
{
    if (!m_finding->isVisibleTo(this)) return;
    m_finding->clear();
    if (m_area) m_area->setRefused(false);
    settleCrowd();
    if (!m_finding->isReserved()) refit();
}

/// A pad, a message or a reading outside wants the height that the page can spare.
void StepCard::settleCrowd()
{
    const bool crowds = m_finding->isVisibleTo(this) || m_content.standing.state == run::StepState::Outside ||
                        (m_padOpen && m_area != nullptr && m_content.step.kind == procedure::StepKind::Reading);
    if (crowds == m_crowded) return;
    m_crowded = crowds;
    emit crowded();
}

void StepCard::openPad(bool open)
{
    m_padOpen = open;
    settleCrowd();
}

void StepCard::focusAnswer()
{
    if (m_supervisor->isVisibleTo(this)) return m_supervisor->takeFocus();
    if (m_area && m_area->first())
        m_area->first()->setFocus();
    else
        setFocus();
}

bool StepCard::takeKey(QKeyEvent* event)
{
    if (!m_area || !m_foot->isEnabled() || m_supervisor->isVisibleTo(this)) return false;
    QWidget* focus = window()->focusWidget();
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        // A key that lies under something must not answer step after step.
        if (event->isAutoRepeat()) return true;
        auto* button = qobject_cast<QAbstractButton*>(focus);
        if (!button || !isAncestorOf(button))
            m_area->enter();
        else if (!qobject_cast<HoldButton*>(button))  // holding is its own business
            button->click();
        return true;
    }
    QLineEdit* field = m_area->field();
    const QString text = event->text();
    const bool types = text.size() == 1 && (text[0].isDigit() || text[0] == QLatin1Char('.') ||
                                            text[0] == QLatin1Char(',') || text[0] == QLatin1Char('-'));
    if (field && field != focus && types && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
        field->setFocus();
        field->insert(text);
        return true;
    }
    return false;
}

void StepCard::keyPressEvent(QKeyEvent* event)
{
    if (takeKey(event))
        event->accept();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace taut::app
