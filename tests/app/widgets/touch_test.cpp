// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every control of a step: names, sizes, mnemonics, words that fit.
#include <catch2/catch.hpp>

#include <map>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "app/text/pseudo.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/roll_form.h"
#include "app/widgets/theme.h"
#include "tests/app/widgets/card_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::cards;

namespace {

void showAt(StepCard& card, const StepContent& content, QSize size)
{
    card.resize(size);
    card.show(content);
    static_cast<QWidget&>(card).show();
    QTest::qWait(5);
}

void everyNameIsThere(QWidget& page)
{
    for (QWidget* w : page.findChildren<QWidget*>()) {
        if (w->focusPolicy() == Qt::NoFocus || !w->isVisibleTo(&page) ||
            w->objectName().startsWith(QLatin1String("qt_")))
            continue;
        QAccessibleInterface* access = QAccessible::queryAccessibleInterface(w);
        REQUIRE(access);
        CAPTURE(w->metaObject()->className(), w->objectName().toStdString());
        CHECK_FALSE(access->text(QAccessible::Name).isEmpty());
        CHECK_FALSE(access->text(QAccessible::Name).contains(QLatin1Char('&')));
    }
}

QString shownWords(QWidget& page)
{
    QString outside;
    for (QWidget* w : page.findChildren<QWidget*>()) {
        if (!w->isVisibleTo(&page)) continue;
        if (const auto* label = qobject_cast<QLabel*>(w)) outside += outsideBrackets(label->text());
        if (const auto* button = qobject_cast<QAbstractButton*>(w))
            if (button->property("types").toString().isEmpty()) outside += outsideBrackets(button->text());
        if (const auto* line = qobject_cast<QLineEdit*>(w)) outside += outsideBrackets(line->placeholderText());
    }
    return outside;
}

}  // namespace

TEST_CASE("every control of a step's card has a name for assistive technology")
{
    applyTheme({});
    for (const StepContent& content : everyStep()) {
        StepCard card;
        showAt(card, content, {700, 520});
        everyNameIsThere(card);
    }
    AskPanel ask;
    ask.ask({QStringLiteral("Title"),
             QStringLiteral("Text"),
             {{QStringLiteral("Why"), {}, true, {}},
              {QStringLiteral("Which"), {{QStringLiteral("a"), QStringLiteral("A")}}, true, {}}},
             AskPanel::Question::Secret::Passphrase,
             true,
             {},
             QStringLiteral("Do it")});
    static_cast<QWidget&>(ask).show();
    everyNameIsThere(ask);
    RollForm roll;
    roll.ask(QStringLiteral("Roll"), {}, {}, UnitSystem::Metric);
    static_cast<QWidget&>(roll).show();
    everyNameIsThere(roll);
}

TEST_CASE("what answers a step is at least 20 mm high, a vital fact 25 mm, other controls and rows 10 mm")
{
    applyTheme({});
    const double slack = 0.95;  // ISO-like: within five percent of the millimetres asked for
    for (const StepContent& content : everyStep()) {
        StepCard card;
        showAt(card, content, {700, 560});
        CAPTURE(procedure::stepKindWord(content.step.kind), content.step.vital);
        for (QAbstractButton* b : card.findChildren<QAbstractButton*>()) {
            if (!b->isVisibleTo(&card)) continue;
            CAPTURE(b->text().toStdString(), b->height());
            const QString name = b->objectName();
            double least = 10;
            for (const char* answers : {"answer", "choice", "clear", "done", "giveUp"})
                if (name == QLatin1String(answers)) least = 20;
            if (qobject_cast<HoldButton*>(b)) least = 25;
            CHECK(b->height() >= slack * millimetres(least));
        }
    }
}

TEST_CASE("a screen that reports nonsense counts as 96 dots per inch")
{
    applyTheme({});
    const double perMm = millimetres(100) / 100.0;
    CHECK(perMm >= 70 / 25.4 * 0.99);
    CHECK(perMm <= 220 / 25.4 * 1.01);
    applyTheme({false, 1.0, 2.0});
    CHECK(millimetres(100) / 100.0 == Approx(2 * perMm).epsilon(0.02));
    applyTheme({});
}

TEST_CASE("no two visible buttons of a card share a letter")
{
    applyTheme({});
    for (const StepContent& content : everyStep()) {
        StepCard card;
        showAt(card, content, {700, 520});
        std::map<QString, int> letters;
        for (QAbstractButton* b : card.findChildren<QAbstractButton*>())
            if (b->isVisibleTo(&card) && !b->shortcut().isEmpty()) ++letters[b->shortcut().toString()];
        for (const auto& [letter, count] : letters) {
            CAPTURE(letter.toStdString(), procedure::stepKindWord(content.step.kind));
            CHECK(count == 1);
        }
    }
}

TEST_CASE("a button wraps its words instead of cutting them")
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        applyTheme({false, scale, 1.0});
        WordButton button(QStringLiteral("Nicked at an edge: outer wraps will come off until it is sound"));
        withRole(&button, "answer");
        button.ensurePolished();
        for (const int width : {180, 300, 600}) {
            const int height = button.heightForWidth(width);
            const QRect room(0, 0, width - 40, 10000);
            const QRect words = button.fontMetrics().boundingRect(room, Qt::TextWordWrap, button.text());
            CAPTURE(scale, width, height);
            CHECK(words.height() <= height);
            CHECK(height >= millimetres(20) * 0.95);
        }
    }
    applyTheme({});
}

TEST_CASE("the whole of a card can be reached at any size of type")
{
    for (const double scale : {1.0, 2.0}) {
        applyTheme({false, scale, 1.0});
        for (const StepContent& content : everyStep()) {
            StepCard card;
            showAt(card, content, {680, 420});
            CAPTURE(scale, procedure::stepKindWord(content.step.kind), content.step.vital);
            for (QAbstractButton* b : card.findChildren<QAbstractButton*>()) {
                if (!b->isVisibleTo(&card) || b->property("types").isValid()) continue;
                CAPTURE(b->text().toStdString(), b->width(), b->height());
                CHECK(b->height() >= b->heightForWidth(b->width()) - 1);
                // Inside the card, or inside what scrolls.
                QWidget* holder = b->parentWidget();
                CHECK(holder->rect().adjusted(-1, -1, 1, 1).contains(b->geometry()));
            }
        }
    }
    applyTheme({});
}

TEST_CASE("no word of a card went past the rooms of words")
{
    applyTheme({});
    setPseudo(true);
    for (StepContent content : everyStep()) {
        content.stage = content.place = QStringLiteral("\u27E6x\u27E7");
        StepCard card;
        showAt(card, content, {700, 520});
        CAPTURE(procedure::stepKindWord(content.step.kind), content.step.vital);
        CHECK(shownWords(card).toStdString().empty());
    }
    setPseudo(false);
}

TEST_CASE("light and dark are drawn with the palette's colours")
{
    for (const bool dark : {false, true}) {
        applyTheme({dark, 1.0, 1.0});
        const Palette& p = dark ? darkPalette() : lightPalette();
        CHECK(QApplication::palette().color(QPalette::Window) == p.ground);
        CHECK(QApplication::palette().color(QPalette::WindowText) == p.ink);
        CHECK(contrast(QApplication::palette().color(QPalette::PlaceholderText),
                       QApplication::palette().color(QPalette::Base)) >= 7);
        CHECK(contrast(QApplication::palette().color(QPalette::Disabled, QPalette::ButtonText), p.ground) >= 7);
    }
    applyTheme({});
}
