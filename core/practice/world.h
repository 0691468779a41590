// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/chance.h"
#include "core/base/text.h"
#include "core/practice/fault.h"
#include "core/practice/guiding.h"
#include "core/practice/lateral.h"
#include "core/practice/line.h"
#include "core/practice/press_state.h"

namespace taut::practice {

/// What a world is made of. The inputs are what people read; faults make the truth differ from them.
struct Setup {
    inputs::Inputs inputs;
    std::uint64_t seed = 0;
    std::vector<Fault> faults;
};

/// One thing done: a control, under the role that it has in a press file's [labels], or a work of hands (deedNames()).
struct Deed {
    std::string what;
    std::string item = {};            ///< which one, where there are several: a guard, a station, a zone's id
    std::optional<Quantity> to = {};  ///< to what a knob or a pressure is set
    bool on = true;                   ///< switched on, closed, latched, begun; false the other way
    friend bool operator==(const Deed&, const Deed&) = default;
};
[[nodiscard]] const std::vector<std::string>& deedNames();

/// A state that led to what happened, and what of a procedure guards against it: a target to be set or a condition to
/// be given.
struct Cause {
    std::string target, condition;  ///< one of them; the other ""
    Text text;
};
/// What came of the state of things.
struct Consequence {
    double at = 0;      ///< s
    std::string code;   ///< stable: web.broke, web.slack, tail.caught ...
    std::string where;  ///< roller, zone or station; "" = nowhere in particular
    Text text;
    std::vector<Cause> causes;
};

/// A press to practise on, as its state makes it answer: from the same setup and the same deeds at the same times the
/// same things happen, to the last bit.
class World {
public:
    /// As the last shift left it: without energy, its web from the splice table to the rewind, the new roll on the
    /// floor. Refuses what lineOf refuses, and practice.fault for a fault that there is not.
    [[nodiscard]] static Result<World> build(const Setup& setup);

    /// Does it, or says why press or hands cannot: practice.deed (there is no such thing here), press.dead,
    /// press.stopped, press.guard_open, press.held, practice.first (something comes before).
    [[nodiscard]] Result<Done> perform(const Deed& deed);
    /// Time goes on, in whole ticks.
    void advance(Time by);
    static constexpr Time kTick = Time::si(0.01);

    [[nodiscard]] double time() const { return m_web.time; }
    [[nodiscard]] const PressState& press() const { return m_press; }
    [[nodiscard]] const Line& line() const { return m_line; }
    [[nodiscard]] const WebState& web() const { return m_web; }
    [[nodiscard]] const LateralState& lateral() const { return m_lateral; }
    [[nodiscard]] const std::vector<Guide>& guides() const { return m_guides; }
    [[nodiscard]] const std::vector<GuideState>& guideStates() const { return m_guideStates; }
    /// Where the web leaves the unwind, to the drive side of where it is to run.
    [[nodiscard]] Length leaves() const;
    [[nodiscard]] Speed speed() const { return m_speed; }
    [[nodiscard]] const std::vector<Consequence>& consequences() const { return m_consequences; }
    /// Where the joint is: the span, and how far along it; nullopt before there is one and once it is wound up.
    struct Spot {
        std::size_t span = 0;
        Length along;
    };
    [[nodiscard]] std::optional<Spot> joint() const;
    /// How far the lift must be charged to balance this roll.
    [[nodiscard]] Pressure liftBalance() const;
    /// The inputs as they are and not as their files say.
    [[nodiscard]] const inputs::Inputs& truly() const { return m_setup.inputs; }
    /// While the lift is told to rise.
    [[nodiscard]] bool lifting() const { return m_lifting; }
    /// Compressed air as the gauge shows it; 0 while the mains pipe is shut.
    [[nodiscard]] Pressure supply() const;
    /// To what a zone is set, as its gauge or display shows it; nullopt where nothing is shown before something is set.
    [[nodiscard]] std::optional<Quantity> shownSetting(const inputs::Zone& zone) const;
    /// Where the arm of a zone's dancer rests, as a share of its travel from where it lies without web; nullopt where
    /// there is none.
    [[nodiscard]] std::optional<double> armOf(const std::string& zone) const;
    /// The web's pull in a zone as its instrument shows it: at its load cell, else where the zone ends.
    [[nodiscard]] Force shownPull(const LineZone& zone) const;
    /// Whether the unwind's shaft holds this core so that no brake turns it.
    [[nodiscard]] bool coreHolds() const { return !has("core.wrong") || m_press.adapted; }
    /// How much of what there is a guide's sensor sees, 0 to 1.
    [[nodiscard]] double sees(const std::string& guide) const;
    /// With what a drive works into which a diameter is typed: what it was told, else what the last roll left there.
    [[nodiscard]] Length toldDiameter(const inputs::Zone& zone) const;
    /// The span over the splice table.
    [[nodiscard]] std::size_t table() const { return m_table; }
    /// Whether tape or web stands over at a joint anywhere on the line, the last shift's or this one's.
    [[nodiscard]] bool hasTail() const;
    /// Whether the last shift's joint has one.
    [[nodiscard]] bool hasOldTail() const;

private:
    World() = default;
    friend class Hands;
    friend class Watch;
    [[nodiscard]] Drives drives() const;
    void tick();
    void runUp();
    void takeUp();
    void lift();
    void warm();
    void guide();
    [[nodiscard]] Result<Done> mayMove() const;
    void happens(std::string code, std::string where, Text text, std::vector<Cause> causes);
    [[nodiscard]] bool has(const std::string& fault, const std::string& item = {}) const;
    [[nodiscard]] double amountOf(const std::string& fault, const std::string& item, double otherwise) const;
    [[nodiscard]] std::optional<Spot> spotOf(double behindUnwind) const;
    [[nodiscard]] Torque torqueOf(const inputs::Zone& zone) const;
    [[nodiscard]] Pressure gaugeOff(const std::string& zone) const;
    [[nodiscard]] Force cellOff(const inputs::Zone& zone) const;
    [[nodiscard]] double torqueMost(const inputs::Zone& zone) const;
    [[nodiscard]] double askedPull(const inputs::Zone& zone, double setting) const;
    [[nodiscard]] Length radiusOf(const inputs::Zone& zone) const;
    [[nodiscard]] double paidOut() const { return m_onRoll - m_web.unwound; }
    [[nodiscard]] bool unwinding() const { return m_press.joint.led; }

    /// Something in the web that goes with it, by how much web at rest lay outside it on the roll when it was hung;
    /// what is of the old web lies before the roll's beginning.
    struct Mark {
        /// OldTail: of the last shift's joint; Corner: of this one's step to the side.
        enum class What : std::uint8_t { Joint, Nick, Tail, OldTail, Corner };
        What what{};
        double in = 0;
        double share = 1;      ///< of the web's strength that is left there
        std::size_t span = 0;  ///< in which it was last seen
        [[nodiscard]] bool standsOver() const { return what == What::Tail || what == What::OldTail; }
    };
    /// The pull of the first span since the roll last came round.
    struct Swing {
        double turn = 0, least = 0, most = 0;
        int wild = 0;          ///< whole turns, one after the other, over which it swung far
        bool settled = false;  ///< the turn was begun at the speed that was asked
    };
    Setup m_setup;
    Line m_line;
    PressState m_press;
    WebState m_web;
    LateralState m_lateral;
    std::vector<Guide> m_guides;
    std::vector<GuideState> m_guideStates;
    Speed m_speed;
    bool m_emergency = false;  ///< it is stopping as fast as it can
    double m_toInch = 0;       ///< so far it goes on until it stands, m
    Swing m_swing;
    double m_onRoll = 0;  ///< web at rest on the new roll when it was hung
    std::vector<Mark> m_marks;
    std::size_t m_table = 0;            ///< the span over the splice table
    std::vector<std::size_t> m_caught;  ///< rollers at which a tail holds the web
    double m_lamps = 0;                 ///< how far the dryers' lamps have come to their power
    std::vector<double> m_heat;         ///< of what lies at each station's dryer, degrees above the room
    std::vector<std::string> m_told;    ///< what has happened and goes on: said once
    bool m_lifting = false;
    std::int64_t m_ticks = 0;
    std::vector<Consequence> m_consequences;
};

}  // namespace taut::practice
