// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/logbook_card.h"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/seams/kept_settings.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/logbook/keep.h"

namespace taut::app {

namespace {

constexpr const char* kCopyFolder = "copy_folder";

QString pathText(const std::filesystem::path& path) { return dataText(path.string()); }

/// What was found, a line each.
QStringList said(const Findings& findings)
{
    QStringList lines;
    for (const Finding& finding : findings) lines << words(finding, UnitSystem::Metric);
    return lines;
}

}  // namespace

LogbookCard::LogbookCard(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    auto* box = new QWidget;
    m_scroll = new ScrollRoom(box, this);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_scroll);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(20, 10, 20, 10);
    const auto label = [&](const QString& text, const char* role) {
        QLabel* made = wrapped(text, role, box);
        column->addWidget(made);
        return made;
    };
    const auto button = [this, box](const QString& text) {
        QPushButton* made = worded(text, "", box);
        made->setMinimumHeight(sizes().control);
        made->installEventFilter(this);
        return made;
    };
    label(tr("The logbook, kept twice"), "longSay");
    m_file = label({}, "soft");
    m_whyNot = label(tr("A supervisor who has signed in looks after this."), "strong");
    m_working = label(tr("At work\u2026"), "strong");
    column->addSpacing(sizes().gap);
    label(tr("Mirror"), "head");
    m_mirror = label({}, "");
    m_mirror->setObjectName(QStringLiteral("mirror"));
    m_keep = button(tr("Choose the mirror's folder\u2026"));
    m_stop = button(tr("Stop the mirror"));
    const auto beside = [column](QPushButton* one, QPushButton* other) {
        auto* row = new QHBoxLayout;
        row->addWidget(one, 1);
        row->addWidget(other, 1);
        column->addLayout(row);
    };
    beside(m_keep, m_stop);
    column->addSpacing(sizes().gap);
    label(tr("Copies"), "head");
    m_copied = label(tr("A copy is the whole logbook, with open runs and with what people sign in with. It is read "
                        "again and verified before it gets its name; the newest %1 of this logbook stay.")
                         .arg(logbook::CopyPlan{}.keep),
                     "");
    m_copied->setObjectName(QStringLiteral("copied"));
    m_weekly = label({}, "");
    m_weekly->setObjectName(QStringLiteral("weekly"));
    m_keepCopies = button(tr("Copy every week, to a folder\u2026"));
    m_stopCopies = button(tr("Stop the weekly copies"));
    beside(m_keepCopies, m_stopCopies);
    m_copy = button(tr("Copy now, to a folder or a stick\u2026"));
    column->addWidget(m_copy);
    column->addSpacing(sizes().gap);
    label(tr("The way back"), "head");
    m_restored = label(tr("From a copy everything comes back, from a mirror every sealed record. What will happen is "
                          "said before it does, and what lies here now is kept."),
                       "");
    m_restored->setObjectName(QStringLiteral("restored"));
    m_restore = button(tr("Restore from a copy\u2026"));
    column->addWidget(m_restore);
    column->addStretch(1);
    connect(m_keep, &QPushButton::clicked, this, &LogbookCard::chooseMirror);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        work(m_stop);
        m_session->keepMirror({});
    });
    connect(m_keepCopies, &QPushButton::clicked, this, &LogbookCard::chooseCopies);
    connect(m_stopCopies, &QPushButton::clicked, this, [this] {
        m_session->keepCopies({});
        m_keepCopies->setFocus();
    });
    connect(m_copy, &QPushButton::clicked, this, &LogbookCard::copyNow);
    connect(m_restore, &QPushButton::clicked, this, &LogbookCard::chooseCopy);
    connect(session, &Session::busyChanged, this, [this](bool busy) {
        const bool was = m_asked && !busy;
        m_asked = m_asked && busy;
        settle();
        // What is busy cannot hold the focus, and the door to another page is no place to leave it.
        if (was && isVisible()) m_from->setFocus();
    });
    for (const auto changed :
         {&Session::mirrorChanged, &Session::copiesChanged, &Session::opened, &Session::actorChanged})
        connect(session, changed, this, &LogbookCard::settle);
    connect(session, &Session::copied, this, &LogbookCard::tellCopied);
    connect(session, &Session::weighed, this, &LogbookCard::askRestore);
    connect(session, &Session::restored, this, &LogbookCard::tellRestored);
    settle();
}

QWidget* LogbookCard::first() const { return m_keep; }

bool LogbookCard::eventFilter(QObject* watched, QEvent* event)
{
    auto* button = qobject_cast<QPushButton*>(watched);
    if (button && event->type() == QEvent::FocusIn) m_scroll->ensureWidgetVisible(button, 0, sizes().gap);
    return QWidget::eventFilter(watched, event);
}

void LogbookCard::work(QPushButton* from)
{
    m_asked = true;
    m_from = from;
}

QString LogbookCard::mirrorSaid() const
{
    const auto& mirror = m_session->mirror();
    if (!mirror)
        return tr("No mirror is kept. A mirror is a second file in a folder of your choice: another disk, a stick, "
                  "another machine. Every seal goes there as soon as it is made; no PIN, no key and no open run does.");
    const QString folder = pathText(keptFolder(Kept::Mirror, m_session->options().logbook));
    QStringList lines;
    if (mirror->holdsAll())
        lines << tr("%1 holds every seal of the logbook: %2.").arg(pathText(mirror->file)).arg(mirror->count);
    else if (mirror->findings.empty())
        lines << tr("The folder %1 is being looked at\u2026").arg(folder);
    else if (mirror->file.empty())
        lines << tr("There is no mirror in %1 now. The logbook goes on without it.").arg(folder);
    else
        lines << tr("%1 is behind: it lacks %2 seals.").arg(pathText(mirror->file)).arg(mirror->behind);
    return (lines << said(mirror->findings)).join(QLatin1Char('\n'));
}

QString LogbookCard::weeklySaid() const
{
    const auto& copies = m_session->copies();
    if (!copies)
        return tr(
            "No copy is made by itself. Choose a folder, and one is made there every week, beside whatever is done "
            "here.");
    QStringList lines{tr("Every week into %1.").arg(pathText(keptFolder(Kept::Copies, m_session->options().logbook)))};
    if (copies->working)
        lines << tr("One is being made\u2026");
    else if (!copies->looked)
        lines << tr("The folder is being looked at\u2026");
    if (copies->newestMs && copies->seals)
        lines << tr("The last was made on %1, read again and in order: %2 seals.")
                     .arg(momentHereText(*copies->newestMs))
                     .arg(*copies->seals);
    else if (copies->newestMs)
        lines << tr("The last was made on %1, and verified then.").arg(momentHereText(*copies->newestMs));
    else if (copies->looked && !copies->working)
        lines << tr("None has been made there yet.");
    if (copies->whyNot) lines << tr("One is due, and could not be made.") << words(*copies->whyNot, UnitSystem::Metric);
    return (lines << said(copies->findings)).join(QLatin1Char('\n'));
}

void LogbookCard::settle()
{
    const auto& actor = m_session->actor();
    const bool keeper = !logbook::whyNotKeeper(actor);
    const bool free = keeper && !m_session->busy();
    m_file->setText(
        (QStringList(tr("This logbook: %1").arg(pathText(m_session->options().logbook))) << said(m_session->notes()))
            .join(QLatin1Char('\n')));
    m_whyNot->setVisible(!keeper);
    m_working->setVisible(m_asked);
    m_mirror->setText(mirrorSaid());
    m_weekly->setText(weeklySaid());
    for (QPushButton* button : {m_keep, m_keepCopies, m_copy, m_restore}) button->setEnabled(free);
    m_stopCopies->setEnabled(free && m_session->copies());
    m_stop->setEnabled(free && m_session->mirror());
}

void LogbookCard::chooseMirror()
{
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Where is the mirror to be kept?"),
        QString::fromStdString(keptFolder(Kept::Mirror, m_session->options().logbook)));
    if (folder.isEmpty()) return;
    work(m_keep);
    m_session->keepMirror(folder);
}

void LogbookCard::chooseCopies()
{
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Where are the weekly copies to lie?"),
        QString::fromStdString(keptFolder(Kept::Copies, m_session->options().logbook)));
    if (!folder.isEmpty()) m_session->keepCopies(folder);
}

void LogbookCard::copyNow()
{
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Where is the copy to lie?"), keptSettings().value(QString::fromLatin1(kCopyFolder)).toString());
    if (folder.isEmpty()) return;
    keptSettings().setValue(QString::fromLatin1(kCopyFolder), folder);
    work(m_copy);
    m_session->copyTo(folder);
}

void LogbookCard::tellCopied(const logbook::Copied& copy)
{
    QStringList lines{
        tr("Copied to %1: read again and in order, %2 seals.").arg(pathText(copy.file)).arg(copy.end.count)};
    for (const std::filesystem::path& old : copy.removed)
        lines << tr("An older copy gave way: %1.").arg(pathText(old.filename()));
    m_copied->setText((lines << said(copy.findings)).join(QLatin1Char('\n')));
    emit came();
}

void LogbookCard::chooseCopy()
{
    const QString file = QFileDialog::getOpenFileName(this, tr("Which copy or mirror?"),
                                                      keptSettings().value(QString::fromLatin1(kCopyFolder)).toString(),
                                                      tr("Logbooks (*.logbook)"));
    if (file.isEmpty()) return;
    work(m_restore);
    m_session->weigh(file);
}

void LogbookCard::askRestore(const Weighed& weighed)
{
    AskPanel::Question q;
    q.title = tr("Restore the logbook from %1").arg(pathText(weighed.copy.filename()));
    QStringList lines{tr("It holds %1 seals; the logbook here holds %2.").arg(weighed.seals).arg(weighed.sealsHere)};
    if (weighed.seals < weighed.sealsHere)
        lines << tr("%1 seals made since are then no longer in the logbook, only in the file that is kept.")
                     .arg(weighed.sealsHere - weighed.seals);
    lines << tr("The copy is verified first, and refused by the first thing wrong. What lies here now is kept beside "
                "it under a name with the date. Then everybody signs in again; of a mirror, with what they sign in "
                "with here.");
    q.text = lines.join(QLatin1Char('\n'));
    q.secret = AskPanel::Question::Secret::Passphrase;
    q.accept = tr("Restore the logbook");
    emit asks(q, [this, copy = QString::fromStdString(weighed.copy)](const QStringList&, const QString& secret) {
        m_session->restore(copy, secret);
    });
}

void LogbookCard::tellRestored(const logbook::Restored& restored)
{
    QStringList lines{tr("Restored and in order: %1 seals. %2 of %3 people can sign in.")
                          .arg(restored.end.count)
                          .arg(restored.withDoors)
                          .arg(restored.people)};
    if (!restored.setAside.empty()) lines << tr("What lay here before is kept: %1.").arg(pathText(restored.setAside));
    m_restored->setText((lines << said(restored.findings)).join(QLatin1Char('\n')));
    emit came();
}

}  // namespace taut::app
