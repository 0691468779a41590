// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/palette.h"

#include <algorithm>
#include <cmath>

namespace taut::app {

namespace {

double linearised(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c)
{
    return 0.2126 * linearised(c.redF()) + 0.7152 * linearised(c.greenF()) + 0.0722 * linearised(c.blueF());
}

}  // namespace

const Palette& lightPalette()
{
    static const Palette palette{.ground = QColor(0xF6, 0xF3, 0xEA),
                                 .sheet = QColor(0xFF, 0xFD, 0xF7),
                                 .wash = QColor(0xDD, 0xE8, 0xE6),
                                 .ink = QColor(0x1B, 0x23, 0x22),
                                 .soft = QColor(0x45, 0x4B, 0x49),
                                 .rule = QColor(0x7B, 0x7B, 0x70),
                                 .accent = QColor(0x0B, 0x4A, 0x57),
                                 .onAccent = QColor(0xFF, 0xFF, 0xFF),
                                 .inside = QColor(0x00, 0x72, 0x4F),
                                 .near = QColor(0x8A, 0x5A, 0x00),
                                 .outside = QColor(0xB0, 0x3A, 0x00),
                                 .dark = false};
    return palette;
}

const Palette& darkPalette()
{
    static const Palette palette{.ground = QColor(0x14, 0x1A, 0x1B),
                                 .sheet = QColor(0x1C, 0x24, 0x25),
                                 .wash = QColor(0x23, 0x35, 0x38),
                                 .ink = QColor(0xF1, 0xEE, 0xE5),
                                 .soft = QColor(0xC3, 0xC8, 0xC4),
                                 .rule = QColor(0x7F, 0x8A, 0x88),
                                 .accent = QColor(0x8C, 0xCF, 0xD6),
                                 .onAccent = QColor(0x06, 0x25, 0x2A),
                                 .inside = QColor(0x35, 0xC6, 0x95),
                                 .near = QColor(0xF0, 0xB0, 0x30),
                                 .outside = QColor(0xFF, 0x8A, 0x4C),
                                 .dark = true};
    return palette;
}

const Palette& contrastPalette(bool dark)
{
    static const Palette onWhite{.ground = Qt::white,
                                 .sheet = Qt::white,
                                 .wash = QColor(0xE9, 0xF0, 0xF0),
                                 .ink = Qt::black,
                                 .soft = QColor(0x1C, 0x1C, 0x1C),
                                 .rule = QColor(0x2E, 0x2E, 0x2E),
                                 .accent = QColor(0x00, 0x2B, 0x3A),
                                 .onAccent = Qt::white,
                                 .inside = QColor(0x00, 0x4D, 0x33),
                                 .near = QColor(0x5C, 0x3A, 0x00),
                                 .outside = QColor(0x80, 0x1E, 0x00),
                                 .dark = false};
    static const Palette onBlack{.ground = Qt::black,
                                 .sheet = Qt::black,
                                 .wash = QColor(0x12, 0x2A, 0x30),
                                 .ink = Qt::white,
                                 .soft = QColor(0xED, 0xED, 0xED),
                                 .rule = QColor(0xC8, 0xC8, 0xC8),
                                 .accent = QColor(0xB8, 0xF5, 0xFF),
                                 .onAccent = Qt::black,
                                 .inside = QColor(0x5C, 0xF0, 0xBC),
                                 .near = QColor(0xFF, 0xCC, 0x55),
                                 .outside = QColor(0xFF, 0xA8, 0x7A),
                                 .dark = true};
    return dark ? onBlack : onWhite;
}

Palette practicePalette(const Palette& palette)
{
    Palette own = palette;
    own.accent = palette.dark ? QColor(0xE3, 0xB8, 0xF2) : QColor(0x5A, 0x1F, 0x6B);
    own.onAccent = palette.dark ? QColor(0x2B, 0x06, 0x38) : QColor(0xFF, 0xFF, 0xFF);
    own.wash = palette.dark ? QColor(0x33, 0x25, 0x3A) : QColor(0xEE, 0xE3, 0xF1);
    return own;
}

const Palette& paperPalette()
{
    static const Palette palette{.ground = Qt::white,
                                 .sheet = Qt::white,
                                 .wash = QColor(0xE8, 0xE8, 0xE8),
                                 .ink = Qt::black,
                                 .soft = Qt::black,
                                 .rule = Qt::black,
                                 .accent = Qt::black,
                                 .onAccent = Qt::white,
                                 .inside = Qt::black,
                                 .near = Qt::black,
                                 .outside = Qt::black,
                                 .dark = false};
    return palette;
}

SignalColours signalColours(procedure::SignalWord word)
{
    switch (word) {
    case procedure::SignalWord::Danger: return {QColor(0x9E, 0x0B, 0x1E), Qt::white};
    case procedure::SignalWord::Warning: return {QColor(0xFF, 0x79, 0x00), Qt::black};
    case procedure::SignalWord::Caution: return {QColor(0xFF, 0xD1, 0x00), Qt::black};
    case procedure::SignalWord::Notice:
    case procedure::SignalWord::None: break;
    }
    return {QColor(0x00, 0x50, 0x8F), Qt::white};
}

double contrast(const QColor& a, const QColor& b)
{
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QFont appFont(double points, bool bold)
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

QFont scaled(const QFont& font, double factor, bool bold)
{
    QFont out = font;
    if (font.pixelSize() > 0)
        out.setPixelSize(std::max(1, qRound(font.pixelSize() * factor)));
    else
        out.setPointSizeF(font.pointSizeF() * factor);
    out.setBold(bold);
    return out;
}

}  // namespace taut::app
