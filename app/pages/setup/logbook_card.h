// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/ask_panel.h"

namespace taut::app {

/// Where a supervisor sees to it that the logbook is there twice: a mirror that follows every seal, whole copies every
/// week, and the way back from either.
class LogbookCard : public QWidget {
    Q_OBJECT

public:
    using Given = std::function<void(const QStringList&, const QString&)>;
    explicit LogbookCard(Session* session, QWidget* parent = nullptr);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// A question that wants a passphrase, and what to do with it.
    void asks(const AskPanel::Question& question, const LogbookCard::Given& given);
    void came();  ///< something is to be read here

protected:
    /// Whoever has the focus is in sight, however it came there: with large type the card is longer than the screen.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void settle();
    void work(QPushButton* from);
    void chooseMirror();
    void chooseCopies();
    void copyNow();
    void chooseCopy();
    void askRestore(const Weighed& weighed);
    void tellCopied(const logbook::Copied& copy);
    void tellRestored(const logbook::Restored& restored);
    [[nodiscard]] QString mirrorSaid() const;
    [[nodiscard]] QString weeklySaid() const;
    Session* m_session;
    QScrollArea* m_scroll;
    QLabel *m_file, *m_whyNot, *m_working, *m_mirror, *m_weekly, *m_copied, *m_restored;
    QPushButton *m_keep, *m_stop, *m_keepCopies, *m_stopCopies, *m_copy, *m_restore;
    QPushButton* m_from = nullptr;
    bool m_asked = false;  // something that takes its time was asked for here
};

}  // namespace taut::app
