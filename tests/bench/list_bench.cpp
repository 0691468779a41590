// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window stands still at most while the list of runs of a large store is opened, gone through by wheel and
// keys and narrowed, and how much memory it takes above an empty window. Usage: list_bench STORE; nothing is written.
// Exit 1 when a limit is not kept.
#include <unistd.h>

#include <algorithm>
#include <chrono>
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

using namespace taut;
using namespace taut::app;

namespace {

constexpr double kMostMs = 50, kMostMib = 120;

/// Tells how long the longest event took, from its delivery to its end: as long the window answers nobody.
class Application : public QApplication {
public:
    using QApplication::QApplication;
    bool notify(QObject* receiver, QEvent* event) override
    {
        using Clock = std::chrono::steady_clock;
        const bool outer = m_depth++ == 0;
        const auto start = Clock::now();
        const bool done = QApplication::notify(receiver, event);
        --m_depth;
        // What waits in an event of ours, the loop of qWait for one, is not the window's work.
        if (outer) m_times.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        return done;
    }
    std::vector<double> taken() { return std::exchange(m_times, {}); }

private:
    int m_depth = 0;
    std::vector<double> m_times;
};

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

/// The longest time that an event took in each step, in the quietest round: what else the machine does only adds.
class Bench {
public:
    explicit Bench(Application& app) : m_app(app) {}

    void measure(const HistoryPage& page, const std::string& name, const std::function<void()>& work)
    {
        (void)m_app.taken();
        work();
        settle(page);
        const std::vector<double> times = m_app.taken();
        const double most = times.empty() ? 0 : *std::max_element(times.begin(), times.end());
        auto found = std::find_if(m_steps.begin(), m_steps.end(), [&](const Step& step) { return step.name == name; });
        if (found == m_steps.end()) found = m_steps.insert(found, {name, times.size(), most});
        found->most = std::min(found->most, most);
    }
    /// False: one took too long.
    [[nodiscard]] bool print() const
    {
        bool within = true;
        for (const Step& step : m_steps) {
            within = within && step.most <= kMostMs;
            std::printf("%-48s %6zu events %7.1f ms most%s\n", step.name.c_str(), step.events, step.most,
                        step.most > kMostMs ? "  LONG" : "");
        }
        return within;
    }

private:
    struct Step {
        std::string name;
        std::size_t events;
        double most;
    };
    Application& m_app;
    std::vector<Step> m_steps;
};

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
void goThrough(Bench& bench, Session& session, HistoryPage& page)
{
    auto* const list = page.findChild<RowList*>();
    QPushButton* older = nullptr;
    for (auto* button : page.findChildren<QPushButton*>())
        if (button->text() == HistoryPage::tr("Older runs")) older = button;
    bench.measure(page, "the list opens", [&] {
        session.openToRead();
        (void)QTest::qWaitFor([&] { return session.reader() != nullptr && list->count() > 0; }, 60'000);
    });
    constexpr int kPages = 60;
    bench.measure(page, "sixty pages more, by wheel to the end of each", [&] {
        for (int i = 0; i < kPages; ++i) {
            wheel(list->viewport(), -60);
            QTest::mouseClick(older, Qt::LeftButton);
            QApplication::processEvents();
        }
    });
    bench.measure(page, "back to the top by wheel", [&] { wheel(list->viewport(), 60 * kPages); });
    bench.measure(page, "down by arrow keys, each run's sheet opened", [&] {
        list->setFocus();
        constexpr int kKeys = 60;
        for (int i = 0; i < kKeys; ++i) {
            QTest::keyClick(list, Qt::Key_Down);
            QApplication::processEvents();
        }
    });
    bench.measure(page, "down and up by page keys, to the end and back", [&] {
        constexpr int kKeys = 40;
        for (int i = 0; i < kKeys; ++i) QTest::keyClick(list, i < kKeys / 2 ? Qt::Key_PageDown : Qt::Key_PageUp);
        QTest::keyClick(list, Qt::Key_End);
        QTest::keyClick(list, Qt::Key_Home);
    });
    auto* const find = page.findChild<QLineEdit*>();
    for (const char* word : {"paper", "marchbank", "quicksilver", "R1777", ""})
        bench.measure(page, *word != '\0' ? std::string("looked for: ") + word : "nothing looked for any more", [&] {
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
    Application app(argc, argv);
    applyTheme({});
    Session::Options options;
    options.logbook = argv[1];
    options.resources = *resourcesFolder();
    Bench bench(app);
    double empty = 0, full = 0;
    constexpr int kRounds = 5;
    for (int round = 0; round < kRounds; ++round) {
        Session session(options);
        HistoryPage page(&session);
        page.resize(1342, 640);
        page.show();
        settle(page);
        if (round == 0) empty = mib();
        goThrough(bench, session, page);
        if (round == 0) full = mib();
    }
    const bool within = bench.print(), small = full - empty <= kMostMib;
    std::printf("memory: %.0f MiB empty, %.0f MiB with the list, %.0f MiB above; limits: %.0f ms, %.0f MiB%s\n", empty,
                full, full - empty, kMostMs, kMostMib, small ? "" : "  MUCH");
    return within && small ? 0 : 1;
}
