// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/carry_over.h"

#include <functional>
#include <map>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPointer>
#include <QScrollArea>
#include <QScrollBar>
#include <QTextEdit>

namespace taut::app {

namespace {

using Visit = std::function<void(const QString& place, QWidget* widget)>;

/// Every widget below this one by its place: kinds and counts from the top down. Lists and drop-down lists are looked
/// at as a whole.
void walk(QWidget* widget, const QString& place, const Visit& visit)
{
    visit(place, widget);
    if (qobject_cast<QComboBox*>(widget) != nullptr || qobject_cast<QAbstractItemView*>(widget) != nullptr) return;
    std::map<QString, int> counts;
    for (QObject* child : widget->children()) {
        auto* below = qobject_cast<QWidget*>(child);
        if (below == nullptr || below->isWindow()) continue;
        const QString kind = QString::fromLatin1(below->metaObject()->className());
        walk(below, QStringLiteral("%1/%2:%3").arg(place, kind).arg(counts[kind]++), visit);
    }
}

QVariantList enteredIn(QWidget* widget)
{
    if (auto* line = qobject_cast<QLineEdit*>(widget)) {
        // Secrets stay where they are typed.
        if (line->echoMode() != QLineEdit::Normal || line->isReadOnly()) return {};
        return {line->text(), line->isModified(), line->cursorPosition()};
    }
    if (auto* prose = qobject_cast<QPlainTextEdit*>(widget)) return {prose->toPlainText()};
    if (auto* prose = qobject_cast<QTextEdit*>(widget)) return {prose->toPlainText()};
    if (auto* list = qobject_cast<QComboBox*>(widget)) return {list->currentData(), list->currentIndex()};
    if (auto* list = qobject_cast<QListWidget*>(widget)) return {list->currentRow()};
    if (auto* button = qobject_cast<QAbstractButton*>(widget); button != nullptr && button->isCheckable())
        return {button->isChecked()};
    if (auto* scroll = qobject_cast<QScrollArea*>(widget)) return {scroll->verticalScrollBar()->value()};
    return {};
}

void enter(QWidget* widget, const QVariantList& entered)
{
    if (auto* line = qobject_cast<QLineEdit*>(widget)) {
        if (line->text() == entered[0].toString()) return;
        line->setText(entered[0].toString());
        line->setModified(entered[1].toBool());
        line->setCursorPosition(entered[2].toInt());
    } else if (auto* plain = qobject_cast<QPlainTextEdit*>(widget)) {
        if (plain->toPlainText() != entered[0].toString()) plain->setPlainText(entered[0].toString());
    } else if (auto* prose = qobject_cast<QTextEdit*>(widget)) {
        if (prose->toPlainText() != entered[0].toString()) prose->setPlainText(entered[0].toString());
    } else if (auto* combo = qobject_cast<QComboBox*>(widget)) {
        // By what it stands for: in another language the same names may stand in another order.
        const int known = entered[0].isValid() ? combo->findData(entered[0]) : entered[1].toInt();
        if (known >= 0 && known < combo->count()) combo->setCurrentIndex(known);
    } else if (auto* list = qobject_cast<QListWidget*>(widget)) {
        if (entered[0].toInt() < list->count()) list->setCurrentRow(entered[0].toInt());
    } else if (auto* button = qobject_cast<QAbstractButton*>(widget)) {
        if (entered[0].toBool() || !button->autoExclusive()) button->setChecked(entered[0].toBool());
    } else if (auto* scroll = qobject_cast<QScrollArea*>(widget)) {
        scroll->verticalScrollBar()->setValue(entered[0].toInt());
    }
}

}  // namespace

CarryOver::CarryOver(QWidget* from)
{
    walk(from, QString(), [&](const QString& place, QWidget* widget) {
        if (QVariantList entered = enteredIn(widget); !entered.isEmpty())
            m_entered.emplace_back(place, std::move(entered));
        if (widget->hasFocus()) m_focus = place;
    });
}

void CarryOver::into(QWidget* to) const
{
    std::map<QString, QPointer<QWidget>> there;
    const auto at = [&](const QString& place) -> QWidget* {
        // What was entered may have brought up other fields.
        if (there[place].isNull()) {
            there.clear();
            walk(to, QString(), [&](const QString& one, QWidget* widget) { there[one] = widget; });
        }
        return there[place];
    };
    for (const auto& [place, entered] : m_entered) {
        QWidget* found = at(place);
        if (found != nullptr && enteredIn(found).size() == entered.size()) enter(found, entered);
    }
    if (QWidget* focus = m_focus.isEmpty() ? nullptr : at(m_focus)) focus->setFocus();
}

}  // namespace taut::app
