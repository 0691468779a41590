// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/badge.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

#include "app/print/qr.h"
#include "app/print/type.h"
#include "app/text/words.h"
#include "core/base/file.h"

namespace taut::app::print {

namespace {

constexpr double kWide = 85.6, kHigh = 53.98;  // mm, ISO/IEC 7810 ID-1
constexpr double kEdge = 5, kCode = 36, kGap = 4;
constexpr int kDotsPerInch = 1200;

/// What stands on a badge: no name of the shop, nothing that tells a finder where it opens anything.
QString notice()
{
    return QCoreApplication::translate("Badge",
                                       "With its PIN this code signs in this person's name. Keep it like a key; when "
                                       "it is lost, tell a supervisor at once.");
}

Result<Done> failed()
{
    return refuse("print.failed", {}, "The badge could not be printed.", "Try again, or save it as PDF.");
}

}  // namespace

void drawBadgeCode(QPainter& painter, const QRectF& square, const std::string& code)
{
    constexpr double kQuiet = 4;  // modules, ISO/IEC 18004
    const QrModules modules = qrModules(code);
    const double step = square.width() / (static_cast<double>(modules.side) + 2 * kQuiet);
    painter.fillRect(square, Qt::white);
    for (std::size_t y = 0; y < modules.side; ++y)
        for (std::size_t x = 0; x < modules.side; ++x)
            if (modules.at(x, y))
                painter.fillRect(QRectF(square.left() + (static_cast<double>(x) + kQuiet) * step,
                                        square.top() + (static_cast<double>(y) + kQuiet) * step, step * 1.01,
                                        step * 1.01),
                                 Qt::black);
}

Result<Done> paintBadge(QPagedPaintDevice& device, const std::string& name, const std::string& code)
{
    if (auto font = checkFont(); !font) return font;
    QPainter painter;
    if (!painter.begin(&device)) return failed();
    const Type type(device, UnitSystem::Metric);
    const QRectF card(0, 0, type.mm(kWide), type.mm(kHigh));
    painter.setPen(type.rule(0.2));
    painter.drawRect(card);
    const double side = type.mm(kCode);
    drawBadgeCode(painter, {type.mm(kEdge), (card.height() - side) / 2, side, side}, code);
    const double left = type.mm(kEdge + kCode + kGap), width = card.width() - left - type.mm(kEdge);
    painter.setPen(Qt::black);
    const SetText who = type.set(dataText(name), type.font(13, true), width);
    who.draw(painter, {left, type.mm(kEdge)});
    const SetText what = type.set(notice(), type.font(7.5), width);
    what.draw(painter, {left, card.height() - type.mm(kEdge) - what.height});
    return painter.end() ? Result<Done>(Done{}) : failed();
}

Result<Done> writeBadge(const std::string& name, const std::string& code, const std::filesystem::path& file,
                        Paper paper)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return failed();
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kDotsPerInch);
        writer.setCreator(QStringLiteral("tautweb " TAUTWEB_VERSION));
        choosePaper(writer, paper);
        if (auto painted = paintBadge(writer, name, code); !painted) return painted;
    }
    const auto written = writeFile(file, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!written) return written.error();
    std::error_code error;
    using std::filesystem::perms;
    std::filesystem::permissions(file, perms::owner_read | perms::owner_write, error);
    return Done{};
}

}  // namespace taut::app::print
