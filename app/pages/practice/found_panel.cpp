// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/found_panel.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"

namespace taut::app {

FoundPanel::FoundPanel(QWidget* parent) : QWidget(parent)
{
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 4, 6, 4);
    column->addWidget(wrapped(tr("Say what you found that is not as it should be. What is said stays said: what is in "
                                 "order counts against you."),
                              "soft", body));
    m_box = new QWidget(body);
    m_rows = new QVBoxLayout(m_box);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(2);
    column->addWidget(m_box);
    column->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new ScrollRoom(body, this));
}

void FoundPanel::build(const inputs::Press& press)
{
    for (const Row& row : m_all) delete row.button;
    m_all.clear();
    for (const practice::Suspect& suspect : practice::suspectsOf(press)) {
        const QString text = words(practice::suspectText(suspect, press), press.units);
        QPushButton* button = worded(text, "row", m_box);
        button->setObjectName(QStringLiteral("suspect_") + QString::fromStdString(suspect.what + '_' + suspect.item));
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, suspect] { emit named(suspect); });
        m_rows->addWidget(button);
        m_all.push_back({suspect, text, button});
    }
}

void FoundPanel::show(const practice::Lesson& lesson)
{
    for (const Row& row : m_all) {
        const bool said = std::any_of(lesson.log().begin(), lesson.log().end(), [&](const practice::Logged& one) {
            const auto* suspect = std::get_if<practice::Suspect>(&one.act);
            return suspect != nullptr && practice::isMeant(row.suspect, suspect->what, suspect->item);
        });
        row.button->setChecked(said);
        row.button->setText(said ? tr("Said: %1").arg(row.text) : row.text);
        row.button->setEnabled(!said);
    }
}

}  // namespace taut::app
