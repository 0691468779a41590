// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>

#include <QString>

namespace taut::app::lists {

/// One text of a list: what it is said as, and whether somebody has called it done.
struct Said {
    QString translation;
    bool done = false;
};
/// A language's list of texts, by context and English. A missing file fails the test.
using List = std::map<std::pair<QString, QString>, Said>;
[[nodiscard]] List listOf(const QString& language);
/// English texts that may stay as they are in that language: proper names, symbols, words that the trade has from
/// English. Of tests/app/language/same_LANGUAGE.txt, one a line.
[[nodiscard]] std::set<QString> sameIn(const QString& language);

}  // namespace taut::app::lists
