// SPDX-License-Identifier: GPL-3.0-or-later
// How a step's card is laid out and shares its height; what it says stands in step_card.cpp.
#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVBoxLayout>

#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kLeastScrolled = 60, kLeastWrong = 44, kLeastLine = 24;

}  // namespace

void StepCard::build()
{
    m_where = wrapped({}, "strong", this);
    m_number = new QLabel(this);
    withRole(m_number, "soft");
    auto* head = new QHBoxLayout;
    head->addWidget(m_where, 1);
    head->addWidget(m_number, 0, Qt::AlignTop);

    auto* body = new QWidget;
    body->setMinimumWidth(1);  // as wide as is seen: buttons wrap their words before anything lies under a scroll bar
    m_bodyLayout = new QVBoxLayout(body);
    m_bodyLayout->setContentsMargins(0, 0, 0, 0);
    m_bodyLayout->setSpacing(10);
    m_asked = new QWidget(body);
    auto* asked = new QVBoxLayout(m_asked);
    asked->setContentsMargins(0, 0, 0, 0);
    m_say = wrapped({}, "say", m_asked);
    m_say->setObjectName(QStringLiteral("say"));
    m_caution = new SignalPanel(m_asked);
    m_caution->setObjectName(QStringLiteral("caution"));
    m_linesBox = new QWidget(body);
    m_lines = new QVBoxLayout(m_linesBox);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(4);
    // The caution stands first, so that no small screen scrolls it out of sight.
    asked->addWidget(m_caution);
    asked->addWidget(m_say);
    m_bodyLayout->addWidget(m_asked);
    m_bodyLayout->addWidget(m_linesBox);
    m_bodyLayout->addStretch(1);
    m_scroll = new QScrollArea(this);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    // What answers has its height first; what is asked scrolls in the rest.
    m_scroll->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_scroll->setMinimumHeight(kLeastScrolled);
    m_scroll->setWidget(body);
    m_scroll->installEventFilter(this);

    m_finding = new FindingStrip(this);
    m_writing = new QLabel(tr("Writing\u2026"), this);
    m_writing->setObjectName(QStringLiteral("writing"));
    withRole(m_writing, "strong");
    m_writing->hide();
    m_foot = new QWidget(this);
    auto* footLayout = new QVBoxLayout(m_foot);
    footLayout->setContentsMargins(0, 0, 0, 0);
    m_answers = new QWidget(m_foot);
    m_footLayout = new QVBoxLayout(m_answers);
    m_footLayout->setContentsMargins(0, 0, 0, 0);
    m_supervisor = new AskPanel(m_foot);
    m_supervisor->hide();
    footLayout->addWidget(m_answers);
    footLayout->addWidget(m_supervisor);
    m_first = worded(tr("Show what comes &first"), "answer", m_answers);
    m_first->setObjectName(QStringLiteral("comesFirst"));
    m_footLayout->addWidget(m_first);
    connect(m_first, &QPushButton::clicked, this, &StepCard::firstWanted);
    connect(m_finding, &FindingStrip::understood, this, &StepCard::focusAnswer);
    connect(
        m_finding, &FindingStrip::gone, this,
        [this] {
            if (m_area) m_area->setRefused(false);
            settleCrowd();
            refit();
        },
        Qt::QueuedConnection);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 8, 20, 8);
    layout->setSpacing(8);
    layout->addLayout(head);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_finding);
    layout->addWidget(m_writing);
    layout->addWidget(m_foot);

    connect(m_supervisor, &AskPanel::cancelled, this, [this] {
        askSupervisor(false);
        focusAnswer();
    });
    connect(m_supervisor, &AskPanel::given, this,
            [this](const QStringList& values, const QString& person, const QString& passphrase) {
                const run::StepId step = m_content.step.id;
                const std::string reason = values.value(0).toStdString();
                emit commandSigned(person, passphrase,
                                   [step, reason](std::shared_ptr<const people::Signer> supervisor) -> run::Command {
                                       return run::AcceptDeviation{step, reason, std::move(supervisor)};
                                   });
            });
}

/// What answers stays at the lower edge, unless that would leave no room for what is asked: then it scrolls with it.
void StepCard::placeFoot()
{
    if (m_supervisor->isVisibleTo(this)) return;
    m_footHeight = footWanted();
    pinFoot(footFits());
}

/// Where what answers scrolls with what is asked: all of it in sight, or at least where it is typed.
void StepCard::showAnswers()
{
    if (m_pinned || !m_area) return;
    QScrollBar* bar = m_scroll->verticalScrollBar();
    bar->setValue(bar->maximum());
    if (m_area->field()) m_scroll->ensureWidgetVisible(m_area->field());
}

bool StepCard::footFits() const
{
    constexpr int kLeastBody = 150, kRead = 90;  // whoever was refused has read the step
    const bool refused = m_finding->isVisibleTo(this);
    // What stands above and between keeps its height too, with large type in a low window most of all.
    const int head = m_where->heightForWidth(width() - 46 - m_number->sizeHint().width());
    const int around = 16 + 3 * layout()->spacing() + std::max(head, m_number->sizeHint().height());
    const int left = height() - footWanted() - m_finding->wantedHeight(width() - 40);
    return left >= (refused ? kRead : kLeastBody) && left >= around + m_scroll->minimumHeight();
}

int StepCard::footWanted() const
{
    m_foot->layout()->activate();
    return m_foot->hasHeightForWidth() ? m_foot->heightForWidth(width() - 40) : m_foot->sizeHint().height();
}

/// What is typed may make the foot higher (a long hint) or lower: what is asked gets the rest, in the type that it was
/// set in, since nothing should jump under whoever reads and types.
void StepCard::followFoot()
{
    const int before = m_footHeight;
    if (footWanted() == before) return;
    m_sayKept = true;
    const bool pinned = m_pinned;
    placeFoot();
    if (m_pinned && !pinned) pinFoot(false);
    fitSay();
    if (!m_pinned && m_area && m_area->field()) m_scroll->ensureWidgetVisible(m_area->field());
}

void StepCard::pinFoot(bool pinned)
{
    if (pinned == m_pinned) return;
    m_pinned = pinned;
    if (!pinned) placeAsked(false);
    // Moved, a widget loses the focus, and Enter would go to whatever comes next on the page.
    QWidget* focus = window()->focusWidget();
    const QPointer<QWidget> kept = focus && m_foot->isAncestorOf(focus) ? focus : nullptr;
    if (pinned)
        static_cast<QVBoxLayout*>(layout())->addWidget(m_foot);
    else
        m_bodyLayout->addWidget(m_foot);
    m_foot->show();
    if (kept) kept->setFocus();
}

/// What is to be done is set as large as lets everything be seen without scrolling. Where even the smallest leaves it
/// cut, what answers scrolls with it: nobody answers what they have not read.
void StepCard::fitSay()
{
    if (m_fitting) return;
    m_fitting = true;
    layout()->activate();
    QWidget* body = m_scroll->widget();
    constexpr struct {
        const char* role;
        int spacing;
    } kSizes[] = {{"say", 10}, {"longSay", 10}, {"head", 10}, {"head", 4}, {"", 10}, {"", 4}};
    for (const auto& [role, spacing] : kSizes) {
        if (m_sayKept) break;
        withRole(m_say, role);
        m_bodyLayout->setSpacing(spacing);
        m_asked->layout()->setSpacing(spacing);
        m_say->style()->unpolish(m_say);
        m_say->style()->polish(m_say);
        m_asked->layout()->invalidate();
        m_asked->updateGeometry();  // what holds it remembers its height
        m_bodyLayout->invalidate();
        m_bodyLayout->activate();
        if (seenWhole()) break;
    }
    // A bar makes the lines shorter, so that there are more of them: left to itself it would stay for its own sake.
    m_scroll->setVerticalScrollBarPolicy(seenWhole() ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    body->updateGeometry();
    // Reckoned, not looked up: a card that has just come up has not been laid out yet.
    const int line = m_scroll->width() - (seenWhole() ? 0 : m_scroll->verticalScrollBar()->sizeHint().width());
    const int asked = m_asked->heightForWidth(line);
    if (m_pinned && asked > roomAsked() && !m_supervisor->isVisibleTo(this)) {
        pinFoot(false);
        m_scroll->setVerticalScrollBarPolicy(seenWhole() ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    }
    // Where what is said of it must scroll, what is asked and its caution stand still, if that leaves some lines.
    const int still = m_asked->heightForWidth(m_scroll->width()) + layout()->spacing();
    const int left = roomAsked() - still;
    // Where it fits it stays where it is: nothing moves for nothing.
    if (m_supervisor->isVisibleTo(this) || !m_pinned)
        placeAsked(false);
    else if (!seenWhole())
        placeAsked(left >= (m_wrong ? kLeastWrong : kLeastLine));
    if (m_askedAbove) layout()->activate();
    m_fitting = false;
}

void StepCard::placeAsked(bool above)
{
    if (above == m_askedAbove) return;
    m_askedAbove = above;
    if (above)
        static_cast<QVBoxLayout*>(layout())->insertWidget(1, m_asked);
    else
        m_bodyLayout->insertWidget(0, m_asked);
    m_asked->show();
    m_scroll->setMinimumHeight(above ? kLeastLine : kLeastScrolled);
    layout()->activate();
}

/// The height that is there for what is asked and what is said of it.
int StepCard::roomAsked() const { return m_scroll->height() + (m_askedAbove ? m_asked->height() : 0); }

bool StepCard::seenWhole() const
{
    const int above = m_askedAbove ? m_asked->heightForWidth(m_scroll->width()) : 0;
    return above + m_bodyLayout->heightForWidth(m_scroll->width()) <= roomAsked();
}

/// Whatever takes height from what is asked, or gives it back, has it set anew; afterwards, since a layout that is just
/// giving out its room must not be changed.
bool StepCard::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_scroll && event->type() == QEvent::Resize && !m_fitting && !m_refitting && !m_fitsLater &&
        !m_sharedFor.contains(m_scroll->size())) {
        m_fitsLater = true;
        m_sharedFor << m_scroll->size();
        QMetaObject::invokeMethod(
            this,
            [this] {
                m_fitsLater = false;
                if (m_sayKept)
                    fitSay();
                else
                    share(false);
            },
            Qt::QueuedConnection);
    }
    return QWidget::eventFilter(watched, event);
}

/// Shares the height anew, after something came up or went that takes part of it.
void StepCard::refit()
{
    m_sayKept = false;
    m_sharedFor.clear();
    share(true);
}

/// places: what answers may move to the lower edge, or to what is asked.
void StepCard::share(bool places)
{
    if (m_refitting) return;
    m_refitting = true;
    // The room of what may come, a refusal and a hint, is given to what is asked where that would not be seen whole
    // otherwise: first that of the refusal.
    constexpr struct {
        bool refusal, hint, tight;
    } kRooms[] = {{true, true, false}, {false, true, false}, {false, false, false}, {false, false, true}};
    const bool typed = m_area && m_area->field() && !m_supervisor->isVisibleTo(this);
    for (const auto& [refusal, hint, tight] : kRooms) {
        if (tight && (m_askedAbove || !m_finding->isVisibleTo(this))) break;
        m_finding->reserve(refusal && typed);
        if (m_area) m_area->reserveHint(hint);
        if (m_area) m_area->setTight(tight);
        if (refusal && (!typed || !footFits())) continue;
        if (places) placeFoot();
        fitSay();
        if (seenWhole() && (m_pinned || !refusal)) break;
    }
    m_refitting = false;
}

void StepCard::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    refit();
}

}  // namespace taut::app
