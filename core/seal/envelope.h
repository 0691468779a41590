// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/seal/chain.h"

namespace taut::seal {

/// A run taken out of its logbook so that it can be checked alone: its own seal, those about it, the people's seals
/// that their signatures rest on, up to the first supervisor's, and the definitions that the run names. For reading: no
/// way leads from one into a logbook.
struct Envelope {
    struct Sealed {
        Seal seal;
        std::vector<SealSignature> signatures;
    };
    std::string run;
    std::vector<Sealed> seals;                      ///< in the order of their chain, with gaps
    std::map<std::string, std::string> files = {};  ///< bytes of the pictures and files that the run names, by SHA-256
};

/// {"format":1,"kind":"export","run","program","exported_at","seals":[{"seq","kind","document","previous_link","link",
/// "signatures":[{"person","key","meaning","signed_at","signature"}]}]}. `document` is the sealed text itself, so its
/// UTF-8 bytes are what was hashed; everything else that a row of a logbook says stands in the document. With pictures
/// or files it is of format 2 and has "attachments":[{"sha256","content"}] beside, their bytes in base64. Code
/// document.broken for one that is no UTF-8.
[[nodiscard]] Result<std::string> writeEnvelope(const Envelope& envelope, Instant at);
/// Reads what writeEnvelope writes. Keys of a newer format are passed over, unknown ones of this format refused. Codes:
/// export.broken (no JSON), export.not_one (another kind of file), export.key (missing, unknown or of another type; the
/// subject names it: "seals[3].link"), export.too_many. Nothing of it is checked yet.
[[nodiscard]] Result<Envelope> readEnvelope(std::string_view text);

/// What is wrong, first thing first; subject "seal 17". Codes: export.order (seals are out of order or doubled),
/// chain.previous (neighbours do not follow each other), chain.broken, document.broken, export.no_run (the run's own
/// seal is not in it), export.text (a definition's text is not of its hash), what SignatureCheck and WordsCheck find,
/// correction.misquoted; attachment.missing, attachment.changed; anchor.differs, anchor.not_here (Warn: the anchor
/// names a seal that is not in the file).
struct EnvelopeCheck {
    Findings findings;  ///< empty = in order as far as the file holds it
    std::vector<AnchorVerdict> anchors;
};
[[nodiscard]] EnvelopeCheck checkEnvelope(const Envelope& envelope, const std::vector<PartialAnchor>& anchors);

/// The run's own seal; nullptr when it is not there.
[[nodiscard]] const Envelope::Sealed* runOf(const Envelope& envelope);
/// The texts of the definitions that came with the run; good while the envelope is.
[[nodiscard]] TextBySha textsIn(const Envelope& envelope);

}  // namespace taut::seal
