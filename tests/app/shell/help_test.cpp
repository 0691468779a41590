// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include <QListWidget>
#include <QRegularExpression>

#include "app/drawing/help_pictures.h"
#include "app/pages/history/history_page.h"
#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/seams/help_texts.h"
#include "app/seams/kept_settings.h"
#include "app/shell/help_view.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/tour.h"
#include "app/text/language.h"
#include "core/base/file.h"
#include "tests/app/pages/shop_window.h"

using namespace taut::app;
using shop::until;

namespace {

std::vector<HelpText> texts(const char* language = "en")
{
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    return helpTexts(*resources, QString::fromLatin1(language));
}

QStringList found(const char* words)
{
    QStringList ids;
    for (const HelpHit& hit : findInHelp(texts(), QString::fromLatin1(words))) ids << hit.id;
    return ids;
}

/// Every target of a pattern's first group in a text.
QStringList all(const QString& text, const char* pattern)
{
    QStringList found;
    auto matches = QRegularExpression(QString::fromLatin1(pattern)).globalMatch(text);
    while (matches.hasNext()) found << matches.next().captured(1);
    return found;
}

/// The help of this window; where nobody has opened it yet, it is opened and left.
HelpView* helpOf(shop::Window& w)
{
    if (w.window.findChild<HelpView*>() == nullptr) {
        w.click("Help for this page (F1)");
        w.click("Help for this page (F1)");
    }
    auto* help = w.window.findChild<HelpView*>();
    REQUIRE(help);
    return help;
}

void press(QWidget& window, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
{
    QWidget* focus = window.focusWidget();
    QTest::keyClick(focus != nullptr ? focus : &window, key, with);
}

/// As on a PC on which the program was never started; nobody's own settings are touched.
void freshSettings()
{
    static const QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
    keptSettings().clear();
}

}  // namespace

TEST_CASE("every page of the help has a headline, is short, and each of its links and pictures leads somewhere")
{
    const std::vector<HelpText> pages = texts();
    std::set<QString> ids, linked;
    for (const HelpText& page : pages) ids.insert(page.id);
    for (const char* id : {"start", "run", "history", "desk", "setup", "definitions", "find_setting", "this_pc",
                           "signs", "keys", "first_start", "pc_down"})
        CHECK(ids.count(QString::fromLatin1(id)) == 1);
    for (const HelpText& page : pages) {
        INFO(page.id.toStdString());
        CHECK_FALSE(page.title.isEmpty());
        const auto words = page.markdown.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts).size();
        CHECK(words < 400);
        CHECK(words > 100);
        for (const QString& link : all(page.markdown, "(?<!!)\\[[^\\]]*\\]\\(([^)]*)\\)")) {
            INFO(link.toStdString());
            REQUIRE(link.endsWith(QStringLiteral(".md")));
            CHECK(ids.count(link.chopped(3)) == 1);
            CHECK(link.chopped(3) != page.id);
            linked.insert(link.chopped(3));
        }
        for (const QString& picture : all(page.markdown, "!\\[[^\\]]+\\]\\(([^)]*)\\)")) {
            INFO(picture.toStdString());
            REQUIRE(picture.startsWith(QStringLiteral("picture:")));
            CHECK(helpPictureNames().contains(picture.mid(8)));
        }
        // A picture says in words what it shows.
        CHECK(all(page.markdown, "!\\[\\](\\()").isEmpty());
    }
    // Whoever reads comes to every page but the first one, which is there to begin with.
    for (const QString& id : ids) CHECK((id == QStringLiteral("start") || linked.count(id) == 1));
}

TEST_CASE("the help is there whole in every language of the window, with the links and pictures of the English one")
{
    const std::vector<HelpText> english = texts();
    for (const Language& language : languages()) {
        if (language.id == std::string("en")) continue;
        const std::vector<HelpText> pages = texts(language.id);
        REQUIRE(pages.size() == english.size());
        for (std::size_t i = 0; i < pages.size(); ++i) {
            INFO(language.id << " " << pages[i].id.toStdString());
            CHECK(pages[i].id == english[i].id);
            CHECK_FALSE(pages[i].title.isEmpty());
            CHECK(pages[i].title != english[i].title);
            CHECK(all(pages[i].markdown, "\\]\\(([^)]*)\\)") == all(english[i].markdown, "\\]\\(([^)]*)\\)"));
            CHECK(pages[i].markdown.split(QRegularExpression(QStringLiteral("\\s+"))).size() < 400);
            // What it does not move or stop is said in every language.
            CHECK(pages[i].markdown.count(QStringLiteral("Tautweb")) ==
                  english[i].markdown.count(QStringLiteral("Tautweb")));
        }
    }
}

TEST_CASE("the help is searched through by words, beginnings of words and titles, in capitals or not")
{
    CHECK(found("").size() == static_cast<qsizetype>(texts().size()));
    CHECK(found("power cut") == QStringList{QStringLiteral("pc_down")});
    CHECK(found("MIRROR").contains(QStringLiteral("setup")));
    CHECK(found("mirr").contains(QStringLiteral("setup")));
    // The inside of a word is not looked for: "ear" is in "year", "near" and "gear".
    CHECK_FALSE(found("irror").contains(QStringLiteral("setup")));
    REQUIRE_FALSE(found("signs").isEmpty());
    CHECK(found("signs").front() == QStringLiteral("signs"));
    CHECK(found("zebra").isEmpty());
    for (const HelpHit& hit : findInHelp(texts(), QStringLiteral("blank sheet")))
        if (hit.id == QStringLiteral("pc_down")) CHECK(hit.line.contains(QStringLiteral("blank sheet")));
}

TEST_CASE("a page that is missing in a language is there in English")
{
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    const auto pages = helpTexts(*resources, QStringLiteral("xx"));
    REQUIRE(pages.size() == texts().size());
    CHECK(pages.front().markdown == texts().front().markdown);
}

TEST_CASE("every drawing of the help is drawn at any width, in light and dark, on whole pixels of a fine screen")
{
    for (const Palette* palette : {&lightPalette(), &darkPalette(), &contrastPalette(true)})
        for (const QString& name : helpPictureNames())
            for (const double width : {240.0, 640.0}) {
                INFO(name.toStdString());
                const Look look{*palette, appFont(12.5), 1.0};
                const QImage image = helpPicture(name, look, width, 2);
                REQUIRE_FALSE(image.isNull());
                CHECK(image.width() == static_cast<int>(width * 2));
                CHECK(image.height() > 60);
                int inked = 0;
                for (int y = 0; y < image.height(); y += 2)
                    for (int x = 0; x < image.width(); x += 2) inked += image.pixelColor(x, y).alpha() > 0 ? 1 : 0;
                CHECK(inked > 120);
            }
    CHECK(helpPicture(QStringLiteral("no such"), currentLook(), 300).isNull());
}

TEST_CASE("F1 opens the help of the page that one is on, Esc leads back to it and to what had the focus")
{
    shop::Window w(true);
    shop::signIn(w.session(), "p-2");
    HelpView* help = helpOf(w);
    const auto opens = [&](const char* page) {
        QWidget* before = w.window.focusWidget();
        press(w.window, Qt::Key_F1);
        REQUIRE(help->isVisible());
        CHECK(help->page() == QLatin1String(page));
        press(w.window, Qt::Key_Escape);
        CHECK_FALSE(help->isVisible());
        CHECK(w.window.focusWidget() == before);
    };
    auto* diameter = shop::called<QLineEdit>(w.window, "Its diameter, if measured");
    REQUIRE(diameter);
    diameter->setFocus();
    QTest::keyClicks(diameter, QStringLiteral("48"));
    opens("start");
    CHECK(w.window.findChild<StartPage*>()->isVisible());
    // What was half typed is still there.
    CHECK(diameter->text() == QStringLiteral("48"));
    press(w.window, Qt::Key_2, Qt::AltModifier);
    opens("history");
    CHECK(w.window.findChild<HistoryPage*>()->isVisible());
    press(w.window, Qt::Key_3, Qt::AltModifier);
    opens("setup");
    CHECK(w.window.findChild<SetupPage*>()->isVisible());
    w.click("This PC");
    opens("this_pc");
    w.window.findChild<QPushButton*>(QStringLiteral("pcDone"))->click();
    w.click("Presses, jobs, substrates, procedures");
    opens("definitions");
    w.click("Find what a setting does");
    opens("find_setting");
    press(w.window, Qt::Key_1, Qt::AltModifier);
    shop::begin(w.session());
    opens("run");
}

TEST_CASE("the help opens by its button and goes by any door, and a run that begins meanwhile is there afterwards")
{
    shop::Window w(true);
    shop::signIn(w.session(), "p-2");
    HelpView* help = helpOf(w);
    auto* button = w.window.findChild<QPushButton*>(QStringLiteral("help"));
    REQUIRE(button);
    QTest::mouseClick(button, Qt::LeftButton);
    REQUIRE(help->isVisible());
    press(w.window, Qt::Key_2, Qt::AltModifier);
    CHECK_FALSE(help->isVisible());
    press(w.window, Qt::Key_1, Qt::AltModifier);
    QTest::mouseClick(button, Qt::LeftButton);
    REQUIRE(help->isVisible());
    QTest::mouseClick(button, Qt::LeftButton);
    CHECK_FALSE(help->isVisible());
    QTest::mouseClick(button, Qt::LeftButton);
    shop::begin(w.session());
    QTest::mouseClick(help->findChild<QPushButton*>(QStringLiteral("leaveHelp")), Qt::LeftButton);
    CHECK_FALSE(w.window.findChild<StartPage*>()->isVisible());
}

TEST_CASE("in the help one finds by typing, and what was found is marked in its page")
{
    shop::Window w(true);
    HelpView* help = helpOf(w);
    press(w.window, Qt::Key_F1);
    press(w.window, Qt::Key_F, Qt::ControlModifier);
    auto* find = shop::called<QLineEdit>(w.window, "Find in the help");
    REQUIRE(find);
    CHECK(find->hasFocus());
    QTest::keyClicks(find, QStringLiteral("power cut"));
    CHECK(help->page() == QStringLiteral("pc_down"));
    auto* text = help->findChild<QTextBrowser*>();
    REQUIRE(text);
    CHECK_FALSE(text->extraSelections().isEmpty());
    CHECK(text->extraSelections().front().cursor.selectedText().compare(QStringLiteral("power"), Qt::CaseInsensitive) ==
          0);
    find->setText(QStringLiteral("zebra"));
    auto* list = shop::called<QListWidget>(w.window, "Pages of the help");
    REQUIRE(list);
    REQUIRE(list->count() == 1);
    CHECK_FALSE((list->item(0)->flags() & Qt::ItemIsSelectable));  // it says that there is none
    // Esc leads back from there, too, and another time the help begins at the page again.
    press(w.window, Qt::Key_Escape);
    CHECK_FALSE(help->isVisible());
    press(w.window, Qt::Key_F1);
    CHECK(find->text().isEmpty());
    CHECK(help->page() == QStringLiteral("start"));
    // A link leads to its page.
    emit text->anchorClicked(QUrl(QStringLiteral("signs.md")));
    CHECK(help->page() == QStringLiteral("signs"));
}

TEST_CASE("every page of the help is read without scrolling sideways, also in the largest type")
{
    for (const double scale : {1.0, 2.0}) {
        shop::Window w(true);
        ThemeChoice theme;
        theme.textScale = scale;
        applyTheme(theme);
        HelpView* help = helpOf(w);
        press(w.window, Qt::Key_F1);
        auto* text = help->findChild<QTextBrowser*>();
        for (const HelpText& page : texts()) {
            INFO(page.id.toStdString() << " " << scale);
            help->open(page.id);
            QTest::qWait(20);
            CHECK(text->document()->size().width() <= text->viewport()->width() + 1);
        }
        applyTheme({});
    }
}

TEST_CASE("without a logbook the help tells what can be done")
{
    QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
    applyTheme({});
    Session::Options options = shop::optionsIn(folder);
    QFile letter(QString::fromStdString(options.logbook.string()));
    REQUIRE(letter.open(QIODevice::WriteOnly));
    letter.write("This is no logbook.");
    letter.close();
    MainWindow window(options);
    window.resize(1366, 740);
    window.show();
    window.activateWindow();
    NoLogbookPage* none = nullptr;
    until([&] { return (none = shop::visible<NoLogbookPage>(window)) != nullptr; }, "the window says why");
    press(window, Qt::Key_F1);
    CHECK(window.findChild<HelpView*>()->page() == QStringLiteral("pc_down"));
    press(window, Qt::Key_Escape);
    CHECK(none->isVisible());
}

TEST_CASE("without a logbook, and while it asks for its first supervisor, the help tells of the first start")
{
    shop::Window w(false);
    const auto tells = [&] {
        press(w.window, Qt::Key_F1);
        CHECK(helpOf(w)->page() == QStringLiteral("first_start"));
        press(w.window, Qt::Key_Escape);
    };
    NoLogbookPage* none = nullptr;
    until([&] { return (none = shop::visible<NoLogbookPage>(w.window)) && !w.session().busy(); },
          "the window says that there is none");
    tells();
    CHECK(none->isVisible());
    w.click("Begin a new logbook here");
    ChoosePage* asks = nullptr;
    until([&] { return (asks = shop::visible<ChoosePage>(w.window)) && !w.session().busy(); }, "it asks who");
    tells();
    CHECK(asks->isVisible());
}

TEST_CASE("whom the help lets into the demo shop are let in by what it says")
{
    const auto people = taut::readFile(*resourcesFolder() / "demo" / "people.toml");
    REQUIRE(people);
    for (const Language& language : languages())
        for (const HelpText& page : texts(language.id)) {
            if (page.id != QStringLiteral("first_start")) continue;
            INFO(language.id);
            shop::Window w(true);
            for (const auto& [id, name] : {std::pair("p-2", "Inka Thorsby"), std::pair("p-1", "Matteo Quill")}) {
                const QString line = page.markdown.section(QString::fromLatin1(name), 1, 1).section(u'\n', 0, 0);
                const QStringList secrets = all(line, "`([^`]+)`");
                REQUIRE(secrets.size() == 2);
                CHECK(QString::fromStdString(*people).contains(secrets[1]));
                w.session().signIn(QString::fromLatin1(id), secrets[0]);
                w.done();
                REQUIRE(w.session().actor());
                CHECK(w.session().actor()->name() == name);
                w.session().signOut();
                w.done();
            }
        }
}

TEST_CASE("whoever is new is offered a look round, once, and can leave it at any time")
{
    freshSettings();
    {
        shop::Window w(true);
        auto* offer = w.window.findChild<QPushButton*>(QStringLiteral("offerTour"));
        REQUIRE(offer);
        REQUIRE(offer->isVisible());
        auto* tour = w.window.findChild<Tour*>();
        CHECK_FALSE(tour->isVisible());
        QTest::mouseClick(offer, Qt::LeftButton);
        REQUIRE(tour->isVisible());
        CHECK_FALSE(offer->isVisible());
        auto* on = tour->findChild<QPushButton*>(QStringLiteral("tourOn"));
        QStringList told;
        for (int i = 0; i < 20 && tour->isVisible(); ++i) {
            told << tour->accessibleName();
            QTest::mouseClick(on, Qt::LeftButton);
        }
        CHECK_FALSE(tour->isVisible());
        CHECK(told.size() >= 6);
        CHECK(told.removeDuplicates() == 0);
        CHECK(told.front().contains(QStringLiteral("moves nothing and stops nothing")));
    }
    shop::Window again(true);
    CHECK_FALSE(again.window.findChild<QPushButton*>(QStringLiteral("offerTour"))->isVisible());
    // From the help it can be had again; Esc and its button leave it.
    auto* tour = again.window.findChild<Tour*>();
    for (const bool byKey : {true, false}) {
        press(again.window, Qt::Key_F1);
        QTest::mouseClick(helpOf(again)->findChild<QPushButton*>(QStringLiteral("tour")), Qt::LeftButton);
        REQUIRE(tour->isVisible());
        CHECK_FALSE(helpOf(again)->isVisible());
        if (byKey)
            press(again.window, Qt::Key_Escape);
        else
            QTest::mouseClick(tour->findChild<QPushButton*>(QStringLiteral("tourSkip")), Qt::LeftButton);
        CHECK_FALSE(tour->isVisible());
    }
}

TEST_CASE("whoever has begun a run is not offered a look round any more")
{
    freshSettings();
    shop::Window w(true);
    auto* offer = w.window.findChild<QPushButton*>(QStringLiteral("offerTour"));
    REQUIRE(offer->isVisible());
    shop::signIn(w.session(), "p-2");
    shop::begin(w.session());
    w.session().leaveRun();
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "left");
    CHECK_FALSE(offer->isVisible());
}

TEST_CASE("the look round points at what it tells of and takes no touch from it")
{
    freshSettings();
    shop::Window w(true);
    QTest::mouseClick(w.window.findChild<QPushButton*>(QStringLiteral("offerTour")), Qt::LeftButton);
    auto* tour = w.window.findChild<Tour*>();
    auto* frame = w.window.findChild<PointingFrame*>();
    CHECK_FALSE(frame->isVisible());  // the first sentence is about everything
    QTest::mouseClick(tour->findChild<QPushButton*>(QStringLiteral("tourOn")), Qt::LeftButton);
    QTest::mouseClick(tour->findChild<QPushButton*>(QStringLiteral("tourOn")), Qt::LeftButton);
    REQUIRE(frame->isVisible());
    QAbstractButton* door = nullptr;
    for (auto* button : w.window.findChildren<QAbstractButton*>())
        if (button->text() == QStringLiteral("History")) door = button;
    REQUIRE(door);
    QTest::qWait(30);
    const QRect at(door->mapTo(&w.window, QPoint()), door->size());
    CHECK(frame->geometry().contains(at));
    CHECK(w.window.childAt(at.center()) == door);
    QTest::mouseClick(door, Qt::LeftButton);
    CHECK(w.window.findChild<HistoryPage*>()->isVisible());
    CHECK(tour->isVisible());
    w.window.resize(900, 600);
    QTest::qWait(50);
    CHECK(frame->geometry().contains(QRect(door->mapTo(&w.window, QPoint()), door->size())));
}
