// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/demo_shop.h"

#include <algorithm>

#include "app/seams/resources.h"
#include "app/text/secret.h"
#include "core/base/file.h"
#include "core/base/toml.h"

namespace taut::app {

namespace {

const Toml::Array* listOf(const Toml& root)
{
    const Toml* list = root.find("person");
    return list == nullptr ? nullptr : list->array();
}

std::string textOf(const Toml& table, std::string_view key)
{
    const Toml* value = table.find(key);
    return value != nullptr && value->text() != nullptr ? *value->text() : std::string();
}

std::string at(std::string_view file, const Toml& value)
{
    return std::string(file) + ':' + std::to_string(value.line) + ':' + std::to_string(value.column);
}

}  // namespace

bool isPeopleFile(std::string_view toml)
{
    const auto root = readToml(toml, "people");
    return root && listOf(*root) != nullptr;
}

Result<std::vector<DemoPerson>> readPeople(std::string_view toml, std::string_view file, Findings& notes)
{
    const auto root = readToml(toml, file);
    if (!root) return root.error();
    const Toml::Array* list = listOf(*root);
    if (list == nullptr)
        return refuse("people.none", std::string(file), "There is no [[person]] in this file.",
                      "Add a [[person]] with id, name, role, pin and passphrase for everybody.");
    std::vector<DemoPerson> people;
    for (const Toml& one : *list) {
        const std::string id = textOf(one, "id"), word = textOf(one, "role");
        const auto role = people::roleFrom(word);
        if (id.empty() || !role) {
            notes.push_back(refuse("people.wrong", at(file, one) + " person",
                                   id.empty() ? Text("A person has no id.")
                                              : Text("%1 has no role that is known: \"%2\".", {id, word}),
                                   "Give an id, and a role: operator, supervisor, trainer or trainee."));
            continue;
        }
        const auto known = std::find_if(people.begin(), people.end(), [&](const auto& p) { return p.id.value == id; });
        if (known != people.end()) {
            notes.push_back(refuse("people.twice", at(file, one) + " person", {"The id %1 stands here twice.", {id}},
                                   "Give each person an id of their own."));
            continue;
        }
        const people::Chosen chosen{textOf(one, "pin"), textOf(one, "passphrase")};
        people.push_back({people::PersonId{id}, textOf(one, "name"), *role, secretText(chosen)});
    }
    std::stable_partition(people.begin(), people.end(),
                          [](const DemoPerson& p) { return p.role == people::Role::Supervisor; });
    return people;
}

Result<std::vector<DemoPerson>> demoPeople(const std::filesystem::path& resources)
{
    const std::filesystem::path file = resources / "demo" / "people.toml";
    const auto text = readFile(file);
    if (!text) return text.error();
    Findings notes;
    auto people = readPeople(*text, file.string(), notes);
    if (people && stops(notes)) return notes.front();
    return people;
}

Result<std::vector<DemoPerson>> fillWithDemoShop(logbook::Writer& writer, const std::filesystem::path& resources)
{
    auto people = demoPeople(resources);
    if (!people) return people.error();
    const auto kept = writer.reader().people();
    if (!kept) return kept.error();
    std::optional<people::Signer> supervisor;
    for (const DemoPerson& person : *people) {
        const bool there =
            std::any_of(kept->begin(), kept->end(), [&](const auto& record) { return record.id == person.id; });
        if (!there) {
            const auto enrolled =
                people::makePerson(person.id, person.name, person.role, person.chosen, PinCost::Least);
            if (!enrolled) return enrolled.error();
            if (supervisor) {
                if (auto added = writer.addPerson(*enrolled, *supervisor); !added) return added.error();
            } else {
                const auto self = people::unlock(&*enrolled, person.chosen.passphrase);
                if (!self) return self.error();
                if (auto added = writer.addFirst(*enrolled, *self); !added) return added.error();
            }
        }
        if (!supervisor) {
            auto unlocked = writer.unlock(person.id.value, person.chosen.passphrase);
            if (!unlocked) return unlocked.error();
            supervisor = std::move(*unlocked);
        }
    }
    for (const char* what : {"press", "substrate", "job", "procedure"})
        for (const InputFile& file : shopFiles(resources, what))
            if (auto done = writer.keepDefinition(what, file.id, file.text, supervisor->actor()); !done)
                return done.error();
    return people;
}

}  // namespace taut::app
