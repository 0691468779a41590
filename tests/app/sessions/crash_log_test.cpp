// SPDX-License-Identifier: GPL-3.0-or-later
// What a program that ends by a fault leaves behind: seen with children of this one, each ended in its own way.
#include "app/seams/crash_log.h"

#include <catch2/catch.hpp>

#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <functional>
#include <limits>
#include <stdexcept>

#include <QDir>
#include <QTemporaryDir>

#include "app/seams/resources.h"
#include "core/base/file.h"
#include "core/units/plain.h"

using namespace taut;
using namespace taut::app;
namespace fs = std::filesystem;

namespace {

/// Somebody whose name stands in the path of their home and in what they had on the screen.
constexpr const char* kPrivate = "Odalys Marten";

struct Place {
    QTemporaryDir within;
    [[nodiscard]] fs::path folder() const { return fs::path(within.path().toStdString()) / kPrivate / "tautweb"; }
};

/// How a child ended that was watched over and then did this; what it says on the way goes nowhere.
int endOf(const fs::path& folder, const std::function<void()>& does)
{
    const pid_t child = ::fork();
    if (child == 0) {
        const rlimit noCore{0, 0};
        ::setrlimit(RLIMIT_CORE, &noCore);
        ::close(STDERR_FILENO);
        for (const int fault : {SIGSEGV, SIGABRT, SIGFPE, SIGBUS, SIGILL}) ::signal(fault, SIG_DFL);
        {
            const CrashLog watching(folder);
            does();
        }
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return status;
}

[[noreturn]] void complain() { throw std::runtime_error(kPrivate); }

/// Calls itself until there is no more room: as often as nobody could.
unsigned deeper(unsigned depth)
{
    volatile char room[4096];
    room[depth % sizeof room] = static_cast<char>(depth);
    if (depth == std::numeric_limits<unsigned>::max()) return 0;
    return deeper(depth + 1) + static_cast<unsigned>(room[(depth + 1) % sizeof room]);
}

std::string textOf(const fs::path& file) { return readFile(file).value(); }

std::size_t filesIn(const fs::path& folder)
{
    std::size_t count = 0;
    for (const auto& entry : fs::directory_iterator(folder)) count += entry.is_regular_file() ? 1U : 0U;
    return count;
}

}  // namespace

TEST_CASE("A program that ends by a fault leaves a log that says which and where, and nothing of anybody", "[seams]")
{
    constexpr std::pair<int, const char*> kFaults[] = {
        {SIGSEGV, "SIGSEGV"}, {SIGABRT, "SIGABRT"}, {SIGFPE, "SIGFPE"}, {SIGBUS, "SIGBUS"}, {SIGILL, "SIGILL"}};
    for (const auto& [signal, name] : kFaults) {
        const Place place;
        CHECK(untoldCrashLogs(place.folder()).empty());
        const int status = endOf(place.folder(), [fault = signal] { ::raise(fault); });
        REQUIRE(WIFSIGNALED(status));
        CHECK(WTERMSIG(status) == signal);  // it ends as it would have without
        const std::vector<fs::path> logs = untoldCrashLogs(place.folder());
        REQUIRE(logs.size() == 1);
        const std::string text = textOf(logs[0]);
        INFO(text);
        CHECK(text.find("tautweb " TAUTWEB_VERSION "\n") == 0);
        CHECK(text.find(std::string("\nfault ") + name + "\n") != std::string::npos);
        CHECK(text.find("\nended_utc_s 1") != std::string::npos);
        CHECK(text.find("test_app_sessions+0x") != std::string::npos);
        CHECK(text.find('/') == std::string::npos);  // no path, which could name a person
        CHECK(text.find(kPrivate) == std::string::npos);
        CHECK((fs::status(logs[0]).permissions() & (fs::perms::group_all | fs::perms::others_all)) == fs::perms::none);
    }
}

TEST_CASE("An exception that nobody caught is told by its kind and not by its words", "[seams]")
{
    const Place place;
    endOf(place.folder(), []() noexcept { complain(); });
    const std::vector<fs::path> logs = untoldCrashLogs(place.folder());
    REQUIRE(logs.size() == 1);
    const std::string text = textOf(logs[0]);
    CHECK(text.find("exception St13runtime_error\n") != std::string::npos);
    CHECK(text.find("\nfault SIGABRT\n") != std::string::npos);
    CHECK(text.find(kPrivate) == std::string::npos);
}

TEST_CASE("A stack that is used up is told of as well", "[seams]")
{
    const Place place;
    const int status = endOf(place.folder(), [] { ::_exit(static_cast<int>(deeper(0))); });
    REQUIRE(WIFSIGNALED(status));
    CHECK(untoldCrashLogs(place.folder()).size() == 1);
}

TEST_CASE("A program that ended in order, was ended from outside or lost its power leaves nothing to tell", "[seams]")
{
    const Place place;
    CHECK(endOf(place.folder(), [] {}) == 0);
    CHECK(filesIn(place.folder()) == 0);
    const int status = endOf(place.folder(), [] { ::raise(SIGKILL); });
    REQUIRE(WIFSIGNALED(status));
    CHECK(filesIn(place.folder()) == 1);
    CHECK(untoldCrashLogs(place.folder()).empty());
    CHECK(filesIn(place.folder()) == 0);
}

TEST_CASE("What still runs is not told of, nor taken away from it", "[seams]")
{
    const Place place;
    const CrashLog watching(place.folder());
    CHECK(untoldCrashLogs(place.folder()).empty());
    CHECK(filesIn(place.folder()) == 1);
}

TEST_CASE("A log is told of once, and the five newest of those that were told are kept", "[seams]")
{
    const Place place;
    for (int i = 0; i < 7; ++i) {
        endOf(place.folder(), [] { ::raise(SIGSEGV); });
        const std::vector<fs::path> logs = untoldCrashLogs(place.folder());
        REQUIRE(logs.size() == 1);
        markTold(logs);
        CHECK(untoldCrashLogs(place.folder()).empty());
    }
    CHECK(filesIn(place.folder()) == 5);
    markTold({});
}

TEST_CASE("Where no log can be kept the program works without, and says nothing", "[seams]")
{
    const Place place;
    fs::create_directories(place.folder().parent_path());
    std::ofstream(place.folder()) << "a file where the folder should be";
    CHECK(endOf(place.folder(), [] {}) == 0);
    CHECK(untoldCrashLogs(place.folder()).empty());
    CHECK(untoldCrashLogs(place.folder() / "nowhere").empty());
}

TEST_CASE("What is said of it names the log and what to do", "[seams]")
{
    const Finding said = toldOf("/state/tautweb/ended-7.log");
    CHECK(said.code == "program.ended_by_itself");
    CHECK(plain(said.remedy, UnitSystem::Metric).find("/state/tautweb/ended-7.log") != std::string::npos);
    ::setenv("XDG_STATE_HOME", "/state", 1);
    CHECK(stateFolder() == "/state/tautweb");
    ::unsetenv("XDG_STATE_HOME");
    CHECK(stateFolder().string().ends_with(".local/state/tautweb"));
}
