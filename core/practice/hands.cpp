// SPDX-License-Identifier: GPL-3.0-or-later
// The work of hands at the practice press: roll, web, joint.
#include "core/practice/hands.h"

#include <algorithm>

#include "core/physics/roll.h"

namespace taut::practice {

namespace {

constexpr double kWrapsStripped = 3;
/// A nick that has begun to tear leaves so little (common practice, no source).
constexpr double kNickLeast = 0.004, kNickMost = 0.03;
constexpr double kUsualJoint = 0.7;  ///< of the web's strength, where the tape's is not said

}  // namespace

Finding first(const std::string& what, Text text)
{
    return refuse("practice.first", what, std::move(text), "Do that first.");
}

Result<Done> Hands::rollToLift(const Deed&)
{
    if (m_w.m_press.roll == RollAt::Shaft) return first("stop", "A roll hangs on the shaft already.");
    m_w.m_press.roll = RollAt::Lift;
    return Done{};
}
/// Over or under, as `item` says; `to` is how far it hangs off the middle.
Result<Done> Hands::hang(const Deed& d)
{
    const bool lifts = m_press.unwind && m_press.unwind->lift;
    if (lifts && m_w.m_press.lifted < 1) return first("lift_up", "The roll is not up at the shaft.");
    if (m_w.m_press.roll == RollAt::Shaft) return first("stop", "A roll hangs on the shaft already.");
    if (d.item != "over" && d.item != "under")
        return refuse("practice.deed", d.item, "A roll hangs so that its web leaves over or under.",
                      "Say over or under.");
    const inputs::Feed feed = d.item == "over" ? inputs::Feed::Over : inputs::Feed::Under;
    auto line = lineOf(m_w.m_setup.inputs, feed);
    if (!line) return line.error();
    m_w.m_line = *std::move(line);
    m_w.m_press.feed = feed;
    m_w.m_press.roll = RollAt::Shaft;
    if (d.to) m_w.m_press.offCentre = Length::si(d.to->si());
    const WebLine& web = m_w.m_line.web;
    m_w.m_web.unwound = webOn(web, m_w.m_setup.inputs.roll->outerDiameter->measure() / 2, web.unwind.core).si();
    m_w.m_onRoll = m_w.m_web.unwound;
    if (m_w.has("wraps.nicked") || m_w.m_setup.inputs.roll->condition == "nicked") {
        // Where it was knocked, and how deep, nobody sees from outside.
        Chance chance(m_w.m_setup.seed, 1);
        const double wraps =
            physics::strippedLength(unwindRadius(web, m_w.m_web) * 2, web.caliper, kWrapsStripped).si();
        for (int i = 0; i < 3; ++i) {
            const double in = chance.between(0, wraps);
            m_w.m_marks.push_back({World::Mark::What::Nick, in, chance.between(kNickLeast, kNickMost), 0});
        }
    }
    return Done{};
}
Result<Done> Hands::strip(const Deed&)
{
    if (m_w.m_press.roll != RollAt::Shaft) return first("hang_roll", "No roll hangs on the shaft.");
    if (m_w.m_press.joint.led) return first("strip_wraps", "The web is led away already.");
    const WebLine& web = m_w.m_line.web;
    const double off = physics::strippedLength(unwindRadius(web, m_w.m_web) * 2, web.caliper, kWrapsStripped).si();
    // What comes off never was on the line: the roll begins where it ends.
    m_w.m_web.unwound -= off;
    m_w.m_onRoll -= off;
    m_w.m_press.stripped = true;
    const auto gone = [&](World::Mark& mark) {
        if (mark.what != World::Mark::What::Nick) return false;
        mark.in -= off;
        return mark.in < 0;
    };
    m_w.m_marks.erase(std::remove_if(m_w.m_marks.begin(), m_w.m_marks.end(), gone), m_w.m_marks.end());
    return Done{};
}

double Hands::upstream(std::size_t spans) const
{
    double all = 0;
    for (std::size_t s = 0; s < spans; ++s) all += m_w.m_web.held[s];
    return all;
}

/// By hand from the roll to the table, in bights.
Result<Done> Hands::lead(const Deed&)
{
    constexpr double kBight = 0.02;
    if (m_w.m_press.roll != RollAt::Shaft) return first("hang_roll", "No roll hangs on the shaft.");
    if (m_w.m_press.joint.led) return Done{};
    WebState& web = m_w.m_web;
    const double before = upstream(m_w.m_table + 1), paid = m_w.paidOut();
    for (std::size_t s = 0; s <= m_w.m_table; ++s) {
        web.held[s] = m_w.m_line.web.spans[s].si() + (s < m_w.m_table ? kBight : 0);
        if (s < m_w.m_table) {
            web.parted[s] = false;
            web.unwound -= web.held[s];
        }
    }
    // Half of what lies over the table is of the new web.
    web.unwound -= web.held[m_w.m_table] / 2;
    const double moved = m_w.paidOut() - paid + before - upstream(m_w.m_table + 1);
    for (World::Mark& mark : m_w.m_marks)
        if (mark.what == World::Mark::What::Tail) mark.in += moved;
    m_w.m_press.joint.led = true;
    return Done{};
}
Result<Done> Hands::cut(const Deed&)
{
    if (!m_w.m_press.joint.led) return first("lead_web", "The new web does not lie on the table.");
    if (!m_w.m_press.tableClamps) return first("clamp_web", "Nothing holds the two webs.");
    m_w.m_press.joint.cut = true;
    return Done{};
}
Result<Done> Hands::tape(const Deed&)
{
    if (!m_w.m_press.joint.cut) return first("cut_ends", "The ends are not cut together.");
    if (!m_w.m_press.tableClamps) return first("clamp_web", "Nothing holds the two webs.");
    if (m_w.m_press.joint.taped) return Done{};
    const auto& tape = m_w.m_setup.inputs.substrate->spliceTape;
    const double breaks = (m_w.m_line.breaks / m_w.m_line.web.width).si();
    double share = kUsualJoint;
    if (tape && tape->strength) share = std::min(1.0, tape->strength->si() / breaks);
    m_w.m_web.parted[m_w.m_table] = false;
    const double here = m_w.paidOut() - upstream(m_w.m_table) - m_w.m_web.held[m_w.m_table] / 2;
    m_w.m_marks.push_back({World::Mark::What::Joint, here, share, m_w.m_table});
    m_w.m_marks.push_back({World::Mark::What::Tail, here, 1, m_w.m_table});
    m_w.m_press.joint.taped = true;
    return Done{};
}
Result<Done> Hands::trim(const Deed&)
{
    if (!m_w.m_press.joint.taped) return first("tape_joint", "There is no joint yet.");
    std::erase_if(m_w.m_marks, [&](const World::Mark& mark) {
        return mark.what == World::Mark::What::Tail && mark.span == m_w.m_table;
    });
    m_w.m_press.joint.trimmed = true;
    return Done{};
}
Result<Done> Hands::core(const Deed&)
{
    if (m_press.hasAir && !m_w.m_press.rewindAir)
        return first("mandrel_air", "The rewind's shaft does not hold a core.");
    m_w.m_web.parted.back() = false;
    m_w.m_web.held.back() = m_w.m_line.web.spans.back().si();
    m_w.m_press.coreHeld = true;
    return Done{};
}

}  // namespace taut::practice
