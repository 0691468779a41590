// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "app/widgets/answer_motion.h"
#include "app/widgets/answer_reading.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/theme.h"
#include "tests/app/widgets/card_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::cards;
using K = procedure::StepKind;

namespace {

struct Shown {
    StepCard card;
    QSignalSpy commands{&card, &StepCard::command};
    explicit Shown(const StepContent& content)
    {
        applyTheme({});
        card.resize(700, 520);
        card.show(content);
        static_cast<QWidget&>(card).show();
        card.focusAnswer();
    }
    QAbstractButton* button(const char* name) { return child<QAbstractButton>(card, name); }
    QLineEdit* field() { return child<QLineEdit>(card, "field"); }
    void click(QAbstractButton* b)
    {
        REQUIRE(b);
        QTest::mouseClick(b, Qt::LeftButton);
    }
    void press(int key)
    {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &card, Qt::Key(key));
    }
};

}  // namespace

TEST_CASE("a fact is answered by one touch or by Enter")
{
    for (const bool keyboard : {false, true}) {
        Shown s(stepOf(K::Confirm));
        if (keyboard)
            QTest::keyClick(&s.card, Qt::Key_Return);
        else
            s.click(s.button("answer"));
        const auto answer = answered(s.commands);
        REQUIRE(answer);
        CHECK(answer->entered == "yes");
        CHECK(answer->step.value == "stage.place.step");
        CHECK(answer->stated.empty());
    }
}

TEST_CASE("a key that lies under something answers one step, not one after the other")
{
    StepCard card;
    QSignalSpy commands(&card, &StepCard::command);
    card.show(stepOf(K::Confirm));
    static_cast<QWidget&>(card).show();
    for (int i = 0; i < 5; ++i) {
        QKeyEvent again(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true);
        QApplication::sendEvent(&card, &again);
    }
    CHECK(commands.isEmpty());
    QTest::keyClick(&card, Qt::Key_Return);
    CHECK(commands.size() == 1);
}

TEST_CASE("the second half of a double touch does not answer the step that came up under the finger")
{
    const auto touch = [](QWidget* button, const QPoint& global, quint64 at) {
        for (const QEvent::Type type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            const QPointF local = button->mapFromGlobal(global);
            QMouseEvent event(type, local, QPointF(global), Qt::LeftButton,
                              type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier);
            event.setTimestamp(at);
            QApplication::sendEvent(button, &event);
        }
    };
    StepCard card;
    QSignalSpy commands(&card, &StepCard::command);
    const StepContent order = stepOf(K::Confirm);
    StepContent next = order;
    next.step.id = {"safety.prepare.next"};
    card.show(order);
    card.resize(700, 520);
    static_cast<QWidget&>(card).show();
    auto* first = child<QAbstractButton>(card, "answer");
    const QPoint place = first->mapToGlobal(first->rect().center());
    constexpr quint64 kFirst = 50'000'000;
    touch(first, place, kFirst);
    REQUIRE(commands.size() == 1);
    card.show(next);
    QApplication::processEvents();
    auto* second = child<QAbstractButton>(card, "answer");
    for (const quint64 later : {150ULL, 450ULL, 900ULL, 1350ULL}) touch(second, place, kFirst + later);
    CHECK(commands.size() == 1);
    CHECK_FALSE(second->hasFocus());
    touch(second, place, kFirst + 3000);
    CHECK(commands.size() == 2);
}

TEST_CASE("a vital fact is answered only by holding, with finger or key")
{
    Shown s(stepOf(K::Confirm, true));
    auto* button = qobject_cast<HoldButton*>(s.button("answer"));
    REQUIRE(button);
    s.click(button);
    QTest::keyClick(button, Qt::Key_Return);
    QTest::keyClick(&s.card, Qt::Key_Return);
    QTest::qWait(HoldButton::kHoldMs + 200);
    CHECK(s.commands.isEmpty());
    SECTION("by finger")
    {
        QTest::mousePress(button, Qt::LeftButton);
        QTest::qWait(HoldButton::kHoldMs / 2);
        CHECK(s.commands.isEmpty());
        CHECK(button->progress() > 0.2);
        QTest::qWait(HoldButton::kHoldMs);
        QTest::mouseRelease(button, Qt::LeftButton);
    }
    SECTION("by key")
    {
        QTest::keyPress(button, Qt::Key_Space);
        QTest::qWait(HoldButton::kHoldMs + 300);
        QTest::keyRelease(button, Qt::Key_Space);
    }
    SECTION("by assistive technology, twice")
    {
        button->click();
        CHECK(s.commands.isEmpty());
        button->click();
    }
    REQUIRE(answered(s.commands));
    CHECK(answered(s.commands)->entered == "yes");
}

TEST_CASE("a hold let go too early or moved off the button answers nothing")
{
    Shown s(stepOf(K::Confirm, true));
    auto* button = s.button("answer");
    QTest::mousePress(button, Qt::LeftButton);
    QTest::qWait(300);
    QTest::mouseMove(button, QPoint(-40, -40));
    QMouseEvent move(QEvent::MouseMove, QPointF(-40, -40), button->mapToGlobal(QPointF(-40, -40)), Qt::NoButton,
                     Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(button, &move);
    QTest::qWait(HoldButton::kHoldMs);
    CHECK(s.commands.isEmpty());
}

TEST_CASE("a reading goes out as typed with the unit typed or chosen")
{
    SECTION("digits typed anywhere go to the field, Enter sends")
    {
        Shown s(readingStep());
        s.card.setFocus();
        QTest::keyClicks(&s.card, QStringLiteral("1"));
        QTest::keyClicks(s.field(), QStringLiteral(".4"));
        QTest::keyClick(s.field(), Qt::Key_Return);
        REQUIRE(answered(s.commands));
        CHECK(answered(s.commands)->entered == "1.4 bar");
    }
    SECTION("by mouse on the number pad, in another unit")
    {
        Shown s(readingStep());
        s.click(s.button("padToggle"));
        for (const char* key : {"1", "4", "0"})
            for (auto* b : s.card.findChildren<QAbstractButton*>())
                if (b->property("types").toString() == QLatin1String(key)) s.click(b);
        for (auto* b : s.card.findChildren<QAbstractButton*>(QStringLiteral("unit")))
            if (b->text() == QStringLiteral("kPa")) s.click(b);
        s.click(s.button("answer"));
        REQUIRE(answered(s.commands));
        CHECK(answered(s.commands)->entered == "140 kPa");
    }
    SECTION("a unit in the field wins")
    {
        Shown s(readingStep());
        QTest::keyClicks(s.field(), QStringLiteral("20 psi"));
        s.click(s.button("answer"));
        REQUIRE(answered(s.commands));
        CHECK(answered(s.commands)->entered == "20 psi");
    }
}

TEST_CASE("the limit bar follows while a reading is typed")
{
    Shown s(readingStep());
    auto* bar = s.card.findChild<LimitBarWidget*>();
    REQUIRE(bar);
    CHECK_FALSE(bar->bar().reading);
    QTest::keyClicks(s.field(), QStringLiteral("1.5"));
    REQUIRE(bar->bar().reading);
    CHECK(*bar->bar().reading == Approx(1.5e5));
    CHECK(bar->bar().judgement.verdict == verdict::Verdict::Inside);
    QTest::keyClicks(s.field(), QStringLiteral("9"));
    CHECK(bar->bar().judgement.verdict == verdict::Verdict::Inside);  // 1.59
    s.field()->setText(QStringLiteral("2.6"));
    CHECK(bar->bar().judgement.verdict == verdict::Verdict::Outside);
}

TEST_CASE("a reading that cannot be read is refused on the card and stays in its field")
{
    for (const char* typed : {"1,4,2", "12 mm", "abc", "1.4 barr"}) {
        Shown s(readingStep());
        QTest::keyClicks(s.field(), QString::fromLatin1(typed));
        QTest::keyClick(s.field(), Qt::Key_Return);
        CAPTURE(typed);
        CHECK(s.commands.isEmpty());
        auto* strip = s.card.findChild<FindingStrip*>();
        REQUIRE(strip);
        CHECK(strip->isVisibleTo(&s.card));
        CHECK(s.field()->text() == QString::fromLatin1(typed));
    }
}

TEST_CASE("a choice is answered with its stored word")
{
    Shown s(stepOf(K::Choice));
    const auto buttons = s.card.findChildren<QAbstractButton*>(QStringLiteral("choice"));
    REQUIRE(buttons.size() == 2);
    SECTION("by mouse") { s.click(buttons[1]); }
    SECTION("by keyboard")
    {
        buttons[1]->setFocus();
        QTest::keyClick(buttons[1], Qt::Key_Return);
    }
    REQUIRE(answered(s.commands));
    CHECK(answered(s.commands)->entered == "under");
}

TEST_CASE("a tag typed by a scanner ends with Enter")
{
    Shown s(stepOf(K::Scan));
    QTest::keyClicks(s.field(), QStringLiteral("]C10199521"));
    QTest::keyClick(s.field(), Qt::Key_Return);
    REQUIRE(answered(s.commands));
    CHECK(answered(s.commands)->entered == "]C10199521");
}

TEST_CASE("a held stop belongs to the name that was given, and no name is filled in")
{
    Shown s(stepOf(K::Hold));
    CHECK(s.field()->text().isEmpty());
    for (auto* b : s.card.findChildren<QAbstractButton*>())
        if (b->text() == QStringLiteral("Tom Ried")) s.click(b);
    CHECK(s.commands.isEmpty());
    s.click(s.button("answer"));
    REQUIRE(answered(s.commands));
    CHECK(answered(s.commands)->entered == "Tom Ried");
}

TEST_CASE("a movement asks every statement about the machine and then two touches")
{
    Shown s(stepOf(K::Motion, true));
    auto boxes = s.card.findChildren<StatementBox*>();
    REQUIRE(boxes.size() == 2);  // power_on is no statement about this moment
    CHECK_FALSE(s.button("clear")->isEnabled());
    CHECK(s.button("done") == nullptr);
    s.click(boxes[0]);
    CHECK_FALSE(s.button("clear")->isEnabled());
    boxes[1]->setFocus();
    QTest::keyClick(boxes[1], Qt::Key_Space);
    CHECK(s.button("clear")->isEnabled());
    s.click(s.button("clear"));
    CHECK(s.commands.isEmpty());
    REQUIRE(s.button("done"));
    s.click(s.button("done"));  // a double touch
    CHECK(s.commands.isEmpty());
    QTest::qWait(MotionArea::kBetweenTouchesMs + 100);
    s.click(s.button("done"));
    const auto answer = answered(s.commands);
    REQUIRE(answer);
    CHECK(answer->entered == "done");
    CHECK(answer->stated == std::vector<std::string>{"guards_closed", "people_clear"});
}

TEST_CASE("a movement that is a test of a stop is done in the words of what was seen")
{
    StepContent content = stepOf(K::Motion, true);
    content.step.done = Text("it stopped, and stayed stopped");
    Shown s(content);
    for (auto* box : s.card.findChildren<StatementBox*>()) s.click(box);
    s.click(s.button("clear"));
    REQUIRE(s.button("done"));
    CHECK(s.button("done")->text().contains(QStringLiteral("it stopped, and stayed stopped")));
    CHECK_FALSE(s.button("done")->text().contains(QStringLiteral("moved")));
}

TEST_CASE("nothing on a movement's card is held down, and it says that it moves nothing")
{
    for (const bool vital : {false, true}) {
        Shown s(stepOf(K::Motion, vital));
        CHECK(s.card.findChildren<HoldButton*>().isEmpty());
        auto* notice = child<QLabel>(s.card, "movesNothing");
        REQUIRE(notice);
        CHECK(notice->text() == QStringLiteral("This screen moves nothing and stops nothing."));
    }
}

TEST_CASE("before a movement each holder gives up their stop by name")
{
    StepContent content = stepOf(K::Motion);
    content.held = {{"Ines Falk", "panel", false}, {"Tom Ried", "rewind", false}, {"Ines Falk", "unwind", false}};
    content.closed = refuse("gate.stop_held", "x", "A stop is held.");
    Shown s(content);
    const auto give = s.card.findChildren<QAbstractButton*>(QStringLiteral("giveUp"));
    REQUIRE(give.size() == 2);
    CHECK(s.card.findChildren<StatementBox*>().isEmpty());
    // One touch gives up nobody's stop, and nothing of it has the focus.
    s.click(give[1]);
    CHECK_FALSE(sent(s.commands));
    CHECK_FALSE(give[0]->hasFocus());
    QTest::mousePress(give[1], Qt::LeftButton);
    QTest::qWait(HoldButton::kHoldMs + 200);
    QTest::mouseRelease(give[1], Qt::LeftButton);
    const auto command = sent(s.commands);
    REQUIRE(command);
    REQUIRE(std::holds_alternative<run::GiveUpStop>(*command));
    CHECK(std::get<run::GiveUpStop>(*command).holder == "Tom Ried");
}

TEST_CASE("nothing is ticked, chosen or filled in before a person does it")
{
    for (const StepContent& content : everyStep()) {
        Shown s(content);
        CAPTURE(procedure::stepKindWord(content.step.kind));
        for (const auto* box : s.card.findChildren<QCheckBox*>()) CHECK_FALSE(box->isChecked());
        for (const auto* field : s.card.findChildren<QLineEdit*>()) CHECK(field->text().isEmpty());
        CHECK(s.commands.isEmpty());
    }
}

TEST_CASE("while an answer is being written the card takes no other")
{
    Shown s(readingStep());
    QTest::keyClicks(s.field(), QStringLiteral("1.4"));
    s.card.setBusy(true);
    CHECK(child<QLabel>(s.card, "writing") != nullptr);
    s.click(s.button("answer"));
    QTest::keyClick(&s.card, Qt::Key_Return);
    CHECK(s.commands.isEmpty());
    s.card.setBusy(false);
    CHECK(child<QLabel>(s.card, "writing") == nullptr);
    CHECK(s.field()->text() == QStringLiteral("1.4"));
}

TEST_CASE("a reading outside says by how much, what to try, and asks a supervisor in line")
{
    Shown s(outsideStep(2.6));
    QStringList lines;
    for (const auto* label : s.card.findChildren<QLabel*>()) lines << label->text();
    const QString all = lines.join(QLatin1Char('\n')).replace(QChar::Nbsp, QLatin1Char(' '));
    CHECK(all.contains(QStringLiteral("0.60 bar above the upper limit.")));
    CHECK(all.contains(QStringLiteral("Try, in this order:\n1. Look for a leak\n2. Look at the regulator")));
    s.click(s.button("askSupervisor"));
    auto* person = child<QComboBox>(s.card, "person");
    REQUIRE(person);
    REQUIRE(person->count() == 1);  // only those who may
    CHECK(person->currentIndex() == -1);
    QSignalSpy with(&s.card, &StepCard::commandSigned);
    child<ProseField>(s.card, "value0")->setText(QStringLiteral("the gauge was changed"));
    s.click(s.button("accept"));
    CHECK(with.isEmpty());  // nobody named yet
    person->setCurrentIndex(0);
    child<QLineEdit>(s.card, "passphrase")->setText(QStringLiteral("2580"));
    s.click(s.button("accept"));
    REQUIRE(with.size() == 1);
    CHECK(with.at(0).at(0).toString() == QStringLiteral("p-2"));
    CHECK(with.at(0).at(1).toString() == QStringLiteral("2580"));
    CHECK(child<QLineEdit>(s.card, "passphrase")->text().isEmpty());
}

TEST_CASE("on a small screen a reading outside shows first by how much and what to try, from a whole line on")
{
    StepContent content = outsideStep(2.6);
    content.step.say =
        Text("On a clean dry face lay the tape for this material under the joint; butt both edges on it, "
             "no overlap; fold it over, rub it down. A label laminate is taped on both faces.");
    content.step.hands = true;
    Shown s(content);
    s.card.resize(640, 400);
    QTest::qWait(50);
    s.card.show(content);
    QTest::qWait(50);
    const auto* scroll = s.card.findChild<QScrollArea*>();
    REQUIRE(scroll);
    const QRect seen(scroll->viewport()->mapToGlobal(QPoint(0, 0)), scroll->viewport()->size());
    const auto place = [&](const char* begins) {
        for (const auto* label : s.card.findChildren<QLabel*>())
            if (label->isVisible() &&
                label->text().replace(QChar::Nbsp, QLatin1Char(' ')).startsWith(QLatin1String(begins)))
                return QRect(label->mapToGlobal(QPoint(0, 0)), label->size());
        FAIL("nothing says " << begins);
        return QRect();
    };
    CHECK(place("0.60 bar above").top() == seen.top());
    CHECK(seen.contains(place("0.60 bar above")));
    CHECK(seen.contains(place("Try, in this order")));
    // What follows begins at its head again.
    s.card.show(readingStep());
    QTest::qWait(50);
    CHECK(scroll->verticalScrollBar()->value() == 0);
}

TEST_CASE("a reading outside that the usual slip would explain says which slip")
{
    const auto said = [](double bar) {
        Shown s(outsideStep(bar));
        QStringList lines;
        for (const auto* label : s.card.findChildren<QLabel*>()) lines << label->text();
        return lines.join(QLatin1Char('\n')).replace(QChar::Nbsp, QLatin1Char(' '));
    };
    CHECK(said(15).contains(QStringLiteral("The same number with \"psi\" as its unit would fit.")));
    CHECK(said(12).contains(QStringLiteral("A tenth of it would fit.\nCheck the decimal point")));  // point forgotten
    CHECK_FALSE(said(2.4).contains(QStringLiteral("would fit")));                                   // merely too much
}

TEST_CASE("whoever put a stop on is named once, or beside whoever said so")
{
    const auto said = [](const char* by) {
        StepContent content = stepOf(K::Hold);
        run::Answered answer;
        answer.step = content.step.id;
        answer.entered = "Ines Falk";
        content.standing = {};
        content.standing.state = run::StepState::Answered;
        content.standing.answer = answer;
        content.standing.byName = by;
        content.standing.n = 7;
        Shown s(content);
        QStringList lines;
        for (const auto* label : s.card.findChildren<QLabel*>()) lines << label->text();
        return lines.join(QLatin1Char('\n'));
    };
    CHECK(said("Ines Falk").contains(QStringLiteral("The stop was put on by Ines Falk, ")));
    CHECK(said("Tom Ried").contains(QStringLiteral("The stop was put on by Ines Falk; Tom Ried said so, ")));
}

TEST_CASE("a length round the roll typed on the card is told as the diameter that it would be")
{
    StepContent content = outsideStep(2.6);
    run::Answered& answer = *content.standing.answer;
    const auto inches = [](double v) { return Quantity(v * 0.0254, Kind::Length, "in", "62.84 in"); };
    answer.entered = "62.84 in";
    answer.value = inches(62.84);
    targets::Ready ready = *content.target->ready();
    ready.value = inches(20);
    ready.instrument = inches(0.04);
    ready.window = {inches(19.8), inches(20.2), targets::Rule::Press, Text("its plate")};
    content.target->state = ready;
    answer.window = {inches(19.8), inches(20.2), targets::Rule::Press, Text("its plate")};
    Shown s(content);
    QString all;
    for (const auto* label : s.card.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
    CHECK(all.replace(QChar::Nbsp, QLatin1Char(' ')).contains(QStringLiteral("a diameter of 20.00 in")));
}

TEST_CASE("an Enter that was meant for the step before takes no choice")
{
    Shown s(stepOf(procedure::StepKind::Choice));
    s.card.focusAnswer();
    QTest::keyClick(&s.card, Qt::Key_Return);
    QTest::keyClick(&s.card, Qt::Key_Return);
    CHECK(s.commands.isEmpty());
    for (const auto* button : s.card.findChildren<QAbstractButton*>(QStringLiteral("choice")))
        CHECK(s.card.focusWidget() != button);
}

TEST_CASE("a reading that is to be watched counts down too")
{
    StepContent content = readingStep();
    content.step.waitSeconds = 60;
    Shown s(content);
    const auto* wait = child<QLabel>(s.card, "wait");
    REQUIRE(wait);
    CHECK(QString(wait->text()).replace(QChar::Nbsp, QLatin1Char(' ')) ==
          QStringLiteral("Watch it: 60 s to go (less is watched too short)"));
}

TEST_CASE("the tag of another roll is told from an answer that is merely wrong")
{
    StepContent content = stepOf(procedure::StepKind::Scan);
    content.roll = QStringLiteral("R0041");
    run::Answered answer;
    answer.step = content.step.id;
    answer.entered = "R0042";
    answer.judgement = {verdict::Verdict::Outside, false};
    content.standing.state = run::StepState::Outside;
    content.standing.answer = answer;
    Shown s(content);
    QStringList lines;
    for (const auto* label : s.card.findChildren<QLabel*>()) lines << label->text();
    CHECK(lines.join(QLatin1Char(' ')).contains(QStringLiteral("not the tag of roll R0041")));
}

TEST_CASE("a value that will be refused stands on no limit bar, and says why while it is typed")
{
    Shown s(readingStep());
    const auto* bar = s.card.findChild<LimitBarWidget*>();
    REQUIRE(bar);
    s.field()->setText(QStringLiteral("1.4"));
    CHECK(bar->bar().reading);
    s.field()->setText(QStringLiteral("-1.4"));
    CHECK_FALSE(bar->bar().reading);
    QStringList lines;
    for (const auto* label : s.card.findChildren<QLabel*>()) lines << label->text();
    CHECK(lines.join(QLatin1Char(' '))
              .replace(QChar::Nbsp, QLatin1Char(' '))
              .contains(QStringLiteral("less than nothing")));
}

TEST_CASE("what cannot be waived by anybody offers no supervisor")
{
    StepContent content = outsideStep(2.6);
    content.step.waivable = false;
    Shown s(content);
    CHECK(s.button("askSupervisor") == nullptr);
}

TEST_CASE("a stale step shows the old answer and why it went stale")
{
    StepContent content = outsideStep(1.5);
    content.standing.state = run::StepState::Stale;
    content.staleBecause = QStringLiteral("The roll");
    Shown s(content);
    QString all;
    for (const auto* label : s.card.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
    CHECK(all.contains(QStringLiteral("The roll changed after this was answered")));
    CHECK(all.contains(QStringLiteral("1.500000 bar")));
}

TEST_CASE("what was typed stays when the same step is shown anew")
{
    Shown s(readingStep());
    QTest::keyClicks(s.field(), QStringLiteral("1.4"));
    s.card.show(readingStep());
    CHECK(s.field()->text() == QStringLiteral("1.4"));
    StepContent other = readingStep();
    other.step.id = {"another.step.here"};
    s.card.show(other);
    CHECK(s.field()->text().isEmpty());
}
