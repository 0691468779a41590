// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/chain.h"
#include "tests/fuzz/property.h"

// The anchor of a printed sheet, typed from its foot or scanned from its code.

using namespace taut;
using namespace taut::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text = textOf(data, size);
    const auto partial = seal::readPartialAnchor(text);
    if (partial) {
        require(partial->digits.size() >= 32 && partial->digits.size() <= 64, "32 to 64 digits count", text);
        require(partial->digits.find_first_not_of("0123456789abcdef") == std::string::npos, "digits are hex", text);
        const std::string typed = std::to_string(partial->count) + ':' + partial->digits;
        const auto again = seal::readPartialAnchor(typed);
        require(again && again->count == partial->count && again->digits == partial->digits,
                "a typed anchor reads back the same", typed);
    } else {
        checkFinding(partial.error());
    }

    const auto whole = seal::readAnchor(text);
    if (whole) {
        require(partial && partial->digits.size() == 64, "a whole anchor is a partial one too", text);
        const auto again = seal::readAnchor(seal::anchorText(*whole));
        require(again && *again == *whole, "an anchor reads back the same", text);
    } else {
        checkFinding(whole.error());
    }

    const auto uri = seal::readAnchorUri(text);
    if (uri) {
        require(isUtf8(uri->run) && !uri->run.empty(), "a run's id is text", text);
        const std::string printed = seal::anchorUri(uri->run, uri->anchor);
        const auto again = seal::readAnchorUri(printed);
        require(again && again->run == uri->run && again->anchor == uri->anchor, "a scanned code reads back the same",
                printed);
        require(partial && whole && *whole == uri->anchor, "a scanned code is an anchor", text);
    } else {
        checkFinding(uri.error());
    }

    // A chain of nothing agrees with no anchor but that of nothing, and says so.
    if (partial) {
        seal::ChainCheck empty({*partial});
        const Findings findings = empty.finish();
        checkFindings(findings);
        const bool nothing = partial->count == 0 && partial->digits.find_first_not_of('0') == std::string::npos;
        require(findings.empty() == nothing, "an anchor beyond the chain is named", text);
    }
    return 0;
}
