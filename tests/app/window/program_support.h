// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QJsonArray>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include "core/run/event.h"

namespace taut::app::hands {

/// What a person sees of the program now.
struct Sight {
    QString say;    ///< the step on the card, "" = another card
    QString words;  ///< every sentence, one a line
    QJsonArray buttons;
    [[nodiscard]] bool has(const QString& nameOrWords) const;
    [[nodiscard]] bool ready(const QString& nameOrWords) const;  ///< there, and can be pressed
    [[nodiscard]] bool reads(const QString& part) const { return words.contains(part); }
};

/// The built program as a process of its own on the platform without a display, with a hand at it (hand/hand.cpp), on a
/// logbook that stays when it is killed.
class Program {
public:
    Program();
    ~Program();
    /// Begins a run on the north press and answers it well until this step is next, before the program starts.
    void bringTo(const std::string& step);
    /// Starts it; its syncs take so long.
    void start(int syncDelayMs);
    /// As a power cut would: SIGKILL, nothing is told to it.
    void kill();
    [[nodiscard]] bool runs() const { return m_process.state() != QProcess::NotRunning; }

    [[nodiscard]] Sight see();
    /// Looks until this is so; fails with what is seen.
    Sight seeUntil(const std::function<bool(const Sight&)>& wanted);
    /// Sends an order (hand.cpp) and waits for it to be done; fails when it cannot be.
    void order(const QString& order);
    void signIn(const char* personId);

    /// The events of the open run as another program finds them in the file now: one line of JSON each.
    [[nodiscard]] std::vector<std::string> events() const;
    [[nodiscard]] QString pin(const char* personId) const;
    [[nodiscard]] std::string logbook() const;

private:
    QJsonObject ask(const QString& order);
    QTemporaryDir m_folder;
    QProcess m_process;
};

}  // namespace taut::app::hands
