// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/tag_table.h"

#include <utility>

#include <QEvent>
#include <QGridLayout>
#include <QLabel>

#include "app/text/tag_words.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

MarkShape markFor(Severity severity)
{
    switch (severity) {
    case Severity::Stop: return MarkShape::Octagon;
    case Severity::Warn: return MarkShape::HalfDiamond;
    case Severity::Note: break;
    }
    return MarkShape::Dot;
}

}  // namespace

TagTable::TagTable(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this))
{
    setObjectName(QStringLiteral("tagTable"));
    setAccessibleName(tr("What the tag says"));
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(sizes().gap);
    m_grid->setVerticalSpacing(4);
}

void TagTable::show(inputs::TagRows rows, UnitSystem system)
{
    m_rows = std::move(rows);
    m_system = system;
    m_wide = hasRoom();
    build();
}

/// Whether what becomes of a line stands beside it, or under it.
bool TagTable::hasRoom() const
{
    constexpr int kLetters = 80;
    return width() > kLetters * fontMetrics().averageCharWidth();
}

void TagTable::addFinding(const Finding& finding)
{
    const int row = m_grid->rowCount();
    auto* mark = new MarkWidget(this);
    mark->setMark(markFor(finding.severity));
    m_grid->addWidget(mark, row, 0, Qt::AlignTop | Qt::AlignRight);
    QLabel* said = wrapped(words(finding, m_system), "strong", this);
    said->setObjectName(QStringLiteral("tagFinding"));
    m_grid->addWidget(said, row, 1, 1, 2);
}

void TagTable::build()
{
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    delete m_grid;
    m_grid = new QGridLayout(this);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(sizes().gap);
    m_grid->setVerticalSpacing(4);
    m_grid->setColumnStretch(0, 3);
    m_grid->setColumnStretch(1, 4);
    m_grid->setColumnStretch(2, m_wide ? 8 : 1);
    for (const inputs::TagRow& line : m_rows.rows) {
        const int row = m_grid->rowCount();
        const QString name = tr("%1 %2", "name and identifier of a line of a tag")
                                 .arg(words(line.field.name, m_system), tagIdentifierText(line.field));
        const QString value = tagValueText(line.field, m_system), use = tagUseText(line, m_system);
        m_grid->addWidget(wrapped(name, "", this), row, 0, Qt::AlignTop);
        QLabel* shown = wrapped(value, "strong", this);
        shown->setObjectName(QStringLiteral("tagValue"));
        shown->setAccessibleName(QStringLiteral("%1: %2. %3").arg(name, value, use).trimmed());
        m_grid->addWidget(shown, row, 1, 1, m_wide ? 1 : 2, Qt::AlignTop);
        if (!use.isEmpty()) {
            QLabel* becomes = wrapped(use, "", this);
            becomes->setObjectName(QStringLiteral("tagUse"));
            if (m_wide)
                m_grid->addWidget(becomes, row, 2, Qt::AlignTop);
            else
                m_grid->addWidget(becomes, row + 1, 1, 1, 2);
        }
        for (const Finding& finding : line.findings) addFinding(finding);
    }
    for (const Finding& finding : m_rows.findings) addFinding(finding);
    // A layout shows what it is given only after the next round of events.
    for (QObject* child : children())
        if (auto* widget = qobject_cast<QWidget*>(child); widget && m_grid->indexOf(widget) >= 0) widget->show();
}

void TagTable::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (std::exchange(m_wide, hasRoom()) != m_wide) build();
}

void TagTable::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    if (std::exchange(m_wide, hasRoom()) != m_wide) build();
}

}  // namespace taut::app
