// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/job_return.h"

#include "core/targets/aim.h"
#include "core/units/plain.h"
#include "tests/core/logbook/after_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

constexpr const char* kSetting = "tension.unwind.setting";

std::optional<records::RunRow> last(const SealedShop& shop, const char* press = "north", const char* job = "J-2101",
                                    const char* substrate = "paper-label-80")
{
    auto found = records::lastRunLike(shop.writer->reader(), press, job, substrate);
    REQUIRE(found);
    return *std::move(found);
}

std::string lastId(const SealedShop& shop)
{
    const auto row = last(shop);
    return row ? row->run : std::string();
}

run::Basis basisOf(const run::Sources& sources)
{
    auto basis = run::basisFor(sources, {});
    REQUIRE(basis);
    return *std::move(basis);
}

records::JobReturn whatWasSet(const SealedShop& shop, const targets::Targets& now)
{
    auto all = records::whatWasSet(shop.writer->reader(), shop.run, now, UnitSystem::Metric);
    REQUIRE(all);
    return *std::move(all);
}

const records::SetThen& of(const records::JobReturn& all, const char* target)
{
    const auto at = std::find_if(all.settings.begin(), all.settings.end(),
                                 [&](const records::SetThen& one) { return one.target == target; });
    REQUIRE(at != all.settings.end());
    return *at;
}

}  // namespace

TEST_CASE("of a job that returns the newest signed run of its press and substrate counts")
{
    SealedShop shop;
    REQUIRE(last(shop));
    CHECK(last(shop)->run == shop.run);
    CHECK(last(shop)->operatorName == "Inka Thorsby");
    CHECK_FALSE(last(shop, "south"));
    CHECK_FALSE(last(shop, "north", "J-2102"));
    CHECK_FALSE(last(shop, "north", "J-2101", "film-pp-50"));
    CHECK_FALSE(last(shop, "", ""));

    const std::string second = shop.sealRun().id;
    CHECK(lastId(shop) == second);
    // One that was given up, or is still open, set nothing that anybody signed for.
    shop.abandonRun();
    CHECK(lastId(shop) == second);
    OpenRun open = shop.begin();
    CHECK(lastId(shop) == second);
    must(open, run::Abandon{"the test is over"}, shop.actor("p-2"));
    REQUIRE(open.seal(*shop.signer("p-2")));

    // Nor does a void one, or one that was sent back and nobody has put right.
    REQUIRE(shop.writer->review(second, {false, "the brake cannot be right"}, *shop.signer("p-1")));
    CHECK(lastId(shop) == shop.run);
    REQUIRE(shop.writer->correct(second, SealedShop::correction(), *shop.signer("p-2")));
    CHECK(lastId(shop) == second);
    REQUIRE(shop.writer->review(second, {true, ""}, *shop.signer("p-1")));
    CHECK(lastId(shop) == second);
    REQUIRE(shop.writer->voidRun(second, "set up on the wrong press", *shop.signer("p-3")));
    CHECK(lastId(shop) == shop.run);
}

TEST_CASE("a job's last run is found behind many others of the press and behind many that do not count")
{
    SealedShop shop;
    const std::string first = shop.run;
    for (int i = 0; i < 60; ++i) shop.abandonRun();
    CHECK(lastId(shop) == first);
}

TEST_CASE("what was set stands beside what is computed now, with how far they differ, by whom and when")
{
    SealedShop shop;
    const run::Basis same = basisOf(shop.sources);
    const records::JobReturn all = whatWasSet(shop, same.targets);
    const records::SetThen& unwind = of(all, kSetting);
    CHECK(unwind.then.si() == Approx(140000));  // 1.40 bar, as the fixture sets it
    CHECK(unwind.byName == "Inka Thorsby");
    CHECK(unwind.atMs > shop.clock.now().utcMs - 3'600'000);
    const auto aim = targets::aimOf(*same.targets.find(kSetting)->ready(), UnitSystem::Metric);
    REQUIRE(unwind.now);
    CHECK(*unwind.now == std::get<Quantity>(aim));
    REQUIRE(unwind.more);
    CHECK(unwind.more->si() == Approx(std::get<Quantity>(aim).si() - 140000));
    CHECK(unwind.today.verdict == verdict::Verdict::Inside);
    CHECK_FALSE(unwind.accepted);
    CHECK(of(all, "lift.pressure").then.si() > 0);
    // What is set first, each once, and nothing of the roll that is gone.
    REQUIRE(all.settings.size() >= 2);
    CHECK(all.settings.front().target.ends_with(".setting"));
    CHECK(all.settings.back().target == "lift.pressure");
    for (const records::SetThen& one : all.settings) {
        CHECK(one.target.rfind("roll.", 0) != 0);
        CHECK(std::count_if(all.settings.begin(), all.settings.end(),
                            [&](const records::SetThen& other) { return other.target == one.target; }) == 1);
    }

    // A smaller roll wants less brake: what was right then is not today.
    run::Sources small = shop.sources;
    small.roll = run::sourceOf("R0099", 0, run::mini::otherRoll("R0099", "250 mm"));
    const run::Basis other = basisOf(small);
    const records::JobReturn again = whatWasSet(shop, other.targets);
    CHECK(of(again, kSetting).then.si() == Approx(140000));
    CHECK(of(again, kSetting).more->si() < 0);
    CHECK(of(again, kSetting).today.verdict == verdict::Verdict::Outside);
}

TEST_CASE("where a target is not known this time, what was set then is told alone")
{
    SealedShop shop;
    targets::Targets none;
    const records::JobReturn all = whatWasSet(shop, none);
    CHECK(of(all, kSetting).then.si() == Approx(140000));
    CHECK_FALSE(of(all, kSetting).now);
    CHECK_FALSE(of(all, kSetting).more);
    CHECK(of(all, kSetting).today.verdict == verdict::Verdict::Missing);
}

TEST_CASE("of a corrected run the corrected value is what was set")
{
    SealedShop shop;
    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction("1.45 bar", "1.50 bar"), *shop.signer("p-2")));
    const run::Basis same = basisOf(shop.sources);
    const records::JobReturn all = whatWasSet(shop, same.targets);
    CHECK(of(all, kSetting).then.si() == Approx(150000));
}

TEST_CASE("the notes of that run come back with it: what was left at the hand-over first, then what was noted at steps")
{
    SealedShop shop;
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    while (open.run().next() != run::StepId{kUnwindStep}) REQUIRE(answerNext(open, inka));
    must(open, run::Answer{{kUnwindStep}, "1.80 bar", {}}, inka);
    must(open, run::Answer{{kUnwindStep}, "1.40 bar", {}}, inka);
    must(open, run::SayHelped{{kUnwindStep}, 0, "bled the line"}, inka);
    answerAll(open, inka);
    must(open, run::Note{{kUnwindStep}, "the gauge sticks below one bar"}, inka);
    must(open, run::SignOff{"Joint forty metres in"}, inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    shop.run = lastId(shop);
    const records::JobReturn all = whatWasSet(shop, {});
    REQUIRE(all.said.size() == 3);
    CHECK(all.said[0].about.empty());
    CHECK(plain(all.said[0].said, UnitSystem::Metric) == "Joint forty metres in");
    CHECK_FALSE(all.said[0].helped);
    CHECK(plain(all.said[1].said, UnitSystem::Metric) == "bled the line");
    CHECK(all.said[1].helped);
    CHECK(plain(all.said[2].said, UnitSystem::Metric) == "the gauge sticks below one bar");
    CHECK_FALSE(all.said[2].helped);
    for (const std::size_t at : {1U, 2U}) {
        CHECK_FALSE(all.said[at].about.empty());
        CHECK(all.said[at].byName == "Inka Thorsby");
    }
}

TEST_CASE("a run that is not there, or not signed yet, has set nothing")
{
    SealedShop shop;
    const OpenRun open = shop.begin();
    for (const std::string& run : {std::string("R-none"), open.run().id()}) {
        const auto all = records::whatWasSet(shop.writer->reader(), run, {}, UnitSystem::Metric);
        REQUIRE_FALSE(all);
        CHECK(all.error().code == "records.no_seal");
    }
}
