// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"
#include "tests/app/said.h"
#include "tests/app/widgets/card_support.h"

// A reading's card while somebody types, and the supervisor's panel in it.
using namespace taut;
using namespace taut::app;
using namespace taut::app::cards;

namespace {

struct Card {
    StepCard card;
    explicit Card(const StepContent& content, QSize size = {640, 430})
    {
        applyTheme({});
        card.resize(size);
        card.show(content);
        static_cast<QWidget&>(card).show();
        card.focusAnswer();
        QTest::qWait(30);
    }
    template <class W>
    W* at(const char* name)
    {
        W* w = child<W>(card, name);
        INFO("nothing in sight is called " << name);
        REQUIRE(w);
        return w;
    }
    [[nodiscard]] QString words() const { return app::test::said(card); }
    /// All of it lies where it can be seen: in the card, and in what scrolls it.
    [[nodiscard]] bool seenWhole(const QWidget* w) const
    {
        QRect seen(card.mapToGlobal(QPoint(0, 0)), card.size());
        for (const QWidget* p = w->parentWidget(); p && p != &card; p = p->parentWidget())
            seen &= QRect(p->mapToGlobal(QPoint(0, 0)), p->size());
        return w->isVisible() && seen.contains(QRect(w->mapToGlobal(QPoint(0, 0)), w->size()));
    }
};

StepContent longReading()
{
    StepContent content = readingStep();
    content.step.say =
        Text("Set the air of the unwind's brake to the target while the web stands, then read it on the gauge at the "
             "brake itself and not on the one at the panel, which shows what was asked for and not what is there.");
    return content;
}

}  // namespace

TEST_CASE("nothing of a card moves or changes its size while a reading is typed")
{
    for (const QSize size : {QSize(640, 430), QSize(700, 520), QSize(560, 620)}) {
        Card c(longReading(), size);
        c.at<QLineEdit>("field")->setText(QStringLiteral("1"));  // where it scrolls, the field comes into sight
        QTest::qWait(30);
        auto* say = c.at<QLabel>("say");
        auto* answer = c.at<QAbstractButton>("answer");
        const QFont type = say->font();
        const QRect saidAt(say->mapTo(&c.card, QPoint(0, 0)), say->size());
        const QPoint answerAt = answer->mapTo(&c.card, QPoint(0, 0));
        // One with nothing to say, one near, one outside, one that cannot be, one that is no number yet.
        for (const char* typed : {"1.5", "1.95", "2.6", "-3", "1.", "1.9.", ""}) {
            c.at<QLineEdit>("field")->setText(QString::fromLatin1(typed));
            QTest::qWait(30);
            INFO(typed << " in " << size.width() << " by " << size.height());
            CHECK(say->font().pointSizeF() == type.pointSizeF());
            CHECK(QRect(say->mapTo(&c.card, QPoint(0, 0)), say->size()) == saidAt);
            CHECK(answer->mapTo(&c.card, QPoint(0, 0)) == answerAt);
        }
    }
}

TEST_CASE("a reading that is near says why, while it is typed and when it stands")
{
    StepContent content = readingStep();
    auto& ready = std::get<targets::Ready>(content.target->state);
    const auto bar = [](double v) { return Quantity(v * 1e5, Kind::Pressure, "bar", "1.04 bar"); };
    ready.window.low = bar(1.0);
    ready.window.high = bar(1.08);  // the gauge reads to 0.1 bar: nothing can be inside
    Card c(content);
    c.at<QLineEdit>("field")->setText(QStringLiteral("1.04"));
    QTest::qWait(30);
    CHECK(c.words().contains(QStringLiteral("more than half of the window")));
    CHECK(c.card.findChild<LimitBarWidget*>()->toolTip().contains(QStringLiteral("more than half of the window")));
    run::Answered answer;
    answer.step = content.step.id;
    answer.entered = "1.04 bar";
    answer.value = bar(1.04);
    answer.window = ready.window;
    answer.uncertainty = 0.1e5;
    answer.judgement = {verdict::Verdict::Near, false};
    content.standing.state = run::StepState::Answered;
    content.standing.answer = answer;
    c.card.show(content);
    QTest::qWait(30);
    CHECK(c.words().contains(QStringLiteral("It is near a limit: it can be read to 0.10 bar either way")));
}

TEST_CASE("what a supervisor's panel refuses stands whole above what gives it, the field that it is about in sight")
{
    // The middle column of a window of 1366 by 768, and of 1024 by 700.
    for (const QSize size : {QSize(660, 430), QSize(500, 370)}) {
        INFO(size.width() << " by " << size.height());
        Card c(outsideStep(2.6), size);
        QTest::mouseClick(c.at<QAbstractButton>("askSupervisor"), Qt::LeftButton);
        QTest::qWait(30);
        auto* panel = c.card.findChild<ProseField*>(QStringLiteral("value0"));
        REQUIRE(panel);
        const auto strip = [&]() -> FindingStrip* {
            for (auto* one : c.card.findChildren<FindingStrip*>())
                if (one->isVisible()) return one;
            FAIL("nothing is refused in sight");
            return nullptr;
        };
        const auto together = [&](QWidget* field) {
            QTest::qWait(30);
            CHECK(c.seenWhole(field));
            CHECK(c.seenWhole(strip()));
            auto* accept = c.at<QAbstractButton>("accept");
            CHECK(c.seenWhole(accept));
            const int below = strip()->mapToGlobal(QPoint(0, strip()->height())).y();
            CHECK(accept->mapToGlobal(QPoint(0, 0)).y() - below < 20);
            CHECK(accept->mapToGlobal(QPoint(0, 0)).y() >= below);
        };
        QTest::mouseClick(c.at<QAbstractButton>("accept"), Qt::LeftButton);
        together(panel);
        CHECK(strip()->text().contains(QStringLiteral("Fill it in")));
        panel->setText(QStringLiteral("x"));
        c.at<QComboBox>("person")->setCurrentIndex(0);
        c.at<QLineEdit>("passphrase")->setText(QStringLiteral("no such words here"));
        c.card.refuse(taut::refuse("gate.no_reason", "x", "A deviation needs a reason.", "Say it in a few words."));
        together(panel);
        CHECK(panel->hasFocus());
        c.card.refuse(taut::refuse("sign_in.refused", {}, "This passphrase does not open this person's key.",
                                   "Type it again, or let another supervisor sign."));
        together(c.at<QLineEdit>("passphrase"));
        CHECK(c.at<QLineEdit>("passphrase")->hasFocus());
    }
}

TEST_CASE("a reason has room for a sentence, Tab leaves it, Enter gives it, and it stays one line of text")
{
    Card c(outsideStep(2.6), {700, 520});
    QTest::mouseClick(c.at<QAbstractButton>("askSupervisor"), Qt::LeftButton);
    auto* reason = c.at<ProseField>("value0");
    const int line = reason->fontMetrics().lineSpacing();
    CHECK(reason->height() > 2 * line);
    reason->setFocus();
    QTest::keyClicks(reason, QStringLiteral("the maker cut it down"));
    QTest::keyClick(reason, Qt::Key_Return);
    CHECK(reason->text() == QStringLiteral("the maker cut it down"));  // Enter went on to what is still wanted
    CHECK(c.at<QComboBox>("person")->hasFocus());
    reason->setFocus();
    QTest::keyClick(reason, Qt::Key_Tab);
    CHECK_FALSE(reason->hasFocus());
    CHECK(reason->text() == QStringLiteral("the maker cut it down"));
    reason->setText(QStringLiteral("one\ntwo"));
    CHECK(reason->text() == QStringLiteral("one two"));
}

TEST_CASE("whoever comes to the reasons by the Tab key sees that they are there")
{
    applyTheme({});
    WhyPanel why;
    why.resize(300, 200);
    why.say(QStringLiteral("Because."));
    QLineEdit other;
    static_cast<QWidget&>(why).show();
    other.show();
    const auto edge = [&] { return why.grab().toImage().pixelColor(1, why.height() / 2); };
    other.activateWindow();
    other.setFocus();
    QTest::qWait(20);
    const QColor without = edge();
    why.activateWindow();
    why.setFocus();
    QTest::qWait(20);
    REQUIRE(why.hasFocus());
    CHECK(edge() == currentLook().palette.accent);
    CHECK_FALSE(without == currentLook().palette.accent);
}

TEST_CASE("what is asked is seen whole, or it can be seen that it scrolls")
{
    std::vector<StepContent> all = everyStep();
    StepContent hold = stepOf(procedure::StepKind::Hold, true);
    hold.step.say =
        Text("Hold the press stopped here. Who holds it? Each further person with hands in holds their own.");
    hold.step.signal = procedure::SignalWord::Warning;
    hold.step.caution = Text("Without a held stop another button moves the press while your hands are in it.");
    hold.holdStop = "latching stop";
    for (const char* name : {"Ada Birch", "Ben Cole", "Cy Dorn"})
        hold.people.push_back({QString::fromLatin1(name), QString::fromLatin1(name), people::Role::Operator});
    all.push_back(hold);
    all.push_back(longReading());
    for (const QSize size : {QSize(672, 458), QSize(500, 370), QSize(660, 300)})
        for (const StepContent& content : all) {
            Card c(all.front(), size);
            c.card.show(content);  // come upon from another step, as in a run
            QTest::qWait(20);
            auto* scroll = c.card.findChild<QScrollArea*>();
            if (!scroll->isVisible()) continue;
            INFO(content.step.say.source << " in " << size.width() << " by " << size.height());
            const int cut = scroll->widget()->height() - scroll->viewport()->height();
            const bool bar = scroll->verticalScrollBar()->isVisible();
            CHECK((cut <= 0 || bar));
        }
}

TEST_CASE("a step whose setting has no value, since nobody knows what the setting does, offers to find it")
{
    StepContent content = readingStep();
    REQUIRE(content.target);
    {
        Card known(content);
        CHECK(child<QAbstractButton>(known.card, "findConstant") == nullptr);
    }
    content.target->state = targets::Needs{{"press.zone.unwind.torque_per_setting"}};
    Card card(content);
    QSignalSpy wanted(&card.card, &StepCard::constantWanted);
    card.at<QAbstractButton>("findConstant")->click();
    REQUIRE(wanted.count() == 1);
    CHECK(wanted.front().front().toString() == QStringLiteral("unwind"));
    // Another key that is missing is not found at a spring scale.
    content.target->state = targets::Needs{{"press.zone.unwind.setting"}};
    Card other(content);
    CHECK(child<QAbstractButton>(other.card, "findConstant") == nullptr);
}
