// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/pages/history/period.h"
#include "core/records/records.h"

class QLabel;
class QLineEdit;

namespace taut::app {

class PickList;

/// Which runs a question of the history is about: a press, a job, a substrate, and how far back.
class Narrowing : public QWidget {
    Q_OBJECT

public:
    enum class Press : std::uint8_t { Any, One };
    enum class Time : std::uint8_t { Asked, All };
    /// `press` One: there is no "every press". `time` All: how far back is not asked.
    explicit Narrowing(Press press, Time time = Time::Asked, QWidget* parent = nullptr);
    /// What can be chosen, out of a store; what was chosen stays where it is still there.
    void fill(const records::Reader& reader);
    [[nodiscard]] records::CourseQuery query() const;
    /// What is chosen, as it can be kept and set again; an id that the store does not have is set all the same, so that
    /// what was asked is what is answered.
    struct Choice {
        QString press, job, substrate;
        Period period;
    };
    [[nodiscard]] Choice choice() const;
    void choose(const Choice& choice);

signals:
    void changed();

private:
    [[nodiscard]] QLineEdit* day(const QString& name, const char* object);
    void settleDays();
    PickList *m_press, *m_job, *m_substrate, *m_time;
    QWidget* m_between;
    QLineEdit *m_from, *m_to;
    QLabel* m_wrong;
    Press m_kind;
    Ends m_ends;  ///< of what was typed last that were days
    bool m_filling = false;
};

}  // namespace taut::app
