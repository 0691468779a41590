// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/text/language.h"

class QLabel;
class QPushButton;
class QScrollArea;

namespace taut::app {

class PickList;
class RulerCheck;

/// What this PC keeps for itself: language, units, paper, and how large its screen is. Asked once when a logbook has
/// got its first person, and there to be changed afterwards; nothing of it is in the record.
class ThisPcPage : public QWidget {
    Q_OBJECT

public:
    explicit ThisPcPage(QWidget* parent = nullptr);
    /// As it stands now; the first time it also offers to look round in the demo shop.
    void show(bool firstTime);
    [[nodiscard]] bool isFirstTime() const { return m_firstTime; }
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    void languageChosen(const QString& id);
    void unitsChosen(taut::app::UnitsWish wish);
    /// ThemeChoice::rulerScale from now on.
    void scaled(double rulerScale);
    /// A window of the demo shop beside this one.
    void demoWanted();
    /// Everything is as it should be.
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool m_firstTime = false;
    QLabel *m_title, *m_text;
    PickList *m_language, *m_units, *m_paper;
    RulerCheck* m_ruler;
    QPushButton *m_demo, *m_done;
};

/// Whether these questions were asked on this PC.
[[nodiscard]] bool wasThisPcAsked();

}  // namespace taut::app
