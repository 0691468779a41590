// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string_view>

#include "core/logbook/database.h"

// Inside this folder only.
namespace taut::logbook {

/// Statements of one connection, each prepared when it is first used and kept: whoever writes thousands of rows
/// prepares none twice. They go before their connection does.
class Prepared {
public:
    explicit Prepared(SQLite::Database& db) : m_db(&db) {}

    /// A statement while it is in use; afterwards it holds no lock and can be used again.
    class Use {
    public:
        explicit Use(SQLite::Statement& statement) : m_statement(statement) {}
        Use(const Use&) = delete;
        Use& operator=(const Use&) = delete;
        ~Use() { m_statement.tryReset(); }
        SQLite::Statement* operator->() const { return &m_statement; }
        SQLite::Statement& operator*() const { return m_statement; }
        /// Binds the values to ?1, ?2 ... in order.
        template <class... Values>
        const Use& with(const Values&... values) const
        {
            int index = 0;
            (m_statement.bind(++index, values), ...);
            return *this;
        }

    private:
        SQLite::Statement& m_statement;
    };
    /// `sql` is a literal: it is told from others by its text, which has to stay.
    [[nodiscard]] Use operator()(std::string_view sql)
    {
        auto found = m_statements.find(sql);
        if (found == m_statements.end()) found = m_statements.try_emplace(sql, *m_db, std::string(sql)).first;
        return Use(found->second);
    }
    [[nodiscard]] SQLite::Database& db() const { return *m_db; }

private:
    SQLite::Database* m_db;
    std::map<std::string_view, SQLite::Statement> m_statements;
};

}  // namespace taut::logbook
