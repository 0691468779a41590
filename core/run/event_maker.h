// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/run/event.h"

namespace taut::run {

/// Makes events. Included by decide and by the reader of stored events only: nothing else may say that something
/// happened.
class EventMaker {
public:
    /// A new event; units: how this press speaks, for the texts of target sets.
    [[nodiscard]] static Event make(Stamp stamp, Happening happening, UnitSystem units);
    /// A stored one, with the JSON that it was read from.
    [[nodiscard]] static Event stored(Stamp stamp, Happening happening, Json body);
};

/// Who and which are never the caller's to choose: the person who signed in, and the next number.
[[nodiscard]] Stamp stampOf(const people::Actor& actor, const Stamp& stamp, std::uint64_t n);
/// What make() stores.
[[nodiscard]] Json eventJson(const Stamp& stamp, const Happening& happening, UnitSystem units);

}  // namespace taut::run
