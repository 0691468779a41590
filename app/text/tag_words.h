// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QString>

#include "core/inputs/tag_rows.h"
#include "core/units/unit.h"

namespace taut::app {

/// "(10)" of an application identifier, "1T" of a data identifier, as they stand under bar codes.
[[nodiscard]] QString tagIdentifierText(const inputs::TagField& field);
/// The value as people read it: a day as a day, a measure with its unit, a long number in groups.
[[nodiscard]] QString tagValueText(const inputs::TagField& field, UnitSystem system);
/// What becomes of a line and what it is compared with; "" when neither is anything.
[[nodiscard]] QString tagUseText(const inputs::TagRow& row, UnitSystem system);

/// A tag in a line of text, where control characters cannot be seen: with their pictures (U+241D).
[[nodiscard]] QString tagToText(const QString& tag);
/// The tag that stands in a line of text, whatever was put in for its separators.
[[nodiscard]] std::string tagFromText(const QString& text);

}  // namespace taut::app
