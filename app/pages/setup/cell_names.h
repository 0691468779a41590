// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QString>

#include "core/inputs/form.h"

namespace taut::app {

/// A form lists the rows of this group below each other; otherwise its keys, and its rows beside each other.
[[nodiscard]] bool rowsGoDown(const inputs::FormGroup& group);
/// A key as the table calls it: the two lengths of a place are x and y.
[[nodiscard]] QString keyName(const std::string& key);
/// A row of the group as the table calls it: by the name that it bears, else by its number.
[[nodiscard]] QString itemName(const inputs::FormGroup& group, std::size_t item);
/// The place that a finding names ("web.roller[2].at[1]") in the words of the table: "web.roller, row 3, y". As it is
/// where no table has it.
[[nodiscard]] QString placeName(const inputs::Form& form, const std::string& path);

}  // namespace taut::app
