// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QPlainTextEdit>

#include "app/pages/setup/setup_page.h"
#include "app/widgets/drawn.h"
#include "core/inputs/inputs.h"
#include "tests/app/pages/definitions_shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

TEST_CASE("a press is opened, a key changed, the targets that change are shown, and an edition is sealed")
{
    Definitions w;
    const std::string before = w.newestText("press", "north");
    w.openPress("zone");
    CHECK_FALSE(called<QAbstractButton>(w.window, "Seal as edition 2")->isEnabled());
    w.click("Which targets change");
    CHECK(w.says("No target changes."));
    w.enter(0, "torque_per_setting", "13 N m/bar");
    CHECK(w.editor().changed());
    auto* targets = called<QTableWidget>(w.window, "Targets that change");
    REQUIRE(targets);
    QStringList names;
    for (int r = 0; r < targets->rowCount(); ++r) {
        names << targets->item(r, 0)->text();
        CHECK(targets->item(r, 1)->text() != targets->item(r, 2)->text());
    }
    CHECK(names.contains(QStringLiteral("Unwind: set BRAKE to")));
    w.click("Seal as edition 2");
    w.done();
    CHECK(w.says("Sealed as edition 2."));
    const auto after = newest(w.session(), "press", "north");
    CHECK(after.edition == 2);
    std::string expected = before;
    expected.replace(expected.find("12 N m/bar"), 10, "13 N m/bar");
    CHECK(after.text == expected);
    w.click("Back to the list");
    CHECK(w.list("Editions").count() == 2);
    CHECK(w.rowSays("Editions", "sealed by Matteo"));
}

TEST_CASE("a path that cannot be is said and drawn at its roller while somebody types, and gone when it can")
{
    Definitions w;
    w.openPress("web.roller");
    auto* drawing = visible<ElevationWidget>(w.window);
    REQUIRE(drawing);
    CHECK(drawing->view().lit == "unwind");
    const std::size_t whole = drawing->view().paths.size();
    w.enter(5, "at[0]", "1841 mm");
    QLineEdit* line = w.into(5, "at[1]", "1001 mm");
    CHECK(drawing->view().paths.size() > whole);
    CHECK(w.rowSays("What its reader finds", "overlap"));
    QTest::keyClick(line, Qt::Key_Escape);
    w.click("Undo");
    CHECK(drawing->view().paths.size() == whole);
    CHECK(w.rowSays("What its reader finds", "Nothing is wrong with it."));
    CHECK_FALSE(w.editor().changed());
}

TEST_CASE("what cannot be right is said beside its key, and nothing is sealed until it is mended")
{
    Definitions w;
    w.openPress("web.roller");
    w.enter(1, "diameter", "80 kg");
    CHECK(w.table().item(1, w.table().currentColumn())->toolTip().contains(QStringLiteral("80 kg")));
    CHECK_FALSE(called<QAbstractButton>(w.window, "Seal as edition 2")->isEnabled());
    CHECK(w.rowSays("What its reader finds", "web.roller, row 2, diameter"));
    w.enter(1, "diameter", "82 mm");
    CHECK(called<QAbstractButton>(w.window, "Seal as edition 2")->isEnabled());
    CHECK(w.rowSays("What its reader finds", "Nothing is wrong with it."));
    // A row more, in web order behind the one that is chosen; and out again.
    const std::string text = w.editor().text();
    w.click("Add a row");
    CHECK(w.table().rowCount() == 15);
    w.click("Undo");
    CHECK(w.editor().text() == text);
}

TEST_CASE("a press is copied under a name of its own")
{
    Definitions w;
    w.choose("What runs are begun from", QStringLiteral("North press"));
    w.click("Copy it, and adapt the copy");
    w.click("Seal as a new one");
    w.done();
    CHECK(newest(w.session(), "press", "north_copy").edition == 1);
    CHECK(newest(w.session(), "press", "north").edition == 1);
}

TEST_CASE("the text itself can be written, with what is wrong by its line")
{
    Definitions w;
    w.choose("What runs are begun from", QStringLiteral("J-2103"));
    w.click("Open");
    w.click("As text");
    auto* plain = visible<QPlainTextEdit>(w.window);
    REQUIRE(plain);
    const QString good = plain->toPlainText();
    plain->setPlainText(good + QStringLiteral("\n[deck"));
    settled(w.editor());
    CHECK_FALSE(called<QAbstractButton>(w.window, "Seal as a new one")->isEnabled());
    CHECK(w.rowSays("What its reader finds", "cannot be read on from here"));
    plain->setPlainText(QString(good).replace(QStringLiteral("30000"), QStringLiteral("31000")));
    settled(w.editor());
    w.click("Seal as edition 2");
    w.done();
    CHECK(newest(w.session(), "job", "J-2103").text == plain->toPlainText().toStdString());
    w.click("Back to the list");
    w.choose("What runs are begun from", QStringLiteral("cold_start"));
    w.click("Open");
    CHECK(w.list("Steps of the procedure").count() > 20);
    CHECK(w.rowSays("What its reader finds", "Nothing is wrong with it."));
}

TEST_CASE("an operator may look at a press and change nothing")
{
    Definitions w;
    w.lock();
    signIn(w.session(), "p-3");
    w.openPress("zone");
    w.table().goTo(0, "torque_per_setting");
    CHECK_FALSE(w.table().item(w.table().currentRow(), 0)->flags() & Qt::ItemIsEditable);
    CHECK_FALSE(called<QAbstractButton>(w.window, "Seal as edition 2")->isEnabled());
    for (const char* name : {"Add a row", "Take the row out"})
        CHECK_FALSE(called<QAbstractButton>(w.window, name)->isEnabled());
    w.click("Back to the list");
    CHECK_FALSE(called<QAbstractButton>(w.window, "Copy it, and adapt the copy")->isEnabled());
}

TEST_CASE("what was written and not sealed is asked about before it goes")
{
    Definitions w;
    w.openPress("press");
    w.enter(0, "name", "Nord");
    w.click("Back to the list");
    CHECK(w.says("sealed nowhere yet"));
    w.click("Stay");
    CHECK(w.editor().changed());
    w.click("Back to the list");
    w.click("Let the changes go");
    CHECK(visible<DefinitionEditor>(w.window) == nullptr);
    CHECK(w.newestText("press", "north").find("Nord\"") == std::string::npos);
}

TEST_CASE("the constant of a setting is found from a few pulls and sealed as an edition of the press")
{
    Definitions w;
    visible<SetupPage>(w.window)->findConstant("north", "unwind");
    CHECK(w.says("Isolate the drives"));
    w.type("Diameter of the roll", QStringLiteral("400 mm"));
    w.type("The scale reads within", QStringLiteral("1 N"));
    w.type("Setting 1", QStringLiteral("1 bar"));
    w.type("Force 1", QStringLiteral("51 N"));
    CHECK(w.says("two pulls or more"));
    CHECK_FALSE(called<QAbstractButton>(w.window, "Enter it in the press profile, and look")->isEnabled());
    w.type("Setting 2", QStringLiteral("3 bar"));
    w.type("Force 2", QStringLiteral("181 N"));
    CHECK(w.says("13.0 N m/bar"));
    w.click("Enter it in the press profile, and look");
    w.click("Seal as edition 2");
    w.done();
    Findings notes;
    const auto press = inputs::readPress(w.newestText("press", "north"), "n", notes);
    REQUIRE(press);
    CHECK(press->zone("unwind")->torquePerSetting->si() * 1e5 == Approx(13));
    CHECK(press->zone("unwind")->torqueUncertainty);
}
