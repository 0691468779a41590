// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/around.h"

#include <algorithm>
#include <charconv>
#include <memory>
#include <optional>

#include "core/base/toml.h"
#include "core/inputs/inputs.h"

namespace taut::inputs {

namespace {

/// Where this stands in the file, or the table that it is missing in.
std::string subjectAt(const Toml& root, std::string_view file, const std::string& path)
{
    const Toml* at = &root;
    std::string_view rest = path;
    while (!rest.empty()) {
        const Toml* next = nullptr;
        if (rest.front() == '[') {
            const std::size_t close = rest.find(']');
            std::size_t item = 0;
            std::from_chars(rest.data() + 1, rest.data() + rest.size(), item);
            if (at->array() != nullptr && item < at->array()->size()) next = &(*at->array())[item];
            rest.remove_prefix(std::min(close, rest.size() - 1) + 1);
        } else {
            const std::size_t end = std::min(rest.find_first_of(".["), rest.size());
            next = at->find(std::string(rest.substr(0, end)));
            rest.remove_prefix(end);
        }
        if (next == nullptr) break;
        at = next;
        if (!rest.empty() && rest.front() == '.') rest.remove_prefix(1);
    }
    return std::string(file) + ':' + std::to_string(at->line) + ':' + std::to_string(at->column) + ' ' + path;
}

/// The rows that findings about a whole press name by their ids.
constexpr std::string_view kRows[] = {"web.roller", "zone", "rewind", "guide"};

/// "press.web.roller.nip.kind" as the file has it: "web.roller[4].kind".
std::string pathOfKey(const Toml& root, std::string_view key)
{
    constexpr std::string_view kPress = "press.";
    if (key.rfind(kPress, 0) != 0) return std::string(key);
    const std::string_view inFile = key.substr(kPress.size());
    for (const std::string_view rows : kRows) {
        if (inFile.rfind(std::string(rows) + '.', 0) != 0) continue;
        const std::string_view rest = inFile.substr(rows.size() + 1);
        const std::string_view id = rest.substr(0, rest.find('.'));
        const Toml* list = &root;
        for (std::string_view way = rows; list != nullptr && !way.empty();) {
            const std::size_t end = std::min(way.find('.'), way.size());
            list = list->find(std::string(way.substr(0, end)));
            way.remove_prefix(std::min(end + 1, way.size()));
        }
        if (list == nullptr || list->array() == nullptr) break;
        for (std::size_t i = 0; i < list->array()->size(); ++i) {
            const Toml* own = (*list->array())[i].find("id");
            if (own == nullptr || own->text() == nullptr || *own->text() != id) continue;
            return std::string(rows) + '[' + std::to_string(i) + ']' + std::string(rest.substr(id.size()));
        }
    }
    const std::string_view table = inFile.substr(0, inFile.find('.'));
    return std::string(root.find(std::string(table)) != nullptr ? inFile : key);
}

/// A check that does not say how often and by which step can never be told as done.
void addChecks(const Toml& root, const Press& press, std::string_view file, Findings& out)
{
    for (const Check& check : press.checks) {
        if (check.every && !check.step.empty()) continue;
        const Toml* list = root.find("check");
        for (std::size_t i = 0; i < list->array()->size(); ++i) {
            const Toml& row = (*list->array())[i];
            const Toml* id = row.find("id");
            if (id == nullptr || id->text() == nullptr || *id->text() != check.id) continue;
            // A key that is there and wrong is the reader's to tell.
            for (const auto& [key, says] :
                 {std::pair("every", check.every.has_value()), std::pair("step", !check.step.empty())})
                if (!says && row.find(key) == nullptr)
                    out.push_back({"input.check_needs",
                                   Severity::Warn,
                                   subjectAt(root, file, "check[" + std::to_string(i) + "]." + key),
                                   {"The check %1 can never be told as done: it does not say %2.", {check.name, key}},
                                   {"Enter %1.", {key}}});
        }
    }
}

/// What of a press does not fit together; what is merely worth knowing is told where a run begins.
void addPress(const Toml& root, std::string_view toml, std::string_view file, Findings& out)
{
    Findings notes;
    const Result<Press> press = readPress(toml, "", notes);
    if (!press) return;
    Inputs alone;
    alone.press = std::make_shared<const Press>(*press);
    addChecks(root, *press, file, out);
    for (Finding& finding : crossCheck(alone)) {
        if (finding.severity == Severity::Note) continue;
        finding.subject = subjectAt(root, file, pathOfKey(root, finding.subject));
        out.push_back(std::move(finding));
    }
}

void addJob(const Toml& root, std::string_view toml, std::string_view file, const Around& around, Findings& out)
{
    Findings notes;
    const Result<Job> job = readJob(toml, "", notes);
    if (!job) return;
    const auto add = [&](Severity severity, const char* code, const std::string& key, Text text, Text remedy) {
        out.push_back({code, severity, subjectAt(root, file, key), std::move(text), std::move(remedy)});
    };
    if (job->title.empty())
        add(Severity::Note, "input.no_title", "job.title", "The job has no title: lists show its id instead.",
            {"Enter %1.", {"title"}});
    const std::pair<const char*, bool> needed[] = {{"substrate", !job->substrate.empty()},
                                                   {"web_width", job->webWidth.has_value()},
                                                   {"speed", job->speed.has_value()}};
    for (const auto& [key, says] : needed) {
        const std::string path = std::string("job.") + key;
        // A key that is there and wrong is the reader's to tell.
        if (says || root.find("job")->find(key) != nullptr) continue;
        add(Severity::Warn, "input.run_needs", path, {"A run of this job needs %1, which it does not say.", {key}},
            {"Enter %1.", {key}});
    }
    const auto& known = around.substrates;
    if (!job->substrate.empty() && !known.empty() &&
        std::find(known.begin(), known.end(), job->substrate) == known.end())
        add(Severity::Warn, "input.substrate_unknown", "job.substrate",
            {"The logbook knows no substrate \"%1\": no run of this job can begin.", {job->substrate}},
            "Name one that it knows, or take that substrate in first.");
}

/// The id that it bears, and where that stands.
std::optional<std::pair<std::string, std::string>> idIn(const Toml& root, std::string_view what)
{
    const Toml* table = root.find(std::string(what));
    const bool list = table != nullptr && table->array() != nullptr;
    if (list) table = table->array()->empty() ? nullptr : &table->array()->front();
    const Toml* id = table == nullptr ? nullptr : table->find("id");
    if (id == nullptr || id->text() == nullptr) return std::nullopt;
    return std::pair(*id->text(), std::string(what) + (list ? "[0].id" : ".id"));
}

}  // namespace

Findings findingsAround(std::string_view what, std::string_view toml, std::string_view file, const Around& around)
{
    Findings out;
    const Result<Toml> root = readToml(toml, std::string(file));
    if (!root) return out;
    if (const auto id = idIn(*root, what);
        id && id->first != around.own &&
        std::find(around.taken.begin(), around.taken.end(), id->first) != around.taken.end())
        out.push_back(
            refuse("input.id_taken", subjectAt(*root, file, id->second),
                   {"The id %1 is taken: sealed, this would stand in the place of what has it now.", {id->first}},
                   "Give this one an id of its own."));
    if (what == "press") addPress(*root, toml, file, out);
    if (what == "job") addJob(*root, toml, file, around, out);
    return out;
}

}  // namespace taut::inputs
