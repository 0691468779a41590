// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "app/pages/run/step_list.h"
#include "app/text/language.h"
#include "app/widgets/controls.h"
#include "tests/app/painted.h"
#include "tests/app/practice/practice_support.h"
#include "tests/long_form.h"

// Pages of the practice press, of training and of competence, looked at one by one: TAUTWEB_PICTURES names a folder.
namespace taut::app::shop {

/// On what they are looked at.
struct Screen {
    QSize size;
    double text = 1;
    bool dark = false;
};

/// A window on such a screen; keeps a picture of every page that is looked at, and what of its texts is cut.
struct LookedAt {
    PracticeWindow w;
    QString kind;
    Screen screen;
    QStringList cut = {};
    int shown = 0;

    LookedAt(const char* of, const Screen& on)
        : w({on.size.width(), on.size.height() - 28}),
          kind(QString::fromLatin1(of)),
          screen(on)
    {
        applyTheme({on.dark, on.text, 1.0});
    }
    void look(const char* page)
    {
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
        const QString pictures = qEnvironmentVariable("TAUTWEB_PICTURES");
        if (!pictures.isEmpty())
            w.window.grab().save(QStringLiteral("%1/%2_%3_%4x%5_%6%7_%8_%9.png")
                                     .arg(pictures, kind, language())
                                     .arg(screen.size.width())
                                     .arg(screen.size.height())
                                     .arg(screen.text)
                                     .arg(screen.dark ? QStringLiteral("_dark") : QString())
                                     .arg(++shown, 2, 10, QLatin1Char('0'))
                                     .arg(QString::fromLatin1(page)));
        for (const QString& one : test::cutOn(w.window, isShortened))
            cut << QStringLiteral("%1: %2").arg(QString::fromLatin1(page), one);
    }

private:
    /// How a lesson is gone through is read before it is begun: that list is never shortened.
    static bool isShortened(const QWidget& one)
    {
        const bool pick = qobject_cast<const PickList*>(&one) != nullptr && one.objectName() != QLatin1String("mode");
        return pick || qobject_cast<const OneLine*>(&one) != nullptr ||
               qobject_cast<const StepList*>(&one) != nullptr ||
               qobject_cast<const StepList*>(one.parentWidget()) != nullptr;
    }
};

/// `walk` leads through the pages, on small and large screens with small and large type, in every language; nothing
/// may be cut on them.
inline void nothingIsCut(const char* kind, const std::function<void(LookedAt&)>& walk)
{
    struct Back {
        ~Back() { setLanguage(QStringLiteral("en")); }
    } back;
    const auto on = [&](const Screen& screen) {
        LookedAt pages(kind, screen);
        walk(pages);
        for (const QString& cut : pages.cut) FAIL_CHECK(cut.toStdString());
    };
    for (const char* tongue : {"en", "es", "de"})
        for (const QSize& size : {QSize(1366, 768), QSize(1920, 1080)})
            for (const double text : {1.0, 2.0}) {
                // Where there is least room for the longest words, each language; else one of them.
                const bool isNarrow = size.width() == 1366 && text > 1;
                const bool isGerman = std::string_view(tongue) == "de";
                if (!isLongForm() && !isNarrow && !(isGerman && size.width() == 1366)) continue;
                DYNAMIC_SECTION(tongue << ", " << size.width() << " x " << size.height() << ", text " << text)
                {
                    setLanguage(QString::fromLatin1(tongue));
                    on({size, text});
                }
            }
    SECTION("en, 1366 x 768, dark") { on({{1366, 768}, 1, true}); }
}

}  // namespace taut::app::shop
