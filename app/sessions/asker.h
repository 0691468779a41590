// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <functional>
#include <memory>

#include <QObject>
#include <QThread>

#include "app/sessions/session.h"

namespace taut::app {

/// Asks a logbook what takes longer than a window may stand still: on a thread of its own, over a connection of its
/// own, so that neither the window nor whoever enters an answer waits for it.
class Asker : public QObject {
    Q_OBJECT

public:
    /// What still may go on; false once something else is asked.
    using GoOn = std::function<bool()>;
    /// Asked on the other thread; what it gives back is done on the window's, unless something else was asked
    /// meanwhile.
    using Question = std::function<std::function<void()>(const records::Reader& reader, const GoOn& goOn)>;

    explicit Asker(Session* session, QObject* parent = nullptr);
    ~Asker() override;
    /// Ends what is under way and asks this. Without an open logbook nothing is asked.
    void ask(Question question);
    /// Whether something is under way.
    [[nodiscard]] bool busy() const { return m_thread != nullptr; }

signals:
    void busyChanged(bool busy);
    /// The logbook could not be opened for reading.
    void refused(const taut::Finding& finding);

private:
    void stop();
    Session* m_session;
    QThread* m_thread = nullptr;
    std::shared_ptr<std::atomic<bool>> m_goOn;
};

}  // namespace taut::app
