// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/people/person.h"
#include "core/seal/after.h"
#include "core/seal/competence.h"
#include "core/seal/seal.h"
#include "core/seal/training.h"

namespace taut::seal {

/// A signature of a seal: Ed25519 (RFC 8032) over `tautweb-seal-1` 00 ‖ link. Meaning and time are the document's own,
/// so that nothing beside it has to be trusted.
struct SealSignature {
    std::string person;
    PublicKey key{};
    std::string meaning;
    std::int64_t signedAtMs{};
    Signature signature{};
};
inline constexpr std::string_view kSealPurpose = "tautweb-seal-1";

/// What somebody says by signing this document: "performed", "abandoned", "reviewed", "corrected", "voided",
/// "enrolled", "qualified", "disqualified", "observed".
/// "" = such a document is not signed.
[[nodiscard]] const char* meaningOf(const Document& document);
/// Of a run that ended in this state.
[[nodiscard]] const char* meaningOfRun(std::string_view state);
[[nodiscard]] SealSignature signSeal(const Seal& seal, const char* meaning, const people::Signer& signer);

/// Follows a chain and says whose signature a seal wants and whether it has it. Keys and roles are those that the chain
/// itself stated before. Codes, subject "seal 17": signature.missing, .broken (not over this link by this key), .key
/// (not the key that stands for this person), .altered (person, meaning or time are not the document's), .role (their
/// role does not allow it, or it is their own run). Of what follows a run also: chain.subject (it is about no run's
/// seal that stood then, or names another run), chain.order (it may not follow what came before: the run was void, or
/// reviewed already), document.broken (it says too little); chain.twice: a run that was sealed already. A competence
/// and an observation are held against their own rules (competence.h, training.h) with the same codes.
class SignatureCheck {
public:
    [[nodiscard]] Findings next(const Seal& seal, const Document& document, std::span<const SealSignature> signatures);

private:
    struct Known {
        std::string name;
        std::optional<PublicKey> key;   ///< that stands
        std::vector<PublicKey> before;  ///< all they have had
        people::Role role{};
        bool active = true;
    };
    [[nodiscard]] std::optional<PublicKey> keyFor(const Seal& seal, const Document& document) const;
    [[nodiscard]] std::optional<Finding> roleGap(const Seal& seal, const Document& document) const;
    [[nodiscard]] std::optional<Finding> sequelGap(const Seal& seal, const Document& document) const;
    [[nodiscard]] std::optional<Finding> competenceGap(const Seal& seal, const Document& document) const;
    [[nodiscard]] std::optional<Finding> observationGap(const Seal& seal, const Document& document) const;
    [[nodiscard]] std::optional<people::PersonRecord> signerOf(const Seal& seal) const;
    [[nodiscard]] static Finding notToBeGiven(const Seal& seal, const Finding& why);
    [[nodiscard]] Findings deviations(const Seal& seal, const Document& document) const;
    void learn(const Seal& seal, const Document& document);
    std::map<std::string, Known> m_people;
    std::map<std::string, SealedRun> m_runs;          ///< by link, as later documents name them
    std::set<std::string> m_sealed;                   ///< ids of runs
    std::map<std::string, SealedAttempt> m_attempts;  ///< by link
};

}  // namespace taut::seal
