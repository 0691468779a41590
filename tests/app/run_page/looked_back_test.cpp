// SPDX-License-Identifier: GPL-3.0-or-later
// What the run page says of steps that are answered: what was corrected, what was added, and the way back.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "app/pages/run/review_card.h"
#include "app/pages/run/step_list.h"
#include "app/text/language.h"
#include "app/widgets/answer_motion.h"
#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/number_pad.h"
#include "app/widgets/step_card.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::north;
using walk::Page;
using walk::Walk;
using K = procedure::StepKind;

namespace {

/// The air supply, read well, and a moment later found to have been written down wrongly.
procedure::StepId corrected(Walk& w)
{
    const procedure::Step* step = w.until(K::Reading);
    REQUIRE(step);
    const procedure::StepId id = step->id;
    w.perform(run::Answer{id, "6.4 bar", {}});
    w.perform(run::Correct{id, "6.2 bar", "read the wrong ring"});
    return id;
}

QString rowOf(RunView& view, const procedure::StepId& step)
{
    auto* list = view.findChild<StepList*>();
    REQUIRE(list);
    for (int i = 0; i < list->count(); ++i)
        if (list->item(i)->data(Qt::UserRole).toString().toStdString() == step.value &&
            !list->item(i)->text().startsWith(QLatin1String("Place")))
            return list->item(i)->text();
    FAIL("the list has no such step");
    return {};
}

}  // namespace

TEST_CASE("after a correction the card shows what stood before as well, by whom, when and why it was not right")
{
    Walk w = north();
    const procedure::StepId step = corrected(w);
    Page page(w);
    page.view.showStep(step);
    const QString card = page.card();
    CAPTURE(card.toStdString());
    CHECK(card.contains(QStringLiteral("\u201c6.2 bar\u201d by Ines Falk")));
    CHECK(card.contains(QStringLiteral("Before that \u201c6.4 bar\u201d stood, by Ines Falk, ")));
    CHECK(card.contains(QStringLiteral("It was corrected: read the wrong ring")));
    // Whoever corrects it once more sees what they correct.
    page.view.begin(RunAct::Correct);
    Page::settle();
    CHECK(test::said(page.view).contains(QStringLiteral("Now it says \u201c6.2 bar\u201d, by Ines Falk")));
}

TEST_CASE("whoever signs sees which steps were corrected, what stood there, and how many they are")
{
    Walk w = north();
    const procedure::StepId step = corrected(w);
    ReviewCard review;
    review.resize(1300, 600);
    while (w.next() != nullptr) w.answerWell(*w.next());
    review.show(w.run, walk::crew().front());
    static_cast<QWidget&>(review).show();
    CHECK(test::said(review).contains(QStringLiteral("Steps that were corrected: 1.")));
    auto* table = review.findChild<QTableWidget*>(QStringLiteral("steps"));
    REQUIRE(table);
    int marked = 0;
    for (int row = 0; row < table->rowCount(); ++row)
        if (const QString answer = table->item(row, 2)->text(); answer.contains(QStringLiteral("It was corrected"))) {
            ++marked;
            CHECK(answer.contains(QStringLiteral("6.4 bar")));
            CHECK(table->item(row, 0)->data(Qt::UserRole).toString().toStdString() == step.value);
        }
    CHECK(marked == 1);
}

TEST_CASE("a step that has notes, pictures or files says so on its card and in the list, with how many")
{
    Walk w = north();
    const procedure::StepId step = w.next()->id;
    {
        Page page(w);
        CHECK_FALSE(page.card().contains(QStringLiteral("Notes:")));
    }
    w.perform(run::Note{step, "the order is smudged"});
    w.perform(run::Note{step, "a new one was printed"});
    w.perform(run::Attach{step, "order.txt", std::make_shared<const std::string>("five rolls of the usual")});
    Page page(w);
    CHECK(page.card().contains(QStringLiteral("Notes: 2 \u00B7 Files: 1")));
    CHECK(rowOf(page.view, step).contains(QStringLiteral("Notes: 2 \u00B7 Files: 1")));
    w.answerWell(*w.next());
    page.view.show(w.run);
    CHECK(rowOf(page.view, step).contains(QStringLiteral("Notes: 2 \u00B7 Files: 1")));
    CHECK_FALSE(page.card().contains(QStringLiteral("Notes:")));  // of the step that is shown now
}

TEST_CASE("from an earlier step that was opened one touch, or Esc, leads back to what is to be done")
{
    Walk w = north();
    const procedure::StepId first = w.next()->id;
    w.until(K::Reading);
    Page page(w);
    const procedure::StepId now = w.next()->id;
    page.view.showStep(first);
    Page::settle();
    auto* back = page.visible<QAbstractButton>("comesFirst");
    CHECK(back->accessibleName() == QStringLiteral("Back to what is to be done"));
    SECTION("by a touch") { QTest::mouseClick(back, Qt::LeftButton); }
    SECTION("by Esc") { QTest::keyClick(&page.view, Qt::Key_Escape); }
    CHECK(page.view.shownStep() == now);
    Page::settle();
    for (const auto* button : page.view.findChildren<QAbstractButton*>(QStringLiteral("comesFirst")))
        CHECK_FALSE(button->isVisible());
}

TEST_CASE("after everyone is clear the focus waits on the card and goes to what was seen")
{
    Walk w = north();
    REQUIRE(w.until(K::Motion));
    while (!w.run.heldStops().empty()) w.perform(run::GiveUpStop{w.run.heldStops().front().holder});
    Page page(w);
    auto* card = page.view.findChild<StepCard*>();
    for (auto* box : page.view.findChildren<StatementBox*>())
        if (box->isVisible()) box->setChecked(true);
    auto* clear = page.visible<QAbstractButton>("clear");
    clear->setFocus();
    QTest::keyClick(clear, Qt::Key_Space);
    REQUIRE(page.view.focusWidget());
    CHECK(card->isAncestorOf(page.view.focusWidget()));
    CHECK(qobject_cast<QAbstractButton*>(page.view.focusWidget()) == nullptr);
    QTest::qWait(MotionArea::kBetweenTouchesMs + 200);
    CHECK(page.view.focusWidget() == page.visible<QAbstractButton>("done"));
}

TEST_CASE("a choice of a vital step is held, and a touch or a key that was meant for something else takes none")
{
    Walk w = north();
    REQUIRE(w.untilStep([](const procedure::Step& s) { return s.kind == K::Choice && s.vital; }));
    Page page(w);
    QSignalSpy commands(&page.view, &RunView::command);
    CHECK(page.card().contains(QStringLiteral("Hold down the answer that is so.")));
    auto* choice = page.visible<HoldButton>("choice");
    QTest::mouseClick(choice, Qt::LeftButton);
    choice->setFocus();
    QTest::keyClick(choice, Qt::Key_Return);
    CHECK(commands.isEmpty());
    SECTION("by mouse")
    {
        QTest::qWait(QApplication::doubleClickInterval() + 100);  // another touch, and not the second of one
        QTest::mousePress(choice, Qt::LeftButton);
        REQUIRE(QTest::qWaitFor([&] { return !commands.isEmpty(); }, 5000));
        QTest::mouseRelease(choice, Qt::LeftButton);
    }
    SECTION("by keyboard")
    {
        QTest::keyPress(choice, Qt::Key_Space);
        REQUIRE(QTest::qWaitFor([&] { return !commands.isEmpty(); }, 5000));
        QTest::keyRelease(choice, Qt::Key_Space);
    }
    const auto command = commands.takeFirst().at(0).value<run::Command>();
    REQUIRE(std::holds_alternative<run::Answer>(command));
    CHECK(std::get<run::Answer>(command).entered == w.next()->choices.front().word);
}

TEST_CASE("the number pad stays open from one reading to the next until somebody closes it")
{
    Walk w = north();
    REQUIRE(w.until(K::Reading));
    Page page(w);
    const auto open = [&] {
        Page::settle();
        const auto pads = page.view.findChildren<NumberPad*>();
        return std::any_of(pads.begin(), pads.end(), [](const NumberPad* pad) { return pad->isVisible(); });
    };
    CHECK_FALSE(open());
    page.visible<QAbstractButton>("padToggle")->click();
    CHECK(open());
    const auto goOn = [&] {
        const procedure::StepId before = w.next()->id;
        w.answerWell(*w.next());
        REQUIRE(w.untilStep([&](const procedure::Step& s) { return s.kind == K::Reading && s.id != before; }));
        page.view.show(w.run);
    };
    goOn();
    CHECK(open());
    page.visible<QAbstractButton>("padToggle")->click();
    CHECK_FALSE(open());
    goOn();
    CHECK_FALSE(open());
}

TEST_CASE("a run that is read in another language than the window's says in which")
{
    Walk w = Walk::begin("north", "quince-jelly", "R0041", true, "es");
    Page page(w);
    CHECK(test::said(page.view).contains(QStringLiteral("This run is read in Spanish")));
    Walk own = north();
    page.view.show(own.run);
    CHECK_FALSE(test::said(page.view).contains(QStringLiteral("This run is read in")));
}

TEST_CASE("which run it is stands on the page to the last letter, in every language")
{
    for (const char* tongue : {"en", "es", "de"}) {
        setLanguage(QString::fromLatin1(tongue));
        Walk w = north();
        Page page(w);
        CHECK(test::said(page.view).contains(QString::fromStdString(w.run.id())));
        setLanguage(QStringLiteral("en"));
    }
}
