// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window stands still at most while the list of runs of a large store is opened, gone through by wheel and
// keys and narrowed, and how much memory it takes above an empty window. Usage: list_bench STORE; nothing is written.
// Exit 1 when a limit is not kept.
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>
#include <QWheelEvent>

#include "app/pages/history/history_page.h"
#include "app/seams/resources.h"
#include "app/sessions/session.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "tests/bench/told.h"
#include "tests/bench/window_timed.h"

using namespace taut;
using namespace taut::app;

namespace {

constexpr double kMostMs = 50, kMostMib = 120;

double mib()
{
    std::ifstream file("/proc/self/statm");
    double size = 0, resident = 0;
    file >> size >> resident;
    constexpr double kMib = 1 << 20;
    return resident * static_cast<double>(::sysconf(_SC_PAGESIZE)) / kMib;
}

/// Until nothing is put off any more.
void settle(const QWidget& page)
{
    QTest::qWait(5);
    (void)QTest::qWaitFor(
        [&] {
            const auto timers = page.findChildren<QTimer*>();
            return std::none_of(timers.begin(), timers.end(), [](const QTimer* t) { return t->isActive(); });
        },
        60'000);
    QTest::qWait(5);
}

void measure(bench::LongestEvents& longest, const HistoryPage& page, const std::string& name,
             const std::function<void()>& work)
{
    longest.measure(name, [&] {
        work();
        settle(page);
    });
}

void wheel(QWidget* over, int steps)
{
    const QPointF at = over->rect().center();
    for (int i = 0; i < std::abs(steps); ++i) {
        QWheelEvent event(at, over->mapToGlobal(at), {}, {0, steps < 0 ? -120 : 120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(over, &event);
        QApplication::processEvents();
    }
}

/// The list from its opening to its narrowing.
void goThrough(bench::LongestEvents& longest, Session& session, HistoryPage& page)
{
    auto* const list = page.findChild<RowList*>();
    QPushButton* older = nullptr;
    for (auto* button : page.findChildren<QPushButton*>())
        if (button->text() == HistoryPage::tr("Older runs")) older = button;
    measure(longest, page, "the list opens", [&] {
        session.openToRead();
        (void)QTest::qWaitFor([&] { return session.reader() != nullptr && list->count() > 0; }, 60'000);
    });
    constexpr int kPages = 60;
    measure(longest, page, "sixty pages more, by wheel to the end of each", [&] {
        for (int i = 0; i < kPages; ++i) {
            wheel(list->viewport(), -60);
            QTest::mouseClick(older, Qt::LeftButton);
            QApplication::processEvents();
        }
    });
    measure(longest, page, "back to the top by wheel", [&] { wheel(list->viewport(), 60 * kPages); });
    measure(longest, page, "down by arrow keys, each run's sheet opened", [&] {
        list->setFocus();
        constexpr int kKeys = 60;
        for (int i = 0; i < kKeys; ++i) {
            QTest::keyClick(list, Qt::Key_Down);
            QApplication::processEvents();
        }
    });
    measure(longest, page, "down and up by page keys, to the end and back", [&] {
        constexpr int kKeys = 40;
        for (int i = 0; i < kKeys; ++i) QTest::keyClick(list, i < kKeys / 2 ? Qt::Key_PageDown : Qt::Key_PageUp);
        QTest::keyClick(list, Qt::Key_End);
        QTest::keyClick(list, Qt::Key_Home);
    });
    auto* const find = page.findChild<QLineEdit*>();
    for (const char* word : {"paper", "marchbank", "quicksilver", "R1777", ""})
        measure(longest, page, *word != '\0' ? std::string("looked for: ") + word : "nothing looked for any more", [&] {
            find->setText(QString::fromLatin1(word));
            settle(page);
        });
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "list_bench STORE\n");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());  // nobody's settings are read or written
    bench::TimedApplication app(argc, argv);
    applyTheme({});
    Session::Options options;
    options.logbook = argv[1];
    options.resources = *resourcesFolder();
    bench::LongestEvents longest(app);
    double empty = 0, full = 0;
    constexpr int kRounds = 5;
    for (int round = 0; round < kRounds; ++round) {
        Session session(options);
        HistoryPage page(&session);
        page.resize(1342, 640);
        page.show();
        settle(page);
        if (round == 0) empty = mib();
        goThrough(longest, session, page);
        if (round == 0) full = mib();
    }
    longest.print(kMostMs);
    using bench::Held;
    const bool quick = bench::tell({"longest frame in the list of runs: " + longest.longest().name,
                                    longest.longest().most, 0, kMostMs, Held::AtMost});
    return bench::tell(
               {"memory of the list of runs over an empty window", full, empty, kMostMib, Held::AtMostMore, "MiB"}) &&
                   quick
               ? 0
               : 1;
}
