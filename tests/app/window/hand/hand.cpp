// SPDX-License-Identifier: GPL-3.0-or-later
// A hand for the real program. Qt loads input devices as plugins (QT_QPA_GENERIC_PLUGINS), so the very `tautweb` that
// people run can be worked and killed without a display, and holds not one line for it: no script option, no hook, no
// second program that builds a window of its own and may differ. The hand reads one order a line from standard input,
// gives it to the window as mouse and key events, and says on standard output what a person would see.
//
//   see                what is shown now, as one line of JSON
//   click NAME         the button, box or field of this name or of these words
//   hold NAME          the same, held down until it is taken
//   choose LIST ENTRY  an entry of a list; names and entries hold '_' for a space
//   size WIDTH HEIGHT  of the window
//   key CODE           a key (Qt::Key) to whatever has the focus
//   type TEXT          letters to whatever has the focus
#include <unistd.h>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QGenericPlugin>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QSocketNotifier>
#include <QTest>
#include <QThread>
#include <QTimer>
#include <QWindow>

namespace {

/// No hand presses the same key again at the moment at which it lets go.
template <class Key>
void pressKey(QWidget* window, Key key)
{
    QThread::msleep(4);
    QTest::keyClick(window->windowHandle(), key);
}

QString plain(QString words) { return words.remove(QLatin1Char('&')); }

QWidget* shownWindow()
{
    for (QWidget* top : QApplication::topLevelWidgets())
        if (top->isVisible() && !(top->windowFlags() & Qt::Popup & ~Qt::Window)) return top;
    return nullptr;
}

QString wordsOf(const QWidget* w)
{
    if (const auto* button = qobject_cast<const QAbstractButton*>(w)) return plain(button->text());
    return w->accessibleName();
}

class Hand : public QObject {
public:
    explicit Hand(QObject* parent) : QObject(parent), m_orders(STDIN_FILENO, QSocketNotifier::Read)
    {
        connect(&m_orders, &QSocketNotifier::activated, this, &Hand::take);
    }

private:
    static void say(const QJsonObject& object)
    {
        const QByteArray line = QJsonDocument(object).toJson(QJsonDocument::Compact) + '\n';
        if (::write(STDOUT_FILENO, line.constData(), static_cast<std::size_t>(line.size())) < 0) ::_exit(9);
    }
    static void did(bool done) { say({{QStringLiteral("did"), done}}); }

    void take()
    {
        char bytes[4096];
        const auto got = ::read(STDIN_FILENO, bytes, sizeof bytes);
        if (got <= 0) {
            m_orders.setEnabled(false);
            return;
        }
        m_read.append(bytes, got);
        for (qsizetype end = m_read.indexOf('\n'); end >= 0; end = m_read.indexOf('\n')) {
            const QString order = QString::fromUtf8(m_read.left(end));
            m_read.remove(0, end + 1);
            obey(order);
        }
    }
    void obey(const QString& order)
    {
        QStringList parts = order.split(QLatin1Char(' '));
        const QString what = parts.takeFirst();
        QWidget* window = shownWindow();
        if (!window || !window->windowHandle()) return say({{QStringLiteral("window"), false}});
        for (QString& part : parts) part.replace(QLatin1Char('_'), QLatin1Char(' '));
        if (what == QLatin1String("see")) return see(window);
        if (what == QLatin1String("size")) {
            window->showNormal();
            window->resize(parts.value(0).toInt(), parts.value(1).toInt());
            return did(true);
        }
        if (what == QLatin1String("key")) {
            QTest::keyClick(window->windowHandle(), static_cast<Qt::Key>(parts.value(0).toInt()));
            return did(true);
        }
        if (what == QLatin1String("type")) {
            for (const QChar sign : parts.join(QLatin1Char(' '))) {
                QThread::msleep(50);  // as fast as people type, and no faster: what is faster was scanned
                pressKey(window, sign.toLatin1());
            }
            return did(true);
        }
        QWidget* target = find(window, parts.value(0));
        if (!target || !target->isEnabled()) return did(false);
        if (what == QLatin1String("choose")) {
            auto* list = qobject_cast<QComboBox*>(target);
            const int wanted = list ? list->findText(parts.value(1)) : -1;
            if (wanted < 0) return did(false);
            list->setFocus();
            for (int i = 0; i <= list->count() && list->currentIndex() != wanted; ++i)
                pressKey(window, list->currentIndex() < wanted ? Qt::Key_Down : Qt::Key_Up);
            return did(list->currentIndex() == wanted);
        }
        for (QWidget* up = target->parentWidget(); up; up = up->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(up)) area->ensureWidgetVisible(target);
        const QPoint at = target->mapTo(window, target->rect().center());
        QWidget* there = window->childAt(at);
        if (there != target && !(there && target->isAncestorOf(there))) return did(false);
        if (what == QLatin1String("click")) {
            QTest::mouseClick(window->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
            return did(true);
        }
        QTest::mousePress(window->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
        // As a person does: until the button says that it took it.
        auto* look = new QTimer(window);
        connect(look, &QTimer::timeout, window, [window, at, look, held = QPointer<QWidget>(target)] {
            if (held && held->isEnabled() && held->isVisible()) return;
            look->deleteLater();
            QTest::mouseRelease(window->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
        });
        look->start(20);
        did(true);
    }
    static QWidget* find(QWidget* window, const QString& name)
    {
        for (QWidget* one : window->findChildren<QWidget*>())
            if (one->isVisible() && (one->objectName() == name || wordsOf(one) == name)) return one;
        return nullptr;
    }
    static void see(QWidget* window)
    {
        QJsonArray words, buttons;
        QString say;
        for (QLabel* label : window->findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty()) continue;
            if (label->objectName() == QLatin1String("say")) say = label->text();
            words.append(label->text());
        }
        for (QWidget* one : window->findChildren<QWidget*>()) {
            if (!one->isVisible() || !(qobject_cast<QAbstractButton*>(one) || qobject_cast<QLineEdit*>(one))) continue;
            const auto* button = qobject_cast<QAbstractButton*>(one);
            buttons.append(QJsonObject{{QStringLiteral("name"), one->objectName()},
                                       {QStringLiteral("words"), wordsOf(one)},
                                       {QStringLiteral("kind"), QString::fromLatin1(one->metaObject()->className())},
                                       {QStringLiteral("checked"), button && button->isChecked()},
                                       {QStringLiteral("enabled"), one->isEnabled()}});
        }
        const QWidget* focus = window->focusWidget();
        Hand::say({{QStringLiteral("say"), say},
                   {QStringLiteral("words"), words},
                   {QStringLiteral("buttons"), buttons},
                   {QStringLiteral("focus"), focus ? wordsOf(focus) : QString()}});
    }
    QSocketNotifier m_orders;
    QByteArray m_read;
};

class HandPlugin : public QGenericPlugin {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID QGenericPluginFactoryInterface_iid FILE "hand.json")

public:
    QObject* create(const QString& name, const QString&) override
    {
        return name == QLatin1String("hand") ? new Hand(nullptr) : nullptr;
    }
};

}  // namespace

#include "hand.moc"
