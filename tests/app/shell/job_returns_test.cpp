// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QListWidget>
#include <QTableWidget>

#include "app/pages/start/return_panel.h"
#include "app/pages/start/start_page.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/pages/signed_run.h"

using namespace taut::app;
using shop::until;

namespace {

/// The window on a logbook in which a run of the demo job was signed.
struct Returned {
    QTemporaryDir folder;
    MainWindow window;
    StartPage* start = nullptr;
    QPushButton* earlier = nullptr;

    explicit Returned(const std::string& answers = {}) : window(shop::signedRun(folder, answers))
    {
        window.setWindowState(Qt::WindowNoState);
        window.resize(1366, 740);
        window.show();
        window.activateWindow();
        until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "the logbook is open");
        shop::signIn(*window.session(), "p-2");
        start = window.findChild<StartPage*>();
        earlier = window.findChild<QPushButton*>(QStringLiteral("earlier"));
        REQUIRE(earlier);
    }
    void choose(const char* list, const char* what)
    {
        auto* box = shop::called<QComboBox>(window, list);
        REQUIRE(box);
        for (int i = 0; i < box->count(); ++i)
            if (box->itemText(i).contains(QString::fromLatin1(what))) box->setCurrentIndex(i);
        CHECK(box->currentText().contains(QString::fromLatin1(what)));
        shop::settled(*start);
    }
    [[nodiscard]] QTableWidget* table() const { return window.findChild<QTableWidget*>(QStringLiteral("setThen")); }
    /// The row that tells of this; -1 = none does.
    [[nodiscard]] int row(const char* what) const
    {
        for (int i = 0; i < table()->rowCount(); ++i)
            if (table()->item(i, 0)->text().contains(QString::fromLatin1(what))) return i;
        return -1;
    }
};

std::string demoAnswers(const char* name)
{
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    return (*resources / "demo" / "answers" / name).string();
}

}  // namespace

TEST_CASE("a job that ran here before says so, by whom it was signed, and leads to what was set beside today's targets")
{
    Returned w(demoAnswers("clean.toml"));
    w.choose("Press", "north");
    w.choose("Job", "J-2101");
    REQUIRE(w.earlier->isVisible());
    CHECK(w.earlier->text().contains(QStringLiteral("signed by")));
    w.earlier->setFocus();
    QTest::keyClick(w.earlier, Qt::Key_Space);
    auto* panel = w.window.findChild<ReturnPanel*>();
    REQUIRE(panel->isVisible());
    const int brake = w.row("BRAKE");
    REQUIRE(brake >= 0);
    for (int column = 1; column < w.table()->columnCount(); ++column)
        CHECK_FALSE(w.table()->item(brake, column)->text().isEmpty());
    CHECK(w.table()->item(brake, 1)->text().contains(QStringLiteral("bar")));
    CHECK(w.table()->item(brake, 2)->text().contains(QStringLiteral("bar")));
    // What was left at the hand-over.
    auto* said = shop::called<QListWidget>(w.window, "Written down then");
    REQUIRE(said);
    CHECK(said->count() >= 1);
    // Nothing begins from there, and the way back leads to where one came from.
    CHECK_FALSE(shop::visible<QPushButton>(w.window, "Begin the run"));
    QTest::keyClick(w.window.focusWidget(), Qt::Key_Escape);
    CHECK_FALSE(panel->isVisible());
    CHECK(w.earlier->hasFocus());
}

TEST_CASE("of a next roll's run what the full set-up before it set is told as well")
{
    Returned w(demoAnswers("next_roll.toml"));
    w.choose("Press", "north");
    w.choose("Job", "J-2101");
    REQUIRE(w.earlier->isVisible());
    QTest::mouseClick(w.earlier, Qt::LeftButton);
    REQUIRE(w.table()->rowCount() > 0);
    Returned full(demoAnswers("clean.toml"));
    full.choose("Press", "north");
    full.choose("Job", "J-2101");
    QTest::mouseClick(full.earlier, Qt::LeftButton);
    CHECK(w.table()->rowCount() >= full.table()->rowCount());
}

TEST_CASE("a job that never ran here, or not on this press, says nothing of it")
{
    Returned w(demoAnswers("clean.toml"));
    w.choose("Press", "north");
    w.choose("Job", "J-2101");
    REQUIRE(w.earlier->isVisible());
    w.choose("Press", "south");
    CHECK_FALSE(w.earlier->isVisible());
    w.choose("Press", "north");
    CHECK(w.earlier->isVisible());
}

TEST_CASE("the table of what was set stands whole in the width of a small screen, also in large type")
{
    Returned w(demoAnswers("clean.toml"));
    w.choose("Press", "north");
    w.choose("Job", "J-2101");
    QTest::mouseClick(w.earlier, Qt::LeftButton);
    for (const double scale : {1.0, 1.5}) {
        ThemeChoice theme;
        theme.textScale = scale;
        applyTheme(theme);
        QTest::qWait(50);
        int width = 0;
        for (int i = 0; i < w.table()->columnCount(); ++i) width += w.table()->columnWidth(i);
        CHECK(width <= w.table()->viewport()->width());
        for (int i = 0; i < w.table()->rowCount(); ++i) CHECK(w.table()->rowHeight(i) >= sizes().row);
    }
    applyTheme({});
}
