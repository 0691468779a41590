// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/people/door.h"
#include "tests/core/people/crew.h"

using namespace taut;
using namespace taut::people;

TEST_CASE("a passphrase opens the key that the record names, and a PIN does not")
{
    const auto odd = test::member("p-7", "Odd Bramley", Role::Operator);
    const auto signer = unlock(&odd.enrolled, test::kChosen.passphrase);
    REQUIRE(signer);
    CHECK(signer->key() == *odd.enrolled.person.key);
    CHECK(signer->actor().name() == "Odd Bramley");
    const auto what = bytesOf("the record");
    CHECK(signatureHolds(*odd.enrolled.person.key, "a purpose", what, signer->sign("a purpose", what)));
    for (const char* wrong : {"", "4821", "four grey herons wait ", "Four grey herons wait"}) {
        INFO(wrong);
        const auto refused = unlock(&odd.enrolled, wrong);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "sign_in.refused");
    }
}

TEST_CASE("nobody unlocks with another's key, out of service, or unknown")
{
    auto odd = test::member("p-7", "Odd Bramley", Role::Operator).enrolled;
    const auto rill = test::member("p-8", "Rill Ashdown", Role::Operator).enrolled;
    auto swapped = odd;
    swapped.secrets = rill.secrets;  // the same passphrase, somebody else's sealed key
    CHECK_FALSE(unlock(&swapped, test::kChosen.passphrase));
    odd.person.active = false;
    CHECK_FALSE(unlock(&odd, test::kChosen.passphrase));
    CHECK_FALSE(unlock(nullptr, test::kChosen.passphrase));
    auto before = test::member("p-9", "Ada Sund", Role::Operator).enrolled;
    before.person.key.reset();  // invited anew
    CHECK_FALSE(unlock(&before, test::kChosen.passphrase));
}

// NIST SP 800-63B-4, 3.1.1.2 (from memory): 15 characters where it is the only factor, by code points, no composition.
TEST_CASE("a passphrase is long, and not the same thing over and over")
{
    const auto code = [](const std::string& passphrase) {
        const auto made = makePerson({"p-1"}, "Rill Ashdown", Role::Operator, {"8264", passphrase}, PinCost::Least);
        return made ? std::string() : made.error().code;
    };
    for (const char* weak : {"", "fourteen chars", "aaaaaaaaaaaaaaa", "abcabcabcabcabc", "abcdefghijklmnopq",
                             "Rill Ashdown8264", "rill ashdown 826", "Rill Ashdown Rill Ashdown"})
        CHECK(code(weak) == "person.weak_passphrase");
    for (const char* strong :
         {"correct horse battery staple", "fifteen letters", "\xc3\xa4\xc3\xb6\xc3\xbc drei Umlaute x"})
        CHECK(code(strong).empty());
    CHECK(code("fourteen \xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4") ==
          "person.weak_passphrase");  // 14 characters, 19 bytes
    CHECK(code(std::string(64, 'x') + "the web").empty());
    CHECK(code(std::string(260, 'x')) == "person.weak_passphrase");
}

TEST_CASE("a badge opens the key only with its PIN, and a PIN of six digits at least")
{
    auto odd = test::member("p-7", "Odd Bramley", Role::Operator);
    const std::string code = newBadgeCode();
    CHECK(code.size() == 32);  // 128 bits
    CHECK(code != newBadgeCode());
    CHECK(underBadge(*odd.signer, code, "48215", PinCost::Least).error().code == "person.weak_pin");
    CHECK(underBadge(*odd.signer, code, "123456", PinCost::Least).error().code == "person.weak_pin");
    odd.enrolled.secrets.underBadge = underBadge(*odd.signer, code, "402917", PinCost::Least).value();
    CHECK(unlock(&odd.enrolled, badgeSecret(code, "402917")));
    CHECK_FALSE(unlock(&odd.enrolled, badgeSecret(code, "402918")));
    CHECK_FALSE(unlock(&odd.enrolled, badgeSecret(newBadgeCode(), "402917")));
}

// NIST SP 800-63B-4, 3.2.2 and 3.2.10 (from memory): waits may grow, ten failures in a row at most.
TEST_CASE("wrong tries cost growing waits and shut the door at the tenth")
{
    Door door;
    std::int64_t now = 1'000'000;
    const std::int64_t waits[] = {0, 0, 0, 0, 30'000, 60'000, 120'000, 240'000, 480'000};
    for (const std::int64_t wait : waits) {
        CHECK_FALSE(closedDoor(door, now));
        door = afterFailure(door, now);
        if (wait > 0) {
            CHECK(closedDoor(door, now)->code == "sign_in.wait");
            CHECK(closedDoor(door, now + wait - 1)->code == "sign_in.wait");
        }
        now += wait;
        CHECK_FALSE(closedDoor(door, now));
    }
    door = afterFailure(door, now);
    CHECK(closedDoor(door, now)->code == "sign_in.shut");
    CHECK(closedDoor(door, now + 1'000'000'000)->code == "sign_in.shut");
    // A clock set back by years keeps nobody out for years.
    const Door waiting = afterFailure(Door{4, 0}, now);
    CHECK_FALSE(closedDoor(waiting, now - 86'400'000));
}

TEST_CASE("a scanned badge is told from a passphrase, in capitals or small letters")
{
    const std::string code = newBadgeCode();
    CHECK(badgeCodeFrom(code) == code);
    std::string small = code;
    for (char& c : small) c = static_cast<char>(std::tolower(c));
    CHECK(badgeCodeFrom(" " + small + "\r\n") == code);
    CHECK_FALSE(badgeCodeFrom(code.substr(1)));
    CHECK_FALSE(badgeCodeFrom("nine slow barges at dusk and day"));
    CHECK_FALSE(badgeCodeFrom(""));
}

TEST_CASE("the next id is one that nobody has had")
{
    std::vector<PersonRecord> people;
    CHECK(nextId(people).value == "p-1");
    for (const char* id : {"p-2", "p-11", "old-99", "p-7x", "p-"})
        people.push_back({{id}, id, Role::Operator, true, {}});
    CHECK(nextId(people).value == "p-12");
}

TEST_CASE("a passphrase has one line, so that it is never taken for a badge and its PIN")
{
    const PersonRecord ada = newPerson({"p-3"}, "Ada Sund", Role::Operator).value();
    CHECK(choose(ada, {"4821", "four grey\nherons wait here"}, PinCost::Least).error().code ==
          "person.weak_passphrase");
}
