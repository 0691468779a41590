// SPDX-License-Identifier: GPL-3.0-or-later
// The panels that take the card's place on the run page: what asks, and what was attached.
#include <utility>

#include "app/pages/run/run_view.h"
#include "core/run/remedy.h"

namespace taut::app {

/// Asked at once, while whoever put it right still knows; Back leaves it for later.
void RunView::askHelped()
{
    ask(RunAct::Helped, questionFor(RunAct::Helped, *m_run, step(), m_people), run::cameRight(*m_run).back().value);
    showCard();
}

void RunView::showAttachments()
{
    const bool ended = m_run->phase() == run::Phase::Completed || m_run->phase() == run::Phase::Abandoned;
    m_attachments->show(*m_run, m_loadAttached, !ended);
}

void RunView::setAttachments(AttachmentPanel::Load load) { m_loadAttached = std::move(load); }

void RunView::ask(RunAct act, const AskPanel::Question& question, const std::string& about)
{
    m_act = act;
    m_ask->ask(question);
    m_draft = {m_lastPerson, m_run->id(), act, about};
    if (const auto draft = m_drafts.find(m_draft); draft != m_drafts.end()) m_ask->setTyped(draft->second);
}

void RunView::askHolder(const std::string& holder)
{
    ask(RunAct::GiveUp, giveUpQuestion(*m_run, holder, m_people), holder);
    showCard();
    m_ask->first()->setFocus();
}

/// The panel goes. What was typed and not given is there again when the same person begins the same.
void RunView::leaveAct(bool given)
{
    if (!m_act) return;
    if (*m_act != RunAct::ChangeRoll && *m_act != RunAct::Attach) {
        if (given)
            m_drafts.erase(m_draft);
        else
            m_drafts[m_draft] = m_ask->typed();
    }
    m_act.reset();
}

void RunView::closePanel()
{
    leaveAct(false);
    showCard();
}

void RunView::answered(const QStringList& values, const QString& person, const QString& pin)
{
    if (!m_act || !m_run) return;
    const auto request = *m_act == RunAct::GiveUp ? giveUpRequest(std::get<3>(m_draft), values)
                                                  : requestFor(*m_act, *m_run, step(), values);
    if (!request) {
        m_ask->refuse(request.error(), unitsOf(*m_run));
        return;
    }
    m_given = true;
    if (request->command) emit command(*request->command);
    if (request->second) emit commandWith(person, pin, request->second);
    if (request->finish) emit finish(*request->finish, pin);
    if (request->withdrawFor)
        emit withdraw(QString::fromStdString(m_run->sources().press.id), QString::fromStdString(*request->withdrawFor));
}

RunView::Kept RunView::kept() const { return {m_drafts, m_lastPerson, m_step, m_reviewing}; }

void RunView::take(const Kept& kept)
{
    m_drafts = kept.drafts;
    m_lastPerson = kept.lastPerson;
    if (!m_run || !m_run->plan().find(kept.step)) return;
    m_step = kept.step;
    m_reviewing = kept.reviewing;
    refresh();
}

}  // namespace taut::app
