// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QPrinterInfo>

#include "app/pages/history/history_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/pages/signed_run.h"

using namespace taut::app;
using shop::until;

TEST_CASE("the doors are opened by Alt and their number, and the history is searched by Ctrl and F from anywhere")
{
    shop::Window w(true);
    QTest::keyClick(&w.window, Qt::Key_3, Qt::AltModifier);
    CHECK(w.window.findChild<SetupPage*>()->isVisible());
    QTest::keyClick(&w.window, Qt::Key_2, Qt::AltModifier);
    auto* history = w.window.findChild<HistoryPage*>();
    REQUIRE(history);
    CHECK(history->isVisible());
    QTest::keyClick(&w.window, Qt::Key_1, Qt::AltModifier);
    CHECK(w.window.findChild<StartPage*>()->isVisible());
    QTest::keyClick(&w.window, Qt::Key_F, Qt::ControlModifier);
    CHECK(history->isVisible());
    auto* find = shop::called<QLineEdit>(w.window, "Find runs by job, roll or run");
    REQUIRE(find);
    CHECK(find->hasFocus());
    // What stands there is written over, not added to.
    QTest::keyClicks(find, QStringLiteral("J-2101"));
    QTest::keyClick(find, Qt::Key_F, Qt::ControlModifier);
    CHECK(find->selectedText() == QStringLiteral("J-2101"));
}

TEST_CASE("Ctrl and Q closes the window")
{
    shop::Window w(true);
    QTest::keyClick(&w.window, Qt::Key_Q, Qt::ControlModifier);
    CHECK_FALSE(w.window.isVisible());
}

TEST_CASE("Ctrl and P prints the sheet where one is shown")
{
    if (!QPrinterInfo::availablePrinterNames().isEmpty()) {
        WARN("a printer is set up here: its dialog would wait for somebody");
        return;
    }
    QTemporaryDir folder;
    MainWindow window(shop::signedRun(folder));
    window.resize(1366, 740);
    window.show();
    window.activateWindow();
    until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "the logbook is open");
    QTest::keyClick(&window, Qt::Key_P, Qt::ControlModifier);
    CHECK_FALSE(test::said(window).contains(QStringLiteral("No printer")));
    QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
    until(
        [&] {
            const auto* print = shop::called<QPushButton>(window, "Print");
            return print != nullptr && print->isEnabled();
        },
        "the sheet is there");
    QTest::keyClick(&window, Qt::Key_P, Qt::ControlModifier);
    until([&] { return test::said(window).contains(QStringLiteral("No printer is set up")); }, "it was to be printed");
}
