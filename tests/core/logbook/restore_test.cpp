// SPDX-License-Identifier: GPL-3.0-or-later
#include <fstream>
#include <functional>

#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

using Codes = std::vector<std::string>;

/// A shop with a mirror and a copy, one run sealed after the copy, and the anchor of its sheet.
struct Drill : Keeping {
    fs::path mirror, copy;
    std::string run;
    seal::Anchor sheet;
    Drill()
    {
        writer->keepMirror(elsewhere.path);
        sealRun();
        copy = copied().file;
        run = sealRun();
        mirror = mirrored().file;
        sheet = end();
        writer.reset();
    }
    Restored restore(const fs::path& from, const RestorePlan& plan = {})
    {
        auto restored = restoreFrom(from, file(), clock.now(), plan);
        if (!restored) FAIL(sentence(restored.error()));
        return *std::move(restored);
    }
    [[nodiscard]] std::vector<fs::path> setAside() const
    {
        std::vector<fs::path> files;
        for (const std::string& name : namesIn(folder.path))
            if (name.find("-aside-") != std::string::npos) files.push_back(folder.path / name);
        return files;
    }
};

void cut(const fs::path& file, std::uintmax_t bytes) { fs::resize_file(file, bytes); }
void zeroPage(const fs::path& file, std::size_t page)
{
    std::fstream stream(file, std::ios::in | std::ios::out | std::ios::binary);
    stream.seekp(static_cast<std::streamoff>(4096 * page));
    stream << std::string(4096, '\0');
}

}  // namespace

TEST_CASE("restore drill: a logbook that was destroyed in any way goes on from its mirror as if nothing had been")
{
    struct Way {
        const char* name;
        std::function<void(const fs::path&)> destroy;
        bool isThere, hasPeople;
    };
    const std::vector<Way> ways{
        {"deleted", [](const fs::path& file) { fs::remove(file); }, false, false},
        {"a page zeroed", [](const fs::path& file) { zeroPage(file, fs::file_size(file) / 4096 / 2); }, true, true},
        {"the first page zeroed", [](const fs::path& file) { zeroPage(file, 0); }, true, false},
        {"cut to half", [](const fs::path& file) { cut(file, fs::file_size(file) / 2); }, true, false},
        {"cut to nothing", [](const fs::path& file) { cut(file, 0); }, true, false},
        {"replaced by a text", [](const fs::path& file) { put(file, "gone"); }, true, false},
    };
    for (const Way& way : ways) {
        INFO(way.name);
        Drill shop;
        way.destroy(shop.file());
        const std::string destroyed = way.isThere ? readFile(shop.file()).value() : std::string();
        // The sheet on paper says which record must be in it.
        const RestorePlan plan{{{shop.sheet.count, hex(shop.sheet.link)}}, shop.copy};
        const Restored restored = shop.restore(shop.mirror, plan);
        CHECK(restored.end == shop.sheet);
        CHECK(restored.people == 2);
        CHECK(restored.withDoors == 2);
        CHECK_FALSE(has(restored.findings, "restore.no_doors"));
        isInOrder(shop.file(), shop.sheet);
        REQUIRE(shop.setAside().size() == (way.isThere ? 1U : 0U));
        if (way.isThere) {
            CHECK(restored.setAside == shop.setAside().front());
            CHECK(readFile(restored.setAside).value() == destroyed);
        }
        // People sign in and go on with it; the mirror goes on as well.
        shop.reopen();
        shop.writer->keepMirror(shop.elsewhere.path);
        shop.inka = shop.actor("p-2");
        CHECK(shop.writer->reader().sealOfRun(shop.run));
        shop.sealRun();
        CHECK(shop.mirrored().holdsAll());
        CHECK(shop.mirrored().file == shop.mirror);
        CHECK(warnings(shop.mirrored().findings).empty());
        isInOrder(shop.file(), shop.end());
    }
}

TEST_CASE("a restored copy that is older than what lay there says so loudly, and what lay there is kept")
{
    Drill shop;
    const std::string before = readFile(shop.file()).value();
    const Restored restored = shop.restore(shop.copy);
    CHECK(restored.end.count == shop.sheet.count - 1);
    REQUIRE(restored.asideEnd);
    CHECK(*restored.asideEnd == shop.sheet);
    CHECK(warnings(restored.findings) == Codes{"restore.newer_aside"});
    CHECK(sentence(restored.findings.front()).find("NEWER RECORDS") != std::string::npos);
    CHECK(readFile(restored.setAside).value() == before);
    isInOrder(restored.setAside, shop.sheet);
    // The way back: what was set aside is restored in turn, and nothing of either is lost.
    const Restored back = shop.restore(restored.setAside);
    CHECK(back.end == shop.sheet);
    CHECK(warnings(back.findings).empty());
    CHECK(shop.setAside().size() == 2);
    isInOrder(shop.file(), shop.sheet);
    // With the anchor of the newest sheet the older copy is not taken at all.
    const auto refused =
        restoreFrom(shop.copy, shop.file(), shop.clock.now(), {{{shop.sheet.count, hex(shop.sheet.link)}}, {}});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "restore.not_in_order");
    CHECK(shop.setAside().size() == 2);
}

TEST_CASE("a mirror gives no doors: they come from what is set aside, from a copy, or from nowhere and that is said")
{
    Drill shop;
    // What lies there still tells how people sign in.
    const Restored fromAside = shop.restore(shop.mirror);
    CHECK(fromAside.withDoors == 2);
    fs::remove(shop.file());
    const Restored none = shop.restore(shop.mirror);
    CHECK(none.withDoors == 0);
    CHECK(warnings(none.findings) == Codes{"restore.no_doors"});
    shop.reopen();
    CHECK_FALSE(shop.writer->signIn("p-2", "4821"));
    CHECK(shop.writer->reader().sealOfRun(shop.run));
}

TEST_CASE("somebody whose key has changed since the copy needs a code, and everybody else signs in")
{
    Drill shop;
    shop.reopen();
    const auto enrolled = shop.writer->reader().people();
    REQUIRE(enrolled);
    const people::PersonRecord inka = enrolled->back();
    REQUIRE(inka.id.value == "p-2");
    shop.writer->keepMirror(shop.elsewhere.path);
    const auto code = shop.writer->invite(inka, *shop.signer("p-1"));
    REQUIRE(code);
    people::Chosen chosen = people::test::kChosen;
    REQUIRE(shop.writer->choose("p-2", *code, chosen, PinCost::Least));
    CHECK(shop.mirrored().holdsAll());
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    fs::remove(shop.file());
    const Restored restored = shop.restore(shop.mirror, {{}, shop.copy});
    CHECK(restored.end == end);
    CHECK(restored.people == 2);
    CHECK(restored.withDoors == 1);
    CHECK(has(restored.findings, "restore.some_doors"));
    shop.reopen();
    CHECK(shop.writer->unlock("p-1", people::test::kChosen.passphrase));
    CHECK_FALSE(shop.writer->unlock("p-2", people::test::kChosen.passphrase));
    const auto again = shop.writer->invite(inka, *shop.signer("p-1"));
    REQUIRE(again);
    REQUIRE(shop.writer->choose("p-2", *again, chosen, PinCost::Least));
    CHECK(shop.writer->unlock("p-2", people::test::kChosen.passphrase));
}

TEST_CASE("a copy that is not in order is refused by the first thing wrong, and nothing is touched")
{
    Drill shop;
    const std::string before = readFile(shop.file()).value();
    const Codes there = namesIn(shop.folder.path);
    struct Case {
        const char* name;
        std::function<void(const fs::path&)> damage;
        const char* code;
        const char* says;
    };
    const std::vector<Case> cases{
        {"a document changed",
         [](const fs::path& file) {
             tamper(file, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 4");
         },
         "restore.not_in_order", "Seal 4 is broken"},
        {"a table says something else",
         [](const fs::path& file) { tamper(file, "UPDATE person_rows SET role = 'supervisor'"); },
         "restore.not_in_order", "says something else than the sealed document"},
        {"cut", [](const fs::path& file) { cut(file, fs::file_size(file) / 2); }, "restore.not_in_order", "damaged"},
        {"empty", [](const fs::path& file) { cut(file, 0); }, "logbook.not_a_logbook", "it is empty"},
        {"a text", [](const fs::path& file) { put(file, "no"); }, "logbook.not_a_logbook", "another kind"},
        {"not there", [](const fs::path& file) { fs::remove(file); }, "logbook.missing", "There is no logbook"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        const fs::path damaged = shop.elsewhere / "damaged.logbook";
        fs::remove(damaged);
        fs::copy_file(shop.copy, damaged);
        one.damage(damaged);
        const auto refused = restoreFrom(damaged, shop.file(), shop.clock.now());
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == one.code);
        INFO(sentence(refused.error()));
        CHECK(sentence(refused.error()).find(one.says) != std::string::npos);
        CHECK(readFile(shop.file()).value() == before);
        CHECK(namesIn(shop.folder.path) == there);
    }
    CHECK(restoreFrom(shop.file(), shop.file(), shop.clock.now()).error().code == "restore.same_file");
}

TEST_CASE("nothing is restored while somebody holds the pen")
{
    Drill shop;
    shop.reopen();
    const auto refused = restoreFrom(shop.copy, shop.file(), shop.clock.now());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "logbook.pen_held");
    CHECK(sentence(refused.error()).find("the test") != std::string::npos);
    CHECK(shop.setAside().empty());
    CHECK(shop.end() == shop.sheet);
}

TEST_CASE("a run that was open is told of when the copy does not hold it, and goes on when it does")
{
    Keeping shop;
    shop.sealRun();
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    const OpenRun open = shop.begin();
    const std::string id = open.run().id();
    const fs::path copy = shop.copied().file;
    shop.writer.reset();
    const auto fromMirror = restoreFrom(mirror, shop.file(), shop.clock.now());
    REQUIRE(fromMirror);
    CHECK(warnings(fromMirror->findings) == Codes{"restore.open_aside"});
    const auto fromCopy = restoreFrom(copy, shop.file(), shop.clock.now());
    REQUIRE(fromCopy);
    CHECK(warnings(fromCopy->findings).empty());
    shop.reopen();
    CHECK(OpenRun::openRuns(*shop.writer).value() == std::vector<std::string>{id});
    CHECK(OpenRun::resume(*shop.writer, id, shop.actor("p-2")));
}

TEST_CASE("what lay there and is of another logbook, or of a rewritten one, is told of whichever is the longer")
{
    Keeping shop, other;
    shop.sealMore(10);
    other.sealMore(3);
    const seal::Anchor mine = shop.end();
    const fs::path theirs = other.copied().file;
    shop.writer.reset();
    // It says that it is of this PC, and its seals are others: a record was changed.
    const auto forged = restoreFrom(theirs, shop.file(), shop.clock.now());
    REQUIRE(forged);
    CHECK(forged->end.count < mine.count);
    CHECK(warnings(forged->findings) == Codes{"restore.other_aside", "restore.newer_aside"});
    const auto back = restoreFrom(forged->setAside, shop.file(), shop.clock.now());
    REQUIRE(back);
    CHECK(warnings(back->findings) == Codes{"restore.other_aside"});
    isInOrder(shop.file(), mine);

    other.asAnotherPc();
    const fs::path anothers = other.copied().file;
    const auto wrong = restoreFrom(anothers, shop.file(), shop.clock.now());
    REQUIRE(wrong);
    CHECK(warnings(wrong->findings) == Codes{"restore.other_logbook", "restore.newer_aside"});
    // The mirror of another PC is as little this PC's.
    const fs::path mirror = mirrorTo(other.file(), other.elsewhere.path, other.clock.now()).file;
    REQUIRE(restoreFrom(forged->setAside, shop.file(), shop.clock.now()));
    const auto mirrored = restoreFrom(mirror, shop.file(), shop.clock.now());
    REQUIRE(mirrored);
    CHECK(has(mirrored->findings, "restore.other_logbook"));
}

TEST_CASE("what lay there and cannot be read is kept, and that nobody knows what it held is said")
{
    Keeping shop;
    const fs::path copy = shop.copied().file;
    shop.writer.reset();
    put(shop.file(), "what a disk gave back");
    const auto restored = restoreFrom(copy, shop.file(), shop.clock.now());
    REQUIRE(restored);
    CHECK(warnings(restored->findings) == Codes{"restore.aside_unreadable"});
    CHECK(restored->findings.front().subject == restored->setAside.string());
    CHECK_FALSE(restored->asideEnd);
    CHECK(readFile(restored->setAside).value() == "what a disk gave back");
    isInOrder(shop.file(), restored->end);
}

TEST_CASE("a practice logbook does not take the shop's place, nor the shop's that of a practice logbook")
{
    Keeping shop;
    const fs::path copy = shop.copied().file;
    shop.writer.reset();
    const fs::path practice = shop.folder / "practice.logbook";
    {
        CountedIds ids;
        REQUIRE(Writer::open(practice, shop.clock, ids, {true, "the test", 0}));
    }
    const std::string before = readFile(shop.file()).value(), beforePractice = readFile(practice).value();
    for (const auto& [from, to] : {std::pair{practice, shop.file()}, std::pair{copy, practice}}) {
        const auto refused = restoreFrom(from, to, shop.clock.now());
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "restore.other_kind");
    }
    CHECK(readFile(shop.file()).value() == before);
    CHECK(readFile(practice).value() == beforePractice);
    CHECK(namesIn(shop.folder.path).size() == 4);  // two logbooks, two pens
    REQUIRE(restoreFrom(practice, shop.folder / "another.logbook", shop.clock.now()));
}
