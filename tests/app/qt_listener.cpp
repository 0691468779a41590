// SPDX-License-Identifier: GPL-3.0-or-later
// Every test program of the window runs inside a QApplication without a display. The platform is chosen here and not by
// ctest, so that a program started by hand behaves the same.
#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include <catch2/catch.hpp>

#include <memory>

#include <QApplication>
#include <QLocale>

namespace {

struct QtListener : Catch::TestEventListenerBase {
    using TestEventListenerBase::TestEventListenerBase;

    void testRunStarting(const Catch::TestRunInfo&) override
    {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QLocale::setDefault(QLocale::c());
        static int argc = 1;
        static char name[] = "test";
        static char* argv[] = {name, nullptr};
        m_app = std::make_unique<QApplication>(argc, argv);
    }
    void testRunEnded(const Catch::TestRunStats&) override { m_app.reset(); }

    std::unique_ptr<QApplication> m_app;
};

}  // namespace

CATCH_REGISTER_LISTENER(QtListener)
