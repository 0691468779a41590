// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "app/made/calendar.h"
#include "core/base/chance.h"
#include "core/base/result.h"

namespace taut::app::made {

/// What sort of history is wanted. The three strengths are findings that a history hides: 0 = it is not there, 1 = as
/// usual.
struct Wish {
    std::uint64_t seed = 1;
    int years = 2;
    Day until = 20'784;  ///< the day after the last one: 2026-11-27
    std::size_t runs = 1200;
    bool brief = false;  ///< a short procedure of six steps and only the targets that it uses
    double drift = 1;    ///< the north press's unwind brake gives less torque at a setting, month by month
    double lot = 1;      ///< for some weeks the rolls of one lot of label paper splice and run badly
    double shift = 1;    ///< threading and splicing take longer at night
};

/// From which share of its time on the brake drifts, and when the bad lot is there.
inline constexpr double kDriftFrom = 0.4, kLotFrom = 0.62;
inline constexpr int kLotDays = 42;
inline constexpr double kDriftAMonth = 0.012;  ///< by how much more the setting is, of what the target says
inline constexpr double kNightSlower = 0.4;
inline constexpr double kDaysAMonth = 365.25 / 12;
inline constexpr std::string_view kBadLot = "Q77C", kBadSubstrate = "paper-label-80";

/// Which stages take longer at night; the short procedure has no other that could.
[[nodiscard]] inline bool isSlowAtNight(std::string_view stage, bool brief)
{
    return brief ? stage == "tension" : stage == "threading" || stage == "splice";
}

/// One of the presses, jobs or people of a history by where it stands in its list (shop.h).
using Index = std::size_t;

/// A roll that never was: of which master, how large against it, and of which lot.
struct MadeRoll {
    std::string id, lot;
    double larger = 1;  ///< diameter over the master's
};
/// A reading that is outside at first, and what comes of it.
struct Bad {
    std::string target;
    bool accepted = false;  ///< by a supervisor; else it is read again until it is right
    bool helped = false;    ///< and it is said what helped
    // NOLINTNEXTLINE(modernize-use-nullptr): what the compiler makes of it compares with zero
    friend auto operator<=>(const Bad&, const Bad&) = default;
};
/// What comes between in a run.
struct Trouble {
    std::string interrupted, abandoned, note, remarks, skipped;  ///< cause or words, "" = not
    bool webBreak = false, corrected = false;
    std::optional<std::vector<Bad>> bad;  ///< nullopt: as chance has it
    double when = 0.5;                    ///< at which share of its steps
};
/// One run as it is to be: everything but what the press and its gauges say. Times are where they begin.
struct Tale {
    std::string run, press, kind;
    std::string parent;  ///< "" = begins by itself; else a run of the same family, told before
    int edition = 1;     ///< of the press's profile
    Index job = 0;
    MadeRoll roll;
    bool badLot = false;
    int shift = 0;
    Instant begin;
    std::int64_t shiftEndMs = 0;
    Index by = 0, next = 0;  ///< operator, and who comes after the shift
    std::uint64_t stream = 0;
    double brake = 1;   ///< what the unwind's setting is over what its target says
    double slow = 1;    ///< how much longer threading and splicing take
    double wander = 1;  ///< how far splice and guide readings are from what they should be
    Trouble trouble;
};
/// Runs that go on from one another, the first by itself.
using Family = std::vector<Tale>;

/// A change of a press's profile: from this moment on its runs are made with that edition.
struct Edition {
    std::string press;
    int edition = 2;
    Instant from;
};

/// Numbers runs as a logbook does: press, day on which they begin where it stands, and a number within both. To be
/// asked in the order in which they begin.
class RunNumbers {
public:
    [[nodiscard]] std::string next(const std::string& press, const Instant& begin);

private:
    std::map<std::string, std::pair<Day, int>> m_last;
};

/// The shop's two years (or as many as are wished for) as families in the order in which they begin. Pure: the same
/// wish gives the same story.
class Story {
public:
    /// Codes history.too_many (more runs than fit into the time), history.nothing, history.strength.
    [[nodiscard]] static Result<Story> of(const Wish& wish);

    [[nodiscard]] const Wish& wish() const noexcept { return m_wish; }
    [[nodiscard]] Day firstDay() const noexcept { return m_first; }
    /// How many shifts of a press have runs, and those of one of them: none or more families.
    [[nodiscard]] std::size_t shiftsWorked() const noexcept { return m_slots.size(); }
    [[nodiscard]] std::vector<Family> familiesIn(std::size_t slot, RunNumbers& numbers) const;
    [[nodiscard]] Day dayOf(std::size_t slot) const { return m_slots[slot].day; }
    [[nodiscard]] Instant beginOf(std::size_t slot) const
    {
        return at(m_slots[slot].day, beginOfShift(m_slots[slot].shift));
    }
    [[nodiscard]] const std::vector<Edition>& editions() const noexcept { return m_editions; }
    /// Whether nobody may have reviewed what was sealed then: of the last two weeks all is unreviewed.
    [[nodiscard]] bool isFresh(std::int64_t sealedMs) const;

private:
    struct Slot {
        Day day{};
        int shift{};
        int press{};
        std::size_t runs{};
        std::size_t number{};  ///< runs before it in the whole story
    };
    explicit Story(const Wish& wish) : m_wish(wish) {}
    [[nodiscard]] std::vector<double> beginsIn(const Slot& slot, Chance& chance) const;
    [[nodiscard]] Tale tale(const Slot& slot, std::size_t i, double minutes) const;
    void setTrouble(Tale& tale, Chance& chance) const;
    [[nodiscard]] std::string lotOf(Index job, Day day, Chance& chance) const;
    Wish m_wish;
    Day m_first{};
    std::vector<Slot> m_slots;
    std::vector<Edition> m_editions;
};

}  // namespace taut::app::made
