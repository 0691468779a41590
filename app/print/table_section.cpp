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

Grid gridOf(const Type& type, const std::vector<Column>& columns, double width)
{
    Grid grid;
    const double gap = type.mm(2);
    double weights = 0;
    for (const Column& column : columns) weights += column.weight;
    const double usable = width - gap * static_cast<double>(columns.size() - 1);
    double x = 0;
    for (const Column& column : columns) {
        grid.x.push_back(x);
        grid.width.push_back(usable * column.weight / weights);
        x += grid.width.back() + gap;
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
    const double markSide = type.lineHeight(type.font(kBody)) * 0.92;
    double height = 0;
    for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
        SetCell cell;
        cell.mark = markOf(row[i].mark);
        cell.ruled = std::holds_alternative<report::Ruled>(row[i].value);
        const double beside = cell.mark == MarkShape::None ? 0 : markSide + type.mm(0.8);
        cell.x = grid.x[i];
        cell.width = grid.width[i];
        const QString words = cellText(row[i], type.system());
        cell.text =
            type.set(words, type.font(kBody, row[i].strong), cell.width - beside, alignOf(table.columns[i].align));
        if (cell.text.width > cell.width - beside + 1) type.tooLarge(words);
        height = std::max(height, cell.ruled ? type.mm(5.6) : cell.text.height);
        cells.push_back(std::move(cell));
    }
    const double padding = type.mm(0.45);
    const Look look = type.look(kBody);
    const QPen hair = type.rule(0.1), line = type.rule(0.25);
    Strip strip;
    strip.name = cells.empty() ? QString() : cellText(row.front(), type.system());
    strip.height = height + 2 * padding;
    strip.draw = [=](QPainter& painter, QPointF at) {
        for (const SetCell& cell : cells) {
            QPointF place = at + QPointF(cell.x, padding);
            if (cell.ruled) {
                painter.setPen(line);
                const double y = at.y() + height + padding;
                painter.drawLine(QPointF(place.x(), y), QPointF(place.x() + cell.width, y));
                continue;
            }
            if (cell.mark != MarkShape::None) {
                paintMark(painter, QRectF(place, QSizeF(markSide, markSide)), cell.mark, look);
                place += QPointF(markSide + padding * 1.7, 0);
            }
            cell.text.draw(painter, place);
        }
        painter.setPen(hair);
        const double y = at.y() + height + 2 * padding;
        painter.drawLine(QPointF(at.x(), y), QPointF(at.x() + width, y));
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
    const Grid grid = gridOf(type, table.columns, width);
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
