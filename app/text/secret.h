// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QString>

#include "core/people/person.h"

namespace taut::app {

/// A PIN, passphrase or code as it is hashed and opens a key: in one form of Unicode (NFKC), whatever keyboard it was
/// typed on. "é" is one character or a letter and an accent, and somebody chooses it with one and signs with the other.
/// Every secret that comes from outside passes here before core sees it, and is measured after it.
[[nodiscard]] std::string secretText(const QString& typed);
/// The same of what somebody chose.
[[nodiscard]] people::Chosen secretText(const people::Chosen& chosen);

}  // namespace taut::app
