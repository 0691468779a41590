// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/print.h"

#include <algorithm>

#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/print/sections.h"
#include "app/seams/kept_settings.h"
#include "app/text/language.h"
#include "app/text/words.h"
#include "core/base/file.h"

namespace taut::app::print {

namespace {

constexpr int kResolution = 1200;             // dots per inch: whole dots are fine enough for every rule
constexpr double kHeadGap = 2.0;              // mm below the head of a page
constexpr double kSectionGap = 2.4;           // mm between sections, where there is room
constexpr double kTightGap = 0.9;             // mm where there is none
constexpr double kFootHeight = 9.0;           // mm
constexpr QMarginsF kMargins(14, 10, 12, 9);  // mm, the left one is for filing

double sectionGap(const Type& type) { return kSectionGap - type.tightness() * (kSectionGap - kTightGap); }

/// One row of sections beside each other, being filled.
class BandBuilder {
public:
    BandBuilder(Type& type, double width) : m_type(type), m_width(width) {}

    void add(const report::Section& section)
    {
        if (const auto* beside = std::get_if<report::Beside>(&section)) return turn(*beside);
        if (std::holds_alternative<report::PageBreak>(section)) {
            close();
            m_newPage = true;
            return;
        }
        if (!m_columns) open(0, m_width);
        // A caution belongs to the whole page: it takes the place that is left, and the set-up keeps its page.
        Stack& stack = std::holds_alternative<report::Caution>(section) ? shortest() : m_band.stacks.back();
        std::vector<Strip> strips = std::visit(
            [&](const auto& one) -> std::vector<Strip> {
                using T = std::decay_t<decltype(one)>;
                if constexpr (std::is_same_v<T, report::PageBreak> || std::is_same_v<T, report::Beside>)
                    return {};
                else
                    return print::strips(m_type, one, stack.width);
            },
            section);
        if (!stack.strips.empty() && m_columns) stack.strips.push_back(space(m_type, sectionGap(m_type)));
        for (Strip& strip : strips) stack.strips.push_back(std::move(strip));
        if (!m_columns) close();
    }
    [[nodiscard]] std::vector<Band> take()
    {
        close();
        return std::move(m_bands);
    }

private:
    void turn(const report::Beside& beside)
    {
        using What = report::Beside::What;
        if (beside.what != What::Next) close();
        m_columns = beside.what != What::End;
        if (!m_columns) return;
        const double gap = m_type.mm(5);
        const double x = m_band.stacks.empty() ? 0 : m_band.stacks.back().x + m_band.stacks.back().width + gap;
        const double share = m_width * beside.share / 100 - gap / 2;
        open(x, share);
    }
    /// The stack that ends highest up.
    Stack& shortest()
    {
        const auto height = [](const Stack& stack) {
            double sum = 0;
            for (const Strip& strip : stack.strips) sum += strip.height;
            return sum;
        };
        Stack* best = &m_band.stacks.back();
        for (Stack& stack : m_band.stacks)
            if (height(stack) < height(*best)) best = &stack;
        return *best;
    }
    void open(double x, double width) { m_band.stacks.push_back({x, width, {}}); }
    void close()
    {
        if (!m_band.stacks.empty()) {
            m_band.newPage = std::exchange(m_newPage, false);
            m_bands.push_back(std::move(m_band));
        }
        m_band = {};
        m_columns = false;
    }
    Type& m_type;
    double m_width;
    std::vector<Band> m_bands;
    Band m_band;
    bool m_columns = false, m_newPage = false;
};

std::vector<Band> bandsOf(Type& type, const report::Report& report, double width)
{
    BandBuilder builder(type, width);
    for (const report::Section& section : report.sections) builder.add(section);
    return builder.take();
}

/// Whether everything before the first page break stands on the first page.
bool setUpFits(const std::vector<Band>& bands, const std::vector<Page>& pages)
{
    std::size_t strips = 0;
    for (const Band& band : bands) {
        if (band.newPage) break;
        for (const Stack& stack : band.stacks) strips += stack.strips.size();
    }
    return pages.front().size() >= strips;
}

/// What stands above and below every page.
struct Frame {
    SetText title, subtitle, again;
    std::vector<Strip> bands;  ///< what nobody may overlook, across the whole head
    double bandsHeight = 0, firstHead = 0, nextHead = 0;
    QString run, anchor;
};

/// Large words in a frame across the page; `grave` is white on black: told by size, place and shape, not by colour.
Strip bandStrip(Type& type, const QString& said, double width, bool grave)
{
    const double inset = type.mm(3), above = type.mm(grave ? 1.4 : 0.8), below = type.mm(1.6);
    const SetText text = type.set(said, type.font(grave ? kTitle : kHead, true), width - 2 * inset);
    if (text.width > width - 2 * inset + 1) type.tooLarge(said);
    const QPen rule = type.rule(0.6);
    const double height = text.height + 2 * above;
    Strip strip;
    strip.name = said;
    strip.height = height + below;
    strip.draw = [=](QPainter& painter, QPointF at) {
        painter.setPen(rule);
        painter.setBrush(grave ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
        const double half = rule.widthF() / 2;
        painter.drawRect(QRectF(at.x() + half, at.y() + half, width - 2 * half, height - 2 * half));
        painter.setPen(grave ? Qt::white : Qt::black);
        text.draw(painter, at + QPointF(inset, above));
    };
    return strip;
}

Frame frameOf(Type& type, const report::Report& report, double width)
{
    Frame frame;
    const QString title = words(report.title, report.units);
    frame.title = type.set(title, type.font(kTitle, true), width);
    frame.subtitle = type.set(words(report.subtitle, report.units), type.font(kBody), width);
    frame.again = type.set(title, type.font(kBody, true), width);
    if (!report.practice.empty())
        frame.bands.push_back(bandStrip(type, words(report.practice, report.units), width, true));
    if (!report.banner.empty()) frame.bands.push_back(bandStrip(type, words(report.banner, report.units), width, true));
    if (!report.draft.empty()) frame.bands.push_back(bandStrip(type, words(report.draft, report.units), width, false));
    for (const Strip& band : frame.bands) frame.bandsHeight += band.height;
    frame.firstHead = frame.bandsHeight + frame.title.height + frame.subtitle.height + type.mm(kHeadGap);
    frame.nextHead = frame.bandsHeight + frame.again.height + type.mm(kHeadGap);
    if (std::max(frame.title.width, frame.subtitle.width) > width + 1) type.tooLarge(title);
    frame.run = !report.foot.empty()   ? words(report.foot, report.units)
                : report.runId.empty() ? QCoreApplication::translate("print", "blank sheet")
                                       : QCoreApplication::translate("print", "run %1").arg(dataText(report.runId));
    frame.anchor = report.anchor          ? dataText(seal::anchorText(*report.anchor))
                   : report.runId.empty() ? QString()
                                          : QCoreApplication::translate("print", "not sealed");
    return frame;
}

void drawFrame(QPainter& painter, Type& type, const Frame& frame, QSizeF page, int number, int pages)
{
    const QPen rule = type.rule(0.4);
    // What makes it no record stands first, on every page: a page may be torn off.
    const double headTop = frame.bandsHeight;
    double bandTop = 0;
    for (const Strip& band : frame.bands) {
        painter.save();
        band.draw(painter, {0, bandTop});
        painter.restore();
        bandTop += band.height;
    }
    if (number == 1) {
        frame.title.draw(painter, {0, headTop});
        frame.subtitle.draw(painter, {0, headTop + frame.title.height});
    } else {
        frame.again.draw(painter, {0, headTop});
    }
    const double head = number == 1 ? frame.firstHead : frame.nextHead;
    painter.setPen(rule);
    painter.drawLine(QPointF(0, head - type.mm(kHeadGap * 0.6)), QPointF(page.width(), head - type.mm(kHeadGap * 0.6)));

    const QFont font = type.font(kSmall);
    const QString count = QCoreApplication::translate("print", "page %1 of %2").arg(number).arg(pages);
    const SetText right = type.set(count, font, page.width(), Qt::AlignRight);
    const SetText left = type.set(frame.run, font, page.width() - right.width - type.mm(4));
    const SetText below = type.set(frame.anchor, font, page.width());
    const double top = page.height() - type.mm(kFootHeight) + type.mm(1.2);
    painter.drawLine(QPointF(0, top), QPointF(page.width(), top));
    right.draw(painter, {0, top + type.mm(0.6)});
    left.draw(painter, {0, top + type.mm(0.6)});
    below.draw(painter, {0, top + type.mm(0.6) + left.height});
    if (top + type.mm(0.6) + left.height + below.height > page.height() + 1) type.tooLarge(frame.anchor);
}

/// A person may have chosen the paper in the print dialog: then its margins are the printer's least.
void keepMargins(QPagedPaintDevice& device)
{
    const QMarginsF set = device.pageLayout().margins(QPageLayout::Millimeter);
    device.setPageMargins({std::max(set.left(), kMargins.left()), std::max(set.top(), kMargins.top()),
                           std::max(set.right(), kMargins.right()), std::max(set.bottom(), kMargins.bottom())},
                          QPageLayout::Millimeter);
}

Finding failed()
{
    return refuse("print.failed", "sheet", "The sheet could not be drawn: the printer or the PDF did not begin.",
                  "Check the printer, or write a PDF to another folder.");
}

}  // namespace

PaperWish keptPaperWish()
{
    const QString kept = keptSettings().value(QStringLiteral("paper")).toString();
    if (kept == QLatin1String("a4")) return PaperWish::A4;
    return kept == QLatin1String("letter") ? PaperWish::Letter : PaperWish::AsPress;
}

void keepPaperWish(PaperWish wish)
{
    const char* word = wish == PaperWish::A4 ? "a4" : wish == PaperWish::Letter ? "letter" : "";
    keptSettings().setValue(QStringLiteral("paper"), QString::fromLatin1(word));
}

Paper paperHere(const report::Report& report)
{
    const PaperWish wish = keptPaperWish();
    if (wish == PaperWish::AsPress) return paperFor(report);
    return wish == PaperWish::A4 ? Paper::A4 : Paper::Letter;
}

Paper paperFor(const report::Report& report) { return report.units == UnitSystem::Us ? Paper::Letter : Paper::A4; }

void choosePaper(QPagedPaintDevice& device, Paper paper)
{
    device.setPageSize(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
    device.setPageOrientation(QPageLayout::Portrait);
    device.setPageMargins(kMargins, QPageLayout::Millimeter);
}

Result<Printed> paintReport(QPagedPaintDevice& device, const report::Report& report, Pages which)
{
    const InPressUnits everybodys;
    if (auto font = checkFont(); !font) return font.error();
    keepMargins(device);
    Type type(device, report.units);
    const QSizeF page(device.width(), device.height());
    Frame frame = frameOf(type, report, page.width());
    // The head of the first page is taller than that of the others: a strip in its place makes up the difference.
    const double body = page.height() - frame.nextHead - type.mm(kFootHeight);
    Strip taller;
    std::vector<Band> bands;
    std::vector<Page> pages;
    for (const double tightness : {0.0, 0.34, 0.67, 1.0}) {
        type.setTightness(tightness);
        type.forgetOverflow();
        frame = frameOf(type, report, page.width());
        const double gap = type.mm(sectionGap(type));
        taller.height = std::max(0.0, frame.firstHead - frame.nextHead - gap);
        bands = bandsOf(type, report, page.width());
        bands.insert(bands.begin(), Band{{Stack{0, page.width(), {taller}}}, false});
        pages = fillPages(bands, body, gap, [&](const QString& what) { type.tooLarge(what); });
        if (setUpFits(bands, pages)) break;
    }

    QPainter painter;
    if (!painter.begin(&device)) return failed();
    painter.setRenderHint(QPainter::Antialiasing, true);
    const int count = static_cast<int>(pages.size());
    const int drawn = which == Pages::First ? 1 : count;
    for (int i = 0; i < drawn; ++i) {
        if (i > 0 && !device.newPage()) return failed();
        drawFrame(painter, type, frame, page, i + 1, count);
        for (const Placed& placed : pages[static_cast<std::size_t>(i)]) {
            if (!placed.strip->draw) continue;
            painter.save();
            painter.setPen(QPen(Qt::black));
            placed.strip->draw(painter, placed.at + QPointF(0, frame.nextHead));
            painter.restore();
        }
    }
    if (!painter.end()) return failed();
    return Printed{drawn, type.overflow()};
}

Result<Printed> writePdf(const report::Report& report, const std::filesystem::path& file, Paper paper, Pages which)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return failed();
    Printed printed;
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kResolution);
        writer.setTitle(words(report.title, report.units));
        writer.setCreator(QStringLiteral("tautweb " TAUTWEB_VERSION));
        choosePaper(writer, paper);
        auto done = paintReport(writer, report, which);
        if (!done) return done;
        printed = std::move(*done);
    }
    const auto written = writeFile(file, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!written) return written.error();
    return printed;
}

}  // namespace taut::app::print
