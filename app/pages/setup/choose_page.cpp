// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/choose_page.h"

#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/ask_panel.h"

namespace taut::app {

namespace {

using Field = AskPanel::Field;

/// The fields, in the order in which they are asked: first a name or a code.
enum Asked : std::uint8_t { kFirst, kPin, kPinAgain, kPassphrase, kPassphraseAgain };

/// Each twice: nobody can look a slip of the fingers up later.
std::vector<Field> secretFields()
{
    const QString pin = ChoosePage::tr("4 characters or more, for the steps at this PC");
    const QString passphrase = ChoosePage::tr("15 characters or more, to sign");
    return {{ChoosePage::tr("PIN"), {}, true, pin, true},
            {ChoosePage::tr("PIN, once more"), {}, true, {}, true},
            {ChoosePage::tr("Passphrase"), {}, true, passphrase, true},
            {ChoosePage::tr("Passphrase, once more"), {}, true, {}, true}};
}

}  // namespace

ChoosePage::ChoosePage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_ask = new AskPanel(this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 10, 20, 10);
    layout->addWidget(m_ask);
    connect(m_ask, &AskPanel::given, this, &ChoosePage::give);
    connect(m_ask, &AskPanel::cancelled, this, &ChoosePage::left);
    connect(session, &Session::busyChanged, m_ask, &AskPanel::setBusy);
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (!isVisible()) return;
        if (finding.code == "person.weak_pin")
            m_ask->refuseField(kPin, finding, UnitSystem::Metric);
        else if (finding.code == "person.weak_passphrase")
            m_ask->refuseField(kPassphrase, finding, UnitSystem::Metric);
        else
            m_ask->refuseField(kFirst, finding, UnitSystem::Metric);
    });
}

void ChoosePage::askFirst()
{
    m_person.clear();
    AskPanel::Question q;
    q.title = tr("This logbook knows nobody yet: who looks after it?");
    q.text = tr("The first person is a supervisor, who enrols the others. Nobody else learns what you choose here, and "
                "nobody can read it out of the logbook: whoever forgets it needs a second supervisor.");
    q.fields = secretFields();
    q.fields.insert(q.fields.begin(), Field{tr("Name"), {}, true, tr("as the crew knows you"), false});
    q.accept = tr("Begin the logbook as its supervisor");
    m_ask->ask(q);
}

void ChoosePage::askFor(const people::PersonRecord& person)
{
    m_person = QString::fromStdString(person.id.value);
    AskPanel::Question q;
    q.title = tr("%1 chooses PIN and passphrase").arg(dataText(person.name));
    q.text = tr("With the code that a supervisor gave you. Nobody else learns what you choose here; whoever forgets it "
                "gets a new code from a supervisor.");
    q.fields = secretFields();
    q.fields.insert(q.fields.begin(), Field{tr("First-use code"), {}, true, tr("eight letters and digits"), false});
    q.accept = tr("Choose, and sign in");
    m_ask->ask(q);
}

void ChoosePage::forget() { m_ask->ask({}); }

void ChoosePage::focusFirst() { m_ask->first()->setFocus(); }

void ChoosePage::give(const QStringList& values)
{
    const auto differ = [this](std::size_t field, const char* english) {
        m_ask->refuseField(field, refuse("choose.differ", {}, english, "Type it once more."), UnitSystem::Metric);
    };
    if (values[kPin] != values[kPinAgain]) return differ(kPinAgain, "The two PINs are not the same.");
    if (values[kPassphrase] != values[kPassphraseAgain])
        return differ(kPassphraseAgain, "The two passphrases are not the same.");
    const people::Chosen chosen{values[kPin].toStdString(), values[kPassphrase].toStdString()};
    if (m_person.isEmpty())
        m_session->enrolFirst(values[kFirst], chosen);
    else
        m_session->choose(m_person, values[kFirst], chosen);
}

}  // namespace taut::app
