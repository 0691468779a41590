// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/step_card.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using walk::north;
using walk::Page;
using walk::Walk;
using K = procedure::StepKind;

TEST_CASE("a letter pressed with Alt is not typed into the field of the step")
{
    Walk w = north();
    w.until(K::Scan);
    Page page(w);
    auto* field = page.visible<QLineEdit>("field");
    field->setFocus();
    for (const char letter : {'n', 'e', 'z', 'k', '7'}) {
        // As a window system sends it when no button has the letter: with its text.
        const QString text(QLatin1Char{letter});
        QKeyEvent press(QEvent::KeyPress, text.toUpper()[0].unicode(), Qt::AltModifier, text);
        QApplication::sendEvent(field, &press);
        CAPTURE(letter);
        CHECK(field->text().isEmpty());
    }
    QTest::keyClicks(field, QStringLiteral("R0041"));
    CHECK(field->text() == QStringLiteral("R0041"));
}

TEST_CASE("when a message is closed the focus goes back to what the step is answered with")
{
    for (const K kind : {K::Confirm, K::Reading, K::Scan, K::Choice, K::Hold}) {
        Walk w = north();
        w.until(kind);
        Page page(w);
        CAPTURE(static_cast<int>(kind));
        // As it comes from the disk: while it was asked the card could not be touched.
        page.view.setBusy(true);
        page.view.setBusy(false);
        page.view.refuse(taut::refuse("answer.test", "x", "That was not taken.", "Look again."));
        Page::settle();
        auto* card = page.view.findChild<StepCard*>();
        CHECK((page.view.focusWidget() == card || card->isAncestorOf(page.view.focusWidget())));
        auto* understood = page.called<QAbstractButton>("Understood");
        SECTION("by mouse") { QTest::mouseClick(understood, Qt::LeftButton); }
        SECTION("by key")
        {
            understood->setFocus();
            QTest::keyClick(understood, Qt::Key_Space);
        }
        Page::settle();
        QWidget* focus = page.view.focusWidget();
        REQUIRE(focus);
        CHECK(focus->objectName() != QStringLiteral("act%1").arg(static_cast<int>(RunAct::Withdraw)));
        if (kind == K::Choice)
            CHECK(focus == card);  // no choice has the focus beforehand
        else
            CHECK(focus == card->area()->first());
    }
}

TEST_CASE("holding is asked for before what is confirmed by it, on one line")
{
    Walk w = north();
    REQUIRE(w.untilStep([](const procedure::Step& s) { return s.kind == K::Confirm && s.vital; }));
    Page page(w);
    auto* button = page.visible<HoldButton>("answer");
    CHECK(button->text() == QStringLiteral("Hold to confirm: I have seen it"));
    CHECK(button->width() >= button->sizeHint().width());
}

TEST_CASE("what is asked is still read without scrolling after a reading was typed")
{
    Walk w = north();
    int readings = 0, seenWhole = 0;
    while (w.until(K::Reading)) {
        const procedure::Step step = *w.next();
        {
            Page page(w);
            auto* field = page.visible<QLineEdit>("field");
            auto* scroll = page.view.findChild<StepCard*>()->findChild<QScrollArea*>();
            const QByteArray type = page.visible<QLabel>("say")->property("role").toByteArray();
            for (const char* typed : {"7", "7 mm", "7 x", "99999999"}) {
                field->clear();
                QTest::keyClicks(field, QString::fromLatin1(typed));
                Page::settle();
                CAPTURE(step.id.value, typed);
                // In the same type as before, whatever is said of the reading: nothing jumps under whoever types.
                CHECK(page.visible<QLabel>("say")->property("role").toByteArray() == type);
                seenWhole += scroll->verticalScrollBar()->maximum() == 0 ? 1 : 0;
                CHECK(field->hasFocus());
            }
        }
        ++readings;
        w.answerWell(step);
    }
    CHECK(readings > 5);
    CHECK(seenWhole > readings);
}

TEST_CASE("a step's card scrolls only where its words are as small as they get")
{
    Walk w = north();
    int cards = 0, scrolling = 0;
    while (w.next() != nullptr) {
        const procedure::Step step = *w.next();
        {
            Page page(w);
            Page::settle();
            auto* card = page.view.findChild<StepCard*>();
            const auto* scroll = card->findChild<QScrollArea*>();
            const bool small =
                card->findChild<QLabel*>(QStringLiteral("say"))->property("role").toByteArray().isEmpty();
            const bool bar = scroll->verticalScrollBar()->isVisible();
            INFO(step.id.value);
            CHECK((!bar || small));
            // And where there is no bar, there is nothing under the edge.
            CHECK((bar || scroll->widget()->height() <= scroll->viewport()->height()));
            scrolling += bar ? 1 : 0;
        }
        ++cards;
        w.answerWell(step);
    }
    CHECK(cards > 70);
    CAPTURE(scrolling, cards);
    // Among them five movements, each with all that has to be seen before it, and readings with a warning.
    CHECK(scrolling * 8 < cards);
}
