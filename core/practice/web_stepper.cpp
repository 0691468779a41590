// SPDX-License-Identifier: GPL-3.0-or-later
// One step of the web: what holds, what pulls, what passes.
#include <cassert>

#include "core/practice/web_parts.h"

namespace taut::practice {

namespace {

/// What a slipping roller's tensions are beyond the capstan ratio goes in so many steps, quicker than anything swings.
constexpr double kSlipSteps = 3;
/// A loose end fades out over so much web, m.
constexpr double kFades = 0.01;
/// How long what a roller grips is gone by, in seconds.
constexpr double kGripFor = 0.005;
/// A strain that is as good as none: a roller that has slipped is at its ratio but for rounding.
constexpr double kNearly = 1e-12;
/// A piece that slips at both ends and hangs beyond them has no place of its own: it leans to standing.
constexpr double kLeaning = 1 + 1e-7;

class Stepper {
public:
    Stepper(const WebLine& line, const Drives& drives)
        : m_line(line),
          m_drives(drives),
          m_spans(line.spans.size()),
          m_rollers(line.rollers.size()),
          m_strain(m_spans),
          m_pull(m_spans),
          m_elastic(m_spans),
          m_flow(m_spans + 1),
          m_rise(m_spans),
          m_rest(m_spans),
          m_force(m_rollers),
          m_slip(m_rollers),
          m_equations(m_rollers),
          m_way(m_rollers),
          m_drag(m_rollers)
    {
        assert(m_spans == m_rollers + 1);
        for (const Length& span : line.spans) m_perLength.push_back(1 / span.si());
        for (const LineRoller& r : line.rollers) m_perMass.push_back(r.radius.si() * r.radius.si() / r.inertia.si());
        for (Row* row : {&m_k1, &m_k2, &m_k3, &m_k4, &m_now}) {
            row->held.resize(m_spans);
            row->speed.resize(m_rollers);
            row->slid.resize(m_rollers);
        }
    }

    void step(WebState& state, double by)
    {
        m_slipTime = kSlipSteps * by;
        m_parted = state.parted;
        m_anyParted = std::find(m_parted.begin(), m_parted.end(), true) != m_parted.end();
        take(state);
        if (state.time >= m_gripUntil) {
            grip();
            m_gripUntil = state.time + kGripFor;
        }
        settle();
        slopes(m_k1);
        const Row begin = m_now;
        move(begin, m_k1, by / 2);
        slopes(m_k2);
        move(begin, m_k2, by / 2);
        slopes(m_k3);
        move(begin, m_k3, by);
        slopes(m_k4);
        finish(begin, by);
        give(state, begin);
        state.time += by;
    }

    /// Drives that come in at a speed of their own.
    void engage(WebState& state) const
    {
        for (std::size_t i = 0; i < m_rollers; ++i) {
            if (!driven(i)) continue;
            const LineRoller& roller = m_line.rollers[i];
            const double mass = roller.inertia.si() / (roller.radius.si() * roller.radius.si());
            const double to = m_drives.driven[i]->si();
            state.given += mass * (to * to - state.speed[i] * state.speed[i]) / 2;
            state.speed[i] = to;
        }
        if (m_drives.unwindHeld) stand(state, state.unwindSpeed, m_line.unwind, state.unwound);
        if (m_drives.rewindHeld) stand(state, state.rewindSpeed, m_line.rewind, state.rewound);
    }

private:
    [[nodiscard]] bool driven(std::size_t i) const
    {
        return !m_drives.driven.empty() && m_drives.driven[i].has_value();
    }
    [[nodiscard]] bool nipped(std::size_t i) const { return !m_drives.nipped.empty() && m_drives.nipped[i]; }
    void stand(WebState& state, double& speed, const WoundRoll& roll, double wound) const
    {
        const double j = inertia(roll, m_line, wound, radius(roll, m_line, wound));
        state.taken += j * speed * speed / 2;
        speed = 0;
    }

    void take(const WebState& state)
    {
        m_now.unwound = state.unwound;
        m_now.rewound = state.rewound;
        m_now.unwindTurn = state.unwindTurn;
        m_now.rewindTurn = state.rewindTurn;
        m_now.unwindSpeed = state.unwindSpeed;
        m_now.rewindSpeed = state.rewindSpeed;
        m_now.given = state.given;
        m_now.taken = state.taken;
        m_now.held = state.held;
        m_now.speed = state.speed;
        m_now.slid = state.slid;
    }
    void give(WebState& state, const Row& begin)
    {
        state.unwound = m_now.unwound;
        state.rewound = m_now.rewound;
        state.unwindTurn = m_now.unwindTurn;
        state.rewindTurn = m_now.rewindTurn;
        state.unwindSpeed = m_unwind.ended(begin.unwindSpeed, m_now.unwindSpeed);
        state.rewindSpeed = m_rewind.ended(begin.rewindSpeed, m_now.rewindSpeed);
        state.given = m_now.given;
        state.taken = m_now.taken;
        state.held = m_now.held;
        state.slid = m_now.slid;
        for (std::size_t i = 0; i < m_rollers; ++i) state.speed[i] = m_drag[i].ended(begin.speed[i], m_now.speed[i]);
    }

    /// Tension ratios that rollers hold: speed and tension, by which air comes between, change slowly.
    void grip()
    {
        m_ratio.resize(m_rollers);
        for (std::size_t i = 0; i < m_rollers; ++i) {
            const double more = std::max(m_line.stiffness.si() * strainOf(m_line.spans[i].si(), m_now.held[i]),
                                         m_line.stiffness.si() * strainOf(m_line.spans[i + 1].si(), m_now.held[i + 1]));
            m_ratio[i] =
                gripOf(m_line, m_line.rollers[i], Speed::si(std::abs(m_now.speed[i])), Force::si(std::max(more, 1e-9)));
        }
    }

    /// Which devices hold in this step, by what pulls at its beginning.
    void settle()
    {
        m_sliding = false;
        std::fill(m_slip.begin(), m_slip.end(), 0.0);
        pulls();
        loosen();
        if (m_sliding) pulls();
        const double outer = radius(m_line.unwind, m_line, m_now.unwound);
        m_unwind = {0, m_drives.brake.si() + m_line.unwind.drag.si()};
        m_unwind.settle(m_now.unwindSpeed, m_pull.front() * outer * offCentre(m_line.unwind, m_now.unwindTurn));
        m_unwind.stuck = m_unwind.stuck || m_drives.unwindHeld;
        // Of clutch and bearings the stronger has its way.
        const double net = m_drives.clutch.si() - m_line.rewind.drag.si();
        m_rewind = {net > 0 ? m_drives.clutchInput.si() : 0, std::abs(net)};
        m_rewind.settle(m_now.rewindSpeed, -m_pull.back() * radius(m_line.rewind, m_line, m_now.rewound));
        m_rewind.stuck = m_rewind.stuck || m_drives.rewindHeld;
        for (std::size_t i = 0; i < m_rollers; ++i) {
            m_drag[i] = {0, m_line.rollers[i].drag.si()};
            m_drag[i].settle(m_now.speed[i], m_force[i]);
            m_drag[i].stuck = m_drag[i].stuck || driven(i);
        }
    }

    [[nodiscard]] bool isParted(std::size_t span) const { return m_anyParted && m_parted[span]; }
    [[nodiscard]] double leaving(double speed, std::size_t from, std::size_t to) const
    {
        const std::size_t out = speed >= 0 ? from : to;
        return speed * left(out) * m_rest[out];
    }
    /// The end of torn web goes through a roller: what share of a full flow is still there to go. It fades, so that
    /// nothing goes that is not there.
    [[nodiscard]] double left(std::size_t span) const
    {
        if (!isParted(span)) return 1;
        return std::clamp((m_now.held[span] - kNoWeb.si()) / kFades, 0.0, 1.0);
    }

    /// Strain, tension, and what passes where, at m_now.
    void pulls()
    {
        const double stiffness = m_line.stiffness.si();
        for (std::size_t s = 0; s < m_spans; ++s) {
            const double length = m_line.spans[s].si(), held = m_now.held[s], perHeld = 1 / held;
            const bool taut = held < length && !isParted(s);
            m_strain[s] = taut ? length * perHeld - 1 : 0;
            m_elastic[s] = stiffness * m_strain[s];
            m_rise[s] = taut ? stiffness * length * perHeld * perHeld : 0;
            m_rest[s] = taut ? held * m_perLength[s] : 1;
        }
        m_unwindSurface = m_now.unwindSpeed * radius(m_line.unwind, m_line, m_now.unwound) *
                          offCentre(m_line.unwind, m_now.unwindTurn);
        m_rewindSurface = m_now.rewindSpeed * radius(m_line.rewind, m_line, m_now.rewound);
        const double first = m_unwindSurface >= 0 ? m_line.unwind.strain : m_strain.front();
        const double last = m_rewindSurface >= 0 ? m_strain.back() : m_line.rewind.strain;
        m_flow.front() = m_now.unwound > 0 || m_unwindSurface < 0 ? m_unwindSurface / (1 + first) : 0;
        m_flow.back() = m_now.rewound > 0 || m_rewindSurface >= 0 ? m_rewindSurface / (1 + last) : 0;
        // Of a torn span a roll takes up no more than is there.
        if (m_unwindSurface < 0) m_flow.front() *= left(0);
        if (m_rewindSurface > 0) m_flow.back() *= left(m_spans - 1);
        for (std::size_t i = 0; i < m_rollers; ++i) m_flow[i + 1] = leaving(m_now.speed[i], i, i + 1);
        if (m_sliding) slide();
        for (std::size_t s = 0; s < m_spans; ++s) {
            const double more = passing(s + 1) - passing(s);
            m_pull[s] = m_strain[s] > 0 ? std::max(0.0, m_elastic[s] + m_rise[s] * m_line.loss.si() * more) : 0;
        }
        for (std::size_t i = 0; i < m_rollers; ++i) {
            const double before = m_pull[i], after = m_pull[i + 1], over = m_ratio[i] - 1;
            m_force[i] = after - before;
            if (!nipped(i)) m_force[i] = std::clamp(m_force[i], -after * over, before * over);
        }
    }
    /// All that goes through a place: the unwind, each roller, the rewind.
    [[nodiscard]] double passing(std::size_t place) const
    {
        return m_flow[place] + (place == 0 || place > m_rollers ? 0 : m_slip[place - 1]);
    }

    /// How far tensions across a roller are beyond what it holds, and which way the web wants to slide.
    struct Excess {
        int way = 0;  ///< 1 forward: the span behind pulls more
        double by = 0;
    };
    [[nodiscard]] Excess excess(std::size_t i) const
    {
        const double before = m_elastic[i], after = m_elastic[i + 1];
        return after >= before ? Excess{1, after - before * m_ratio[i]} : Excess{-1, before - after * m_ratio[i]};
    }
    /// Which rollers let the web slide in this step: those that are beyond their ratio, unless the web would then slide
    /// against its pull.
    void loosen()
    {
        for (std::size_t i = 0; i < m_rollers; ++i) {
            const Excess over = excess(i);
            const bool pulled = m_rise[i] + m_rise[i + 1] > 0 && left(over.way > 0 ? i : i + 1) > 0;
            m_way[i] = nipped(i) || !pulled || over.by < -kNearly * m_line.stiffness.si() ? 0 : over.way;
            m_sliding = m_sliding || m_way[i] != 0;
        }
        for (bool settled = !m_sliding; !settled;) {
            settled = true;
            slide();
            for (std::size_t i = 0; i < m_rollers; ++i)
                if (m_ratio[i] > 1 && m_slip[i] * m_way[i] < 0) {
                    m_way[i] = 0;
                    settled = false;
                }
        }
    }
    /// How fast web slides over each roller: so that tensions across a slipping one stay at its ratio. One equation a
    /// roller, that has its neighbours in it.
    void slide()
    {
        for (std::size_t i = 0; i < m_rollers; ++i) {
            Equation& of = m_equations[i];
            of.stands = false;
            if (m_way[i] == 0) continue;
            const double up = m_rise[i] * (m_way[i] > 0 ? m_ratio[i] : 1);
            const double down = m_rise[i + 1] * (m_way[i] > 0 ? 1 : m_ratio[i]);
            if (up + down == 0) continue;
            of.stands = true;
            of.left = -up;
            of.right = -down;
            of.middle = (up + down) * kLeaning;
            // Tensions before and behind, weighed as the slip has them: equal when they stand at the ratio.
            const double behind = m_elastic[i + 1] * (m_way[i] > 0 ? 1 : m_ratio[i]);
            const double before = m_elastic[i] * (m_way[i] > 0 ? m_ratio[i] : 1);
            of.want = (behind - before) / m_slipTime + up * (m_flow[i] - m_flow[i + 1]) -
                      down * (m_flow[i + 1] - m_flow[i + 2]);
        }
        solve(m_equations, m_slip);
    }

    void slopes(Row& d)
    {
        pulls();
        const double stiffness = m_line.stiffness.si();
        const auto stored = [&](double strain) { return stiffness * strain * (1 + strain / 2); };
        const auto mixed = [&](double one, double other, double flow) {
            return stiffness * (one - other) * (one - other) / 2 * std::abs(flow);
        };
        // Each kind of loss by itself: one sum after the other would wait for the one before.
        double given = 0, damped = 0, mixing = 0, gripped = 0, slipped = 0, dragged = 0;
        for (std::size_t s = 0; s < m_spans; ++s) {
            d.held[s] = passing(s) - passing(s + 1);
            const double in = s == 0 ? m_unwindSurface : m_now.speed[s - 1];
            const double out = s + 1 == m_spans ? m_rewindSurface : m_now.speed[s];
            damped += (m_pull[s] - m_elastic[s]) * (out - in);
        }
        for (std::size_t i = 0; i < m_rollers; ++i) {
            const double speed = m_now.speed[i];
            mixing += mixed(m_strain[i], m_strain[i + 1], m_flow[i + 1]);
            gripped += (m_pull[i + 1] - m_pull[i] - m_force[i]) * speed;
            d.slid[i] = m_slip[i];
            slipped += (stored(m_strain[i + 1]) - stored(m_strain[i])) * m_slip[i];
            d.speed[i] = 0;
            if (driven(i)) {
                given -= m_force[i] * speed;
            } else if (!m_drag[i].stuck) {
                d.speed[i] = (m_force[i] + m_drag[i].friction()) * m_perMass[i];
                dragged -= m_drag[i].friction() * speed;
            }
        }
        d.given = given;
        d.taken = damped + mixing + gripped + slipped + dragged;
        rolls(d);
    }

    void rolls(Row& d)
    {
        const double outer = radius(m_line.unwind, m_line, m_now.unwound);
        const double arm = outer * offCentre(m_line.unwind, m_now.unwindTurn);
        const double wound = radius(m_line.rewind, m_line, m_now.rewound);
        const double j0 = inertia(m_line.unwind, m_line, m_now.unwound, outer);
        const double j1 = inertia(m_line.rewind, m_line, m_now.rewound, wound);
        const double stiffness = m_line.stiffness.si();
        const double heavy = m_line.grammage.si() * m_line.width.si();
        d.unwound = -m_flow.front();
        d.rewound = m_flow.back();
        d.unwindTurn = m_now.unwindSpeed;
        d.rewindTurn = m_now.rewindSpeed;
        d.unwindSpeed = m_unwind.stuck ? 0 : (m_pull.front() * arm + m_unwind.friction()) / j0;
        d.rewindSpeed = m_rewind.stuck ? 0 : (m_rewind.friction() - m_pull.back() * wound) / j1;
        d.taken -= m_unwind.stuck ? 0 : m_unwind.friction() * m_now.unwindSpeed;
        // What the clutch brings to the roll: while it is stuck, as much as the web takes.
        d.given += (m_rewind.stuck ? m_pull.back() * wound : m_rewind.friction()) * m_now.rewindSpeed;
        // Web comes off with the strain it was wound with, and goes on with the strain of its span.
        const double first = m_line.unwind.strain, last = m_strain.back();
        const double away = m_flow.front(), onto = m_flow.back();
        d.given += stiffness * first * first / 2 * std::max(0.0, away);
        d.taken += stiffness * m_strain.front() * m_strain.front() / 2 * std::max(0.0, -away);
        d.taken += stiffness * last * last / 2 * std::max(0.0, onto);
        d.given += stiffness * m_line.rewind.strain * m_line.rewind.strain / 2 * std::max(0.0, -onto);
        if (away > 0) d.taken += stiffness * (m_strain.front() - first) * (m_strain.front() - first) / 2 * away;
        if (onto < 0) {
            const double off = last - m_line.rewind.strain;
            d.taken += stiffness * off * off / 2 * -onto;
        }
        // Its motion goes with it: what lies between the rolls counts as without weight.
        d.taken += heavy * away * outer * outer * m_now.unwindSpeed * m_now.unwindSpeed / 2;
        d.given += heavy * onto * wound * wound * m_now.rewindSpeed * m_now.rewindSpeed / 2;
    }

    void move(const Row& from, const Row& slope, double by)
    {
        const auto along = [&](double Row::*part) { m_now.*part = from.*part + by * slope.*part; };
        for (double Row::*part : kParts) along(part);
        for (std::size_t s = 0; s < m_spans; ++s) m_now.held[s] = from.held[s] + by * slope.held[s];
        for (std::size_t i = 0; i < m_rollers; ++i) m_now.speed[i] = from.speed[i] + by * slope.speed[i];
    }
    void finish(const Row& from, double by)
    {
        const auto mean = [](double a, double b, double c, double d) { return (a + 2 * b + 2 * c + d) / 6; };
        for (double Row::*part : kParts)
            m_now.*part = from.*part + by * mean(m_k1.*part, m_k2.*part, m_k3.*part, m_k4.*part);
        for (std::size_t s = 0; s < m_spans; ++s)
            m_now.held[s] = from.held[s] + by * mean(m_k1.held[s], m_k2.held[s], m_k3.held[s], m_k4.held[s]);
        for (std::size_t i = 0; i < m_rollers; ++i) {
            m_now.speed[i] = from.speed[i] + by * mean(m_k1.speed[i], m_k2.speed[i], m_k3.speed[i], m_k4.speed[i]);
            m_now.slid[i] = from.slid[i] + by * mean(m_k1.slid[i], m_k2.slid[i], m_k3.slid[i], m_k4.slid[i]);
        }
        takeBack(m_now.unwound, m_now.held.front());
        takeBack(m_now.rewound, m_now.held.back());
        takeBack(m_now.held);
    }

    static constexpr double Row::*kParts[] = {&Row::unwound,     &Row::rewound,     &Row::unwindTurn, &Row::rewindTurn,
                                              &Row::unwindSpeed, &Row::rewindSpeed, &Row::given,      &Row::taken};
    const WebLine& m_line;
    const Drives& m_drives;
    std::size_t m_spans, m_rollers;
    std::vector<bool> m_parted;
    bool m_anyParted = false;
    std::vector<double> m_perLength, m_perMass;
    double m_slipTime = 1, m_gripUntil = -1;
    bool m_sliding = false;  ///< anywhere in this step
    double m_unwindSurface = 0, m_rewindSurface = 0;
    std::vector<double> m_strain, m_pull, m_elastic, m_flow;
    std::vector<double> m_rise, m_rest;  ///< tension gained by web taken out; web at rest in a length of web
    std::vector<double> m_force, m_ratio, m_slip;
    std::vector<Equation> m_equations;
    std::vector<int> m_way;
    Hold m_unwind, m_rewind;
    std::vector<Hold> m_drag;
    Row m_k1, m_k2, m_k3, m_k4, m_now;
};

}  // namespace

void goOn(const WebLine& line, WebState& state, const Drives& drives, double step, std::int64_t times)
{
    Stepper stepper(line, drives);
    stepper.engage(state);
    for (std::int64_t i = 0; i < times; ++i) stepper.step(state, step);
}

}  // namespace taut::practice
