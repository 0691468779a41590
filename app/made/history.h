// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <functional>

#include "app/made/story.h"

namespace taut::app::made {

/// How far the making of a history is.
struct Progress {
    std::size_t runs = 0, of = 0;
    std::string day;  ///< up to which the story is told, "" = it is being prepared
};
/// What was made.
struct Made {
    std::size_t runs = 0;
    std::uint64_t seals = 0;
    std::int64_t beganMs = 0, endedMs = 0;  ///< of the story
};

/// Makes a logbook of a shop that worked for some years, sealed, chained and signed as every logbook is; the same wish
/// makes the same documents, links and signatures. It takes its time: `tell` hears now and then how far it is, in the
/// caller's thread, and `stop` may be set by anybody. A logbook that was not finished is removed. The keys of its
/// people follow from the seed: they are keys of a demo, which protect nothing. Codes history.there (a file of that
/// name), history.stopped, what Story::of and Writer::open refuse.
[[nodiscard]] Result<Made> makeHistory(const Wish& wish, const std::filesystem::path& resources,
                                       const std::filesystem::path& logbook,
                                       const std::function<void(const Progress&)>& tell = {},
                                       const std::atomic<bool>* stop = nullptr);

}  // namespace taut::app::made
