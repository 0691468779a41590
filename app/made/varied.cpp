// SPDX-License-Identifier: GPL-3.0-or-later
#include <mutex>
#include <shared_mutex>

#include "app/made/gauge.h"
#include "app/made/player.h"
#include "app/made/variation.h"

namespace taut::app::made {

namespace {

constexpr std::uint64_t kShapeStream = 5'000'000'000'000;
/// Who begins so shortly before the end of the shift does not end it.
constexpr std::int64_t kShortMs = 8 * kMinuteMs;

Shape shapeOf(const Tale& tale, std::uint64_t seed)
{
    const Trouble& trouble = tale.trouble;
    Shape shape;
    shape.job = tale.job;
    shape.edition = tale.edition;
    shape.kind = tale.kind;
    // In so few steps one thing at most comes between: else there were as many patterns as runs.
    shape.handedOver = tale.begin.utcMs + kShortMs > tale.shiftEndMs;
    if (!shape.handedOver) {
        shape.abandoned = !trouble.abandoned.empty();
        shape.webBreak = !shape.abandoned && trouble.webBreak;
        shape.interrupted = !shape.abandoned && !shape.webBreak && !trouble.interrupted.empty();
        const bool quiet = !shape.abandoned && !shape.webBreak && !shape.interrupted;
        shape.noted = quiet && !trouble.note.empty();
        shape.corrected = quiet && !shape.noted && trouble.corrected;
    }
    Chance chance(seed, kShapeStream + tale.stream);
    for (const char* target : {"guide.web.rest", "tension.unwind.setting"}) {
        if (!chance.is(outsideShare(target, tale))) continue;
        const bool accepted = chance.is(0.3);
        shape.bad.push_back({target, accepted, !accepted && chance.is(0.85)});
    }
    return shape;
}

/// Patterns are played when the first run of their shape is told, by whichever thread comes there first: what comes out
/// is the same, since it follows from the shape alone.
class Varied final : public Maker {
public:
    explicit Varied(const Shop& shop, const Story& story) : m_shop(shop), m_story(story) {}

    Result<std::vector<Sealable>> documents(const Family& family) const override
    {
        std::vector<Sealable> all;
        for (const Tale& tale : family) {
            const auto pattern = patternOf(shapeOf(tale, m_shop.seed()), tale.press);
            if (!pattern) return pattern.error();
            all.push_back((*pattern)->told(tale, m_shop));
        }
        return all;
    }

    /// Words stand under the press: those of its first job serve all of them.
    Result<Done> prepare()
    {
        for (const char* press : {"north", "south"})
            for (const int edition : {1, 2}) {
                std::shared_ptr<const Words> words;
                for (const Index job : jobsOf(press)) {
                    auto run = calm(job, edition, press);
                    if (!run) return run.error();
                    if (!words) words = std::make_shared<const Words>(seal::partWords(seal::documentOf(*run)).words);
                    m_calm.emplace(std::pair(job, edition), Calm{*std::move(run), words});
                }
            }
        return Done{};
    }

private:
    using Words = std::vector<seal::Parted::Words>;
    using Kept = std::shared_ptr<const Pattern>;

    Result<Kept> patternOf(const Shape& shape, const std::string& press) const
    {
        {
            const std::shared_lock lock(m_mutex);
            if (const auto found = m_patterns.find(shape); found != m_patterns.end()) return found->second;
        }
        auto made = played(shape, press);
        if (!made) return made.error();
        const std::unique_lock lock(m_mutex);
        return m_patterns.emplace(shape, *std::move(made)).first->second;
    }

    [[nodiscard]] Result<run::Run> calm(Index job, int edition, const std::string& press) const
    {
        Shape shape;
        shape.job = job;
        shape.edition = edition;
        shape.kind = "full";
        return play(taleOf(shape, press), m_shop, nullptr);
    }

    [[nodiscard]] Tale taleOf(const Shape& shape, const std::string& press) const
    {
        Tale tale;
        tale.run = press + "-pattern";
        tale.press = press;
        tale.kind = shape.kind;
        tale.edition = shape.edition;
        tale.job = shape.job;
        tale.roll = {"R0999", "A00A", 1};
        tale.next = 1;
        tale.begin = at(m_story.firstDay(), beginOfShift(0));
        tale.shiftEndMs = tale.begin.utcMs + (shape.handedOver ? kMinuteMs : kDayMs);
        tale.trouble.bad = shape.bad;
        tale.trouble.corrected = shape.corrected;
        tale.trouble.webBreak = shape.webBreak;
        if (shape.interrupted) tale.trouble.interrupted = "break";
        if (shape.abandoned) tale.trouble.abandoned = "Stopped here";
        if (shape.noted) tale.trouble.note = "Noted here";
        return tale;
    }

    [[nodiscard]] Result<Kept> played(const Shape& shape, const std::string& press) const
    {
        const Calm& before = m_calm.at({shape.job, shape.edition});
        Tale tale = taleOf(shape, press);
        const bool goesOn = shape.kind != "full";
        if (goesOn) tale.run += "-next";
        const auto run = play(tale, m_shop, goesOn ? &before.run : nullptr);
        if (!run) return run.error();
        const auto known = [&](std::string_view what, const std::string& id) {
            std::vector<std::string> texts;
            for (const seal::Parted::Words& one : *before.words)
                if (one.what == what && one.source.id == id) texts.push_back(one.source.text);
            return texts;
        };
        return Kept(std::make_shared<const Pattern>(*run, tale, known));
    }

    /// A full run of a job in which nothing came between: others go on from it, and its press's words serve all.
    struct Calm {
        run::Run run;
        std::shared_ptr<const Words> words;
    };
    std::map<std::pair<Index, int>, Calm> m_calm;
    const Shop& m_shop;
    const Story& m_story;
    mutable std::shared_mutex m_mutex;
    mutable std::map<Shape, Kept> m_patterns;
};

}  // namespace

Result<std::unique_ptr<Maker>> varied(const Shop& shop, const Story& story)
{
    auto maker = std::make_unique<Varied>(shop, story);
    if (auto ready = maker->prepare(); !ready) return ready.error();
    return std::unique_ptr<Maker>(std::move(maker));
}

}  // namespace taut::app::made
