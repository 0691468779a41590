// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "app/sessions/session.h"
#include "app/widgets/theme.h"

namespace taut::app::shop {

inline constexpr int kPatience = 60000;

/// Turns the event loop until something holds; fails the test when it never does.
inline void until(const std::function<bool()>& holds, const char* what)
{
    INFO("waiting until " << what);
    REQUIRE(QTest::qWaitFor(holds, kPatience));
}

/// Until a page has done what it put off while somebody types, however slow the machine is.
inline void settled(const QObject& page)
{
    QTest::qWait(20);
    until(
        [&] {
            const auto timers = page.findChildren<QTimer*>();
            return std::none_of(timers.begin(), timers.end(), [](const QTimer* t) { return t->isActive(); });
        },
        "nothing is put off");
    QTest::qWait(20);
}

/// Where a session of the demo shop is to live.
inline Session::Options optionsIn(const QTemporaryDir& folder, int syncMs = 0)
{
    Session::Options options;
    options.logbook = std::filesystem::path(folder.path().toStdString()) / "shop.logbook";
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    options.resources = *resources;
    options.loadDemo = true;
    options.syncDelayMs = syncMs;
    return options;
}

/// The PIN of one of the demo shop's people.
inline QString pinOf(const Session& session, const std::string& id)
{
    const auto people = demoPeople(session.options().resources);
    REQUIRE(people);
    for (const DemoPerson& p : *people)
        if (p.id.value == id) return QString::fromStdString(p.chosen.pin);
    FAIL("nobody is " << id);
    return {};
}

/// What this person of the demo signs with.
inline QString passphraseOf(const Session& session, const std::string& id)
{
    const auto people = demoPeople(session.options().resources);
    REQUIRE(people);
    for (const DemoPerson& p : *people)
        if (p.id.value == id) return QString::fromStdString(p.chosen.passphrase);
    FAIL("nobody is " << id);
    return {};
}

inline void open(Session& session)
{
    session.open();
    until([&] { return session.isOpen() && !session.busy(); }, "the logbook is open");
}

inline void signIn(Session& session, const std::string& id)
{
    session.signIn(QString::fromStdString(id), pinOf(session, id));
    until([&] { return session.actor() && session.actor()->id().value == id && !session.busy(); }, "signed in");
}

inline run::Source newest(const Session& session, const char* what, const std::string& id)
{
    for (const logbook::Definition& d : session.definitions(what))
        if (d.source.id == id) return d.source;
    FAIL("no " << what << " " << id);
    return {};
}

/// What a full set-up of the north press begins from.
inline logbook::OpenRun::Beginning quinceJelly(const Session& session)
{
    logbook::OpenRun::Beginning b;
    b.sources.press = newest(session, "press", "north");
    b.sources.job = newest(session, "job", "J-2101");
    b.sources.substrate = newest(session, "substrate", "paper-label-80");
    b.sources.procedure = newest(session, "procedure", "cold_start");
    for (const InputFile& roll : shopFiles(session.options().resources, "roll"))
        if (roll.id == "R0041") b.sources.roll = run::sourceOf(roll.id, 0, roll.text);
    return b;
}

inline void begin(Session& session)
{
    session.begin(quinceJelly(session));
    until([&] { return session.run() != nullptr && !session.busy(); }, "the run has begun");
}

/// The visible child of this class, by name if one is given; nullptr when there is none.
template <class W>
W* visible(const QWidget& page, const char* name = nullptr)
{
    for (W* w : name ? page.findChildren<W*>(QString::fromLatin1(name)) : page.findChildren<W*>())
        if (w->isVisible()) return w;
    return nullptr;
}

/// The visible child that assistive technology knows by this name.
template <class W>
W* called(const QWidget& page, const char* name)
{
    for (W* w : page.findChildren<W*>())
        if (w->isVisible() && w->accessibleName() == QString::fromUtf8(name)) return w;
    return nullptr;
}

}  // namespace taut::app::shop
