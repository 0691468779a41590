// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/files.h"

namespace taut::seal {

namespace {

Finding about(const char* code, const NamedFile& file, std::uint64_t seq, const char* english)
{
    return refuse(code, "seal " + std::to_string(seq),
                  Text(english, {file.name, file.sha256.substr(0, 16), static_cast<std::int64_t>(seq)}),
                  "The record itself stands; do not go by this picture or file. Restore it from the mirror or a copy.");
}

}  // namespace

std::vector<NamedFile> filesOf(const Document& document)
{
    std::vector<NamedFile> all;
    if (document.kind != Kind::Run) return all;
    for (const Json& event : document.body["events"].items())
        if (event["what"].text() == "attached")
            all.push_back({event["step"].text(), event["file"].text(), event["type"].text(), event["size"].integer(),
                           event["sha256"].text()});
    return all;
}

Finding fileMissing(const NamedFile& file, std::uint64_t seq)
{
    return about("attachment.missing", file, seq,
                 "Seal %3 names the picture or file %1 (SHA-256 %2...), and its bytes are not there.");
}

Finding fileChanged(const NamedFile& file, std::uint64_t seq)
{
    return about(
        "attachment.changed", file, seq,
        "The picture or file %1 that seal %3 names (SHA-256 %2...) is not the one that was attached: its bytes "
        "were changed.");
}

}  // namespace taut::seal
