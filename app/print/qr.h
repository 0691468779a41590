// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace taut::app::print {

/// A QR code (ISO/IEC 18004) as dark and light modules, row by row, without the quiet zone.
struct QrModules {
    std::size_t side = 0;
    std::vector<bool> dark;
    /// Whether this module is dark, counted from the upper left.
    [[nodiscard]] bool at(std::size_t x, std::size_t y) const { return dark[y * side + x]; }
};
/// Error correction M: a sheet taped to a press gets ink on it. side 0 when the text is too long for a code.
[[nodiscard]] QrModules qrModules(const std::string& text);

}  // namespace taut::app::print
