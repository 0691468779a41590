// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"
#include "core/base/json.h"
#include "core/procedure/plan.h"
#include "core/run/event_maker.h"
#include "core/targets/target_json.h"
#include "core/units/plain.h"
#include "core/units/unit.h"
#include "core/units/unit_json.h"

namespace taut::run {

namespace {

Json listOf(const std::vector<std::string>& words)
{
    Json list = Json::array();
    for (const std::string& word : words) list.add(word);
    return list;
}

Json listOf(const std::vector<StepId>& steps)
{
    Json list = Json::array();
    for (const StepId& step : steps) list.add(step.value);
    return list;
}

Json sourceJson(const Source& source)
{
    Json json = Json::object();
    json.set("id", source.id).set("edition", source.edition).set("sha256", source.sha256).set("text", source.text);
    return json;
}

/// The words in which the steps are read travel with the procedure, where they are not its own.
Json procedureJson(const Sources& sources)
{
    Json json = sourceJson(sources.procedure);
    const Source& words = sources.translation;
    if (!words.id.empty())
        json.set("language", words.id).set("language_sha256", words.sha256).set("language_text", words.text);
    return json;
}

/// Of a target set's object one event carries all three members, inside its own "targets".
void setBasis(Json& json, const Sources& sources, const std::vector<std::string>& facts,
              const targets::Targets& targets, const procedure::Plan& plan, const std::optional<Length>& diameter,
              UnitSystem units)
{
    Json inputs = Json::object();
    inputs.set("press", sourceJson(sources.press)).set("job", sourceJson(sources.job));
    inputs.set("substrate", sourceJson(sources.substrate)).set("roll", sourceJson(sources.roll));
    json.set("present_diameter", diameter ? Json(diameter->si()) : Json());
    json.set("inputs", std::move(inputs)).set("procedure", procedureJson(sources));
    json.set("facts", listOf(facts));
    json.set("targets", targets::targetsJson(targets, units)).set("plan", procedure::planJson(plan));
}

/// value, unit (SI), kind, the unit it was said in, and the window it was judged against.
void setReading(Json& json, const Quantity& value, const targets::Window& window)
{
    json.set("value", value.si()).set("unit", siUnit(value.kind()).symbol).set("kind", kindWord(value.kind()));
    setUnit(json, "shown_unit", value.unit());
    json.set("low", window.low ? Json(window.low->si()) : Json());
    json.set("high", window.high ? Json(window.high->si()) : Json());
    json.set("rule", targets::ruleWord(window.rule));
    if (window.lowRule) json.set("low_rule", targets::ruleWord(*window.lowRule));
    const Quantity* limit = window.low ? &*window.low : window.high ? &*window.high : nullptr;
    if (limit != nullptr) setUnit(json, "limits_unit", limit->unit());
    if (!window.source.empty()) json.set("limits_from", textJson(window.source));
}

void setChange(Json& json, const InputsChanged& e, UnitSystem units)
{
    json.set("input", e.what).set("stale", listOf(e.stale));
    setBasis(json, e.sources, e.facts, e.targets, e.plan, e.presentDiameter, units);
}

struct Payload {
    Json& json;
    UnitSystem units;

    void operator()(const Began& e) const
    {
        json.set("run", e.runId).set("workplace", e.workplace).set("practice", e.practice).set("kind", e.kind);
        json.set("parent", e.parent).set("web_in_press", e.webInPress);
        json.set("units", e.units == UnitSystem::Us ? "us" : "metric");
        Json carried = Json::array();
        for (const Carried& c : e.carried) {
            Json one = Json::object();
            carried.add(one.set("condition", c.condition).set("valid_for", procedure::validForWord(c.validFor)));
        }
        json.set("carried", std::move(carried));
        setBasis(json, e.sources, e.facts, e.targets, e.plan, e.presentDiameter, e.units);
    }
    void operator()(const Answered& e) const
    {
        json.set("step", e.step.value).set("entered", e.entered);
        if (e.value) setReading(json, *e.value, e.window);
        if (e.value) json.set("uncertainty", e.uncertainty);
        json.set("verdict", verdict::verdictWord(e.judgement.verdict)).set("doubtful", e.judgement.doubtful);
        json.set("stated", listOf(e.stated));
        if (e.correction) json.set("reason", e.reason);
        if (e.filled) setChange(json, *e.filled, units);
    }
    void operator()(const NotApplicable& e) const
    {
        json.set("step", e.step.value).set("reason", e.reason);
        json.set("supervisor", e.approvedBy).set("supervisor_name", e.approvedByName);
    }
    void operator()(const Deviated& e) const
    {
        json.set("step", e.step.value).set("entered", e.entered);
        setReading(json, e.value, e.window);
        json.set("reason", e.reason).set("supervisor", e.by).set("supervisor_name", e.byName);
        json.set("signature", e.signature);
        if (e.filled) setChange(json, *e.filled, units);
    }
    void operator()(const InputsChanged& e) const { setChange(json, e, units); }
    void operator()(const StopHeld& e) const { json.set("holder", e.holder).set("where", e.where); }
    void operator()(const StopGivenUp& e) const
    {
        json.set("holder", e.holder);
        if (e.saidBy.empty()) return;
        json.set("reason", e.reason).set("said_by", e.saidBy).set("said_by_name", e.saidByName);
    }
    void operator()(const Interrupted& e) const { json.set("reason", e.reason); }
    void operator()(const Resumed& e) const
    {
        json.set("stated", listOf(e.stated)).set("reconfirm", listOf(e.reconfirm));
        if (!e.from.empty()) json.set("from", e.from);
    }
    void operator()(const HandedOver& e) const
    {
        json.set("to", e.to.value).set("to_name", e.toName).set("to_role", e.toRole);
        json.set("reconfirm", listOf(e.reconfirm));
    }
    void operator()(const Repeated& e) const
    {
        json.set("stage", e.stage).set("cause", e.cause).set("reopened", listOf(e.reopened));
    }
    void operator()(const Noted& e) const { json.set("step", e.step.value).set("text", e.text); }
    void operator()(const Attached& e) const
    {
        json.set("step", e.step.value).set("file", e.name).set("type", e.type).set("size", e.size);
        json.set("sha256", e.sha256);
    }
    void operator()(const Helped& e) const
    {
        json.set("step", e.step.value).set("remedy", e.remedy).set("words", e.words);
    }
    void operator()(const ClockJumped& e) const { json.set("by_ms", e.byMs); }
    void operator()(const Withdrawn& e) const { json.set("reason", e.reason); }
    void operator()(const Returned& e) const { json.set("done", e.done); }
    void operator()(const Completed& e) const
    {
        json.set("remarks", e.remarks);
        if (!e.supervisor.empty()) json.set("supervisor", e.supervisor).set("supervisor_name", e.supervisorName);
    }
    void operator()(const Abandoned& e) const
    {
        json.set("reason", e.reason);
        Json held = Json::array();
        for (const StopHeld& stop : e.held) {
            Json one = Json::object();
            held.add(one.set("holder", stop.holder).set("where", stop.where));
        }
        json.set("stops_held", std::move(held));
    }
};

struct Word {
    const char* operator()(const Began&) const { return "began"; }
    const char* operator()(const Answered& e) const { return e.correction ? "corrected" : "answered"; }
    const char* operator()(const NotApplicable&) const { return "not_applicable"; }
    const char* operator()(const Deviated&) const { return "deviated"; }
    const char* operator()(const InputsChanged&) const { return "inputs_changed"; }
    const char* operator()(const StopHeld&) const { return "stop_held"; }
    const char* operator()(const StopGivenUp&) const { return "stop_given_up"; }
    const char* operator()(const Interrupted&) const { return "interrupted"; }
    const char* operator()(const Resumed&) const { return "resumed"; }
    const char* operator()(const HandedOver&) const { return "handed_over"; }
    const char* operator()(const Repeated&) const { return "repeated"; }
    const char* operator()(const Noted&) const { return "noted"; }
    const char* operator()(const Attached&) const { return "attached"; }
    const char* operator()(const Helped&) const { return "helped"; }
    const char* operator()(const ClockJumped&) const { return "clock_jumped"; }
    const char* operator()(const Withdrawn&) const { return "withdrawn"; }
    const char* operator()(const Returned&) const { return "returned"; }
    const char* operator()(const Completed&) const { return "completed"; }
    const char* operator()(const Abandoned&) const { return "abandoned"; }
};

}  // namespace

const char* whatWord(const Happening& happening) { return std::visit(Word{}, happening); }

Json eventJson(const Stamp& stamp, const Happening& happening, UnitSystem units)
{
    Json json = Json::object();
    json.set("n", stamp.n).set("at", utcText(stamp.utcMs)).set("offset", offsetText(stamp.offsetMinutes));
    json.set("by", stamp.by.value).set("name", stamp.byName).set("role", stamp.byRole);
    json.set("what", whatWord(happening));
    std::visit(Payload{json, units}, happening);
    return json;
}

Event EventMaker::make(Stamp stamp, Happening happening, UnitSystem units)
{
    Json body = eventJson(stamp, happening, units);
    return stored(std::move(stamp), std::move(happening), std::move(body));
}

Event EventMaker::stored(Stamp stamp, Happening happening, Json body)
{
    Event event;
    event.m_stamp = std::move(stamp);
    event.m_happening = std::make_shared<const Happening>(std::move(happening));
    event.m_body = std::make_shared<const Json>(std::move(body));
    return event;
}

}  // namespace taut::run
