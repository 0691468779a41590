// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QAccessible>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "app/pages/run/phase_cards.h"
#include "app/pages/run/review_card.h"
#include "app/pages/run/run_view.h"
#include "app/pages/run/step_list.h"
#include "app/text/pseudo.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::north;
using walk::Walk;
using K = procedure::StepKind;

namespace {

const QSize kSmall(1366, 690);  // 1366 x 768 less the window's own bar

struct Page {
    RunView view;
    QSignalSpy commands{&view, &RunView::command};
    explicit Page(const Walk& w, QSize size = kSmall, double scale = 1.0)
    {
        applyTheme({false, scale, 1.0});
        view.setPeople({{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator},
                        {QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor}});
        view.setActor({QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator});
        view.resize(size);
        view.show(w.run);
        static_cast<QWidget&>(view).show();
    }
    template <class W>
    W* visible(const char* name = nullptr)
    {
        for (W* w : name ? view.findChildren<W*>(QString::fromLatin1(name)) : view.findChildren<W*>())
            if (w->isVisible()) return w;
        return nullptr;
    }
    void click(const char* name)
    {
        auto* b = visible<QAbstractButton>(name);
        INFO(name);
        REQUIRE(b);
        QTest::mouseClick(b, Qt::LeftButton);
    }
    void fill(const char* name, const char* text)
    {
        auto* field = visible<QWidget>(name);
        INFO(name);
        REQUIRE(field);
        REQUIRE(field->setProperty("text", QString::fromLatin1(text)));
    }
    void choose(const char* name, const char* word)
    {
        auto* combo = visible<QComboBox>(name);
        INFO(name << " " << word);
        REQUIRE(combo);
        REQUIRE(combo->currentIndex() == -1);
        combo->setCurrentIndex(combo->findData(QString::fromLatin1(word)));
        REQUIRE(combo->currentIndex() >= 0);
    }
    template <class C>
    C sent()
    {
        REQUIRE(commands.size() == 1);
        const auto command = commands.takeFirst().at(0).value<run::Command>();
        REQUIRE(std::holds_alternative<C>(command));
        return std::get<C>(command);
    }
};

/// A tension reading with a window, not yet answered.
const procedure::Step* tensionReading(Walk& w)
{
    return w.untilStep([&](const procedure::Step& s) {
        const targets::Target* t = s.target.empty() ? nullptr : w.run.targets().find(s.target);
        return s.kind == K::Reading && s.waivable && s.target.rfind("tension", 0) == 0 && t && t->ready() &&
               t->ready()->window.high;
    });
}

}  // namespace

TEST_CASE("the page shows the run's next step and moves on only when the run has changed")
{
    Walk w = north();
    Page page(w);
    REQUIRE(w.next());
    const procedure::StepId first = w.next()->id;
    CHECK(page.view.shownStep() == first);
    if (page.visible<QAbstractButton>("answer")) page.click("answer");
    CHECK(page.commands.size() == 1);
    CHECK(page.view.shownStep() == first);  // asked, not yet on disk
    page.view.setBusy(true);
    CHECK(page.visible<QLabel>("writing"));
    CHECK(page.view.shownStep() == first);
    w.answerWell(*w.run.plan().find(first));
    page.view.setBusy(false);
    page.view.show(w.run);
    CHECK(page.view.shownStep() == w.next()->id);
    CHECK(page.view.shownStep() != first);
}

TEST_CASE("a note leaves the person at their step, with what they typed")
{
    Walk w = north();
    w.until(K::Scan);
    Page page(w);
    page.fill("field", "half a tag");
    w.perform(run::Note{w.next()->id, "the tag is torn"});
    page.view.show(w.run);
    CHECK(page.visible<QLineEdit>("field")->text() == QStringLiteral("half a tag"));
}

TEST_CASE("on a small screen the number pad is seen whole with what enters the value, and the field keeps the focus")
{
    Walk w = north();
    w.until(K::Reading);
    Page page(w, {1342, 628});  // what 1366 x 768 leaves to the page
    page.view.window()->activateWindow();
    page.click("padToggle");
    for (int i = 0; i < 5; ++i) QApplication::processEvents();
    auto* enter = page.visible<QAbstractButton>("answer");
    REQUIRE(enter);
    CHECK(enter->visibleRegion().boundingRect() == enter->rect());
    for (QAbstractButton* key : page.view.findChildren<QAbstractButton*>())
        if (key->isVisible() && key->property("types").isValid()) {
            CAPTURE(key->text().toStdString());
            CHECK(key->visibleRegion().boundingRect() == key->rect());
        }
    CHECK(page.view.window()->focusWidget() == page.visible<QLineEdit>("field"));
}

TEST_CASE(
    "with large type on a small screen the card has the page, and steps, reasons and press are looked at in its place")
{
    Walk w = north();
    w.until(K::Reading);
    Page page(w, kSmall, 2.0);
    const auto seen = [&] {
        return std::tuple(page.visible<StepCard>() != nullptr, page.visible<StepList>() != nullptr,
                          page.visible<WhyPanel>() != nullptr, page.visible<ElevationWidget>() != nullptr);
    };
    CHECK(seen() == std::tuple(true, false, false, false));
    page.click("beside1");
    CHECK(seen() == std::tuple(false, true, false, false));
    auto* list = page.visible<StepList>();
    CHECK(page.view.focusWidget() == list);
    QTest::keyClick(&page.view, Qt::Key_Escape);
    CHECK(seen() == std::tuple(true, false, false, false));
    QTest::keyClick(&page.view, Qt::Key_F2);
    CHECK(seen() == std::tuple(false, false, true, false));
    QTest::keyClick(&page.view, Qt::Key_F2);
    CHECK(seen() == std::tuple(true, false, false, false));
    page.click("beside3");
    CHECK(seen() == std::tuple(false, false, false, true));
    page.click("beside1");
    emit list->stepChosen(QString::fromStdString(w.run.plan().steps.front().id.value));
    CHECK(seen() == std::tuple(true, false, false, false));
    CHECK(page.view.shownStep() == w.run.plan().steps.front().id);

    page.view.resize(1920, 1600);
    CHECK(seen() == std::tuple(true, true, true, true));
    CHECK(page.visible<QAbstractButton>("beside1") == nullptr);
    applyTheme({});
}

TEST_CASE("the list of steps begins with a whole row, also when the window has taken another size")
{
    Walk w = Walk::begin("south", "cold-brew", "R0043");
    w.untilStep([](const procedure::Step& s) { return s.id.value == "web_guide.at_speed.watch"; });
    Page page(w);
    auto* list = page.visible<StepList>();
    REQUIRE(list);
    for (const int height : {740, 700, 660, 720, 1020, 690}) {
        CAPTURE(height);
        page.view.resize(page.view.width(), height);
        QTest::qWait(20);
        const QListWidgetItem* top = list->itemAt(QPoint(list->width() / 4, 0));
        REQUIRE(top);
        CHECK(list->visualItemRect(top).top() >= 0);
    }
}

TEST_CASE("the taut line tells every stage's state and leads to it")
{
    Walk w = north();
    w.untilStep([&](const procedure::Step& s) { return w.run.plan().stageOf(s) == 2; });
    Page page(w);
    auto* line = page.visible<TautLineWidget>();
    REQUIRE(line);
    REQUIRE(line->spans().size() == w.run.plan().stages.size());
    for (std::size_t i = 0; i < line->spans().size(); ++i) CHECK(line->spans()[i].state == w.run.stageState(i));
    CHECK(line->spans()[2].shown);
    CHECK(line->spans()[0].state == run::StageState::Done);
    const auto stages = line->findChildren<QAbstractButton*>();
    REQUIRE(static_cast<std::size_t>(stages.size()) == line->spans().size());
    QTest::mouseClick(stages[4], Qt::LeftButton);
    CHECK(w.run.plan().stageOf(*w.run.plan().find(page.view.shownStep())) == 4);
    QTest::keyClick(stages[2], Qt::Key_Space);
    CHECK(w.run.plan().stageOf(*w.run.plan().find(page.view.shownStep())) == 2);
}

TEST_CASE("a step that is closed says why and shows what comes first")
{
    Walk w = north();
    Page page(w);
    page.view.showStage(3);
    CHECK(page.visible<QAbstractButton>("answer") == nullptr);
    page.click("comesFirst");
    CHECK(page.view.shownStep() == w.next()->id);
}

TEST_CASE("each act sends exactly its command")
{
    Walk w = north();
    const procedure::Step* step = tensionReading(w);
    REQUIRE(step);
    const procedure::StepId id = step->id;
    Page page(w);
    SECTION("note")
    {
        page.view.begin(RunAct::Note);
        page.fill("value0", "a squeak at the outfeed");
        page.click("accept");
        const auto c = page.sent<run::Note>();
        CHECK(c.step == id);
        CHECK(c.text == "a squeak at the outfeed");
    }
    SECTION("measured diameter, with its unit")
    {
        page.view.begin(RunAct::Diameter);
        page.fill("value0", "twelve");
        page.click("accept");
        CHECK(page.commands.isEmpty());
        page.fill("value0", "480 mm");
        page.click("accept");
        CHECK(page.sent<run::MeasuredDiameter>().diameter.si() == Approx(0.48));
    }
    SECTION("a stage done again, with its cause")
    {
        page.view.begin(RunAct::Repeat);
        page.choose("value0", w.run.plan().stages[2].id.c_str());
        page.choose("value1", "web_break");
        page.click("accept");
        const auto c = page.sent<run::RepeatStage>();
        CHECK(c.stage == w.run.plan().stages[2].id);
        CHECK(c.cause == "web_break");
    }
    SECTION("interrupt")
    {
        page.view.begin(RunAct::Interrupt);
        page.choose("value0", "power");
        page.click("accept");
        CHECK(page.sent<run::Interrupt>().reason == "power");
    }
    SECTION("withdraw")
    {
        QSignalSpy withdraw(&page.view, &RunView::withdraw);
        page.click(qPrintable(QStringLiteral("act%1").arg(static_cast<int>(RunAct::Withdraw))));
        page.fill("value0", "the brake grabs");
        page.click("accept");
        REQUIRE(withdraw.size() == 1);
        CHECK(withdraw.at(0).at(0).toString() == QStringLiteral("north"));
        CHECK(withdraw.at(0).at(1).toString() == QStringLiteral("the brake grabs"));
    }
    SECTION("abandon asks for the passphrase of whoever is there")
    {
        QSignalSpy finish(&page.view, &RunView::finish);
        page.view.begin(RunAct::Abandon);
        page.fill("value0", "the job was cancelled");
        page.click("accept");
        CHECK(finish.isEmpty());
        page.fill("passphrase", "2580");
        page.click("accept");
        REQUIRE(finish.size() == 1);
        CHECK(finish.at(0).at(1).toString() == QStringLiteral("2580"));
    }
    SECTION("a vital step is passed by only with a supervisor")
    {
        if (step->vital && actOffered(RunAct::NotApplicable, w.run, step,
                                      {QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator})) {
            QSignalSpy with(&page.view, &RunView::commandWith);
            page.view.begin(RunAct::NotApplicable);
            page.fill("value0", "this zone is not used");
            page.choose("person", "p-2");
            page.fill("pin", "2580");
            page.click("accept");
            REQUIRE(with.size() == 1);
            const auto make = with.at(0).at(2).value<WithSecond>();
            const run::Command command = make(walk::supervisor());
            REQUIRE(std::holds_alternative<run::SkipStep>(command));
            CHECK(std::get<run::SkipStep>(command).supervisor);
        }
    }
    SECTION("Escape closes the panel and sends nothing")
    {
        page.view.begin(RunAct::Note);
        QTest::keyClick(page.visible<ProseField>("value0"), Qt::Key_Escape);
        CHECK(page.visible<ProseField>("value0") == nullptr);
        CHECK(page.visible<StepCard>());
        CHECK(page.commands.isEmpty());
    }
}

TEST_CASE("an answered reading is corrected with the right answer and a reason")
{
    Walk w = north();
    const procedure::Step* step = tensionReading(w);
    REQUIRE(step);
    const procedure::StepId id = step->id;
    w.answerWell(*step);
    Page page(w);
    page.view.showStep(id);
    page.view.begin(RunAct::Correct);
    page.fill("value0", "1.45 bar");
    page.click("accept");
    CHECK(page.commands.isEmpty());
    page.fill("value1", "read on the wrong ring");
    page.click("accept");
    const auto c = page.sent<run::Correct>();
    CHECK(c.step == id);
    CHECK(c.entered == "1.45 bar");
    CHECK(c.reason == "read on the wrong ring");
}

TEST_CASE("a refusal is said where it was asked, and what was entered stays")
{
    Walk w = north();
    Page page(w);
    page.view.begin(RunAct::Note);
    page.fill("value0", "a long remark");
    page.click("accept");
    page.view.refuse(refuse("gate.x", "x", "The disk is full.", "Make room and write it again."));
    auto* strip = page.visible<FindingStrip>();
    REQUIRE(strip);
    CHECK(strip->text().contains(QStringLiteral("Make room")));
    CHECK(page.visible<ProseField>("value0")->text() == QStringLiteral("a long remark"));
}

TEST_CASE("after an interruption four statements come first, none of them ticked")
{
    Walk w = north();
    w.until(K::Scan);
    w.perform(run::Interrupt{"power"});
    Page page(w);
    auto* card = page.visible<MakeSafeCard>();
    REQUIRE(card);
    const auto boxes = card->findChildren<StatementBox*>();
    REQUIRE(boxes.size() == 4);
    for (int i = 0; i < 3; ++i) QApplication::processEvents();
    CHECK_FALSE(page.visible<QAbstractButton>("answer")->isEnabled());
    for (StatementBox* box : boxes) {
        CHECK_FALSE(box->isChecked());
        CHECK(box->visibleRegion().boundingRect() == box->rect());
        QTest::mouseClick(box, Qt::LeftButton);
    }
    page.click("answer");
    CHECK(page.sent<run::Resume>().stated.size() == 4);
}

TEST_CASE("after an interruption the page says which one it was, and goes on with what is to be said again")
{
    Walk w = north();
    w.until(K::Scan);
    w.perform(run::Interrupt{"ended_without_sign_off"});
    Page page(w);  // opened on it, as after a start of the program
    QString all;
    for (const auto* label : page.visible<MakeSafeCard>()->findChildren<QLabel*>()) all += label->text();
    CHECK(all.contains(QStringLiteral("The program ended under the run")));
    run::Resume resume;
    for (const char* word : run::kMakeSafe) resume.stated.emplace_back(word);
    w.perform(resume);
    page.view.show(w.run);
    REQUIRE(w.next());
    CHECK(w.run.stateOf(w.next()->id) == run::StepState::Reconfirm);
    CHECK(page.view.shownStep() == w.next()->id);
}

TEST_CASE("a changed roll takes the page to the first step that it opened")
{
    Walk w = north();
    w.untilStep([&](const procedure::Step& s) { return w.run.plan().stageOf(s) == 4; });
    Page page(w);
    w.perform(run::ChangeRoll{Walk::begin("north", "quince-jelly", "R0047").run.sources().roll.text, std::nullopt});
    page.view.show(w.run);
    CHECK(page.view.shownStep() == w.next()->id);
    CHECK(w.run.stateOf(page.view.shownStep()) == run::StepState::Stale);
}

TEST_CASE("a withdrawn press is given back only by a supervisor other than who withdrew it")
{
    Walk w = north();
    w.perform(run::Withdraw{"the brake grabs"});
    Page page(w);
    REQUIRE(page.visible<WithdrawnCard>());
    CHECK_FALSE(page.visible<QAbstractButton>("answer")->isEnabled());
    page.view.setActor({QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor});
    REQUIRE(page.visible<QAbstractButton>("answer")->isEnabled());
    QSignalSpy back(&page.view, &RunView::giveBack);
    page.click("answer");
    CHECK(back.isEmpty());
    page.fill("done", "new pads, tried at inch");
    page.click("answer");
    REQUIRE(back.size() == 1);
    CHECK(back.at(0).at(1).toString() == QStringLiteral("new pads, tried at inch"));
}

TEST_CASE("a changed roll marks steps stale, and the page says that the roll changed")
{
    Walk w = north();
    w.untilStep([&](const procedure::Step& s) { return w.run.plan().stageOf(s) == 4; });
    Walk other = Walk::begin("north", "quince-jelly", "R0047");
    w.perform(run::ChangeRoll{other.run.sources().roll.text, std::nullopt});
    const auto& changed = std::get<run::InputsChanged>(w.run.events().back().happening());
    REQUIRE_FALSE(changed.stale.empty());
    Page page(w);
    page.view.showStep(changed.stale.front());
    const QString all = app::test::said(page.view);
    CAPTURE(all.toStdString(), changed.stale.front().value);
    CHECK(all.contains(QStringLiteral("The roll changed after this was answered")));
}

TEST_CASE("when nothing is open the whole run is looked through and signed with a passphrase")
{
    Walk w = north();
    w.untilStep([](const procedure::Step&) { return false; });
    Page page(w);
    auto* review = page.visible<ReviewCard>();
    REQUIRE(review);
    auto* table = page.visible<QTableWidget>("steps");
    REQUIRE(table);
    CHECK(table->rowCount() == static_cast<int>(w.run.plan().steps.size()));
    CHECK(app::test::said(*review).contains(QStringLiteral("Signing says: performed")));
    QSignalSpy finish(&page.view, &RunView::finish);
    page.click("answer");
    CHECK(finish.isEmpty());
    page.fill("remarks", "left in good order");
    page.fill("passphrase", "2580");
    page.click("answer");
    REQUIRE(finish.size() == 1);
    const auto command = finish.at(0).at(0).value<run::Command>();
    REQUIRE(std::holds_alternative<run::SignOff>(command));
    CHECK(std::get<run::SignOff>(command).remarks == "left in good order");
    CHECK(page.visible<QLineEdit>("passphrase")->text().isEmpty());
    page.view.setBusy(true);
    page.view.setBusy(false);
    page.view.refuse(refuse("people.wrong", {}, "This name and PIN do not belong together.", "Try again."));
    CHECK(page.view.focusWidget() == page.visible<QLineEdit>("passphrase"));
}

TEST_CASE("a run with a stop still held is not signed, and its holder gives it up there")
{
    Walk w = north();
    w.untilStep([](const procedure::Step&) { return false; });
    w.perform(run::HoldStop{"Ines Falk", "latch at the table"});
    Page page(w);
    auto* review = page.visible<ReviewCard>();
    REQUIRE(review);
    CHECK_FALSE(page.visible<QAbstractButton>("answer")->isEnabled());
    CHECK(app::test::said(*review).contains(QStringLiteral("Ines Falk holds: latch at the table")));
    QSignalSpy commands(&page.view, &RunView::command);
    auto* give = page.visible<QAbstractButton>("giveUp");
    QTest::mousePress(give, Qt::LeftButton);
    QTest::qWait(HoldButton::kHoldMs + 200);
    QTest::mouseRelease(give, Qt::LeftButton);
    REQUIRE(commands.size() == 1);
    const auto command = commands.at(0).at(0).value<run::Command>();
    REQUIRE(std::holds_alternative<run::GiveUpStop>(command));
    w.perform(command);
    page.view.show(w.run);
    CHECK(page.visible<QAbstractButton>("giveUp") == nullptr);
    CHECK(page.visible<QAbstractButton>("answer")->isEnabled());
}

TEST_CASE("a trainee who may not sign cannot press the button that signs")
{
    Walk w = north();
    w.untilStep([](const procedure::Step&) { return false; });
    Page page(w);
    page.view.setActor({QStringLiteral("p-9"), QStringLiteral("Nils Abt"), people::Role::Trainee});
    CHECK(page.visible<QAbstractButton>("answer")->isEnabled() ==
          people::may(people::Role::Trainee, people::Act::SignOff));
}
