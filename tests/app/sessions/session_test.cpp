// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "app/sessions/session.h"
#include "core/units/plain.h"
#include "tests/core/base/tiny_disk.h"

using namespace taut;
using app::Session;

namespace {

Session::Options optionsIn(const QTemporaryDir& folder, int syncDelayMs = 0)
{
    Session::Options options;
    options.logbook = std::filesystem::path(folder.path().toStdString()) / "shop.logbook";
    const auto resources = app::resourcesFolder();
    REQUIRE(resources);
    options.resources = *resources;
    options.loadDemo = true;
    options.syncDelayMs = syncDelayMs;
    return options;
}

void openDemo(Session& session)
{
    QSignalSpy opened(&session, &Session::opened);
    session.open();
    REQUIRE(opened.wait(20000));
    REQUIRE(session.isOpen());
}

void signIn(Session& session, const char* id)
{
    const auto people = app::demoPeople(session.options().resources);
    REQUIRE(people);
    for (const app::DemoPerson& p : *people) {
        if (p.id.value != id) continue;
        QSignalSpy changed(&session, &Session::actorChanged);
        session.signIn(QString::fromStdString(p.id.value), QString::fromStdString(p.chosen.pin));
        REQUIRE(changed.wait(20000));
    }
    REQUIRE(session.actor());
}

run::Source newest(const Session& session, const char* what, const std::string& id)
{
    for (const logbook::Definition& d : session.definitions(what))
        if (d.source.id == id) return d.source;
    FAIL("no " << what << " " << id);
    return {};
}

logbook::OpenRun::Beginning quinceJelly(const Session& session)
{
    logbook::OpenRun::Beginning beginning;
    beginning.sources.press = newest(session, "press", "north");
    beginning.sources.job = newest(session, "job", "J-2101");
    beginning.sources.substrate = newest(session, "substrate", "paper-label-80");
    beginning.sources.procedure = newest(session, "procedure", "cold_start");
    for (const app::InputFile& roll : app::shopFiles(session.options().resources, "roll"))
        if (roll.id == "R0041") beginning.sources.roll = run::sourceOf(roll.id, 0, roll.text);
    return beginning;
}

}  // namespace

TEST_CASE("a session opens the demo shop, signs in and begins a run")
{
    QTemporaryDir folder;
    Session session(optionsIn(folder));
    openDemo(session);
    CHECK(session.reader() != nullptr);
    CHECK(session.definitions("press").size() == 2);
    CHECK(session.definitions("job").size() == 4);
    CHECK_FALSE(session.actor());

    // Nobody signed in: refused with a sentence, nothing begun.
    QSignalSpy refused(&session, &Session::refused);
    session.begin(quinceJelly(session));
    REQUIRE(refused.wait(20000));
    CHECK(session.run() == nullptr);

    signIn(session, "p-2");
    QSignalSpy changed(&session, &Session::runChanged);
    session.begin(quinceJelly(session));
    REQUIRE(changed.wait(20000));
    REQUIRE(session.run() != nullptr);
    CHECK(session.openRuns().size() == 1);
    CHECK(session.run()->operatorId() == "p-2");
    CHECK(session.run()->openSteps().size() > 50);
}

TEST_CASE("a wrong PIN is refused and signs nobody in")
{
    QTemporaryDir folder;
    Session session(optionsIn(folder));
    openDemo(session);
    QSignalSpy refused(&session, &Session::refused);
    session.signIn(QStringLiteral("p-2"), QStringLiteral("0000"));
    REQUIRE(refused.wait(20000));
    CHECK_FALSE(session.actor());
}

TEST_CASE(
    "with a sync that takes 400 ms the run is not shown changed before the sync returned, and the window does not wait")
{
    QTemporaryDir folder;
    {
        Session filling(optionsIn(folder));
        openDemo(filling);
    }
    Session session(optionsIn(folder, 400));
    openDemo(session);
    signIn(session, "p-2");
    QSignalSpy changed(&session, &Session::runChanged);
    QElapsedTimer clock;
    clock.start();
    session.begin(quinceJelly(session));
    CHECK(clock.elapsed() < 300);  // the call only posts
    CHECK(session.busy());
    CHECK(session.run() == nullptr);
    while (changed.isEmpty() && clock.elapsed() < 20000) {
        CHECK(session.run() == nullptr);
        QTest::qWait(20);
    }
    CHECK(clock.elapsed() >= 400);
    REQUIRE(session.run() != nullptr);
    CHECK_FALSE(session.busy());

    const std::size_t events = session.run()->events().size();
    const auto next = session.run()->next();
    REQUIRE(next);
    changed.clear();
    clock.restart();
    session.perform(run::Note{*next, "seen"});
    while (changed.isEmpty() && clock.elapsed() < 20000) {
        CHECK(session.run()->events().size() == events);
        QTest::qWait(20);
    }
    CHECK(clock.elapsed() >= 400);
    CHECK(session.run()->events().size() == events + 1);
}

TEST_CASE("on a disk that runs full the window is told so in a sentence, keeps what is on disk, and goes on with room")
{
    taut::test::TinyDisk disk(16U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    QTemporaryDir unused;
    Session::Options options = optionsIn(unused);
    options.logbook = disk / "shop.logbook";
    Session session(options);
    openDemo(session);
    signIn(session, "p-2");
    QSignalSpy changed(&session, &Session::runChanged), refused(&session, &Session::refused);
    session.begin(quinceJelly(session));
    REQUIRE(changed.wait(20000));
    disk.fill(64U << 10U);
    const run::Note note{*session.run()->next(), std::string(3000, 'x')};
    std::size_t events = session.run()->events().size();
    while (refused.isEmpty() && events < 200) {
        session.perform(note);
        QTRY_VERIFY_WITH_TIMEOUT(!session.busy(), 20000);
        if (refused.isEmpty()) ++events;
    }
    REQUIRE(refused.size() == 1);
    const auto finding = refused[0][0].value<Finding>();
    CHECK(finding.code == "logbook.disk_full");
    CHECK(sentence(finding).find("do the last thing again") != std::string::npos);
    CHECK(session.run()->events().size() == events);
    disk.empty();
    session.perform(note);
    QTRY_VERIFY_WITH_TIMEOUT(!session.busy(), 20000);
    CHECK(refused.size() == 1);
    CHECK(session.run()->events().size() == events + 1);
}

TEST_CASE("a run that the program left in the middle is there again, and must be made safe first")
{
    QTemporaryDir folder;
    QString id;
    {
        Session session(optionsIn(folder));
        openDemo(session);
        signIn(session, "p-2");
        QSignalSpy changed(&session, &Session::runChanged);
        session.begin(quinceJelly(session));
        REQUIRE(changed.wait(20000));
        id = QString::fromStdString(session.run()->id());
    }
    Session session(optionsIn(folder));
    openDemo(session);
    REQUIRE(session.openRuns().size() == 1);
    signIn(session, "p-3");
    QSignalSpy changed(&session, &Session::runChanged);
    session.resume(id);
    REQUIRE(changed.wait(20000));
    CHECK(session.run()->phase() == run::Phase::Interrupted);
    QSignalSpy refused(&session, &Session::refused);
    session.perform(run::Resume{{}, false});
    REQUIRE(refused.wait(20000));
    CHECK(session.run()->phase() == run::Phase::Interrupted);
}

TEST_CASE("a press withdrawn from use closes its run, and only another supervisor gives it back")
{
    QTemporaryDir folder;
    Session session(optionsIn(folder));
    openDemo(session);
    signIn(session, "p-2");
    QSignalSpy changed(&session, &Session::runChanged);
    session.begin(quinceJelly(session));
    REQUIRE(changed.wait(20000));
    QSignalSpy withdrawn(&session, &Session::withdrawalsChanged);
    session.withdraw(QStringLiteral("north"), QStringLiteral("Guard at the infeed does not close"));
    REQUIRE(withdrawn.wait(20000));
    CHECK(session.run()->phase() == run::Phase::Withdrawn);
    CHECK(session.withdrawals().size() == 1);
    QSignalSpy refused(&session, &Session::refused);
    session.giveBack(QStringLiteral("north"), QStringLiteral("Bent back"));
    REQUIRE(refused.wait(20000));
    CHECK(session.withdrawals().size() == 1);
}

TEST_CASE("a newer logbook is taken over for reading while the window goes on, and comes with what is to be said of it")
{
    QTemporaryDir folder;
    const Session::Options options = optionsIn(folder);
    {
        Session filling(options);
        openDemo(filling);
    }
    // SQLite's file format, 1.3: the number of the layout is the user version, bytes 60 to 63 of the file.
    std::fstream(options.logbook, std::ios::in | std::ios::out | std::ios::binary).seekp(63).put(99);
    Session session(options);
    QSignalSpy refused(&session, &Session::refused), read(&session, &Session::openedToRead);
    session.open();
    REQUIRE(refused.wait(20000));
    CHECK(refused[0][0].value<Finding>().code == "logbook.newer_schema");
    session.openToRead();
    CHECK(session.busy());  // it was only asked for
    CHECK(session.reader() == nullptr);
    REQUIRE(read.wait(20000));
    CHECK(session.onlyReads());
    REQUIRE(session.reader());
    CHECK(session.reader()->anchor()->count > 5);
    REQUIRE(session.notes().size() == 1);
    CHECK(sentence(session.notes().front()).find("as far as this version understands it") != std::string::npos);
    // That it cannot be opened after all changes nothing of it.
    refused.clear();
    session.open();
    REQUIRE(refused.wait(20000));
    CHECK(session.reader());
    CHECK(session.notes().size() == 1);
}

TEST_CASE("what was asked for to be read does not come when another logbook has been chosen meanwhile")
{
    QTemporaryDir folder;
    const Session::Options options = optionsIn(folder);
    {
        Session filling(options);
        openDemo(filling);
    }
    Session session(options);
    QSignalSpy refused(&session, &Session::refused), read(&session, &Session::openedToRead);
    session.openToRead();
    const std::filesystem::path letter = options.logbook.parent_path() / "letter.txt";
    std::ofstream(letter) << "Dear printer, this is no logbook.";
    session.openAt(letter);
    REQUIRE(refused.wait(20000));
    QTRY_VERIFY_WITH_TIMEOUT(!session.busy(), 20000);
    CHECK(read.isEmpty());
    CHECK_FALSE(session.onlyReads());
    CHECK(session.reader() == nullptr);
}
