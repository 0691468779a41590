// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/return_panel.h"

#include <cmath>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "app/widgets/whole_table.h"

namespace taut::app {

namespace {

enum Column { kWhat, kNow, kThen, kDifference, kBy, kColumns };

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
    m_table = new WholeTable({tr("What"), tr("Now"), tr("Last time"), tr("Difference"), tr("Read by, at")},
                             {0.27, 0.16, 0.17, 0.16, 0.24}, this);
    m_table->setObjectName(QStringLiteral("setThen"));
    m_table->setAccessibleName(tr("What was set the last time, beside what is computed now"));
    m_noValues = wrapped(tr("Nothing that can be compared was read in that run."), "soft", this);
    m_saidHead = wrapped(tr("Written down then"), "head", this);
    m_said = new RowList(this);
    m_said->setAccessibleName(m_saidHead->text());
    m_said->setMinimumHeight(2 * sizes().row);
    m_said->setSelectionMode(QAbstractItemView::NoSelection);

    auto* top = new QHBoxLayout;
    foldBelow(this, top, 90);
    top->addWidget(m_head, 1);
    top->addWidget(m_back);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(
        wrapped(tr("For comparison only: what counts is what is computed now, for this roll."), "soft", this));
    column->addWidget(m_noValues);
    column->addWidget(m_table, 3);
    column->addWidget(m_saidHead);
    column->addWidget(m_said, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(new ScrollRoom(body, this));
    connect(m_back, &QPushButton::clicked, this, &ReturnPanel::left);
}

void ReturnPanel::show(const records::RunRow& run, const records::JobReturn& then, UnitSystem system)
{
    m_head->setText(tr("Job %1 ran here: %2").arg(dataText(run.job), ranHereText(run)));
    m_table->setRowCount(static_cast<int>(then.settings.size()));
    int row = 0;
    for (const records::SetThen& set : then.settings) {
        const auto put = [&](Column column, const QString& text) { m_table->put(row, column, text); };
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
    m_table->spread();
}

QWidget* ReturnPanel::first() const { return m_back; }

void ReturnPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    event->accept();
    emit left();
}

}  // namespace taut::app
