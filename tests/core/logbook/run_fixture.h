// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/open_run.h"
#include "core/records/texts.h"
#include "tests/core/logbook/logbook_fixture.h"
#include "tests/core/seal/mini_run.h"

namespace taut::logbook::test {

/// A shop whose logbook keeps what the mini run is begun from.
struct Press : Shop {
    run::Sources sources = run::mini::sources();
    Press()
    {
        enrol();
        keep();
    }
    void keep()
    {
        const people::Actor matteo = actor("p-1");
        const auto put = [&](const char* what, run::Source& source) {
            auto kept = writer->keepDefinition(what, source.id, source.text, matteo);
            REQUIRE(kept);
            source = *kept;
        };
        put("press", sources.press);
        put("job", sources.job);
        put("substrate", sources.substrate);
        put("procedure", sources.procedure);
    }
    [[nodiscard]] OpenRun begin() { return begin({sources, {}, {}}); }
    [[nodiscard]] OpenRun begin(const OpenRun::Beginning& beginning)
    {
        auto open = OpenRun::begin(*writer, beginning, actor("p-2"));
        if (!open) FAIL(open.error().code << " " << open.error().text.source);
        return std::move(*open);
    }
};

inline void must(OpenRun& open, const run::Command& command, const people::Actor& by)
{
    const auto done = open.perform(command, by);
    if (!done) FAIL(done.error().code << " " << done.error().subject << " " << done.error().text.source);
}
/// Answers the next step; false when none is open.
inline bool answerNext(OpenRun& open, const people::Actor& by)
{
    const auto next = open.run().next();
    if (!next) return false;
    must(open, run::Answer{*next, run::mini::entryFor(open.run(), *open.run().plan().find(*next)), {}}, by);
    return true;
}
inline void answerAll(OpenRun& open, const people::Actor& by)
{
    while (answerNext(open, by)) {
    }
}
inline run::Resume resumed() { return {{std::begin(run::kMakeSafe), std::end(run::kMakeSafe)}, false}; }

}  // namespace taut::logbook::test
