// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/run_rules.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace taut::stats {
namespace {

// A difference that is no more than the rounding of its terms is none: 0.1 + 0.2 is not above 0.3.
double apart(double a, double b) noexcept
{
    const double d = a - b;
    return std::abs(d) <= 8 * std::numeric_limits<double>::epsilon() * std::max(std::abs(a), std::abs(b)) ? 0 : d;
}
int signOf(double d) noexcept { return d > 0 ? 1 : d < 0 ? -1 : 0; }

/// Points where a rule holds: its side, and which of the last points make the pattern.
struct Held {
    int side = 0;
    std::vector<std::size_t> points;
    explicit operator bool() const noexcept { return !points.empty(); }
};

class Series {
public:
    Series(std::span<const double> values, double centre, double sigma)
        : m_values(values),
          m_centre(centre),
          m_sigma(sigma)
    {}

    [[nodiscard]] Held at(Rule rule, std::size_t i) const
    {
        switch (rule) {
        case Rule::BeyondThree: return someBeyond(i, 1, 1, 3);
        case Rule::EightOneSide: return oneSide(i, 8);
        case Rule::NineOneSide: return oneSide(i, 9);
        case Rule::SixTrend: return trend(i, 6);
        case Rule::FourteenAlternating: return alternating(i, 14);
        case Rule::TwoOfThreeBeyondTwo: return someBeyond(i, 2, 3, 2);
        case Rule::FourOfFiveBeyondOne: return someBeyond(i, 4, 5, 1);
        case Rule::FifteenWithinOne: return within(i, 15);
        case Rule::EightBeyondOne: return bothSides(i, 8);
        }
        return {};
    }

private:
    [[nodiscard]] int side(std::size_t i) const { return signOf(apart(m_values[i], m_centre)); }
    // +1, -1: more than so many sigma above or below.
    [[nodiscard]] int beyond(std::size_t i, double sigmas) const
    {
        const int s = side(i);
        return s != 0 && signOf(apart(m_values[i], m_centre + s * sigmas * m_sigma)) == s ? s : 0;
    }
    [[nodiscard]] int step(std::size_t i) const { return signOf(apart(m_values[i], m_values[i - 1])); }
    [[nodiscard]] static Held last(std::size_t i, std::size_t count, int side)
    {
        Held held{side, {}};
        for (std::size_t k = i + 1 - count; k <= i; ++k) held.points.push_back(k);
        return held;
    }

    // The last point must be one of them: else an old pattern would go on firing on a point that is well.
    [[nodiscard]] Held someBeyond(std::size_t i, std::size_t wanted, std::size_t of, double sigmas) const
    {
        if (m_sigma <= 0) return {};
        Held held{beyond(i, sigmas), {}};
        if (held.side == 0) return {};
        for (std::size_t k = i + 1 >= of ? i + 1 - of : 0; k <= i; ++k)
            if (beyond(k, sigmas) == held.side) held.points.push_back(k);
        return held.points.size() >= wanted ? held : Held{};
    }
    [[nodiscard]] Held oneSide(std::size_t i, std::size_t count) const
    {
        const int s = side(i);
        if (i + 1 < count || s == 0) return {};
        for (std::size_t k = i + 1 - count; k < i; ++k)
            if (side(k) != s) return {};
        return last(i, count, s);
    }
    [[nodiscard]] Held trend(std::size_t i, std::size_t count) const
    {
        if (i + 1 < count) return {};
        const int s = step(i);
        if (s == 0) return {};
        for (std::size_t k = i + 2 - count; k < i; ++k)
            if (step(k) != s) return {};
        return last(i, count, s);
    }
    [[nodiscard]] Held alternating(std::size_t i, std::size_t count) const
    {
        if (i + 1 < count) return {};
        int s = step(i);
        if (s == 0) return {};
        for (std::size_t k = i - 1; k >= i + 2 - count; --k)
            if (step(k) != (s = -s)) return {};
        return last(i, count, 0);
    }
    [[nodiscard]] Held within(std::size_t i, std::size_t count) const
    {
        if (i + 1 < count || m_sigma <= 0) return {};
        for (std::size_t k = i + 1 - count; k <= i; ++k)
            if (beyond(k, 1) != 0) return {};
        return last(i, count, 0);
    }
    [[nodiscard]] Held bothSides(std::size_t i, std::size_t count) const
    {
        if (i + 1 < count || m_sigma <= 0) return {};
        bool above = false;
        bool below = false;
        for (std::size_t k = i + 1 - count; k <= i; ++k) {
            const int s = beyond(k, 1);
            if (s == 0) return {};
            (s > 0 ? above : below) = true;
        }
        return above && below ? last(i, count, 0) : Held{};
    }

    std::span<const double> m_values;
    double m_centre;
    double m_sigma;
};

// Points are counted upwards, so what a pattern shares with the signal lies at the signal's end.
void add(Signal& signal, std::size_t at, const Held& held)
{
    signal.fired.push_back(at);
    for (const std::size_t point : held.points)
        if (signal.points.empty() || point > signal.points.back()) signal.points.push_back(point);
}

}  // namespace

std::string_view idOf(Rule rule) noexcept
{
    switch (rule) {
    case Rule::BeyondThree: return "beyond_three";
    case Rule::EightOneSide: return "eight_one_side";
    case Rule::NineOneSide: return "nine_one_side";
    case Rule::SixTrend: return "six_trend";
    case Rule::FourteenAlternating: return "fourteen_alternating";
    case Rule::TwoOfThreeBeyondTwo: return "two_of_three_beyond_two";
    case Rule::FourOfFiveBeyondOne: return "four_of_five_beyond_one";
    case Rule::FifteenWithinOne: return "fifteen_within_one";
    case Rule::EightBeyondOne: return "eight_beyond_one";
    }
    return {};
}

Text nameOf(Rule rule)
{
    switch (rule) {
    case Rule::BeyondThree: return {"One point is beyond the control limits."};
    case Rule::EightOneSide: return {"Eight points in a row are on one side of the centre."};
    case Rule::NineOneSide: return {"Nine points in a row are on one side of the centre."};
    case Rule::SixTrend: return {"Six points in a row rise or fall."};
    case Rule::FourteenAlternating: return {"Fourteen points in a row go up and down in turn."};
    case Rule::TwoOfThreeBeyondTwo: return {"Two of three points are more than 2 sigma out on one side."};
    case Rule::FourOfFiveBeyondOne: return {"Four of five points are more than 1 sigma out on one side."};
    case Rule::FifteenWithinOne: return {"Fifteen points in a row are within 1 sigma of the centre."};
    case Rule::EightBeyondOne: return {"Eight points in a row are more than 1 sigma out, on both sides."};
    }
    return {};
}

std::vector<Signal> signalsIn(std::span<const double> values, double centre, double sigma, std::span<const Rule> rules,
                              std::size_t first)
{
    const Series series(values, centre, sigma);
    std::vector<Signal> all;
    for (const Rule rule : rules) {
        std::array<std::optional<std::size_t>, 3> last;  // its signal on each side, which alone can share points
        for (std::size_t i = 0; i < values.size(); ++i) {
            const Held held = series.at(rule, i);
            if (!held) continue;
            const int place = held.side + 1;  // below the centre, neither, above
            auto& before = last[static_cast<std::size_t>(place)];
            if (!before || all[*before].points.back() < held.points.front()) {
                before = all.size();
                all.push_back({rule, held.side, {}, {}});
            }
            add(all[*before], i, held);
        }
    }
    for (Signal& signal : all) {
        for (std::size_t& i : signal.fired) i += first;
        for (std::size_t& i : signal.points) i += first;
    }
    std::stable_sort(all.begin(), all.end(), [](const Signal& a, const Signal& b) {
        return std::pair(a.fired.front(), a.rule) < std::pair(b.fired.front(), b.rule);
    });
    return all;
}

}  // namespace taut::stats
