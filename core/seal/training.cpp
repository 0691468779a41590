// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/training.h"

#include "core/run/parts.h"

namespace taut::seal {

SealedAttempt sealedAttempt(const Seal& seal, const Document& document)
{
    const Json& body = document.body;
    return {body["id"].text(), hex(seal.link), body["person"]["id"].text(), body["person"]["name"].text(),
            body["score"]["result"].text() == "passed"};
}

std::optional<Finding> whyNot(const SealedAttempt& attempt, const Observation& observation,
                              const people::PersonRecord& by)
{
    if (by.id.value == attempt.personId)
        return refuse("training.own", attempt.id, {"%1 cannot sign for an attempt of their own.", {by.name}},
                      "Have another trainer look at it.");
    if (!people::may(by.role, people::Act::Observe))
        return refuse(
            "training.no_trainer", attempt.id,
            {"%1 is enrolled as %2, which does not allow this.", {by.name, std::string(people::roleWord(by.role))}},
            "Have a trainer or a supervisor look at it.");
    if (!run::saysSomething(observation.note))
        return refuse("gate.no_reason", attempt.id, "It was not said what was seen.", "Say it in a few words.");
    if (!attempt.passed && !run::saysSomething(observation.followUp))
        return refuse("gate.no_reason", attempt.id,
                      "This attempt was not passed, and it was not said what is taught again.",
                      "Say what the trainer shows again, and how.");
    return std::nullopt;
}

Document observationOf(const Observation& observation, const SealedAttempt& attempt, const people::PersonRecord& by,
                       Instant at)
{
    Document document{Kind::Observation, Json::object()};
    document.body.set("format", 1)
        .set("kind", kindWord(document.kind))
        .set("id", attempt.id)
        .set("subject", attempt.subject)
        .set("practice", true)
        .set("person", Json::object().set("id", attempt.personId).set("name", attempt.personName))
        .set("note", run::trimmed(observation.note))
        .set("follow_up", run::trimmed(observation.followUp))
        .set("by", Json::object()
                       .set("id", by.id.value)
                       .set("name", by.name)
                       .set("role", people::roleWord(by.role))
                       .set("key", by.key ? Json(hex(*by.key)) : Json()))
        .set("at", utcText(at.utcMs))
        .set("offset", offsetText(at.offsetMinutes));
    return document;
}

Result<Observation> observationIn(const Document& document)
{
    const Json& body = document.body;
    const bool others = body.has("sealed_by") && body["by"]["id"] != body["sealed_by"]["id"];
    if (document.kind != Kind::Observation || !body["note"].isString() || others)
        return refuse("document.broken", "document", "This document is no observation of an attempt.",
                      "Restore the practice logbook from a copy; a document is never written like this.");
    return Observation{body["note"].text(), body["follow_up"].text()};
}

}  // namespace taut::seal
