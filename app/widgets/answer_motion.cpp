// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/answer_motion.h"

#include <algorithm>
#include <map>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

MotionArea::MotionArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
{
    auto* body = new QVBoxLayout(this);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(6);
    // A holder gives up everything they hold in one saying.
    std::map<std::string, QStringList> places;
    for (const run::HeldStop& held : content.held) places[held.holder] << QString::fromStdString(held.where);
    for (const auto& [who, where] : places) {
        auto* row = new QHBoxLayout;
        const QString name = QString::fromStdString(who);
        row->addWidget(wrapped(tr("%1 holds: %2").arg(name, where.join(QStringLiteral(", "))), "strong", this), 1);
        auto* give = worded(tr("%1 is out and gives up").arg(name), "", this);
        give->setObjectName(QStringLiteral("giveUp"));
        const std::string holder = who;
        connect(give, &QPushButton::clicked, this, [this, holder] { emit command(run::GiveUpStop{holder}); });
        row->addWidget(give);
        body->addLayout(row);
    }
    body->addWidget(wrapped(content.held.empty() ? tr("Look now, and say each:")
                                                 : tr("Everybody out. Each gives up their own stop, then:"),
                            "", this));
    auto* statements = new QGridLayout;
    statements->setSpacing(4);
    statements->setColumnStretch(0, 1);
    statements->setColumnStretch(1, 1);
    body->addLayout(statements);
    for (const std::string& need : content.step.needs) {
        if (!procedure::isMachineState(need)) continue;
        m_states.push_back(need);
        auto* box = new StatementBox(statementText(need, content.units), this);
        box->setObjectName(QStringLiteral("statement"));
        connect(box, &StatementBox::toggled, this, &MotionArea::settle);
        const int n = static_cast<int>(m_boxes.size());
        statements->addWidget(box, n / 2, n % 2);
        m_boxes.push_back(box);
    }

    auto* layout = new QVBoxLayout(foot());
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    m_notice = wrapped(tr("This screen moves nothing and stops nothing."), "strong", foot());
    m_notice->setObjectName(QStringLiteral("movesNothing"));
    layout->addWidget(m_notice);
    m_clear = worded(tr("&Everyone is clear and I am at the control"), "main", foot());
    m_clear->setObjectName(QStringLiteral("clear"));
    auto* row = new QHBoxLayout;
    row->setSpacing(4 * sizes().gap);
    m_back = worded(tr("&Back"), "answer", foot());
    m_back->setObjectName(QStringLiteral("back"));
    m_done = worded(tr("&Done: it moved as expected"), "main", foot());
    m_done->setObjectName(QStringLiteral("done"));
    row->addWidget(m_back);
    row->addWidget(m_done, 1);
    layout->addWidget(m_clear);
    layout->addLayout(row);

    connect(m_clear, &QPushButton::clicked, this, [this] { showSecond(true); });
    connect(m_back, &QPushButton::clicked, this, [this] { showSecond(false); });
    connect(m_done, &QPushButton::clicked, this, [this] { answer(m_content, QStringLiteral("done"), m_states); });
    showSecond(false);
    settle();
}

void MotionArea::enter()
{
    if (m_done->isVisible())
        m_done->click();
    else if (m_clear->isEnabled())
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
    const bool all = std::all_of(m_boxes.begin(), m_boxes.end(), [](const StatementBox* b) { return b->isChecked(); });
    m_clear->setEnabled(all && m_content.held.empty());
}

void MotionArea::showSecond(bool second)
{
    m_clear->setVisible(!second);
    m_done->setVisible(second);
    m_back->setVisible(second);
    for (StatementBox* box : m_boxes) box->setEnabled(!second);
    if (!second) return;
    m_done->setEnabled(false);
    QTimer::singleShot(kBetweenTouchesMs, m_done, [this] {
        m_done->setEnabled(true);
        if (m_done->isVisible()) m_done->setFocus();
    });
}

}  // namespace taut::app
