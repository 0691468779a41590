// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself, killed. Nothing in it knows of these tests: it is the built `tautweb` with the options that
// anybody may give, on the platform without a display, worked by a hand that Qt loads as an input device (hand/hand.cpp
// says why). What is on disk is read with the sqlite3 command line, another program that knows nothing of ours.
#include <catch2/catch.hpp>

#include <QElapsedTimer>
#include <QJsonArray>

#include "app/text/names.h"
#include "app/text/words.h"
#include "core/run/decide.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/window/hands_support.h"
#include "tests/app/window/program_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::hands;
using K = procedure::StepKind;

namespace {

constexpr int kSyncMs = 400;

QString underscored(QString words) { return words.replace(QLatin1Char(' '), QLatin1Char('_')); }

/// The run as its events on disk tell it.
run::Run runOf(const std::vector<std::string>& lines)
{
    std::vector<run::Event> events;
    for (const std::string& line : lines) {
        auto event = run::eventFrom(line);
        REQUIRE(event);
        events.push_back(*std::move(event));
    }
    REQUIRE_FALSE(events.empty());
    return run::Run::fold(events);
}

/// Somebody at the program: they read the card and answer it.
struct Somebody {
    Program program;

    void startAgain(int syncMs)
    {
        program.start(syncMs);
        program.signIn("p-2");
    }
    void begin()
    {
        startAgain(0);
        program.order(QStringLiteral("click A_web_is_in_the_press"));
        program.seeUntil([](const Sight& s) { return s.ready(QStringLiteral("Begin the run")); });
        program.order(QStringLiteral("click Begin_the_run"));
        program.seeUntil([](const Sight& s) { return !s.say.isEmpty(); });
    }
    /// A run that somebody brought this far before, for what happens late in it.
    void beginAt(const std::string& step)
    {
        program.bringTo(step);
        startAgain(kSyncMs);
        resume();
    }
    [[nodiscard]] static QString sayOf(const run::Run& run, const procedure::StepId& id)
    {
        return words(run.plan().find(id)->say, run.began().units);
    }
    /// Gives the answer and lets go: what it touches last is what answers.
    void give(const run::Run& run, const procedure::Step& step)
    {
        const std::string entered = step.kind == K::Scan   ? run.sources().roll.id
                                    : step.kind == K::Hold ? run.operatorName()
                                                           : walk::rightAnswer(run, step).entered;
        switch (step.kind) {
        case K::Confirm:
        case K::Call: break;
        case K::Choice:
            for (const procedure::Choice& c : step.choices)
                if (c.word == entered)
                    program.order((step.vital ? QStringLiteral("hold ") : QStringLiteral("click ")) +
                                  underscored(words(Text(c.say), run.began().units)));
            return;
        case K::Motion:
            for (const std::string& need : step.needs)
                if (procedure::isMachineState(need))
                    program.order(QStringLiteral("click ") + underscored(statementText(need, run.began().units)));
            program.order(QStringLiteral("click clear"));
            program.seeUntil([](const Sight& s) { return s.ready(QStringLiteral("done")); });
            program.order(QStringLiteral("click done"));
            return;
        case K::Reading:
        case K::Scan:
        case K::Hold:
            program.order(QStringLiteral("click field"));
            program.order(QStringLiteral("type ") + underscored(QString::fromStdString(entered)));
            break;
        }
        program.order(step.vital && step.kind == K::Confirm ? QStringLiteral("hold answer")
                                                            : QStringLiteral("click answer"));
    }
    /// Answers what is shown and waits until the screen has gone on.
    void answer()
    {
        const run::Run run = runOf(program.events());
        REQUIRE(run.next());
        const procedure::Step& step = *run.plan().find(*run.next());
        const QString say = sayOf(run, step.id);
        INFO(step.id.value);
        REQUIRE(program.see().say.toStdString() == say.toStdString());
        give(run, step);
        program.seeUntil([&](const Sight& s) { return s.say != say; });
    }
    /// Takes the open run up again: make safe, sentence by sentence, and go on.
    void resume()
    {
        program.seeUntil([](const Sight& s) { return s.ready(QStringLiteral("Go on with it")); });
        program.order(QStringLiteral("click Go_on_with_it"));
        const Sight safe = program.seeUntil([](const Sight& s) { return s.has(QStringLiteral("Go on with the run")); });
        CHECK_THAT(safe.words.toStdString(), Catch::Contains("The program ended under the run"));
        CHECK_FALSE(safe.ready(QStringLiteral("Go on with the run")));
        const QString press = QStringLiteral("click ");
        for (const char* word : run::kMakeSafe)
            program.order(press + underscored(makeSafeText(word, UnitSystem::Metric)));
        program.order(QStringLiteral("click Go_on_with_the_run"));
        program.seeUntil([](const Sight& s) { return !s.say.isEmpty(); });
    }
};

enum class When { AtOnce, WhileItIsWritten, WhenItIsShown };

/// Kills the program around the answer to the step that is next, starts it again and looks whether all is there.
void killAround(Somebody& somebody, When when)
{
    Program& program = somebody.program;
    const std::vector<std::string> before = program.events();
    const run::Run run = runOf(before);
    const procedure::StepId id = *run.next();
    const procedure::Step& step = *run.plan().find(id);
    const QString say = Somebody::sayOf(run, id);
    INFO(id.value << " " << static_cast<int>(when));
    REQUIRE(program.see().say.toStdString() == say.toStdString());
    somebody.give(run, step);
    if (when == When::WhileItIsWritten) {
        program.seeUntil([](const Sight& s) { return s.reads(QStringLiteral("Writing")); });
        pass(kSyncMs / 2);
        CHECK(program.see().say.toStdString() == say.toStdString());
    }
    bool shown = false;
    if (when == When::WhenItIsShown) {
        program.seeUntil([&](const Sight& s) { return s.say != say; });
        shown = true;
    }
    program.kill();

    const std::vector<std::string> after = program.events();
    REQUIRE(after.size() >= before.size());
    // What was there is there, byte for byte, and at most the one answer that was on its way has come to it.
    CHECK(std::equal(before.begin(), before.end(), after.begin()));
    CHECK(after.size() <= before.size() + 1);
    const bool written = after.size() == before.size() + 1;
    if (shown) CHECK(written);
    if (written) {
        const auto event = run::eventFrom(after.back());
        REQUIRE(event);
        const auto* answered = std::get_if<run::Answered>(&event->happening());
        REQUIRE(answered);
        CHECK(answered->step == id);
    }

    somebody.startAgain(kSyncMs);
    somebody.resume();
    const run::Run again = runOf(program.events());
    CHECK(again.id() == run.id());
    CHECK(again.events().size() == after.size() + 2);  // interrupted, resumed
    // The last answer is asked again, whichever it was.
    std::optional<procedure::StepId> last;
    for (const run::Event& e : again.events())
        if (const auto* answered = std::get_if<run::Answered>(&e.happening())) last = answered->step;
    REQUIRE(last);
    CHECK(again.standing(*last).state == run::StepState::Reconfirm);
    const Sight sight = program.see();
    CHECK(sight.say.toStdString() == Somebody::sayOf(again, *again.next()).toStdString());
    // A stop that was held is held anew before hands go in again; otherwise the last answer comes first.
    if (again.heldStops().empty()) CHECK(again.next() == last);
    CHECK_THAT(sight.words.toStdString(), Catch::Contains("Look and say it again"));
}

}  // namespace

TEST_CASE("the program is killed around an answer, and started again it goes on with the same run and loses nothing")
{
    Somebody somebody;
    somebody.begin();
    somebody.answer();
    somebody.program.kill();
    somebody.startAgain(kSyncMs);
    somebody.resume();
    somebody.answer();  // the one that was said before
    SECTION("at the moment of the press") { killAround(somebody, When::AtOnce); }
    SECTION("while it is being written") { killAround(somebody, When::WhileItIsWritten); }
    SECTION("when the screen has gone on")
    {
        killAround(somebody, When::WhenItIsShown);
        somebody.answer();
        killAround(somebody, When::WhileItIsWritten);
        somebody.answer();
        killAround(somebody, When::AtOnce);
        somebody.answer();
    }
}

TEST_CASE("the program is killed in the middle of threading, while somebody holds a stop")
{
    Somebody somebody;
    somebody.beginAt("threading.lift.diameter");
    // What was said about the machine before the kill counts no longer: the stop is held anew, then the rest is said.
    while (runOf(somebody.program.events()).next()->value != "threading.lift.diameter") somebody.answer();
    CHECK(runOf(somebody.program.events()).conditions().contains("stop_held"));
    killAround(somebody, When::WhileItIsWritten);
    const run::Run run = runOf(somebody.program.events());
    CHECK_FALSE(run.heldStops().empty());
    for (const run::HeldStop& held : run.heldStops()) CHECK(held.before);
    CHECK(run.plan().find(*run.next())->kind == K::Hold);
}

TEST_CASE("while a sync takes 400 ms the program shows that it writes, and never the next step")
{
    Somebody somebody;
    somebody.begin();
    somebody.program.kill();
    somebody.startAgain(kSyncMs);
    somebody.resume();
    for (int i = 0; i < 4; ++i) {
        const std::vector<std::string> before = somebody.program.events();
        const run::Run run = runOf(before);
        const procedure::Step& step = *run.plan().find(*run.next());
        const QString say = Somebody::sayOf(run, step.id);
        INFO(step.id.value);
        somebody.give(run, step);
        QElapsedTimer clock;
        bool wrote = false, asking = false;
        somebody.program.seeUntil([&](const Sight& s) {
            if (s.say != say) return true;
            const bool writing = s.reads(QStringLiteral("Writing"));
            if (writing && !wrote) clock.start();
            wrote = wrote || writing;
            // Nothing can be answered meanwhile.
            asking = asking || (writing && s.ready(QStringLiteral("answer")));
            return false;
        });
        CHECK(wrote);
        CHECK_FALSE(asking);
        CHECK(clock.elapsed() >= kSyncMs - 60);  // less the time between two looks
        CHECK(somebody.program.events().size() == before.size() + 1);
    }
}
