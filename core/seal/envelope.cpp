// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/envelope.h"

#include <algorithm>
#include <array>

#include "core/base/utf8.h"
#include "core/seal/after.h"
#include "core/seal/files.h"
#include "core/seal/words.h"

namespace taut::seal {

namespace {

constexpr std::size_t kMostSeals = 10'000;
constexpr int kFormat = 1, kFormatWithFiles = 2;

Json signatureJson(const SealSignature& signature)
{
    return Json::object()
        .set("person", signature.person)
        .set("key", hex(signature.key))
        .set("meaning", signature.meaning)
        .set("signed_at", utcText(signature.signedAtMs))
        .set("signature", hex(signature.signature));
}

Finding wrongKey(const std::string& where, const char* english)
{
    return refuse("export.key", where, Text(english, {where}),
                  "The file was changed or cut off after it was exported. Export the run once more.");
}

/// Reads one object of the file key by key and keeps the first thing that is wrong.
class Fields {
public:
    Fields(const Json& object, std::string where, bool strict, std::optional<Finding>& wrong)
        : m_object(object),
          m_where(std::move(where)),
          m_strict(strict),
          m_wrong(wrong)
    {
        if (!object.isObject()) say("", "%1 in the exported file is no object.");
    }
    ~Fields()
    {
        if (!m_strict) return;
        for (const Json::Member& member : m_object.members())
            if (std::find(m_known.begin(), m_known.end(), member.first) == m_known.end())
                say(cleanUtf8(member.first), "The exported file says %1, which no file of its format does.");
    }
    Fields(const Fields&) = delete;
    Fields& operator=(const Fields&) = delete;

    std::string text(const char* key)
    {
        const Json& value = get(key);
        if (!value.isString()) say(key, "%1 in the exported file is missing or no text.");
        return value.text();
    }
    std::uint64_t count(const char* key)
    {
        const Json& value = get(key);
        if (!value.isWhole() || value.integer() < 1) say(key, "%1 in the exported file is missing or no count.");
        return static_cast<std::uint64_t>(std::max<std::int64_t>(value.integer(), 0));
    }
    std::int64_t time(const char* key)
    {
        const auto ms = readUtc(text(key));
        if (!ms) say(key, "%1 in the exported file is missing or no time.");
        return ms ? *ms : 0;
    }
    const Json::Array& list(const char* key)
    {
        const Json& value = get(key);
        if (!value.isArray()) say(key, "%1 in the exported file is missing or no list.");
        return value.items();
    }
    template <class Read>
    auto hexOf(const char* key, const Read& read)
    {
        const auto bytes = read(text(key));
        if (!bytes) say(key, "%1 in the exported file is missing or not written as it should be.");
        return bytes ? *bytes : std::decay_t<decltype(*bytes)>{};
    }
    void skip(const char* key) { m_known.emplace_back(key); }

private:
    const Json& get(const char* key)
    {
        m_known.emplace_back(key);
        return m_object[key];
    }
    void say(const std::string& key, const char* english)
    {
        if (m_wrong) return;
        m_wrong = wrongKey(m_where.empty() ? key : key.empty() ? m_where : m_where + "." + key, english);
    }
    const Json& m_object;
    std::string m_where;
    bool m_strict;
    std::optional<Finding>& m_wrong;
    std::vector<std::string> m_known;
};

std::optional<Link> linkFrom(std::string_view digits) { return publicKeyFrom(digits); }

Envelope::Sealed sealedFrom(const Json& json, const std::string& where, bool strict, std::optional<Finding>& wrong)
{
    Envelope::Sealed sealed;
    Fields fields(json, where, strict, wrong);
    Seal& seal = sealed.seal;
    seal.seq = fields.count("seq");
    const std::string kind = fields.text("kind");
    seal.document = fields.text("document");
    seal.previous = fields.hexOf("previous_link", linkFrom);
    seal.link = fields.hexOf("link", linkFrom);
    const auto document = read(seal.document);
    if (document) {
        const Head head = headOf(*document);
        seal.kind = document->kind;
        seal.id = head.id;
        seal.subject = head.subject;
        seal.sealedAtMs = head.sealedAtMs;
        seal.person = head.person;
        if (kind != head.kind && !wrong)
            wrong = wrongKey(where + ".kind", "%1 in the exported file says another kind than its document.");
    }
    const Json::Array& signatures = fields.list("signatures");
    for (std::size_t i = 0; i < signatures.size(); ++i) {
        Fields one(signatures[i], where + ".signatures[" + std::to_string(i) + "]", strict, wrong);
        SealSignature signature;
        signature.person = one.text("person");
        signature.key = one.hexOf("key", publicKeyFrom);
        signature.meaning = one.text("meaning");
        signature.signedAtMs = one.time("signed_at");
        signature.signature = one.hexOf("signature", signatureFrom);
        sealed.signatures.push_back(std::move(signature));
    }
    return sealed;
}

void readFiles(const Json::Array& files, bool strict, Envelope& envelope, std::optional<Finding>& wrong)
{
    for (std::size_t i = 0; i < files.size() && !wrong; ++i) {
        Fields one(files[i], "attachments[" + std::to_string(i) + "]", strict, wrong);
        const std::string sha256 = one.text("sha256");
        envelope.files[sha256] = one.hexOf("content", fromBase64);
    }
}

void checkFiles(const Envelope& envelope, const Envelope::Sealed& own, Findings& findings)
{
    const auto run = read(own.seal.document);
    if (!run) return;
    for (const NamedFile& file : filesOf(*run)) {
        const auto found = envelope.files.find(file.sha256);
        if (found == envelope.files.end())
            findings.push_back(fileMissing(file, own.seal.seq));
        else if (hex(sha256(found->second)) != file.sha256)
            findings.push_back(fileChanged(file, own.seal.seq));
    }
}

Finding about(const Seal& seal, const char* code, const char* english)
{
    return refuse(code, "seal " + std::to_string(seal.seq), Text(english, {static_cast<std::int64_t>(seal.seq)}),
                  "Do not trust this file. Ask for the run to be exported once more, or look at the logbook itself.");
}

void checkPlace(const Seal& seal, const Seal* before, Findings& findings)
{
    const bool neighbour = before == nullptr ? seal.seq == 1 : seal.seq == before->seq + 1;
    if (before != nullptr && seal.seq <= before->seq)
        findings.push_back(about(seal, "export.order", "Seal %1 stands twice in the file or out of its order."));
    else if (neighbour && seal.previous != (before == nullptr ? Link{} : before->link))
        findings.push_back(about(seal, "chain.previous", "Seal %1 does not continue the seal before it."));
}

void checkText(const Seal& seal, const Document& document, Findings& findings)
{
    if (document.kind == Kind::Definition &&
        hex(sha256(document.body["text"].text())) != document.body["sha256"].text())
        findings.push_back(about(seal, "export.text", "The definition in seal %1 is not the text of its hash."));
}

/// Holds each correction against what the run said before it, as in a logbook.
void checkQuotations(const Envelope& envelope, const Envelope::Sealed& own, Findings& findings)
{
    const auto run = read(own.seal.document);
    if (!run) return;
    const std::string subject = hex(own.seal.link);
    const TextBySha texts = textsIn(envelope);
    std::vector<Sealing> before;
    for (const Envelope::Sealed& sealed : envelope.seals) {
        if (sealed.seal.subject != subject) continue;
        if (sealed.seal.kind == Kind::Correction)
            if (auto wrong = misquoted(sealed.seal, *run, before, texts)) findings.push_back(*std::move(wrong));
        if (auto sealing = sealingOf(sealed.seal)) before.push_back(*std::move(sealing));
    }
}

void checkAnchors(const Envelope& envelope, const std::vector<PartialAnchor>& anchors, EnvelopeCheck& check)
{
    for (const PartialAnchor& anchor : anchors) {
        const auto at = std::find_if(envelope.seals.begin(), envelope.seals.end(),
                                     [&](const Envelope::Sealed& one) { return one.seal.seq == anchor.count; });
        const std::int64_t count = static_cast<std::int64_t>(anchor.count);
        const bool isHere = at != envelope.seals.end();
        const bool holds = isHere && hex(at->seal.link).rfind(anchor.digits, 0) == 0;
        check.anchors.push_back({anchor, holds});
        if (holds) continue;
        if (isHere) {
            check.findings.push_back(
                refuse("anchor.differs", "seal " + std::to_string(anchor.count),
                       {"Seal %1 of this file is not the one that the sheet names.", {count}},
                       "Check the typed anchor once more; if it is right, do not trust this file."));
        } else {
            Finding notHere = refuse("anchor.not_here", "seal " + std::to_string(anchor.count),
                                     {"The sheet names seal %1, which is not in this file, so the two cannot be "
                                      "compared.",
                                      {count}},
                                     "Hold the sheet against the logbook itself.");
            notHere.severity = Severity::Warn;
            check.findings.push_back(std::move(notHere));
        }
    }
}

}  // namespace

Result<std::string> writeEnvelope(const Envelope& envelope, Instant at)
{
    Json seals = Json::array();
    for (const Envelope::Sealed& sealed : envelope.seals) {
        const Seal& seal = sealed.seal;
        if (firstBadUtf8(seal.document) != std::string_view::npos)
            return refuse("document.broken", "seal " + std::to_string(seal.seq),
                          {"The document of seal %1 is not UTF-8 text.", {static_cast<std::int64_t>(seal.seq)}},
                          "Verify the logbook and restore it from a copy.");
        Json signatures = Json::array();
        for (const SealSignature& signature : sealed.signatures) signatures.add(signatureJson(signature));
        seals.add(Json::object()
                      .set("seq", seal.seq)
                      .set("kind", kindWord(seal.kind))
                      .set("document", seal.document)
                      .set("previous_link", hex(seal.previous))
                      .set("link", hex(seal.link))
                      .set("signatures", std::move(signatures)));
    }
    Json files = Json::array();
    for (const auto& [sha256, bytes] : envelope.files)
        files.add(Json::object().set("sha256", sha256).set("content", base64(bytes)));
    Json json = Json::object();
    json.set("format", envelope.files.empty() ? kFormat : kFormatWithFiles)
        .set("kind", "export")
        .set("run", envelope.run)
        .set("program", "tautweb " TAUTWEB_VERSION)
        .set("exported_at", utcText(at.utcMs))
        .set("seals", std::move(seals));
    if (!envelope.files.empty()) json.set("attachments", std::move(files));
    return json.dump();
}

Result<Envelope> readEnvelope(std::string_view text)
{
    const auto notOne = [](const char* english) {
        return refuse("export.not_one", "file", english,
                      "Choose a file that tautweb export has written with --as json, without --bare.");
    };
    auto json = Json::parse(text);
    if (!json)
        return refuse("export.broken", "file", json.error().text,
                      "The file was changed or cut off after it was exported. Export the run once more.");
    if (!json->isObject() || !(*json)["format"].isWhole() || (*json)["kind"].text() != "export")
        return notOne("This is no exported run.");
    const std::int64_t format = (*json)["format"].integer();
    if (format < 1) return notOne("This exported run is of a format that was never written.");

    Envelope envelope;
    std::optional<Finding> wrong;
    {
        const bool strict = format <= kFormatWithFiles;
        Fields fields(*json, "", strict, wrong);
        for (const char* key : {"format", "kind"}) fields.skip(key);
        envelope.run = fields.text("run");
        (void)fields.text("program");
        (void)fields.time("exported_at");
        const Json::Array& seals = fields.list("seals");
        if (seals.size() > kMostSeals)
            return refuse(
                "export.too_many", "seals",
                {"The file holds %1 seals; one run never needs as many.", {static_cast<std::int64_t>(seals.size())}},
                "Check that it is the right file.");
        for (std::size_t i = 0; i < seals.size() && !wrong; ++i)
            envelope.seals.push_back(sealedFrom(seals[i], "seals[" + std::to_string(i) + "]", strict, wrong));
        // What a newer format says of them is read as far as it is what is known here.
        const bool later = format > kFormatWithFiles && (*json)["attachments"].isArray();
        if (format == kFormatWithFiles || later) readFiles(fields.list("attachments"), strict, envelope, wrong);
    }
    if (wrong) return *std::move(wrong);
    return envelope;
}

const Envelope::Sealed* runOf(const Envelope& envelope)
{
    const auto at = std::find_if(envelope.seals.begin(), envelope.seals.end(), [&](const Envelope::Sealed& one) {
        return one.seal.kind == Kind::Run && one.seal.id == envelope.run && read(one.seal.document);
    });
    return at == envelope.seals.end() ? nullptr : &*at;
}

TextBySha textsIn(const Envelope& envelope)
{
    return [&envelope](std::string_view what, const std::string& sha256Digits) {
        for (const Envelope::Sealed& sealed : envelope.seals) {
            if (sealed.seal.kind != Kind::Definition) continue;
            const auto document = read(sealed.seal.document);
            if (!document || document->body["what"].text() != what) continue;
            std::string text = document->body["text"].text();
            if (hex(sha256(text)) == sha256Digits) return text;
        }
        return std::string();
    };
}

EnvelopeCheck checkEnvelope(const Envelope& envelope, const std::vector<PartialAnchor>& anchors)
{
    EnvelopeCheck check;
    SignatureCheck signatures;
    WordsCheck words;
    const Seal* before = nullptr;
    for (const Envelope::Sealed& sealed : envelope.seals) {
        const Seal& seal = sealed.seal;
        checkPlace(seal, before, check.findings);
        before = &seal;
        if (linkAfter(seal.previous, seal.document) != seal.link) {
            check.findings.push_back(about(seal, "chain.broken",
                                           "Seal %1 is broken: its document and its link do not belong together, so "
                                           "one of them was changed after sealing."));
            continue;
        }
        const auto document = read(seal.document);
        if (!document) {
            check.findings.push_back(about(seal, "document.broken", "The document of seal %1 cannot be read."));
            continue;
        }
        checkText(seal, *document, check.findings);
        for (Finding& finding : signatures.next(seal, *document, sealed.signatures))
            check.findings.push_back(std::move(finding));
        if (auto missing = words.next(seal, *document)) check.findings.push_back(*std::move(missing));
    }
    if (const Envelope::Sealed* own = runOf(envelope)) {
        checkQuotations(envelope, *own, check.findings);
        checkFiles(envelope, *own, check.findings);
    } else {
        check.findings.push_back(refuse("export.no_run", envelope.run,
                                        {"The seal of run %1 is not in this file.", {envelope.run}},
                                        "Export the run once more."));
    }
    checkAnchors(envelope, anchors, check);
    return check;
}

}  // namespace taut::seal
