// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/inputs/fits.h"
#include "core/inputs/inputs.h"

namespace taut::inputs {

namespace {

void add(std::vector<std::string>& out, bool holds, const char* fact)
{
    if (holds) out.emplace_back(fact);
}

template <class T, class Test>
bool any(const std::vector<T>& all, Test test)
{
    return std::any_of(all.begin(), all.end(), test);
}

void addPressFacts(const Press& press, std::vector<std::string>& out)
{
    const auto dried = [&](const char* by) {
        return any(press.stations, [&](const Station& s) { return s.dryer == by; });
    };
    const auto guidesBy = [&](bool centre) {
        return any(press.guides, [&](const Guide& g) { return !g.guides.empty() && (g.guides == "centre") == centre; });
    };
    const auto products =
        std::count_if(press.rewinds.begin(), press.rewinds.end(), [](const Rewind& r) { return !r.waste; });
    add(out, press.hasAir, "has_air");
    add(out, press.unwind && press.unwind->lift, "has_lift");
    add(out, press.unwind && press.unwind->mandrel.kind == "air_shaft", "air_shaft");
    add(out, dried("uv"), "has_uv");
    add(out, dried("infrared"), "has_infrared");
    add(out, dried("air"), "has_hot_air");
    add(out, any(press.rollers, [](const Roller& r) { return r.kind == "die"; }), "has_die");
    add(out, any(press.rewinds, [](const Rewind& r) { return r.waste; }), "has_waste");
    add(out, products > 1, "two_rewinds");
    add(out, !press.guides.empty(), "has_guide");
    add(out, guidesBy(true), "guide_centre");
    add(out, guidesBy(false), "guide_edge");
    add(out, !press.spliceTable.after.empty() || press.spliceTable.length || press.spliceTable.clamps,
        "has_splice_table");
    add(out, (press.unwind && press.unwind->stopReserve) || press.label("automatic_stop") != nullptr,
        "has_automatic_stop");
    add(out, !press.guards.empty(), "has_guards");
    add(out, !press.zones.empty(), "has_zones");
    add(out, press.tripBars, "trip_bars");
    add(out, press.wakesStopped, "wakes_stopped");
}

std::vector<std::string> zoneFacts(const Press& press, const Zone& zone)
{
    std::vector<std::string> out;
    add(out, zone.control == Control::OpenLoop, "zone_open_loop");
    add(out, zone.control == Control::Dancer, "zone_dancer");
    add(out, zone.control == Control::LoadCell, "zone_load_cell");
    // A brake set by hand may still have a roller that shows what it pulls.
    add(out, zone.control == Control::LoadCell || zone.loadCell.has_value(), "zone_shows_tension");
    add(out, zone.control == Control::Draw, "zone_draw");
    add(out, zone.actuator == Actuator::Pneumatic, "zone_pneumatic");
    add(out, zone.actuator == Actuator::Particle, "zone_particle");
    add(out, zone.actuator == Actuator::Servo, "zone_servo");
    add(out, zone.needsDiameter, "zone_needs_diameter");
    const Roller* from = press.roller(zone.from);
    add(out,
        (press.unwind && !zone.from.empty() && press.unwind->roller == zone.from) ||
            (from != nullptr && from->kind == "unwind"),
        "zone_unwind");
    const Roller* to = press.roller(zone.to);
    add(out,
        any(press.rewinds, [&](const Rewind& r) { return !zone.to.empty() && r.roller == zone.to; }) ||
            (to != nullptr && (to->kind == "rewind" || to->kind == "waste_rewind")),
        "zone_rewind");
    return out;
}

/// Where one stands to reach a roller: the place that bears its name, else the first with a maintained stop that sees
/// it.
std::string placeAt(const Press& press, const std::string& roller)
{
    if (press.place(roller) != nullptr) return roller;
    for (const Place& place : press.places)
        if (!place.holdStop.empty() && std::find(place.sees.begin(), place.sees.end(), roller) != place.sees.end())
            return place.id;
    return {};
}

std::vector<std::string> guideFacts(const Guide& guide)
{
    std::vector<std::string> out;
    add(out, guide.kind == "displacement", "guide_displacement");
    add(out, guide.kind == "steering", "guide_steering");
    add(out, guide.guides == "centre", "guide_centre");
    add(out, guide.guides == "operator_edge" || guide.guides == "drive_edge", "guide_edge");
    return out;
}

std::string guidePlace(const Press& press, const Guide& guide)
{
    if (press.place("guide") != nullptr) return "guide";
    return guide.rollers.empty() ? std::string() : placeAt(press, guide.rollers.front());
}

void addSensors(const Press& press, const Guide& guide, std::vector<Item>& out)
{
    const std::string of = press.guides.size() == 1 ? " of the guide" : " of guide " + guide.id;
    const bool both = guide.guides == "centre";
    if (both || guide.guides == "operator_edge")
        out.push_back(
            {guide.id + "-operator", "operator-side sensor" + of, guidePlace(press, guide), guideFacts(guide)});
    if (both || guide.guides == "drive_edge")
        out.push_back({guide.id + "-drive", "drive-side sensor" + of, guidePlace(press, guide), guideFacts(guide)});
}

void addClamps(const Press& press, std::vector<Item>& out)
{
    const int n = press.spliceTable.clamps.value_or(0);
    const std::string place = press.place("splice_table") != nullptr ? "splice_table" : "";
    if (n == 2) {
        out.push_back({"roll_side", "clamp on the roll's side", place, {}});
        out.push_back({"press_side", "clamp on the press's side", place, {}});
        return;
    }
    for (int i = 1; i <= n; ++i) out.push_back({std::to_string(i), "clamp " + std::to_string(i), place, {}});
}

}  // namespace

std::vector<std::string> factsOf(const Inputs& inputs, bool webInPress)
{
    std::vector<std::string> out;
    if (inputs.press) addPressFacts(*inputs.press, out);
    if (inputs.press && inputs.roll) {
        add(out,
            fitOf(*inputs.press, *inputs.roll) == CoreFit::Adapter ||
                fitOf(*inputs.press, *inputs.roll) == CoreFit::NoAdapter,
            "needs_adapter");
        const std::optional<Feed> feed = feedFor(*inputs.press, *inputs.roll);
        add(out, feed == Feed::Over, "feed_over");
        add(out, feed == Feed::Under, "feed_under");
    }
    add(out, inputs.roll && inputs.roll->splices.value_or(0) > 0, "roll_has_splices");
    if (inputs.press && inputs.substrate)
        add(out, any(inputs.press->guides, [&](const Guide& g) { return !seesEdge(g, *inputs.substrate); }),
            "sensor_clear");
    add(out, webInPress, "web_in_press");
    return out;
}

std::vector<Item> itemsOf(const Press& press, std::string_view repetition)
{
    std::vector<Item> out;
    if (repetition == "zone") {
        for (const Zone& z : press.zones) out.push_back({z.id, z.name, "", zoneFacts(press, z)});
    } else if (repetition == "station") {
        for (const Station& s : press.stations) {
            Item item{std::to_string(s.number), "station " + std::to_string(s.number), s.place, {}};
            add(item.facts, s.dryer == "uv", "station_uv");
            add(item.facts, s.dryer == "infrared", "station_infrared");
            add(item.facts, s.dryer == "air", "station_air");
            out.push_back(std::move(item));
        }
    } else if (repetition == "guard") {
        for (const Device& d : press.guards) out.push_back({d.id, d.name, d.place, {}});
    } else if (repetition == "emergency_stop") {
        for (const Device& d : press.emergencyStops) out.push_back({d.id, d.name, d.place, {}});
    } else if (repetition == "guide") {
        for (const Guide& g : press.guides)
            out.push_back({g.id, press.guides.size() == 1 ? std::string("guide") : "guide " + g.id,
                           guidePlace(press, g), guideFacts(g)});
    } else if (repetition == "sensor") {
        for (const Guide& g : press.guides) addSensors(press, g, out);
    } else if (repetition == "rewind") {
        for (const Rewind& r : press.rewinds)
            out.push_back({r.id,
                           r.roller.empty() ? r.id : r.roller,
                           placeAt(press, r.roller),
                           {r.waste ? "rewind_waste" : "rewind_product"}});
    } else if (repetition == "clamp") {
        addClamps(press, out);
    }
    return out;
}

const std::vector<std::string>& allFacts()
{
    static const std::vector<std::string> kAll{
        "has_air",          "has_lift",           "air_shaft",      "has_uv",
        "has_infrared",     "has_hot_air",        "has_die",        "has_waste",
        "two_rewinds",      "has_guide",          "guide_centre",   "guide_edge",
        "has_splice_table", "has_automatic_stop", "has_guards",     "has_zones",
        "trip_bars",        "wakes_stopped",      "needs_adapter",  "roll_has_splices",
        "feed_over",        "feed_under",         "sensor_clear",   "web_in_press",
        "zone_open_loop",   "zone_dancer",        "zone_load_cell", "zone_draw",
        "zone_pneumatic",   "zone_particle",      "zone_servo",     "zone_needs_diameter",
        "zone_unwind",      "zone_rewind",        "station_uv",     "station_infrared",
        "station_air",      "guide_displacement", "guide_steering", "rewind_product",
        "rewind_waste",     "zone_shows_tension"};
    return kAll;
}

const std::vector<std::string>& allRepetitions()
{
    static const std::vector<std::string> kAll{"guard", "emergency_stop", "station", "zone",
                                               "guide", "sensor",         "rewind",  "clamp"};
    return kAll;
}

}  // namespace taut::inputs
