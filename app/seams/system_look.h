// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QDBusVariant;

namespace taut::app {

/// Whether the desktop is dark, and whether it asks for more contrast: the settings `color-scheme` and `contrast` of
/// org.freedesktop.appearance in the settings portal of the session bus. Nothing waits for the answer; a desktop
/// without the portal says nothing.
class SystemLook : public QObject {
    Q_OBJECT

public:
    explicit SystemLook(QObject* parent = nullptr);
    /// Asks, and listens from then on.
    void listen();

signals:
    /// 1 means dark; 0 (no wish) and 2 (light) do not.
    void darkSaid(bool dark);
    void contrastSaid(bool more);
    /// There is nobody to say whether the desktop is dark.
    void unheard();

private slots:
    void settingChanged(const QString& space, const QString& key, const QDBusVariant& value);

private:
    void ask(const QString& key);
    void hear(const QString& key, const QVariant& value);
};

}  // namespace taut::app
