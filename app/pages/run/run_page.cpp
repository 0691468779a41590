// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/run_page.h"

#include <utility>

#include <QStringList>
#include <QVBoxLayout>

#include "app/pages/run/run_view.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "core/inputs/inputs.h"

namespace taut::app {

namespace {

/// The shop's rolls with what tells them apart.
std::vector<RollAtHand> rollsOf(const Session& session, const run::Run& run)
{
    const UnitSystem system = unitsOf(run);
    std::vector<RollAtHand> rolls;
    for (const InputFile& file : shopFiles(session.options().resources, "roll")) {
        bool other = false;
        QStringList name{dataText(file.id)};
        Findings notes;
        if (const auto roll = inputs::readRoll(file.text, file.file, notes)) {
            name << dataText(roll->substrate);
            other = roll->substrate != run.sources().substrate.id;
            if (roll->width) name << quantityText(roll->width->quantity(), system);
            if (roll->outerDiameter) name << quantityText(roll->outerDiameter->quantity(), system);
        }
        rolls.push_back({name.join(QStringLiteral(" \u00B7 ")), file.text, other});
    }
    return rolls;
}

}  // namespace

RunPage::RunPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session), m_view(new RunView(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_view);
    connect(session, &Session::runChanged, this, &RunPage::showRun);
    connect(session, &Session::busyChanged, m_view, &RunView::setBusy);
    connect(session, &Session::opened, this, &RunPage::showPeople);
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        // While nobody is signed in it is the signing in that was refused, and the PIN has the focus.
        if (m_session->run() && m_session->actor()) m_view->refuse(finding);
    });
    connect(session, &Session::actorChanged, this, &RunPage::showPeople);
    connect(m_view, &RunView::command, session, &Session::perform);
    connect(m_view, &RunView::commandWith, session, &Session::performWith);
    connect(m_view, &RunView::commandSigned, session, &Session::performSigned);
    connect(m_view, &RunView::finish, session, &Session::finish);
    connect(m_view, &RunView::finishBeside, session, &Session::finishBeside);
    connect(m_view, &RunView::withdraw, session, &Session::withdraw);
    connect(m_view, &RunView::giveBack, session, &Session::giveBack);
    connect(m_view, &RunView::sheetWanted, this, &RunPage::sheetWanted);
    connect(m_view, &RunView::constantWanted, this, &RunPage::constantWanted);
    connect(m_view, &RunView::takeOver, session, [session] {
        if (const auto& actor = session->actor()) session->perform(run::HandOver{*actor});
    });
    connect(m_view, &RunView::attach, session,
            [session](const QString& step, const QString& file) { session->attach(step, file.toStdString()); });
    connect(m_view, &RunView::leave, session, &Session::leaveRun);
    m_view->setAttachments([session](const std::string& sha256) {
        const records::Reader* reader = session->reader();
        return reader ? reader->attachment(sha256) : Result<std::optional<std::string>>(std::optional<std::string>());
    });
    m_view->setBusy(session->busy());
    showPeople();
    showRun();
}

void RunPage::showRun()
{
    if (const run::Run* run = m_session->run()) {
        // Files are read when a run is opened, not at every answer.
        if (m_shownRun != run->id()) m_view->setRollsAtHand(rollsOf(*m_session, *run));
        m_shownRun = run->id();
        m_view->show(*run);
    }
}

void RunPage::showPeople()
{
    PersonChoice actor;
    if (const auto& a = m_session->actor())
        actor = {QString::fromStdString(a->id().value), QString::fromStdString(a->name()), a->role()};
    m_view->setActor(actor);
    std::vector<PersonChoice> people;
    for (const people::PersonRecord& p : m_session->people())
        if (p.active) people.push_back({QString::fromStdString(p.id.value), QString::fromStdString(p.name), p.role});
    m_view->setPeople(std::move(people));
}

}  // namespace taut::app
