// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "tests/core/logbook/keep_fixture.h"

// One folder for several PCs whose logbooks bear one name, at the same moment: nobody's file takes the name of
// another's.

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

constexpr Instant kNow{1'764'052'999'000, 60};
constexpr int kRounds = 12;

/// All of them at once, as far as threads allow.
template <class Result, std::size_t N, class Work>
std::array<Result, N> together(const Work& work)
{
    std::array<Result, N> results;
    std::atomic<std::size_t> ready = 0;
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < N; ++i)
        threads.emplace_back([&, i] {
            for (++ready; ready < N;) std::this_thread::yield();
            results.at(i) = work(i);
        });
    for (std::thread& one : threads) one.join();
    return results;
}

/// Three PCs that each call their logbook shop.logbook.
struct Share {
    Keeping first, second, third;
    std::array<Keeping*, 3> all{&first, &second, &third};
    Share()
    {
        second.asAnotherPc("pc-second");
        third.asAnotherPc("pc-third");
        for (std::size_t i = 0; i < all.size(); ++i) all.at(i)->sealMore(static_cast<int>(i) + 1);
    }
    /// A folder that nothing lies in yet.
    fs::path begin(int round)
    {
        fs::path folder = first.elsewhere / std::to_string(round);
        fs::create_directory(folder);
        return folder;
    }
};

}  // namespace

TEST_CASE("PCs that begin their mirrors in one folder in the same second each have one of their own")
{
    Share share;
    for (int round = 0; round < kRounds; ++round) {
        INFO("round " << round);
        const fs::path folder = share.begin(round);
        const auto states =
            together<MirrorState, 3>([&](std::size_t i) { return mirrorTo(share.all.at(i)->file(), folder, kNow); });
        CHECK(namesIn(folder).size() == 3);
        for (std::size_t i = 0; i < states.size(); ++i) {
            CHECK(warnings(states.at(i).findings).empty());
            REQUIRE(states.at(i).holdsAll());
            CHECK(mirrorIn(folder, share.all.at(i)->file()) == states.at(i).file);
            isInOrder(states.at(i).file, share.all.at(i)->end());
        }
    }
}

TEST_CASE("two who begin one logbook's mirror in the same second make one mirror")
{
    Keeping shop;
    shop.sealMore(3);
    for (int round = 0; round < kRounds; ++round) {
        INFO("round " << round);
        const fs::path folder = shop.elsewhere / std::to_string(round);
        fs::create_directory(folder);
        const auto states = together<MirrorState, 2>([&](std::size_t) { return mirrorTo(shop.file(), folder, kNow); });
        CHECK(namesIn(folder) == std::vector<std::string>{"shop-mirror.logbook"});
        for (const MirrorState& state : states) {
            CHECK(warnings(state.findings).empty());
            REQUIRE(state.holdsAll());
        }
        isInOrder(states[0].file, shop.end());
    }
}

TEST_CASE("PCs that copy into one folder in the same second each have a copy of their own")
{
    Share share;
    for (int round = 0; round < kRounds; ++round) {
        INFO("round " << round);
        const fs::path folder = share.begin(round);
        const auto copies = together<std::optional<Copied>, 3>([&](std::size_t i) -> std::optional<Copied> {
            auto copied = copyTo(share.all.at(i)->file(), folder, kNow);
            return copied ? std::optional(*std::move(copied)) : std::nullopt;
        });
        CHECK(namesIn(folder).size() == 3);
        for (std::size_t i = 0; i < copies.size(); ++i) {
            REQUIRE(copies.at(i));
            isInOrder(copies.at(i)->file, share.all.at(i)->end());
        }
    }
}
