// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/after_runs.h"

#include <array>

namespace taut::app::made {

namespace {

constexpr double kForgotten = 0.15;  ///< of what was sent back or corrected
constexpr std::uint64_t kStream = 4'000'000'000'000;
constexpr std::array kSentBack{"Whose gauge was this? Say so in a remark", "The joint is not told: how many metres in?",
                               "Say in a remark why it took so long at the splice",
                               "The next crew asked about the roll's rest: add where it went"};
constexpr std::array kRemarks{"Hand gauge 4, checked this spring", "Joint stands at metre 38, flagged in red",
                              "The tape roll was empty and the store was shut", "The rest stands in rack C, tagged"};
constexpr std::array kVoids{"Sealed twice by mistake: this one was for training",
                            "Wrong job was chosen, the run was walked again"};

/// In a supervisor's hours, so many days that are worked after this moment.
Instant onDuty(const Instant& after, int days, Chance& chance)
{
    auto day = static_cast<Day>((after.utcMs + after.offsetMinutes * kMinuteMs) / kDayMs);
    for (int left = days; left > 0;)
        if (isWorked(++day)) --left;
    constexpr double kFrom = 8 * 60, kUntil = 15 * 60;
    return at(day, chance.between(kFrom, kUntil));
}

}  // namespace

std::optional<Later> laterOf(const Story& story, const Shop& shop, std::uint64_t run, Instant sealed,
                             const people::Signer& sealedBy, const Later* before)
{
    const int turn = before == nullptr ? 0 : before->turn + 1;
    Chance chance(story.wish().seed, kStream + run * 8 + static_cast<std::uint64_t>(turn));
    const people::Signer* supervisor = shop.supervisor(chance.below(2)).get();
    std::optional<Later> later;
    if (before == nullptr) {
        if (story.isFresh(sealed.utcMs) || chance.is(0.01)) return std::nullopt;
        const Instant at = onDuty(sealed, 1 + static_cast<int>(chance.below(4)), chance);
        const double how = chance.unit();
        if (how < 0.006)
            later = {seal::Voiding{chance.oneOf(kVoids)}, at, supervisor, turn};
        else if (how < 0.06)
            later = {seal::Review{false, chance.oneOf(kSentBack)}, at, supervisor, turn};
        else
            later = {seal::Review{true, chance.is(0.1) ? "Seen, thank you" : ""}, at, supervisor, turn};
    } else if (const auto* review = std::get_if<seal::Review>(&before->sequel);
               review != nullptr && !review->accepted) {
        if (chance.is(kForgotten)) return std::nullopt;
        const Instant at = onDuty(before->at, 1, chance);
        later = {seal::Correction{{}, chance.oneOf(kRemarks), "Asked for in the review"}, at, &sealedBy, turn};
    } else if (std::holds_alternative<seal::Correction>(before->sequel) && !chance.is(kForgotten)) {
        later = {seal::Review{true, ""}, onDuty(before->at, 1, chance), supervisor, turn};
    }
    // What would come after the last day has not happened yet.
    if (later && later->at.utcMs >= at(story.wish().until, 0).utcMs) return std::nullopt;
    return later;
}

}  // namespace taut::app::made
