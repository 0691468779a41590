// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/room.h"

#include <algorithm>

#include <QEvent>
#include <QScrollBar>
#include <QStyle>
#include <QWidget>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

class Folder final : public QObject {
public:
    Folder(QWidget* holder, QBoxLayout* row, int letters)
        : QObject(row),
          m_holder(holder),
          m_row(row),
          m_letters(letters)
    {
        holder->installEventFilter(this);
        settle();
    }
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Resize || event->type() == QEvent::StyleChange) settle();
        return false;
    }

private:
    void settle()
    {
        const bool narrow = m_holder->width() < m_letters * m_holder->fontMetrics().averageCharWidth();
        const auto direction = narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
        if (m_row->direction() != direction) m_row->setDirection(direction);
    }
    QWidget* m_holder;
    QBoxLayout* m_row;
    int m_letters;
};

}  // namespace

void foldBelow(QWidget* holder, QBoxLayout* row, int letters) { new Folder(holder, row, letters); }

ScrollRoom::ScrollRoom(QWidget* body, QWidget* parent) : QScrollArea(parent)
{
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setWidget(body);
}

QSize ScrollRoom::sizeHint() const { return widget()->sizeHint(); }

QSize ScrollRoom::minimumSizeHint() const
{
    // A bar may stand beside the body at any time.
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            std::min(widget()->minimumSizeHint().height(), 2 * sizes().control)};
}

FlowRow::FlowRow(QWidget* parent) : QLayout(parent)
{
    setContentsMargins(0, 0, 0, 0);
    setSpacing(sizes().gap);
}

FlowRow::~FlowRow()
{
    for (const QLayoutItem* item : m_items) delete item;
}

void FlowRow::addItem(QLayoutItem* item)
{
    m_items.push_back(item);
    invalidate();
}

QLayoutItem* FlowRow::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item != nullptr) m_items.erase(m_items.begin() + index);
    return item;
}

int FlowRow::heightForWidth(int width) const { return lay(QRect(0, 0, width, 0), false); }

QSize FlowRow::sizeHint() const
{
    int wide = 0, high = 0;
    for (const QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        wide += (wide > 0 ? spacing() : 0) + item->sizeHint().width();
        high = std::max(high, item->sizeHint().height());
    }
    const QMargins m = contentsMargins();
    return {wide + m.left() + m.right(), high + m.top() + m.bottom()};
}

QSize FlowRow::minimumSize() const
{
    QSize least;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) least = least.expandedTo(item->minimumSize());
    const QMargins m = contentsMargins();
    return least + QSize(m.left() + m.right(), m.top() + m.bottom());
}

void FlowRow::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    lay(rect, true);
}

int FlowRow::lay(const QRect& rect, bool place) const
{
    const QRect inside = rect.marginsRemoved(contentsMargins());
    int y = inside.top(), used = 0;
    std::vector<QLayoutItem*> line;
    const auto end = [&] {
        if (line.empty()) return;
        if (y > inside.top()) y += spacing();
        y += layLine(line, {inside.left(), y, inside.width(), 0}, place);
        line.clear();
        used = 0;
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) continue;
        const int wide = std::min(item->sizeHint().width(), inside.width());
        if (!line.empty() && used + spacing() + wide > inside.width()) end();
        used += (line.empty() ? 0 : spacing()) + wide;
        line.push_back(item);
    }
    end();
    return y - inside.top() + contentsMargins().top() + contentsMargins().bottom();
}

int FlowRow::layLine(const std::vector<QLayoutItem*>& line, const QRect& room, bool place) const
{
    int left = room.width() - spacing() * (static_cast<int>(line.size()) - 1), wanting = 0;
    for (const QLayoutItem* item : line) {
        left -= std::min(item->sizeHint().width(), room.width());
        wanting += (item->expandingDirections() & Qt::Horizontal) != 0 ? 1 : 0;
    }
    std::vector<int> widths;
    int high = 0;
    for (const QLayoutItem* item : line) {
        int wide = std::min(item->sizeHint().width(), room.width());
        if ((item->expandingDirections() & Qt::Horizontal) != 0) {
            wide += left / wanting;
            left -= left / wanting;
            --wanting;
        }
        widths.push_back(wide);
        high = std::max(high, item->hasHeightForWidth() ? item->heightForWidth(wide) : item->sizeHint().height());
    }
    if (!place) return high;
    const Qt::LayoutDirection direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int x = room.left();
    for (std::size_t i = 0; i < line.size(); ++i) {
        line[i]->setGeometry(QStyle::visualRect(direction, room, QRect(x, room.top(), widths[i], high)));
        x += widths[i] + spacing();
    }
    return high;
}

void hint(QLineEdit* line, const QString& text)
{
    line->setPlaceholderText(text);
    constexpr int kAround = 4;  // letters: the frame, and room for the cursor
    line->ensurePolished();
    line->setMinimumWidth(line->fontMetrics().horizontalAdvance(text) +
                          kAround * line->fontMetrics().averageCharWidth());
}

}  // namespace taut::app
