// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/translations.h"

#include <algorithm>
#include <system_error>

#include "core/base/file.h"
#include "core/procedure/translation.h"

namespace taut::app {

namespace {

bool fits(const procedure::Procedure& procedure, const std::string& text, const std::string& file)
{
    Findings lint;
    return procedure::translated(procedure, text, file, lint) && !stops(lint);
}

}  // namespace

run::Source translationFor(const std::filesystem::path& resources, const run::Source& procedure,
                           std::string_view language)
{
    Findings notes;
    const auto read = procedure::readProcedure(procedure.text, procedure.id, notes);
    if (!read || read->language == language) return {};
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(resources / "procedures", error)) {
        if (entry.path().extension() != ".toml") continue;
        const auto text = readFile(entry.path());
        const auto head = text ? procedure::translationHead(*text) : std::nullopt;
        if (!head || head->procedure != read->id || head->language != language) continue;
        if (fits(*read, *text, entry.path().filename().string())) return run::sourceOf(head->language, 0, *text);
    }
    return {};
}

}  // namespace taut::app
