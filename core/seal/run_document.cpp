// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "core/base/toml.h"
#include "core/procedure/plan.h"
#include "core/run/decide.h"
#include "core/run/deviation.h"
#include "core/seal/document.h"
#include "core/targets/target_json.h"
#include "core/units/unit.h"

namespace taut::seal {

namespace {

constexpr std::array<std::string_view, 4> kInputs{"press", "job", "substrate", "roll"};
constexpr std::array<std::string_view, 3> kSetParts{"targets", "schedules", "findings"};

Finding broken(Text text)
{
    return refuse("document.broken", "document", std::move(text),
                  "Restore the logbook from a backup; a run's document is never written like this.");
}

/// The object without one of its members.
Json without(const Json& object, std::string_view key)
{
    Json rest = Json::object();
    for (const Json::Member& member : object.members())
        if (member.first != key) rest.set(member.first, member.second);
    return rest;
}

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

/// The language in which the procedure's file says its steps; null when the file is not at hand.
Json languageOf(const run::Source& procedure)
{
    const auto file = readToml(procedure.text, procedure.id);
    const Toml* table = file ? file->find("procedure") : nullptr;
    const Toml* language = table != nullptr ? table->find("language") : nullptr;
    return language != nullptr && language->text() != nullptr ? Json(*language->text()) : Json();
}

/// Values that events repeat, each kept once, in the order of first use.
class Pool {
public:
    std::int64_t indexOf(Json value)
    {
        const auto found = std::find(m_values.begin(), m_values.end(), value);
        if (found != m_values.end()) return found - m_values.begin();
        m_values.push_back(std::move(value));
        return static_cast<std::int64_t>(m_values.size()) - 1;
    }
    [[nodiscard]] Json list() const { return Json(m_values); }
    [[nodiscard]] std::size_t size() const { return m_values.size(); }

private:
    Json::Array m_values;
};

/// Target sets and plans stand beside the events, which name them by their place in the list; the texts of definitions
/// are left out.
Json eventsJson(const run::Run& run, Json& targetSets, Pool& plans)
{
    Json events = Json::array();
    for (const run::Event& event : run.events()) {
        const auto stored = Json::parse(event.json());
        if (!stored) continue;  // cannot be: an event's JSON was written by us
        Json json = Json::object();
        for (const Json::Member& member : stored->members()) {
            if (member.first == "targets") {
                Json set = Json::object();
                set.set("from", event.stamp().n);
                for (const std::string_view part : kSetParts) set.set(std::string(part), member.second[part]);
                json.set("target_set", static_cast<std::int64_t>(targetSets.items().size()));
                targetSets.add(std::move(set));
            } else if (member.first == "plan") {
                json.set("plan", plans.indexOf(member.second));
            } else if (member.first == "procedure") {
                json.set("procedure", without(member.second, "text"));
            } else if (member.first == "inputs") {
                Json inputs = Json::object();
                for (const Json::Member& input : member.second.members())
                    inputs.set(input.first, input.first == "roll" ? input.second : without(input.second, "text"));
                json.set("inputs", std::move(inputs));
            } else {
                json.set(member.first, member.second);
            }
        }
        events.add(std::move(json));
    }
    return events;
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

/// The object with an empty text where it has none: readers of events want one.
Json withText(const Json& source)
{
    Json json = source;
    if (!json.has("text")) json.set("text", "");
    return json;
}

const Json* itemAt(const Json& list, const Json& index)
{
    const auto i = static_cast<std::size_t>(index.integer(-1));
    return index.isWhole() && i < list.items().size() ? &list.items()[i] : nullptr;
}

/// One event as it was when it happened; nullopt when it names a target set or a plan that is not there.
std::optional<Json> asItHappened(const Json& body, const Json& event)
{
    Json json = Json::object();
    for (const Json::Member& member : event.members()) {
        if (member.first == "target_set") {
            const Json* set = itemAt(body["target_sets"], member.second);
            if (set == nullptr) return std::nullopt;
            json.set("targets", without(*set, "from"));
        } else if (member.first == "plan") {
            const Json* plan = itemAt(body["plans"], member.second);
            if (plan == nullptr) return std::nullopt;
            json.set("plan", *plan);
        } else if (member.first == "procedure") {
            json.set("procedure", withText(member.second));
        } else if (member.first == "inputs") {
            Json inputs = Json::object();
            for (const std::string_view input : kInputs) inputs.set(std::string(input), withText(member.second[input]));
            json.set("inputs", std::move(inputs));
        } else {
            json.set(member.first, member.second);
        }
    }
    return json;
}

}  // namespace

Document documentOf(const run::Run& run)
{
    const run::Began& began = run.began();
    const run::Stamp& first = run.events().front().stamp();
    const Ending ending = endingOf(run);
    const Json language = languageOf(run.sources().procedure);

    Json targetSets = Json::array();
    Pool plans;
    Json events = eventsJson(run, targetSets, plans);
    People people;
    for (const run::Event& event : run.events()) people.addFrom(event);
    Json steps = Json::array();
    Json deviations = Json::array();
    for (const procedure::Step& step : run.plan().steps) {
        const run::StepStanding standing = run.standing(step.id);
        steps.add(stepJson(step, standing));
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
    body.set("inputs", inputsOf(run.sources()));
    body.set("procedure", named(run.sources().procedure).set("language", language).set("language_sha256", Json()));
    body.set("operator", run.operatorId()).set("people", people.list());
    body.set("target_sets", std::move(targetSets)).set("plans", plans.list()).set("events", std::move(events));
    body.set("steps", std::move(steps)).set("deviations", std::move(deviations)).set("remarks", ending.remarks);
    if (!ending.reason.empty()) body.set("reason", ending.reason);
    return document;
}

Result<std::vector<run::Event>> eventsOf(const Document& document)
{
    if (document.kind != Kind::Run) return broken("This document is about something else than a run.");
    std::vector<run::Event> events;
    for (const Json& item : document.body["events"].items()) {
        const auto json = asItHappened(document.body, item);
        if (!json)
            return broken(
                {"Event %1 of the document names a target set or a plan that is not in it.", {item["n"].integer()}});
        auto event = run::eventFrom(json->dump());
        if (!event) return event.error();
        if (event->stamp().n != events.size() + 1)
            return broken({"Event %1 of the document stands out of its order.", {item["n"].integer()}});
        events.push_back(std::move(*event));
    }
    if (events.empty() || !std::holds_alternative<run::Began>(events.front().happening()))
        return broken("The document's first event is not the beginning of its run.");
    return events;
}

}  // namespace taut::seal
