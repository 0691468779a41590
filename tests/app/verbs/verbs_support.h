// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "app/seams/demo_shop.h"
#include "app/verbs/story.h"
#include "core/base/json.h"

namespace taut::app::test {

/// A folder that goes away with the test.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path path() const { return m_path; }
    [[nodiscard]] std::string operator/(const std::string& name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

/// What came of a command line.
struct Ran {
    int exit = -1;
    std::string out, err;
    [[nodiscard]] Json json() const;  ///< fails the test when `out` is not one JSON object
};
/// The program as a process with no environment but PATH.
[[nodiscard]] Ran runProgram(const std::vector<std::string>& args, const std::filesystem::path& folder = {});
/// The same words through runCommand in this process: for many calls.
[[nodiscard]] Ran runInside(const std::vector<std::string>& args);
/// Any other program of this machine.
[[nodiscard]] Ran runTool(const std::string& tool, const std::vector<std::string>& args);

[[nodiscard]] std::filesystem::path resources();
[[nodiscard]] std::filesystem::path answersFile(const std::string& name);
[[nodiscard]] verbs::Answers answersOf(const std::string& name);

/// A fresh logbook with the demo shop in it and somebody who plays answers.
struct Stage {
    Folder folder;
    SteppedClock clock{{1'764'052'863'120, 60}};
    CountedIds ids;
    std::unique_ptr<logbook::Writer> writer;
    std::vector<DemoPerson> people;
    Stage();
    [[nodiscard]] Result<verbs::Told> tell(const verbs::Answers& answers, const std::string& parent = {});
};

}  // namespace taut::app::test
