// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/countersign.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

Countersign::Countersign(QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(wrapped(tr("A supervisor countersigns: they look at the run here, choose their name and type "
                                 "their PIN. Then sign with your own passphrase, once more."),
                              "strong", this));
    m_person = new PickList(this);
    m_person->setObjectName(QStringLiteral("countersigner"));
    m_person->setPlaceholderText(tr("Which supervisor?"));
    named(m_person, tr("Supervisor who countersigns"));
    m_pin = new QLineEdit(this);
    m_pin->setObjectName(QStringLiteral("countersignPin"));
    m_pin->setEchoMode(QLineEdit::Password);
    named(m_pin, tr("PIN of the supervisor"));
    hint(m_pin, tr("PIN of the supervisor"));
    auto* row = new QHBoxLayout;
    row->setSpacing(sizes().gap);
    row->addWidget(m_person, 3);
    row->addWidget(m_pin, 2);
    column->addLayout(row);
    m_nobody = wrapped(tr("No other supervisor is enrolled here who could."), "", this);
    column->addWidget(m_nobody);
    connect(m_person, &QComboBox::currentIndexChanged, this, &Countersign::edited);
    connect(m_pin, &QLineEdit::textEdited, this, &Countersign::edited);
    hide();
}

void Countersign::setPeople(const std::vector<PersonChoice>& people, const PersonChoice& actor)
{
    const QSignalBlocker quiet(m_person);
    const QVariant before = m_person->currentData();
    m_person->clear();
    for (const PersonChoice& one : people)
        if (people::may(one.role, people::Act::Qualify) && one.id != actor.id)
            m_person->addItem(tr("%1, %2").arg(dataText(one.name), roleText(one.role)), one.id);
    m_person->setCurrentIndex(before.isValid() ? m_person->findData(before) : -1);
    m_nobody->setVisible(m_person->count() == 0);
}

void Countersign::begin()
{
    if (isVisibleTo(parentWidget())) return;
    m_person->setCurrentIndex(-1);
    m_pin->clear();
    show();
}

QWidget* Countersign::wanted() const
{
    if (m_person->currentIndex() < 0) return m_person;
    return m_pin->text().isEmpty() ? m_pin : nullptr;
}

QString Countersign::person() const { return m_person->currentData().toString(); }
QString Countersign::pin() const { return m_pin->text(); }
void Countersign::forgetPin() { m_pin->clear(); }

}  // namespace taut::app
