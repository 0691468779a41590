// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/held_stops.h"

#include <map>

#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/theme.h"

namespace taut::app {

HeldStops::HeldStops(QWidget* parent) : QWidget(parent), m_rows(new QVBoxLayout(this))
{
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(6);
}

void HeldStops::show(const std::vector<run::HeldStop>& held)
{
    m_first = nullptr;
    qDeleteAll(findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    std::map<std::string, QStringList> places;
    for (const run::HeldStop& one : held) places[one.holder] << QString::fromStdString(one.where);
    for (const auto& [who, where] : places) {
        const QString name = QString::fromStdString(who);
        auto* line = new QWidget(this);
        auto* row = new QVBoxLayout(line);  // beside each other the longer of the two would be a column of single words
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(2);
        row->addWidget(wrapped(tr("%1 holds: %2").arg(name, where.join(QStringLiteral(", "))), "strong", line));
        // Held down, by the person named: one touch of a key or a finger gives up nobody's stop.
        auto* give = new HoldButton(tr("Hold: I, %1, am out and give it up").arg(name), line);
        give->setObjectName(QStringLiteral("giveUp"));
        const std::string holder = who;
        connect(give, &HoldButton::held, this, [this, holder] { emit command(run::GiveUpStop{holder}); });
        row->addWidget(give);
        m_rows->addWidget(line);
        line->show();  // a layout shows what it was given only when events are next looked at
        if (!m_first) m_first = give;
    }
    setVisible(m_first != nullptr);
}

}  // namespace taut::app
