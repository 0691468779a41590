// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/imported.h"

#include <fstream>

#include "core/base/file.h"

namespace taut::app::verbs {

Result<std::vector<seal::PartialAnchor>> anchorsIn(const Options& options)
{
    std::vector<seal::PartialAnchor> all;
    for (const std::string& said : options.values("--anchor")) {
        auto anchor = seal::readPartialAnchor(said);
        if (!anchor) return anchor.error();
        all.push_back(std::move(*anchor));
    }
    return all;
}

bool isExport(const std::filesystem::path& file)
{
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return false;
    char first = '\0';
    return std::ifstream(file, std::ios::binary).get(first) && first == '{';
}

Result<seal::Envelope> importedFrom(const std::filesystem::path& file)
{
    const auto text = readFile(file);
    if (!text) return text.error();
    auto envelope = seal::readEnvelope(*text);
    if (envelope) return envelope;
    Finding why = envelope.error();
    why.subject = file.string() + ", " + why.subject;
    return why;
}

}  // namespace taut::app::verbs
