// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson as it is taught: how much is shown, what is found, what it came to, and the press looked at again.
#include <catch2/catch.hpp>

#include <QListWidget>
#include <QSlider>

#include "app/pages/practice/after_lesson.h"
#include "app/pages/practice/scenario_form.h"
#include "app/pages/run/run_view.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "core/logbook/training.h"
#include "core/practice/scenario_text.h"
#include "core/units/plain.h"
#include "tests/app/practice/practice_support.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

std::filesystem::path practiceFile(const PracticeWindow& w)
{
    return std::filesystem::path(w.folder.path().toStdString()) / "tautweb" / "practice.logbook";
}
/// Waits until nothing is on its way to the practice logbook.
void kept(PracticeWindow& w)
{
    until([&] { return !w.practice().runs()->busy(); }, "the attempt is kept");
}

}  // namespace

TEST_CASE(
    "a lesson that ended in a mess says why and which step guards against it, and is kept in the practice logbook")
{
    PracticeWindow w;
    const auto before = w.session().reader()->anchor();
    w.begin();
    // A guard is left open.
    for (const char* what : {"main_disconnect", "air_supply"}) w.touch(what);
    w.touch("emergency_stop", "stop_unwind", nullptr, "undo");
    w.touch("emergency_reset");
    w.touch("hold_to_run");
    w.wait(1);
    w.click("endLesson");
    auto* after = visible<AfterLesson>(w.window);
    REQUIRE(after);
    const auto& report = after->findChild<ReportPane*>()->report();
    REQUIRE(report);
    CHECK(plain(report->practice) == "PRACTICE");
    CHECK(plain(report->subtitle) == w.session().actor()->name());
    kept(w);
    const auto record = logbook::trainingOf(practiceFile(w), "p-2");
    REQUIRE(record);
    REQUIRE(record->attempts.size() == 1);
    const practice::Attempt& attempt = record->attempts.front().attempt;
    CHECK(attempt.who.id == "p-2");
    CHECK_FALSE(attempt.score.passed());
    CHECK_FALSE(attempt.score.vitalMissed.empty());
    CHECK(attempt.log.size() == 5);
    // Nothing of it is in the shop's logbook.
    const auto now = w.session().reader()->anchor();
    REQUIRE(now);
    CHECK(now->count == before->count);
    CHECK(now->link == before->link);

    // The press as it was, at any time.
    w.click("lookAgain");
    auto* slider = visible<QSlider>(w.window, "replayTime");
    REQUIRE(slider);
    until([&] { return slider->isEnabled(); }, "it is played anew");
    CHECK(w.said().contains(QStringLiteral("the same, to the last figure")));
    auto* marks = visible<RowList>(w.window, "timeLine");
    REQUIRE(marks);
    CHECK(marks->count() >= 5);
    marks->setCurrentRow(marks->count() - 1);
    CHECK(slider->value() > 0);
    QTest::keyClick(slider, Qt::Key_Home);
    CHECK(visible<QLabel>(w.window, "replayClock")->text() == QStringLiteral("0:00:00"));

    w.click("attemptAgain");
    until([&] { return w.practice().lesson() != nullptr; }, "it begins again");
    CHECK(w.practice().lesson()->scenario.id == "quiet_morning");
}

TEST_CASE("what an attempt came to goes from the screen with whose it is")
{
    PracticeWindow w;
    const auto change = [&](const char* to) {
        w.session().signOut();
        until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
        signIn(w.session(), to);
        QTest::qWait(30);
    };
    w.begin();
    w.touch("main_disconnect");
    w.click("endLesson");
    REQUIRE(visible<AfterLesson>(w.window));
    change("p-3");
    CHECK_FALSE(visible<AfterLesson>(w.window));
    CHECK(visible<ChooseLesson>(w.window));
    // Nor is somebody shown what a lesson came to that ended because they came.
    w.begin();
    w.touch("main_disconnect");
    change("p-2");
    CHECK(w.practice().lesson() == nullptr);
    CHECK_FALSE(visible<AfterLesson>(w.window));
}

TEST_CASE("a lesson in which nothing was done leaves no attempt")
{
    PracticeWindow w;
    w.begin();
    w.click("endLesson");
    CHECK(visible<AfterLesson>(w.window) == nullptr);
    CHECK(visible<ChooseLesson>(w.window) != nullptr);
    kept(w);
    CHECK(logbook::traineesIn(practiceFile(w))->empty());
}

TEST_CASE("in a test the steps are told by heart, and help shows one and counts")
{
    PracticeWindow w;
    w.begin("first_round", practice::Mode::Test);
    const auto* page = w.window.findChild<PracticePage*>();
    REQUIRE(page);
    const auto* view = page->findChild<RunView*>();
    REQUIRE(view);
    const procedure::Step* step = w.practice().runs()->run()->plan().find(view->shownStep());
    REQUIRE(step);
    const QString say = words(step->say, UnitSystem::Metric);
    CHECK_FALSE(w.said().contains(say.left(30)));
    CHECK(w.said().contains(QStringLiteral("Tell what is done here")));
    w.click("helpWithStep");
    CHECK(w.said().contains(say.left(30)));
    REQUIRE(w.practice().played()->log().size() == 1);
    CHECK(std::holds_alternative<practice::Hint>(w.practice().played()->log().front().act));
    // The next one is hidden again.
    CHECK(w.practice().played()->helpFor("another.step") != practice::Help{});
}

TEST_CASE("what is found is named once, and what was said stays said")
{
    PracticeWindow w;
    w.begin("knocked_roll");
    w.click("place101");
    auto* low = visible<QAbstractButton>(w.window, "suspect_air.low_");
    REQUIRE(low);
    low->click();
    CHECK_FALSE(low->isEnabled());
    CHECK(low->text().startsWith(QStringLiteral("Said: ")));  // not by its colour alone
    REQUIRE(w.practice().played()->log().size() == 1);
    CHECK(std::get<practice::Suspect>(w.practice().played()->log().front().act).what == "air.low");
    low->click();
    CHECK(w.practice().played()->log().size() == 1);
}

TEST_CASE("what the press says otherwise than an answer is shown at once in the first pass, and not in a test")
{
    for (const practice::Mode mode : {practice::Mode::Do, practice::Mode::Test}) {
        PracticeWindow w;
        w.begin("quiet_morning", mode);
        // With every guard open somebody answers as if all were well, until one of the answers says that they are
        // closed.
        const auto& said = w.practice().played()->contradictions();
        for (int step = 0; said.empty() && step < 30; ++step) {
            const run::Run& run = *w.practice().runs()->run();
            const auto next = run.next();
            REQUIRE(next);
            w.practice().runs()->perform(walk::rightAnswer(run, *run.plan().find(*next)));
            until([&] { return !w.practice().runs()->busy(); }, "answered");
        }
        REQUIRE_FALSE(said.empty());
        CHECK_FALSE(w.world().press().open.empty());
        auto* otherwise = visible<QLabel>(w.window, "otherwise");
        REQUIRE((otherwise != nullptr) == (mode == practice::Mode::Do));
        if (otherwise == nullptr) continue;
        CHECK(otherwise->text().contains(QStringLiteral("stands open")));
        w.click("otherwiseSeen");
        CHECK(visible<QLabel>(w.window, "otherwise") == nullptr);
    }
}

TEST_CASE("a trainer builds a scenario, which form and file say alike, and others do not see what is hidden in one")
{
    PracticeWindow w;
    w.door(Qt::Key_4);
    CHECK(visible<QAbstractButton>(w.window, "buildScenario") == nullptr);
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    signIn(w.session(), "p-1");
    w.click("buildScenario");
    auto* form = visible<ScenarioForm>(w.window);
    REQUIRE(form);
    for (const char* fault : {"fault_air.low_", "fault_tail.left_"}) {
        auto* button = form->findChild<QAbstractButton*>(QString::fromLatin1(fault));
        INFO(fault);
        REQUIRE(button);
        if (!button->isChecked()) button->click();
    }
    auto* title = visible<QLineEdit>(w.window, "scenarioTitle");
    REQUIRE(title);
    title->setText(QStringLiteral("After the \"late\" shift"));
    form->findChild<PickList*>(QStringLiteral("scenarioMode"))->setCurrentIndex(5);
    form->findChild<PickList*>(QStringLiteral("scenarioShown"))->setCurrentIndex(1);
    form->findChild<QLineEdit*>(QStringLiteral("scenarioDraw"))->setText(QStringLiteral("2"));
    const practice::Scenario wanted = form->scenario();
    CHECK(wanted.faults.size() >= 2);
    Findings notes;
    const auto read = practice::readScenario(practice::scenarioText(wanted), "own.toml", notes);
    REQUIRE(read);
    CHECK(notes.empty());
    CHECK(read->title == wanted.title);
    CHECK(read->faults == wanted.faults);
    CHECK(read->mode == practice::Mode::Test);
    CHECK(read->atOnce == std::optional(true));
    CHECK(read->draw == 2);
    w.click("scenarioBegin");
    until([&] { return w.practice().played() != nullptr; }, "the lesson has begun");
    // What is drawn may be one of those that were named.
    CHECK(w.practice().played()->faults().size() > wanted.faults.size());
}
