// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/person.h"

#include <catch2/catch.hpp>

using namespace taut;
using namespace taut::people;

namespace {

constexpr const char* kPassphrase = "seven wet boots drying";

Enrolled person(Role role, bool active = true)
{
    auto made = makePerson({"p-7"}, "Odd Bramley", role, {"8264", kPassphrase}, PinCost::Least);
    REQUIRE(made);
    made->person.active = active;
    return *made;
}

}  // namespace

TEST_CASE("a role's word reads back to the role")
{
    for (const Role role : {Role::Operator, Role::Supervisor, Role::Trainer, Role::Trainee})
        CHECK(roleFrom(roleWord(role)) == role);
    CHECK_FALSE(roleFrom("manager"));
    CHECK_FALSE(roleFrom(""));
}

TEST_CASE("each role may do exactly what the table says")
{
    struct Row {
        Act act;
        bool byOperator, bySupervisor, byTrainer, byTrainee;
    };
    const Row rows[] = {
        {Act::AnswerStep, true, true, true, false},    {Act::AcceptDeviation, false, true, false, false},
        {Act::WaiveVital, false, true, false, false},  {Act::SignOff, true, true, true, false},
        {Act::Abandon, true, true, true, false},       {Act::WithdrawPress, true, true, true, true},
        {Act::ReturnPress, false, true, false, false}, {Act::EditInputs, false, true, false, false},
        {Act::EditPeople, false, true, false, false},  {Act::Review, false, true, false, false},
        {Act::KeepLogbook, false, true, false, false}, {Act::CorrectRecord, true, true, true, false},
        {Act::VoidRecord, false, true, false, false},
    };
    for (const Row& row : rows) {
        INFO("act " << static_cast<int>(row.act));
        CHECK(may(Role::Operator, row.act) == row.byOperator);
        CHECK(may(Role::Supervisor, row.act) == row.bySupervisor);
        CHECK(may(Role::Trainer, row.act) == row.byTrainer);
        CHECK(may(Role::Trainee, row.act) == row.byTrainee);
    }
}

TEST_CASE("signing in with the right PIN gives the person's own name and role")
{
    const Enrolled record = person(Role::Trainer);
    const auto actor = signIn(&record, "8264");
    REQUIRE(actor);
    CHECK(actor->id() == record.person.id);
    CHECK(actor->name() == "Odd Bramley");
    CHECK(actor->role() == Role::Trainer);
}

// Common practice, no source: nobody learns from the answer which half was wrong.
TEST_CASE("an unknown person, an inactive one and a wrong PIN get the same sentence")
{
    const Enrolled record = person(Role::Operator);
    const Enrolled gone = person(Role::Operator, false);
    const auto wrong = signIn(&record, "8265");
    const auto inactive = signIn(&gone, "8264");
    const auto unknown = signIn(nullptr, "8264");
    REQUIRE_FALSE(wrong);
    REQUIRE_FALSE(inactive);
    REQUIRE_FALSE(unknown);
    CHECK(wrong.error().code == "sign_in.refused");
    CHECK(wrong.error() == inactive.error());
    CHECK(wrong.error() == unknown.error());
    CHECK_FALSE(signIn(&record, ""));
    CHECK_FALSE(signIn(&record, "8264 "));
}

TEST_CASE("a PIN that anybody guesses first is refused")
{
    const char* weak[] = {"",
                          "123",
                          "0000",
                          "111111",
                          "1234",
                          "4321",
                          "23456789",
                          "7890",
                          "0987",
                          "2580",
                          "1212",
                          "1987",
                          "Password",
                          "abcd",
                          "DCBA",
                          "aaaaaaaaaa",
                          "xyz\xff!",
                          "\xc3\xa9\xc3\xa9\xc3\xa9\xc3\xa9",
                          "\xc3\xa9\xc3\xa9\xc3\xa8"};
    for (const char* pin : weak) {
        INFO("pin '" << pin << "'");
        const auto made = makePerson({"p-1"}, "Rill Ashdown", Role::Operator, {pin, kPassphrase}, PinCost::Least);
        REQUIRE_FALSE(made);
        CHECK(made.error().code == "person.weak_pin");
        CHECK_FALSE(made.error().text.empty());
        CHECK_FALSE(made.error().remedy.empty());
    }
    CHECK_FALSE(
        makePerson({"p-1"}, "Rill Ashdown", Role::Operator, {std::string(65, 'x') + "y", kPassphrase}, PinCost::Least));
}

// SP 800-63B-4 3.1.1.2 (from memory): at least 64 characters, one code point is one character, spaces allowed, nothing
// cut off; no rule of composition.
TEST_CASE("a PIN of 4 to 64 characters is accepted whole")
{
    const std::string longest = "the web runs over and under, forty rollers to the rewind core "
                                "xy";
    REQUIRE(longest.size() == 64);
    const std::string pins[] = {"8264",
                                "1243",
                                "1357",
                                "p\xc3\xa4r8",
                                "\xf0\x9f\x99\x82\xf0\x9f\x99\x83"
                                "42",
                                longest};
    for (const std::string& pin : pins) {
        INFO("pin '" << pin << "'");
        const auto made = makePerson({"p-1"}, "Rill Ashdown", Role::Operator, {pin, kPassphrase}, PinCost::Least);
        REQUIRE(made);
        CHECK(signIn(&*made, pin));
        CHECK_FALSE(signIn(&*made, pin.substr(0, pin.size() - 1)));
    }
}

// RFC 9106 section 3.1 and the PHC string form: the hash names its scheme, and never holds the PIN.
TEST_CASE("the record keeps a hash and not the PIN")
{
    const Enrolled a = person(Role::Operator);
    const Enrolled b = person(Role::Operator);
    CHECK(a.secrets.pinHash.rfind("$argon2id$v=19$", 0) == 0);
    CHECK(a.secrets.pinHash.find("8264") == std::string::npos);
    CHECK(a.secrets.pinHash != b.secrets.pinHash);  // each its own salt
}

TEST_CASE("a person without a name is refused, and blanks round it are taken off")
{
    for (const char* name : {"", "   ", "\t\n"}) {
        const auto made = makePerson({"p-1"}, name, Role::Operator, {"8264", kPassphrase}, PinCost::Least);
        REQUIRE_FALSE(made);
        CHECK(made.error().code == "person.no_name");
    }
    const auto made = makePerson({"p-1"}, "  Rill Ashdown ", Role::Operator, {"8264", kPassphrase}, PinCost::Least);
    REQUIRE(made);
    CHECK(made->person.name == "Rill Ashdown");
    CHECK(made->person.active);
}
