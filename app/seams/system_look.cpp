// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/system_look.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

namespace taut::app {

namespace {

// XDG Desktop Portal, "Settings", versions 1 and 2: Read, SettingChanged.
QString service() { return QStringLiteral("org.freedesktop.portal.Desktop"); }
QString object() { return QStringLiteral("/org/freedesktop/portal/desktop"); }
QString interface() { return QStringLiteral("org.freedesktop.portal.Settings"); }
QString appearance() { return QStringLiteral("org.freedesktop.appearance"); }
QString colourScheme() { return QStringLiteral("color-scheme"); }
QString contrastWish() { return QStringLiteral("contrast"); }

/// Read wraps the value twice; ReadOne and the signal wrap it once.
QVariant bare(QVariant value)
{
    while (value.canConvert<QDBusVariant>() && value.userType() == qMetaTypeId<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

}  // namespace

SystemLook::SystemLook(QObject* parent) : QObject(parent) {}

void SystemLook::listen()
{
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) return emit unheard();
    bus.connect(service(), object(), interface(), QStringLiteral("SettingChanged"), this,
                SLOT(settingChanged(QString, QString, QDBusVariant)));
    ask(colourScheme());
    ask(contrastWish());
}

void SystemLook::ask(const QString& key)
{
    QDBusMessage call = QDBusMessage::createMethodCall(service(), object(), interface(), QStringLiteral("Read"));
    call << appearance() << key;
    auto* waiting = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(call), this);
    connect(waiting, &QDBusPendingCallWatcher::finished, this, [this, key](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QDBusVariant> reply = *done;
        if (reply.isValid())
            hear(key, reply.value().variant());
        else if (key == colourScheme())
            emit unheard();
        done->deleteLater();
    });
}

void SystemLook::settingChanged(const QString& space, const QString& key, const QDBusVariant& value)
{
    if (space == appearance()) hear(key, value.variant());
}

void SystemLook::hear(const QString& key, const QVariant& value)
{
    bool understood = false;
    const uint number = bare(value).toUInt(&understood);
    if (!understood) return;
    if (key == colourScheme()) emit darkSaid(number == 1);
    if (key == contrastWish()) emit contrastSaid(number == 1);
}

}  // namespace taut::app
