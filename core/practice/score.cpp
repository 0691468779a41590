// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/score.h"

#include <algorithm>
#include <map>
#include <set>

namespace taut::practice {

namespace {

constexpr int kVital = 3, kMeasured = 2, kOther = 1;
constexpr double kWrongOrder = 0.5;

/// What a fault is, whatever it takes and in whichever order a file names it.
std::set<Suspect> kindsOf(const std::vector<Fault>& faults)
{
    std::set<Suspect> kinds;
    for (const Fault& fault : faults) kinds.insert({fault.what, fault.item});
    return kinds;
}

}  // namespace

bool isOf(std::string_view step, std::string_view part)
{
    return step.starts_with(part) && (step.size() == part.size() || step[part.size()] == '.');
}

std::vector<Item> itemsOf(const procedure::Plan& plan, std::span<const std::string> parts)
{
    std::vector<Item> items;
    std::size_t rank = 0;
    for (std::size_t i = 0; i < plan.steps.size(); ++i) {
        const procedure::Step& step = plan.steps[i];
        const bool together = i > 0 && plan.steps[i - 1].place == step.place && plan.places[step.place].doConfirm;
        if (!together) ++rank;
        const bool counts = parts.empty() || std::any_of(parts.begin(), parts.end(), [&](const std::string& part) {
                                return isOf(step.id.value, part);
                            });
        if (!counts) continue;
        const bool measured = step.kind == procedure::StepKind::Reading;
        items.push_back({step.id.value, step.vital ? kVital : measured ? kMeasured : kOther, step.vital, rank});
    }
    return items;
}

std::vector<bool> movedOf(std::span<const std::size_t> ranks)
{
    // The longest that stands in rising rank stays; of each length so far, where the lowest end is.
    std::vector<std::size_t> ends, before(ranks.size());
    for (std::size_t i = 0; i < ranks.size(); ++i) {
        const auto at = std::upper_bound(ends.begin(), ends.end(), ranks[i],
                                         [&](std::size_t rank, std::size_t end) { return rank < ranks[end]; });
        before[i] = at == ends.begin() ? i : *(at - 1);
        if (at == ends.end())
            ends.push_back(i);
        else
            *at = i;
    }
    std::vector<bool> moved(ranks.size(), true);
    if (ends.empty()) return moved;
    for (std::size_t i = ends.back();; i = before[i]) {
        moved[i] = false;
        if (before[i] == i) return moved;
    }
}

bool Score::passed() const
{
    // Everything earned is a whole number of halves, so nothing has to be rounded.
    constexpr double kTimes = 10;
    return vitalMissed.empty() && total > 0 && kTimes * earned >= kTimes * kPass * total;
}

Score scoreOf(std::span<const Item> items, std::span<const Outcome> outcomes)
{
    std::map<std::string_view, const Outcome*> byStep;
    for (const Outcome& outcome : outcomes) byStep[outcome.step] = &outcome;
    Score score;
    for (const Item& item : items) {
        score.total += item.weight;
        const auto found = byStep.find(item.step);
        const Outcome outcome = found == byStep.end() ? Outcome{} : *found->second;
        score.hints += outcome.hinted ? 1 : 0;
        score.orderErrors += outcome.outOfOrder ? 1 : 0;
        if (outcome.fate != Fate::Done) {
            if (item.vital) score.vitalMissed.push_back(item.step);
            continue;
        }
        const double whole = outcome.hinted ? item.weight / 2.0 : item.weight;
        score.earned += std::max(0.0, whole - (outcome.outOfOrder ? kWrongOrder : 0));
    }
    return score;
}

const char* resultWord(const Score& score) noexcept { return score.passed() ? "passed" : "not_yet"; }

Detection& Detection::operator+=(const Detection& other)
{
    hits += other.hits;
    misses += other.misses;
    falseAlarms += other.falseAlarms;
    healthy += other.healthy;
    return *this;
}

Result<stats::Sensitivity> Detection::sensitivity() const
{
    return stats::sensitivityOf(hits, hits + misses, falseAlarms, healthy);
}

Detection detectionOf(const inputs::Press& press, std::span<const Fault> faults, std::span<const Suspect> named)
{
    Detection found;
    for (const Suspect& suspect : suspectsOf(press)) {
        const bool wrong =
            std::any_of(faults.begin(), faults.end(), [&](const Fault& f) { return isMeant(suspect, f.what, f.item); });
        const bool said =
            std::any_of(named.begin(), named.end(), [&](const Suspect& n) { return isMeant(suspect, n.what, n.item); });
        if (wrong)
            ++(said ? found.hits : found.misses);
        else {
            ++found.healthy;
            if (said) ++found.falseAlarms;
        }
    }
    return found;
}

std::size_t inARow(std::span<const Tried> tries)
{
    std::set<std::set<Suspect>> seen;
    for (auto tried = tries.rbegin(); tried != tries.rend(); ++tried) {
        if (tried->faults.empty()) continue;
        if (!tried->passed || !seen.insert(kindsOf(tried->faults)).second) break;
    }
    return seen.size();
}

}  // namespace taut::practice
