// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "app/made/story.h"
#include "app/seams/demo_shop.h"
#include "core/logbook/logbook.h"

namespace taut::app::made {

/// A job of a history: one of the demo's with another name and number, so that there is something to look for.
struct MadeJob {
    std::string_view press, id, of;  ///< of: the demo job whose figures it has
    std::string_view title, reference, quantity;
    std::string_view substrate, roll;  ///< roll: the demo roll of which its rolls are made
};
[[nodiscard]] std::span<const MadeJob> madeJobs();
/// Which of madeJobs() a press runs.
[[nodiscard]] std::vector<Index> jobsOf(std::string_view press);

/// Operators of a history by shift and press: two of the demo's people, and more of whom nobody needs to sign in.
struct MadePerson {
    std::string_view id, name;
};
[[nodiscard]] std::span<const MadePerson> madeOperators();
/// Who has a press in a shift of a day: crews change their shift every week.
[[nodiscard]] Index operatorAt(int press, Day day, int shift);

/// The short procedure, as a file of procedures has it.
[[nodiscard]] std::string_view briefProcedure();
inline constexpr std::string_view kBriefId = "short_start";

/// Everybody and everything that a made logbook begins with, and what its runs are begun from. Their keys follow from
/// the seed, so that the same wish gives the same bytes: keys of a demo, which protect nothing.
class Shop {
public:
    /// Fills a logbook that has nobody in it yet with the demo shop and what a history needs beside it; its definitions
    /// are sealed by the first supervisor.
    [[nodiscard]] static Result<Shop> fill(logbook::Writer& writer, const std::filesystem::path& resources,
                                           const Wish& wish);

    [[nodiscard]] std::uint64_t seed() const { return m_seed; }
    [[nodiscard]] bool isBrief() const { return m_procedure.id == kBriefId; }
    [[nodiscard]] const std::string& workplace() const { return m_workplace; }
    [[nodiscard]] const people::Signer& operatorAt(Index who) const { return *m_operators[who]; }
    /// One of the two supervisors, who have no run in hand ever.
    [[nodiscard]] const std::shared_ptr<const people::Signer>& supervisor(std::size_t which) const
    {
        return m_supervisors[which % m_supervisors.size()];
    }
    /// nullptr: nobody of this name.
    [[nodiscard]] const people::Signer* named(std::string_view name) const;
    /// What a run of this tale is begun from.
    [[nodiscard]] run::Sources sources(const Tale& tale) const;
    /// The text of a press's profile in that edition, as a supervisor changes it under way.
    [[nodiscard]] const run::Source& press(const std::string& id, int edition) const
    {
        return m_presses.at(id)[static_cast<std::size_t>(edition) - 1];
    }
    [[nodiscard]] std::string rollText(const MadeJob& job, const MadeRoll& roll) const;

private:
    std::uint64_t m_seed = 0;
    std::string m_workplace;
    std::vector<std::shared_ptr<const people::Signer>> m_operators, m_supervisors;
    std::map<std::string, std::vector<run::Source>, std::less<>> m_presses;
    std::map<std::string, run::Source, std::less<>> m_jobs, m_substrates;
    std::map<std::string, std::string, std::less<>> m_rolls;  ///< texts of the masters
    run::Source m_procedure;
};

}  // namespace taut::app::made
