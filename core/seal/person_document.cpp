// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/document.h"

namespace taut::seal {

Document personOf(const people::PersonRecord& person, std::string_view change)
{
    Document document{Kind::Person, Json::object()};
    document.body.set("format", 1)
        .set("kind", kindWord(document.kind))
        .set("id", person.id.value)
        .set("change", change)
        .set("name", person.name)
        .set("role", people::roleWord(person.role))
        .set("active", person.active)
        .set("key", person.key ? Json(hex(*person.key)) : Json());
    return document;
}

Document withdrawalOf(std::string_view press, bool withdrawn, std::string_view reason, const people::Actor& by,
                      Instant at)
{
    Document document{Kind::Withdrawal, Json::object()};
    Json who = Json::object();
    who.set("id", by.id().value).set("name", by.name()).set("role", people::roleWord(by.role()));
    document.body.set("format", 1)
        .set("kind", kindWord(document.kind))
        .set("id", press)
        .set("press", press)
        .set("what", withdrawn ? "withdrawn" : "returned")
        .set("reason", reason)
        .set("by", std::move(who))
        .set("at", utcText(at.utcMs))
        .set("offset", offsetText(at.offsetMinutes));
    return document;
}

}  // namespace taut::seal
