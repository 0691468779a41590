// SPDX-License-Identifier: GPL-3.0-or-later
// The practice press for everyone: by keyboard alone, and for assistive technology.
#include <catch2/catch.hpp>

#include <functional>
#include <map>
#include <set>

#include <QAccessible>
#include <QButtonGroup>

#include "app/pages/practice/press_picture.h"
#include "tests/app/practice/practice_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

bool isControl(const QWidget& w)
{
    return w.isVisible() && w.isEnabled() && w.focusPolicy() != Qt::NoFocus &&
           !w.objectName().startsWith(QLatin1String("qt_"));
}

/// Page after page of a lesson.
void each(PracticeWindow& w, const std::function<void(const char*)>& look)
{
    w.door(Qt::Key_4);
    QTest::qWait(50);
    look("choose");
    w.begin();
    for (const char* place : {"place0", "place1", "place2", "place3", "place4", "place5", "place100"}) {
        w.click(place);
        QTest::qWait(50);
        look(place);
    }
    w.touch("air_supply");
    w.touch("roll_to_lift");
    w.touch("lift_pressure", {}, "0.5 bar");
    w.touch("lift_up");
    w.wait(1);
    REQUIRE(w.practice().happened());
    QTest::qWait(50);
    look("happened");
}

}  // namespace

TEST_CASE("every control of the practice press has a name of its own, a role and a state for assistive technology")
{
    PracticeWindow w;
    each(w, [&](const char* page) {
        CAPTURE(page);
        std::map<std::pair<int, QString>, int> names;
        for (QWidget* one : w.window.findChildren<QWidget*>()) {
            if (!isControl(*one) || one->window() != &w.window) continue;
            QAccessibleInterface* access = QAccessible::queryAccessibleInterface(one);
            REQUIRE(access);
            const QString name = access->text(QAccessible::Name);
            CAPTURE(one->metaObject()->className(), one->objectName().toStdString(), name.toStdString());
            CHECK_FALSE(name.trimmed().isEmpty());
            CHECK_FALSE(name.contains(QStringLiteral("taut::")));
            CHECK(access->role() != QAccessible::NoRole);
            CHECK(access->state().focusable);
            ++names[{access->role(), name}];
        }
        for (const auto& [which, count] : names) {
            CAPTURE(which.second.toStdString());
            CHECK(count == 1);
        }
    });
    const auto* picture = visible<PressPicture>(w.window);
    REQUIRE(picture);
    CHECK(picture->accessibleDescription().contains(QStringLiteral("slack")));
    CHECK(picture->accessibleDescription().contains(QStringLiteral("Guards stand open")));
}

TEST_CASE("the Tab key comes to every control of the practice press")
{
    PracticeWindow w;
    each(w, [&](const char* page) {
        CAPTURE(page);
        std::set<QWidget*> wanted, came;
        for (QWidget* one : w.window.findChildren<QWidget*>())
            if (isControl(*one) && (one->focusPolicy() & Qt::TabFocus) && one->window() == &w.window)
                wanted.insert(one);
        REQUIRE(wanted.size() > 3);
        for (std::size_t i = 0; i < wanted.size() * 2 + 4; ++i) {
            if (QWidget* focus = w.window.focusWidget()) came.insert(focus);
            QTest::keyClick(w.window.focusWidget() ? w.window.focusWidget() : &w.window, Qt::Key_Tab);
        }
        for (QWidget* one : wanted) {
            // Of buttons of which one is on, Tab comes to that one and the arrows to the others.
            if (const auto* button = qobject_cast<const QAbstractButton*>(one))
                if (button->group() && button->group()->exclusive() && !button->isChecked()) continue;
            CAPTURE(one->metaObject()->className(), one->objectName().toStdString(),
                    one->accessibleName().toStdString());
            CHECK((came.count(one) == 1 || (one->focusProxy() && came.count(one->focusProxy()) == 1)));
        }
    });
}

TEST_CASE("a lesson is begun, worked and gone on with by keys alone")
{
    PracticeWindow w;
    w.door(Qt::Key_4);
    const auto press = [&](Qt::Key key) { QTest::keyClick(w.window.focusWidget(), key); };
    REQUIRE(w.window.focusWidget());
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    until([&] { return w.practice().runs()->run() != nullptr && !w.practice().runs()->busy(); }, "begun");
    // From where the focus is, Tab leads to the row; Enter does it.
    const auto to = [&](const std::function<bool(const QWidget&)>& there) {
        constexpr int kMost = 120;
        for (int i = 0; i < kMost && !there(*w.window.focusWidget()); ++i) press(Qt::Key_Tab);
        REQUIRE(there(*w.window.focusWidget()));
    };
    to([](const QWidget& one) { return one.accessibleName() == QStringLiteral("Q1, Main disconnect: Switch on"); });
    press(Qt::Key_Return);
    CHECK(w.world().press().mains);
    to([](const QWidget& one) { return one.objectName().startsWith(QStringLiteral("pace")); });
    press(Qt::Key_Left);
    press(Qt::Key_Right);
    CHECK(w.practice().pace() != Pace::Stopped);
    to([](const QWidget& one) { return one.objectName() == QStringLiteral("endLesson"); });
    press(Qt::Key_Return);
    CHECK(w.practice().lesson() == nullptr);
}
