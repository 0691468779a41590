// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/guiding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/chance.h"

namespace taut::practice {

namespace {

/// Of a guide whose file does not say (common practice, no source).
constexpr double kStroke = 0.025, kFastest = 0.02, kWindow = 0.02, kAfter = 0.1;
constexpr double kDeadBand = 1e-4;
/// Amplifier and drive follow within so many seconds; two such lags bear a gain of 2 / kLag. A share of that, and of
/// what the web's own way to the sensor bears (pi / 2 over it), is calm.
constexpr double kLag = 0.1, kCalm = 2, kShare = 0.3;
constexpr double kHeedless = 0.03, kHasty = 60;  ///< gains of sensors that nobody calibrated
constexpr double kWellOff = 0.002;
/// A web that lies so near for so long is not hunting.
constexpr double kStill = 2e-4, kRested = 3;

}  // namespace

std::vector<Guide> guidesOf(const inputs::Press& press, const Line& line)
{
    const auto at = [&](const std::string& id) {
        const auto found =
            std::find_if(line.places.begin(), line.places.end(), [&](const LinePlace& p) { return p.id == id; });
        return static_cast<std::size_t>(found - line.places.begin());
    };
    std::vector<Guide> guides;
    for (const inputs::Guide& said : press.guides) {
        Guide guide;
        guide.id = said.id;
        guide.kind = said.kind;
        for (const std::string& roller : said.rollers)
            if (at(roller) < line.places.size()) guide.rollers.push_back(at(roller));
        std::sort(guide.rollers.begin(), guide.rollers.end());
        const bool unwind = said.kind == "unwind_shift";
        if (said.kind == "rewind_shift" || (!unwind && guide.rollers.empty())) continue;
        guide.span = guide.rollers.empty() ? 0 : guide.rollers.back() + 1;
        guide.after = said.sensorAfter ? said.sensorAfter->measure() : Length::si(kAfter);
        // A sensor that stands beyond its span looks at the next.
        while (guide.span + 1 < line.web.spans.size() && guide.after > line.web.spans[guide.span]) {
            guide.after = guide.after - line.web.spans[guide.span];
            ++guide.span;
        }
        guide.most = (said.stroke ? said.stroke->si() : kStroke) / 2;
        guide.fastest = said.correctionSpeed ? said.correctionSpeed->si() : kFastest;
        guide.window = said.sensorWindow ? said.sensorWindow->si() : kWindow;
        if (said.kind == "displacement" && guide.rollers.size() > 1)
            guide.lever = line.web.spans[guide.rollers.back()].si();
        else if (said.kind == "steering")
            guide.lever = line.web.spans[guide.rollers.front()].si() * 2 / 3;
        if (said.angleMost && !unwind) guide.most = std::min(guide.most, guide.lever * std::sin(said.angleMost->si()));
        guides.push_back(guide);
    }
    return guides;
}

Steered steered(const std::vector<Guide>& guides, const std::vector<GuideState>& states, const Line& line)
{
    Steered all;
    all.stands.resize(line.web.spans.size());
    for (std::size_t g = 0; g < guides.size(); ++g) {
        const Guide& guide = guides[g];
        const GuideState& state = states[g];
        if (guide.kind == "unwind_shift") {
            all.unwind = all.unwind + Length::si(state.moved);
            continue;
        }
        const double angle = state.moved / guide.lever;
        Stand& last = all.stands[guide.rollers.back()];
        last.turnedIn = angle;
        if (guide.kind != "displacement" || guide.rollers.size() < 2) continue;
        all.stands[guide.rollers.front()].turnedOut = angle;
        last.shift = Length::si(state.moved);
        last.shiftRate = Speed::si(state.rate);
    }
    return all;
}

void steer(const Guide& guide, GuideState& state, Length place, Speed web, std::uint64_t seed, Time by, double sees)
{
    const double truly = place.si() - state.sensor.si();
    double gain = 1;
    if (!state.calibrated) {
        Chance chance(seed, 77 + guide.rollers.size());
        gain = chance.is(0.5) ? kHeedless : kHasty;
    }
    state.read = sees * std::clamp(gain * truly, -guide.window / 2, guide.window / 2);
    const double way = guide.kind == "displacement" ? guide.after.si() : guide.after.si() + guide.lever;
    const double calm = web > Speed{} ? std::min(kCalm, kShare * std::numbers::pi / 2 * web.si() / way) : 0;
    const bool looks = state.automatic && web > Speed{};
    state.heard += ((looks ? state.read : 0) - state.heard) * std::min(1.0, by.si() / kLag);
    const double wanted = std::abs(state.heard) > kDeadBand ? -calm * state.heard : 0;
    state.pushed += ((looks ? wanted : 0) - state.pushed) * std::min(1.0, by.si() / kLag);
    state.rate = looks ? std::clamp(state.pushed, -guide.fastest, guide.fastest) : 0;
    const double to = std::clamp(state.moved + state.rate * by.si(), -guide.most, guide.most);
    state.rate = (to - state.moved) / by.si();
    state.moved = to;
    if (const int now = (state.rate > 0) - (state.rate < 0); now != 0) {
        state.turns += now * state.way < 0 ? 1 : 0;
        state.way = now;
    }
    state.still = std::abs(truly) < kStill ? state.still + by.si() : 0;
    if (state.still > kRested) state.turns = 0;
    state.off = state.automatic && std::abs(truly) > kWellOff ? state.off + by.si() : 0;
}

}  // namespace taut::practice
