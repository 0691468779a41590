// SPDX-License-Identifier: GPL-3.0-or-later
// Tells when a program's first window is painted. Qt loads it by name into any program
// (QT_QPA_GENERIC_PLUGINS=painted), so that the program that people run and an empty window are timed by the same hook,
// and neither holds a line for it. Writes the machine's steady clock, in nanoseconds, as one line to the descriptor
// that TAUTWEB_PAINTED names.
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>

#include <QEvent>
#include <QGenericPlugin>
#include <QGuiApplication>
#include <QTimer>
#include <QWidget>

namespace {

class Watcher : public QObject {
public:
    Watcher() { QCoreApplication::instance()->installEventFilter(this); }
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        const auto* widget =
            event->type() == QEvent::Paint && watched->isWidgetType() ? static_cast<QWidget*>(watched) : nullptr;
        if (widget == nullptr || !widget->isWindow()) return false;
        QCoreApplication::instance()->removeEventFilter(this);
        // When this event is through, the window has been handed to the platform.
        QTimer::singleShot(0, this, &Watcher::say);
        return false;
    }

private:
    void say()
    {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        char line[32];
        const int length =
            std::snprintf(line, sizeof line, "%lld\n",
                          static_cast<long long>(std::chrono::duration_cast<std::chrono::nanoseconds>(now).count()));
        if (::write(std::atoi(std::getenv("TAUTWEB_PAINTED")), line, static_cast<std::size_t>(length)) < 0) ::_exit(9);
    }
};

class PaintedPlugin : public QGenericPlugin {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID QGenericPluginFactoryInterface_iid FILE "painted.json")

public:
    QObject* create(const QString& name, const QString&) override
    {
        return name == QLatin1String("painted") ? new Watcher : nullptr;
    }
};

}  // namespace

#include "painted.moc"
