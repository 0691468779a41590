// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include "core/base/finding.h"

namespace taut::app {

/// Watches over this program while it lives: one that ends by a fault leaves a log `ended-NUMBER.log` in the folder.
/// It says which program, when, what ended it and where in its code; no name, no reading, no file name, nothing that
/// anybody entered. One that ends in order, is ended from outside, or loses its power, leaves none. One at a time, from
/// the main thread; where no log can be kept the program works without.
class CrashLog {
public:
    explicit CrashLog(const std::filesystem::path& folder);
    ~CrashLog();
    CrashLog(const CrashLog&) = delete;
    CrashLog& operator=(const CrashLog&) = delete;

private:
    std::filesystem::path m_file;
    int m_log = -1;
};

/// The logs of programs that ended by a fault and were not told of yet, oldest first; those of programs that still run
/// are not among them. What is left behind of one that lost its power goes.
[[nodiscard]] std::vector<std::filesystem::path> untoldCrashLogs(const std::filesystem::path& folder);
/// What is said of the last of them. Code program.ended_by_itself; the subject is the log's path.
[[nodiscard]] Finding toldOf(const std::filesystem::path& log);
/// Somebody has read it: the log stays, under a name of its own, and the five newest of such are kept.
void markTold(const std::vector<std::filesystem::path>& logs);

}  // namespace taut::app
