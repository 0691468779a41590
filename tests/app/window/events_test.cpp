// SPDX-License-Identifier: GPL-3.0-or-later
// What comes between, in the real window: each by mouse alone and by keyboard alone. What leads there goes through the
// same session without hands.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWindow>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "tests/app/window/crew_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::hands;

namespace {

Way eachWay() { return GENERATE(Way::Mouse, Way::Keys); }

/// Presses what accepts on a panel that asks; Enter does the same.
void accept(Crew& crew)
{
    if (crew.hand.way() == Way::Keys)
        crew.hand.key(Qt::Key_Return);
    else
        crew.hand.press(crew.hand.must<QAbstractButton>("accept"));
    crew.settle();
}

/// The unwind's tension setting, read far above its window.
void readTooMuch(Crew& crew)
{
    crew.skipTo("tension.settings.setting/unwind");
    crew.answer("2.9 bar");
}

bool reads(Crew& crew, const char* part)
{
    INFO(crew.hand.read().toStdString());
    CHECK_THAT(crew.hand.read().toStdString(), Catch::Contains(part));
    return crew.hand.read().contains(QString::fromLatin1(part));
}

void signAsItStands(Crew& crew) { crew.sign(QStringLiteral("as it stands")); }

}  // namespace

TEST_CASE("a value outside its window stays on its step, says how far out it is, and is read again")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    readTooMuch(crew);
    const procedure::StepId id{"tension.settings.setting/unwind"};
    CHECK(crew.page().shownStep() == id);
    CHECK(crew.run().stateOf(id) == run::StepState::Outside);
    CHECK(reads(crew, "above the upper limit"));
    CHECK(reads(crew, "Try, in this order"));
    crew.answerWell();
    CHECK(crew.run().stateOf(id) == run::StepState::Answered);
    CHECK(crew.page().shownStep() == *crew.run().next());
}

TEST_CASE("a value outside its window is accepted only by a supervisor who signs it, with a reason")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    readTooMuch(crew);
    const procedure::StepId id{"tension.settings.setting/unwind"};
    crew.hand.press(crew.hand.must<QAbstractButton>("askSupervisor"));
    auto* who = crew.hand.must<QComboBox>("person");
    CHECK(who->count() == 2);  // of the five people of the shop only two may
    crew.hand.type(crew.hand.must<ProseField>("value0"), QStringLiteral("brake pads are new"));
    crew.hand.choose(who, who->itemText(0));
    crew.hand.type(crew.hand.must<QLineEdit>("passphrase"), crew.pin("p-1"));
    accept(crew);
    CHECK(crew.run().stateOf(id) == run::StepState::Outside);
    CHECK(crew.hand.must<ProseField>("value0")->text() == QStringLiteral("brake pads are new"));
    crew.hand.type(crew.hand.must<QLineEdit>("passphrase"), crew.passphrase("p-1"));
    accept(crew);
    CHECK(crew.run().stateOf(id) == run::StepState::Deviated);
    CHECK(crew.run().standing(id).deviation->byName == "Matteo Quill");
    CHECK(crew.page().shownStep() == *crew.run().next());
}

TEST_CASE("another roll in the middle opens what it touches, first things first, and nothing else")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo("threading.lead.strip");
    const auto answered = crew.run().events().size();
    crew.act(RunAct::ChangeRoll);
    auto* rolls = crew.hand.must<QComboBox>("atHand");
    QString wanted;
    for (int i = 0; i < rolls->count(); ++i)
        if (rolls->itemText(i).startsWith(QLatin1String("R0047"))) wanted = rolls->itemText(i);
    crew.hand.choose(rolls, wanted);
    // Enter in the list, as a scanner ends, leads to the button: what the roll changes is read first.
    if (crew.hand.way() == Way::Keys) {
        accept(crew);
        REQUIRE(crew.run().events().size() == answered);
    }
    accept(crew);
    REQUIRE(crew.run().events().size() == answered + 1);
    const auto& changed = std::get<run::InputsChanged>(crew.run().events().back().happening());
    CHECK(crew.run().sources().roll.id == "R0047");
    REQUIRE_FALSE(changed.stale.empty());
    CHECK(crew.page().shownStep() == changed.stale.front());
    CHECK(reads(crew, "The roll changed after this was answered"));
    for (const procedure::Step& step : crew.run().plan().steps) {
        const bool listed = std::find(changed.stale.begin(), changed.stale.end(), step.id) != changed.stale.end();
        CHECK((crew.run().stateOf(step.id) == run::StepState::Stale) == listed);
    }
    crew.walkTo("threading.lead.strip");
    CHECK(crew.next().id.value == "threading.lead.strip");
}

TEST_CASE("somebody else's held stop is given up by their PIN, or by a supervisor who says why")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    const std::string jorun = crew.name("p-3").toStdString();
    crew.session().perform(run::HoldStop{jorun, "latch at the table"});
    crew.settle();
    crew.skipTo([&](const procedure::Step& step) {
        const auto closed = run::closedBecause(crew.run(), step.id);
        return closed && closed->code == "gate.stop_held";
    });
    REQUIRE(crew.run().heldStops().size() == 1);
    const bool himself = GENERATE(true, false);
    crew.hand.hold(crew.hand.must<QAbstractButton>("giveUp"));
    crew.settle();
    REQUIRE(crew.run().heldStops().size() == 1);
    CHECK(reads(crew, "A held stop is its holder's alone"));
    auto* who = crew.hand.must<QComboBox>("person");
    REQUIRE(who->itemText(0).startsWith(crew.name("p-3")));
    crew.hand.choose(who, who->itemText(himself ? 0 : 1));
    crew.hand.type(crew.hand.must<QLineEdit>("pin"), crew.pin(himself ? "p-3" : "p-1"));
    if (!himself) {
        accept(crew);
        REQUIRE(crew.run().heldStops().size() == 1);
        CHECK(reads(crew, "It was not said why"));
        crew.hand.type(crew.hand.must<QLineEdit>("value0"), QStringLiteral("went home, I looked"));
        crew.hand.type(crew.hand.must<QLineEdit>("pin"), crew.pin("p-1"));
    }
    accept(crew);
    CHECK(crew.run().heldStops().empty());
    const auto& given = std::get<run::StopGivenUp>(crew.run().events().back().happening());
    CHECK(given.saidBy == (himself ? "p-3" : "p-1"));
    CHECK(crew.hand.seen<QAbstractButton>("giveUp") == nullptr);
}

TEST_CASE("after a web break the splice is done again, and only then the run goes on")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo("web_guide.sensors.hold");
    crew.act(RunAct::Repeat);
    auto* stage = crew.hand.must<QComboBox>("value0");
    crew.hand.choose(stage, stage->itemText(stage->findData(QStringLiteral("splice"))));
    crew.hand.choose(crew.hand.must<QComboBox>("value1"), causeText("web_break"));
    accept(crew);
    CHECK(crew.next().id.value == "splice.old_web.old_web");
    CHECK(crew.run().stageState(3) == run::StageState::InWork);
    for (int i = 0; i < 4; ++i) crew.answerWell();
    crew.skipTo("web_guide.sensors.hold");
    CHECK(crew.page().shownStep().value == "web_guide.sensors.hold");
}

TEST_CASE("a next roll, a new threading and a restart go on from the run that was signed")
{
    const auto [kind, least] = GENERATE(std::pair("next_roll", 15), std::pair("re_web", 15), std::pair("restart", 5));
    Crew crew(std::string(kind) == "re_web" ? Way::Mouse : Way::Keys);
    crew.signIn("p-2");
    crew.begin(kNorth);
    const std::string parent = crew.run().id();
    const std::size_t whole = crew.run().plan().steps.size();
    crew.skipTo("");
    signAsItStands(crew);
    // The seal leads to the sheet; the run door leads back.
    crew.hand.press(crew.hand.mustWorded(QStringLiteral("Run")));
    Choice again = kNorth;
    again.kind = kind;
    again.roll = "R0047";
    crew.begin(again);
    CHECK(crew.run().began().parent == parent);
    CHECK(crew.run().plan().kind == kind);
    CHECK(crew.run().plan().steps.size() < whole);
    CHECK(crew.run().plan().steps.size() > static_cast<std::size_t>(least));
    for (int i = 0; i < 5; ++i) crew.answerWell();
    crew.skipTo("");
    signAsItStands(crew);
    CHECK(crew.sealedRuns().size() == 2);
}

TEST_CASE("a run is abandoned with a reason and a signature, sealed as what it is, and shown")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    for (std::size_t round = 1; round <= 2; ++round) {
        if (round > 1) crew.hand.press(crew.hand.mustWorded(QStringLiteral("Run")));
        crew.begin(kNorth);
        crew.answerWell();
        const QString id = QString::fromStdString(crew.session().run()->id());
        crew.act(RunAct::Abandon);
        crew.hand.type(crew.hand.must<ProseField>("value0"), QStringLiteral("the job was cancelled"));
        crew.hand.type(crew.hand.must<QLineEdit>("passphrase"), crew.passphrase("p-2"));
        QSignalSpy sealed(&crew.session(), &Session::sealed);
        accept(crew);
        REQUIRE((!sealed.isEmpty() || sealed.wait(20000)));
        crew.settle();
        CHECK_FALSE(crew.session().run());
        const auto documents = crew.sealedRuns();
        REQUIRE(documents.size() == round);
        CHECK(documents.back().find("the job was cancelled") != std::string::npos);
        CHECK(documents.back().find("\"abandoned\"") != std::string::npos);
        // Whatever was looked at before.
        CHECK(crew.hand.must<RowList>("runs")->chosen() == id);
    }
}

TEST_CASE("a press is withdrawn by whoever sees what is wrong and given back by another, a supervisor")
{
    Crew crew(eachWay());
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo("power_up.tests.stop_test");
    crew.act(RunAct::Withdraw);
    crew.hand.type(crew.hand.must<ProseField>("value0"), QStringLiteral("it moved on the reset"));
    accept(crew);
    CHECK(crew.run().phase() == run::Phase::Withdrawn);
    CHECK(reads(crew, "This press is withdrawn from use"));
    CHECK(reads(crew, "it moved on the reset"));
    CHECK_FALSE(crew.hand.must<QAbstractButton>("answer")->isEnabled());
    crew.signIn("p-1");
    CHECK(crew.hand.must<QAbstractButton>("answer")->isEnabled());
    crew.hand.type(crew.hand.must<ProseField>("done"), QStringLiteral("new relay, tried ten times"));
    if (crew.hand.way() == Way::Keys)
        crew.hand.key(Qt::Key_Return);
    else
        crew.hand.press(crew.hand.must<QAbstractButton>("answer"));
    crew.settle();
    CHECK(crew.run().phase() == run::Phase::Interrupted);
    // Given back is not gone on: the press is made safe first, and what was said before is said again.
    for (QWidget* box : crew.hand.window()->findChildren<QWidget*>(QStringLiteral("statement")))
        if (box->isVisible()) crew.hand.press(box);
    crew.hand.press(crew.hand.must<QAbstractButton>("answer"));
    crew.settle();
    CHECK(crew.run().phase() == run::Phase::Running);
    CHECK(crew.run().stateOf(crew.next().id) == run::StepState::Reconfirm);
    crew.answerWell();
}

TEST_CASE("a key still held from the step before ticks nothing on the next card, told or not that it repeats")
{
    Crew crew(Way::Keys);
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo("power_up.tests.stop_test");
    auto* box = crew.hand.must<QAbstractButton>("statement");
    REQUIRE(crew.hand.window()->focusWidget() == box);
    const auto send = [&](QEvent::Type type, quint64 at, bool told) {
        QKeyEvent event(type, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "), told);
        event.setTimestamp(at);
        QApplication::sendEvent(crew.hand.window()->windowHandle(), &event);
    };
    quint64 at = 50'000'000;
    for (const bool told : {true, false})
        for (int i = 0; i < 5; ++i) {
            at += 40;
            send(QEvent::KeyRelease, at, told);
            send(QEvent::KeyPress, at, told);
        }
    send(QEvent::KeyRelease, at + 40, false);
    CHECK_FALSE(box->isChecked());
    send(QEvent::KeyPress, at + 400, false);
    send(QEvent::KeyRelease, at + 480, false);
    CHECK(box->isChecked());
}

TEST_CASE("a fact is confirmed by a key that is held, where its repeats come as let go and pressed again")
{
    Crew crew(Way::Keys);
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo([](const procedure::Step& s) { return s.vital && s.kind == procedure::StepKind::Confirm; });
    const procedure::StepId id = crew.next().id;
    crew.hand.must<HoldButton>("answer")->setFocus();
    quint64 at = 50'000'000;
    const auto send = [&](QEvent::Type type) {
        QKeyEvent event(type, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "), false);
        event.setTimestamp(at);
        QApplication::sendEvent(crew.hand.window()->windowHandle(), &event);
    };
    send(QEvent::KeyPress);
    for (int i = 0; i < 40 && crew.run().stateOf(id) != run::StepState::Answered; ++i) {
        QTest::qWait(40);
        at += 40;
        send(QEvent::KeyRelease);
        send(QEvent::KeyPress);
    }
    send(QEvent::KeyRelease);
    crew.settle();
    CHECK(crew.run().stateOf(id) == run::StepState::Answered);
}

TEST_CASE("nobody, whatever their role, can finish a run with a step open that nobody may waive")
{
    Crew crew(Way::Keys);
    crew.signIn("p-2");
    crew.begin(kNorth);
    crew.skipTo([](const procedure::Step& s) { return !s.waivable && s.kind == procedure::StepKind::Confirm; });
    const procedure::StepId id = crew.next().id;
    const char* who = GENERATE("p-1", "p-2", "p-3", "p-4");
    if (std::string(who) != "p-2") crew.signIn(who);
    INFO(who);
    for (const RunAct act : {RunAct::NotApplicable, RunAct::Correct}) {
        QAbstractButton* button = crew.hand.worded(actName(act).remove(QLatin1Char('&')));
        REQUIRE(button);
        CHECK_FALSE(button->isEnabled());
    }
    crew.act(RunAct::Review);
    CHECK_FALSE(crew.hand.must<QAbstractButton>("answer")->isEnabled());
    CHECK(reads(crew, "steps are open: the run cannot be signed yet"));
    // Past the screen the rules stand on their own.
    QSignalSpy refused(&crew.session(), &Session::refused);
    const std::size_t events = crew.run().events().size();
    crew.session().finish(run::SignOff{"never mind"}, crew.passphrase("p-2"));
    crew.settle();
    CHECK(refused.size() == 1);
    crew.session().perform(run::SkipStep{id, "never mind", {}});
    crew.settle();
    CHECK(refused.size() == 2);
    CHECK(crew.run().events().size() == events);
    CHECK(crew.sealedRuns().empty());
}

TEST_CASE("a press without air, lift, guide, gauge and UV closes every stage")
{
    const auto profile = readFile(TAUTWEB_SOURCE_DIR "/tests/data/presses/bare.toml");
    REQUIRE(profile);
    Crew crew(Way::Keys, *profile);
    crew.signIn("p-2");
    crew.begin({"bare", "J-2102", "R0045", "full", {}, true});
    for (const procedure::PlanStage& stage : crew.run().plan().stages) CHECK(stage.count > 0);
    crew.walkTo({});
    for (std::size_t i = 0; i < crew.run().plan().stages.size(); ++i)
        CHECK(crew.run().stageState(i) == run::StageState::Done);
    signAsItStands(crew);
    CHECK(crew.sealedRuns().size() == 1);
}
