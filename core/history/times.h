// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/records/records.h"
#include "core/stats/summary.h"

// Where the time of setting up goes, over many runs. Times are those between answers: they say how long
// the press was set up, never how well somebody works, and are never listed by person.
namespace taut::history {

/// By what runs are put together.
enum class Group : std::uint8_t { Press, Job, Substrate, RunKind, Shift };
/// The shift in which a run began, by the clock where the press stands: early from 6, late from 14, night from 22
/// (common practice, no source; a shop with other hours reads the hours).
enum class Shift : std::uint8_t { Early, Late, Night };
[[nodiscard]] Shift shiftOf(int hour) noexcept;
[[nodiscard]] const char* shiftWord(Shift shift) noexcept;  ///< early late night

/// One run's times, in milliseconds.
struct RunTime {
    std::uint64_t seq{};
    std::string run, press, job, substrate, kind;
    std::int64_t begunMs{};
    Shift shift{};
    bool finished = true;  ///< not given up: only such a run has a time of setting up, and can be at the first go
    struct Stage {
        std::string id;
        std::int64_t workedMs{}, watchedMs{}, awayMs{}, externalMs{};
        [[nodiscard]] std::int64_t wholeMs() const { return workedMs + watchedMs; }
    };
    std::vector<Stage> stages;
    [[nodiscard]] std::int64_t wholeMs() const;  ///< without what was away
    [[nodiscard]] std::int64_t awayMs() const;
    [[nodiscard]] std::int64_t externalMs() const;
};
/// What an incident was and how often.
struct RunIncidents {
    std::size_t outside{}, deviated{}, corrected{}, notApplicable{}, repeated{}, interrupted{};
    /// A run at the first go: nothing outside, accepted, corrected or done again.
    [[nodiscard]] bool firstGo() const { return outside + deviated + corrected + repeated == 0; }
};

/// The target under which the metres of a set-up are read (waste, in the trade's words).
inline constexpr const char* kWebOfSetUp = "setup.web";
/// What an incident is called that is a step left open (history/open_steps.h).
inline constexpr const char* kLeftOpen = "open";

/// Everything that is told of the time of these runs, newest first, at most `most` of them. `goOn` is asked between two
/// pages; false ends it with the runs of which all was read by then.
struct Times {
    std::vector<RunTime> runs;
    std::vector<records::Incident> incidents;
    std::map<std::uint64_t, RunIncidents> byRun;  ///< seal -> what it had; runs without any are not in it
    std::map<std::uint64_t, double> webM;         ///< seal -> metres of web that the set-up took, where it was read
    bool older = false;                           ///< there are older runs than were asked for
    std::size_t lookedInto = 0;                   ///< of those given up, how many by addOpenSteps
};
[[nodiscard]] Result<Times> timesOf(const records::Reader& reader, const records::CourseQuery& query,
                                    const std::function<bool()>& goOn = {}, std::size_t most = 20000);

/// How many of them were given up.
[[nodiscard]] std::size_t givenUpOf(const Times& times);

/// Quartiles of one stage in one group of finished runs, in seconds; stage "" = the whole run.
struct StageQuartiles {
    std::string group, stage;
    stats::Quartiles seconds;
    double externalShare = 0;  ///< of worked and watched time, what was done beside the running press
    double awaySeconds = 0;    ///< mean per run
};
/// Group after group by its word, the whole run first, then the stages in the order of the runs.
[[nodiscard]] std::vector<StageQuartiles> quartilesBy(const Times& times, Group group);

/// Metres of web that the set-ups of one group took.
struct WebQuartiles {
    std::string group;
    stats::Quartiles metres;  ///< of the finished runs that say it
    std::size_t of = 0;       ///< finished runs in all
};
/// Group after group by its word; one in which no run says it is left out.
[[nodiscard]] std::vector<WebQuartiles> webBy(const Times& times, Group group);

/// Something that the slowest tenth of the runs has more often than the others.
struct InCommon {
    Group group{};
    std::string value;  ///< of the group, or the word of an incident
    bool incident = false;
    stats::Proportion slow;  ///< of the slowest tenth, how many have it
    stats::Proportion others;
};
/// Finished runs, compared within each kind of run, so that a full set-up is not slow beside a next roll. Told is what
/// at least three slow runs have, and whose interval lies above that of the others, at a confidence of 95 % for all
/// that was looked at together; most telling first. The shares are told with their usual intervals.
[[nodiscard]] std::vector<InCommon> commonToSlowest(const Times& times);

/// What kind of loss: where deviations, re-checks, steps that did not apply, and causes of stages done again gather.
enum class Loss : std::uint8_t {
    Deviations,
    Outside,
    Corrections,
    NotApplicable,
    Repeated,
    Interruptions,
    Remedies,
    LeftOpen
};
/// Incidents of one kind by step (deviations, outside, corrections, not applicable, left open) or by cause (the
/// others).
[[nodiscard]] std::vector<stats::ParetoRow> lossesOf(const Times& times, Loss loss, std::size_t most = 9);
/// Runs at the first go of all that were finished; nullopt for none.
[[nodiscard]] std::optional<stats::Proportion> firstGoRate(const Times& times);

}  // namespace taut::history
