// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QTableView>
#include <QTextEdit>
#include <QWidget>

namespace taut::app::test {

/// A text as a widget painted it: what it says and where it lies, in the widget's own pixels.
struct PaintedText {
    QString text;
    QRectF where;
};

/// Takes note of texts instead of drawing them.
class TextEngine final : public QPaintEngine {
public:
    explicit TextEngine(std::vector<PaintedText>& texts) : QPaintEngine(AllFeatures), m_texts(texts) {}
    bool begin(QPaintDevice* /*device*/) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState& /*state*/) override {}
    void drawPixmap(const QRectF& /*to*/, const QPixmap& /*pixmap*/, const QRectF& /*from*/) override {}
    void drawPath(const QPainterPath& /*path*/) override {}
    void drawPolygon(const QPointF* /*points*/, int /*count*/, PolygonDrawMode /*mode*/) override {}
    void drawTextItem(const QPointF& at, const QTextItem& item) override
    {
        const QRectF box(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
        m_texts.push_back({item.text(), painter()->combinedTransform().mapRect(box)});
    }
    [[nodiscard]] Type type() const override { return User; }

private:
    std::vector<PaintedText>& m_texts;
};

/// A surface on which nothing is seen.
class TextDevice final : public QPaintDevice {
public:
    TextDevice(const QSize& size, std::vector<PaintedText>& texts) : m_engine(texts), m_size(size) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &m_engine; }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override
    {
        constexpr int kDots = 96;
        switch (metric) {
        case PdmWidth: return m_size.width();
        case PdmHeight: return m_size.height();
        case PdmWidthMM: return m_size.width() * 254 / (kDots * 10);
        case PdmHeightMM: return m_size.height() * 254 / (kDots * 10);
        case PdmNumColors: return 1 << 24;
        case PdmDepth: return 32;
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY: return kDots;
        case PdmDevicePixelRatio: return 1;
        case PdmDevicePixelRatioScaled: return static_cast<int>(devicePixelRatioFScale());
        default: return 0;
        }
    }

private:
    mutable TextEngine m_engine;
    QSize m_size;
};

/// What a widget itself paints as text, its children left out.
inline std::vector<PaintedText> paintedBy(QWidget& widget)
{
    std::vector<PaintedText> texts;
    TextDevice device(widget.size(), texts);
    widget.render(&device, QPoint(), QRegion(), QWidget::RenderFlags());
    return texts;
}

/// What is cut of the texts in sight on a page, a line each: a text that reaches over the edge of the widget that
/// paints it, one that ends in an ellipsis which its words have not, and a widget that reaches over the edge of its
/// parent (what scrolls may, in the way it scrolls). `shortened`: widgets that end in an ellipsis by design, since all
/// of it stands elsewhere.
inline QStringList cutOn(const QWidget& page, const std::function<bool(const QWidget&)>& shortened)
{
    constexpr double kSlack = 1.5;  // a letter may lean over its own width
    const QChar ellipsis(0x2026);
    QStringList cut;
    for (QWidget* w : page.findChildren<QWidget*>()) {
        if (!w->isVisible() || w->window() != page.window()) continue;
        const QString name =
            QStringLiteral("%1 %2 \"%3\"")
                .arg(QString::fromLatin1(w->metaObject()->className()), w->objectName(), w->accessibleName().left(40));
        // A line to type in scrolls with what is typed; a list and a long text scroll up and down.
        const auto* area = qobject_cast<const QAbstractScrollArea*>(w->parentWidget());
        const bool viewport = area != nullptr && area->viewport() == w;
        // Only what is made of rows and columns, or of lines of its own, scrolls sideways as well.
        const auto* heads = qobject_cast<const QHeaderView*>(area);
        if (heads != nullptr) area = qobject_cast<const QAbstractScrollArea*>(heads->parentWidget());
        const bool sideways =
            viewport && area != nullptr && area->horizontalScrollBar()->maximum() > 0 &&
            area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff &&
            (qobject_cast<const QTableView*>(area) != nullptr || qobject_cast<const QPlainTextEdit*>(area) != nullptr);
        const bool types = qobject_cast<const QLineEdit*>(w) != nullptr || sideways;
        // A text that wraps shortens nothing; its words may have an ellipsis of their own.
        const bool wraps = viewport && qobject_cast<const QTextEdit*>(area) != nullptr;
        QString own = w->accessibleName() + w->property("text").toString() + w->property("placeholderText").toString();
        for (const PaintedText& painted : paintedBy(*w)) {
            if (painted.text.trimmed().isEmpty()) continue;
            const QRectF room = QRectF(w->rect()).adjusted(-kSlack, -kSlack, kSlack, kSlack);
            const bool wide = painted.where.left() < room.left() || painted.where.right() > room.right();
            const bool high = painted.where.top() < room.top() || painted.where.bottom() > room.bottom();
            if ((wide && !types) || (high && !viewport))
                cut << QStringLiteral("%1: \"%2\" is cut").arg(name, painted.text);
            const bool elided = painted.text.contains(ellipsis) && !own.contains(ellipsis);
            if (elided && !wraps && !shortened(*w))
                cut << QStringLiteral("%1: \"%2\" is shortened").arg(name, painted.text);
        }
        const QWidget* parent = w->parentWidget();
        const auto* above =
            parent == nullptr ? nullptr : qobject_cast<const QAbstractScrollArea*>(parent->parentWidget());
        const bool scrolls = above != nullptr && above->viewport() == parent;
        if (parent != nullptr && w != &page && !w->isWindow() && !scrolls && !area &&
            !parent->rect().adjusted(-1, -1, 1, 1).contains(w->geometry()))
            cut << QStringLiteral("%1 reaches over the edge of %2")
                       .arg(name, QString::fromLatin1(parent->metaObject()->className()));
    }
    return cut;
}

}  // namespace taut::app::test
