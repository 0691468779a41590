// SPDX-License-Identifier: GPL-3.0-or-later
// Writing definitions: what stands in the way of sealing, what is asked before something is lost, the keyboard.
#include <catch2/catch.hpp>

#include <set>

#include <QComboBox>
#include <QPlainTextEdit>

#include "app/pages/setup/constant_card.h"
#include "app/pages/setup/setup_page.h"
#include "app/widgets/drawn.h"
#include "core/base/file.h"
#include "tests/app/pages/definitions_shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

QAbstractButton* button(Definitions& w, const char* name) { return called<QAbstractButton>(w.window, name); }
DefinitionsPage& page(Definitions& w) { return *visible<DefinitionsPage>(w.window); }
void beginAnew(Definitions& w, const char* what)
{
    auto* kind = called<QComboBox>(w.window, "What is begun anew");
    REQUIRE(kind);
    kind->setCurrentIndex(kind->findData(QString::fromLatin1(what)));
    w.click("Begin anew:");
}
void sealBy(Definitions& w, const char* name)
{
    w.click(name);
    w.done();
}
std::filesystem::path fileOf(const Definitions& w, const char* name, const std::string& text)
{
    const std::filesystem::path file = std::filesystem::path(w.folder.path().toStdString()) / name;
    REQUIRE(writeFile(file, text));
    return file;
}
std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    REQUIRE(text.find(from) != std::string::npos);
    return text.replace(text.find(from), from.size(), to);
}

}  // namespace

TEST_CASE("the Tab key leaves the table of keys, and goes on to the next cell from one that is open")
{
    Definitions w;
    w.openPress("web.roller");
    w.table().goTo(2, "diameter");
    const QModelIndex before = w.table().currentIndex();
    REQUIRE(w.window.focusWidget() == &w.table());
    QTest::keyClick(&w.table(), Qt::Key_Tab);
    CHECK(w.table().currentIndex() == before);
    CHECK(w.window.focusWidget() != &w.table());
    w.table().setFocus();
    QTest::keyClick(&w.table(), Qt::Key_Backtab, Qt::ShiftModifier);
    CHECK(w.window.focusWidget() != &w.table());
    QTest::keyClick(w.into(2, "diameter", "80 mm"), Qt::Key_Tab);
    QTest::qWait(30);
    CHECK(w.table().currentRow() == before.row());
    CHECK(w.table().currentColumn() == before.column() + 1);
    CHECK(w.table().viewport()->findChild<QWidget*>(QString(), Qt::FindDirectChildrenOnly) != nullptr);
}

TEST_CASE("Ctrl+Z in the table takes the last change back")
{
    Definitions w;
    w.openPress("press");
    const std::string before = w.editor().text();
    w.enter(0, "name", "Nord");
    w.table().setFocus();
    QTest::keyClick(&w.table(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(w.editor().text() == before);
    CHECK_FALSE(w.editor().changed());
    // And by its letter, like every button above it.
    w.enter(0, "name", "Nord");
    w.table().setFocus();
    QTest::keyClick(&w.table(), Qt::Key_U, Qt::AltModifier);
    until([&] { return w.editor().text() == before; }, "it is taken back");
    QTest::keyClick(&w.table(), Qt::Key_B, Qt::AltModifier);
    until([&] { return visible<DefinitionEditor>(w.window) == nullptr; }, "the list is back");
}

TEST_CASE("a copy cannot be sealed in the place of another press, nor one press written into another")
{
    Definitions w;
    w.choose("What runs are begun from", QStringLiteral("North press"));
    w.click("Copy it, and adapt the copy");
    CHECK(w.editor().text().find("\"North press (copy)\"") != std::string::npos);
    w.choose("Tables of the file", QStringLiteral("press"));
    w.enter(0, "id", "south");
    CHECK(w.rowSays("What its reader finds", "The id south is taken"));
    CHECK(w.rowSays("What its reader finds", "press, id"));
    REQUIRE(button(w, "Seal as a new one"));
    CHECK_FALSE(button(w, "Seal as a new one")->isEnabled());
    w.enter(0, "id", "east");
    sealBy(w, "Seal as a new one");
    CHECK(newest(w.session(), "press", "east").edition == 1);
    CHECK(newest(w.session(), "press", "south").edition == 1);
    w.enter(0, "id", "south");
    CHECK_FALSE(button(w, "Seal as a new one")->isEnabled());
}

TEST_CASE("what is begun anew has an id that is free")
{
    Definitions w;
    for (const char* id : {"new", "new_2"}) {
        beginAnew(w, "substrate");
        CHECK(w.editor().text().find('"' + std::string(id) + '"') != std::string::npos);
        sealBy(w, "Seal as a new one");
        CHECK(newest(w.session(), "substrate", id).edition == 1);
        w.click("Back to the list");
    }
}

TEST_CASE("a press that cannot be threaded is among the findings and cannot be sealed")
{
    Definitions w;
    w.openPress("web.roller");
    w.enter(5, "at[0]", "1841 mm");
    w.enter(5, "at[1]", "1001 mm");
    CHECK(w.rowSays("What its reader finds", "overlap"));
    CHECK(w.rowSays("What its reader finds", "web.roller, row"));
    CHECK_FALSE(w.rowSays("What its reader finds", "Nothing is wrong with it."));
    CHECK_FALSE(button(w, "Seal as edition 2")->isEnabled());
    // Nor does it come in as a file.
    const auto file = fileOf(w, "twisted.toml", w.editor().text());
    w.click("Back to the list");
    w.click("Let the changes go");
    page(w).takeIn({file});
    w.done();
    CHECK(w.says("twisted.toml, line"));
    CHECK(newest(w.session(), "press", "north").edition == 1);
}

TEST_CASE("an earlier edition is opened, held against the newest, and written anew")
{
    Definitions w;
    w.openPress("zone");
    const std::string first = w.editor().text();
    w.enter(0, "torque_per_setting", "13 N m/bar");
    sealBy(w, "Seal as edition 2");
    w.click("Back to the list");
    w.choose("Editions", QStringLiteral("Edition 1"));
    w.click("Open edition 1");
    CHECK(w.editor().text() == first);
    CHECK_FALSE(w.editor().changed());
    CHECK(w.says("north, edition 1 of 2"));
    w.click("Which targets change");
    auto* targets = called<QTableWidget>(w.window, "Targets that change");
    REQUIRE(targets);
    CHECK(targets->rowCount() > 0);
    sealBy(w, "Seal as edition 3");
    CHECK(w.says("stands as an earlier edition"));
    w.click("As text");
    auto* plain = visible<QPlainTextEdit>(w.window);
    REQUIRE(plain);
    plain->setPlainText(plain->toPlainText() + QStringLiteral("# the old brake again\n"));
    settled(w.editor());
    sealBy(w, "Seal as edition 3");
    CHECK(newest(w.session(), "press", "north").text == first + "# the old brake again\n");
}

TEST_CASE("a window closed with something unsealed in the editor says so first")
{
    Definitions w;
    w.openPress("press");
    w.enter(0, "name", "Nord");
    w.window.close();
    CHECK(w.window.isVisible());
    CHECK(w.says("What was changed in north is sealed nowhere yet"));
    visible<QAbstractButton>(w.window, "stay")->click();
    CHECK(w.editor().changed());
    w.click("Back to the list");
    w.click("Let the changes go");
    // Begun anew and let go: nothing is left to ask about.
    beginAnew(w, "job");
    w.click("Back to the list");
    w.click("Let the changes go");
    w.window.close();
    CHECK_FALSE(w.window.isVisible());
}

TEST_CASE("the columns keep their widths while somebody writes")
{
    Definitions w;
    w.openPress("press");
    const int alone = w.table().columnWidth(0);
    w.enter(0, "name", "N");
    CHECK(w.table().columnWidth(0) == alone);
    w.choose("Tables of the file", QStringLiteral("web.roller"));
    std::vector<int> before;
    for (int c = 0; c < w.table().columnCount(); ++c) before.push_back(w.table().columnWidth(c));
    w.enter(2, "id", "a roller with a very long name indeed");
    for (int c = 0; c < w.table().columnCount(); ++c)
        CHECK(w.table().columnWidth(c) == before[static_cast<std::size_t>(c)]);
}

TEST_CASE("a job begun anew says what a run of it lacks, and chooses its substrate from those there are")
{
    Definitions w;
    beginAnew(w, "job");
    CHECK(w.rowSays("What its reader finds", "A run of this job needs substrate"));
    CHECK(w.rowSays("What its reader finds", "A run of this job needs web_width"));
    w.click("As text");
    auto* plain = visible<QPlainTextEdit>(w.window);
    plain->setPlainText(plain->toPlainText() + QStringLiteral("substrate = \"0 m/min\"\n"));
    settled(w.editor());
    CHECK(w.rowSays("What its reader finds", "knows no substrate \"0 m/min\""));
    w.click("As text");
    w.choose("Tables of the file", QStringLiteral("job"));
    w.table().goTo(0, "substrate");
    w.table().edit(w.table().currentIndex());
    auto* pick = w.table().viewport()->findChild<QComboBox*>();
    REQUIRE(pick);
    CHECK(pick->findText(QStringLiteral("bopp-50")) >= 0);
}

TEST_CASE("a procedure says nothing of the path of the press that was open before it")
{
    Definitions w;
    w.openPress("web.roller");
    // Without its diameter the path cannot be drawn.
    w.enter(1, "diameter", "");
    CHECK(w.says("The web path cannot be drawn without"));
    w.click("Back to the list");
    w.click("Let the changes go");
    w.choose("What runs are begun from", QStringLiteral("cold_start"));
    w.click("Open");
    CHECK_FALSE(w.says("The web path cannot be drawn without"));
}

TEST_CASE("no key, letter or touch makes a headline of a list its row")
{
    Definitions w;
    RowList& list = w.list("What runs are begun from");
    list.setFocus();
    REQUIRE(list.item(0)->text() == QStringLiteral("Presses"));
    for (const Qt::Key key : {Qt::Key_Home, Qt::Key_Up, Qt::Key_PageUp, Qt::Key_P, Qt::Key_J}) {
        CAPTURE(key);
        QTest::keyClick(&list, key);
        CHECK_FALSE(list.chosen().isEmpty());
    }
    QTest::keyClick(&list, Qt::Key_Home);
    CHECK(list.chosen() == list.first());
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(0)).center());
    CHECK_FALSE(list.chosen().isEmpty());
    std::set<QString> came;
    for (int i = 0; i < list.count(); ++i) {
        came.insert(list.chosen());
        QTest::keyClick(&list, Qt::Key_Down);
    }
    int rows = 0;
    for (int i = 0; i < list.count(); ++i) rows += list.item(i)->flags() != Qt::NoItemFlags ? 1 : 0;
    CHECK(static_cast<int>(came.size()) == rows);
    CHECK_FALSE(w.says("This logbook knows no press"));
}

TEST_CASE("files that are taken in tell what came of each, with file and key of what is wrong, once")
{
    Definitions w;
    const std::string north = w.newestText("press", "north"), south = w.newestText("press", "south");
    const auto same = fileOf(w, "same.toml", north), more = fileOf(w, "more.toml", south + "# looked through\n");
    page(w).takeIn({same, more});
    w.done();
    CHECK(w.says("Was there already: North press, edition 1."));
    CHECK(w.says("Taken in: South press, edition 2."));
    const auto bad =
        fileOf(w, "bad.toml", replaced(south, "control = \"open_loop\"", "control = \"by ear\"") + "# more\n");
    const auto broken = fileOf(w, "broken.toml", south + "[zone"),
               letter = fileOf(w, "letter.toml", "dear = \"all\"\n");
    for (const auto& [file, words] : {std::pair(bad, "bad.toml, line"), std::pair(broken, "broken.toml, line"),
                                      std::pair(letter, "letter.toml holds no press")}) {
        page(w).takeIn({file});
        w.done();
        const QString said = w.said();
        INFO(said.toStdString());
        CHECK(said.count(QString::fromLatin1(words)) == 1);
        CHECK(said.count(QString::fromStdString(file.filename().string())) == 1);
        if (file == bad) CHECK(said.contains(QStringLiteral(".control: ")));
    }
    CHECK(newest(w.session(), "press", "south").edition == 2);
}

TEST_CASE("a setting that nobody can have set is refused, Esc leaves the card, and the editor opens at the zone")
{
    Definitions w;
    visible<SetupPage>(w.window)->findConstant("north", "unwind");
    w.type("Diameter of the roll", QStringLiteral("400 mm"));
    w.type("The scale reads within", QStringLiteral("1 N"));
    w.type("Setting 1", QStringLiteral("1 bar"));
    w.type("Force 1", QStringLiteral("51 N"));
    w.type("Setting 2", QStringLiteral("9 bar"));
    w.type("Force 2", QStringLiteral("571 N"));
    CHECK(w.says("Nobody can have set 9"));
    CHECK_FALSE(button(w, "Enter it in the press profile, and look")->isEnabled());
    auto* setting = called<QLineEdit>(w.window, "Setting 2");
    setting->selectAll();
    w.type("Setting 2", QStringLiteral("3 bar"));
    auto* force = called<QLineEdit>(w.window, "Force 2");
    force->selectAll();
    w.type("Force 2", QStringLiteral("181 N"));
    w.click("Enter it in the press profile, and look");
    REQUIRE(visible<KeyTable>(w.window));
    CHECK(w.list("Tables of the file").chosen() == QStringLiteral("zone"));
    CHECK(w.table().focusedKey() == "torque_per_setting");
    // What is written there is not let go for another.
    visible<SetupPage>(w.window)->findConstant("north", "unwind");
    CHECK(w.says("sealed nowhere yet"));
    w.click("Let the changes go");
    visible<SetupPage>(w.window)->findConstant("north", "unwind");
    REQUIRE(visible<ConstantCard>(w.window));
    QTest::keyClick(called<QLineEdit>(w.window, "Setting 1"), Qt::Key_Escape);
    CHECK(visible<ConstantCard>(w.window) == nullptr);
    CHECK(visible<RowList>(page(w)) != nullptr);
}

TEST_CASE("the roller whose row is chosen is marked in the drawing, and no other table marks one")
{
    Definitions w;
    w.openPress("web.roller");
    auto* drawing = visible<ElevationWidget>(w.window);
    REQUIRE(drawing);
    const std::string third = w.table().item(2, 0)->text().toStdString();
    w.table().goTo(2, "diameter");
    CHECK(drawing->view().lit == third);
    CHECK_FALSE(drawing->view().nobodyThere);
    w.choose("Tables of the file", QStringLiteral("zone"));
    CHECK(drawing->view().lit.empty());
}
