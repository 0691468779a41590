// SPDX-License-Identifier: GPL-3.0-or-later
#include <SQLiteCpp/SQLiteCpp.h>

#include <array>

#include "core/logbook/mirror_keeper.h"
#include "tests/core/base/nobody.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

using Codes = std::vector<std::string>;

fs::path journalOf(const fs::path& file) { return file.string() + "-journal"; }

/// Makes of a mirror what lies there while its PC writes in it, or was killed at it: half of what is to be written, and
/// the journal that would take it back.
void halfWritten(const fs::path& mirror)
{
    const Folder aside;
    const fs::path file = aside / "half.logbook";
    fs::copy_file(mirror, file);
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
    db.exec("PRAGMA cache_size = 4");  // so that it has to write before it is done
    db.exec("BEGIN IMMEDIATE");
    db.exec("PRAGMA user_version = " + std::to_string(kSchema));  // writes the first page, as the end of one does
    for (int i = 0; i < 40; ++i)
        db.exec("INSERT INTO definition_rows VALUES ('job', 'J-" + std::to_string(i) +
                "', 9, 'x', hex(randomblob(9000)), 1)");
    REQUIRE(fs::file_size(file) > fs::file_size(mirror));
    REQUIRE(fs::file_size(journalOf(file)) > 512);
    std::string bytes = readFile(file).value();
    // SQLite's file format, 1.3: bytes 28 to 31 are the file's size in pages. It is written before the last pages are.
    bytes.replace(28, 4, {'\0', '\1', '\0', '\0'});
    put(mirror, bytes);
    fs::copy_file(journalOf(file), journalOf(mirror));
}

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

TEST_CASE("several PCs mirror into one folder under one name, and each goes on with its own")
{
    Keeping one, other, clone;
    other.asAnotherPc();
    clone.sealMore(5);  // says that it is the first PC's, and holds other seals
    const fs::path share = one.elsewhere.path;
    std::array<Keeping*, 3> all{&one, &other, &clone};
    std::array<fs::path, 3> mirrors;
    for (int turn = 0; turn < 4; ++turn)
        for (std::size_t i = 0; i < all.size(); ++i) {
            INFO("turn " << turn << " of PC " << i);
            all.at(i)->sealMore();
            const MirrorState state = mirrorTo(all.at(i)->file(), share, all.at(i)->clock.now());
            CHECK(state.holdsAll());
            if (turn == 0) mirrors.at(i) = state.file;
            CHECK(state.file == mirrors.at(i));
            CHECK(mirrorIn(share, all.at(i)->file()) == state.file);
            isInOrder(state.file, all.at(i)->end());
            // Another PC's mirror is nothing to worry about; a fork is, once.
            CHECK(warnings(state.findings) == (turn == 0 && i == 2 ? Codes{"mirror.fork"} : Codes{}));
            CHECK(has(state.findings, "mirror.not_ours") == (turn == 0 && i == 1));
        }
    CHECK(namesIn(share).size() == 3);
}

TEST_CASE("a mirror that cannot be looked at is not given up for another, nor another PC's for one's own")
{
    Keeping shop, other;
    other.asAnotherPc();
    const fs::path share = shop.elsewhere.path;
    const fs::path mirror = mirrorTo(shop.file(), share, shop.clock.now()).file;
    const fs::path others = mirrorTo(other.file(), share, other.clock.now()).file;
    shop.sealMore();
    {
        // Another program keeps both busy, the newer one of the other PC too.
        SQLite::Database first(mirror.string(), SQLite::OPEN_READWRITE);
        SQLite::Database second(others.string(), SQLite::OPEN_READWRITE);
        first.exec("BEGIN EXCLUSIVE");
        second.exec("BEGIN EXCLUSIVE");
        const MirrorState state = mirrorTo(shop.file(), share, shop.clock.now());
        CHECK(warnings(state.findings) == Codes{"logbook.busy"});
        CHECK_FALSE(state.holdsAll());
        first.exec("ROLLBACK");
        // Its own is looked at beyond one that it cannot look into.
        const MirrorState own = mirrorTo(shop.file(), share, shop.clock.now());
        CHECK(own.file == mirror);
        CHECK(own.holdsAll());
    }
    CHECK(namesIn(share).size() == 2);
}

TEST_CASE(
    "a mirror in which another PC is just writing is left with its journal, and what halts one's own is taken back")
{
    Keeping shop, other;
    other.asAnotherPc();
    const fs::path share = shop.elsewhere.path;
    const fs::path others = mirrorTo(other.file(), share, other.clock.now()).file;
    halfWritten(others);
    const std::string file = readFile(others).value(), journal = readFile(journalOf(others)).value();
    const MirrorState state = mirrorTo(shop.file(), share, shop.clock.now());
    CHECK(state.holdsAll());
    CHECK(has(state.findings, "mirror.not_ours"));
    CHECK(mirrorIn(share, shop.file()) == state.file);
    REQUIRE(fs::exists(journalOf(others)));
    CHECK(readFile(others).value() == file);
    CHECK(readFile(journalOf(others)).value() == journal);
    shop.sealMore();
    halfWritten(state.file);
    CHECK(mirrorIn(share, shop.file()) == state.file);
    const MirrorState next = mirrorTo(shop.file(), share, shop.clock.now());
    CHECK(next.file == state.file);
    CHECK(next.holdsAll());
    CHECK_FALSE(fs::exists(journalOf(next.file)));
    isInOrder(next.file, shop.end());
}

TEST_CASE("another's mirror that this user may not read, or may not write in, keeps nobody from one of their own")
{
    for (const fs::perms mode : {fs::perms::none, fs::perms::owner_read}) {
        INFO("mode " << std::oct << static_cast<unsigned>(mode));
        Keeping shop, other;
        other.asAnotherPc();
        const fs::path share = shop.elsewhere.path;
        const fs::path others = mirrorTo(other.file(), share, other.clock.now()).file;
        halfWritten(others);
        const std::string before = readFile(others).value();
        const seal::Anchor end = shop.end();
        const Instant now = shop.clock.now();
        shop.writer.reset();
        for (const fs::path& folder : {share, shop.folder.path}) fs::permissions(folder, fs::perms::all);
        fs::permissions(shop.file(), fs::perms::all);
        for (const fs::path& theirs : {others, journalOf(others)}) {
            if (::geteuid() == 0) REQUIRE(::chown(theirs.c_str(), taut::test::kNobody, taut::test::kNobody) == 0);
            fs::permissions(theirs, mode);
        }
        CHECK(taut::test::asNobody([&] {
                  for (int turn = 0; turn < 2; ++turn) {
                      const MirrorState state = mirrorTo(shop.file(), share, now);
                      if (!state.holdsAll()) return 1;
                      if (state.file == others) return 2;
                      for (const Finding& finding : state.findings)
                          if (finding.severity != Severity::Note) return 3;
                      if (mirrorIn(share, shop.file()) != state.file) return 4;
                      // It is told when the other is begun, and not at every seal.
                      const bool told =
                          has(state.findings, mode == fs::perms::none ? "mirror.closed" : "mirror.not_ours");
                      if (told != (turn == 0)) return 5;
                  }
                  return 0;
              }) == 0);
        for (const fs::path& theirs : {others, journalOf(others)}) fs::permissions(theirs, fs::perms::all);
        CHECK(readFile(others).value() == before);
        const Codes names = namesIn(share);
        REQUIRE(names.size() == 3);
        isInOrder(share / names.front(), end);
    }
}

TEST_CASE("one's own mirror that may not be written in is told, and not given up for another")
{
    Keeping shop;
    const fs::path mirror = mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now()).file;
    shop.sealMore();
    const Instant now = shop.clock.now();
    shop.writer.reset();
    for (const fs::path& folder : {shop.elsewhere.path, shop.folder.path}) fs::permissions(folder, fs::perms::all);
    fs::permissions(shop.file(), fs::perms::all);
    fs::permissions(mirror, fs::perms::owner_read | fs::perms::others_read);
    CHECK(taut::test::asNobody([&] {
              const MirrorState state = mirrorTo(shop.file(), shop.elsewhere.path, now);
              if (state.file != mirror) return 1;
              if (state.holdsAll()) return 2;
              return has(state.findings, "logbook.read_only") ? 0 : 3;
          }) == 0);
    CHECK(namesIn(shop.elsewhere.path) == Codes{"shop-mirror.logbook"});
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
    // It is told until somebody has done something about it, whatever is sealed meanwhile.
    for (int i = 0; i < 2; ++i) {
        shop.sealMore();
        CHECK(warnings(shop.mirrored().findings) == Codes{"chain.broken"});
        CHECK(shop.mirrored().holdsAll());
    }
    // Moved away as it says, another is begun and is whole.
    fs::rename(mirror, shop.elsewhere / "moved away");
    shop.sealMore();
    CHECK(warnings(shop.mirrored().findings).empty());
    isInOrder(mirror, shop.end());
}

TEST_CASE("a mirror that is merely busy is not called unfit, and is read again when it can be")
{
    Keeping shop;
    const fs::path mirror = mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now()).file;
    REQUIRE(wrongWith(mirror));
    CHECK_FALSE(wrongWith(mirror).value());
    {
        SQLite::Database held(mirror.string(), SQLite::OPEN_READWRITE);
        held.exec("BEGIN EXCLUSIVE");
        const auto looked = wrongWith(mirror);
        REQUIRE_FALSE(looked);
        CHECK(looked.error().code == "logbook.busy");
        CHECK(looked.error().severity == Severity::Warn);
        CHECK(sentence(looked.error()).find("ove it away") == std::string::npos);
    }
    const auto gone = wrongWith(shop.elsewhere / "none.logbook");
    REQUIRE_FALSE(gone);
    CHECK(gone.error().code == "logbook.missing");
    tamper(mirror, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 3");
    const auto found = wrongWith(mirror);
    REQUIRE(found);
    REQUIRE(found->has_value());
    CHECK((*found)->code == "chain.broken");
    CHECK(sentence(**found).find("ove it away") != std::string::npos);
}

TEST_CASE("a mirror that nobody waits for any more reads the logbook no further")
{
    Keeping shop;
    shop.sealMore(120);
    int asked = 0;
    const MirrorState state =
        mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now(), [&asked] { return ++asked > 2; });
    CHECK(asked == 3);
    CHECK(warnings(state.findings) == Codes{"mirror.given_up"});
    CHECK_FALSE(state.holdsAll());
    CHECK(mirrorTo(shop.file(), shop.elsewhere.path, shop.clock.now()).holdsAll());
}
