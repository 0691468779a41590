// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/csv.h"
#include "core/records/imported.h"
#include "tests/fuzz/property.h"

// An exported run that somebody sends: read, checked and shown, never taken in.

using namespace taut;
using namespace taut::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text = textOf(data, size);
    const auto envelope = seal::readEnvelope(text);
    if (!envelope) {
        checkFinding(envelope.error());
        return 0;
    }
    const auto written = seal::writeEnvelope(*envelope, Instant{});
    require(static_cast<bool>(written), "what was read can be written", text);
    const auto again = seal::readEnvelope(*written);
    require(static_cast<bool>(again), "what was written reads back", *written);
    require(*seal::writeEnvelope(*again, Instant{}) == *written, "what reads back is written the same", *written);

    const auto check = seal::checkEnvelope(*envelope, {{1, std::string(64, '0')}});
    checkFindings(check.findings);
    require(check.anchors.size() == 1, "an anchor that is asked about is answered");
    // Whoever finds nothing wrong has seen every document hash to its link.
    if (seal::checkEnvelope(*envelope, {}).findings.empty())
        for (const seal::Envelope::Sealed& one : envelope->seals)
            require(seal::linkAfter(one.seal.previous, one.seal.document) == one.seal.link,
                    "nothing wrong means every link holds", text);

    const auto sheet = records::sheetOf(*envelope);
    if (!sheet) {
        checkFinding(sheet.error());
    } else {
        require(!sheet->draft.empty(), "an imported sheet says that it is no record");
        checkText(sheet->draft);
    }
    if (const seal::Envelope::Sealed* own = seal::runOf(*envelope)) {
        const auto csv = records::readingsCsvOf(own->seal, "sealed");
        if (!csv) {
            checkFinding(csv.error());
        } else {
            require(isUtf8(*csv), "CSV is UTF-8", *csv);
            for (std::size_t at = 0; (at = csv->find(',', at)) != std::string::npos; ++at)
                require(at + 1 == csv->size() ||
                            std::string_view("=@").find((*csv)[at + 1]) == std::string_view::npos ||
                            csv->find('"') != std::string::npos,
                        "no cell begins a formula", *csv);
        }
    }
    return 0;
}
