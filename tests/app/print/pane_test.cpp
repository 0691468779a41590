// SPDX-License-Identifier: GPL-3.0-or-later
// A report as it comes up on the screen.
#include <catch2/catch.hpp>

#include <QGraphicsView>
#include <QScrollBar>
#include <QTest>

#include "app/print/report_pane.h"
#include "app/widgets/theme.h"
#include "tests/app/print/printed_support.h"

using namespace taut::app;
using namespace taut::app::test;

TEST_CASE("a report is seen from its top, also one that was shown before there was any room, until somebody scrolls")
{
    applyTheme({});
    ReportPane pane(QStringLiteral("a sheet"));
    pane.show(sheetOf("north").report, QStringLiteral("sheet"));
    pane.resize(700, 300);
    pane.QWidget::show();
    QTest::qWait(200);
    const auto* paper = pane.findChild<QGraphicsView*>();
    REQUIRE(paper);
    QScrollBar* bar = paper->verticalScrollBar();
    REQUIRE(bar->maximum() > bar->minimum());
    CHECK(bar->value() == bar->minimum());
    pane.resize(900, 420);
    QTest::qWait(200);
    CHECK(bar->value() == bar->minimum());

    bar->triggerAction(QAbstractSlider::SliderPageStepAdd);
    const int there = bar->value();
    REQUIRE(there > bar->minimum());
    pane.resize(900, 440);
    QTest::qWait(200);
    CHECK(bar->value() > bar->minimum());

    // The next one from its top again.
    pane.show(sheetOf("south").report, QStringLiteral("sheet"));
    QTest::qWait(200);
    CHECK(bar->value() == bar->minimum());
}
