// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <utility>

#include "core/base/json.h"

namespace taut::seal {

/// What `after` has that `before` has not, so that a target set or a plan that follows another one is told by what
/// changed in it. Both are objects; so is the difference:
/// - a member that it states takes the place of the member of this name, and one of a new name follows the others.
/// Where
///   both are objects the statement is a difference in its turn.
/// - "without" lists the names of members that are gone.
/// - in the lists "targets", "schedules", "findings", "because", "rows", "stages", "places" and "steps" a text "7" or
///   "3..9" stands for the items at these places, counted from 0, of the same list before. An object with "was": 7 is
///   item 7 with what else it states as its difference (its "id" or "code" always stands there, so that one sees what
///   changed). Anything else is an item that is new. No place is named twice; places not named are gone.
///   Of items without either, where only figures changed, a list of nothing but numbers and nulls is the "value" of
///   each. Other lists are stated whole.
/// Nothing when that would not give `after` again to the last member and its order.
[[nodiscard]] std::optional<Json> differenceOf(const Json& before, const Json& after);

/// `before` with the difference done; nothing when that names a place or a member which is not there.
[[nodiscard]] std::optional<Json> withDifference(const Json& before, const Json& difference);

/// First and last of the places that a text "7" or "3..9" of such a list stands for; nothing when it is no such text.
[[nodiscard]] std::optional<std::pair<std::size_t, std::size_t>> placesIn(const std::string& text);

/// A list of objects, each but the first told as its difference to the one before it where that can be: then it has
/// "since", the place of the one before.
[[nodiscard]] Json inDifferences(Json::Array values);
/// The objects of such a list, whole; nothing when one does not follow from those before it.
[[nodiscard]] std::optional<Json::Array> wholeAgain(const Json::Array& list);

}  // namespace taut::seal
