// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <memory>

#include <QObject>
#include <QString>

class QLocalServer;

namespace taut::app {

/// One window for each logbook of a user: whoever starts the program again is led to the window that has the logbook
/// open. It listens on a local socket in the user's runtime folder, named by a hash of the logbook's path; only the
/// same user reaches it. Who may write is no matter of this one: the pen decides that.
class OneWindow : public QObject {
    Q_OBJECT

public:
    explicit OneWindow(QObject* parent = nullptr);
    ~OneWindow() override;
    /// Answers for this logbook from now on, and for no other. Where another window answers for it already, or no
    /// socket can be had, nobody is answered.
    void answerFor(const std::filesystem::path& logbook);
    /// Whether a second start with that logbook is answered.
    [[nodiscard]] bool answers() const;

signals:
    /// Somebody started the program again; the token lets the window come to the front where the desktop wants one.
    void wanted(const QString& token);

private:
    void hear();
    std::unique_ptr<QLocalServer> m_server;
};

/// Asks the window that has this logbook open to come to the front. False when none answers within a second: the
/// program then starts as if there were none.
[[nodiscard]] bool raiseOther(const std::filesystem::path& logbook);

}  // namespace taut::app
