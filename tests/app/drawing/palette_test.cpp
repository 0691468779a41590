// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include "app/drawing/palette.h"

using namespace taut::app;

namespace {

struct Pair {
    unsigned a, b;
    double ratio;
};

void isReadable(const char* what, const QColor& ink, const QColor& ground, double least)
{
    CAPTURE(what, ink.name().toStdString(), ground.name().toStdString());
    CHECK(contrast(ink, ground) >= least);
}

}  // namespace

TEST_CASE("contrast is computed as WCAG 2.2 defines it")
{
    // WCAG 2.2, "contrast ratio" and "relative luminance" (W3C, 2023); 0.04045 as threshold. Values recomputed.
    const Pair pairs[] = {{0x000000, 0xFFFFFF, 21.0},   {0xFFFFFF, 0xFFFFFF, 1.0},    {0x767676, 0xFFFFFF, 4.5422},
                          {0x777777, 0xFFFFFF, 4.4781}, {0x949494, 0xFFFFFF, 3.0335}, {0x959595, 0xFFFFFF, 2.9953},
                          {0x595959, 0xFFFFFF, 7.0047}, {0x5A5A5A, 0xFFFFFF, 6.8969}, {0xFF0000, 0xFFFFFF, 3.9985},
                          {0x0000FF, 0xFFFFFF, 8.5925}, {0x008000, 0xFFFFFF, 5.1374}, {0xFFFF00, 0xFFFFFF, 1.0738}};
    for (const Pair& p : pairs) {
        CAPTURE(p.a, p.b);
        CHECK(contrast(QColor(QRgb(p.a)), QColor(QRgb(p.b))) == Approx(p.ratio).margin(0.0001));
        CHECK(contrast(QColor(QRgb(p.b)), QColor(QRgb(p.a))) == Approx(p.ratio).margin(0.0001));
    }
}

TEST_CASE("every text has seven to one and every graphic three to one, light, dark and on paper")
{
    // WCAG 2.2, 1.4.6 (AAA text 7:1) and 1.4.11 (graphics 3:1).
    for (const Palette* p : {&lightPalette(), &darkPalette(), &paperPalette()}) {
        for (const QColor& ground : {p->ground, p->sheet, p->wash}) {
            isReadable("ink", p->ink, ground, 7);
            isReadable("soft", p->soft, ground, 7);
            isReadable("accent", p->accent, ground, 7);
            isReadable("rule", p->rule, ground, 3);
            isReadable("inside", p->inside, ground, 3);
            isReadable("near", p->near, ground, 3);
            isReadable("outside", p->outside, ground, 3);
        }
        isReadable("on accent", p->onAccent, p->accent, 7);
        isReadable("flag on ink", p->ground, p->ink, 7);
    }
}

TEST_CASE("the accent of practice is as readable as any, and is nobody else's")
{
    // WCAG 2.2, 1.4.6 (AAA text 7:1) and 1.4.11 (graphics 3:1).
    for (const Palette* usual : {&lightPalette(), &darkPalette(), &contrastPalette(false), &contrastPalette(true)}) {
        const Palette p = practicePalette(*usual);
        CHECK(p.accent != usual->accent);
        for (const QColor& ground : {p.ground, p.sheet, p.wash}) {
            isReadable("ink", p.ink, ground, 7);
            isReadable("soft", p.soft, ground, 7);
            isReadable("accent", p.accent, ground, 7);
            isReadable("rule", p.rule, ground, 3);
        }
        isReadable("on accent", p.onAccent, p.accent, 7);
    }
}

TEST_CASE("high contrast has twelve to one for every text and seven to one for every graphic, on white and on black")
{
    // More than WCAG 2.2, 1.4.6 and 1.4.11 ask: the house's own measure.
    for (const bool dark : {false, true}) {
        const Palette& p = contrastPalette(dark);
        CHECK(p.dark == dark);
        CHECK(p.ground == (dark ? QColor(Qt::black) : QColor(Qt::white)));
        for (const QColor& ground : {p.ground, p.sheet, p.wash}) {
            isReadable("ink", p.ink, ground, 12);
            isReadable("soft", p.soft, ground, 12);
            isReadable("accent", p.accent, ground, 12);
            isReadable("rule", p.rule, ground, 7);
            isReadable("inside", p.inside, ground, 7);
            isReadable("near", p.near, ground, 7);
            isReadable("outside", p.outside, ground, 7);
        }
        isReadable("on accent", p.onAccent, p.accent, 12);
    }
}

TEST_CASE("every signal word has seven to one on its panel")
{
    using taut::procedure::SignalWord;
    for (const SignalWord w : {SignalWord::Notice, SignalWord::Caution, SignalWord::Warning, SignalWord::Danger}) {
        const SignalColours colours = signalColours(w);
        isReadable("signal word", colours.ink, colours.ground, 7);
    }
}

TEST_CASE("the program asks for its one font by name")
{
    CHECK(appFont(12).family() == QStringLiteral("DejaVu Sans"));
    CHECK(scaled(appFont(12), 1.5).pointSizeF() == Approx(18));
}
