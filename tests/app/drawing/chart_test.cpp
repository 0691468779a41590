// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

#include "app/drawing/chart.h"
#include "app/drawing/chart_labels.h"
#include "app/drawing/chart_picture.h"
#include "app/text/words.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::app;
using report::Chart;

namespace {

std::vector<Chart> chartsFor(const demo::Case& c)
{
    const auto in = demo::inputs(c.press, c.job, c.roll);
    return report::chartsOf(in, targets::computeTargets(in));
}

Look screen(double scale, const Palette& palette) { return {palette, appFont(12.5 * scale), 1.0}; }

QImage painted(const Chart& chart, const QSize& size, UnitSystem system, const Look& look)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(look.palette.ground);
    QPainter painter(&image);
    paintChart(painter, QRectF(QPointF(0, 0), size), chart, system, look);
    return image;
}

const demo::Case kNorth{"north", "quince-jelly", "R0041"}, kSouth{"south", "cold-brew", "R0048"};

}  // namespace

TEST_CASE("the figures beside an axis are round, in the press's units, and stand clear of each other")
{
    for (const auto& [c, system, x, y] :
         {std::tuple(kNorth, UnitSystem::Metric, "mm", "bar"), std::tuple(kSouth, UnitSystem::Us, "in", "lbf")})
        for (const double scale : {1.0, 2.0})
            for (const QSizeF size : {chartSize(screen(scale, lightPalette())), QSizeF(700, 500)}) {
                const Chart chart = chartsFor(c).front();
                const Look look = screen(scale, lightPalette());
                const ChartFrame f = chartFrame(QRectF(QPointF(0, 0), size), chart, system, look);
                CAPTURE(c.press, scale, size.width());
                CHECK(f.x.unit == x);
                CHECK(f.y.unit == y);
                CHECK(f.y.steps.front() == 0);
                const QFontMetricsF metrics(look.font);
                for (std::size_t i = 1; i < f.x.steps.size(); ++i) {
                    const double half = (metrics.horizontalAdvance(numberText(f.x.steps[i - 1])) +
                                         metrics.horizontalAdvance(numberText(f.x.steps[i]))) /
                                        2;
                    CHECK(f.x.at(f.x.steps[i]) - f.x.at(f.x.steps[i - 1]) > half);
                    const double step = f.x.steps[i] - f.x.steps[i - 1];
                    const double digits = step / std::pow(10, std::floor(std::log10(step) + 1e-9));
                    CHECK((digits == Approx(1) || digits == Approx(2) || digits == Approx(2.5) || digits == Approx(5)));
                }
                for (std::size_t i = 1; i < f.y.steps.size(); ++i)
                    CHECK(f.y.at(f.y.steps[i - 1]) - f.y.at(f.y.steps[i]) >= f.line);
                CHECK(f.plot.width() > size.width() / 2);
                CHECK(f.plot.height() > size.height() / 4);
            }
}

TEST_CASE("a chart is told as well without colour, light and dark")
{
    const Chart chart = chartsFor(kNorth)[1];  // tension: two lines, a window, now
    REQUIRE(chart.lines.size() == 2);
    for (const Palette* palette : {&lightPalette(), &darkPalette(), &paperPalette()}) {
        CHECK(contrast(palette->ink, palette->wash) >= 7);  // words on the window
        const QImage image = painted(chart, {520, 320}, UnitSystem::Metric, screen(1.0, *palette));
        // The line as set is solid across the plot; the one left alone is broken and stands above it.
        const ChartFrame f = chartFrame(QRectF(0, 0, 520, 320), chart, UnitSystem::Metric, screen(1.0, *palette));
        const auto inked = [&](double x, double y) {
            const double grey = qGray(image.pixel(qRound(x), qRound(y)));
            return std::abs(grey - qGray(palette->ink.rgb())) < 90;
        };
        int solid = 0, broken = 0, looked = 0;
        const auto& left = chart.lines[1].points;
        for (std::size_t i = 8; i + 8 < left.size(); ++i) {
            const auto& [x, y] = left[i];
            ++looked;
            solid += inked(f.x.at(x), f.y.at(chart.lines[0].points.front().second));
            broken += inked(f.x.at(x), f.y.at(y));
        }
        CHECK(solid == looked);
        CHECK(broken < looked);
        CHECK(broken > looked / 4);
    }
}

TEST_CASE("the words inside a chart do not cover each other and stay in their frame")
{
    ChartLabels labels(QRectF(0, 0, 400, 250), screen(1.0, lightPalette()));
    const QLineF line(0, 200, 400, 40);
    labels.avoid(line);
    for (int i = 0; i < 4; ++i) labels.addBeside(QStringLiteral("set again"), {200, 80}, 7, false);
    std::vector<QPointF> points;
    for (int x = 0; x <= 400; x += 20) points.push_back(line.pointAt(x / 400.0));
    labels.addAlong(QStringLiteral("left alone"), points);
    const auto places = labels.places();
    REQUIRE(places.size() == 5);
    for (std::size_t i = 0; i < places.size(); ++i) {
        CHECK(QRectF(0, 0, 400, 250).contains(places[i]));
        for (std::size_t k = 0; k < i; ++k) CHECK_FALSE(places[i].intersects(places[k]));
    }
}

TEST_CASE("a picture of charts is as large as it says, and has ink in every chart")
{
    for (const demo::Case& c : {kNorth, kSouth}) {
        ChartPicture picture{QStringLiteral("A press, a job, a roll"), {}, chartsFor(c), UnitSystem::Metric};
        const QImage image = QImage::fromData(pngOf(picture), "PNG");
        REQUIRE_FALSE(image.isNull());
        CHECK(image.size() == pictureSize(picture));
        CHECK(image.width() == 1600);
        const int rows = (static_cast<int>(picture.charts.size()) + 1) / 2;
        for (int row = 0; row < rows; ++row) {
            const int top = image.height() - (rows - row) * 550 + 60;
            int dark = 0;
            for (int y = top; y < top + 380; ++y)
                for (int x = 120; x < 780; ++x) dark += qGray(image.pixel(x, y)) < 90;
            CHECK(dark > 1000);
        }
        picture.mark = QStringLiteral("TRIAL");
        CHECK(pictureSize(picture).height() > image.height());
    }
}
