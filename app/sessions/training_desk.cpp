// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sessions/training_desk.h"

#include <algorithm>
#include <utility>

#include "core/logbook/training.h"

namespace taut::app {

namespace {

/// Nobody who never practised has a record, and that is no failure.
Training read(const std::filesystem::path& file, const std::string& person, const std::string& name)
{
    Training training;
    std::error_code gone;
    if (!std::filesystem::exists(file, gone)) return training;
    auto people = logbook::traineesIn(file);
    if (!people) {
        training.refusal = people.error();
        return training;
    }
    training.people = *std::move(people);
    const auto found = std::find_if(training.people.begin(), training.people.end(),
                                    [&](const practice::Who& one) { return one.id == person; });
    if (found == training.people.end()) return training;
    if (!name.empty() && found->name != name) {
        training.refusal = refuse("training.other", person,
                                  {"The practice logbook of this PC has attempts of %1 under the id %2, not of %3.",
                                   {found->name, person, name}},
                                  "Look at the PC on which this person practised.");
        return training;
    }
    auto record = logbook::trainingOf(file, person);
    if (!record) {
        training.refusal = record.error();
        return training;
    }
    training.sha256 = practice::recordSha256(*record);
    training.record = *std::move(record);
    return training;
}

}  // namespace

TrainingDesk::TrainingDesk(std::filesystem::path file, QObject* parent) : QObject(parent), m_file(std::move(file)) {}

TrainingDesk::~TrainingDesk()
{
    if (m_thread == nullptr) return;
    m_thread->wait();
    delete m_thread;
}

void TrainingDesk::ask(const QString& personId, const QString& name)
{
    m_asked = {personId.toStdString(), name.toStdString()};
    if (m_thread == nullptr) begin();
}

void TrainingDesk::begin()
{
    const Asked asked = *std::exchange(m_asked, std::nullopt);
    m_thread = QThread::create([this, file = m_file, asked] {
        const auto training = std::make_shared<const Training>(read(file, asked.person, asked.name));
        QMetaObject::invokeMethod(
            this, [this, training] { end(training); }, Qt::QueuedConnection);
    });
    m_thread->start();
}

/// What was asked meanwhile is asked now; only the last answer is told.
void TrainingDesk::end(const std::shared_ptr<const Training>& training)
{
    m_thread->wait();
    delete std::exchange(m_thread, nullptr);
    if (m_asked) return begin();
    emit told(training);
}

}  // namespace taut::app
