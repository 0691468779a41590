// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/step_list.h"

#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

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

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const int width = option.rect.width() > 0 ? option.rect.width() : 280;
        const bool place = index.data(kIsPlace).toBool();
        const QFontMetrics say(currentLook(0.96, place).font), state(currentLook(0.84).font);
        const QString text = index.data(kSay).toString();
        const int height = say.boundingRect(0, 0, textWidth(width, place), 10000, Qt::TextWordWrap, text).height();
        return {width, qMax(sizes().row, height + state.height() + 14)};
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
        const int left = option.rect.left() + (place ? 12 : 46);
        if (!place)
            paintMark(*painter, QRectF(option.rect.left() + 13, option.rect.top() + 8, markSide, markSide),
                      static_cast<MarkShape>(index.data(kMark).toInt()), look);
        painter->setFont(look.font);
        painter->setPen(look.palette.ink);
        QRect used;
        painter->drawText(
            QRect(left, option.rect.top() + 6, textWidth(option.rect.width(), place), option.rect.height()),
            Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, index.data(kSay).toString(), &used);
        painter->setFont(small.font);
        painter->setPen(look.palette.soft);
        painter->drawText(QRect(left, used.bottom() + 1, textWidth(option.rect.width(), place), 200),
                          Qt::AlignLeft | Qt::AlignTop, index.data(kState).toString());
        painter->restore();
    }

private:
    static int textWidth(int width, bool place) { return qMax(60, width - (place ? 20 : 54)); }
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
            const QString state = standingLine(standing, unitsOf(run));
            auto* item = new QListWidgetItem(this);
            item->setData(kStep, QString::fromStdString(step.id.value));
            item->setData(kSay, say);
            item->setData(kState, step.vital ? tr("%1, vital").arg(state) : state);
            item->setData(kMark, static_cast<int>(markOf(standing)));
            item->setText(tr("%1, %2").arg(say, item->data(kState).toString()));
            if (step.id == current) setCurrentItem(item);
        }
    }
    verticalScrollBar()->setValue(scrolled);
    if (currentItem()) scrollToItem(currentItem());
    m_filling = false;
}

void StepList::choose(QListWidgetItem* item)
{
    if (!m_filling && item) emit stepChosen(item->data(kStep).toString());
}

}  // namespace taut::app
