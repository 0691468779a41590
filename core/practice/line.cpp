// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/inputs/path_of.h"
#include "core/physics/motion.h"
#include "core/physics/roll.h"

namespace taut::practice {

namespace {

using inputs::Inputs;

/// Within published ranges (S25, S27 to S29; nylon, vinyl, acetate, polystyrene and board strength: common practice, no
/// source), for a substrate whose file does not say.
struct Usual {
    const char* family;
    double modulus;   ///< Pa
    double strength;  ///< Pa
};
constexpr std::array kUsual{
    Usual{"paper", 3.8e9, 40e6},   Usual{"board", 3.8e9, 40e6},       Usual{"paper_label", 3.8e9, 40e6},
    Usual{"thermal", 3.8e9, 40e6}, Usual{"film_label", 2.5e9, 100e6}, Usual{"pet", 4.5e9, 200e6},
    Usual{"bopp", 2.5e9, 150e6},   Usual{"pp", 1.2e9, 40e6},          Usual{"pe", 0.5e9, 20e6},
    Usual{"nylon", 2.5e9, 60e6},   Usual{"foil", 69e9, 80e6},         Usual{"vinyl", 2.5e9, 50e6},
    Usual{"acetate", 2.5e9, 60e6}, Usual{"cellophane", 3e9, 60e6},    Usual{"polystyrene", 3e9, 40e6},
};
const Usual& usualOf(const std::string& family)
{
    const auto found = std::find_if(kUsual.begin(), kUsual.end(), [&](const Usual& u) { return family == u.family; });
    return found == kUsual.end() ? kUsual.front() : *found;
}

/// A tube of aluminium, 5 mm of wall (common practice, no source).
constexpr double kAluminium = 2700, kWall = 0.005;
/// Web on steel or aluminium (C3).
constexpr double kUsualFriction = 0.3;
/// Bearings of an idler at its surface; of a shaft as torque (common practice, no source).
constexpr Force kBearing = Force::si(0.4);
constexpr Torque kShaftDrag = Torque::si(0.15);
constexpr Inertia kShaft = Inertia::si(0.02);
/// A loss of a few percent at the speeds at which rollers swing (common practice, no source).
constexpr Time kLoss = Time::si(3e-4);
constexpr Mass kUsualCore = Mass::si(0.9);

Finding needs(const std::string& key)
{
    return refuse("practice.needs", key, {"The practice press needs %1.", {key}},
                  "Write it in the file that it belongs to.");
}
void assume(Findings& assumed, const std::string& key, const Quantity& taken)
{
    assumed.push_back({"practice.assumed",
                       Severity::Note,
                       key,
                       {"%1 is not said: the practice press takes %2.", {key, taken.magnitude()}},
                       "Write it in its file, and practice goes by it."});
}

class Builder {
public:
    Builder(const Inputs& inputs, inputs::Feed feed) : m_in(inputs), m_feed(feed) {}

    Result<Line> build()
    {
        const auto& press = *m_in.press;
        const auto& roll = *m_in.roll;
        if (!roll.outerDiameter) return needs("roll.outer_diameter");
        if (!roll.core) return needs("roll.core");
        if (!m_in.substrate->caliper) return needs("substrate.caliper");
        if (!roll.width && !m_in.job->webWidth) return needs("roll.width");
        const auto path = inputs::pathOf(press, "main", roll.outerDiameter->measure(), m_feed);
        if (!path) return path.error();
        m_line.path = path->path;
        stuff();
        if (const auto done = rollers(); !done) return done.error();
        if (const auto done = rolls(); !done) return done.error();
        zones();
        return std::move(m_line);
    }

private:
    void stuff()
    {
        const auto& substrate = *m_in.substrate;
        const Usual& usual = usualOf(substrate.family);
        WebLine& web = m_line.web;
        web.width = m_in.roll->width ? m_in.roll->width->measure() : m_in.job->webWidth->measure();
        web.caliper = substrate.caliper->measure();
        Pressure modulus = Pressure::si(usual.modulus);
        if (substrate.modulus)
            modulus = substrate.modulus->measure();
        else
            assume(m_line.assumed, "substrate.modulus", Quantity(modulus, Kind::Pressure, "GPa"));
        web.stiffness = modulus * web.width * web.caliper;
        web.loss = kLoss;
        web.grammage = Grammage::si(1000 * web.caliper.si());  // as heavy as water
        if (substrate.grammage)
            web.grammage = substrate.grammage->measure();
        else
            assume(m_line.assumed, "substrate.grammage", Quantity(web.grammage, Kind::Grammage, "g/m2"));
        m_line.breaks = strength(usual) * web.width;
    }
    /// Of the whole web, else of its layers together, else as usual for its family.
    [[nodiscard]] ForcePerWidth strength(const Usual& usual)
    {
        const auto& substrate = *m_in.substrate;
        if (substrate.strength) return substrate.strength->measure();
        ForcePerWidth layers;
        for (const inputs::Layer& layer : substrate.layers)
            if (layer.strength) layers = layers + layer.strength->measure();
        if (layers.si() > 0) return layers;
        const ForcePerWidth taken = Pressure::si(usual.strength) * m_line.web.caliper;
        assume(m_line.assumed, "substrate.strength", Quantity(taken, Kind::ForcePerWidth, "N/mm"));
        return taken;
    }

    Result<Done> rollers()
    {
        const auto& path = m_line.path;
        for (std::size_t i = 0; i < path.spans.size(); ++i) m_line.web.spans.push_back(path.spans[i].length);
        for (std::size_t i = 1; i + 1 < path.rollers.size(); ++i) {
            const inputs::Roller* roller = m_in.press->roller(path.rollers[i].id);
            if (roller == nullptr) return needs("press.web.roller");
            LineRoller one;
            one.id = roller->id;
            one.radius = path.rollers[i].diameter / 2;
            one.wrap = path.arcs[i].wrap;
            one.friction = roller->friction.value_or(m_in.substrate->friction.value_or(kUsualFriction));
            one.drag = kBearing;
            one.inertia = roller->inertia ? roller->inertia->measure() : tube(one.radius);
            if (roller->roughness && m_in.substrate->roughness)
                one.roughness = Length::si(std::hypot(roller->roughness->si(), m_in.substrate->roughness->si()));
            m_line.web.rollers.push_back(one);
            const bool nip = roller->kind == "nip";
            const bool driven = nip || roller->kind == "print" || roller->kind == "die";
            m_line.places.push_back({roller->id, driven ? Turned::Drive : Turned::Free, nip, roller->station});
        }
        return Done{};
    }
    [[nodiscard]] Inertia tube(Length radius) const
    {
        const Length face = m_in.press->betweenFrames ? m_in.press->betweenFrames->measure() : m_line.web.width * 1.2;
        const double inner = std::max(0.0, radius.si() - kWall);
        const double mass = std::numbers::pi * (radius.si() * radius.si() - inner * inner) * face.si() * kAluminium;
        return physics::rollInertia(Mass::si(mass), radius, Length::si(inner));
    }

    Result<Done> rolls()
    {
        const auto& roll = *m_in.roll;
        const auto& unwind = m_in.press->unwind;
        Length wall;
        if (roll.coreWall)
            wall = roll.coreWall->measure();
        else if (unwind && unwind->coreWall)
            wall = unwind->coreWall->measure();
        else
            return needs("roll.core_wall");
        WoundRoll& from = m_line.web.unwind;
        const Length bore = roll.core->measure() / 2;
        from.core = bore + wall;
        from.drag = kShaftDrag;
        const Mass core = roll.coreMass ? roll.coreMass->measure() : kUsualCore;
        from.bare = physics::rollInertia(core, from.core, bore);
        from.bare = from.bare + (unwind && unwind->shaftInertia ? unwind->shaftInertia->measure() : kShaft);
        if (roll.outerDiameter->measure() / 2 <= from.core) return needs("roll.outer_diameter");

        const inputs::Rewind* rewind = nullptr;
        for (const inputs::Rewind& one : m_in.press->rewinds)
            if (!rewind && one.roller == m_line.path.rollers.back().id) rewind = &one;
        if (rewind == nullptr) return needs("press.rewind");
        const auto outside = inputs::rewindCoreOutside(*rewind);
        if (!outside) return outside.error();
        WoundRoll& to = m_line.web.rewind;
        to.core = *outside / 2;
        to.drag = kShaftDrag;
        to.bare = physics::rollInertia(kUsualCore, to.core, to.core * 0.8);
        to.bare = to.bare + (rewind->shaftInertia ? rewind->shaftInertia->measure() : kShaft);
        return Done{};
    }

    /// A zone goes from the roller that it names first to the one that it names last; what cannot be found is no zone.
    void zones()
    {
        const auto& rollers = m_line.path.rollers;
        const auto at = [&](const std::string& id) {
            const auto found = std::find_if(rollers.begin(), rollers.end(), [&](const auto& r) { return r.id == id; });
            return found == rollers.end() ? std::optional<std::size_t>()
                                          : std::optional<std::size_t>(found - rollers.begin());
        };
        for (const inputs::Zone& zone : m_in.press->zones) {
            const auto from = at(zone.from), to = at(zone.to);
            if (from && to && *from < *to) m_line.zones.push_back({zone.id, *from, *to - 1});
        }
    }

    const Inputs& m_in;
    inputs::Feed m_feed;
    Line m_line;
};

}  // namespace

Result<Line> lineOf(const Inputs& inputs, inputs::Feed feed) { return Builder(inputs, feed).build(); }

Length webOn(const WebLine& line, Length outer, Length core)
{
    return physics::rollLength(outer * 2, core * 2, line.caliper);
}

}  // namespace taut::practice
