// SPDX-License-Identifier: GPL-3.0-or-later
// Who may set a press up alone: said by a supervisor, for one press, after set-ups that were watched, and never for
// ever.
#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

const std::string kRecord(64, 'b');

/// The press of the mini run, in a shop that asks for competence or does not.
struct Rule : Press {
    explicit Rule(bool asks = true, const std::string& more = {})
    {
        if (asks || !more.empty()) edition((asks ? "competence_asked = 1\n" : "") + more);
        REQUIRE(writer->addPerson(people::test::member("p-4", "Lotte Wren", people::Role::Operator).enrolled,
                                  *signer("p-1")));
        REQUIRE(writer->addPerson(people::test::member("p-5", "Jory Hale", people::Role::Supervisor).enrolled,
                                  *signer("p-1")));
    }
    void edition(const std::string& policy, const std::string& from = {}, const std::string& to = {})
    {
        std::string text = sources.press.text;
        if (const auto at = text.find("\n[policy]\n"); at != std::string::npos)
            text.insert(at + 10, policy);
        else if (!policy.empty())
            text += "\n[policy]\n" + policy;
        if (!from.empty()) {
            REQUIRE(text.find(from) != std::string::npos);
            text.replace(text.find(from), from.size(), to);
        }
        const auto kept = writer->keepDefinition("press", sources.press.id, text, actor("p-1"));
        REQUIRE(kept);
        sources.press = *kept;
    }
    /// A finished run in these hands, signed as the rule wants; its id.
    std::string run(const char* hands = "p-2", bool countersigned = true)
    {
        auto begun = OpenRun::begin(*writer, {sources, {}, {}}, actor(hands));
        REQUIRE(begun);
        answerAll(*begun, actor(hands));
        run::SignOff sign{""};
        if (countersigned) sign.supervisor = actor("p-1");
        must(*begun, sign, actor(hands));
        const auto sealed = begun->seal(*signer(hands));
        REQUIRE(sealed);
        return begun->run().id();
    }
    std::vector<std::string> watched()
    {
        if (m_watched.empty())
            for (int i = 0; i < 3; ++i) m_watched.push_back(run());
        return m_watched;
    }
    Qualifying lotte(std::vector<std::string> observed, std::int64_t days = 300)
    {
        return {"p-4", sources.press.id, kRecord, std::move(observed), clock.now().utcMs + days * kDayMs};
    }
    std::string codeOf(const Qualifying& who, const char* by = "p-1")
    {
        const auto said = writer->qualify(who, *signer(by));
        return said ? std::string() : said.error().code;
    }
    /// What Lotte is told when she signs alone; "" = she may. The run is given up again.
    std::string alone(const char* hands = "p-4")
    {
        auto begun = OpenRun::begin(*writer, {sources, {}, {}}, actor(hands));
        REQUIRE(begun);
        answerAll(*begun, actor(hands));
        const auto done = begun->perform(run::SignOff{""}, actor(hands));
        const std::string code = done ? std::string() : done.error().code + " " + reasonIn(done.error());
        if (!done) must(*begun, run::Abandon{"only tried"}, actor(hands));
        REQUIRE(begun->seal(*signer(hands)));
        return code;
    }
    static std::string reasonIn(const Finding& finding)
    {
        for (const TextArg& arg : finding.text.args)
            if (const auto* texts = std::get_if<std::vector<Text>>(&arg)) return texts->front().source.str();
        return {};
    }
    std::vector<std::string> wrong()
    {
        const auto verified = verify(file(), {}, Depth::Deep);
        REQUIRE(verified);
        std::vector<std::string> codes;
        for (const Finding& finding : verified->findings) codes.push_back(finding.code);
        return codes;
    }

private:
    std::vector<std::string> m_watched;
};

}  // namespace

TEST_CASE("where the shop does not ask for competence, whoever may sign signs alone")
{
    Rule shop(false);
    CHECK(shop.alone().empty());
}

TEST_CASE("where it does, nobody signs alone without it, and anybody does with a supervisor beside them")
{
    Rule shop;
    CHECK(shop.alone().starts_with("gate.not_competent Nobody has said that"));
    const std::string run = shop.run("p-4", true);
    const auto sealed = shop.writer->reader().sealOfRun(run);
    REQUIRE(sealed);
    CHECK(sealed->document.find(R"("supervisor":"p-1")") != std::string::npos);
    // A supervisor, who could sign beside others, signs alone.
    CHECK(shop.alone("p-5").empty());
    // It is a supervisor who signs beside, and somebody else than who signs.
    auto begun = OpenRun::begin(*shop.writer, {shop.sources, {}, {}}, shop.actor("p-4"));
    REQUIRE(begun);
    answerAll(*begun, shop.actor("p-4"));
    run::SignOff sign{""};
    sign.supervisor = shop.actor("p-2");
    CHECK(begun->perform(sign, shop.actor("p-4")).error().code == "gate.supervisor");
    sign.supervisor = shop.actor("p-4");
    CHECK(begun->perform(sign, shop.actor("p-4")).error().code == "gate.supervisor");
    CHECK(shop.wrong().empty());
}

TEST_CASE("somebody competent finishes a run, and somebody who is not does not seal it for them")
{
    Rule shop;
    REQUIRE(shop.writer->qualify(shop.lotte(shop.watched()), *shop.signer("p-1")));
    auto begun = OpenRun::begin(*shop.writer, {shop.sources, {}, {}}, shop.actor("p-4"));
    REQUIRE(begun);
    answerAll(*begun, shop.actor("p-4"));
    must(*begun, run::SignOff{""}, shop.actor("p-4"));
    CHECK(begun->seal(*shop.signer("p-2")).error().code == "gate.not_competent");
    CHECK(begun->seal(*shop.signer("p-4")));
    CHECK(shop.wrong().empty());
}

TEST_CASE("a competence wants the shop's number of watched set-ups of that press, a record and a day to come")
{
    Rule shop;
    auto runs = shop.watched();
    const auto few = std::vector<std::string>(runs.begin(), runs.end() - 1);
    CHECK(shop.codeOf(shop.lotte({})) == "competence.too_few");  // practice alone qualifies nobody
    CHECK(shop.codeOf(shop.lotte(few)) == "competence.too_few");
    CHECK(shop.codeOf(shop.lotte({runs[0], runs[1], runs[1]})) == "competence.twice");
    CHECK(shop.codeOf(shop.lotte({runs[0], runs[1], "north-1999-01-01-01"})) == "run.unknown");
    CHECK(shop.codeOf(shop.lotte(runs, -1)) == "competence.date");
    Qualifying nothing = shop.lotte(runs);
    nothing.trainingRecord = "abc";
    CHECK(shop.codeOf(nothing) == "competence.record");
    Qualifying nobody = shop.lotte(runs);
    nobody.personId = "p-77";
    CHECK(shop.codeOf(nobody) == "person.unknown");
    Qualifying nowhere = shop.lotte(runs);
    nowhere.press = "no_such";
    CHECK(shop.codeOf(nowhere) == "press.unknown");
    // By a supervisor, of somebody else.
    CHECK(shop.codeOf(shop.lotte(runs), "p-2") == "gate.role");
    Qualifying own = shop.lotte(runs);
    own.personId = "p-1";
    CHECK(shop.codeOf(own) == "competence.own");
    // A run that is void, or was given up, was no set-up.
    REQUIRE(shop.writer->voidRun(runs[0], "the wrong roll was scanned", *shop.signer("p-5")));
    CHECK(shop.codeOf(shop.lotte(runs)) == "competence.run");
    CHECK(shop.codeOf(shop.lotte({runs[1], runs[2], shop.run()})).empty());
    CHECK(shop.wrong().empty());
}

TEST_CASE("how many set-ups have to be watched is the shop's to say")
{
    Rule shop(true, "competence_runs = 1\n");
    CHECK(shop.codeOf(shop.lotte({})) == "competence.too_few");
    CHECK(shop.codeOf(shop.lotte({shop.run()})).empty());
    CHECK(shop.alone().empty());
}

TEST_CASE("a competence ends by its day, by its cause, by what protects people, and by having been away")
{
    Rule shop;
    REQUIRE(shop.writer->qualify(shop.lotte(shop.watched(), 100), *shop.signer("p-1")));
    CHECK(shop.alone().empty());
    shop.clock.advance(101 * kDayMs);
    CHECK(shop.alone().starts_with("gate.not_competent The competence of %1 at the press %2 ended on"));

    REQUIRE(shop.writer->qualify(shop.lotte(shop.watched(), 1000), *shop.signer("p-1")));
    CHECK(shop.alone().empty());
    shop.clock.advance(26 * 7 * kDayMs + kDayMs);
    CHECK(shop.alone().starts_with("gate.not_competent %1 has not set up the press"));
    (void)shop.run("p-4", true);  // with a supervisor beside them they are back
    CHECK(shop.alone().empty());

    // Another speed is another edition; another guard is another press to learn.
    shop.edition({}, "units = \"metric\"", "units = \"metric\"   # as it was");
    CHECK(shop.alone().empty());
    shop.edition({}, "id = \"infeed_guard\"", "id = \"infeed_cover\"");
    CHECK(shop.alone().starts_with("gate.not_competent What protects people"));
    REQUIRE(shop.writer->qualify(shop.lotte(shop.watched(), 1000), *shop.signer("p-1")));
    CHECK(shop.alone().empty());

    CHECK(shop.writer->endCompetence("p-4", shop.sources.press.id, "", *shop.signer("p-1")).error().code ==
          "gate.no_reason");
    CHECK(
        shop.writer->endCompetence("p-4", shop.sources.press.id, "a hand was hurt", *shop.signer("p-2")).error().code ==
        "gate.role");
    REQUIRE(shop.writer->endCompetence("p-4", shop.sources.press.id, "a hand was hurt", *shop.signer("p-1")));
    CHECK(shop.alone().starts_with("gate.not_competent The competence of %1 at the press %2 was ended"));
    CHECK(shop.writer->endCompetence("p-4", shop.sources.press.id, "again", *shop.signer("p-1")).error().code ==
          "competence.none");
    const auto all = shop.writer->competences();
    REQUIRE(all);
    REQUIRE(all->size() == 1);
    CHECK_FALSE(all->front().said.granted);
    REQUIRE(all->front().notNow);
    CHECK(all->front().notNow->code == "competence.ended");
    CHECK(shop.wrong().empty());
}

TEST_CASE("nothing of practice but the hash of a record stands in the shop's logbook")
{
    Rule shop;
    const auto sealed = shop.writer->qualify(shop.lotte(shop.watched()), *shop.signer("p-1"));
    REQUIRE(sealed);
    const auto document = seal::read(sealed->document);
    REQUIRE(document);
    std::vector<std::string> keys;
    for (const auto& [key, value] : document->body.members()) keys.push_back(key);
    CHECK(keys == std::vector<std::string>{"format", "kind", "id", "subject", "what", "person", "press",
                                           "training_record", "observed", "valid_until", "by", "at", "offset",
                                           "sealed_at", "sealed_offset", "sealed_by"});
    CHECK(document->body["training_record"].text() == kRecord);
    for (const char* word : {"attempt", "scenario", "score", "seed", "trace", "lockout"})
        CHECK(sealed->document.find(word) == std::string::npos);
}

TEST_CASE("a competence that was not to be given is found in the chain, though its links hold")
{
    Rule shop;
    REQUIRE(shop.writer->qualify(shop.lotte(shop.watched()), *shop.signer("p-1")));
    shop.writer.reset();
    // Its row is pointed at another run's seal: document and link no longer belong together.
    tamper(shop.file(), "UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), 'training_record\":\"b', "
                        "'training_record\":\"c') AS BLOB) WHERE kind = 'competence'");
    const auto verified = verify(shop.file(), {});
    REQUIRE(verified);
    REQUIRE_FALSE(verified->findings.empty());
    CHECK(verified->findings.front().code == "chain.broken");
}
