// SPDX-License-Identifier: GPL-3.0-or-later
#include <mutex>

#include "app/made/maker.h"
#include "app/made/player.h"

namespace taut::app::made {

namespace {

/// Runs of which the words are much alike: their targets have the same sentences.
struct Group {
    std::string press;
    int edition = 1;
    std::string of, kind;
    // NOLINTNEXTLINE(modernize-use-nullptr): what the compiler makes of it compares with zero
    friend auto operator<=>(const Group&, const Group&) = default;
};
Group groupOf(const Tale& tale) { return {tale.press, tale.edition, std::string(madeJobs()[tale.job].of), tale.kind}; }

/// What a run is told by: words by kind and id.
using Words = std::map<std::pair<std::string, std::string>, std::vector<std::string>>;

seal::KnownWords knownIn(const Words& words)
{
    return [&words](std::string_view what, const std::string& id) {
        const auto found = words.find({std::string(what), id});
        return found == words.end() ? std::vector<std::string>() : found->second;
    };
}

class PlayedOut final : public Maker {
public:
    explicit PlayedOut(const Shop& shop) : m_shop(shop) {}

    /// Which words a run is told by must not depend on which thread came first: they are those of a calm run of its
    /// group, told in its turn by those of the press's first job where these serve.
    Result<Done> prepare(const Story& story)
    {
        m_from = at(story.firstDay(), beginOfShift(0));
        for (const char* press : {"north", "south"}) {
            const auto run = calm({press, 1, std::string(madeJobs()[jobsOf(press).front()].of), "full"}, nullptr);
            if (!run) return run.error();
            addWords(*run, {}, m_first[press]);
        }
        return Done{};
    }

    Result<std::vector<Sealable>> documents(const Family& family) const override
    {
        std::vector<Sealable> all;
        std::optional<run::Run> parent;
        for (const Tale& tale : family) {
            auto run = play(tale, m_shop, tale.parent.empty() || !parent ? nullptr : &*parent);
            if (!run) return run.error();
            const auto words = wordsOf(groupOf(tale));
            if (!words) return words.error();
            all.push_back(sealable(*run, tale, **words));
            parent = *std::move(run);
        }
        return all;
    }

private:
    Sealable sealable(const run::Run& run, const Tale& tale, const Words& words) const
    {
        seal::Parted parted = seal::partWords(seal::documentOf(run), knownIn(words));
        const run::Stamp& last = run.events().back().stamp();
        Chance chance(m_shop.seed(), tale.stream + 1'000'000'000'000);
        constexpr double kLeast = 15'000, kMost = 90'000;
        const Instant at{last.utcMs + static_cast<std::int64_t>(chance.between(kLeast, kMost)), last.offsetMinutes};
        return {run.id(), std::move(parted.document),
                std::make_shared<const std::vector<seal::Parted::Words>>(std::move(parted.words)), at,
                m_shop.named(run.operatorName())};
    }

    static void addWords(const run::Run& run, const Words& known, Words& words)
    {
        for (const auto& [what, source] : seal::partWords(seal::documentOf(run), knownIn(known)).words)
            words[{what, source.id}] = {source.text};
    }

    /// A run of this group in which nothing comes between.
    [[nodiscard]] Result<run::Run> calm(const Group& group, const run::Run* parent) const
    {
        Tale tale;
        tale.run = group.press + (parent == nullptr ? "-words" : "-words-next");
        tale.press = group.press;
        tale.kind = group.kind;
        tale.edition = group.edition;
        for (const Index job : jobsOf(group.press))
            if (madeJobs()[job].id == group.of) tale.job = job;
        tale.roll = {"R0999", "A00A", 1};
        tale.begin = m_from;
        tale.shiftEndMs = m_from.utcMs + kDayMs;
        tale.trouble.bad.emplace();
        return play(tale, m_shop, parent);
    }

    /// Made when the first run of the group is told, by whichever thread comes there first.
    [[nodiscard]] Result<std::shared_ptr<const Words>> wordsOf(const Group& group) const
    {
        const std::lock_guard lock(m_mutex);
        auto& words = m_words[group];
        if (words) return words;
        std::optional<run::Run> parent;
        if (group.kind != "full") {
            auto before = calm({group.press, group.edition, group.of, "full"}, nullptr);
            if (!before) return before.error();
            parent = *std::move(before);
        }
        const auto run = calm(group, parent ? &*parent : nullptr);
        if (!run) return run.error();
        auto made = std::make_shared<Words>();
        addWords(*run, m_first.at(group.press), *made);
        words = std::move(made);
        return words;
    }

    const Shop& m_shop;
    Instant m_from;
    std::map<std::string, Words> m_first;
    mutable std::mutex m_mutex;
    mutable std::map<Group, std::shared_ptr<const Words>> m_words;
};

}  // namespace

Result<std::unique_ptr<Maker>> playedOut(const Shop& shop, const Story& story)
{
    auto maker = std::make_unique<PlayedOut>(shop);
    if (auto ready = maker->prepare(story); !ready) return ready.error();
    return std::unique_ptr<Maker>(std::move(maker));
}

}  // namespace taut::app::made
