// SPDX-License-Identifier: GPL-3.0-or-later
#include <mutex>
#include <shared_mutex>

#include "app/made/gauge.h"
#include "app/made/player.h"
#include "app/made/variation.h"

namespace taut::app::made {

namespace {

constexpr std::uint64_t kShapeStream = 5'000'000'000'000;
/// So long a short run takes about.
constexpr std::int64_t kShortMs = 4 * kMinuteMs;

Shape shapeOf(const Tale& tale, std::uint64_t seed)
{
    const Trouble& trouble = tale.trouble;
    Shape shape{tale.job,
                tale.edition,
                tale.kind,
                !trouble.interrupted.empty(),
                !trouble.abandoned.empty(),
                !trouble.note.empty(),
                trouble.corrected,
                trouble.webBreak,
                tale.begin.utcMs + kShortMs > tale.shiftEndMs,
                {}};
    Chance chance(seed, kShapeStream + tale.stream);
    for (const char* target : {"guide.web.rest", "splice.gap", "tension.unwind.setting"}) {
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

private:
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

    /// Words stand under the press: those of its first job serve all of them.
    [[nodiscard]] Result<std::vector<seal::Parted::Words>> wordsOf(const std::string& press, int edition) const
    {
        Shape calm;
        calm.job = jobsOf(press).front();
        calm.edition = edition;
        calm.kind = "full";
        const Tale tale = taleOf(calm, press);
        const auto run = play(tale, m_shop, nullptr);
        if (!run) return run.error();
        return seal::partWords(seal::documentOf(*run)).words;
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
        std::optional<run::Run> parent;
        if (shape.kind != "full") {
            Shape calm;
            calm.job = shape.job;
            calm.edition = shape.edition;
            calm.kind = "full";
            auto before = play(taleOf(calm, press), m_shop, nullptr);
            if (!before) return before.error();
            parent = *std::move(before);
        }
        Tale tale = taleOf(shape, press);
        if (parent) tale.run += "-next";
        const auto run = play(tale, m_shop, parent ? &*parent : nullptr);
        if (!run) return run.error();
        const auto words = wordsOf(press, shape.edition);
        if (!words) return words.error();
        const auto known = [&](std::string_view what, const std::string& id) {
            std::vector<std::string> texts;
            for (const seal::Parted::Words& one : *words)
                if (one.what == what && one.source.id == id) texts.push_back(one.source.text);
            return texts;
        };
        return Kept(std::make_shared<const Pattern>(*run, std::move(tale), known));
    }

    const Shop& m_shop;
    const Story& m_story;
    mutable std::shared_mutex m_mutex;
    mutable std::map<Shape, Kept> m_patterns;
};

}  // namespace

Result<std::unique_ptr<Maker>> varied(const Shop& shop, const Story& story)
{
    return std::unique_ptr<Maker>(std::make_unique<Varied>(shop, story));
}

}  // namespace taut::app::made
