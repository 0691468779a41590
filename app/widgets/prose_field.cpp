// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/prose_field.h"

#include <algorithm>

#include <QKeyEvent>
#include <QMimeData>
#include <QTextDocument>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kLines = 3, kLeastLines = 2;

/// A record's sentence has no line ends of its own.
QString inOneLine(QString text)
{
    for (QChar& sign : text)
        if (sign == QLatin1Char('\n') || sign == QLatin1Char('\r') || sign == QChar::ParagraphSeparator ||
            sign == QChar::LineSeparator)
            sign = QLatin1Char(' ');
    return text;
}

}  // namespace

ProseField::ProseField(QWidget* parent) : QPlainTextEdit(parent)
{
    setTabChangesFocus(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    document()->setDocumentMargin(0);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

QString ProseField::text() const { return inOneLine(toPlainText()); }

void ProseField::setText(const QString& text)
{
    setPlainText(inOneLine(text));
    moveCursor(QTextCursor::End);
}

/// Border and padding as the style sheet has them.
int ProseField::heightOf(int lines) const
{
    ensurePolished();
    constexpr int kAround = 12;
    return std::max(lines * fontMetrics().lineSpacing() + kAround, sizes().control);
}

QSize ProseField::sizeHint() const { return {QPlainTextEdit::sizeHint().width(), heightOf(kLines)}; }

QSize ProseField::minimumSizeHint() const { return {120, heightOf(kLeastLines)}; }

void ProseField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return QPlainTextEdit::keyPressEvent(event);
    event->ignore();
    if (!event->isAutoRepeat()) emit entered();
}

void ProseField::insertFromMimeData(const QMimeData* source)
{
    if (source->hasText()) insertPlainText(inOneLine(source->text()));
}

void ProseField::changeEvent(QEvent* event)
{
    QPlainTextEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) updateGeometry();
}

}  // namespace taut::app
