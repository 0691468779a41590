// SPDX-License-Identifier: GPL-3.0-or-later
// The taut line on the screen: it moves when a stage closes, once and briefly, and not where nothing is to move.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QTest>

#include "app/widgets/drawn.h"
#include "app/widgets/theme.h"

using namespace taut;
using namespace taut::app;

namespace {

constexpr int kBriefly = 700;  // ms, with room for a slow machine

std::vector<TautSpan> line(run::StageState first, run::StageState second)
{
    return {{QStringLiteral("Safety"), {}, first}, {QStringLiteral("Thread"), {}, second}};
}

/// A line on the screen with its first stage in work.
struct Line {
    explicit Line(bool still)
    {
        ThemeChoice choice;
        choice.still = still;
        applyTheme(choice);
        widget.resize(900, 120);
        widget.setSpans(line(run::StageState::InWork, run::StageState::NotBegun));
        widget.show();
        QTest::qWait(5);
    }
    ~Line() { applyTheme({}); }
    [[nodiscard]] QImage picture()
    {
        if (QWidget* focused = QApplication::focusWidget()) focused->clearFocus();
        return widget.grab().toImage();
    }
    TautLineWidget widget;
};

}  // namespace

TEST_CASE("A stage that closes is pulled straight once, and the line then stands as it would have without", "[widgets]")
{
    for (const auto closed : {run::StageState::Done, run::StageState::DoneWithDeviation}) {
        QImage straight;
        {
            Line still(true);
            still.widget.setSpans(line(closed, run::StageState::InWork));
            CHECK_FALSE(still.widget.moving());
            straight = still.picture();
        }
        Line moved(false);
        CHECK_FALSE(moved.widget.moving());  // a run that is opened does not replay what was
        moved.widget.setSpans(line(closed, run::StageState::InWork));
        CHECK(moved.widget.moving());
        CHECK(moved.picture() != straight);
        QElapsedTimer since;
        since.start();
        while (moved.widget.moving() && since.elapsed() < 5 * kBriefly) QTest::qWait(10);
        CHECK_FALSE(moved.widget.moving());
        CHECK(moved.picture() == straight);
        moved.widget.setSpans(line(closed, run::StageState::InWork));
        CHECK_FALSE(moved.widget.moving());
    }
}

TEST_CASE("What is shown anew while the line moves does not stop it, what happens next does", "[widgets]")
{
    Line one(false);
    one.widget.setSpans(line(run::StageState::Done, run::StageState::InWork));
    one.widget.setSpans(line(run::StageState::Done, run::StageState::InWork));
    CHECK(one.widget.moving());
    one.widget.setSpans(line(run::StageState::Blocked, run::StageState::InWork));
    CHECK_FALSE(one.widget.moving());
}

TEST_CASE("A stage that opens or is cut off does not move the line", "[widgets]")
{
    Line one(false);
    for (const auto& spans : {line(run::StageState::Blocked, run::StageState::NotBegun),
                              line(run::StageState::InWork, run::StageState::InWork),
                              line(run::StageState::InWork, run::StageState::NotBegun)}) {
        one.widget.setSpans(spans);
        CHECK_FALSE(one.widget.moving());
    }
}
