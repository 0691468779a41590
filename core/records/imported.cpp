// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/imported.h"

namespace taut::records {

Result<report::Report> sheetOf(const seal::Envelope& envelope)
{
    const seal::Envelope::Sealed* own = seal::runOf(envelope);
    if (own == nullptr)
        return refuse("export.no_run", envelope.run, {"The seal of run %1 is not in this file.", {envelope.run}},
                      "Export the run once more.");
    const auto document = seal::read(own->seal.document);
    if (!document) return document.error();
    // How it came to stand as it did when it was exported.
    std::vector<seal::Sealing> sealings;
    seal::Anchor anchor;
    const std::string link = hex(own->seal.link);
    for (const seal::Envelope::Sealed& sealed : envelope.seals) {
        if (&sealed != own && sealed.seal.subject != link) continue;
        auto sealing = seal::sealingOf(sealed.seal);
        if (!sealing) return sealing.error();
        sealings.push_back(*std::move(sealing));
        anchor = {sealed.seal.seq, sealed.seal.link};
    }
    auto report = report::reportOf(*document, anchor, seal::textsIn(envelope), sealings);
    if (!report) return report.error();
    report->draft = Text("IMPORTED, for reading only: the record is in the logbook that it came from");
    return report;
}

}  // namespace taut::records
