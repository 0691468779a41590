// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/type.h"

#include <algorithm>

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPainter>
#include <QPen>
#include <QTextOption>

namespace taut::app::print {

Result<Done> checkFont(const char* family)
{
    const QString found = QFontInfo(QFont(QLatin1String(family))).family();
    if (found == QLatin1String(family)) return Done{};
    return refuse(
        "font.missing", family,
        {"The font that sheets are set in is not installed; %1 would come out instead, and signs could be lost.",
         {found.isEmpty() ? std::string("none") : found.toStdString()}},
        "Install the package fonts-dejavu-core.");
}

void SetText::draw(QPainter& painter, QPointF topLeft) const { layout->draw(&painter, topLeft); }

Type::Type(const QPaintDevice& device, UnitSystem system)
    : m_device(device),
      m_system(system),
      m_perMm(device.logicalDpiX() / 25.4)
{}

QFont Type::font(double points, bool bold) const
{
    QFont font{QString::fromLatin1(kFamily)};
    font.setPointSizeF(points);
    font.setBold(bold);
    font.setStyleStrategy(QFont::PreferNoShaping);
    return font;
}

namespace {

/// Lays a text out; lines take their height from the font.
void lay(QTextLayout& layout, double width, Qt::Alignment align, QTextOption::WrapMode wrap, SetText& set)
{
    QTextOption option(align);
    option.setWrapMode(wrap);
    option.setUseDesignMetrics(true);
    layout.setTextOption(option);
    set.height = set.width = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(1.0, width));
        line.setPosition(QPointF(0, set.height));
        set.height += line.height();
        set.width = std::max(set.width, line.naturalTextWidth());
    }
    layout.endLayout();
}

}  // namespace

SetText Type::set(const QString& text, const QFont& font, double width, Qt::Alignment align) const
{
    SetText set;
    QTextLayout first(text, font, &m_device);
    lay(first, width, align, QTextOption::WrapAtWordBoundaryOrAnywhere, set);
    // Set again line by line with plain spaces: a space that must not break would come out of the PDF as another sign,
    // and nobody who searches for "1.39 bar" types it.
    QString lines;
    for (int i = 0; i < first.lineCount(); ++i) {
        const QTextLine line = first.lineAt(i);
        QString one = text.mid(line.textStart(), line.textLength());
        while (one.endsWith(QLatin1Char(' '))) one.chop(1);
        one.remove(QChar::LineSeparator);
        lines += (i == 0 ? QString() : QString(QChar::LineSeparator)) + one;
    }
    lines.replace(QChar::Nbsp, QLatin1Char(' '));
    set.layout = std::make_shared<QTextLayout>(lines, font, &m_device);
    set.layout->setCacheEnabled(true);
    lay(*set.layout, width, align, QTextOption::ManualWrap, set);
    return set;
}

double Type::lineHeight(const QFont& font) const { return QFontMetricsF(font, &m_device).height(); }

double Type::widthOf(const QString& text, const QFont& font) const
{
    return QFontMetricsF(font, &m_device).horizontalAdvance(text);
}

double Type::longestWord(const QString& text, const QFont& font) const
{
    double longest = 0;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts))
        longest = std::max(longest, widthOf(word, font));
    return longest;
}

Look Type::look(double points) const
{
    // In the device's own dots: a drawing measures without asking the device.
    QFont inDots = font(points);
    inDots.setPixelSize(std::max(1, qRound(points * m_perMm * 25.4 / 72.0)));
    return {paperPalette(), inDots, m_perMm * 25.4 / 96.0};
}

QPen Type::rule(double millimetres) const { return QPen(Qt::black, mm(millimetres), Qt::SolidLine, Qt::FlatCap); }

}  // namespace taut::app::print
