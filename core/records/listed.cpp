// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/listed.h"

#include <algorithm>
#include <array>
#include <functional>

#include "core/base/clock.h"
#include "core/records/csv.h"

namespace taut::records {

namespace {

constexpr std::size_t kPage = 500;

Json orNull(const std::string& text) { return text.empty() ? Json() : Json(text); }

/// One thing that a list says of a run.
struct Column {
    std::string_view name;
    Json (*value)(const RunRow&);
};
constexpr std::array kColumns{
    Column{"seq", [](const RunRow& row) { return Json(row.seq); }},
    Column{"run", [](const RunRow& row) { return Json(row.run); }},
    Column{"press", [](const RunRow& row) { return Json(row.press); }},
    Column{"job", [](const RunRow& row) { return Json(row.job); }},
    Column{"title", [](const RunRow& row) { return orNull(row.title); }},
    Column{"customer", [](const RunRow& row) { return orNull(row.customer); }},
    Column{"substrate", [](const RunRow& row) { return Json(row.substrate); }},
    Column{"roll", [](const RunRow& row) { return Json(row.roll); }},
    Column{"operator", [](const RunRow& row) { return Json(row.operatorName); }},
    Column{"kind", [](const RunRow& row) { return orNull(row.kind); }},
    Column{"begun", [](const RunRow& row) { return Json(utcText(row.begunMs)); }},
    Column{"ended", [](const RunRow& row) { return row.endedMs == 0 ? Json() : Json(utcText(row.endedMs)); }},
    Column{"state", [](const RunRow& row) { return Json(row.state); }},
    Column{"present", [](const RunRow& row) { return Json(row.present); }},
    Column{"verdict", [](const RunRow& row) { return orNull(row.verdict); }},
    Column{"outside", [](const RunRow& row) { return Json(row.outside); }},
    Column{"deviations", [](const RunRow& row) { return Json(row.deviations); }},
    Column{"reviewed_by", [](const RunRow& row) { return orNull(row.reviewedBy); }},
    Column{"waste_m", [](const RunRow& row) { return row.wasteM ? Json(*row.wasteM) : Json(); }},
};

std::vector<const Column*> chosen(const Columns& columns)
{
    std::vector<const Column*> out;
    if (columns.empty())
        for (const Column& column : kColumns) out.push_back(&column);
    for (const std::string& name : columns)
        for (const Column& column : kColumns)
            if (column.name == name) out.push_back(&column);
    return out;
}

/// As a table of text says it: nothing for what is not there.
std::string cell(const Json& value)
{
    if (value.isNull()) return {};
    return csvField(value.isString() ? value.text() : value.dump());
}

Result<Done> each(const Reader& reader, RunQuery& query, const std::function<void(const RunRow&)>& take)
{
    query.limit = kPage;
    std::string after;
    do {
        const auto page = reader.runs(query, after);
        if (!page) return page.error();
        for (const RunRow& row : page->rows) take(row);
        after = page->next;
    } while (!after.empty());
    return Done{};
}

}  // namespace

const std::vector<std::string_view>& runColumns()
{
    static const std::vector<std::string_view> kNames = [] {
        std::vector<std::string_view> names;
        names.reserve(kColumns.size());
        for (const Column& column : kColumns) names.push_back(column.name);
        return names;
    }();
    return kNames;
}

Result<Done> checkColumns(const Columns& columns)
{
    for (const std::string& name : columns)
        if (std::find(runColumns().begin(), runColumns().end(), name) == runColumns().end()) {
            std::string all;
            for (const std::string_view known : runColumns()) (all += all.empty() ? "" : ", ") += known;
            return refuse("runs.column", name, {"A list of runs has no column %1.", {name}},
                          {"Choose among: %1.", {all}});
        }
    return Done{};
}

Json runJson(const RunRow& row, const Columns& columns)
{
    Json object = Json::object();
    for (const Column* column : chosen(columns)) object.set(std::string(column->name), column->value(row));
    return object;
}

Result<std::string> runsCsv(const Reader& reader, RunQuery query, const Columns& columns)
{
    if (const auto fit = checkColumns(columns); !fit) return fit.error();
    const std::vector<const Column*> asked = chosen(columns);
    std::string csv;
    for (const Column* column : asked) (csv += csv.empty() ? "" : ",") += column->name;
    csv += "\r\n";
    const auto done = each(reader, query, [&](const RunRow& row) {
        for (std::size_t i = 0; i < asked.size(); ++i) {
            if (i > 0) csv += ',';
            csv += cell(asked[i]->value(row));
        }
        csv += "\r\n";
    });
    if (!done) return done.error();
    return csv;
}

Result<std::string> runsJson(const Reader& reader, RunQuery query, const Columns& columns)
{
    if (const auto fit = checkColumns(columns); !fit) return fit.error();
    Json all = Json::array();
    const auto done = each(reader, query, [&](const RunRow& row) { all.add(runJson(row, columns)); });
    if (!done) return done.error();
    return Json::object().set("runs", std::move(all)).dump() + '\n';
}

Result<std::int64_t> dayBegins(const std::string& day, int offsetMinutes)
{
    const auto midnight = readUtc(day + "T00:00:00.000Z");
    if (day.size() != 10 || !midnight)
        return refuse("day.unknown", day, {"%1 is not a date.", {day}}, "Write it as 2026-11-25.");
    return *midnight - offsetMinutes * 60000LL;
}

}  // namespace taut::records
