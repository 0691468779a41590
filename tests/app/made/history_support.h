// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/made/history.h"
#include "core/records/records.h"

namespace taut::app::test {

/// A history in a folder that goes away with it.
struct History {
    std::filesystem::path folder, file;
    made::Made made;
    std::unique_ptr<records::Reader> reader;
    explicit History(const made::Wish& wish);
    ~History();
    History(const History&) = delete;
    History& operator=(const History&) = delete;
    /// The documents of all runs, in the order of the chain.
    [[nodiscard]] std::vector<Json> runs() const;
};

[[nodiscard]] std::filesystem::path resources();
/// So many short runs in a year, with the three findings or without any.
[[nodiscard]] made::Wish brief(std::size_t runs, double strength = 1);
/// Made once, for several tests.
[[nodiscard]] const History& usual();
[[nodiscard]] const History& nothingToFind();
/// Runs of the whole procedure.
[[nodiscard]] const History& whole();

/// What a supervisor would want to know of a short run.
struct Fact {
    bool north = false, paper = false, badLot = false, night = false;
    int outside = 0;  ///< readings of the splice and the guide that came out outside
    std::int64_t begunMs = 0;
    std::optional<double> setting;  ///< of the unwind, over the middle of its window
    double tensionSeconds = 0;      ///< the stage's, where nothing came between
};
[[nodiscard]] std::vector<Fact> factsOf(const History& history);

/// Slope of y against x and its standard error, by least squares (NIST/SEMATECH e-Handbook 4.1.4.1, from memory).
struct Slope {
    double slope = 0, error = 0;
};
[[nodiscard]] Slope slopeOf(const std::vector<double>& x, const std::vector<double>& y);

}  // namespace taut::app::test
