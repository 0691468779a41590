// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/targets/book.h"
#include "core/targets/setting.h"

// Grip of the web on each roller, what air takes of it at job speed, and the air that is wound into a finished roll.
namespace taut::targets {

namespace {

/// What a web goes over on its way, a further path with the roller that it leaves.
std::vector<const inputs::Roller*> rollersAlong(const inputs::Press& press, const inputs::Roller& roller)
{
    std::vector<const inputs::Roller*> all;
    for (const inputs::Roller& r : press.rollers) {
        if (r.path != roller.path) continue;
        if (all.empty() && !r.leaves.empty()) all.push_back(press.roller(r.leaves));
        all.push_back(&r);
    }
    return all;
}

}  // namespace

const inputs::Zone* zoneRound(const inputs::Press& press, const inputs::Roller& roller)
{
    const std::vector<const inputs::Roller*> along = rollersAlong(press, roller);
    const auto place = [&along](std::string_view id) {
        return std::find_if(along.begin(), along.end(),
                            [id](const inputs::Roller* r) { return r != nullptr && r->id == id; });
    };
    const auto here = place(roller.id);
    for (const inputs::Zone& zone : press.zones) {
        const auto from = place(zone.from), to = place(zone.to);
        if (from != along.end() && to != along.end() && from < here && here <= to) return &zone;
    }
    return nullptr;
}

namespace {

const Text kRatio = "Largest tension ratio across the roller before the web slips";

/// The zone whose tension lies on a roller; the unwind's, else the first, where none is bounded round it.
const inputs::Zone* zoneAt(const inputs::Press& press, const inputs::Roller& roller)
{
    if (const inputs::Zone* zone = zoneRound(press, roller)) return zone;
    for (const inputs::Zone& zone : press.zones)
        if (endOf(press, zone) == ZoneEnd::Unwind) return &zone;
    return press.zones.empty() ? nullptr : &press.zones.front();
}

Term perWidthIn(const Book& book, const inputs::Zone* zone)
{
    return zone == nullptr ? missing("press.zone") : book.target("tension." + zone->id + ".per_width");
}

Term bothSpeeds(const Book& book)
{
    return combine(
        {book.speed()}, "twice job.speed", [](const std::vector<double>& v) { return 2 * v[0]; }, Kind::Speed);
}

Term halfOf(const Term& diameter)
{
    return combine(
        {diameter}, "half of " + diameter.from, [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length);
}

Term airViscosity() { return known(Quantity(1.81e-5, Kind::Viscosity), "policy:air_at_20_C"); }

/// What slips: driven, or heavy enough to want a pull of its own when the speed changes. A light idler has nothing to
/// slip against.
bool hasToBeHeld(const inputs::Roller& roller)
{
    constexpr std::array<std::string_view, 6> kDriven{"nip", "print", "die", "chill", "slitter", "sheeter"};
    return roller.inertia || std::find(kDriven.begin(), kDriven.end(), roller.kind) != kDriven.end();
}

/// C1 for one roller, or C1.air where the film under the web is known.
struct Grip {
    const inputs::Roller* roller = nullptr;
    std::string formula;
    Arguments arguments;
    Text advice;
    bool lost = false;    ///< at job speed air may carry the web clear of it
    bool atSpeed = true;  ///< else at crawl only: what air takes at job speed is not known
    std::string lacks{};  ///< of a grip at crawl only: what is missing, "" where no key is
    double holds = 0;     ///< the tension ratio that it holds; set where that is known
    /// What compares with a grip that is known at crawl only.
    [[nodiscard]] Grip atCrawl() const
    {
        Grip crawl{
            roller, "C1", {arguments[0], arguments[1]}, "At crawl: what air takes at job speed is not known.", false,
            false,  lacks};
        crawl.holds = evaluated(crawl.formula, crawl.arguments, {}).value->si();
        return crawl;
    }
};

Grip gripOn(const Book& book, const inputs::Roller& roller, const physics::PathArc& arc, const Term& bothSpeeds)
{
    const std::string key = "press.web.roller." + roller.id + ".";
    const std::string from = roller.friction ? key + "friction" : "substrate.friction";
    const Term mu = book.share(number(roller.friction ? roller.friction : book.substrate().friction, from, Kind::Count),
                               "friction_tolerance", from);
    Grip grip{&roller,
              "C1",
              {{"mu", mu}, {"beta", known(Quantity(arc.wrap, Kind::Angle, "deg"), "path:" + roller.id)}},
              "The web holds on this roller until one side pulls so many times as hard as the other."};
    const inputs::Zone* zone = zoneAt(book.press(), roller);
    if (zone != nullptr && endOf(book.press(), *zone) == ZoneEnd::Waste) return grip;  // a matrix is full of holes
    if (book.substrate().porous) {
        grip.advice = "This web breathes: no air stays under it. It holds until one side pulls so many times as hard.";
        return grip;
    }
    if (roller.kind == "nip") return grip;  // pressed together, the air is squeezed out
    const Term rough = combine(
        {term(roller.roughness, key + "roughness"), term(book.substrate().roughness, "substrate.roughness")},
        "root of the squares of " + key + "roughness and substrate.roughness",
        [](const std::vector<double>& v) { return std::hypot(v[0], v[1]); }, Kind::Length);
    const Term perWidth = perWidthIn(book, zone);
    Term film = evaluated("C4",
                          {{"R", halfOf(term(roller.diameter, key + "diameter"))},
                           {"eta", airViscosity()},
                           {"U", bothSpeeds},
                           {"Tw", perWidth}},
                          "C4: half of " + key + "diameter, policy:air_at_20_C, twice job.speed, " + perWidth.from);
    const Term lacks = lack({rough, film});
    if (lacks.cannot || !lacks.missing.empty()) {
        grip.advice = lacks.missing.empty()
                          ? Text("At crawl. What air takes of it at job speed is not reckoned.")
                          : Text("At crawl. What air takes of it at job speed is not reckoned without %1.",
                                 {lacks.missing.front()});
        grip.atSpeed = false;
        if (!lacks.missing.empty()) grip.lacks = lacks.missing.front();
        return grip;
    }
    film.value = film.value->in("um");
    grip.formula = "C1.air";
    const double share = film.value->si() / rough.value->si();
    grip.lost = share >= 3;
    grip.advice = share <= 1  ? Text("At job speed the air under the web takes nothing of it.")
                  : grip.lost ? Text("At job speed air may carry the web clear of this roller. A narrow web keeps more "
                                     "than is reckoned: look for scuffs and wander, and run slower if you see them.")
                              : Text("At job speed, less what the air under the web takes. A narrow web keeps more.");
    grip.arguments.emplace_back("h", std::move(film));
    grip.arguments.emplace_back("s", rough);
    return grip;
}

/// What no roller can be said to hold without.
Term gripLack(const Book& book)
{
    if (book.press().rollers.empty()) return missing("press.web.roller");
    if (book.mainPath() == nullptr) return lack({book.target("thread.main.length")});
    return missing("substrate.friction");
}

/// The least of them, by what they hold; nullptr for none.
const Grip* leastOf(const std::vector<Grip>& grips, bool heldOnly)
{
    const Grip* least = nullptr;
    for (const Grip& grip : grips)
        if ((!heldOnly || hasToBeHeld(*grip.roller)) && (least == nullptr || grip.holds < least->holds)) least = &grip;
    return least;
}

/// The first roller that lacks what its grip at speed takes stands for all.
void sayCrawlOnly(Book& book, const std::vector<Grip>& grips)
{
    const auto lacks = std::find_if(grips.begin(), grips.end(), [](const Grip& g) { return !g.lacks.empty(); });
    if (lacks == grips.end()) return;
    book.note(Finding{"traction.crawl_only", Severity::Note, lacks->lacks,
                      Text("What every roller holds at job speed is not known without %1: at speed air takes some of "
                           "what is said \"at crawl only\".",
                           {lacks->lacks}),
                      Text("Enter how rough the rollers and the material are.")});
}

/// Rollers that the web may no longer touch at job speed: nothing is driven, held or guided by them there.
void sayLost(Book& book, const std::vector<Grip>& grips)
{
    std::string rollers;
    for (const Grip& grip : grips)
        if (grip.lost) rollers += (rollers.empty() ? "" : ", ") + grip.roller->id;
    if (rollers.empty()) return;
    // A note: the model knows no edges, by which a narrow web lets its air out, and set-up ends far below job speed.
    book.note(Finding{"traction.lost", Severity::Note, "job.speed",
                      Text("At job speed the air under the web is three times the roughness or more on: %1. There the "
                           "web may float.",
                           {rollers}),
                      Text("Look there for scuffs and wander, and run slower if you see them. A narrow web keeps more "
                           "than is reckoned.")});
}

void stateGrips(Book& book)
{
    std::vector<Grip> grips;
    const Term speeds = bothSpeeds(book);
    for (const inputs::Roller& roller : book.press().rollers) {
        const physics::PathArc* arc = book.arc(roller.id);
        if (arc == nullptr && book.waitsForRoll(roller.id))
            book.lacking("traction." + roller.id + ".ratio",
                         Text("Roller %1: largest tension ratio before the web slips", {roller.id}), Shape::Quantity,
                         missing("roll.outer_diameter"));
        // A turn bar stands still: the web slides over it by design.
        if (arc == nullptr || arc->wrap <= 0 || roller.kind == "turn_bar") continue;
        Grip grip = gripOn(book, roller, *arc, speeds);
        Stated ratio = book.formula(
            "traction." + roller.id + ".ratio",
            grip.atSpeed ? Text("Roller %1: largest tension ratio before the web slips", {roller.id})
                         : Text("Roller %1: largest tension ratio before the web slips, at crawl only", {roller.id}),
            grip.formula, grip.arguments);
        ratio.advice(grip.advice);
        if (ratio.ready() == nullptr) continue;
        grip.holds = std::get<Quantity>(ratio.ready()->value).si();
        grips.push_back(std::move(grip));
    }
    sayCrawlOnly(book, grips);
    sayLost(book, grips);
    // Like with like: those that are known at job speed, or where what air takes is known of none, all at crawl.
    const bool crawl = std::none_of(grips.begin(), grips.end(), [](const Grip& g) { return g.formula == "C1.air"; }) &&
                       std::any_of(grips.begin(), grips.end(), [](const Grip& g) { return !g.atSpeed; });
    if (crawl)
        for (Grip& grip : grips) grip = grip.atCrawl();
    else
        grips.erase(std::remove_if(grips.begin(), grips.end(), [](const Grip& g) { return !g.atSpeed; }), grips.end());
    const Text leastName = crawl ? Text("Least grip of the web on a roller, as a tension ratio, at crawl only")
                                 : Text("Least grip of the web on a roller, as a tension ratio"),
               firstName =
                   crawl ? Text("Roller that would slip first, at crawl only") : Text("Roller that would slip first");
    const Grip* weakest = leastOf(grips, false);
    if (weakest == nullptr) {
        book.lacking("traction.least", leastName, Shape::Quantity, gripLack(book));
        book.lacking("traction.first_to_slip", firstName, Shape::Word, gripLack(book));
        return;
    }
    book.formula("traction.least", leastName, weakest->formula, weakest->arguments).advice(weakest->advice);
    const Grip* first = leastOf(grips, true);
    if (first == nullptr) {
        book.lacking("traction.first_to_slip", firstName, Shape::Word, missing("press.web.roller.inertia"));
        return;
    }
    const Term ratio = evaluated(first->formula, first->arguments, "target:traction." + first->roller->id + ".ratio");
    Stated word = book.word(
        "traction.first_to_slip", firstName, first->roller->id, "C1, least of the rollers that are driven or heavy",
        {given("r", kRatio, *ratio.value, crawl ? "C1 at crawl: roller " + first->roller->id : ratio.from)});
    if (!crawl) {
        word.advice("Of those that are driven or whose inertia is known; a light idler has nothing to slip against.");
        return;
    }
    word.advice(
        "At crawl, of those that are driven or whose inertia is known. At job speed air may make another one the "
        "first.");
}

/// The film at job speed under the web on the largest roller, and under the last wraps of the finished rolls.
void stateFilms(Book& book)
{
    const inputs::Roller* largest = nullptr;
    for (const inputs::Roller& roller : book.press().rollers) {
        const physics::PathArc* arc = book.arc(roller.id);
        if (arc == nullptr || arc->wrap <= 0 || !roller.path.empty() || !roller.diameter) continue;
        if (largest == nullptr || roller.diameter->si() > largest->diameter->si()) largest = &roller;
    }
    const Term none = book.press().rollers.empty() || book.mainPath() == nullptr ? gripLack(book)
                                                                                 : missing("press.web.roller.diameter");
    book.formula("traction.air_film",
                 largest == nullptr ? Text("Air under the web at job speed")
                                    : Text("Air under the web at job speed, on roller %1", {largest->id}),
                 "C4",
                 {{"R", largest == nullptr
                            ? none
                            : halfOf(term(largest->diameter, "press.web.roller." + largest->id + ".diameter"))},
                  {"eta", airViscosity()},
                  {"U", bothSpeeds(book)},
                  {"Tw", largest == nullptr ? none : perWidthIn(book, zoneAt(book.press(), *largest))}},
                 "um")
        .advice(book.substrate().porous ? Text("This web breathes: less air stays under it than computed.")
                                        : Text("On the largest roller of the main path. Grip begins to go when it "
                                               "reaches the roughness of both."));
    if (book.substrate().porous) return;
    for (const inputs::Zone& zone : book.press().zones) {
        const inputs::Rewind* rewind =
            endOf(book.press(), zone) == ZoneEnd::Rewind ? rewindOf(book.press(), zone) : nullptr;
        if (rewind == nullptr) continue;
        const Term pull = combine(
            {finishedTension(book, zone), zoneWidth(book, zone)}, finishedTension(book, zone).from + " over the width",
            [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::ForcePerWidth);
        book.formula("traction." + rewind->id + ".film",
                     Text("Air wound into the finished roll on %1", {rewind->roller}), "C4",
                     {{"R", halfOf(lastDiameterOf(book, zone))},
                      {"eta", airViscosity()},
                      {"U", bothSpeeds(book)},
                      {"Tw", pull}},
                     "um")
            .advice("At job speed, before anything presses it out. Where it is thicker than the web is rough, wraps "
                    "slide on one another: lay the roller on, or run slower as the roll grows.");
    }
}

}  // namespace

void stateTraction(Book& book)
{
    stateGrips(book);
    stateFilms(book);
}

}  // namespace taut::targets
