// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/readings.h"
#include "core/run/attachment.h"

namespace taut::report {

namespace {

constexpr std::size_t kDigits = 16;  // of the hash: enough to tell one picture from another by eye

Text sizeText(std::int64_t bytes)
{
    constexpr std::int64_t kKilo = 1000, kMega = 1'000'000;
    if (bytes < kMega) return {"%1 kB", {(bytes + kKilo - 1) / kKilo}};
    return {"%1 MB", {(bytes + kMega - 1) / kMega}};
}

}  // namespace

std::optional<Table> attachmentsTable(const run::Run& run)
{
    Table table;
    table.caption = "Pictures and files";
    table.size = Size::Small;
    table.columns = {{"at", Align::Left, 10},   {"beside", Align::Left, 24},  {"name", Align::Left, 20},
                     {"what", Align::Left, 12}, {"SHA-256", Align::Left, 14}, {"by", Align::Left, 12}};
    for (const run::Attachment& one : run::attachmentsOf(run)) {
        const procedure::Step* step = run.plan().find(one.what.step);
        table.rows.push_back({cell(data(timeInRun(run, one.stamp.utcMs, one.stamp.offsetMinutes))),
                              step == nullptr ? cell("the run") : cell(nameOf(*step, run.targets().find(step->target))),
                              cell(data(one.what.name)),
                              cell(Text("%1, %2", {std::vector<Text>{run::typeSaid(one.what.type)},
                                                   std::vector<Text>{sizeText(one.what.size)}})),
                              cell(data(one.what.sha256.substr(0, kDigits))), cell(data(one.stamp.byName))});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

}  // namespace taut::report
