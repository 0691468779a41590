// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/drawn.h"

#include <algorithm>
#include <utility>

#include <QEasingCurve>
#include <QEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QResizeEvent>
#include <QStyle>
#include <QVariantAnimation>

#include "app/text/words.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// A stage of the taut line: the line is painted by its owner, the button adds focus, key and name.
class StageButton final : public QPushButton {
public:
    explicit StageButton(QWidget* parent) : QPushButton(parent)
    {
        withRole(this, "bare");
        setCheckable(true);
        setCursor(Qt::PointingHandCursor);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        if (!hasFocus()) return;
        QPainter painter(this);
        painter.setPen(QPen(currentLook().palette.accent, 3, Qt::DotLine));
        painter.drawRect(rect().adjusted(2, 2, -3, -3));
    }
};

bool looksChanged(const QEvent* event)
{
    return event->type() == QEvent::StyleChange || event->type() == QEvent::PaletteChange ||
           event->type() == QEvent::FontChange;
}

QString limitBarInWords(const LimitBar& bar)
{
    QString said;
    if (bar.low && bar.high)
        said = LimitBarWidget::tr("Limits %1 and %2.").arg(bar.lowText, bar.highText);
    else if (bar.low)
        said = LimitBarWidget::tr("At least %1.").arg(bar.lowText);
    else if (bar.high)
        said = LimitBarWidget::tr("At most %1.").arg(bar.highText);
    if (bar.reading && bar.why.isEmpty())
        said += QLatin1Char(' ') + LimitBarWidget::tr("Reading %1, %2.").arg(bar.readingText, bar.word);
    else if (bar.reading)
        said += QLatin1Char(' ') + LimitBarWidget::tr("Reading %1, %2: %3.").arg(bar.readingText, bar.word, bar.why);
    return said;
}

}  // namespace

TautLineWidget::TautLineWidget(QWidget* parent) : QWidget(parent), m_pull(new QVariantAnimation(this))
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Stages of this run"));
    constexpr int kPullMs = 420;
    m_pull->setDuration(kPullMs);
    m_pull->setStartValue(1.0);
    m_pull->setEndValue(0.0);
    m_pull->setEasingCurve(QEasingCurve::OutCubic);
    connect(m_pull, &QVariantAnimation::valueChanged, this, [this](const QVariant& sag) {
        for (const std::size_t i : m_pulled) m_spans[i].sag = sag.toDouble();
        update();
    });
}

bool TautLineWidget::moving() const { return m_pull->state() == QAbstractAnimation::Running; }

void TautLineWidget::pullStraight(const std::vector<TautSpan>& before)
{
    const auto closed = [](const TautSpan& span) {
        return span.state == run::StageState::Done || span.state == run::StageState::DoneWithDeviation;
    };
    const bool effects = style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, this) > 0;
    if (before.size() != m_spans.size() || themeChoice().still || !effects) return;
    for (std::size_t i = 0; i < m_spans.size(); ++i)
        if (closed(m_spans[i]) && !closed(before[i]) && m_spans[i].name == before[i].name) m_pulled.push_back(i);
    for (const std::size_t i : m_pulled) m_spans[i].sag = 1;
    if (!m_pulled.empty()) m_pull->start();
}

void TautLineWidget::setSpans(std::vector<TautSpan> spans)
{
    const std::vector<TautSpan> before = std::exchange(m_spans, std::move(spans));
    const bool asBefore = std::equal(before.begin(), before.end(), m_spans.begin(), m_spans.end(),
                                     [](const TautSpan& a, const TautSpan& b) { return a.state == b.state; });
    if (asBefore) {
        for (const std::size_t i : m_pulled) m_spans[i].sag = before[i].sag;
    } else {
        m_pull->stop();
        m_pulled.clear();
        pullStraight(before);
    }
    while (m_buttons.size() < m_spans.size()) {
        auto* button = new StageButton(this);
        const int index = static_cast<int>(m_buttons.size());
        connect(button, &QPushButton::clicked, this, [this, index] { emit stageChosen(index); });
        m_buttons.push_back(button);
        button->show();
    }
    while (m_buttons.size() > m_spans.size()) {
        delete m_buttons.back();
        m_buttons.pop_back();
    }
    for (std::size_t i = 0; i < m_spans.size(); ++i) {
        m_buttons[i]->setChecked(m_spans[i].shown);
        m_buttons[i]->setAccessibleName(tr("Stage %1, %2").arg(m_spans[i].name, m_spans[i].stateWord));
    }
    placeButtons();
    updateGeometry();
    update();
}

void TautLineWidget::setWords(TautWords words)
{
    if (words == m_words) return;
    m_words = words;
    updateGeometry();
    update();
}

QSize TautLineWidget::sizeHint() const { return {900, heightForWidth(900)}; }

int TautLineWidget::heightForWidth(int width) const
{
    return qCeil(tautLineHeight(width, m_spans, currentLook(), m_words));
}

void TautLineWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintTautLine(painter, rect(), m_spans, currentLook(), m_words);
}

void TautLineWidget::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeButtons();
}

void TautLineWidget::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (looksChanged(event)) updateGeometry();
}

void TautLineWidget::placeButtons()
{
    const std::vector<QRectF> cells = tautLineCells(rect(), m_buttons.size());
    for (std::size_t i = 0; i < m_buttons.size(); ++i) m_buttons[i]->setGeometry(cells[i].toRect());
}

LimitBarWidget::LimitBarWidget(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LimitBarWidget::setBar(LimitBar bar)
{
    m_bar = std::move(bar);
    setAccessibleName(tr("Limit bar"));
    setAccessibleDescription(limitBarInWords(m_bar));
    setToolTip(accessibleDescription());
    update();
}

QSize LimitBarWidget::sizeHint() const { return {480, qCeil(limitBarHeight(currentLook()))}; }

QSize LimitBarWidget::minimumSizeHint() const { return {260, qCeil(limitBarHeight(currentLook()))}; }

void LimitBarWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintLimitBar(painter, rect(), m_bar, currentLook());
}

void LimitBarWidget::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (looksChanged(event)) updateGeometry();
}

ElevationWidget::ElevationWidget(QWidget* parent) : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Drawing of the press"));
}

void ElevationWidget::setView(ElevationView view)
{
    m_view = std::move(view);
    const QString stand = standInWords(m_view);
    setAccessibleDescription(stand.isEmpty() ? elevationInWords(m_view)
                                             : elevationInWords(m_view) + QLatin1Char('\n') + stand);
    updateGeometry();
    update();
}

QSize ElevationWidget::sizeHint() const { return {420, heightForWidth(420)}; }

int ElevationWidget::heightForWidth(int width) const
{
    if (m_view.paths.empty()) return sizes().row;
    return qMin(qCeil(elevationHeight(m_view, width, currentLook())), width);
}

void ElevationWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintElevation(painter, rect(), m_view, currentLook());
}

void ElevationWidget::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (looksChanged(event)) updateGeometry();
}

ChartWidget::ChartWidget(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ChartWidget::setChart(report::Chart chart, UnitSystem system)
{
    m_chart = std::move(chart);
    m_system = system;
    setAccessibleName(words(m_chart.caption, system));
    const QString said = chartInWords(m_chart, system);
    setAccessibleDescription(said);
    setToolTip(said);
    update();
}

QSize ChartWidget::sizeHint() const { return chartSize(currentLook()).toSize(); }

void ChartWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintChart(painter, rect(), m_chart, m_system, currentLook());
}

void ChartWidget::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (looksChanged(event)) updateGeometry();
}

MarkWidget::MarkWidget(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }

void MarkWidget::setMark(MarkShape shape)
{
    m_shape = shape;
    update();
}

QSize MarkWidget::sizeHint() const
{
    const int side = qRound(QFontMetricsF(currentLook(1.3).font).height());
    return {side, side};
}

void MarkWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintMark(painter, rect(), m_shape, currentLook());
}

}  // namespace taut::app
