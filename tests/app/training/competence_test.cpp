// SPDX-License-Identifier: GPL-3.0-or-later
// Who may sign a set-up of a press alone: refused, countersigned, said by a supervisor, ended; by clicks and keys.
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>

#include "app/pages/run/run_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/sessions/practice_session.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/secret_line.h"
#include "core/base/file.h"
#include "core/logbook/training.h"
#include "core/records/texts.h"
#include "core/seal/document.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/training/attempts_made.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

constexpr const char* kInka = "p-2";
constexpr const char* kMatteo = "p-1";  // a supervisor
constexpr const char* kOdalys = "p-5";  // another

/// The practice logbook lies in a folder of the test, from before there is a window.
struct OwnPractice {
    QTemporaryDir practised;
    OwnPractice() { qputenv("XDG_DATA_HOME", practised.path().toUtf8()); }
};
/// The demo shop whose north press asks competence after one set-up that was watched.
struct Strict : OwnPractice, Window {
    Strict() : Window(true)
    {
        as(kMatteo);
        const std::string file = readFile(session().options().resources / "presses" / "north.toml").value();
        session().keepText(file + "\n[policy]\ncompetence_asked = 1\ncompetence_runs = 1\n");
        done();
        REQUIRE(newest(session(), "press", "north").edition == 2);
    }
    void as(const char* person)
    {
        if (session().actor()) lock();
        signIn(session(), person);
        QTest::qWait(30);
    }
    /// A full set-up of the north press by whoever is signed in, up to where it is looked through.
    void walk()
    {
        begin(session());
        for (int guard = 0; guard < 400; ++guard) {
            const run::Run& run = *session().run();
            const auto next = run.next();
            if (!next) break;
            const procedure::Step step = *run.plan().find(*next);
            run::Command command = walk::rightAnswer(run, step);
            if (const auto closed = run::closedBecause(run, step.id); closed && closed->code == "gate.stop_held")
                command = run::GiveUpStop{run.heldStops().front().holder};
            session().perform(command);
            until([&] { return !session().busy(); }, step.id.value.c_str());
        }
        REQUIRE(session().run()->openSteps().empty());
        while (!session().run()->heldStops().empty()) {
            session().perform(run::GiveUpStop{session().run()->heldStops().front().holder});
            until([&] { return !session().busy(); }, "given up");
        }
        QTest::qWait(50);
    }
    void secret(const char* person)
    {
        auto* line = visible<SecretLine>(window);
        REQUIRE(line);
        line->setFocus();
        QTest::keyClicks(line, passphraseOf(session(), person));
    }
    void clickOn(const char* name)
    {
        auto* button = visible<QAbstractButton>(window, name);
        INFO(name);
        REQUIRE(button);
        REQUIRE(button->isEnabled());
        QTest::mouseClick(button, Qt::LeftButton);
    }
    /// Signs off what walk() walked, with this supervisor beside whoever is signed in.
    void countersigned(const char* by)
    {
        secret(session().actor()->id().value.c_str());
        clickOn("answer");
        done();
        auto* who = visible<QComboBox>(window, "countersigner");
        REQUIRE(who);
        who->setCurrentIndex(who->findData(QString::fromLatin1(by)));
        type("PIN of the supervisor", pinOf(session(), by));
        secret(session().actor()->id().value.c_str());
        clickOn("answer");
        done();
    }
    /// To what somebody may work alone at.
    void alone(const char* person)
    {
        click("Shop");
        auto* people = window.findChild<SetupPage*>()->findChild<RowList*>(QStringLiteral("people"));
        REQUIRE(people->choose(QString::fromLatin1(person)));
        // Also of whoever is chosen already, whose presses may be in sight.
        QTest::mouseClick(people->viewport(), Qt::LeftButton, {},
                          people->visualItemRect(people->currentItem()).center());
        click("May work alone at\u2026");
        done();
        until([&] { return says("SHA-256") || says("has no attempt of theirs"); }, "the record was read");
    }
    [[nodiscard]] QString row(const char* press)
    {
        auto* presses = visible<RowList>(window, "alonePresses");
        REQUIRE(presses);
        REQUIRE(presses->choose(QString::fromLatin1(press)));
        return presses->item(presses->currentRow())->text();
    }
    [[nodiscard]] QString whyNot() const
    {
        auto* label = window.findChild<QLabel*>(QStringLiteral("whyNotAlone"));
        return label->text().replace(QChar::Nbsp, QLatin1Char(' '));
    }
};

std::string bytesOf(const Session& session) { return readFile(session.options().logbook).value(); }

}  // namespace

TEST_CASE("whoever is not competent does not sign a set-up alone, and goes on with a supervisor beside them")
{
    Strict w;
    w.as(kInka);
    w.walk();
    auto* who = w.window.findChild<QComboBox*>(QStringLiteral("countersigner"));
    REQUIRE(who);
    CHECK_FALSE(who->isVisible());
    w.secret(kInka);
    w.clickOn("answer");
    w.done();
    REQUIRE(w.session().run() != nullptr);
    CHECK(w.session().run()->phase() == run::Phase::Running);
    CHECK(w.says("Nobody has said that Inka Thorsby may sign alone at the press north."));
    REQUIRE(who->isVisible());
    // Two supervisors; whoever signs is none of them.
    CHECK(who->count() == 2);
    CHECK(w.window.focusWidget() == who);
    who->setCurrentIndex(who->findData(QString::fromLatin1(kMatteo)));
    // Without the PIN, and with a wrong one, nothing is signed.
    w.secret(kInka);
    w.clickOn("answer");
    w.done();
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "PIN of the supervisor"));
    w.type("PIN of the supervisor", QStringLiteral("0000"));
    w.clickOn("answer");
    w.done();
    REQUIRE(w.session().run() != nullptr);
    CHECK(w.session().run()->phase() == run::Phase::Running);
    w.type("PIN of the supervisor", pinOf(w.session(), kMatteo));
    w.secret(kInka);
    QSignalSpy sealed(&w.session(), &Session::sealed);
    w.clickOn("answer");
    w.done();
    REQUIRE(sealed.size() == 1);
    CHECK(w.session().run() == nullptr);

    records::RunQuery mine;
    mine.person = kInka;
    const auto page = w.session().reader()->runs(mine, {});
    REQUIRE(page);
    REQUIRE(page->rows.size() == 1);
    const auto seal = w.session().reader()->sealOfRun(page->rows.front().run);
    REQUIRE(seal);
    const auto document = seal::read(seal->document);
    REQUIRE(document);
    const auto events = seal::eventsOf(*document, records::textsOf(*w.session().reader()));
    REQUIRE(events);
    const auto* completed = std::get_if<run::Completed>(&events->back().happening());
    REQUIRE(completed);
    CHECK(completed->supervisor == kMatteo);
    CHECK(completed->supervisorName == "Matteo Quill");
}

TEST_CASE("a supervisor says that somebody may work a press alone, on their training record and a set-up watched")
{
    Strict w;
    w.as(kInka);
    w.walk();
    w.countersigned(kOdalys);
    REQUIRE(w.session().run() == nullptr);

    // Without a training record nobody is said to be competent.
    w.as(kMatteo);
    w.alone(kInka);
    CHECK(w.row("north").contains(QStringLiteral("Nobody has said that Inka Thorsby may sign alone")));
    CHECK(w.whyNot().contains(QStringLiteral("Without a training record")));
    CHECK_FALSE(visible<QAbstractButton>(w.window, "grantAlone")->isEnabled());
    const practice::Who inka{kInka, "Inka Thorsby"};
    keepAttempts(usualPracticeLogbook(), {walkRound(inka, true, 1'760'000'000'000)});
    const auto record = logbook::trainingOf(usualPracticeLogbook(), kInka);
    REQUIRE(record);

    // An operator says nothing of anybody, a supervisor nothing of themselves.
    w.as(kInka);
    w.alone(kInka);
    CHECK_FALSE(visible<QAbstractButton>(w.window, "grantAlone")->isEnabled());
    w.as(kMatteo);
    w.alone(kMatteo);
    CHECK(w.whyNot().contains(QStringLiteral("Matteo Quill cannot say this of themselves.")));

    w.alone(kInka);
    (void)w.row("north");
    until(
        [&] {
            return QString(w.window.findChild<QLabel*>(QStringLiteral("aloneRecord"))->text())
                .remove(QChar(0x200B))
                .contains(QString::fromStdString(practice::recordSha256(*record)));
        },
        "the record's hash stands there");
    CHECK(w.whyNot() == QStringLiteral("Tick the set-ups that were watched: 0 of at least 1."));
    auto* watched = visible<StatementBox>(w.window, "watched");
    REQUIRE(watched);
    CHECK_FALSE(watched->isChecked());
    QTest::keyClick(watched, Qt::Key_Space);
    CHECK(watched->isChecked());
    w.clickOn("grantAlone");
    auto* until_ = called<QComboBox>(w.window, "Valid until");
    REQUIRE(until_);
    until_->setCurrentIndex(1);
    w.secret(kMatteo);
    w.clickOn("accept");
    w.done();
    CHECK(w.row("north").contains(QStringLiteral("until ")));

    // What the shop's logbook has of it: the press, the run, the hash; and of the practice logbook nothing else.
    const std::string bytes = bytesOf(w.session());
    CHECK(bytes.find(practice::recordSha256(*record)) != std::string::npos);
    CHECK(bytes.find(record->attempts.front().attempt.id) == std::string::npos);
    CHECK(bytes.find(record->attempts.front().link) == std::string::npos);
    CHECK(bytes.find("Once round for practice") == std::string::npos);

    // Now they sign alone.
    w.as(kInka);
    w.click("Run");
    w.walk();
    w.secret(kInka);
    w.clickOn("answer");
    w.done();
    CHECK(w.session().run() == nullptr);

    // Until a supervisor ends it, with a reason.
    w.as(kOdalys);
    w.alone(kInka);
    (void)w.row("north");
    w.clickOn("endAlone");
    auto* why = visible<QWidget>(w.window, "value0");
    REQUIRE(why);
    why->setFocus();
    QTest::keyClicks(why, QStringLiteral("a near miss at the rewind"));
    w.secret(kOdalys);
    w.clickOn("accept");
    w.done();
    CHECK(w.row("north").contains(QStringLiteral("was ended: a near miss at the rewind")));
    CHECK_FALSE(visible<QAbstractButton>(w.window, "endAlone")->isEnabled());
}

TEST_CASE("a run that is done and was not sealed is sealed later: by a supervisor where its operator may not any more")
{
    Strict w;
    w.as(kInka);
    w.walk();
    w.countersigned(kOdalys);
    REQUIRE(w.session().run() == nullptr);
    records::RunQuery mine;
    mine.person = kInka;
    const auto page = w.session().reader()->runs(mine, {});
    REQUIRE(page);
    REQUIRE(page->rows.size() == 1);
    constexpr std::int64_t kInThisCentury = 4'000'000'000'000;
    w.as(kMatteo);
    w.session().qualify({kInka, "north", std::string(64, 'a'), {page->rows.front().run}, kInThisCentury},
                        passphraseOf(w.session(), kMatteo));
    w.done();

    // The power goes between what says that it is done and the seal.
    w.as(kInka);
    w.walk();
    w.session().perform(run::SignOff{});
    w.done();
    REQUIRE(w.session().run() != nullptr);
    REQUIRE(w.session().run()->phase() == run::Phase::Completed);
    w.as(kOdalys);
    w.session().endCompetence(kInka, "north", QStringLiteral("a near miss at the rewind"),
                              passphraseOf(w.session(), kOdalys));
    w.done();

    w.as(kInka);
    w.click("Run");
    CHECK(w.says("done and not sealed yet"));
    w.secret(kInka);
    w.clickOn("answer");
    w.done();
    REQUIRE(w.session().run() != nullptr);
    CHECK(w.says("a near miss at the rewind"));
    CHECK(w.says("Have a supervisor look at it, sign in here and seal it themselves."));
    // Nobody can be told beside them in a run that is over.
    CHECK(visible<QComboBox>(w.window, "countersigner") == nullptr);

    w.as(kMatteo);
    CHECK(w.says("done and not sealed yet"));
    w.secret(kMatteo);
    QSignalSpy sealed(&w.session(), &Session::sealed);
    w.clickOn("answer");
    w.done();
    CHECK(sealed.size() == 1);
    CHECK(w.session().run() == nullptr);
}

TEST_CASE("a run that was abandoned and not sealed is sealed later, and what signing says is that it was abandoned")
{
    Strict w;
    w.as(kInka);
    begin(w.session());
    w.session().perform(run::Abandon{"the order was taken back"});
    w.done();
    REQUIRE(w.session().run() != nullptr);
    CHECK(w.says("was abandoned and is not sealed yet"));
    CHECK(w.says("Signing says: abandoned."));
    w.secret(kInka);
    QSignalSpy sealed(&w.session(), &Session::sealed);
    w.clickOn("answer");
    w.done();
    CHECK(sealed.size() == 1);
    CHECK(w.session().run() == nullptr);
}
