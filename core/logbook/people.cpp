// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/writer_impl.h"
#include "core/people/door.h"
#include "core/people/secrets.h"

namespace taut::logbook {

namespace {

/// A person with what opens their doors, and how often somebody was wrong there.
struct Known {
    people::Enrolled who;
    std::string firstUse;
    people::Door door;
};

std::optional<Known> findKnown(SQLite::Database& db, std::string_view id)
{
    auto person = findPerson(db, id);
    if (!person) return std::nullopt;
    Known known{{*std::move(person), {}}, {}, {}};
    SQLite::Statement query(db, "SELECT pin, under_passphrase, under_badge, first_use, failures, wait_until "
                                "FROM secret_rows WHERE person = ?");
    query.bind(1, std::string(id));
    if (!query.executeStep()) return known;
    known.who.secrets = {query.getColumn(0).getString(), query.getColumn(1).getString(),
                         query.getColumn(2).getString()};
    known.firstUse = query.getColumn(3).getString();
    known.door = {query.getColumn(4).getInt(), query.getColumn(5).getInt64()};
    return known;
}

/// What was chosen, or nothing and the code of first use; the door stands open again.
void keepSecrets(SQLite::Database& db, const people::PersonId& id, const people::Secrets& secrets,
                 const std::string& firstUse)
{
    SQLite::Statement put(db, "INSERT INTO secret_rows (person, pin, under_passphrase, under_badge, first_use, "
                              "failures, wait_until) VALUES (?, ?, ?, ?, ?, 0, 0) "
                              "ON CONFLICT (person) DO UPDATE SET pin = excluded.pin, "
                              "under_passphrase = excluded.under_passphrase, under_badge = excluded.under_badge, "
                              "first_use = excluded.first_use, failures = 0, wait_until = 0");
    put.bind(1, id.value);
    put.bind(2, secrets.pinHash);
    put.bind(3, secrets.underPassphrase);
    put.bind(4, secrets.underBadge);
    put.bind(5, firstUse);
    put.exec();
}

void keepDoor(SQLite::Database& db, const std::string& id, const people::Door& door)
{
    SQLite::Statement put(db, "UPDATE secret_rows SET failures = ?, wait_until = ? WHERE person = ?");
    put.bind(1, door.failures);
    put.bind(2, door.waitUntilMs);
    put.bind(3, id);
    put.exec();
}

Finding taken(const std::string& id)
{
    return refuse("person.id_taken", id, {"The id %1 belongs to somebody for ever, also when they have left.", {id}},
                  "Choose an id that nobody has had.");
}

Finding unknown(const std::string& id)
{
    return refuse("person.unknown", id, {"Nobody here has the id %1.", {id}}, "Choose somebody from the list.");
}

/// Whoever changes people must stand in the logbook as they say they do, now.
std::optional<Finding> mayEdit(SQLite::Database& db, const std::string& subject, const people::Signer& by)
{
    const auto standing = findPerson(db, by.actor().id().value);
    if (!standing || !standing->active || standing->key != by.key() ||
        !people::may(standing->role, people::Act::EditPeople))
        return people::notAllowed(by.actor(), subject);
    return std::nullopt;
}

bool isLastSupervisor(SQLite::Database& db, const people::PersonRecord& changed)
{
    if (changed.active && changed.role == people::Role::Supervisor) return false;
    SQLite::Statement others(db, "SELECT count(*) FROM person_rows WHERE role = 'supervisor' AND active = 1 AND key IS "
                                 "NOT NULL AND person <> ?");
    others.bind(1, changed.id.value);
    others.executeStep();
    return others.getColumn(0).getInt() == 0;
}

/// Eight letters and digits that are not taken for one another, in two groups: shown once, typed once.
std::string newFirstUseCode()
{
    constexpr std::string_view kClear = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
    std::string code;
    while (code.size() < 9) {
        for (const std::uint8_t byte : randomBytes(16)) {
            // Bytes beyond a whole multiple would favour the first letters.
            if (byte >= 256 / kClear.size() * kClear.size() || code.size() == 9) continue;
            code += kClear[byte % kClear.size()];
            if (code.size() == 4) code += '-';
        }
    }
    return code;
}

/// The code as it was meant: capitals, with its hyphen.
std::string asWritten(std::string_view typed)
{
    std::string code;
    for (const char c : typed) {
        if (c == ' ' || c == '-') continue;
        code += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        if (code.size() == 4) code += '-';
    }
    return code;
}

}  // namespace

std::optional<people::PersonRecord> findPerson(SQLite::Database& db, std::string_view id)
{
    SQLite::Statement query(db, "SELECT name, role, active, key FROM person_rows WHERE person = ?");
    query.bind(1, std::string(id));
    if (!query.executeStep()) return std::nullopt;
    people::PersonRecord person;
    person.id = {std::string(id)};
    person.name = query.getColumn(0).getString();
    // A role that this program does not know may do the least.
    person.role = people::roleFrom(query.getColumn(1).getString()).value_or(people::Role::Trainee);
    person.active = query.getColumn(2).getInt() != 0;
    if (!query.getColumn(3).isNull()) person.key = blobDigest(query.getColumn(3));
    return person;
}

std::optional<people::PersonRecord> findPersonNamed(SQLite::Database& db, std::string_view name)
{
    SQLite::Statement query(db, "SELECT person FROM person_rows WHERE name = ? LIMIT 1");
    query.bind(1, std::string(name));
    return query.executeStep() ? findPerson(db, query.getColumn(0).getString()) : std::nullopt;
}

namespace {

/// Two people of one name could not be told apart where one chooses who one is, nor on paper.
std::optional<Finding> nameTaken(SQLite::Database& db, const people::PersonRecord& person)
{
    SQLite::Statement query(db, "SELECT person FROM person_rows WHERE name = ? COLLATE NOCASE AND person <> ? LIMIT 1");
    query.bind(1, person.name);
    query.bind(2, person.id.value);
    if (!query.executeStep()) return std::nullopt;
    return refuse("person.name_taken", person.id.value,
                  {"%1 is the name of %2 already.", {person.name, query.getColumn(0).getString()}},
                  "Add what the crew tells them apart by. Whoever only forgot gets a new first-use code instead.");
}

}  // namespace

Result<Done> Writer::addFirst(const people::Enrolled& person, const people::Signer& self)
{
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        const std::string& id = person.person.id.value;
        if (numberOf(db, "SELECT count(*) FROM person_rows") > 0)
            return refuse("person.not_first", id,
                          "People are enrolled already, so the next one is enrolled by a supervisor.",
                          "Have a supervisor sign in first.");
        if (person.person.role != people::Role::Supervisor || self.actor().id() != person.person.id)
            return refuse("person.first_is_supervisor", id,
                          "The first person in a logbook must be a supervisor: only a supervisor can enrol the others.",
                          "Enrol a supervisor first.");
        if (id.empty()) return taken(id);
        const seal::Seal seal =
            appendSeal(db, seal::personOf(person.person, "enrolled"), sealer(self), m_impl->clock->now());
        keepSecrets(db, person.person.id, person.secrets, {});
        return Done{};
    });
}

Result<Done> Writer::addPerson(const people::Enrolled& person, const people::Signer& supervisor)
{
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        const std::string& id = person.person.id.value;
        if (auto why = mayEdit(db, id, supervisor)) return *why;
        if (id.empty() || findPerson(db, id)) return taken(id);
        if (auto why = nameTaken(db, person.person)) return *why;
        const seal::Seal seal =
            appendSeal(db, seal::personOf(person.person, "enrolled"), sealer(supervisor), m_impl->clock->now());
        keepSecrets(db, person.person.id, person.secrets, {});
        return Done{};
    });
}

Result<std::string> Writer::invite(const people::PersonRecord& person, const people::Signer& supervisor)
{
    const std::string code = newFirstUseCode();
    const std::string hash = hashPin(code, PinCost::Shop);
    return m_impl->write([&](SQLite::Database& db) -> Result<std::string> {
        const std::string& id = person.id.value;
        if (auto why = mayEdit(db, id, supervisor)) return *why;
        if (supervisor.actor().id() == person.id)
            return refuse("person.own_invitation", id, "Nobody opens their own door again: it takes two.",
                          "Ask another supervisor for a first-use code.");
        if (id.empty()) return taken(id);
        const auto standing = findPerson(db, id);
        if (!standing)
            if (auto why = nameTaken(db, person)) return *why;
        people::PersonRecord invited = standing ? *standing : person;
        invited.key.reset();
        if (standing && isLastSupervisor(db, [&] {
                people::PersonRecord gone = invited;
                gone.active = false;
                return gone;
            }()))
            return refuse("person.last_supervisor", id, "This is the only supervisor who can sign.",
                          "Enrol a second supervisor first.");
        const seal::Seal seal = appendSeal(db, seal::personOf(invited, standing ? "reset" : "enrolled"),
                                           sealer(supervisor), m_impl->clock->now());
        keepSecrets(db, invited.id, {}, hash);
        return code;
    });
}

Result<Done> Writer::choose(std::string_view personId, std::string_view code, const people::Chosen& chosen,
                            PinCost cost)
{
    const auto known =
        m_impl->read([&](SQLite::Database& db) -> Result<std::optional<Known>> { return findKnown(db, personId); });
    if (!known) return known.error();
    const std::string id(personId);
    const Finding wrong = refuse("sign_in.refused", id, "This name and first-use code do not belong together.",
                                 "Look at the code again, or ask the supervisor for a new one.");
    if (!*known || (*known)->firstUse.empty()) {
        spendPinTry();
        return wrong;
    }
    if (auto closed = people::closedDoor((*known)->door, m_impl->clock->now().utcMs)) return *closed;
    if (!pinMatches((*known)->firstUse, asWritten(code))) {
        auto noted = m_impl->write([&](SQLite::Database& db) -> Result<Done> {
            keepDoor(db, id, people::afterFailure((*known)->door, m_impl->clock->now().utcMs));
            return Done{};
        });
        if (!noted) return noted;
        return wrong;
    }
    // Making and sealing a key takes its time outside the lock.
    const auto enrolled = people::choose((*known)->who.person, chosen, cost);
    if (!enrolled) return enrolled.error();
    const auto self = people::unlock(&*enrolled, chosen.passphrase);
    if (!self) return self.error();
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        const auto still = findKnown(db, id);
        if (!still || still->firstUse != (*known)->firstUse || still->who.person.key) return wrong;
        const seal::Seal seal =
            appendSeal(db, seal::personOf(enrolled->person, "key"), sealer(*self), m_impl->clock->now());
        keepSecrets(db, enrolled->person.id, enrolled->secrets, {});
        return Done{};
    });
}

Result<Done> Writer::chooseAgain(std::string_view personId, const people::Chosen& old, const people::Chosen& anew,
                                 PinCost cost)
{
    const std::string id(personId);
    if (anew.pin.empty() && anew.passphrase.empty())
        return refuse("person.nothing_chosen", id, "Neither another PIN nor another passphrase was chosen.",
                      "Type what is to be another; what is left empty stays as it is.");
    const auto actor = signIn(personId, old.pin);
    if (!actor) return actor.error();
    const auto self = unlock(personId, old.passphrase);
    if (!self) return self.error();
    if (anew.pin == old.pin || anew.passphrase == old.passphrase)
        return refuse("person.same_secret", id, "What was chosen is what it was before.",
                      "Choose another, or leave it empty to keep it.");
    if (!anew.pin.empty())
        if (auto weak = people::weakPin(anew.pin)) return *weak;
    const bool newPin = !anew.pin.empty(), newKey = !anew.passphrase.empty();
    // Making a key and hashing take their time outside the lock.
    people::Enrolled chosen;
    if (newKey) {
        chosen.person.name = actor->name();
        auto enrolled =
            people::chooseKey(std::move(chosen.person), {newPin ? anew.pin : old.pin, anew.passphrase}, cost);
        if (!enrolled) return enrolled.error();
        chosen = *std::move(enrolled);
    } else {
        chosen.secrets.pinHash = hashPin(anew.pin, cost);
    }
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        auto standing = findPerson(db, id);
        if (!standing || !standing->active || standing->key != self->key())
            return refuse("person.changed_meanwhile", id,
                          {"What stands here of %1 was changed meanwhile, so nothing was chosen.", {actor->name()}},
                          "Sign in once more; a supervisor can look up how it stands.");
        const Instant now = m_impl->clock->now();
        if (newPin) {
            const seal::Seal seal = appendSeal(db, seal::personOf(*standing, "pin"), sealer(*self), now);
            SQLite::Statement put(db, "UPDATE secret_rows SET pin = ? WHERE person = ?");
            put.bind(1, chosen.secrets.pinHash);
            put.bind(2, id);
            put.exec();
        }
        if (newKey) {
            standing->key = chosen.person.key;
            const seal::Seal seal = appendSeal(db, seal::personOf(*standing, "key"), sealer(*self), now);
            keepSecrets(db, standing->id, chosen.secrets, {});
        }
        return Done{};
    });
}

Result<Done> Writer::changePerson(const people::PersonRecord& person, const people::Signer& supervisor)
{
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        const std::string& id = person.id.value;
        if (auto why = mayEdit(db, id, supervisor)) return *why;
        const auto standing = findPerson(db, id);
        if (!standing) return unknown(id);
        people::PersonRecord changed = *standing;
        changed.role = person.role;
        changed.active = person.active;
        if (changed == *standing) return Done{};
        if (isLastSupervisor(db, changed))
            return refuse("person.last_supervisor", id, "This is the only supervisor who can sign.",
                          "Enrol a second supervisor first.");
        const char* change = changed.active == standing->active ? "role"
                             : changed.active                   ? "reactivated"
                                                                : "deactivated";
        const seal::Seal seal =
            appendSeal(db, seal::personOf(changed, change), sealer(supervisor), m_impl->clock->now());
        return Done{};
    });
}

Result<Done> Writer::giveBadge(const people::Signer& self, std::string_view code, std::string_view pin, PinCost cost)
{
    const auto sealed = people::underBadge(self, code, pin, cost);
    if (!sealed) return sealed.error();
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        const std::string& id = self.actor().id().value;
        const auto standing = findPerson(db, id);
        if (!standing || standing->key != self.key()) return unknown(id);
        SQLite::Statement put(db, "UPDATE secret_rows SET under_badge = ? WHERE person = ?");
        put.bind(1, *sealed);
        put.bind(2, id);
        put.exec();
        return Done{};
    });
}

/// One try at a person's door, with a PIN or a passphrase: the waits are the same for both.
template <class Open>
auto Writer::atDoor(std::string_view personId, const Open& open) -> decltype(open(nullptr))
{
    const auto known =
        m_impl->read([&](SQLite::Database& db) -> Result<std::optional<Known>> { return findKnown(db, personId); });
    if (!known) return known.error();
    if (!*known) return open(nullptr);
    if (auto closed = people::closedDoor((*known)->door, m_impl->clock->now().utcMs)) return *closed;
    // Hashing takes its time outside the lock.
    auto opened = open(&(*known)->who);
    const bool right = static_cast<bool>(opened);
    if (right && (*known)->door == people::Door{}) return opened;
    const std::string id(personId);
    const people::Door door = right ? people::Door{} : people::afterFailure((*known)->door, m_impl->clock->now().utcMs);
    const auto noted = m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        keepDoor(db, id, door);
        return Done{};
    });
    if (!noted) return noted.error();
    return opened;
}

Result<people::Actor> Writer::signIn(std::string_view personId, std::string_view pin)
{
    return atDoor(personId, [&](const people::Enrolled* who) { return people::signIn(who, pin); });
}

Result<people::Signer> Writer::unlock(std::string_view personId, std::string_view secret)
{
    return atDoor(personId, [&](const people::Enrolled* who) { return people::unlock(who, secret); });
}

Result<std::vector<DoorState>> Writer::doors() const
{
    return m_impl->read([](SQLite::Database& db) -> Result<std::vector<DoorState>> {
        SQLite::Statement query(db,
                                "SELECT person, failures, wait_until, pin <> '', first_use <> '', under_badge <> '' "
                                "FROM secret_rows ORDER BY person");
        std::vector<DoorState> doors;
        while (query.executeStep())
            doors.push_back({{query.getColumn(0).getString()},
                             {query.getColumn(1).getInt(), query.getColumn(2).getInt64()},
                             query.getColumn(3).getInt() != 0,
                             query.getColumn(4).getInt() != 0,
                             query.getColumn(5).getInt() != 0});
        return doors;
    });
}

}  // namespace taut::logbook
