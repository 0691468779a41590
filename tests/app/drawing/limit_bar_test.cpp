// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include <QImage>
#include <QPainter>

#include "app/drawing/chart.h"
#include "app/drawing/limit_bar.h"

using namespace taut;
using namespace taut::app;

namespace {

const Look kPaper{paperPalette(), appFont(12), 1.0};
const QRectF kBox(0, 0, 600, 130);

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }

LimitBar barFor(std::optional<double> low, std::optional<double> high, std::optional<double> reading, double u = 0.1)
{
    targets::Window window;
    if (low) window.low = bar(*low);
    if (high) window.high = bar(*high);
    return limitBarOf(window, u * 1e5, bar(1.5), reading ? std::optional(bar(*reading)) : std::nullopt,
                      UnitSystem::Metric);
}

QImage painted(const LimitBar& b)
{
    QImage image(600, 130, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintLimitBar(painter, kBox, b, kPaper);
    return image;
}

/// The middle of the dark run just above the track, where only the pin of the reading is drawn.
double pinColumn(const LimitBar& b)
{
    const QImage image = painted(b);
    const int row = static_cast<int>(limitBarScale(b, kBox, kPaper).track.top()) - 6;
    int first = -1, last = -1;
    for (int x = 0; x < image.width(); ++x)
        if (qGray(image.pixel(x, row)) < 100) {
            if (first < 0) first = x;
            last = x;
        }
    return (first + last + 1) / 2.0;
}

}  // namespace

TEST_CASE("the marker of a reading stands where its value lies between the limits")
{
    for (const double value : {1.0, 1.2, 1.5, 1.9, 2.0, 2.3}) {
        const LimitBar b = barFor(1.0, 2.0, value);
        const LimitBarScale scale = limitBarScale(b, kBox, kPaper);
        const double low = scale.x(1e5), high = scale.x(2e5);
        CAPTURE(value);
        CHECK(pinColumn(b) == Approx(low + (value - 1.0) * (high - low)).margin(1.0));
    }
}

TEST_CASE("a reading beyond the bar stands at its end and not outside the drawing")
{
    const LimitBar b = barFor(1.0, 2.0, 50.0);
    const LimitBarScale scale = limitBarScale(b, kBox, kPaper);
    CHECK(scale.x(50e5) == Approx(scale.track.right()));
    CHECK(scale.beyond(50e5));
    CHECK(b.word == QStringLiteral("outside"));
}

TEST_CASE("the bar says the verdict of the same judge as the record")
{
    // Limits 1 to 2, U = 0.1: ILAC-G8:09/2019 4.2.3 with w = U.
    CHECK(barFor(1.0, 2.0, 1.5).judgement.verdict == verdict::Verdict::Inside);
    CHECK(barFor(1.0, 2.0, 1.05).judgement.verdict == verdict::Verdict::Near);
    CHECK(barFor(1.0, 2.0, 2.5).judgement.verdict == verdict::Verdict::Outside);
    CHECK(barFor(1.0, 2.0, 2.05).judgement.doubtful);
}

TEST_CASE("the bands in which an instrument cannot tell are hatched and the middle is not")
{
    const LimitBar b = barFor(1.0, 2.0, std::nullopt, 0.2);
    const LimitBarScale scale = limitBarScale(b, kBox, kPaper);
    const QImage image = painted(b);
    const auto dark = [&](double from, double to) {
        int count = 0;
        for (int x = static_cast<int>(scale.x(from * 1e5)) + 3; x < static_cast<int>(scale.x(to * 1e5)) - 3; ++x)
            for (int y = static_cast<int>(scale.track.top()) + 4; y < static_cast<int>(scale.track.bottom()) - 4; ++y)
                if (qGray(image.pixel(x, y)) < 120) ++count;
        return count;
    };
    CHECK(dark(1.0, 1.2) > 40);
    CHECK(dark(1.8, 2.0) > 40);
    CHECK(dark(1.22, 1.42) == 0);
}

TEST_CASE("a window open at one end and no window at all still give a bar")
{
    for (const LimitBar& b : {barFor(1.0, std::nullopt, 1.4), barFor(std::nullopt, 2.0, 1.4),
                              barFor(std::nullopt, std::nullopt, 1.4), barFor(1.0, 1.0, 1.0)}) {
        const LimitBarScale scale = limitBarScale(b, kBox, kPaper);
        CHECK(scale.to > scale.from);
        CHECK(scale.x(1.4e5) >= scale.track.left());
        CHECK(scale.x(1.4e5) <= scale.track.right());
    }
}

TEST_CASE("an axis is divided into round steps that reach over its range")
{
    for (const auto& [from, to] : {std::pair(0.0, 1.39), {0.1022, 0.5}, {0.0, 137.0}, {-0.3, 0.3}, {102.0, 500.0}}) {
        CAPTURE(from, to);
        const std::vector<double> steps = roundSteps(from, to);
        REQUIRE(steps.size() >= 3);
        CHECK(steps.size() <= 9);
        CHECK(steps.front() <= from + 1e-9);
        CHECK(steps.back() >= to - 1e-9);
    }
}

TEST_CASE("the lines of a chart are told apart without colour")
{
    report::Chart chart;
    chart.xName = Text("diameter");
    chart.yName = Text("setting");
    const auto line = [](double level) {
        report::Chart::Line l;
        l.name = Text("x");
        for (const double d : {0.1, 0.3, 0.5}) l.points.emplace_back(Quantity(d, Kind::Length, "mm"), bar(level));
        return l;
    };
    chart.lines = {line(1.0), line(2.0)};
    QImage image(600, 300, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintChart(painter, image.rect(), chart, UnitSystem::Metric, kPaper);
    painter.end();
    // Gaps along each row that carries a line: a solid line has none, a dashed one many.
    std::vector<int> gaps;
    for (int y = 0; y < image.height(); ++y) {
        int dark = 0, changes = 0;
        for (int x = 150; x < 500; ++x) {
            const bool now = qGray(image.pixel(x, y)) < 90, next = qGray(image.pixel(x + 1, y)) < 90;
            dark += now;
            changes += now != next;
        }
        if (dark > 150 && (gaps.empty() || gaps.back() != changes)) gaps.push_back(changes);
    }
    CHECK(*std::min_element(gaps.begin(), gaps.end()) <= 2);
    CHECK(*std::max_element(gaps.begin(), gaps.end()) > 12);
}

TEST_CASE("without a window only what is equal to the aim stands on it, also where that is nought")
{
    for (const double aim : {0.0, 0.02}) {
        for (const double off : {0.005, -0.0001, 0.3}) {
            CAPTURE(aim, off);
            LimitBar b;
            b.aim = aim;
            b.reading = aim + off;
            const LimitBarScale scale = limitBarScale(b, kBox, kPaper);
            const double apart = scale.x(*b.reading) - scale.x(*b.aim);
            if (aim == 0 || std::abs(off) > aim) CHECK(std::abs(apart) > scale.track.width() / 5);
            CHECK((apart > 0) == (off > 0));
            CHECK_FALSE(scale.beyond(*b.reading));
        }
    }
}
