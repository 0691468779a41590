// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/json.h"

namespace taut::app::made {

/// A JSON text with gaps: what stands between them is written once, however often it is filled.
class Gapped {
public:
    /// A value in whose place the text has this gap. What fills it is JSON: "12.5", or a string in its quotes.
    [[nodiscard]] static Json mark(std::size_t gap);

    /// Of a written text with marks in it.
    explicit Gapped(std::string_view text);
    [[nodiscard]] std::string filled(std::span<const std::string> fills) const;

private:
    struct Piece {
        std::size_t end;  ///< of what stands before the gap, in m_text
        std::size_t gap;
    };
    std::string m_text;
    std::vector<Piece> m_pieces;
};

/// How JSON writes it.
[[nodiscard]] std::string inJson(std::string_view text);

}  // namespace taut::app::made
