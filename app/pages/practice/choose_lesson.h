// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "app/sessions/lesson.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace taut::app {

class FindingStrip;
class PickList;
class RowList;

/// Which scenario is practised, and with which chances. What is not as it should be in it nobody is told.
class ChooseLesson : public QWidget {
    Q_OBJECT

public:
    explicit ChooseLesson(Session* shop, QWidget* parent = nullptr);
    /// Reads again what there is; who is signed in and which press stands here may have changed.
    void refresh();
    /// Adds a scenario of one's own and chooses it.
    void open(const std::filesystem::path& file);
    void refuse(const Finding& finding);
    [[nodiscard]] QWidget* first() const;
    [[nodiscard]] const practice::Scenario* chosen() const;

signals:
    /// text: the scenario as it was written.
    void begin(const taut::practice::Scenario& scenario, const QString& text);
    /// A trainer wants to build one, from the chosen one where there is one.
    void buildWanted();
    void trainingWanted();

private:
    void settle();
    void give();
    [[nodiscard]] const LessonFile* chosenFile() const;
    Session* m_shop;
    std::vector<LessonFile> m_lessons;
    RowList* m_list;
    QLineEdit* m_seed;
    PickList* m_mode;
    QLabel *m_near, *m_whyNot;
    QPushButton *m_begin, *m_build;
    FindingStrip* m_finding;
};

}  // namespace taut::app
