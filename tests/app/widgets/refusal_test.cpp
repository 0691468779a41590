// SPDX-License-Identifier: GPL-3.0-or-later
// A refusal has its place: nothing moves under a finger, nothing is covered, and it goes when it is mended.
#include <catch2/catch.hpp>

#include <map>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "app/widgets/ask_panel.h"
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
                 "Type the name of the person who holds the stop, as the crew knows it.");
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
    CHECK(button->shownWords() == QStringLiteral("Hold until the bar is full"));
    QTest::mousePress(button, Qt::LeftButton);
    CHECK(button->shownWords() == usual);
    QTest::qWait(HoldButton::kHoldMs + 200);
    QTest::mouseRelease(button, Qt::LeftButton);
    CHECK(button->shownWords() == usual);
}
