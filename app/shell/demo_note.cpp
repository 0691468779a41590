// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/demo_note.h"

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

DemoNote::DemoNote(Session* session, QWidget* parent) : QLabel(parent), m_session(session)
{
    withRole(this, "strong");
    setObjectName(QStringLiteral("demoNote"));
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    if (session->options().loadDemo)
        if (auto people = demoPeople(session->options().resources)) m_people = *std::move(people);
    connect(session, &Session::actorChanged, this, &DemoNote::settle);
    settle();
}

void DemoNote::tellOf(const QString& personId)
{
    m_chosen = personId;
    settle();
}

void DemoNote::settle()
{
    QString said;
    for (const DemoPerson& person : m_people)
        if (person.id.value == m_chosen.toStdString())
            said = tr("Demo shop, all invented. %1 signs in with the PIN %2, and signs with the passphrase \"%3\".")
                       .arg(dataText(person.name), dataText(person.chosen.pin), dataText(person.chosen.passphrase));
    setText(said);
    setVisible(!said.isEmpty() && !m_session->actor());
}

}  // namespace taut::app
