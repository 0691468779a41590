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
/// How far off hands are that work along a rule and an edge, or by eye (common practice, no source): m, a standard
/// deviation; beyond two of them whoever works sees it and does it again.
struct Skill {
    double square, gap, step;
};
constexpr Skill kByRule{3e-4, 1.5e-4, 1.5e-4}, kByEye{4e-3, 8e-4, 2e-3};
constexpr double kSeen = 2;
/// The free web between roll and table can be led to the side by this share of its length without a crease.
constexpr double kLed = 0.01;

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
    m_w.m_line.web.unwind.eccentric = m_w.amountOf("roll.eccentric", {}, 0);
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
        if (mark.standsOver()) mark.in += moved;
    m_w.m_press.joint.led = true;
    return Done{};
}
/// What hands do at the joint they do while it lies on the table, held.
Result<Done> Hands::mayJoin() const
{
    if (!m_w.m_press.joint.led) return first("lead_web", "The new web does not lie on the table.");
    if (!m_w.m_press.tableClamps) return first("clamp_web", "Nothing holds the two webs.");
    const auto joint = m_w.joint();
    if (m_w.m_press.joint.taped && (!joint || joint->span != m_w.m_table))
        return first("stop", "The joint lies on the table no more.");
    return Done{};
}
namespace {

/// Along a rule unless it is said that it is done by eye.
Result<Skill> skillOf(const Deed& d)
{
    if (d.item.empty() || d.item == "rule") return kByRule;
    if (d.item == "eye") return kByEye;
    return refuse("practice.deed", d.item, "That is done along a rule, or by eye.", "Say rule or eye.");
}

}  // namespace

/// Once more takes the joint out that was there.
Result<Done> Hands::cut(const Deed& d)
{
    if (auto may = mayJoin(); !may) return may;
    const auto skill = skillOf(d);
    if (!skill) return skill.error();
    unjoin();
    Joint& joint = m_w.m_press.joint;
    joint.cut = true;
    joint.square = Length::si(std::abs(off(skill->square)));
    return Done{};
}
/// Once more lays the edges anew.
Result<Done> Hands::tape(const Deed& d)
{
    if (auto may = mayJoin(); !may) return may;
    Joint& joint = m_w.m_press.joint;
    if (!joint.cut) return first("cut_ends", "The ends are not cut together.");
    const auto skill = skillOf(d);
    if (!skill) return skill.error();
    unjoin();
    const double share = heldShare();
    m_w.m_web.parted[m_w.m_table] = false;
    const double here = m_w.paidOut() - upstream(m_w.m_table) - m_w.m_web.held[m_w.m_table] / 2;
    m_w.m_marks.push_back({World::Mark::What::Joint, here, share, m_w.m_table});
    m_w.m_marks.push_back({World::Mark::What::Tail, here, 1, m_w.m_table});
    joint.gap = Length::si(std::abs(off(skill->gap)));
    // A roll that hangs further off the middle than its web can be led brings the rest along.
    const double led = kLed * upstream(m_w.m_table), hangs = m_w.m_press.offCentre.si();
    joint.step = Length::si(off(skill->step) + hangs - std::clamp(hangs, -led, led));
    m_w.m_marks.push_back({World::Mark::What::Corner, here, 1, m_w.m_table});
    joint.taped = true;
    return Done{};
}
/// What a well-made joint bears, of what the web does: the tape or its bond, whichever gives way first, once for each
/// face that is taped (P1, P2).
double Hands::heldShare() const
{
    const auto& tape = m_w.m_setup.inputs.substrate->spliceTape;
    if (!tape || (!tape->strength && !tape->shear)) return kUsualJoint;
    const double weakest = std::min(tape->strength ? tape->strength->si() : tape->shear->si(),
                                    tape->shear ? tape->shear->si() : tape->strength->si());
    const double faces = tape->bothFaces.value_or(false) ? 2 : 1;
    return std::min(1.0, faces * weakest / (m_w.m_line.breaks / m_w.m_line.web.width).si());
}
/// The ends lie apart on the table again.
void Hands::unjoin()
{
    Joint& joint = m_w.m_press.joint;
    if (joint.taped) {
        std::erase_if(m_w.m_marks, [&](const World::Mark& mark) {
            return mark.what != World::Mark::What::Nick && mark.span == m_w.m_table;
        });
        m_w.m_web.parted[m_w.m_table] = true;
    }
    joint.taped = joint.trimmed = false;
    joint.gap = joint.step = Length{};
}
/// How far off hands came out this time.
double Hands::off(double usually)
{
    constexpr std::uint64_t kStream = 5000;
    Chance chance(m_w.m_setup.seed, kStream + static_cast<std::uint64_t>(++m_w.m_press.joint.made));
    return usually * std::clamp(chance.normal(), -kSeen, kSeen);
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
/// While it still lies by the table; further on nobody reaches it.
Result<Done> Hands::trimOld(const Deed&)
{
    const auto gone = std::erase_if(m_w.m_marks, [&](const World::Mark& mark) {
        return mark.what == World::Mark::What::OldTail && mark.span <= m_w.m_table + 1;
    });
    if (gone == 0 && m_w.hasOldTail()) return first("stop", "The last shift's joint is out of reach.");
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
