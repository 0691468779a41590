// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/screen_menu.h"

#include <QActionGroup>
#include <QMenu>
#include <QPushButton>

#include "app/seams/kept_settings.h"
#include "app/shell/main_window.h"
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

}  // namespace

ThemeChoice keptTheme()
{
    ThemeChoice choice;
    choice.dark = keptSettings().value(QStringLiteral("dark"), choice.dark).toBool();
    choice.textScale = keptSettings().value(QStringLiteral("text_scale"), choice.textScale).toDouble();
    choice.still = keptSettings().value(QStringLiteral("still"), choice.still).toBool();
    return choice;
}

QPushButton* screenMenu(QWidget* parent)
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
    button->setMenu(menu);
    return button;
}

}  // namespace taut::app
