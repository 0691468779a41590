// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <span>

#include "tests/core/people/crew.h"
#include "tests/core/seal/mini_run.h"

namespace taut::run::mini {

/// A run without a store; something happens every so often.
struct Walk {
    people::test::Member first = people::test::member("p-2", "Inka Thorsby", people::Role::Operator);
    people::test::Member second = people::test::member("p-1", "Matteo Quill", people::Role::Supervisor);
    people::Actor inka = first.actor, matteo = second.actor;
    std::shared_ptr<const people::Signer> accepts = second.signer;
    std::int64_t now = 1'764'052'863'120, betweenMs;
    Basis basis;
    std::optional<Run> run;
    explicit Walk(std::int64_t everyMs = 1000) : betweenMs(everyMs), basis(basisFor(sources(), {}).value())
    {
        const auto event = begin(basis, {"north-2025-11-25-01", "pc-1", false, {}, nullptr}, stamp(inka), inka);
        REQUIRE(event);
        run = Run::fold(std::span(&*event, 1));
    }
    Stamp stamp(const people::Actor& by)
    {
        now += betweenMs;
        return {run ? run->events().size() + 1 : 1, now, 60, by.id(), by.name(), people::roleWord(by.role())};
    }
    void must(const Command& command) { must(command, inka); }
    void must(const Command& command, const people::Actor& by)
    {
        const auto event = decide(*run, command, stamp(by), by);
        if (!event) FAIL(event.error().code << " " << event.error().subject << " " << event.error().text.source);
        run = run->after(*event);
    }
    void answerAll() { answerAll(inka); }
    void answerAll(const people::Actor& by)
    {
        while (const auto next = run->next()) must(Answer{*next, entryFor(*run, *run->plan().find(*next)), {}}, by);
    }
    /// Every open step before this one ("" = every open step), each in the middle of its window.
    void answerUpTo(const std::string& step = {})
    {
        while (const auto next = run->next()) {
            if (next->value == step) return;
            must(Answer{*next, entryFor(*run, *run->plan().find(*next)), {}});
        }
    }
};

}  // namespace taut::run::mini
