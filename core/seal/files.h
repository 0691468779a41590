// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/seal/document.h"

namespace taut::seal {

/// A picture or file that a run's document names; its bytes stand beside the chain, under their hash.
struct NamedFile {
    std::string step, name, type;  ///< step "" = of the whole run
    std::int64_t size = 0;
    std::string sha256;
};
/// Those that a document names, in the order of its events; nothing but a run's names any.
[[nodiscard]] std::vector<NamedFile> filesOf(const Document& document);
/// That its bytes are not there (attachment.missing), or are others than were sealed (attachment.changed), said of the
/// seal that names it ("seal 17").
[[nodiscard]] Finding fileMissing(const NamedFile& file, std::uint64_t seq);
[[nodiscard]] Finding fileChanged(const NamedFile& file, std::uint64_t seq);

}  // namespace taut::seal
