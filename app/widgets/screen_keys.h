// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QPointer>
#include <QWidget>

class QLineEdit;
class QPushButton;

namespace taut::app {

/// Letters, figures and signs for a finger or a mouse, where no keyboard stands at the press. They type into the field
/// that has the focus, as a keyboard would, and lie over the half of the window in which that field is not.
class ScreenKeys : public QWidget {
    Q_OBJECT

public:
    /// Lies over its parent; hidden until it is asked for.
    explicit ScreenKeys(QWidget* parent);
    /// Asks for it, for the field that has the focus or the next one that gets it, until the focus leaves all fields.
    void setWanted(bool wanted);

signals:
    /// By setWanted or by its own key.
    void wantedChanged(bool wanted);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QPushButton* key(const QString& face, const QString& name, int row, int column, int wide);
    void build();
    void follow();
    void press(int key, const QString& text);
    void showCase();
    std::vector<QPushButton*> m_letters;
    QPointer<QWidget> m_field;
    QPushButton* m_shift = nullptr;
    bool m_wanted = false, m_large = false;
};

}  // namespace taut::app
