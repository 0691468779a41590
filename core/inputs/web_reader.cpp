// SPDX-License-Identifier: GPL-3.0-or-later
#include <tuple>

#include "core/inputs/parts.h"
#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

std::optional<Roller> readRoller(KeyReader& keys, const Names& names)
{
    Roller roller;
    roller.id = keys.id("id", false);
    roller.kind = keys.word("kind", kRollerWords);
    roller.path = keys.text("path");
    roller.leaves = keys.reference("leaves", names.rollers);
    roller.station = keys.whole("station", 1, 99);
    std::tie(roller.x, roller.y) = keys.point("at", sane::kCoordinate);
    roller.diameter = keys.get<Kind::Length>("diameter", sane::kRollerDiameter);
    roller.roughness = keys.get<Kind::Length>("roughness", sane::kRoughness);
    roller.extra = keys.get<Kind::Length>("extra", {0, 20, true});
    if (const std::string turn = keys.word("turn", kTurnWords); !turn.empty()) roller.counterClockwise = turn == "ccw";
    roller.friction = keys.share("friction", sane::kFriction);
    roller.inertia = keys.get<Kind::Inertia>("inertia", sane::kInertia);
    keys.done();
    if (roller.id.empty()) return std::nullopt;
    return roller;
}

Guide readGuide(KeyReader& keys, const Names& names)
{
    Guide guide;
    guide.id = keys.id("id", true);
    guide.kind = keys.word("kind", kGuideWords);
    guide.guides = keys.word("guides", kGuidesWords);
    guide.rollers = keys.references("rollers", names.rollers);
    guide.stroke = keys.get<Kind::Length>("stroke", sane::kSmallLength);
    guide.angleMost = keys.get<Kind::Angle>("angle_most", sane::kGuideAngle);
    guide.sensor = keys.word("sensor", kSensorWords);
    guide.sensorWindow = keys.get<Kind::Length>("sensor_window", sane::kSmallLength);
    guide.sensorAfter = keys.get<Kind::Length>("sensor_after", {0, 20, true});
    guide.correctionSpeed = keys.get<Kind::Speed>("correction_speed", {1e-5, 1});
    keys.done();
    return guide;
}

std::optional<Station> readStation(KeyReader& keys, const Names& names)
{
    Station station;
    const std::optional<int> number = keys.whole("number", 1, 99);
    station.roller = keys.reference("roller", names.rollers);
    station.dryer = keys.word("dryer", kDryerWords);
    station.registerAlong = keys.get<Kind::Length>("register_along", sane::kSmallLength);
    station.registerAcross = keys.get<Kind::Length>("register_across", sane::kSmallLength);
    station.undercut = keys.get<Kind::Length>("undercut", sane::kPlate);
    station.place = keys.reference("place", names.places);
    if (!number && !keys.has("number"))
        keys.complain("number", refuse("input.missing_key", {}, "This station has no number.",
                                       "Write number = 1 (or its number); it is left out until then."));
    keys.done();
    if (!number) return std::nullopt;
    station.number = *number;
    return station;
}

void readStations(KeyReader& printing, const Names& names, Press& press)
{
    for (KeyReader& keys : printing.tables("station")) {
        std::optional<Station> station = readStation(keys, names);
        if (!station) continue;
        const bool twice = std::any_of(press.stations.begin(), press.stations.end(),
                                       [&](const Station& s) { return s.number == station->number; });
        if (twice)
            keys.complain("number", refuse("input.duplicate_id", {},
                                           {"Station %1 is given twice.", {std::int64_t{station->number}}},
                                           "Give this one another number; it is left out until then."));
        else
            press.stations.push_back(std::move(*station));
    }
}

Lengths readLengths(KeyReader keys)
{
    Lengths out;
    out.whole = keys.get<Kind::Length>("whole", sane::kPathLength);
    out.tableToRewind = keys.get<Kind::Length>("table_to_rewind", sane::kPathLength);
    out.guideSpan = keys.get<Kind::Length>("guide_span", sane::kPathLength);
    out.guideEntry = keys.get<Kind::Length>("guide_entry", sane::kPathLength);
    out.guideExit = keys.get<Kind::Length>("guide_exit", sane::kPathLength);
    keys.done();
    return out;
}

}  // namespace

void readWeb(KeyReader& top, const Names& names, Press& press)
{
    if (std::optional<KeyReader> table = top.table("splice_table")) {
        press.spliceTable.after = table->reference("after", names.rollers);
        press.spliceTable.length = table->get<Kind::Length>("length", {0.01, 10});
        press.spliceTable.clamps = table->whole("clamps", 0, 10);
        press.spliceTable.angle = table->get<Kind::Angle>("angle", {0, 1.4, true});
        table->done();
    }
    if (std::optional<KeyReader> web = top.table("web")) {
        for (KeyReader& keys : web->tables("roller")) {
            std::optional<Roller> roller = readRoller(keys, names);
            if (roller && !isTaken(keys, roller->id, press.rollers)) press.rollers.push_back(std::move(*roller));
        }
        web->done();
    }
    if (std::optional<KeyReader> lengths = top.table("lengths")) press.lengths = readLengths(std::move(*lengths));
    for (KeyReader& keys : top.tables("guide")) {
        Guide guide = readGuide(keys, names);
        if (!guide.id.empty() && !isTaken(keys, guide.id, press.guides)) press.guides.push_back(std::move(guide));
    }
    if (std::optional<KeyReader> printing = top.table("printing")) {
        readStations(*printing, names, press);
        printing->done();
    }
}

}  // namespace taut::inputs
