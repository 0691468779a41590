// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace taut::app {

/// What somebody signs with, typed where nobody reads it: a passphrase, or a badge that a scanner types, and then the
/// badge's PIN in the same line.
class SecretLine : public QLineEdit {
    Q_OBJECT

public:
    explicit SecretLine(QWidget* parent = nullptr);
    /// The passphrase, or badge and PIN as people::badgeSecret; empty while something is still wanted.
    [[nodiscard]] QString secret();
    /// What was typed, badge and all.
    void forget();
    /// What stands in the empty line where there is no room for a label.
    void setHint(const QString& hint);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    /// True when what stands there was a badge: it is kept, and its PIN is asked for.
    bool takeBadge();
    std::string m_badge;
    QString m_hint;
};

}  // namespace taut::app
