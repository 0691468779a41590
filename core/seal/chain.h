// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/crypto.h"
#include "core/base/result.h"
#include "core/seal/signature.h"
#include "core/seal/words.h"

namespace taut::seal {

/// Count and last link: printed on every sheet, so that paper anchors the chain.
struct Anchor {
    std::uint64_t count{};
    Link link{};
    friend bool operator==(const Anchor&, const Anchor&) = default;
};
[[nodiscard]] std::string anchorText(const Anchor& anchor);      ///< "9:4f…" in full
[[nodiscard]] Result<Anchor> readAnchor(std::string_view text);  ///< the full 64 hex digits; code anchor.unreadable
/// "tautweb:run/RUN?n=COUNT&link=HEX": the sheet's QR code.
[[nodiscard]] std::string anchorUri(std::string_view run, const Anchor& anchor);
struct AnchorUri {
    std::string run;
    Anchor anchor;
};
[[nodiscard]] Result<AnchorUri> readAnchorUri(std::string_view uri);

/// An anchor as far as it was typed: the first 32 to 64 hex digits of the link, lower case.
struct PartialAnchor {
    std::uint64_t count{};
    std::string digits;
};
/// From "9:4f…" as typed (any case) or a scanned "tautweb:run/…"; code anchor.unreadable.
[[nodiscard]] Result<PartialAnchor> readPartialAnchor(std::string_view text);
/// An anchor, and whether the chain agrees with it.
struct AnchorVerdict {
    PartialAnchor anchor;
    bool holds = false;
};

/// Walks a chain given seal by seal and says what is wrong, first thing first; subject "seal 17". Codes: chain.gap,
/// chain.previous (does not continue the seal before), chain.broken (document and link do not belong together),
/// chain.head (kind, id, subject, time or person of the row are not the document's), document.broken, anchor.missing
/// (the chain ends before it), anchor.differs; and what SignatureCheck and WordsCheck find.
class ChainCheck {
public:
    explicit ChainCheck(const std::vector<PartialAnchor>& anchors = {});
    void next(const Seal& seal, std::span<const SealSignature> signatures);
    /// Judges the anchors; to be called once, after the last seal.
    [[nodiscard]] Findings finish();
    [[nodiscard]] Anchor end() const
    {
        return m_end;
    }  ///< what the documents seen so far hash to, whatever their rows say
    [[nodiscard]] const std::vector<AnchorVerdict>& anchors() const { return m_anchors; }

private:
    void checkHead(const Seal& seal, std::span<const SealSignature> signatures);
    std::vector<AnchorVerdict> m_anchors;
    Anchor m_end;
    Link m_stored{};  ///< link as the seal before states it
    SignatureCheck m_signatures;
    WordsCheck m_words;
    Findings m_findings;
};

}  // namespace taut::seal
