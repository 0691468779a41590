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
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    // Its size follows from the place alone (fit). Asked for the one that it would like, it and all in it would be
    // dressed now, and again each time that a parent of theirs gets its own.
    body->setAttribute(Qt::WA_Resized);
    setWidget(body);
}

QSize ScrollRoom::sizeHint() const { return widget()->sizeHint(); }

QSize ScrollRoom::minimumSizeHint() const
{
    // A bar may stand beside the body at any time.
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            std::min(widget()->minimumSizeHint().height(), 2 * sizes().control)};
}

bool ScrollRoom::eventFilter(QObject* watched, QEvent* event)
{
    const bool done = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
    return done;
}

void ScrollRoom::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

/// As wide as the place; as high as the place, or as what is in it needs at least.
void ScrollRoom::fit()
{
    const QSize place = maximumViewportSize();
    const auto least = [this](int wide) {
        const QLayout* layout = widget()->layout();
        if (layout == nullptr) return widget()->minimumSizeHint().height();
        return layout->hasHeightForWidth() ? layout->totalMinimumHeightForWidth(wide)
                                           : layout->totalMinimumSize().height();
    };
    if (least(place.width()) <= place.height()) return widget()->resize(place);
    const int wide = place.width() - verticalScrollBar()->sizeHint().width();
    widget()->resize(wide, least(wide));
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
    int y = inside.top();
    std::vector<QLayoutItem*> all;
    for (QLayoutItem* item : m_items)
        if (!item->isEmpty()) all.push_back(item);
    const auto end = [&](std::vector<QLayoutItem*>& line) {
        if (line.empty()) return;
        if (y > inside.top()) y += spacing();
        y += layLine(line, {inside.left(), y, inside.width(), 0}, place);
        line.clear();
    };
    // A little too wide, the words on the buttons go on in a second line sooner than the buttons do.
    constexpr double kTight = 1.2;
    const auto total = [&](auto&& widthOf) {
        int wide = spacing() * (static_cast<int>(all.size()) - 1);
        for (const QLayoutItem* item : all) wide += widthOf(item);
        return wide;
    };
    const int natural = total([](const QLayoutItem*item) { return item->sizeHint().width(); }),
              least = total([](const QLayoutItem*item) { return item->minimumSize().width(); });
    std::vector<QLayoutItem*> line;
    int used = 0;
    for (QLayoutItem* item : all) {
        const int wide = std::min(item->sizeHint().width(), inside.width());
        const bool fits = line.empty() || used + spacing() + wide <= inside.width();
        if (!fits && (least > inside.width() || natural > kTight * inside.width())) {
            end(line);
            used = 0;
        }
        used += (line.empty() ? 0 : spacing()) + wide;
        line.push_back(item);
    }
    end(line);
    return y - inside.top() + contentsMargins().top() + contentsMargins().bottom();
}

int FlowRow::layLine(const std::vector<QLayoutItem*>& line, const QRect& room, bool place) const
{
    std::vector<int> widths;
    int left = room.width() - spacing() * (static_cast<int>(line.size()) - 1), wanting = 0, yielding = 0;
    for (const QLayoutItem* item : line) {
        widths.push_back(std::min(item->sizeHint().width(), room.width()));
        left -= widths.back();
        wanting += (item->expandingDirections() & Qt::Horizontal) != 0 ? 1 : 0;
        yielding += std::max(0, widths.back() - item->minimumSize().width());
    }
    int high = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const QLayoutItem* item = line[i];
        if (left < 0) {
            const int yields = std::max(0, widths[i] - item->minimumSize().width());
            const int given = yielding > 0 ? std::min(yields, (-left * yields + yielding - 1) / yielding) : 0;
            widths[i] -= given;
            left += given;
            yielding -= yields;
        } else if ((item->expandingDirections() & Qt::Horizontal) != 0) {
            widths[i] += left / wanting;
            left -= left / wanting;
            --wanting;
        }
        high = std::max(high, item->hasHeightForWidth() ? item->heightForWidth(widths[i]) : item->sizeHint().height());
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
