// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QPainter>

#include "app/drawing/marks.h"
#include "app/print/sections.h"
#include "app/text/words.h"

namespace taut::app::print {

namespace {

using report::Align;
using report::Cell;
using report::Column;

/// Where the columns of one table lie.
struct Grid {
    std::vector<double> x, width;
};

/// A cell, set: its words beside its mark.
struct SetCell {
    SetText text;
    MarkShape mark = MarkShape::None;
    double x = 0, width = 0;
    bool ruled = false;
};

double pointsOf(const Type& type, report::Size size)
{
    switch (size) {
    case report::Size::Large: return kLarge - type.tightness() * (kLarge - kBody);
    case report::Size::Small: return kFine;
    case report::Size::Normal: break;
    }
    return kBody;
}

double markSideOf(const Type& type, double points) { return type.lineHeight(type.font(points)) * 0.92; }

/// What a cell's mark takes from the width of its words.
double besideMark(const Type& type, const Cell& cell, double points)
{
    return markOf(cell.mark) == MarkShape::None ? 0 : markSideOf(type, points) + type.mm(0.8);
}

/// What a column would like: never less than its longest word, and no more than its longest cell.
struct Wish {
    double least = 0, most = 0;
};

/// A word longer than this share of the table is broken: the tag of a roll must not take the room of the sentences.
constexpr double kLongestWord = 0.25;

std::vector<Wish> wishesOf(const Type& type, const report::Table& table, double width)
{
    std::vector<Wish> wishes(table.columns.size());
    const double points = pointsOf(type, table.size);
    const auto want = [&](std::size_t i, const QString& text, const QFont& font, double beside) {
        wishes[i].least =
            std::max(wishes[i].least, beside + std::min(type.longestWord(text, font), width * kLongestWord));
        wishes[i].most = std::max(wishes[i].most, beside + type.widthOf(text, font));
    };
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        want(i, words(table.columns[i].head, type.system()), type.font(kSmall), 0);
    for (const std::vector<Cell>& row : table.rows) {
        if (row.size() == 1 && table.columns.size() > 1) continue;
        for (std::size_t i = 0; i < row.size() && i < wishes.size(); ++i) {
            if (std::holds_alternative<report::Ruled>(row[i].value)) {
                wishes[i].least = std::max(wishes[i].least, type.mm(12));
                wishes[i].most = std::max(wishes[i].most, type.mm(18));
            } else {
                want(i, cellText(row[i], type.system()), type.font(points, row[i].strong),
                     besideMark(type, row[i], points));
            }
        }
    }
    // One very long cell must not starve the other columns: beyond so much it wraps. Set, words are a little wider than
    // measured.
    const double enough = type.mm(70), ease = type.mm(0.4);
    for (Wish& wish : wishes) {
        wish.least = std::min(wish.least, enough / 2) + ease;
        wish.most = std::max(wish.least, std::min(wish.most, enough) + ease);
    }
    return wishes;
}

/// What a column gets at a level: its weight's share, never less than its longest word nor more than it would like.
double widthAt(double level, const Wish& wish, const Column& column)
{
    return std::clamp(level * column.weight, wish.least, wish.most);
}

/// The level at which the columns together fill the width: narrow ones are served whole, wide ones share what is left
/// by weight.
double levelFor(const std::vector<Wish>& wishes, const std::vector<Column>& columns, double usable)
{
    double low = 0, high = usable;
    for (int i = 0; i < 60; ++i) {
        const double level = (low + high) / 2;
        double taken = 0;
        for (std::size_t c = 0; c < wishes.size(); ++c) taken += widthAt(level, wishes[c], columns[c]);
        (taken < usable ? low : high) = level;
    }
    return low;
}

/// Where not even the longest words have room: the width above which columns must give way. Those of figures are the
/// narrow ones and stay whole; a long word is broken before a number is.
double ceilingFor(const std::vector<Wish>& wishes, double usable)
{
    double low = 0, high = usable;
    for (int i = 0; i < 60; ++i) {
        const double ceiling = (low + high) / 2;
        double taken = 0;
        for (const Wish& wish : wishes) taken += std::min(wish.least, ceiling);
        (taken < usable ? low : high) = ceiling;
    }
    return low;
}

/// Columns as wide as their words; what is left over is shared out by weight.
Grid gridOf(const Type& type, const report::Table& table, double width)
{
    const std::vector<Wish> wishes = wishesOf(type, table, width);
    const double gap = type.mm(2.2);
    const double usable = width - gap * static_cast<double>(wishes.size() - 1);
    double least = 0, most = 0, weights = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        least += wishes[i].least;
        most += wishes[i].most;
        weights += table.columns[i].weight;
    }
    const double level = levelFor(wishes, table.columns, usable), ceiling = ceilingFor(wishes, usable);
    Grid grid;
    double x = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        double column = 0;
        if (most <= usable)
            column = wishes[i].most + (usable - most) * table.columns[i].weight / weights;
        else if (least < usable)
            column = widthAt(level, wishes[i], table.columns[i]);
        else
            column = std::min(wishes[i].least, ceiling);
        grid.x.push_back(x);
        grid.width.push_back(column);
        x += column + gap;
    }
    return grid;
}

Qt::Alignment alignOf(Align align) { return align == Align::Right ? Qt::AlignRight : Qt::AlignLeft; }

Strip headStrip(Type& type, const report::Table& table, const Grid& grid, double width)
{
    std::vector<SetText> heads;
    double height = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        heads.push_back(type.set(words(table.columns[i].head, type.system()), type.font(kSmall), grid.width[i],
                                 alignOf(table.columns[i].align)));
        if (heads.back().width > grid.width[i] + 1) type.tooLarge(words(table.columns[i].head, type.system()));
        height = std::max(height, heads.back().height);
    }
    const QPen rule = type.rule(0.4);
    Strip strip;
    strip.height = height + type.mm(0.8);
    strip.withNext = true;
    strip.draw = [=](QPainter& painter, QPointF at) {
        for (std::size_t i = 0; i < heads.size(); ++i) heads[i].draw(painter, at + QPointF(grid.x[i], 0));
        painter.setPen(rule);
        const double y = at.y() + height + rule.widthF();
        painter.drawLine(QPointF(at.x(), y), QPointF(at.x() + width, y));
    };
    return strip;
}

/// A heading across the table.
Strip acrossStrip(Type& type, const Cell& cell, double width)
{
    const SetText text = type.set(cellText(cell, type.system()), type.font(kSmall, true), width);
    const double above = type.mm(1.0);
    Strip strip;
    strip.name = cellText(cell, type.system());
    strip.height = above + text.height + type.mm(0.3);
    strip.withNext = true;
    strip.draw = [=](QPainter& painter, QPointF at) { text.draw(painter, at + QPointF(0, above)); };
    return strip;
}

Strip rowStrip(Type& type, const report::Table& table, const std::vector<Cell>& row, const Grid& grid, double width)
{
    std::vector<SetCell> cells;
    const double points = pointsOf(type, table.size);
    const double markSide = markSideOf(type, points);
    double height = 0;
    for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
        SetCell cell;
        cell.mark = markOf(row[i].mark);
        cell.ruled = std::holds_alternative<report::Ruled>(row[i].value);
        const double beside = besideMark(type, row[i], points);
        cell.x = grid.x[i];
        cell.width = grid.width[i];
        const QString words = cellText(row[i], type.system());
        cell.text =
            type.set(words, type.font(points, row[i].strong), cell.width - beside, alignOf(table.columns[i].align));
        if (cell.text.width > cell.width - beside + 1) type.tooLarge(words);
        height = std::max(height, cell.ruled ? type.mm(4.6) : cell.text.height);
        cells.push_back(std::move(cell));
    }
    const double padding = type.mm(0.45 - 0.2 * type.tightness()), markGap = type.mm(0.75);
    const Look look = type.look(points);
    QPen hair = type.rule(0.12);
    hair.setColor(QColor(0x80, 0x80, 0x80));
    const QPen line = type.rule(0.3);
    Strip strip;
    strip.name = cells.empty() ? QString() : cellText(row.front(), type.system());
    strip.height = height + 2 * padding;
    strip.draw = [=](QPainter& painter, QPointF at) {
        const double base = at.y() + height + 2 * padding;
        painter.setPen(hair);
        painter.drawLine(QPointF(at.x(), base), QPointF(at.x() + width, base));
        painter.setPen(Qt::black);
        for (const SetCell& cell : cells) {
            QPointF place = at + QPointF(cell.x, padding);
            if (cell.ruled) {
                painter.setPen(line);
                painter.drawLine(QPointF(place.x(), base), QPointF(place.x() + cell.width, base));
                painter.setPen(Qt::black);
                continue;
            }
            if (cell.mark != MarkShape::None) {
                paintMark(painter, QRectF(place, QSizeF(markSide, markSide)), cell.mark, look);
                place += QPointF(markSide + markGap, 0);
            }
            cell.text.draw(painter, place);
        }
    };
    return strip;
}

}  // namespace

std::vector<Strip> strips(Type& type, const report::Table& table, double width)
{
    std::vector<Strip> all;
    if (!table.caption.empty()) {
        for (Strip& strip : strips(type, report::Heading{table.caption}, width)) all.push_back(std::move(strip));
    }
    const Grid grid = gridOf(type, table, width);
    const Strip head = headStrip(type, table, grid, width);
    const auto again = std::make_shared<const Strip>(head);
    all.push_back(head);
    for (const std::vector<Cell>& row : table.rows) {
        const bool across = row.size() == 1 && table.columns.size() > 1;
        all.push_back(across ? acrossStrip(type, row.front(), width) : rowStrip(type, table, row, grid, width));
        all.back().head = again;
    }
    return all;
}

}  // namespace taut::app::print
