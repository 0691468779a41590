// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/seams/demo_shop.h"
#include "app/verbs/answers.h"
#include "core/base/clock.h"
#include "core/logbook/open_run.h"

namespace taut::app::verbs {

/// A run played from an answers file and sealed.
struct Told {
    std::string runId;
    seal::Seal seal;
    run::Run run;
    std::vector<std::string> happened;  ///< what was out of the ordinary, one plain sentence each, in order
};

/// Plays answers files through the one door: the same commands and gates as a hand on a screen, nothing filled in
/// between. The clock steps forward by what each entry took.
class Storyteller {
public:
    /// Writes into this logbook, by this clock.
    Storyteller(logbook::Writer& writer, SteppedClock& clock, const std::filesystem::path& resources,
                std::vector<DemoPerson> people);

    /// Begins the run, gives every answer, ends it and seals it. The error's subject is the id of the step at which it
    /// stopped: the one that is missing, or whose answer is wrong (demo.missing_answer, demo.unknown_step,
    /// demo.person, gate.*, answer.* ...). parent: the run that this one continues, "" = none.
    [[nodiscard]] Result<Told> tell(const Answers& answers, const std::string& parent);

    /// How long the entries of a file take, for a clock that should end now.
    [[nodiscard]] static std::int64_t milliseconds(const Answers& answers);

private:
    using Outcome = Result<Done>;
    [[nodiscard]] Result<const people::Actor*> actor(const std::string& id);
    [[nodiscard]] Result<std::shared_ptr<const people::Signer>> signer(const std::string& id);
    [[nodiscard]] Result<people::Chosen> chosenBy(const std::string& id) const;
    [[nodiscard]] Result<logbook::OpenRun> begin(const Answers& answers, const std::string& parent);
    [[nodiscard]] Outcome play(const AnswerEntry& entry, const Answers& answers, logbook::OpenRun& open);
    [[nodiscard]] Outcome perform(logbook::OpenRun& open, const run::Command& command, const std::string& by,
                                  const std::string& stoppedAt);
    [[nodiscard]] Result<std::optional<run::Command>> commandFor(const AnswerEntry& entry);
    void remember(const AnswerEntry& entry, const run::Run& run);

    logbook::Writer& m_writer;
    SteppedClock& m_clock;
    std::filesystem::path m_resources;
    std::vector<DemoPerson> m_people;
    std::map<std::string, people::Actor> m_actors;
    std::map<std::string, std::shared_ptr<const people::Signer>> m_signers;
    std::string m_by;
    std::vector<std::string> m_happened;
};

}  // namespace taut::app::verbs
