// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>

#include "core/records/records.h"
#include "core/run/run.h"

namespace taut::history {

/// What people call targets, steps and stages, out of the newest run of a press that has them. A run is folded once;
/// what no run says keeps its id.
class Names {
public:
    explicit Names(const records::Reader& reader) : m_reader(reader) {}
    [[nodiscard]] Text target(const std::string& press, const std::string& id);
    [[nodiscard]] Text step(const std::string& press, const std::string& id);
    /// What a step says to do, where another is called alike.
    [[nodiscard]] Text said(const std::string& press, const std::string& id);
    [[nodiscard]] Text stage(const std::string& press, const std::string& id);
    /// Which of the step's own remedies, counted from 1; empty where no run says it.
    [[nodiscard]] Text remedy(const std::string& press, const std::string& stepId, int number);
    /// In which a press is read; for "" what the presses of the newest runs have in common, else metric.
    [[nodiscard]] UnitSystem units(const std::string& press);

private:
    /// The newest few runs of a press, one of each kind.
    [[nodiscard]] const std::vector<run::Run>& runsOf(const std::string& press);
    const records::Reader& m_reader;
    std::map<std::string, std::vector<run::Run>> m_runs;
};

/// "2026-03-04" of a moment where the clock stands so many minutes from UTC.
[[nodiscard]] std::string dayText(std::int64_t utcMs, int offsetMinutes);

}  // namespace taut::history
