// SPDX-License-Identifier: GPL-3.0-or-later
#include <charconv>
#include <string>
#include <vector>

#include "core/records/csv.h"
#include "core/records/imported.h"
#include "tests/fuzz/property.h"

// An exported run that somebody sends: read, checked and shown, never taken in.

using namespace taut;
using namespace taut::fuzz;

namespace {

/// The fields of RFC 4180 text, as whoever opens it in a table has them.
std::vector<std::string> fieldsOf(std::string_view csv)
{
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t at = 0; at < csv.size(); ++at) {
        const char c = csv[at];
        if (quoted && c == '"' && at + 1 < csv.size() && csv[at + 1] == '"') {
            fields.back() += csv[++at];
        } else if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && c == ',') {
            fields.emplace_back();
        } else if (!quoted && c == '\r' && at + 1 < csv.size() && csv[at + 1] == '\n') {
            fields.emplace_back();
            ++at;
        } else {
            fields.back() += c;
        }
    }
    require(!quoted, "every quotation mark is closed", csv);
    return fields;
}

/// Whether a spreadsheet would run it; a number below nought it reads as one.
bool isFormula(const std::string& field)
{
    if (field.empty() || std::string_view("=+-@\t\r").find(field.front()) == std::string_view::npos) return false;
    double number = 0;
    const auto read = std::from_chars(field.data(), field.data() + field.size(), number);
    return read.ec != std::errc() || read.ptr != field.data() + field.size();
}

}  // namespace

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
            constexpr std::size_t kColumns = 21;
            const std::vector<std::string> fields = fieldsOf(*csv);
            require(fields.size() % kColumns == 1 && fields.back().empty(), "every line has all its columns", *csv);
            for (const std::string& field : fields) require(!isFormula(field), "no cell begins a formula", field);
        }
    }
    return 0;
}
