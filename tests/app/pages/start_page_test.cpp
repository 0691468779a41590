// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <tuple>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>

#include "app/pages/start/start_page.h"
#include "app/pages/start/target_list.h"
#include "app/widgets/row_list.h"
#include "app/widgets/why_panel.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// The start page on a logbook of its own, nobody signed in.
struct Start {
    QTemporaryDir folder;
    Session session;
    StartPage page;

    explicit Start(double scale = 1.0, QSize size = {1342, 640}) : session(themed(folder, scale)), page(&session)
    {
        open(session);
        page.resize(size);
        page.show();
        settle();
    }
    static Session::Options themed(const QTemporaryDir& folder, double scale)
    {
        applyTheme({false, scale, 1.0});
        return optionsIn(folder);
    }
    void settle() const { settled(page); }
    [[nodiscard]] QComboBox* list(const char* name) const
    {
        auto* box = called<QComboBox>(page, name);
        INFO(name);
        REQUIRE(box);
        return box;
    }
    void choose(const char* name, const char* id)
    {
        QComboBox* box = list(name);
        INFO(name << " " << id);
        REQUIRE(box->findData(QString::fromLatin1(id)) >= 0);
        box->setCurrentIndex(box->findData(QString::fromLatin1(id)));
        settle();
    }
    void say(const char* button)
    {
        auto* b = called<QAbstractButton>(page, button);
        INFO(button);
        REQUIRE(b);
        QTest::mouseClick(b, Qt::LeftButton);
        settle();
    }
    [[nodiscard]] bool mayBegin() const { return called<QAbstractButton>(page, "Begin the run")->isEnabled(); }
    [[nodiscard]] QString reason() const
    {
        const auto* label = called<QLabel>(page, "Why a run cannot begin yet");
        return label ? label->text() : QString();
    }
    [[nodiscard]] QString troubles() const
    {
        const auto* label = called<QLabel>(page, "What does not fit");
        return label ? label->text() : QString();
    }
};

}  // namespace

TEST_CASE("a run cannot begin before somebody signed in, looked into the press and may do it, and the page says why")
{
    Start s;
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().startsWith(QStringLiteral("Sign in first")));
    signIn(s.session, "p-2");
    s.settle();
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().contains(QStringLiteral("whether a web is in it")));
    s.say("A web is in the press");
    CHECK(s.reason().isEmpty());
    CHECK(s.mayBegin());
    s.session.signOut();
    until([&] { return !s.session.actor() && !s.session.busy(); }, "signed out");
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().startsWith(QStringLiteral("Sign in first")));
}

TEST_CASE("beginning makes a run of what was chosen, and of nothing else")
{
    Start s;
    signIn(s.session, "p-2");
    s.choose("Press", "south");
    s.choose("Job", "J-2103");
    s.choose("Roll", "R0048");
    s.say("The press is empty");
    CAPTURE(s.reason().toStdString(), s.troubles().toStdString());
    REQUIRE(s.mayBegin());
    s.say("Begin the run");
    until([&] { return s.session.run() != nullptr; }, "the run has begun");
    const run::Run& run = *s.session.run();
    CHECK(run.sources().press.id == "south");
    CHECK(run.sources().job.id == "J-2103");
    CHECK(run.sources().roll.id == "R0048");
    CHECK_FALSE(run.began().webInPress);
    CHECK(run.operatorId() == "p-2");
}

TEST_CASE("a press that cannot do the job says so before anybody lifts a roll")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    s.choose("Press", "south");
    s.choose("Job", "J-2104");
    s.choose("Roll", "R0049");
    CHECK_FALSE(s.mayBegin());
    CHECK(s.troubles().contains(QStringLiteral("sensor does not see it")));
    s.choose("Job", "J-2103");
    s.choose("Roll", "R0048");
    CAPTURE(s.troubles().toStdString());
    CHECK(s.mayBegin());
}

TEST_CASE("choosing a job chooses its substrate and a roll of it, and others may still be chosen")
{
    Start s;
    s.choose("Job", "J-2104");
    const QString own = s.list("Substrate")->currentData().toString();
    CHECK(own == QStringLiteral("pet-36"));
    CHECK(s.list("Roll")->currentText().endsWith(QStringLiteral("pet-36")));
    s.choose("Roll", "R0041");
    CHECK(s.list("Roll")->currentText().endsWith(QStringLiteral("paper-label-80")));
    s.choose("Substrate", "paper-label-80");
    CHECK(s.list("Substrate")->currentData().toString() == QStringLiteral("paper-label-80"));
}

TEST_CASE("what was seen at the press before one run is not taken for the next")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    REQUIRE(s.mayBegin());
    begin(s.session);
    s.session.finish(run::Abandon{"the job was called off"}, passphraseOf(s.session, "p-2"));
    until([&] { return s.session.run() == nullptr && !s.session.busy(); }, "abandoned");
    s.settle();
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().contains(QStringLiteral("say whether a web is in it")));
}

// The four rolls of the demo shop that do not fit, each for its own reason, said before anybody lifts one.
TEST_CASE("a roll that cannot work is named before a run can begin")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    REQUIRE(s.mayBegin());
    int stopped = 0;
    for (int i = 0; i < s.list("Roll")->count(); ++i) {
        s.list("Roll")->setCurrentIndex(i);
        s.settle();
        CAPTURE(s.list("Roll")->currentText().toStdString(), s.troubles().toStdString(), s.reason().toStdString());
        CHECK(s.mayBegin() == s.reason().isEmpty());
        if (s.mayBegin()) continue;
        ++stopped;
        CHECK_FALSE(s.troubles().isEmpty());
        CHECK(s.reason().contains(QStringLiteral("cannot work")));
    }
    CHECK(stopped >= 1);
}

TEST_CASE("a diameter that cannot be read holds the run, with a sentence, and stays as typed")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    auto* field = called<QLineEdit>(s.page, "Its diameter, if measured");
    REQUIRE(field);
    for (const char* wrong : {"20 psi", "twelve", "1.234,5 mm", "480"}) {
        field->setText(QString::fromLatin1(wrong));
        s.settle();
        CAPTURE(wrong, s.reason().toStdString());
        CHECK_FALSE(s.mayBegin());
        CHECK_FALSE(s.reason().isEmpty());
        CHECK(field->text() == QString::fromLatin1(wrong));
    }
    field->setText(QStringLiteral("480 mm"));
    s.settle();
    CHECK(s.mayBegin());
}

TEST_CASE("a measured diameter changes the targets at once")
{
    Start s;
    const auto wraps = [&] {
        const auto* list = visible<RowList>(s.page);
        for (int i = 0; i < list->count(); ++i)
            if (list->item(i)->text().startsWith(QStringLiteral("Wraps on the roll"))) return list->item(i)->text();
        return QString();
    };
    const QString before = wraps();
    CHECK_FALSE(before.isEmpty());
    called<QLineEdit>(s.page, "Its diameter, if measured")->setText(QStringLiteral("300 mm"));
    s.settle();
    CHECK_FALSE(wraps().isEmpty());
    CHECK(wraps() != before);
}

TEST_CASE("every target of the list says why, and the first one at once")
{
    Start s;
    auto* list = visible<RowList>(s.page);
    const auto* why = visible<WhyPanel>(s.page);
    REQUIRE(list);
    REQUIRE(why);
    const auto lines = [&] {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QApplication::processEvents();
        QStringList all;
        for (const auto* label : why->findChildren<QLabel*>())
            if (label->isVisible()) all << label->text();
        return all;
    };
    CHECK_FALSE(list->chosen().isEmpty());
    CHECK(lines().size() >= 2);
    int targets = 0;
    for (int i = 0; i < list->count(); ++i) {
        if (!(list->item(i)->flags() & Qt::ItemIsSelectable)) continue;
        list->setCurrentRow(i);
        ++targets;
        const QStringList now = lines();
        CAPTURE(list->item(i)->text().toStdString(), now.join(QLatin1Char('|')).toStdString());
        CHECK(now.size() >= 2);
        CHECK(std::any_of(now.begin(), now.end(),
                          [&](const QString& line) { return list->item(i)->text().startsWith(line); }));
    }
    CHECK(targets > 40);
}

TEST_CASE("a run that goes on from another needs one that was signed on this press")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    CHECK(called<QComboBox>(s.page, "It goes on from") == nullptr);
    s.choose("Kind of run", "next_roll");
    CHECK(called<QComboBox>(s.page, "It goes on from"));
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().contains(QStringLiteral("signed on this press")));
    s.choose("Kind of run", "full");
    CHECK(s.mayBegin());
}

TEST_CASE("a withdrawn press begins no run until another supervisor gives it back with what was put right")
{
    Start s;
    signIn(s.session, "p-2");
    s.say("A web is in the press");
    s.session.withdraw(QStringLiteral("north"), QStringLiteral("The infeed guard does not close"));
    until([&] { return !s.session.withdrawals().empty() && !s.session.busy(); }, "withdrawn");
    s.settle();
    CHECK_FALSE(s.mayBegin());
    CHECK(s.reason().contains(QStringLiteral("withdrawn")));
    CHECK(called<QLineEdit>(s.page, "What was put right") == nullptr);  // an operator does not give back
    signIn(s.session, "p-1");
    s.settle();
    auto* done = called<QLineEdit>(s.page, "What was put right");
    REQUIRE(done);
    // Too little is refused, and what was typed is still there to be gone on with.
    QTest::keyClicks(done, QStringLiteral("hi"));
    QSignalSpy refusals(&s.session, &Session::refused);
    s.say("Give it back to use");
    until([&] { return !refusals.isEmpty() && !s.session.busy(); }, "refused");
    s.settle();
    REQUIRE(called<QLineEdit>(s.page, "What was put right") == done);
    CHECK(done->text() == QStringLiteral("hi"));
    QTest::keyClicks(done, QStringLiteral("nge bent back and tried"));
    s.say("Give it back to use");
    until([&] { return s.session.withdrawals().empty() && !s.session.busy(); }, "given back");
    s.settle();
    CHECK(s.mayBegin());
}

TEST_CASE("an open run stands first and is gone on with by whoever signs in")
{
    Start s;
    signIn(s.session, "p-2");
    begin(s.session);
    s.session.leaveRun();
    until([&] { return s.session.run() == nullptr && !s.session.busy(); }, "left");
    s.settle();
    auto* on = called<QAbstractButton>(s.page, "Go on with it");
    REQUIRE(on);
    REQUIRE(on->isEnabled());
    // Known by its press, its job and whose it is.
    QStringList said;
    for (const auto* label : s.page.findChildren<QLabel*>())
        if (label->isVisible()) said << label->text();
    CHECK(said.join(QLatin1Char('\n'))
              .contains(QStringLiteral("North press, job J-2101: the run of %1 has begun and is not signed")
                            .arg(QString::fromStdString(s.session.actor()->name()))));
    QTest::mouseClick(on, Qt::LeftButton);
    until([&] { return s.session.run() != nullptr; }, "resumed");
}

TEST_CASE("what is set on the press stands before what merely follows, and what cannot work before both")
{
    Start s;
    signIn(s.session, "p-2");
    const auto rows = [&] {
        QStringList all;
        const auto* list = visible<RowList>(s.page);
        for (int i = 0; i < list->count(); ++i) all << list->item(i)->text();
        return all;
    };
    const auto at = [&](const char* begins) {
        const QStringList all = rows();
        for (int i = 0; i < all.size(); ++i)
            if (all[i].startsWith(QLatin1String(begins))) return i;
        FAIL("no row begins with " << begins);
        return -1;
    };
    CHECK(at("To be set on the press") == 0);
    const int rest = at("Roll");
    for (const char* set :
         {"Lift pressure", "Roll centre from the frame", "Unwind: set BRAKE to", "Rewind: set WIND to",
          "Operator-side sensor", "Drive-side sensor", "Diameter at which the automatic stop acts"}) {
        CAPTURE(set);
        CHECK(at(set) > 0);
        CHECK(at(set) < at("Caliper as wound"));
    }
    CHECK(rest > 0);
    QStringList once = rows();
    CHECK(once.removeDuplicates() == 0);
    // Too heavy for the lift: what cannot be met leads the list.
    s.choose("Roll", "R0042");
    CHECK(at("What cannot work") == 0);
    CHECK(at("To be set on the press") > 1);
}

TEST_CASE("every kind of run is read whole on the promised screens, and what tries other values is in sight")
{
    for (const QSize size : {QSize(1342, 640), QSize(1896, 950)}) {
        Start s(1.0, size);
        signIn(s.session, "p-2");
        begin(s.session);
        s.session.leaveRun();
        until([&] { return s.session.run() == nullptr && !s.session.busy(); }, "left");
        s.say("A web is in the press");
        QComboBox* kinds = s.list("Kind of run");
        for (int i = 0; i < kinds->count(); ++i) {
            CAPTURE(size.width(), kinds->itemText(i).toStdString());
            // Room for the words beside the arrow.
            constexpr int kArrow = 45;
            CHECK(kinds->fontMetrics().horizontalAdvance(kinds->itemText(i)) + kArrow <= kinds->width());
        }
        for (const char* name : {"Another roll, from a file", "Try other values"}) {
            auto* button = called<QAbstractButton>(s.page, name);
            REQUIRE(button);
            CAPTURE(size.width(), name);
            CHECK(button->visibleRegion().boundingRect().height() == button->height());
        }
    }
}

TEST_CASE("on the promised screens the start page cuts no word, and every choice that is asked for is in sight")
{
    for (const auto& [scale, size] : {std::tuple(1.0, QSize(1342, 640)), {1.0, QSize(1896, 950)}}) {
        Start s(scale, size);
        CAPTURE(size.width());
        CHECK(s.page.minimumSizeHint().width() <= size.width());
        CHECK(s.page.minimumSizeHint().height() <= size.height());
        for (const char* name : {"A web is in the press", "The press is empty"}) {
            auto* button = called<QAbstractButton>(s.page, name);
            REQUIRE(button);
            CHECK(button->visibleRegion().boundingRect().height() >= 44);
        }
        for (const QScrollBar* bar : s.page.findChildren<QScrollBar*>())
            if (bar->isVisible()) CHECK(bar->orientation() == Qt::Vertical);
    }
    Start large(2.0, {1342, 640});
    CHECK(large.page.minimumSizeHint().width() <= 1342);
    CHECK(large.page.minimumSizeHint().height() <= 640);
    for (const char* name : {"A web is in the press", "The press is empty"})
        CHECK(called<QAbstractButton>(large.page, name)->visibleRegion().boundingRect().height() >= 44);
    applyTheme({});
}

TEST_CASE("in a logbook that knows nobody the page says where people come from")
{
    QTemporaryDir folder;
    Session::Options options = Start::themed(folder, 1.0);
    options.loadDemo = false;
    options.begin = true;
    Session session(options);
    StartPage page(&session);
    open(session);
    page.show();
    settled(page);
    const auto* label = called<QLabel>(page, "Why a run cannot begin yet");
    REQUIRE(label);
    CHECK(label->text().contains(QStringLiteral("knows nobody yet")));
}

TEST_CASE("what does not fit is listed worst first, and each thing once")
{
    applyTheme({});
    const Finding thought{"x.warn", Severity::Warn, "job.speed", Text("Slower is safer."), Text("Run slower.")};
    const Finding stop = refuse("x.stop", "roll.R1", Text("The lift cannot hold it."), Text("Take another roll."));
    targets::Targets t;
    t.findings = {thought, Finding{"x.note", Severity::Note, "", Text("By the way."), {}}};
    t.all = {{"lift.load", targets::Shape::Quantity, Text("Lift load"), targets::Cannot{stop}},
             {"lift.pressure", targets::Shape::Quantity, Text("Lift pressure"), targets::Cannot{stop}},
             {"tension.unwind.slip", targets::Shape::Quantity, Text("Slip"), targets::Cannot{thought}}};
    TargetList list;
    list.show(t, UnitSystem::Metric);
    CHECK(list.troubles() ==
          QStringLiteral("The lift cannot hold it. Take another roll.\nSlower is safer. Run slower."));
}

TEST_CASE("what a value was made of is called by the names that its list uses")
{
    Start s;
    s.choose("Press", "south");
    s.choose("Job", "J-2103");
    s.choose("Roll", "R0048");
    auto* list = s.page.findChild<TargetList*>();
    REQUIRE(list);
    auto* why = list->findChild<WhyPanel*>();
    REQUIRE(list->findChild<RowList*>()->choose(QStringLiteral("tension.rewind_1.total")));
    s.settle();
    QString said;
    for (const auto* label : why->findChildren<QLabel*>())
        if (label->isVisibleTo(why)) said += label->text() + QLatin1Char('\n');
    INFO(said.toStdString());
    CHECK_FALSE(said.contains(QStringLiteral("rewind_1")));
    CHECK_FALSE(said.contains(QStringLiteral("the target ")));
}
