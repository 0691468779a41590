// SPDX-License-Identifier: GPL-3.0-or-later
// The hash chain against the outside. SHA-256: FIPS 180-4, Secure Hash Standard, 2015, with the message digests of the
// examples that the institute publishes beside it (one block "abc", two blocks "abcdbcde...", a million "a"); the
// digest of no bytes is as openssl gives it. The command openssl is the second implementation.
#include "tests/core/logbook/run_fixture.h"

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

TEST_CASE("SHA-256 gives the published example digests")
{
    // FIPS 180-4 examples; the last is the digest of no bytes at all.
    CHECK(hex(sha256("abc")) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")) ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(hex(sha256(std::string(1'000'000, 'a'))) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    CHECK(hex(sha256("")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("a link is the digest of the previous link and the document as openssl computes it")
{
    const std::array<std::string, 3> documents{"{\"format\":1}", "", std::string(200, 'x') + "é"};
    seal::Link link{};
    std::string byShell(64, '0');
    for (const std::string& document : documents) {
        link = seal::linkAfter(link, document);
        byShell = shell("printf '%s%s' " + byShell + " " + hex(bytesOf(document)) +
                        " | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64")
                      .out;
        CHECK(hex(link) == byShell);
    }
}

TEST_CASE("a logbook's chain recomputed by sqlite3 and openssl alone ends in the printed anchor")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    answerAll(open, inka);
    must(open, run::SignOff{"Größe stimmt"}, inka);
    REQUIRE(open.seal(inka));
    const std::string anchor = seal::anchorText(shop.writer->reader().anchor().value());
    shop.writer.reset();
    CHECK(recompute(shop.file()).out == anchor);
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
