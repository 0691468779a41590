// SPDX-License-Identifier: GPL-3.0-or-later
// The hash chain against the outside. SHA-256: FIPS 180-4, Secure Hash Standard, 2015, with the message digests of the
// examples that the institute publishes beside it (one block "abc", two blocks "abcdbcde...", a million "a"). The
// command openssl is the second implementation.
#include "tests/core/logbook/after_fixture.h"
#include "tests/published/evidence.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

Said recompute(const fs::path& file)
{
    return shell("bash " + std::string(TAUTWEB_SOURCE_DIR) + "/tests/published/recompute_chain.sh '" + file.string() +
                 "'");
}

}  // namespace

TEST_CASE("SHA-256 gives the published example digests", "[seal]")
{
    // FIPS 180-4 examples; the last is the digest of no bytes at all.
    const evidence::Page page = evidence::printed("seal", "FIPS 180-4", "example digests");
    page.says("–", "SHA-256 of abc", hex(sha256("abc")),
              "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    page.says("–", "SHA-256 of abcdbcde..., two blocks",
              hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    page.says("–", "SHA-256 of a million a", hex(sha256(std::string(1'000'000, 'a'))),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    evidence::referee("seal", "openssl", "dgst -sha256")
        .says("–", "SHA-256 of nothing", hex(sha256("")),
              shell("printf '' | openssl dgst -sha256 -r | cut -c1-64").out);
}

TEST_CASE("a link is the digest of the previous link and the document as openssl computes it", "[seal]")
{
    const std::array<std::string, 3> documents{"{\"format\":1}", "", std::string(200, 'x') + "é"};
    seal::Link link{};
    std::string byShell(64, '0');
    const evidence::Page page = evidence::referee("seal", "openssl", "dgst -sha256");
    int n = 0;
    for (const std::string& document : documents) {
        link = seal::linkAfter(link, document);
        byShell = shell("printf '%s%s' " + byShell + " " + hex(bytesOf(document)) +
                        " | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64")
                      .out;
        page.says("–", "link " + std::to_string(++n) + " of a chain", hex(link), byShell);
    }
}

TEST_CASE("a logbook's chain recomputed by sqlite3 and openssl alone ends in the printed anchor", "[seal]")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    answerAll(open, inka);
    must(open, run::SignOff{"Größe stimmt"}, inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    const std::string anchor = seal::anchorText(shop.writer->reader().anchor().value());
    shop.writer.reset();
    // Its digest is another each time, so the table has only whether it came out the same.
    const bool same = recompute(shop.file()).out == anchor;
    CHECK(same);
    evidence::Tally anchors;
    anchors.note(same);
    anchors.check(evidence::referee("seal", "openssl", "recompute_chain.sh, with sqlite3"), "–",
                  "anchor of a sealed run's logbook");
    CHECK(seal::anchorText(verify(shop.file(), {})->end) == anchor);

    const auto both = [&](const char* sql, const std::string& said, const std::string& subject) {
        INFO(sql);
        const fs::path copy = shop.folder / "copy.logbook";
        fs::copy_file(shop.file(), copy, fs::copy_options::overwrite_existing);
        tamper(copy, sql);
        CHECK(recompute(copy).out == said);
        CHECK(verify(copy, {})->findings.at(0).subject == subject);
    };
    both("UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), 'Inka', 'Inga') AS BLOB) WHERE seq = 7",
         "first break at 7", "seal 7");
    both("UPDATE seal_rows SET link = zeroblob(32) WHERE seq = 4", "first break at 4", "seal 4");
    both("DELETE FROM seal_rows WHERE seq = 3", "gap before 4", "seal 3");
}

TEST_CASE("a logbook with review, correction and void is recomputed and its signatures checked by openssl alone",
          "[seal]")
{
    SealedShop shop;
    const std::string abandoned = shop.abandonRun().id;
    const auto matteo = shop.signer("p-1");
    REQUIRE(shop.writer->review(shop.run, {false, "Größe prüfen"}, *matteo));
    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    REQUIRE(shop.writer->review(shop.run, {true, {}}, *matteo));
    REQUIRE(shop.writer->voidRun(abandoned, "never set up", *shop.signer("p-3")));
    const std::string anchor = seal::anchorText(shop.writer->reader().anchor().value());
    REQUIRE(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    evidence::Tally tally;
    const auto same = [&](const std::string& ours, const std::string& theirs) {
        CHECK(ours == theirs);
        tally.note(ours == theirs);
    };
    same(anchor, recompute(shop.file()).out);
    const auto signatures = [](const fs::path& file) {
        return shell("bash " + std::string(TAUTWEB_SOURCE_DIR) + "/tests/published/check_signatures.sh '" +
                     file.string() + "'")
            .out;
    };
    same("abandoned 1\ncorrected 1\nenrolled 4\nperformed 1\nreviewed 2\nvoided 1", signatures(shop.file()));
    tally.check(evidence::referee("seal", "openssl", "recompute_chain.sh and check_signatures.sh, with sqlite3"), "–",
                "anchor and signatures of a reviewed, corrected and voided logbook");
    const auto both = [&](const std::string& sql, const std::string& said, const char* code, const char* subject) {
        INFO(sql);
        const fs::path copy = shop.copy();
        tamper(copy, sql);
        CHECK(signatures(copy) == said);
        const auto verified = verify(copy, {});
        REQUIRE_FALSE(verified->findings.empty());
        CHECK(verified->findings.front().code == code);
        CHECK(verified->findings.front().subject == subject);
    };
    both("DELETE FROM signature_rows WHERE seq = 12", "no signature at 12", "signature.missing", "seal 12");
    both("UPDATE signature_rows SET signature = (SELECT signature FROM signature_rows WHERE seq = 11) WHERE seq = 13",
         "wrong signature at 13", "signature.broken", "seal 13");
    both("UPDATE signature_rows SET key = randomblob(32) WHERE seq = 14", "unknown key at 14", "signature.key",
         "seal 14");
    both("UPDATE signature_rows SET meaning = 'reviewed' WHERE seq = 14", "other meaning at 14", "signature.altered",
         "seal 14");
}
