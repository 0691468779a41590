// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/console.h"

#include <algorithm>
#include <array>
#include <ostream>

#include "core/base/utf8.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

/// Beginnings of codes and what they mean for a script; the longest that fits holds.
struct Meaning {
    std::string_view code;
    Exit exit;
};
constexpr std::array<Meaning, 27> kMeanings{{
    {"gate.", Exit::Refused},
    {"answer.", Exit::Refused},
    {"run.", Exit::Refused},
    {"press.", Exit::Refused},
    {"person.", Exit::Refused},
    {"role.", Exit::Refused},
    {"sign_in.", Exit::Refused},
    {"sign_off.", Exit::Refused},
    {"demo.", Exit::Refused},
    {"file.unwritable", Exit::Machine},
    {"folder.", Exit::Machine},
    {"logbook.", Exit::Machine},
    {"logbook.missing", Exit::WrongInput},
    {"logbook.not_", Exit::WrongInput},
    {"logbook.practice", Exit::WrongInput},
    {"logbook.older_schema", Exit::WrongInput},
    {"logbook.newer_schema", Exit::WrongInput},
    {"logbook.broken", Exit::WrongInput},
    {"logbook.mirror", Exit::WrongInput},
    {"logbook.on_", Exit::WrongInput},
    {"keep.read_only", Exit::Machine},
    {"resources.missing", Exit::Machine},
    {"font.", Exit::Machine},
    {"print.", Exit::Machine},
    {"window.", Exit::Machine},
    {"machine.", Exit::Machine},
    {"run.unknown", Exit::WrongInput},
}};

}  // namespace

Exit exitFor(const Finding& finding)
{
    std::size_t longest = 0;
    Exit exit = Exit::WrongInput;
    for (const Meaning& meaning : kMeanings)
        if (finding.code.rfind(meaning.code, 0) == 0 && meaning.code.size() > longest) {
            longest = meaning.code.size();
            exit = meaning.exit;
        }
    return exit;
}

Exit refused(const Console& console, bool json, const Finding& finding)
{
    return refused(console, json, Findings{finding});
}

Exit refused(const Console& console, bool json, const Findings& findings)
{
    for (const Finding& finding : findings) console.err << "tautweb: " << sentence(finding) << '\n';
    if (json) print(console, answer().set("findings", findingsJson(findings)));
    for (const Finding& finding : findings)
        if (finding.severity == Severity::Stop) return exitFor(finding);
    return findings.empty() ? Exit::WrongInput : exitFor(findings.front());
}

void noted(const Console& console, const Findings& findings)
{
    for (const Finding& finding : findings) console.err << "tautweb: " << sentence(finding) << '\n';
}

Exit worst(const Findings& findings, Exit otherwise)
{
    for (const Finding& finding : findings)
        if (finding.severity != Severity::Note) return Exit::NotInOrder;
    return otherwise;
}

Json answer() { return Json::object().set("format", 1); }

Json findingsJson(const Findings& findings)
{
    Json all = Json::array();
    for (const Finding& finding : findings) all.add(findingJson(finding));
    return all;
}

void print(const Console& console, const Json& json) { console.out << json.dump() << '\n'; }

std::size_t columnsOf(std::string_view text) { return charactersIn(text); }

std::string table(const std::vector<std::vector<std::string>>& rows)
{
    std::vector<std::size_t> widths;
    for (const auto& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (widths.size() <= i) widths.push_back(0);
            widths[i] = std::max(widths[i], columnsOf(row[i]));
        }
    std::string text;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            line += row[i];
            if (i + 1 < row.size()) line.append(widths[i] - columnsOf(row[i]) + 2, ' ');
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + '\n';
    }
    return text;
}

}  // namespace taut::app::verbs
