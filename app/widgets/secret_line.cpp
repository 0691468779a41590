// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/secret_line.h"

#include <QKeyEvent>

#include "app/widgets/controls.h"
#include "core/people/person.h"

namespace taut::app {

SecretLine::SecretLine(QWidget* parent) : QLineEdit(parent)
{
    setEchoMode(QLineEdit::Password);
    setObjectName(QStringLiteral("passphrase"));
    named(this, tr("Passphrase, or badge"));
}

bool SecretLine::takeBadge()
{
    if (!m_badge.empty()) return false;
    const auto code = people::badgeCodeFrom(text().toStdString());
    if (!code) return false;
    m_badge = *code;
    clear();
    setPlaceholderText(tr("PIN of this badge"));
    setAccessibleName(tr("PIN of this badge"));
    setFocus();
    return true;
}

QString SecretLine::secret()
{
    if (takeBadge() || text().isEmpty()) return {};
    return m_badge.empty() ? text() : QString::fromStdString(people::badgeSecret(m_badge, text().toStdString()));
}

void SecretLine::forget()
{
    clear();
    m_badge.clear();
    setPlaceholderText(m_hint);
    setAccessibleName(tr("Passphrase, or badge"));
}

void SecretLine::setHint(const QString& hint)
{
    m_hint = hint;
    if (m_badge.empty()) setPlaceholderText(hint);
}

/// A scanner ends what it types with Enter: that is the end of the badge, not of the form.
void SecretLine::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && takeBadge()) return event->accept();
    QLineEdit::keyPressEvent(event);
}

}  // namespace taut::app
