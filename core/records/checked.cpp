// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/checked.h"

namespace taut::records {

Result<std::size_t> sealsHold(const Reader& reader, std::string_view runId)
{
    const auto story = reader.sealsAbout(runId);
    if (!story) return story.error();
    for (const seal::Sealing& sealing : *story) {
        const auto seal = reader.seal(sealing.seq);
        if (!seal) return seal.error();
        seal::Link before{};
        if (sealing.seq > 1) {
            const auto previous = reader.seal(sealing.seq - 1);
            if (!previous) return previous.error();
            before = previous->link;
        }
        if (before != seal->previous || seal::linkAfter(seal->previous, seal->document) != seal->link)
            return refuse("seal.broken", "seal " + std::to_string(sealing.seq),
                          {"Seal %1 is not as it was sealed, or does not follow the one before it.",
                           {static_cast<std::int64_t>(sealing.seq)}},
                          "Verify the whole logbook, and restore it from the mirror or a copy.");
    }
    return story->size();
}

}  // namespace taut::records
