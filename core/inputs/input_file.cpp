// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/input_file.h"

#include <array>
#include <utility>

#include "core/inputs/inputs.h"

namespace taut::inputs {

namespace {

struct FileKind {
    std::string_view key, name;
    bool list;
};
constexpr std::array<FileKind, 8> kKinds{{{"press", "press", false},
                                          {"job", "job", false},
                                          {"substrate", "substrates", true},
                                          {"roll", "roll", false},
                                          {"procedure", "procedure", false},
                                          {"answer", "answers", true},
                                          {"scenario", "scenario", false},
                                          {"action", "actions", true}}};

std::string_view kindOf(const Toml& root)
{
    for (const FileKind& kind : kKinds) {
        const Toml* value = root.find(kind.key);
        if (value == nullptr) continue;
        if (kind.list ? value->array() != nullptr : value->table() != nullptr) return kind.name;
    }
    return {};
}

const FileKind& fileKind(std::string_view name)
{
    for (const FileKind& kind : kKinds)
        if (kind.name == name) return kind;
    return kKinds.front();
}

}  // namespace

std::string whatIs(std::string_view toml)
{
    const Result<Toml> root = readToml(toml, "");
    return root ? std::string(kindOf(*root)) : std::string();
}

Result<Toml> openInput(std::string_view toml, std::string_view wanted, FileNotes& notes)
{
    Result<Toml> root = readToml(toml, notes.file());
    if (!root) return root;
    const std::string_view found = kindOf(*root);
    if (found != wanted) {
        const FileKind& kind = fileKind(wanted);
        const std::string head = kind.list ? "[[" + std::string(kind.key) + "]]" : '[' + std::string(kind.key) + ']';
        return refuse("input.not_this", notes.file(),
                      found.empty()
                          ? Text{"This file has no %1, so it is not a file of that kind.", {head}}
                          : Text{"This file is of another kind (%2): it has no %1.", {head, std::string(found)}},
                      "Choose the right file.");
    }
    const Toml* format = root->find("format");
    if (format == nullptr) {
        notes.add(1, 1, "format",
                  {"input.no_format",
                   Severity::Warn,
                   {},
                   "The file does not say which format it is written in.",
                   {"Write format = %1 in its first line; it is read as that.", {std::int64_t{kFormat}}}});
        return root;
    }
    const auto* number = std::get_if<std::int64_t>(&format->value);
    if (number == nullptr || *number < 1)
        return refuse("input.bad_format",
                      notes.file() + ':' + std::to_string(format->line) + ':' + std::to_string(format->column) +
                          " format",
                      "The format is not a whole number from 1 up.", {"Write format = %1.", {std::int64_t{kFormat}}});
    if (*number > kFormat) {
        notes.newer = true;
        notes.add(format->line, format->column, "format",
                  {"input.newer_format",
                   Severity::Note,
                   {},
                   {"The file is of format %1; this version knows %2.", {*number, std::int64_t{kFormat}}},
                   "What it does not know is ignored; a newer version reads all of it."});
    }
    return root;
}

}  // namespace taut::inputs
