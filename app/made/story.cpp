// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/story.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/made/shop.h"
#include "core/base/json.h"

namespace taut::app::made {

namespace {

constexpr std::array<const char*, 2> kPresses{"north", "south"};
/// A press's profile changes once in a history: the share of its time at which it does.
constexpr std::array<double, 2> kChangedAt{0.28, 0.63};
constexpr double kBetweenShifts = 359;  // minutes after midnight: nobody's run is under way
constexpr int kFreshDays = 14;
/// Minutes from run to run at least, and from a shift's ends: a full set-up takes an hour and a half with all that may
/// come between. What is begun late is handed over.
struct Room {
    double between, lead;
    std::size_t most;  ///< runs that fit into a shift
};
constexpr Room kRoom{110, 55, 4}, kBriefRoom{9.9, 2, 48};
/// Shifts with work have so many runs on the mean, where there are fewer runs than shifts.
constexpr double kWorkedRuns = 1.8;
/// The early shift works more than the night.
constexpr std::array<double, kShifts> kWeights{1.2, 1.0, 0.7};

// Streams of chance: what one draws moves nothing in another.
constexpr std::uint64_t kSlotStream = 1, kTaleStream = 1'000'000'000, kPlayStream = 2'000'000'000'000;

constexpr std::array kInterruptions{
    "break", "stop_by_other", "left_alone", "power", "Waiting for the fork truck", "Ink kitchen called away"};
constexpr std::array kAbandoned{"Order was taken back while we set up", "Roll is telescoped, goes back to the maker",
                                "Dancer sticks, maintenance is called", "Wrong plates came up from the store"};
constexpr std::array kNotes{"Core plug was missing on the drive side",
                            "Edge trim bin is full, told the warehouse",
                            "Outer wraps had tape residue",
                            "Humidity in the hall is low today, web crackles",
                            "Guide hunts a little until the splice is through",
                            "Lift squeaks near the top",
                            "Fitted a new blade for the cut",
                            "Customer wants the joint flagged in red"};
constexpr std::array kRemarks{"",
                              "",
                              "",
                              "Ran as the last time.",
                              "Watch the guide for the first hundred metres.",
                              "Next roll stands at the rack.",
                              "Told the printer about the joint."};
constexpr const char* kSkipped = "This station prints nothing of this job";

bool isNight(int shift) { return shift == kNight; }

/// A night is not worked when the day that it ends on is none.
bool isWorkedShift(Day day, int shift) { return isWorked(day) && (!isNight(shift) || isWorked(day + 1)); }

std::string twoDigits(std::size_t n) { return (n < 10 ? "0" : "") + std::to_string(n); }

double strengthOf(double given) { return std::clamp(given, 0.0, 5.0); }

}  // namespace

std::string RunNumbers::next(const std::string& press, const Instant& begin)
{
    const auto day = static_cast<Day>((begin.utcMs + begin.offsetMinutes * kMinuteMs) / kDayMs);
    auto& [last, number] = m_last[press];
    number = last == day ? number + 1 : 1;
    last = day;
    return press + "-" + dayText(day) + "-" + twoDigits(static_cast<std::size_t>(number));
}

Result<Story> Story::of(const Wish& wish)
{
    for (const double strength : {wish.drift, wish.lot, wish.shift})
        if (!(strength >= 0 && strength <= 5))
            return refuse("history.strength", shortest(strength),
                          {"A strength is a number from 0 to 5, not %1.", {shortest(strength)}},
                          "0 leaves the finding out, 1 is as usual.");
    if (wish.runs == 0 || wish.years < 1)
        return refuse("history.nothing", "runs", "A history has a run at least, and takes a year at least.",
                      "Ask for more.");
    Story story(wish);
    story.m_first = yearsBefore(wish.until, wish.years);
    for (Day day = story.m_first; day < wish.until; ++day)
        for (int shift = 0; shift < kShifts; ++shift)
            for (int press = 0; press < 2 && isWorkedShift(day, shift); ++press)
                story.m_slots.push_back({day, shift, press, 0, 0});
    for (std::size_t press = 0; press < kPresses.size(); ++press)
        story.m_editions.push_back(
            {kPresses[press], 2,
             at(story.m_first + static_cast<Day>(kChangedAt[press] * (wish.until - story.m_first)), kBetweenShifts)});
    const std::size_t most = (wish.brief ? kBriefRoom : kRoom).most;
    if (wish.runs > most * story.m_slots.size())
        return refuse("history.too_many", "runs",
                      {"In %1 years there is room for %2 runs.",
                       {std::int64_t{wish.years}, static_cast<std::int64_t>(most * story.m_slots.size())}},
                      wish.brief ? Text("Ask for fewer, or for more years.")
                                 : Text("Ask for fewer, for more years, or for short ones."));

    // Every shift gets its weight's share of all runs, and where there are few some shifts have none.
    Chance chance(wish.seed, kSlotStream);
    const double mean = static_cast<double>(wish.runs) / static_cast<double>(story.m_slots.size());
    const double worked = std::min(1.0, mean / kWorkedRuns);
    std::vector<double> weights;
    double total = 0;
    for (const Slot& slot : story.m_slots) {
        const double weight = kWeights[static_cast<std::size_t>(slot.shift)] * chance.between(0.7, 1.3);
        weights.push_back(chance.is(worked) ? weight : 0);
        total += weights.back();
    }
    if (total <= 0) weights.front() = total = 1;
    double sum = 0;
    std::size_t given = 0, number = 0;
    for (std::size_t i = 0; i < story.m_slots.size(); ++i) {
        Slot& slot = story.m_slots[i];
        sum += weights[i];
        const auto due =
            static_cast<std::size_t>(std::llround(static_cast<double>(wish.runs) * std::min(1.0, sum / total)));
        // What does not fit into one shift is done in the next; the last ones have to take all that is left.
        const std::size_t left = most * (story.m_slots.size() - 1 - i);
        const std::size_t least = wish.runs - given > left ? wish.runs - given - left : 0;
        slot.runs = std::max(std::min(due > given ? due - given : 0, most), least);
        given += slot.runs;
        slot.number = number;
        number += slot.runs;
    }
    return story;
}

std::string Story::lotOf(Index job, Day day, Chance& chance) const
{
    constexpr int kLotLasts = 12;
    const MadeJob& made = madeJobs()[job];
    const Day from = m_first + static_cast<Day>((m_wish.until - m_first) * kLotFrom);
    const bool inTime = day >= from && day < from + std::min<Day>(kLotDays, m_wish.until - from);
    if (inTime && made.substrate == kBadSubstrate && chance.is(0.6)) return std::string(kBadLot);
    // Two lots of a material lie in the store at a time.
    const int number = (day / kLotLasts) * 2 + (chance.is(0.5) ? 1 : 0);
    const char letter = made.substrate == kBadSubstrate  ? 'Q'
                        : made.substrate == "thermal-75" ? 'T'
                        : made.substrate == "bopp-50"    ? 'B'
                                                         : 'P';
    return std::string(1, letter) + twoDigits(static_cast<std::size_t>(number % 90 + 10)) +
           static_cast<char>('A' + number % 20);
}

void Story::setTrouble(Tale& tale, Chance& chance) const
{
    Trouble& trouble = tale.trouble;
    const double lot = tale.badLot ? strengthOf(m_wish.lot) : 0;
    trouble.when = chance.between(0.15, 0.9);
    trouble.webBreak = chance.is(0.025 + 0.2 * lot);
    if (chance.is(0.06)) trouble.interrupted = chance.oneOf(kInterruptions);
    if (chance.is(0.02)) trouble.abandoned = chance.oneOf(kAbandoned);
    if (chance.is(0.15)) trouble.note = chance.oneOf(kNotes);
    if (chance.is(0.05)) trouble.skipped = kSkipped;
    trouble.corrected = chance.is(0.06);
    trouble.remarks = chance.oneOf(kRemarks);
    // Of so many short runs few leave anything to be said.
    if (m_wish.brief && !chance.is(0.15)) trouble.remarks.clear();
}

/// Minutes after midnight; what time is left over lies between the runs as chance has it.
std::vector<double> Story::beginsIn(const Slot& slot, Chance& chance) const
{
    const Room& room = m_wish.brief ? kBriefRoom : kRoom;
    std::vector<double> begins;
    for (std::size_t i = 0; i < slot.runs; ++i) begins.push_back(chance.unit());
    std::sort(begins.begin(), begins.end());
    const auto n = static_cast<double>(slot.runs);
    const double spare = kShiftMinutes - 2 * room.lead - (n - 1) * room.between;
    for (std::size_t i = 0; i < slot.runs; ++i)
        begins[i] = beginOfShift(slot.shift) + room.lead + static_cast<double>(i) * room.between + spare * begins[i];
    return begins;
}

Tale Story::tale(const Slot& slot, std::size_t i, double minutes) const
{
    Tale tale;
    tale.press = kPresses[static_cast<std::size_t>(slot.press)];
    tale.shift = slot.shift;
    tale.begin = at(slot.day, minutes);
    const Instant end = at(slot.day, beginOfShift(slot.shift) + kShiftMinutes);
    tale.shiftEndMs = end.utcMs;
    tale.by = operatorAt(slot.press, slot.day, slot.shift);
    tale.next = operatorAt(slot.press, slot.shift == kNight ? slot.day + 1 : slot.day, (slot.shift + 1) % kShifts);
    tale.stream = kPlayStream + slot.number + i;
    const double share = (slot.day + minutes / (24 * 60) - m_first) / static_cast<double>(m_wish.until - m_first);
    for (const Edition& one : m_editions)
        if (one.press == tale.press && one.from.utcMs <= tale.begin.utcMs) tale.edition = one.edition;
    const double months = (share - kDriftFrom) * (m_wish.until - m_first) / kDaysAMonth;
    if (slot.press == 0 && months > 0) tale.brake = 1 + strengthOf(m_wish.drift) * kDriftAMonth * months;
    if (isNight(slot.shift)) tale.slow = 1 + strengthOf(m_wish.shift) * kNightSlower;
    return tale;
}

std::vector<Family> Story::familiesIn(std::size_t index, RunNumbers& numbers) const
{
    const Slot& slot = m_slots[index];
    std::vector<Family> families;
    Chance chance(m_wish.seed, kTaleStream + index);
    const std::vector<Index> jobs = jobsOf(kPresses[static_cast<std::size_t>(slot.press)]);
    const std::vector<double> begins = beginsIn(slot, chance);
    for (std::size_t i = 0; i < slot.runs; ++i) {
        Tale tale = this->tale(slot, i, begins[i]);
        tale.run = numbers.next(tale.press, tale.begin);
        // After a run that ended as it should, the job goes on more often than not.
        const Tale* before = families.empty() ? nullptr : &families.back().back();
        const bool goesOn = before != nullptr && before->trouble.abandoned.empty() && chance.is(0.7);
        tale.kind = "full";
        tale.job = jobs[chance.below(jobs.size())];
        const double kind = chance.unit();
        if (goesOn) {
            tale.job = before->job;
            tale.parent = before->run;
            tale.kind = kind < 0.7 ? "next_roll" : kind < 0.85 ? "re_web" : "restart";
        }
        const bool sameRoll = tale.kind == "re_web" || tale.kind == "restart";
        if (sameRoll) {
            tale.roll = before->roll;
        } else {
            constexpr std::size_t kFirstRoll = 1000;
            tale.roll.id = "R" + std::to_string(kFirstRoll + slot.number + i);
            tale.roll.lot = lotOf(tale.job, slot.day, chance);
            tale.roll.larger = chance.between(0.96, 1.03);
        }
        tale.badLot = tale.roll.lot == kBadLot;
        if (tale.badLot) tale.wander = 1 + strengthOf(m_wish.lot);
        setTrouble(tale, chance);
        if (goesOn)
            families.back().push_back(std::move(tale));
        else
            families.push_back({std::move(tale)});
    }
    return families;
}

bool Story::isFresh(std::int64_t sealedMs) const { return sealedMs >= at(m_wish.until - kFreshDays, 0).utcMs; }

}  // namespace taut::app::made
