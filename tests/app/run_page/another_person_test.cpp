// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody began stays theirs; what is looked through is seen whole; no letter has two meanings.
#include <catch2/catch.hpp>

#include <map>

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "app/pages/run/run_view.h"
#include "app/text/language.h"
#include "app/widgets/controls.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/roll_form.h"
#include "app/widgets/theme.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::north;
using walk::Walk;

namespace {

const PersonChoice kIna{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator};
const PersonChoice kTom{QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor};
const procedure::StepId kBrake{"tension.settings.setting/unwind"};

struct Screen {
    RunView view;
    explicit Screen(const Walk& w, double scale = 1.0)
    {
        applyTheme({false, scale, 1.0});
        view.setPeople({kIna, kTom});
        view.setActor(kIna);
        view.resize(1366, 690);
        view.show(w.run);
        static_cast<QWidget&>(view).show();
        view.activateWindow();
        settle();
    }
    static void settle()
    {
        for (int i = 0; i < 6; ++i) QApplication::processEvents();
    }
    template <class W>
    W* visible(const char* name)
    {
        for (W* w : view.findChildren<W*>(QString::fromLatin1(name)))
            if (w->isVisible()) return w;
        return nullptr;
    }
    [[nodiscard]] QString said() const { return app::test::said(view); }
    /// Alt and a letter, and what it is for, of everything in sight that can be used.
    std::map<QChar, QStringList> letters()
    {
        std::map<QChar, QStringList> found;
        const auto take = [&](const QString& text) {
            const auto at = text.indexOf(QLatin1Char('&'));
            if (at >= 0 && at + 1 < text.size()) found[text[at + 1].toLower()] << text;
        };
        for (const auto* b : view.findChildren<QAbstractButton*>())
            if (b->isVisible() && b->isEnabled()) take(b->text());
        for (const auto* l : view.findChildren<QLabel*>())
            if (l->isVisible() && l->buddy()) take(l->text());
        return found;
    }
    void everyLetterOnce()
    {
        for (const auto& [letter, of] : letters()) {
            CAPTURE(QString(letter).toStdString(), of.join(QStringLiteral(" | ")).toStdString());
            CHECK(of.size() == 1);
        }
    }
};

}  // namespace

TEST_CASE("half a note waits for the person who locked the screen, and is gone for anybody else")
{
    Screen screen(north());
    screen.view.begin(RunAct::Note);
    auto* field = screen.visible<ProseField>("value0");
    REQUIRE(field);
    QTest::keyClicks(field, QStringLiteral("the left cone"));
    screen.view.setActor({});
    screen.view.setActor(kIna);
    field = screen.visible<ProseField>("value0");
    REQUIRE(field);
    CHECK(field->text() == QStringLiteral("the left cone"));
    CHECK(screen.view.isAncestorOf(QApplication::focusWidget()));
    screen.view.setActor({});
    screen.view.setActor(kTom);
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    screen.view.begin(RunAct::Note);
    CHECK(screen.visible<ProseField>("value0")->text().isEmpty());
    screen.view.setActor(kIna);
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    // Begun again it is there again, after Esc too, and for nobody else.
    screen.view.begin(RunAct::Note);
    CHECK(screen.visible<ProseField>("value0")->text() == QStringLiteral("the left cone"));
    QTest::keyClick(screen.visible<ProseField>("value0"), Qt::Key_Escape);
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    screen.view.begin(RunAct::Abandon);
    CHECK(screen.visible<ProseField>("value0")->text().isEmpty());
    screen.view.begin(RunAct::Note);
    CHECK(screen.visible<ProseField>("value0")->text() == QStringLiteral("the left cone"));
}

TEST_CASE("who holds a stop stands on the page, one more person takes one, and a hand-over names them")
{
    Walk w = north();
    Screen screen(w);
    CHECK_FALSE(screen.said().contains(QStringLiteral("Stops held")));
    w.perform(run::HoldStop{"Tom Ried", "latch at the table"});
    screen.view.show(w.run);
    CHECK(screen.said().contains(QStringLiteral("Stops held: Tom Ried (latch at the table)")));
    screen.view.begin(RunAct::HoldStop);
    auto* who = screen.visible<QLineEdit>("value0");
    auto* where = screen.visible<QComboBox>("value1");
    REQUIRE(who);
    REQUIRE(where);
    CHECK(where->count() >= 3);  // nothing is chosen beforehand
    QTest::keyClicks(who, QStringLiteral("ines"));
    where->setCurrentIndex(1);
    QSignalSpy commands(&screen.view, &RunView::command);
    QTest::mouseClick(screen.visible<QPushButton>("accept"), Qt::LeftButton);
    REQUIRE(commands.size() == 1);
    const auto command = commands.at(0).at(0).value<run::Command>();
    CHECK(std::get<run::HoldStop>(command).holder == "ines");  // whom it means is the record's to say
    w.perform(command);
    screen.view.show(w.run);
    CHECK(w.run.heldStops().size() == 2);
    CHECK(screen.said().contains(kIna.name));
    screen.view.begin(RunAct::HandOver);
    CHECK(screen.said().contains(QStringLiteral("Whoever goes home gives up theirs first")));
}

TEST_CASE("half a reason given in one run does not come up in the next")
{
    Screen screen(north());
    screen.view.begin(RunAct::Abandon);
    QTest::keyClicks(screen.visible<ProseField>("value0"), QStringLiteral("roll crushed"));
    Walk other = Walk::begin("south", "cold-brew", "R0048");
    screen.view.show(other.run);
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    screen.view.begin(RunAct::Abandon);
    REQUIRE(screen.visible<ProseField>("value0"));
    CHECK(screen.visible<ProseField>("value0")->text().isEmpty());
}

TEST_CASE("half a note outlasts the interruption that its writer's absence was, and a note given closes its panel")
{
    Walk w = north();
    Screen screen(w);
    screen.view.begin(RunAct::Note);
    QTest::keyClicks(screen.visible<ProseField>("value0"), QStringLiteral("the left cone is worn"));
    w.perform(run::Interrupt{"left_alone"});
    screen.view.show(w.run);
    screen.view.setActor({});
    screen.view.setActor(kIna);
    auto* field = screen.visible<ProseField>("value0");
    REQUIRE(field);
    CHECK(field->text() == QStringLiteral("the left cone is worn"));
    QTest::mouseClick(screen.visible<QPushButton>("accept"), Qt::LeftButton);
    w.perform(run::Note{{}, "the left cone is worn"});
    screen.view.show(w.run);
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    CHECK(screen.said().contains(QStringLiteral("Nobody was at the screen")));
}

TEST_CASE("on a locked screen nothing is offered that needs a name")
{
    const Walk w = north();
    Screen screen(w);
    screen.view.setActor({});
    for (int act = 0; act <= static_cast<int>(RunAct::Leave); ++act) {
        const auto one = static_cast<RunAct>(act);
        CAPTURE(actName(one).toStdString());
        CHECK(actOffered(one, w.run, w.next(), {}) == (one == RunAct::Sheet || one == RunAct::Leave));
        if (auto* button = screen.visible<QPushButton>(qPrintable(QStringLiteral("act%1").arg(act))))
            CHECK_FALSE(button->isEnabled());
    }
    screen.view.setActor(kIna);
    auto* note = screen.visible<QPushButton>(qPrintable(QStringLiteral("act%1").arg(static_cast<int>(RunAct::Note))));
    REQUIRE(note);
    CHECK(note->isEnabled());
}

TEST_CASE("what a supervisor was told stays when the panel is left and opened again, and the focus stays on the card")
{
    Walk w = north();
    REQUIRE(w.untilStep([&](const procedure::Step& s) { return s.id == kBrake; }));
    w.perform(run::Answer{kBrake, "2.5 bar", {}});
    Screen screen(w);
    auto* ask = screen.visible<QPushButton>("askSupervisor");
    REQUIRE(ask);
    QTest::mouseClick(ask, Qt::LeftButton);
    auto* reason = screen.visible<ProseField>("value0");
    REQUIRE(reason);
    QTest::keyClicks(reason, QStringLiteral("gauge checked"));
    QTest::keyClick(reason, Qt::Key_Escape);
    Screen::settle();
    CHECK(screen.visible<ProseField>("value0") == nullptr);
    QWidget* focus = screen.view.focusWidget();
    REQUIRE(focus);
    CAPTURE(focus->objectName().toStdString());
    CHECK(screen.view.isAncestorOf(focus));
    CHECK(focus->isVisible());
    ask = screen.visible<QPushButton>("askSupervisor");
    REQUIRE(ask);
    QTest::mouseClick(ask, Qt::LeftButton);
    reason = screen.visible<ProseField>("value0");
    REQUIRE(reason);
    CHECK(reason->text() == QStringLiteral("gauge checked"));
}

TEST_CASE("no letter stands for two things on a card, a panel or beside them, with small type or large")
{
    const double scale = GENERATE(1.0, 2.0);
    const std::string spoken = GENERATE(as<std::string>{}, "en", "es", "de");
    CAPTURE(spoken, scale);
    setLanguage(QString::fromStdString(spoken));
    Walk w = north();
    for (const auto kind : {procedure::StepKind::Confirm, procedure::StepKind::Hold, procedure::StepKind::Scan,
                            procedure::StepKind::Reading, procedure::StepKind::Motion}) {
        REQUIRE(w.until(kind));
        Screen screen(w, scale);
        screen.everyLetterOnce();
        for (const RunAct act : {RunAct::Note, RunAct::NotApplicable, RunAct::Correct, RunAct::Diameter,
                                 RunAct::ChangeRoll, RunAct::HandOver, RunAct::Abandon, RunAct::Review}) {
            if (!actOffered(act, w.run, w.next(), kIna)) continue;
            screen.view.begin(act);
            CAPTURE(actName(act).toStdString());
            screen.everyLetterOnce();
            QTest::keyClick(screen.view.focusWidget(), Qt::Key_Escape);
        }
        screen.view.setActor(kTom);
        screen.everyLetterOnce();
    }
    Walk outside = north();
    REQUIRE(outside.untilStep([&](const procedure::Step& s) { return s.id == kBrake; }));
    outside.perform(run::Answer{kBrake, "2.5 bar", {}});
    Screen screen(outside, scale);
    screen.everyLetterOnce();
    QTest::mouseClick(screen.visible<QPushButton>("askSupervisor"), Qt::LeftButton);
    screen.everyLetterOnce();
    applyTheme({});
    setLanguage(QStringLiteral("en"));
}

TEST_CASE("a hold step says when the stop has been given up since")
{
    Walk w = north();
    const procedure::Step* hold = w.until(procedure::StepKind::Hold);
    REQUIRE(hold);
    const procedure::StepId id = hold->id;
    w.perform(walk::rightAnswer(w.run, *hold));
    REQUIRE_FALSE(w.run.heldStops().empty());
    const std::string holder = w.run.heldStops().front().holder;
    Screen screen(w);
    screen.view.showStep(id);
    CHECK_FALSE(screen.said().contains(QStringLiteral("given up since")));
    w.perform(run::GiveUpStop{holder});
    screen.view.show(w.run);
    screen.view.showStep(id);
    CHECK(screen.said().contains(QStringLiteral("It has been given up since.")));
}

TEST_CASE("looking through the run shows every answer whole, from the top of its row")
{
    const double scale = GENERATE(1.0, 2.0);
    Walk w = north();
    REQUIRE(w.untilStep([&](const procedure::Step& s) { return s.id == kBrake; }));
    w.perform(run::Answer{kBrake, "2.5 bar", {}});
    w.perform(run::AcceptDeviation{kBrake,
                                   "The gauge was compared with the one of the south press at three pressures, and "
                                   "the brake was felt by hand at each of them before this was accepted.",
                                   walk::signingSupervisor()});
    Screen screen(w, scale);
    screen.view.begin(RunAct::Review);
    Screen::settle();
    auto* table = screen.visible<QTableWidget>("steps");
    REQUIRE(table);
    REQUIRE(table->rowCount() > 10);
    bool deviation = false;
    for (int row = 0; row < table->rowCount(); ++row)
        for (int column = 1; column < 4; ++column) {
            const QString text = table->item(row, column)->text();
            const QRect room(0, 0, table->columnWidth(column) - 12, 100000);
            const QRect needs = QFontMetrics(currentLook().font).boundingRect(room, Qt::TextWordWrap, text);
            CAPTURE(text.toStdString());
            CHECK(table->rowHeight(row) >= needs.height());
            deviation = deviation || text.contains(QStringLiteral("felt by hand at each of them"));
        }
    CHECK(deviation);
    // On the small screen with the largest type at least three lines of the first step are in sight.
    CHECK(table->viewport()->height() >= 3 * QFontMetrics(currentLook().font).lineSpacing());
    applyTheme({});
}

TEST_CASE("what was wrong with one roll is not said beside another")
{
    Screen screen(north());
    screen.view.setRollsAtHand(
        {{QStringLiteral("R0047"), Walk::begin("north", "quince-jelly", "R0047").run.sources().roll.text}});
    screen.view.begin(RunAct::ChangeRoll);
    auto* rolls = screen.visible<QComboBox>("atHand");
    REQUIRE(rolls);
    QTest::mouseClick(screen.visible<QPushButton>("accept"), Qt::LeftButton);
    CHECK(screen.said().contains(QStringLiteral("No roll is chosen yet.")));
    rolls->setCurrentIndex(1);
    CHECK_FALSE(screen.said().contains(QStringLiteral("No roll is chosen yet.")));
}

TEST_CASE("Tab leads from a card to what answers it, and from a panel's question to what gives it")
{
    Walk w = north();
    REQUIRE(w.until(procedure::StepKind::Choice));
    Screen screen(w);
    QTest::keyClick(screen.view.focusWidget() ? screen.view.focusWidget() : &screen.view, Qt::Key_Tab);
    REQUIRE(QApplication::focusWidget());
    CHECK(QApplication::focusWidget()->objectName() == QStringLiteral("choice"));

    screen.view.begin(RunAct::Repeat);
    auto* stage = screen.visible<QComboBox>("value0");
    REQUIRE(stage);
    REQUIRE(stage->hasFocus());
    for (const char* next : {"value1", "cancel", "accept"}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        CHECK(QApplication::focusWidget()->objectName() == QString::fromLatin1(next));
    }
}

TEST_CASE("who holds a stop is handed on as it was typed, for the record to say whom it means")
{
    Walk w = north();
    const procedure::Step* hold = w.until(procedure::StepKind::Hold);
    REQUIRE(hold);
    Screen screen(w);
    QSignalSpy commands(&screen.view, &RunView::command);
    auto* field = screen.visible<QLineEdit>("field");
    REQUIRE(field);
    field->setText(QStringLiteral(" ines "));
    QTest::keyClick(field, Qt::Key_Return);
    REQUIRE(commands.size() == 1);
    CHECK(std::get<run::Answer>(commands.at(0).at(0).value<run::Command>()).entered == "ines");
    field->setText(QStringLiteral("a visitor from the mill"));
    QTest::keyClick(field, Qt::Key_Return);
    REQUIRE(commands.size() == 2);
    CHECK(std::get<run::Answer>(commands.at(1).at(0).value<run::Command>()).entered == "a visitor from the mill");
}
