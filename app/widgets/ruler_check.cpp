// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/ruler_check.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/theme.h"
#include "core/units/parse.h"
#include "core/units/quantity.h"

namespace taut::app {

namespace {

constexpr double kMetricMm = 100, kUsMm = 4 * 25.4;
constexpr double kLeastScale = 0.5, kMostScale = 2;  // beyond it something else was measured

}  // namespace

/// The bar, with a mark at either end and one at each centimetre or half inch.
class RulerCheck::Bar : public QWidget {
public:
    explicit Bar(QWidget* parent) : QWidget(parent)
    {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        setFixedHeight(56);
    }
    void set(double mm, double stepMm)
    {
        m_mm = mm;
        m_step = stepMm;
        setMinimumWidth(millimetres(m_mm) + 8);
        updateGeometry();
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        painter.setPen(QPen(palette().color(QPalette::WindowText), 2));
        const int left = 4, right = left + millimetres(m_mm), middle = height() / 2;
        painter.drawLine(left, middle, right, middle);
        for (const int x : {left, right}) painter.drawLine(x, 4, x, height() - 4);
        for (double at = m_step; at < m_mm - m_step / 2; at += m_step) {
            const int x = left + millimetres(at);
            painter.drawLine(x, middle - 8, x, middle + 8);
        }
    }

private:
    double m_mm = kMetricMm, m_step = 10;
};

RulerCheck::RulerCheck(QWidget* parent) : QWidget(parent)
{
    m_ask = wrapped({}, "", this);
    m_bar = new Bar(this);
    m_read = new QLineEdit(this);
    m_read->setMinimumHeight(sizes().control);
    m_read->setObjectName(QStringLiteral("rulerRead"));
    m_take = worded(tr("&Set the screen by it"), "", this);
    m_take->setObjectName(QStringLiteral("rulerTake"));
    m_said = wrapped({}, "soft", this);
    m_finding = new FindingStrip(this, tr("Understood: the ruler"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_read, 1);
    row->addWidget(m_take, 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_ask);
    column->addWidget(m_bar);
    column->addLayout(row);
    column->addWidget(m_said);
    column->addWidget(m_finding);
    connect(m_take, &QPushButton::clicked, this, &RulerCheck::take);
    connect(m_read, &QLineEdit::returnPressed, this, &RulerCheck::take);
    setUnits(m_system);
}

void RulerCheck::setUnits(UnitSystem system)
{
    m_system = system;
    const bool us = system == UnitSystem::Us;
    m_ask->setText(us ? tr("Hold a ruler to this bar. It should be 4 in long from mark to mark. How long is it?")
                      : tr("Hold a ruler to this bar. It should be 100 mm long from mark to mark. How long is it?"));
    m_read->setPlaceholderText(us ? tr("For example 3 15/16 in") : tr("For example 97 mm"));
    named(m_read, tr("What the ruler says"));
    m_bar->setAccessibleName(us ? tr("A bar of 4 in on this screen") : tr("A bar of 100 mm on this screen"));
    say();
}

double RulerCheck::meantMm() const { return m_system == UnitSystem::Us ? kUsMm : kMetricMm; }

QWidget* RulerCheck::first() const { return m_read; }

void RulerCheck::say()
{
    m_bar->set(meantMm(), m_system == UnitSystem::Us ? 12.7 : 10);
    const double scale = themeChoice().rulerScale;
    m_said->setText(qFuzzyCompare(scale, 1.0) ? tr("The screen is taken to be as large as it says.")
                                              : tr("The screen was set by a ruler: %1 of what it says.")
                                                    .arg(QStringLiteral("%1 %").arg(qRound(scale * 100))));
}

void RulerCheck::take()
{
    m_finding->clear();
    const auto read = parseQuantity(m_read->text().toStdString(), Kind::Length);
    if (!read) return m_finding->say(read.error(), m_system);
    const double mm = read->si() * 1000;
    const double scale = mm > 0 ? themeChoice().rulerScale * meantMm() / mm : 0;
    if (scale < kLeastScale || scale > kMostScale)
        return m_finding->say(refuse("ruler.beyond", "ruler", "No screen is so far from what it says.",
                                     "Measure from mark to mark, and type the unit with it."),
                              m_system);
    m_read->clear();
    emit scaled(scale);
    say();
}

void RulerCheck::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) say();
}

}  // namespace taut::app
