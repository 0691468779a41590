// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QDir>
#include <QFile>

#include "app/pages/history/history_page.h"
#include "app/pages/run/run_page.h"
#include "app/seams/kept_settings.h"
#include "app/widgets/drawn.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/pages/signed_run.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using shop::until;

namespace {

/// Answers what comes well until this step is next, as somebody who does everything right.
void goOnTo(Session& session, const std::string& wanted)
{
    const auto perform = [&](const run::Command& command) {
        const auto before = session.run()->events().size();
        session.perform(command);
        until([&] { return session.run()->events().size() > before && !session.busy(); }, "it is on disk");
    };
    while (session.run()->next() && session.run()->next()->value != wanted) {
        const procedure::Step next = *session.run()->plan().find(*session.run()->next());
        const auto closed = run::closedBecause(*session.run(), next.id);
        if (closed && closed->code == "gate.stop_held")
            while (!session.run()->heldStops().empty())
                perform(run::GiveUpStop{session.run()->heldStops().front().holder});
        run::Answer answer = walk::rightAnswer(*session.run(), next);
        if (next.kind == procedure::StepKind::Hold) answer.entered = session.actor()->name();
        perform(answer);
    }
    REQUIRE(session.run()->next());
}

/// The first reading of the unwind's setting; "" = the procedure has none.
std::string brakeStep(const run::Run& run)
{
    for (const procedure::Step& step : run.plan().steps)
        if (step.kind == procedure::StepKind::Reading && step.target == "tension.unwind.setting") return step.id.value;
    return {};
}

}  // namespace

TEST_CASE("the pictures of the front page are the window as it is: where a run begins, a reading, and the history")
{
    // TAUTWEB_PICTURES names a folder to keep them in; packaging/screenshots.sh does.
    QTemporaryDir nowhere;
    const QString kept = qEnvironmentVariable("TAUTWEB_PICTURES");
    const QDir folder(kept.isEmpty() ? nowhere.path() : kept);
    QTemporaryDir shop;
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    const Session::Options options = shop::signedRun(shop, (*resources / "demo" / "answers" / "clean.toml").string());
    keptSettings().setValue(QStringLiteral("shown_round"), true);  // as whoever knows the program sees it
    MainWindow window(options);
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 768);
    window.show();
    window.activateWindow();
    Session& session = *window.session();
    const auto shoot = [&](const char* name) {
        QTest::qWait(300);  // what is put off while somebody types, and what moves, has come to rest
        REQUIRE(window.grab().save(folder.filePath(QString::fromLatin1(name))));
    };
    until([&] { return session.isOpen() && !session.busy(); }, "the logbook is open");
    shop::signIn(session, "p-3");
    auto* press = shop::called<QComboBox>(window, "Press");
    REQUIRE(press);
    press->setCurrentIndex(press->findText(QStringLiteral("north"), Qt::MatchStartsWith));
    auto* job = shop::called<QComboBox>(window, "Job");
    job->setCurrentIndex(job->findText(QStringLiteral("J-2101"), Qt::MatchStartsWith));
    QTest::qWait(300);
    auto* earlier = window.findChild<QPushButton*>(QStringLiteral("earlier"));
    REQUIRE(earlier);
    CHECK(earlier->isVisible());
    shoot("start.png");

    shop::begin(session);
    const std::string step = brakeStep(*session.run());
    REQUIRE_FALSE(step.empty());
    goOnTo(session, step);
    QLineEdit* field = nullptr;
    for (auto* one : window.findChild<RunPage*>()->findChildren<QLineEdit*>())
        if (one->isVisible() && one->property("role") == QStringLiteral("number")) field = one;
    REQUIRE(field);
    const Quantity* aim = session.run()->targets().find("tension.unwind.setting")->quantity();
    REQUIRE(aim);
    constexpr double kBar = 1e5, kBeside = 0.02;
    QTest::keyClicks(field, QStringLiteral("%1 bar").arg(aim->si() / kBar + kBeside, 0, 'f', 2));
    auto* bar = window.findChild<RunPage*>()->findChild<LimitBarWidget*>();
    REQUIRE(bar);
    until([&] { return !bar->bar().word.isEmpty(); }, "the reading is judged");
    CHECK(bar->bar().judgement.verdict == verdict::Verdict::Inside);
    shoot("run.png");

    QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
    auto* history = window.findChild<HistoryPage*>();
    REQUIRE(history->isVisible());
    const auto runs = session.reader()->runs({}, {});
    REQUIRE(runs);
    for (const records::RunRow& row : runs->rows)
        if (row.state == "completed") history->showRun(QString::fromStdString(row.run));
    auto* print = shop::called<QPushButton>(window, "Print");
    REQUIRE(print);
    CHECK(print->isEnabled());  // its sheet is there
    shoot("history.png");

    QFile front(QStringLiteral(TAUTWEB_SOURCE_DIR "/README.md"));
    REQUIRE(front.open(QIODevice::ReadOnly));
    const QByteArray text = front.readAll();
    for (const char* name : {"start.png", "run.png", "history.png", "sheet.png"}) {
        INFO(name);
        CHECK(text.contains(QByteArray("](packaging/pictures/") + name));
        CHECK(QFile::exists(QStringLiteral(TAUTWEB_SOURCE_DIR "/packaging/pictures/") + QString::fromLatin1(name)));
    }
}
