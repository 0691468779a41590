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

signals:
    void begin(const taut::practice::Scenario& scenario);

private:
    void settle();
    void give();
    [[nodiscard]] const practice::Scenario* chosen() const;
    Session* m_shop;
    std::vector<LessonFile> m_lessons;
    RowList* m_list;
    QLineEdit* m_seed;
    QLabel *m_near, *m_whyNot;
    QPushButton* m_begin;
    FindingStrip* m_finding;
};

}  // namespace taut::app
