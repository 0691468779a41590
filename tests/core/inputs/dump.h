// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>

#include "core/base/json.h"
#include "core/inputs/inputs.h"
#include "core/inputs/words.h"
#include "core/units/plain.h"

// A press as rows "zone[0].setting.least" -> "30000 pressure": the keys of its file, so that a test can say which key
// went where.

class PressDump {
public:
    using Rows = std::map<std::string, std::string>;
    static Rows of(const taut::inputs::Press& press)
    {
        PressDump d;
        d.head(press);
        d.rolls(press);
        d.zones(press);
        d.web(press);
        d.rest(press);
        return d.m_rows;
    }

private:
    using Quantity = taut::Quantity;
    static std::string at(const std::string& list, std::size_t i) { return list + '[' + std::to_string(i) + ']'; }
    void put(const std::string& key, const std::string& value)
    {
        if (!value.empty()) m_rows[key] = value;
    }
    void put(const std::string& key, std::string_view value) { put(key, std::string(value)); }
    void put(const std::string& key, const char* value) { put(key, std::string(value)); }
    void put(const std::string& key, bool value) { m_rows[key] = value ? "true" : "false"; }
    void put(const std::string& key, const std::optional<int>& value)
    {
        if (value) m_rows[key] = std::to_string(*value);
    }
    void put(const std::string& key, const std::optional<double>& value)
    {
        if (value) m_rows[key] = taut::shortest(*value);
    }
    void put(const std::string& key, const std::optional<Quantity>& q)
    {
        if (q) m_rows[key] = taut::shortest(q->si()) + ' ' + taut::kindWord(q->kind());
    }
    template <taut::Kind K>
    void put(const std::string& key, const taut::inputs::Maybe<K>& e)
    {
        if (e) put(key, std::optional<Quantity>(e->quantity()));
    }
    void put(const std::string& key, const taut::inputs::Setting& s)
    {
        put(key + ".least", s.least);
        put(key + ".most", s.most);
        put(key + ".uncertainty", s.uncertainty);
    }
    void put(const std::string& key, const taut::inputs::Sourced& s)
    {
        put(key + ".value", s.value);
        put(key + ".at", s.at);
        put(key + ".source", s.source);
    }
    void put(const std::string& key, const std::vector<std::string>& texts)
    {
        for (std::size_t i = 0; i < texts.size(); ++i) put(at(key, i), texts[i]);
    }
    void put(const std::string& key, const std::vector<taut::inputs::Feed>& feeds)
    {
        for (std::size_t i = 0; i < feeds.size(); ++i)
            put(at(key, i), taut::inputs::wordFor<taut::inputs::Feed>(taut::inputs::kFeedWords, feeds[i]));
    }
    void put(const std::string& key, const taut::inputs::Mandrel& m)
    {
        put(key + ".grips.least", m.gripsLeast);
        put(key + ".grips.most", m.gripsMost);
        put(key + ".mandrel.kind", m.kind);
        put(key + ".mandrel.pressure.least", m.airLeast);
        put(key + ".mandrel.pressure.most", m.airMost);
        put(key + ".mandrel.support", m.support);
    }
    void head(const taut::inputs::Press& p)
    {
        using namespace taut::inputs;
        put("press.id", p.id);
        put("press.name", p.name);
        put("press.site", p.site);
        put("press.units", wordFor<taut::UnitSystem>(kUnitWords, p.units));
        put("press.web_width.least", p.webLeast);
        put("press.web_width.most", p.webMost);
        if (p.measureFrom) put("press.measure_from", wordFor<Side>(kSideWords, *p.measureFrom));
        put("press.centreline", p.centreline);
        put("press.between_frames", p.betweenFrames);
        if (p.printFeed) put("press.print_side.feed", wordFor<Feed>(kFeedWords, *p.printFeed));
        if (p.printWinding) put("press.print_side.winding", wordFor<Winding>(kWindingWords, *p.printWinding));
        put("press.air", p.hasAir);
        put("press.wakes_stopped", p.wakesStopped);
        put("press.drawn_by", p.drawnBy);
        put("press.register_mark", p.registerMark);
    }
    void rolls(const taut::inputs::Press& p)
    {
        if (p.unwind) {
            const taut::inputs::Unwind& u = *p.unwind;
            put("unwind.roller", u.roller);
            put("unwind.feeds", u.feeds);
            put("unwind", u.mandrel);
            for (std::size_t i = 0; i < u.adapters.size(); ++i) {
                put(at("unwind.adapters", i) + ".core", std::optional<Quantity>(u.adapters[i].core.quantity()));
                put(at("unwind.adapters", i) + ".mass", u.adapters[i].mass);
            }
            put("unwind.core_wall", u.coreWall);
            put("unwind.largest_diameter", u.largestDiameter);
            put("unwind.largest_mass", u.largestMass);
            put("unwind.shaft_inertia", u.shaftInertia);
            put("unwind.stop_reserve", u.stopReserve);
            if (u.lift) {
                put("unwind.lift.kind", u.lift->kind);
                put("unwind.lift.pistons", u.lift->pistons);
                put("unwind.lift.bore", u.lift->bore);
                put("unwind.lift.ratio", u.lift->ratio);
                put("unwind.lift.efficiency", u.lift->efficiency);
                put("unwind.lift.carriage", u.lift->carriage);
                put("unwind.lift.rated", u.lift->rated);
                put("unwind.lift.pressure", u.lift->pressure);
            }
        }
        for (std::size_t i = 0; i < p.rewinds.size(); ++i) {
            const taut::inputs::Rewind& r = p.rewinds[i];
            const std::string k = at("rewind", i);
            put(k + ".id", r.id);
            put(k + ".roller", r.roller);
            put(k + ".takes", r.waste ? "waste" : "product");
            put(k + ".winds", r.winds);
            put(k, r.mandrel);
            put(k + ".core_wall", r.coreWall);
            put(k + ".core_wraps", r.coreWraps);
            put(k + ".core_friction", r.coreFriction);
            put(k + ".largest_diameter", r.largestDiameter);
            put(k + ".shaft_inertia", r.shaftInertia);
        }
    }
    void zones(const taut::inputs::Press& p)
    {
        using namespace taut::inputs;
        for (std::size_t i = 0; i < p.zones.size(); ++i) {
            const Zone& z = p.zones[i];
            const std::string k = at("zone", i);
            put(k + ".id", z.id);
            put(k + ".name", z.name);
            put(k + ".from", z.from);
            put(k + ".to", z.to);
            put(k + ".control", wordFor<Control>(kControlWords, z.control));
            put(k + ".actuator", wordFor<Actuator>(kActuatorWords, z.actuator));
            put(k + ".torque_per_setting", z.torquePerSetting);
            put(k + ".zero_setting", z.zeroSetting);
            put(k + ".setting", z.setting);
            put(k + ".actuator_range", z.actuatorRange);
            put(k + ".slip_power_most", z.slipPowerMost);
            put(k + ".overspeed", z.overspeed);
            put(k + ".torque_uncertainty", z.torqueUncertainty);
            put(k + ".taper.shape", wordFor<TaperShape>(kTaperWords, z.taper));
            put(k + ".taper.fraction", z.taperFraction);
            put(k + ".needs_diameter", z.needsDiameter);
            put(k + ".air_loss", z.airLoss);
            put(k + ".stop_action", z.stopAction);
            put(k + ".carries", z.carries);
            if (z.dancer) {
                put(k + ".dancer.roller", z.dancer->roller);
                put(k + ".dancer.load", z.dancer->load);
                put(k + ".dancer.cylinders", z.dancer->cylinders);
                put(k + ".dancer.bore", z.dancer->bore);
                put(k + ".dancer.arm.cylinder", z.dancer->armCylinder);
                put(k + ".dancer.arm.roller", z.dancer->armRoller);
                put(k + ".dancer.wrap", z.dancer->wrap);
            }
            if (z.loadCell) {
                put(k + ".load_cell.roller", z.loadCell->roller);
                put(k + ".load_cell.range", z.loadCell->range);
                put(k + ".load_cell.set_in", z.loadCell->setIn);
            }
        }
    }
    void web(const taut::inputs::Press& p)
    {
        put("splice_table.after", p.spliceTable.after);
        put("splice_table.length", p.spliceTable.length);
        put("splice_table.clamps", p.spliceTable.clamps);
        put("splice_table.angle", p.spliceTable.angle);
        for (std::size_t i = 0; i < p.rollers.size(); ++i) {
            const taut::inputs::Roller& r = p.rollers[i];
            const std::string k = at("web.roller", i);
            put(k + ".id", r.id);
            put(k + ".kind", r.kind);
            put(k + ".path", r.path);
            put(k + ".leaves", r.leaves);
            put(k + ".station", r.station);
            put(k + ".at[0]", r.x);
            put(k + ".at[1]", r.y);
            put(k + ".diameter", r.diameter);
            put(k + ".roughness", r.roughness);
            put(k + ".extra", r.extra);
            if (r.counterClockwise) put(k + ".turn", *r.counterClockwise ? "ccw" : "cw");
            put(k + ".friction", r.friction);
            put(k + ".inertia", r.inertia);
        }
        if (p.lengths) {
            put("lengths.whole", p.lengths->whole);
            put("lengths.table_to_rewind", p.lengths->tableToRewind);
            put("lengths.guide_span", p.lengths->guideSpan);
            put("lengths.guide_entry", p.lengths->guideEntry);
            put("lengths.guide_exit", p.lengths->guideExit);
        }
        for (std::size_t i = 0; i < p.guides.size(); ++i) {
            const taut::inputs::Guide& g = p.guides[i];
            const std::string k = at("guide", i);
            put(k + ".id", g.id);
            put(k + ".kind", g.kind);
            put(k + ".guides", g.guides);
            put(k + ".rollers", g.rollers);
            put(k + ".stroke", g.stroke);
            put(k + ".angle_most", g.angleMost);
            put(k + ".sensor", g.sensor);
            put(k + ".sensor_window", g.sensorWindow);
            put(k + ".sensor_after", g.sensorAfter);
            put(k + ".correction_speed", g.correctionSpeed);
        }
        for (std::size_t i = 0; i < p.stations.size(); ++i) {
            const taut::inputs::Station& s = p.stations[i];
            const std::string k = at("printing.station", i);
            put(k + ".number", std::optional<int>(s.number));
            put(k + ".roller", s.roller);
            put(k + ".dryer", s.dryer);
            put(k + ".register_along", s.registerAlong);
            put(k + ".register_across", s.registerAcross);
            put(k + ".undercut", s.undercut);
            put(k + ".place", s.place);
        }
    }
    void devices(const std::string& list, const std::vector<taut::inputs::Device>& all)
    {
        for (std::size_t i = 0; i < all.size(); ++i) {
            put(at(list, i) + ".id", all[i].id);
            put(at(list, i) + ".name", all[i].name);
            put(at(list, i) + ".by", all[i].by);
            put(at(list, i) + ".place", all[i].place);
        }
    }
    void rest(const taut::inputs::Press& p)
    {
        put("speeds.inch", p.inch);
        put("speeds.crawl", p.crawl);
        put("speeds.idle", p.idle);
        put("speeds.largest", p.largest);
        put("speeds.stop_time", p.stopTime);
        put("speeds.emergency_stop_time", p.emergencyStopTime);
        put("speeds.ramp_up", p.rampUp);
        put("safety.trip_bars", p.tripBars);
        devices("safety.guard", p.guards);
        devices("safety.emergency_stop", p.emergencyStops);
        for (std::size_t i = 0; i < p.places.size(); ++i) {
            put(at("place", i) + ".id", p.places[i].id);
            put(at("place", i) + ".name", p.places[i].name);
            put(at("place", i) + ".hold_stop", p.places[i].holdStop);
            put(at("place", i) + ".sees", p.places[i].sees);
        }
        for (std::size_t i = 0; i < p.checks.size(); ++i) {
            put(at("check", i) + ".id", p.checks[i].id);
            put(at("check", i) + ".name", p.checks[i].name);
            put(at("check", i) + ".every", p.checks[i].every);
            put(at("check", i) + ".step", p.checks[i].step);
        }
        for (const auto& [id, range] : p.limits) {
            put("limits." + id + ".low", range.low);
            put("limits." + id + ".high", range.high);
        }
        for (const auto& [row, value] : p.policy) put("policy." + row, std::optional<Quantity>(value));
        for (const auto& [role, label] : p.labels) put("labels." + role, label);
    }

    Rows m_rows;
};
