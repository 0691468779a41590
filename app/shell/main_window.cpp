// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/main_window.h"

#include <utility>

#include <QApplication>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/definition_editor.h"
#include "app/pages/setup/definitions_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/seams/kept_settings.h"
#include "app/shell/demo_note.h"
#include "app/shell/echo.h"
#include "app/shell/leave_strip.h"
#include "app/shell/page_shelf.h"
#include "app/shell/practice_frame.h"
#include "app/shell/read_only_strip.h"
#include "app/shell/screen_menu.h"
#include "app/shell/sign_in_strip.h"
#include "app/shell/tongue.h"
#include "app/shell/top_bar.h"
#include "app/shell/tour.h"
#include "app/text/words.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/screen_keys.h"
#include "app/widgets/theme.h"

namespace taut::app {

MainWindow::MainWindow(Session::Options options, QWidget* parent) : QWidget(parent)
{
    m_session = new Session(std::move(options), this);
    setMinimumSize(640, 480);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    // What has to be said may not push the window off a small screen: the page below gives way.
    whole->setSizeConstraint(QLayout::SetNoConstraint);
    m_frame = new PracticeFrame(this);
    whole->addWidget(m_frame);
    build();
    m_tongue = new Tongue(m_session, this);
    connect(m_tongue, &Tongue::wanted, this, &MainWindow::sayAnew);
    qApp->installEventFilter(this);
    setWindowTitle(tr("Tautweb"));
    resize(1280, 700);
    if (!restoreGeometry(keptSettings().value(QStringLiteral("window")).toByteArray()))
        setWindowState(Qt::WindowMaximized);
    // A window that nobody sees, behind others or as small as its name, keeps its logbook as any other does.
    constexpr int kUnseenMs = 1000;
    QTimer::singleShot(kUnseenMs, this, &MainWindow::begin);
}

/// Everything that is seen. Made anew when the language changes: nothing of it but what carryOver takes along is more
/// than a picture of what the session holds.
void MainWindow::build()
{
    m_body = new QWidget(m_frame);
    m_frame->layout()->addWidget(m_body);
    m_doors = new QButtonGroup(m_body);
    m_doors->setExclusive(true);
    m_signIn = new SignInStrip(m_session, m_body);
    m_refusal = new FindingStrip(m_body);
    m_inBar = new FindingStrip(m_body);
    m_inBar->standInRow();
    m_keeping = new FindingStrip(m_body, tr("Seen"));
    m_keeping->setObjectName(QStringLiteral("keeping"));
    connect(m_keeping, &FindingStrip::gone, this, &MainWindow::tellOfKeeping);
    m_ended = new FindingStrip(m_body, tr("I have read it"));
    m_leave = new LeaveStrip(m_body);
    m_readOnly = new ReadOnlyStrip(m_body);
    m_pages = new PageShelf(m_body);

    auto* top = new TopBar(m_body);
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSizeConstraint(QLayout::SetNoConstraint);
    column->addWidget(top);
    column->addWidget(ruledLine(m_body));
    m_band = new PracticeBand(m_body);
    m_band->hide();
    column->addWidget(m_band);
    column->addWidget(m_leave);
    column->addWidget(m_readOnly);
    column->addWidget(m_refusal);
    column->addWidget(m_keeping);
    column->addWidget(m_ended);
    m_tour = new Tour(m_body);
    column->addWidget(m_tour);
    auto* demo = new DemoNote(m_session, m_body);
    connect(m_signIn, &SignInStrip::chosen, demo, &DemoNote::tellOf);
    column->addWidget(demo);
    column->addWidget(m_pages, 1);
    for (const auto& [name, door] : {std::pair(tr("Run"), kRunDoor), std::pair(tr("History"), kHistoryDoor),
                                     std::pair(tr("Shop"), kShopDoor), std::pair(tr("Practice"), kPracticeDoor)}) {
        QPushButton* button = worded(name, "quiet", m_body);
        button->setCheckable(true);
        button->setMinimumHeight(sizes().control);
        m_doors->addButton(button, door);
        top->addDoor(button);
    }
    auto* keys = worded(tr("Keys"), "quiet", m_body);
    keys->setObjectName(QStringLiteral("keys"));
    keys->setAccessibleName(tr("Keys on the screen"));
    keys->setCheckable(true);
    // It is there for whoever has no keyboard, and must not take the focus from the field that is to be typed into.
    keys->setFocusPolicy(Qt::NoFocus);
    keys->setMinimumHeight(sizes().control);
    m_keys = new ScreenKeys(m_body);
    top->addDoor(keys);
    top->addDoor(screenMenu(m_body, [this](const Wish& wish) { m_tongue->choose(wish); }));
    makeHelp();
    top->addDoor(m_helpButton);
    top->addWho(m_inBar, m_signIn);
    m_doors->button(kRunDoor)->setChecked(true);

    connect(m_doors, &QButtonGroup::idClicked, this, &MainWindow::choose);
    connect(keys, &QPushButton::toggled, m_keys, &ScreenKeys::setWanted);
    connect(m_keys, &ScreenKeys::wantedChanged, keys, &QPushButton::setChecked);
    makeKeys();
    connect(m_leave, &LeaveStrip::quit, this, [this] {
        m_told = true;
        close();
    });
    m_echo = new Echo(m_session, m_body);
    keepPages();
    connect(m_echo, &Echo::runChanged, m_leave, &QWidget::hide);
    connect(m_echo, &Echo::runChanged, m_body, [this] { showRunDoor(); });
    for (const auto passed : {&Echo::runChanged, &Echo::actorChanged, &Echo::opened})
        connect(m_echo, passed, m_body, [this] { forgetRefusal(); });
    connect(m_echo, &Echo::busyChanged, m_body, [this](bool busy) {
        if (busy) forgetRefusal();  // something new is asked
    });
    connect(m_echo, &Echo::refused, m_body, [this](const Finding& finding) {
        const QWidget* front = m_pages->currentWidget();
        // The run page shows its own refusals beside the step they are about.
        if (!m_session->isOpen() || front == nullptr) return;
        // A panel that asks says itself why it was refused.
        if (m_pages->shows(kChoosePage)) return;
        for (const DefinitionsPage* page : front->findChildren<DefinitionsPage*>())
            if (page->tells(finding)) return;
        const bool runs = m_pages->shows(kRunPage);
        for (const AskPanel* panel : front->findChildren<AskPanel*>())
            if (panel->isVisible() && !runs) return;
        if (!runs || !m_session->actor()) sayRefusal(finding);
    });
    showSealed();
    connect(m_echo, &Echo::opened, m_signIn, &SignInStrip::focusPin);
    takeOverWhenFree();
    offerLogbooks();
    letPeopleChoose();
    lockWhenIdle();
    for (const auto changed : {&Echo::mirrorChanged, &Echo::copiesChanged, &Echo::opened})
        connect(m_echo, changed, m_body, [this] { tellOfKeeping(); });
}

MainWindow::~MainWindow() = default;

/// In the bar at the top, beside the PIN, it moves nothing and covers nothing; whoever signs in knows by the first
/// sentence what to do. Only where large type leaves no room for it there it takes some of the page's.
void MainWindow::sayRefusal(const Finding& finding)
{
    forgetRefusal();
    const UnitSystem system = UnitSystem::Metric;
    const bool fits = m_inBar->fitsRow(words(finding, system)) ||
                      (!m_session->actor() && m_inBar->fitsRow(words(finding.text, system)));
    (fits ? m_inBar : m_refusal)->say(finding, system);
}

void MainWindow::forgetRefusal()
{
    m_inBar->clear();
    m_refusal->clear();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    const run::Run* run = m_session->run();
    const bool open = run != nullptr && run->phase() != run::Phase::Completed && run->phase() != run::Phase::Abandoned;
    QStringList unsealed;
    for (const DefinitionEditor* editor : m_body->findChildren<DefinitionEditor*>())
        if (editor->changed()) unsealed << editor->name();
    // A PC that shuts down is not kept waiting for an answer.
    if ((open || !unsealed.isEmpty()) && !m_told && !qApp->isSavingSession()) {
        m_leave->ask(open ? run : nullptr, unsealed);
        return event->ignore();
    }
    keptSettings().setValue(QStringLiteral("window"), saveGeometry());
    QWidget::closeEvent(event);
}

/// A new logbook asks for its first supervisor before anything else; whoever was enrolled chooses at first use.
void MainWindow::letPeopleChoose()
{
    connect(m_echo, &Echo::opened, m_body, [this] {
        if (!m_session->isOpen() || !m_session->people().empty()) return;
        choosePage()->askFirst();
        showChoosing(true);
    });
    connect(m_signIn, &SignInStrip::firstUse, this, [this](const QString& id) {
        for (const people::PersonRecord& person : m_session->people())
            if (person.id.value == id.toStdString()) choosePage()->askFor(person);
        showChoosing(true);
    });
    connect(m_echo, &Echo::actorChanged, m_body, [this] {
        if (!m_pages->shows(kChoosePage) || !m_session->actor()) return;
        showChoosing(false);
        // Whoever is the first of a logbook also says how this PC is to be.
        if (m_session->people().size() > 1 || wasThisPcAsked()) return;
        choose(kShopDoor);
        shopPage()->showThisPc(true);
    });
}

void MainWindow::showChoosing(bool chooses)
{
    const bool knowsNobody = m_session->people().empty();
    for (QAbstractButton* door : m_doors->buttons()) door->setEnabled(!knowsNobody);
    m_signIn->setEnabled(!knowsNobody);
    if (chooses) {
        m_pages->bring(kChoosePage);
        choosePage()->focusFirst();
    } else {
        choosePage()->forget();
        choose(m_doors->checkedId());
    }
}

/// Whoever walks away from an unlocked screen leaves it to anybody: without a touch it locks itself. Nothing is lost.
void MainWindow::lockWhenIdle()
{
    m_idle.setSingleShot(true);
    m_idle.setInterval(idleMinutes() * kMinute);
    connect(&m_idle, &QTimer::timeout, m_body, [this] { leaveAlone(true); });
    connect(m_echo, &Echo::actorChanged, m_body, [this] { m_idle.start(); });
}

/// A run that somebody walked away from is interrupted, so that the last step is looked at again by whoever comes back;
/// one in other hands is not theirs to stop.
void MainWindow::leaveAlone(bool interrupts)
{
    constexpr int kSoon = 200;  // ms
    const people::Actor* actor = m_session->actor() ? &*m_session->actor() : nullptr;
    // The clock runs again where somebody touched the screen while it was waited.
    if (actor == nullptr || m_idle.isActive()) return;
    if (m_session->busy()) {
        QTimer::singleShot(kSoon, this, [this, interrupts] { leaveAlone(interrupts); });
        return;
    }
    const run::Run* run = m_session->run();
    if (!interrupts || run == nullptr || run->phase() != run::Phase::Running || run->operatorId() != actor->id().value)
        return m_session->signOut();
    m_session->perform(run::Interrupt{"left_alone"});
    // Refused or not, nobody is there: the screen locks.
    QTimer::singleShot(kSoon, this, [this] { leaveAlone(false); });
}

/// A key that is held repeats itself, and a busy machine does not always say so: it looks as if it were let go and
/// pressed at the same moment. Held on one card, it must not tick or answer what comes up on the next.
bool MainWindow::eventFilter(QObject* watched, QEvent* event)
{
    constexpr quint64 kNoHand = 2;  // ms
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TouchBegin: m_idle.start(); break;
    default: break;
    }
    if (!watched->isWindowType() || (event->type() != QEvent::KeyPress && event->type() != QEvent::KeyRelease))
        return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (event->type() == QEvent::KeyRelease) {
        m_letGo = key->key();
        m_letGoAt = key->timestamp();
        return false;
    }
    if (key->key() != m_letGo || key->timestamp() == 0 || key->timestamp() - m_letGoAt > kNoHand) return false;
    // What it is, so that whatever is held knows that it still is.
    QKeyEvent repeat(QEvent::KeyPress, key->key(), key->modifiers(), key->text(), true);
    QCoreApplication::sendEvent(watched, &repeat);
    return true;
}

void MainWindow::choose(int door)
{
    if (!m_session->isOpen() && !(m_session->onlyReads() && door == kHistoryDoor)) return;
    m_doors->button(door)->setChecked(true);
    if (door == kPracticeDoor) return showPracticeDoor();
    setPractising(false);
    if (door == kHistoryDoor)
        m_pages->bring(kHistoryPage);
    else if (door == kShopDoor)
        m_pages->bring(kShopPage);
    else
        showRunDoor();
}

void MainWindow::showRunDoor()
{
    if (m_session->run() != nullptr) m_lastRun = QString::fromStdString(m_session->run()->id());
    if (m_doors->checkedId() != kRunDoor) return;
    m_pages->bring(m_session->run() != nullptr ? kRunPage : kStartPage);
}

}  // namespace taut::app
