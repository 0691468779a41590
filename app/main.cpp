// SPDX-License-Identifier: GPL-3.0-or-later
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <QApplication>
#include <QGuiApplication>

#include "app/verbs/verbs.h"

#if __has_include("app/shell/main_window.h")
#include "app/shell/start.h"
#define TAUTWEB_HAS_WINDOW 1
#endif

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

int runWindow(int argc, char** argv)
{
#ifdef TAUTWEB_HAS_WINDOW
    return taut::app::startWindow(argc, argv);
#else
    static_cast<void>(argc);
    static_cast<void>(argv);
    std::fprintf(stderr, "tautweb: this build has no window. tautweb --help lists what works without one.\n");
    return static_cast<int>(taut::app::verbs::Exit::Machine);
#endif
}

}  // namespace

int main(int argc, char** argv)
{
    qInstallMessageHandler(sayOnlyFailures);
    const std::vector<std::string> words(argv + 1, argv + argc);
    return words.empty() ? runWindow(argc, argv) : runVerb(words, argc, argv);
}
