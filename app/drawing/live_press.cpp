// SPDX-License-Identifier: GPL-3.0-or-later
// What the drawing of a practice press shows, told from its state.
#include "app/drawing/live_press.h"

#include <algorithm>
#include <cmath>

#include <QStringList>

#include "app/drawing/elevation_parts.h"
#include "app/text/words.h"

namespace taut::app {

namespace {

using practice::World;

/// Where less than this pulls, web looks slack, N.
constexpr double kNothing = 0.5;
/// Web that bears nothing and still has its length hangs through so deep, m; none is drawn deeper than the latter.
constexpr double kLimp = 0.03, kDeepest = 0.3;
/// Marks stand so far apart in the web at rest, m, and further where they run fast.
constexpr double kMarks = 0.4;

/// A chain that is a little longer than its span hangs so deep (parabola, to the first order).
double depthOf(double length, double slack)
{
    return std::clamp(std::sqrt(3.0 / 8.0 * length * slack), kLimp, kDeepest);
}

LivePress::Span spanOf(const World& world, std::size_t s)
{
    using State = LivePress::Span::State;
    const auto& line = world.line().web;
    LivePress::Span span;
    const bool empty = world.web().held[s] <= 2 * practice::kNoWeb.si();
    if (practice::isParted(world.web(), s)) {
        span.state = empty ? State::None : State::Broken;
        return span;
    }
    if (practice::tensionIn(line, world.web(), s).si() >= kNothing) {
        span.state = State::Taut;
        return span;
    }
    span.state = State::Slack;
    span.hangs = depthOf(line.spans[s].si(), std::max(0.0, practice::slackIn(line, world.web(), s).si()));
    return span;
}

/// The geometry with the rolls as large as given; where it cannot be drawn so, as it was.
physics::WebPath pathWith(const physics::WebPath& path, Length unwind, Length rewind)
{
    std::vector<physics::RollerPlace> rollers = path.rollers;
    rollers.front().diameter = unwind;
    rollers.back().diameter = rewind;
    auto drawn = physics::webPath(rollers);
    return drawn ? *std::move(drawn) : path;
}

/// Web is told by how much of it lies between it and the unwind: from span to span it goes on without a break.
void addMarks(const World& world, Length step, std::vector<LivePress::Span>& spans)
{
    constexpr double kShare = 0.4;  // of the way between two marks, at most, from one picture to the next
    double apart = kMarks;
    while (step.si() > kShare * apart && apart < 1e3) apart *= 2;
    double at = -world.web().unwound;  // of the web that leaves the unwind now
    for (std::size_t s = 0; s < spans.size(); ++s) {
        const double held = world.web().held[s];
        const bool there =
            spans[s].state == LivePress::Span::State::Taut || spans[s].state == LivePress::Span::State::Slack;
        if (there && held > 0)
            for (double mark = std::floor(at / apart) * apart; mark > at - held; mark -= apart)
                spans[s].marks.push_back((at - mark) / held);
        at -= held;
    }
}

}  // namespace

LivePress livePressOf(const World& world, const inputs::Press& press, Length step)
{
    const auto& line = world.line();
    const practice::PressState& state = world.press();
    LivePress live;
    live.hung = state.roll == practice::RollAt::Shaft;
    live.onLift = state.roll == practice::RollAt::Lift;
    live.lifted = state.lifted;
    live.rollRadius = line.path.rollers.front().diameter.si() / 2;
    for (const inputs::Roller& roller : press.rollers) {
        live.view.kinds[roller.id] = roller.kind;
        if (roller.station && line.path.arc(roller.id) != nullptr) live.view.stations[roller.id] = *roller.station;
    }
    live.view.nobodyThere = true;
    live.extent = live.view;
    const Length whole = line.path.rollers.front().diameter, core = line.web.unwind.core * 2;
    const Length unwind = live.hung ? practice::unwindRadius(line.web, world.web()) * 2 : whole;
    const Length rewind = practice::rewindRadius(line.web, world.web()) * 2;
    live.view.paths = {{"main", pathWith(line.path, std::max(unwind, core), rewind)}};
    live.extent.paths = {{"main", line.path}};
    live.extent.paths.front().path.rollers.back().diameter = whole;
    for (std::size_t s = 0; s < line.web.spans.size(); ++s) live.spans.push_back(spanOf(world, s));
    addMarks(world, step, live.spans);
    live.unwindTurned = world.web().unwindTurn;
    live.rewindTurned = world.web().rewindTurn;
    for (const inputs::Device& guard : press.guards)
        if (rollerOf(live.view, guard.by) != nullptr)
            live.guards.push_back({guard.by, state.open.count(guard.id) != 0});
    for (const inputs::Station& station : press.stations) {
        const std::string number = std::to_string(station.number);
        if (station.dryer.empty() || station.dryer == "none") continue;
        live.dryers.push_back({station.roller, state.lampsOpen.count(number) != 0, state.rags.count(number) != 0});
    }
    for (const practice::LinePlace& place : line.places)
        if (place.nip) live.nips.emplace_back(place.id, state.nips.count(place.id) != 0);
    live.clamped = state.tableClamps;
    for (std::size_t i = 0; i < line.places.size(); ++i)
        if (line.places[i].id == press.spliceTable.after) live.table = i + 1;
    if (const auto joint = world.joint())
        live.joint = {joint->span, joint->along.si() / line.web.spans[joint->span].si()};
    return live;
}

double livePressHeight(const LivePress& press, double width, const Look& look)
{
    return elevationHeight(press.extent, width, look);
}

QString livePressInWords(const LivePress& press)
{
    QStringList slack, broken, open;
    const auto& spans = press.view.paths.front().path.spans;
    for (std::size_t s = 0; s < press.spans.size() && s < spans.size(); ++s) {
        if (press.spans[s].state == LivePress::Span::State::Slack) slack << dataText(spans[s].from);
        if (press.spans[s].state == LivePress::Span::State::Broken) broken << dataText(spans[s].from);
    }
    for (const LivePress::Guard& guard : press.guards)
        if (guard.open) open << dataText(guard.by);
    const auto said = [](const char* english, const QStringList& which) {
        return which.isEmpty() ? QString() : drawnWord(english).arg(which.join(QStringLiteral(", ")));
    };
    QStringList all{elevationInWords(press.view),
                    said(QT_TRANSLATE_NOOP("drawing", "The web is slack behind: %1."), slack),
                    said(QT_TRANSLATE_NOOP("drawing", "The web has an end behind: %1."), broken),
                    said(QT_TRANSLATE_NOOP("drawing", "Guards stand open at: %1."), open)};
    all.removeAll(QString());
    return all.join(QLatin1Char(' '));
}

}  // namespace taut::app
