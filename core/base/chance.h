// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>

namespace taut {

/// Numbers that follow from a seed, the same on every machine and by every library: splitmix64 (Steele, Lea and Flood
/// 2014, from memory). Each thing that is made has a stream of its own, so that one more number drawn here changes
/// nothing there.
class Chance {
public:
    explicit Chance(std::uint64_t seed, std::uint64_t stream = 0) : m_state(mixed(mixed(seed) ^ (stream + kGolden))) {}

    std::uint64_t next() noexcept
    {
        m_state += kGolden;
        return mixed(m_state);
    }
    /// At least 0, less than 1.
    double unit() noexcept
    {
        constexpr int kSpare = 11;  // a double holds 53 bits
        return static_cast<double>(next() >> kSpare) * 0x1.0p-53;
    }
    double between(double least, double most) noexcept { return least + (most - least) * unit(); }
    bool is(double probability) noexcept { return unit() < probability; }
    /// One of 0 to n - 1.
    std::size_t below(std::size_t n) noexcept { return static_cast<std::size_t>(unit() * static_cast<double>(n)); }
    template <class List>
    const auto& oneOf(const List& list) noexcept
    {
        return list[below(std::size(list))];
    }
    /// Normal of mean 0 and deviation 1 (Box and Muller 1958), no further out than 3: nobody reads a gauge that wrong.
    double normal() noexcept
    {
        const double across = std::sqrt(-2 * std::log(1 - unit())) * std::cos(2 * std::numbers::pi * unit());
        constexpr double kMost = 3;
        return across < -kMost ? -kMost : across > kMost ? kMost : across;
    }

private:
    static constexpr std::uint64_t kGolden = 0x9E3779B97F4A7C15U;
    static std::uint64_t mixed(std::uint64_t x) noexcept
    {
        x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
        x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
        return x ^ (x >> 31U);
    }
    std::uint64_t m_state;
};

}  // namespace taut
