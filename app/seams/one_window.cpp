// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/one_window.h"

#include <system_error>

#include <QCryptographicHash>
#include <QDeadlineTimer>
#include <QLocalServer>
#include <QLocalSocket>
#include <QStandardPaths>

namespace taut::app {

namespace {

constexpr int kPatience = 1000;  // ms
constexpr int kLongest = 4096;   // bytes of a token
constexpr char kHere[] = "here\n";

/// However the logbook is called, by a link or from another folder, it is the same one.
QString socketOf(const std::filesystem::path& logbook)
{
    std::error_code error;
    const std::filesystem::path there = std::filesystem::absolute(logbook, error);
    std::filesystem::path whole = std::filesystem::weakly_canonical(there, error);
    if (error) whole = there;
    const QByteArray hash =
        QCryptographicHash::hash(QByteArray::fromStdString(whole.string()), QCryptographicHash::Sha256)
            .toHex()
            .left(32);
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    return folder.isEmpty() ? QString() : folder + QStringLiteral("/tautweb-") + QString::fromLatin1(hash);
}

}  // namespace

OneWindow::OneWindow(QObject* parent) : QObject(parent) {}

OneWindow::~OneWindow() = default;

bool OneWindow::answers() const { return m_server && m_server->isListening(); }

void OneWindow::answerFor(const std::filesystem::path& logbook)
{
    const QString name = socketOf(logbook);
    if (m_server && m_server->fullServerName() == name) return;
    m_server.reset();
    if (name.isEmpty()) return;
    // Asked first, since listening would take the name away from one that lives. What one that was killed left behind
    // answers nobody, and goes.
    QLocalSocket probe;
    probe.connectToServer(name);
    if (probe.waitForConnected(kPatience)) return;
    QLocalServer::removeServer(name);
    m_server = std::make_unique<QLocalServer>();
    m_server->setSocketOptions(QLocalServer::UserAccessOption);
    connect(m_server.get(), &QLocalServer::newConnection, this, &OneWindow::hear);
    m_server->listen(name);
}

void OneWindow::hear()
{
    while (QLocalSocket* socket = m_server->nextPendingConnection()) {
        socket->setParent(this);
        connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
        const auto answer = [this, socket] {
            if (socket->bytesAvailable() > kLongest) return socket->abort();
            if (!socket->canReadLine()) return;
            const QString token = QString::fromUtf8(socket->readLine()).trimmed();
            socket->write(kHere);
            socket->flush();
            socket->disconnectFromServer();
            emit wanted(token);
        };
        connect(socket, &QLocalSocket::readyRead, this, answer);
        answer();
    }
}

bool raiseOther(const std::filesystem::path& logbook)
{
    const QString name = socketOf(logbook);
    if (name.isEmpty()) return false;
    const QDeadlineTimer until(kPatience);
    QLocalSocket socket;
    socket.connectToServer(name);
    if (!socket.waitForConnected(kPatience)) return false;
    QByteArray token = qgetenv("XDG_ACTIVATION_TOKEN");
    if (token.isEmpty()) token = qgetenv("DESKTOP_STARTUP_ID");
    socket.write(token.left(kLongest / 2).replace('\n', "") + '\n');
    while (!socket.canReadLine()) {
        const auto left = static_cast<int>(until.remainingTime());
        if (left <= 0 || !socket.waitForReadyRead(left)) break;
    }
    return socket.readLine() == kHere;
}

}  // namespace taut::app
