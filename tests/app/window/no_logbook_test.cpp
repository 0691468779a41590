// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <sys/mount.h>

#include <QAbstractButton>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/pages/history/history_page.h"
#include "app/pages/start/start_page.h"
#include "app/seams/resources.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/read_only_strip.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"
#include "tests/core/base/tiny_disk.h"

using namespace taut;
using namespace taut::app;
using app::test::said;

namespace {

std::filesystem::path pathOf(const QTemporaryDir& folder, const char* name)
{
    return folder.filePath(QString::fromLatin1(name)).toStdString();
}

void write(const std::filesystem::path& file, const QByteArray& bytes)
{
    QFile out(QString::fromStdString(file.string()));
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
}

}  // namespace

TEST_CASE("a window whose logbook is a foreign file says so, leaves the file alone, and goes on with another")
{
    QTemporaryDir folder;
    const QByteArray letter("Dear printer, this is no logbook.\n");
    const auto foreign = pathOf(folder, "letter.txt");
    write(foreign, letter);
    Session::Options options;
    options.logbook = foreign;
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    options.resources = *resources;
    options.loadDemo = true;
    MainWindow window(options);
    window.show();
    QSignalSpy refused(window.session(), &Session::refused);
    REQUIRE(refused.wait(20000));
    auto* page = window.findChild<NoLogbookPage*>();
    REQUIRE(page->isVisible());
    CHECK(said(*page).contains(QString::fromStdString(foreign.string())));
    CHECK(said(*page).contains(QStringLiteral("logbook")));
    for (auto* button : window.findChildren<QAbstractButton*>()) {
        INFO(button->text().toStdString());
        const bool leads = page->isAncestorOf(button) || button->objectName() == QStringLiteral("keys") ||
                           button->objectName() == QStringLiteral("screen") ||
                           button->objectName() == QStringLiteral("help");
        CHECK((leads || !button->isVisible() || !button->isEnabled()));
    }

    // Once more the same file: refused again, nothing written into it.
    refused.clear();
    QTest::mouseClick(page->findChild<QAbstractButton*>(QStringLiteral("again")), Qt::LeftButton);
    REQUIRE(refused.wait(20000));
    QFile in(QString::fromStdString(foreign.string()));
    REQUIRE(in.open(QIODevice::ReadOnly));
    CHECK(in.readAll() == letter);

    QSignalSpy opened(window.session(), &Session::opened);
    window.session()->openAt(pathOf(folder, "shop.logbook"));
    REQUIRE(opened.wait(60000));
    CHECK(window.session()->isOpen());
    CHECK_FALSE(page->isVisible());
    CHECK(window.findChild<StartPage*>()->isVisible());
}

TEST_CASE("a logbook that somebody else writes in is looked at to read only, and opens when it is free")
{
    QTemporaryDir folder;
    Session::Options options = shop::optionsIn(folder);
    auto other = std::make_unique<Session>(options);
    shop::open(*other);
    shop::signIn(*other, "p-2");
    shop::begin(*other);
    MainWindow window(options);
    window.show();
    NoLogbookPage* page = nullptr;
    shop::until([&] { return (page = shop::visible<NoLogbookPage>(window)) != nullptr; },
                "the window says that it has no logbook");
    auto* look = page->findChild<QAbstractButton*>(QStringLiteral("look"));
    REQUIRE(look);
    REQUIRE(look->isVisible());
    QTest::mouseClick(look, Qt::LeftButton);
    HistoryPage* history = nullptr;
    shop::until([&] { return (history = shop::visible<HistoryPage>(window)) != nullptr; }, "the history is shown");
    const auto* strip = window.findChild<ReadOnlyStrip*>();
    REQUIRE(strip->isVisible());
    CHECK(said(*strip).contains(QStringLiteral("nothing can be entered")));
    shop::until([&] { return window.findChild<QListWidget*>(QStringLiteral("runs"))->count() == 1; },
                "the open run is in the list");
    CHECK(window.session()->onlyReads());
    CHECK_FALSE(window.session()->isOpen());
    // Nothing of the window enters anything: no door but the history's, nobody signs in.
    for (auto* field : window.findChildren<QLineEdit*>()) {
        INFO(field->accessibleName().toStdString());
        CHECK((history->isAncestorOf(field) || !field->isVisible() || !field->isEnabled()));
    }
    for (const auto* door : window.findChildren<QAbstractButton*>())
        if (door->text() == QStringLiteral("Run") || door->text() == QStringLiteral("Shop"))
            CHECK_FALSE(door->isEnabled());
    // Trying again while it is held leaves everything as it is.
    QTest::mouseClick(strip->findChild<QAbstractButton*>(QStringLiteral("tryAgain")), Qt::LeftButton);
    shop::until([&] { return !window.session()->busy(); }, "it was tried");
    CHECK(history->isVisible());
    CHECK(strip->isVisible());
    other.reset();
    shop::until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "it is opened after all");
    CHECK_FALSE(strip->isVisible());
    CHECK_FALSE(window.session()->onlyReads());
}

TEST_CASE("a newer logbook is looked at to read only, and over every page stands what of it is not shown")
{
    QTemporaryDir folder;
    Session::Options options = shop::optionsIn(folder);
    {
        Session session(options);
        shop::open(session);
    }
    QFile file(QString::fromStdString(options.logbook.string()));
    REQUIRE(file.open(QIODevice::ReadWrite));
    // SQLite's file format, 1.3: the number of the layout is the user version, bytes 60 to 63 of the file.
    REQUIRE(file.seek(63));
    REQUIRE(file.putChar(99));
    file.close();
    MainWindow window(options);
    window.show();
    NoLogbookPage* page = nullptr;
    shop::until([&] { return (page = shop::visible<NoLogbookPage>(window)) != nullptr; }, "the window says why");
    QTest::mouseClick(page->findChild<QAbstractButton*>(QStringLiteral("look")), Qt::LeftButton);
    shop::until([&] { return shop::visible<HistoryPage>(window) != nullptr; }, "the history is shown");
    const auto* strip = window.findChild<ReadOnlyStrip*>();
    const QString note = QStringLiteral("runs still open, and records of a kind that is new, are not");
    CHECK(said(*strip).contains(QStringLiteral("newer version of this program")));
    CHECK(said(*strip).contains(note));
    CHECK(strip->accessibleName().contains(note));
    // Trying in vain to open it takes nothing of that away.
    QTest::mouseClick(strip->findChild<QAbstractButton*>(QStringLiteral("tryAgain")), Qt::LeftButton);
    shop::until([&] { return !window.session()->busy(); }, "it was tried");
    REQUIRE(strip->isVisible());
    CHECK(said(*strip).contains(note));
}

TEST_CASE("a logbook on a medium that can only be read is looked at, and nothing is written beside it")
{
    taut::test::TinyDisk disk(8U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    QTemporaryDir folder;
    Session::Options options = shop::optionsIn(folder);
    {
        Session session(options);
        shop::open(session);
    }
    const std::filesystem::path file = disk / "shop.logbook";
    std::filesystem::copy_file(options.logbook, file);
    REQUIRE(::mount("tmpfs", file.parent_path().c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0);
    options.logbook = file;
    MainWindow window(options);
    window.show();
    NoLogbookPage* page = nullptr;
    shop::until([&] { return (page = shop::visible<NoLogbookPage>(window)) != nullptr; }, "the window says why");
    QTest::mouseClick(page->findChild<QAbstractButton*>(QStringLiteral("look")), Qt::LeftButton);
    shop::until([&] { return shop::visible<HistoryPage>(window) != nullptr; }, "the history is shown");
    CHECK(said(*window.findChild<ReadOnlyStrip*>()).contains(QStringLiteral("only be read")));
    CHECK(window.session()->reader() != nullptr);
}
