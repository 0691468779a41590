// SPDX-License-Identifier: GPL-3.0-or-later
#include <thread>

#include "tests/core/logbook/logbook_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using people::test::kChosen;

TEST_CASE("whoever is invited chooses PIN and passphrase themselves, with a code that is good once")
{
    Shop shop;
    shop.enrol();
    Writer& writer = *shop.writer;
    const auto matteo = shop.signer("p-1");
    const people::PersonRecord ada = people::newPerson({"p-3"}, "Ada Sund", people::Role::Operator).value();
    CHECK(writer.invite(ada, *shop.signer("p-2")).error().code == "gate.role");
    const std::string code = writer.invite(ada, *matteo).value();
    CHECK(code.size() == 9);
    CHECK_FALSE(writer.signIn("p-3", kChosen.pin));
    CHECK_FALSE(writer.unlock("p-3", kChosen.passphrase));
    CHECK(writer.choose("p-3", "AAAA-AAAA", kChosen, PinCost::Least).error().code == "sign_in.refused");
    CHECK(writer.choose("p-3", code, {"1234", kChosen.passphrase}, PinCost::Least).error().code == "person.weak_pin");
    std::string typed = code;  // as people type: small, without the hyphen
    typed.erase(4, 1);
    for (char& c : typed) c = static_cast<char>(std::tolower(c));
    REQUIRE(writer.choose("p-3", typed, kChosen, PinCost::Least));
    CHECK(writer.signIn("p-3", kChosen.pin)->name() == "Ada Sund");
    CHECK(writer.unlock("p-3", kChosen.passphrase));
    CHECK(writer.choose("p-3", code, kChosen, PinCost::Least).error().code == "sign_in.refused");
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("ten wrong tries shut a door, and two people open it again")
{
    Shop shop;
    shop.enrol();
    Writer& writer = *shop.writer;
    const auto matteo = shop.signer("p-1");
    for (int i = 0; i < 4; ++i) CHECK(writer.signIn("p-2", "0000").error().code == "sign_in.refused");
    REQUIRE(writer.signIn("p-2", kChosen.pin));  // right: the count begins anew
    int refused = 0, waited = 0;
    while (refused < 10) {
        const auto wrong =
            refused % 2 == 0 ? writer.signIn("p-2", "0000").error() : writer.unlock("p-2", "0000").error();
        if (wrong.code == "sign_in.wait") {
            ++waited;
            CHECK(writer.signIn("p-2", kChosen.pin).error().code == "sign_in.wait");  // not even the right one
            shop.clock.advance(30'000);
            continue;
        }
        CHECK(wrong.code == "sign_in.refused");
        ++refused;
    }
    CHECK(waited > 0);
    shop.clock.advance(86'400'000);
    CHECK(writer.signIn("p-2", kChosen.pin).error().code == "sign_in.shut");
    CHECK(writer.unlock("p-2", kChosen.passphrase).error().code == "sign_in.shut");
    // It survives the program.
    shop.reopen();
    CHECK(shop.writer->signIn("p-2", kChosen.pin).error().code == "sign_in.shut");
    const people::PersonRecord inka = people::newPerson({"p-2"}, "Inka Thorsby", people::Role::Operator).value();
    const std::string code = shop.writer->invite(inka, *shop.signer("p-1")).value();
    REQUIRE(shop.writer->choose("p-2", code, {"9153", "tall reeds by the weir"}, PinCost::Least));
    CHECK(shop.writer->signIn("p-2", "9153"));
    CHECK_FALSE(shop.writer->signIn("p-2", kChosen.pin));
    CHECK(shop.writer->unlock("p-2", "tall reeds by the weir"));
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("nobody is the only one who could let themselves in again, and the last supervisor stays one")
{
    Shop shop;
    shop.enrol();
    const auto matteo = shop.signer("p-1");
    people::PersonRecord self = shop.writer->reader().people()->front();
    CHECK(shop.writer->invite(self, *matteo).error().code == "person.own_invitation");
    self.active = false;
    CHECK(shop.writer->changePerson(self, *matteo).error().code == "person.last_supervisor");
    self.active = true;
    self.role = people::Role::Operator;
    CHECK(shop.writer->changePerson(self, *matteo).error().code == "person.last_supervisor");
    people::PersonRecord inka = shop.writer->reader().people()->back();
    inka.role = people::Role::Supervisor;
    REQUIRE(shop.writer->changePerson(inka, *matteo));
    self.role = people::Role::Supervisor;
    self.active = false;
    REQUIRE(shop.writer->changePerson(self, *shop.signer("p-2")));
    CHECK_FALSE(shop.writer->signIn("p-1", kChosen.pin));  // out of service, not gone
    CHECK(shop.writer->reader().people()->size() == 2);
    // A key that is open still is no key of a supervisor any more.
    CHECK(shop.writer->changePerson(inka, *matteo).error().code == "gate.role");
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a badge signs with its PIN")
{
    Shop shop;
    shop.enrol();
    const std::string code = people::newBadgeCode();
    REQUIRE(shop.writer->giveBadge(*shop.signer("p-2"), code, "402917", PinCost::Least));
    const auto signer = shop.writer->unlock("p-2", people::badgeSecret(code, "402917"));
    REQUIRE(signer);
    CHECK(signer->key() == *shop.writer->reader().people()->back().key);
    CHECK_FALSE(shop.writer->unlock("p-2", people::badgeSecret(code, "402918")));
}

TEST_CASE("whoever looks after people sees how every door stands, and nothing that opens it")
{
    Shop shop;
    shop.enrol();
    Writer& writer = *shop.writer;
    const auto matteo = shop.signer("p-1");
    const people::PersonRecord ada = people::newPerson({"p-3"}, "Ada Sund", people::Role::Operator).value();
    const std::string code = writer.invite(ada, *matteo).value();
    REQUIRE(writer.giveBadge(*matteo, people::newBadgeCode(), "402917", PinCost::Least));
    CHECK_FALSE(writer.signIn("p-2", "0000"));
    const auto doors = writer.doors().value();
    REQUIRE(doors.size() >= 3);
    const auto of = [&](const char* id) {
        for (const DoorState& door : doors)
            if (door.person.value == id) return door;
        FAIL("no door of " << id);
        return DoorState{};
    };
    CHECK(of("p-1").badge);
    CHECK(of("p-1").chosen);
    CHECK_FALSE(of("p-1").invited);
    CHECK(of("p-2").door.failures == 1);
    CHECK_FALSE(of("p-2").badge);
    CHECK(of("p-3").invited);
    CHECK_FALSE(of("p-3").chosen);
}

TEST_CASE("somebody chooses another PIN by themselves, and the record says that they did")
{
    Shop shop;
    shop.enrol();
    Writer& writer = *shop.writer;
    const std::string badge = people::newBadgeCode();
    REQUIRE(writer.giveBadge(*shop.signer("p-2"), badge, "402917", PinCost::Least));
    const auto refused = [&](const people::Chosen& old, const people::Chosen& anew) {
        const auto done = writer.chooseAgain("p-2", old, anew, PinCost::Least);
        REQUIRE_FALSE(done);
        CHECK_FALSE(done.error().remedy.empty());
        return done.error().code;
    };
    CHECK(refused({"4822", kChosen.passphrase}, {"9153", {}}) == "sign_in.refused");
    CHECK(refused({kChosen.pin, "four grey herons fly"}, {"9153", {}}) == "sign_in.refused");
    CHECK(refused(kChosen, {}) == "person.nothing_chosen");
    CHECK(refused(kChosen, {kChosen.pin, {}}) == "person.same_secret");
    CHECK(refused(kChosen, {"1234", {}}) == "person.weak_pin");
    CHECK(writer.reader().anchor()->count == 2);
    REQUIRE(writer.chooseAgain("p-2", kChosen, {"9153", {}}, PinCost::Least));
    CHECK_FALSE(writer.signIn("p-2", kChosen.pin));
    CHECK(writer.signIn("p-2", "9153"));
    CHECK(writer.unlock("p-2", kChosen.passphrase));
    CHECK(writer.unlock("p-2", people::badgeSecret(badge, "402917")));
    const seal::Seal last = writer.reader().seal(3).value();
    CHECK(last.document.find("\"change\":\"pin\"") != std::string::npos);
    CHECK(last.person == "p-2");
    CHECK(last.document.find("9153") == std::string::npos);
    // A badge shows as well who it is.
    REQUIRE(writer.chooseAgain("p-2", {"9153", people::badgeSecret(badge, "402917")}, {"7482", {}}, PinCost::Least));
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("another passphrase comes with another key, put by the old one, and a badge of before opens nothing")
{
    Shop shop;
    shop.enrol();
    Writer& writer = *shop.writer;
    const std::string badge = people::newBadgeCode();
    REQUIRE(writer.giveBadge(*shop.signer("p-2"), badge, "402917", PinCost::Least));
    const auto before = shop.signer("p-2");
    const char* anew = "tall reeds by the weir";
    const auto refused = [&](const people::Chosen& chosen) {
        const auto done = writer.chooseAgain("p-2", kChosen, chosen, PinCost::Least);
        REQUIRE_FALSE(done);
        return done.error().code;
    };
    CHECK(refused({{}, "too short"}) == "person.weak_passphrase");
    CHECK(refused({{}, "Inka Thorsby 4821"}) == "person.weak_passphrase");
    CHECK(refused({{}, kChosen.passphrase}) == "person.same_secret");
    CHECK(refused({"1234", anew}) == "person.weak_pin");
    REQUIRE(writer.chooseAgain("p-2", kChosen, {{}, anew}, PinCost::Least));
    CHECK(writer.signIn("p-2", kChosen.pin));  // stays as it was
    CHECK_FALSE(writer.unlock("p-2", kChosen.passphrase));
    CHECK_FALSE(writer.unlock("p-2", people::badgeSecret(badge, "402917")));
    const auto now = writer.unlock("p-2", anew);
    REQUIRE(now);
    CHECK(now->key() != before->key());
    CHECK(writer.giveBadge(*before, badge, "402917", PinCost::Least).error().code == "person.unknown");
    REQUIRE(writer.chooseAgain("p-2", {kChosen.pin, anew}, {"9153", "nine frogs in the millpond"}, PinCost::Least));
    CHECK(writer.signIn("p-2", "9153"));
    CHECK(writer.unlock("p-2", "nine frogs in the millpond"));
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("whoever chooses both anew has both in the record, and a PIN that is kept is not asked for anew")
{
    Shop shop;
    shop.enrol();
    const char* reeds = "tall reeds by the weir";
    REQUIRE(shop.writer->chooseAgain("p-2", kChosen, {"9153", reeds}, PinCost::Least));
    CHECK(shop.writer->reader().anchor()->count == 4);
    CHECK(shop.writer->reader().seal(3)->document.find("\"change\":\"pin\"") != std::string::npos);
    CHECK(shop.writer->reader().seal(4)->document.find("\"change\":\"key\"") != std::string::npos);
    CHECK(shop.writer->signIn("p-2", "9153"));
    CHECK(shop.writer->unlock("p-2", reeds));
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    // A PIN from before the list of those that are guessed first was as long as it is.
    shop.writer.reset();
    const Said put = sqlite(shop.file(), "UPDATE secret_rows SET pin = '" + hashPin("1234", PinCost::Least) +
                                             "' WHERE person = 'p-2'");
    REQUIRE(put.code == 0);
    shop.reopen();
    REQUIRE(shop.writer->signIn("p-2", "1234"));
    const auto kept =
        shop.writer->chooseAgain("p-2", {"1234", reeds}, {{}, "nine frogs in the millpond"}, PinCost::Least);
    if (!kept) FAIL(kept.error().code);
    CHECK(shop.writer->signIn("p-2", "1234"));
    CHECK(shop.writer->unlock("p-2", "nine frogs in the millpond"));
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("nobody who was put out of service while they chose has anything sealed")
{
    Shop shop;
    shop.enrol();
    const auto matteo = shop.signer("p-1");
    people::PersonRecord inka = shop.writer->reader().people()->back();
    std::string pin = kChosen.pin;
    bool met = false;
    // Hashing takes its time outside the lock: until the one call falls into the other.
    for (int i = 0; i < 40 && !met; ++i) {
        const std::string next = i % 2 == 0 ? "9153" : "7482";
        std::string code;
        std::thread choosing([&] {
            const auto done = shop.writer->chooseAgain("p-2", {pin, kChosen.passphrase}, {next, {}}, PinCost::Shop);
            code = done ? "" : done.error().code;
        });
        std::this_thread::sleep_for(std::chrono::milliseconds(5 + 10 * i));
        inka.active = false;
        REQUIRE(shop.writer->changePerson(inka, *matteo));
        choosing.join();
        if (code.empty()) pin = next;
        met = code == "person.changed_meanwhile";
        const auto verified = verify(shop.file(), {});
        REQUIRE(verified);
        for (const Finding& finding : verified->findings) FAIL_CHECK(finding.code << " " << finding.subject);
        inka.active = true;
        REQUIRE(shop.writer->changePerson(inka, *matteo));
    }
    CHECK(met);
    CHECK(shop.writer->signIn("p-2", pin));
}
