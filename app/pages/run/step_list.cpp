// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/step_list.h"

#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <QTextLayout>
#include <QTimer>

#include "app/drawing/marks.h"
#include "app/pages/run/run_shown.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

enum Role { kStep = Qt::UserRole, kMark, kState, kIsPlace, kSay };

class StepRow final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        // The list's width, not the option's: rows are laid out anew when a scroll bar takes some of it.
        const int width = static_cast<const QListWidget*>(parent())->viewport()->width();
        const bool place = index.data(kIsPlace).toBool();
        const QFontMetricsF state(currentLook(0.84).font);
        const int height = qCeil(linesOf(index.data(kSay).toString(), place, width).height + state.height()) + 14;
        return {width, qMax(sizes().row, height)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const bool place = index.data(kIsPlace).toBool();
        const bool current = option.state & QStyle::State_Selected;
        const Look look = currentLook(0.96, place), small = currentLook(0.84);
        painter->save();
        if (current) {
            painter->fillRect(option.rect, look.palette.wash);
            painter->fillRect(QRect(option.rect.left(), option.rect.top(), 5, option.rect.height()),
                              look.palette.accent);
        }
        painter->setPen(QPen(look.palette.rule, place ? 1.5 : 0.5));
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        if (option.state & QStyle::State_HasFocus) {
            painter->setPen(QPen(look.palette.accent, 2, Qt::DotLine));
            painter->drawRect(option.rect.adjusted(2, 2, -3, -3));
        }
        const double markSide = QFontMetricsF(look.font).height() * 1.15;
        const int left = option.rect.left() + (place ? 12 : qRound(markSide) + 24);
        if (!place)
            paintMark(*painter, QRectF(option.rect.left() + 13, option.rect.top() + 8, markSide, markSide),
                      static_cast<MarkShape>(index.data(kMark).toInt()), look);
        painter->setFont(look.font);
        painter->setPen(look.palette.ink);
        const Lines lines = linesOf(index.data(kSay).toString(), place, option.rect.width());
        double y = option.rect.top() + 6;
        const double step = QFontMetricsF(look.font).lineSpacing();
        for (const QString& line : lines.text) {
            painter->drawText(QRectF(left, y, option.rect.width(), step), Qt::AlignLeft | Qt::AlignTop, line);
            y += step;
        }
        painter->setFont(small.font);
        painter->setPen(look.palette.soft);
        const int room = textWidth(option.rect.width(), place);
        painter->drawText(QRectF(left, y + 1, room, 200), Qt::AlignLeft | Qt::AlignTop,
                          QFontMetricsF(small.font).elidedText(index.data(kState).toString(), Qt::ElideRight, room));
        painter->restore();
    }

private:
    struct Lines {
        QStringList text;
        double height = 0;
    };
    /// Two lines at most: the card says the whole of it.
    static Lines linesOf(const QString& say, bool place, int width)
    {
        constexpr int kMostLines = 2;
        const QFont font = currentLook(0.96, place).font;
        const QFontMetricsF metrics(font);
        Lines lines;
        QTextLayout layout(say, font);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(textWidth(width, place));
            QString text = say.mid(line.textStart(), line.textLength());
            const bool last = lines.text.size() + 1 == kMostLines;
            if (last) text = metrics.elidedText(say.mid(line.textStart()), Qt::ElideRight, textWidth(width, place));
            lines.text << text;
            if (last) break;
        }
        layout.endLayout();
        lines.height = static_cast<double>(lines.text.size()) * metrics.lineSpacing();
        return lines;
    }
    static int textWidth(int width, bool place)
    {
        const double mark = QFontMetricsF(currentLook(0.96, place).font).height() * 1.15;
        return qMax(60, width - (place ? 20 : qRound(mark) + 32));
    }
};

}  // namespace

StepList::StepList(QWidget* parent) : QListWidget(parent)
{
    setItemDelegate(new StepRow(this));
    setAccessibleName(tr("Steps of this place"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setResizeMode(QListView::Adjust);
    setUniformItemSizes(false);
    connect(this, &QListWidget::itemClicked, this, &StepList::choose);
    connect(this, &QListWidget::itemActivated, this, &StepList::choose);
}

void StepList::show(const run::Run& run, const procedure::StepId& current)
{
    m_filling = true;
    const int scrolled = verticalScrollBar()->value();
    clear();
    const procedure::Plan& plan = run.plan();
    const procedure::Step* shown = plan.find(current);
    if (!shown) {
        m_filling = false;
        return;
    }
    const std::size_t stage = plan.stageOf(*shown);
    for (std::size_t p = plan.stages[stage].first; p < plan.stages[stage].first + plan.stages[stage].count; ++p) {
        const procedure::PlanPlace& place = plan.places[p];
        std::size_t open = 0;
        const procedure::Step* firstOpen = nullptr;
        for (std::size_t i = place.first; i < place.first + place.count; ++i)
            if (run::isOpen(run.standing(plan.steps[i].id).state)) {
                if (!firstOpen) firstOpen = &plan.steps[i];
                ++open;
            }
        const bool here = p == shown->place;
        auto* head = new QListWidgetItem(this);
        const QString title = words(place.title, unitsOf(run));
        const QString count = open == 0 ? tr("done") : tr("%1 of %2 to do").arg(open).arg(place.count);
        head->setData(kIsPlace, true);
        head->setData(kSay, title);
        head->setData(kState, count);
        head->setText(tr("Place %1, %2").arg(title, count));
        const procedure::Step& first = firstOpen ? *firstOpen : plan.steps[place.first];
        head->setData(kStep, QString::fromStdString(here ? current.value : first.id.value));
        if (!here) continue;
        for (std::size_t i = place.first; i < place.first + place.count; ++i) {
            const procedure::Step& step = plan.steps[i];
            const run::StepStanding standing = run.standing(step.id);
            const QString say = words(step.say, unitsOf(run));
            QString state = standingLine(standing, unitsOf(run));
            if (step.vital) state = tr("%1, vital").arg(state);
            if (const QString marks = marksOf(run, step.id); !marks.isEmpty())
                state = marks + QStringLiteral(" \u00B7 ") + state;
            auto* item = new QListWidgetItem(this);
            item->setData(kStep, QString::fromStdString(step.id.value));
            item->setData(kSay, say);
            item->setData(kState, state);
            item->setData(kMark, static_cast<int>(markOf(standing)));
            item->setText(tr("%1, %2").arg(say, item->data(kState).toString()));
            if (step.id == current) setCurrentItem(item);
        }
    }
    verticalScrollBar()->setValue(scrolled);
    if (currentItem()) scrollToItem(currentItem());
    showWholeRows();
    m_filling = false;
}

/// The list begins with a whole row: half a title says nothing.
void StepList::showWholeRows()
{
    const QListWidgetItem* cut = itemAt(QPoint(width() / 4, 0));
    if (cut == nullptr || currentItem() == nullptr) return;
    const QRect row = visualItemRect(cut);
    const int down = row.top(), up = row.bottom() + 1;
    if (down >= 0) return;
    const bool fits = visualItemRect(currentItem()).bottom() - down < viewport()->height();
    verticalScrollBar()->setValue(verticalScrollBar()->value() + (fits ? down : up));
}

void StepList::resizeEvent(QResizeEvent* event)
{
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout();
    // When the rows lie as the new width wants them.
    QTimer::singleShot(0, this, &StepList::showWholeRows);
}

void StepList::choose(QListWidgetItem* item)
{
    if (!m_filling && item) emit stepChosen(item->data(kStep).toString());
}

}  // namespace taut::app
