// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/attempt.h"

#include "core/units/plain.h"

namespace taut::practice {

namespace {

run::Sources withoutTexts(run::Sources sources)
{
    for (run::Source* source : {&sources.press, &sources.job, &sources.substrate, &sources.procedure})
        source->text = {};
    sources.translation = {};
    return sources;
}

Json whoJson(const Who& who) { return Json::object().set("id", who.id).set("name", who.name); }
Json named(const run::Source& source)
{
    return Json::object().set("id", source.id).set("edition", source.edition).set("sha256", source.sha256);
}
run::Source namedFrom(const Json& json)
{
    return {json["id"].text(), static_cast<int>(json["edition"].integer()), json["sha256"].text(), {}};
}

Json quantityJson(const Quantity& q)
{
    return Json::object()
        .set("value", q.si())
        .set("kind", kindWord(q.kind()))
        .set("unit", q.unit().str())
        .set("entered", q.entered().str());
}
std::optional<Quantity> quantityFrom(const Json& json)
{
    Kind kind{};
    if (!json["value"].isNumber() || !kindFromWord(json["kind"].text(), kind)) return std::nullopt;
    return Quantity(json["value"].number(), kind, json["unit"].text(), json["entered"].text());
}

Json actionJson(const Logged& one)
{
    Json json = Json::object().set("at", one.at);
    if (const auto* deed = std::get_if<Deed>(&one.act)) {
        json.set("do", deed->what).set("item", deed->item).set("on", deed->on);
        if (deed->to) json.set("to", quantityJson(*deed->to));
    } else if (const auto* answer = std::get_if<Answer>(&one.act)) {
        json.set("do", "answer").set("step", answer->step).set("entered", answer->entered);
    } else if (const auto* suspect = std::get_if<Suspect>(&one.act)) {
        json.set("do", "found").set("what", suspect->what).set("item", suspect->item);
    } else if (const auto* hint = std::get_if<Hint>(&one.act)) {
        json.set("do", "hint").set("step", hint->step);
    }
    if (one.refused)
        json.set("refused", Json::object()
                                .set("code", one.refused->code)
                                .set("subject", one.refused->subject)
                                .set("text", textJson(one.refused->text))
                                .set("remedy", textJson(one.refused->remedy)));
    return json;
}
Logged actionFrom(const Json& json)
{
    Logged one{json["at"].number(), {}, {}};
    const std::string what = json["do"].text();
    if (what == "answer")
        one.act = Answer{json["step"].text(), json["entered"].text()};
    else if (what == "found")
        one.act = Suspect{json["what"].text(), json["item"].text()};
    else if (what == "hint")
        one.act = Hint{json["step"].text()};
    else
        one.act = Deed{what, json["item"].text(), quantityFrom(json["to"]), json["on"].boolean()};
    if (const Json& refused = json["refused"]; refused.isObject())
        one.refused = refuse(refused["code"].text(), refused["subject"].text(), textFrom(refused["text"]),
                             textFrom(refused["remedy"]));
    return one;
}

Json contradictionJson(const Contradiction& one)
{
    return Json::object().set("at", one.at).set("step", one.step).set("item", one.item).set("text", textJson(one.text));
}
Contradiction contradictionFrom(const Json& json)
{
    return {json["at"].number(), json["step"].text(), json["item"].text(), textFrom(json["text"])};
}

Json consequenceJson(const Consequence& one)
{
    Json causes = Json::array();
    for (const Cause& cause : one.causes)
        causes.add(Json::object()
                       .set("target", cause.target)
                       .set("condition", cause.condition)
                       .set("text", textJson(cause.text)));
    return Json::object()
        .set("at", one.at)
        .set("code", one.code)
        .set("where", one.where)
        .set("text", textJson(one.text))
        .set("cause", std::move(causes));
}
Consequence consequenceFrom(const Json& json)
{
    Consequence one{json["at"].number(), json["code"].text(), json["where"].text(), textFrom(json["text"]), {}};
    for (const Json& cause : json["cause"].items())
        one.causes.push_back({cause["target"].text(), cause["condition"].text(), textFrom(cause["text"])});
    return one;
}

Json faultJson(const Fault& fault)
{
    return Json::object().set("what", fault.what).set("item", fault.item).set("amount", fault.amount);
}
Fault faultFrom(const Json& json) { return {json["what"].text(), json["item"].text(), json["amount"].number()}; }

template <class List, class Write>
Json listed(const List& list, Write write)
{
    Json all = Json::array();
    for (const auto& one : list) all.add(write(one));
    return all;
}
template <class Read>
auto readAll(const Json& list, Read read)
{
    std::vector<decltype(read(list))> all;
    for (const Json& one : list.items()) all.push_back(read(one));
    return all;
}

std::size_t sizeFrom(const Json& json) { return static_cast<std::size_t>(std::max<std::int64_t>(0, json.integer())); }

Finding broken()
{
    return refuse("document.broken", "document", "This document is no attempt at the practice press.",
                  "Restore the practice logbook from a copy; a document is never written like this.");
}

}  // namespace

Attempt attemptOf(const Lesson& lesson, run::Source scenario, Who who, std::string id, Instant begun, Instant ended)
{
    Attempt attempt;
    attempt.id = std::move(id);
    attempt.who = std::move(who);
    attempt.scenario = std::move(scenario);
    attempt.sources = withoutTexts(lesson.basis().sources);
    attempt.seed = lesson.scenario().seed;
    attempt.mode = lesson.scenario().mode;
    attempt.atOnce = showsAtOnce(lesson.scenario());
    attempt.faults = lesson.faults();
    attempt.begun = begun;
    attempt.ended = ended;
    attempt.simulated = lesson.world().time();
    attempt.log = lesson.log();
    attempt.contradictions = lesson.contradictions();
    attempt.consequences = lesson.world().consequences();
    attempt.score = lesson.score();
    attempt.detection = lesson.detection();
    attempt.traceSha256 = lesson.trace().sha256();
    return attempt;
}

Json scoreJson(const Score& score, const Detection& detection)
{
    return Json::object()
        .set("earned", score.earned)
        .set("total", score.total)
        .set("vital_missed", listed(score.vitalMissed, [](const std::string& step) { return Json(step); }))
        .set("hints", score.hints)
        .set("order_errors", score.orderErrors)
        .set("hits", static_cast<std::int64_t>(detection.hits))
        .set("misses", static_cast<std::int64_t>(detection.misses))
        .set("false_alarms", static_cast<std::int64_t>(detection.falseAlarms))
        .set("healthy", static_cast<std::int64_t>(detection.healthy))
        .set("result", resultWord(score));
}

seal::Document attemptDocument(const Attempt& attempt)
{
    seal::Document document{seal::Kind::Attempt, Json::object()};
    const run::Sources& sources = attempt.sources;
    Json inputs = Json::object();
    inputs.set("press", named(sources.press))
        .set("job", named(sources.job))
        .set("substrate", named(sources.substrate))
        .set("roll", Json::object().set("id", sources.roll.id).set("text", sources.roll.text));
    document.body.set("format", 1)
        .set("kind", seal::kindWord(document.kind))
        .set("id", attempt.id)
        .set("subject", attempt.who.id)
        .set("practice", true)
        .set("person", whoJson(attempt.who))
        .set("scenario", Json::object()
                             .set("id", attempt.scenario.id)
                             .set("sha256", attempt.scenario.sha256)
                             .set("text", attempt.scenario.text))
        .set("seed", attempt.seed)
        .set("mode", modeWord(attempt.mode))
        .set("contradictions_shown", attempt.atOnce ? "at_once" : "afterwards")
        .set("faults", listed(attempt.faults, faultJson))
        .set("inputs", std::move(inputs))
        .set("procedure", named(sources.procedure))
        .set("begun", utcText(attempt.begun.utcMs))
        .set("ended", utcText(attempt.ended.utcMs))
        .set("offset", offsetText(attempt.begun.offsetMinutes))
        .set("simulated", attempt.simulated)
        .set("actions", listed(attempt.log, actionJson))
        .set("contradictions", listed(attempt.contradictions, contradictionJson))
        .set("consequences", listed(attempt.consequences, consequenceJson))
        .set("score", scoreJson(attempt.score, attempt.detection))
        .set("trace_sha256", attempt.traceSha256);
    return document;
}

Result<Attempt> attemptFrom(const seal::Document& document)
{
    const Json& body = document.body;
    const auto mode = modeFrom(body["mode"].text());
    const auto begun = readUtc(body["begun"].text()), ended = readUtc(body["ended"].text());
    const auto offset = readOffset(body["offset"].text());
    if (document.kind != seal::Kind::Attempt || !mode || !begun || !ended || !offset) return broken();
    Attempt attempt;
    attempt.id = body["id"].text();
    attempt.who = {body["person"]["id"].text(), body["person"]["name"].text()};
    const Json& scenario = body["scenario"];
    attempt.scenario = {scenario["id"].text(), 0, scenario["sha256"].text(), scenario["text"].text()};
    const Json& inputs = body["inputs"];
    attempt.sources.press = namedFrom(inputs["press"]);
    attempt.sources.job = namedFrom(inputs["job"]);
    attempt.sources.substrate = namedFrom(inputs["substrate"]);
    attempt.sources.roll = run::sourceOf(inputs["roll"]["id"].text(), 0, inputs["roll"]["text"].text());
    attempt.sources.procedure = namedFrom(body["procedure"]);
    attempt.seed = static_cast<std::uint64_t>(body["seed"].integer());
    attempt.mode = *mode;
    attempt.atOnce = body["contradictions_shown"].text() == "at_once";
    attempt.faults = readAll(body["faults"], faultFrom);
    attempt.begun = {*begun, *offset};
    attempt.ended = {*ended, *offset};
    attempt.simulated = body["simulated"].number();
    attempt.log = readAll(body["actions"], actionFrom);
    attempt.contradictions = readAll(body["contradictions"], contradictionFrom);
    attempt.consequences = readAll(body["consequences"], consequenceFrom);
    const Json& score = body["score"];
    attempt.score = {score["earned"].number(), score["total"].number(),
                     readAll(score["vital_missed"], [](const Json& step) { return step.text(); }),
                     static_cast<int>(score["hints"].integer()), static_cast<int>(score["order_errors"].integer())};
    attempt.detection = {sizeFrom(score["hits"]), sizeFrom(score["misses"]), sizeFrom(score["false_alarms"]),
                         sizeFrom(score["healthy"])};
    attempt.traceSha256 = body["trace_sha256"].text();
    // Whatever else stands there, is left out or is of another sort shows when it is written again. What sealing adds
    // is the chain's affair; numbers are compared as they are written.
    Json own = Json::object();
    for (const auto& [key, value] : body.members())
        if (!key.starts_with("sealed_")) own.set(key, value);
    if (own.dump() != attemptDocument(attempt).body.dump()) return broken();
    if (hex(sha256(attempt.scenario.text)) != attempt.scenario.sha256) return broken();
    return attempt;
}

}  // namespace taut::practice
