// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/document.h"

#include <array>

#include "core/base/utf8.h"

namespace taut::seal {

namespace {

constexpr std::array<const char*, kAllKinds.size()> kWords{"run",        "review",     "correction", "void",
                                                           "definition", "person",     "competence", "withdrawal",
                                                           "attempt",    "observation"};

std::optional<Kind> kindFrom(std::string_view word)
{
    for (std::size_t i = 0; i < kWords.size(); ++i)
        if (kWords[i] == word) return static_cast<Kind>(i);
    return std::nullopt;
}

Result<Document> documentIn(std::string_view bytes, const JsonMask& wanted)
{
    auto json = Json::parse(bytes, wanted);
    if (!json && firstBadUtf8(bytes) != std::string_view::npos) return broken("The document is not UTF-8 text.");
    if (!json) return broken(json.error().text);
    if (!json->isObject() || !(*json)["format"].isWhole()) return broken("The document does not say its format.");
    const std::string word = (*json)["kind"].text();
    const auto kind = kindFrom(word);
    if (!kind) return broken({"The document is of an unknown kind: %1.", {word}});
    return Document{*kind, std::move(*json)};
}

/// What seal/chain.h, signature.h, words.h and after.h look at in a run.
const JsonMask& runGist()
{
    static const JsonMask kTold{"", {{"since", {}}}};
    static const JsonMask kEvents{"events",
                                  {{"what", {}},
                                   {"by", {}},
                                   {"to", {}},
                                   {"supervisor", {}},
                                   {"signature", {}},
                                   {"step", {}},
                                   {"entered", {}},
                                   {"unit", {}},
                                   {"value", {}},
                                   {"low", {}},
                                   {"high", {}},
                                   {"reason", {}},
                                   {"at", {}}}};
    static const JsonMask kGist{"",
                                {{"format", {}},
                                 {"kind", {}},
                                 {"id", {}},
                                 {"subject", {}},
                                 {"state", {}},
                                 {"operator", {}},
                                 {"sealed_at", {}},
                                 {"sealed_by", {}},
                                 {"inputs", {{"press", {{"id", {}}}}}},
                                 {"target_sets", kTold.members},
                                 {"plans", kTold.members},
                                 kEvents}};
    return kGist;
}

}  // namespace

Finding broken(Text text)
{
    return refuse("document.broken", "document", std::move(text),
                  "Restore the logbook from a backup; a document is never written like this.");
}

const char* kindWord(Kind kind) noexcept { return kWords[static_cast<std::size_t>(kind)]; }

Document definitionOf(std::string_view what, const run::Source& source)
{
    Document document{Kind::Definition, Json::object()};
    document.body.set("format", 1)
        .set("kind", kindWord(document.kind))
        .set("id", source.id)
        .set("what", what)
        .set("edition", source.edition)
        .set("sha256", source.sha256)
        .set("text", source.text);
    return document;
}

Document sealedBy(Document document, std::string_view personId, std::string_view name, Instant at)
{
    Json who = Json::object();
    who.set("id", personId).set("name", name);
    document.body.set("sealed_at", utcText(at.utcMs))
        .set("sealed_offset", offsetText(at.offsetMinutes))
        .set("sealed_by", std::move(who));
    return document;
}

std::string sealedBy(std::string written, std::string_view personId, std::string_view name, Instant at)
{
    const std::string added = write(sealedBy(Document{Kind::Run, Json::object()}, personId, name, at));
    written.back() = ',';
    written.append(added, 1);
    return written;
}

Head headOf(const Document& document)
{
    const Json& body = document.body;
    const auto at = readUtc(body["sealed_at"].text());
    return {kindWord(document.kind), body["id"].text(), body["subject"].text(), at ? *at : 0,
            body["sealed_by"]["id"].text()};
}

std::string write(const Document& document) { return document.body.dump(); }

Result<Document> read(std::string_view bytes) { return documentIn(bytes, {}); }

Result<Document> gistOf(std::string_view bytes, Kind kind)
{
    if (kind != Kind::Run) return read(bytes);
    auto gist = documentIn(bytes, runGist());
    if (gist && gist->kind != kind) return read(bytes);
    return gist;
}

}  // namespace taut::seal
