// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "core/records/records.h"

class QVBoxLayout;

namespace taut::app {

class PickList;

/// Which runs a question of the history is about: a press, a job, a substrate, and how far back.
class Narrowing : public QWidget {
    Q_OBJECT

public:
    enum class Press : std::uint8_t { Any, One };
    /// `press` One: there is no "every press".
    explicit Narrowing(Press press, QWidget* parent = nullptr);
    /// What can be chosen, out of a store; what was chosen stays where it is still there.
    void fill(const records::Reader& reader);
    [[nodiscard]] records::CourseQuery query() const;
    /// Chooses this press, where it is in the list.
    void choosePress(const std::string& press);

signals:
    void changed();

private:
    PickList *m_press, *m_job, *m_substrate, *m_time;
    Press m_kind;
    bool m_filling = false;
};

}  // namespace taut::app
