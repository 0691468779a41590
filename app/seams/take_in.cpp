// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/take_in.h"

#include <algorithm>

#include "app/seams/resources.h"
#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/inputs/around.h"
#include "core/inputs/inputs.h"
#include "core/procedure/procedure.h"

namespace taut::app {

namespace {

/// The first thing that stops a file from being used; notes and warnings do not.
template <class Read>
std::optional<Finding> firstWrong(const Read& read, const std::string& text, const std::string& name)
{
    Findings notes;
    const auto value = read(text, name, notes);
    if (!value) return value.error();
    const auto stop =
        std::find_if(notes.begin(), notes.end(), [](const Finding& f) { return f.severity == Severity::Stop; });
    return stop == notes.end() ? std::nullopt : std::optional(*stop);
}

std::optional<Finding> wrongIn(const std::string& is, const std::string& text, const std::string& name)
{
    if (is == "press") return firstWrong(inputs::readPress, text, name);
    if (is == "job") return firstWrong(inputs::readJob, text, name);
    if (is == "substrates") return firstWrong(inputs::readSubstrates, text, name);
    if (is == "procedure") return firstWrong(procedure::readProcedure, text, name);
    return refuse("take_in.not_a_definition", name, {"%1 holds no press, job, substrate or procedure.", {name}},
                  "Choose a file that has [press], [job], [[substrate]] or [procedure] in it.");
}

}  // namespace

Result<Done> takeInFile(logbook::Writer& writer, const std::filesystem::path& file, const people::Actor& by)
{
    const auto text = readFile(file);
    if (!text) return text.error();
    return takeInText(writer, *text, file.filename().string(), by);
}

Result<Done> takeInText(logbook::Writer& writer, const std::string& text, const std::string& name,
                        const people::Actor& by)
{
    const std::string is = inputs::whatIs(text);
    if (const auto root = readToml(text, name); !root) return root.error();
    if (auto wrong = wrongIn(is, text, name)) return *wrong;
    // A press that cannot be threaded would be kept for nothing: no run begins on it.
    for (const Finding& one : inputs::findingsAround(is, text, name, {}))
        if (one.severity == Severity::Stop) return one;
    const std::string what = is == "substrates" ? "substrate" : is;
    for (const InputFile& one : definitionsIn(what, text, name))
        if (auto kept = writer.keepDefinition(what, one.id, one.text, by); !kept) return kept.error();
    return Done{};
}

}  // namespace taut::app
