// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/after_lesson.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QSlider>
#include <QStackedWidget>
#include <QThread>
#include <QVBoxLayout>

#include "app/pages/practice/press_picture.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/practice/attempt_report.h"

namespace taut::app {

namespace {

constexpr int kTenths = 10;      // of a second on the slider
constexpr int kPictureMs = 100;  // as it is played, at four times the pace of the lesson
constexpr double kPace = 4;

MarkShape shapeOf(practice::TimeMark::What what)
{
    switch (what) {
    case practice::TimeMark::What::Contradiction: return MarkShape::HalfDiamond;
    case practice::TimeMark::What::Consequence: return MarkShape::Octagon;
    case practice::TimeMark::What::Answer: return MarkShape::Tick;
    default: return MarkShape::Dot;
    }
}

}  // namespace

AfterLesson::AfterLesson(ReportPane* sheet, QWidget* parent) : QWidget(parent), m_sheet(sheet)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 6, 0, 0);
    auto* row = new FlowRow;
    row->setSpacing(6);
    const auto add = [&](const QString& text, const char* role, const char* name) {
        QPushButton* button = worded(text, role, this);
        button->setObjectName(QString::fromLatin1(name));
        row->addWidget(button);
        return button;
    };
    m_look = add(tr("Look at the press again"), "main", "lookAgain");
    m_same = add(tr("Begin again, the same"), "", "attemptAgain");
    m_other = add(tr("Begin again, with other chances"), "", "attemptOther");
    m_leave = add(tr("To the scenarios"), "", "toScenarios");
    layout->addLayout(row);
    m_stack = new QStackedWidget(this);
    m_stack->addWidget(sheet);
    m_played = buildReplay();
    m_stack->addWidget(m_played);
    layout->addWidget(m_stack, 1);
    connect(m_look, &QPushButton::clicked, this, [this] {
        if (m_stack->currentWidget() == m_played) {
            play(false);
            m_stack->setCurrentWidget(m_sheet);
            m_look->setText(tr("Look at the press again"));
            return;
        }
        m_stack->setCurrentWidget(m_played);
        m_look->setText(tr("Back to what it came to"));
        if (!m_replay) replay();
    });
    connect(m_same, &QPushButton::clicked, this, [this] { emit again(true); });
    connect(m_other, &QPushButton::clicked, this, [this] { emit again(false); });
    connect(m_leave, &QPushButton::clicked, this, &AfterLesson::left);
    m_timer.setInterval(kPictureMs);
    connect(&m_timer, &QTimer::timeout, this, [this] {
        const double next = m_at + kPace * kPictureMs / 1000.0;
        if (!m_replay || next >= m_replay->length()) play(false);
        if (m_replay) showAt(std::min(next, m_replay->length()));
    });
}

AfterLesson::~AfterLesson() = default;

QWidget* AfterLesson::first() const { return m_look; }

QWidget* AfterLesson::buildReplay()
{
    auto* page = new QWidget(this);
    auto* columns = new QHBoxLayout(page);
    columns->setContentsMargins(0, 0, 0, 0);
    m_marks = new RowList(page);
    m_marks->setObjectName(QStringLiteral("timeLine"));
    m_marks->setAccessibleName(tr("What was done and what came of it, in the order of time"));
    columns->addWidget(m_marks, 2);
    // With large type on a small screen what is seen of the press needs more than there is.
    auto* seen = new QWidget;
    auto* right = new QVBoxLayout(seen);
    right->setContentsMargins(0, 0, 6, 0);
    m_clock = withRole(new QLabel(page), "head");
    m_clock->setObjectName(QStringLiteral("replayClock"));
    m_said = wrapped({}, "soft", page);
    m_picture = new PressPicture(page);
    m_slider = new QSlider(Qt::Horizontal, page);
    m_slider->setObjectName(QStringLiteral("replayTime"));
    named(m_slider, tr("Time in the lesson"));
    m_slider->setMinimumHeight(sizes().control);
    m_slider->setPageStep(100 * kTenths);
    m_play = worded(tr("Play"), "", page);
    m_play->setObjectName(QStringLiteral("replayPlay"));
    m_play->setCheckable(true);
    auto* row = new QHBoxLayout;
    row->addWidget(m_play);
    row->addWidget(m_slider, 1);
    right->addWidget(m_clock);
    right->addWidget(m_picture);
    m_gauges = new Gauges(page);
    right->addWidget(m_gauges);
    right->addLayout(row);
    right->addWidget(m_said);
    right->addStretch(1);
    columns->addSpacing(sizes().gap);
    columns->addWidget(new ScrollRoom(seen, page), 3);
    connect(m_slider, &QSlider::valueChanged, this, [this](int tenths) {
        if (!m_moves) showAt(static_cast<double>(tenths) / kTenths);
    });
    connect(m_play, &QPushButton::clicked, this, &AfterLesson::play);
    connect(m_marks, &QListWidget::currentRowChanged, this, [this] {
        bool number = false;
        const double at = m_marks->chosen().section(QLatin1Char(' '), 1).toDouble(&number);
        if (number && m_replay) showAt(at);
    });
    return page;
}

void AfterLesson::show(const practice::Attempt& attempt, const run::Sources& sources, bool own)
{
    for (QPushButton* button : {m_same, m_other}) button->setVisible(own);
    m_leave->setText(own ? tr("To the scenarios") : tr("Back to the training record"));
    play(false);
    ++m_asked;
    m_attempt = attempt;
    m_replay.reset();
    m_basis.reset();
    if (auto basis = run::basisFor(sources, {})) m_basis = *std::move(basis);
    m_stack->setCurrentWidget(m_sheet);
    m_look->setText(tr("Look at the press again"));
    m_look->setEnabled(m_basis.has_value());
    if (!m_basis) return m_sheet->showNothing(tr("What it went by cannot be read any more."));
    m_sheet->show(practice::attemptReport(attempt, *m_basis), tr("practice"));
    fillTimeLine();
}

void AfterLesson::fillTimeLine()
{
    const QSignalBlocker quiet(m_marks);
    m_marks->clear();
    const UnitSystem units = m_basis->inputs.press->units;
    int number = 0;
    for (const practice::TimeMark& mark : practice::timeLineOf(*m_attempt)) {
        Text text;
        switch (mark.what) {
        case practice::TimeMark::What::Contradiction:
            text = {"The press said otherwise: %1", {std::vector<Text>{m_attempt->contradictions[mark.index].text}}};
            break;
        case practice::TimeMark::What::Consequence: text = m_attempt->consequences[mark.index].text; break;
        default: text = practice::actText(m_attempt->log[mark.index].act, *m_basis);
        }
        QString more;
        if (mark.what <= practice::TimeMark::What::Hint && m_attempt->log[mark.index].refused)
            more = tr("refused: %1").arg(words(m_attempt->log[mark.index].refused->text, units));
        m_marks->add({QStringLiteral("%1 %2").arg(number++).arg(mark.at, 0, 'f', 2), words(text, units),
                      QString::fromStdString(practice::lessonTime(mark.at)), more, shapeOf(mark.what)});
    }
}

/// Made beside the window: a long lesson is played anew in seconds, not at once.
void AfterLesson::replay()
{
    m_said->setText(tr("It is being played anew\u2026"));
    m_slider->setEnabled(false);
    m_play->setEnabled(false);
    const int asked = m_asked;
    const QPointer<AfterLesson> self(this);
    QThread* thread = QThread::create([self, asked, attempt = *m_attempt, basis = *m_basis]() mutable {
        auto made =
            std::make_shared<Result<practice::Replay>>(practice::Replay::of(std::move(attempt), std::move(basis)));
        QMetaObject::invokeMethod(qApp, [self, asked, made] {
            if (!self || self->m_asked != asked) return;
            if (!*made) return self->m_said->setText(words(made->error(), UnitSystem::Metric));
            self->m_replay = std::shared_ptr<const practice::Replay>(made, &made->value());
            self->m_said->setText(self->m_replay->isFaithful()
                                      ? tr("Played anew from its seed: the same, to the last figure.")
                                      : tr("This version of the program reckons otherwise than the one that it was "
                                           "practised with: what is seen may differ."));
            self->m_slider->setRange(0, static_cast<int>(std::ceil(self->m_replay->length() * kTenths)));
            self->m_slider->setEnabled(true);
            self->m_play->setEnabled(true);
            self->showAt(0);
        });
    });
    connect(thread, &QThread::finished, thread, &QObject::deleteLater);
    thread->start();
}

void AfterLesson::showAt(double seconds)
{
    const practice::World world = m_replay->at(seconds);
    const Length step = Length::si(world.speed().si() * kPictureMs / 1000.0);
    m_picture->show(livePressOf(world, *m_basis->inputs.press, m_timer.isActive() ? step : Length{}));
    m_gauges->show(world, *m_basis->inputs.press);
    m_at = seconds;
    m_clock->setText(QString::fromStdString(practice::lessonTime(seconds)));
    m_moves = true;
    m_slider->setValue(static_cast<int>(std::lround(seconds * kTenths)));
    m_moves = false;
}

void AfterLesson::play(bool plays)
{
    m_play->setChecked(plays);
    m_play->setText(plays ? tr("Stop") : tr("Play"));
    if (plays && m_replay)
        m_timer.start();
    else
        m_timer.stop();
    if (plays && m_replay && m_at >= m_replay->length()) showAt(0);
}

}  // namespace taut::app
