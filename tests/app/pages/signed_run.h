// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sstream>
#include <vector>

#include "app/verbs/verbs.h"
#include "tests/app/shop.h"

namespace taut::app::shop {

/// A logbook with one signed run, one deviation in it; made by the demo's own answers, or by those in a file.
inline Session::Options signedRun(const QTemporaryDir& folder, const std::string& answers = {})
{
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());  // nobody's settings are read or written
    applyTheme({});
    std::ostringstream said, wrong;
    std::vector<std::string> command{"demo", "--out", folder.path().toStdString()};
    if (!answers.empty()) command.insert(command.end(), {"--answers", answers});
    const auto exit = verbs::runCommand(command, verbs::Console{said, wrong});
    INFO(wrong.str());
    REQUIRE(exit == verbs::Exit::Done);
    Session::Options options = optionsIn(folder);
    options.logbook = std::filesystem::path(folder.path().toStdString()) / "demo.logbook";
    options.loadDemo = false;
    return options;
}

}  // namespace taut::app::shop
