// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QRectF>
#include <QString>

#include "app/print/print.h"
#include "tests/app/verbs/verbs_support.h"

namespace taut::app::print::test {

/// A value as it is set in type: "m2" becomes "m²".
[[nodiscard]] std::string typeset(const std::string& value);

}  // namespace taut::app::print::test

namespace taut::app::test {

/// The demo run of a press, and what is printed of it.
struct Sheet {
    run::Run run;
    report::Report report, blank;
};
[[nodiscard]] const Sheet& sheetOf(const std::string& press);

/// All words of a page with where they stand in points, as pdftotext sees them.
struct Word {
    QRectF box;
    QString text;
};
[[nodiscard]] std::vector<std::vector<Word>> wordsByPage(const std::string& pdf);

/// A report as a file; gone with the test.
struct Pdf {
    Folder folder;
    std::string file;
    print::Printed printed;
    Pdf(const report::Report& report, print::Paper paper);
};

}  // namespace taut::app::test
