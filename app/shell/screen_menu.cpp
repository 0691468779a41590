// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/screen_menu.h"

#include <utility>

#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>
#include <QPushButton>

#include "app/seams/kept_settings.h"
#include "app/shell/main_window.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"

namespace taut::app {

namespace {

constexpr double kTextSizes[] = {1.0, 1.25, 1.5, 2.0};

constexpr std::pair<Ground, const char*> kGrounds[] = {
    {Ground::AsSystem, "system"}, {Ground::Light, "light"}, {Ground::Dark, "dark"}, {Ground::HighContrast, "contrast"}};

QString groundKey() { return QStringLiteral("ground"); }
QString darkKey() { return QStringLiteral("dark"); }
QString systemDarkKey() { return QStringLiteral("system_dark"); }
QString systemContrastKey() { return QStringLiteral("system_contrast"); }

/// High contrast is black on white, or white on black where the desktop is dark.
void standOn(Ground ground, ThemeChoice& choice)
{
    const SystemWish wish = systemWish();
    choice.dark = ground == Ground::Dark || (ground != Ground::Light && wish.dark);
    choice.contrast = ground == Ground::HighContrast || (ground == Ground::AsSystem && wish.contrast);
}

void keepGround(Ground ground)
{
    for (const auto& [one, word] : kGrounds)
        if (one == ground) keptSettings().setValue(groundKey(), QString::fromLatin1(word));
    ThemeChoice choice = themeChoice();
    standOn(ground, choice);
    applyTheme(choice);
}

void wear(const ThemeChoice& choice)
{
    applyTheme(choice);
    keptSettings().setValue(QStringLiteral("text_scale"), choice.textScale);
    keptSettings().setValue(QStringLiteral("still"), choice.still);
}

QString groundName(Ground ground)
{
    switch (ground) {
    case Ground::AsSystem: return MainWindow::tr("&As the system");
    case Ground::Light: return MainWindow::tr("&Light");
    case Ground::Dark: return MainWindow::tr("&Dark");
    case Ground::HighContrast: break;
    }
    return MainWindow::tr("&High contrast");
}

QString said(const char* english) { return QCoreApplication::translate("language", english); }

/// One of several, in a menu of their own. Each language is named as it calls itself: whoever looks for theirs reads
/// no other.
void speech(QMenu* menu, const std::function<void(const Wish&)>& wished)
{
    const auto offer = [&](QMenu* among, QActionGroup* group, const QString& name, bool stands, const Wish& wish) {
        QAction* action = among->addAction(name);
        action->setCheckable(true);
        action->setChecked(stands);
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, menu, [wished, wish] { wished(wish); });
    };
    QMenu* tongues = menu->addMenu(said(QT_TRANSLATE_NOOP("language", "Language")));
    auto* one = new QActionGroup(tongues);
    for (const Language& each : languages()) {
        const QString id = QString::fromLatin1(each.id);
        offer(tongues, one, dataText(std::string_view(each.name)), language() == id, {id, {}});
    }
    QMenu* units = menu->addMenu(said(QT_TRANSLATE_NOOP("language", "Units")));
    auto* system = new QActionGroup(units);
    for (const auto& [name, wish] : {std::pair(QT_TRANSLATE_NOOP("language", "As the press says"), UnitsWish::AsPress),
                                     std::pair(QT_TRANSLATE_NOOP("language", "Metric (mm, N, bar)"), UnitsWish::Metric),
                                     std::pair(QT_TRANSLATE_NOOP("language", "US (in, lbf, psi)"), UnitsWish::Us)})
        offer(units, system, said(name), unitsWish() == wish, {{}, wish});
}

}  // namespace

void setByRuler(double scale)
{
    ThemeChoice choice = themeChoice();
    choice.rulerScale = scale;
    applyTheme(choice);
    keptSettings().setValue(QStringLiteral("ruler_scale"), themeChoice().rulerScale);
}

Ground keptGround()
{
    const QString kept = keptSettings().value(groundKey()).toString();
    for (const auto& [ground, word] : kGrounds)
        if (kept == QLatin1String(word)) return ground;
    // Earlier versions kept nothing but whether it was dark.
    return keptSettings().value(darkKey(), false).toBool() ? Ground::Dark : Ground::AsSystem;
}

SystemWish systemWish()
{
    return {keptSettings().value(systemDarkKey(), false).toBool(),
            keptSettings().value(systemContrastKey(), false).toBool()};
}

void followSystem(const SystemWish& wish)
{
    const SystemWish before = systemWish();
    if (before.dark == wish.dark && before.contrast == wish.contrast) return;
    keptSettings().setValue(systemDarkKey(), wish.dark);
    keptSettings().setValue(systemContrastKey(), wish.contrast);
    ThemeChoice choice = themeChoice();
    standOn(keptGround(), choice);
    if (choice.dark != themeChoice().dark || choice.contrast != themeChoice().contrast) applyTheme(choice);
}

ThemeChoice keptTheme()
{
    ThemeChoice choice;
    standOn(keptGround(), choice);
    choice.textScale = keptSettings().value(QStringLiteral("text_scale"), choice.textScale).toDouble();
    choice.rulerScale = keptSettings().value(QStringLiteral("ruler_scale"), choice.rulerScale).toDouble();
    choice.still = keptSettings().value(QStringLiteral("still"), choice.still).toBool();
    return choice;
}

QPushButton* screenMenu(QWidget* parent, const std::function<void(const Wish&)>& wished)
{
    QPushButton* button = worded(MainWindow::tr("Screen\u2026"), "quiet", parent);
    button->setObjectName(QStringLiteral("screen"));
    button->setMinimumHeight(sizes().control);
    named(button, MainWindow::tr("How the screen looks: light or dark, size of the text, whether anything moves"));
    auto* menu = new QMenu(button);
    const auto offer = [menu](QActionGroup* group, const QString& name, bool chosen, const auto& choose) {
        QAction* action = menu->addAction(name);
        action->setCheckable(true);
        action->setChecked(chosen);
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, menu, choose);
    };
    auto* light = new QActionGroup(menu);
    for (const Ground ground : {Ground::AsSystem, Ground::Light, Ground::Dark, Ground::HighContrast})
        offer(light, groundName(ground), keptGround() == ground, [ground] { keepGround(ground); });
    menu->addSeparator();
    auto* type = new QActionGroup(menu);
    for (const double size : kTextSizes)
        offer(type, MainWindow::tr("Text %1 %").arg(qRound(size * 100)), qFuzzyCompare(themeChoice().textScale, size),
              [size] {
                  ThemeChoice choice = themeChoice();
                  choice.textScale = size;
                  wear(choice);
              });
    menu->addSeparator();
    QAction* still = menu->addAction(MainWindow::tr("&Nothing moves by itself"));
    still->setCheckable(true);
    still->setChecked(themeChoice().still);
    QObject::connect(still, &QAction::toggled, menu, [](bool on) {
        ThemeChoice choice = themeChoice();
        choice.still = on;
        wear(choice);
    });
    menu->addSeparator();
    speech(menu, wished);
    button->setMenu(menu);
    return button;
}

}  // namespace taut::app
