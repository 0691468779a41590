// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/path.h"

#include <algorithm>
#include <cmath>

#include "core/physics/belt.h"
#include "core/physics/domain.h"

namespace taut::physics {
namespace {

constexpr double kMostWrap = 300 * kPi / 180;
/// Metres by which two bodies may meet and still count as touching, not overlapping.
constexpr double kTouch = 1e-9;
/// Radians below a full turn that are a wrap of nothing, missed by rounding.
constexpr double kNoWrap = 1e-9;

struct Vector {
    double x, y;
};
Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y}; }
Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
Vector operator*(double f, Vector a) { return {f * a.x, f * a.y}; }
double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y; }
double size(Vector a) { return std::hypot(a.x, a.y); }

Vector centre(const RollerPlace& r) { return {r.x.si(), r.y.si()}; }
double radius(const RollerPlace& r) { return r.diameter.si() / 2; }
/// The surface's turn: +1 counter-clockwise, which keeps the roller on the left of the web's travel.
double turn(const RollerPlace& r) { return r.counterClockwise ? 1 : -1; }

/// A straight web: where it leaves, where it arrives, and its direction.
struct Line {
    Vector start, end, along;
    double length;
};

/// Right of the travel, towards which a counter-clockwise roller carries the web.
Vector right(Vector along) { return {along.y, -along.x}; }

/// The line of the web from one roller to the next. It leaves and meets both along their surface motion, so the way
/// between centres is D = l u + q n, with u along the web, n to its right, q = sa ra - sb rb and l the tangent's
/// length; that turns into u = (l D + q D') / C^2 with D' a quarter turn left of D.
Line lineBetween(const RollerPlace& a, const RollerPlace& b)
{
    const Vector between = centre(b) - centre(a);
    const double distance = size(between);
    const double reach = radius(a) + radius(b);
    const bool same = a.counterClockwise == b.counterClockwise;
    const Length ra = a.diameter / 2;
    const Length rb = b.diameter / 2;
    // Rollers that just touch may lie inside each other by a rounding error.
    const Length apart = Length::si(std::abs(distance - reach) <= kTouch ? std::max(distance, reach) : distance);
    const double length = (same ? openTangent(ra, rb, apart) : crossedTangent(ra, rb, apart)).si();
    const double q = turn(a) * radius(a) - turn(b) * radius(b);
    const Vector left{-between.y, between.x};
    const Vector sum = length * between + q * left;
    const Vector along = 1 / size(sum) * sum;
    return {centre(a) + turn(a) * radius(a) * right(along), centre(b) + turn(b) * radius(b) * right(along), along,
            length};
}

/// How near a point comes to the web between its two ends.
double distanceTo(Vector point, const Line& line)
{
    const double at = std::clamp(dot(point - line.start, line.along), 0.0, line.length);
    return size(point - (line.start + at * line.along));
}

/// Angle by which the web is on the roller, in the way of its travel, in [0, 2 pi).
double wrapBetween(const RollerPlace& r, Vector arriving, Vector leaving)
{
    const double cross = arriving.x * leaving.y - arriving.y * leaving.x;
    double wrap = turn(r) * std::atan2(cross, dot(arriving, leaving));
    if (wrap < 0) wrap += 2 * kPi;
    return wrap >= 2 * kPi - kNoWrap ? 0 : wrap;
}

Magnitude metres(double si) { return {si, Kind::Length, {}}; }

Finding badDiameter(const RollerPlace& r)
{
    return refuse(
        "path.bad_diameter", r.id,
        {"Roller %1 has no diameter that a web could run over: %2.", {r.id, metres(r.diameter.si())}},
        {"Give roller %1 a diameter above zero. The unwind and the rewinds take theirs from the roll.", {r.id}});
}
Finding badExtra(const RollerPlace& r)
{
    return refuse("path.bad_extra", r.id, {"The extra web after roller %1 is not a length of zero or more.", {r.id}},
                  {"Give the web that leaves the drawn plane after %1 as a length, or leave it out.", {r.id}});
}
Finding rollersTouch(const RollerPlace& a, const RollerPlace& b, double apart)
{
    return refuse("path.rollers_touch", a.id,
                  {"Rollers %1 and %2 overlap: their centres are %3 apart, their radii add up to %4.",
                   {a.id, b.id, metres(apart), metres(radius(a) + radius(b))}},
                  {"Check the places and diameters of %1 and %2.", {a.id, b.id}});
}
Finding noTangent(const RollerPlace& a, const RollerPlace& b)
{
    return refuse("path.no_tangent", a.id, {"No straight web joins roller %1 to roller %2.", {a.id, b.id}},
                  {"Check the places, diameters and turns of %1 and %2.", {a.id, b.id}});
}
Finding wrapTooLarge(const RollerPlace& r, double wrap)
{
    return refuse("path.wrap_too_large", r.id,
                  {"The web would go %2 around roller %1: its turn is probably wrong.",
                   {r.id, Magnitude{wrap, Kind::Angle, "deg"}}},
                  {"Check which way roller %1 turns, seen from the operator's side, and where it and its neighbours "
                   "stand.",
                   {r.id}});
}
Finding hitsRoller(const RollerPlace& from, const RollerPlace& to, const RollerPlace& hit)
{
    return refuse(
        "path.hits_roller", hit.id, {"The web from %1 to %2 would run through roller %3.", {from.id, to.id, hit.id}},
        {"Check the places and turns of %1, %2 and %3, and the order of the rollers.", {from.id, to.id, hit.id}});
}

std::optional<Finding> refuseBodies(std::span<const RollerPlace> rollers)
{
    for (const RollerPlace& r : rollers) {
        if (!positive(r.diameter)) return badDiameter(r);
        if (!notNegative(r.extra)) return badExtra(r);
    }
    for (std::size_t i = 0; i < rollers.size(); ++i)
        for (std::size_t j = i + 1; j < rollers.size(); ++j) {
            const double apart = size(centre(rollers[i]) - centre(rollers[j]));
            if (apart < radius(rollers[i]) + radius(rollers[j]) - kTouch)
                return rollersTouch(rollers[i], rollers[j], apart);
        }
    return std::nullopt;
}

std::optional<Finding> refuseHits(std::span<const RollerPlace> rollers, std::span<const Line> lines)
{
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (rollers[i].extra > Length{}) continue;  // leaves the drawn plane: what the drawing crosses, it need not
        for (std::size_t j = 0; j < rollers.size(); ++j)
            if (j != i && j != i + 1 && distanceTo(centre(rollers[j]), lines[i]) < radius(rollers[j]) - kTouch)
                return hitsRoller(rollers[i], rollers[i + 1], rollers[j]);
    }
    return std::nullopt;
}

PathSpan spanOf(const RollerPlace& a, const RollerPlace& b, const Line& line)
{
    return {a.id,
            b.id,
            Length::si(line.length) + a.extra,
            Length::si(line.start.x),
            Length::si(line.start.y),
            Length::si(line.end.x),
            Length::si(line.end.y),
            a.counterClockwise != b.counterClockwise};
}

template <class Items, class Wanted>
auto find(const Items& items, Wanted wanted)
{
    const auto at = std::find_if(items.begin(), items.end(), wanted);
    return at == items.end() ? nullptr : &*at;
}

}  // namespace

Length WebPath::length() const
{
    Length sum;
    for (const PathSpan& span : spans) sum = sum + span.length;
    for (const PathArc& arc : arcs) sum = sum + arc.length;
    return sum;
}

std::optional<Length> WebPath::between(std::string_view from, std::string_view to) const
{
    const auto place = [this](std::string_view id) {
        return std::find_if(rollers.begin(), rollers.end(), [id](const RollerPlace& r) { return r.id == id; }) -
               rollers.begin();
    };
    const auto first = static_cast<std::size_t>(place(from));
    const auto last = static_cast<std::size_t>(place(to));
    if (first >= rollers.size() || last >= rollers.size() || last < first) return std::nullopt;
    Length sum;
    for (std::size_t i = first; i < last; ++i) {
        sum = sum + spans[i].length;
        if (i > first) sum = sum + arcs[i].length;
    }
    return sum;
}

const PathArc* WebPath::arc(std::string_view roller) const
{
    return find(arcs, [roller](const PathArc& a) { return a.roller == roller; });
}

const PathSpan* WebPath::spanAfter(std::string_view roller) const
{
    return find(spans, [roller](const PathSpan& s) { return s.from == roller; });
}

Result<WebPath> webPath(std::span<const RollerPlace> rollers)
{
    if (rollers.size() < 2)
        return refuse("path.too_few", rollers.empty() ? std::string() : rollers.front().id,
                      {"A web path needs at least two rollers."},
                      {"List the rollers in web order, from the unwind to the rewind."});
    if (auto bad = refuseBodies(rollers)) return *std::move(bad);

    std::vector<Line> lines;
    for (std::size_t i = 0; i + 1 < rollers.size(); ++i) {
        const Line line = lineBetween(rollers[i], rollers[i + 1]);
        if (!finite(line.length, line.along.x, line.along.y)) return noTangent(rollers[i], rollers[i + 1]);
        lines.push_back(line);
    }
    WebPath path;
    path.rollers.assign(rollers.begin(), rollers.end());
    for (std::size_t i = 0; i < rollers.size(); ++i) {
        const RollerPlace& r = rollers[i];
        const Line& meeting = lines[i == 0 ? 0 : i - 1];
        const double wrap = i > 0 && i < lines.size() ? wrapBetween(r, meeting.along, lines[i].along) : 0;
        if (wrap > kMostWrap) return wrapTooLarge(r, wrap);
        const Vector outward = turn(r) * right(meeting.along);
        path.arcs.push_back({r.id, wrap, r.diameter * (wrap / 2), std::atan2(outward.y, outward.x)});
        if (i < lines.size()) path.spans.push_back(spanOf(r, rollers[i + 1], lines[i]));
    }
    if (auto hit = refuseHits(rollers, lines)) return *std::move(hit);
    return path;
}

}  // namespace taut::physics
