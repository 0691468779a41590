// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/what_happened.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/practice/scenario.h"

namespace taut::app {

WhatHappened::WhatHappened(QWidget* parent) : QWidget(parent)
{
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 4, 6, 4);
    column->addWidget(withRole(new QLabel(tr("What happened"), body), "head"));
    m_box = new QWidget(body);
    m_told = new QVBoxLayout(m_box);
    m_told->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_box);
    auto* acts = new FlowRow;
    const auto add = [&](const QString& text, const char* role, const char* name) {
        QPushButton* button = worded(text, role, body);
        button->setObjectName(QString::fromLatin1(name));
        acts->addWidget(button);
        return button;
    };
    m_goOn = add(tr("Go on"), "main", "goOn");
    QPushButton* same = add(tr("Begin again, the same"), "", "again");
    QPushButton* other = add(tr("Begin again, with other chances"), "", "againOther");
    column->addLayout(acts);
    column->addStretch(1);
    auto* room = new ScrollRoom(body, this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(room);
    constexpr int kFreshMs = 1000;
    m_fresh.setSingleShot(true);
    m_fresh.setInterval(kFreshMs);
    for (QPushButton* one : {m_goOn, same, other}) one->installEventFilter(this);
    connect(m_goOn, &QPushButton::clicked, this, &WhatHappened::goOn);
    connect(same, &QPushButton::clicked, this, [this] { emit again(true); });
    connect(other, &QPushButton::clicked, this, [this] { emit again(false); });
}

QWidget* WhatHappened::first() const { return m_goOn; }

/// The keys that lead on to another control are no danger.
bool WhatHappened::eventFilter(QObject* watched, QEvent* event)
{
    bool touched = event->type() == QEvent::MouseButtonPress || event->type() == QEvent::MouseButtonDblClick;
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<const QKeyEvent*>(event)->key();
        touched = key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Select;
    }
    return (touched && m_fresh.isActive()) || QWidget::eventFilter(watched, event);
}

void WhatHappened::show(const practice::Consequence& happened, const procedure::Plan* plan, UnitSystem system)
{
    if (happened.at != m_shown) m_fresh.start();
    m_shown = happened.at;
    while (QLayoutItem* item = m_told->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_told->addWidget(wrapped(words(happened.text, system), "strong", m_box));
    if (!happened.causes.empty()) m_told->addWidget(wrapped(tr("It came to that because:"), "soft", m_box));
    QStringList named;
    for (const practice::Cause& cause : happened.causes) {
        m_told->addWidget(wrapped(words(cause.text, system), "", m_box));
        const std::string id = plan != nullptr ? practice::preventedBy(cause, *plan) : std::string();
        const procedure::Step* step = id.empty() ? nullptr : plan->find(procedure::StepId{id});
        if (step == nullptr || named.contains(QString::fromStdString(id))) continue;
        named << QString::fromStdString(id);
        QPushButton* go = worded(tr("The step that guards against it: %1").arg(words(step->say, system)), "row", m_box);
        go->setObjectName(QStringLiteral("guardedBy"));
        go->setProperty("step", named.last());
        go->installEventFilter(this);
        connect(go, &QPushButton::clicked, this, [this, step = named.last()] { emit stepWanted(step); });
        m_told->addWidget(go);
    }
    tabsBefore(m_goOn, m_box);
}

}  // namespace taut::app
