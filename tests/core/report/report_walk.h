// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

#include "core/report/report.h"
#include "core/units/format.h"
#include "core/units/plain.h"
#include "tests/core/seal/walk.h"

// A run of the mini procedure without a store, and what a report says as plain words.
namespace taut::report::test {

struct Walk : run::mini::Walk {
    Walk() : run::mini::Walk(60'000) {}
    /// The sheet of a record, which names its press, job and substrate by hash only.
    [[nodiscard]] Report sheet(const std::optional<seal::Anchor>& anchor = {}) const
    {
        const std::string bytes = seal::write(seal::documentOf(*run));
        const run::Sources sources = run::mini::sources();
        const auto report = reportOf(seal::read(bytes).value(), anchor, [sources](auto, const std::string& sha256) {
            for (const run::Source* one : {&sources.press, &sources.job, &sources.substrate, &sources.procedure})
                if (one->sha256 == sha256) return one->text;
            return std::string();
        });
        if (!report) FAIL(report.error().code << " " << report.error().text.source);
        return *report;
    }
};

inline std::string wordsOf(const Cell& cell)
{
    if (const auto* text = std::get_if<Text>(&cell.value)) {
        // As it is printed and shown: what keeps a number beside its unit is a blank.
        std::string words = plain(*text);
        constexpr std::string_view kKept = "\u00A0";
        for (std::size_t at = 0; (at = words.find(kKept, at)) != std::string::npos;)
            words.replace(at, kKept.size(), " ");
        return words;
    }
    if (const auto* quantity = std::get_if<Quantity>(&cell.value)) return format(*quantity, UnitSystem::Metric);
    if (const auto* limits = std::get_if<Limits>(&cell.value))
        return (limits->low ? format(*limits->low, UnitSystem::Metric, Rounding::Up) : "") + ".." +
               (limits->high ? format(*limits->high, UnitSystem::Metric, Rounding::Down) : "");
    return std::holds_alternative<Ruled>(cell.value) ? "____" : "";
}

/// All sections of one kind, in order.
template <class T>
std::vector<T> allOf(const Report& report)
{
    std::vector<T> all;
    for (const Section& section : report.sections)
        if (const auto* one = std::get_if<T>(&section)) all.push_back(*one);
    return all;
}
/// The table with this caption; fails the test when there is none.
inline Table tableOf(const Report& report, const std::string& caption)
{
    for (const Table& table : allOf<Table>(report))
        if (plain(table.caption) == caption) return table;
    FAIL("no table " << caption);
    return {};
}
inline bool hasTable(const Report& report, const std::string& caption)
{
    const auto tables = allOf<Table>(report);
    return std::any_of(tables.begin(), tables.end(), [&](const Table& t) { return plain(t.caption) == caption; });
}
/// The row whose first cells, joined by a blank, hold these words.
inline std::vector<Cell> rowOf(const Table& table, const std::string& words)
{
    for (const auto& row : table.rows) {
        std::string all;
        for (const Cell& cell : row) all += wordsOf(cell) + ' ';
        if (all.find(words) != std::string::npos) return row;
    }
    FAIL("no row with " << words);
    return {};
}
/// Every word of a report, in order.
inline std::string everyWord(const Report& report)
{
    std::string all = plain(report.title) + '\n' + plain(report.subtitle) + '\n';
    for (const Section& section : report.sections) {
        if (const auto* one = std::get_if<Heading>(&section)) all += plain(one->text);
        if (const auto* one = std::get_if<Paragraph>(&section)) all += plain(one->text);
        if (const auto* one = std::get_if<Caution>(&section)) all += plain(one->text);
        if (const auto* one = std::get_if<Facts>(&section))
            for (const auto& [name, cell] : one->pairs) all += plain(name) + '=' + wordsOf(cell) + '\n';
        if (const auto* one = std::get_if<SignatureBlock>(&section)) {
            for (const auto& entry : one->entries) all += plain(entry.meaning) + ' ' + entry.name + ' ' + entry.at;
            all += plain(one->notice);
        }
        if (const auto* one = std::get_if<Table>(&section)) {
            all += plain(one->caption) + '\n';
            for (const auto& row : one->rows) {
                for (const Cell& cell : row) all += wordsOf(cell) + '|';
                all += '\n';
            }
        }
        all += '\n';
    }
    return all;
}

}  // namespace taut::report::test
