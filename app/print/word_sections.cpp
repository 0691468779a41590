// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QCoreApplication>
#include <QPainter>

#include "app/print/sections.h"
#include "app/text/names.h"
#include "app/text/words.h"

namespace taut::app::print {

namespace {

using report::Cell;

/// One name and its value, the name small above the value.
struct Pair {
    SetText name, value;
    double height = 0;
    bool ruled = false;
};

Strip textStrip(Type& type, const QString& text, const QFont& font, double width, double below)
{
    const SetText set = type.set(text, font, width);
    if (set.width > width + 1) type.tooLarge(text);
    Strip strip;
    strip.name = text;
    strip.height = set.height + type.mm(below);
    strip.draw = [set](QPainter& painter, QPointF at) { set.draw(painter, at); };
    return strip;
}

}  // namespace

QString cellText(const Cell& cell, UnitSystem system)
{
    if (const auto* text = std::get_if<Text>(&cell.value)) return words(*text, system);
    if (const auto* quantity = std::get_if<Quantity>(&cell.value)) return quantityText(*quantity, system);
    if (const auto* limit = std::get_if<report::Limit>(&cell.value))
        return quantityText(limit->value, system, limit->lower ? Rounding::Up : Rounding::Down);
    if (const auto* limits = std::get_if<report::Limits>(&cell.value))
        return rangeText(limits->low, limits->high, system);
    return {};
}

Strip space(const Type& type, double millimetres)
{
    Strip strip;
    strip.height = type.mm(millimetres);
    return strip;
}

std::vector<Strip> strips(Type& type, const report::Heading& heading, double width)
{
    Strip strip = textStrip(type, words(heading.text, type.system()), type.font(kHead, true), width, 1.0);
    strip.withNext = true;
    return {std::move(strip)};
}

std::vector<Strip> strips(Type& type, const report::Paragraph& paragraph, double width)
{
    const QFont font = type.font(paragraph.strong ? kBody : kSmall, paragraph.strong);
    return {textStrip(type, words(paragraph.text, type.system()), font, width, 1.2)};
}

std::vector<Strip> strips(Type& type, const report::Caution& caution, double width)
{
    const QString word = signalText(caution.word);
    const double bar = type.mm(1.4), inset = type.mm(2.6);
    const SetText head = type.set(word, type.font(kSmall, true), width - inset);
    const SetText text = type.set(words(caution.text, type.system()), type.font(kSmall), width - inset);
    if (std::max(head.width, text.width) > width - inset + 1) type.tooLarge(word);
    const double headHeight = word.isEmpty() ? 0 : head.height;
    const double height = headHeight + text.height;
    // The graver the word, the heavier the bar: shape tells it where colour cannot.
    const bool heavy = caution.word == procedure::SignalWord::Danger || caution.word == procedure::SignalWord::Warning;
    const QPen rule = type.rule(0.25);
    Strip strip;
    strip.name = word;
    strip.height = height + type.mm(1.6);
    strip.draw = [=](QPainter& painter, QPointF at) {
        const QRectF edge(at.x(), at.y(), bar, height);
        painter.setPen(rule);
        painter.setBrush(heavy ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
        painter.drawRect(edge);
        if (headHeight > 0) head.draw(painter, at + QPointF(inset, 0));
        text.draw(painter, at + QPointF(inset, headHeight));
    };
    return {std::move(strip)};
}

std::vector<Strip> strips(Type& type, const report::Facts& facts, double width)
{
    const int columns = width > type.mm(140) ? 5 : (width > type.mm(80) ? 3 : 2);
    const double gap = type.mm(3);
    const double each = (width - gap * (columns - 1)) / columns;
    std::vector<Strip> all;
    for (std::size_t first = 0; first < facts.pairs.size(); first += static_cast<std::size_t>(columns)) {
        const std::size_t last = std::min(facts.pairs.size(), first + static_cast<std::size_t>(columns));
        std::vector<Pair> row;
        double height = 0;
        for (std::size_t i = first; i < last; ++i) {
            const auto& [name, cell] = facts.pairs[i];
            Pair pair;
            pair.name = type.set(words(name, type.system()), type.font(kSmall), each);
            pair.value = type.set(cellText(cell, type.system()), type.font(kBody, cell.strong), each);
            pair.ruled = std::holds_alternative<report::Ruled>(cell.value);
            pair.height = pair.name.height + (pair.ruled ? type.mm(6) : pair.value.height);
            if (std::max(pair.name.width, pair.value.width) > each + 1) type.tooLarge(words(name, type.system()));
            height = std::max(height, pair.height);
            row.push_back(std::move(pair));
        }
        const QPen rule = type.rule(0.2);
        Strip strip;
        strip.height = height + type.mm(1.0);
        strip.draw = [row, each, gap, rule](QPainter& painter, QPointF at) {
            for (std::size_t i = 0; i < row.size(); ++i) {
                const QPointF place = at + QPointF(static_cast<double>(i) * (each + gap), 0);
                row[i].name.draw(painter, place);
                if (!row[i].ruled) {
                    row[i].value.draw(painter, place + QPointF(0, row[i].name.height));
                    continue;
                }
                painter.setPen(rule);
                const double y = place.y() + row[i].height;
                painter.drawLine(QPointF(place.x(), y), QPointF(place.x() + each, y));
            }
        };
        all.push_back(std::move(strip));
    }
    return all;
}

std::vector<Strip> strips(Type& type, const report::SignatureBlock& block, double width)
{
    const double gap = type.mm(5);
    const auto count = static_cast<double>(std::max<std::size_t>(block.entries.size(), 2));
    const double each = (width - gap * (count - 1)) / count;
    struct Place {
        SetText meaning, name;
    };
    std::vector<Place> places;
    double meaningHeight = 0, nameHeight = 0;
    for (const report::SignatureBlock::Entry& entry : block.entries) {
        QString name =
            entry.name.empty() ? QCoreApplication::translate("print", "name, date and time") : dataText(entry.name);
        if (!entry.at.empty()) name += QStringLiteral(", ") + dataText(entry.at);
        Place place{type.set(words(entry.meaning, type.system()), type.font(kSmall), each),
                    type.set(name, type.font(kSmall, !entry.name.empty()), each)};
        meaningHeight = std::max(meaningHeight, place.meaning.height);
        nameHeight = std::max(nameHeight, place.name.height);
        places.push_back(std::move(place));
    }
    const SetText notice = type.set(words(block.notice, type.system()), type.font(kSmall), width);
    const double ink = type.mm(8);  // room for a hand's signature
    const QPen rule = type.rule(0.3);
    Strip strip;
    strip.name = words(block.notice, type.system());
    strip.height = meaningHeight + ink + nameHeight + type.mm(1) + notice.height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        for (std::size_t i = 0; i < places.size(); ++i) {
            const QPointF place = at + QPointF(static_cast<double>(i) * (each + gap), 0);
            places[i].meaning.draw(painter, place);
            const double y = place.y() + meaningHeight + ink;
            painter.setPen(rule);
            painter.drawLine(QPointF(place.x(), y), QPointF(place.x() + each, y));
            places[i].name.draw(painter, QPointF(place.x(), y));
        }
        notice.draw(painter, at + QPointF(0, meaningHeight + ink + nameHeight + rule.widthF() * 4));
    };
    return {std::move(strip)};
}

}  // namespace taut::app::print
