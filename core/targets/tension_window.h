// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/book.h"

// The tension per width that this web wants, and how that was found: job, maker, press, table, policy, with the maker
// holding down the job, and strength and strain only ever capping. Private to this folder.
namespace taut::targets {

struct TensionChoice {
    Term low, high;
    Rules rules;  ///< which rule gave each end
    Text lowSource, highSource;
    std::string how = "stated";  ///< "stated", "lookup", "rule" where both ends were cut, or "T2" with the stress below
    SharedString sourceId;
    Term stress;  ///< T2: tension per width and thickness
    Text advice;
    bool cut = false;  ///< held down by something else than what gave it
    Findings said;     ///< every cut, and what else a person should know of it; no finding speaks of a zone
    [[nodiscard]] Text source() const;
};
[[nodiscard]] TensionChoice chooseTension(const Book& book, const inputs::Zone& zone);

/// The tension per width above which nothing of this web is run: the lower of what strength and strain allow.
struct Ceiling {
    bool byStrain = false;
    std::string formula;  ///< "T4", or "rule" for strain
    Arguments arguments;
    Term value;  ///< lacks something when neither is known
    Rule rule{};
    Text source, advice;
    SharedString sourceId;
};
[[nodiscard]] Ceiling ceilingOf(const Book& book, const inputs::Zone& zone);
/// Breaking strength per width of what carries: the substrate's, or the weakest of the layers that may carry alone.
[[nodiscard]] Term weakestStrength(const Book& book);
/// What is stretched by a zone's tension: the whole web, or behind the die the liner alone.
struct Carrier {
    Term modulus, caliper;
};
[[nodiscard]] Carrier carrierOf(const Book& book, const inputs::Zone& zone);

}  // namespace taut::targets
