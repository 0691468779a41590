// SPDX-License-Identifier: GPL-3.0-or-later
// A refusal has its place: nothing moves under a finger, nothing is covered, and it goes when it is mended.
#include <catch2/catch.hpp>

#include <map>

#include <QAbstractButton>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QTest>

#include "app/widgets/ask_panel.h"
#include "app/widgets/drawn.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/secret_line.h"
#include "app/widgets/theme.h"
#include "tests/app/widgets/card_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::cards;
using K = procedure::StepKind;

namespace {

const QSize kColumn(660, 520);  // the middle column of a window of 1366 by 768

StepContent holdStep()
{
    StepContent content = stepOf(K::Hold, true);
    content.step.say = Text(
        "Hold the press stopped here: the latching stop within reach. Each further person with hands in holds a stop "
        "of their own.");
    content.holdStop = "latching stop at the unwind";
    for (const char* name : {"Jorun Haske", "Inka Thorsby", "Matteo Quill"})
        content.people.push_back({QString::fromLatin1(name), QString::fromLatin1(name), people::Role::Operator});
    return content;
}

struct Card {
    StepCard card;
    explicit Card(const StepContent& content, QSize size = kColumn)
    {
        applyTheme({});
        card.resize(size);
        card.show(content);
        static_cast<QWidget&>(card).show();
        card.focusAnswer();
        QTest::qWait(40);
    }
    [[nodiscard]] FindingStrip* strip() const
    {
        for (auto* one : card.findChildren<FindingStrip*>())
            if (one->isVisible()) return one;
        return nullptr;
    }
    /// Where everything stands that can be touched or typed into, and how much of it is seen.
    [[nodiscard]] std::map<const QWidget*, std::pair<QRect, QRect>> places() const
    {
        std::map<const QWidget*, std::pair<QRect, QRect>> all;
        for (const QWidget* w : card.findChildren<QWidget*>()) {
            const bool touched = qobject_cast<const QAbstractButton*>(w) || qobject_cast<const QLineEdit*>(w) ||
                                 qobject_cast<const QComboBox*>(w) || qobject_cast<const ProseField*>(w);
            const auto* of = w->parentWidget();
            if (!touched || !w->isVisible() || qobject_cast<const FindingStrip*>(of)) continue;
            all[w] = {QRect(w->mapTo(&card, QPoint(0, 0)), w->size()), w->visibleRegion().boundingRect()};
        }
        return all;
    }
    void refuse(const char* what, const char* remedy)
    {
        card.refuse(taut::refuse("answer.test", "x", what, remedy));
        QTest::qWait(60);
    }
};

}  // namespace

TEST_CASE("a refusal moves nothing on a card that is typed into, and covers nothing")
{
    std::vector<StepContent> steps{holdStep(), stepOf(K::Scan), readingStep()};
    for (const StepContent& content : steps) {
        CAPTURE(procedure::stepKindWord(content.step.kind));
        Card c(content);
        child<QLineEdit>(c.card, "field")->setText(QStringLiteral("R0041"));
        QTest::qWait(40);
        const auto before = c.places();
        REQUIRE(before.size() >= 2);
        c.refuse("\"R0041\" has figures in it: a roll, a tag or a reading holds no stop.",
                 "Touch or type the name of the person who holds the stop, as the crew knows it.");
        REQUIRE(c.strip());
        CHECK(c.strip()->visibleRegion().boundingRect() == c.strip()->rect());
        CHECK(c.places() == before);
    }
}

TEST_CASE("a refusal goes when what is typed next is good, and not before")
{
    const struct {
        StepContent content;
        const char *bad, *good;
    } kTyped[] = {{holdStep(), "R0042", "Jorun Haske"}, {readingStep(), "4 kg", "1.4 bar"}};
    for (const auto& [content, bad, good] : kTyped) {
        CAPTURE(bad);
        Card c(content);
        auto* field = child<QLineEdit>(c.card, "field");
        field->setText(QString::fromLatin1(bad));
        c.refuse("That was not taken.", "Look again.");
        REQUIRE(c.strip());
        const auto before = c.places();
        field->setText(QString::fromLatin1(bad) + QLatin1Char('1'));
        CHECK(c.strip() != nullptr);
        field->setText(QString::fromLatin1(good));
        QTest::qWait(40);
        CHECK(c.strip() == nullptr);
        // What is said of a reading while it is typed may need more than its room.
        if (content.step.kind != K::Reading) CHECK(c.places() == before);
    }
}

TEST_CASE("a supervisor's panel keeps its fields where they are while it refuses, and every one of them whole")
{
    Card c(outsideStep(2.6), {660, 460});
    QTest::mouseClick(child<QAbstractButton>(c.card, "askSupervisor"), Qt::LeftButton);
    QTest::qWait(60);
    auto* reason = c.card.findChild<ProseField*>(QStringLiteral("value0"));
    REQUIRE(reason);
    child<QComboBox>(c.card, "person")->setCurrentIndex(0);
    const auto before = c.places();
    QTest::mouseClick(child<QAbstractButton>(c.card, "accept"), Qt::LeftButton);
    QTest::qWait(60);
    REQUIRE(c.strip());
    CHECK(c.places() == before);
    CHECK(reason->hasFocus());
    QTest::keyClicks(reason, QStringLiteral("ga"));
    CHECK(c.strip() != nullptr);  // that says nothing yet
    QTest::keyClicks(reason, QStringLiteral("uge"));
    CHECK(c.strip() == nullptr);
    child<QLineEdit>(c.card, "passphrase")->setText(QStringLiteral("4417"));
    c.card.refuse(taut::refuse("sign_in.refused", {}, "This passphrase does not open this person's key.",
                               "Try again. It is the passphrase, not the PIN, that signs. Whoever has lost it has a "
                               "supervisor give them a new first-use code."));
    QTest::qWait(60);
    REQUIRE(c.strip());
    CHECK(c.places() == before);
    for (const auto& [field, seen] : c.places()) {
        CAPTURE(field->objectName().toStdString());
        CHECK(seen.second == field->rect());
    }
}

TEST_CASE("where a reason is missing the cursor goes into it, also where it is one line")
{
    applyTheme({});
    AskPanel panel;
    AskPanel::Question question;
    question.title = QStringLiteral("The stop of Jorun");
    question.fields = {{QStringLiteral("Why not the holder"), {}, false, {}}};
    question.person = true;
    question.secret = AskPanel::Question::Secret::Pin;
    question.people = {{QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor}};
    question.accept = QStringLiteral("Give up");
    panel.ask(question);
    panel.resize(660, 520);
    panel.show();
    panel.findChild<QComboBox*>(QStringLiteral("person"))->setCurrentIndex(0);
    panel.findChild<QLineEdit*>(QStringLiteral("pin"))->setFocus();
    panel.refuse(refuse("gate.no_reason", "Jorun", "It was not said why Jorun does not give it up.", "Say it."),
                 UnitSystem::Metric);
    CHECK(panel.focusWidget() == panel.findChild<QLineEdit*>(QStringLiteral("value0")));
}

TEST_CASE("whoever taps what is to be held is told how it is held, and holding it takes the words away")
{
    Card c(stepOf(K::Confirm, true));
    auto* button = child<HoldButton>(c.card, "answer");
    REQUIRE(button);
    const QString usual = button->shownWords();
    const QSize size = button->size();
    CHECK(usual == button->text());
    QTest::mouseClick(button, Qt::LeftButton);
    CHECK(button->shownWords() == QStringLiteral("Hold until the bar is full"));
    CHECK(button->size() == size);
    QTest::keyClick(button, Qt::Key_Space);
    QTest::qWait(100);
    CHECK(button->shownWords() == QStringLiteral("Hold until the bar is full"));
    QTest::mousePress(button, Qt::LeftButton);
    CHECK(button->shownWords() == usual);
    QTest::qWait(HoldButton::kHoldMs + 200);
    QTest::mouseRelease(button, Qt::LeftButton);
    CHECK(button->shownWords() == usual);
}

TEST_CASE("a key that is held is held, also where its repeats come as let go and pressed again")
{
    Card c(stepOf(K::Confirm, true));
    auto* button = child<HoldButton>(c.card, "answer");
    REQUIRE(button);
    int held = 0;
    QObject::connect(button, &HoldButton::held, button, [&held] { ++held; });
    const auto repeat = [button] {
        QTest::keyRelease(button, Qt::Key_Space);
        QTest::qWait(5);
        QTest::keyPress(button, Qt::Key_Space);
        QTest::qWait(25);
    };
    QTest::keyPress(button, Qt::Key_Space);
    QElapsedTimer since;
    since.start();
    while (since.elapsed() < HoldButton::kHoldMs + 300) repeat();
    QTest::keyRelease(button, Qt::Key_Space);
    CHECK(held >= 1);
    // Let go for good it is not held, however close to the end.
    held = 0;
    QTest::qWait(200);
    QTest::keyPress(button, Qt::Key_Space);
    QTest::qWait(HoldButton::kHoldMs - 200);
    QTest::keyRelease(button, Qt::Key_Space);
    QTest::qWait(500);
    CHECK(held == 0);
    CHECK(button->progress() == 0);
}

TEST_CASE("a supervisor who goes back leaves no secret in the field")
{
    AskPanel panel;
    panel.resize(kColumn);
    AskPanel::Question question;
    question.title = QStringLiteral("Accept it");
    question.fields = {AskPanel::prose(QStringLiteral("Reason"))};
    question.secret = AskPanel::Question::Secret::Passphrase;
    question.person = true;
    question.people = {{QStringLiteral("p-1"), QStringLiteral("Jorun Haske"), people::Role::Supervisor}};
    question.accept = QStringLiteral("Accept");
    panel.ask(question);
    panel.show();
    auto* secret = panel.findChild<SecretLine*>();
    REQUIRE(secret);
    for (const bool byKey : {false, true}) {
        QTest::keyClicks(secret, QStringLiteral("three quiet herons"));
        REQUIRE_FALSE(secret->text().isEmpty());
        if (byKey)
            QTest::keyClick(&panel, Qt::Key_Escape);
        else
            QTest::mouseClick(panel.findChild<QPushButton*>(QStringLiteral("cancel")), Qt::LeftButton);
        CHECK(secret->text().isEmpty());
        CHECK(secret->secret().isEmpty());
    }
}

TEST_CASE("a reading of a stage that is done again is asked anew, and its last value is not shown as if it stood")
{
    StepContent content = readingStep();
    content.standing.state = run::StepState::Answered;
    content.standing.answer = run::Answered{};
    content.standing.answer->step = content.step.id;
    content.standing.answer->entered = "1.4 bar";
    content.standing.answer->value = Quantity(1.4e5, Kind::Pressure, "bar", "1.4 bar");
    content.standing.n = 7;
    const auto shown = [](const Card& card) {
        return card.card.findChild<LimitBarWidget*>()->bar().reading.has_value();
    };
    CHECK(shown(Card(content)));
    content.standing.state = run::StepState::Open;
    const Card again(content);
    CHECK_FALSE(shown(again));
    bool said = false;
    for (const auto* label : again.card.findChildren<QLabel*>())
        said = said || label->text().startsWith(QStringLiteral("Asked again because its stage is done again"));
    CHECK(said);
}

TEST_CASE("a refusal beside a reading that is outside leaves everything that answers in sight")
{
    StepContent content = outsideStep(4.5);
    content.step.waivable = true;
    content.step.vital = true;
    content.step.say =
        Text("At that speed a helper presses an emergency stop, from outside. Seconds until the last roller stands.");
    content.step.signal = procedure::SignalWord::Warning;
    content.step.caution = Text("Nobody reaches in, and nobody stands in line with the web, until all of it stands.");
    content.step.tries = {Text("Time it again from the press of the button until the last roller stands"),
                          Text("Was it at the speed that the step says, and not faster?"),
                          Text("Longer again: withdraw the press, its brakes are worn")};
    Card c(content);
    c.refuse("\"\" is no value.", "Type the number with its unit.");
    REQUIRE(c.strip());
    for (const char* name : {"field", "askSupervisor", "answer"}) {
        CAPTURE(name);
        const auto* widget = child<QWidget>(c.card, name);
        REQUIRE(widget);
        CHECK(widget->visibleRegion().boundingRect() == widget->rect());
    }
    const auto* scroll = c.card.findChild<QScrollArea*>();
    CHECK(scroll->widget()->width() <= scroll->viewport()->width());
}

TEST_CASE("a card comes to rest, however its words fill it")
{
    struct Counter : QObject {
        int resized = 0;
        bool eventFilter(QObject* watched, QEvent* event) override
        {
            resized += event->type() == QEvent::Resize ? 1 : 0;
            return QObject::eventFilter(watched, event);
        }
    };
    StepContent content = outsideStep(4.5);
    content.step.vital = true;
    content.step.say = Text(
        "From the side, bring LIFT up slowly from below and read where the roll begins to rise, near 27.2 psi. Stop it "
        "when its core is level with the shaft.");
    content.step.signal = procedure::SignalWord::Warning;
    content.step.caution = Text("Nobody under, beside or in line with the roll while pressure goes up.");
    content.step.tries = {Text("Let the pressure off: well above the figure, what has not moved is stuck"),
                          Text("Is the figure read on the right ring of the gauge, and in its unit?"),
                          Text("Is it the roll of this tag? Weigh it, and put the mass in as another roll"),
                          Text("It takes more with every roll: have the lift's efficiency put right in the profile")};
    const int tries = GENERATE(4, 2, 0);
    content.step.tries.resize(static_cast<std::size_t>(tries));
    for (int height = 380; height <= 540; height += 4) {
        CAPTURE(tries, height);
        Card c(content, {651, height});
        Counter counter;
        c.card.findChild<QScrollArea*>()->installEventFilter(&counter);
        QTest::qWait(40);
        CHECK(counter.resized <= 1);
    }
}
