// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/lateral.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "core/physics/lateral.h"

namespace taut::practice {

namespace {

constexpr double kLongestStep = 0.01;
constexpr double kStepsPerLag = 5;

/// One span as it carries the web now.
struct Carrying {
    double speed = 0, length = 1;
    bool taut = false;
    bool beam = false;  ///< below a width of length shear has its way, and the lag of the first order says as much
    physics::LateralFactors factors{};
};

std::vector<Carrying> carryingOf(const WebLine& line, const WebState& web)
{
    std::vector<Carrying> all(line.spans.size());
    for (std::size_t s = 0; s < all.size(); ++s) {
        Carrying& one = all[s];
        one.length = line.spans[s].si();
        const double pull = tensionIn(line, web, s).si();
        one.taut = pull > 0;
        one.speed = s < line.rollers.size() ? web.speed[s] : web.rewindSpeed * rewindRadius(line, web).si();
        one.beam = line.spans[s] >= line.width;
        // K^2 = T / (E I), E I = K w^2 / 12.
        const double strain = pull / line.stiffness.si();
        if (one.beam) one.factors = physics::lateralFactors(one.length / line.width.si() * std::sqrt(12 * strain));
    }
    return all;
}

struct Slope {
    std::vector<double> at, rate;
};

/// What carries web backwards has no entry here: it stays where it lies.
void slopes(const std::vector<Carrying>& spans, const LateralState& now, double leaves,
            const std::vector<Stand>& stands, Slope& d)
{
    const Stand straight;
    const auto stand = [&](std::size_t i) -> const Stand& { return i < stands.size() ? stands[i] : straight; };
    for (std::size_t s = 0; s < spans.size(); ++s) {
        const Carrying& span = spans[s];
        const Stand& here = stand(s);
        d.at[s] = d.rate[s] = 0;
        if (!span.taut || span.speed <= 0) {
            // What is carried on a shifted roller goes with it.
            d.at[s] = here.shiftRate.si();
            d.rate[s] = 0;
            continue;
        }
        const double before = s == 0 ? leaves : now.at[s - 1], per = span.speed / span.length;
        if (!span.beam) {
            d.at[s] = per * (before - now.at[s]) + span.speed * here.turnedIn + here.shiftRate.si();
            continue;
        }
        const Stand& entry = s == 0 ? straight : stand(s - 1);
        const double came = s == 0 ? 0 : now.rate[s - 1] - entry.shiftRate.si();
        const auto& [f, f1, f2, f3] = span.factors;
        d.at[s] = now.rate[s];
        d.rate[s] = f1 * per * per * (before - now.at[s]) - f2 * per * (now.rate[s] - here.shiftRate.si()) +
                    f2 * per * span.speed * here.turnedIn + f3 * per * (span.speed * entry.turnedOut - came);
    }
}

}  // namespace

LateralState lyingAt(const WebLine& line, Length place)
{
    return {std::vector<double>(line.spans.size(), place.si()), std::vector<double>(line.spans.size(), 0.0)};
}

void advance(const WebLine& line, const WebState& web, LateralState& state, Length leaves,
             const std::vector<Stand>& stands, Time by)
{
    const std::vector<Carrying> spans = carryingOf(line, web);
    double fastest = 1 / (kStepsPerLag * kLongestStep);
    for (std::size_t s = 0; s < spans.size(); ++s) {
        const Carrying& span = spans[s];
        if (!span.taut || span.speed <= 0 || !span.beam) state.rate[s] = 0;
        if (span.taut)
            fastest = std::max(fastest, (span.beam ? span.factors.f2 : 1) * std::abs(span.speed) / span.length);
    }
    const auto steps = static_cast<std::int64_t>(std::ceil(by.si() * kStepsPerLag * fastest));
    if (steps <= 0) return;
    const double step = by.si() / static_cast<double>(steps);
    const std::size_t count = spans.size();
    Slope k1{std::vector<double>(count), std::vector<double>(count)}, k2 = k1, k3 = k1, k4 = k1;
    LateralState now = state;
    const auto move = [&](const Slope& k, double part) {
        for (std::size_t s = 0; s < count; ++s) {
            now.at[s] = state.at[s] + part * k.at[s];
            now.rate[s] = state.rate[s] + part * k.rate[s];
        }
    };
    for (std::int64_t i = 0; i < steps; ++i) {
        now = state;
        slopes(spans, now, leaves.si(), stands, k1);
        move(k1, step / 2);
        slopes(spans, now, leaves.si(), stands, k2);
        move(k2, step / 2);
        slopes(spans, now, leaves.si(), stands, k3);
        move(k3, step);
        slopes(spans, now, leaves.si(), stands, k4);
        for (std::size_t s = 0; s < count; ++s) {
            state.at[s] += step / 6 * (k1.at[s] + 2 * k2.at[s] + 2 * k3.at[s] + k4.at[s]);
            state.rate[s] += step / 6 * (k1.rate[s] + 2 * k2.rate[s] + 2 * k3.rate[s] + k4.rate[s]);
        }
    }
}

Length placeIn(const WebLine& line, const LateralState& state, std::size_t span, Length behind, Length leaves)
{
    const double from = span == 0 ? leaves.si() : state.at[span - 1], to = state.at[span];
    const double share = std::clamp(behind.si() / line.spans[span].si(), 0.0, 1.0);
    return Length::si(from + share * (to - from));
}

}  // namespace taut::practice
