// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "core/base/toml.h"
#include "core/run/deviation.h"
#include "core/seal/document.h"
#include "core/seal/run_events.h"
#include "core/units/unit.h"

namespace taut::seal {

namespace {

/// A source as a document names it. Its text is a definition of its own in the chain; only a roll's stands here.
Json named(const run::Source& source)
{
    Json json = Json::object();
    return json.set("id", source.id).set("edition", source.edition).set("sha256", source.sha256);
}

Json inputsOf(const run::Sources& sources)
{
    Json roll = Json::object();
    roll.set("id", sources.roll.id).set("sha256", sources.roll.sha256).set("text", sources.roll.text);
    Json json = Json::object();
    json.set("press", named(sources.press)).set("job", named(sources.job));
    return json.set("substrate", named(sources.substrate)).set("roll", std::move(roll));
}

/// The language in which the steps were read: of the translation, else of the procedure's file; null when that is not
/// at hand.
Json languageOf(const run::Sources& sources)
{
    if (!sources.translation.id.empty()) return Json(sources.translation.id);
    const run::Source& procedure = sources.procedure;
    const auto file = readToml(procedure.text, procedure.id);
    const Toml* table = file ? file->find("procedure") : nullptr;
    const Toml* language = table != nullptr ? table->find("language") : nullptr;
    return language != nullptr && language->text() != nullptr ? Json(*language->text()) : Json();
}

/// Everybody who did, accepted or took over something, in the order of first appearance.
class People {
public:
    void add(const std::string& id, const std::string& name, std::string_view role)
    {
        const bool known = std::any_of(m_all.begin(), m_all.end(), [&](const Json& p) { return p["id"].text() == id; });
        if (id.empty() || known) return;
        Json person = Json::object();
        m_all.push_back(person.set("id", id).set("name", name).set("role", role));
    }
    void addFrom(const run::Event& event)
    {
        const run::Stamp& stamp = event.stamp();
        add(stamp.by.value, stamp.byName, stamp.byRole);
        const char* supervisor = people::roleWord(people::Role::Supervisor);
        if (const auto* e = std::get_if<run::Deviated>(&event.happening())) add(e->by, e->byName, supervisor);
        if (const auto* e = std::get_if<run::NotApplicable>(&event.happening()))
            add(e->approvedBy, e->approvedByName, supervisor);
        if (const auto* e = std::get_if<run::Completed>(&event.happening()))
            add(e->supervisor, e->supervisorName, supervisor);
        if (const auto* e = std::get_if<run::HandedOver>(&event.happening())) add(e->to.value, e->toName, e->toRole);
    }
    [[nodiscard]] Json list() const { return Json(m_all); }

private:
    Json::Array m_all;
};

void setValue(Json& json, const std::string& entered, const Quantity& value, const targets::Window& window)
{
    json.set("entered", entered).set("value", value.si()).set("unit", siUnit(value.kind()).symbol);
    json.set("low", window.low ? Json(window.low->si()) : Json());
    json.set("high", window.high ? Json(window.high->si()) : Json());
}

Json stepJson(const procedure::Step& step, const run::StepStanding& standing)
{
    Json json = Json::object();
    json.set("step", step.id.value).set("vital", step.vital).set("state", run::stateWord(standing.state));
    if (!step.target.empty()) json.set("target", step.target);
    if (const auto& answer = standing.answer) {
        if (answer->value) {
            setValue(json, answer->entered, *answer->value, answer->window);
            json.set("uncertainty", answer->uncertainty);
        } else {
            json.set("entered", answer->entered);
        }
        json.set("verdict", verdict::verdictWord(answer->judgement.verdict))
            .set("doubtful", answer->judgement.doubtful);
    }
    if (!standing.skipReason.empty()) json.set("reason", standing.skipReason);
    if (standing.n > 0) json.set("by", standing.by).set("at", utcText(standing.at));
    return json;
}

/// What a step's standing and the event of its answer both say.
constexpr std::array<std::string_view, 11> kSaid{"entered", "value",    "unit",   "low", "high", "uncertainty",
                                                 "verdict", "doubtful", "reason", "by",  "at"};

/// A step with what the event that it names says of it; where neither says that a judged answer is doubtful, it is not.
Json withEvent(const Json& step, const Json& event)
{
    Json whole = Json::object();
    for (const Json::Member& member : step.members())
        if (member.first != "event" && std::find(kSaid.begin(), kSaid.end(), member.first) == kSaid.end())
            whole.set(member.first, member.second);
    for (const std::string_view key : kSaid) {
        if (step.has(key) || event.has(key))
            whole.set(std::string(key), step.has(key) ? step[key] : event[key]);
        else if (key == "doubtful" && whole.has("verdict"))
            whole.set(std::string(key), false);
    }
    return whole;
}

/// The step without what its event says; as it is where that would not give it again.
Json toldBy(const Json& step, std::uint64_t n, const Json::Array& events)
{
    if (n == 0 || n > events.size()) return step;
    const Json& event = events[n - 1];
    Json told = Json::object();
    for (const auto& [key, value] : step.members()) {
        const bool said = std::find(kSaid.begin(), kSaid.end(), key) != kSaid.end();
        if (said && event.has(key) && event[key] == value) continue;
        if (key == "doubtful" && !event.has(key) && value == Json(false)) continue;
        told.set(key, value);
    }
    told.set("event", n);
    return withEvent(told, event) == step ? told : step;
}

struct Ending {
    const char* state = "open";
    const char* verdict = "incomplete";
    std::string remarks, reason;
};
Ending endingOf(const run::Run& run)
{
    const run::Happening& last = run.events().back().happening();
    if (const auto* completed = std::get_if<run::Completed>(&last))
        return {"completed", run.deviations() > 0 ? "with_deviations" : "clean", completed->remarks, {}};
    if (const auto* abandoned = std::get_if<run::Abandoned>(&last))
        return {"abandoned", "incomplete", {}, abandoned->reason};
    return {};
}

}  // namespace

Document documentOf(const run::Run& run)
{
    const run::Began& began = run.began();
    const run::Stamp& first = run.events().front().stamp();
    const Ending ending = endingOf(run);
    const Json language = languageOf(run.sources());

    People people;
    for (const run::Event& event : run.events()) people.addFrom(event);
    Json inputs = inputsOf(run.sources());
    Told told = seal::told(run, people.list(), inputs);
    Json steps = Json::array();
    Json deviations = Json::array();
    for (const procedure::Step& step : run.plan().steps) {
        const run::StepStanding standing = run.standing(step.id);
        steps.add(toldBy(stepJson(step, standing), standing.n, told.events.items()));
        if (standing.state == run::StepState::Deviated && standing.deviation)
            deviations.add(run::deviationJson(*standing.deviation).set("signature", standing.deviation->signature));
    }

    Document document{Kind::Run, Json::object()};
    Json& body = document.body;
    body.set("format", 1).set("kind", kindWord(document.kind)).set("id", run.id());
    body.set("run_kind", began.kind).set("parent", began.parent.empty() ? Json() : Json(began.parent));
    body.set("workplace", began.workplace).set("practice", began.practice);
    body.set("program", "tautweb " TAUTWEB_VERSION).set("language", language);
    body.set("units", began.units == UnitSystem::Us ? "us" : "metric").set("begun", utcText(first.utcMs));
    if (ending.state != std::string_view("open")) body.set("ended", utcText(run.events().back().stamp().utcMs));
    body.set("offset", offsetText(first.offsetMinutes)).set("state", ending.state).set("verdict", ending.verdict);
    body.set("inputs", std::move(inputs));
    const run::Source& words = run.sources().translation;
    body.set("procedure", named(run.sources().procedure)
                              .set("language", language)
                              .set("language_sha256", words.id.empty() ? Json() : Json(words.sha256)));
    body.set("operator", run.operatorId()).set("people", people.list());
    body.set("target_sets", std::move(told.targetSets)).set("plans", std::move(told.plans));
    body.set("events", std::move(told.events));
    body.set("steps", std::move(steps)).set("deviations", std::move(deviations)).set("remarks", ending.remarks);
    if (!ending.reason.empty()) body.set("reason", ending.reason);
    return document;
}

Json::Array stepsOf(const Json& body)
{
    const Json::Array& events = body["events"].items();
    Json::Array steps = body["steps"].items();
    for (Json& step : steps) {
        const auto n = static_cast<std::size_t>(step["event"].integer());
        if (step["event"].isWhole() && n > 0 && n <= events.size()) step = withEvent(step, events[n - 1]);
    }
    return steps;
}

}  // namespace taut::seal
