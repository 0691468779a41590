// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/after.h"

#include <catch2/catch.hpp>
#include <functional>
#include <set>

#include "tests/core/seal/walk.h"

using namespace taut;
using namespace taut::seal;
using people::Role;

namespace {

constexpr const char* kRun = "north-2025-11-25-01";
constexpr const char* kUnwind = "set.lift.setting/unwind";
constexpr const char* kSeen = "set.lift.seen";

people::PersonRecord person(const char* id, Role role, bool active = true)
{
    return {{id}, std::string("Person ") + id, role, active, std::nullopt};
}
const people::PersonRecord kInka = person("p-2", Role::Operator);
const people::PersonRecord kMatteo = person("p-1", Role::Supervisor);
const people::PersonRecord kAda = person("p-3", Role::Supervisor);

SealedRun sealedByInka() { return {kRun, std::string(64, 'a'), {"p-2"}, {}, {}}; }

Correction correction() { return {{{kUnwind, "1.40 bar", "1.45 bar", {}, {}, {}}}, {}, "read from the side"}; }
Sequel sequelFor(char letter)
{
    switch (letter) {
    case 'r': return Review{true, {}};
    case 's': return Review{false, "the pressure cannot be right"};
    case 'c': return correction();
    default: return Voiding{"set up on the wrong press"};
    }
}

/// A run of the mini procedure, signed off, and its document as a seal.
struct Walked : run::mini::Walk {
    Document document;
    Walked()
    {
        answerUpTo(kUnwind);
        must(run::Answer{{kUnwind}, "1.40 bar", {}});
        answerAll();
        must(run::SignOff{""});
        document = documentOf(*run);
    }
};

}  // namespace

TEST_CASE("the present state of a run follows from what was sealed after it")
{
    struct Row {
        const char* sequels;  ///< r accepted, s sent back, c corrected, v void
        Present present;
        const char* refused;  ///< code of the last one, "" = it may be given
    };
    const Row rows[] = {
        {"", Present::Sealed, ""},
        {"r", Present::Reviewed, ""},
        {"s", Present::SentBack, ""},
        {"c", Present::Corrected, ""},
        {"v", Present::Void, ""},
        {"rr", Present::Reviewed, "run.reviewed"},
        {"rs", Present::SentBack, ""},
        {"rc", Present::Corrected, ""},
        {"rv", Present::Void, ""},
        {"sr", Present::Reviewed, "run.sent_back"},
        {"ss", Present::SentBack, "run.sent_back"},
        {"sc", Present::Corrected, ""},
        {"sv", Present::Void, ""},
        {"cr", Present::Reviewed, ""},
        {"cs", Present::SentBack, ""},
        {"cc", Present::Corrected, ""},
        {"cv", Present::Void, ""},
        {"vr", Present::Void, "run.void"},
        {"vs", Present::Void, "run.void"},
        {"vc", Present::Void, "run.void"},
        {"vv", Present::Void, "run.void"},
        {"scrcr", Present::Reviewed, ""},
        {"rcscr", Present::Reviewed, ""},
        {"rcrcv", Present::Void, ""},
    };
    for (const Row& row : rows) {
        INFO("\"" << row.sequels << '"');
        SealedRun run = sealedByInka();
        State state;
        std::string refused;
        for (const char* at = row.sequels; *at != '\0'; ++at) {
            const Sequel sequel = sequelFor(*at);
            // Inka corrects her own run; Matteo judges it.
            const people::PersonRecord& by = *at == 'c' ? kInka : kMatteo;
            const auto why = whyNot(run, sequel, by);
            refused = why ? why->code : "";
            if (at[1] != '\0') REQUIRE(refused.empty());
            run = after(std::move(run), sequel, by.id.value, by.name);
            state = stateAfter(state, sequel, by.name);
        }
        CHECK(refused == row.refused);
        CHECK(run.state.present == row.present);
        CHECK(run.state == state);
        CHECK(run.state.reviewedBy == (row.present == Present::Reviewed ? kMatteo.name : ""));
        CHECK(wantsReview(row.present) == (row.present == Present::Sealed || row.present == Present::Corrected));
        CHECK(presentFrom(presentWord(row.present)) == row.present);
    }
    CHECK_FALSE(presentFrom("approved"));
}

TEST_CASE("who may review, correct and void is decided by role and by their part in the run")
{
    struct Row {
        char what;
        people::PersonRecord by;
        const char* refused;
    };
    const Row rows[] = {
        {'r', kMatteo, ""},
        {'s', kMatteo, ""},
        {'v', kMatteo, ""},
        {'c', kMatteo, ""},
        {'c', kInka, ""},  // their own run too: a review follows
        {'c', person("p-5", Role::Trainer), ""},
        {'c', person("p-6", Role::Trainee), "gate.role"},
        {'r', kInka, "gate.role"},
        {'v', kInka, "gate.role"},
        {'r', person("p-5", Role::Trainer), "gate.role"},
        {'v', person("p-5", Role::Trainer), "gate.role"},
        {'r', person("p-1", Role::Supervisor, false), "gate.role"},
        {'c', person("p-2", Role::Operator, false), "gate.role"},
        {'r', person("p-2", Role::Supervisor), "gate.own_run"},  // made a supervisor since
        {'s', person("p-2", Role::Supervisor), "gate.own_run"},
        {'v', person("p-2", Role::Supervisor), "gate.own_run"},
    };
    for (const Row& row : rows) {
        INFO(row.what << " by " << row.by.id.value << ' ' << people::roleWord(row.by.role));
        const auto why = whyNot(sealedByInka(), sequelFor(row.what), row.by);
        CHECK((why ? why->code : "") == row.refused);
        if (why) CHECK(why->subject == kRun);
        if (why) CHECK_FALSE(why->remedy.empty());
    }
}

TEST_CASE("nobody reviews what they have corrected, until somebody else has accepted it")
{
    SealedRun run = after(sealedByInka(), correction(), "p-1", "Matteo");
    CHECK(whyNot(run, Review{true, {}}, kMatteo)->code == "gate.own_correction");
    CHECK(whyNot(run, Review{false, "no good"}, kMatteo)->code == "gate.own_correction");
    CHECK_FALSE(whyNot(run, Voiding{"wrong press"}, kMatteo));
    // Sent back and corrected by another is not accepted yet: the first correction is still in it.
    SealedRun again = after(after(run, Review{false, "no good"}, "p-3", "Ada"), correction(), "p-2", "Inka");
    CHECK(whyNot(again, Review{true, {}}, kMatteo)->code == "gate.own_correction");
    run = after(std::move(run), Review{true, {}}, "p-3", "Ada");
    run = after(std::move(run), correction(), "p-2", "Inka");
    CHECK_FALSE(whyNot(run, Review{true, {}}, kMatteo));
    CHECK_FALSE(whyNot(run, Review{true, {}}, kAda));
}

TEST_CASE("a reason says something, and a correction what should be instead")
{
    const CorrectedStep step{kUnwind, "1.40 bar", "1.45 bar", {}, {}, {}};
    CorrectedStep same = step, empty = step;
    same.shouldBe = " 1.40 bar ";
    empty.shouldBe = "  ";
    struct Row {
        Sequel sequel;
        const char* code;
    };
    const Row rows[] = {
        {Review{true, {}}, ""},
        {Review{true, "seen the roll"}, ""},
        {Review{false, {}}, "gate.no_reason"},
        {Review{false, "no"}, "gate.no_reason"},
        {Review{false, " . - . ? !"}, "gate.no_reason"},
        {Voiding{{}}, "gate.no_reason"},
        {Voiding{"ab"}, "gate.no_reason"},
        {Voiding{"abc"}, ""},
        {Voiding{"Größe"}, ""},
        {Correction{{step}, {}, {}}, "gate.no_reason"},
        {Correction{{step}, {}, "--- "}, "gate.no_reason"},
        {Correction{{}, {}, "because of that"}, "correction.empty"},
        {Correction{{}, "..", "because of that"}, "correction.empty"},
        {Correction{{}, "the roll was R0042", "tag misread"}, ""},
        {Correction{{step, step}, {}, "read again"}, "correction.twice"},
        {Correction{{same}, {}, "read again"}, "correction.same"},
        {Correction{{empty}, {}, "read again"}, "correction.empty"},
    };
    int n = 0;
    for (const Row& row : rows) {
        INFO("row " << n++);
        const auto why = saysTooLittle(row.sequel, kRun);
        CHECK((why ? why->code : "") == row.code);
        const auto asked = whyNot(sealedByInka(), row.sequel, kMatteo);
        CHECK((asked ? asked->code : "") == row.code);
    }
}

TEST_CASE("a document that follows a run reads back as it was, and names the run's seal")
{
    CorrectedStep step{kUnwind, "1.40 bar", "1.45 bar", 145000.0, "Pa", "inside"};
    const Sequel all[] = {Review{true, {}}, Review{false, "Größe fehlt"}, Correction{{step}, "and a remark", "misread"},
                          Correction{{}, "the roll was R0042", "misread"}, Voiding{"wrong press"}};
    for (const Sequel& sequel : all) {
        const Document document =
            sealedBy(sequelOf(sequel, sealedByInka(), kMatteo, {1'764'052'863'120, 60}), "p-1", kMatteo.name, {0, 60});
        const auto back = read(write(document));
        REQUIRE(back);
        CHECK(back->kind == kindOf(sequel));
        CHECK(sequelIn(*back).value() == sequel);
        const Head head = headOf(*back);
        CHECK(head.id == kRun);
        CHECK(head.subject == std::string(64, 'a'));
        CHECK(head.person == "p-1");
        CHECK(back->body["by"]["role"].text() == "supervisor");
        CHECK(back->body["at"].text() == "2025-11-25T06:41:03.120Z");
        CHECK(back->body["offset"].text() == "+01:00");
    }
    const Document spaced = sequelOf(Voiding{"  wrong press\n"}, sealedByInka(), kMatteo, {0, 0});
    CHECK(spaced.body["reason"].text() == "wrong press");
}

TEST_CASE("what says too little, or names another than its signer, is no such document")
{
    const Document good = sealedBy(sequelOf(correction(), sealedByInka(), kInka, {0, 60}), "p-2", kInka.name, {0, 60});
    REQUIRE(sequelIn(good));
    const std::function<void(Document&)> breaks[] = {
        [](Document& d) { d.body.set("reason", ""); },
        [](Document& d) { d.body.set("reason", 7); },
        [](Document& d) { d.body.set("steps", Json::array()); },
        [](Document& d) { d.body.set("steps", "all of them"); },
        [](Document& d) { d.body.set("by", Json::object()); },
        [](Document& d) { d.kind = seal::Kind::Review; },
        [](Document& d) { d.kind = seal::Kind::Run; },
        [](Document& d) { d.kind = seal::Kind::Person; },
    };
    int n = 0;
    for (const auto& breakIt : breaks) {
        INFO("break " << n++);
        Document document = good;
        breakIt(document);
        const auto read = sequelIn(document);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "document.broken");
    }
}

TEST_CASE("everybody who had a run in hand counts as its own, however it went on")
{
    run::mini::Walk walk;
    walk.must(run::Answer{{"safety.walk.clear"}, "yes", {}});
    walk.must(run::HandOver{walk.matteo});
    walk.must(run::Abandon{"the order was cancelled"}, walk.matteo);
    Seal seal;
    seal.person = "p-9";
    run::mini::Walk taken;
    taken.must(run::Interrupt{"power"});
    taken.must(run::Resume{{std::begin(run::kMakeSafe), std::end(run::kMakeSafe)}, false, true}, taken.matteo);
    taken.must(run::HandOver{taken.inka}, taken.matteo);
    taken.must(run::Abandon{"the order was cancelled"});
    CHECK(whyNot(sealedRun(seal, documentOf(*taken.run)), Review{true, {}}, kMatteo)->code == "gate.own_run");
    const SealedRun run = sealedRun(seal, documentOf(*walk.run));
    CHECK(run.id == kRun);
    CHECK(std::set<std::string>(run.hands.begin(), run.hands.end()) == std::set<std::string>{"p-1", "p-2", "p-9"});
    CHECK(whyNot(run, Review{true, {}}, kMatteo)->code == "gate.own_run");
    CHECK_FALSE(whyNot(run, Review{true, {}}, kAda));
}

TEST_CASE("a correction is read against the run: its step, what stood, and a reading by its window")
{
    const Walked walk;
    const auto read = [&](const char* step, const char* stood, const char* should,
                          std::span<const Sealing> before = {}) {
        return readCorrection(*walk.run, before, {{{step, stood, should, 1.0, "m", "inside"}}, {}, "misread"});
    };
    struct Row {
        const char *step, *stood, *should, *code, *verdict;
    };
    const Row rows[] = {
        {kUnwind, "1.40 bar", "1.45 bar", "", "inside"},
        {kUnwind, "1.40 bar", "1.60 bar", "", "near"},
        {kUnwind, "1.40 bar", "3.00 bar", "", "outside"},  // the truth, whatever it is
        {kUnwind, "1.40 bar", "20 mm", "quantity.wrong_kind", ""},
        {kUnwind, "1.40 bar", "high", "quantity.not_a_number", ""},
        {kUnwind, "1.41 bar", "1.45 bar", "correction.stale", ""},
        {kSeen, "good", "bad", "", "outside"},
        {kSeen, "good", "splendid", "answer.not_a_choice", ""},
        {"safety.walk.clear", "yes", "not looked at", "", ""},
        {"safety.walk.nowhere", "yes", "no", "gate.no_step", ""},
    };
    for (const Row& row : rows) {
        INFO(row.step << ": " << row.should);
        const auto got = read(row.step, row.stood, row.should);
        CHECK((got ? "" : got.error().code) == row.code);
        if (!got) CHECK(got.error().subject == row.step);
        if (got) CHECK(got->steps[0].verdict == row.verdict);
    }
    const auto pressure = read(kUnwind, "1.40 bar", "1.45 bar");
    CHECK(pressure->steps[0].value.value() == Approx(145000));
    CHECK(pressure->steps[0].unit == "Pa");
    CHECK_FALSE(read(kSeen, "good", "bad")->steps[0].value);
    // A second correction corrects the first.
    const Sealing first{9, seal::Kind::Correction, "corrected", "p-2", "Inka", 0, 0, Sequel(*pressure)};
    CHECK(saidNow(*walk.run, {}, kUnwind) == "1.40 bar");
    CHECK(saidNow(*walk.run, {&first, 1}, kUnwind) == "1.45 bar");
    CHECK(read(kUnwind, "1.40 bar", "1.50 bar", {&first, 1}).error().code == "correction.stale");
    CHECK(read(kUnwind, "1.45 bar", "1.50 bar", {&first, 1}));
}
