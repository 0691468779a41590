// SPDX-License-Identifier: GPL-3.0-or-later
#include <functional>

#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// A run with one accepted deviation, sealed by p-2 as number 7: two people, four definitions, the run.
struct Signed : Press {
    seal::Seal seal;
    Signed()
    {
        OpenRun open = begin();
        const people::Actor inka = actor("p-2");
        while (open.run().next() != run::StepId{"set.lift.setting/unwind"}) REQUIRE(answerNext(open, inka));
        must(open, run::Answer{{"set.lift.setting/unwind"}, "5.9 bar", {}}, inka);
        must(open, run::AcceptDeviation{{"set.lift.setting/unwind"}, "gauge out for calibration", signer("p-1")}, inka);
        while (answerNext(open, inka)) {
        }
        must(open, run::SignOff{""}, inka);
        seal = open.seal(*signer("p-2")).value();
        REQUIRE(seal.seq == 9);
        writer.reset();
    }
    [[nodiscard]] fs::path copy() const
    {
        const fs::path beside = folder / "copy.logbook";
        fs::copy_file(file(), beside, fs::copy_options::overwrite_existing);
        return beside;
    }
};

std::string blob(std::span<const std::uint8_t> bytes) { return "X'" + hex(bytes) + "'"; }

/// Puts another document in the place of seal 9, with the right link and a signature of this key: what somebody can do
/// who has the file, the source code and no key of ours.
std::string resealed(const Signed& shop, const std::string& document, const SigningKey& key)
{
    const seal::Link link = seal::linkAfter(shop.seal.previous, document);
    return "DELETE FROM reading_rows; UPDATE signature_rows SET key = " + blob(key.publicKey()) +
           ", signature = " + blob(key.sign(seal::kSealPurpose, link)) +
           " WHERE seq = 9; UPDATE seal_rows SET document = " + blob(bytesOf(document)) + ", link = " + blob(link) +
           " WHERE seq = 9";
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

void firstWrong(const fs::path& file, const char* code, const char* subject)
{
    const auto verified = verify(file, {});
    REQUIRE(verified);
    REQUIRE_FALSE(verified->findings.empty());
    CHECK(verified->findings.front().code == code);
    CHECK(verified->findings.front().subject == subject);
}

}  // namespace

TEST_CASE("a sealed run carries its operator's signature, which openssl accepts")
{
    const Signed shop;
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    CHECK(sqlite(shop.file(), "SELECT person, meaning FROM signatures WHERE seq = 9").out == "p-2|performed");
    // RFC 8032, checked by a second implementation: the message is the purpose, a zero byte and the link.
    const std::string key = sqlite(shop.file(), "SELECT key FROM signatures WHERE seq = 9").out;
    const std::string signature = sqlite(shop.file(), "SELECT signature FROM signatures WHERE seq = 9").out;
    const std::string link = sqlite(shop.file(), "SELECT link FROM seals WHERE seq = 9").out;
    const std::string at = shop.folder.path.string();
    const Said said =
        shell("cd '" + at + "' && printf '302a300506032b6570032100" + key +
              "' | xxd -r -p | openssl pkey -pubin -inform DER -out k.pem && { printf 'tautweb-seal-1\\0'; printf '" +
              link + "' | xxd -r -p; } > message && printf '" + signature +
              "' | xxd -r -p > signature && openssl pkeyutl -verify -pubin -inkey k.pem -rawin -in message "
              "-sigfile signature");
    CHECK(said.out == "Signature Verified Successfully");
}

TEST_CASE("who abandons a run signs that it was abandoned")
{
    Press shop;
    OpenRun open = shop.begin();
    must(open, run::Abandon{"the order was cancelled"}, shop.actor("p-2"));
    REQUIRE(open.seal(*shop.signer("p-2")));
    CHECK(sqlite(shop.file(), "SELECT meaning FROM signatures WHERE seq = 9").out == "abandoned");
    CHECK(verify(shop.file(), {})->findings.empty());
}

TEST_CASE("a signature that is taken away, changed, moved or given with another key is found at its seal")
{
    const Signed shop;
    struct Case {
        const char* name;
        const char* sql;
        const char* code;
    };
    const Case cases[] = {
        {"taken away", "DELETE FROM signature_rows WHERE seq = 9", "signature.missing"},
        {"a byte changed", "UPDATE signature_rows SET signature = randomblob(64) WHERE seq = 9", "signature.broken"},
        {"moved from another seal",
         "UPDATE signature_rows SET signature = (SELECT signature FROM signature_rows WHERE seq = 2) WHERE seq = 9",
         "signature.broken"},
        {"another's key put in",
         "UPDATE signature_rows SET key = (SELECT key FROM signature_rows WHERE seq = 1) WHERE seq = 9",
         "signature.key"},
        {"another meaning", "UPDATE signature_rows SET meaning = 'reviewed' WHERE seq = 9", "signature.altered"},
        {"another time", "UPDATE signature_rows SET signed_at = signed_at - 60000 WHERE seq = 9", "signature.altered"},
        {"another person", "UPDATE signature_rows SET person = 'p-1' WHERE seq = 9", "signature.altered"},
        {"one more beside it",
         "INSERT INTO signature_rows SELECT seq, 'p-1', key, 'reviewed', signed_at, signature FROM signature_rows "
         "WHERE seq = 9",
         "signature.altered"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        const fs::path copy = shop.copy();
        tamper(copy, one.sql);
        firstWrong(copy, one.code, "seal 9");
    }
    const fs::path copy = shop.copy();
    tamper(copy, "DELETE FROM signature_rows WHERE seq = 2");
    firstWrong(copy, "signature.missing", "seal 2");
}

TEST_CASE("somebody with the file and the source code, and no key of ours, cannot re-sign a run")
{
    const Signed shop;
    const SigningKey stolen = SigningKey::make();
    const fs::path copy = shop.copy();
    SECTION("the same document signed with a key of their own")
    {
        tamper(copy, resealed(shop, shop.seal.document, stolen));
        firstWrong(copy, "signature.key", "seal 9");
    }
    SECTION("a reading made prettier")
    {
        tamper(copy, resealed(shop, replaced(shop.seal.document, "5.9 bar", "5.5 bar"), stolen));
        firstWrong(copy, "signature.key", "seal 9");
    }
    SECTION("a person given a new key first")
    {
        // A person document of their own after the run, and then a run signed with that key.
        Json body = Json::object();
        body.set("format", 1).set("kind", "person").set("id", "p-2").set("change", "key").set("name", "Inka Thorsby");
        body.set("role", "operator").set("active", true).set("key", hex(stolen.publicKey()));
        const seal::Document finished =
            seal::sealedBy({seal::Kind::Person, body}, "p-2", "Inka Thorsby", {shop.seal.sealedAtMs + 1, 60});
        const std::string bytes = seal::write(finished);
        const seal::Link link = seal::linkAfter(shop.seal.link, bytes);
        const std::string at = std::to_string(shop.seal.sealedAtMs + 1);
        tamper(copy, "INSERT INTO seal_rows VALUES (10, 'person', 'p-2', '', " + at + ", 'p-2', " +
                         blob(bytesOf(bytes)) + ", " + blob(shop.seal.link) + ", " + blob(link) +
                         "); INSERT INTO signature_rows VALUES (10, 'p-2', " + blob(stolen.publicKey()) +
                         ", 'enrolled', " + at + ", " + blob(stolen.sign(seal::kSealPurpose, link)) + ")");
        firstWrong(copy, "signature.key", "seal 10");
    }
}

TEST_CASE("a deviation that was accepted for one value does not stand for another")
{
    // The operator may sign the run anew with their own key, but not what the supervisor signed in it.
    Signed shop;
    shop.reopen();
    const auto inka = shop.signer("p-2");
    shop.writer.reset();
    for (const auto& [from, to] : {std::pair("5.9 bar", "5.2 bar"), std::pair("gauge out for calibration", "agreed")}) {
        std::string document = shop.seal.document;
        for (std::size_t at = document.find(from); at != std::string::npos; at = document.find(from, at + 1))
            document.replace(at, std::string(from).size(), to);
        const seal::Link link = seal::linkAfter(shop.seal.previous, document);
        const fs::path copy = shop.copy();
        tamper(copy, "DELETE FROM reading_rows; UPDATE signature_rows SET signature = " +
                         blob(inka->sign(seal::kSealPurpose, link)) +
                         " WHERE seq = 9; UPDATE seal_rows SET document = " + blob(bytesOf(document)) +
                         ", link = " + blob(link) + " WHERE seq = 9");
        firstWrong(copy, "signature.broken", "seal 9");
    }
}

TEST_CASE("verify --deep finds what was edited in any table that answers for the documents")
{
    Signed shop;
    shop.reopen();
    REQUIRE(shop.writer->withdraw("north", "the guard switch does not stop it", shop.actor("p-1")));
    shop.writer.reset();
    struct Case {
        const char* sql;
        const char* table;
    };
    const Case cases[] = {
        {"UPDATE person_rows SET name = 'Somebody Else' WHERE person = 'p-2'", "person_rows"},
        {"UPDATE person_rows SET role = 'supervisor' WHERE person = 'p-2'", "person_rows"},
        {"UPDATE person_rows SET key = zeroblob(32) WHERE person = 'p-2'", "person_rows"},
        {"INSERT INTO person_rows SELECT 'p-66', seq, 'A Ghost', role, active, key FROM person_rows WHERE person = "
         "'p-1'",
         "person_rows"},
        {"UPDATE definition_rows SET text = text || ' '", "definition_rows"},
        {"DELETE FROM definition_rows WHERE what = 'job'", "definition_rows"},
        {"DELETE FROM definition_rows WHERE what = 'target_words'", "definition_rows"},
        {"UPDATE definition_rows SET text = replace(text, 'Mass', 'Size') WHERE what = 'target_words'",
         "definition_rows"},
        {"DELETE FROM withdrawal_rows", "withdrawal_rows"},
        {"UPDATE withdrawal_rows SET reason = 'never mind'", "withdrawal_rows"},
        {"UPDATE run_rows SET verdict = 'clean'", "run_rows"},
        {"UPDATE run_rows SET deviations = 0", "run_rows"},
        {"UPDATE reading_rows SET si_value = si_value * 1.01", "reading_rows"},
        {"UPDATE reading_rows SET entered_text = '5.2 bar' WHERE entered_text = '5.9 bar'", "reading_rows"},
        {"DELETE FROM reading_rows", "reading_rows"},
    };
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    for (const Case& one : cases) {
        INFO(one.sql);
        const fs::path copy = shop.copy();
        tamper(copy, one.sql);
        CHECK(verify(copy, {})->findings.empty());  // the seals themselves are in order
        const auto deep = verify(copy, {}, Depth::Deep);
        REQUIRE(deep);
        REQUIRE_FALSE(deep->findings.empty());
        CHECK(deep->findings.front().code == "index.differs");
        CHECK(deep->findings.front().subject.starts_with(one.table));
    }
}

TEST_CASE("whoever says that they have another PIN changes nothing else with it")
{
    Signed shop;
    shop.reopen();
    const auto inka = shop.signer("p-2");
    shop.writer.reset();
    const auto told = [&](const char* id, const char* role, bool active, const PublicKey& key) {
        Json body = Json::object();
        body.set("format", 1).set("kind", "person").set("id", id).set("change", "pin").set("name", "Inka Thorsby");
        body.set("role", role).set("active", active).set("key", hex(key));
        const seal::Document finished =
            seal::sealedBy({seal::Kind::Person, body}, "p-2", "Inka Thorsby", {shop.seal.sealedAtMs + 1, 60});
        const std::string bytes = seal::write(finished);
        const seal::Link link = seal::linkAfter(shop.seal.link, bytes);
        const std::string at = std::to_string(shop.seal.sealedAtMs + 1);
        fs::path copy = shop.copy();
        tamper(copy, "INSERT INTO seal_rows VALUES (10, 'person', '" + std::string(id) + "', '', " + at + ", 'p-2', " +
                         blob(bytesOf(bytes)) + ", " + blob(shop.seal.link) + ", " + blob(link) +
                         "); INSERT INTO signature_rows VALUES (10, 'p-2', " + blob(inka->key()) + ", 'enrolled', " +
                         at + ", " + blob(inka->sign(seal::kSealPurpose, link)) + ")");
        return copy;
    };
    CHECK(verify(told("p-2", "operator", true, inka->key()), {})->findings.empty());
    firstWrong(told("p-2", "supervisor", true, inka->key()), "signature.role", "seal 10");
    firstWrong(told("p-2", "operator", false, inka->key()), "signature.role", "seal 10");
    firstWrong(told("p-2", "operator", true, SigningKey::make().publicKey()), "signature.role", "seal 10");
    firstWrong(told("p-1", "operator", true, inka->key()), "signature.role", "seal 10");
}
