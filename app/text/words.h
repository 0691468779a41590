// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <utility>

#include <QString>

#include "core/base/finding.h"
#include "core/base/text.h"
#include "core/units/format.h"

namespace taut::app {

/// The only room that turns what core says into a sentence of a person's language and units.

/// A Text as a sentence: its English source is looked up in the context "core", %1 .. %99 become the arguments.
[[nodiscard]] QString words(const Text& text, UnitSystem system);
/// What is wrong and what to do, as one paragraph.
[[nodiscard]] QString words(const Finding& finding, UnitSystem system);

/// A quantity as number and unit, kept apart so that a screen may set them in two sizes.
struct QuantityWords {
    QString number, unit;
};
/// Number and unit apart, for columns.
[[nodiscard]] QuantityWords quantityWords(const Quantity& q, UnitSystem system, Rounding rounding = Rounding::Nearest);
/// Both ends of a window, rounded inward and never past one another (showRange).
[[nodiscard]] std::pair<QuantityWords, QuantityWords> rangeWords(const Quantity& low, const Quantity& high,
                                                                 UnitSystem system);
/// The same as texts.
[[nodiscard]] std::pair<QString, QString> endTexts(const Quantity& low, const Quantity& high, UnitSystem system);
/// "1.39 bar" in the person's decimal style, without group separators.
[[nodiscard]] QString quantityText(const Quantity& q, UnitSystem system, Rounding rounding = Rounding::Nearest);
/// A plain number in the person's decimal style, six digits at most: for an axis.
[[nodiscard]] QString numberText(double value);
/// "0.90 bar to 1.20 bar", "at least 0.90 bar", "at most 1.20 bar", "" when both ends are open. Rounded inward.
[[nodiscard]] QString rangeText(const std::optional<Quantity>& low, const std::optional<Quantity>& high,
                                UnitSystem system);
/// A unit's symbol as it is set in type ("m2" becomes "m²"); what is typed stays the plain symbol.
[[nodiscard]] QString unitText(std::string_view symbol);

/// Something that people named or typed: a press, a person, a remark. Never translated.
[[nodiscard]] QString dataText(std::string_view utf8);
/// Words that are data and are never translated.
[[nodiscard]] QString dataText(const QString& text);

/// "2026-11-25 06:41" where it happened, and "06:41".
[[nodiscard]] QString momentText(qint64 utcMs, int offsetMinutes);
/// The same in the time of this PC, for what is kept without the place's own.
[[nodiscard]] QString momentHereText(qint64 utcMs);
/// "07:41" where it happened.
[[nodiscard]] QString clockText(qint64 utcMs, int offsetMinutes);

}  // namespace taut::app
