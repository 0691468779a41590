// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/units/quantity.h"
#include "core/units/range.h"
#include "core/units/unit.h"

namespace taut::inputs {

template <Kind K>
using Maybe = std::optional<Entry<K>>;  ///< empty = the file does not say

/// What a control can be set to, and how well its instrument can be read (expanded, k = 2).
struct Setting {
    std::optional<Quantity> least, most, uncertainty;
    friend bool operator==(const Setting&, const Setting&) = default;
};

enum class Side : std::uint8_t { Operator, Drive };
enum class Feed : std::uint8_t { Over, Under };  ///< over: the web leaves the roll's top
enum class Winding : std::uint8_t { FaceOut, FaceIn, Unknown };

/// How a shaft or mandrel holds a core, and what holds the roll on the press (practice: a falling roll kills).
struct Mandrel {
    std::string kind;  ///< air_shaft expanding_chuck cones plain_shaft differential; "" = not said
    Maybe<Kind::Length> gripsLeast, gripsMost;  ///< core inner diameters it holds
    Maybe<Kind::Pressure> airLeast, airMost;    ///< of an air shaft, from its plate
    std::string support;                        ///< cantilever outboard safety_chucks; "" = not said
};
struct Adapter {
    Entry<Kind::Length> core;  ///< inner diameter it fits
    Maybe<Kind::Mass> mass;
};
struct Lift {
    std::string kind = "pneumatic";  ///< pneumatic powered hoist arms
    std::optional<int> pistons;
    Maybe<Kind::Length> bore;
    std::optional<double> ratio, efficiency;  ///< roll travel over piston travel; share of force that arrives
    Maybe<Kind::Mass> carriage, rated;        ///< moved with the roll; what its plate allows
    Setting pressure;
};
struct Unwind {
    std::string roller;
    std::vector<Feed> feeds;
    Mandrel mandrel;
    std::vector<Adapter> adapters;
    Maybe<Kind::Length> coreWall, largestDiameter, stopReserve;
    Maybe<Kind::Mass> largestMass;
    Maybe<Kind::Inertia> shaftInertia;  ///< of what turns with the roll: shaft, chucks, disc
    std::optional<Lift> lift;
};
struct Rewind {
    std::string id, roller;
    bool waste = false;
    std::vector<Feed> winds;
    Mandrel mandrel;
    Maybe<Kind::Length> coreWall, largestDiameter;
    Maybe<Kind::Inertia> shaftInertia;
    std::optional<double> coreWraps, coreFriction;
};

enum class Control : std::uint8_t { OpenLoop, Dancer, LoadCell, Draw };
enum class Actuator : std::uint8_t { None, Pneumatic, Particle, Servo };
enum class TaperShape : std::uint8_t { None, Linear, Hyperbolic };
struct Dancer {
    std::string roller;
    std::string load;  ///< pneumatic weight spring
    std::optional<int> cylinders;
    Maybe<Kind::Length> bore, armCylinder, armRoller;
    Maybe<Kind::Angle> wrap;  ///< else from the path
};
struct LoadCell {
    std::string roller;
    Maybe<Kind::Force> range;
    std::string setIn;  ///< a force unit, or "%"
};
/// A stretch of web under one tension, and the one thing an operator turns, types or hangs to set it.
struct Zone {
    std::string id, name, from, to;
    Control control{};
    Actuator actuator{};
    std::optional<Quantity> torquePerSetting, zeroSetting;  ///< kinds follow the actuator
    Setting setting;
    Setting actuatorRange;  ///< of dancer and load cell zones: what drives the torque
    Maybe<Kind::Power> slipPowerMost;
    std::optional<double> overspeed;          ///< of a slip clutch: input over the empty core, as a share of it
    std::optional<double> torqueUncertainty;  ///< of torquePerSetting, expanded, as a share; fitted or from its maker
    std::string torqueSource;                 ///< whence it is known: the runs it was fitted to, a sheet of its maker
    TaperShape taper = TaperShape::None;
    std::optional<double> taperFraction;
    bool needsDiameter = false;  ///< a drive into which the roll's diameter is typed
    std::string airLoss;         ///< holds releases brakes; "" = not said
    std::string stopAction;      ///< what it does in an emergency stop: holds releases brakes; "" = holds
    std::string carries;         ///< which layers bear this tension: all liner; "" = all
    std::optional<Dancer> dancer;
    std::optional<LoadCell> loadCell;
};

/// unwind idler nip displacement steering dancer load_cell print chill turn_bar die strip slitter rewind waste_rewind
struct Roller {
    std::string id, kind, path, leaves;  ///< path "" = main
    std::optional<int> station;
    Maybe<Kind::Length> x, y, diameter, roughness, extra;
    std::optional<bool> counterClockwise;
    std::optional<double> friction;
    Maybe<Kind::Inertia> inertia;
};
struct Guide {
    std::string id, kind;  ///< displacement steering unwind_shift rewind_shift
    std::string guides;    ///< centre operator_edge drive_edge
    std::vector<std::string> rollers;
    Maybe<Kind::Length> stroke, sensorWindow, sensorAfter;
    Maybe<Kind::Angle> angleMost;
    Maybe<Kind::Speed> correctionSpeed;
    std::string sensor;  ///< ultrasonic infrared visible line; "" = not said
};
struct Station {
    int number{};
    std::string roller, dryer;  ///< none air infrared uv; "" = not said
    std::string place;
    Maybe<Kind::Length> registerAlong, registerAcross;
    Maybe<Kind::Length> undercut;  ///< of the plate cylinder under its pitch line: plate and tape fill it
};
struct Sourced {  ///< a measured or stated value and who says so
    std::optional<Quantity> value;
    std::string source;
    std::optional<Quantity> at;  ///< of a time to or from standstill: the speed it was measured at; empty = not said
};
struct Device {  ///< a guard or an emergency stop
    std::string id, name, by, place;
};
/// Where somebody stands, and the maintained stop within reach there.
struct Place {
    std::string id, name, holdStop;
    std::vector<std::string> sees;
};
/// Something that is looked after at intervals, and the step of a procedure that shows that it was. When it was last
/// done is for the record to say.
struct Check {
    std::string id, name;
    Maybe<Kind::Time> every;
    std::string step;  ///< "power_up.tests.stop_test": stage, place and step; of a repeated one all its items
};
/// Measured lengths in place of roller coordinates.
struct Lengths {
    Maybe<Kind::Length> whole, tableToRewind, guideSpan, guideEntry, guideExit;
};

/// A press as its profile tells it: facts, never what a run should do. Everything below name may be missing; what
/// cannot be computed then says which key it needs.
struct Press {
    std::string id, name, site;
    UnitSystem units{};
    Maybe<Kind::Length> webLeast, webMost, centreline, betweenFrames;
    std::optional<Side> measureFrom;
    std::optional<Feed> printFeed;  ///< this pair of feed and winding shows the face to the plates
    std::optional<Winding> printWinding;
    std::optional<Unwind> unwind;
    std::vector<Rewind> rewinds;
    std::vector<Zone> zones;
    struct {
        std::string after;
        Maybe<Kind::Length> length;
        std::optional<int> clamps;
        Maybe<Kind::Angle> angle;  ///< at which its guide cuts, from the straight cross cut
    } spliceTable;
    std::vector<Roller> rollers;  ///< in web order; lanes and waste after the main path
    std::optional<Lengths> lengths;
    std::vector<Guide> guides;
    std::vector<Station> stations;
    Sourced inch, crawl, idle, largest, stopTime, emergencyStopTime, rampUp;
    bool tripBars = false;
    bool wakesStopped = false;  ///< the emergency stop is latched after power-up
    bool hasAir = true;
    std::string drawnBy;       ///< what pulls the web when it is threaded: outfeed rewind hand
    std::string registerMark;  ///< how this press shows the middle of its register adjusters
    std::vector<Device> guards, emergencyStops;
    std::vector<Place> places;
    std::vector<Check> checks;
    std::vector<std::pair<std::string, std::string>> labels;  ///< this shop's words for its controls, by role
    std::vector<std::pair<std::string, Range>> limits;        ///< policy windows of this shop, by target or reading id
    std::vector<std::pair<std::string, Quantity>> policy;     ///< rows of policy.h that this shop has set itself

    [[nodiscard]] const Roller* roller(std::string_view rollerId) const;
    [[nodiscard]] const Zone* zone(std::string_view zoneId) const;
    [[nodiscard]] const std::string* label(std::string_view role) const;
    [[nodiscard]] const Place* place(std::string_view placeId) const;
};

}  // namespace taut::inputs
