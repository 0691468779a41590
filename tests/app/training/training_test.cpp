// SPDX-License-Identifier: GPL-3.0-or-later
// The training record: who sees whose, and who signs for what.
#include "app/pages/practice/after_lesson.h"
#include "app/pages/practice/training_page.h"

#include "app/widgets/ask_panel.h"
#include "app/widgets/row_list.h"
#include "app/widgets/secret_line.h"
#include "core/base/file.h"
#include "core/people/person.h"
#include "tests/app/practice/practice_support.h"
#include "tests/app/training/attempts_made.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

constexpr const char* kInka = "p-2";     // an operator
constexpr const char* kTrainer = "p-4";  // who has practised as well

/// The window at whose practice logbook two people have practised.
struct Record : PracticeWindow {
    Record()
    {
        const practice::Who inka{kInka, "Inka Thorsby"}, sefa{kTrainer, "Sefa Brindlow"};
        keepAttempts(file(), {walkRound(inka, false, 1'760'000'000'000), walkRound(inka, true, 1'760'100'000'000),
                              walkRound(sefa, true, 1'760'200'000'000)});
    }
    [[nodiscard]] static std::filesystem::path file() { return usualPracticeLogbook(); }
    void as(const std::string& person)
    {
        session().signOut();
        until([&] { return !session().actor() && !session().busy(); }, "locked");
        signIn(session(), person);
    }
    TrainingPage& page()
    {
        if (visible<TrainingPage>(window) == nullptr) {
            door(Qt::Key_4);
            click("toTraining");
        }
        auto* one = visible<TrainingPage>(window);
        REQUIRE(one);
        return *one;
    }
    RowList& list(const char* name)
    {
        auto* one = page().findChild<RowList*>(QString::fromLatin1(name));
        REQUIRE(one);
        return *one;
    }
    QStringList rows(const char* name)
    {
        RowList& one = list(name);
        QStringList ids;
        for (int i = 0; i < one.count(); ++i) ids << one.idAt(i);
        return ids;
    }
    QAbstractButton& sign()
    {
        auto* one = page().findChild<QAbstractButton*>(QStringLiteral("observe"));
        REQUIRE(one);
        return *one;
    }
    void waitFor(const char* name, int count)
    {
        until([&] { return list(name).count() == count; }, name);
    }
    void fill(const char* field, const char* text)
    {
        auto* one = visible<QWidget>(page(), field);
        INFO(field);
        REQUIRE(one);
        one->setFocus();
        QTest::keyClicks(one, QString::fromUtf8(text));
    }
    void secret(const QString& passphrase)
    {
        auto* line = visible<SecretLine>(page());
        REQUIRE(line);
        line->setFocus();
        QTest::keyClicks(line, passphrase);
    }
    void written()
    {
        until([&] { return !session().busy() && !practice().runs()->busy(); }, "written or refused");
        QTest::qWait(30);
    }
};

practice::TrainingRecord recordOf(const char* person)
{
    const auto record = logbook::trainingOf(usualPracticeLogbook(), person);
    REQUIRE(record);
    return *record;
}

}  // namespace

TEST_CASE("whoever practised sees their own record and nobody else's, and a trainer sees everybody's")
{
    Record w;
    w.waitFor("trainees", 1);
    CHECK(w.rows("trainees") == QStringList{QString::fromLatin1(kInka)});
    w.waitFor("attempts", 2);
    // What was not passed comes first, though it is the older one.
    CHECK(w.rows("attempts") == QStringList{QStringLiteral("1"), QStringLiteral("2")});
    CHECK_FALSE(w.sign().isEnabled());
    CHECK(w.said().contains(QStringLiteral("Inka Thorsby cannot sign for an attempt of their own.")));

    w.as(kTrainer);
    w.waitFor("trainees", 2);
    CHECK(w.rows("trainees") == QStringList{QString::fromLatin1(kInka), QString::fromLatin1(kTrainer)});
    w.waitFor("attempts", 2);
    CHECK(w.sign().isEnabled());
    // Their own attempts trainers leave to another.
    REQUIRE(w.list("trainees").choose(QString::fromLatin1(kTrainer)));
    w.waitFor("attempts", 1);
    CHECK_FALSE(w.sign().isEnabled());
    CHECK(w.said().contains(QStringLiteral("Sefa Brindlow cannot sign for an attempt of their own.")));

    // An operator who never practised sees nobody.
    w.as("p-3");
    w.waitFor("trainees", 0);
    CHECK(w.rows("attempts").isEmpty());
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    w.waitFor("trainees", 0);
}

TEST_CASE("a trainer looks at an attempt and signs with the key that they have in the shop's logbook")
{
    Record w;
    w.as(kTrainer);
    (void)w.page();
    w.waitFor("attempts", 2);
    CHECK(w.list("attempts").chosen() == QStringLiteral("1"));
    CHECK(practice::followUpsIn(recordOf(kInka)).size() == 1);
    // A mess is told from a clean attempt before either is opened.
    CHECK(w.list("attempts").item(0)->text().contains(QStringLiteral("Nothing happened that should not have.")));
    w.click("observe");
    CHECK(w.said().contains(QStringLiteral("Vital steps missed: ")));
    w.fill("value0", "the guard at the outfeed was not looked at");
    // Not passed: what is taught again has to be said.
    w.secret(passphraseOf(w.session(), kTrainer));
    w.click("accept");
    CHECK(w.said().contains(QStringLiteral("What you teach again, and how")));
    CHECK(recordOf(kInka).attempts.front().observations.empty());
    w.fill("value1", "walk round together, naming each guard");
    w.secret(QStringLiteral("not the passphrase at all"));
    w.click("accept");
    w.written();
    CHECK(recordOf(kInka).attempts.front().observations.empty());
    CHECK(w.said().contains(QStringLiteral("passphrase")));
    w.secret(passphraseOf(w.session(), kTrainer));
    w.click("accept");
    w.written();
    w.waitFor("attempts", 2);
    until([&] { return w.list("attempts").idAt(0) == QStringLiteral("2"); }, "nothing is left to be taught again");

    const practice::TrainingRecord record = recordOf(kInka);
    REQUIRE(record.attempts.front().observations.size() == 1);
    const practice::Observed& said = record.attempts.front().observations.front();
    CHECK(said.said.note == "the guard at the outfeed was not looked at");
    CHECK(said.said.followUp == "walk round together, naming each guard");
    CHECK(said.by == practice::Who{kTrainer, "Sefa Brindlow"});
    CHECK(practice::followUpsIn(record).empty());
    // The key is the one that stands in the shop's logbook under their name.
    const auto everybody = w.session().reader()->people();
    REQUIRE(everybody);
    bool known = false;
    for (const people::PersonRecord& one : *everybody)
        if (one.id.value == kTrainer) known = one.key && hex(*one.key) == said.key;
    CHECK(known);
    // And of it all the shop's logbook has nothing.
    CHECK(readFile(w.session().options().logbook).value().find(record.attempts.front().attempt.id) ==
          std::string::npos);
}

TEST_CASE("words half typed about an attempt wait for whoever began them, and nobody else finds them")
{
    Record w;
    w.as(kTrainer);
    (void)w.page();
    w.waitFor("attempts", 2);
    w.click("observe");
    w.fill("value0", "was beside it");
    w.secret(QStringLiteral("half a passphr"));
    w.as(kTrainer);
    auto* panel = w.page().findChild<AskPanel*>();
    REQUIRE(panel);
    until([&] { return panel->isVisible(); }, "the question is back");
    CHECK(panel->typed().value(0) == QStringLiteral("was beside it"));
    CHECK(visible<SecretLine>(w.page())->text().isEmpty());
    w.as("p-1");
    CHECK_FALSE(panel->isVisible());
}

TEST_CASE("a trainer looks at the press of an attempt, and is back at the record with one touch")
{
    Record w;
    w.as(kTrainer);
    (void)w.page();
    w.waitFor("attempts", 2);
    w.click("seeAttempt");
    REQUIRE(visible<AfterLesson>(w.window));
    CHECK(visible<QAbstractButton>(w.window, "attemptAgain") == nullptr);
    w.click("toScenarios");
    CHECK(visible<TrainingPage>(w.window));
}
