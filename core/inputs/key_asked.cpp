// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/key_asked.h"

#include <charconv>

#include "core/inputs/parts.h"

namespace taut::inputs {

namespace {

template <class Read>
Looked lookedAt(std::string_view toml, Read read)
{
    Looked out;
    FileNotes notes("");
    notes.asked = &out.asked;
    if (const auto value = read(toml, notes))
        notes.moveTo(out.findings);
    else
        out.findings.push_back(value.error());
    return out;
}

}  // namespace

Looked lookAt(std::string_view what, std::string_view toml)
{
    const auto as = [&](auto read) { return lookedAt(toml, read); };
    if (what == "job") return as([](std::string_view t, FileNotes& n) { return readJob(t, n); });
    if (what == "substrate") return as([](std::string_view t, FileNotes& n) { return readSubstrates(t, n); });
    if (what == "roll") return as([](std::string_view t, FileNotes& n) { return readRoll(t, n); });
    return as([](std::string_view t, FileNotes& n) { return readPress(t, n); });
}

FoundAt foundAt(const Finding& finding)
{
    const std::string& subject = finding.subject;
    FoundAt out;
    const std::size_t colon = subject.find(':');
    if (colon == std::string::npos) return out;
    const char* const end = subject.data() + subject.size();
    std::from_chars(subject.data() + colon + 1, end, out.line);
    const std::size_t blank = subject.find(' ', colon);
    if (blank != std::string::npos) out.path = subject.substr(blank + 1);
    return out;
}

}  // namespace taut::inputs
