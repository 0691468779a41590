// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/crash_log.h"

#include <dlfcn.h>
#include <execinfo.h>
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <exception>
#include <string>
#include <string_view>
#include <system_error>
#include <typeinfo>
#include <utility>

#include <cxxabi.h>

namespace taut::app {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view kBegins = "ended-", kTold = "told-", kEnds = ".log";
constexpr std::array<std::pair<int, const char*>, 5> kFaults{
    {{SIGSEGV, "SIGSEGV"}, {SIGBUS, "SIGBUS"}, {SIGILL, "SIGILL"}, {SIGFPE, "SIGFPE"}, {SIGABRT, "SIGABRT"}}};

int theLog = -1;

// What follows runs in a program that is broken: no memory is asked for, and an alarm ends it should it hang.

void put(std::string_view text)
{
    while (!text.empty()) {
        const ssize_t written = ::write(theLog, text.data(), text.size());
        if (written <= 0) return;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
}

void putNumber(std::uint64_t number, unsigned base)
{
    std::array<char, 24> digits{};
    std::size_t at = digits.size();
    do {
        digits[--at] = "0123456789abcdef"[number % base];
        number /= base;
    } while (number != 0);
    put({&digits[at], digits.size() - at});
}

/// A place in the code as file and distance in it. Of the file's path only its name: the rest may name a person.
void putPlace(void* address)
{
    Dl_info info{};
    if (::dladdr(address, &info) == 0 || info.dli_fname == nullptr) return put("?\n");
    const std::string_view path = info.dli_fname;
    put(path.substr(path.rfind('/') + 1));
    put("+0x");
    putNumber(static_cast<std::uint64_t>(static_cast<char*>(address) - static_cast<char*>(info.dli_fbase)), 16);
    if (info.dli_sname != nullptr) {
        put(" ");
        put(info.dli_sname);
    }
    put("\n");
}

void onFault(int signal)
{
    constexpr unsigned kLongest = 5;  // s
    ::alarm(kLongest);
    put("fault ");
    for (const auto& [number, name] : kFaults)
        if (number == signal) put(name);
    put("\nended_utc_s ");
    putNumber(static_cast<std::uint64_t>(std::time(nullptr)), 10);
    put("\n");
    std::array<void*, 64> stack{};
    const int depth = ::backtrace(stack.data(), static_cast<int>(stack.size()));
    for (int i = 0; i < depth; ++i) putPlace(stack[static_cast<std::size_t>(i)]);
    ::fsync(theLog);
    ::raise(signal);  // the handler is gone: ends as it would have without
}

[[noreturn]] void onUnhandled()
{
    // What it says may hold what somebody entered; its type does not.
    if (const std::type_info* type = abi::__cxa_current_exception_type()) {
        put("exception ");
        put(type->name());
        put("\n");
    }
    std::abort();
}

void watch(bool on)
{
    // Of its own, so that a stack that is used up can be told of.
    static std::array<char, 65'536> stack;
    stack_t own{};
    own.ss_sp = stack.data();
    own.ss_size = stack.size();
    own.ss_flags = on ? 0 : SS_DISABLE;
    ::sigaltstack(&own, nullptr);
    struct sigaction action {};
    action.sa_handler = on ? onFault : SIG_DFL;
    action.sa_flags = on ? static_cast<int>(SA_ONSTACK | SA_RESETHAND | SA_NODEFER) : 0;
    for (const auto& fault : kFaults) ::sigaction(fault.first, &action, nullptr);
    static std::terminate_handler before = nullptr;
    if (on)
        before = std::set_terminate(onUnhandled);
    else
        std::set_terminate(before);
}

bool lock(int file) { return ::flock(file, LOCK_EX | LOCK_NB) == 0; }

bool isOurs(const fs::path& file, std::string_view begins)
{
    const std::string name = file.filename().string();
    return name.starts_with(begins) && name.ends_with(kEnds);
}

std::vector<fs::path> logsIn(const fs::path& folder, std::string_view begins)
{
    std::vector<std::pair<fs::file_time_type, fs::path>> found;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error))
        if (std::error_code old; isOurs(entry.path(), begins)) found.emplace_back(entry.last_write_time(old), entry);
    std::sort(found.begin(), found.end());
    std::vector<fs::path> logs;
    logs.reserve(found.size());
    for (auto& [written, path] : found) logs.push_back(std::move(path));
    return logs;
}

}  // namespace

CrashLog::CrashLog(const fs::path& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    m_file = folder / (std::string(kBegins) + std::to_string(::getpid()) + std::string(kEnds));
    m_log = ::open(m_file.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (m_log < 0) return;
    lock(m_log);  // told from one that was left behind
    theLog = m_log;
    std::array<void*, 1> first{};
    ::backtrace(first.data(), 1);  // loads what it needs now, while that can be loaded
    put("tautweb " TAUTWEB_VERSION "\n");
    watch(true);
}

CrashLog::~CrashLog()
{
    if (m_log < 0) return;
    watch(false);
    theLog = -1;
    ::unlink(m_file.c_str());
    ::close(m_log);
}

std::vector<fs::path> untoldCrashLogs(const fs::path& folder)
{
    std::vector<fs::path> untold;
    for (const fs::path& log : logsIn(folder, kBegins)) {
        const int file = ::open(log.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
        if (file < 0) continue;
        if (lock(file)) {
            std::string text(4096, '\0');
            const ssize_t got = ::read(file, text.data(), text.size());
            text.resize(got < 0 ? 0 : static_cast<std::size_t>(got));
            if (text.find("\nfault ") != std::string::npos)
                untold.push_back(log);
            else
                ::unlink(log.c_str());
        }
        ::close(file);
    }
    return untold;
}

Finding toldOf(const fs::path& log)
{
    return Finding{"program.ended_by_itself", Severity::Warn, log.string(),
                   Text("The program ended by itself the last time. What was answered and signed before that is kept."),
                   Text("Look at the last step before going on. Whoever looks after this program wants the log %1: it "
                        "holds no names and no readings.",
                        {log.string()})};
}

void markTold(const std::vector<fs::path>& logs)
{
    constexpr std::size_t kKept = 5;
    for (const fs::path& log : logs) {
        const std::string name = log.filename().string();
        std::error_code error;
        const auto when = fs::last_write_time(log, error).time_since_epoch().count();
        fs::rename(log, log.parent_path() / (std::string(kTold) + std::to_string(when) + '-' + name), error);
    }
    if (logs.empty()) return;
    std::vector<fs::path> told = logsIn(logs.front().parent_path(), kTold);
    for (std::size_t i = 0; i + kKept < told.size(); ++i) {
        std::error_code error;
        fs::remove(told[i], error);
    }
}

}  // namespace taut::app
