// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/crypto.h"
#include "core/base/result.h"
#include "core/base/signing.h"

namespace taut::people {

enum class Role : std::uint8_t { Operator, Supervisor, Trainer, Trainee };
[[nodiscard]] const char* roleWord(Role role) noexcept;  ///< "operator", as files and documents write it
[[nodiscard]] std::optional<Role> roleFrom(std::string_view word) noexcept;

/// "p-2": for ever one person's; never reused.
struct PersonId {
    std::string value;
    friend auto operator<=>(const PersonId&, const PersonId&) = default;
};

/// What the record says of a person, for everybody to read.
struct PersonRecord {
    PersonId id;
    std::string name;
    Role role{};
    bool active = true;
    std::optional<PublicKey> key;  ///< their signatures are checked with it; none until they chose their secrets
    friend bool operator==(const PersonRecord&, const PersonRecord&) = default;
};

/// What opens a person's doors on this PC. None of it stands in a sealed document or an export. A PIN alone answers
/// steps; whoever copies the file tries a million PINs in a day, so it never opens the key.
struct Secrets {
    std::string pinHash;          ///< PHC string, "" = not chosen yet
    std::string underPassphrase;  ///< the private key, sealed (SigningKey::sealUnder)
    std::string underBadge;       ///< the same key under badge and PIN, "" = no badge
    friend bool operator==(const Secrets&, const Secrets&) = default;
};
struct Enrolled {
    PersonRecord person;
    Secrets secrets;
};

class Signer;

/// Somebody who has shown who they are. Can only be had by signing in, so a function that takes an Actor cannot be
/// called in anybody's name.
class Actor {
public:
    [[nodiscard]] const PersonId& id() const noexcept { return m_id; }
    [[nodiscard]] const std::string& name() const noexcept { return m_name; }
    [[nodiscard]] Role role() const noexcept { return m_role; }

private:
    explicit Actor(const PersonRecord& person) : m_id(person.id), m_name(person.name), m_role(person.role) {}
    friend Result<Actor> signIn(const Enrolled*, std::string_view);
    friend Result<Signer> unlock(const Enrolled*, std::string_view);
    PersonId m_id;
    std::string m_name;
    Role m_role;
};

/// Somebody whose private key is open: they can sign. Had only by unlock(); to be let go as soon as it has signed.
class Signer {
public:
    [[nodiscard]] const Actor& actor() const noexcept { return m_actor; }
    [[nodiscard]] const PublicKey& key() const noexcept { return m_key.publicKey(); }
    [[nodiscard]] Signature sign(std::string_view purpose, std::span<const std::uint8_t> what) const
    {
        return m_key.sign(purpose, what);
    }
    /// The key once more, under another secret.
    [[nodiscard]] std::string sealedUnder(std::string_view secret, PinCost cost) const
    {
        return m_key.sealUnder(secret, cost);
    }

private:
    Signer(Actor actor, SigningKey key) : m_actor(std::move(actor)), m_key(std::move(key)) {}
    friend Result<Signer> unlock(const Enrolled*, std::string_view);
    Actor m_actor;
    SigningKey m_key;
};

/// Checks a PIN. An unknown person (nullptr), an inactive one and a wrong PIN cost the same and get the same sentence
/// (code sign_in.refused).
[[nodiscard]] Result<Actor> signIn(const Enrolled* person, std::string_view pin);
/// Opens the private key with a passphrase, or with what badgeSecret() makes of a badge and its PIN. As signIn for
/// whoever is unknown, inactive or wrong; code sign_in.refused.
[[nodiscard]] Result<Signer> unlock(const Enrolled* person, std::string_view secret);
/// Code and PIN as one secret of two lines; a passphrase is always one line.
[[nodiscard]] std::string badgeSecret(std::string_view code, std::string_view pin);
/// The code of a new badge, 128 random bits in 32 capitals and digits, as it is printed and scanned.
[[nodiscard]] std::string newBadgeCode();
/// What was scanned or typed as the code of a badge, in capitals; nullopt when it is something else.
[[nodiscard]] std::optional<std::string> badgeCodeFrom(std::string_view scanned);
/// The signer's key under a badge and a PIN of six digits or more (person.weak_pin).
[[nodiscard]] Result<std::string> underBadge(const Signer& signer, std::string_view code, std::string_view pin,
                                             PinCost cost);

/// An id that nobody has had: "p-" and the next number.
[[nodiscard]] PersonId nextId(std::span<const PersonRecord> everybody);
/// A new person, who has chosen nothing yet; refuses an empty name (person.no_name).
[[nodiscard]] Result<PersonRecord> newPerson(PersonId id, std::string_view name, Role role);
/// What the person types themselves at first use, or when they choose anew.
struct Chosen {
    std::string pin, passphrase;
};
/// Gives the person a new key, sealed under what they chose. Refuses a PIN that is not 4 to 64 characters, one repeated
/// digit, a straight run like 1234 or one that is guessed first (person.weak_pin), and a passphrase shorter than 15
/// characters, longer than 256, of one character repeated, or that is the PIN or the name over again or has
/// more than one line
/// (person.weak_passphrase). NIST SP 800-63B-4, 3.1.1.2 and 3.2.10 (from memory): length and a block list, no rules of
/// composition.
[[nodiscard]] Result<Enrolled> choose(PersonRecord person, const Chosen& chosen, PinCost cost);
/// The same for whoever keeps a PIN that they have: it is taken as it is, however weak it has come to be thought.
[[nodiscard]] Result<Enrolled> chooseKey(PersonRecord person, const Chosen& chosen, PinCost cost);
/// newPerson() and choose() in one.
[[nodiscard]] Result<Enrolled> makePerson(PersonId id, std::string_view name, Role role, const Chosen& chosen,
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
    EditPeople,
    KeepLogbook,  ///< choose where it is kept twice, have it copied, restore it
    Review,
    CorrectRecord,
    VoidRecord,
    Observe,  ///< look at somebody's attempts at the practice press and sign for it
    Qualify   ///< say that somebody may work a press alone, or may not any more
};
[[nodiscard]] bool may(Role role, Act act) noexcept;
/// The refusal of what somebody's role does not allow: gate.role.
[[nodiscard]] Finding notAllowed(const Actor& by, std::string subject, Text remedy = "Have a supervisor do it.");

}  // namespace taut::people
