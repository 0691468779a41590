// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/person.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <vector>

#include "core/base/utf8.h"
#include "core/people/secrets.h"

namespace taut::people {

namespace {

constexpr std::size_t kLeastPin = 4;
constexpr std::size_t kMostPin = 64;
constexpr std::size_t kLeastPassphrase = 15;
constexpr std::size_t kMostPassphrase = 256;
constexpr std::size_t kBadgeDigits = 32;  // 128 bits
constexpr char kBadgeLine = '\n';         // between a badge's code and its PIN

/// The characters of a PIN, each as its UTF-8 bytes; empty when it is not UTF-8.
std::vector<std::string_view> charactersOf(std::string_view text)
{
    std::vector<std::string_view> all;
    while (!text.empty()) {
        const std::size_t step = utf8Step(text);
        if (step == 0) return {};
        all.push_back(text.substr(0, step));
        text.remove_prefix(step);
    }
    return all;
}

std::string lowered(std::string_view text)
{
    std::string lower(text);
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return lower;
}

/// What people choose most and thieves try first: rows and crosses of the number pad, doubled pairs, years of this
/// life. Common practice, no source; public lists of stolen PINs agree in these.
bool isGuessedFirst(std::string_view pin)
{
    constexpr std::string_view kFirst[] = {"1212",   "1313",   "2580",   "0852",   "1004",     "2000",
                                           "6969",   "1122",   "1010",   "2020",   "112233",   "121212",
                                           "123123", "654321", "147258", "159753", "password", "qwerty"};
    const std::string lower = lowered(pin);
    if (std::find(std::begin(kFirst), std::end(kFirst), lower) != std::end(kFirst)) return true;
    const bool digits = std::all_of(lower.begin(), lower.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits && lower.size() == 4 && (lower.starts_with("19") || lower.starts_with("20"));
}

/// 1234, 7890, 4321, abcd: each character the neighbour of the one before, always in the same direction.
bool isStraightRun(std::string_view pin)
{
    constexpr std::string_view kRows[] = {"01234567890", "abcdefghijklmnopqrstuvwxyz"};
    const std::string lower = lowered(pin);
    const std::string backward(lower.rbegin(), lower.rend());
    return std::any_of(std::begin(kRows), std::end(kRows), [&](std::string_view row) {
        return row.find(lower) != std::string_view::npos || row.find(backward) != std::string_view::npos;
    });
}

bool isRepeated(const std::vector<std::string_view>& characters, std::size_t length)
{
    for (std::size_t i = length; i < characters.size(); ++i)
        if (characters[i] != characters[i - length]) return false;
    return true;
}

std::string trimmed(std::string_view text)
{
    constexpr std::string_view kBlank = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlank);
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(kBlank) - first + 1));
}

}  // namespace

std::optional<Finding> weakPin(std::string_view pin)
{
    const auto weak = [](Text text) {
        return refuse("person.weak_pin", "pin", std::move(text),
                      "Choose 4 to 64 characters that nobody guesses first: no repeated digit, no run like 1234.");
    };
    const std::vector<std::string_view> characters = charactersOf(pin);
    if (characters.size() < kLeastPin) return weak("The PIN is shorter than 4 characters.");
    if (characters.size() > kMostPin) return weak("The PIN is longer than 64 characters.");
    if (std::all_of(characters.begin(), characters.end(), [&](auto c) { return c == characters.front(); }))
        return weak("The PIN is one character repeated.");
    if (isStraightRun(pin)) return weak("The PIN is a straight run like 1234.");
    if (isGuessedFirst(pin)) return weak("This PIN is one of those that are guessed first.");
    return std::nullopt;
}

std::optional<Finding> weakPassphrase(const Chosen& chosen, const std::string& name)
{
    const auto weak = [](Text text) {
        return refuse("person.weak_passphrase", "passphrase", std::move(text),
                      "Choose 15 characters or more: four words that have nothing to do with each other are easy to "
                      "keep in mind.");
    };
    const std::vector<std::string_view> characters = charactersOf(chosen.passphrase);
    if (characters.size() < kLeastPassphrase) return weak("The passphrase is shorter than 15 characters.");
    if (characters.size() > kMostPassphrase) return weak("The passphrase is longer than 256 characters.");
    if (chosen.passphrase.find(kBadgeLine) != std::string::npos) return weak("The passphrase has more than one line.");
    // "aaaa", "abcabc": up to a third of it written over and over again.
    for (std::size_t length = 1; length <= characters.size() / 3; ++length)
        if (isRepeated(characters, length)) return weak("The passphrase is a few characters over and over again.");
    if (isStraightRun(chosen.passphrase)) return weak("The passphrase is a straight run like abcdef.");
    std::string rest = lowered(chosen.passphrase);
    for (const std::string& known : {lowered(name), lowered(chosen.pin)}) {
        if (known.empty()) continue;
        for (std::size_t at = rest.find(known); at != std::string::npos; at = rest.find(known))
            rest.erase(at, known.size());
    }
    if (charactersOf(rest).size() < kLeastPassphrase / 2)
        return weak("The passphrase is little more than the name or the PIN.");
    return std::nullopt;
}

Result<Actor> signIn(const Enrolled* person, std::string_view pin)
{
    // The work is done before the answer is looked at, so that the clock tells nothing.
    bool known = false;
    if (person != nullptr && !person->secrets.pinHash.empty())
        known = pinMatches(person->secrets.pinHash, pin) && person->person.active;
    else
        spendPinTry();
    if (!known)
        return refuse("sign_in.refused", "", "This name and PIN do not belong together.",
                      "Try again, or ask a supervisor whether you are enrolled on this press.");
    return Actor(person->person);
}

Result<Signer> unlock(const Enrolled* person, std::string_view secret)
{
    const bool badge = secret.find(kBadgeLine) != std::string_view::npos;
    std::optional<SigningKey> key;
    if (person != nullptr && person->person.key) {
        const Secrets& secrets = person->secrets;
        key = SigningKey::open(badge ? secrets.underBadge : secrets.underPassphrase, secret, *person->person.key);
    } else {
        spendPinTry();
    }
    if (!key || !person->person.active)
        return refuse("sign_in.refused", "",
                      badge ? "This badge and PIN do not open this person's key."
                            : "This passphrase does not open this person's key.",
                      "Try again. It is the passphrase, not the PIN, that signs. Whoever has lost it has a supervisor "
                      "let them choose anew.");
    return Signer(Actor(person->person), std::move(*key));
}

std::string badgeSecret(std::string_view code, std::string_view pin)
{
    return std::string(code) + kBadgeLine + std::string(pin);
}

std::string newBadgeCode()
{
    std::string code = hex(randomBytes(16));
    std::transform(code.begin(), code.end(), code.begin(),
                   [](char c) { return c >= 'a' ? static_cast<char>(c - 'a' + 'A') : c; });
    return code;
}

std::optional<std::string> badgeCodeFrom(std::string_view scanned)
{
    std::string code = trimmed(scanned);
    if (code.size() != kBadgeDigits) return std::nullopt;
    for (char& c : code) {
        if (c >= 'a' && c <= 'f') c = static_cast<char>(c - 'a' + 'A');
        if (!(c >= '0' && c <= '9') && !(c >= 'A' && c <= 'F')) return std::nullopt;
    }
    return code;
}

Result<std::string> underBadge(const Signer& signer, std::string_view code, std::string_view pin, PinCost cost)
{
    constexpr std::size_t kLeastDigits = 6;
    if (charactersOf(pin).size() < kLeastDigits)
        return refuse("person.weak_pin", "pin", "The PIN of a badge has six digits or more.",
                      "Choose a longer one: with the badge it opens what you sign with.");
    if (auto weak = weakPin(pin)) return *weak;
    return signer.sealedUnder(badgeSecret(code, pin), cost);
}

PersonId nextId(std::span<const PersonRecord> everybody)
{
    constexpr std::string_view kPrefix = "p-";
    unsigned long most = 0;
    for (const PersonRecord& person : everybody) {
        const std::string& id = person.id.value;
        unsigned long number = 0;
        if (id.rfind(kPrefix, 0) != 0) continue;
        const char* end = id.data() + id.size();
        const auto read = std::from_chars(id.data() + kPrefix.size(), end, number);
        if (read.ec == std::errc{} && read.ptr == end) most = std::max(most, number);
    }
    return {std::string(kPrefix) + std::to_string(most + 1)};
}

Result<PersonRecord> newPerson(PersonId id, std::string_view name, Role role)
{
    std::string cleaned = trimmed(cleanUtf8(name));
    if (cleaned.empty())
        return refuse("person.no_name", id.value, "A person needs a name.", "Type the name as the crew knows it.");
    return PersonRecord{std::move(id), std::move(cleaned), role, true, std::nullopt};
}

Result<Enrolled> choose(PersonRecord person, const Chosen& chosen, PinCost cost)
{
    if (auto weak = weakPin(chosen.pin)) return *weak;
    return chooseKey(std::move(person), chosen, cost);
}

Result<Enrolled> chooseKey(PersonRecord person, const Chosen& chosen, PinCost cost)
{
    if (auto weak = weakPassphrase(chosen, person.name)) return *weak;
    const SigningKey key = SigningKey::make();
    person.key = key.publicKey();
    return Enrolled{std::move(person), {hashPin(chosen.pin, cost), key.sealUnder(chosen.passphrase, cost), {}}};
}

Result<Enrolled> makePerson(PersonId id, std::string_view name, Role role, const Chosen& chosen, PinCost cost)
{
    auto person = newPerson(std::move(id), name, role);
    if (!person) return person.error();
    return choose(*std::move(person), chosen, cost);
}

}  // namespace taut::people
