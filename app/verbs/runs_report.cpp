// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/print/print.h"
#include "app/verbs/verbs.h"
#include "core/base/clock.h"
#include "core/history/week.h"

namespace taut::app::verbs {

Exit weekReports(const records::Reader& reader, const records::RunQuery& query, const Options& options,
                 const Console& console)
{
    const bool json = options.json();
    const std::filesystem::path folder = options.value("--report");
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error)
        return refused(
            console, json,
            refuse("folder.unwritable", folder.string(),
                   {"The folder %1 cannot be made; the system says: %2.", {folder.string(), error.message()}},
                   "Name one in which this user may write."));
    const auto all = reader.definitions("press");
    if (!all) return refused(console, json, all.error());
    std::vector<std::string> presses;
    for (const run::Source& press : *all)
        if (query.press.empty() || query.press == press.id) presses.push_back(press.id);
    if (presses.empty() && !query.press.empty())
        return refused(console, json,
                       refuse("press.unknown", query.press, {"This logbook knows no press %1.", {query.press}},
                              "tautweb runs lists the runs with their presses."));
    const Instant now = SystemClock().now();
    const std::int64_t begin = history::weekBegin(query.sinceMs.value_or(now.utcMs), now.offsetMinutes);
    history::Names names(reader);
    Json files = Json::array();
    for (const std::string& press : presses) {
        const auto report = history::weekReport(reader, press, begin, names, now.offsetMinutes);
        if (!report) return refused(console, json, report.error());
        const std::filesystem::path file = folder / (press + '-' + history::dayText(begin, now.offsetMinutes) + ".pdf");
        const auto printed = print::writePdf(*report, file, print::paperFor(*report));
        if (!printed) return refused(console, json, printed.error());
        files.add(Json::object().set("press", press).set("file", file.string()).set("pages", printed->pages));
        if (!json) console.out << press << ": " << file.string() << '\n';
    }
    if (json) print(console, answer().set("reports", std::move(files)));
    return Exit::Done;
}

}  // namespace taut::app::verbs
