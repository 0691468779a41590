// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/read_only_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

ReadOnlyStrip::ReadOnlyStrip(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("readOnly"));
    auto* said = new QVBoxLayout;
    said->setSpacing(2);
    said->addWidget(wrapped(tr("Open to read only: nothing can be entered, changed or signed here."), "strong", this));
    m_text = wrapped({}, "", this);
    said->addWidget(m_text);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 8, 8, 8);
    row->setSpacing(sizes().gap);
    row->addLayout(said, 1);
    const auto add = [&](const QString& name, const char* objectName, auto signal) {
        QPushButton* button = worded(name, "quiet", this);
        button->setObjectName(QString::fromLatin1(objectName));
        connect(button, &QPushButton::clicked, this, signal);
        row->addWidget(button, 0, Qt::AlignVCenter);
    };
    add(tr("&Try to open it"), "tryAgain", &ReadOnlyStrip::again);
    add(tr("&Another logbook\u2026"), "leave", &ReadOnlyStrip::another);
    hide();
}

void ReadOnlyStrip::say(const Finding& why)
{
    m_text->setText(words(why.text, UnitSystem::Metric));
    setAccessibleName(words(why, UnitSystem::Metric));
}

void ReadOnlyStrip::paintEvent(QPaintEvent*)
{
    const Look look = currentLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.palette.wash);
    painter.fillRect(QRect(0, 0, 6, height()), look.palette.accent);
}

}  // namespace taut::app
