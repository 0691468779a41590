// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/return_panel.h"

#include <cmath>

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

enum Column { kWhat, kNow, kThen, kDifference, kBy, kColumns };
constexpr double kShares[kColumns] = {0.31, 0.13, 0.18, 0.18, 0.20};

QString differenceText(const records::SetThen& set, UnitSystem system)
{
    if (!set.more) return ReturnPanel::tr("not known this time");
    // As they are shown: two values that read the same differ by nothing that anybody could set.
    if (showsNothing(*set.more, system) || quantityText(*set.now, system) == quantityText(set.then, system))
        return ReturnPanel::tr("the same");
    const Quantity size(std::abs(set.more->si()), set.more->kind(), set.more->unit());
    return (set.more->si() > 0 ? ReturnPanel::tr("%1 more now") : ReturnPanel::tr("%1 less now"))
        .arg(quantityText(size, system));
}

/// The value, and what one has to know of it before one leans on it.
QString thenText(const records::SetThen& set, UnitSystem system)
{
    QStringList all{quantityText(set.then, system)};
    if (set.accepted) all << ReturnPanel::tr("outside then, accepted");
    if (set.today.verdict == verdict::Verdict::Outside) all << ReturnPanel::tr("outside today's window");
    return all.join(QLatin1Char('\n'));
}

}  // namespace

QString ranHereText(const records::RunRow& run)
{
    const QString signedBy =
        ReturnPanel::tr("%1, signed by %2").arg(momentHereText(run.endedMs), dataText(run.operatorName));
    return run.reviewedBy.empty() ? signedBy
                                  : ReturnPanel::tr("%1, accepted by %2").arg(signedBy, dataText(run.reviewedBy));
}

ReturnPanel::ReturnPanel(QWidget* parent) : QWidget(parent)
{
    m_head = wrapped({}, "head", this);
    m_back = worded(tr("Back to what is to run"), "answer", this);
    m_back->setObjectName(QStringLiteral("leaveReturn"));
    m_table = new QTableWidget(0, kColumns, this);
    m_table->setObjectName(QStringLiteral("setThen"));
    m_table->setAccessibleName(tr("What was set the last time, beside what is computed now"));
    m_table->setHorizontalHeaderLabels({tr("What"), tr("Now"), tr("Last time"), tr("Difference"), tr("Read by, at")});
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setMinimumSectionSize(sizes().row);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setShowGrid(false);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(true);
    m_noValues = wrapped(tr("Nothing that can be compared was read in that run."), "soft", this);
    m_saidHead = wrapped(tr("Written down then"), "head", this);
    m_said = new RowList(this);
    m_said->setAccessibleName(m_saidHead->text());
    m_said->setSelectionMode(QAbstractItemView::NoSelection);

    auto* top = new QHBoxLayout;
    top->addWidget(m_head, 1);
    top->addWidget(m_back);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(
        wrapped(tr("For comparison only: what counts is what is computed now, for this roll."), "soft", this));
    column->addWidget(m_noValues);
    column->addWidget(m_table, 3);
    column->addWidget(m_saidHead);
    column->addWidget(m_said, 1);
    connect(m_back, &QPushButton::clicked, this, &ReturnPanel::left);
}

void ReturnPanel::show(const records::RunRow& run, const records::JobReturn& then, UnitSystem system)
{
    m_head->setText(tr("Job %1 ran here: %2").arg(dataText(run.job), ranHereText(run)));
    m_table->setRowCount(static_cast<int>(then.settings.size()));
    int row = 0;
    for (const records::SetThen& set : then.settings) {
        const auto put = [&](Column column, const QString& text) {
            auto* item = new QTableWidgetItem(text);
            item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
            m_table->setItem(row, column, item);
        };
        put(kWhat, words(set.name, system));
        put(kNow, set.now ? quantityText(*set.now, system) : QStringLiteral("\u2013"));
        put(kThen, thenText(set, system));
        put(kDifference, differenceText(set, system));
        put(kBy, tr("%1, %2").arg(dataText(set.byName), momentHereText(set.atMs)));
        ++row;
    }
    m_table->setVisible(!then.settings.empty());
    m_noValues->setVisible(then.settings.empty());
    m_said->clear();
    for (const records::SaidThen& said : then.said) {
        QString about = said.about.empty() ? tr("At the hand-over") : words(said.about, system);
        if (said.helped) about = tr("What helped: %1").arg(about);
        m_said->add({QString::number(m_said->count()),
                     words(said.said, system),
                     {},
                     tr("%1 \u00B7 %2, %3").arg(about, dataText(said.byName), momentHereText(said.atMs)),
                     MarkShape::None});
    }
    m_saidHead->setVisible(!then.said.empty());
    m_said->setVisible(!then.said.empty());
    spread();
}

QWidget* ReturnPanel::first() const { return m_back; }

void ReturnPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    event->accept();
    emit left();
}

void ReturnPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    spread();
}

void ReturnPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange) return;
    m_table->verticalHeader()->setMinimumSectionSize(sizes().row);
    spread();
}

/// The columns share the width; what is long wraps.
void ReturnPanel::spread()
{
    const int width = m_table->viewport()->width();
    for (int i = 0; i < kColumns; ++i) m_table->setColumnWidth(i, static_cast<int>(width * kShares[i]));
    m_table->resizeRowsToContents();
}

}  // namespace taut::app
