// SPDX-License-Identifier: GPL-3.0-or-later
// The logbook kept twice, through the window: its mirror, copies, and the way back from one.
#include <catch2/catch.hpp>

#include <fcntl.h>
#include <unistd.h>

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QScrollArea>

#include "app/pages/setup/logbook_card.h"
#include "app/pages/setup/setup_page.h"
#include "app/seams/kept_settings.h"
#include "app/shell/no_logbook_page.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "tests/app/pages/shop_window.h"
#include "tests/core/base/tiny_disk.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace fs = std::filesystem;

namespace {

constexpr const char* kMatteo = "nine slow barges at dusk";
constexpr const char* kSecret = "Passphrase, or badge";

/// The window with a supervisor at the card.
struct Keeping : Window {
    Keeping() : Window(true)
    {
        signIn(session(), "p-1");
        toCard();
    }
    void toCard()
    {
        click("Shop");
        click("Keep the logbook twice");
        REQUIRE(visible<LogbookCard>(window));
    }
    QString place(const char* name)
    {
        QDir(folder.path()).mkpath(QString::fromLatin1(name));
        return folder.path() + QLatin1Char('/') + QString::fromLatin1(name);
    }
    QString shown(const char* name)
    {
        const auto* label = visible<QLabel>(window, name);
        return label ? label->text() : QString();
    }
    /// Presses a button that opens a dialog, and says there which file or folder.
    void choose(const char* button, const QString& path)
    {
        QTimer answers;
        int tries = 0;
        QObject::connect(&answers, &QTimer::timeout, [&] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            if (!dialog) return;
            if (++tries > 20) return static_cast<QDialog*>(dialog)->reject();
            if (auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))) name->setText(path);
            static_cast<QDialog*>(dialog)->accept();
        });
        answers.start(100);
        click(button);
        answers.stop();
        CHECK(tries <= 20);
        done();
    }
    void mirrorStands(const char* words)
    {
        until([&] { return shown("mirror").contains(QString::fromLatin1(words)); }, words);
    }
    void weeklySays(const char* words)
    {
        until([&] { return shown("weekly").contains(QString::fromLatin1(words)); }, words);
    }
    FindingStrip* strip() { return visible<FindingStrip>(window, "keeping"); }
    std::uint64_t seals() { return session().reader()->anchor()->count; }
    /// Something that is sealed.
    void sealOne()
    {
        const std::string known = std::to_string(seals());
        session().takeIn({written("job-" + known + ".toml")});
        done();
    }
    fs::path written(const std::string& name)
    {
        const auto text = readFile(session().options().resources / "demo" / "jobs" / "quince-jelly.toml");
        return writtenAs(name, text ? *text : std::string());
    }
    fs::path writtenAs(const std::string& name, std::string text)
    {
        REQUIRE_FALSE(text.empty());
        text += "\n# " + name + "\n";
        fs::path file = fs::path(folder.path().toStdString()) / name;
        REQUIRE(writeFile(file, text));
        return file;
    }
};

/// A folder in which nothing can be made, while it lives: for root, whom no permission stops, a disk of its own.
struct ReadOnly {
    taut::test::TinyDisk disk{1U << 20U};
    fs::path folder;
    explicit ReadOnly(const QString& where) : folder(where.toStdString())
    {
        if (::geteuid() != 0)
            fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
        else if (disk.mounted())
            folder = (disk / "").parent_path();
        else
            WARN("a disk of its own needs the right to mount: the read-only folder is not tried here");
        if (disk.mounted()) REQUIRE(::mount("tmpfs", folder.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0);
    }
    ~ReadOnly()
    {
        std::error_code ignored;
        fs::permissions(folder, fs::perms::owner_all, ignored);
    }
    [[nodiscard]] bool holds() const { return ::geteuid() != 0 || disk.mounted(); }
};

/// A logbook file that another program keeps busy, while it lives: whoever reads it waits some seconds. SQLite's file
/// format, 1.4: locks are taken on the lock-byte page, at 1 GiB. Open file description locks are nobody's else's.
struct Busy {
    int file;
    explicit Busy(const fs::path& path) : file(::open(path.c_str(), O_RDWR | O_CLOEXEC))
    {
        struct flock lock {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        lock.l_start = 0x40000000;
        lock.l_len = 512;
        REQUIRE(::fcntl(file, F_OFD_SETLK, &lock) == 0);
    }
    ~Busy() { ::close(file); }
    Busy(const Busy&) = delete;
    Busy& operator=(const Busy&) = delete;
};

}  // namespace

TEST_CASE("a mirror is kept where a supervisor says, follows every seal, and goes on at the next start")
{
    Keeping w;
    CHECK(w.shown("mirror").startsWith(QStringLiteral("No mirror is kept.")));
    CHECK_FALSE(called<QAbstractButton>(w.window, "Stop the mirror")->isEnabled());
    w.choose("Choose the mirror's folder…", w.place("second"));
    w.mirrorStands("holds every seal of the logbook");
    CHECK(w.shown("mirror").contains(QString::number(w.seals())));
    CHECK(keptFolder(Kept::Mirror, w.session().options().logbook) == fs::path(w.place("second").toStdString()));
    const auto before = w.seals();
    w.sealOne();
    REQUIRE(w.seals() == before + 1);
    w.mirrorStands(std::to_string(before + 1).c_str());
    CHECK(w.session().mirror()->holdsAll());

    w.click("Stop the mirror");
    w.mirrorStands("No mirror is kept.");
    CHECK(keptFolder(Kept::Mirror, w.session().options().logbook).empty());
}

TEST_CASE("the mirror of a logbook goes on when the program starts again, and not that of another logbook")
{
    QTemporaryDir folder;
    const Session::Options options = Window::prepared(folder, true);
    QDir(folder.path()).mkpath(QStringLiteral("second"));
    keepFolder(Kept::Mirror, options.logbook, folder.path() + QStringLiteral("/second"));
    {
        MainWindow window(options);
        until([&] { return window.session()->mirror() && window.session()->mirror()->holdsAll(); }, "it is mirrored");
        CHECK(visible<FindingStrip>(window, "keeping") == nullptr);
    }
    Session::Options other = options;
    other.logbook = fs::path(folder.path().toStdString()) / "other.logbook";
    MainWindow window(other);
    until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "open");
    QTest::qWait(50);
    CHECK_FALSE(window.session()->mirror());
}

TEST_CASE("a mirror whose folder is gone is told in the window, and stops no run")
{
    Keeping w;
    w.choose("Choose the mirror's folder…", w.place("second"));
    w.mirrorStands("holds every seal of the logbook");
    begin(w.session());
    w.click("Run");
    QWidget* const focus = w.window.focusWidget();
    fs::rename(w.place("second").toStdString(), fs::path(w.folder.path().toStdString()) / "away");
    w.session().takeIn({w.written("job.toml")});
    w.done();
    until([&] { return w.strip() != nullptr; }, "it is told");
    CHECK(w.strip()->text().size() > 20);
    CHECK(w.window.focusWidget() == focus);
    // The run goes on, and what was read stays away until something else is the matter.
    const std::size_t events = w.session().run()->events().size();
    w.session().perform(run::Note{{}, "the guide hums"});
    w.done();
    CHECK(w.session().run()->events().size() == events + 1);
    CHECK(w.strip());
    QTest::mouseClick(w.strip()->findChild<QAbstractButton*>(), Qt::LeftButton);
    CHECK(w.strip() == nullptr);
    w.session().perform(run::Note{{}, "it has stopped"});
    w.done();
    QTest::qWait(1300);
    CHECK(w.strip() == nullptr);
    w.toCard();
    CHECK(w.shown("mirror").contains(QStringLiteral("second")));
    CHECK_FALSE(w.session().mirror()->holdsAll());
    // With the folder there again, the next seal brings it all.
    fs::remove_all(w.place("second").toStdString());
    fs::rename(fs::path(w.folder.path().toStdString()) / "away", w.folder.path().toStdString() + "/second");
    w.session().takeIn({w.written("job-2.toml")});
    w.done();
    w.mirrorStands("holds every seal of the logbook");
}

TEST_CASE("a folder that is missing or can only be read is answered with a sentence and what to do")
{
    Keeping w;
    w.session().copyTo(w.folder.path() + QStringLiteral("/nowhere"));
    w.done();
    CHECK(w.says("nowhere"));
    w.session().keepMirror(w.folder.path() + QStringLiteral("/nowhere"));
    w.done();
    w.mirrorStands("There is no mirror in");
    until([&] { return w.strip() != nullptr; }, "it is told");
    const ReadOnly guard(w.place("locked"));
    if (!guard.holds()) return;
    const QString locked = QString::fromStdString(guard.folder);
    w.choose("Copy now, to a folder or a stick…", locked);
    CHECK(w.said().contains(locked));
    CHECK_FALSE(w.shown("copied").contains(QStringLiteral("Copied to")));
    w.choose("Choose the mirror's folder…", locked);
    w.mirrorStands("There is no mirror in");
}

TEST_CASE("a disk that is full costs the copy and the mirror, and nothing else")
{
    taut::test::TinyDisk disk(4U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    disk.fill(20U << 10U);
    Keeping w;
    const QString full = QString::fromStdString(disk / "");
    w.choose("Copy now, to a folder or a stick…", full);
    CHECK_FALSE(w.shown("copied").contains(QStringLiteral("Copied to")));
    CHECK(w.says("There is no room left"));
    w.choose("Choose the mirror's folder…", full);
    until([&] { return w.strip() != nullptr; }, "it is told");
    CHECK_FALSE(w.session().mirror()->holdsAll());
    const auto before = w.seals();
    w.sealOne();
    CHECK(w.seals() == before + 1);
    // With room again it follows by the next seal.
    disk.empty();
    w.sealOne();
    w.mirrorStands("holds every seal of the logbook");
    until([&] { return w.strip() == nullptr; }, "nothing is the matter any more");
    w.click("Stop the mirror");
    w.done();
}

TEST_CASE("a copy is made to a folder, and its verified result is said")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    CHECK(w.shown("copied").contains(QStringLiteral("read again and in order, %1 seals.").arg(w.seals())));
    const QStringList files = QDir(w.place("stick")).entryList({QStringLiteral("shop-*.logbook")});
    REQUIRE(files.size() == 1);
    CHECK(w.shown("copied").contains(files.front()));
    const auto verified = logbook::verify(w.place("stick").toStdString() + "/" + files.front().toStdString(), {});
    REQUIRE(verified);
    CHECK(verified->findings.empty());
    auto* again = called<QAbstractButton>(w.window, "Copy now, to a folder or a stick…");
    CHECK(again->isEnabled());
    CHECK(w.window.focusWidget() == again);
}

TEST_CASE("a logbook is restored from a copy after it was said what will happen, and everybody signs in again")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    const auto copied = w.seals();
    const QString copy =
        w.place("stick") + QLatin1Char('/') + QDir(w.place("stick")).entryList({QStringLiteral("shop-*")}).front();
    w.sealOne();
    w.choose("Restore from a copy…", copy);
    CHECK(
        w.said().contains(QStringLiteral("It holds %1 seals; the logbook here holds %2.").arg(copied).arg(copied + 1)));
    CHECK(w.says("1 seals made since are then no longer in the logbook"));
    w.type(kSecret, QStringLiteral("nine slow barges at dawn"));
    w.click("Restore the logbook");
    w.done();
    CHECK(w.says("does not open this person's key"));
    CHECK(w.seals() == copied + 1);
    // Back is back, and nothing has happened.
    w.click("Back");
    CHECK(visible<LogbookCard>(w.window));
    w.choose("Restore from a copy…", copy);
    w.type(kSecret, QString::fromLatin1(kMatteo));
    w.click("Restore the logbook");
    w.done();
    CHECK(w.shown("restored").contains(QStringLiteral("Restored and in order: %1 seals.").arg(copied)));
    CHECK(w.shown("restored").contains(QStringLiteral("shop-aside-")));
    CHECK_FALSE(w.session().actor());
    CHECK(w.session().isOpen());
    CHECK(w.seals() == copied);
    CHECK_FALSE(called<QAbstractButton>(w.window, "Restore from a copy…")->isEnabled());
    // It is a logbook to work with.
    signIn(w.session(), "p-2");
    begin(w.session());
    CHECK(w.session().run());
}

TEST_CASE("nothing is restored while a run is open, from what is no logbook, or by anybody but a supervisor")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    const QString copy =
        w.place("stick") + QLatin1Char('/') + QDir(w.place("stick")).entryList({QStringLiteral("shop-*")}).front();
    const QString foreign = w.place("stick") + QStringLiteral("/foreign.logbook");
    REQUIRE(writeFile(foreign.toStdString(), "this is no logbook\n"));
    w.choose("Restore from a copy…", foreign);
    CHECK(w.says("foreign.logbook"));
    CHECK(called<QLineEdit>(w.window, kSecret) == nullptr);
    begin(w.session());
    w.toCard();
    w.choose("Restore from a copy…", copy);
    CHECK(w.said().contains(QStringLiteral("is open in this logbook")));
    CHECK(called<QLineEdit>(w.window, kSecret) == nullptr);
    CHECK(w.session().run());
    signIn(w.session(), "p-2");
    for (const char* name :
         {"Choose the mirror's folder…", "Copy now, to a folder or a stick…", "Restore from a copy…"})
        CHECK_FALSE((w.toCard(), called<QAbstractButton>(w.window, name)->isEnabled()));
    CHECK(w.says("A supervisor who has signed in looks after this."));
    QSignalSpy refused(w.window.session(), &Session::refused);
    w.session().restore(copy, QStringLiteral("copper kettle by the window"));
    w.session().copyTo(w.place("stick"));
    w.session().keepMirror(w.place("stick"));
    w.done();
    REQUIRE(refused.size() == 3);
    for (const auto& one : refused) CHECK(one.at(0).value<Finding>().code == "gate.role");
    CHECK(keptFolder(Kept::Mirror, w.session().options().logbook).empty());
    CHECK(w.session().reader() != nullptr);
    // Whoever was signed in when the folder was asked for may be so no more when it is chosen.
    w.session().signOut();
    w.done();
    refused.clear();
    w.session().keepMirror(w.place("stick"));
    w.done();
    REQUIRE(refused.size() == 1);
    CHECK(refused.front().at(0).value<Finding>().code == "session.not_signed_in");
    CHECK(keptFolder(Kept::Mirror, w.session().options().logbook).empty());
    CHECK_FALSE(w.session().mirror());
}

TEST_CASE("while a logbook is restored the window reads neither file, and after it the one that lies there")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    const QString copy =
        w.place("stick") + QLatin1Char('/') + QDir(w.place("stick")).entryList({QStringLiteral("shop-*")}).front();
    for (const char* secret : {"not the passphrase at all", kMatteo}) {
        w.session().restore(copy, QString::fromLatin1(secret));
        CHECK(w.session().reader() == nullptr);
        w.done();
        REQUIRE(w.session().reader() != nullptr);
        CHECK(w.session().reader()->anchor());
    }
    CHECK_FALSE(w.session().actor());  // the second was the right one
}

TEST_CASE("a copy in which a byte was changed is refused by the first thing wrong, and the logbook stays")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    const QString copy =
        w.place("stick") + QLatin1Char('/') + QDir(w.place("stick")).entryList({QStringLiteral("shop-*")}).front();
    std::string bytes = readFile(copy.toStdString()).value();
    const std::size_t at = bytes.find("Inka Thorsby");
    REQUIRE(at != std::string::npos);
    bytes.replace(at, 4, "Anna");
    REQUIRE(writeFile(copy.toStdString(), bytes));
    const auto before = w.seals();
    w.choose("Restore from a copy…", copy);
    w.type(kSecret, QString::fromLatin1(kMatteo));
    w.click("Restore the logbook");
    w.done();
    CHECK(called<QLineEdit>(w.window, kSecret));
    CHECK(w.session().isOpen());
    CHECK(w.session().actor());
    CHECK(w.seals() == before);
    w.sealOne();
    CHECK(w.seals() == before + 1);
}

TEST_CASE("a copy is made every week where a supervisor says, beside whatever is done, and the card says when")
{
    Keeping w;
    CHECK(w.shown("weekly").startsWith(QStringLiteral("No copy is made by itself.")));
    auto* stop = called<QAbstractButton>(w.window, "Stop the weekly copies");
    CHECK_FALSE(stop->isEnabled());
    w.choose("Copy every week, to a folder…", w.place("weekly"));
    CHECK(keptFolder(Kept::Copies, w.session().options().logbook) == fs::path(w.place("weekly").toStdString()));
    w.weeklySays("read again and in order");
    CHECK(w.shown("weekly").contains(QStringLiteral("%1 seals.").arg(w.seals())));
    CHECK(w.shown("weekly").contains(momentHereText(*w.session().copies()->newestMs)));
    const QStringList files = QDir(w.place("weekly")).entryList({QStringLiteral("shop-*.logbook")});
    REQUIRE(files.size() == 1);
    const auto verified = logbook::verify(w.place("weekly").toStdString() + "/" + files.front().toStdString(), {});
    REQUIRE(verified);
    CHECK(verified->findings.empty());
    CHECK(w.strip() == nullptr);
    REQUIRE(stop->isEnabled());
    w.click("Stop the weekly copies");
    CHECK(w.shown("weekly").startsWith(QStringLiteral("No copy is made by itself.")));
    CHECK(keptFolder(Kept::Copies, w.session().options().logbook).empty());
    CHECK(w.window.focusWidget() == called<QAbstractButton>(w.window, "Copy every week, to a folder…"));
}

TEST_CASE("at the next start the weekly copy is made if it is due, and not before")
{
    QTemporaryDir folder;
    const Session::Options options = Window::prepared(folder, true);
    const QString weekly = folder.path() + QStringLiteral("/weekly");
    QDir(folder.path()).mkpath(QStringLiteral("weekly"));
    keepFolder(Kept::Copies, options.logbook, weekly);
    const auto copies = [&] {
        return QDir(weekly).entryList({QStringLiteral("shop-*.logbook")}, QDir::Files, QDir::Name);
    };
    const auto started = [&] {
        MainWindow window(options);
        until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "open");
        until([&] { return window.session()->copies() && window.session()->copies()->looked; }, "it was looked");
    };
    started();
    REQUIRE(copies().size() == 1);
    started();
    CHECK(copies().size() == 1);
    // As if that had been eight days ago.
    REQUIRE(QFile::rename(weekly + QLatin1Char('/') + copies().front(),
                          weekly + QStringLiteral("/shop-20250101-000000.logbook")));
    started();
    CHECK(copies().size() == 2);
}

TEST_CASE("a weekly copy that cannot be made is told with what to do, stops no run, and is made when the stick is in")
{
    Keeping w;
    const QString stick = w.folder.path() + QStringLiteral("/stick");
    w.session().keepCopies(stick);
    w.weeklySays("One is due, and could not be made.");
    CHECK(w.shown("weekly").contains(QStringLiteral("Put the stick in")));
    until([&] { return w.strip() != nullptr; }, "it is told");
    begin(w.session());
    const std::size_t events = w.session().run()->events().size();
    w.session().perform(run::Note{{}, "the guide hums"});
    w.done();
    CHECK(w.session().run()->events().size() == events + 1);
    QDir(w.folder.path()).mkpath(QStringLiteral("stick"));
    w.session().keepCopies(stick);
    w.toCard();
    w.weeklySays("read again and in order");
    until([&] { return w.strip() == nullptr; }, "nothing is the matter any more");
    // Nobody else decides where copies lie.
    signIn(w.session(), "p-2");
    QSignalSpy refused(&w.session(), &Session::refused);
    w.session().keepCopies({});
    REQUIRE(refused.size() == 1);
    CHECK(refused[0][0].value<Finding>().code == "gate.role");
    CHECK(w.session().copies());
}

TEST_CASE("a logbook that is restored is copied every week from then on")
{
    Keeping w;
    w.choose("Copy every week, to a folder…", w.place("weekly"));
    w.weeklySays("read again and in order");
    const QString copy = QString::fromStdString(w.session().copies()->newest.string());
    const auto copied = w.seals();
    w.sealOne();
    w.choose("Restore from a copy…", copy);
    w.type(kSecret, QString::fromLatin1(kMatteo));
    w.click("Restore the logbook");
    w.done();
    REQUIRE(w.seals() == copied);
    until([&] { return w.session().copies() && w.session().copies()->looked; }, "the copies are looked after again");
    CHECK(QString::fromStdString(w.session().copies()->newest.string()) == copy);
    CHECK_FALSE(w.session().copies()->whyNot);
}

TEST_CASE("nothing is restored while a copy goes on by itself in a folder that is no longer the one for copies")
{
    Keeping w;
    w.choose("Copy now, to a folder or a stick…", w.place("stick"));
    const QString copy =
        w.place("stick") + QLatin1Char('/') + QDir(w.place("stick")).entryList({QStringLiteral("shop-*")}).front();
    w.choose("Choose the mirror's folder…", w.place("weekly"));
    w.mirrorStands("holds every seal of the logbook");
    const fs::path mirror = w.session().mirror()->file;
    w.click("Stop the mirror");
    w.done();
    QSignalSpy refused(&w.session(), &Session::refused);
    {
        // The copy is made, and the mirror beside it is waited for.
        const Busy busy(mirror);
        w.session().keepCopies(w.place("weekly"));
        until([&] { return w.session().copies() && w.session().copies()->working; }, "a copy is being made");
        w.session().keepCopies({});
        w.session().restore(copy, QString::fromLatin1(kMatteo));
        REQUIRE(refused.size() == 1);
        CHECK(refused[0][0].value<Finding>().code == "restore.copying");
        CHECK(w.session().reader());
    }
    until(
        [&] {
            refused.clear();
            w.session().restore(copy, QString::fromLatin1(kMatteo));
            return refused.isEmpty();
        },
        "no copy goes on any more");
    until([&] { return !w.session().actor() && !w.session().busy(); }, "it is restored");
    CHECK(w.session().isOpen());
}

TEST_CASE("with type of twice the size the logbook's card cuts no word on the small screen, and all of it is reached")
{
    Keeping w;
    applyTheme({false, 2.0, 1.0});
    w.window.resize(1366, 740);
    w.session().keepCopies(w.folder.path() + QStringLiteral("/no such stick"));
    w.weeklySays("One is due, and could not be made.");
    QTest::qWait(200);
    CHECK(w.window.width() == 1366);
    CHECK(w.window.height() == 740);
    auto* card = visible<LogbookCard>(w.window);
    auto* scroll = card->findChild<QScrollArea*>();
    REQUIRE(scroll);
    CHECK(scroll->widget()->width() <= scroll->viewport()->width());
    for (const auto* label : card->findChildren<QLabel*>()) {
        if (!label->isVisible()) continue;
        CAPTURE(label->text().toStdString(), label->width(), label->height());
        CHECK(label->height() >= label->heightForWidth(label->width()));
    }
    int reached = 0;
    w.click("Keep the logbook twice");
    CHECK(card->first()->visibleRegion().boundingRect() == card->first()->rect());
    for (auto* button : card->findChildren<QAbstractButton*>()) {
        if (!button->isVisible()) continue;
        CAPTURE(button->text().toStdString(), button->width(), button->height());
        CHECK(button->height() >= button->heightForWidth(button->width()) - 1);
        if (!button->isEnabled()) continue;
        // By Tab it comes into sight by itself.
        for (int i = 0; i < 60 && w.window.focusWidget() != button; ++i)
            QTest::keyClick(w.window.focusWidget(), Qt::Key_Tab);
        REQUIRE(w.window.focusWidget() == button);
        CHECK(button->visibleRegion().boundingRect() == button->rect());
        ++reached;
    }
    CHECK(reached >= 5);
    applyTheme({});
}
