// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/tension_window.h"

#include <algorithm>
#include <cmath>

#include "core/targets/tension_table.h"

namespace taut::targets {

namespace {

void fromRange(TensionChoice& c, const inputs::TensionRange& range, Rule rule, const std::string& key)
{
    c.low = term(range.low, key + ".low");
    c.high = term(range.high, key + ".high");
    c.rules = {rule, rule};
    c.lowSource = c.highSource = Text("%1", {range.source.empty() ? key : range.source});
    c.sourceId = range.source.empty() ? key : range.source;
}

/// What is known of the material without anybody's word for this web: our range for label stock, the public tables.
std::optional<TensionChoice> byMaterial(const Book& book)
{
    const inputs::Substrate& s = book.substrate();
    TensionChoice c;
    if (s.family == "paper_label" || s.family == "film_label") {
        const bool paper = s.family == "paper_label";
        const Limit least = book.limit(paper ? "label_stock_paper_low" : "label_stock_film_low");
        const Limit most = book.limit(paper ? "label_stock_paper_high" : "label_stock_film_high");
        c.low = book.row(paper ? "label_stock_paper_low" : "label_stock_film_low");
        c.high = book.row(paper ? "label_stock_paper_high" : "label_stock_film_high");
        c.rules = {least.rule, most.rule};
        c.lowSource = least.source();
        c.highSource = most.source();
        c.sourceId = "common practice, no source";
        c.advice = "A starting range: the right tension is the least that still keeps the web in hand.";
        return c;
    }
    std::optional<TableRange> table =
        tableRange(book, s.family, book.caliper(), term(s.grammage, "substrate.grammage"));
    if (!table) return std::nullopt;
    c.low = std::move(table->low);
    c.high = std::move(table->high);
    c.stress = std::move(table->stress);
    c.how = table->how;
    c.rules = {table->rule, table->rule};
    c.lowSource = c.highSource = table->source;
    c.sourceId = table->sourceId;
    c.advice = "A table's starting value; the maker's range is better.";
    return c;
}

/// The share of a ceiling at which a starting range that it cuts begins at the highest (policy).
constexpr double kUnderCeiling = 0.8;

Text rangeOf(const TensionChoice& c) { return {"%1 to %2", {c.low.value->magnitude(), c.high.value->magnitude()}}; }
std::vector<Text> one(Text text) { return {std::move(text)}; }

bool isKnown(const TensionChoice& c) { return c.low.known() && c.high.known(); }

/// A range that lies wholly above what holds it down: two of those who know this web contradict each other.
void contradict(TensionChoice& c, const std::string& code, const std::string& subject, Text text, Text remedy)
{
    const Finding why = refuse(code, subject, std::move(text), std::move(remedy));
    c.low = c.high = impossible(why);
    c.said.push_back(why);
}

/// The job's range against the maker's, or where there is none against what the tables start at.
void holdToMaker(const Book& book, TensionChoice& c)
{
    TensionChoice maker;
    if (book.substrate().tension) {
        fromRange(maker, *book.substrate().tension, Rule::Maker, "substrate.tension");
    } else if (const auto material = byMaterial(book); material && isKnown(*material) && isKnown(c)) {
        if (c.high.value->si() > material->high.value->si() || c.low.value->si() < material->low.value->si())
            c.said.push_back(
                Finding{"tension.job_beyond_start", Severity::Note, "job.tension",
                        Text("The job's tension, %1, reaches beyond the starting range for this material, %2: %3.",
                             {one(rangeOf(c)), one(rangeOf(*material)), one(material->highSource)}),
                        Text("Look that it is meant. The maker's range, entered with the material, would be better.")});
        return;
    }
    if (!c.high.known() || !c.low.known()) return;
    if (maker.high.known() && c.high.value->si() > maker.high.value->si()) {
        if (c.low.value->si() > maker.high.value->si()) {
            contradict(
                c, "tension.job_above_maker", "job.tension",
                Text("The job wants a tension of %1; the maker of the material allows at most %2.",
                     {one(rangeOf(c)), maker.high.value->magnitude()}),
                "Look at the job's tension and its unit, and at the material's, and mend the one that is wrong.");
            return;
        }
        c.said.push_back(Finding{"tension.job_beyond_maker", Severity::Warn, "job.tension",
                                 Text("The job's tension, %1, reaches beyond what the maker of the material allows: it "
                                      "is held down to %2.",
                                      {one(rangeOf(c)), maker.high.value->magnitude()}),
                                 "Mend the job's tension, or the material's if the maker says more."});
        c.high = maker.high;
        c.rules.high = Rule::Maker;
        c.highSource = maker.highSource;
        c.advice = "The job's range, held down to what the maker of the material allows.";
        c.cut = true;
    }
    if (maker.low.known() && c.low.value->si() < maker.low.value->si())
        c.said.push_back(Finding{"tension.job_below_maker", Severity::Note, "job.tension",
                                 Text("The job's tension begins at %1, the maker of the material says at least %2.",
                                      {c.low.value->magnitude(), maker.low.value->magnitude()}),
                                 "Less hurts no web; see that it stays in hand."});
}

/// Strength and strain only cap. What is not known caps nothing.
void holdDown(const Book& book, const inputs::Zone& zone, TensionChoice& c)
{
    if (!isKnown(c)) return;
    const Ceiling ceiling = ceilingOf(book, zone);
    if (!ceiling.value.known() || c.high.value->si() <= ceiling.value.value->si()) return;
    const Quantity most = ceiling.value.value->in(c.high.value->unit());
    const bool said = c.rules.high == Rule::Job || c.rules.high == Rule::Maker;
    const std::string subject = c.rules.low == Rule::Job ? "job.tension" : said ? "substrate.tension" : "substrate";
    const Text whole = rangeOf(c);
    if (said && c.low.value->si() > most.si()) {
        contradict(c, "tension.above_ceiling", subject,
                   Text("A tension of %1 was entered; the material bears at most %2: %3.",
                        {one(whole), most.magnitude(), one(ceiling.source)}),
                   "Look at the tension and its unit, and at the strength and modulus of the material.");
        return;
    }
    if (c.how == "T2") c.how = "lookup";
    // Nobody said this tension of this web: the ceiling draws the lower end down before it, so that neither the window
    // closes nor the aim jumps as the ceiling falls. A range that is narrower by itself keeps its own share.
    const double begins = std::max(kUnderCeiling, c.low.value->si() / c.high.value->si()) * most.si();
    if (!said && c.low.value->si() > begins) {
        c.low = known(Quantity(begins, Kind::ForcePerWidth, most.unit()), ceiling.value.from);
        c.rules.low = ceiling.rule;
        c.lowSource = Text("four fifths of the highest, or what the starting range keeps: policy");
        c.how = "rule";
        c.sourceId = ceiling.sourceId;
    }
    c.high = known(most, ceiling.value.from);
    c.rules.high = ceiling.rule;
    c.highSource = ceiling.source;
    c.advice = ceiling.advice;
    c.cut = true;
    c.said.push_back(Finding{
        "tension.held_down", said ? Severity::Warn : Severity::Note, subject,
        Text("The range of tension, %1, is held down to %2: %3.", {one(whole), one(rangeOf(c)), one(ceiling.source)}),
        said ? Text("Look at the tension that was entered, and at the strength and modulus of the "
                    "material.")
             : Text("The maker's range, entered with the material, would be better.")});
}

}  // namespace

Text TensionChoice::source() const
{
    if (lowSource == highSource) return highSource;
    return {"lowest: %1; highest: %2", {one(lowSource), one(highSource)}};
}

Ceiling ceilingOf(const Book& book, const inputs::Zone& zone)
{
    const char* unit = book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm";
    const Limit share = book.limit("strength_share");
    Ceiling strength;
    strength.formula = "T4";
    strength.arguments = {{"c", book.row("strength_share")}, {"S", weakestStrength(book)}};
    strength.value = evaluated("T4", strength.arguments, book.row("strength_share").from);
    strength.rule = share.rule;
    strength.source = share.source();
    strength.sourceId = "S26, S27";
    strength.advice = "Held down to a tenth of what the weakest carrying layer breaks at, or the share that this shop "
                      "allows: a rule of thumb.";

    const char* rowName = book.substrate().family == "pe" ? "strain_most_pe" : "strain_most";
    const Limit most = book.limit(rowName);
    const Carrier web = carrierOf(book, zone);
    Ceiling strain;
    strain.byStrain = true;
    strain.formula = "rule";
    strain.arguments = {{"e", called(book.row(rowName), "largest strain")},
                        {"E", called(web.modulus, "modulus")},
                        {"t", called(web.caliper, "caliper")}};
    strain.value = combine(
        {book.row(rowName), web.modulus, web.caliper}, book.row(rowName).from,
        [](const std::vector<double>& v) { return v[0] * v[1] * v[2]; }, Kind::ForcePerWidth);
    strain.rule = most.rule;
    strain.source = most.source();
    strain.sourceId = "S41, policy";
    strain.advice = "Held down to the strain that print may be made under: beyond it the labels come out short.";

    const bool strainRules =
        strain.value.known() && (!strength.value.known() || strain.value.value->si() < strength.value.value->si());
    Ceiling& rules = strainRules ? strain : strength;
    if (rules.value.known()) rules.value.value = rules.value.value->in(unit);
    return rules;
}

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
    const inputs::Substrate& s = book.substrate();
    if (endOf(book.press(), zone) == ZoneEnd::Waste) {
        // Stripped matrix has no table: it is set by eye to the least that strips clean, unless the shop says a range.
        const std::string id = "tension." + zone.id + ".per_width";
        for (const auto& [limit, range] : book.press().limits)
            if (limit == id && range.low && range.high) {
                c.low = known(*range.low, "press.limits." + id);
                c.high = known(*range.high, "press.limits." + id);
                c.rules = {Rule::Press, Rule::Press};
                c.lowSource = c.highSource = "limits of this press's profile";
                c.sourceId = "press profile";
                return c;
            }
        c.low = c.high = missing("press.limits." + id);
        return c;
    }
    if (zone.to.empty() && zone.control != inputs::Control::Draw && endOf(book.press(), zone) == ZoneEnd::Between) {
        // Where it ends tells whether it pulls the web or stripped matrix.
        c.low = c.high = missing(zoneKey(zone, "to"));
        return c;
    }
    if (book.job().tension) {
        fromRange(c, *book.job().tension, Rule::Job, "job.tension");
        holdToMaker(book, c);
    } else if (s.tension) {
        fromRange(c, *s.tension, Rule::Maker, "substrate.tension");
    } else if (auto material = byMaterial(book)) {
        c = *std::move(material);
    } else {
        c.low = c.high = missing(s.family.empty() ? "substrate.family" : "substrate.tension");
        return c;
    }
    holdDown(book, zone, c);
    return c;
}

}  // namespace taut::targets
