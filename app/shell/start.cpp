// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/start.h"

#include <algorithm>
#include <cstdio>
#include <optional>

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QPalette>

#include "app/seams/crash_log.h"
#include "app/seams/kept_settings.h"
#include "app/seams/one_window.h"
#include "app/seams/resources.h"
#include "app/seams/system_look.h"
#include "app/shell/main_window.h"
#include "app/shell/screen_menu.h"
#include "app/shell/tongue.h"
#include "app/text/language.h"
#include "app/text/pseudo.h"
#include "app/widgets/theme.h"
#include "core/units/plain.h"

namespace taut::app {

namespace {

constexpr int kWrongInput = 2;
constexpr int kMachine = 4;

struct Wishes {
    Session::Options session;
    bool dark = false;
    std::optional<double> textScale;
    bool pseudo = false;
    QString language;
};

std::optional<Wishes> wishesOf(const QStringList& arguments)
{
    QCommandLineParser parser;
    const QCommandLineOption logbook(QStringLiteral("logbook"), QStringLiteral("The logbook to open"),
                                     QStringLiteral("FILE"));
    const QCommandLineOption demo(QStringLiteral("demo"), QStringLiteral("Open the demo shop in a logbook of its own"));
    const QCommandLineOption dark(QStringLiteral("dark"), QStringLiteral("Light words on a dark ground"));
    const QCommandLineOption size(QStringLiteral("text-size"), QStringLiteral("100 to 200"), QStringLiteral("PERCENT"));
    const QCommandLineOption pseudo(QStringLiteral("pseudo"), QStringLiteral("Wrap every translated word"));
    const QCommandLineOption speech(QStringLiteral("language"), QStringLiteral("en, es or de, for this time"),
                                    QStringLiteral("LANGUAGE"));
    const QCommandLineOption delay(QStringLiteral("sync-delay"), QStringLiteral("Testers: how long a write takes"),
                                   QStringLiteral("MS"));
    parser.addOptions({logbook, demo, dark, size, pseudo, speech, delay});
    if (!parser.parse(arguments)) {
        std::fprintf(stderr, "tautweb: %s tautweb --help lists what there is.\n", qPrintable(parser.errorText()));
        return std::nullopt;
    }
    const QString wanted = parser.value(speech);
    const auto speaks = [&](const Language& one) { return wanted == QLatin1String(one.id); };
    if (parser.isSet(speech) && std::none_of(languages().begin(), languages().end(), speaks)) {
        QStringList known;
        for (const Language& one : languages()) known << QString::fromLatin1(one.id);
        std::fprintf(stderr, "tautweb: the program does not speak \"%s\". There are: %s.\n", qPrintable(wanted),
                     qPrintable(known.join(QStringLiteral(", "))));
        return std::nullopt;
    }
    const auto resources = resourcesFolder();
    if (!resources) {
        std::fprintf(stderr, "tautweb: %s\n", sentence(resources.error()).c_str());
        return std::nullopt;
    }
    Wishes wishes;
    wishes.session.resources = *resources;
    wishes.session.loadDemo = parser.isSet(demo);
    // The demo keeps out of the shop's own record.
    wishes.session.logbook = parser.isSet(logbook) ? std::filesystem::path(parser.value(logbook).toStdString())
                             : parser.isSet(demo)  ? dataFolder() / "demo.logbook"
                                                   : usualLogbook();
    wishes.session.syncDelayMs = parser.value(delay).toInt();
    wishes.dark = parser.isSet(dark);
    if (parser.isSet(size)) wishes.textScale = qBound(1.0, parser.value(size).toDouble() / 100, 2.0);
    wishes.pseudo = parser.isSet(pseudo);
    wishes.language = parser.isSet(speech) ? wanted : keptLanguage();
    return wishes;
}

/// What the desktop said last stands until it answers; where nobody does, the palette of the platform tells.
void lookAsSystem(SystemLook& desktop, const Wishes& wishes)
{
    const QPalette palette = QGuiApplication::palette();
    const bool dark = palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    if (!keptSettings().contains(QStringLiteral("system_dark"))) followSystem({dark, false});
    QObject::connect(&desktop, &SystemLook::unheard, &desktop, [dark] { followSystem({dark, false}); });
    ThemeChoice theme = keptTheme();
    if (wishes.dark) theme.dark = true;
    if (wishes.textScale) theme.textScale = *wishes.textScale;
    applyTheme(theme);
    QObject::connect(&desktop, &SystemLook::darkSaid, &desktop, [](bool isDark) {
        followSystem({isDark, systemWish().contrast});
    });
    QObject::connect(&desktop, &SystemLook::contrastSaid, &desktop, [](bool more) {
        followSystem({systemWish().dark, more});
    });
    // Whoever asked for dark this time has it whatever the desktop says.
    if (!wishes.dark) desktop.listen();
}

/// Whoever starts the program again on the same logbook is led to this window.
void keepOne(OneWindow& one, MainWindow& window)
{
    Session* session = window.session();
    const auto answer = [&one, session] { one.answerFor(session->options().logbook); };
    for (const auto there : {&Session::opened, &Session::openedToRead}) QObject::connect(session, there, &one, answer);
    QObject::connect(&one, &OneWindow::wanted, &window, [&window](const QString& token) {
        // The platform takes it from there when the window asks to be in front.
        if (!token.isEmpty()) qputenv("XDG_ACTIVATION_TOKEN", token.toUtf8());
        window.setWindowState(window.windowState() & ~Qt::WindowMinimized);
        window.show();
        window.raise();
        window.activateWindow();
    });
    answer();
}

}  // namespace

int startWindow(int argc, char** argv)
{
    QStringList arguments;
    for (int i = 0; i < argc; ++i) arguments << QString::fromLocal8Bit(argv[i]);
    const auto wishes = wishesOf(arguments);
    if (!wishes) return kWrongInput;
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") &&
        qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        std::fprintf(stderr, "tautweb: there is no display here. tautweb --help lists what works without one.\n");
        return kMachine;
    }
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("tautweb"));
    QApplication::setApplicationDisplayName(QStringLiteral("Tautweb"));
    setLanguage(wishes->language);
    setUnitsWish(keptUnits());
    if (wishes->pseudo) setPseudo(true);
    QGuiApplication::setDesktopFileName(QStringLiteral("tautweb"));
    if (raiseOther(wishes->session.logbook)) return 0;
    SystemLook desktop;
    lookAsSystem(desktop, *wishes);
    const CrashLog watching(stateFolder());
    MainWindow window(wishes->session);
    // What draws the icon is loaded once the window is painted and asks for its logbook.
    QObject::connect(
        window.session(), &Session::busyChanged, &window,
        [icon = wishes->session.resources / "icon" / "tautweb.svg"] {
            QApplication::setWindowIcon(QIcon(QString::fromStdString(icon.string())));
        },
        static_cast<Qt::ConnectionType>(Qt::DirectConnection | Qt::SingleShotConnection));
    OneWindow one;
    keepOne(one, window);
    window.tellOfFaults(untoldCrashLogs(stateFolder()));
    window.show();
    return QApplication::exec();
}

}  // namespace taut::app
