// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/widgets/screen_keys.h"
#include "app/widgets/theme.h"

using namespace taut::app;

namespace {

struct Page {
    QWidget window;
    QLineEdit high{&window}, low{&window};
    QPushButton other{QStringLiteral("other"), &window};
    ScreenKeys keys{&window};
    Page()
    {
        applyTheme({});
        window.resize(1366, 768);
        high.setGeometry(900, 10, 300, 60);
        low.setGeometry(100, 690, 300, 60);
        other.setGeometry(500, 400, 200, 60);
        window.show();
        window.activateWindow();
        high.setFocus();
        QApplication::processEvents();
    }
    void tap(const char* types)
    {
        for (QAbstractButton* one : keys.findChildren<QAbstractButton*>())
            if (one->property("types").toString() == QLatin1String(types) || one->text() == QLatin1String(types))
                return QTest::mouseClick(one, Qt::LeftButton);
        FAIL("no key " << types);
    }
};

}  // namespace

TEST_CASE("the keys of the screen come only when asked for and type into the field that has the focus")
{
    Page page;
    CHECK_FALSE(page.keys.isVisible());
    page.keys.setWanted(true);
    REQUIRE(page.keys.isVisible());
    page.tap("capitals");
    page.tap("R");
    page.tap("0");
    page.tap("4");
    page.tap("5");
    page.tap("delete");
    CHECK(page.high.text() == QStringLiteral("R04"));
    QSignalSpy entered(&page.high, &QLineEdit::returnPressed);
    page.tap("Enter");
    CHECK(entered.size() == 1);
    CHECK(page.high.hasFocus());
}

TEST_CASE("the keys of the screen lie where the field is not, and go when the focus leaves the fields")
{
    Page page;
    page.keys.setWanted(true);
    CHECK_FALSE(page.keys.geometry().intersects(page.high.geometry()));
    page.low.setFocus();
    REQUIRE(page.keys.isVisible());
    CHECK_FALSE(page.keys.geometry().intersects(page.low.geometry()));
    QSignalSpy wanted(&page.keys, &ScreenKeys::wantedChanged);
    page.other.setFocus();
    CHECK_FALSE(page.keys.isVisible());
    CHECK(wanted.size() == 1);
    page.high.setFocus();
    CHECK_FALSE(page.keys.isVisible());
}

TEST_CASE("every key of the screen is at least 15 mm high less its border, and has a name")
{
    Page page;
    page.keys.setWanted(true);
    QApplication::processEvents();
    for (QAbstractButton* one : page.keys.findChildren<QAbstractButton*>()) {
        CAPTURE(one->text().toStdString());
        CHECK(one->height() >= millimetres(13));
        CHECK(one->width() >= millimetres(13));
        CHECK_FALSE(one->accessibleName().isEmpty());
    }
}
