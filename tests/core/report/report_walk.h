// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

#include "core/report/report.h"
#include "core/units/format.h"
#include "core/units/plain.h"
#include "tests/core/people/crew.h"
#include "tests/core/seal/mini_run.h"

// A run of the mini procedure without a store, and what a report says as plain words.
namespace taut::report::test {

struct Walk {
    people::test::Member first = people::test::member("p-2", "Inka Thorsby", people::Role::Operator);
    people::test::Member second = people::test::member("p-1", "Matteo Quill", people::Role::Supervisor);
    people::Actor inka = first.actor, matteo = second.actor;
    std::shared_ptr<const people::Signer> accepts = second.signer;
    std::int64_t now = 1'764'052'863'120;
    run::Basis basis;
    std::optional<run::Run> run;

    Walk() : basis(run::basisFor(run::mini::sources(), {}).value())
    {
        const auto event = run::begin(basis, {"north-2025-11-25-01", "pc-1", false, {}, nullptr}, stamp(inka), inka);
        REQUIRE(event);
        run = run::Run::fold(std::span(&*event, 1));
    }
    run::Stamp stamp(const people::Actor& by)
    {
        now += 60'000;
        return {run ? run->events().size() + 1 : 1, now, 60, by.id(), by.name(), people::roleWord(by.role())};
    }
    void must(const run::Command& command) { must(command, inka); }
    void must(const run::Command& command, const people::Actor& by)
    {
        const auto event = run::decide(*run, command, stamp(by), by);
        if (!event) FAIL(event.error().code << " " << event.error().subject << " " << event.error().text.source);
        run = run->after(*event);
    }
    /// Every open step before this one ("" = every open step), each in the middle of its window.
    void answerUpTo(const std::string& step = {})
    {
        while (const auto next = run->next()) {
            if (next->value == step) return;
            must(run::Answer{*next, run::mini::entryFor(*run, *run->plan().find(*next)), {}});
        }
    }
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
    if (const auto* text = std::get_if<Text>(&cell.value)) return plain(*text);
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
