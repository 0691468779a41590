// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include <QButtonGroup>
#include <QPointer>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"

namespace taut::app {

class ChoosePage;
class Echo;
class HelpView;
class HistoryDesk;
class LeaveStrip;
class NoLogbookPage;
class PageShelf;
class PracticeBand;
class PracticeFrame;
class PracticePage;
class PracticeSession;
class ReadOnlyStrip;
class RunPage;
class ScreenKeys;
class SetupPage;
class SignInStrip;
class StartPage;
class Tongue;
class Tour;

/// One window: doors at the top, who is signed in, one page below. It shows; the session does.
class MainWindow : public QWidget {
    Q_OBJECT

public:
    explicit MainWindow(Session::Options options, QWidget* parent = nullptr);
    ~MainWindow() override;
    /// Never null.
    [[nodiscard]] Session* session() { return m_session; }
    /// Says over every page that the program ended by a fault before, until somebody has read it. None: says nothing.
    void tellOfFaults(const std::vector<std::filesystem::path>& logs);
    /// What locks the screen when nobody touches it.
    [[nodiscard]] QTimer* idleTimer() { return &m_idle; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum Door { kRunDoor, kHistoryDoor, kShopDoor, kPracticeDoor };
    enum Place { kStartPage, kRunPage, kHistoryPage, kShopPage, kChoosePage, kNoLogbookPage, kHelpPage, kPracticePage };
    static constexpr int kMinute = 60 * 1000;  // ms
    void build();
    void begin();
    void keepPages();
    QWidget* makeStartPage(QWidget* parent);
    QWidget* makeRunPage(QWidget* parent);
    QWidget* makeHistoryPage(QWidget* parent);
    QWidget* makeShopPage(QWidget* parent);
    QWidget* makeChoosePage(QWidget* parent);
    QWidget* makeNoLogbookPage(QWidget* parent);
    QWidget* makeHelpPage(QWidget* parent);
    QWidget* makePracticePage(QWidget* parent);
    // The pages, made now if nobody wanted them before; never null.
    HistoryDesk* historyPage();
    SetupPage* shopPage();
    ChoosePage* choosePage();
    NoLogbookPage* noLogbookPage();
    HelpView* helpPage();
    PracticePage* practicePage();
    // The same for looking; nullptr while nobody wanted them.
    [[nodiscard]] const StartPage* madeStartPage() const;
    [[nodiscard]] RunPage* madeRunPage() const;
    void sayAnew();
    [[nodiscard]] bool isEntering() const;
    void makeKeys();
    void makeHelp();
    void openHelp();
    void leaveHelp();
    [[nodiscard]] QString helpOfPage();
    void lookRound();
    void showRunDoor();
    void showPracticeDoor();
    void setPractising(bool practises);
    void takeOverWhenFree();
    void offerLogbooks();
    void openAnother();
    void leaveOnly(bool open, bool read);
    void letPeopleChoose();
    void showSealed();
    void showInHistory(const QString& run);
    void startDemo();
    void showChoosing(bool chooses);
    void lockWhenIdle();
    void leaveAlone(bool interrupts);
    void tellOfKeeping();
    void choose(int door);
    void sayRefusal(const Finding& finding);
    void forgetRefusal();
    Session* m_session;
    PracticeSession* m_practice = nullptr;  // from when somebody first practises on
    Tongue* m_tongue;
    PracticeFrame* m_frame;
    QWidget* m_body;       // everything that is seen
    bool m_waits = false;  // to speak otherwise, until what is being entered is done
    QButtonGroup* m_doors;
    PageShelf* m_pages;
    Echo* m_echo;          // of the session, for what the window does after its pages
    bool m_begun = false;  // its first page is there, and the logbook is asked for
    PracticeBand* m_band;
    QString m_lastRun;  // that was open; shown once it is sealed
    QTimer m_idle;
    ReadOnlyStrip* m_readOnly;
    SignInStrip* m_signIn;
    FindingStrip *m_inBar, *m_refusal;            // a refusal beside the PIN, or below where that has no room
    FindingStrip* m_keeping;                      // what is the matter with the mirror, or with where the logbook lies
    std::set<std::string> m_keepingSeen;          // of which matters somebody knows
    std::string m_keepingSaid;                    // the one that the strip tells
    FindingStrip* m_ended;                        // that the program ended by a fault before
    std::vector<std::filesystem::path> m_faults;  // and nobody has read it yet
    LeaveStrip* m_leave;
    QPushButton* m_helpButton;
    QPointer<QWidget> m_beforeHelp, m_focusBeforeHelp;  // the page, and what had the focus on it
    Tour* m_tour;
    bool m_told = false;  // that the run stays open
    ScreenKeys* m_keys;
    int m_letGo = 0;        // the key that was let go last
    quint64 m_letGoAt = 0;  // and when
};

}  // namespace taut::app
