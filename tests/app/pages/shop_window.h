// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QLineEdit>

#include "app/shell/main_window.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"

namespace taut::app::shop {

/// The window on a file that need not be there.
struct Window {
    QTemporaryDir folder;
    MainWindow window;

    explicit Window(bool demo) : window(prepared(folder, demo))
    {
        window.setWindowState(Qt::WindowNoState);
        window.resize(1366, 740);
        window.show();
        window.activateWindow();
        if (demo) until([&] { return session().isOpen() && !session().busy(); }, "the logbook is open");
    }
    static Session::Options prepared(const QTemporaryDir& folder, bool demo)
    {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());  // nobody's settings are read or written
        applyTheme({});
        Session::Options options = optionsIn(folder);
        options.loadDemo = demo;
        return options;
    }
    Session& session() { return *window.session(); }
    void type(const char* name, const QString& text)
    {
        auto* field = called<QLineEdit>(window, name);
        INFO(name);
        REQUIRE(field);
        field->setFocus();
        QTest::keyClicks(field, text);
    }
    void click(const char* name)
    {
        auto* button = called<QAbstractButton>(window, name);
        INFO(name);
        REQUIRE(button);
        REQUIRE(button->isEnabled());
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void chooseSecrets(const char* pin, const char* passphrase)
    {
        for (const char* name : {"PIN", "PIN, once more"}) type(name, QString::fromLatin1(pin));
        for (const char* name : {"Passphrase", "Passphrase, once more"}) type(name, QString::fromLatin1(passphrase));
    }
    [[nodiscard]] QString said() const { return test::said(window); }
    [[nodiscard]] bool says(const char* words) const { return said().contains(QString::fromUtf8(words)); }
    /// Waits until what was asked for is written or refused.
    void done()
    {
        until([&] { return !session().busy(); }, "it is done or refused");
        QTest::qWait(30);
    }
    void lock()
    {
        session().signOut();
        until([&] { return !session().actor() && !session().busy(); }, "locked");
    }
};

}  // namespace taut::app::shop
