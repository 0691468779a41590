// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QString>
#include <QWidget>

class QAbstractButton;
class QComboBox;

namespace taut::app::hands {

/// What a person has at hand. Whoever has a mouse types on the keys of the screen; whoever has a keyboard points at
/// nothing.
enum class Way { Mouse, Keys };

/// Lets events come in until something holds; false when it does not after a long time.
bool until(const std::function<bool()>& holds, int patienceMs = 20000);
void pass(int milliseconds);

/// Works a window from outside with one hand: a click goes to a place of the window and lands on whatever lies there,
/// a key goes to whatever has the focus. What cannot be reached that way fails the test by name.
class Hand {
public:
    Hand(QWidget* window, Way way) : m_window(window), m_way(way) {}
    [[nodiscard]] Way way() const { return m_way; }
    [[nodiscard]] QWidget* window() const { return m_window; }

    /// Presses a button, ticks a box.
    void press(QWidget* target);
    /// Holds a button down for as long as it asks.
    void hold(QWidget* target);
    /// Puts a text into a field, over what stood in it.
    void type(QWidget* field, const QString& text);
    void choose(QComboBox* list, const QString& entry);
    /// Opens a button's menu and takes the entry with these words.
    void take(QAbstractButton* button, const QString& entry);
    /// Brings the focus to it: by Tab alone with the keyboard.
    void reach(QWidget* target);
    void key(int key, Qt::KeyboardModifiers held = Qt::NoModifier);

    /// What is seen and can be touched now, by its name for the program or by its words; nullptr when there is none.
    template <class W>
    [[nodiscard]] W* seen(const char* name) const
    {
        for (W* one : m_window->findChildren<W*>(QString::fromLatin1(name)))
            if (one->isVisible()) return one;
        return nullptr;
    }
    [[nodiscard]] QAbstractButton* worded(const QString& words) const;
    /// The same, and a failure by name when it is not there.
    template <class W>
    [[nodiscard]] W* must(const char* name) const
    {
        if (W* one = seen<W>(name)) return one;
        missing(QString::fromLatin1(name));
        return nullptr;
    }
    [[nodiscard]] QAbstractButton* mustWorded(const QString& words) const;
    /// Every sentence on the screen now, one a line.
    [[nodiscard]] QString read() const;

    /// How often the screen was touched so far: keys of a pad or of the screen's keyboard, what was held down, all
    /// else.
    struct Touches {
        int keys = 0, holds = 0, others = 0;
    };
    [[nodiscard]] const Touches& touches() const { return m_touches; }

private:
    void clickAt(QWidget* target, const QPoint& at);
    [[nodiscard]] QPoint uncovered(QWidget* target);
    void typeOnScreen(QWidget* field, const QString& text);
    void missing(const QString& what) const;
    QWidget* m_window;
    Way m_way;
    Touches m_touches;
};

}  // namespace taut::app::hands
