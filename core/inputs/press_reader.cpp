// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/inputs/input_file.h"
#include "core/inputs/inputs.h"
#include "core/inputs/parts.h"
#include "core/inputs/words.h"
#include "core/units/format.h"

namespace taut::inputs {

namespace {

/// A list of feeds; a word that is none is left out.
std::vector<Feed> readFeeds(KeyReader& keys, std::string_view key)
{
    std::vector<Feed> out;
    for (const std::string& word : keys.texts(key)) {
        const auto it =
            std::find_if(kFeedWords.begin(), kFeedWords.end(), [&](const Word<Feed>& w) { return w.first == word; });
        if (it == kFeedWords.end())
            keys.complain(key, refuse("input.unknown_word", {}, {"\"%1\" is not a word that can stand here.", {word}},
                                      {"Write one of: %1.", {"over, under"}}));
        else if (std::find(out.begin(), out.end(), it->second) == out.end())
            out.push_back(it->second);
    }
    return out;
}

/// `grips` and `mandrel`: one thing in two keys.
Mandrel readMandrel(KeyReader& above)
{
    Mandrel mandrel;
    if (std::optional<KeyReader> grips = above.table("grips")) {
        mandrel.gripsLeast = grips->get<Kind::Length>("least", sane::kCore);
        mandrel.gripsMost = grips->get<Kind::Length>("most", sane::kCore);
        checkOrder(*grips, "least", mandrel.gripsLeast, mandrel.gripsMost);
        grips->done();
    }
    if (std::optional<KeyReader> keys = above.table("mandrel")) {
        mandrel.kind = keys->word("kind", kMandrelWords);
        mandrel.support = keys->word("support", kSupportWords);
        if (std::optional<KeyReader> air = keys->table("pressure")) {
            mandrel.airLeast = air->get<Kind::Pressure>("least", sane::kAir);
            mandrel.airMost = air->get<Kind::Pressure>("most", sane::kAir);
            checkOrder(*air, "least", mandrel.airLeast, mandrel.airMost);
            air->done();
        }
        keys->done();
    }
    return mandrel;
}

Lift readLift(KeyReader keys)
{
    Lift lift;
    if (const std::string kind = keys.word("kind", kLiftWords); !kind.empty()) lift.kind = kind;
    lift.pistons = keys.whole("pistons", 1, 20);
    lift.bore = keys.get<Kind::Length>("bore", {0.005, 1});
    lift.ratio = keys.number("ratio", sane::kRatio);
    lift.efficiency = keys.share("efficiency", sane::kEfficiency);
    lift.carriage = keys.get<Kind::Mass>("carriage", {0, 2000, true});
    lift.rated = keys.get<Kind::Mass>("rated", sane::kMass);
    const Kind air[] = {Kind::Pressure};
    lift.pressure = readSetting(keys, "pressure", air);
    keys.done();
    return lift;
}

Unwind readUnwind(KeyReader keys, const Names& names)
{
    Unwind unwind;
    unwind.roller = keys.reference("roller", names.rollers);
    unwind.feeds = readFeeds(keys, "feeds");
    unwind.mandrel = readMandrel(keys);
    for (KeyReader& item : keys.tables("adapters")) {
        const Maybe<Kind::Length> core = item.get<Kind::Length>("core", sane::kCore);
        const Maybe<Kind::Mass> mass = item.get<Kind::Mass>("mass", sane::kMass);
        if (!item.has("core"))
            item.complain("core", refuse("input.missing_key", {}, "This adapter does not say which core it fits.",
                                         "Write core = with the core's inner diameter; it is left out until then."));
        item.done();
        if (core) unwind.adapters.push_back({*core, mass});
    }
    unwind.coreWall = keys.get<Kind::Length>("core_wall", sane::kCoreWall);
    unwind.largestDiameter = keys.get<Kind::Length>("largest_diameter", sane::kRollDiameter);
    unwind.largestMass = keys.get<Kind::Mass>("largest_mass", sane::kMass);
    unwind.shaftInertia = keys.get<Kind::Inertia>("shaft_inertia", sane::kInertia);
    unwind.stopReserve = keys.get<Kind::Length>("stop_reserve", {0, 2000, true});
    if (std::optional<KeyReader> lift = keys.table("lift")) unwind.lift = readLift(std::move(*lift));
    keys.done();
    return unwind;
}

/// Three wraps hold some tens of times the tail's pull; what would be ten thousand times is a slip of a figure
/// (policy).
void checkHold(KeyReader& keys, Rewind& rewind)
{
    constexpr double kMost = 1e4;
    if (!rewind.coreWraps || !rewind.coreFriction ||
        std::exp(2 * std::numbers::pi * *rewind.coreFriction * *rewind.coreWraps) <= kMost)
        return;
    keys.complain("core_wraps", refuse("input.core_hold", {},
                                       "So many wraps at so much friction would hold more than ten thousand times the "
                                       "pull on the tail.",
                                       "Count the wraps that are turned onto the core before the web pulls, three as a "
                                       "rule, and look at core_friction, 0.2 for paper on a core."));
    rewind.coreWraps.reset();
}

Rewind readRewind(KeyReader& keys, const Names& names)
{
    Rewind rewind;
    rewind.id = keys.id("id", true);
    rewind.roller = keys.reference("roller", names.rollers);
    rewind.waste = keys.word("takes", kTakesWords) == "waste";
    rewind.winds = readFeeds(keys, "winds");
    rewind.mandrel = readMandrel(keys);
    rewind.coreWall = keys.get<Kind::Length>("core_wall", sane::kCoreWall);
    rewind.coreWraps = keys.number("core_wraps", {0.1, 50});
    rewind.coreFriction = keys.share("core_friction", sane::kCoreFriction);
    checkHold(keys, rewind);
    rewind.largestDiameter = keys.get<Kind::Length>("largest_diameter", sane::kRollDiameter);
    rewind.shaftInertia = keys.get<Kind::Inertia>("shaft_inertia", sane::kInertia);
    keys.done();
    return rewind;
}

void readHead(KeyReader keys, Press& press)
{
    press.id = keys.id("id", false);
    press.name = keys.text("name");
    press.site = keys.text("site");
    press.units = keys.oneOf<UnitSystem>("units", kUnitWords).value_or(UnitSystem::Metric);
    if (std::optional<KeyReader> width = keys.table("web_width")) {
        press.webLeast = width->get<Kind::Length>("least", sane::kPressWidth);
        press.webMost = width->get<Kind::Length>("most", sane::kPressWidth);
        checkOrder(*width, "least", press.webLeast, press.webMost);
        width->done();
    }
    press.measureFrom = keys.oneOf<Side>("measure_from", kSideWords);
    press.centreline = keys.get<Kind::Length>("centreline", sane::kAcross);
    press.betweenFrames = keys.get<Kind::Length>("between_frames", sane::kPressWidth);
    if (std::optional<KeyReader> side = keys.table("print_side")) {
        press.printFeed = side->oneOf<Feed>("feed", kFeedWords);
        press.printWinding = side->oneOf<Winding>("winding", std::span(kWindingWords).first<2>());
        side->done();
    }
    press.hasAir = keys.flag("air").value_or(true);
    press.wakesStopped = keys.flag("wakes_stopped").value_or(false);
    press.drawnBy = keys.word("drawn_by", kDrawnWords);
    press.registerMark = keys.text("register_mark");
    keys.done();
}

Sourced readSourced(KeyReader& above, std::string_view key, std::span<const Kind> kinds, Sane sane)
{
    Sourced out;
    if (std::optional<KeyReader> keys = above.table(key)) {
        out.value = keys->quantity("value", kinds, sane);
        out.source = keys->text("source");
        // A time to or from standstill says little without the speed; without it the job's is meant.
        constexpr Kind kSpeedOnly[] = {Kind::Speed};
        if (kinds.front() == Kind::Time) out.at = keys->quantity("at", kSpeedOnly, sane::kSpeed);
        keys->done();
    }
    return out;
}

void readSpeeds(KeyReader keys, Press& press)
{
    const Kind length[] = {Kind::Length}, speed[] = {Kind::Speed}, time[] = {Kind::Time};
    press.inch = readSourced(keys, "inch", length, {1e-4, 2});
    press.crawl = readSourced(keys, "crawl", speed, sane::kSpeed);
    press.idle = readSourced(keys, "idle", speed, sane::kSpeed);
    press.largest = readSourced(keys, "largest", speed, sane::kSpeed);
    press.stopTime = readSourced(keys, "stop_time", time, sane::kStopTime);
    press.emergencyStopTime = readSourced(keys, "emergency_stop_time", time, sane::kStopTime);
    press.rampUp = readSourced(keys, "ramp_up", time, sane::kStopTime);
    keys.done();
}

void readDevices(KeyReader& above, std::string_view key, const Names& names, std::vector<Device>& out)
{
    for (KeyReader& keys : above.tables(key)) {
        Device device{keys.id("id", false), keys.text("name"), keys.reference("by", names.rollers),
                      keys.reference("place", names.places)};
        keys.done();
        if (device.name.empty()) device.name = device.id;
        if (!device.id.empty() && !isTaken(keys, device.id, out)) out.push_back(std::move(device));
    }
}

void readPlaces(KeyReader& top, const Names& names, Press& press)
{
    std::vector<std::string> visible = names.rollers;
    if (!visible.empty()) visible.insert(visible.end(), names.places.begin(), names.places.end());
    for (KeyReader& keys : top.tables("place")) {
        Place place{keys.id("id", false), keys.text("name"), keys.text("hold_stop"), keys.references("sees", visible)};
        keys.done();
        if (place.name.empty()) place.name = place.id;
        if (!place.id.empty() && !isTaken(keys, place.id, press.places)) press.places.push_back(std::move(place));
    }
}

/// Stage, place and step, each with a name: an item of a repeated step is none of its own.
bool isStepPath(std::string_view step)
{
    const std::size_t first = step.find('.'), second = step.find('.', first + 1);
    return first != std::string_view::npos && second != std::string_view::npos && first > 0 && second > first + 1 &&
           second + 1 < step.size() && step.find_first_of("./ ", second + 1) == std::string_view::npos;
}

void readChecks(KeyReader& top, Press& press)
{
    for (KeyReader& keys : top.tables("check")) {
        Check check{keys.id("id", false), keys.text("name"), keys.get<Kind::Time>("every", sane::kCheckEvery),
                    keys.text("step")};
        if (!check.step.empty() && !isStepPath(check.step)) {
            keys.complain("step", refuse("input.step_path", {}, {"\"%1\" is not the way to a step.", {check.step}},
                                         "Write stage, place and step of the procedure with dots between, as in "
                                         "power_up.tests.stop_test."));
            check.step.clear();
        }
        keys.done();
        if (check.name.empty()) check.name = check.id;
        if (!check.id.empty() && !isTaken(keys, check.id, press.checks)) press.checks.push_back(std::move(check));
    }
}

/// The ids of a list of tables.
std::vector<std::string> idsOf(const Toml* list)
{
    std::vector<std::string> out;
    if (list == nullptr || list->array() == nullptr) return out;
    for (const Toml& item : *list->array())
        if (const Toml* id = item.find("id"); id != nullptr && id->text() != nullptr) out.push_back(*id->text());
    return out;
}

Names namesIn(const Toml& root)
{
    const Toml* web = root.find("web");
    return {idsOf(web == nullptr ? nullptr : web->find("roller")), idsOf(root.find("place"))};
}

/// Targets of the unwind bear this name ("stop.unwind.tension"): a rewind of that name would be taken for it.
bool isUnwind(KeyReader& keys, const std::string& id)
{
    if (id != "unwind") return false;
    keys.complain("id", refuse("input.bad_id", {}, {"\"%1\" is the name of the unwind, not of a rewind.", {id}},
                               "Give this rewind another name; it is left out until then."));
    return true;
}

}  // namespace

Setting readSetting(KeyReader& above, std::string_view key, std::span<const Kind> kinds)
{
    Setting out;
    std::optional<KeyReader> keys = above.table(key);
    if (!keys) return out;
    out.least = keys->quantity("least", kinds, std::nullopt);
    out.most = keys->quantity("most", kinds, std::nullopt);
    checkOrder(*keys, "least", out.least, out.most);
    out.uncertainty = keys->quantity("uncertainty", kinds, std::nullopt);
    if (out.uncertainty && out.uncertainty->si() < 0) {
        keys->complain("uncertainty", refuse("input.negative", {}, "An uncertainty is never below nought.",
                                             "Write how far the reading may be off, without a sign."));
        out.uncertainty.reset();
    }
    keys->done();
    return out;
}

/// What is set and read at a panel is said in the panel's unit, also where this press's people use others elsewhere.
void sayInPanelUnits(Press& press)
{
    const auto say = [&press](std::optional<Quantity>& q) {
        if (q) q = Quantity(q->si(), q->kind(), panelUnit(q->kind(), q->unit(), press.units), q->entered());
    };
    for (Zone& zone : press.zones)
        for (Setting* setting : {&zone.setting, &zone.actuatorRange})
            for (std::optional<Quantity>* end : {&setting->least, &setting->most, &setting->uncertainty}) say(*end);
}

/// A label for a role that no procedure can name is never shown: it is kept and told.
void readLabels(KeyReader& labels, Press& press)
{
    std::vector<std::string> known;
    known.reserve(kControlRoles.size() + press.zones.size());
    for (const auto& [role, name] : kControlRoles) known.emplace_back(role);
    for (const Zone& zone : press.zones) known.push_back(zone.id + std::string(kSettingRole));
    for (const std::string& role : labels.keys()) {
        std::string label = labels.text(role);
        if (label.empty()) continue;
        press.labels.emplace_back(role, std::move(label));
        // Where the file tells no zones, nobody knows whose setting it is.
        const bool ofZone = press.zones.empty() && std::string_view(role).ends_with(kSettingRole);
        if (ofZone || std::find(known.begin(), known.end(), role) != known.end()) continue;
        const std::string near = nearest(role, known);
        labels.complain(role, {"input.unknown_role",
                               labels.notes().newer ? Severity::Note : Severity::Warn,
                               {},
                               {"No control of this press has the role %1: its label is never shown.", {role}},
                               near.empty() ? Text("Take it out, or name one of the roles that procedures use.")
                                            : Text("Was %1 meant? Else take it out.", {near})});
    }
}

Result<Press> readPress(std::string_view toml, FileNotes& found)
{
    const Result<Toml> root = openInput(toml, "press", found);
    if (!root) return root.error();
    KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);

    const Names names = namesIn(*root);
    Press press;
    readHead(*top.table("press"), press);
    if (press.name.empty()) press.name = press.id;
    if (std::optional<KeyReader> unwind = top.table("unwind")) press.unwind = readUnwind(std::move(*unwind), names);
    for (KeyReader& keys : top.tables("rewind")) {
        Rewind rewind = readRewind(keys, names);
        if (rewind.id.empty() || isUnwind(keys, rewind.id) || isTaken(keys, rewind.id, press.rewinds)) continue;
        press.rewinds.push_back(std::move(rewind));
    }
    press.zones = readZones(top, names, press.rewinds);
    sayInPanelUnits(press);
    readWeb(top, names, press);
    for (Rewind& rewind : press.rewinds)
        if (const Roller* roller = press.roller(rewind.roller); roller != nullptr && roller->kind == "waste_rewind")
            rewind.waste = true;
    if (std::optional<KeyReader> speeds = top.table("speeds")) readSpeeds(std::move(*speeds), press);
    if (std::optional<KeyReader> safety = top.table("safety")) {
        press.tripBars = safety->flag("trip_bars").value_or(false);
        readDevices(*safety, "guard", names, press.guards);
        readDevices(*safety, "emergency_stop", names, press.emergencyStops);
        safety->done();
    }
    readPlaces(top, names, press);
    readChecks(top, press);
    if (std::optional<KeyReader> limits = top.table("limits")) readLimits(std::move(*limits), press);
    if (std::optional<KeyReader> policy = top.table("policy")) readPolicy(std::move(*policy), press);
    if (std::optional<KeyReader> labels = top.table("labels")) readLabels(*labels, press);
    top.done();
    return press;
}

Result<Press> readPress(std::string_view toml, std::string_view file, Findings& notes)
{
    FileNotes found(file);
    Result<Press> read = readPress(toml, found);
    if (read) found.moveTo(notes);
    return read;
}

}  // namespace taut::inputs
