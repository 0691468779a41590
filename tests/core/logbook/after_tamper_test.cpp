// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/export.h"
#include "tests/core/logbook/after_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

std::string blob(std::span<const std::uint8_t> bytes) { return "X'" + hex(bytes) + "'"; }

/// Seals 9 and 10 are runs, 11 and 12 their reviews by p-1, 13 a correction of run 9 by p-2, 14 its void by p-3.
struct Told : SealedShop {
    seal::Seal other;
    std::shared_ptr<const people::Signer> matteo, inka, ada, tove;
    Told()
    {
        other = sealRun();
        matteo = signer("p-1");
        inka = signer("p-2");
        ada = signer("p-3");
        tove = signer("p-4");
        REQUIRE(writer->review(run, {true, "seen the gauge"}, *matteo));
        REQUIRE(writer->review(other.id, {true, {}}, *matteo));
        REQUIRE(writer->correct(run, correction(), *inka));
        REQUIRE(writer->voidRun(run, "set up on the wrong press", *ada));
        REQUIRE(writer->reader().anchor()->count == 16);
    }
    [[nodiscard]] static std::string first(const fs::path& file, Depth depth = Depth::Seals)
    {
        const auto verified = verify(file, {}, depth);
        REQUIRE(verified);
        if (verified->findings.empty()) return "in order";
        return verified->findings.front().code + " at " + verified->findings.front().subject;
    }
};

/// Writes a document at the end of a copy with the right link and a true signature, and asks nobody whether it may:
/// what somebody can do who has a key of this logbook and the source code.
struct Forger {
    const SealedShop& shop;
    fs::path file;
    seal::Anchor end;
    std::int64_t at;
    explicit Forger(const SealedShop& whole) : shop(whole), file(whole.copy())
    {
        end = verify(file, {})->end;
        at = 1'764'060'000'000;
    }
    void add(const seal::Document& document, const people::Signer& by)
    {
        const std::string& person = by.actor().id().value;
        const seal::Document finished = seal::sealedBy(document, person, by.actor().name(), {++at, 60});
        const seal::Head head = seal::headOf(finished);
        const std::string bytes = seal::write(finished);
        const seal::Link link = seal::linkAfter(end.link, bytes);
        const std::string seq = std::to_string(end.count + 1), when = std::to_string(at);
        tamper(file, "INSERT INTO seal_rows VALUES (" + seq + ", '" + head.kind + "', '" + head.id + "', '" +
                         head.subject + "', " + when + ", '" + person + "', " + blob(bytesOf(bytes)) + ", " +
                         blob(end.link) + ", " + blob(link) + "); INSERT INTO signature_rows VALUES (" + seq + ", '" +
                         person + "', " + blob(by.key()) + ", '" + seal::meaningOf(finished) + "', " + when + ", " +
                         blob(by.sign(seal::kSealPurpose, link)) + ")");
        end = {end.count + 1, link};
    }
    void add(const seal::Sequel& sequel, const seal::Seal& about, const people::Signer& by)
    {
        seal::SealedRun run;
        run.id = about.id;
        run.subject = hex(about.link);
        add(documentOf(sequel, run, by), by);
    }
    [[nodiscard]] static seal::Document documentOf(const seal::Sequel& sequel, const seal::SealedRun& run,
                                                   const people::Signer& by)
    {
        people::PersonRecord person;
        person.id = by.actor().id();
        person.name = by.actor().name();
        person.role = by.actor().role();
        return seal::sequelOf(sequel, run, person, {1'764'060'000'000, 60});
    }
};

}  // namespace

TEST_CASE("a review, correction or void that was edited, moved or re-signed is found at its seal")
{
    const Told shop;
    REQUIRE(Told::first(shop.file(), Depth::Deep) == "in order");
    const auto edit = [](const char* seq, const std::string& from, const std::string& to) {
        return "UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), '" + from + "', '" + to +
               "') AS BLOB) WHERE seq = " + seq;
    };
    const std::string one = hex(shop.own.link), two = hex(shop.other.link);
    struct Case {
        const char* name;
        std::string sql;
        const char* first;
    };
    const Case cases[] = {
        {"a note edited", edit("13", "seen the gauge", "saw it all"), "chain.broken at seal 13"},
        {"a reason edited", edit("15", "read from the side", "never mind"), "chain.broken at seal 15"},
        {"what stood edited", edit("15", "1.40 bar", "1.30 bar"), "chain.broken at seal 15"},
        {"the void's reason edited", edit("16", "wrong press", "right press"), "chain.broken at seal 16"},
        {"accepted made sent back", edit("13", "accepted", "sent_back"), "chain.broken at seal 13"},
        {"moved to another run in the row", "UPDATE seal_rows SET subject = '" + two + "' WHERE seq = 13",
         "chain.head at seal 13"},
        {"moved to another run in the document", edit("13", one, two), "chain.broken at seal 13"},
        {"another id in the row", "UPDATE seal_rows SET id = '" + shop.other.id + "' WHERE seq = 13",
         "chain.head at seal 13"},
        {"a review made a void in the row", "UPDATE seal_rows SET kind = 'void' WHERE seq = 13",
         "chain.head at seal 13"},
        {"taken out", "DELETE FROM signature_rows WHERE seq = 13; DELETE FROM seal_rows WHERE seq = 13",
         "chain.gap at seal 13"},
        {"the void taken out of the end",
         "DELETE FROM signature_rows WHERE seq = 16; DELETE FROM seal_rows WHERE seq = 16",
         "in order"},  // which is why sheets carry an anchor
        {"its signature taken away", "DELETE FROM signature_rows WHERE seq = 13", "signature.missing at seal 13"},
        {"the signature of another review by the same person",
         "UPDATE signature_rows SET signature = (SELECT signature FROM signature_rows WHERE seq = 14) WHERE seq = 13",
         "signature.broken at seal 13"},
        {"another meaning", "UPDATE signature_rows SET meaning = 'voided' WHERE seq = 13",
         "signature.altered at seal 13"},
        {"another person", "UPDATE signature_rows SET person = 'p-3' WHERE seq = 13", "signature.altered at seal 13"},
        {"another time", "UPDATE signature_rows SET signed_at = signed_at + 1 WHERE seq = 16",
         "signature.altered at seal 16"},
        {"another key",
         "UPDATE signature_rows SET key = (SELECT key FROM signature_rows WHERE seq = 16) WHERE seq = 13",
         "signature.key at seal 13"},
    };
    for (const Case& tampered : cases) {
        INFO(tampered.name);
        const fs::path copy = shop.copy();
        tamper(copy, tampered.sql);
        CHECK(Told::first(copy) == tampered.first);
    }
    const fs::path cut = shop.copy();
    tamper(cut, "DELETE FROM signature_rows WHERE seq = 16; DELETE FROM seal_rows WHERE seq = 16");
    const seal::Anchor anchor = shop.writer->reader().anchor().value();
    CHECK(verify(cut, {{anchor.count, hex(anchor.link)}})->findings.front().code == "anchor.missing");
    CHECK(Told::first(cut, Depth::Deep) == "index.differs at run_rows " + shop.run);
}

TEST_CASE("a document put in the place of another needs the key of the person it names")
{
    const Told shop;
    const SigningKey stolen = SigningKey::make();
    const seal::Seal review = shop.writer->reader().seal(14).value();
    std::string document = review.document;
    const std::string from = hex(shop.other.link);
    document.replace(document.find(from), from.size(), hex(shop.own.link));
    const seal::Link link = seal::linkAfter(review.previous, document);
    const fs::path copy = shop.copy();
    tamper(copy, "UPDATE seal_rows SET document = " + blob(bytesOf(document)) + ", subject = '" + hex(shop.own.link) +
                     "', link = " + blob(link) +
                     " WHERE seq = 14; UPDATE signature_rows SET key = " + blob(stolen.publicKey()) +
                     ", signature = " + blob(stolen.sign(seal::kSealPurpose, link)) + " WHERE seq = 14");
    CHECK(Told::first(copy) == "signature.key at seal 14");
}

TEST_CASE("a true signature does not make good what its signer was not to give")
{
    SealedShop shop;
    const auto matteo = shop.signer("p-1"), inka = shop.signer("p-2"), tove = shop.signer("p-4");
    using seal::Review;
    using seal::Voiding;
    OpenRun handed = shop.begin();
    must(handed, run::HandOver{shop.actor("p-1")}, shop.actor("p-2"));
    must(handed, run::Abandon{"cancelled"}, shop.actor("p-1"));
    const seal::Seal byTwo = handed.seal(*inka).value();
    struct Case {
        const char* name;
        seal::Sequel sequel;
        const seal::Seal& about;
        const people::Signer& by;
        const char* code;
    };
    const Case cases[] = {
        {"an operator reviews", Review{true, {}}, shop.own, *inka, "signature.role"},
        {"an operator voids", Voiding{"never happened"}, shop.own, *inka, "signature.role"},
        {"a trainee reviews", Review{true, {}}, shop.own, *tove, "signature.role"},
        {"a trainee corrects", SealedShop::correction(), shop.own, *tove, "signature.role"},
        {"a supervisor reviews a run that they had in hand", Review{true, {}}, byTwo, *matteo, "signature.role"},
        {"a supervisor voids a run that they had in hand", Voiding{"never happened"}, byTwo, *matteo, "signature.role"},
        {"a supervisor reviews", Review{true, {}}, shop.own, *matteo, ""},
        {"an operator corrects their own run", SealedShop::correction(), shop.own, *inka, ""},
        {"a supervisor voids", Voiding{"wrong press"}, shop.own, *matteo, ""},
        {"a void without a reason", Voiding{"-"}, shop.own, *matteo, "document.broken"},
        {"a correction of nothing", seal::Correction{{}, {}, "misread"}, shop.own, *inka, "document.broken"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        Forger forger(shop);
        forger.add(one.sequel, one.about, one.by);
        const std::string code = one.code;
        CHECK(Told::first(forger.file) == (code.empty() ? "in order" : code + " at seal 13"));
    }
}

TEST_CASE("what may not follow what came before is found, whoever signed it")
{
    SealedShop shop;
    const auto matteo = shop.signer("p-1"), inka = shop.signer("p-2");
    using seal::Review;
    using seal::Voiding;
    SECTION("a supervisor reviews what they corrected themselves")
    {
        Forger forger(shop);
        forger.add(SealedShop::correction(), shop.own, *matteo);
        forger.add(Review{true, {}}, shop.own, *matteo);
        CHECK(Told::first(forger.file) == "signature.role at seal 13");
    }
    SECTION("anything about a void run, an acceptance without a correction, or one twice")
    {
        for (const seal::Sequel& next : {seal::Sequel(Review{true, {}}), seal::Sequel(SealedShop::correction()),
                                         seal::Sequel(Voiding{"once more"})}) {
            Forger forger(shop);
            forger.add(Voiding{"wrong press"}, shop.own, *matteo);
            forger.add(next, shop.own, *shop.signer("p-3"));
            CHECK(Told::first(forger.file) == "chain.order at seal 13");
        }
        for (const bool accepted : {false, true}) {
            Forger forger(shop);
            forger.add(Review{accepted, "look again"}, shop.own, *matteo);
            forger.add(Review{true, {}}, shop.own, *shop.signer("p-3"));
            CHECK(Told::first(forger.file) == "chain.order at seal 13");
        }
    }
    SECTION("about no run, or about one run under another's name")
    {
        seal::Seal nowhere = shop.own;
        nowhere.link[5] ^= 1U;
        seal::Seal mixed = shop.own;
        mixed.id = shop.sealRun().id;
        const seal::Seal person = shop.writer->reader().seal(1).value();
        for (const seal::Seal& about : {nowhere, mixed, person}) {
            Forger forger(shop);
            forger.add(Review{true, {}}, about, *matteo);
            CHECK(Told::first(forger.file) == "chain.subject at seal 13");
        }
    }
    SECTION("a correction that misquotes what stood, or corrects a step that the run does not have")
    {
        REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *inka));
        struct Case {
            const char *stood, *should, *first;
        };
        for (const Case& one :
             {Case{"1.45 bar", "1.50 bar", "in order"}, Case{"1.40 bar", "1.50 bar", "correction.misquoted at seal 13"},
              Case{"9.99 bar", "1.50 bar", "correction.misquoted at seal 13"}}) {
            Forger forger(shop);
            forger.add(SealedShop::correction(one.stood, one.should), shop.own, *inka);
            CHECK(Told::first(forger.file) == one.first);
            // Nor does it go unfound in a file that left the logbook.
            const auto envelope = envelopeOf(forger.file, shop.run);
            REQUIRE(envelope);
            const Findings found = seal::checkEnvelope(*envelope, {}).findings;
            CHECK((found.empty() ? "in order" : found.front().code + " at " + found.front().subject) == one.first);
        }
        seal::Correction nowhere = SealedShop::correction("", "1.50 bar");
        nowhere.steps.at(0).step = "set.lift.nowhere";
        Forger forger(shop);
        forger.add(nowhere, shop.own, *inka);
        CHECK(Told::first(forger.file) == "correction.misquoted at seal 13");
    }
    SECTION("in another's name")
    {
        Forger forger(shop);
        const seal::SealedRun run{shop.run, hex(shop.own.link), {}, {}, {}};
        forger.add(Forger::documentOf(Review{true, {}}, run, *shop.signer("p-3")), *matteo);
        CHECK(Told::first(forger.file) == "document.broken at seal 12");
    }
    SECTION("the same run sealed once more, prettier")
    {
        Forger forger(shop);
        seal::Document again = seal::read(shop.own.document).value();
        again.body.set("remarks", "nothing to see");
        const fs::path copy = forger.file;
        tamper(copy, "DELETE FROM reading_rows");
        forger.add(again, *inka);
        CHECK(Told::first(copy) == "chain.twice at seal 12");
    }
}

TEST_CASE("verify --deep finds an edited present state and reviewer")
{
    SealedShop shop;
    REQUIRE(shop.writer->review(shop.run, {true, {}}, *shop.signer("p-1")));
    for (const char* sql : {"UPDATE run_rows SET present = 'sealed'", "UPDATE run_rows SET present = 'void'",
                            "UPDATE run_rows SET reviewed_by = 'Ada Sund'", "UPDATE run_rows SET reviewed_by = ''"}) {
        INFO(sql);
        const fs::path copy = shop.copy();
        tamper(copy, sql);
        CHECK(Told::first(copy) == "in order");
        CHECK(Told::first(copy, Depth::Deep) == "index.differs at run_rows " + shop.run);
    }
}
