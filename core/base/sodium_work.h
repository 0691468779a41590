// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/crypto.h"

// Private to this folder: what every use of the library begins with.
namespace taut {

/// Every function of the library may be the first one called, from any thread. Throws where the system gives no random
/// bytes.
void beginSodium();

/// Argon2id's work for a secret.
struct SecretWork {
    unsigned long long passes = 0;
    std::size_t memory = 0;  ///< bytes
};
[[nodiscard]] SecretWork workOf(PinCost cost);

}  // namespace taut
