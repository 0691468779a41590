// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <memory>

#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QLocalServer>
#include <QProcess>
#include <QProcessEnvironment>
#include <QThread>

#include "app/seams/one_window.h"
#include "tests/app/shop.h"

using namespace taut::app;

namespace {

/// A runtime folder of its own, so that no window of whoever runs the tests is asked.
struct Runtime {
    QTemporaryDir folder{QStringLiteral("/tmp/tw-XXXXXX")};  // a socket's path is short
    Runtime() { qputenv("XDG_RUNTIME_DIR", folder.path().toUtf8()); }
    [[nodiscard]] std::filesystem::path logbook(const char* name) const
    {
        return folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    /// The one socket in it.
    [[nodiscard]] QString socket() const
    {
        const QFileInfoList all = QDir(folder.path()).entryInfoList({QStringLiteral("tautweb-*")}, QDir::System);
        REQUIRE(all.size() == 1);
        return all.front().filePath();
    }
};

/// As another start of the program asks, while this one's window goes on living.
bool secondStart(const std::filesystem::path& logbook)
{
    bool raised = false;
    std::unique_ptr<QThread> other(QThread::create([&] { raised = raiseOther(logbook); }));
    other->start();
    shop::until([&] { return other->isFinished(); }, "the second start knows");
    other->wait();
    return raised;
}

}  // namespace

TEST_CASE("a second start with the same logbook raises the window that has it, however the logbook is called")
{
    const Runtime runtime;
    const auto logbook = runtime.logbook("shop.logbook");
    OneWindow window;
    window.answerFor(logbook);
    REQUIRE(window.answers());
    QSignalSpy wanted(&window, &OneWindow::wanted);
    CHECK(secondStart(logbook));
    shop::until([&] { return wanted.count() == 1; }, "the window is told");

    std::filesystem::create_symlink(logbook.parent_path(), runtime.logbook("link"));
    CHECK(secondStart(runtime.logbook("link") / "." / "shop.logbook"));
    CHECK_FALSE(secondStart(runtime.logbook("demo.logbook")));
    CHECK(wanted.count() == 2);

    // The window goes over to another logbook: asked for the old one, nobody answers.
    window.answerFor(runtime.logbook("other.logbook"));
    CHECK_FALSE(secondStart(logbook));
    CHECK(secondStart(runtime.logbook("other.logbook")));
}

TEST_CASE("the token with which a desktop lets a window come to the front is handed on")
{
    const Runtime runtime;
    OneWindow window;
    window.answerFor(runtime.logbook("shop.logbook"));
    QSignalSpy wanted(&window, &OneWindow::wanted);
    qputenv("XDG_ACTIVATION_TOKEN", "press-side-7");
    CHECK(secondStart(runtime.logbook("shop.logbook")));
    qunsetenv("XDG_ACTIVATION_TOKEN");
    shop::until([&] { return wanted.count() == 1; }, "the window is told");
    CHECK(wanted[0][0].toString() == QStringLiteral("press-side-7"));
}

TEST_CASE("only this user reaches the window's socket")
{
    const Runtime runtime;
    OneWindow window;
    window.answerFor(runtime.logbook("shop.logbook"));
    const auto others = QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther;
    CHECK_FALSE(QFileInfo(runtime.socket()).permissions() & others);
}

TEST_CASE("what a program that was killed left behind keeps nobody from answering")
{
    const Runtime runtime;
    const auto logbook = runtime.logbook("shop.logbook");
    QByteArray name;
    {
        OneWindow before;
        before.answerFor(logbook);
        name = runtime.socket().toUtf8();
    }
    // A socket that nobody listens on, as a kill leaves it.
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    REQUIRE(static_cast<std::size_t>(name.size()) < sizeof address.sun_path);
    std::copy(name.begin(), name.end(), address.sun_path);
    const int dead = ::socket(AF_UNIX, SOCK_STREAM, 0);
    REQUIRE(::bind(dead, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
    ::close(dead);
    REQUIRE(QFileInfo::exists(QString::fromUtf8(name)));
    CHECK_FALSE(secondStart(logbook));
    OneWindow window;
    window.answerFor(logbook);
    CHECK(window.answers());
    CHECK(secondStart(logbook));
}

TEST_CASE("a window that answers is not pushed aside by another, and one that hangs is not waited for")
{
    const Runtime runtime;
    const auto logbook = runtime.logbook("shop.logbook");
    QString name;
    {
        OneWindow first;
        first.answerFor(logbook);
        name = runtime.socket();
        OneWindow second;
        second.answerFor(logbook);
        CHECK_FALSE(second.answers());
        QSignalSpy wanted(&first, &OneWindow::wanted);
        CHECK(secondStart(logbook));
        CHECK(wanted.count() == 1);
    }
    QLocalServer hangs;  // takes whoever comes and says nothing
    REQUIRE(hangs.listen(name));
    QElapsedTimer clock;
    clock.start();
    CHECK_FALSE(secondStart(logbook));
    CHECK(clock.elapsed() >= 900);
    CHECK(clock.elapsed() < 10000);
}

TEST_CASE("the program, started twice on one logbook, ends the second time and leaves the first running")
{
    const Runtime runtime;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    for (const char* variable : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME"})
        environment.insert(QString::fromLatin1(variable), runtime.folder.path());
    const QStringList arguments{QStringLiteral("--logbook"), runtime.folder.filePath(QStringLiteral("shop.logbook"))};
    QProcess first, second;
    for (QProcess* program : {&first, &second}) {
        program->setProcessEnvironment(environment);
        program->setProgram(QStringLiteral(TAUTWEB_BINARY_DIR "/tautweb"));
        program->setArguments(arguments);
    }
    first.start();
    const auto logbook = runtime.logbook("shop.logbook");
    shop::until([&] { return first.state() == QProcess::Running && secondStart(logbook); }, "the first window answers");
    // It waits a second for an answer; on a busy machine that may be too short, and then it is a window of its own.
    constexpr int kTries = 10, kLong = 15000;
    for (int i = 0; i < kTries; ++i) {
        second.start();
        if (second.waitForFinished(kLong)) break;
        second.kill();
        second.waitForFinished();
    }
    CHECK(second.exitStatus() == QProcess::NormalExit);
    CHECK(second.exitCode() == 0);
    CHECK(first.state() == QProcess::Running);
    first.kill();
    first.waitForFinished();
}
