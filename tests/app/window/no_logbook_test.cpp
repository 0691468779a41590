// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/pages/start/start_page.h"
#include "app/seams/resources.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"

using namespace taut;
using namespace taut::app;

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

QString said(const QWidget& widget)
{
    QString all;
    for (const auto* label : widget.findChildren<QLabel*>())
        if (label->isVisible()) all += label->text() + QLatin1Char('\n');
    return all;
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
                           button->objectName() == QStringLiteral("screen");
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
