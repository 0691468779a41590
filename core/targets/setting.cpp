// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/setting.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/spoken.h"
#include "core/targets/reach.h"
#include "core/units/format.h"

namespace taut::targets {

namespace {

/// Known to what the profile says of it; until it was fitted, to what brakes of one build differ by.
Term torquePer(const Book& book, const inputs::Zone& zone)
{
    const Term k = term(zone.torquePerSetting, zoneKey(zone, "torque_per_setting"));
    if (!k.known() || !zone.torqueUncertainty) return book.share(k, "torque_tolerance", "k." + zone.id);
    return doubted(k, *zone.torqueUncertainty * k.value->si(), "k." + zone.id);
}

std::optional<SettingRelation> dancerRelation(const Book& book, const inputs::Zone& zone, const Term& tension)
{
    const inputs::Dancer d = zone.dancer.value_or(inputs::Dancer{});
    if (d.load == "spring") return std::nullopt;
    Term wrap = d.wrap ? term(d.wrap, zoneKey(zone, "dancer.wrap")) : missing(zoneKey(zone, "dancer.wrap"));
    if (!wrap.known()) {
        if (const physics::PathArc* arc = book.arc(d.roller))
            wrap = known(Quantity(arc->wrap, Kind::Angle, "deg"), "path:" + d.roller);
        else if (book.mainPath() == nullptr)
            wrap = lack({wrap, book.target("thread.main.length")});
    }
    const Term armRoller = term(d.armRoller, zoneKey(zone, "dancer.arm.roller"));
    const Term armCylinder = term(d.armCylinder, zoneKey(zone, "dancer.arm.cylinder"));
    if (d.load == "weight")
        return SettingRelation{"B7.weight", {{"T", tension}, {"a", armCylinder}, {"b", armRoller}, {"theta", wrap}}};
    const Term area = combine(
        {term(d.bore, zoneKey(zone, "dancer.bore"))}, "bore of " + zoneKey(zone, "dancer.bore"),
        [](const std::vector<double>& v) { return 0.78539816339744830962 * v[0] * v[0]; }, Kind::Area);
    return SettingRelation{"B7.setting",
                           {{"T", tension},
                            {"n", number(d.cylinders, zoneKey(zone, "dancer.cylinders"))},
                            {"A", area},
                            {"a", armCylinder},
                            {"b", armRoller},
                            {"theta", wrap}}};
}

/// Where an unwinding roll's setting reaches the least that can be set. A winding roll's grows: it may reach the most,
/// and that is said where it does.
void stateFloor(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Arguments& arguments)
{
    if (endOf(book.press(), zone) != ZoneEnd::Unwind) return;
    const std::string zoneName = inputs::spokenName(zone), id = "tension." + zone.id + ".floor_diameter";
    const Text name("%1: diameter where the setting leaves its range", {zoneName});
    const Term least = term(zone.setting.least, zoneKey(zone, "setting.least"));
    const Term& zero = arguments[3].second;
    if (least.known() && zero.known() && least.value->kind() == zero.value->kind() &&
        least.value->si() <= zero.value->si()) {
        Finding never{id, Severity::Note, "press.zone." + zone.id,
                      Text("%1: the setting never leaves its range: without any torque it stands at %2, and it can be "
                           "set down to %3.",
                           {zoneName, zero.value->magnitude(), least.value->magnitude()}),
                      "Nothing to do."};
        book.lacking(id, name, Shape::Quantity, impossible(std::move(never)));
        return;
    }
    const char* unit = book.press().units == UnitSystem::Us ? "in" : "mm";
    const Arguments floor{{"T", terms.total}, arguments[2], arguments[3], {"p", least}};
    const Term at = evaluated("B5.diameter", floor, ""), core = lastDiameterOf(book, zone);
    if (at.known() && core.known() && at.value->si() < core.value->si()) {
        Finding never{id, Severity::Note, "press.zone." + zone.id,
                      Text("%1: the setting stays in its range down to the core of %2.",
                           {zoneName, Magnitude{core.value->si(), Kind::Length, unit}}),
                      "Nothing to do."};
        book.lacking(id, name, Shape::Quantity, impossible(std::move(never)), "S32, S33");
        return;
    }
    book.formula(id, name, "B5.diameter", floor, unit)
        .advice("Below this diameter the control cannot be set low enough.");
}

void openLoop(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Text& name)
{
    const std::string id = "tension." + zone.id + ".";
    const SettingRelation relation = *relationOf(book, zone, terms.total, terms.diameter);
    const SharedString unit = zone.setting.least  ? zone.setting.least->unit()
                              : zone.setting.most ? zone.setting.most->unit()
                                                  : SharedString();
    Stated setting = book.formula(id + "setting", name, relation.formula, relation.arguments, unit);
    bound(book, zone, terms, relation, setting);
    setting.advice(endOf(book.press(), zone) == ZoneEnd::Unwind
                       ? Text("Turn it down as the roll shrinks, or the web tightens; see the schedule.")
                       : Text("Raise it from below. It grows with the roll; see the schedule."));
    stateFloor(book, zone, terms, relation.arguments);
    checkCourse(book, zone, terms, setting, unit);
    stateSchedule(book, zone, terms, unit);
}

void dancer(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Text& name)
{
    const std::string id = "tension." + zone.id + ".";
    const inputs::Dancer d = zone.dancer.value_or(inputs::Dancer{});
    const SharedString unit = zone.setting.least ? zone.setting.least->unit() : SharedString();
    if (const auto relation = relationOf(book, zone, terms.total, terms.diameter)) {
        Stated setting = book.formula(id + "setting", name, relation->formula, relation->arguments, unit);
        bound(book, zone, terms, *relation, setting);
        setting.advice(d.load == "weight"
                           ? Text("The mass to hang on the dancer's arm.")
                           : Text("The air on the dancer. A dancer at rest shows balance, it does not prove tension."));
        checkCourse(book, zone, terms, setting, unit);
    } else {
        book.lacking(id + "setting", name, Shape::Quantity, missing(zoneKey(zone, "dancer.spring_rate")));
    }
    const Limit restLeast = book.limit("dancer_rest_least"), restMost = book.limit("dancer_rest_most");
    book.value(id + "rest", Text("%1: dancer at rest, share of its travel", {inputs::spokenName(zone)}), "stated",
               known(Quantity(0.5, Kind::Share), "policy:dancer_middle"), "S39")
        .in("%")
        .window(restLeast.value.in("%"), restMost.value.in("%"), restLeast.rule, restLeast.source())
        .advice("Clear of both stops, moving freely, resting about the middle.");
    const Limit swing = book.limit("dancer_swing");
    book.value(id + "arm_swing",
               Text("%1: swing of the dancer at steady speed, share of its travel", {inputs::spokenName(zone)}),
               "stated", known(Quantity(0, Kind::Share, "%"), "policy:dancer_swing"), "policy")
        .within(swing.si(), swing.si(), swing.rule, swing.source())
        .advice("An arm that keeps swinging says that the loop hunts or the roll is out of round.");
}

void loadCell(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Text& name)
{
    const std::string id = "tension." + zone.id + ".";
    const inputs::LoadCell cell = zone.loadCell.value_or(inputs::LoadCell{});
    const Term range = term(cell.range, zoneKey(zone, "load_cell.range"));
    if (cell.setIn.empty()) {
        book.lacking(id + "setting", name, Shape::Quantity, lack({missing(zoneKey(zone, "load_cell.set_in")), range}));
    } else if (const SettingRelation relation = *relationOf(book, zone, terms.total, terms.diameter);
               cell.setIn == "%") {
        Stated setting = book.formula(id + "setting", name, relation.formula, relation.arguments, "%");
        bound(book, zone, terms, relation, setting);
        setting.advice("Share of the load cell's range; zero it with the web slack first.");
        checkCourse(book, zone, terms, setting, "");
    } else {
        Term total = terms.total;
        if (total.known()) total.value = total.value->in(panelForce(book, cell));
        Stated setting = book.value(id + "setting", name, "rule", total, "the zone's tension",
                                    {{"T", called(terms.total, "tension of the zone")}});
        setting.symbols("F = T");
        bound(book, zone, terms, relation, setting);
        setting.advice("The set point of the control loop; zero the load cell with the web slack first.");
        checkCourse(book, zone, terms, setting, "");
    }
    stateSchedule(book, zone, terms, "");
    const Limit zero = book.limit("load_cell_zero");
    const std::string read = panelForce(book, cell);
    const SharedString unit = read.empty() && range.known() ? range.value->unit() : SharedString(read);
    if (range.known())
        book.value(id + "zero", Text("%1: load cell with the web slack", {inputs::spokenName(zone)}), "stated",
                   known(Quantity(0, Kind::Force, unit), "policy:load_cell_zero"), "policy")
            .instrument(Quantity(0, Kind::Force, unit))
            .within(zero.si() * range.value->si(), zero.si() * range.value->si(), zero.rule, zero.source())
            .advice("Nothing may hang on the cell while it is read.");
    else
        book.lacking(id + "zero", "Load cell with the web slack", Shape::Quantity, range);
}

/// The zone whose web a draw takes over: the one that ends where it begins, else the one before it in the profile.
const inputs::Zone* zoneBefore(const inputs::Press& press, const inputs::Zone& zone)
{
    const inputs::Zone* before = nullptr;
    for (const inputs::Zone& z : press.zones)
        if (z.id != zone.id && !zone.from.empty() && z.to == zone.from) return &z;
    for (const inputs::Zone& z : press.zones) {
        if (z.id == zone.id) break;
        before = &z;
    }
    return before;
}

/// What two values that are the same may differ by at an end of what can be set, which may lie below nought or on it.
double hairAt(const Quantity& end)
{
    constexpr double kHair = 1e-9, kLeastScale = 1e-3;
    return kHair * std::max(std::abs(end.si()), kLeastScale);
}

/// The end of what can be set that lies nearest to a value beyond it, a hair inside, since a value that stands on a
/// limit is no aim (aim.h) and this one is; nullopt for one that can be set.
std::optional<Quantity> nearestEnd(const inputs::Setting& range, const Term& wanted)
{
    const std::optional<Quantity> end = wanted.known() ? endBeyond(range, wanted.value->si()) : std::nullopt;
    if (!end) return std::nullopt;
    const double way = wanted.value->si() < end->si() ? 1 : -1;
    return Quantity(end->si() + way * hairAt(*end), end->kind(), end->unit());
}

/// Whether of what can be set no draw is sure to be inside: the window that is left is less than twice how well it is
/// known.
bool leavesNothingSure(const inputs::Zone& zone, const inputs::Setting& range, const SettingBand& band)
{
    if (!zone.setting.uncertainty || !band.low.known() || !band.high.known()) return false;
    double low = band.low.value->si(), high = band.high.value->si();
    if (range.least) low = std::max(low, range.least->si());
    if (range.most) high = std::min(high, range.most->si());
    return high >= low && high - low < 2 * zone.setting.uncertainty->si();
}

/// Draw is a speed difference: on a stiff web a hair of it is a whole window of tension, and that is said.
void draw(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Text& name)
{
    const std::string id = "tension." + zone.id + ".";
    const inputs::Zone* before = zoneBefore(book.press(), zone);
    const Term e1 =
        before != nullptr
            ? book.target("tension." + before->id + ".strain")
            : impossible(
                  refuse("tension." + zone.id + ".draw_first", "press.zone." + zone.id,
                         Text("%1: no zone comes before this draw, and a draw only adds to the "
                              "tension that its web brings.",
                              {inputs::spokenName(zone)}),
                         Text("Enter the zone that ends at %1 in the press profile, before this one.",
                              {zone.from.empty() ? TextArg(std::vector<Text>{"its first nip"}) : TextArg(zone.from)})));
    const Term e2 = book.target(id + "strain");
    const Arguments arguments{{"e1", e1}, {"e2", e2}};
    const Term wanted = evaluated("D2.draw", arguments, "");
    const inputs::Setting range = settingRange(zone, Kind::Share);
    const std::optional<Quantity> end = nearestEnd(range, wanted);
    Stated setting = end ? book.value(id + "setting", name, "rule", known(end->in("%"), zoneKey(zone, "setting")),
                                      "D2, as near as can be set",
                                      {{"e1", called(e1, "strain before the draw")},
                                       {"e2", called(e2, "strain wanted")},
                                       {"u", called(known(*end, zoneKey(zone, "setting")), "nearest that can be set")}})
                               .symbols("u, where (e2 - e1) / (1 + e1) cannot be set")
                         : book.formula(id + "setting", name, "D2.draw", arguments, "%");
    setting.instrument(zone.setting.uncertainty).most(range.most);
    if (setting.ready() == nullptr || !terms.low.known() || !terms.high.known() || !terms.total.known()) return;
    const double scale = e2.value->si() / terms.total.value->si();
    auto drawAt = [&](const Term& tension) {
        const Term strain = known(Quantity(tension.value->si() * scale, Kind::Share), "");
        return evaluated("D2.draw", {{"e1", e1}, {"e2", strain}}, "");
    };
    const SettingBand all{drawAt(terms.middle), drawAt(terms.low), drawAt(terms.high), terms.rules};
    const Term band = drawBand(book, zone), width = zoneWidth(book, zone);
    const bool wide = band.known() && width.known() &&
                      band.value->si() * width.value->si() > terms.high.value->si() - terms.low.value->si();
    if (wide || leavesNothingSure(zone, range, all)) {
        setting
            .window({}, {}, Rule::None,
                    "not judged: what this draw is known to moves the tension through its whole window")
            .advice("On a web this stiff draw does not set the tension. Set it by eye and by the neighbouring zones, "
                    "from nothing upward until the web lies flat.");
        // By less than it is known to, it is none the worse.
        if (end &&
            (!zone.setting.uncertainty || std::abs(wanted.value->si() - end->si()) > zone.setting.uncertainty->si()))
            book.note(Finding{
                id + "edge_of_range", Severity::Warn, "press.zone." + zone.id,
                Text("%1: the draw for the middle of the window, %2, is beyond what can be set; %3 is the nearest.",
                     {inputs::spokenName(zone), Magnitude{wanted.value->si(), Kind::Share, "%"},
                      end->in("%").magnitude()}),
                "Set it to what is shown, and hold the tension by the neighbouring zones."});
        return;
    }
    bound(book, zone, setting, all);
    setting.advice("How much faster the second nip runs than the first.");
}

}  // namespace

std::optional<Quantity> endBeyond(const inputs::Setting& range, double si)
{
    if (range.most && si > range.most->si() + hairAt(*range.most)) return range.most;
    if (range.least && si < range.least->si() - hairAt(*range.least)) return range.least;
    return std::nullopt;
}

std::string panelForce(const Book& book, const inputs::LoadCell& cell)
{
    if (cell.setIn.empty() || cell.setIn == "%") return {};
    return panelUnit(Kind::Force, cell.setIn, book.press().units);
}

Term SettingRelation::at(const Term& tension) const
{
    if (formula.empty()) return tension;
    Arguments other = arguments;
    other.front().second = tension;
    return evaluated(formula, other, formula);
}

std::optional<SettingRelation> relationOf(const Book& book, const inputs::Zone& zone, const Term& tension,
                                          const Term& diameter)
{
    switch (zone.control) {
    case inputs::Control::OpenLoop:
        return SettingRelation{"B5",
                               {{"T", tension},
                                {"D", diameter},
                                {"k", torquePer(book, zone)},
                                {"p0", term(zone.zeroSetting, zoneKey(zone, "zero_setting"))}}};
    case inputs::Control::Dancer: return dancerRelation(book, zone, tension);
    case inputs::Control::LoadCell: {
        const inputs::LoadCell cell = zone.loadCell.value_or(inputs::LoadCell{});
        if (cell.setIn.empty()) return std::nullopt;
        if (cell.setIn != "%") return SettingRelation{"", {{"T", tension}}};
        return SettingRelation{"B8.setting",
                               {{"T", tension}, {"range", term(cell.range, zoneKey(zone, "load_cell.range"))}}};
    }
    case inputs::Control::Draw: break;
    }
    return std::nullopt;
}

void stateSetting(Book& book, const inputs::Zone& zone, const SettingTerms& terms)
{
    const std::string* label = book.press().label(zone.id + "_setting");
    const std::string zoneName = inputs::spokenName(zone);
    const Text name = label ? Text("%1: set %2 to", {zoneName, *label}) : Text("%1: setting", {zoneName});
    switch (zone.control) {
    case inputs::Control::OpenLoop: openLoop(book, zone, terms, name); return;
    case inputs::Control::Dancer: dancer(book, zone, terms, name); return;
    case inputs::Control::LoadCell: loadCell(book, zone, terms, name); return;
    case inputs::Control::Draw: draw(book, zone, terms, name); return;
    }
}

}  // namespace taut::targets
