// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/book.h"

// The tension per width that this web wants, and how that was found: job, maker, press, table, policy, with strength
// only ever capping it. Private to this folder.
namespace taut::targets {

struct TensionChoice {
    Term low, high;
    Rule rule = Rule::None;
    Text source;
    std::string how = "stated";  ///< "stated", "lookup", or "T2" with the stress below
    std::string sourceId;
    Term stress;  ///< T2: tension per width and thickness
    Text advice;
    bool capped = false;  ///< by strength or strain; the advice says which
};
[[nodiscard]] TensionChoice chooseTension(const Book& book, const inputs::Zone& zone);
/// Breaking strength per width of what carries: the substrate's, or the weakest of the layers that may carry alone.
[[nodiscard]] Term weakestStrength(const Book& book);
/// What is stretched by a zone's tension: the whole web, or behind the die the liner alone.
struct Carrier {
    Term modulus, caliper;
};
[[nodiscard]] Carrier carrierOf(const Book& book, const inputs::Zone& zone);

}  // namespace taut::targets
