// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/live_page.h"

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/practice/found_panel.h"
#include "app/pages/practice/hand_panel.h"
#include "app/pages/practice/press_picture.h"
#include "app/pages/practice/strip_charts.h"
#include "app/pages/practice/what_happened.h"
#include "app/sessions/practice_secrets.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kCharts = 100, kFound = 101;  // the tabs beside the places
/// Figures are read, not watched: they are written this often, charts seldomer.
constexpr qint64 kFiguresMs = 100, kChartsMs = 500;

QString clockOf(double seconds)
{
    const int whole = static_cast<int>(seconds);
    constexpr int kHour = 3600, kMinute = 60;
    return QStringLiteral("%1:%2:%3")
        .arg(whole / kHour)
        .arg(whole % kHour / kMinute, 2, 10, QLatin1Char('0'))
        .arg(whole % kMinute, 2, 10, QLatin1Char('0'));
}

}  // namespace

void veilStep(StepContent& content, const practice::Help& help)
{
    const auto said = [](const QString& text) { return Text("%1", {text.toStdString()}); };
    if (!help.say)
        content.step.say = said(LivePage::tr("Tell what is done here. Then do it at the press, and answer."));
    if (!help.keyPoint) {
        content.step.caution = {};
        content.target.reset();
    }
    if (!help.why) {
        content.step.why = said(LivePage::tr("Tell why."));
        content.step.see = {};
    }
}

LivePage::LivePage(PracticeSession* practice, QWidget* runPage, QWidget* parent) : QWidget(parent), m_practice(practice)
{
    m_left = new QWidget(this);
    auto* column = new QVBoxLayout(m_left);
    column->setContentsMargins(0, 0, 0, 0);
    m_procedure = new QStackedWidget(m_left);
    m_procedure->addWidget(runPage);
    auto* over =
        wrapped(tr("This practice run is over. The press goes on until you end the lesson."), "head", m_procedure);
    over->setObjectName(QStringLiteral("runOver"));
    over->setAlignment(Qt::AlignTop);
    m_procedure->addWidget(over);
    m_otherwise = new QWidget(m_left);
    auto* otherwise = new QVBoxLayout(m_otherwise);
    otherwise->setContentsMargins(0, 0, 0, 4);
    m_otherwiseSaid = wrapped({}, "strong", m_otherwise);
    m_otherwiseSaid->setObjectName(QStringLiteral("otherwise"));
    otherwise->addWidget(m_otherwiseSaid);
    QPushButton* seen = worded(tr("I have looked"), "", m_otherwise);
    seen->setObjectName(QStringLiteral("otherwiseSeen"));
    otherwise->addWidget(seen, 0, Qt::AlignLeft);
    m_otherwise->hide();
    connect(seen, &QPushButton::clicked, m_otherwise, &QWidget::hide);
    column->addWidget(m_otherwise);
    column->addWidget(m_procedure, 1);
    m_help = worded(tr("Help with this step: it then counts half"), "quiet", m_left);
    m_help->setObjectName(QStringLiteral("helpWithStep"));
    column->addWidget(m_help, 0, Qt::AlignLeft);
    connect(m_help, &QPushButton::clicked, this, [this] {
        if (m_shown) m_practice->askHelp(m_shown());
    });
    column->addWidget(wrapped(tr("In practice everybody signs with the passphrase \"%1\" and the PIN %2.")
                                  .arg(QLatin1String(kPracticePassphrase), QLatin1String(kPracticePin)),
                              "small", m_left));
    m_toPress = worded(tr("To the practice press"), "", m_left);
    m_toPress->setObjectName(QStringLiteral("toPress"));
    column->addWidget(m_toPress);
    m_right = buildRight();
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(10);
    columns->addWidget(m_left, 42);
    columns->addWidget(m_right, 58);
    for (QWidget* one : {m_left, m_right}) one->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    const auto look = [this](bool press) {
        m_seesPress = press;
        fit();
    };
    connect(m_toPress, &QPushButton::clicked, this, [look] { look(true); });
    connect(m_toRun, &QPushButton::clicked, this, [look] { look(false); });
    connect(practice, &PracticeSession::changed, this, &LivePage::show);
    connect(practice, &PracticeSession::paceChanged, this, &LivePage::showPace);
    connect(practice, &PracticeSession::happenedNow, this, &LivePage::showHappened);
    connect(practice, &PracticeSession::contradicted, this, &LivePage::showContradicted);
    connect(practice, &PracticeSession::runOver, this, [this] { m_procedure->setCurrentIndex(1); });
    connect(practice->runs(), &Session::runChanged, this, [this] {
        if (m_practice->happened() != nullptr) showHappened();
    });
    fit();
}

QWidget* LivePage::buildTime()
{
    auto* box = new QWidget(this);
    auto* row = new FlowRow(box);
    row->setSpacing(4);
    m_toRun = worded(tr("To the pr&ocedure"), "", box);
    m_toRun->setObjectName(QStringLiteral("toRun"));
    row->addWidget(m_toRun);
    m_clock = withRole(new QLabel(box), "head");
    m_clock->setObjectName(QStringLiteral("worldClock"));
    row->addWidget(m_clock);
    m_paces = new QButtonGroup(this);
    m_paces->setExclusive(true);
    const std::tuple<Pace, QString, QString> paces[] = {
        {Pace::Stopped, tr("Stopped"), tr("Time stands still")},
        {Pace::Quarter, QStringLiteral("\u00BC\u00D7"), tr("A quarter of real time")},
        {Pace::Real, QStringLiteral("1\u00D7"), tr("Real time")},
        {Pace::FourTimes, QStringLiteral("4\u00D7"), tr("Four times as fast")},
        {Pace::Fastest, tr("Fastest"), tr("As fast as it goes")}};
    for (const auto& [pace, text, name] : paces) {
        QPushButton* button = worded(text, "quiet", box);
        button->setAccessibleName(name);
        button->setToolTip(name);
        button->setObjectName(QStringLiteral("pace%1").arg(static_cast<int>(pace)));
        button->setCheckable(true);
        m_paces->addButton(button, static_cast<int>(pace));
        row->addWidget(button);
    }
    m_behind = withRole(new QLabel(tr("This PC does not keep up: time goes more slowly."), box), "soft");
    m_behind->setWordWrap(true);
    m_behind->hide();
    row->addWidget(m_behind);
    QPushButton* leave = worded(tr("End the lesson"), "", box);
    leave->setObjectName(QStringLiteral("endLesson"));
    row->addWidget(leave);
    connect(leave, &QPushButton::clicked, this, &LivePage::left);
    connect(m_paces, &QButtonGroup::idClicked, this, [this](int id) {
        m_practice->setPace(static_cast<Pace>(id));
        showPace();
    });
    return box;
}

QWidget* LivePage::buildPlaces()
{
    auto* box = new QWidget(this);
    auto* row = new FlowRow(box);
    row->setSpacing(2);
    m_tabs = new QButtonGroup(this);
    m_tabs->setExclusive(true);
    const auto add = [&](const QString& text, int id) {
        QPushButton* button = worded(text, "quiet", box);
        button->setObjectName(QStringLiteral("place%1").arg(id));
        button->setAccessibleName(tr("At the practice press: %1").arg(text));
        button->setCheckable(true);
        m_tabs->addButton(button, id);
        row->addWidget(button);
    };
    for (const practice::At at : practice::kEverywhere) add(placeText(at), static_cast<int>(at));
    add(tr("Charts"), kCharts);
    add(tr("Not right?"), kFound);
    connect(m_tabs, &QButtonGroup::idClicked, this, &LivePage::choose);
    return box;
}

QWidget* LivePage::buildRight()
{
    auto* body = new QWidget(this);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(buildTime());
    m_picture = new PressPicture(body);
    column->addWidget(m_picture);
    m_gauges = new Gauges(body);
    column->addWidget(m_gauges);
    m_places = buildPlaces();
    column->addWidget(m_places);
    column->addWidget(ruledLine(body));
    m_lower = new QStackedWidget(body);
    m_hands = new HandPanel(m_lower);
    m_charts = new StripCharts(m_lower);
    m_happened = new WhatHappened(m_lower);
    m_found = new FoundPanel(m_lower);
    for (QWidget* one : std::initializer_list<QWidget*>{m_hands, m_charts, m_happened, m_found})
        m_lower->addWidget(one);
    connect(m_found, &FoundPanel::named, m_practice, [this](const practice::Suspect& suspect) {
        m_practice->name(suspect);
        m_found->show(*m_practice->played());
    });
    m_lower->setMinimumHeight(3 * sizes().control);
    column->addWidget(m_lower, 1);
    connect(m_hands, &HandPanel::done, this, &LivePage::perform);
    connect(m_happened, &WhatHappened::goOn, m_practice, &PracticeSession::goOn);
    connect(m_happened, &WhatHappened::again, this, &LivePage::again);
    connect(m_happened, &WhatHappened::stepWanted, this, [this](const QString& step) {
        showRun();
        emit stepWanted(step);
    });
    return new ScrollRoom(body, this);
}

void LivePage::begin()
{
    if (m_practice->lesson() == nullptr) return;
    m_hands->build(*m_practice->lesson()->inputs.press);
    m_found->build(*m_practice->lesson()->inputs.press);
    m_otherwise->hide();
    m_help->setVisible(practice::helpIn(m_practice->played()->scenario().mode) != practice::Help{});
    m_tabs->button(static_cast<int>(practice::At::Panel))->setChecked(true);
    m_procedure->setCurrentIndex(m_practice->isRunOver() ? 1 : 0);
    m_seesPress = true;
    fit();
    choose(static_cast<int>(practice::At::Panel));
    showPace();
}

void LivePage::choose(int tab)
{
    if (tab < kCharts) m_hands->stand(static_cast<practice::At>(tab));
    if (tab == kFound && m_practice->played() != nullptr) m_found->show(*m_practice->played());
    if (m_practice->happened() == nullptr) lower(chosenTab());
    m_told.invalidate();
    show();
}

/// What happened has the room of everything else that could be looked at or touched.
void LivePage::lower(QWidget* page)
{
    m_lower->setCurrentWidget(page);
    for (QWidget* one : std::initializer_list<QWidget*>{m_gauges, m_places}) one->setVisible(page != m_happened);
}

QWidget* LivePage::chosenTab() const
{
    switch (m_tabs->checkedId()) {
    case kCharts: return m_charts;
    case kFound: return m_found;
    default: return m_hands;
    }
}

void LivePage::showContradicted(const practice::Contradiction& by)
{
    const inputs::Press& press = *m_practice->lesson()->inputs.press;
    m_otherwiseSaid->setText(tr("The press says otherwise: %1").arg(words(by.text, press.units)));
    m_otherwise->show();
}

void LivePage::showRun()
{
    if (!m_narrow) return;
    m_seesPress = false;
    fit();
}

void LivePage::perform(const practice::Deed& deed)
{
    if (const auto done = m_practice->perform(deed); !done) m_hands->refuse(deed, done.error());
}

/// The picture at every change; figures and charts as often as they can be read.
void LivePage::show()
{
    const practice::World* world = m_practice->world();
    if (world == nullptr || m_practice->lesson() == nullptr) return;
    const inputs::Press& press = *m_practice->lesson()->inputs.press;
    const Length step = Length::si(world->speed().si() * m_practice->lastStep());
    m_picture->show(livePressOf(*world, press, step));
    const bool still = m_practice->pace() == Pace::Stopped;
    const qint64 since = m_told.isValid() && !still ? m_told.elapsed() : kChartsMs;
    m_hands->show(*world);
    if (m_practice->happened() == nullptr && m_lower->currentWidget() == m_happened) {
        lower(chosenTab());
        if (QAbstractButton* tab = m_tabs->checkedButton()) tab->setFocus();
    }
    if (since < kFiguresMs) return;
    m_clock->setText(clockOf(world->time()));
    m_gauges->show(*world, press);
    const bool charts = m_lower->currentWidget() == m_charts;
    if (charts && since < kChartsMs) return;
    if (charts) m_charts->show(*m_practice);
    m_told.start();
}

void LivePage::showPace()
{
    if (QAbstractButton* button = m_paces->button(static_cast<int>(m_practice->pace()))) button->setChecked(true);
    m_behind->setVisible(m_practice->behind());
    // What stands still is told to the last figure.
    show();
}

void LivePage::showHappened()
{
    const practice::Consequence* happened = m_practice->happened();
    if (happened == nullptr) return show();
    const run::Run* run = m_practice->runs()->run();
    m_happened->show(*happened, run != nullptr ? &run->plan() : nullptr, m_practice->lesson()->inputs.press->units);
    lower(m_happened);
    m_told.invalidate();
    show();
    // Whoever answers a step meanwhile goes on typing there; whoever had a hand at the press has it taken away.
    if (const QWidget* focus = window()->focusWidget(); focus == nullptr || !m_left->isAncestorOf(focus))
        m_happened->first()->setFocus();
}

void LivePage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void LivePage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) fit();
}

void LivePage::fit()
{
    constexpr int kBoth = 124;  // letters
    m_narrow = width() < kBoth * fontMetrics().averageCharWidth();
    m_left->setVisible(!m_narrow || !m_seesPress);
    m_right->setVisible(!m_narrow || m_seesPress);
    m_toPress->setVisible(m_narrow);
    m_toRun->setVisible(m_narrow);
}

}  // namespace taut::app
