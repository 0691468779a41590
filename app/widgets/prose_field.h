// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPlainTextEdit>

namespace taut::app {

/// A sentence or two: a reason, a note. Long ones wrap, so that whoever types sees all of it; what is written stays one
/// line of text. Tab goes on to the next field, and Enter gives it as it does in a line.
class ProseField : public QPlainTextEdit {
    Q_OBJECT
    Q_PROPERTY(QString text READ text WRITE setText)

public:
    explicit ProseField(QWidget* parent = nullptr);
    /// What was typed, without line ends.
    [[nodiscard]] QString text() const;
    /// The same, put there.
    void setText(const QString& text);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void entered();  ///< Enter; the key goes on to what asks

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void insertFromMimeData(const QMimeData* source) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] int heightOf(int lines) const;
};

}  // namespace taut::app
