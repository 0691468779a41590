// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/target_json.h"

#include <array>

#include "core/targets/aim.h"
#include "core/units/format.h"
#include "core/units/plain.h"

namespace taut::targets {

namespace {

Json optionalNumber(const std::optional<Quantity>& q) { return q ? Json(q->si()) : Json(); }

/// A Text beside its English: stored only where arguments would be lost in it.
void setText(Json& object, const char* key, const Text& text, UnitSystem system)
{
    object.set(key, plain(text, system));
    if (!text.args.empty()) object.set(std::string(key) + "_say", textJson(text));
}

Text getText(const Json& object, const char* key)
{
    const std::string say = std::string(key) + "_say";
    return object.has(say) ? textFrom(object[say]) : Text(object[key].text());
}

/// A word of an unknown kind reads as a count: its number is kept.
Kind kindOf(const Json& word)
{
    Kind kind{};
    return kindFromWord(word.text(), kind) ? kind : Kind::Count;
}

Json valueJson(const TargetValue& value)
{
    if (const auto* q = std::get_if<Quantity>(&value)) return Json(q->si());
    if (const auto* b = std::get_if<bool>(&value)) return Json(*b);
    return Json(std::get<std::string>(value));
}

/// Kind, SI unit and the unit people speak in, for a value that is a quantity.
void setKind(Json& object, const TargetValue& value)
{
    if (const auto* q = std::get_if<Quantity>(&value)) {
        object.set("unit", siUnit(q->kind()).symbol)
            .set("quantity_kind", kindWord(q->kind()))
            .set("shown_unit", mannerOf(q->unit()).symbol);
        if (mannerOf(q->unit()).fixed) object.set("unit_fixed", true);
    } else {
        object.set("unit", "");
    }
}

TargetValue valueFrom(const Json& object)
{
    const Json& v = object["value"];
    if (v.isBool()) return v.boolean();
    if (v.isString()) return v.text();
    const bool fixed = object["unit_fixed"].isBool() && object["unit_fixed"].boolean();
    return Quantity(v.number(), kindOf(object["quantity_kind"]), unitIn({object["shown_unit"].text(), fixed, 0}));
}

std::string shownText(const TargetValue& value, UnitSystem system)
{
    if (const auto* q = std::get_if<Quantity>(&value)) return format(*q, system);
    if (const auto* b = std::get_if<bool>(&value)) return *b ? "yes" : "no";
    return std::get<std::string>(value);
}

constexpr std::array<const char*, 3> kShapes{"quantity", "yes_no", "word"};

Json readyJson(Json object, const Ready& ready, UnitSystem system)
{
    object.set("state", "ready").set("value", valueJson(ready.value));
    setKind(object, ready.value);
    const TargetValue aim = aimOf(ready, system);
    object.set("text", shownText(aim, system));
    if (aim != ready.value) object.set("aim", valueJson(aim));
    object.set("uncertainty", optionalNumber(ready.uncertainty)).set("instrument", optionalNumber(ready.instrument));
    if (ready.most) object.set("most", ready.most->si());
    object.set("window", windowJson(ready.window));
    object.set("formula", ready.because.formula).set("symbols", ready.because.symbols);
    Json given = Json::array();
    for (const Given& g : ready.because.given) {
        Json one = Json::object();
        one.set("symbol", g.symbol);
        setText(one, "name", g.name, system);
        one.set("value", valueJson(g.value));
        setKind(one, g.value);
        given.add(one.set("from", g.from));
    }
    object.set("because", std::move(given)).set("source", ready.because.source);
    setText(object, "advice", ready.advice, system);
    return object;
}

Ready readyFrom(const Json& object)
{
    Ready ready;
    ready.value = valueFrom(object);
    const auto* q = std::get_if<Quantity>(&ready.value);
    const Kind kind = q ? q->kind() : Kind::Count;
    const SharedString unit = q ? q->unit() : SharedString();
    if (object["uncertainty"].isNumber()) ready.uncertainty = Quantity(object["uncertainty"].number(), kind, unit);
    if (object["instrument"].isNumber()) ready.instrument = Quantity(object["instrument"].number(), kind, unit);
    if (object["most"].isNumber()) ready.most = Quantity(object["most"].number(), kind, unit);
    ready.window = windowFrom(object["window"], kind, unit);
    ready.because.formula = object["formula"].text();
    ready.because.symbols = object["symbols"].text();
    ready.because.source = object["source"].text();
    for (const Json& one : object["because"].items())
        ready.because.given.push_back({one["symbol"].text(), getText(one, "name"), valueFrom(one), one["from"].text()});
    ready.advice = getText(object, "advice");
    return ready;
}

Json targetJson(const Target& target, UnitSystem system)
{
    Json object = Json::object();
    object.set("id", target.id).set("kind", kShapes[static_cast<std::size_t>(target.shape)]);
    setText(object, "name", target.name, system);
    if (const auto* needs = std::get_if<Needs>(&target.state)) {
        Json keys = Json::array();
        for (const std::string& key : needs->keys) keys.add(key);
        object.set("state", "needs").set("needs", std::move(keys)).set("source", needs->source);
        setText(object, "advice", needs->advice, system);
        return object;
    }
    if (const auto* no = std::get_if<Cannot>(&target.state)) {
        object.set("state", no->never() ? "none" : "cannot")
            .set("why", findingJson(no->why, system))
            .set("source", no->source);
        setText(object, "advice", no->advice, system);
        return object;
    }
    return readyJson(std::move(object), std::get<Ready>(target.state), system);
}

Result<Target> targetFrom(const Json& object)
{
    Target target;
    target.id = object["id"].text();
    target.name = getText(object, "name");
    const std::string shape = object["kind"].text();
    for (std::size_t i = 0; i < kShapes.size(); ++i)
        if (shape == kShapes[i]) target.shape = static_cast<Shape>(i);
    const std::string state = object["state"].text();
    if (target.id.empty() || (state != "ready" && state != "needs" && state != "cannot" && state != "none"))
        return refuse("targets.broken", target.id, Text("This is not a target: it has no id or an unknown state."));
    if (state == "needs") {
        Needs needs;
        for (const Json& key : object["needs"].items()) needs.keys.push_back(key.text());
        needs.advice = getText(object, "advice");
        needs.source = object["source"].text();
        target.state = std::move(needs);
    } else if (state == "cannot" || state == "none") {
        target.state = Cannot{findingFrom(object["why"]), getText(object, "advice"), object["source"].text()};
    } else {
        target.state = readyFrom(object);
    }
    return target;
}

Json scheduleJson(const Schedule& schedule)
{
    Json columns = Json::array(), units = Json::array(), kinds = Json::array(), shown = Json::array(),
         fixed = Json::array(), rows = Json::array();
    bool anyFixed = false;
    for (const std::string& column : schedule.columns) columns.add(column);
    if (!schedule.rows.empty())
        for (const Quantity& q : schedule.rows.front()) {
            units.add(siUnit(q.kind()).symbol);
            kinds.add(kindWord(q.kind()));
            const Manner manner = mannerOf(q.unit());
            shown.add(manner.symbol);
            fixed.add(manner.fixed);
            anyFixed = anyFixed || manner.fixed;
        }
    for (const auto& row : schedule.rows) {
        Json cells = Json::array();
        for (const Quantity& q : row) cells.add(q.si());
        rows.add(std::move(cells));
    }
    Json object = Json::object();
    object.set("id", schedule.id)
        .set("columns", std::move(columns))
        .set("units", std::move(units))
        .set("quantity_kinds", std::move(kinds))
        .set("shown_units", std::move(shown));
    if (anyFixed) object.set("units_fixed", std::move(fixed));
    return object.set("rows", std::move(rows));
}

Schedule scheduleFrom(const Json& object)
{
    Schedule schedule{object["id"].text(), {}, {}};
    for (const Json& column : object["columns"].items()) schedule.columns.push_back(column.text());
    const Json::Array& kinds = object["quantity_kinds"].items();
    const Json::Array& shown = object["shown_units"].items();
    const Json::Array& fixed = object["units_fixed"].items();
    for (const Json& row : object["rows"].items()) {
        std::vector<Quantity> cells;
        for (std::size_t i = 0; i < row.items().size() && i < kinds.size() && i < shown.size(); ++i) {
            const bool isFixed = i < fixed.size() && fixed[i].isBool() && fixed[i].boolean();
            cells.emplace_back(row.items()[i].number(), kindOf(kinds[i]), unitIn({shown[i].text(), isFixed, 0}));
        }
        schedule.rows.push_back(std::move(cells));
    }
    return schedule;
}

}  // namespace

Json windowJson(const Window& window)
{
    Json object = Json::object();
    object.set("low", optionalNumber(window.low))
        .set("high", optionalNumber(window.high))
        .set("rule", ruleWord(window.rule));
    if (window.lowRule) object.set("low_rule", ruleWord(*window.lowRule));
    setText(object, "source", window.source, UnitSystem::Metric);
    return object;
}

Window windowFrom(const Json& json, Kind kind, const SharedString& unit)
{
    Window window;
    if (json["low"].isNumber()) window.low = Quantity(json["low"].number(), kind, unit);
    if (json["high"].isNumber()) window.high = Quantity(json["high"].number(), kind, unit);
    for (const Rule rule : {Rule::Job, Rule::Maker, Rule::Press, Rule::Table, Rule::Policy, Rule::None, Rule::Alarm}) {
        if (json["rule"].text() == ruleWord(rule)) window.rule = rule;
        if (json["low_rule"].isString() && json["low_rule"].text() == ruleWord(rule)) window.lowRule = rule;
    }
    window.source = getText(json, "source");
    return window;
}

Json targetsJson(const Targets& targets, UnitSystem system)
{
    Json all = Json::array(), schedules = Json::array(), findings = Json::array();
    for (const Target& t : targets.all) all.add(targetJson(t, system));
    for (const Schedule& s : targets.schedules) schedules.add(scheduleJson(s));
    for (const Finding& f : targets.findings) findings.add(findingJson(f, system));
    Json object = Json::object();
    return object
        .set("decision_rule",
             "guarded acceptance, ILAC-G8:09/2019 4.2.3, guard band U (k = 2): inside, near, outside; limits are never "
             "widened, and how well a target is known moves none")
        .set("targets", std::move(all))
        .set("schedules", std::move(schedules))
        .set("findings", std::move(findings));
}

Result<Targets> targetsFrom(const Json& json)
{
    if (!json["targets"].isArray())
        return refuse("targets.broken", "targets", Text("This is not a target set: it has no list of targets."));
    Targets targets;
    for (const Json& one : json["targets"].items()) {
        Result<Target> target = targetFrom(one);
        if (!target) return target.error();
        targets.all.push_back(std::move(*target));
    }
    for (const Json& one : json["schedules"].items()) targets.schedules.push_back(scheduleFrom(one));
    for (const Json& one : json["findings"].items()) targets.findings.push_back(findingFrom(one));
    return targets;
}

}  // namespace taut::targets
