// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "app/made/maker.h"
#include "app/made/player.h"

namespace taut::app::made {

namespace {

/// Runs of which the words are much alike: their targets have the same sentences.
struct Group {
    std::string press;
    int edition = 1;
    std::string of, kind;
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

    /// Which words a run is told by must not depend on which thread came first: they are those of a calm run of each
    /// group, played before any other.
    Result<Done> prepare(const Story& story)
    {
        Words all;
        for (const char* press : {"north", "south"})
            for (const Index job : jobsOf(press)) {
                if (madeJobs()[job].id != madeJobs()[job].of) continue;
                for (const int edition : {1, 2})
                    if (auto done = prepare(story, press, edition, job, all); !done) return done;
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
            const auto words = m_words.find(groupOf(tale));
            static const Words kNone;
            all.push_back(sealable(*run, tale, words == m_words.end() ? kNone : words->second));
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
        return {std::move(parted.document),
                std::make_shared<const std::vector<seal::Parted::Words>>(std::move(parted.words)), at,
                m_shop.named(run.operatorName())};
    }

    Result<Done> prepare(const Story& story, const std::string& press, int edition, Index job, Words& all)
    {
        std::optional<run::Run> parent;
        for (const char* kind : {"full", "next_roll", "re_web", "restart"}) {
            Tale tale;
            tale.run = press + "-words";
            tale.press = press;
            tale.kind = kind;
            tale.edition = edition;
            tale.job = job;
            tale.roll = {"R0999", "A00A", 1};
            tale.begin = at(story.firstDay(), beginOfShift(0));
            tale.shiftEndMs = tale.begin.utcMs + kDayMs;
            auto run = play(tale, m_shop, parent ? &*parent : nullptr);
            if (!run) return run.error();
            Words& own = m_words[groupOf(tale)];
            for (const auto& [what, source] : seal::partWords(seal::documentOf(*run), knownIn(all)).words) {
                own[{what, source.id}] = {source.text};
                auto& texts = all[{what, source.id}];
                if (std::find(texts.begin(), texts.end(), source.text) == texts.end()) texts.push_back(source.text);
            }
            if (!parent) parent = *std::move(run);
        }
        return Done{};
    }

    const Shop& m_shop;
    std::map<Group, Words> m_words;
};

}  // namespace

Result<std::unique_ptr<Maker>> playedOut(const Shop& shop, const Story& story)
{
    auto maker = std::make_unique<PlayedOut>(shop);
    if (auto ready = maker->prepare(story); !ready) return ready.error();
    return std::unique_ptr<Maker>(std::move(maker));
}

}  // namespace taut::app::made
