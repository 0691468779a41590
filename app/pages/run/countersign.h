// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "app/widgets/answer.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace taut::app {

/// Where whoever may not sign alone has a supervisor beside them: who it is, and their PIN. Out of sight until the
/// logbook has refused the one signature.
class Countersign : public QWidget {
    Q_OBJECT

public:
    explicit Countersign(QWidget* parent = nullptr);
    /// Everybody in service; offered are those who may countersign, without whoever signs.
    void setPeople(const std::vector<PersonChoice>& people, const PersonChoice& actor);
    /// Comes up, with nothing filled in.
    void begin();
    /// What is still to be filled in; nullptr when nothing is.
    [[nodiscard]] QWidget* wanted() const;
    [[nodiscard]] QString person() const;
    [[nodiscard]] QString pin() const;
    void forgetPin();

signals:
    void edited();

private:
    QComboBox* m_person;
    QLineEdit* m_pin;
    QLabel* m_nobody;
};

}  // namespace taut::app
