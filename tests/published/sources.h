// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

// The list of sources that stands in README.md, as the tests read it.
namespace sources {

struct Entry {
    std::string title, edition, place;
};

[[nodiscard]] inline std::string readme() { return TAUTWEB_SOURCE_DIR "/tests/published/README.md"; }
[[nodiscard]] inline std::string textOf(const std::filesystem::path& path)
{
    std::ifstream file(path);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}
/// "S18a, S20" as two.
[[nodiscard]] inline std::vector<std::string> ids(const std::string& list)
{
    std::vector<std::string> all;
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t end = std::min(list.find(", ", at), list.size());
        all.push_back(list.substr(at, end - at));
        at = end + 2;
    }
    return all;
}
/// The cells of "| a | b |".
[[nodiscard]] inline std::vector<std::string> cells(const std::string& line)
{
    std::vector<std::string> all;
    for (std::size_t at = line.find("| "); at != std::string::npos;) {
        const std::size_t next = line.find(" |", at + 2);
        if (next == std::string::npos) break;
        all.push_back(line.substr(at + 2, next - at - 2));
        at = line.find("| ", next + 1);
    }
    return all;
}
/// The part of README.md under a heading, to the next.
[[nodiscard]] inline std::string under(const std::string& heading)
{
    const std::string text = textOf(readme());
    const auto start = text.find("\n## " + heading + "\n");
    if (start == std::string::npos) return {};
    return text.substr(start + 1, text.find("\n## ", start + 1) - start - 1);
}
/// What may be said where no source is named.
[[nodiscard]] inline std::vector<std::string> words()
{
    std::vector<std::string> all;
    std::istringstream lines(under("Where no source is named"));
    for (std::string line; std::getline(lines, line);)
        if (const std::vector<std::string> row = cells(line); row.size() == 2 && row[0] != "words")
            all.push_back(row[0]);
    return all;
}
/// By id; an id that stands twice keeps its first entry.
[[nodiscard]] inline std::map<std::string, Entry> list()
{
    std::map<std::string, Entry> all;
    std::istringstream lines(under("Sources"));
    for (std::string line; std::getline(lines, line);) {
        const std::vector<std::string> row = cells(line);
        if (row.size() != 4 || row[0] == "id") continue;
        for (const std::string& id : ids(row[0])) all.emplace(id, Entry{row[1], row[2], row[3]});
    }
    return all;
}

}  // namespace sources
