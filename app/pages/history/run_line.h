// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "core/records/listed.h"

namespace taut::app {

/// What the list of runs can say of each below its job, its roll and how it ended: a column of the record and its name.
struct LinePart {
    const char* column;
    QString name;
};
/// In the order in which a line says them.
[[nodiscard]] std::vector<LinePart> lineParts();
/// Those that this person ("" = nobody is signed in) has chosen on this PC, in that order.
[[nodiscard]] records::Columns keptLine(const std::string& person);
void keepLine(const std::string& person, const records::Columns& columns);
/// These of a run; what it does not have is left out.
[[nodiscard]] QString lineOf(const records::RunRow& row, const records::Columns& columns);
/// The columns of a saved list: what every line says, then these.
[[nodiscard]] records::Columns savedColumns(const records::Columns& columns);

/// What has become of a sealed run since; "" while nobody has looked at it.
[[nodiscard]] QString presentWords(const records::RunRow& row);

}  // namespace taut::app
