// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include <QAbstractButton>
#include <QApplication>
#include <QDateTime>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QPrintPreviewWidget>
#include <QPrinterInfo>
#include <QScrollBar>
#include <QTimer>

#include "app/pages/history/history_page.h"
#include "app/shell/main_window.h"
#include "app/widgets/attachment_panel.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "tests/app/pages/signed_run.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

struct Past {
    QTemporaryDir folder;
    Session session;
    HistoryPage page;

    Past() : session(signedRun(folder)), page(&session)
    {
        open(session);
        page.resize(1342, 640);
        page.show();
        settle();
    }
    void settle() const { settled(page); }
    [[nodiscard]] RowList* list() const { return visible<RowList>(page); }
    void find(const char* text)
    {
        auto* field = called<QLineEdit>(page, "Find runs by job, roll or run");
        REQUIRE(field);
        field->setText(QString::fromLatin1(text));
        settle();
    }
    [[nodiscard]] QAbstractButton* button(const char* name) const
    {
        auto* b = called<QAbstractButton>(page, name);
        INFO(name);
        REQUIRE(b);
        return b;
    }
    [[nodiscard]] QString said() const { return app::test::said(page); }
};

}  // namespace

TEST_CASE("the newest run is open when the history is, as the sheet that would be printed")
{
    Past p;
    REQUIRE(p.list()->count() == 1);
    CHECK(p.list()->chosen().startsWith(QStringLiteral("north-")));
    CHECK(p.list()->item(0)->text().contains(QStringLiteral("signed, 1 deviation")));
    auto* sheet = visible<QPrintPreviewWidget>(p.page);
    REQUIRE(sheet);
    CHECK(sheet->pageCount() >= 2);
    CHECK(p.button("Save as PDF")->isEnabled());
    CHECK_FALSE(p.button("Page back")->isEnabled());
    QTest::mouseClick(p.button("Page on"), Qt::LeftButton);
    CHECK(sheet->currentPage() == 2);
    CHECK(p.said().contains(QStringLiteral("2 of %1").arg(sheet->pageCount())));
    CHECK(p.button("Page back")->isEnabled());
    for (int i = 0; i < 10; ++i) QTest::mouseClick(p.button("Page on"), Qt::LeftButton);
    CHECK(sheet->currentPage() == sheet->pageCount());
    CHECK_FALSE(p.button("Page on")->isEnabled());
}

TEST_CASE("runs are found by job, roll and run, and what is not there is said")
{
    Past p;
    for (const char* text : {"J-2101", "R0047", "north-", "  R0047  "}) {
        p.find(text);
        CAPTURE(text);
        CHECK(p.list()->count() == 1);
    }
    p.find("R9999");
    CHECK(p.list()->count() == 0);
    CHECK(p.said().contains(QStringLiteral("No run of this logbook has that in it")));
    CHECK_FALSE(p.button("Save as PDF")->isEnabled());
    CHECK_FALSE(p.button("Print")->isEnabled());
    CHECK(visible<QPrintPreviewWidget>(p.page) == nullptr);
    p.find("");
    CHECK(p.list()->count() == 1);
    CHECK(p.button("Save as PDF")->isEnabled());
}

TEST_CASE("a run that is still open is listed, and its sheet is a draft that can be printed")
{
    Past p;
    signIn(p.session, "p-2");
    begin(p.session);
    p.page.refill();
    REQUIRE(p.list()->count() == 2);
    REQUIRE(p.list()->choose(QString::fromStdString(p.session.run()->id())));
    p.settle();
    CHECK(p.said().contains(QStringLiteral("DRAFT: this run is still open and nobody has signed it")));
    CHECK(p.button("Print")->isEnabled());
    CHECK(visible<QPrintPreviewWidget>(p.page) != nullptr);
}

TEST_CASE("the sheet is saved as a PDF where it was asked for")
{
    Past p;
    const QString file = p.folder.path() + QStringLiteral("/kept.pdf");
    QTimer answers;
    int tries = 0;
    QObject::connect(&answers, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        if (++tries > 20) return static_cast<QDialog*>(dialog)->reject();
        if (auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))) name->setText(file);
        static_cast<QDialog*>(dialog)->accept();
    });
    answers.start(300);
    QTest::mouseClick(p.button("Save as PDF"), Qt::LeftButton);
    CAPTURE(p.said().toStdString());
    QFile saved(file);
    REQUIRE(saved.open(QIODevice::ReadOnly));
    CHECK(saved.read(5) == QByteArray("%PDF-"));
    CHECK(p.said().contains(QStringLiteral("kept.pdf")));
}

TEST_CASE("page 1 alone is shown, to be saved and printed like that, and the whole sheet again")
{
    Past p;
    auto* preview = visible<QPrintPreviewWidget>(p.page);
    REQUIRE(preview);
    until([&] { return preview->pageCount() > 1; }, "the whole sheet is shown");
    const int all = preview->pageCount();
    QTest::mouseClick(p.button("Page 1 alone"), Qt::LeftButton);
    until([&] { return preview->pageCount() == 1; }, "page 1 is shown");
    QTest::mouseClick(p.button("Page 1 alone"), Qt::LeftButton);
    until([&] { return preview->pageCount() == all; }, "the whole sheet is shown again");
}

TEST_CASE("without a printer the page says what to do instead")
{
    if (!QPrinterInfo::availablePrinterNames().isEmpty())
        return;  // a desk with a printer: nothing is printed by a test
    Past p;
    QTest::mouseClick(p.button("Print"), Qt::LeftButton);
    CHECK(p.said().contains(QStringLiteral("No printer is set up")));
    CHECK(p.button("Save as PDF")->isEnabled());
}

TEST_CASE("a run's moment is shown in the time of this PC")
{
    Past p;
    const auto page = p.session.reader()->runs({}, "");
    REQUIRE(page);
    const QString begun =
        QDateTime::fromMSecsSinceEpoch(page->rows.front().begunMs).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    CHECK(p.list()->item(0)->text().contains(begun));
}

TEST_CASE("without a sheet the buttons of the history stay as high as they are with one")
{
    Past p;
    for (const QSize size : {QSize(1342, 640), QSize(1896, 950)}) {
        p.page.resize(size);
        p.find("");
        const int with = p.button("Save as PDF")->height();
        p.find("no run has this in it");
        CHECK(p.button("Save as PDF")->height() == with);
        CHECK(p.button("Print")->height() == with);
        CHECK(p.button("Page on")->height() <= with);
        CHECK(with < 80);
    }
}

TEST_CASE("the history shows no sideways scroll bar and cuts no row on the promised screens")
{
    for (const double scale : {1.0, 2.0}) {
        Past p;
        applyTheme({false, scale, 1.0});
        p.settle();
        CAPTURE(scale);
        CHECK(p.page.minimumSizeHint().width() <= 1342);
        for (const QScrollBar* bar : p.list()->findChildren<QScrollBar*>())
            if (bar->isVisible()) CHECK(bar->orientation() == Qt::Vertical);
        CHECK(p.list()->visualItemRect(p.list()->item(0)).height() >= sizes().row);
    }
    applyTheme({});
}

TEST_CASE(
    "a sheet's code that is scanned where one finds runs opens its run and says whether the sheet is of this logbook")
{
    Past p;
    const std::string run = p.list()->chosen().toStdString();
    const seal::Anchor anchor = p.session.reader()->anchor().value();
    const auto scan = [&](const std::string& code) {
        p.find(code.c_str());
        CHECK(called<QLineEdit>(p.page, "Find runs by job, roll or run")->text().isEmpty());
        return p.said();
    };
    CHECK(scan(seal::anchorUri(run, anchor)).contains(QStringLiteral("The sheet is of this logbook")));
    CHECK(p.list()->chosen().toStdString() == run);
    seal::Anchor other = anchor;
    other.link[0] ^= 1;
    CHECK(scan(seal::anchorUri(run, other)).contains(QStringLiteral("is not the one that the sheet names")));
    CHECK(scan(seal::anchorUri(run, {anchor.count + 5, anchor.link})).contains(QStringLiteral("ends before that")));
    CHECK(scan(seal::anchorUri("south-2026-01-01-01", anchor)).contains(QStringLiteral("not sealed in this logbook")));
    CHECK(scan("tautweb:run/half").contains(QStringLiteral("anchor"), Qt::CaseInsensitive));
}

TEST_CASE("the pictures of a sealed run are looked at beside its sheet, and nothing can be added to them")
{
    Past p;
    auto* files = called<QAbstractButton>(p.page, "Pictures and files");
    REQUIRE(files);
    QTest::mouseClick(files, Qt::LeftButton);
    p.settle();
    auto* panel = visible<AttachmentPanel>(p.page);
    REQUIRE(panel);
    CHECK(p.said().contains(QStringLiteral("Pictures and files")));
    CHECK_FALSE(panel->findChild<QAbstractButton*>(QStringLiteral("attachOne"))->isVisible());
    CHECK(panel->findChild<QAbstractButton*>(QStringLiteral("saveOne"))->isEnabled());
    QTest::keyClick(panel->first(), Qt::Key_Escape);
    p.settle();
    CHECK(visible<AttachmentPanel>(p.page) == nullptr);
    CHECK(visible<QPrintPreviewWidget>(p.page));
}

TEST_CASE("a sheet that was made out of sight is seen from its first page, and stays at its page in another size")
{
    QTemporaryDir folder;
    const Session::Options options = signedRun(folder);
    applyTheme({});
    MainWindow window(options);
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 740);
    window.show();
    window.activateWindow();
    until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "the logbook is open");
    window.grab();  // gives what is hidden its size, as some platforms do by themselves
    QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
    auto* page = visible<HistoryPage>(window);
    REQUIRE(page);
    settled(*page);
    QTest::qWait(200);
    auto* sheet = visible<QPrintPreviewWidget>(window);
    REQUIRE(sheet);
    REQUIRE(sheet->pageCount() > 4);
    CHECK(sheet->currentPage() == 1);
    for (int i = 0; i < 2; ++i) called<QAbstractButton>(window, "Page on")->click();
    REQUIRE(sheet->currentPage() == 3);
    for (const int width : {1920, 1100, 1366}) {
        window.resize(width, 740);
        QTest::qWait(50);
        CHECK(sheet->currentPage() == 3);
        CHECK(test::said(window).contains(QStringLiteral("3 of")));
    }
}
