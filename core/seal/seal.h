// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/crypto.h"
#include "core/seal/document.h"

namespace taut::seal {

using Link = Digest;  ///< 32 bytes; the link before the first is all zero

/// One row of the chain.
struct Seal {
    std::uint64_t seq{};
    Kind kind{};
    std::string id, subject;  ///< of the document; subject names the link a later document is about
    std::int64_t sealedAtMs{};
    std::string person;
    std::string document;  ///< bytes
    Link previous{}, link{};
};
/// SHA-256(previous ‖ document).
[[nodiscard]] Link linkAfter(const Link& previous, std::string_view document);

}  // namespace taut::seal
