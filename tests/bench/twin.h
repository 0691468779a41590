// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace taut::bench {

/// A copy of a logbook, written in by the engine's C interface alone, set as the program sets its connection for
/// writing: what a floor is measured with.
class Twin {
public:
    explicit Twin(const std::string& file);
    ~Twin();
    Twin(const Twin&) = delete;
    Twin& operator=(const Twin&) = delete;

    /// Compiles these beforehand, so that commit() does nothing but what the disk and the rows want.
    void prepare(const std::vector<std::string>& changes);
    /// All of them in one transaction, on disk when it returns.
    void commit();
    /// "delete journal, synchronous 3, pages of 4096 bytes", as this connection has it.
    [[nodiscard]] std::string settings() const;

private:
    void step(const char* sql) const;
    [[nodiscard]] std::string value(const char* sql) const;
    sqlite3* m_db = nullptr;
    std::vector<sqlite3_stmt*> m_prepared;
    sqlite3_stmt *m_begin = nullptr, *m_commit = nullptr;
};

}  // namespace taut::bench
