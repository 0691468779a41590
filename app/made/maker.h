// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "app/made/shop.h"
#include "core/logbook/fill.h"
#include "core/seal/words.h"

namespace taut::app::made {

/// A run that has ended, as it is sealed, and the definitions that have to stand before it.
struct Sealable {
    std::string run;  ///< its id
    std::variant<seal::Document, logbook::LaidOut> document;
    std::shared_ptr<const std::vector<seal::Parted::Words>> words;
    Instant at;
    const people::Signer* by = nullptr;
};

/// Makes the documents of families of runs. Asked by several threads at once.
class Maker {
public:
    virtual ~Maker() = default;
    /// The runs of a family in the order in which they were begun.
    [[nodiscard]] virtual Result<std::vector<Sealable>> documents(const Family& family) const = 0;
};

/// Plays every run from its first step to its last: full documents.
[[nodiscard]] Result<std::unique_ptr<Maker>> playedOut(const Shop& shop, const Story& story);
/// Plays a few runs of the short procedure for each job and way to go, and says of each further run what differs.
[[nodiscard]] Result<std::unique_ptr<Maker>> varied(const Shop& shop, const Story& story);

}  // namespace taut::app::made
