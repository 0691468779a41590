// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/book.h"

// What the operator turns, types or hangs to set a zone, by the zone's own means. Private to this folder.
namespace taut::targets {

struct SettingTerms {
    Term total, low, high;  ///< web tension and its window
    Term diameter;          ///< of the zone's roll; empty where it has none
    Rules rules;
};
void stateSetting(Book& book, const inputs::Zone& zone, const SettingTerms& terms);
/// Where strength caps the tension, and what becomes of it when the setting is left alone and on the finished roll.
void stateCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms);
/// D3: what the tension per width moves by from one end to the other of how well a draw is known (twice its setting's
/// uncertainty). `arguments` when the caller wants them.
[[nodiscard]] Term drawBand(const Book& book, const inputs::Zone& zone, Arguments* arguments = nullptr);
[[nodiscard]] Term zoneWidth(const Book& book, const inputs::Zone& zone);
[[nodiscard]] Term rollDiameterOf(const Book& book, const inputs::Zone& zone);

}  // namespace taut::targets
