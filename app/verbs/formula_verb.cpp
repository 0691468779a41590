// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <ostream>

#include "app/verbs/verbs.h"
#include "core/base/json.h"
#include "core/physics/formula.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/unit.h"

namespace taut::app::verbs {

namespace {

using physics::Argument;
using physics::Formula;

std::string symbolOf(Kind kind) { return std::string(siUnit(kind).symbol); }

std::string unitsOf(std::span<const Kind> kinds)
{
    std::string all;
    for (const Kind kind : kinds) all += (all.empty() ? "" : " or ") + symbolOf(kind);
    return all;
}

Finding noSuchFormula(const std::string& id)
{
    std::vector<std::string> known;
    for (const Formula& one : physics::formulas()) known.emplace_back(one.id);
    const std::string near = nearest(id, known);
    return refuse("formula.unknown", id, "There is no formula of this id.",
                  near.empty() ? Text("tautweb formula --list lists them.")
                               : Text("Did you mean %1? tautweb formula --list lists them all.", {near}));
}

const Argument* argumentOf(const Formula& formula, std::string_view symbol)
{
    for (const Argument& argument : formula.arguments)
        if (argument.symbol == symbol) return &argument;
    return nullptr;
}

/// A value of any of the kinds that the argument may be of. A count or a share may stand bare or with its unit 1, as
/// JSON writes it.
Result<Quantity> valueOf(const Argument& argument, const std::string& text)
{
    std::string bare = text;
    if (bare.size() > 2 && bare.compare(bare.size() - 2, 2, " 1") == 0 && bare.find(' ') == bare.size() - 2)
        bare.resize(bare.size() - 2);
    Result<Quantity> first = Quantity();
    for (std::size_t i = 0; i < argument.kinds.size(); ++i) {
        const Kind kind = argument.kinds[i];
        const bool plainNumber = kind == Kind::Count || kind == Kind::Share;
        auto read = parseQuantity(plainNumber ? bare : text, kind, plainNumber ? Bare::Accept : Bare::Refuse);
        if (read) return read;
        if (i == 0) first = read;
    }
    return first;
}

Result<std::vector<physics::Named>> givenIn(const Formula& formula, std::span<const std::string> words)
{
    std::vector<physics::Named> given;
    for (const std::string& word : words) {
        const std::size_t equals = word.find('=');
        if (equals == std::string::npos || equals == 0)
            return refuse("formula.no_value", word, "This is no argument: an argument is written name=VALUE.",
                          "Write for example D=\"500 mm\", with quotes round a value that holds a space.");
        const std::string symbol = word.substr(0, equals);
        const Argument* argument = argumentOf(formula, symbol);
        if (argument == nullptr) {
            std::string known;
            for (const Argument& one : formula.arguments) known += (known.empty() ? "" : " ") + std::string(one.symbol);
            return refuse("formula.unknown_argument", symbol,
                          {"%1 has no argument of this name.", {std::string(formula.id)}},
                          {"Its arguments are: %1. Upper and lower case differ.", {known}});
        }
        auto value = valueOf(*argument, word.substr(equals + 1));
        if (!value) {
            Finding finding = value.error();
            finding.subject = symbol;
            return finding;
        }
        given.push_back({symbol, std::move(*value)});
    }
    return given;
}

/// US units where one was typed that only they have, else metric.
UnitSystem systemTyped(const std::vector<physics::Named>& given)
{
    const bool us = std::any_of(given.begin(), given.end(), [](const physics::Named& one) {
        const Unit* unit = findUnit(one.value.kind(), one.value.unit());
        return unit != nullptr && unit->us && !unit->metric;
    });
    return us ? UnitSystem::Us : UnitSystem::Metric;
}

Json formulaJson(const Formula& formula)
{
    Json arguments = Json::array();
    for (const Argument& argument : formula.arguments) {
        Json units = Json::array();
        for (const Kind kind : argument.kinds) units.add(symbolOf(kind));
        arguments.add(
            Json::object().set("symbol", argument.symbol).set("name", argument.name).set("units", std::move(units)));
    }
    Json units = Json::array();
    for (const Kind kind : formula.results) units.add(symbolOf(kind));
    return Json::object()
        .set("id", formula.id)
        .set("symbols", formula.symbols)
        .set("arguments", std::move(arguments))
        .set("units", std::move(units))
        .set("valid", formula.valid)
        .set("source", formula.source);
}

Exit list(const Console& console, bool json)
{
    if (json) {
        Json all = Json::array();
        for (const Formula& formula : physics::formulas()) all.add(formulaJson(formula));
        print(console, answer().set("formulas", std::move(all)));
        return Exit::Done;
    }
    std::vector<std::vector<std::string>> rows;
    for (const Formula& formula : physics::formulas()) {
        std::string arguments;
        for (const Argument& argument : formula.arguments)
            arguments +=
                (arguments.empty() ? "" : ", ") + std::string(argument.symbol) + " [" + unitsOf(argument.kinds) + ']';
        rows.push_back({std::string(formula.id), std::string(formula.symbols), arguments,
                        '[' + unitsOf(formula.results) + ']', std::string(formula.source)});
    }
    console.out << table(rows);
    return Exit::Done;
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    if (options.has("--list")) return list(console, json);
    if (options.words().empty())
        return refused(console, json,
                       refuse("option.too_few_words", "formula", "tautweb formula needs the id of a formula.",
                              "tautweb formula --list lists them."));
    const std::string& id = options.words().front();
    const Formula* formula = physics::findFormula(id);
    if (formula == nullptr) return refused(console, json, noSuchFormula(id));
    const auto given = givenIn(*formula, std::span(options.words()).subspan(1));
    if (!given) return refused(console, json, given.error());
    const auto value = physics::evaluate(*formula, *given);
    if (!value) return refused(console, json, value.error());

    const std::string unit = symbolOf(value->kind());
    if (!json) {
        console.out << shortest(value->si()) << (unit == "1" ? "" : ' ' + unit);
        // A press has no dial in pascals: the same in the unit that `targets` would say.
        const Shown shown = show(*value, systemTyped(*given));
        if (!shown.unit.empty() && shown.unit != unit) console.out << " (" << shown.text() << ')';
        console.out << '\n';
        return Exit::Done;
    }
    Json arguments = Json::array();
    for (const Argument& argument : formula->arguments)
        for (const physics::Named& one : *given)
            if (one.symbol == argument.symbol)
                arguments.add(Json::object()
                                  .set("symbol", one.symbol)
                                  .set("value", one.value.si())
                                  .set("unit", symbolOf(one.value.kind())));
    print(console, answer()
                       .set("id", formula->id)
                       .set("symbols", formula->symbols)
                       .set("value", value->si())
                       .set("unit", unit)
                       .set("arguments", std::move(arguments))
                       .set("valid", formula->valid)
                       .set("source", formula->source)
                       .set("findings", Json::array()));
    return Exit::Done;
}

}  // namespace

Verb formulaVerb()
{
    return {{"formula",
             "ID name=VALUE...",
             "works out one published relation, or lists them",
             {{"--list", "", "every formula: id, relation, arguments with units, unit of the result, source"}},
             0,
             64},
            run};
}

}  // namespace taut::app::verbs
