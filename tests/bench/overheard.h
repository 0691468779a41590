// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/records/records.h"

struct sqlite3;

namespace taut::bench {

/// The SQL that the engine hears while this question is asked of a logbook, each statement with its values in it, over
/// a connection of the program's own.
[[nodiscard]] std::vector<std::string> overheard(const std::string& file,
                                                 const std::function<void(const records::Reader&)>& question);

/// Connections opened in `open` can be heard from then on.
void makeHeard(const std::function<void()>& open);
/// What they are told to change while this is done: the statements of the program, not those that the engine makes of
/// them for triggers and the search.
[[nodiscard]] std::vector<std::string> heardChanges(const std::function<void()>& work);

/// The engine's C interface without any code of ours: statements prepared each time, as the program does, every column
/// of every row read.
class Plain {
public:
    /// Set as the program sets a connection for reading.
    explicit Plain(const std::string& file);
    /// How many rows all of them gave.
    std::size_t run(const std::vector<std::string>& statements) const;
    [[nodiscard]] std::int64_t number(const std::string& sql) const;

private:
    std::shared_ptr<sqlite3> m_db;
};

}  // namespace taut::bench
