// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <filesystem>

#include <QPushButton>
#include <QTemporaryDir>

#include "app/made/history.h"
#include "app/pages/history/history_desk.h"
#include "tests/app/shop.h"

namespace taut::app::shop {

/// One history for all: made once, copied for each.
inline const std::filesystem::path& made()
{
    static QTemporaryDir folder;
    static const std::filesystem::path kFile = [] {
        const std::filesystem::path file = std::filesystem::path(folder.path().toStdString()) / "made.logbook";
        app::made::Wish wish;
        wish.brief = true;
        wish.runs = 400;
        const auto done = app::made::makeHistory(wish, std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources", file);
        REQUIRE(done);
        return file;
    }();
    return kFile;
}

struct Desk {
    QTemporaryDir folder;
    Session session;
    HistoryDesk desk;

    Desk() : session(prepared(folder)), desk(&session)
    {
        open(session);
        desk.resize(1342, 640);
        desk.show();
        settled(desk);
    }
    static Session::Options prepared(const QTemporaryDir& folder)
    {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
        applyTheme({});
        Session::Options options = optionsIn(folder);
        options.logbook = std::filesystem::path(folder.path().toStdString()) / "made.logbook";
        options.loadDemo = false;
        std::filesystem::copy_file(made(), options.logbook);
        return options;
    }
    template <class Page>
    Page* show(const char* tab)
    {
        auto* button = desk.findChild<QPushButton*>(QString::fromLatin1(tab));
        REQUIRE(button);
        button->click();
        auto* page = desk.findChild<Page*>();
        REQUIRE(page);
        return page;
    }
};

}  // namespace taut::app::shop
