// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sessions/asker.h"

#include <utility>

namespace taut::app {

Asker::Asker(Session* session, QObject* parent) : QObject(parent), m_session(session) {}

Asker::~Asker() { stop(); }

void Asker::stop()
{
    if (m_thread == nullptr) return;
    *m_goOn = false;
    m_thread->wait();
    delete std::exchange(m_thread, nullptr);
}

void Asker::ask(Question question)
{
    stop();
    if (m_session->reader() == nullptr) return emit busyChanged(false);
    m_goOn = std::make_shared<std::atomic<bool>>(true);
    const std::shared_ptr<std::atomic<bool>> goOn = m_goOn;
    const std::filesystem::path file = m_session->options().logbook;
    m_thread = QThread::create([this, goOn, file, question = std::move(question)] {
        const auto reader = logbook::openReader(file);
        std::function<void()> then;
        if (reader) {
            then = question(**reader, [goOn] { return goOn->load(); });
        } else {
            then = [this, why = reader.error()] { emit refused(why); };
        }
        if (!*goOn) return;
        // Queued to the window's thread: by then something else may have been asked.
        QMetaObject::invokeMethod(
            this,
            [this, goOn, then] {
                // cppcheck-suppress identicalConditionAfterEarlyExit ; the window may have given up meanwhile
                if (!*goOn) return;
                stop();
                if (then) then();
                emit busyChanged(busy());
            },
            Qt::QueuedConnection);
    });
    m_thread->start();
    emit busyChanged(true);
}

}  // namespace taut::app
