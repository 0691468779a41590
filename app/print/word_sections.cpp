// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QCoreApplication>
#include <QPainter>

#include "app/print/sections.h"
#include "app/text/names.h"
#include "app/text/pseudo.h"
#include "app/text/words.h"

namespace taut::app::print {

namespace {

using report::Cell;

/// One name and its value, set beside each other.
struct Pair {
    SetText name, value;
    double x = 0, valueX = 0, width = 0;
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

/// "5.80 to 7.00 bar": the unit once, where both ends have the same.
QString limitsText(const report::Limits& limits, UnitSystem system)
{
    if (limits.low && limits.high) {
        const auto [low, high] = rangeWords(*limits.low, *limits.high, system);
        if (low.unit == high.unit) {
            const QString both = QCoreApplication::translate("print", "%1 to %2")
                                     .arg(low.number, high.number)
                                     .replace(QLatin1Char(' '), QChar::Nbsp);
            return pseudoWrapped(high.unit.isEmpty() ? both : both + QChar::Nbsp + high.unit);
        }
    }
    return rangeText(limits.low, limits.high, system);
}

}  // namespace

QString cellText(const Cell& cell, UnitSystem system)
{
    if (const auto* text = std::get_if<Text>(&cell.value)) {
        // What was typed into a reading stays in one piece, as a computed value does.
        constexpr qsizetype kShort = 14;
        QString said = words(*text, system);
        const bool hasDigit = std::any_of(said.begin(), said.end(), [](QChar c) { return c.isDigit(); });
        if (said.size() <= kShort && hasDigit) said.replace(QLatin1Char(' '), QChar::Nbsp);
        return said;
    }
    if (const auto* quantity = std::get_if<Quantity>(&cell.value)) return quantityText(*quantity, system);
    if (const auto* limit = std::get_if<report::Limit>(&cell.value))
        return quantityText(limit->value, system, limit->lower ? Rounding::Up : Rounding::Down);
    if (const auto* limits = std::get_if<report::Limits>(&cell.value)) return limitsText(*limits, system);
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
    strip.height = height + type.mm(1.6 - 0.8 * type.tightness());
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
    // Down the columns, as a form is read: names in one width, values beside them.
    const std::size_t columns = width > type.mm(120) ? 3 : (width > type.mm(80) ? 2 : 1);
    const std::size_t rows = (facts.pairs.size() + columns - 1) / columns;
    const double gap = type.mm(4), between = type.mm(1.5);
    const double each = (width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
    std::vector<double> names(columns, 0);
    for (std::size_t i = 0; i < facts.pairs.size(); ++i) {
        const QString name = words(facts.pairs[i].first, type.system());
        names[i / rows] = std::max(names[i / rows], type.widthOf(name, type.font(kSmall)) + 1);
    }
    for (double& name : names) name = std::min(name, each * 0.45);
    std::vector<Strip> all;
    for (std::size_t row = 0; row < rows; ++row) {
        std::vector<Pair> pairs;
        double height = 0;
        for (std::size_t column = 0; column < columns; ++column) {
            const std::size_t i = column * rows + row;
            if (i >= facts.pairs.size()) break;
            const auto& [name, cell] = facts.pairs[i];
            const double room = each - names[column] - between;
            Pair pair;
            pair.x = static_cast<double>(column) * (each + gap);
            pair.valueX = pair.x + names[column] + between;
            pair.width = room;
            pair.name = type.set(words(name, type.system()), type.font(kSmall), names[column]);
            pair.value = type.set(cellText(cell, type.system()), type.font(kFact, cell.strong), room);
            pair.ruled = std::holds_alternative<report::Ruled>(cell.value);
            if (pair.value.width > room + 1 || pair.name.width > names[column] + 1)
                type.tooLarge(words(name, type.system()));
            height = std::max({height, pair.name.height, pair.ruled ? type.mm(5.5) : pair.value.height});
            pairs.push_back(std::move(pair));
        }
        const QPen rule = type.rule(0.25);
        const double drop = type.lineHeight(type.font(kFact)) - type.lineHeight(type.font(kSmall));
        Strip strip;
        strip.height = height + type.mm(0.3);
        strip.draw = [=](QPainter& painter, QPointF at) {
            for (const Pair& pair : pairs) {
                pair.name.draw(painter, at + QPointF(pair.x, drop * 0.8));
                if (!pair.ruled) {
                    pair.value.draw(painter, at + QPointF(pair.valueX, 0));
                    continue;
                }
                painter.setPen(rule);
                painter.drawLine(at + QPointF(pair.valueX, height), at + QPointF(pair.valueX + pair.width, height));
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
    const double ink = type.mm(8 - 2.5 * type.tightness());  // room for a hand's signature
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
