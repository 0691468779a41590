// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <vector>

#include <QImage>
#include <QPainter>

#include "app/drawing/taut_line.h"

using namespace taut::app;
using taut::run::StageState;

namespace {

const std::vector<StageState> kAllStates = {StageState::NotBegun, StageState::InWork, StageState::Done,
                                            StageState::DoneWithDeviation, StageState::Blocked};
constexpr int kWidth = 400, kHeight = 90;

/// One span alone, without its words, as a copier or a colour-blind eye gets it.
QImage greySpan(StageState state, const Palette& palette)
{
    QImage image(kWidth, kHeight, QImage::Format_RGB32);
    image.fill(palette.ground);
    QPainter painter(&image);
    paintTautLine(painter, image.rect(), {{QString(), QString(), state, false}}, {palette, appFont(12), 1.0});
    return image.convertToFormat(QImage::Format_Grayscale8);
}

int differing(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            if (std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 60) ++count;
    return count;
}

/// Rows of the middle third of the span that are not ground: how low the web hangs and how thick it is.
std::pair<int, int> inkRows(const QImage& grey, int column)
{
    const int ground = qGray(grey.pixel(0, grey.height() - 1));
    int first = -1, last = -1;
    for (int y = 0; y < grey.height(); ++y)
        if (std::abs(qGray(grey.pixel(column, y)) - ground) > 60) {
            if (first < 0) first = y;
            last = y;
        }
    return {first, last};
}

}  // namespace

TEST_CASE("each state of a stage is drawn differently without colour")
{
    for (const Palette* palette : {&lightPalette(), &darkPalette(), &paperPalette()})
        for (std::size_t i = 0; i < kAllStates.size(); ++i)
            for (std::size_t k = i + 1; k < kAllStates.size(); ++k) {
                CAPTURE(i, k, palette->dark);
                CHECK(differing(greySpan(kAllStates[i], *palette), greySpan(kAllStates[k], *palette)) > 120);
            }
}

TEST_CASE("a stage not begun hangs slack and a done one is straight and thick")
{
    const auto slack = inkRows(greySpan(StageState::NotBegun, lightPalette()), kWidth / 2);
    const auto straight = inkRows(greySpan(StageState::Done, lightPalette()), kWidth / 2);
    const auto quarter = inkRows(greySpan(StageState::Done, lightPalette()), kWidth / 4);
    CHECK(slack.first > straight.second + 10);
    CHECK(straight == quarter);
    CHECK(straight.second - straight.first >= 4);
    CHECK(slack.second - slack.first < straight.second - straight.first);
}

TEST_CASE("a stage in work sags less than one not begun")
{
    const auto slack = inkRows(greySpan(StageState::NotBegun, lightPalette()), kWidth / 2);
    const auto pulled = inkRows(greySpan(StageState::InWork, lightPalette()), kWidth / 2);
    CHECK(pulled.second < slack.first);
}

TEST_CASE("a blocked stage is parted in the middle")
{
    const auto middle = inkRows(greySpan(StageState::Blocked, lightPalette()), kWidth / 2);
    CHECK(middle.first == -1);
}

TEST_CASE("a deviation ties a knot above and below the line")
{
    const auto straight = inkRows(greySpan(StageState::Done, lightPalette()), kWidth / 2);
    const auto knot = inkRows(greySpan(StageState::DoneWithDeviation, lightPalette()), kWidth / 2);
    CHECK(knot.first < straight.first - 8);
}

TEST_CASE("the line grows with its words and the words stay inside their cells")
{
    const Look look{lightPalette(), appFont(12), 1.0};
    const std::vector<TautSpan> one{{QStringLiteral("Power-up"), QStringLiteral("done"), StageState::Done, true}};
    const std::vector<TautSpan> longer{{QStringLiteral("Handing the press over to the people who bring the ink"),
                                        QStringLiteral("done"), StageState::Done, true}};
    CHECK(tautLineHeight(200, longer, look) > tautLineHeight(200, one, look));
    Look large = look;
    large.font = appFont(24);
    CHECK(tautLineHeight(400, one, large) > tautLineHeight(400, one, look));
    const auto cells = tautLineCells({0, 0, 700, 90}, 7);
    REQUIRE(cells.size() == 7);
    CHECK(cells[0].left() == Approx(0));
    CHECK(cells[6].right() == Approx(700));
}
