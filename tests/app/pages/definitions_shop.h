// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include "app/pages/setup/definition_editor.h"
#include "app/pages/setup/definitions_page.h"
#include "app/pages/setup/key_table.h"
#include "app/widgets/row_list.h"
#include "tests/app/pages/shop_window.h"

namespace taut::app::shop {

/// The window of the demo shop at its definitions, with a supervisor signed in.
struct Definitions : Window {
    Definitions() : Window(true)
    {
        signIn(session(), "p-1");
        toList();
    }
    void toList()
    {
        click("Shop");
        click("Presses, jobs, substrates, procedures");
        REQUIRE(visible<DefinitionsPage>(window));
    }
    RowList& list(const char* name)
    {
        auto* found = called<RowList>(window, name);
        INFO(name);
        REQUIRE(found);
        return *found;
    }
    /// Chooses the row that says this.
    void choose(const char* name, const QString& says)
    {
        RowList& rows = list(name);
        for (int i = 0; i < rows.count(); ++i) {
            rows.setCurrentRow(i);
            if (!rows.chosen().isEmpty() && rows.item(i)->text().contains(says)) return;
        }
        FAIL("no row says " << says.toStdString());
    }
    /// A row of this list says this.
    bool rowSays(const char* name, const char* says)
    {
        RowList& rows = list(name);
        for (int i = 0; i < rows.count(); ++i)
            if (rows.item(i)->text().contains(QString::fromUtf8(says))) return true;
        return false;
    }
    KeyTable& table() { return *visible<KeyTable>(window); }
    DefinitionEditor& editor() { return *visible<DefinitionEditor>(window); }
    /// Opens the cell and types into it without leaving.
    QLineEdit* into(std::size_t item, const char* key, const char* text)
    {
        table().goTo(item, key);
        table().edit(table().currentIndex());
        auto* line = table().viewport()->findChild<QLineEdit*>();
        REQUIRE(line);
        line->selectAll();
        QTest::keyClicks(line, QString::fromUtf8(text));
        if (*text == '\0') QTest::keyClick(line, Qt::Key_Delete);
        return line;
    }
    void enter(std::size_t item, const char* key, const char* text)
    {
        const std::string before = editor().text();
        QTest::keyClick(into(item, key, text), Qt::Key_Return);
        until([&] { return editor().text() != before; }, "the key is changed");
    }
    void openPress(const char* group)
    {
        choose("What runs are begun from", QStringLiteral("North press"));
        click("Open");
        choose("Tables of the file", QString::fromUtf8(group));
    }
    std::string newestText(const char* what, const std::string& id) { return newest(session(), what, id).text; }
};

}  // namespace taut::app::shop
