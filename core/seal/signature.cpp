// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/signature.h"

#include <algorithm>

#include "core/run/deviation.h"

namespace taut::seal {

namespace {

Finding about(const Seal& seal, const char* code, const char* english)
{
    return refuse(
        code, "seal " + std::to_string(seal.seq), Text(english, {static_cast<std::int64_t>(seal.seq)}),
        "Do not trust this record. Compare it with the printed sheets and restore the logbook from a backup.");
}

/// A document that says too little for what it is.
Finding unread(const Seal& seal, Finding broken)
{
    broken.subject = "seal " + std::to_string(seal.seq);
    return broken;
}

bool mustBeSigned(const Document& document) { return *meaningOf(document) != '\0'; }

bool isSequel(const Document& document)
{
    return document.kind == Kind::Review || document.kind == Kind::Correction || document.kind == Kind::Void;
}

/// A person's document by which they put a key of their own.
bool isOwnKey(const Document& document) { return document.body["change"].text() == "key"; }

/// The other thing that people change of themselves: that they have another PIN, with the key that they had.
bool isOwnPin(const Document& document) { return document.body["change"].text() == "pin"; }

std::optional<PublicKey> keyIn(const Document& document) { return publicKeyFrom(document.body["key"].text()); }

/// Between the accepting and the sealing of the run the key may have become another.
bool holdsByAny(const std::vector<PublicKey>& keys, std::string_view text, const Signature& signature)
{
    return std::any_of(keys.begin(), keys.end(), [&](const PublicKey& key) {
        return signatureHolds(key, run::kDeviationPurpose, bytesOf(text), signature);
    });
}

}  // namespace

const char* meaningOfRun(std::string_view state) { return state == "abandoned" ? "abandoned" : "performed"; }

const char* meaningOf(const Document& document)
{
    switch (document.kind) {
    case Kind::Run: return meaningOfRun(document.body["state"].text());
    case Kind::Review: return "reviewed";
    case Kind::Correction: return "corrected";
    case Kind::Void: return "voided";
    case Kind::Person: return "enrolled";
    case Kind::Competence: return document.body["what"].text() == "ended" ? "disqualified" : "qualified";
    case Kind::Observation: return "observed";
    case Kind::Definition:
    case Kind::Withdrawal:
    case Kind::Attempt: return "";
    }
    return "";
}

SealSignature signSeal(const Seal& seal, const char* meaning, const people::Signer& signer)
{
    return {signer.actor().id().value, signer.key(), meaning, seal.sealedAtMs, signer.sign(kSealPurpose, seal.link)};
}

/// The key that has to have signed: what the chain stated before. A person who puts a key of their own, and the first
/// person of all, show with it that they have it.
std::optional<PublicKey> SignatureCheck::keyFor(const Seal& seal, const Document& document) const
{
    const bool first = m_people.empty() && document.kind == Kind::Person;
    if (document.kind == Kind::Person && seal.person == seal.id && (first || isOwnKey(document))) {
        const auto known = m_people.find(seal.id);
        // With a key that stands, the new one is put by the old: else whoever came by the file could put theirs.
        if (known != m_people.end() && known->second.key) return known->second.key;
        return keyIn(document);
    }
    // A practice logbook enrols nobody: the key stands in what it signs.
    if (document.kind == Kind::Observation) return publicKeyFrom(document.body["by"]["key"].text());
    const auto known = m_people.find(seal.person);
    return known == m_people.end() ? std::nullopt : known->second.key;
}

std::optional<Finding> SignatureCheck::roleGap(const Seal& seal, const Document& document) const
{
    const auto gap = [&](const char* english) { return about(seal, "signature.role", english); };
    const auto known = m_people.find(seal.person);
    if (document.kind == Kind::Observation) return std::nullopt;  // observationGap looks at it
    if (document.kind == Kind::Person) {
        if (m_people.empty())
            return document.body["role"].text() == "supervisor"
                       ? std::nullopt
                       : std::optional(gap("Seal %1 enrols a first person who is no supervisor."));
        if (isOwnPin(document)) {
            const bool own = known != m_people.end() && known->second.active && seal.id == seal.person;
            return own && keyIn(document) == known->second.key && document.body["name"].text() == known->second.name &&
                           document.body["role"].text() == people::roleWord(known->second.role) &&
                           document.body["active"].boolean()
                       ? std::nullopt
                       : std::optional(gap("Seal %1 tells of another PIN, and changes more than its own person's."));
        }
        if (isOwnKey(document)) {
            const auto self = m_people.find(seal.id);
            const bool same =
                self != m_people.end() && document.body["role"].text() == people::roleWord(self->second.role);
            return seal.id == seal.person && same
                       ? std::nullopt
                       : std::optional(gap("Seal %1 puts a key that is not its own person's."));
        }
    }
    if (known == m_people.end() || !known->second.active)
        return gap("Seal %1 is signed by somebody who was not enrolled then.");
    const people::Role role = known->second.role;
    switch (document.kind) {
    case Kind::Run:
        return people::may(role, people::Act::SignOff)
                   ? std::nullopt
                   : std::optional(gap("Seal %1 is signed by somebody whose role does not allow it."));
    case Kind::Person:
        return people::may(role, people::Act::EditPeople)
                   ? std::nullopt
                   : std::optional(gap("Seal %1 is signed by somebody whose role does not allow it."));
    case Kind::Review:  // sequelGap looks at these, competenceGap and observationGap at theirs
    case Kind::Correction:
    case Kind::Void:
    case Kind::Competence:
    case Kind::Observation:
    case Kind::Definition:
    case Kind::Attempt:
    case Kind::Withdrawal: return std::nullopt;
    }
    return std::nullopt;
}

/// Who signed it, as the chain stated them before; nullopt: nobody whom it knew, which roleGap has said.
std::optional<people::PersonRecord> SignatureCheck::signerOf(const Seal& seal) const
{
    const auto known = m_people.find(seal.person);
    if (known == m_people.end()) return std::nullopt;
    people::PersonRecord by;
    by.id = {seal.person};
    by.name = known->second.name;
    by.role = known->second.role;
    return by;
}

Finding SignatureCheck::notToBeGiven(const Seal& seal, const Finding& why)
{
    // What keeps a person from it, and not what the chain holds by then.
    const bool person = why.code == "gate.role" || why.code == "gate.own_run" || why.code == "gate.own_correction" ||
                        why.code.ends_with(".own") || why.code == "training.no_trainer";
    Finding finding = about(seal, person ? "signature.role" : "chain.order", "");
    finding.text = {"Seal %1 was not to be given: %2",
                    {static_cast<std::int64_t>(seal.seq), std::vector<Text>{why.text}}};
    return finding;
}

/// Of a competence: who may say it, and that every run which it names was sealed then, at that press, and counts.
std::optional<Finding> SignatureCheck::competenceGap(const Seal& seal, const Document& document) const
{
    const auto competence = competenceIn(document);
    if (!competence) return unread(seal, competence.error());
    const auto by = signerOf(seal);
    if (!by) return std::nullopt;
    if (const auto why = whyNot(*competence, *by, seal.sealedAtMs)) return notToBeGiven(seal, *why);
    for (const ObservedRun& observed : competence->observed) {
        const auto run = m_runs.find(observed.link);
        if (run == m_runs.end() || run->second.id != observed.run)
            return about(seal, "chain.subject", "Seal %1 names a run that was not sealed then.");
        if (run->second.press != competence->press || run->second.state.present == Present::Void)
            return about(seal, "chain.subject", "Seal %1 names a run of another press, or one that was void.");
    }
    return std::nullopt;
}

/// Of an observation: that it is of an attempt which stood then, and of somebody else's.
std::optional<Finding> SignatureCheck::observationGap(const Seal& seal, const Document& document) const
{
    const auto attempt = m_attempts.find(seal.subject);
    if (attempt == m_attempts.end() || attempt->second.id != seal.id)
        return about(seal, "chain.subject", "Seal %1 is about an attempt that was not sealed then.");
    const auto observation = observationIn(document);
    if (!observation) return unread(seal, observation.error());
    people::PersonRecord by;
    by.id = {seal.person};
    by.name = document.body["by"]["name"].text();
    by.role = people::roleFrom(document.body["by"]["role"].text()).value_or(people::Role::Trainee);
    if (const auto why = whyNot(attempt->second, *observation, by)) return notToBeGiven(seal, *why);
    return std::nullopt;
}

/// Whether a review, a correction or a void could be written where it stands: by the rule that the writer asks too.
std::optional<Finding> SignatureCheck::sequelGap(const Seal& seal, const Document& document) const
{
    const auto run = m_runs.find(seal.subject);
    if (run == m_runs.end()) return about(seal, "chain.subject", "Seal %1 is about a run that was not sealed then.");
    if (run->second.id != seal.id)
        return about(seal, "chain.subject", "Seal %1 names one run and is about the seal of another.");
    const auto sequel = sequelIn(document);
    if (!sequel) return unread(seal, sequel.error());
    const auto by = signerOf(seal);
    if (!by) return std::nullopt;
    if (const auto why = whyNot(run->second, *sequel, *by)) return notToBeGiven(seal, *why);
    return std::nullopt;
}

Findings SignatureCheck::next(const Seal& seal, const Document& document, std::span<const SealSignature> signatures)
{
    Findings findings;
    if (signatures.empty() && mustBeSigned(document))
        findings.push_back(about(seal, "signature.missing", "Seal %1 carries no signature, and must carry one."));
    if (signatures.size() > 1)
        findings.push_back(
            about(seal, "signature.altered", "Seal %1 carries more signatures than its document tells of."));
    for (const SealSignature& one : signatures) {
        if (one.person != seal.person || one.meaning != meaningOf(document) || one.signedAtMs != seal.sealedAtMs)
            findings.push_back(about(seal, "signature.altered",
                                     "The signature of seal %1 says something else than its document about who signed, "
                                     "when or what for."));
        if (keyFor(seal, document) != one.key)
            findings.push_back(
                about(seal, "signature.key", "Seal %1 is signed with a key that was not this person's then."));
        if (!signatureHolds(one.key, kSealPurpose, seal.link, one.signature))
            findings.push_back(
                about(seal, "signature.broken", "The signature of seal %1 was not given for this document."));
    }
    if (mustBeSigned(document))
        if (auto gap = roleGap(seal, document)) findings.push_back(*std::move(gap));
    if (isSequel(document))
        if (auto gap = sequelGap(seal, document)) findings.push_back(*std::move(gap));
    if (document.kind == Kind::Competence)
        if (auto gap = competenceGap(seal, document)) findings.push_back(*std::move(gap));
    if (document.kind == Kind::Observation)
        if (auto gap = observationGap(seal, document)) findings.push_back(*std::move(gap));
    if (document.kind == Kind::Run && m_sealed.contains(document.body["id"].text()))
        findings.push_back(about(seal, "chain.twice", "Seal %1 seals a run that was sealed before."));
    if (document.kind == Kind::Run)
        for (Finding& finding : deviations(seal, document)) findings.push_back(std::move(finding));
    learn(seal, document);
    return findings;
}

/// Every deviation that was accepted under way carries its supervisor's signature over its own text.
Findings SignatureCheck::deviations(const Seal& seal, const Document& document) const
{
    Findings findings;
    for (const Json& event : document.body["events"].items()) {
        if (event["what"].text() != "deviated") continue;
        Json fields = event;
        fields.set("by", event["supervisor"]);
        const std::string text = run::deviationText(document.body["id"].text(), fields);
        const auto known = m_people.find(event["supervisor"].text());
        const auto signature = signatureFrom(event["signature"].text());
        if (known == m_people.end() || !people::may(known->second.role, people::Act::AcceptDeviation))
            findings.push_back(about(seal, "signature.role",
                                     "In seal %1 a value was accepted by somebody who was no supervisor then."));
        else if (!signature || !holdsByAny(known->second.before, text, *signature))
            findings.push_back(about(seal, "signature.broken",
                                     "In seal %1 a value outside its window was not accepted as it stands there."));
    }
    return findings;
}

void SignatureCheck::learn(const Seal& seal, const Document& document)
{
    const Json& body = document.body;
    if (document.kind == Kind::Person) {
        Known& known = m_people[body["id"].text()];
        known.name = body["name"].text();
        known.key = keyIn(document);
        if (known.key) known.before.push_back(*known.key);
        known.role = people::roleFrom(body["role"].text()).value_or(people::Role::Trainee);
        known.active = body["active"].boolean();
    }
    if (document.kind == Kind::Run) {
        m_runs[hex(seal.link)] = sealedRun(seal, document);
        m_sealed.insert(body["id"].text());
    }
    if (document.kind == Kind::Attempt) m_attempts[hex(seal.link)] = sealedAttempt(seal, document);
    if (const auto run = m_runs.find(seal.subject); run != m_runs.end() && isSequel(document))
        if (const auto sequel = sequelIn(document))
            run->second = after(std::move(run->second), *sequel, seal.person, body["sealed_by"]["name"].text());
}

}  // namespace taut::seal
