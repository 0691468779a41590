// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/listed.h"

#include <functional>

#include "core/base/clock.h"
#include "core/records/csv.h"

namespace taut::records {

namespace {

constexpr std::size_t kPage = 500;

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

Json runJson(const RunRow& row)
{
    const auto orNull = [](const std::string& text) { return text.empty() ? Json() : Json(text); };
    return Json::object()
        .set("seq", row.seq)
        .set("run", row.run)
        .set("press", row.press)
        .set("job", row.job)
        .set("title", orNull(row.title))
        .set("customer", orNull(row.customer))
        .set("substrate", row.substrate)
        .set("roll", row.roll)
        .set("operator", row.operatorName)
        .set("kind", orNull(row.kind))
        .set("begun", utcText(row.begunMs))
        .set("ended", row.endedMs == 0 ? Json() : Json(utcText(row.endedMs)))
        .set("state", row.state)
        .set("present", row.present)
        .set("verdict", orNull(row.verdict))
        .set("outside", row.outside)
        .set("deviations", row.deviations)
        .set("reviewed_by", orNull(row.reviewedBy));
}

Result<std::string> runsCsv(const Reader& reader, RunQuery query)
{
    std::string csv = "seq,run,press,job,title,customer,substrate,roll,operator,kind,begun,ended,state,present,verdict,"
                      "outside,deviations,reviewed_by\r\n";
    const auto done = each(reader, query, [&](const RunRow& row) {
        csv += std::to_string(row.seq);
        for (const std::string& text :
             {row.run, row.press, row.job, row.title, row.customer, row.substrate, row.roll, row.operatorName, row.kind,
              utcText(row.begunMs), row.endedMs == 0 ? std::string() : utcText(row.endedMs), row.state, row.present,
              row.verdict, std::to_string(row.outside), std::to_string(row.deviations), row.reviewedBy})
            csv += ',' + csvField(text);
        csv += "\r\n";
    });
    if (!done) return done.error();
    return csv;
}

Result<std::string> runsJson(const Reader& reader, RunQuery query)
{
    Json all = Json::array();
    const auto done = each(reader, query, [&](const RunRow& row) { all.add(runJson(row)); });
    if (!done) return done.error();
    return Json::object().set("runs", std::move(all)).dump() + '\n';
}

}  // namespace taut::records
