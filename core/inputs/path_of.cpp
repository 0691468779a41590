// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/path_of.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/path_pieces.h"
#include "core/inputs/usual_cores.h"

namespace taut::inputs {

namespace {

bool isMain(const Roller& roller) { return roller.path.empty() || roller.path == "main"; }
bool isRewind(const Roller& roller) { return roller.kind == "rewind" || roller.kind == "waste_rewind"; }

Finding needs(const std::string& key)
{
    return refuse("press.web.needs", key, {"The web path cannot be drawn without %1.", {key}}, {"Enter %1.", {key}});
}
std::string keyOf(const Roller& roller, const char* what) { return "press.web.roller." + roller.id + '.' + what; }

/// True when the web goes to the right between two rollers; when one stands above the other the whole path decides.
bool runsRight(const Roller& from, const Roller& to, const std::vector<const Roller*>& path)
{
    double along = to.x->si() - from.x->si();
    if (std::abs(along) < 1e-6) along = path.back()->x->si() - path.front()->x->si();
    return along >= 0;
}

/// The roll on the unwind: as large as it is now, turning as it is hung.
Result<physics::RollerPlace> unwindPlace(const std::vector<const Roller*>& path, std::optional<Length> rollDiameter,
                                         Feed feed)
{
    const Roller& roller = *path.front();
    if (!rollDiameter && roller.diameter) rollDiameter = roller.diameter->measure();
    if (!rollDiameter) return needs("roll.outer_diameter");
    const bool right = path.size() < 2 || runsRight(roller, *path[1], path);
    return physics::RollerPlace{
        roller.id, roller.x->measure(), roller.y->measure(), *rollDiameter, turnsCounterClockwise(feed, right),
        Length()};
}

Result<physics::RollerPlace> rewindPlace(const Press& press, const std::vector<const Roller*>& path, std::size_t at,
                                         std::optional<Winding> finished)
{
    const Roller& roller = *path[at];
    const auto it = std::find_if(press.rewinds.begin(), press.rewinds.end(),
                                 [&](const Rewind& r) { return r.roller == roller.id; });
    std::optional<bool> turn = roller.counterClockwise;
    std::optional<Length> diameter;
    if (roller.diameter) diameter = roller.diameter->measure();
    if (it != press.rewinds.end()) {
        if (!it->winds.empty()) {
            const std::optional<Feed> wanted = windFor(press, *it, finished);
            const bool can = wanted && std::find(it->winds.begin(), it->winds.end(), *wanted) != it->winds.end();
            turn = turnsCounterClockwise(can ? *wanted : it->winds.front(),
                                         at == 0 || runsRight(*path[at - 1], roller, path));
        }
        if (!turn) return needs("press.rewind." + it->id + ".winds");
        if (!diameter) {
            const Result<Length> core = rewindCoreOutside(*it);
            if (!core) return core.error();
            diameter = *core;
        }
    } else {
        // A rewind that does not say where it stands may be this one: it would tell both.
        for (const Rewind& rewind : press.rewinds)
            if (rewind.roller.empty() && (!turn || !diameter)) return needs("press.rewind." + rewind.id + ".roller");
    }
    if (!turn) return needs(keyOf(roller, "turn"));
    if (!diameter) return needs(keyOf(roller, "diameter"));
    return physics::RollerPlace{roller.id, roller.x->measure(), roller.y->measure(), *diameter, *turn, Length()};
}

Result<physics::RollerPlace> rollerPlace(const Roller& roller)
{
    if (!roller.diameter) return needs(keyOf(roller, "diameter"));
    if (!roller.counterClockwise) return needs(keyOf(roller, "turn"));
    return physics::RollerPlace{roller.id,
                                roller.x->measure(),
                                roller.y->measure(),
                                roller.diameter->measure(),
                                *roller.counterClockwise,
                                roller.extra ? roller.extra->measure() : Length()};
}

Result<physics::RollerPlace> placeOf(const Press& press, const std::vector<const Roller*>& path, std::size_t at,
                                     std::optional<Length> rollDiameter, Feed feed, std::optional<Winding> finished)
{
    const Roller& roller = *path[at];
    if (at == 0 && roller.kind == "unwind") return unwindPlace(path, rollDiameter, feed);
    return isRewind(roller) ? rewindPlace(press, path, at, finished) : rollerPlace(roller);
}

/// The rollers of a path in web order; a further path begins with the roller that it leaves.
Result<std::vector<const Roller*>> rollersOf(const Press& press, std::string_view name)
{
    std::vector<const Roller*> out;
    const bool main = name == "main";
    for (const Roller& roller : press.rollers) {
        if (main ? !isMain(roller) : roller.path != name) continue;
        if (!main && out.empty()) {
            const Roller* from = press.roller(roller.leaves);
            if (from == nullptr) return needs(keyOf(roller, "leaves"));
            out.push_back(from);
        }
        out.push_back(&roller);
    }
    if (out.empty()) return needs("press.web.roller");
    for (const Roller* roller : out)
        if (!roller->x || !roller->y) return needs(keyOf(*roller, "at"));
    return out;
}

}  // namespace

bool turnsCounterClockwise(Feed feed, bool webRunsRight) noexcept
{
    // Over the top and to the right turns clockwise; each change of one of the two turns it round.
    return (feed == Feed::Over) != webRunsRight;
}

Result<Length> rewindCoreOutside(const Rewind& rewind)
{
    const std::string key = "press.rewind." + rewind.id;
    if (!rewind.mandrel.gripsLeast || !rewind.mandrel.gripsMost) return needs(key + ".grips");
    if (!rewind.coreWall) return needs(key + ".core_wall");
    const double least = rewind.mandrel.gripsLeast->si(), most = rewind.mandrel.gripsMost->si();
    double core = (least + most) / 2;
    for (const UsualCore& usual : kUsualCores)
        if (usual.inside >= least && usual.inside <= most) core = usual.inside;
    return Length::si(core) + rewind.coreWall->measure() * 2;
}

std::vector<std::string> pathNames(const Press& press)
{
    std::vector<std::string> out;
    if (press.rollers.empty()) return out;
    out.emplace_back("main");
    for (const Roller& roller : press.rollers)
        if (!isMain(roller) && std::find(out.begin(), out.end(), roller.path) == out.end()) out.push_back(roller.path);
    return out;
}

std::optional<Feed> windFor(const Press& press, const Rewind& rewind, std::optional<Winding> finished)
{
    if (!finished || *finished == Winding::Unknown || !press.printFeed || !press.printWinding || rewind.waste)
        return std::nullopt;
    if (std::any_of(press.rollers.begin(), press.rollers.end(), [](const Roller& r) { return r.kind == "turn_bar"; }))
        return std::nullopt;
    const Roller* end = press.roller(rewind.roller);
    if (end == nullptr) return std::nullopt;
    const auto main = rollersOf(press, "main"), own = rollersOf(press, isMain(*end) ? "main" : end->path);
    if (!main || !own || main->size() < 2 || main->front()->kind != "unwind") return std::nullopt;
    const auto at = std::find(own->begin(), own->end(), end);
    if (at == own->begin() || at == own->end()) return std::nullopt;
    const bool fromTurn = turnsCounterClockwise(*press.printFeed, runsRight(*main->front(), *(*main)[1], *main));
    // Face out on both needs the same turn where the print side is face out, and so round.
    const bool same = (*finished == Winding::FaceOut) == (*press.printWinding == Winding::FaceOut);
    const bool over = turnsCounterClockwise(Feed::Over, runsRight(**(at - 1), *end, *own)) == (same == fromTurn);
    return over ? Feed::Over : Feed::Under;
}

Result<NamedPath> pathOf(const Press& press, std::string_view name, std::optional<Length> rollDiameter, Feed feed,
                         std::optional<Winding> finished)
{
    const Result<std::vector<const Roller*>> found = rollersOf(press, name);
    if (!found) return found.error();
    const std::vector<const Roller*>& rollers = *found;
    std::vector<physics::RollerPlace> places;
    for (std::size_t i = 0; i < rollers.size(); ++i) {
        Result<physics::RollerPlace> place = placeOf(press, rollers, i, rollDiameter, feed, finished);
        if (!place) return place.error();
        places.push_back(std::move(*place));
    }
    Result<physics::WebPath> path = physics::webPath(places);
    if (!path) return path.error();
    return NamedPath{std::string(name), std::move(*path)};
}

Result<physics::WebPath> fixedStretch(const Press& press, std::string_view from, std::string_view to)
{
    std::vector<physics::RollerPlace> places;
    for (const Roller& roller : press.rollers) {
        if (!isMain(roller) || (places.empty() && roller.id != from)) continue;
        if (roller.kind == "unwind" || isRewind(roller)) return needs(keyOf(roller, "diameter"));
        if (!roller.x || !roller.y) return needs(keyOf(roller, "at"));
        Result<physics::RollerPlace> place = rollerPlace(roller);
        if (!place) return place.error();
        places.push_back(std::move(*place));
        if (roller.id == to && places.size() > 1) return physics::webPath(places);
    }
    return needs("press.web.roller." + std::string(to));
}

std::string neighbourOf(const Press& press, std::string_view roller, bool before)
{
    std::string last;
    for (const Roller& r : press.rollers) {
        if (!isMain(r)) continue;
        if (before && r.id == roller) return last;
        if (!before && last == roller) return r.id;
        last = r.id;
    }
    return {};
}

Result<std::vector<NamedPath>> pathsOf(const Press& press, std::optional<Length> rollDiameter, Feed feed,
                                       std::optional<Winding> finished)
{
    std::vector<NamedPath> out;
    for (const std::string& name : pathNames(press)) {
        Result<NamedPath> path = pathOf(press, name, rollDiameter, feed, finished);
        if (!path) return path.error();
        out.push_back(std::move(*path));
    }
    if (out.empty()) return needs("press.web.roller");
    return out;
}

PathPieces pathPieces(const Press& press, std::optional<Length> rollDiameter, Feed feed)
{
    PathPieces out;
    for (const std::string& name : pathNames(press)) {
        Result<NamedPath> whole = pathOf(press, name, rollDiameter, feed);
        if (whole) {
            out.paths.push_back(std::move(*whole));
            continue;
        }
        std::string about;
        std::vector<const Roller*> rollers;
        for (const Roller& roller : press.rollers) {
            const std::string key = keyOf(roller, "");
            if (whole.error().subject == roller.id || whole.error().subject.rfind(key, 0) == 0) about = roller.id;
            const bool ofIt = name == "main" ? isMain(roller) : roller.path == name;
            if (ofIt && roller.x && roller.y) rollers.push_back(&roller);
        }
        out.wrong.push_back(whole.error());
        out.at.push_back(about);
        std::optional<physics::RollerPlace> before;
        for (std::size_t i = 0; i < rollers.size(); ++i) {
            const auto place = placeOf(press, rollers, i, rollDiameter, feed, {});
            if (!place) {
                before.reset();
                continue;
            }
            const physics::RollerPlace both[] = {before.value_or(*place), *place};
            const auto joined = before ? physics::webPath(both) : physics::webPath({});
            physics::WebPath alone;
            alone.rollers.push_back(*place);
            out.paths.push_back({name, joined ? *joined : alone});
            before = *place;
        }
    }
    return out;
}

}  // namespace taut::inputs
