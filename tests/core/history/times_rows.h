// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/history/times.h"
#include "tests/core/history/fake_reader.h"

// Stages, incidents and metres of runs that nobody walked.
namespace taut::history::test {

struct Row {
    std::uint64_t seq{};
    std::string press = "north", job = "J-1", substrate = "paper", kind = "full", stage = "set";
    int hour = 8;
    std::int64_t workedMs = 30 * 60000, watchedMs = 0, awayMs = 0, externalMs = 0;
    std::int64_t begunMs = kJune;
    std::string state = "completed";
    [[nodiscard]] std::string run() const { return "run-" + std::to_string(seq); }
};
/// A stage of a run; rows are added newest run first.
inline void add(FakeReader& reader, const Row& row)
{
    reader.stageRows.push_back({row.seq, row.run(), row.press, row.job, row.substrate, row.kind, row.stage, row.begunMs,
                                row.hour, row.workedMs, row.watchedMs, row.awayMs, row.externalMs, row.state});
}
inline void add(FakeReader& reader, const Row& row, const std::string& what, const std::string& step,
                const std::string& detail = {})
{
    reader.incidentRows.push_back(
        {row.seq, row.run(), row.press, row.job, row.substrate, 1, what, step, "", detail, row.begunMs});
}
/// The metres of web that a set-up took.
inline records::Reading metres(std::uint64_t seq, double m)
{
    records::Reading one = barReading(seq, 1);
    one.target = kWebOfSetUp;
    one.unit = "m";
    one.value = m;
    one.entered = shortest(m) + " m";
    return one;
}

}  // namespace taut::history::test
