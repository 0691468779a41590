// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/json.h"

namespace taut {

/// A unit as JSON says it: its symbol under `key`, which other programs know, and only where it has one the manner of
/// ours (units/format.h) beside it, under `key` + "_fixed" (true) and "_finer" (decimals).
void setUnit(Json& object, const std::string& key, std::string_view unit);
/// The same back. Records written before this carry the manner in the symbol itself: it is read from there too.
[[nodiscard]] std::string unitFrom(const Json& object, const std::string& key);

}  // namespace taut
