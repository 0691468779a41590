// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the practice press, to be looked at: TAUTWEB_PICTURES names a folder.
#include <catch2/catch.hpp>

#include <algorithm>

#include "app/pages/run/step_list.h"
#include "app/text/language.h"
#include "app/widgets/controls.h"
#include "tests/app/painted.h"
#include "tests/app/practice/practice_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

bool isShortened(const QWidget& w)
{
    return qobject_cast<const OneLine*>(&w) != nullptr || qobject_cast<const PickList*>(&w) != nullptr ||
           qobject_cast<const StepList*>(&w) != nullptr || qobject_cast<const StepList*>(w.parentWidget()) != nullptr;
}

/// Looks at page after page of a lesson; returns what is cut.
QStringList walk(const QSize& size, double text, bool dark = false)
{
    PracticeWindow w({size.width(), size.height() - 28});
    applyTheme({dark, text, 1.0});
    QStringList all;
    int shown = 0;
    const QString pictures = qEnvironmentVariable("TAUTWEB_PICTURES");
    const auto look = [&](const char* page) {
        std::vector<QRect> before;
        int still = 0;
        until(
            [&] {
                std::vector<QRect> places;
                for (const QWidget* one : w.window.findChildren<QWidget*>())
                    if (one->isVisible()) places.push_back(one->geometry());
                still = places == before ? still + 1 : 0;
                before = std::move(places);
                return still >= 4;
            },
            "everything is in its place");
        if (!pictures.isEmpty())
            w.window.grab().save(QStringLiteral("%1/practice_%2_%3x%4_%5%8_%6_%7.png")
                                     .arg(pictures, language())
                                     .arg(size.width())
                                     .arg(size.height())
                                     .arg(text)
                                     .arg(++shown, 2, 10, QLatin1Char('0'))
                                     .arg(QString::fromLatin1(page), dark ? QStringLiteral("_dark") : QString()));
        for (const QString& one : test::cutOn(w.window, isShortened))
            all << QStringLiteral("%1: %2").arg(QString::fromLatin1(page), one);
    };
    w.door(Qt::Key_4);
    look("choose");
    w.begin();
    look("begun");
    for (const practice::At at : practice::kEverywhere) {
        w.click(("place" + std::to_string(static_cast<int>(at))).c_str());
        look(("at_" + std::to_string(static_cast<int>(at))).c_str());
    }
    w.touch("run");
    look("refused");
    byTheBook(w);
    w.wait(8);
    look("running");
    w.click("place100");
    look("charts");
    // Nothing winds up any more: the web hangs, and more comes of it.
    w.touch("rewind_setting", {}, "0 bar");
    w.wait(20);
    REQUIRE(w.practice().happened());
    look("happened");
    if (auto* toRun = visible<QAbstractButton>(w.window, "toRun")) {
        toRun->click();
        look("procedure");
    }
    return all;
}

}  // namespace

TEST_CASE("no text of the practice press is cut or shortened on small and large screens, in every language")
{
    struct Back {
        ~Back() { setLanguage(QStringLiteral("en")); }
    } back;
    for (const char* tongue : {"en", "es", "de"})
        for (const QSize& size : {QSize(1366, 768), QSize(1920, 1080)})
            for (const double text : {1.0, 2.0}) {
                DYNAMIC_SECTION(tongue << ", " << size.width() << " x " << size.height() << ", text " << text)
                {
                    setLanguage(QString::fromLatin1(tongue));
                    for (const QString& cut : walk(size, text)) FAIL_CHECK(cut.toStdString());
                }
            }
    SECTION("en, 1366 x 768, dark")
    {
        for (const QString& cut : walk({1366, 768}, 1, true)) FAIL_CHECK(cut.toStdString());
    }
}
