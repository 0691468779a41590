// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "core/procedure/procedure.h"
#include "core/units/unit.h"

namespace taut::app {

/// A label that wraps and takes the height it needs.
[[nodiscard]] QLabel* wrapped(const QString& text, const char* role, QWidget* parent);
/// One line that ends in an ellipsis where the room does; the whole of it stands in the tip and in the name.
class OneLine : public QLabel {
    Q_OBJECT

public:
    explicit OneLine(const char* role, QWidget* parent = nullptr);
    /// Shows it, shortened where it must be.
    void say(const QString& text);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();
    QString m_all;
};

/// A button whose words wrap rather than being cut, with large type or long answers. The second touch of a double one
/// is not taken by the button that has just come up under the finger.
class WordButton : public QPushButton {
    Q_OBJECT

public:
    explicit WordButton(const QString& text, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    /// What stands on it now: its text, unless it has to say something else for a moment.
    [[nodiscard]] virtual QString shownWords() const { return text(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    int m_number;  // of all buttons that ever were: an address may come again
    void giveFocusUp();
    [[nodiscard]] int sidePadding() const;
    [[nodiscard]] int plainHeight() const;
};

/// A button with a word; the name for assistive technology is the word without its mnemonic.
[[nodiscard]] QPushButton* worded(const QString& text, const char* role, QWidget* parent);
/// Names a field for assistive technology, as its label does for the eye; a list also gets rows that a finger can hit,
/// and a line to type in takes no letter that was pressed with Alt.
void named(QWidget* field, const QString& name);

/// Puts what a box holds into the order of the Tab key just before another widget: what is made later would come last
/// of all.
void tabsBefore(QWidget* next, const QWidget* box);

/// A list to choose from: it shows that it opens, and a wheel turned over it on the way past does not change it.
class PickList : public QComboBox {
    Q_OBJECT

public:
    explicit PickList(QWidget* parent = nullptr);

protected:
    void wheelEvent(QWheelEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
};

/// A statement that somebody affirms: a large box and a sentence that wraps. Never ticked by the program.
class StatementBox : public QCheckBox {
    Q_OBJECT

public:
    explicit StatementBox(const QString& sentence, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] bool hitButton(const QPoint& point) const override;

private:
    [[nodiscard]] int boxSide() const;
};

/// A caution with its signal word in a panel as the standards define them, drawn by us.
class SignalPanel : public QWidget {
    Q_OBJECT

public:
    explicit SignalPanel(QWidget* parent = nullptr);
    /// Hides itself when there is nothing to say.
    void setCaution(procedure::SignalWord word, const QString& text);

private:
    QWidget* m_word;
    QLabel* m_text;
};

}  // namespace taut::app
