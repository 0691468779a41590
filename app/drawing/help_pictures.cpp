// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/help_pictures.h"

#include <cmath>
#include <functional>
#include <utility>
#include <vector>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "app/drawing/limit_bar.h"
#include "app/drawing/marks.h"
#include "app/drawing/taut_line.h"
#include "app/text/names.h"
#include "app/text/words.h"

namespace taut::app {

namespace {

/// Draws into a picture of this width, and says how high it is.
using Draw = std::function<double(QPainter& painter, const Look& look, double width)>;

QString said(const char* words) { return QCoreApplication::translate("help", words); }

double drawTautLine(QPainter& painter, const Look& look, double width)
{
    using run::StageState;
    std::vector<TautSpan> spans;
    for (const StageState state : {StageState::Done, StageState::DoneWithDeviation, StageState::InWork,
                                   StageState::Blocked, StageState::NotBegun})
        spans.push_back({stageStateText(state), {}, state, false, 0});
    const double height = tautLineHeight(width, spans, look);
    paintTautLine(painter, QRectF(0, 0, width, height), spans, look);
    return height;
}

/// The same window three times, with a reading inside, near a limit and outside.
double drawLimitBars(QPainter& painter, const Look& look, double width)
{
    constexpr double kBar = 1e5, kDoubt = 0.05 * kBar;
    const auto bar = [](double value) { return Quantity(value * kBar, Kind::Pressure, "bar"); };
    targets::Window window;
    window.low = bar(1.12);
    window.high = bar(1.66);
    double y = 0;
    for (const double value : {1.39, 1.63, 1.80}) {
        LimitBar drawn = limitBarOf(window, kDoubt, bar(1.39), bar(value), UnitSystem::Metric);
        drawn.judgement = verdict::judge(bar(value), kDoubt, window);
        drawn.word = verdictText(drawn.judgement);
        paintLimitBar(painter, QRectF(0, y, width, limitBarHeight(look)), drawn, look);
        y += limitBarHeight(look) + 8;
    }
    return y;
}

double drawSigns(QPainter& painter, const Look& look, double width)
{
    const std::pair<MarkShape, QString> signs[] = {
        {MarkShape::Tick, said(QT_TRANSLATE_NOOP("help", "done, or inside"))},
        {MarkShape::HalfDiamond, said(QT_TRANSLATE_NOOP("help", "near a limit"))},
        {MarkShape::Octagon, said(QT_TRANSLATE_NOOP("help", "outside"))},
        {MarkShape::Knot, said(QT_TRANSLATE_NOOP("help", "accepted with a deviation"))},
        {MarkShape::DashedBox, said(QT_TRANSLATE_NOOP("help", "not done yet"))},
        {MarkShape::TurnArrow, said(QT_TRANSLATE_NOOP("help", "to be done or said again"))},
        {MarkShape::DashBox, said(QT_TRANSLATE_NOOP("help", "does not apply"))},
        {MarkShape::Dot, said(QT_TRANSLATE_NOOP("help", "recorded, nothing to judge"))}};
    const double line = QFontMetricsF(look.font).height() * 1.5, half = width / 2;
    int place = 0;
    for (const auto& [shape, words] : signs) {
        const int column = place % 2, row = place / 2;
        const double x = column * half, y = row * line;
        paintMark(painter, QRectF(x, y, line, line * 0.9), shape, look);
        painter.setFont(look.font);
        painter.setPen(look.palette.ink);
        painter.drawText(QRectF(x + line * 1.2, y, half - line * 1.2, line * 0.9), Qt::AlignVCenter | Qt::AlignLeft,
                         words);
        ++place;
    }
    return line * 4;
}

/// One below the other, as they stand on a real card.
double drawCard(QPainter& painter, const Look& look, double width)
{
    const double line = QFontMetricsF(look.font).height(), edge = line * 0.8, room = width - 2 * edge;
    const double height = line * 8.8 + limitBarHeight(look);
    painter.setPen(QPen(look.palette.rule, 2));
    painter.setBrush(look.palette.sheet);
    painter.drawRoundedRect(QRectF(1, 1, width - 2, height - 2), 6, 6);
    double y = edge;
    const auto say = [&](const QString& words, double factor, bool bold, const QColor& ink) {
        painter.setFont(scaled(look.font, factor, bold));
        painter.setPen(ink);
        painter.drawText(QRectF(edge, y, room, line * factor * 1.2), Qt::AlignLeft | Qt::AlignVCenter, words);
        y += line * factor * 1.4;
    };
    say(said(QT_TRANSLATE_NOOP("help", "Where to stand")), 1, true, look.palette.ink);
    say(said(QT_TRANSLATE_NOOP("help", "What to do")), 1.6, false, look.palette.ink);
    say(said(QT_TRANSLATE_NOOP("help", "What could hurt, and what went before")), 0.9, false, look.palette.soft);
    targets::Window window;
    window.low = Quantity(1.12e5, Kind::Pressure, "bar");
    window.high = Quantity(1.66e5, Kind::Pressure, "bar");
    const Quantity reading(1.42e5, Kind::Pressure, "bar");
    LimitBar bar = limitBarOf(window, 5e3, Quantity(1.39e5, Kind::Pressure, "bar"), reading, UnitSystem::Metric);
    bar.judgement = verdict::judge(reading, 5e3, window);
    bar.word = verdictText(bar.judgement);
    paintLimitBar(painter, QRectF(edge, y, room, limitBarHeight(look)), bar, look);
    y += limitBarHeight(look) + line * 0.4;
    const QRectF button(edge, y, room, line * 1.9);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.palette.accent);
    painter.drawRoundedRect(button, 4, 4);
    painter.setPen(look.palette.onAccent);
    painter.setFont(scaled(look.font, 1.1, true));
    painter.drawText(button, Qt::AlignCenter, said(QT_TRANSLATE_NOOP("help", "Your answer")));
    return height;
}

const std::vector<std::pair<QString, Draw>>& pictures()
{
    static const std::vector<std::pair<QString, Draw>> all{{QStringLiteral("taut-line"), drawTautLine},
                                                           {QStringLiteral("limit-bar"), drawLimitBars},
                                                           {QStringLiteral("signs"), drawSigns},
                                                           {QStringLiteral("card"), drawCard}};
    return all;
}

}  // namespace

QStringList helpPictureNames()
{
    QStringList names;
    for (const auto& [name, draw] : pictures()) names << name;
    return names;
}

QImage helpPicture(const QString& name, const Look& look, double width, double pixelRatio)
{
    for (const auto& [one, draw] : pictures()) {
        if (one != name) continue;
        // Drawn once to nowhere, to know how high it is.
        QImage nowhere(1, 1, QImage::Format_ARGB32_Premultiplied);
        QPainter measuring(&nowhere);
        const double height = draw(measuring, look, width);
        measuring.end();
        QImage image(QSizeF(width * pixelRatio, std::ceil(height) * pixelRatio).toSize(),
                     QImage::Format_ARGB32_Premultiplied);
        image.setDevicePixelRatio(pixelRatio);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        draw(painter, look, width);
        return image;
    }
    return {};
}

}  // namespace taut::app
