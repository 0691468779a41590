// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/resources.h"

#include <algorithm>
#include <cstdlib>
#include <system_error>

#include "core/base/file.h"
#include "core/base/toml.h"

namespace taut::app {

namespace {

namespace fs = std::filesystem;

bool isFolder(const fs::path& path)
{
    std::error_code error;
    return fs::is_directory(path, error);
}

/// A variable of the environment; "" when it is not set.
std::string variable(const char* name)
{
    const char* value = std::getenv(name);
    return value == nullptr ? std::string() : std::string(value);
}

/// Our folder in one of the user's base folders (XDG base directory specification): as told, else under ~/.local.
fs::path folderOfUser(const char* told, const char* usual)
{
    if (const std::string base = variable(told); !base.empty()) return fs::path(base) / "tautweb";
    if (const std::string home = variable("HOME"); !home.empty()) return fs::path(home) / ".local" / usual / "tautweb";
    return fs::temp_directory_path() / "tautweb";
}

std::string idOf(const Toml* table)
{
    const Toml* id = table == nullptr ? nullptr : table->find("id");
    return id != nullptr && id->text() != nullptr ? *id->text() : std::string();
}

const Toml::Array* substratesOf(const Toml& root)
{
    const Toml* list = root.find("substrate");
    return list == nullptr ? nullptr : list->array();
}

/// The lines from `first` to before `last`, numbered from 1.
std::string linesOf(std::string_view text, int first, int last)
{
    std::string cut;
    int line = 1;
    for (std::size_t at = 0; at < text.size(); ++line) {
        const std::size_t end = std::min(text.find('\n', at), text.size() - 1) + 1;
        if (line >= first && line < last) cut += text.substr(at, end - at);
        at = end;
    }
    return cut;
}

/// Where in the resources folder definitions of a kind stand.
std::vector<fs::path> placesOf(const fs::path& resources, std::string_view what)
{
    if (what == "press") return {resources / "presses"};
    if (what == "job") return {resources / "demo" / "jobs"};
    if (what == "roll") return {resources / "demo" / "rolls"};
    if (what == "procedure") return {resources / "procedures"};
    return {resources / "substrates.toml"};
}

}  // namespace

Result<fs::path> resourcesFolder()
{
    std::vector<fs::path> places;
    if (const std::string told = variable("TAUTWEB_RESOURCES"); !told.empty()) {
        places.emplace_back(told);
    } else {
        std::error_code error;
        const fs::path program = fs::read_symlink("/proc/self/exe", error);
        if (!error) places.push_back(program.parent_path().parent_path() / "share" / "tautweb");
        places.emplace_back(TAUTWEB_RESOURCES_DIR);
    }
    std::string tried;
    for (const fs::path& place : places) {
        if (isFolder(place / "presses")) return place;
        tried += (tried.empty() ? "" : ", ") + place.string();
    }
    return refuse("resources.missing", "TAUTWEB_RESOURCES",
                  {"The folder with presses, substrates and procedures is not where it was looked for: %1.", {tried}},
                  "Set TAUTWEB_RESOURCES to that folder, or install the program again.");
}

fs::path dataFolder() { return folderOfUser("XDG_DATA_HOME", "share"); }

fs::path stateFolder() { return folderOfUser("XDG_STATE_HOME", "state"); }

fs::path usualLogbook() { return dataFolder() / "shop.logbook"; }

std::string substrateAlone(std::string_view toml, std::string_view id)
{
    const auto root = readToml(toml, "substrates");
    const Toml::Array* all = root ? substratesOf(*root) : nullptr;
    if (all == nullptr) return {};
    for (std::size_t i = 0; i < all->size(); ++i) {
        if (idOf(&(*all)[i]) != id) continue;
        // A table of an array of tables stands at its header or at its first key, as the parser likes: either way the
        // cut begins at the header that is nearest above, which is the line that holds "[[".
        const int next = i + 1 < all->size() ? (*all)[i + 1].line : 1 << 30;
        const std::string body = linesOf(toml, (*all)[i].line, next);
        const Toml* format = root->find("format");
        const auto* number = format == nullptr ? nullptr : std::get_if<std::int64_t>(&format->value);
        std::string cut = number == nullptr ? std::string() : "format = " + std::to_string(*number) + "\n";
        if (!body.starts_with("[[")) cut += "[[substrate]]\n";
        return cut.append(body);
    }
    return {};
}

std::vector<InputFile> definitionsIn(std::string_view what, std::string_view text, std::string_view file)
{
    std::vector<InputFile> found;
    const auto root = readToml(text, file);
    if (!root) return found;
    if (what == "substrate") {
        const Toml::Array* all = substratesOf(*root);
        if (all == nullptr) return found;
        for (const Toml& one : *all) {
            const std::string id = idOf(&one);
            if (!id.empty())
                found.push_back(
                    {id, all->size() == 1 ? std::string(text) : substrateAlone(text, id), std::string(file)});
        }
        return found;
    }
    const std::string id = idOf(root->find(what));
    if (!id.empty()) found.push_back({id, std::string(text), std::string(file)});
    return found;
}

std::vector<InputFile> shopFiles(const fs::path& resources, std::string_view what)
{
    std::vector<fs::path> files;
    for (const fs::path& place : placesOf(resources, what)) {
        std::error_code error;
        if (!isFolder(place)) {
            files.push_back(place);
            continue;
        }
        for (const auto& entry : fs::directory_iterator(place, error))
            if (entry.path().extension() == ".toml") files.push_back(entry.path());
    }
    std::vector<InputFile> found;
    for (const fs::path& file : files)
        if (const auto text = readFile(file))
            for (InputFile& one : definitionsIn(what, *text, file.filename().string())) found.push_back(std::move(one));
    std::stable_sort(found.begin(), found.end(), [](const InputFile& a, const InputFile& b) { return a.id < b.id; });
    return found;
}

}  // namespace taut::app
