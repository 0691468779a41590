// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/crypto.h"
#include "core/base/result.h"

namespace taut::people {

enum class Role : std::uint8_t { Operator, Supervisor, Trainer, Trainee };
[[nodiscard]] const char* roleWord(Role role) noexcept;  ///< "operator", as files and documents write it
[[nodiscard]] std::optional<Role> roleFrom(std::string_view word) noexcept;

/// "p-2": for ever one person's; never reused.
struct PersonId {
    std::string value;
    friend auto operator<=>(const PersonId&, const PersonId&) = default;
};

/// What a store keeps of a person. The PIN is kept only as an Argon2id hash.
struct PersonRecord {
    PersonId id;
    std::string name;
    Role role{};
    std::string pinHash;  ///< PHC string
    bool active = true;
    friend bool operator==(const PersonRecord&, const PersonRecord&) = default;
};

/// Somebody who has shown who they are. Can only be had by signing in, so a function that takes an Actor cannot be
/// called in anybody's name.
class Actor {
public:
    [[nodiscard]] const PersonId& id() const noexcept { return m_id; }
    [[nodiscard]] const std::string& name() const noexcept { return m_name; }
    [[nodiscard]] Role role() const noexcept { return m_role; }

private:
    Actor(PersonId id, std::string name, Role role) : m_id(std::move(id)), m_name(std::move(name)), m_role(role) {}
    friend Result<Actor> signIn(const PersonRecord*, std::string_view);
    PersonId m_id;
    std::string m_name;
    Role m_role;
};

/// Checks a PIN. An unknown person (nullptr), an inactive one and a wrong PIN cost the same and get the same sentence
/// (code sign_in.refused).
[[nodiscard]] Result<Actor> signIn(const PersonRecord* person, std::string_view pin);

/// A new person's record; refuses an empty name (person.no_name) and a PIN that is not 4 to 64 characters, one repeated
/// digit, or a straight run like 1234 (person.weak_pin).
[[nodiscard]] Result<PersonRecord> makePerson(PersonId id, std::string name, Role role, std::string_view pin,
                                              PinCost cost);

/// What a role may do; the only place that says so.
enum class Act : std::uint8_t {
    AnswerStep,
    AcceptDeviation,
    WaiveVital,
    SignOff,
    Abandon,
    WithdrawPress,
    ReturnPress,
    EditInputs,
    EditPeople
};
[[nodiscard]] bool may(Role role, Act act) noexcept;

}  // namespace taut::people
