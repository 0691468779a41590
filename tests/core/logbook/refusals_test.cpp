// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>
#include <csignal>

#include "tests/core/base/folder.h"
#include "tests/core/base/nobody.h"
#include "tests/core/logbook/logbook_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using taut::test::asNobody;

namespace {

Result<std::unique_ptr<Writer>> openWriter(const fs::path& file, bool practice = false, const char* holder = "x")
{
    static SteppedClock clock{{0, 0}};
    static CountedIds ids;
    return Writer::open(file, clock, ids, {practice, holder, 0});
}

/// A writer and a reader both refuse the file with this code and say what to do.
void check(const fs::path& file, const std::string& code, bool practice = false)
{
    INFO(file.string() << " must be refused as " << code);
    const auto writer = openWriter(file, practice);
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == code);
    CHECK(writer.error().subject == file.string());
    CHECK_FALSE(writer.error().text.empty());
    CHECK_FALSE(writer.error().remedy.empty());
    const auto reader = openReader(file, practice);
    REQUIRE_FALSE(reader);
    CHECK(reader.error().code == code);
}

constexpr fs::perms kReadAll = fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read;
constexpr fs::perms kEnterAll = fs::perms::owner_exec | fs::perms::group_exec | fs::perms::others_exec;

}  // namespace

TEST_CASE("what is no logbook is refused by name and left as it was")
{
    Folder folder;
    const auto put = [&](const char* name, const std::string& bytes) {
        REQUIRE(writeFile(folder / name, bytes));
        return folder / name;
    };
    check(put("notes.txt", "Monday: brake felt soft\n"), "logbook.not_a_logbook");
    check(put("long.txt", std::string(100'000, 'x')), "logbook.not_a_logbook");
    check(put("empty.logbook", ""), "logbook.not_a_logbook");
    check(folder.path, "logbook.not_a_logbook");
    REQUIRE(sqlite(folder / "other.db", "CREATE TABLE t (a); INSERT INTO t VALUES (1);").code == 0);
    check(folder / "other.db", "logbook.not_a_logbook");
    CHECK(readFile(folder / "notes.txt").value() == "Monday: brake felt soft\n");
    CHECK(fs::file_size(folder / "empty.logbook") == 0);
    // Nothing was laid beside them.
    CHECK(std::distance(fs::directory_iterator(folder.path), fs::directory_iterator()) == 4);
    CHECK(openReader(folder / "none").error().code == "logbook.missing");
    CHECK(verify(folder / "none", {}).error().code == "logbook.missing");
    // Whoever only wants to open one makes none by a slip of the keys.
    const SystemClock clock;
    RandomIds ids;
    Writer::Options opening;
    opening.create = false;
    CHECK(Writer::open(folder / "typo" / "shop.logbook", clock, ids, opening).error().code == "logbook.missing");
    CHECK_FALSE(fs::exists(folder / "typo"));
    CHECK(verify(folder / "other.db", {}).error().code == "logbook.not_a_logbook");
}

TEST_CASE("a damaged logbook is refused or its damage is found and nothing crashes")
{
    Shop shop;
    shop.enrol();
    const auto matteo = shop.actor("p-1");
    for (int i = 0; i < 20; ++i)
        REQUIRE(shop.writer->keepDefinition("job", "J-" + std::to_string(i), std::string(3000, 'x'), matteo));
    shop.writer.reset();
    const std::string whole = readFile(shop.file()).value();
    const fs::path copy = shop.folder / "copy.logbook";
    for (const std::size_t size : {std::size_t{100}, std::size_t{512}, std::size_t{4096}, whole.size() / 2}) {
        INFO("cut to " << size);
        REQUIRE(writeFile(copy, whole.substr(0, size)));
        const auto verified = verify(copy, {});
        if (verified) {
            REQUIRE_FALSE(verified->findings.empty());
            CHECK(verified->findings.front().code == "logbook.broken");
        } else {
            CHECK(verified.error().code == "logbook.not_a_logbook");
        }
        CHECK_FALSE(openWriter(copy));
    }
    // The header's magic overwritten.
    std::string bytes = whole;
    bytes.replace(0, 15, "Something else ");
    REQUIRE(writeFile(copy, bytes));
    check(copy, "logbook.not_a_logbook");
    // Each page zeroed in turn.
    const std::size_t pages = whole.size() / 4096;
    for (std::size_t page = 1; page < pages; ++page) {
        INFO("page " << page + 1 << " of " << pages);
        bytes = whole;
        bytes.replace(page * 4096, 4096, std::string(4096, '\0'));
        REQUIRE(writeFile(copy, bytes));
        const auto verified = verify(copy, {});
        const bool found = !verified || !verified->findings.empty();
        CHECK(found);
    }
}

TEST_CASE("an older layout is refused, and a newer one is not written in, with what to do")
{
    Shop shop;
    shop.writer.reset();
    REQUIRE(sqlite(shop.file(), "PRAGMA user_version = 99").code == 0);
    CHECK(openWriter(shop.file()).error().code == "logbook.newer_schema");
    CHECK(verify(shop.file(), {}).error().code == "logbook.newer_schema");
    REQUIRE(sqlite(shop.file(), "PRAGMA user_version = 0").code == 0);
    check(shop.file(), "logbook.older_schema");
    // A development logbook of the same number whose tables are other ones.
    const std::string version = "PRAGMA user_version = " + std::to_string(kSchema);
    REQUIRE(sqlite(shop.file(), version + "; DROP INDEX run_rows_by_job;").code == 0);
    check(shop.file(), "logbook.older_schema");
    const auto verified = verify(shop.file(), {});
    REQUIRE(verified);
    REQUIRE(verified->findings.size() == 1);
    CHECK(verified->findings[0].code == "logbook.layout_changed");
    CHECK(verified->findings[0].subject == "index run_rows_by_job");
}

TEST_CASE("practice and production never open each other's logbook")
{
    Shop shop;
    shop.writer.reset();
    check(shop.file(), "logbook.not_practice", true);
    fs::remove(shop.file());
    shop.reopen(true);
    CHECK(sqlite(shop.file(), "PRAGMA application_id").out == std::to_string(0x54415550));
    shop.writer.reset();
    check(shop.file(), "logbook.practice", false);
    CHECK(openReader(shop.file(), true));
    CHECK(verify(shop.file(), {})->findings.empty());
}

TEST_CASE("a logbook taken away while it is open is missed by name, and put back it goes on")
{
    Shop shop;
    shop.enrol();
    const people::Actor matteo = shop.actor("p-1");
    fs::rename(shop.file(), shop.folder / "elsewhere");
    const auto kept = shop.writer->keepDefinition("job", "J-1", "text", matteo);
    REQUIRE_FALSE(kept);
    CHECK(kept.error().code == "logbook.moved");
    CHECK_FALSE(kept.error().remedy.empty());
    fs::rename(shop.folder / "elsewhere", shop.file());
    CHECK(shop.writer->keepDefinition("job", "J-1", "text", matteo));
}

TEST_CASE("a read-only folder and a read-only file are read and verified but not written")
{
    Shop shop;
    shop.enrol();
    const seal::Anchor anchor = shop.writer->reader().anchor().value();
    shop.writer.reset();
    fs::permissions(shop.file(), kReadAll);
    fs::permissions(shop.folder.path, kReadAll | kEnterAll);
    const auto refusedAs = [](const fs::path& file, const char* code) {
        const auto opened = openWriter(file);
        return !opened && opened.error().code == code;
    };
    CHECK(asNobody([&] {
              if (!refusedAs(shop.file(), "logbook.folder_read_only")) return 1;
              if (!refusedAs(shop.folder / "new.logbook", "logbook.folder_read_only")) return 2;
              if (!refusedAs(shop.folder.path / "deeper" / "new.logbook", "logbook.folder_read_only")) return 3;
              const auto reader = openReader(shop.file());
              if (!reader || !((*reader)->anchor().value() == anchor)) return 4;
              const auto verified = verify(shop.file(), {{anchor.count, hex(anchor.link)}});
              return verified && verified->findings.empty() && verified->anchors.at(0).holds ? 0 : 5;
          }) == 0);
    fs::permissions(shop.folder.path, fs::perms::all);
    CHECK(asNobody([&] { return refusedAs(shop.file(), "logbook.read_only") ? 0 : 1; }) == 0);
    fs::permissions(shop.file(), fs::perms::none);
    CHECK(asNobody([&] {
              const auto reader = openReader(shop.file());
              return !reader && reader.error().code == "logbook.unreadable" ? 0 : 1;
          }) == 0);
}

TEST_CASE("a second writer is refused with the holder's name and takes over when the first is killed")
{
    Shop shop;
    shop.writer.reset();
    std::array<int, 2> ready{};
    REQUIRE(::pipe(ready.data()) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
        const auto held = openWriter(shop.file(), false, "Press desk, Inka");
        const char answer = held ? 'y' : 'n';
        if (::write(ready[1], &answer, 1) == 1) ::pause();
        ::_exit(1);
    }
    char answer = 0;
    REQUIRE(::read(ready[0], &answer, 1) == 1);
    REQUIRE(answer == 'y');
    const auto start = std::chrono::steady_clock::now();
    const auto second = openWriter(shop.file(), false, "Office");
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(1));
    REQUIRE_FALSE(second);
    CHECK(second.error().code == "logbook.pen_held");
    CHECK(std::get<std::string>(second.error().text.args.at(0)) == "Press desk, Inka");
    CHECK(std::get<std::string>(second.error().text.args.at(1)) == std::to_string(child));
    CHECK(openReader(shop.file()));
    REQUIRE(::kill(child, SIGKILL) == 0);
    ::waitpid(child, nullptr, 0);
    CHECK(openWriter(shop.file(), false, "Office"));
    ::close(ready[0]);
    ::close(ready[1]);
}

TEST_CASE("a second writer in the same program and one by another path are refused too")
{
    Shop shop;
    CHECK(openWriter(shop.file()).error().code == "logbook.pen_held");
    fs::create_symlink(shop.file(), shop.folder / "link.logbook");
    CHECK(openWriter(shop.folder / "link.logbook").error().code == "logbook.pen_held");
    // Refused attempts leave the first one's locks alone.
    shop.enrol();
    CHECK(shop.writer->reader().anchor()->count == 2);
}

TEST_CASE("a logbook may be given by its bare name in the folder where one stands")
{
    const taut::test::Folder folder;
    const fs::path before = fs::current_path();
    fs::current_path(folder.path);
    const auto begun = openWriter("shop.logbook");
    fs::current_path(before);
    REQUIRE(begun);
    CHECK(fs::exists(folder.path / "shop.logbook"));
}
