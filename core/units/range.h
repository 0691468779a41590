// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/units/quantity.h"

namespace taut {

/// A closed range of one kind; an end left out is open.
struct Range {
    std::optional<Quantity> low;
    std::optional<Quantity> high;
    [[nodiscard]] bool contains(double si) const noexcept
    {
        return (!low || si >= low->si()) && (!high || si <= high->si());
    }
    friend bool operator==(const Range&, const Range&) = default;
};

}  // namespace taut
