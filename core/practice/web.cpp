// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/web.h"

#include "core/physics/traction.h"
#include "core/practice/web_parts.h"

namespace taut::practice {

namespace {

/// Air at 20 degrees (from memory).
constexpr Viscosity kAir = Viscosity::si(1.81e-5);
constexpr double kLongestStep = 0.01;
constexpr double kStepsPerRadian = 4;

}  // namespace

double gripOf(const WebLine& line, const LineRoller& roller, Speed speed, Force tension)
{
    if (roller.roughness.si() <= 0) return physics::capstanRatio(roller.friction, roller.wrap);
    const Length film = physics::airFilm(roller.radius, kAir, 2 * speed, tension / line.width);
    return physics::capstanOverAir(roller.friction, roller.wrap, film, roller.roughness);
}

WebState atRest(const WebLine& line, Length onUnwind, Length onRewind, Force tension)
{
    WebState state;
    state.unwound = onUnwind.si();
    state.rewound = onRewind.si();
    const double strain = (tension / line.stiffness).si();
    for (const Length& span : line.spans) state.held.push_back(span.si() / (1 + strain));
    state.speed.resize(line.rollers.size());
    state.slid.resize(line.rollers.size());
    return state;
}

Time stepFor(const WebLine& line, const WebState& state)
{
    const double stiffness = line.stiffness.si();
    double fastest = 0;
    const auto swings = [&](double perLength, double mass) {
        if (mass > 0) fastest = std::max(fastest, std::sqrt(stiffness * perLength / mass));
    };
    for (std::size_t i = 0; i < line.rollers.size(); ++i) {
        const LineRoller& roller = line.rollers[i];
        swings(1 / line.spans[i].si() + 1 / line.spans[i + 1].si(),
               roller.inertia.si() / (roller.radius.si() * roller.radius.si()));
        fastest = std::max(fastest, std::abs(state.speed[i]) / std::min(line.spans[i].si(), line.spans[i + 1].si()));
    }
    const auto roll = [&](const WoundRoll& of, double wound, Length span) {
        const double outer = radius(of, line, wound);
        swings(1 / span.si(), inertia(of, line, wound, outer) / (outer * outer));
    };
    roll(line.unwind, state.unwound, line.spans.front());
    roll(line.rewind, state.rewound, line.spans.back());
    return Time::si(fastest > 0 ? std::min(kLongestStep, 1 / (kStepsPerRadian * fastest)) : kLongestStep);
}

void advance(const WebLine& line, WebState& state, const Drives& drives, Time by)
{
    const double whole = std::max(0.0, by.si());
    const auto steps = static_cast<std::int64_t>(std::ceil(whole / stepFor(line, state).si()));
    goOn(line, state, drives, steps > 0 ? whole / static_cast<double>(steps) : 0, steps);
}

Force tensionIn(const WebLine& line, const WebState& state, std::size_t span)
{
    return isParted(state, span) ? Force{} : line.stiffness * strainOf(line.spans[span].si(), state.held[span]);
}

Length slackIn(const WebLine& line, const WebState& state, std::size_t span)
{
    return Length::si(std::max(0.0, state.held[span] - line.spans[span].si()));
}

Length unwindRadius(const WebLine& line, const WebState& state)
{
    return Length::si(radius(line.unwind, line, state.unwound));
}

Length rewindRadius(const WebLine& line, const WebState& state)
{
    return Length::si(radius(line.rewind, line, state.rewound));
}

Length webOf(const WebState& state)
{
    double all = state.unwound + state.rewound;
    for (const double held : state.held) all += held;
    return Length::si(all);
}

Energy energyOf(const WebLine& line, const WebState& state)
{
    Energy energy;
    for (std::size_t s = 0; s < line.spans.size(); ++s) {
        const double strain = isParted(state, s) ? 0 : strainOf(line.spans[s].si(), state.held[s]);
        energy.strained += line.stiffness.si() * strain * strain / 2 * state.held[s];
    }
    for (std::size_t i = 0; i < line.rollers.size(); ++i) {
        const LineRoller& roller = line.rollers[i];
        energy.moving +=
            roller.inertia.si() / (roller.radius.si() * roller.radius.si()) * state.speed[i] * state.speed[i] / 2;
    }
    const auto roll = [&](const WoundRoll& of, double wound, double speed) {
        return inertia(of, line, wound, radius(of, line, wound)) * speed * speed / 2;
    };
    energy.moving += roll(line.unwind, state.unwound, state.unwindSpeed);
    energy.moving += roll(line.rewind, state.rewound, state.rewindSpeed);
    return energy;
}

}  // namespace taut::practice
