// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/stat.h>

#include <chrono>

#include "tests/core/logbook/logbook_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

TEST_CASE("a missing logbook is made with its folder and opens again with the same workplace")
{
    Folder folder;
    SteppedClock clock{{0, 0}};
    CountedIds ids;
    const fs::path file = folder.path / "a" / "b" / "shop.logbook";
    std::string workplace;
    {
        auto writer = Writer::open(file, clock, ids, {false, "x", 0});
        REQUIRE(writer);
        workplace = (*writer)->workplace();
        CHECK(workplace.size() == 32);
        CHECK((*writer)->reader().anchor().value() == seal::Anchor{});
    }
    auto writer = Writer::open(file, clock, ids, {false, "x", 0});
    REQUIRE(writer);
    CHECK((*writer)->workplace() == workplace);
    CHECK(sqlite(file, "PRAGMA application_id").out == std::to_string(0x54415554));
    CHECK(sqlite(file, "PRAGMA user_version").out == std::to_string(kSchema));
    CHECK(sqlite(file, "PRAGMA journal_mode").out == "delete");
    for (const auto& there : fs::directory_iterator(file.parent_path()))
        CHECK(there.path().filename().string().rfind("shop.logbook", 0) == 0);
}

TEST_CASE("what a killed program left of a logbook never begun is in nobody's way, and is cleared away after a day")
{
    Shop shop;
    shop.writer.reset();
    const fs::path old = shop.folder / ".shop-000000000000.part", young = shop.folder / ".shop-000000000001.part";
    const auto age = [&](const fs::path& file, std::int64_t seconds) {
        const timespec time{shop.clock.now().utcMs / 1000 - seconds, 0}, both[] = {time, time};
        REQUIRE(::utimensat(AT_FDCWD, file.c_str(), both, 0) == 0);
    };
    fs::rename(shop.file(), old);
    fs::copy_file(old, young);
    age(old, 2 * 24 * 3600);
    age(young, 3600);
    shop.reopen();
    shop.enrol();
    CHECK(shop.writer->reader().anchor()->count == 2);
    CHECK_FALSE(fs::exists(old));
    CHECK(fs::exists(young));
}

TEST_CASE("people are enrolled by a supervisor, the first one by themselves, and sign in with their own PIN")
{
    using people::test::member;
    Shop shop;
    const auto wrongFirst = member("p-1", "Inka Thorsby", people::Role::Operator);
    CHECK(shop.writer->addFirst(wrongFirst.enrolled, *wrongFirst.signer).error().code == "person.first_is_supervisor");
    shop.enrol();
    const auto third = member("p-3", "Ada Sund", people::Role::Trainee);
    CHECK(shop.writer->addFirst(third.enrolled, *third.signer).error().code == "person.not_first");
    CHECK(shop.writer->addPerson(third.enrolled, *shop.signer("p-2")).error().code == "gate.role");
    // Somebody who only says that they are the supervisor, with a key of their own.
    const auto posing = member("p-1", "Matteo Quill", people::Role::Supervisor);
    CHECK(shop.writer->addPerson(third.enrolled, *posing.signer).error().code == "gate.role");
    const auto matteo = shop.signer("p-1");
    CHECK(shop.writer->addPerson(third.enrolled, *matteo));
    CHECK(shop.writer->addPerson(third.enrolled, *matteo).error().code == "person.id_taken");
    // Two of one name could not be told apart, neither where one chooses who one is nor on paper.
    const auto namesake = member("p-4", "ada sund", people::Role::Operator);
    CHECK(shop.writer->addPerson(namesake.enrolled, *matteo).error().code == "person.name_taken");
    CHECK(shop.writer->invite(namesake.enrolled.person, *matteo).error().code == "person.name_taken");
    CHECK(shop.writer->invite(third.enrolled.person, *matteo));  // herself, who forgot
    CHECK(shop.writer->addPerson(member("p-5", "Ada Sund-Hale", people::Role::Operator).enrolled, *matteo));
    CHECK(shop.writer->signIn("p-2", "4822").error().code == "sign_in.refused");
    CHECK(shop.writer->signIn("p-9", "4821").error().code == "sign_in.refused");
    CHECK(shop.writer->signIn("p-5", "4821")->name() == "Ada Sund-Hale");
    const auto people = shop.writer->reader().people();
    REQUIRE(people);
    REQUIRE(people->size() == 4);
    CHECK((*people)[1].name == "Inka Thorsby");
    CHECK((*people)[1].role == people::Role::Operator);
    CHECK(shop.writer->reader().anchor()->count == 5);
    CHECK(verify(shop.file(), {})->findings.empty());
    // What opens a door stands in its own table and in no document.
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM secret_rows WHERE pin LIKE '$argon2id$%'").out == "3");
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM seals WHERE CAST(document AS TEXT) LIKE '%argon2%'").out == "0");
}

TEST_CASE("the same text keeps its edition and a new text gets the next")
{
    Shop shop;
    shop.enrol();
    const people::Actor matteo = shop.actor("p-1");
    const people::Actor inka = shop.actor("p-2");
    const auto first = shop.writer->keepDefinition("press", "north", "a = 1\n", matteo);
    REQUIRE(first);
    CHECK(first->edition == 1);
    CHECK(first->sha256 == hex(sha256("a = 1\n")));
    CHECK(shop.writer->keepDefinition("press", "north", "a = 2\n", inka).error().code == "gate.role");
    CHECK(shop.writer->keepDefinition("press", "north", "a = 1\n", inka).value() == *first);
    CHECK(shop.writer->keepDefinition("press", "north", "a = 2\n", matteo)->edition == 2);
    CHECK(shop.writer->keepDefinition("press", "north", "a = 1\n", matteo)->edition == 1);
    CHECK(shop.writer->keepDefinition("press", "south", "b = \"é '\"\n", matteo)->edition == 1);
    // Each edition with when and by whom, the newest first.
    const auto editions = shop.writer->reader().editions("press");
    REQUIRE(editions);
    REQUIRE(editions->size() == 3);
    CHECK((*editions)[0].id == "north");
    CHECK((*editions)[0].edition == 2);
    CHECK((*editions)[0].byName == matteo.name());
    CHECK((*editions)[1].edition == 1);
    CHECK((*editions)[1].sha256 == first->sha256);
    CHECK((*editions)[1].atMs > 0);
    CHECK((*editions)[2].id == "south");
    CHECK(shop.writer->reader().editions("job")->empty());
    CHECK(shop.writer->keepDefinition("job", "north", "a = 1\n", matteo)->edition == 1);
    CHECK(shop.writer->keepDefinition("poem", "north", "a = 1\n", matteo).error().code == "definition.what");
    CHECK(shop.writer->keepDefinition("job", "", "a = 1\n", matteo).error().code == "definition.empty");
    shop.reopen();
    const auto presses = shop.writer->definitions("press");
    REQUIRE(presses);
    REQUIRE(presses);
    REQUIRE(presses->size() == 2);
    CHECK((*presses)[0].source.id == "north");
    CHECK((*presses)[0].source.edition == 2);
    CHECK((*presses)[0].source.text == "a = 2\n");
    CHECK((*presses)[1].source.text == "b = \"é '\"\n");
    const records::Reader& reader = shop.writer->reader();
    const auto read = reader.definitions("press");
    REQUIRE(read);
    REQUIRE(read->size() == 2);
    CHECK((*read)[0] == (*presses)[0].source);
    // A record names the edition it used by hash, also when there is a newer one.
    const auto older = reader.definition("press", hex(sha256("a = 1\n")));
    REQUIRE(older);
    REQUIRE(*older);
    CHECK((*older)->edition == 1);
    CHECK((*older)->text == "a = 1\n");
    CHECK_FALSE(reader.definition("press", hex(sha256("never kept")))->has_value());
    CHECK_FALSE(reader.definition("substrate", hex(sha256("a = 1\n")))->has_value());
    CHECK(shop.writer->reader().anchor()->count == 2 + 4);
    CHECK(verify(shop.file(), {})->findings.empty());
}

TEST_CASE("any number read while one writes and a reader sees each seal at once")
{
    Shop shop;
    auto one = openReader(shop.file());
    auto two = openReader(shop.file());
    REQUIRE(one);
    REQUIRE(two);
    CHECK((*one)->anchor()->count == 0);
    shop.enrol();
    CHECK((*one)->anchor()->count == 2);
    CHECK((*two)->seal(2)->id == "p-2");
    CHECK((*two)->seal(3).error().code == "records.no_seal");
    CHECK((*two)->sealOfRun("north-2026-11-25-01").error().code == "records.no_seal");
}

TEST_CASE("a call returns only when its sync has returned")
{
    Shop shop;
    shop.reopen(false, 300);
    const auto before = std::chrono::steady_clock::now();
    const auto first = people::test::member("p-1", "Matteo Quill", people::Role::Supervisor);
    REQUIRE(shop.writer->addFirst(first.enrolled, *first.signer));
    CHECK(std::chrono::steady_clock::now() - before >= std::chrono::milliseconds(300));
}

TEST_CASE("the views for readers from outside have the columns promised")
{
    Shop shop;
    shop.enrol();
    const auto columns = [&](const std::string& view) {
        return sqlite(shop.file(), "SELECT group_concat(name, ' ') FROM pragma_table_info('" + view + "')").out;
    };
    CHECK(columns("seals") == "seq kind id subject sealed_at person document previous_link link");
    CHECK(columns("signatures") == "seq person key meaning signed_at signature");
    CHECK(columns("sealed_runs") ==
          "seq run_id sealed_at press job substrate roll operator state verdict present document previous_link link");
    CHECK(columns("readings") ==
          "seq run_id step target si_value unit low high uncertainty verdict entered_text at person");
    CHECK(columns("definitions") == "seq what id edition sha256 text");
    CHECK(columns("open_events") == "run_id n event");
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM signatures WHERE meaning = 'enrolled' AND person = 'p-1'").out ==
          "2");
    const people::Actor matteo = shop.actor("p-1");
    REQUIRE(shop.writer->keepDefinition("press", "north", "a = \"é\"\n", matteo));
    CHECK(sqlite(shop.file(), "SELECT seq, what, id, edition, sha256, text FROM definitions").out ==
          "3|press|north|1|" + hex(sha256("a = \"é\"\n")) + "|a = \"é\"\n");
    const auto anchor = shop.writer->reader().anchor();
    const seal::Seal second = shop.writer->reader().seal(2).value();
    CHECK(sqlite(shop.file(), "SELECT kind, id, person, typeof(document), previous_link, link FROM seals WHERE seq = 3")
              .out == "definition|north|p-1|blob|" + hex(second.link) + "|" + hex(anchor->link));
    CHECK(sqlite(shop.file(), "SELECT sealed_at FROM seals WHERE seq = 2").out == utcText(second.sealedAtMs));
}

TEST_CASE("sealed rows withstand the command line program whatever its settings")
{
    Shop shop;
    shop.enrol();
    const std::string before = sqlite(shop.file(), "SELECT * FROM seals").out;
    const std::string rest = ", kind, id, subject, sealed_at, person, document, ";
    const std::string same = "seq, kind, id, subject, sealed_at, person, CAST('{}' AS BLOB), previous_link, link ";
    const std::vector<std::string> attempts{
        "UPDATE seal_rows SET person = 'p-9'",
        "UPDATE OR REPLACE seal_rows SET seq = 1 WHERE seq = 2",
        "DELETE FROM seal_rows",
        "DELETE FROM seal_rows WHERE seq = 2",
        "INSERT OR REPLACE INTO seal_rows SELECT " + same + "FROM seal_rows WHERE seq = 2",
        "REPLACE INTO seal_rows SELECT " + same + "FROM seal_rows WHERE seq = 1",
        "INSERT OR REPLACE INTO seal_rows SELECT 3" + rest + "link, link FROM seal_rows WHERE seq = 2",
        "INSERT INTO seal_rows SELECT 9" + rest + "link, zeroblob(32) FROM seal_rows WHERE seq = 2",
        "INSERT INTO seal_rows SELECT 3" + rest + "zeroblob(32), zeroblob(32) FROM seal_rows WHERE seq = 2",
        "UPDATE seals SET person = 'p-9'",
        "DELETE FROM seals",
        "INSERT OR REPLACE INTO seals (seq, kind) VALUES (1, 'run')",
    };
    for (const char* settings : {"PRAGMA recursive_triggers = OFF;", "PRAGMA recursive_triggers = ON;"}) {
        for (const std::string& sql : attempts) {
            const Said said = sqlite(shop.file(), settings + sql + ";");
            INFO(settings << sql << "\n" << said.out);
            CHECK(said.code != 0);
            const bool named = said.out.find("a seal is ") != std::string::npos ||
                               said.out.find("because it is a view") != std::string::npos;
            CHECK(named);
            CHECK(sqlite(shop.file(), "SELECT * FROM seals").out == before);
        }
    }
    CHECK(verify(shop.file(), {})->findings.empty());
}
