// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace taut::app {

/// What is shown once and kept nowhere: a first-use code to be passed on, or a badge to be printed.
class OnceCard : public QWidget {
    Q_OBJECT

public:
    explicit OnceCard(QWidget* parent = nullptr);
    /// A first-use code, or a badge, shown this once.
    void showCode(const QString& name, const QString& code);
    void showBadge(const QString& name, const QString& code);
    /// Wipes it off the screen.
    void forget();
    /// What ends it.
    [[nodiscard]] QWidget* first() const { return m_done; }

signals:
    /// It was taken down, and is forgotten here.
    void done();

private:
    void printBadge();
    void saveBadge();
    QLabel *m_title, *m_text, *m_code, *m_said;
    QWidget* m_picture;
    QPushButton *m_print, *m_save, *m_done;
    QString m_name, m_badge;
};

}  // namespace taut::app
