// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/whole_table.h"

#include <algorithm>
#include <utility>

#include <QEvent>
#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kMarkRole = Qt::UserRole + 100;

/// A cell that shows its whole text, from the top of its row, and before it the state's mark where it has one.
class WholeCell final : public QStyledItemDelegate {
public:
    explicit WholeCell(QTableWidget* table) : QStyledItemDelegate(table), m_table(table) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const Look look = currentLook();
        if (option.state & QStyle::State_Selected) painter->fillRect(option.rect, look.palette.wash);
        painter->setPen(QPen(look.palette.rule, 1));
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        const QRect room = option.rect.adjusted(kSide + markRoom(index), kAbove, -kSide, -kAbove);
        if (const QVariant mark = index.data(kMarkRole); mark.isValid()) {
            const double side = markSide(), line = QFontMetricsF(look.font).height();
            paintMark(*painter, QRectF(option.rect.left() + kSide, room.top() + (line - side) / 2, side, side),
                      static_cast<MarkShape>(mark.toInt()), look);
        }
        painter->setFont(look.font);
        painter->setPen(look.palette.ink);
        painter->drawText(room, kFlags, index.data(Qt::DisplayRole).toString());
    }

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const int width = m_table->columnWidth(index.column());
        const QFontMetrics metrics(currentLook().font);
        const QRect room(0, 0, std::max(width - 2 * kSide - markRoom(index), 1), 100000);
        return {width,
                metrics.boundingRect(room, kFlags, index.data(Qt::DisplayRole).toString()).height() + 2 * kAbove};
    }

private:
    static constexpr int kSide = 6, kAbove = 8;
    static constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
    static double markSide() { return QFontMetricsF(currentLook().font).height() * 1.15; }
    static int markRoom(const QModelIndex& index)
    {
        return index.data(kMarkRole).isValid() ? qRound(markSide()) + 8 : 0;
    }
    QTableWidget* m_table;
};

}  // namespace

WholeTable::WholeTable(const QStringList& heads, std::vector<double> shares, QWidget* parent)
    : QTableWidget(0, static_cast<int>(heads.size()), parent),
      m_shares(std::move(shares))
{
    setHorizontalHeaderLabels(heads);
    setItemDelegate(new WholeCell(this));
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(sizes().row);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setMinimumHeight(3 * sizes().row);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setWordWrap(true);
}

void WholeTable::put(int row, int column, const QString& text) { setItem(row, column, new QTableWidgetItem(text)); }

void WholeTable::mark(int row, int column, MarkShape shape)
{
    if (shape != MarkShape::None) item(row, column)->setData(kMarkRole, static_cast<int>(shape));
}

void WholeTable::spread()
{
    const int width = viewport()->width();
    for (int i = 0; i < columnCount(); ++i)
        setColumnWidth(i, static_cast<int>(width * m_shares[static_cast<std::size_t>(i)]));
    resizeRowsToContents();
}

void WholeTable::resizeEvent(QResizeEvent* event)
{
    QTableWidget::resizeEvent(event);
    spread();
}

void WholeTable::changeEvent(QEvent* event)
{
    QTableWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange) return;
    verticalHeader()->setMinimumSectionSize(sizes().row);
    spread();
}

}  // namespace taut::app
