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
    m_notes = wrapped({}, "", this);
    m_notes->hide();
    said->addWidget(m_text);
    said->addWidget(m_notes);
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
    m_why = words(why, UnitSystem::Metric);
    name();
}

void ReadOnlyStrip::tell(const Findings& notes)
{
    QStringList all;
    // That the layout is newer is why it could not be opened, and stands above.
    for (const Finding& note : notes) all << words(note.remedy, UnitSystem::Metric);
    m_notes->setText(all.join(QLatin1Char('\n')));
    m_notes->setVisible(!all.isEmpty());
    name();
}

/// For whoever does not see it, the whole of it.
void ReadOnlyStrip::name() { setAccessibleName(QStringList{m_why, m_notes->text()}.join(QLatin1Char(' ')).trimmed()); }

void ReadOnlyStrip::paintEvent(QPaintEvent*)
{
    const Look look = currentLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.palette.wash);
    painter.fillRect(QRect(0, 0, 6, height()), look.palette.accent);
}

}  // namespace taut::app
