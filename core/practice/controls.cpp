// SPDX-License-Identifier: GPL-3.0-or-later
// The controls of the practice press.
#include <algorithm>

#include "core/practice/hands.h"

namespace taut::practice {

namespace {

void put(std::set<std::string>& all, const std::string& one, bool in)
{
    if (in)
        all.insert(one);
    else
        all.erase(one);
}

}  // namespace

const std::vector<Hands::Row>& Hands::rows()
{
    static const std::vector<Row> kRows{
        {"main_disconnect", &Hands::mains},
        {"air_supply", &Hands::air},
        {"emergency_stop", &Hands::stop},
        {"emergency_reset", &Hands::reset},
        {"hold_stop", &Hands::holdStop},
        {"guard", &Hands::guard},
        {"inch", &Hands::inch},
        {"hold_to_run", &Hands::holdToRun},
        {"run", &Hands::run},
        {"stop", &Hands::halt},
        {"lift_pressure", &Hands::liftAir},
        {"lift_up", &Hands::liftUp},
        {"lift_down", &Hands::liftDown},
        {"mandrel_air", &Hands::shaftAir},
        {"lamp_park", &Hands::lamp},
        {"guide_automatic", &Hands::guideOn},
        {"guide_middle", &Hands::guideMiddle},
        {"guide_sensor", &Hands::guideSensor, true},
        {"clean_sensor", &Hands::cleanSensor, true},
        {"zero_cell", &Hands::zeroCell},
        {"fit_adapter", &Hands::fitAdapter, true},
        {"engage_calipers", &Hands::engageCalipers, true},
        {"dancer_pin", &Hands::dancerPin, true},
        {"register_along", &Hands::registers},
        {"register_across", &Hands::registers},
        {"clamp_web", &Hands::clamp, true},
        {"roll_to_lift", &Hands::rollToLift},
        {"hang_roll", &Hands::hang, true},
        {"strip_wraps", &Hands::strip, true},
        {"lead_web", &Hands::lead, true},
        {"cut_ends", &Hands::cut, true},
        {"tape_joint", &Hands::tape, true},
        {"trim_tails", &Hands::trim, true},
        {"trim_old_joint", &Hands::trimOld, true},
        {"tape_core", &Hands::core, true},
        {"lay_rag", &Hands::rag},
    };
    return kRows;
}

Result<Done> Hands::perform(const Deed& deed)
{
    for (const Row& row : rows()) {
        if (deed.what != row.what) continue;
        if (row.inTheWay && m_w.m_speed > Speed{}) {
            // Nobody does that, and who does is stopped by whoever stands next to them.
            m_w.happens("hands.in_motion", deed.what, "Hands were in the way of the web while it moved.",
                        {{{}, "stop_held", "No stop was held while somebody worked at the web."}});
            m_w.m_press.motion = Motion::Standing;
            m_w.m_emergency = true;
            return Done{};
        }
        return (this->*row.work)(deed);
    }
    for (const inputs::Zone& one : m_press.zones)
        if (deed.what == one.id + "_setting")
            return zone(one, deed);
        else if (one.needsDiameter && deed.what == one.id + "_diameter")
            return diameter(one, deed);
    for (const LinePlace& place : m_w.m_line.places)
        if (place.nip && deed.what == place.id + "_nip") {
            put(m_w.m_press.nips, place.id, deed.on);
            return Done{};
        }
    return refuse("practice.deed", deed.what, {"There is no %1 on this press.", {deed.what}},
                  "Use a control that its file names, or one of the works of hands.");
}

Result<Done> Hands::mains(const Deed& d)
{
    m_w.m_press.mains = d.on;
    m_w.m_press.reset = false;
    if (d.on) return Done{};
    m_w.m_press.motion = Motion::Standing;
    m_w.m_press.tried.clear();
    return Done{};
}
Result<Done> Hands::air(const Deed& d)
{
    m_w.m_press.air = d.on;
    return Done{};
}
Result<Done> Hands::stop(const Deed& d)
{
    const auto known = std::find_if(m_press.emergencyStops.begin(), m_press.emergencyStops.end(),
                                    [&](const inputs::Device& one) { return one.id == d.item; });
    if (known == m_press.emergencyStops.end())
        return refuse("practice.deed", d.item, {"There is no emergency stop %1 on this press.", {d.item}},
                      "Name one of its file.");
    if (!d.on) {
        m_w.m_press.stops.erase(d.item);
        return Done{};
    }
    m_w.m_press.stops.insert(d.item);
    m_w.m_press.reset = false;
    if (m_w.m_speed > Speed{}) m_w.m_press.tried.insert(d.item);
    return Done{};
}
Result<Done> Hands::reset(const Deed&)
{
    if (!m_w.m_press.mains)
        return refuse("press.dead", "main_disconnect", "Nothing stirs: the press has no power.", "Switch it on.");
    if (!m_w.m_press.stops.empty())
        return refuse("press.stopped", *m_w.m_press.stops.begin(), "It does not reset: a stop is latched.",
                      "Find out why it was, release it, and reset.");
    m_w.m_press.reset = true;
    return Done{};
}
Result<Done> Hands::holdStop(const Deed& d)
{
    m_w.m_press.held = d.on;
    return Done{};
}
Result<Done> Hands::guard(const Deed& d)
{
    const auto known = std::find_if(m_press.guards.begin(), m_press.guards.end(),
                                    [&](const inputs::Device& one) { return one.id == d.item; });
    if (known == m_press.guards.end())
        return refuse("practice.deed", d.item, {"There is no guard %1 on this press.", {d.item}},
                      "Name one of its file.");
    put(m_w.m_press.open, d.item, !d.on);
    return Done{};
}

Result<Done> Hands::move(Motion motion, Speed speed)
{
    if (const auto may = m_w.mayMove(); !may) return may.error();
    for (const std::string& open : m_w.m_press.open)
        m_w.happens("guard.open_in_motion", open, "The press moves though a guard is open: its switch sticks.",
                    {{{}, "stops_tested", "The guards' switches were not tested one by one."}});
    m_w.m_press.motion = motion;
    m_w.m_press.asked = speed;
    return Done{};
}
Speed Hands::crawl() const
{
    constexpr double kCrawl = 1.0 / 60;
    const auto& said = m_press.crawl.value;
    return Speed::si(said && said->kind() == Kind::Speed ? said->si() : kCrawl);
}
/// Once pressed it goes so far and stands, however long it is held.
Result<Done> Hands::inch(const Deed& d)
{
    if (!m_press.inch.value)
        return refuse("practice.deed", d.what, "This press does not inch.", "Move it slowly, as long as it is held.");
    auto moved = move(Motion::Inching, crawl());
    if (moved) m_w.m_toInch = m_press.inch.value->si();
    return moved;
}
Result<Done> Hands::holdToRun(const Deed& d)
{
    if (d.on) return move(Motion::HeldToRun, crawl());
    m_w.m_press.motion = Motion::Standing;
    return Done{};
}
Result<Done> Hands::run(const Deed& d)
{
    constexpr double kIdle = 10.0 / 60;
    const auto& idle = m_press.idle.value;
    double speed = idle && idle->kind() == Kind::Speed ? idle->si() : kIdle;
    if (d.to) speed = d.to->si();
    if (m_press.largest.value) speed = std::min(speed, m_press.largest.value->si());
    return move(Motion::Running, Speed::si(std::max(0.0, speed)));
}
Result<Done> Hands::halt(const Deed&)
{
    m_w.m_press.motion = Motion::Standing;
    return Done{};
}

Result<Done> Hands::liftAir(const Deed& d)
{
    if (!m_press.unwind || !m_press.unwind->lift)
        return refuse("practice.deed", d.what, "This press has no lift.", "Use a hoist.");
    if (!m_w.m_press.air) return first("air_supply", "There is no air.");
    if (d.to) m_w.m_press.liftAir = Pressure::si(std::max(0.0, d.to->si()));
    return Done{};
}
Result<Done> Hands::liftUp(const Deed& d)
{
    if (m_w.m_press.roll != RollAt::Lift) return first("roll_to_lift", "No roll lies on the lift.");
    m_w.m_lifting = d.on;
    return Done{};
}
Result<Done> Hands::liftDown(const Deed&)
{
    m_w.m_lifting = false;
    m_w.m_press.lifted = 0;
    return Done{};
}
Result<Done> Hands::shaftAir(const Deed& d)
{
    if (d.on && !m_w.m_press.air) return first("air_supply", "There is no air.");
    const bool rewind = std::any_of(m_press.rewinds.begin(), m_press.rewinds.end(),
                                    [&](const inputs::Rewind& one) { return one.id == d.item; });
    (rewind ? m_w.m_press.rewindAir : m_w.m_press.shaftAir) = d.on;
    return Done{};
}
Result<Done> Hands::lamp(const Deed& d)
{
    put(m_w.m_press.lampsOpen, d.item, !d.on);
    return Done{};
}
Result<Done> Hands::clamp(const Deed& d)
{
    m_w.m_press.tableClamps = d.on;
    return Done{};
}
Result<Done> Hands::rag(const Deed& d)
{
    put(m_w.m_press.rags, d.item, d.on);
    return Done{};
}
/// The guide that is meant; where there is one alone it need not be named.
Result<GuideState*> Hands::guideOf(const Deed& d)
{
    for (std::size_t g = 0; g < m_w.m_guides.size(); ++g)
        if (d.item == m_w.m_guides[g].id || (d.item.empty() && m_w.m_guides.size() == 1)) return &m_w.m_guideStates[g];
    return refuse("practice.deed", d.item, {"There is no web guide %1 on this press.", {d.item}},
                  "Name one of its file.");
}
Result<Done> Hands::guideOn(const Deed& d)
{
    const auto guide = guideOf(d);
    if (!guide) return guide.error();
    (*guide)->automatic = d.on;
    return Done{};
}
Result<Done> Hands::guideMiddle(const Deed& d)
{
    const auto guide = guideOf(d);
    if (!guide) return guide.error();
    (*guide)->automatic = false;
    (*guide)->moved = (*guide)->rate = 0;
    return Done{};
}
/// Its sensor is set to `to` from where the web is to run, and learns what it sees there.
Result<Done> Hands::guideSensor(const Deed& d)
{
    const auto guide = guideOf(d);
    if (!guide) return guide.error();
    if (d.to) (*guide)->sensor = Length::si(d.to->si());
    (*guide)->calibrated = d.on;
    return Done{};
}
Result<Done> Hands::zone(const inputs::Zone& zone, const Deed& d)
{
    if (!d.to)
        return refuse("practice.deed", d.what, {"%1 is set to a value, and none was said.", {d.what}},
                      "Say to what it is set.");
    m_w.m_press.settings[zone.id] = *d.to;
    return Done{};
}

/// What the drive is told it works with.
Result<Done> Hands::diameter(const inputs::Zone& zone, const Deed& d)
{
    if (!d.to || d.to->si() <= 0)
        return refuse("practice.deed", d.what, {"%1 is set to a value, and none was said.", {d.what}},
                      "Say to what it is set.");
    m_w.m_press.diameters[zone.id] = Length::si(d.to->si());
    return Done{};
}
Result<Done> Hands::cleanSensor(const Deed& d)
{
    if (const auto guide = guideOf(d); !guide) return guide.error();
    for (const Guide& guide : m_w.m_guides)
        if (d.item.empty() || d.item == guide.id) m_w.m_press.cleaned.insert(guide.id);
    return Done{};
}
/// Refused where the press has nothing of a zone that this fault could be of.
Result<Done> Hands::ofZone(const Deed& d, const char* fault, Text none) const
{
    for (const Suspect& one : suspectsOf(m_press))
        if (one.what == fault && one.item == d.item) return Done{};
    return refuse("practice.deed", d.item, std::move(none), "Name a zone with one.");
}
/// With the web slack; nobody asks that here, the display does.
Result<Done> Hands::zeroCell(const Deed& d)
{
    auto has = ofZone(d, "cell.off", {"There is no load cell of %1 on this press.", {d.item}});
    if (has) m_w.m_press.zeroed.insert(d.item);
    return has;
}
Result<Done> Hands::engageCalipers(const Deed& d)
{
    auto has = ofZone(d, "calipers.wrong", {"There is no brake with calipers of %1 on this press.", {d.item}});
    if (has) m_w.m_press.engaged.insert(d.item);
    return has;
}
/// In (on) while the web is led, out before it runs.
Result<Done> Hands::dancerPin(const Deed& d)
{
    auto has = ofZone(d, "dancer.pinned", {"There is no dancer of %1 on this press.", {d.item}});
    if (!has) return has;
    put(m_w.m_press.pinned, d.item, d.on);
    return Done{};
}
/// So far from their mid mark, and no further than they go.
Result<Done> Hands::registers(const Deed& d)
{
    const auto found = m_w.m_press.registers.find(d.item);
    const auto station = std::find_if(m_press.stations.begin(), m_press.stations.end(),
                                      [&](const inputs::Station& one) { return std::to_string(one.number) == d.item; });
    const bool along = d.what == "register_along";
    const auto* way = station == m_press.stations.end() ? nullptr
                      : along                           ? &station->registerAlong
                                                        : &station->registerAcross;
    if (found == m_w.m_press.registers.end() || way == nullptr || !*way)
        return refuse("practice.deed", d.item, {"No register adjuster of station %1 is known.", {d.item}},
                      "Name a station whose file says how far it goes.");
    const double most = (*way)->si(), to = d.to ? d.to->si() : 0;
    (along ? found->second.along : found->second.across) = Length::si(std::clamp(to, -most, most));
    return Done{};
}
Result<Done> Hands::fitAdapter(const Deed&)
{
    if (m_w.m_press.roll == RollAt::Shaft && m_w.m_press.shaftAir)
        return first("mandrel_air", "The shaft holds the core as it is.");
    m_w.m_press.adapted = true;
    return Done{};
}

const std::vector<std::string>& deedNames()
{
    static const std::vector<std::string> kNames = [] {
        std::vector<std::string> names;
        for (const Hands::Row& row : Hands::rows()) names.emplace_back(row.what);
        return names;
    }();
    return kNames;
}

Result<Done> World::perform(const Deed& deed) { return Hands(*this).perform(deed); }

}  // namespace taut::practice
