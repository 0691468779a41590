// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/window/hands_support.h"

#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QScrollArea>
#include <QTest>
#include <QThread>
#include <QTimer>
#include <QWheelEvent>
#include <QWindow>

#include "app/widgets/controls.h"
#include "app/widgets/number_pad.h"
#include "app/widgets/screen_keys.h"

namespace taut::app::hands {

namespace {

constexpr int kMostTabs = 80;

QString plain(QString words) { return words.remove(QLatin1Char('&')); }

std::string nameOf(const QWidget* w)
{
    if (!w) return "nothing";
    const QString name = w->accessibleName().isEmpty() ? w->objectName() : w->accessibleName();
    return std::string(w->metaObject()->className()) + " \"" + name.toStdString() + '"';
}

/// A turn of the wheel over it: the only way in which a mouse alone gets at what is scrolled away.
void wheel(QWidget* window, const QPoint& at, int delta)
{
    const QPointF global = window->mapToGlobal(at);
    QWheelEvent event(at, global, {}, QPoint(0, delta), Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QWidget* under = window->childAt(at);
    while (under && under != window) {
        QWheelEvent here(under->mapFromGlobal(global), global, {}, QPoint(0, delta), Qt::NoButton, Qt::NoModifier,
                         Qt::NoScrollPhase, false);
        QApplication::sendEvent(under, &here);
        if (here.isAccepted()) return;
        under = under->parentWidget();
    }
}

}  // namespace

bool until(const std::function<bool()>& holds, int patienceMs) { return QTest::qWaitFor(holds, patienceMs); }

void pass(int milliseconds) { QTest::qWait(milliseconds); }

void Hand::missing(const QString& what) const
{
    FAIL("not on the screen: " << what.toStdString() << "\n" << read().toStdString());
}

QAbstractButton* Hand::worded(const QString& words) const
{
    for (QAbstractButton* one : m_window->findChildren<QAbstractButton*>())
        if (one->isVisible() && plain(one->text()) == words) return one;
    return nullptr;
}

QAbstractButton* Hand::mustWorded(const QString& words) const
{
    QAbstractButton* one = worded(words);
    if (!one) missing(words);
    return one;
}

QString Hand::read() const
{
    QString all;
    for (const auto* label : m_window->findChildren<QLabel*>())
        if (label->isVisible() && !label->text().isEmpty()) all += label->text() + QLatin1Char('\n');
    return all;
}

/// A point of the target that is really seen and not covered, in the window's coordinates; scrolls until there is one.
QPoint Hand::uncovered(QWidget* target)
{
    for (int turn = 0; turn < 40; ++turn) {
        const QPoint middle = target->mapTo(m_window, target->rect().center());
        QWidget* there = m_window->childAt(middle);
        if (there == target || (there && target->isAncestorOf(there))) return middle;
        // Which way it went: the area that scrolls it knows.
        QScrollArea* area = nullptr;
        for (QWidget* up = target->parentWidget(); up && !area; up = up->parentWidget())
            area = qobject_cast<QScrollArea*>(up);
        if (!area) {
            pass(20);  // a card that has just come up is still being laid out
            continue;
        }
        const QPoint over = area->mapTo(m_window, area->rect().center());
        wheel(m_window, over, middle.y() > over.y() ? -120 : 120);
        pass(1);
    }
    const QPoint middle = target->mapTo(m_window, target->rect().center());
    FAIL("covered, or out of reach: " << nameOf(target) << " by " << nameOf(m_window->childAt(middle)));
    return {};
}

void Hand::clickAt(QWidget* target, const QPoint& at)
{
    ++m_touches.others;
    QTest::mouseClick(target->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
}

void Hand::key(int key, Qt::KeyboardModifiers held)
{
    QTest::keyClick(m_window->windowHandle(), static_cast<Qt::Key>(key), held);
    pass(4);  // no hand presses the same key again at the moment at which it lets go
}

void Hand::reach(QWidget* target)
{
    if (m_way == Way::Mouse) {
        clickAt(m_window, uncovered(target));
        return;
    }
    std::string passed;
    for (int i = 0; i < kMostTabs; ++i) {
        QWidget* focus = m_window->focusWidget();
        if (focus && (focus == target || focus->focusProxy() == target)) return;
        passed += "\n" + nameOf(focus);
        key(Qt::Key_Tab);
    }
    FAIL("the Tab key does not lead to " << nameOf(target) << "; it leads to" << passed);
}

void Hand::press(QWidget* target)
{
    REQUIRE(target);
    INFO(nameOf(target));
    CHECK(target->isEnabled());
    if (m_way == Way::Mouse) {
        clickAt(m_window, uncovered(target));
        if (target->property("types").isValid()) {
            --m_touches.others;
            ++m_touches.keys;
        }
    } else {
        reach(target);
        key(Qt::Key_Space);
    }
}

void Hand::hold(QWidget* target)
{
    REQUIRE(target);
    INFO(nameOf(target));
    CHECK(target->isEnabled());
    // As a person does: until it says that it took it, however long this machine needs for 0.8 s.
    const QPointer<QWidget> held(target);
    const auto taken = [&] { return !held || !held->isEnabled() || !held->isVisible(); };
    if (m_way == Way::Mouse) {
        const QPoint at = uncovered(target);
        ++m_touches.holds;
        QTest::mousePress(m_window->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
        until(taken, 8000);
        QTest::mouseRelease(m_window->windowHandle(), Qt::LeftButton, Qt::NoModifier, at);
    } else {
        reach(target);
        QTest::keyPress(m_window->windowHandle(), Qt::Key_Space);
        until(taken, 8000);
        QTest::keyRelease(m_window->windowHandle(), Qt::Key_Space);
    }
}

namespace {

QString textIn(const QWidget* field) { return field->property("text").toString(); }

}  // namespace

void Hand::typeOnScreen(QWidget* field, const QString& text)
{
    // The page brings whoever comes to it to the field.
    if (!field->hasFocus()) clickAt(m_window, uncovered(field));
    if (NumberPad* pad = field->window()->findChild<NumberPad*>(); pad && pad->isVisible()) {
        for (const QChar sign : text)
            for (QAbstractButton* one : pad->findChildren<QAbstractButton*>())
                if (one->property("types").toString() == QString(sign)) press(one);
        if (textIn(field) == text) return;
    }
    if (QAbstractButton* keys = must<QAbstractButton>("keys"); !keys->isChecked()) press(keys);
    auto* panel = must<ScreenKeys>("screenKeys");
    while (!textIn(field).isEmpty()) press(mustWorded(QStringLiteral("delete")));
    for (const QChar sign : text) {
        const auto find = [&]() -> QAbstractButton* {
            for (QAbstractButton* one : panel->findChildren<QAbstractButton*>())
                if (one->property("types").toString() == QString(sign)) return one;
            return nullptr;
        };
        if (!find()) press(mustWorded(QStringLiteral("capitals")));
        QAbstractButton* one = find();
        if (!one) FAIL("no key on the screen types " << QString(sign).toStdString());
        press(one);
    }
    press(mustWorded(QStringLiteral("put away")));
}

void Hand::type(QWidget* field, const QString& text)
{
    REQUIRE(field);
    INFO(nameOf(field) << " " << text.toStdString());
    CHECK(field->isEnabled());
    if (m_way == Way::Mouse) {
        typeOnScreen(field, text);
    } else {
        reach(field);
        key(Qt::Key_A, Qt::ControlModifier);
        key(Qt::Key_Delete);
        for (const QChar sign : text) {
            QTest::keyClick(m_window->windowHandle(), sign.toLatin1());
            pass(50);  // as fast as people type, and no faster: what is faster was scanned
        }
    }
    until([&] { return textIn(field) == text; }, 2000);
    CHECK(textIn(field) == text);
}

void Hand::choose(QComboBox* list, const QString& entry)
{
    REQUIRE(list);
    const int wanted = list->findText(entry);
    INFO(nameOf(list) << " " << entry.toStdString());
    REQUIRE(wanted >= 0);
    if (m_way == Way::Keys) {
        reach(list);
        for (int i = 0; i <= list->count() && list->currentIndex() != wanted; ++i)
            key(list->currentIndex() < wanted ? Qt::Key_Down : Qt::Key_Up);
    } else {
        clickAt(m_window, uncovered(list));
        REQUIRE(until([&] { return list->view()->isVisible(); }));
        pass(QApplication::doubleClickInterval() + 50);  // a list takes a release too soon after it opened for none
        const QModelIndex index = list->model()->index(wanted, list->modelColumn());
        list->view()->scrollTo(index);
        const QPoint at = list->view()->visualRect(index).center();
        QWidget* popup = list->view()->window();
        QTest::mouseClick(popup->windowHandle(), Qt::LeftButton, Qt::NoModifier,
                          list->view()->viewport()->mapTo(popup, at));
    }
    CHECK(list->currentText() == entry);
}

void Hand::take(QAbstractButton* button, const QString& entry)
{
    // A menu runs a loop of its own until something is taken: what follows is sent from within.
    bool taken = false;
    int looks = 0;
    auto* timer = new QTimer(m_window);
    QObject::connect(timer, &QTimer::timeout, m_window, [&, timer] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        if (!menu || ++looks < 5) return;  // seen long enough to lie where it stays
        timer->stop();
        QAction* action = nullptr;
        for (QAction* one : menu->actions())
            if (plain(one->text()) == entry) action = one;
        if (!action || !action->isEnabled()) {
            menu->close();
            return;
        }
        taken = true;
        if (m_way == Way::Mouse) {
            QTest::mouseClick(menu->windowHandle(), Qt::LeftButton, Qt::NoModifier,
                              menu->actionGeometry(action).center());
            return;
        }
        for (int i = 0; i < 40 && menu->activeAction() != action; ++i) {
            QThread::msleep(4);
            QTest::keyClick(menu->windowHandle(), Qt::Key_Down);
        }
        QTest::keyClick(menu->windowHandle(), Qt::Key_Return);
    });
    timer->start(30);
    press(button);
    until([&] { return taken; }, 2000);
    timer->deleteLater();
    INFO(entry.toStdString());
    REQUIRE(taken);
}

}  // namespace taut::app::hands
