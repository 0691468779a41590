// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/tag_text.h"

#include <algorithm>

#include <QEvent>
#include <QFontDatabase>
#include <QPainter>
#include <QPainterPath>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// What a control character is called in the standards of bar codes; "" for a sign that can be seen.
QString controlName(uint sign)
{
    switch (sign) {
    case 0x1d: return QStringLiteral("GS");
    case 0x1e: return QStringLiteral("RS");
    case 0x04: return QStringLiteral("EOT");
    default: return sign < 0x20 || sign == 0x7f ? QStringLiteral("?") : QString();
    }
}

QFont evenFont(const QFont& like)
{
    QFont font = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    font.setPointSizeF(like.pointSizeF());
    return font;
}

}  // namespace

TagText::TagText(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("tagText"));
    setAccessibleName(tr("The tag as it was scanned"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void TagText::show(const QString& scanned, std::optional<std::size_t> wrong)
{
    m_signs = scanned.toUcs4();
    m_wrong = wrong;
    QString said;
    for (const uint sign : m_signs) {
        const QString name = controlName(sign);
        said += name.isEmpty() ? QString::fromUcs4(reinterpret_cast<const char32_t*>(&sign), 1)
                               : QStringLiteral("<%1>").arg(name);
    }
    // In the words of whoever hears it: which sign, then the whole.
    if (wrong && *wrong > static_cast<std::size_t>(m_signs.size()))
        said = tr("It ends too early, after character %1. %2").arg(m_signs.size()).arg(said);
    else if (wrong)
        said = tr("Character %1 of %2. %3").arg(*wrong).arg(m_signs.size()).arg(said);
    setAccessibleDescription(said);
    updateGeometry();
    update();
}

QSize TagText::cell() const
{
    const QFontMetrics metrics(evenFont(font()));
    // Under each sign stands the room of the wedge.
    return {metrics.horizontalAdvance(QLatin1Char('0')) + 3, metrics.height() * 3 / 2 + 2};
}

/// Where each sign stands, and the one that is missing behind them; the name of a control character takes two signs.
std::vector<QRect> TagText::places(int width) const
{
    const QSize one = cell();
    const int high = QFontMetrics(evenFont(font())).height();
    const bool behind = m_wrong && *m_wrong > static_cast<std::size_t>(m_signs.size());
    std::vector<QRect> out;
    int x = 2, y = 1;
    for (qsizetype i = 0; i < m_signs.size() + (behind ? 1 : 0); ++i) {
        const bool named = i < m_signs.size() && !controlName(m_signs[i]).isEmpty();
        const int wide = one.width() * (named ? 2 : 1);
        if (x > 2 && x + wide > width - 2) {
            x = 2;
            y += one.height();
        }
        out.emplace_back(x, y, wide - 1, high);
        x += wide;
    }
    return out;
}

QSize TagText::sizeHint() const { return {40 * cell().width(), heightForWidth(40 * cell().width())}; }

QSize TagText::minimumSizeHint() const { return {16 * cell().width(), cell().height()}; }

int TagText::heightForWidth(int width) const
{
    const std::vector<QRect> all = places(width);
    return (all.empty() ? 1 : all.back().top()) + cell().height() + 1;
}

void TagText::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) updateGeometry();
}

void TagText::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette palette = currentLook().palette;
    const QFont even = evenFont(font());
    QFont small = even;
    const int text = QFontMetrics(even).height();
    const std::vector<QRect> all = places(width());
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
        const QRect at = all[static_cast<std::size_t>(i)];
        const bool wrong = m_wrong && *m_wrong == static_cast<std::size_t>(i) + 1;
        const uint sign = i < m_signs.size() ? m_signs[i] : uint{' '};
        const QString name = controlName(sign);
        painter.setPen(palette.ink);
        if (name.isEmpty()) {
            painter.setFont(even);
            painter.drawText(at, Qt::AlignCenter, QString::fromUcs4(reinterpret_cast<const char32_t*>(&sign), 1));
        } else {
            small.setPointSizeF(even.pointSizeF() * 1.6 / std::max<double>(2, static_cast<double>(name.size())));
            painter.setFont(small);
            painter.fillRect(at, palette.wash);
            painter.setPen(palette.ink);
            painter.drawText(at, Qt::AlignCenter, name);
            painter.setPen(QPen(palette.rule, 1));
            painter.drawRect(at);
        }
        if (!wrong) continue;
        painter.setPen(QPen(palette.outside, 2.5));
        painter.drawRect(at);
        const double middle = at.center().x() + 0.5, top = at.bottom() + 2, half = cell().width() / 2.0;
        QPainterPath wedge(QPointF(middle, top));
        wedge.lineTo(middle + half, top + text * 0.4);
        wedge.lineTo(middle - half, top + text * 0.4);
        wedge.closeSubpath();
        painter.fillPath(wedge, palette.outside);
    }
}

}  // namespace taut::app
