// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <chrono>
#include <vector>

namespace taut::bench {

/// The median time of one call, in seconds, over this many calls after one that warms up.
template <class F>
double medianOf(int calls, const F& call)
{
    using Clock = std::chrono::steady_clock;
    call();
    std::vector<double> times;
    times.reserve(static_cast<std::size_t>(calls));
    for (int i = 0; i < calls; ++i) {
        const auto start = Clock::now();
        call();
        times.push_back(std::chrono::duration<double>(Clock::now() - start).count());
    }
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

/// The median time of one call in the quietest of ten batches: what else a machine does, or its neighbours on the same
/// one, only ever adds.
template <class F>
double median(int calls, const F& call)
{
    constexpr int kBatches = 10;
    double least = medianOf(calls, call);
    for (int i = 1; i < kBatches; ++i) least = std::min(least, medianOf(calls, call));
    return least;
}

}  // namespace taut::bench
