// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/screen_menu.h"

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

void wear(const ThemeChoice& choice)
{
    applyTheme(choice);
    keptSettings().setValue(QStringLiteral("dark"), choice.dark);
    keptSettings().setValue(QStringLiteral("text_scale"), choice.textScale);
    keptSettings().setValue(QStringLiteral("still"), choice.still);
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

ThemeChoice keptTheme()
{
    ThemeChoice choice;
    choice.dark = keptSettings().value(QStringLiteral("dark"), choice.dark).toBool();
    choice.textScale = keptSettings().value(QStringLiteral("text_scale"), choice.textScale).toDouble();
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
    for (const bool dark : {false, true})
        offer(light, dark ? MainWindow::tr("&Dark") : MainWindow::tr("&Light"), themeChoice().dark == dark, [dark] {
            ThemeChoice choice = themeChoice();
            choice.dark = dark;
            wear(choice);
        });
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
