// SPDX-License-Identifier: GPL-3.0-or-later
// The page on a real session: files, threads and a sync that takes its time.
#include <catch2/catch.hpp>

#include <filesystem>
#include <memory>

#include <QAbstractButton>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "app/widgets/controls.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/theme.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;

namespace {

constexpr int kSyncMs = 400;
constexpr int kPatience = 30000;

struct Shop {
    QTemporaryDir folder;
    std::unique_ptr<Session> session;
    QString pin, passphrase;

    explicit Shop(int syncMs)
    {
        applyTheme({});
        const Session::Options options = shop::optionsIn(folder, syncMs);
        session = std::make_unique<Session>(options);
        QSignalSpy opened(session.get(), &Session::opened);
        session->open();
        REQUIRE(opened.wait(kPatience * 4));
        const auto people = demoPeople(options.resources);
        REQUIRE(people);
        for (const DemoPerson& p : *people) {
            if (p.role != people::Role::Operator) continue;
            QSignalSpy changed(session.get(), &Session::actorChanged);
            pin = QString::fromStdString(p.chosen.pin);
            passphrase = QString::fromStdString(p.chosen.passphrase);
            session->signIn(QString::fromStdString(p.id.value), pin);
            REQUIRE(changed.wait(kPatience));
            break;
        }
        REQUIRE(session->actor());
    }
    run::Source newest(const char* what, const std::string& id) const
    {
        for (const logbook::Definition& d : session->definitions(what))
            if (d.source.id == id) return d.source;
        FAIL("no " << what << " " << id);
        return {};
    }
    void begin()
    {
        logbook::OpenRun::Beginning b;
        b.sources.press = newest("press", "north");
        b.sources.job = newest("job", "J-2101");
        b.sources.substrate = newest("substrate", "paper-label-80");
        b.sources.procedure = newest("procedure", "cold_start");
        for (const InputFile& roll : shopFiles(session->options().resources, "roll"))
            if (roll.id == "R0041") b.sources.roll = run::sourceOf(roll.id, 0, roll.text);
        QSignalSpy changed(session.get(), &Session::runChanged);
        session->begin(b);
        REQUIRE(changed.wait(kPatience));
        REQUIRE(session->run());
    }
};

template <class W>
W* visible(QWidget& page, const char* name)
{
    for (W* w : page.findChildren<W*>(QString::fromLatin1(name)))
        if (w->isVisible()) return w;
    return nullptr;
}

}  // namespace

TEST_CASE("with a sync that takes 400 ms the next step is not shown before it returned")
{
    Shop shop(kSyncMs);
    RunPage page(shop.session.get());
    page.resize(1366, 690);
    page.show();
    shop.begin();
    const procedure::StepId first = page.view()->shownStep();
    REQUIRE(first == *shop.session->run()->next());
    const std::size_t events = shop.session->run()->events().size();

    QSignalSpy changed(shop.session.get(), &Session::runChanged);
    QElapsedTimer clock;
    clock.start();
    auto* answer = visible<QAbstractButton>(page, "answer");
    REQUIRE(answer);
    QTest::mouseClick(answer, Qt::LeftButton);
    QTest::qWait(kSyncMs / 2);
    CHECK(shop.session->busy());
    CHECK(page.view()->shownStep() == first);
    CHECK(visible<QLabel>(page, "writing"));
    CHECK_FALSE(answer->isEnabled());
    REQUIRE((changed.size() == 1 || changed.wait(kPatience)));
    CHECK(clock.elapsed() >= kSyncMs);
    CHECK(shop.session->run()->events().size() == events + 1);
    CHECK(page.view()->shownStep() != first);
    CHECK(visible<QLabel>(page, "writing") == nullptr);
}

TEST_CASE("a run is abandoned only with the passphrase of the person signed in, not with their PIN")
{
    Shop shop(0);
    RunPage page(shop.session.get());
    page.resize(1366, 690);
    page.show();
    shop.begin();
    QSignalSpy sealed(shop.session.get(), &Session::sealed);
    QSignalSpy refused(shop.session.get(), &Session::refused);
    page.view()->begin(RunAct::Abandon);
    visible<ProseField>(page, "value0")->setText(QStringLiteral("the job was cancelled"));
    visible<QLineEdit>(page, "passphrase")->setText(shop.pin);
    QTest::mouseClick(visible<QAbstractButton>(page, "accept"), Qt::LeftButton);
    REQUIRE(refused.wait(kPatience));
    CHECK(sealed.isEmpty());
    REQUIRE(shop.session->run());
    CHECK(visible<ProseField>(page, "value0")->text() == QStringLiteral("the job was cancelled"));
    CHECK(page.focusWidget() == visible<QLineEdit>(page, "passphrase"));
    visible<QLineEdit>(page, "passphrase")->setText(shop.passphrase);
    QTest::mouseClick(visible<QAbstractButton>(page, "accept"), Qt::LeftButton);
    REQUIRE(sealed.wait(kPatience));
}
