// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/run_view.h"

#include <algorithm>
#include <utility>

#include <QAction>
#include <QKeyEvent>
#include <QStackedWidget>

#include "app/pages/run/phase_cards.h"
#include "app/pages/run/review_card.h"
#include "app/pages/run/step_list.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"
#include "core/base/clock.h"
#include "core/inputs/tag_rows.h"
#include "core/run/held.h"
#include "core/run/remedy.h"

namespace taut::app {

namespace {

/// The last that happened is an answer that brought a reading back, and its step says what may help.
bool cameRightNow(const run::Run& run)
{
    const auto* answered = std::get_if<run::Answered>(&run.events().back().happening());
    const procedure::Step* step = answered == nullptr ? nullptr : run.plan().find(answered->step);
    return step != nullptr && !step->tries.empty() && run::cameRight(run, step->id);
}

}  // namespace

RunView::RunView(QWidget* parent) : QWidget(parent) { build(); }

RunView::~RunView() = default;

const procedure::Step* RunView::step() const { return m_run ? m_run->plan().find(m_step) : nullptr; }

/// True when what happened takes the person on to what comes next: an answer to the step shown that closes it, or
/// something that opened others, which may come before it. A note or a stop given up leaves them where they are.
bool RunView::movesOn(const run::Run& before, const run::Run& after) const
{
    const bool another = before.id() != after.id() || after.events().size() < before.events().size();
    if (another || !after.plan().find(m_step)) return true;
    bool closes = false, opens = false;
    for (std::size_t i = before.events().size(); i < after.events().size(); ++i) {
        const run::Happening& h = after.events()[i].happening();
        const auto* answered = std::get_if<run::Answered>(&h);
        const auto* changed = std::get_if<run::InputsChanged>(&h);
        closes = closes || (answered && !answered->correction && answered->step == m_step) ||
                 std::holds_alternative<run::NotApplicable>(h) || std::holds_alternative<run::Deviated>(h);
        opens = opens || (changed && !changed->stale.empty()) || std::holds_alternative<run::Repeated>(h) ||
                std::holds_alternative<run::Resumed>(h) || std::holds_alternative<run::HandedOver>(h);
    }
    return opens || (closes && !run::isOpen(after.standing(m_step).state));
}

void RunView::show(const run::Run& run)
{
    const bool first = !m_run;
    const bool moves = first || movesOn(*m_run, run);
    const bool news = first || m_run->events().size() != run.events().size();
    const bool another = first || m_run->id() != run.id();
    const bool right = news && !another && cameRightNow(run);
    m_run = run;
    if (!m_files.isOf(run)) m_files = filesOf(run);
    if (moves) {
        const auto next = run.next();
        m_reviewing = !next;
        if (next)
            m_step = *next;
        else if (!run.plan().find(m_step) && !run.plan().steps.empty())
            m_step = run.plan().steps.back().id;
    }
    if (news && run.openSteps().empty()) m_reviewing = true;
    // What the panel gave is done. News from elsewhere (nobody was at the screen) leaves it open with what was typed.
    const bool given = std::exchange(m_given, false);
    if (m_act && (given || another || (!m_actor.id.isEmpty() && !actOffered(*m_act, run, step(), m_actor))))
        leaveAct(given);
    if (moves) m_beside = Beside::Card;
    refresh();
    if (right && !m_act && !m_actor.id.isEmpty()) askHelped();
}

void RunView::setActor(const PersonChoice& actor)
{
    if (actor.id != m_actor.id) {
        m_ask->forgetPin();
        m_card->forgetPin();
    }
    // The same person finds everything as they left it; what one began must not go out under the name of another.
    if (!actor.id.isEmpty() && actor.id != m_lastPerson) {
        if (!m_lastPerson.isEmpty()) forgetTyped();
        m_lastPerson = actor.id;
    }
    m_actor = actor;
    if (!m_run) return;
    settleActs();
    showCard();
}

void RunView::forgetTyped()
{
    leaveAct(false);
    m_card->forgetTyped();
    m_withdrawn->forgetTyped();
    m_review->forgetTyped();
}

void RunView::setPeople(std::vector<PersonChoice> people)
{
    m_people = std::move(people);
    if (m_run) refresh();
}

void RunView::setRollsAtHand(std::vector<RollAtHand> rolls) { m_rolls = std::move(rolls); }

void RunView::setBusy(bool busy)
{
    QWidget* focus = window()->focusWidget();
    if (busy && !m_busy) m_heldFocus = focus && m_middle->isAncestorOf(focus) ? focus : nullptr;
    m_busy = busy;
    m_card->setBusy(busy);
    m_safe->setBusy(busy);
    m_others->setBusy(busy);
    m_withdrawn->setBusy(busy);
    m_review->setBusy(busy);
    m_ask->setBusy(busy);
    m_rollForm->setBusy(busy);
    m_attachments->setBusy(busy);
    settleActs();
    if (!busy) giveFocusBack();
}

/// While it was written nothing on the page could hold the focus, and it went to whatever comes next in the window.
void RunView::giveFocusBack()
{
    const QWidget* focus = window()->focusWidget();
    if (m_actor.id.isEmpty() || !isVisible() || (focus && m_middle->isAncestorOf(focus) && focus->isEnabled())) return;
    if (m_heldFocus && m_heldFocus->isVisible() && m_heldFocus->isEnabled())
        m_heldFocus->setFocus();
    else if (m_beside == Beside::Card)
        focusCard();
}

void RunView::refuse(const Finding& finding)
{
    m_given = false;
    // It takes another's word: the panel that asks for it says what the refusal says.
    if (finding.code == run::kHoldersOwn && !m_act) return askHolder(finding.subject);
    QWidget* shown = m_middle->currentWidget();
    if (m_act && *m_act == RunAct::ChangeRoll)
        m_rollForm->refuse(finding);
    else if (m_act && *m_act == RunAct::Attach)
        m_attachments->refuse(finding);
    else if (m_act)
        m_ask->refuse(finding, m_run ? unitsOf(*m_run) : UnitSystem::Metric);
    else if (shown == m_safe)
        m_safe->refuse(finding);
    else if (shown == m_others)
        m_others->refuse(finding);
    else if (shown == m_withdrawn)
        m_withdrawn->refuse(finding);
    else if (shown == m_review)
        m_review->refuse(finding);
    else
        m_card->refuse(finding);
    // While it was asked nothing on the card could hold the focus, and it went to whatever comes next on the page.
    const bool wandered = !m_middle->isAncestorOf(window()->focusWidget());
    if (!m_act && wandered && !m_actor.id.isEmpty()) focusCard();
}

void RunView::setVeil(Veil veil, bool listed)
{
    m_veil = std::move(veil);
    m_list->setVisible(listed);
    refresh();
}

void RunView::refresh()
{
    const procedure::Step* current = step();
    if (!current) return;
    const std::size_t stage = m_run->plan().stageOf(*current);
    m_line->setSpans(tautSpansOf(*m_run, stage));
    QStringList heading = headingOf(*m_run, m_files);
    if (const QString spoken = spokenText(m_files); !spoken.isEmpty()) heading << spoken;
    m_heading->setText(heading.join(QStringLiteral(" \u00B7 ")));
    m_list->show(*m_run, m_step);
    StepContent content = stepContentOf(*m_run, *current, m_people);
    if (m_veil) m_veil(content);
    m_card->show(content);
    m_card->setBusy(m_busy);
    m_why->show(content.step, content.target, m_run->targets(), unitsOf(*m_run));
    m_stops->setText(stopsHeldText(*m_run));
    m_elevation->setView(elevationOfRun(*m_run, m_files, *current));
    if (m_act && *m_act == RunAct::Attach) showAttachments();
    settleActs();
    showCard();
}

void RunView::showCard()
{
    if (!m_run) return;
    QWidget* card = m_card;
    if (m_act && *m_act == RunAct::ChangeRoll)
        card = m_rollForm->parentWidget();
    else if (m_act && *m_act == RunAct::Attach)
        card = m_attachments->parentWidget();
    else if (m_act)
        card = m_ask->parentWidget();
    else if (m_run->phase() == run::Phase::Interrupted)
        card = m_safe;
    else if (m_run->phase() == run::Phase::Withdrawn)
        card = m_withdrawn;
    else if (m_reviewing || m_run->phase() == run::Phase::Completed || m_run->phase() == run::Phase::Abandoned)
        card = m_review;
    else if (isInOtherHands(*m_run, m_actor))
        card = m_others;
    if (card == m_safe && (m_middle->currentWidget() != m_safe || !m_safe->isFor(m_actor)))
        m_safe->show(*m_run, m_actor);
    // That card names them itself, where they are looked at.
    m_stops->setVisible(!m_run->heldStops().empty() && card != m_safe);
    if (card == m_others) m_others->show(*m_run, m_actor);
    if (card == m_withdrawn) m_withdrawn->show(*m_run, m_actor);
    if (card == m_review) {
        m_review->setPeople(m_people, m_actor);
        m_review->show(*m_run, m_actor);
    }
    // The whole width for looking through the whole run.
    m_middle->setCurrentWidget(card);
    // Nothing on a locked screen looks as if it could be answered; the whole run may still be looked through.
    card->setEnabled(!m_actor.id.isEmpty() || card == m_review);
    if (card != m_card) m_beside = Beside::Card;
    placeColumns();
    // While nobody is signed in the focus belongs to the PIN.
    if (m_actor.id.isEmpty() || m_beside != Beside::Card) return;
    focusCard();
}

/// To what the card that is seen is answered with.
void RunView::focusCard()
{
    const QWidget* card = m_middle->currentWidget();
    if (m_act && *m_act == RunAct::ChangeRoll)
        m_rollForm->first()->setFocus();
    else if (m_act && *m_act == RunAct::Attach)
        m_attachments->first()->setFocus();
    else if (m_act)
        m_ask->takeFocus();
    else if (card == m_card)
        m_card->focusAnswer();
    else if (card == m_safe)
        m_safe->first()->setFocus();
    else if (card == m_withdrawn)
        m_withdrawn->first()->setFocus();
    else if (card == m_others)
        m_others->first()->setFocus();
    else if (card == m_review)
        m_review->first()->setFocus();
}

void RunView::settleActs()
{
    const auto offered = [this, current = step()](RunAct act) {
        return m_run && !m_busy && actOffered(act, *m_run, current, m_actor);
    };
    for (const auto& [act, button] : m_actButtons) button->setEnabled(offered(act));
    for (const auto& [act, action] : m_moreActions) action->setEnabled(offered(act));
}

void RunView::showStep(const procedure::StepId& id)
{
    if (!m_run || !m_run->plan().find(id)) return;
    m_step = id;
    m_reviewing = false;
    m_beside = Beside::Card;
    leaveAct(false);
    refresh();
}

void RunView::showNext()
{
    if (const auto next = m_run ? m_run->next() : std::nullopt) showStep(*next);
}

void RunView::showStage(int stage)
{
    if (!m_run) return;
    if (const procedure::Step* first = firstOfStage(*m_run, static_cast<std::size_t>(stage))) showStep(first->id);
}

void RunView::begin(RunAct act)
{
    if (!m_run || m_busy || !actOffered(act, *m_run, step(), m_actor)) return;
    leaveAct(false);
    switch (act) {
    case RunAct::Leave: emit leave(); return;
    case RunAct::Sheet: emit sheetWanted(QString::fromStdString(m_run->id())); return;
    case RunAct::Review: m_reviewing = true; break;
    case RunAct::ChangeRoll:
        m_act = act;
        m_rollForm->ask(tr("Change the roll"),
                        tr("Every target is computed anew for the new roll; answers that it touches are asked again."),
                        m_rolls, unitsOf(*m_run));
        m_rollForm->compareWith(inputsOf(*m_run), inputs::dayOf(SystemClock().now()));
        break;
    case RunAct::Attach:
        m_act = act;
        showAttachments();
        break;
    case RunAct::Note:
    case RunAct::Helped:
    case RunAct::NotApplicable:
    case RunAct::Correct:
    case RunAct::Diameter:
    case RunAct::Withdraw:
    case RunAct::Repeat:
    case RunAct::HandOver:
    case RunAct::Interrupt:
    case RunAct::HoldStop:
    case RunAct::Abandon: ask(act, questionFor(act, *m_run, step(), m_people), m_step.value); break;
    case RunAct::GiveUp: return;
    }
    showCard();
    if (m_act) focusCard();
}

void RunView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

/// A hidden page cannot take the focus: it is given when the page comes up.
void RunView::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    showCard();
}

void RunView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) fit();
}

void RunView::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_F2) {
        if (m_close)
            look(m_beside == Beside::Why ? Beside::Card : Beside::Why);
        else if (m_why->hasFocus())
            m_card->focusAnswer();
        else
            m_why->setFocus();
    } else if (event->key() == Qt::Key_Escape && m_beside != Beside::Card) {
        look(Beside::Card);
    } else if (event->key() == Qt::Key_Escape && (m_act || m_reviewing)) {
        m_reviewing = m_reviewing && m_act;
        closePanel();
    } else if (event->key() == Qt::Key_Escape && m_middle->currentWidget() == m_card && m_card->content().elsewhere) {
        showNext();
    } else if (m_middle->currentWidget() != m_card || !m_card->takeKey(event)) {
        return QWidget::keyPressEvent(event);
    }
    event->accept();
}

}  // namespace taut::app
