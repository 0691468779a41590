// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/ruler_check.h"

#include <catch2/catch.hpp>

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/widgets/finding_strip.h"
#include "app/widgets/theme.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;

namespace {

struct Held {
    RulerCheck check;
    QSignalSpy scaled{&check, &RulerCheck::scaled};
    explicit Held(UnitSystem system = UnitSystem::Metric, double before = 1)
    {
        applyTheme({false, 1.0, before});
        check.setUnits(system);
        check.resize(700, 260);
        check.show();
        QTest::qWait(20);
    }
    ~Held() { applyTheme({}); }
    void read(const char* text)
    {
        auto* field = check.findChild<QLineEdit*>(QStringLiteral("rulerRead"));
        field->setText(QString::fromLatin1(text));
        QTest::mouseClick(check.findChild<QPushButton*>(QStringLiteral("rulerTake")), Qt::LeftButton);
    }
    [[nodiscard]] QString refused() const
    {
        auto* strip = check.findChild<FindingStrip*>();
        return strip->isVisible() ? strip->text() : QString();
    }
};

}  // namespace

TEST_CASE("what the ruler says of the bar corrects every millimetre of the screen")
{
    Held metric;
    metric.read("97 mm");
    REQUIRE(metric.scaled.size() == 1);
    CHECK(metric.scaled[0][0].toDouble() == Approx(100.0 / 97));
    // One that was set before is set further.
    Held again(UnitSystem::Metric, 1.25);
    CHECK(test::said(again.check).contains(QStringLiteral("125 %")));
    again.read("9,5 cm");
    CHECK(again.scaled[0][0].toDouble() == Approx(1.25 * 100 / 95));
    Held us(UnitSystem::Us);
    us.read("3 15/16 in");
    CHECK(us.scaled[0][0].toDouble() == Approx(4 / 3.9375));
    CHECK(test::said(us.check).contains(QStringLiteral("4 in long")));
}

TEST_CASE("what cannot be the length of that bar is refused with what to do, and nothing is set")
{
    Held held;
    for (const char* wrong : {"", "long", "97", "0 mm", "-97 mm", "4 m", "10 mm", "97 N"}) {
        INFO(wrong);
        held.read(wrong);
        CHECK_FALSE(held.refused().isEmpty());
    }
    CHECK(held.scaled.isEmpty());
    held.read("101 mm");
    CHECK(held.scaled.size() == 1);
    CHECK(held.refused().isEmpty());
}
