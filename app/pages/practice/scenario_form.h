// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "app/sessions/lesson.h"

class QAbstractButton;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace taut::app {

class FindingStrip;
class PickList;

/// The ways in which a lesson can be gone through, as a list to choose from.
void fillModes(PickList* list);

/// A trainer builds a scenario: press, job and roll, what is not as it should be, how much help is given and when what
/// the press contradicts is shown.
class ScenarioForm : public QWidget {
    Q_OBJECT

public:
    explicit ScenarioForm(Session* shop, QWidget* parent = nullptr);
    /// From this one, or from the first press there is.
    void show(const practice::Scenario* from);
    [[nodiscard]] QWidget* first() const;
    /// As it stands in the form.
    [[nodiscard]] practice::Scenario scenario() const;

signals:
    void saved(const QString& file);
    void begin(const taut::practice::Scenario& scenario, const QString& text);
    void left();

private:
    void fillFaults();
    void save();
    Session* m_shop;
    QLineEdit *m_title, *m_draw, *m_seed;
    PickList *m_press, *m_job, *m_roll, *m_mode, *m_shown;
    QWidget* m_faultBox;
    QVBoxLayout* m_faultRows;
    struct Row {
        practice::Suspect suspect;
        QAbstractButton* button = nullptr;
    };
    std::vector<Row> m_faults;
    std::vector<practice::Fault> m_wanted;  ///< of the scenario that was shown, to be ticked
    FindingStrip* m_finding;
    bool m_filling = false;
};

}  // namespace taut::app
