// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/targets/book.h"

// The public tables of starting values: T2 for films and foil by thickness, T3 for paper by grammage and for board by
// thickness. Private to this folder.
namespace taut::targets {

/// What the tables say of one material, per width. Two that differ make a range; where they agree, and for paper and
/// board everywhere, it reaches at least the policy row table_spread either way of its middle.
struct TableRange {
    Term low, high;
    Term stress;                 ///< T2: tension per width and thickness, where it is the middle of the range
    std::string how = "lookup";  ///< "lookup", or "T2" with the stress
    SharedString sourceId;
    Text source;
    Rule rule = Rule::Table;  ///< whose word the ends are: a row of ours, where that widens the tables
};
/// nullopt for a family without a table.
[[nodiscard]] std::optional<TableRange> tableRange(const Book& book, const std::string& family, const Term& caliper,
                                                   const Term& grammage);
/// S20: the sum of what the plies' own tables say and 0.1 lbf/in; a layer without a family is a coating. `used`: the
/// plies by name. Lacks something when fewer than two plies have a family or one has no figure.
[[nodiscard]] Term summedPlies(const Book& book, Arguments& used);

}  // namespace taut::targets
