// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "core/run/run.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTextBrowser;

namespace taut::app {

class FindingStrip;
class StatementBox;

/// After an interruption: what must be seen at the press and said before the run goes on. Nothing is ticked beforehand.
class MakeSafeCard : public QWidget {
    Q_OBJECT

public:
    explicit MakeSafeCard(QWidget* parent = nullptr);
    void ask(const run::Run& run);
    void refuse(const Finding& finding, UnitSystem system);

signals:
    void said(const std::vector<std::string>& stated);

private:
    QLabel* m_why;
    std::vector<std::pair<std::string, StatementBox*>> m_boxes;
    FindingStrip* m_finding;
};

/// Everything that was answered, once more, before somebody puts their name to it.
class ReviewCard : public QWidget {
    Q_OBJECT

public:
    explicit ReviewCard(QWidget* parent = nullptr);
    void show(const run::Run& run, UnitSystem system);
    void refuse(const Finding& finding, UnitSystem system);
    void setBusy(bool busy);

signals:
    void sign(const QString& remarks, const QString& pin);
    void back();

private:
    QTextBrowser* m_steps;
    QLineEdit *m_remarks, *m_pin;
    QPushButton* m_sign;
    FindingStrip* m_finding;
};

}  // namespace taut::app
