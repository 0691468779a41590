// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QBoxLayout>
#include <QLayout>
#include <QLineEdit>
#include <QScrollArea>

namespace taut::app {

/// Room for what may be taller than its place: on a small screen with large type it is scrolled up and down, never
/// sideways, and nothing in it is squeezed below its least height. What has the focus is brought into sight.
class ScrollRoom : public QScrollArea {
    Q_OBJECT

public:
    explicit ScrollRoom(QWidget* body, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
};

/// A row that goes on in the next line where it is too wide, in the direction in which the language is read. What wants
/// to be wide takes what its line has left.
class FlowRow : public QLayout {
    Q_OBJECT

public:
    explicit FlowRow(QWidget* parent = nullptr);
    ~FlowRow() override;
    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    /// Lays the items out in this width; returns the height they take. `place` false: only measures.
    int lay(const QRect& rect, bool place) const;
    int layLine(const std::vector<QLayoutItem*>& line, const QRect& room, bool place) const;
    std::vector<QLayoutItem*> m_items;
};

/// Puts the parts of a row one below the other as long as what holds it is narrower than so many letters.
void foldBelow(QWidget* holder, QBoxLayout* row, int letters);

/// What may be typed into an empty line, in sight as a whole.
void hint(QLineEdit* line, const QString& text);

}  // namespace taut::app
