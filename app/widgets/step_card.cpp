// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/step_card.h"

#include <algorithm>

#include <QAbstractButton>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/theme.h"

namespace taut::app {

StepCard::StepCard(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("stepCard"));
    build();
}

void StepCard::build()
{
    m_where = wrapped({}, "strong", this);
    m_number = new QLabel(this);
    withRole(m_number, "soft");
    auto* head = new QHBoxLayout;
    head->addWidget(m_where, 1);
    head->addWidget(m_number, 0, Qt::AlignTop);

    auto* body = new QWidget;
    m_bodyLayout = new QVBoxLayout(body);
    m_bodyLayout->setContentsMargins(0, 0, 0, 0);
    m_bodyLayout->setSpacing(10);
    m_say = wrapped({}, "say", body);
    m_say->setObjectName(QStringLiteral("say"));
    m_caution = new SignalPanel(body);
    m_caution->setObjectName(QStringLiteral("caution"));
    m_linesBox = new QWidget(body);
    m_lines = new QVBoxLayout(m_linesBox);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(4);
    // The caution stands first, so that no small screen scrolls it out of sight.
    m_bodyLayout->addWidget(m_caution);
    m_bodyLayout->addWidget(m_say);
    m_bodyLayout->addWidget(m_linesBox);
    m_bodyLayout->addStretch(1);
    m_scroll = new QScrollArea(this);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    // What answers has its height first; what is asked scrolls in the rest.
    m_scroll->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_scroll->setMinimumHeight(60);
    m_scroll->setWidget(body);

    m_finding = new FindingStrip(this);
    m_writing = new QLabel(tr("Writing\u2026"), this);
    m_writing->setObjectName(QStringLiteral("writing"));
    withRole(m_writing, "strong");
    m_writing->hide();
    m_foot = new QWidget(this);
    auto* footLayout = new QVBoxLayout(m_foot);
    footLayout->setContentsMargins(0, 0, 0, 0);
    m_answers = new QWidget(m_foot);
    m_footLayout = new QVBoxLayout(m_answers);
    m_footLayout->setContentsMargins(0, 0, 0, 0);
    m_supervisor = new AskPanel(m_foot);
    m_supervisor->hide();
    footLayout->addWidget(m_answers);
    footLayout->addWidget(m_supervisor);
    m_first = worded(tr("Show what comes &first"), "answer", m_answers);
    m_first->setObjectName(QStringLiteral("comesFirst"));
    m_footLayout->addWidget(m_first);
    connect(m_first, &QPushButton::clicked, this, &StepCard::firstWanted);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 8, 20, 8);
    layout->setSpacing(8);
    layout->addLayout(head);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_finding);
    layout->addWidget(m_writing);
    layout->addWidget(m_foot);

    connect(m_supervisor, &AskPanel::cancelled, this, [this] { askSupervisor(false); });
    connect(m_supervisor, &AskPanel::given, this,
            [this](const QStringList& values, const QString& person, const QString& pin) {
                const run::StepId step = m_content.step.id;
                const std::string reason = values.value(0).toStdString();
                emit commandWith(person, pin, [step, reason](const people::Actor& actor) -> run::Command {
                    return run::AcceptDeviation{step, reason, actor};
                });
            });
}

void StepCard::show(const StepContent& content)
{
    // A note or a stop given up shows the same step anew: what was typed so far stays.
    QString typed;
    if (m_area && m_area->field() && m_content.step.id == content.step.id && m_content.standing.n == content.standing.n)
        typed = m_area->field()->text();
    m_content = content;
    showWhere();
    QString number = tr("Step %1 of %2").arg(content.number).arg(content.of);
    if (content.step.vital) number = tr("%1, vital").arg(number);
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
    askSupervisor(false);
    showStanding();
    showAnswer();
    if (m_area && m_area->field()) m_area->field()->setText(typed);
    m_linesBox->setVisible(m_lines->count() > 0);
    placeFoot();
    fitSay();
    m_scroll->verticalScrollBar()->setValue(0);
    setAccessibleName(m_say->text());
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
    if (const QString where = whereText(m_content.step.at); !where.isEmpty()) parts.append(where);
    m_where->setText(parts.join(QStringLiteral(" \u00B7 ")));
}

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
    if (s.state == run::StepState::Stale)
        addLine(m_content.staleBecause.isEmpty()
                    ? tr("An input changed after this was answered. Answer it again.")
                    : tr("%1 changed after this was answered. Answer it again.").arg(m_content.staleBecause),
                "strong");
    if (s.state == run::StepState::Reconfirm)
        addLine(tr("Look again and say it again: it was answered before the run was interrupted or handed over."),
                "strong");
    if (s.state == run::StepState::NotApplicable)
        addLine(tr("Does not apply: %1").arg(QString::fromStdString(s.skipReason)), "strong");
    if (s.deviation)
        addLine(tr("Accepted as a deviation by %1: %2")
                    .arg(QString::fromStdString(s.deviation->byName), QString::fromStdString(s.deviation->reason)),
                "strong");
    if (s.state == run::StepState::Outside) showOutside();
    if (s.answer) {
        const QString entered = s.answer->entered == "yes"    ? tr("yes")
                                : s.answer->entered == "done" ? tr("done")
                                                              : dataText(s.answer->entered);
        QString said =
            tr("Answered %1 by %2, %3.").arg(entered, QString::fromStdString(s.byName), clockText(s.at, s.offset));
        if (s.answer->value) said += QLatin1Char(' ') + tr("It is %1.").arg(verdictText(s.answer->judgement));
        addLine(said, "");
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
        if (answer->judgement.doubtful) addLine(tr("That is less than the instrument can tell: read it again."), "");
    } else if (answer) {
        addLine(tr("That is not what this step wants. Put it right and answer again."), "strong");
        for (const procedure::Choice& choice : m_content.step.choices)
            if (choice.word == answer->entered && !choice.remedy.empty())
                addLine(words(Text(choice.remedy), m_content.units), "");
    }
    if (m_content.step.tries.empty()) return;
    addLine(tr("Try, in this order:"), "");
    int n = 0;
    for (const Text& attempt : m_content.step.tries)
        addLine(tr("%1. %2").arg(++n).arg(words(attempt, m_content.units)), "");
}

void StepCard::showAnswer()
{
    const bool motionHeld = m_content.step.kind == procedure::StepKind::Motion && m_content.closed &&
                            m_content.closed->code == "gate.stop_held";
    const bool settled = !run::isOpen(m_content.standing.state) && m_content.closed;
    if (m_content.closed && !motionHeld) {
        if (!settled) {
            addLine(tr("Not yet."), "strong");
            addLine(words(m_content.closed->text, m_content.units), "");
            addLine(words(m_content.closed->remedy, m_content.units), "");
            m_first->show();
        }
        return;
    }
    m_area = makeAnswerArea(m_content, this);
    m_bodyLayout->insertWidget(m_bodyLayout->count() - 1, m_area);
    m_footLayout->addWidget(m_area->foot());
    m_area->show();
    m_area->foot()->show();
    connect(m_area, &AnswerArea::command, this, &StepCard::command);
    connect(m_area, &AnswerArea::refused, this, &StepCard::refuse);
    connect(
        m_area, &AnswerArea::resized, this,
        [this] {
            placeFoot();
            // Whoever opened the pad has read the step: the pad is seen whole, with what enters the value.
            if (!m_pinned)
                QTimer::singleShot(0, this, [this] {
                    QScrollBar* bar = m_scroll->verticalScrollBar();
                    bar->setValue(bar->maximum());
                });
        },
        Qt::QueuedConnection);
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
    m_answers->setVisible(!ask);
    m_supervisor->setVisible(ask);
    m_scroll->setVisible(!ask);
    if (!m_pinned && ask) pinFoot(true);
    static_cast<QVBoxLayout*>(layout())->setStretchFactor(m_foot, ask ? 1 : 0);
    if (!ask) return;
    AskPanel::Question question;
    question.title = tr("Accept this value as a deviation");
    const auto& read = m_content.standing.answer;
    question.text = tr("%1, %2. For this step, this value and this window only. It is printed on the sheet.")
                        .arg(read ? QString::fromStdString(read->entered) : QString(),
                             read ? verdictText(read->judgement) : QString());
    question.fields = {{tr("Why it may &stay as it is"), {}, true, {}}};
    question.person = true;
    question.accept = tr("&Accept the deviation");
    for (const PersonChoice& p : m_content.people)
        if (people::may(p.role, people::Act::AcceptDeviation)) question.people.push_back(p);
    m_supervisor->ask(question);
    m_supervisor->first()->setFocus();
}

void StepCard::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    m_foot->setEnabled(!busy);
    if (m_area) m_area->setEnabled(!busy);
}

void StepCard::refuse(const Finding& finding) { m_finding->say(finding, m_content.units); }

void StepCard::focusAnswer()
{
    if (m_area && m_area->first())
        m_area->first()->setFocus();
    else
        setFocus();
}

/// What answers stays at the lower edge, unless that would leave no room for what is asked: then it scrolls with it.
void StepCard::placeFoot()
{
    constexpr int kLeastBody = 150;
    if (m_supervisor->isVisibleTo(this)) return;
    m_foot->layout()->activate();
    const int wanted = m_foot->hasHeightForWidth() ? m_foot->heightForWidth(width() - 40) : m_foot->sizeHint().height();
    pinFoot(wanted <= height() - kLeastBody);
}

void StepCard::pinFoot(bool pinned)
{
    if (pinned == m_pinned) return;
    m_pinned = pinned;
    // Moved, a widget loses the focus, and Enter would go to whatever comes next on the page.
    QWidget* focus = window()->focusWidget();
    const QPointer<QWidget> kept = focus && m_foot->isAncestorOf(focus) ? focus : nullptr;
    if (pinned)
        static_cast<QVBoxLayout*>(layout())->addWidget(m_foot);
    else
        m_bodyLayout->addWidget(m_foot);
    m_foot->show();
    if (kept) kept->setFocus();
}

/// What is to be done is set as large as lets everything be seen without scrolling. Where even the smallest leaves it
/// cut, what answers scrolls with it: nobody answers what they have not read.
void StepCard::fitSay()
{
    layout()->activate();
    QWidget* body = m_scroll->widget();
    for (const char* role : {"say", "longSay", "head", ""}) {
        withRole(m_say, role);
        m_say->style()->unpolish(m_say);
        m_say->style()->polish(m_say);
        m_bodyLayout->invalidate();
        m_bodyLayout->activate();
        if (m_bodyLayout->heightForWidth(m_scroll->width()) <= m_scroll->height()) break;
    }
    body->updateGeometry();
    const int asked = m_say->y() + m_say->heightForWidth(m_say->width());
    if (m_pinned && asked > m_scroll->height() && !m_supervisor->isVisibleTo(this)) pinFoot(false);
}

void StepCard::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeFoot();
    fitSay();
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
