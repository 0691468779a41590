// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/crypto.h"
#include "core/base/result.h"
#include "core/seal/document.h"

namespace taut::seal {

using Link = Digest;  ///< 32 bytes; the link before the first is all zero

/// One row of the chain.
struct Seal {
    std::uint64_t seq{};
    Kind kind{};
    std::string id, subject;  ///< of the document; subject names the link a later document is about
    std::int64_t sealedAtMs{};
    std::string person;
    std::string document;  ///< bytes
    Link previous{}, link{};
};
/// SHA-256(previous ‖ document).
[[nodiscard]] Link linkAfter(const Link& previous, std::string_view document);
/// Count and last link: printed on every sheet, so that paper anchors the chain.
struct Anchor {
    std::uint64_t count{};
    Link link{};
    friend bool operator==(const Anchor&, const Anchor&) = default;
};
[[nodiscard]] std::string anchorText(const Anchor& anchor);      ///< "9:4f…" in full
[[nodiscard]] Result<Anchor> readAnchor(std::string_view text);  ///< at least 32 hex digits, the rest unknown
/// "tautweb:run/RUN?n=COUNT&link=HEX": the sheet's QR code.
[[nodiscard]] std::string anchorUri(std::string_view run, const Anchor& anchor);
struct AnchorUri {
    std::string run;
    Anchor anchor;
};
[[nodiscard]] Result<AnchorUri> readAnchorUri(std::string_view uri);

/// An anchor as far as it was typed: `digits` hex digits of the link.
struct PartialAnchor {
    std::uint64_t count{};
    std::string digits;
};
[[nodiscard]] Result<PartialAnchor> readPartialAnchor(std::string_view text);

/// Walks a chain given seal by seal and says what is wrong, first thing first; subject "seal 17".
class ChainCheck {
public:
    explicit ChainCheck(std::vector<PartialAnchor> anchors = {});
    void next(const Seal& seal);
    [[nodiscard]] Findings finish();
    [[nodiscard]] Anchor end() const { return m_end; }

private:
    std::vector<PartialAnchor> m_anchors;
    Anchor m_end;
    Findings m_findings;
};

}  // namespace taut::seal
