// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook of an older layout is read as it is, and brought up before anybody writes in it.
#include "core/logbook/open_run.h"
#include "core/units/plain.h"
#include "tests/core/base/tiny_disk.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// A logbook as layout 5 was given away, in a folder of its own.
struct Old {
    Folder folder;
    fs::path file = folder / "shop.logbook";
    SteppedClock clock{{1'900'000'000'000, 60}, 1000};
    RandomIds ids;
    Old()
    {
        const fs::path sample = fs::path(TAUTWEB_SOURCE_DIR) / "tests" / "stores" / "layout-5-north.logbook.gz";
        REQUIRE(shell("gzip -dc '" + sample.string() + "' > '" + file.string() + "'").code == 0);
    }
    [[nodiscard]] Result<std::unique_ptr<Writer>> open() { return Writer::open(file, clock, ids, {false, "test", 0}); }
    [[nodiscard]] std::string layout(const fs::path& of) const { return sqlite(of, "PRAGMA user_version").out; }
    [[nodiscard]] std::string documents(const fs::path& of) const
    {
        return sqlite(of, "SELECT seq, hex(document), hex(link) FROM seal_rows ORDER BY seq; "
                          "SELECT seq, person, hex(signature) FROM signature_rows ORDER BY seq")
            .out;
    }
    [[nodiscard]] std::vector<fs::path> copies() const
    {
        std::vector<fs::path> all;
        for (const std::string& name : namesIn(folder.path))
            if (name.starts_with("shop-before-layout-" + std::to_string(kSchema) + "-")) all.push_back(folder / name);
        return all;
    }
};

std::string sumOf(const fs::path& file) { return shell("sha256sum < '" + file.string() + "'").out; }

}  // namespace

TEST_CASE("a logbook of an older layout is brought up when it is opened to write, and a whole copy is kept")
{
    Old old;
    const std::string before = old.documents(old.file), sum = sumOf(old.file);
    REQUIRE(old.layout(old.file) == "5");
    // Reading needs nothing of it.
    REQUIRE(openReader(old.file));
    CHECK(verify(old.file, {}, Depth::Deep)->findings.empty());
    CHECK(sumOf(old.file) == sum);
    seal::Anchor end;
    {
        const auto writer = old.open();
        if (!writer) FAIL(sentence(writer.error()));
        REQUIRE(has((*writer)->notes(), "logbook.brought_up"));
        end = (*writer)->reader().anchor().value();
    }
    REQUIRE(old.copies().size() == 1);
    CHECK(old.layout(old.copies().front()) == "5");
    CHECK(old.documents(old.copies().front()) == before);
    isInOrder(old.copies().front(), end);
    CHECK(old.layout(old.file) == std::to_string(kSchema));
    CHECK(old.documents(old.file) == before);
    isInOrder(old.file, end);
    // Once is enough.
    const auto again = old.open();
    REQUIRE(again);
    CHECK((*again)->notes().empty());
    CHECK(old.copies().size() == 1);
}

TEST_CASE("the mirror of a logbook that was brought up is left as it is, and another is begun")
{
    Old old;
    Folder elsewhere;
    {
        const auto writer = old.open();
        REQUIRE(writer);
        (*writer)->keepMirror(elsewhere.path);
        REQUIRE((*writer)->mirror(std::chrono::seconds(20))->holdsAll());
    }
    // A mirror of layout 5 lies on the stick.
    const fs::path mirror = elsewhere / "shop-mirror.logbook";
    fs::copy_file(old.copies().front(), mirror, fs::copy_options::overwrite_existing);
    REQUIRE(sqlite(mirror, "INSERT INTO file_facts SELECT 'mirror_of', value FROM file_facts WHERE name = 'workplace'")
                .code == 0);
    const std::string sum = sumOf(elsewhere / "shop-mirror.logbook");
    const auto writer = old.open();
    REQUIRE(writer);
    (*writer)->keepMirror(elsewhere.path);
    const MirrorState state = (*writer)->mirror(std::chrono::seconds(20)).value();
    CHECK(state.holdsAll());
    CHECK(state.file != elsewhere / "shop-mirror.logbook");
    CHECK(has(state.findings, "logbook.older_layout"));
    CHECK(sumOf(elsewhere / "shop-mirror.logbook") == sum);
}

TEST_CASE("a logbook of an older layout that is not in order is left as it is, and said to be so")
{
    Old old;
    tamper(old.file, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 4");
    const std::string sum = sumOf(old.file);
    const auto writer = old.open();
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == "logbook.not_in_order");
    CHECK(sentence(writer.error()).find("chain.broken") != std::string::npos);
    CHECK(sumOf(old.file) == sum);
    CHECK(old.copies().empty());
    CHECK(namesIn(old.folder.path).size() == 2);  // the logbook, and the pen beside it
}

TEST_CASE("a copy of an older layout is restored as a logbook of this one")
{
    Old old;
    const auto restored = restoreFrom(old.file, old.folder / "anew.logbook", old.clock.now(), {});
    if (!restored) FAIL(sentence(restored.error()));
    CHECK(old.layout(old.folder / "anew.logbook") == std::to_string(kSchema));
    CHECK(old.layout(old.file) == "5");
    CHECK(old.documents(old.folder / "anew.logbook") == old.documents(old.file));
    CHECK(verify(old.folder / "anew.logbook", {}, Depth::Deep)->findings.empty());
}

TEST_CASE("where there is no room for the copy nothing is brought up")
{
    Old old;
    // Room for the file and a part of its copy.
    taut::test::TinyDisk disk(fs::file_size(old.file) + 700'000);
    if (!disk.mounted()) {
        WARN("no disk of its own for this test: only who may mount has one");
        return;
    }
    const fs::path file = disk / "shop.logbook";
    fs::copy_file(old.file, file);
    const std::string sum = sumOf(file);
    const auto writer = Writer::open(file, old.clock, old.ids, {false, "test", 0});
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == "logbook.disk_full");
    CHECK(sumOf(file) == sum);
}
