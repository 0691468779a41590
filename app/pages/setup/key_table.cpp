// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/key_table.h"

#include <algorithm>

#include <QEvent>
#include <QHeaderView>
#include <QLineEdit>
#include <QPainter>
#include <QStyledItemDelegate>

#include "app/drawing/marks.h"
#include "app/pages/setup/cell_names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

using inputs::FormCell;
using Sort = inputs::KeyAsked::Sort;

/// What may stand in an empty cell, said softly: "a length", "yes or no".
QString expected(const FormCell& cell)
{
    switch (cell.sort) {
    case Sort::Quantity: {
        QStringList kinds;
        for (const Kind kind : cell.kinds) kinds << words(Text{kindName(kind)}, UnitSystem::Metric);
        return kinds.join(QStringLiteral(", "));
    }
    case Sort::Point: return words(Text{kindName(Kind::Length)}, UnitSystem::Metric);
    case Sort::Whole: return KeyTable::tr("a whole number");
    case Sort::Number: return KeyTable::tr("a number");
    case Sort::Flag: return KeyTable::tr("true or false");
    case Sort::Texts: return KeyTable::tr("words, with commas");
    case Sort::Table: return KeyTable::tr("a table of its own");
    case Sort::Id: return KeyTable::tr("a name");
    case Sort::Word:
    case Sort::Reference: return KeyTable::tr("one of a list");
    default: return KeyTable::tr("a text");
    }
}

QStringList choices(const FormCell& cell)
{
    QStringList out;
    if (cell.sort == Sort::Flag) return {QStringLiteral("true"), QStringLiteral("false")};
    if (cell.sort == Sort::Table) return {KeyTable::tr("make this table")};
    if (cell.sort == Sort::Word || cell.sort == Sort::Reference)
        for (const std::string& word : cell.words) out << dataText(word);
    return out;
}

constexpr int kSoft = Qt::UserRole, kWrong = Qt::UserRole + 1;

}  // namespace

/// Paints what is expected softly and the mark of what is wrong; a list to choose from where only words may stand.
class KeyDelegate final : public QStyledItemDelegate {
public:
    explicit KeyDelegate(KeyTable* table) : QStyledItemDelegate(table), m_table(table) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QStyleOptionViewItem shown = option;
        initStyleOption(&shown, index);
        const Look look = currentLook();
        const bool wrong = index.data(kWrong).toBool();
        const QString soft = index.data(kSoft).toString();
        painter->fillRect(option.rect, option.state & QStyle::State_Selected ? look.palette.wash : look.palette.sheet);
        painter->setPen(look.palette.rule);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        QRect box = option.rect.adjusted(6, 0, -4, 0);
        if (wrong) {
            const int side = fontHeight(option);
            paintMark(*painter, QRectF(box.left(), box.center().y() - side / 2.0, side, side), MarkShape::Octagon,
                      look);
            box.setLeft(box.left() + side + 5);
        }
        painter->setFont(option.font);
        painter->setPen(shown.text.isEmpty() ? look.palette.soft : look.palette.ink);
        const QString text = shown.text.isEmpty() ? soft : shown.text;
        painter->drawText(box, Qt::AlignVCenter | Qt::AlignLeft,
                          option.fontMetrics.elidedText(text, Qt::ElideMiddle, box.width()));
        if (option.state & QStyle::State_HasFocus) {
            painter->setPen(QPen(look.palette.accent, 2));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
        }
    }
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const FormCell* cell = m_table->cellAt(index.row(), index.column());
        if (cell == nullptr) return nullptr;
        const QString name = index.data(Qt::AccessibleTextRole).toString();
        const QStringList list = choices(*cell);
        if (!list.isEmpty()) {
            auto* pick = new PickList(parent);
            named(pick, name);
            pick->addItem(KeyTable::tr("not said"), QString());
            for (const QString& word : list) pick->addItem(word, word);
            connect(pick, &QComboBox::activated, this, [this, pick] {
                auto* self = const_cast<KeyDelegate*>(this);
                emit self->commitData(pick);
                emit self->closeEditor(pick);
            });
            return pick;
        }
        auto* line = new QLineEdit(parent);
        named(line, name);
        line->setPlaceholderText(expected(*cell));
        connect(line, &QLineEdit::textEdited, m_table,
                [table = m_table, cell = *cell](const QString& text) { emit table->typing(cell, text); });
        return line;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override
    {
        const QString text = index.data(Qt::EditRole).toString();
        if (auto* line = qobject_cast<QLineEdit*>(editor)) line->setText(text);
        if (auto* pick = qobject_cast<QComboBox*>(editor)) {
            const int at = pick->findData(text);
            pick->setCurrentIndex(at);
        }
    }
    void setModelData(QWidget* editor, QAbstractItemModel*, const QModelIndex& index) const override
    {
        const FormCell* cell = m_table->cellAt(index.row(), index.column());
        if (cell == nullptr) return;
        auto* line = qobject_cast<QLineEdit*>(editor);
        auto* pick = qobject_cast<QComboBox*>(editor);
        const QString text = line != nullptr   ? line->text()
                             : pick == nullptr ? QString()
                                               : pick->currentData().toString();
        if (pick != nullptr && pick->currentIndex() < 0) return;
        if (text == index.data(Qt::EditRole).toString())
            emit m_table->untouched();
        else
            emit m_table->typed(*cell, text);
    }
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex&) const override
    {
        editor->setGeometry(option.rect);
    }
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const QString text = index.data(Qt::DisplayRole).toString();
        const QString shown = text.isEmpty() ? index.data(kSoft).toString() : text;
        const int mark = index.data(kWrong).toBool() ? fontHeight(option) + 5 : 0;
        return {option.fontMetrics.horizontalAdvance(shown) + mark + 16, sizes().row};
    }

private:
    static int fontHeight(const QStyleOptionViewItem& option) { return option.fontMetrics.ascent(); }
    KeyTable* m_table;
};

KeyTable::KeyTable(QWidget* parent) : QTableWidget(parent)
{
    setItemDelegate(new KeyDelegate(this));
    setSelectionMode(QAbstractItemView::SingleSelection);
    // Tab goes on from the table; in a cell that is open it goes on to the next cell.
    setTabKeyNavigation(false);
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setCornerButtonEnabled(false);
    fit();
}

void KeyTable::fit()
{
    verticalHeader()->setDefaultSectionSize(sizes().row);
    verticalHeader()->setMinimumSectionSize(sizes().row);
    horizontalHeader()->setMinimumHeight(sizes().row);
}

void KeyTable::changeEvent(QEvent* event)
{
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) fit();
}

const FormCell* KeyTable::cellAt(int row, int column) const
{
    const auto item = static_cast<std::size_t>(m_across ? row : column);
    const auto key = static_cast<std::size_t>(m_across ? column : row);
    if (item >= m_group.items.size() || key >= m_group.items[item].size()) return nullptr;
    const FormCell& cell = m_group.items[item][key];
    return cell.known ? &cell : nullptr;
}

void KeyTable::show(const inputs::Form& form, const inputs::FormGroup& group,
                    const std::function<QString(const Finding&)>& said, bool mayWrite)
{
    const bool same = group.name == m_group.name && !m_group.items.empty();
    const int row = currentRow(), column = currentColumn();
    const std::size_t keysBefore = m_group.keys.size(), itemsBefore = m_group.items.size();
    const QSignalBlocker quiet(this);
    m_group = group;
    m_across = rowsGoDown(group);
    const int items = static_cast<int>(group.items.size()), keys = static_cast<int>(group.keys.size());
    // Of the same shape, the cells are kept: the next one may be open by now.
    const bool kept = same && keysBefore == group.keys.size() && itemsBefore == group.items.size();
    if (!kept) clear();
    setRowCount(m_across ? items : keys);
    setColumnCount(m_across ? keys : items);
    QStringList keyNames, itemNames, numbers;
    for (const std::string& key : group.keys) keyNames << keyName(key);
    for (int i = 0; i < items; ++i) {
        itemNames << itemName(group, static_cast<std::size_t>(i));
        numbers << QString::number(i + 1);
    }
    // Below each other, the rows bear their names in their first column.
    setVerticalHeaderLabels(m_across ? numbers : keyNames);
    setHorizontalHeaderLabels(m_across ? keyNames : itemNames);
    for (int i = 0; i < items; ++i)
        for (int k = 0; k < keys; ++k) {
            const FormCell& cell = group.items[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)];
            const int r = m_across ? i : k, c = m_across ? k : i;
            auto* item = QTableWidget::item(r, c);
            if (item == nullptr) setItem(r, c, item = new QTableWidgetItem);
            item->setText(dataText(cell.said));
            QStringList wrong;
            for (const std::size_t f : cell.findings) wrong << said(form.findings[f]);
            const QString soft = cell.known ? expected(cell) : QStringLiteral("\u2013");
            // Columns as narrow as what stands in them: the tip and the open cell tell what is expected.
            item->setData(kSoft, m_across ? QString() : soft);
            item->setData(kWrong, !wrong.isEmpty());
            item->setToolTip(wrong.isEmpty() ? soft : wrong.join(QLatin1Char('\n')));
            item->setData(Qt::AccessibleTextRole, itemNames[i] + QStringLiteral(", ") + keyNames[k]);
            item->setData(Qt::AccessibleDescriptionRole, item->toolTip());
            Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
            if (cell.known && mayWrite) flags |= Qt::ItemIsEditable;
            item->setFlags(flags);
        }
    viewport()->update();
    if (kept) return;
    // While somebody writes, no column changes its width: the next touch would come to another cell.
    horizontalHeader()->setStretchLastSection(false);
    resizeColumnsToContents();
    horizontalHeader()->setStretchLastSection(!m_across);
    if (same && row >= 0)
        setCurrentCell(std::min(row, rowCount() - 1), std::min(column, columnCount() - 1));
    else if (rowCount() > 0 && columnCount() > 0)
        setCurrentCell(0, 0);
}

void KeyTable::showNothing()
{
    const QSignalBlocker quiet(this);
    m_group = {};
    clear();
    setRowCount(0);
    setColumnCount(0);
}

std::size_t KeyTable::focused() const
{
    const int at = m_across ? currentRow() : currentColumn();
    return at < 0 ? m_group.items.size() : static_cast<std::size_t>(at);
}

std::string KeyTable::focusedKey() const
{
    const int at = m_across ? currentColumn() : currentRow();
    return at < 0 || static_cast<std::size_t>(at) >= m_group.keys.size() ? std::string()
                                                                         : m_group.keys[static_cast<std::size_t>(at)];
}

void KeyTable::goTo(std::size_t item, const std::string& key)
{
    const auto at = std::find(m_group.keys.begin(), m_group.keys.end(), key);
    if (at == m_group.keys.end() || item >= m_group.items.size()) return;
    const int k = static_cast<int>(at - m_group.keys.begin()), i = static_cast<int>(item);
    setCurrentCell(m_across ? i : k, m_across ? k : i);
    scrollToItem(currentItem());
    setFocus();
}

}  // namespace taut::app
