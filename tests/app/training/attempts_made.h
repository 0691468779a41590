// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/id_source.h"
#include "core/logbook/training.h"
#include "core/practice/attempt.h"
#include "tests/core/practice/basis.h"

// Attempts as the practice press keeps them, made without anybody at the window.
namespace taut::app::shop {

/// A test about the walk round the press: right from the beginning, or with a guard that stands open and is not seen.
inline practice::Attempt walkRound(const practice::Who& who, bool right, std::int64_t atMs)
{
    const std::string text = "format = 1\n[scenario]\nid = \"round\"\ntitle = \"Once round for practice\"\npress = "
                             "\"north\"\njob = \"J-2101\"\n"
                             "roll = \"R0041\"\nseed = 3\nmode = \"test\"\nparts = [\"safety.walk_round\"]\n";
    Findings notes;
    const auto scenario = practice::readScenario(text, "s.toml", notes);
    REQUIRE(scenario);
    auto lesson = practice::Lesson::begin(practice::shift::basis(), *scenario);
    REQUIRE(lesson);
    const auto press = demo::press("north");
    for (const auto& guard : press->guards)
        if (right || guard.id != "outfeed_guard") (void)lesson->perform(practice::Deed{"guard", guard.id});
    for (const practice::Item& item : practice::itemsOf(lesson->basis().plan, lesson->scenario().parts)) {
        const procedure::Step* step = lesson->basis().plan.find({item.step});
        (void)lesson->perform(practice::Answer{item.step, step->choices.empty() ? "yes" : step->choices.front().word});
    }
    practice::Attempt made =
        practice::attemptOf(*lesson, run::sourceOf("round", 0, text), who, {}, {atMs, 60}, {atMs + 400000, 60});
    REQUIRE(made.score.passed() == right);
    return made;
}

/// Keeps attempts in the practice logbook of this file, which is begun where there is none.
inline void keepAttempts(const std::filesystem::path& file, const std::vector<practice::Attempt>& attempts)
{
    SystemClock clock;
    RandomIds ids;
    logbook::Writer::Options options;
    options.practice = true;
    auto writer = logbook::Writer::open(file, clock, ids, options);
    REQUIRE(writer);
    for (const practice::Attempt& one : attempts) REQUIRE((*writer)->keepAttempt(one));
}

}  // namespace taut::app::shop
