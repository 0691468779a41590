// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/csv.h"

#include <algorithm>

namespace taut::records {

namespace {

constexpr const char* kHead = "seq,run,press,job,substrate,roll,step,target,entered,value,low,high,uncertainty,unit,"
                              "verdict,doubtful,state,at,person,name,present";

/// A number as the shortest text that reads back the same; nothing where there is none.
std::string field(const Json& value)
{
    if (value.isNumber()) return value.isWhole() ? std::to_string(value.integer()) : shortest(value.number());
    if (value.isBool()) return value.boolean() ? "yes" : "no";
    return csvField(value.text());
}

std::string nameOf(const Json& run, const std::string& id)
{
    for (const Json& person : run["people"].items())
        if (person["id"].text() == id) return person["name"].text();
    return {};
}

Result<Done> append(std::string& csv, const seal::Seal& seal, std::string_view present)
{
    const auto document = seal::read(seal.document);
    if (!document) return document.error();
    const Json& run = document->body;
    const Json& inputs = run["inputs"];
    for (const Json& step : seal::stepsOf(run)) {
        if (!step["value"].isNumber()) continue;
        csv += std::to_string(seal.seq) + ',' + field(run["id"]);
        for (const char* input : {"press", "job", "substrate", "roll"}) csv += ',' + field(inputs[input]["id"]);
        for (const char* key : {"step", "target", "entered", "value", "low", "high", "uncertainty", "unit", "verdict",
                                "doubtful", "state", "at", "by"})
            csv += ',' + field(step[key]);
        csv += ',' + csvField(nameOf(run, step["by"].text())) + ',' + csvField(std::string(present)) + "\r\n";
    }
    return Done{};
}

}  // namespace

std::string csvField(std::string text)
{
    constexpr std::string_view kFormula = "=+-@\t\r";
    if (!text.empty() && kFormula.find(text.front()) != std::string_view::npos) text.insert(0, 1, '\'');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
    return quoted + '"';
}

Result<std::string> readingsCsv(const Reader& reader, const RunQuery& query)
{
    std::vector<std::pair<std::uint64_t, std::string>> seals;
    std::string after;
    do {
        const auto page = reader.runs(query, after);
        if (!page) return page.error();
        for (const RunRow& row : page->rows)
            if (row.seq > 0) seals.emplace_back(row.seq, row.present);
        after = page->next;
    } while (!after.empty());
    std::sort(seals.begin(), seals.end());
    std::string csv = std::string(kHead) + "\r\n";
    for (const auto& [seq, present] : seals) {
        const auto seal = reader.seal(seq);
        if (!seal) return seal.error();
        if (const auto done = append(csv, *seal, present); !done) return done.error();
    }
    return csv;
}

Result<std::string> readingsCsvOf(const seal::Seal& run, std::string_view present)
{
    std::string csv = std::string(kHead) + "\r\n";
    if (const auto done = append(csv, run, present); !done) return done.error();
    return csv;
}

}  // namespace taut::records
