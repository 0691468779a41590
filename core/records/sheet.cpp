// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/sheet.h"

#include "core/records/texts.h"

namespace taut::records {

Result<Kept> documentOf(const Reader& reader, std::string_view runId)
{
    const auto open = reader.openRun(runId);
    if (open) return Kept{seal::documentOf(*open), false};
    if (open.error().code != "run.sealed") return open.error();
    const auto seal = reader.sealOfRun(runId);
    if (!seal) return seal.error();
    auto document = seal::read(seal->document);
    if (!document) return document.error();
    return Kept{*std::move(document), true};
}

Result<run::Run> runOf(const Reader& reader, std::string_view runId)
{
    auto open = reader.openRun(runId);
    if (open || open.error().code != "run.sealed") return open;
    const auto kept = documentOf(reader, runId);
    if (!kept) return kept.error();
    const auto events = seal::eventsOf(kept->document, textsOf(reader));
    if (!events) return events.error();
    return run::Run::fold(*events);
}

Result<report::Report> sheetOf(const Reader& reader, std::string_view runId)
{
    const auto kept = documentOf(reader, runId);
    if (!kept) return kept.error();
    if (!kept->sealed) return report::reportOf(kept->document, std::nullopt, textsOf(reader));
    const auto anchor = reader.anchor();
    if (!anchor) return anchor.error();
    const auto sealings = reader.sealsAbout(runId);
    if (!sealings) return sealings.error();
    return report::reportOf(kept->document, *anchor, textsOf(reader), *sealings);
}

}  // namespace taut::records
