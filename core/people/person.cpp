// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/person.h"

#include <algorithm>
#include <cctype>
#include <vector>

#include "core/base/utf8.h"

namespace taut::people {

namespace {

constexpr std::size_t kLeastPin = 4;
constexpr std::size_t kMostPin = 64;

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

/// 1234, 7890, 4321, abcd: each character the neighbour of the one before, always in the same direction.
bool isStraightRun(std::string_view pin)
{
    constexpr std::string_view kRows[] = {"01234567890", "abcdefghijklmnopqrstuvwxyz"};
    std::string lower(pin);
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    const std::string backward(lower.rbegin(), lower.rend());
    return std::any_of(std::begin(kRows), std::end(kRows), [&](std::string_view row) {
        return row.find(lower) != std::string_view::npos || row.find(backward) != std::string_view::npos;
    });
}

std::optional<Finding> weakness(std::string_view pin)
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
    return std::nullopt;
}

std::string trimmed(std::string_view text)
{
    constexpr std::string_view kBlank = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlank);
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(kBlank) - first + 1));
}

}  // namespace

Result<Actor> signIn(const PersonRecord* person, std::string_view pin)
{
    // The work is done before the answer is looked at, so that the clock tells nothing.
    bool known = false;
    if (person != nullptr)
        known = pinMatches(person->pinHash, pin) && person->active;
    else
        spendPinTry();
    if (!known)
        return refuse("sign_in.refused", "", "This name and PIN do not belong together.",
                      "Try again, or ask a supervisor whether you are enrolled on this press.");
    return Actor(person->id, person->name, person->role);
}

Result<PersonRecord> makePerson(PersonId id, std::string name, Role role, std::string_view pin, PinCost cost)
{
    std::string cleaned = trimmed(cleanUtf8(name));
    if (cleaned.empty())
        return refuse("person.no_name", id.value, "A person needs a name.", "Type the name as the crew knows it.");
    if (auto weak = weakness(pin)) return *weak;
    return PersonRecord{std::move(id), std::move(cleaned), role, hashPin(pin, cost), true};
}

}  // namespace taut::people
