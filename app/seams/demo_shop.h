// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/logbook/logbook.h"
#include "core/people/person.h"

namespace taut::app {

/// One of the invented people of the demo shop, with what signs them in and what they sign with: demo data, no secret.
struct DemoPerson {
    people::PersonId id;
    std::string name;
    people::Role role{};
    people::Chosen chosen;
};
/// Whether a file is a list of people: it has [[person]].
[[nodiscard]] bool isPeopleFile(std::string_view toml);
/// Reads [[person]] id, name, role, pin, passphrase. What is wrong with one of them stands in `notes` (people.*) and
/// leaves that one out.
[[nodiscard]] Result<std::vector<DemoPerson>> readPeople(std::string_view toml, std::string_view file, Findings& notes);
/// The people of resources/demo/people.toml; the first supervisor stands first.
[[nodiscard]] Result<std::vector<DemoPerson>> demoPeople(const std::filesystem::path& resources);

/// Fills a logbook with the demo shop: its people and every press, substrate, job and procedure of the resources. What
/// is there already is left as it is, so it may be called again.
[[nodiscard]] Result<std::vector<DemoPerson>> fillWithDemoShop(logbook::Writer& writer,
                                                               const std::filesystem::path& resources);

}  // namespace taut::app
