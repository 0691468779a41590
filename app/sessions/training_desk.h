// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QString>
#include <QThread>

#include "core/practice/training.h"

namespace taut::app {

/// What a practice logbook has of people: who practised, and of one of them everything.
struct Training {
    std::vector<practice::Who> people;  ///< by id
    std::optional<practice::TrainingRecord> record;
    std::string sha256;              ///< of the record, lower-case hex
    std::optional<Finding> refusal;  ///< why it could not be read, or is not theirs
};

/// Reads a practice logbook, which grows with everybody's attempts, on a thread of its own and over a connection of its
/// own: the window does not wait for it, and the file need not be open for writing, or be there at all.
class TrainingDesk : public QObject {
    Q_OBJECT

public:
    explicit TrainingDesk(std::filesystem::path file, QObject* parent = nullptr);
    ~TrainingDesk() override;
    /// Everybody who practised, and the record of this person, "" = of nobody. A name that is given has to be the
    /// record's (training.other): several shops may practise on one PC, and their numbers mean other people. Emits
    /// told, for what was asked last.
    void ask(const QString& personId, const QString& name = {});

signals:
    void told(const std::shared_ptr<const taut::app::Training>& training);

private:
    struct Asked {
        std::string person, name;
    };
    void begin();
    void end(const std::shared_ptr<const Training>& training);
    std::filesystem::path m_file;
    std::optional<Asked> m_asked;  // what is to be asked next
    QThread* m_thread = nullptr;
};

}  // namespace taut::app
