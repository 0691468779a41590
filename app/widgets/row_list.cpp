// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/row_list.h"

#include <utility>

#include <QEvent>
#include <QHash>
#include <QPainter>
#include <QStyledItemDelegate>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

enum Part { kId = Qt::UserRole, kText, kValue, kMore, kMark };
constexpr int kSide = 10, kAbove = 6, kBetween = 16;

/// Names that have no blank, a run's or a key's, may go on in the next line after a hyphen or a point; a number never.
QString breakable(const QString& text)
{
    QString out;
    for (qsizetype i = 0; i < text.size(); ++i) {
        out += text[i];
        const bool between = i > 0 && i + 1 < text.size() && !text[i - 1].isSpace() && !text[i + 1].isSpace();
        const bool name = text[i] == QLatin1Char('-') ||
                          (text[i] == QLatin1Char('.') && between && text[i + 1].isLetter()) ||
                          text[i] == QLatin1Char('_');
        if (between && name) out += QChar(0x200B);
    }
    return out;
}
QString textOf(const QModelIndex& index) { return breakable(index.data(kText).toString()); }
QString moreOf(const QModelIndex& index) { return breakable(index.data(kMore).toString()); }

class RowPainter final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const int width = static_cast<const QListWidget*>(parent())->viewport()->width();
        if (std::exchange(m_width, width) != width) m_heights.clear();
        // The view asks for every row each time one is added.
        int& height = m_heights[index.internalPointer()];
        if (height == 0) height = qMax(sizes().row, qCeil(placesOf(index, width).bottom) + kAbove);
        return {width, height};
    }
    /// Rows have gone, or look otherwise.
    void forget() const { m_heights.clear(); }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const bool head = isHead(index);
        const Look look = currentLook(1.0, head), strong = currentLook(1.0, true), small = currentLook(0.88);
        painter->save();
        if (option.state & QStyle::State_Selected) {
            painter->fillRect(option.rect, look.palette.wash);
            painter->fillRect(QRect(option.rect.topLeft(), QSize(5, option.rect.height())), look.palette.accent);
        }
        painter->setPen(QPen(look.palette.rule, head ? 1.5 : 0.5));
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        if ((option.state & QStyle::State_HasFocus) && !head) {
            painter->setPen(QPen(look.palette.accent, 2, Qt::DotLine));
            painter->drawRect(option.rect.adjusted(2, 2, -3, -3));
        }
        Places p = placesOf(index, option.rect.width());
        // One line stands in the middle of a row that is higher than it.
        const double down =
            head ? option.rect.height() - p.bottom - kAbove : qMax(0.0, (option.rect.height() - p.bottom - kAbove) / 2);
        painter->translate(option.rect.left(), option.rect.top() + down);
        if (const auto mark = static_cast<MarkShape>(index.data(kMark).toInt()); mark != MarkShape::None)
            paintMark(*painter, p.mark, mark, look);
        painter->setPen(look.palette.ink);
        painter->setFont(look.font);
        painter->drawText(p.text, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, textOf(index));
        painter->setFont(strong.font);
        painter->drawText(p.value, Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, index.data(kValue).toString());
        painter->setFont(small.font);
        painter->setPen(look.palette.soft);
        painter->drawText(p.more, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, moreOf(index));
        painter->restore();
    }

private:
    struct Places {
        QRectF mark, text, value, more;
        double bottom = 0;
    };
    static bool isHead(const QModelIndex& index) { return index.data(kId).toString().isEmpty(); }
    static QSizeF room(const QFont& font, const QString& text, double width)
    {
        return QFontMetricsF(font).boundingRect(QRectF(0, 0, qMax(40.0, width), 10000), Qt::TextWordWrap, text).size();
    }

    static Places placesOf(const QModelIndex& index, int width)
    {
        const QFont font = currentLook(1.0, isHead(index)).font, strong = currentLook(1.0, true).font;
        const QString value = index.data(kValue).toString(), more = moreOf(index);
        Places p;
        double left = kSide;
        if (static_cast<MarkShape>(index.data(kMark).toInt()) != MarkShape::None) {
            const double side = QFontMetricsF(font).height() * 1.15;
            p.mark = QRectF(left, kAbove, side, side);
            left += side + kSide;
        }
        const double whole = width - left - kSide;
        const double least = QFontMetricsF(strong).horizontalAdvance(value);
        const bool beside = least <= whole * 0.5;
        const double right = value.isEmpty() ? 0 : beside ? least + 2 : whole;
        const double textWidth = value.isEmpty() || !beside ? whole : whole - right - kBetween;
        const double textHeight = room(font, textOf(index), textWidth).height();
        p.text = QRectF(left, kAbove, textWidth, textHeight);
        double y = kAbove + textHeight;
        if (!value.isEmpty()) {
            const double height = room(strong, value, right).height();
            p.value = QRectF(left + whole - right, beside ? kAbove : y, right, height);
            y = qMax(y, p.value.bottom());
        }
        if (!more.isEmpty()) {
            p.more = QRectF(left, y + 2, whole, room(currentLook(0.88).font, more, whole).height());
            y = p.more.bottom();
        }
        p.bottom = y;
        return p;
    }
    mutable QHash<const void*, int> m_heights;  ///< of rows in this width; a row never changes
    mutable int m_width = 0;
};

void forgetHeights(const QListWidget& list) { static_cast<const RowPainter*>(list.itemDelegate())->forget(); }

}  // namespace

RowList::RowList(QWidget* parent) : QListWidget(parent)
{
    setItemDelegate(new RowPainter(this));
    connect(model(), &QAbstractItemModel::modelReset, this, [this] { forgetHeights(*this); });
    connect(model(), &QAbstractItemModel::rowsRemoved, this, [this] { forgetHeights(*this); });
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setResizeMode(QListView::Adjust);
}

void RowList::add(const Row& row)
{
    addItem(new QListWidgetItem);
    say(count() - 1, row);
}

QString RowList::idAt(int at) const { return item(at)->data(kId).toString(); }

void RowList::say(int at, const Row& row)
{
    QListWidgetItem* item = this->item(at);
    item->setData(kId, row.id);
    item->setData(kText, row.text);
    item->setData(kValue, row.value);
    item->setData(kMore, row.more);
    item->setData(kMark, static_cast<int>(row.mark));
    QStringList all{row.text, row.value, row.more};
    all.removeAll(QString());
    // For assistive technology, which sees no columns.
    item->setText(all.join(QStringLiteral(", ")));
    // No key, no letter and no touch comes to what is not enabled.
    if (row.id.isEmpty()) item->setFlags(Qt::NoItemFlags);
}

QString RowList::chosen() const { return currentItem() ? currentItem()->data(kId).toString() : QString(); }

bool RowList::choose(const QString& id)
{
    for (int i = 0; i < count(); ++i)
        if (!id.isEmpty() && item(i)->data(kId).toString() == id) {
            setCurrentRow(i);
            return true;
        }
    return false;
}

QString RowList::first() const
{
    for (int i = 0; i < count(); ++i)
        if (QString id = item(i)->data(kId).toString(); !id.isEmpty()) return id;
    return {};
}

/// Home, and the first Tab into the list, would stop at a headline, or go nowhere where one stands.
QModelIndex RowList::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers)
{
    const QModelIndex to = QListWidget::moveCursor(action, modifiers);
    const auto isRow = [this](int row) { return !item(row)->data(kId).toString().isEmpty(); };
    if (to.isValid() && isRow(to.row())) return to;
    const bool up =
        action == MoveUp || action == MovePrevious || action == MovePageUp || action == MoveLeft || action == MoveEnd;
    int row = action == MoveHome         ? 0
              : action == MoveEnd        ? count() - 1
              : to.isValid()             ? to.row()
              : currentIndex().isValid() ? count()
                                         : 0;
    while (row >= 0 && row < count() && !isRow(row)) row += up ? -1 : 1;
    return row >= 0 && row < count() ? model()->index(row, 0) : currentIndex();
}

void RowList::resizeEvent(QResizeEvent* event)
{
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

void RowList::changeEvent(QEvent* event)
{
    QListWidget::changeEvent(event);
    forgetHeights(*this);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) scheduleDelayedItemsLayout();
}

}  // namespace taut::app
