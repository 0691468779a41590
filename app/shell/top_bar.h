// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

class QBoxLayout;
class QHBoxLayout;
class QLayout;

namespace taut::app {

class SignInStrip;

/// What stands over every page: the doors at the left, who is signed in at the right. With large type, in a language of
/// long words or on a narrow screen the name goes on a second line, and where that is not enough there are two rows.
class TopBar : public QWidget {
    Q_OBJECT

public:
    explicit TopBar(QWidget* parent = nullptr);
    /// A door, or what else stands at the left.
    void addDoor(QWidget* door);
    /// What is said beside the sign-in, and the sign-in.
    void addWho(QWidget* said, SignInStrip* who);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    [[nodiscard]] std::vector<QLayout*> spaced() const;
    QBoxLayout* m_rows;
    QHBoxLayout *m_doors, *m_right;
    SignInStrip* m_who = nullptr;
    int m_wide = 0;  // between two doors, where there is room
};

}  // namespace taut::app
