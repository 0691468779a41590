// SPDX-License-Identifier: GPL-3.0-or-later
// What practice keeps of people, and the one thing of it that crosses to the shop: the hash of a training record.
#include "core/logbook/training.h"

#include "core/base/clock.h"
#include "core/practice/training.h"
#include "tests/core/logbook/run_fixture.h"
#include "tests/core/practice/basis.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

const char* const kScenario =
    "format = 1\n[scenario]\nid = \"guards\"\nmode = \"test\"\nparts = [\"safety.walk_round\"]\n"
    "[[fault]]\nwhat = \"guard.sticks\"\nitem = \"infeed_guard\"\n";

/// A test of the walk round the press, passed or with a guard left open.
practice::Attempt attempt(bool passes, const std::string& guard = "infeed_guard", const std::string& person = "p-4")
{
    Findings notes;
    std::string text = kScenario;
    text.replace(text.find("infeed_guard"), 12, guard);
    auto scenario = practice::readScenario(text, "s.toml", notes);
    REQUIRE(scenario);
    auto lesson = practice::Lesson::begin(practice::shift::basis(), *scenario);
    REQUIRE(lesson);
    for (const auto& one : lesson->basis().inputs.press->guards)
        if (passes || one.id != "outfeed_guard") REQUIRE(lesson->perform(practice::Deed{"guard", one.id}));
    for (const auto& item : practice::itemsOf(lesson->basis().plan, scenario->parts))
        REQUIRE(lesson->perform(practice::Answer{item.step, "yes"}));
    REQUIRE(lesson->perform(practice::Suspect{"guard.sticks", guard}));
    const auto made = practice::attemptOf(*lesson, run::sourceOf("guards", 0, text), {person, "Lotte Wren"}, {},
                                          {1'764'052'863'120, 60}, {1'764'052'963'120, 60});
    REQUIRE(made.score.passed() == passes);
    return made;
}

/// A practice logbook, and people with keys that stand in the shop's.
struct Practice {
    Folder folder;
    SteppedClock clock{{1'764'052'863'120, 60}, 1000};
    CountedIds ids;
    std::unique_ptr<Writer> writer;
    people::test::Member trainer = people::test::member("p-3", "Ana Feld", people::Role::Trainer);
    Practice()
    {
        auto opened = Writer::open(file(), clock, ids, {true, "the test", 0});
        REQUIRE(opened);
        writer = std::move(*opened);
    }
    [[nodiscard]] fs::path file() const { return folder / "practice.logbook"; }
    std::uint64_t keeps(const practice::Attempt& one)
    {
        const auto sealed = writer->keepAttempt(one);
        REQUIRE(sealed);
        return sealed->seq;
    }
    [[nodiscard]] practice::TrainingRecord record() const
    {
        auto record = trainingOf(file(), "p-4");
        REQUIRE(record);
        return *std::move(record);
    }
    [[nodiscard]] std::vector<std::string> wrong() const
    {
        const auto verified = verify(file(), {}, Depth::Deep);
        REQUIRE(verified);
        std::vector<std::string> codes;
        for (const Finding& finding : verified->findings) codes.push_back(finding.code);
        return codes;
    }
};

}  // namespace

TEST_CASE("attempts and what trainers say of them stand in one chain of the practice logbook, and are read back")
{
    Practice p;
    const auto seq = p.keeps(attempt(true));
    p.keeps(attempt(true, "station_1_guard"));
    p.keeps(attempt(true, "outfeed_guard", "p-5"));
    REQUIRE(p.writer->observe(seq, {"Looked before every movement.", {}}, *p.trainer.signer));
    CHECK(p.wrong().empty());
    const auto record = p.record();
    CHECK(record.who == practice::Who{"p-4", "Lotte Wren"});
    REQUIRE(record.attempts.size() == 2);
    CHECK(record.attempts[0].attempt.id == "p-4-attempt-1");
    CHECK(record.attempts[1].attempt.id == "p-4-attempt-2");
    REQUIRE(record.attempts[0].observations.size() == 1);
    CHECK(record.attempts[0].observations[0].by.name == "Ana Feld");
    CHECK(record.attempts[0].observations[0].key == hex(p.trainer.signer->key()));
    CHECK(practice::inARow(record) == 2);
    CHECK_FALSE(practice::isReadyToBeObserved(record));
    p.keeps(attempt(true, "outfeed_guard"));
    CHECK(practice::isReadyToBeObserved(p.record()));
    CHECK(practice::detectionIn(p.record()).hits == 3);
    const auto everybody = traineesIn(p.file());
    REQUIRE(everybody);
    CHECK(everybody->size() == 2);
    CHECK(trainingOf(p.file(), "p-9").error().code == "training.nobody");
}

TEST_CASE("a trainer signs for somebody else, says what was seen, and of a test not passed what is taught again")
{
    Practice p;
    const auto own = p.keeps(attempt(true, "infeed_guard", "p-3"));
    CHECK(p.writer->observe(own, {"All well.", {}}, *p.trainer.signer).error().code == "training.own");
    const auto failed = p.keeps(attempt(false));
    const auto operators = people::test::member("p-2", "Inka Thorsby", people::Role::Operator);
    CHECK(p.writer->observe(failed, {"All well.", "Guards"}, *operators.signer).error().code == "training.no_trainer");
    CHECK(p.writer->observe(failed, {"", "Walk round with me"}, *p.trainer.signer).error().code == "gate.no_reason");
    CHECK(p.writer->observe(failed, {"Ticked past an open guard.", ""}, *p.trainer.signer).error().code ==
          "gate.no_reason");
    CHECK(p.writer->observe(99, {"All well.", {}}, *p.trainer.signer).error().code == "training.no_attempt");
    // A test that was not passed is the trainer's to follow up until they have.
    CHECK(practice::followUpsIn(p.record()).size() == 1);
    REQUIRE(p.writer->observe(failed, {"Ticked past an open guard.", "Walk round with me"}, *p.trainer.signer));
    CHECK(practice::followUpsIn(p.record()).empty());
    CHECK(p.wrong().empty());
}

TEST_CASE("practice that was changed afterwards is found, and so is what was signed by somebody else")
{
    Practice p;
    const auto seq = p.keeps(attempt(false));
    REQUIRE(p.writer->observe(seq, {"Ticked past an open guard.", "Walk round with me"}, *p.trainer.signer));
    p.writer.reset();
    const fs::path copy = p.folder / "copy.logbook";
    const auto changed = [&](const std::string& sql) {
        fs::remove(copy);
        fs::copy_file(p.file(), copy);
        tamper(copy, sql);
        const auto verified = verify(copy, {});
        REQUIRE(verified);
        return verified->findings.empty() ? std::string() : verified->findings.front().code;
    };
    CHECK(changed("UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), 'not_yet', 'passed') AS BLOB) "
                  "WHERE seq = 1") == "chain.broken");
    const auto other = people::test::member("p-3", "Ana Feld", people::Role::Trainer);
    CHECK(changed("UPDATE signature_rows SET key = x'" + hex(other.signer->key()) + "'") == "signature.key");
    CHECK(changed("DELETE FROM signature_rows") == "signature.missing");
}

TEST_CASE("whoever signed with a key that the shop does not know is told from the shop's trainers")
{
    Practice p;
    const auto seq = p.keeps(attempt(true));
    const auto stranger = people::test::member("p-3", "Ana Feld", people::Role::Trainer);
    REQUIRE(p.writer->observe(seq, {"All well.", {}}, *p.trainer.signer));
    REQUIRE(p.writer->observe(seq, {"All well too.", {}}, *stranger.signer));
    const auto record = p.record();
    const std::vector<people::PersonRecord> shop{p.trainer.enrolled.person};
    const auto unknown = practice::unknownHands(record, shop);
    REQUIRE(unknown.size() == 1);
    CHECK(unknown.front()->key == hex(stranger.signer->key()));
    CHECK(practice::unknownHands(record, {}).size() == 2);
}

TEST_CASE("practice never stands in a shop's logbook, nor who is competent in a practice logbook")
{
    Press shop;
    CHECK(shop.writer->keepAttempt(attempt(true)).error().code == "practice.not_here");
    CHECK(shop.writer->observe(1, {"All well.", {}}, *shop.signer("p-1")).error().code == "practice.not_here");
    Practice p;
    CHECK(p.writer->qualify({"p-4", "north", std::string(64, 'a'), {}, 1}, *p.trainer.signer).error().code ==
          "practice.not_here");
    CHECK(trainingOf(shop.file(), "p-4").error().code == "logbook.not_practice");
}

TEST_CASE("the training record has the same bytes from the same attempts, and other ones from any other")
{
    Practice p;
    const auto seq = p.keeps(attempt(true));
    const std::string once = practice::recordSha256(p.record());
    CHECK(practice::recordSha256(p.record()) == once);
    CHECK(once == hex(sha256(practice::recordJson(p.record()).dump())));
    p.keeps(attempt(true, "infeed_guard", "p-5"));
    CHECK(practice::recordSha256(p.record()) == once);  // somebody else's changes nothing
    REQUIRE(p.writer->observe(seq, {"All well.", {}}, *p.trainer.signer));
    CHECK(practice::recordSha256(p.record()) != once);

    const auto report = practice::trainingReport(p.record());
    CHECK(report.practice.source.str() == "PRACTICE");
    bool hashed = false;
    for (const auto& section : report.sections)
        if (const auto* paragraph = std::get_if<report::Paragraph>(&section))
            for (const TextArg& arg : paragraph->text.args)
                if (const auto* text = std::get_if<std::string>(&arg))
                    hashed = hashed || *text == practice::recordSha256(p.record());
    CHECK(hashed);
}
