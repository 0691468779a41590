// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/competence.h"

#include <algorithm>
#include <set>

#include "core/run/parts.h"

namespace taut::seal {

namespace {

constexpr double kDay = 86400;

Finding roleGate(const Competence& competence, const people::PersonRecord& by)
{
    return refuse(
        "gate.role", competence.press,
        {"%1 is enrolled as %2, which does not allow this.", {by.name, std::string(people::roleWord(by.role))}},
        "Have a supervisor do it.");
}

bool isSha256(const std::string& digits) { return publicKeyFrom(digits).has_value(); }  // written as a key is

Json devices(const std::vector<inputs::Device>& all)
{
    Json list = Json::array();
    for (const inputs::Device& one : all)
        list.add(Json::object().set("id", one.id).set("name", one.name).set("by", one.by).set("place", one.place));
    return list;
}
Json sourced(const inputs::Sourced& said) { return said.value ? Json(said.value->si()) : Json(); }
template <class Entry>
Json amount(const Entry& entry)
{
    return entry ? Json(entry->si()) : Json();
}

Finding none(const char* code, const std::string& press, Text text)
{
    return refuse(code, press, std::move(text),
                  "A supervisor says so anew when it was shown again, or signs beside them until then.");
}

}  // namespace

std::string safetyStamp(const inputs::Press& press)
{
    Json all = Json::object();
    all.set("guards", devices(press.guards))
        .set("emergency_stops", devices(press.emergencyStops))
        .set("trip_bars", press.tripBars)
        .set("wakes_stopped", press.wakesStopped)
        .set("air", press.hasAir)
        .set("crawl", sourced(press.crawl))
        .set("inch", sourced(press.inch))
        .set("largest", sourced(press.largest))
        .set("stop_time", sourced(press.stopTime))
        .set("emergency_stop_time", sourced(press.emergencyStopTime));
    if (const auto& unwind = press.unwind) {
        all.set("mandrel", unwind->mandrel.kind).set("support", unwind->mandrel.support);
        all.set("heaviest", amount(unwind->largestMass));
        if (unwind->lift) all.set("lift", unwind->lift->kind).set("rated", amount(unwind->lift->rated));
    }
    Json holds = Json::array();
    for (const inputs::Place& place : press.places) holds.add(place.id + '=' + place.holdStop);
    all.set("holds", std::move(holds));
    return hex(sha256(all.dump()));
}

Document competenceOf(const Competence& competence, const people::PersonRecord& by, Instant at)
{
    Document document{Kind::Competence, Json::object()};
    Json observed = Json::array();
    for (const ObservedRun& one : competence.observed)
        observed.add(Json::object().set("run", one.run).set("link", one.link));
    Json& body = document.body;
    body.set("format", 1)
        .set("kind", kindWord(document.kind))
        .set("id", competence.press)
        .set("subject", competence.personId)
        .set("what", competence.granted ? "granted" : "ended")
        .set("person", Json::object().set("id", competence.personId).set("name", competence.personName));
    if (competence.granted)
        body.set("press", Json::object()
                              .set("id", competence.press)
                              .set("edition", competence.pressEdition)
                              .set("sha256", competence.pressSha256)
                              .set("safety", competence.safety))
            .set("training_record", competence.trainingRecord)
            .set("observed", std::move(observed))
            .set("valid_until", utcText(competence.validUntilMs));
    else
        body.set("reason", run::trimmed(competence.reason));
    body.set("by", Json::object().set("id", by.id.value).set("name", by.name).set("role", people::roleWord(by.role)))
        .set("at", utcText(at.utcMs))
        .set("offset", offsetText(at.offsetMinutes));
    return document;
}

Result<Competence> competenceIn(const Document& document)
{
    const Json& body = document.body;
    const std::string what = body["what"].text();
    const auto until = readUtc(body["valid_until"].text());
    const bool granted = what == "granted";
    const bool others = body.has("sealed_by") && body["by"]["id"] != body["sealed_by"]["id"];
    const bool another = body["person"]["id"] != body["subject"];
    if (document.kind != Kind::Competence || (!granted && what != "ended") || (granted && !until) || others || another)
        return refuse("document.broken", "document", "This document is no competence at a press.",
                      "Restore the logbook from a backup; a document is never written like this.");
    Competence competence;
    competence.granted = granted;
    competence.personId = body["subject"].text();
    competence.personName = body["person"]["name"].text();
    competence.press = body["id"].text();
    competence.pressEdition = static_cast<int>(body["press"]["edition"].integer());
    competence.pressSha256 = body["press"]["sha256"].text();
    competence.safety = body["press"]["safety"].text();
    competence.trainingRecord = body["training_record"].text();
    for (const Json& one : body["observed"].items())
        competence.observed.push_back({one["run"].text(), one["link"].text()});
    competence.validUntilMs = until ? *until : 0;
    competence.reason = body["reason"].text();
    return competence;
}

std::optional<Finding> whyNot(const Competence& competence, const people::PersonRecord& by, std::int64_t nowMs)
{
    if (!by.active || !people::may(by.role, people::Act::Qualify)) return roleGate(competence, by);
    if (by.id.value == competence.personId)
        return refuse("competence.own", competence.press, {"%1 cannot say this of themselves.", {by.name}},
                      "Have another supervisor look at it.");
    if (!competence.granted) {
        if (run::saysSomething(competence.reason)) return std::nullopt;
        return refuse("gate.no_reason", competence.press, "It was not said why this competence ends.",
                      "Say it in a few words.");
    }
    if (!isSha256(competence.trainingRecord))
        return refuse("competence.record", competence.press,
                      "The training record is not named by its SHA-256, 64 digits in hexadecimal.",
                      "Copy it from the printed record, or from tautweb practice --record.");
    std::set<std::string> named;
    for (const ObservedRun& one : competence.observed)
        if (!named.insert(one.run).second)
            return refuse("competence.twice", one.run, {"Run %1 is named twice.", {one.run}},
                          "Name every observed set-up once.");
    if (competence.validUntilMs <= nowMs)
        return refuse("competence.date", competence.press, "This competence would be over before it begins.",
                      "Choose a day to come.");
    return std::nullopt;
}

std::optional<Finding> notCompetent(const std::optional<Competence>& newest, std::int64_t grantedMs,
                                    const std::string& name, const std::string& press, const CompetenceNow& now)
{
    if (!newest)
        return none("competence.none", press,
                    {"Nobody has said that %1 may sign alone at the press %2.", {name, press}});
    if (!newest->granted)
        return none("competence.ended", press,
                    {"The competence of %1 at the press %2 was ended: %3", {name, press, newest->reason}});
    if (now.nowMs >= newest->validUntilMs)
        return none("competence.over", press,
                    {"The competence of %1 at the press %2 ended on %3.",
                     {name, press, utcText(newest->validUntilMs).substr(0, 10)}});
    if (now.safety != newest->safety)
        return none("competence.changed", press,
                    {"What protects people at the press %2 was changed since %1 was shown to be competent there.",
                     {name, press}});
    const std::int64_t last = std::max(grantedMs, now.lastMs.value_or(grantedMs));
    const double away = static_cast<double>(now.nowMs - last) / 1000;
    if (away > now.awayMost)
        return none(
            "competence.away", press,
            {"%1 has not set up the press %2 for %3 days.", {name, press, static_cast<std::int64_t>(away / kDay)}});
    return std::nullopt;
}

}  // namespace taut::seal
