// SPDX-License-Identifier: GPL-3.0-or-later
// From starting the program to its first painted window, and how much memory that takes, beside an empty Qt window:
// with a logbook that has no run, and with STORE. And a run's sheet as a PDF beside a blank page. Usage: window_bench
// STORE [SHEETS]: SHEETS is a store with full runs, STORE itself where it is not said. On the platform that
// QT_QPA_PLATFORM names, else without a display. Nothing is written in either. Exit 1 when a limit is not kept.
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <limits>
#include <string>
#include <thread>
#include <vector>

#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>

#include "app/print/print.h"
#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "core/records/sheet.h"
#include "core/units/plain.h"
#include "tests/bench/stopwatch.h"
#include "tests/bench/told.h"

extern char** environ;

using namespace taut;
using namespace taut::app;

namespace {

namespace fs = std::filesystem;

constexpr double kMostTimes = 1.5, kMostMib = 60, kMostSheetMs = 150;

template <class T>
T must(Result<T> result)
{
    if (result) return *std::move(result);
    std::fprintf(stderr, "%s\n", sentence(result.error()).c_str());
    std::exit(4);
}

[[noreturn]] void end(const std::string& why)
{
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(4);
}

/// A program that was started for its first window; ended when this ends.
class Started {
public:
    explicit Started(std::vector<std::string> words)
    {
        int told[2];
        if (::pipe(told) != 0) end("no pipe");
        ::fcntl(told[0], F_SETFD, FD_CLOEXEC);
        m_told = told[0];
        ::setenv("TAUTWEB_PAINTED", std::to_string(told[1]).c_str(), 1);
        std::vector<char*> argv;
        for (std::string& word : words) argv.push_back(word.data());
        argv.push_back(nullptr);
        m_start = std::chrono::steady_clock::now();
        if (::posix_spawn(&m_pid, argv[0], nullptr, nullptr, argv.data(), environ) != 0)
            end("cannot start " + words[0]);
        ::close(told[1]);
    }
    ~Started()
    {
        ::kill(m_pid, SIGKILL);
        (void)::waitpid(m_pid, nullptr, 0);
        ::close(m_told);
    }
    Started(const Started&) = delete;
    Started& operator=(const Started&) = delete;

    /// Milliseconds from before it was started until its window had been painted.
    [[nodiscard]] double painted() const
    {
        constexpr int kPatience = 60'000;
        pollfd wait{m_told, POLLIN, 0};
        char line[64]{};
        if (::poll(&wait, 1, kPatience) != 1 || ::read(m_told, line, sizeof line - 1) <= 0)
            end("no window was painted");
        const std::chrono::nanoseconds at(std::strtoll(line, nullptr, 10));
        return std::chrono::duration<double, std::milli>(at - m_start.time_since_epoch()).count();
    }
    /// What it holds in memory once it does nothing any more.
    [[nodiscard]] double settledMib() const
    {
        constexpr auto kStill = std::chrono::milliseconds(400);
        for (long long before = -1, now = worked(); now != before;) {
            before = now;
            std::this_thread::sleep_for(kStill);
            now = worked();
        }
        std::ifstream file("/proc/" + std::to_string(m_pid) + "/statm");
        double size = 0, resident = 0;
        file >> size >> resident;
        constexpr double kMib = 1 << 20;
        return resident * static_cast<double>(::sysconf(_SC_PAGESIZE)) / kMib;
    }

private:
    /// Clock ticks that it has had of the processors.
    [[nodiscard]] long long worked() const
    {
        std::ifstream file("/proc/" + std::to_string(m_pid) + "/stat");
        std::string text;
        std::getline(file, text);
        long long user = 0, system = 0;
        // The name stands in brackets and may hold anything; the times are the 12th and 13th word behind it.
        std::sscanf(text.c_str() + text.rfind(')') + 1, " %*c %*d %*d %*d %*d %*d %*u %*u %*u %*u %*u %lld %lld", &user,
                    &system);
        return user + system;
    }
    std::chrono::steady_clock::time_point m_start;
    pid_t m_pid = 0;
    int m_told = -1;
};

double middle(std::vector<double> times)
{
    const auto at = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), at, times.end());
    return *at;
}

struct Program {
    const char* name;
    std::vector<std::string> words;
    double ms = std::numeric_limits<double>::infinity(), mib = 0;
};

/// Nobody's settings, logs or desktop have a part in it.
void prepareEnvironment(const std::string& folder)
{
    for (const char* home : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"})
        ::setenv(home, folder.c_str(), 1);
    ::setenv("DBUS_SESSION_BUS_ADDRESS", ("unix:path=" + folder + "/no-bus").c_str(), 1);
    ::setenv("QT_QPA_PLATFORM", "offscreen", 0);
    ::setenv("TAUTWEB_RESOURCES", must(resourcesFolder()).c_str(), 1);
    ::setenv("QT_PLUGIN_PATH", TAUTWEB_PAINTED_DIR, 1);
    ::setenv("QT_QPA_GENERIC_PLUGINS", "painted", 1);
}

bool started(const std::string& folder, const std::string& store)
{
    const std::string none = folder + "/none.logbook";
    {
        const SystemClock clock;
        RandomIds ids;
        const auto writer = must(logbook::Writer::open(none, clock, ids, {false, "window_bench"}));
        (void)must(fillWithDemoShop(*writer, must(resourcesFolder())));
    }
    std::vector<Program> programs{{"an empty Qt window", {TAUTWEB_EMPTY_WINDOW}},
                                  {"ours, no run in the logbook", {TAUTWEB_PROGRAM, "--logbook", none}},
                                  {"ours, many runs in the logbook", {TAUTWEB_PROGRAM, "--logbook", store}}};
    constexpr int kBatches = 10, kStarts = 5;
    for (Program& one : programs) {
        const Started program(one.words);
        (void)program.painted();
        one.mib = program.settledMib();
    }
    for (int batch = 0; batch < kBatches; ++batch) {
        std::vector<std::vector<double>> times(programs.size());
        for (int i = 0; i < kStarts; ++i)
            for (std::size_t n = 0; n < programs.size(); ++n) times[n].push_back(Started(programs[n].words).painted());
        for (std::size_t n = 0; n < programs.size(); ++n) programs[n].ms = std::min(programs[n].ms, middle(times[n]));
    }
    const std::string on = std::string(" (") + std::getenv("QT_QPA_PLATFORM") + ")";
    const Program &floor = programs[0], &empty = programs[1], &full = programs[2];
    using bench::Held;
    bool kept = bench::tell({"start to first painted window, no run" + on, empty.ms, floor.ms, kMostTimes});
    kept = bench::tell({"start to first painted window, many runs" + on, full.ms, floor.ms, kMostTimes}) && kept;
    kept =
        bench::tell({"memory of that window, no run", empty.mib, floor.mib, kMostMib, Held::AtMostMore, "MiB"}) && kept;
    return bench::tell({"memory of that window, many runs", full.mib, floor.mib, kMostMib, Held::AtMostMore, "MiB"}) &&
           kept;
}

bool sheetDrawn(const std::string& folder, const std::string& store)
{
    const auto reader = must(logbook::openReader(store));
    records::RunQuery newest;
    newest.state = "completed";
    newest.limit = 1;
    const std::string run = must(reader->runs(newest, {})).rows.front().run;
    const fs::path sheet = folder + "/sheet.pdf";
    const QString blank = QString::fromStdString(folder + "/blank.pdf");
    int pages = 0;
    const auto ours = [&] {
        const report::Report report = must(records::sheetOf(*reader, run));
        pages = must(print::writePdf(report, sheet, print::Paper::A4)).pages;
    };
    const auto theirs = [&] {
        QPdfWriter writer(blank);
        print::choosePaper(writer, print::Paper::A4);
        QPainter painter(&writer);
        if (!painter.end()) end("no blank page");
    };
    constexpr int kBatches = 10, kCalls = 5;
    double own = std::numeric_limits<double>::infinity(), other = own;
    for (int i = 0; i < kBatches; ++i) {
        own = std::min(own, bench::medianOf(kCalls, ours));
        other = std::min(other, bench::medianOf(kCalls, theirs));
    }
    return bench::tell({"sheet of " + std::to_string(pages) + " pages to PDF / a blank page", own * 1e3, other * 1e3,
                        kMostSheetMs, bench::Held::AtMostMore});
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "window_bench STORE [SHEETS]\n");
        return 2;
    }
    const QTemporaryDir folder;
    prepareEnvironment(folder.path().toStdString());
    const bool prompt = started(folder.path().toStdString(), argv[1]);
    // Drawn as the command draws it: on paper alone.
    ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
    ::unsetenv("QT_QPA_GENERIC_PLUGINS");
    const QGuiApplication application(argc, argv);
    return sheetDrawn(folder.path().toStdString(), argv[argc > 2 ? 2 : 1]) && prompt ? 0 : 1;
}
