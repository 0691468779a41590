// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include "core/base/finding.h"
#include "core/units/unit.h"

namespace taut::app {

/// A refusal: what is wrong, where, what to do. Stays until it was answered.
class FindingStrip : public QWidget {
    Q_OBJECT

public:
    /// close: the words of its button, where two may stand in one window; "" = the usual ones.
    explicit FindingStrip(QWidget* parent = nullptr, const QString& close = {});
    /// Comes up with it, in the units of these people.
    void say(const Finding& finding, UnitSystem system);
    /// Goes; the focus stays where it is.
    void clear();
    /// What to do, as it was said last.
    [[nodiscard]] QString text() const { return m_text->text(); }
    /// Keeps the room of an ordinary refusal free while nothing is said, so that nothing moves when one comes.
    void reserve(bool reserved);
    /// Whether its room is kept.
    [[nodiscard]] bool isReserved() const { return m_reserved; }
    /// How high it is kept, or is with what it says, in this width.
    [[nodiscard]] int wantedHeight(int width) const;
    /// In a row of controls it has their height and no button, and keeps its width free: it goes when something new is
    /// asked.
    void standInRow();
    /// Whether this can be read whole in the row as wide as it is. What is wrong may stand there without what to do,
    /// which the tip then says.
    [[nodiscard]] bool fitsRow(const QString& words) const;

signals:
    void understood();  ///< it is about to go: whoever owns it takes the focus back
    void gone();        ///< its room is free

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void keepRoom();
    void set(bool small, const QString& head);
    QLabel* m_head;
    QLabel* m_text;
    QPushButton* m_close;
    QPointer<QWidget> m_before;  // what had the focus when it came up
    bool m_reserved = false, m_inRow = false;
};

}  // namespace taut::app
