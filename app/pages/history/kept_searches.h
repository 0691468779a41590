// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "app/pages/history/period.h"

namespace taut::app {

/// What the list of runs is asked, by everything that narrows it.
struct Search {
    QString text, present;  ///< as in records::RunQuery
    QString press, job, substrate, person;
    Period period;
    bool withDeviations = false;
    friend bool operator==(const Search&, const Search&) = default;
};

/// A search that somebody keeps under a name, for this PC.
struct KeptSearch {
    QString name;
    Search search;
};
/// Those of this person ("" = nobody is signed in), by name.
[[nodiscard]] std::vector<KeptSearch> keptSearches(const std::string& person);
/// One of the same name is replaced.
void keepSearch(const std::string& person, const KeptSearch& kept);
void forgetSearch(const std::string& person, const QString& name);

}  // namespace taut::app
