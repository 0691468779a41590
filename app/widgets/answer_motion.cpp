// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/answer_motion.h"

#include <algorithm>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/held_stops.h"
#include "app/widgets/theme.h"

namespace taut::app {

MotionArea::MotionArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
{
    auto* layout = new QVBoxLayout(foot());
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    auto* notice = wrapped(tr("This screen moves nothing and stops nothing."), "strong", foot());
    notice->setObjectName(QStringLiteral("movesNothing"));
    layout->addWidget(notice);
    if (!content.held.empty()) {
        addHolders(layout, content);
    } else {
        addStatements(layout);
        addTouches(layout);
        showSecond(false);
        settle();
    }
}

void MotionArea::addStatements(QVBoxLayout* layout)
{
    auto* grid = new QGridLayout;
    grid->setSpacing(4);
    constexpr int kColumns = 2;
    for (int i = 0; i < kColumns; ++i) grid->setColumnStretch(i, 1);
    for (const std::string& need : m_content.step.needs) {
        if (!procedure::isMachineState(need)) continue;
        m_states.push_back(need);
        auto* box = new StatementBox(statementText(need, m_content.units), foot());
        box->setObjectName(QStringLiteral("statement"));
        connect(box, &StatementBox::toggled, this, &MotionArea::settle);
        const int n = static_cast<int>(m_boxes.size());
        grid->addWidget(box, n / kColumns, n % kColumns);
        m_boxes.push_back(box);
    }
    layout->addLayout(grid);
}

void MotionArea::addTouches(QVBoxLayout* layout)
{
    m_clear = worded(tr("&Everyone is clear and I am at the control"), "main", foot());
    m_clear->setObjectName(QStringLiteral("clear"));
    auto* row = new QHBoxLayout;
    row->setSpacing(4 * sizes().gap);
    m_back = worded(tr("&Back"), "answer", foot());
    m_back->setObjectName(QStringLiteral("back"));
    const Text& seen = m_content.step.done;
    m_done =
        worded(seen.empty() ? tr("&Done: it moved as expected") : tr("&Done: %1").arg(words(seen, m_content.units)),
               "main", foot());
    m_done->setObjectName(QStringLiteral("done"));
    row->addWidget(m_back);
    row->addWidget(m_done, 1);
    layout->addWidget(m_clear);
    layout->addLayout(row);
    connect(m_clear, &QPushButton::clicked, this, [this] { showSecond(true); });
    connect(m_back, &QPushButton::clicked, this, [this] { showSecond(false); });
    connect(m_done, &QPushButton::clicked, this, [this] { answer(m_content, QStringLiteral("done"), m_states); });
}

void MotionArea::enter()
{
    if (m_done && m_done->isVisible())
        m_done->click();
    else if (m_clear && m_clear->isEnabled())
        m_clear->click();
    else if (QWidget* next = first())
        next->setFocus();
}

QWidget* MotionArea::first() const
{
    const auto open =
        std::find_if(m_boxes.begin(), m_boxes.end(), [](const StatementBox* b) { return !b->isChecked(); });
    return open == m_boxes.end() ? static_cast<QWidget*>(m_clear) : *open;
}

void MotionArea::settle()
{
    m_clear->setEnabled(
        std::all_of(m_boxes.begin(), m_boxes.end(), [](const StatementBox* b) { return b->isChecked(); }));
}

void MotionArea::showSecond(bool second)
{
    // Before what was touched goes: the focus of something hidden falls to whatever comes next on the page, and that
    // may withdraw a press. Until the second touch is taken there is nothing that a key could do.
    const QWidget* focus = window()->focusWidget();
    const bool ours = focus != nullptr && foot()->isAncestorOf(focus);
    if (ours) setFocus();
    m_clear->setVisible(!second);
    m_done->setVisible(second);
    m_back->setVisible(second);
    for (StatementBox* box : m_boxes) box->setEnabled(!second);
    if (!second) {
        if (ours) m_clear->setFocus();
        return;
    }
    m_done->setEnabled(false);
    QTimer::singleShot(kBetweenTouchesMs, m_done, [this] {
        m_done->setEnabled(true);
        if (m_done->isVisible()) m_done->setFocus();
    });
}

}  // namespace taut::app
