// SPDX-License-Identifier: GPL-3.0-or-later
// How the list of runs is set up: what narrows it, what its lines say, and searches that are kept.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QTimer>

#include "app/pages/history/history_page.h"
#include "app/pages/history/period.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "tests/app/pages/made_desk.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

struct Listed : Desk {
    HistoryPage& page = *desk.runs();
    RowList* list = page.findChild<RowList*>(QStringLiteral("runs"));
    QLabel* count = page.findChild<QLabel*>(QStringLiteral("count"));
    PickList* searches = page.findChild<PickList*>(QStringLiteral("searches"));

    Listed()
    {
        REQUIRE(list);
        REQUIRE(count);
        REQUIRE(searches);
        signIn(session, "p-1");
        until([&] { return !count->text().isEmpty(); }, "the runs are counted");
        page.findChild<QPushButton*>(QStringLiteral("narrow"))->click();
    }
    template <class W>
    W* part(const char* name)
    {
        auto* w = page.findChild<W*>(QString::fromLatin1(name));
        INFO(name);
        REQUIRE(w);
        return w;
    }
    void choose(const char* picks, const QVariant& data)
    {
        auto* box = part<PickList>(picks);
        REQUIRE(box->findData(data) >= 0);
        box->setCurrentIndex(box->findData(data));
    }
    void activate(const QString& name)
    {
        const int at = searches->findText(name);
        REQUIRE(at >= 0);
        searches->setCurrentIndex(at);
        emit searches->activated(at);
    }
    void keep(const QString& name)
    {
        part<QLineEdit>("searchName")->setText(name);
        part<QPushButton>("keepSearch")->click();
    }
    void counted(const QString& said)
    {
        until([&] { return count->text() == said; }, "the list is counted anew");
    }
    /// What is typed narrows a moment later.
    void settleCount(const QString& other)
    {
        until([&] { return count->text() != other; }, "the list is asked again");
    }
};

}  // namespace

TEST_CASE("a search is kept under a name, stands above the list, and is asked again with one choice")
{
    Listed l;
    const QString all = l.count->text();
    CHECK_FALSE(l.searches->isVisible());
    CHECK_FALSE(l.part<QPushButton>("keepSearch")->isEnabled());
    l.choose("ofPress", QStringLiteral("north"));
    l.part<QAbstractButton>("onlyDeviations")->click();
    l.settleCount(all);
    const QString narrowed = l.count->text();
    l.keep(QStringLiteral("  North, what was accepted "));
    CHECK(l.searches->isVisible());
    CHECK(l.searches->currentText() == QStringLiteral("North, what was accepted"));
    CHECK(test::said(l.page).contains(QStringLiteral("Kept on this PC")));

    l.activate(QStringLiteral("Every run again"));
    l.counted(all);
    CHECK(l.part<PickList>("ofPress")->currentData().toString().isEmpty());
    CHECK(l.searches->currentData().toString().isEmpty());
    l.activate(QStringLiteral("North, what was accepted"));
    l.counted(narrowed);
    CHECK(l.part<QAbstractButton>("onlyDeviations")->isChecked());
    // Narrowed by anything else it is not that search any more.
    l.choose("ofPress", QString());
    l.settleCount(narrowed);
    until([&] { return l.searches->currentData().toString().isEmpty(); }, "no search is named");

    SECTION("under the same name the newer one stands")
    {
        l.keep(QStringLiteral("North, what was accepted"));
        CHECK(l.searches->count() == 3);
        l.activate(QStringLiteral("Every run again"));
        l.activate(QStringLiteral("North, what was accepted"));
        CHECK(l.part<PickList>("ofPress")->currentData().toString().isEmpty());
    }
    SECTION("it is forgotten")
    {
        l.part<QLineEdit>("searchName")->setText(QStringLiteral("North, what was accepted"));
        REQUIRE(l.part<QPushButton>("forgetSearch")->isEnabled());
        l.part<QPushButton>("forgetSearch")->click();
        CHECK_FALSE(l.searches->isVisible());
        CHECK_FALSE(l.part<QPushButton>("forgetSearch")->isEnabled());
    }
    SECTION("it is one person's own")
    {
        l.session.signOut();
        until([&] { return !l.session.actor(); }, "nobody is signed in");
        CHECK_FALSE(l.searches->isVisible());
        signIn(l.session, "p-1");
        until([&] { return l.searches->isVisible(); }, "their searches are back");
        CHECK(l.searches->findText(QStringLiteral("North, what was accepted")) > 0);
    }
}

TEST_CASE("words, state, days and people are kept with a search, also an id that this logbook does not have")
{
    Listed l;
    Search search{QStringLiteral("north"),
                  QString::fromLatin1(records::kWantsReview),
                  QStringLiteral("north"),
                  QStringLiteral("J-9999"),
                  QStringLiteral("pe-60"),
                  QStringLiteral("p-2"),
                  {0, true, QStringLiteral("2026-03-02"), QString()},
                  true};
    keepSearch("p-1", {QStringLiteral("All of it"), search});
    keepSearch("p-1", {QStringLiteral("a month"), {{}, {}, {}, {}, {}, {}, {30}, false}});
    const auto kept = keptSearches("p-1");
    REQUIRE(kept.size() == 2);
    CHECK(kept.front().name == QStringLiteral("a month"));
    CHECK(kept.front().search.period == Period{30});
    CHECK(kept.back().name == QStringLiteral("All of it"));
    CHECK(kept.back().search == search);
    CHECK(keptSearches("p-2").empty());
    CHECK(keptSearches("").empty());

    l.session.signOut();
    until([&] { return !l.session.actor(); }, "nobody is signed in");
    signIn(l.session, "p-1");
    until([&] { return l.searches->findText(QStringLiteral("All of it")) > 0; }, "what was kept is offered");
    l.activate(QStringLiteral("All of it"));
    // That job has never run here: nothing is shown, rather than every job.
    l.counted(QStringLiteral("0 runs"));
    CHECK(l.part<PickList>("ofJob")->currentText() == QStringLiteral("J-9999"));
    CHECK(l.part<QLineEdit>("fromDay")->text() == QStringLiteral("2026-03-02"));
}

TEST_CASE("the list goes from one day to another, both of them counted, and says what is no day")
{
    Listed l;
    CHECK_FALSE(l.part<QLineEdit>("fromDay")->isVisible());
    const QString all = l.count->text();
    l.choose("since", -1);
    CHECK(l.part<QLineEdit>("fromDay")->isVisible());
    // The day of the newest run, and of no other run.
    const auto newest = l.session.reader()->runs({}, {});
    REQUIRE(newest);
    const int offset = SystemClock().now().offsetMinutes;
    const std::string day = utcText(newest->rows.front().begunMs + offset * 60000LL).substr(0, 10);
    l.part<QLineEdit>("fromDay")->setText(QString::fromStdString(day));
    l.part<QLineEdit>("toDay")->setText(QString::fromStdString(day));
    l.settleCount(all);
    records::RunQuery query;
    query.sinceMs = *readUtc(day + "T00:00:00.000Z") - offset * 60000LL;
    query.untilMs = *query.sinceMs + 24 * 3600 * 1000LL;
    const auto few = l.session.reader()->count(query, 1000);
    REQUIRE(few);
    REQUIRE(*few > 0);
    CHECK(l.list->count() == static_cast<int>(*few));
    auto* wrong = l.part<QLabel>("wrongDay");
    CHECK_FALSE(wrong->isVisible());

    l.part<QLineEdit>("toDay")->setText(QStringLiteral("2026-02-30"));
    CHECK(wrong->isVisible());
    CHECK(wrong->text().contains(QStringLiteral("2026-02-30 is not a date")));
    l.part<QLineEdit>("toDay")->setText(QStringLiteral("1999-01-01"));
    CHECK(wrong->text().contains(QStringLiteral("The last day is before the first")));
    l.part<QLineEdit>("toDay")->clear();
    CHECK_FALSE(wrong->isVisible());
}

TEST_CASE("a search with a day that is none is not kept, and one that was kept so says that it narrows nothing by it")
{
    Listed l;
    l.choose("since", -1);
    l.part<QLineEdit>("toDay")->setText(QStringLiteral("2026-02-30"));
    l.keep(QStringLiteral("Until the end of February"));
    CHECK(keptSearches("p-1").empty());
    auto* notKept = l.part<QLabel>("notKept");
    CHECK(notKept->isVisible());
    CHECK(notKept->text().contains(QStringLiteral("2026-02-30 is not a date")));
    CHECK(l.part<QLineEdit>("searchName")->text() == QStringLiteral("Until the end of February"));
    l.part<QLineEdit>("toDay")->setText(QStringLiteral("2026-02-28"));
    CHECK_FALSE(notKept->isVisible());
    l.part<QPushButton>("keepSearch")->click();
    REQUIRE(keptSearches("p-1").size() == 1);

    Search bad = keptSearches("p-1").front().search;
    bad.period.to = QStringLiteral("2026-02-30");
    keepSearch("p-1", {QStringLiteral("bad"), bad});
    l.session.signOut();
    until([&] { return !l.session.actor(); }, "nobody is signed in");
    signIn(l.session, "p-1");
    until([&] { return l.searches->findText(QStringLiteral("bad")) > 0; }, "what was kept is offered");
    l.activate(QStringLiteral("bad"));
    CHECK(test::said(l.page).contains(QStringLiteral("2026-02-30 is not a date")));
}

TEST_CASE("each line says what was chosen for it, and so does the list that is saved")
{
    Listed l;
    const auto first = l.session.reader()->runs({}, {});
    REQUIRE(first);
    const records::RunRow row = first->rows.front();
    const auto says = [&](const std::string& what) {
        return l.list->item(0)->text().contains(QString::fromStdString(what));
    };
    CHECK(says(row.operatorName));
    CHECK_FALSE(says(row.customer));
    l.part<QPushButton>("line_customer")->click();
    l.part<QPushButton>("line_ended")->click();
    l.part<QPushButton>("line_operator")->click();
    CHECK(says(row.customer));
    CHECK(says("took " + std::to_string((row.endedMs - row.begunMs) / 60000) + " min"));
    CHECK_FALSE(says(row.operatorName));

    const QString file = l.folder.path() + QStringLiteral("/list.csv");
    QTimer answers;
    QObject::connect(&answers, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        if (auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))) name->setText(file);
        static_cast<QDialog*>(dialog)->accept();
    });
    answers.start(300);
    l.part<QPushButton>("saveList")->click();
    answers.stop();
    QFile saved(file);
    REQUIRE(saved.open(QIODevice::ReadOnly));
    CHECK(saved.readLine().trimmed() == "seq,run,job,roll,state,present,deviations,reviewed_by,customer,begun,ended");

    // Whoever comes next has their own lines, and finds them again.
    l.session.signOut();
    until([&] { return !l.session.actor(); }, "nobody is signed in");
    until([&] { return says(row.operatorName); }, "the usual lines are back");
    signIn(l.session, "p-1");
    until([&] { return says(row.customer); }, "and theirs");
    CHECK_FALSE(l.part<QPushButton>("line_operator")->isChecked());
}
