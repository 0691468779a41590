// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/tour.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "app/drawing/help_pictures.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kPicture = 340;  // wide

}  // namespace

PointingFrame::PointingFrame(QWidget* window) : QWidget(window)
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    hide();
}

void PointingFrame::pointAt(QWidget* target)
{
    if (m_target) m_target->removeEventFilter(this);
    parentWidget()->removeEventFilter(this);
    m_target = target;
    if (target != nullptr) {
        target->installEventFilter(this);
        parentWidget()->installEventFilter(this);
    }
    settle();
}

bool PointingFrame::eventFilter(QObject*, QEvent* event)
{
    switch (event->type()) {
    case QEvent::Resize:
    case QEvent::Move:
    case QEvent::Show:
    case QEvent::Hide:
    case QEvent::LayoutRequest: QMetaObject::invokeMethod(this, &PointingFrame::settle, Qt::QueuedConnection); break;
    default: break;
    }
    return false;
}

void PointingFrame::settle()
{
    const bool seen = m_target && m_target->isVisible();
    setVisible(seen);
    if (!seen) return;
    constexpr int kAround = 3;
    setGeometry(QRect(m_target->mapTo(parentWidget(), QPoint()), m_target->size())
                    .adjusted(-kAround, -kAround, kAround, kAround));
    raise();
}

void PointingFrame::paintEvent(QPaintEvent*)
{
    constexpr int kPen = 5;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(currentLook().palette.near, kPen));
    painter.drawRoundedRect(QRectF(rect()).adjusted(kPen / 2.0, kPen / 2.0, -kPen / 2.0, -kPen / 2.0), 6, 6);
}

Tour::Tour(QWidget* window) : QWidget(window)
{
    m_words = wrapped({}, "strong", this);
    m_picture = new QLabel(this);
    m_count = withRole(new QLabel(this), "soft");
    m_back = worded(tr("Back"), "quiet", this);
    m_next = worded({}, "answer", this);
    m_next->setObjectName(QStringLiteral("tourOn"));
    m_skip = worded(tr("That is enough"), "quiet", this);
    m_skip->setObjectName(QStringLiteral("tourSkip"));
    auto* rows = new QHBoxLayout(this);
    rows->setContentsMargins(16, 8, 8, 8);
    rows->setSpacing(sizes().gap);
    auto* said = new QHBoxLayout;
    said->addWidget(m_picture);
    said->addWidget(m_words, 1);
    auto* on = new QHBoxLayout;
    for (QWidget* w : std::initializer_list<QWidget*>{m_count, m_back, m_next, m_skip})
        on->addWidget(w, 0, Qt::AlignVCenter);
    rows->addLayout(said, 1);
    rows->addLayout(on);
    foldBelow(this, rows, 110);
    m_frame = new PointingFrame(window);
    connect(m_back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { step(1); });
    connect(m_skip, &QPushButton::clicked, this, &Tour::leave);
    hide();
}

void Tour::begin(std::vector<Stop> stops)
{
    m_stops = std::move(stops);
    if (m_stops.empty()) return;
    show();
    showStop(0);
    m_next->setFocus();
}

void Tour::leave()
{
    m_frame->pointAt(nullptr);
    hide();
    emit over();
}

void Tour::step(int by)
{
    const auto next = static_cast<std::size_t>(std::max(static_cast<int>(m_at) + by, 0));
    next < m_stops.size() ? showStop(next) : leave();
}

void Tour::showStop(std::size_t stop)
{
    m_at = stop;
    const Stop& now = m_stops[stop];
    const bool isLast = stop + 1 == m_stops.size();
    m_words->setText(now.words);
    setAccessibleName(now.words);
    m_count->setText(tr("%1 of %2").arg(stop + 1).arg(m_stops.size()));
    m_back->setEnabled(stop > 0);
    m_next->setText(isLast ? tr("To work") : tr("On"));
    m_next->setAccessibleName(m_next->text());
    m_skip->setVisible(!isLast);
    // What is in sight is pointed at; of what is not, a drawing is shown.
    const bool seen = now.target && now.target->isVisible();
    m_frame->pointAt(seen ? now.target.data() : nullptr);
    const bool draws = !seen && !now.picture.isEmpty();
    m_picture->setVisible(draws);
    if (draws)
        m_picture->setPixmap(QPixmap::fromImage(helpPicture(
            now.picture, currentLook(0.85), std::min(kPicture, parentWidget()->width() / 3), devicePixelRatioF())));
}

void Tour::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    event->accept();
    leave();
}

void Tour::paintEvent(QPaintEvent*)
{
    const Look look = currentLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.palette.wash);
    painter.fillRect(QRect(0, 0, 6, height()), look.palette.near);
}

}  // namespace taut::app
