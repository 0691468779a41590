// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/tension_window.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace taut::targets {

namespace {

constexpr double kPliPerMil = 6894757.293168361;  // 1 lbf/in on 1 mil is 1000 psi, Pa
constexpr double kPli = 175.1268352464764;        // N/m

/// T2: two public tables of starting values for films and foil, PLI per mil of thickness.
struct FilmRow {
    const char* family;
    double low, high;
};
constexpr std::array<FilmRow, 5> kFilms{
    {{"foil", 1.0, 1.0}, {"pet", 0.75, 0.75}, {"pe", 0.25, 0.30}, {"bopp", 0.25, 0.30}, {"nylon", 0.25, 0.30}}};
/// T3: a public table of starting values for paper, lb per 3000 ft2 (the ream is assumed) against PLI.
constexpr std::array<std::pair<double, double>, 6> kPapers{
    {{15, 0.50}, {20, 0.75}, {30, 1.0}, {40, 1.5}, {60, 2.0}, {80, 2.5}}};

double paperTension(double gsm)
{
    constexpr double kPoundPer3000 = 0.45359237 / (3000 * 0.3048 * 0.3048) * 1000;  // g/m2
    const double pounds = gsm / kPoundPer3000;
    if (pounds <= kPapers.front().first) return kPapers.front().second * kPli * pounds / kPapers.front().first;
    for (std::size_t i = 1; i < kPapers.size(); ++i)
        if (pounds <= kPapers[i].first) {
            const auto [x0, y0] = kPapers[i - 1];
            const auto [x1, y1] = kPapers[i];
            return kPli * (y0 + (y1 - y0) * (pounds - x0) / (x1 - x0));
        }
    return kPapers.back().second * kPli;
}

std::string perWidthUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm"; }
Term perWidth(const Book& book, double si, std::string from)
{
    return known(Quantity(si, Kind::ForcePerWidth, perWidthUnit(book)), std::move(from));
}

void fromRange(TensionChoice& c, const inputs::TensionRange& range, Rule rule, const std::string& key)
{
    c.low = term(range.low, key + ".low");
    c.high = term(range.high, key + ".high");
    c.rule = rule;
    c.source = Text("%1", {range.source.empty() ? key : range.source});
    c.sourceId = range.source.empty() ? key : range.source;
}

/// Holds a window down to this tension per width; one that lies wholly above it keeps half of it as its lower end.
void capAt(const Book& book, TensionChoice& c, double most, const std::string& from, Text why)
{
    if (c.high.value->si() <= most) return;
    c.capped = true;
    c.advice = std::move(why);
    c.high = perWidth(book, most, from);
    if (c.low.value->si() > most) c.low = perWidth(book, most * 0.5, from);
}

/// Strength and strain only cap: a share of what the weakest carrying layer breaks at (T4, a heuristic), and what print
/// may be stretched by. What is not known caps nothing.
void cap(const Book& book, const inputs::Zone& zone, TensionChoice& c)
{
    if (!c.low.known() || !c.high.known()) return;
    const Term strength = weakestStrength(book);
    const Term share = book.row("strength_share");
    if (strength.known())
        capAt(
            book, c, share.value->si() * strength.value->si(), share.from,
            "Held down to a tenth of what the weakest carrying layer breaks at, or the share that this shop allows: a "
            "rule of thumb.");
    const Term strain = book.row(book.substrate().family == "pe" ? "strain_most_pe" : "strain_most");
    const Carrier web = carrierOf(book, zone);
    if (web.modulus.known() && web.caliper.known())
        capAt(book, c, strain.value->si() * web.modulus.value->si() * web.caliper.value->si(), strain.from,
              "Held down to the strain that print may be made under: beyond it the labels come out short.");
}

}  // namespace

Term weakestStrength(const Book& book)
{
    const inputs::Substrate& s = book.substrate();
    const inputs::Layer* weakest = nullptr;
    for (const bool onlyCarrying : {true, false}) {
        for (const inputs::Layer& layer : s.layers)
            if (layer.strength && (layer.carriesAlone || !onlyCarrying) &&
                (weakest == nullptr || layer.strength->si() < weakest->strength->si()))
                weakest = &layer;
        if (weakest != nullptr) break;
    }
    if (s.strength && (weakest == nullptr || s.strength->si() <= weakest->strength->si()))
        return term(s.strength, "substrate.strength");
    if (weakest != nullptr)
        return known(weakest->strength->quantity(), "substrate.layers." + weakest->name + ".strength");
    return missing("substrate.strength");
}

Carrier carrierOf(const Book& book, const inputs::Zone& zone)
{
    if (zone.carries == "liner")
        for (const inputs::Layer& layer : book.substrate().layers) {
            if (!layer.carriesAlone) continue;
            const std::string key = "substrate.layers." + layer.name + ".";
            const double share = book.row("caliper_tolerance").value->si();
            const Term caliper = term(layer.caliper, key + "caliper");
            return {book.share(term(layer.modulus, key + "modulus"), "modulus_tolerance", "E"),
                    caliper.known() ? doubted(caliper, share * caliper.value->si(), "t") : caliper};
        }
    return {book.modulus(), book.caliper()};
}

TensionChoice chooseTension(const Book& book, const inputs::Zone& zone)
{
    TensionChoice c;
    const double spread = book.row("table_spread").value->si();
    const inputs::Substrate& s = book.substrate();
    if (endOf(book.press(), zone) == ZoneEnd::Waste) {
        // Stripped matrix has no table: it is set by eye to the least that strips clean, unless the shop says a range.
        const std::string id = "tension." + zone.id + ".per_width";
        for (const auto& [limit, range] : book.press().limits)
            if (limit == id && range.low && range.high) {
                c.low = known(*range.low, "press.limits." + id);
                c.high = known(*range.high, "press.limits." + id);
                c.rule = Rule::Press;
                c.source = "limits of this press's profile";
                c.sourceId = "press profile";
                return c;
            }
        c.low = c.high = missing("press.limits." + id);
        return c;
    }
    if (book.job().tension) {
        fromRange(c, *book.job().tension, Rule::Job, "job.tension");
    } else if (s.tension) {
        fromRange(c, *s.tension, Rule::Maker, "substrate.tension");
    } else if (s.family == "paper_label" || s.family == "film_label") {
        const bool paper = s.family == "paper_label";
        const Limit most = book.limit(paper ? "label_stock_paper_high" : "label_stock_film_high");
        c.low = book.row(paper ? "label_stock_paper_low" : "label_stock_film_low");
        c.high = book.row(paper ? "label_stock_paper_high" : "label_stock_film_high");
        c.rule = most.rule;
        c.source = most.source;
        c.sourceId = "common practice, no source";
        c.advice = "A starting range: the right tension is the least that still keeps the web in hand.";
    } else if (s.family == "paper" || s.family == "board" || s.family == "thermal") {
        Term g = term(s.grammage, "substrate.grammage");
        if (!g.known()) {
            c.low = c.high = lack({g});
        } else {
            const double t = paperTension(g.value->si() * 1000);
            c.low = perWidth(book, t * (1 - spread), "table:T3");
            c.high = perWidth(book, t * (1 + spread), "table:T3");
        }
        c.rule = Rule::Table;
        c.how = "lookup";
        c.source = "public tension table, T3, either way by the policy row table_spread";
        c.sourceId = "S18a, T3, ream of 3000 ft2 assumed";
        c.advice = "A table's starting value; the maker's range is better.";
    } else {
        const std::string family = s.family == "pp" ? "bopp" : s.family;
        const auto row =
            std::find_if(kFilms.begin(), kFilms.end(), [&](const FilmRow& r) { return family == r.family; });
        if (row == kFilms.end()) {
            c.low = c.high = missing(s.family.empty() ? "substrate.family" : "substrate.tension");
            return c;
        }
        // Where the two tables agree to the digit, a fifth either way stands for how far starting values are meant.
        const double low = row->low == row->high ? row->low * (1 - spread) : row->low;
        const double high = row->low == row->high ? row->high * (1 + spread) : row->high;
        Term t = book.caliper();
        if (!t.known()) {
            c.low = c.high = lack({t});
        } else {
            c.low = perWidth(book, low * kPliPerMil * t.value->si(), "table:T2");
            c.high = perWidth(book, high * kPliPerMil * t.value->si(), "table:T2");
        }
        c.stress = known(Quantity((low + high) / 2 * kPliPerMil, Kind::Pressure, ""), "table:T2");
        c.rule = Rule::Table;
        c.how = "T2";
        c.source = "public tension tables, T2";
        c.sourceId = "S18a, S20";
        c.advice = "A table's starting value; the maker's range is better.";
    }
    cap(book, zone, c);
    if (c.capped && c.how == "T2") c.how = "lookup";
    return c;
}

}  // namespace taut::targets
