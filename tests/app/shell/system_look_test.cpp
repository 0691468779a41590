// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAction>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusVariant>
#include <QMenu>
#include <QProcess>
#include <QPushButton>

#include "app/seams/kept_settings.h"
#include "app/seams/system_look.h"
#include "app/shell/screen_menu.h"
#include "tests/app/shop.h"

using namespace taut::app;

/// The settings portal of a desktop, as XDG Desktop Portal, "Settings", version 1 (freedesktop.org) defines its face:
/// Read(s namespace, s key) -> v, where the value stands in a second variant; SettingChanged(s, s, v).
class DesktopPortal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public:
    uint scheme = 0, contrast = 0;

public slots:
    // NOLINTNEXTLINE(readability-identifier-naming): the name on the bus
    QDBusVariant Read(const QString& space, const QString& key)
    {
        if (space != QStringLiteral("org.freedesktop.appearance")) return {};
        const uint value = key == QStringLiteral("contrast") ? contrast : scheme;
        return QDBusVariant(QVariant::fromValue(QDBusVariant(value)));
    }

signals:
    void SettingChanged(const QString& space, const QString& key, const QDBusVariant& value);
};

namespace {

/// A session bus of its own: nobody's desktop is asked.
class Bus {
public:
    Bus()
    {
        m_daemon.start(QStringLiteral("dbus-daemon"),
                       {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        REQUIRE(m_daemon.waitForReadyRead(10000));
        m_address = QString::fromUtf8(m_daemon.readLine()).trimmed();
        qputenv("DBUS_SESSION_BUS_ADDRESS", m_address.toUtf8());
    }
    ~Bus()
    {
        m_daemon.kill();
        m_daemon.waitForFinished();
    }
    [[nodiscard]] QDBusConnection connection() const
    {
        return QDBusConnection::connectToBus(m_address, QStringLiteral("the desktop"));
    }

private:
    QProcess m_daemon;
    QString m_address;
};

void settings(const QTemporaryDir& folder)
{
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
    keptSettings().clear();
    applyTheme({});
}

void pick(QPushButton& screen, const char* name)
{
    for (QAction* action : screen.menu()->actions())
        if (action->text().remove(QLatin1Char('&')) == QLatin1String(name)) return action->trigger();
    FAIL("no such choice");
}

}  // namespace

// One test for all of it: the session bus of a process is the one that it found first.
TEST_CASE("what the desktop says of dark and contrast is heard, and each change of it, where there is a desktop")
{
    const Bus bus;
    {
        SystemLook nobody;
        QSignalSpy unheard(&nobody, &SystemLook::unheard), dark(&nobody, &SystemLook::darkSaid);
        nobody.listen();
        shop::until([&] { return unheard.count() == 1; }, "there is no portal");
        CHECK(dark.isEmpty());
    }
    QDBusConnection desktop = bus.connection();
    DesktopPortal portal;
    portal.scheme = 1;
    REQUIRE(desktop.registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal,
                                   QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals));
    REQUIRE(desktop.registerService(QStringLiteral("org.freedesktop.portal.Desktop")));

    SystemLook look;
    QSignalSpy dark(&look, &SystemLook::darkSaid), more(&look, &SystemLook::contrastSaid);
    look.listen();
    shop::until([&] { return dark.count() == 1 && more.count() == 1; }, "the portal has answered");
    CHECK(dark[0][0].toBool());
    CHECK_FALSE(more[0][0].toBool());

    const auto changes = [&](const char* space, const char* key, uint value) {
        emit portal.SettingChanged(QString::fromLatin1(space), QString::fromLatin1(key), QDBusVariant(value));
    };
    changes("org.freedesktop.other", "color-scheme", 0);
    changes("org.freedesktop.appearance", "accent-color", 0);
    changes("org.freedesktop.appearance", "contrast", 1);
    changes("org.freedesktop.appearance", "color-scheme", 2);
    shop::until([&] { return dark.count() == 2; }, "the change is heard");
    CHECK_FALSE(dark[1][0].toBool());
    REQUIRE(more.count() == 2);
    CHECK(more[1][0].toBool());
}

TEST_CASE("as the system is what holds until somebody chooses, and what is chosen then holds against the system")
{
    const QTemporaryDir folder;
    settings(folder);
    CHECK(keptGround() == Ground::AsSystem);
    QWidget window;
    QPushButton* screen = screenMenu(&window, [](const Wish&) {});

    followSystem({true, false});
    CHECK(themeChoice().dark);
    CHECK_FALSE(themeChoice().contrast);
    followSystem({true, true});
    CHECK(themeChoice().contrast);
    followSystem({false, false});
    CHECK_FALSE(themeChoice().dark);
    CHECK_FALSE(themeChoice().contrast);

    pick(*screen, "Light");
    followSystem({true, true});
    CHECK_FALSE(themeChoice().dark);
    CHECK_FALSE(themeChoice().contrast);
    CHECK_FALSE(keptTheme().dark);

    // High contrast stands on the ground that the desktop has.
    pick(*screen, "High contrast");
    CHECK(themeChoice().contrast);
    CHECK(themeChoice().dark);
    CHECK(currentLook().palette.ground == contrastPalette(true).ground);
    followSystem({false, false});
    CHECK(themeChoice().contrast);
    CHECK(currentLook().palette.ground == contrastPalette(false).ground);
    CHECK(keptTheme().contrast);

    pick(*screen, "As the system");
    CHECK_FALSE(themeChoice().contrast);
    followSystem({true, false});
    CHECK(themeChoice().dark);
    CHECK(keptTheme().dark);
    applyTheme({});
}

TEST_CASE("whoever had chosen dark before there was a choice to follow the system keeps it")
{
    const QTemporaryDir folder;
    settings(folder);
    keptSettings().setValue(QStringLiteral("dark"), true);
    CHECK(keptGround() == Ground::Dark);
    CHECK(keptTheme().dark);
}

#include "system_look_test.moc"
