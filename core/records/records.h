// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/people/person.h"
#include "core/run/run.h"
#include "core/seal/after.h"
#include "core/seal/chain.h"

namespace taut::records {

/// A page of an answer: at most as many rows as were asked for, and where to go on ("" = that was all).
template <class T>
struct Page {
    std::vector<T> rows;
    std::string next;
};
/// Runs that a supervisor has to look at: sealed or corrected, and not reviewed since.
inline constexpr const char* kWantsReview = "wants_review";
/// Which runs. Empty fields do not narrow.
struct RunQuery {
    std::string press, job, state, text;  ///< state: open completed abandoned
    std::optional<std::int64_t> sinceMs, untilMs;
    std::size_t limit = 50;
    std::string present = {};  ///< open sealed reviewed sent_back corrected void, or kWantsReview
    std::string substrate = {};
    std::string person = {};      ///< id of whoever had it in hand last
    bool withDeviations = false;  ///< only runs in which a supervisor accepted something outside
};
/// One run in a list. An open run has seq 0.
struct RunRow {
    std::uint64_t seq{};
    std::string run, press, job, substrate, roll, operatorName, state, verdict;
    std::string present;                ///< open, or seal::presentWord
    std::string reviewedBy;             ///< who accepted it as it stands now
    std::int64_t begunMs{}, endedMs{};  ///< endedMs 0 = not ended
    std::int64_t deviations{};
    std::string kind;              ///< full next_roll re_web restart
    std::string title, customer;   ///< of the job, as its edition says them
    std::int64_t outside{};        ///< readings that were outside when they were first entered
    std::optional<double> wasteM;  ///< metres of web that the set-up took, where they were read (setup.web)
};
struct SeriesQuery {
    std::string press, target;
    std::size_t limit = 200;
    std::string substrate = {}, job = {};
    std::optional<std::int64_t> sinceMs = {}, untilMs = {};  ///< by when the run began
};
struct Reading {
    std::uint64_t seq{};
    std::string run, step, target, unit, verdict, entered;
    double value{};
    std::optional<double> low, high;
    std::int64_t atMs{};
    std::string press, job, substrate, roll;
    std::string pressSha;         ///< of the profile with which it ran: another one begins another phase
    std::optional<double> aimed;  ///< value of its target when it was read, in the same unit; empty = had none
    std::optional<double> uncertainty;
    std::string first;  ///< verdict when it was first entered in this run
};
/// What a target is called and how often it was read: what can be asked as a series.
struct SeriesName {
    std::string press, target, unit;
    std::int64_t readings{};
};
/// Which runs' courses; sealed ones only, void ones never. Empty fields do not narrow.
struct CourseQuery {
    std::string press, job, substrate;
    std::optional<std::int64_t> sinceMs, untilMs;  ///< by when the run began
    std::size_t limit = 500;
};
/// How long one stage of a run took (seal/course.h says what counts as what).
struct StageTime {
    std::uint64_t seq{};
    std::string run, press, job, substrate, kind, stage;
    std::int64_t begunMs{};  ///< of the run
    int hour{};              ///< of the day where the press stands, when the run began: 0 to 23
    std::int64_t workedMs{}, watchedMs{}, awayMs{}, externalMs{};
    std::string state = "completed";  ///< of the run: completed abandoned
};
/// Something in a run that was not as it should be, or not at once.
struct Incident {
    std::uint64_t seq{};
    std::string run, press, job, substrate;
    std::int64_t n{};          ///< of its event
    std::string what;          ///< outside deviated corrected not_applicable interrupted repeated helped handed_over
    std::string step, target;  ///< "" = of the whole run
    std::string detail;        ///< reason or cause; of helped the number of the remedy, then its words
    std::int64_t atMs{};
};
/// A press out of use.
struct Withdrawal {
    std::string press, reason, byId, byName;
    std::int64_t atMs{};
};

/// One edition of a definition: which, when and by whom it was sealed.
struct Edition {
    std::string id;
    int edition{};
    std::string sha256;
    std::int64_t atMs{};
    std::string byName;
};

/// What any store can be asked; newest first. No statement stays open between calls; each call takes at most 50 ms.
class Reader {
public:
    virtual ~Reader() = default;
    [[nodiscard]] virtual Result<Page<RunRow>> runs(const RunQuery& query, std::string_view after) const = 0;
    [[nodiscard]] virtual Result<Page<Reading>> readings(const SeriesQuery& query, std::string_view after) const = 0;
    /// How many runs fit, counted no further than `most`.
    [[nodiscard]] virtual Result<std::int64_t> count(const RunQuery& query, std::int64_t most) const = 0;
    /// What can be asked as a series, by press, then target; with how many readings.
    [[nodiscard]] virtual Result<std::vector<SeriesName>> seriesNames() const = 0;
    /// Stages of runs, newest run first, the stages of one run together and in their order.
    [[nodiscard]] virtual Result<Page<StageTime>> stageTimes(const CourseQuery& query,
                                                             std::string_view after) const = 0;
    [[nodiscard]] virtual Result<Page<Incident>> incidents(const CourseQuery& query, std::string_view after) const = 0;
    [[nodiscard]] virtual Result<seal::Seal> seal(std::uint64_t seq) const = 0;
    [[nodiscard]] virtual Result<seal::Seal> sealOfRun(std::string_view runId) const = 0;
    /// How a sealed run came to stand as it does: its own seal and those about it, oldest first. run.unknown,
    /// run.not_sealed, document.broken.
    [[nodiscard]] virtual Result<std::vector<seal::Sealing>> sealsAbout(std::string_view runId) const = 0;
    [[nodiscard]] virtual Result<std::int64_t> wantingReview() const = 0;  ///< how many runs
    /// A run that is not sealed yet, as far as it has come: run.unknown, run.sealed, event.broken.
    [[nodiscard]] virtual Result<run::Run> openRun(std::string_view runId) const = 0;
    [[nodiscard]] virtual Result<seal::Anchor> anchor() const = 0;
    [[nodiscard]] virtual Result<std::vector<Withdrawal>> withdrawals() const = 0;  ///< those that stand
    [[nodiscard]] virtual Result<std::vector<people::PersonRecord>> people() const = 0;
    /// The newest edition of each definition of a kind (press job substrate procedure), sorted by id.
    [[nodiscard]] virtual Result<std::vector<run::Source>> definitions(std::string_view what) const = 0;
    /// One edition by the hash of its text, as a sealed run names it; nullopt when this store has none of that hash.
    [[nodiscard]] virtual Result<std::optional<run::Source>> definition(std::string_view what,
                                                                        std::string_view sha256) const = 0;
    /// The bytes of a picture or file by the hash that its run names; nullopt when this store has none of that hash.
    /// attachment.changed when they are others by now.
    [[nodiscard]] virtual Result<std::optional<std::string>> attachment(std::string_view sha256) const = 0;
    /// Every edition of the definitions of a kind, by id, the newest of each first.
    [[nodiscard]] virtual Result<std::vector<Edition>> editions(std::string_view what) const = 0;
};

}  // namespace taut::records
