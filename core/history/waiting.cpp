// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/waiting.h"

#include <algorithm>

namespace taut::history {

namespace {

Result<std::uint64_t> newestSeal(const records::Reader& reader, const std::string& run)
{
    const auto story = reader.sealsAbout(run);
    if (!story) return story.error();
    return story->empty() ? 0 : story->back().seq;
}

}  // namespace

Result<std::vector<SentBack>> sentBackTo(const records::Reader& reader, const std::string& person)
{
    // Of runs; who has so many questions open has another worry than the oldest of them.
    constexpr std::size_t kMost = 200;
    records::RunQuery query;
    query.present = seal::presentWord(seal::Present::SentBack);
    query.person = person;
    query.limit = kMost;
    const auto page = reader.runs(query, "");
    if (!page) return page.error();
    std::vector<SentBack> all;
    for (const records::RunRow& row : page->rows) {
        const auto story = reader.sealsAbout(row.run);
        if (!story) return story.error();
        SentBack one{row, {}, {}, 0};
        for (const seal::Sealing& sealing : *story) {
            const auto* review = sealing.sequel ? std::get_if<seal::Review>(&*sealing.sequel) : nullptr;
            if (review == nullptr || review->accepted) continue;
            one.byName = sealing.byName;
            one.note = review->note;
            one.atMs = sealing.atMs;
        }
        all.push_back(std::move(one));
    }
    std::stable_sort(all.begin(), all.end(), [](const SentBack& a, const SentBack& b) { return a.atMs > b.atMs; });
    return all;
}

Result<Waiting> waitingOf(const records::Reader& reader, std::size_t most)
{
    Waiting waiting;
    const auto withdrawn = reader.withdrawals();
    if (!withdrawn) return withdrawn.error();
    waiting.withdrawn = *withdrawn;
    const auto many = reader.wantingReview();
    if (!many) return many.error();
    waiting.toReview = *many;
    records::RunQuery query;
    query.present = records::kWantsReview;
    query.limit = most;
    const auto page = reader.runs(query, "");
    if (!page) return page.error();
    for (const records::RunRow& row : page->rows)
        (row.deviations > 0 ? waiting.deviations : waiting.others).push_back(row);
    const auto sentBack = sentBackTo(reader, "");
    if (!sentBack) return sentBack.error();
    waiting.sentBack = *sentBack;
    return waiting;
}

Result<Done> Opened::open(const records::Reader& reader, const std::string& run)
{
    const auto newest = newestSeal(reader, run);
    if (!newest) return newest.error();
    m_seen[run] = *newest;
    return Done{};
}

Result<Done> Opened::mayAccept(const records::Reader& reader, const std::vector<std::string>& runs) const
{
    if (runs.empty())
        return refuse("review.none", {}, "No run was opened yet.", "Open each run and look through its sheet first.");
    for (const std::string& run : runs) {
        const auto seen = m_seen.find(run);
        const auto newest = newestSeal(reader, run);
        if (!newest) return newest.error();
        if (seen == m_seen.end() || seen->second != *newest)
            return refuse("review.not_opened", run, {"Run %1 was not opened as it stands now.", {run}},
                          "Open it and look through its sheet; then accept it with the others.");
    }
    return Done{};
}

}  // namespace taut::history
