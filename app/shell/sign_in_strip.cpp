// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/sign_in_strip.h"

#include <algorithm>

#include <QHBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

SignInStrip::SignInStrip(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_person = new PickList(this);
    m_person->setMinimumHeight(sizes().control);
    m_person->setMinimumContentsLength(14);
    named(m_person, tr("Who are you?"));
    m_pin = new QLineEdit(this);
    m_pin->setEchoMode(QLineEdit::Password);
    m_pin->setPlaceholderText(tr("PIN"));
    m_pin->setMinimumHeight(sizes().control);
    m_pin->setMaximumWidth(millimetres(40));
    named(m_pin, tr("Your PIN"));
    m_in = worded(tr("Sign in"), "", this);
    m_choose = worded(tr("Choose PIN and passphrase"), "", this);
    m_choose->setMinimumHeight(sizes().control);
    m_who = new QLabel(this);
    withRole(m_who, "strong");
    m_lock = worded(tr("Lock"), "", this);
    m_lock->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_L));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_person);
    row->addWidget(m_pin);
    row->addWidget(m_in);
    row->addWidget(m_choose);
    row->addWidget(m_who);
    row->addWidget(m_lock);
    connect(m_in, &QPushButton::clicked, this, &SignInStrip::signIn);
    connect(m_pin, &QLineEdit::returnPressed, this, &SignInStrip::signIn);
    connect(m_person, &QComboBox::currentIndexChanged, this, &SignInStrip::settle);
    connect(m_choose, &QPushButton::clicked, this, [this] { emit firstUse(m_person->currentData().toString()); });
    connect(session, &Session::shopChanged, this, &SignInStrip::refill);
    connect(m_lock, &QPushButton::clicked, session, &Session::signOut);
    connect(session, &Session::opened, this, &SignInStrip::refill);
    connect(session, &Session::actorChanged, this, [this] {
        refill();
        // Whoever comes next types at once.
        if (!m_session->actor()) focusPin();
    });
    connect(session, &Session::refused, this, [this] {
        if (m_session->actor()) return;
        // A wrong PIN is typed anew, not mended blindly.
        m_pin->clear();
        focusPin();
    });
    refill();
}

void SignInStrip::focusPin() { m_pin->setFocus(); }

void SignInStrip::refill()
{
    const bool in = m_session->actor().has_value();
    m_person->setVisible(!in);
    for (QWidget* w : std::initializer_list<QWidget*>{m_who, m_lock}) w->setVisible(in);
    m_pin->clear();
    if (in) {
        nameThem();
        settle();
        return;
    }
    const QString before = m_person->currentData().toString();
    m_person->clear();
    for (const people::PersonRecord& p : m_session->people())
        if (p.active) m_person->addItem(dataText(p.name), QString::fromStdString(p.id.value));
    if (const int i = m_person->findData(before); i >= 0) m_person->setCurrentIndex(i);
    settle();
}

void SignInStrip::nameThem()
{
    const auto& actor = m_session->actor();
    if (!actor) return;
    const QString name = dataText(actor->name()), role = roleText(actor->role());
    m_who->setText(m_narrow ? name + QLatin1Char('\n') + role : tr("%1, %2").arg(name, role));
}

void SignInStrip::setNarrow(bool narrow)
{
    if (narrow == m_narrow) return;
    m_narrow = narrow;
    nameThem();
}

int SignInStrip::saves() const
{
    const auto& actor = m_session->actor();
    if (!actor) return 0;
    const QFontMetrics type = m_who->fontMetrics();
    const QString name = dataText(actor->name()), role = roleText(actor->role());
    const int whole = type.horizontalAdvance(tr("%1, %2").arg(name, role));
    return std::max(0, whole - std::max(type.horizontalAdvance(name), type.horizontalAdvance(role)));
}

/// Whoever has chosen nothing yet is led to where it is chosen.
void SignInStrip::settle()
{
    const bool in = m_session->actor().has_value();
    const std::string id = m_person->currentData().toString().toStdString();
    bool chooses = false;
    for (const logbook::DoorState& door : m_session->doors())
        chooses = chooses || (door.person.value == id && door.invited && !door.chosen);
    m_pin->setVisible(!in && !chooses);
    m_in->setVisible(!in && !chooses);
    m_choose->setVisible(!in && chooses);
    emit chosen(m_person->currentData().toString());
}

void SignInStrip::signIn()
{
    if (m_person->currentIndex() < 0 || m_pin->text().isEmpty()) {
        m_pin->setFocus();
        return;
    }
    m_session->signIn(m_person->currentData().toString(), m_pin->text());
}

}  // namespace taut::app
