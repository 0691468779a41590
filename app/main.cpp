// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <iterator>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <QApplication>
#include <QGuiApplication>

#include "app/shell/start.h"
#include "app/verbs/verbs.h"

namespace {

/// Keeps what a platform says about itself to itself: nobody who asked for a sheet can do anything about it.
void sayOnlyFailures(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    const std::string category = context.category == nullptr ? "" : context.category;
    const std::string text = message.toStdString();
    for (const std::string_view noise : {"propagateSizeHints", "XDG_RUNTIME_DIR", "This plugin does not support"})
        if (text.find(noise) != std::string::npos) return;
    if (type == QtDebugMsg || type == QtInfoMsg) return;
    std::fprintf(stderr, "tautweb: %s\n", text.c_str());
}

int runVerb(const std::vector<std::string>& words, int argc, char** argv)
{
    using namespace taut::app::verbs;
    // A verb draws on paper only; a display, if there is one, is not its business.
    ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
    std::unique_ptr<QGuiApplication> application;
    if (drawsSomething(words)) application = std::make_unique<QGuiApplication>(argc, argv);
    const Exit exit = runCommand(words, Console{std::cout, std::cerr});
    std::cout.flush();
    if (!std::cout) {
        std::fprintf(stderr, "tautweb: the output could not be written; the disk may be full or the pipe closed.\n");
        return static_cast<int>(Exit::Machine);
    }
    return static_cast<int>(exit);
}

}  // namespace

int main(int argc, char** argv)
{
    qInstallMessageHandler(sayOnlyFailures);
    const std::vector<std::string> words(argv + 1, argv + argc);
    // Options alone are the window's (--demo, --logbook FILE); a verb stands first.
    constexpr std::string_view kOfVerbs[] = {"--help", "--version", "--completion"};
    const bool window =
        words.empty() || (words[0].rfind("--", 0) == 0 &&
                          std::find(std::begin(kOfVerbs), std::end(kOfVerbs), words[0]) == std::end(kOfVerbs));
    return window ? taut::app::startWindow(argc, argv) : runVerb(words, argc, argv);
}
