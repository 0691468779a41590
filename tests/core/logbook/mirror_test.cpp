// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("after each seal the mirror ends where the logbook ends, and its tables say what its documents say")
{
    Keeping shop;
    shop.sealRun();
    shop.writer->keepMirror(shop.elsewhere.path);
    const MirrorState first = shop.mirrored();
    CHECK(warnings(first.findings).empty());
    CHECK(first.holdsAll());
    CHECK(first.file == shop.elsewhere / "shop-mirror.logbook");
    isInOrder(first.file, shop.end());
    for (int i = 0; i < 3; ++i) {
        const std::string run = shop.sealRun();
        const MirrorState state = shop.mirrored();
        CHECK(state.count == shop.end().count);
        CHECK(warnings(state.findings).empty());
        const auto reader = openReader(state.file);
        REQUIRE(reader);
        CHECK((*reader)->anchor().value() == shop.end());
        CHECK((*reader)->sealOfRun(run)->document == shop.writer->reader().sealOfRun(run)->document);
    }
    isInOrder(first.file, shop.end());
    // Another implementation agrees that the chain is whole.
    const Said outside =
        shell("bash '" TAUTWEB_SOURCE_DIR "/tests/published/recompute_chain.sh' '" + first.file.string() + "'");
    CHECK(outside.out == seal::anchorText(shop.end()));
}

TEST_CASE("a mirror holds no PIN material and no open run, and is never written in as a logbook")
{
    Keeping shop;
    const OpenRun open = shop.begin();
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    CHECK(sqlite(mirror, "SELECT count(*) FROM secret_rows").out == "0");
    CHECK(sqlite(mirror, "SELECT count(*) FROM open_events").out == "0");
    const std::string bytes = readFile(mirror).value();
    CHECK(bytes.find("$argon2id$") == std::string::npos);
    const std::string sealed = sqlite(shop.file(), "SELECT substr(under_passphrase, -30) FROM secret_rows LIMIT 1").out;
    REQUIRE(sealed.size() == 30);
    CHECK(bytes.find(sealed) == std::string::npos);
    const auto refused = Writer::open(mirror, shop.clock, shop.ids, {false, "somebody", 0});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "logbook.mirror");
    CHECK(openReader(mirror));
}

TEST_CASE("a seal is done while the mirror's folder is gone, the finding says so, and the mirror catches up")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere / "stick");
    CHECK(warnings(shop.mirrored().findings) == Codes{"mirror.folder_missing"});
    CHECK_FALSE(shop.mirrored().holdsAll());
    CHECK_FALSE(fs::exists(shop.elsewhere / "stick"));  // what is made in a stick's place is on no stick
    shop.sealMore(2);
    CHECK(shop.mirrored().behind == shop.end().count);
    fs::create_directory(shop.elsewhere / "stick");
    shop.sealMore();
    CHECK(shop.mirrored().holdsAll());
    isInOrder(shop.mirrored().file, shop.end());
    fs::rename(shop.elsewhere / "stick", shop.elsewhere / "pulled");
    shop.sealMore(3);
    CHECK(warnings(shop.mirrored().findings) == Codes{"mirror.folder_missing"});
    fs::rename(shop.elsewhere / "pulled", shop.elsewhere / "stick");
    shop.sealMore();
    CHECK(warnings(shop.mirrored().findings).empty());
    isInOrder(shop.elsewhere / "stick" / "shop-mirror.logbook", shop.end());
}

TEST_CASE("a mirror kept by a writer that ended without it catches up with the next one")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    CHECK(shop.mirrored().holdsAll());
    shop.writer->keepMirror({});
    CHECK_FALSE(shop.writer->mirror());
    shop.sealMore(3);
    shop.reopen();
    shop.writer->keepMirror(shop.elsewhere.path);
    CHECK(shop.mirrored().count == shop.end().count);
    // The last seal before the end is in the mirror too.
    shop.sealMore();
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    isInOrder(shop.elsewhere / "shop-mirror.logbook", end);
}

TEST_CASE("a mirror that is not this logbook's is left alone by name, and another is begun beside it")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    shop.writer->keepMirror({});
    struct Case {
        const char* name;
        const char* code;
        const char* sql;
    };
    const Case cases[] = {
        {"its last link was changed", "mirror.fork",
         "UPDATE seal_rows SET link = randomblob(32) WHERE seq = (SELECT max(seq) FROM seal_rows)"},
        {"it has a seal more", "mirror.ahead",
         "INSERT INTO seal_rows SELECT seq + 1, kind, id, subject, sealed_at, person, document, link, randomblob(32) "
         "FROM seal_rows WHERE seq = (SELECT max(seq) FROM seal_rows)"},
        {"it is another logbook's", "mirror.not_ours", "UPDATE file_facts SET value = 'w' WHERE name = 'mirror_of'"},
        {"it is no mirror", "mirror.not_ours", "DELETE FROM file_facts WHERE name = 'mirror_of'"},
        {"its guards are gone", "logbook.older_schema", "SELECT 1; DROP VIEW seals"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        for (const std::string& name : namesIn(shop.elsewhere.path))
            if (name != "shop-mirror.logbook") fs::remove(shop.elsewhere / name);
        fs::copy_file(mirror, shop.elsewhere / "kept");
        tamper(mirror, one.sql);
        const std::string before = readFile(mirror).value();
        const MirrorState state = mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now());
        CHECK(warnings(state.findings) == Codes{one.code});
        CHECK(sentence(state.findings.front()).size() > 60);
        CHECK(readFile(mirror).value() == before);
        CHECK(state.holdsAll());
        CHECK(state.file != mirror);
        CHECK(state.file.filename().string().rfind("shop-mirror-2025", 0) == 0);
        isInOrder(state.file, shop.end());
        // The new one is in use from now on.
        const MirrorState next = mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now());
        CHECK(next.file == state.file);
        CHECK(warnings(next.findings).empty());
        fs::rename(shop.elsewhere / "kept", mirror);
    }
}

TEST_CASE("what is broken in the logbook does not go into its mirror")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    const seal::Anchor before = shop.end();
    const fs::path mirror = shop.mirrored().file;
    shop.writer->keepMirror({});
    shop.sealMore(3);
    shop.writer.reset();
    tamper(shop.file(),
           "UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), 'a = 2', 'a = 9') AS BLOB) "
           "WHERE seq = " +
               std::to_string(before.count + 2));
    const MirrorState state = mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now());
    CHECK(warnings(state.findings) == Codes{"mirror.source_broken"});
    CHECK(state.findings.back().subject == "seal " + std::to_string(before.count + 2));
    isInOrder(mirror, before);
    // What the table beside it says instead of the document is made right in the mirror.
    Keeping other;
    other.sealMore();
    const seal::Anchor end = other.end();
    other.writer.reset();
    tamper(other.file(), "UPDATE seal_rows SET person = 'p-9' WHERE seq = 5; UPDATE person_rows SET role = 'trainer'");
    isInOrder(mirrorTo(other.file(), other.elsewhere.path, other.clock.now()).file, end);
}

TEST_CASE("two who bring one mirror up to date at once leave it whole")
{
    Keeping shop;
    shop.sealMore(30);
    std::vector<std::thread> both;
    std::array<MirrorState, 2> states;
    REQUIRE(mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now()).holdsAll());
    shop.sealMore(60);
    for (MirrorState& state : states)
        both.emplace_back([&state, &shop] {
            state = mirrorTo(shop.file(), shop.elsewhere.path, Instant{1'764'052'999'000, 60});
        });
    for (std::thread& one : both) one.join();
    for (const MirrorState& state : states) {
        CHECK(warnings(state.findings).empty());
        CHECK(state.count == shop.end().count);
    }
    CHECK(namesIn(shop.elsewhere.path) == Codes{"shop-mirror.logbook"});
    isInOrder(states[0].file, shop.end());
}

TEST_CASE("a mirror that was changed in its middle is found when the next writer begins to keep it")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    CHECK(warnings(shop.mirrored().findings).empty());
    shop.writer->keepMirror({});
    tamper(mirror, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 3");
    shop.writer->keepMirror(shop.elsewhere.path);
    const MirrorState state = shop.mirrored();
    CHECK(warnings(state.findings) == Codes{"chain.broken"});
    CHECK(state.findings.back().subject == mirror.string() + ", seal 3");
    // Moved away as it says, another is begun and is whole.
    fs::rename(mirror, shop.elsewhere / "moved away");
    shop.sealMore();
    CHECK(warnings(shop.mirrored().findings).empty());
    isInOrder(mirror, shop.end());
}
