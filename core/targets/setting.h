// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/book.h"

// What the operator turns, types or hangs to set a zone, by the zone's own means. Private to this folder.
namespace taut::targets {

struct SettingTerms {
    Term total, low, high;  ///< web tension and its window
    Term diameter;          ///< of the zone's roll; empty where it has none
    Rules rules;
    Term middle;  ///< the tension in the middle of the window: `total` where that can be set, else what cannot
};
/// What a tension follows to a setting by: a formula of the catalogue with the tension first, or the tension itself
/// where `formula` is empty.
struct SettingRelation {
    std::string formula;
    Arguments arguments;
    /// What another tension would be set to.
    [[nodiscard]] Term at(const Term& tension) const;
};
/// The end of what can be set or shown that a value lies beyond; nullopt for one that can be, and for one that
/// arithmetic alone has put beside the end on which it stands.
[[nodiscard]] std::optional<Quantity> endBeyond(const inputs::Setting& range, double si);
/// The zone's own means; nullopt for a draw, and where the profile does not say what is set.
[[nodiscard]] std::optional<SettingRelation> relationOf(const Book& book, const inputs::Zone& zone, const Term& tension,
                                                        const Term& diameter);
void stateSetting(Book& book, const inputs::Zone& zone, const SettingTerms& terms);
/// Where strength caps the tension, and what becomes of it when the setting is left alone and on the finished roll.
void stateCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms);
/// D3: what the tension per width moves by from one end to the other of how well a draw is known (twice its setting's
/// uncertainty). `arguments` when the caller wants them.
[[nodiscard]] Term drawBand(const Book& book, const inputs::Zone& zone, Arguments* arguments = nullptr);
/// The unit of force that the panel of a load cell takes the tension in; "" where it takes a share of the range, or
/// nobody said.
[[nodiscard]] std::string panelForce(const Book& book, const inputs::LoadCell& cell);
[[nodiscard]] Term zoneWidth(const Book& book, const inputs::Zone& zone);
[[nodiscard]] Term rollDiameterOf(const Book& book, const inputs::Zone& zone);

}  // namespace taut::targets
