// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLineEdit;

namespace taut::app {

/// Keys for a finger; they type into the field as a keyboard would. The field keeps the focus.
class NumberPad : public QWidget {
    Q_OBJECT

public:
    explicit NumberPad(QLineEdit* field, QWidget* parent = nullptr);

private:
    QLineEdit* m_field;
};

}  // namespace taut::app
