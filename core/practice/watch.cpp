// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/watch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace taut::practice {

namespace {

/// Sound web is not the same everywhere: pieces of this length have a strength of their own, a few percent apart.
constexpr double kPiece = 0.25, kScatter = 0.04;
/// Hanging web is seen from here on, and gets round a roller from there on.
constexpr double kHangs = 0.3, kWraps = 1.0;
/// A swing is far above this share of the mean, which is more than what any good roll shows; seen after some turns.
constexpr double kSwing = 0.4;
constexpr int kTurns = 3;
/// A corner that stands out further than this catches (common practice, no source).
constexpr double kCatches = 0.002;
/// So many times the roll that is there is another roll.
constexpr double kFarFrom = 1.1;
/// Paper takes fire at about 230 degrees (common knowledge, from memory); above the room.
constexpr double kSmokes = 190;
/// How long a web has to lie wrong until somebody sees it, s; how often a guide turns that swings.
constexpr double kWellOffFor = 5, kBlindFor = 40;
constexpr int kSwings = 8;

}  // namespace

void Watch::look()
{
    slip();
    swing();
    tear();
    runOut();
    hang();
    carry();
    scorch();
    wander();
}

/// A core that its shaft does not hold turns on it as soon as the brake has to hold anything.
void Watch::slip()
{
    World& w = m_world;
    if (w.coreHolds() || w.m_speed == Speed{} || w.drives().brake == Torque{}) return;
    w.happens("core.slipped", "unwind", "The core slips on its shaft: the brake does not hold the roll.",
              {{{}, "roll_retained", "The roll was not held by its shaft."},
               {"core.adapter", {}, "No adapter that fits this core was used."}});
}

/// The pull of the first span over each whole turn of the roll, while the press keeps its speed.
void Watch::swing()
{
    World& w = m_world;
    World::Swing& s = w.m_swing;
    const double turn = std::floor(w.m_web.unwindTurn / (2 * std::numbers::pi));
    const double pull = tensionIn(w.m_line.web, w.m_web, 0).si();
    if (w.m_speed == Speed{} || w.m_speed != w.m_press.asked || isParted(w.m_web, 0)) {
        s = {turn + 1, pull, pull, 0};  // a turn that was begun otherwise does not count
        return;
    }
    if (turn > s.turn) {
        if (s.settled) {
            const double mean = (s.most + s.least) / 2;
            const bool far = mean > 0 && s.most - s.least > kSwing * mean;
            s.wild = far ? s.wild + 1 : 0;
        }
        s = {turn, pull, pull, s.wild, true};
    }
    s.least = std::min(s.least, pull);
    s.most = std::max(s.most, pull);
    if (s.wild < kTurns) return;
    std::vector<Cause> causes;
    if (w.m_line.web.unwind.eccentric > 0) causes.push_back({"roll.diameter", {}, "The roll is out of round."});
    w.happens("web.swings", "unwind", "The tension swings up and down once a turn of the roll.", std::move(causes));
}

std::string Watch::between(std::size_t span) const
{
    const auto& places = m_world.m_line.places;
    return span == 0 ? "unwind" : places[span - 1].id;
}

/// The zone's setting is what pulls, or what does not.
Cause Watch::settingOf(std::size_t span) const
{
    for (const LineZone& zone : m_world.m_line.zones)
        if (span >= zone.first && span <= zone.last) {
            const bool set = m_world.m_press.settings.count(zone.id) != 0;
            const inputs::Zone& profile = *m_world.m_setup.inputs.press->zone(zone.id);
            const auto& said = profile.name;
            const double wound = 2 * rewindRadius(m_world.m_line.web, m_world.m_web).si();
            if (set && profile.needsDiameter && m_world.toldDiameter(profile).si() > kFarFrom * wound)
                return {"tension." + zone.id + ".diameter",
                        {},
                        {"The drive of %1 works with the diameter of another roll.", {said}}};
            return {"tension." + zone.id + ".setting",
                    {},
                    set ? Text("The tension of %1 was not set as this roll wants it.", {said})
                        : Text("The tension of %1 was not set at all.", {said})};
        }
    return {"thread.main.length", {}, "Nothing sets the tension there."};
}

/// How much of its strength the weakest piece of a sound span has.
double Watch::soundShare(std::size_t span) const
{
    double from = m_world.paidOut();
    for (std::size_t s = 0; s < span; ++s) from -= m_world.m_web.held[s];
    const double to = from - m_world.m_web.held[span];
    double least = 1;
    for (auto piece = static_cast<std::int64_t>(std::floor(to / kPiece)); static_cast<double>(piece) * kPiece < from;
         ++piece) {
        Chance chance(m_world.m_setup.seed, static_cast<std::uint64_t>(piece) + 1000);
        least = std::min(least, 1 - kScatter * std::abs(chance.normal()));
    }
    return least;
}

void Watch::tearAt(std::size_t span, const World::Mark* weak)
{
    World& w = m_world;
    std::vector<Cause> causes;
    const double pull = tensionIn(w.m_line.web, w.m_web, span).si();
    const bool caught = !w.m_caught.empty();
    if (caught)
        causes.push_back(w.hasTail() ? Cause{"splice.margin", {}, "A tail that stood over was caught and held the web."}
                                     : Cause{"splice.step", {}, "A corner of the joint was caught and held the web."});
    if (weak != nullptr && weak->what == World::Mark::What::Nick)
        causes.push_back({"strip.diameter", {}, "A nick in the outer wraps was left on the roll."});
    else if (weak != nullptr && pull < w.m_line.breaks.si() * weak->share)
        causes.push_back({"splice.square", {}, "The joint is crooked, and its short side bears the pull."});
    else if (weak != nullptr)
        causes.push_back({"splice.gap", {}, "The joint bears less than the web."});
    if (!caught && (weak == nullptr || weak->what != World::Mark::What::Nick)) causes.push_back(settingOf(span));
    w.m_web.parted[span] = true;
    w.m_caught.clear();
    w.happens("web.broke", between(span), {"The web broke behind %1.", {between(span)}}, std::move(causes));
}

/// What the short side of a crooked joint bears, as if all the web did. Cut out of square by s, one edge of the span is
/// shorter than the other by s, so that over the width strain goes up by s / L: by half of that the short side is above
/// the mean, and where the pull is too little to draw the long side flat, it is shared by what is taut (a beam that
/// bends, as in G5). A span shorter than the web is wide gives as if it were that long, since its web slides.
double Watch::atShortSide(std::size_t span, double pull) const
{
    const WebLine& web = m_world.m_line.web;
    const double length = std::max(web.spans[span].si(), web.width.si());
    const double across = web.stiffness.si() * m_world.m_press.joint.square.si() / length;
    return pull >= across / 2 ? pull + across / 2 : std::sqrt(2 * across * pull);
}

void Watch::tear()
{
    World& w = m_world;
    const double breaks = w.m_line.breaks.si();
    for (std::size_t s = 0; s < w.m_web.held.size(); ++s) {
        const double pull = tensionIn(w.m_line.web, w.m_web, s).si();
        if (pull <= 0) continue;
        const World::Mark* weak = nullptr;
        double most = 0;  // of what it can bear there
        for (const World::Mark& mark : w.m_marks) {
            if (mark.what != World::Mark::What::Joint && mark.what != World::Mark::What::Nick) continue;
            const auto spot = w.spotOf(w.paidOut() - mark.in);
            if (!spot || spot->span != s) continue;
            const double bears = mark.what == World::Mark::What::Joint ? atShortSide(s, pull) : pull;
            if (bears <= most * breaks * mark.share) continue;
            weak = &mark;
            most = bears / (breaks * mark.share);
        }
        if (weak != nullptr && most > 1) return tearAt(s, weak);
        if (pull > breaks * (1 - 4 * kScatter) && pull > breaks * soundShare(s)) return tearAt(s, nullptr);
    }
}

/// The end of torn web, or of a roll, goes through a roller and leaves the next span as loose.
void Watch::runOut()
{
    World& w = m_world;
    auto& web = w.m_web;
    if (w.m_press.joint.led && web.unwound <= 0 && !isParted(web, 0)) {
        web.parted[0] = true;
        w.happens("roll.ran_out", "unwind", "The roll has run out, and its web left the core.",
                  {{"stop.diameter", {}, "Nothing stopped the press before the end of the roll."}});
    }
    for (std::size_t s = 0; s + 1 < web.held.size(); ++s) {
        if (!isParted(web, s) || isParted(web, s + 1) || web.held[s] > 2 * kNoWeb.si()) continue;
        web.parted[s + 1] = true;
        w.happens("web.ran_out", {}, "The end of the web has run into the press: it has to be led through anew.",
                  {{{}, "web_joined", "The press was moved while nothing hung on its web."}});
    }
}

void Watch::hang()
{
    World& w = m_world;
    if (w.m_speed == Speed{}) return;
    for (const LineZone& zone : w.m_line.zones)
        for (std::size_t s = zone.first; s <= zone.last; ++s) {
            if (isParted(w.m_web, s)) continue;
            const double slack = slackIn(w.m_line.web, w.m_web, s).si();
            if (slack < kHangs) continue;
            w.happens("web.slack", zone.id, {"The web hangs behind %1.", {between(s)}}, {settingOf(s)});
            if (slack < kWraps || s == 0) continue;
            w.m_web.parted[s] = true;
            w.happens("web.wrapped", between(s), {"The hanging web got round %1 and tore.", {between(s)}},
                      {settingOf(s)});
        }
}

/// What goes with the web comes to a print station: a tail catches in its dryer, the joint brings the new roll's face.
void Watch::carry()
{
    World& w = m_world;
    for (World::Mark& mark : w.m_marks) {
        const auto spot = w.spotOf(w.paidOut() - mark.in);
        if (!spot || spot->span <= mark.span) continue;
        for (std::size_t roller = mark.span; roller < spot->span; ++roller) {
            // Behind the joint the web lies beside where it lay before.
            if (mark.what == World::Mark::What::Joint) w.m_lateral.at[roller] += w.m_press.joint.step.si();
            const auto& station = w.m_line.places[roller].station;
            if (!station) continue;
            const auto found =
                std::find_if(w.m_setup.inputs.press->stations.begin(), w.m_setup.inputs.press->stations.end(),
                             [&](const inputs::Station& one) { return one.number == *station; });
            const bool dries =
                found != w.m_setup.inputs.press->stations.end() && !found->dryer.empty() && found->dryer != "none";
            const std::string number = std::to_string(*station);
            if (mark.standsOver() && dries) {
                w.m_caught.push_back(roller);
                w.happens("tail.caught", number, {"A tail caught in the dryer of station %1.", {number}},
                          {{"splice.margin", {}, "Web or tape stood over at a joint."}});
            }
            if (mark.what == World::Mark::What::Corner && dries && std::abs(w.m_press.joint.step.si()) > kCatches) {
                w.m_caught.push_back(roller);
                w.happens("corner.caught", number,
                          {"A corner of the joint caught in the dryer of station %1.", {number}},
                          {{"splice.step", {}, "The webs were joined with a step to the side."}});
            }
            if (mark.what != World::Mark::What::Joint) continue;
            const auto right = inputs::feedFor(*w.m_setup.inputs.press, *w.m_setup.inputs.roll);
            if (right && w.m_press.feed && *w.m_press.feed != *right)
                w.happens("print.wrong_face", number,
                          {"The wrong face of the web comes to the plates of station %1.", {number}},
                          {{"roll.feed", {}, "The roll hangs the wrong way round."}});
        }
        mark.span = spot->span;
    }
}

void Watch::scorch()
{
    World& w = m_world;
    for (std::size_t i = 0; i < w.m_heat.size(); ++i) {
        if (w.m_heat[i] < kSmokes) continue;
        const std::string number = std::to_string(*w.m_line.places[i].station);
        std::vector<Cause> causes{{{}, "lamps_parked", "The lamps were not parked."}};
        if (w.m_press.rags.count(number) != 0)
            causes.push_back({{}, "guards_closed", "Something was left lying on the dryer."});
        w.happens("lamp.smoke", number, {"It smokes at the dryer of station %1.", {number}}, std::move(causes));
    }
}

/// A guide that has come to its end, that swings, or that sees nothing.
void Watch::wander()
{
    World& w = m_world;
    for (std::size_t g = 0; g < w.m_guides.size(); ++g) {
        const Guide& guide = w.m_guides[g];
        const GuideState& state = w.m_guideStates[g];
        const bool sees = w.sees(guide.id) >= 1;
        const Cause blind{{},
                          "sensors_calibrated",
                          sees ? Text("The guide's sensor was not calibrated on this web.")
                               : Text("The guide's sensor is dirty.")};
        if (state.off > kWellOffFor && std::abs(state.moved) >= guide.most) {
            std::vector<Cause> causes;
            if (std::abs(w.m_press.offCentre.si()) > guide.most / 2)
                causes.push_back({"align.centre", {}, "The roll hangs off the middle of the press."});
            if (!state.calibrated || !sees) causes.push_back(blind);
            w.happens("guide.at_end", guide.id, {"Guide %1 stands at its end, and the web goes on.", {guide.id}},
                      std::move(causes));
        } else if (state.automatic && state.turns >= kSwings) {
            w.happens("guide.hunts", guide.id, {"Guide %1 swings to and fro.", {guide.id}},
                      state.calibrated && sees ? std::vector<Cause>{} : std::vector{blind});
        } else if (state.off > kBlindFor) {
            w.happens("guide.asleep", guide.id, {"The web lies wrong, and guide %1 does nothing.", {guide.id}},
                      state.calibrated && sees ? std::vector<Cause>{} : std::vector{blind});
        }
    }
}

}  // namespace taut::practice
