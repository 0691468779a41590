// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/phase_cards.h"

#include <algorithm>

#include <QAbstractButton>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/pages/run/run_shown.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/run/parts.h"

namespace taut::app {

namespace {

/// The last event of a kind, with its stamp; nullptr when there is none.
template <class H>
const run::Event* lastOf(const run::Run& run)
{
    const auto found = std::find_if(run.events().rbegin(), run.events().rend(),
                                    [](const run::Event& e) { return std::holds_alternative<H>(e.happening()); });
    return found == run.events().rend() ? nullptr : &*found;
}

QString interruptionText(const std::string& reason)
{
    if (reason == "ended_without_sign_off") return MakeSafeCard::tr("The program ended under the run");
    if (reason == "power") return MakeSafeCard::tr("Power or air was gone");
    if (reason == "break") return MakeSafeCard::tr("A break, or something else to do");
    if (reason == "stop_by_other") return MakeSafeCard::tr("Somebody else stopped the press");
    if (reason == "left_alone") return MakeSafeCard::tr("Nobody was at the screen");
    if (reason == "left_page") return MakeSafeCard::tr("The page was left, the run kept open");
    return dataText(reason);
}

/// What stopped the run, and when. A program that ended under it noted nothing: the last thing it wrote tells when.
QString whatStopped(const run::Run& run)
{
    const std::vector<run::Event>& events = run.events();
    for (std::size_t i = events.size(); i-- > 0;) {
        const run::Stamp& at = events[i].stamp();
        const QString when = momentText(at.utcMs, at.offsetMinutes);
        if (std::holds_alternative<run::Returned>(events[i].happening()))
            return MakeSafeCard::tr("The press was given back to use at %1. Where you were is kept.").arg(when);
        const auto* stop = std::get_if<run::Interrupted>(&events[i].happening());
        if (stop == nullptr) continue;
        if (stop->reason == "ended_without_sign_off" && i > 0) {
            const run::Stamp& last = events[i - 1].stamp();
            return MakeSafeCard::tr("The program ended under the run, some time after %1. Where you were is kept.")
                .arg(momentText(last.utcMs, last.offsetMinutes));
        }
        return MakeSafeCard::tr("The run was interrupted at %1: %2. Where you were is kept.")
            .arg(when, interruptionText(stop->reason));
    }
    return {};
}

QVBoxLayout* cardLayout(QWidget* card)
{
    auto* layout = new QVBoxLayout(card);
    layout->setContentsMargins(20, 10, 20, 10);
    layout->setSpacing(8);
    return layout;
}

QLabel* writingLabel(QWidget* parent)
{
    auto* label = withRole(new QLabel(MakeSafeCard::tr("Writing\u2026"), parent), "strong");
    label->hide();
    return label;
}

}  // namespace

MakeSafeCard::MakeSafeCard(QWidget* parent) : PhaseCard(parent)
{
    auto* layout = cardLayout(this);
    layout->addWidget(wrapped(tr("First make the press safe"), "longSay", this));
    m_why = wrapped({}, "", this);
    layout->addWidget(m_why);
    m_whose = wrapped({}, "strong", this);
    m_whose->setObjectName(QStringLiteral("whose"));
    layout->addWidget(m_whose);
    layout->addWidget(wrapped(tr("Go to the press, look at each of these now, and say it:"), "strong", this));
    auto* said = new QWidget;
    auto* column = new QVBoxLayout(said);
    column->setContentsMargins(0, 0, 0, 0);
    auto* list = new QGridLayout;
    list->setSpacing(4);
    column->addLayout(list);
    column->addStretch(1);
    // Side by side they are all in sight on a small screen.
    constexpr int kColumns = 2;
    int n = 0;
    for (const char* word : run::kMakeSafe) {
        auto* box = new StatementBox(makeSafeText(word, m_system), said);
        box->setObjectName(QStringLiteral("statement"));
        connect(box, &StatementBox::toggled, this, &MakeSafeCard::settle);
        list->addWidget(box, n / kColumns, n % kColumns);
        ++n;
        m_boxes.push_back(box);
    }
    layout->addWidget(new ScrollRoom(said, this), 1);
    m_finding = new FindingStrip(this);
    connect(m_finding, &FindingStrip::understood, this, [this] { first()->setFocus(); });
    layout->addWidget(m_finding);
    m_writing = writingLabel(this);
    layout->addWidget(m_writing);
    layout->addWidget(wrapped(tr("This screen moves nothing and stops nothing."), "strong", this));
    m_go = worded({}, "main", this);
    m_go->setObjectName(QStringLiteral("answer"));
    layout->addWidget(m_go);
    connect(m_go, &QPushButton::clicked, this, [this] {
        run::Resume resume;
        for (const char* word : run::kMakeSafe) resume.stated.emplace_back(word);
        resume.takesOver = m_takesOver;
        emit command(resume);
    });
    settle();
}

void MakeSafeCard::show(const run::Run& run, const PersonChoice& actor)
{
    m_system = unitsOf(run);
    for (StatementBox* box : m_boxes) box->setChecked(false);
    m_finding->clear();
    m_why->setText(run.heldStops().empty() ? whatStopped(run)
                                           : whatStopped(run) + QLatin1Char('\n') + stopsHeldText(run));
    m_takesOver = isInOtherHands(run, actor);
    m_actor = actor.id;
    m_whose->setVisible(m_takesOver);
    m_whose->setText(tr("The run was in the hands of %1. If you go on it is yours, and the vital steps of this stage "
                        "are asked again.")
                         .arg(dataText(run.operatorName())));
    const QString go = m_takesOver ? tr("Take over and &go on with the run") : tr("&Go on with the run");
    m_go->setText(go);
    named(m_go, QString(go).remove(QLatin1Char('&')));
    settle();
}

bool MakeSafeCard::isFor(const PersonChoice& actor) const { return m_actor == actor.id; }

void MakeSafeCard::settle()
{
    m_go->setEnabled(std::all_of(m_boxes.begin(), m_boxes.end(), [](const StatementBox* b) { return b->isChecked(); }));
}

void MakeSafeCard::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    for (StatementBox* box : m_boxes) box->setEnabled(!busy);
    m_go->setEnabled(false);
    if (!busy) settle();
}

void MakeSafeCard::refuse(const Finding& finding) { m_finding->say(finding, m_system); }

QWidget* MakeSafeCard::first() const { return m_boxes.front(); }

void PhaseCard::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return QWidget::keyPressEvent(event);
    if (event->isAutoRepeat()) return event->accept();
    if (auto* button = qobject_cast<QAbstractButton*>(window()->focusWidget())) button->click();
    event->accept();
}

OtherHandsCard::OtherHandsCard(QWidget* parent) : PhaseCard(parent)
{
    auto* layout = cardLayout(this);
    m_whose = wrapped({}, "longSay", this);
    m_whose->setObjectName(QStringLiteral("whose"));
    m_how = wrapped({}, "", this);
    layout->addWidget(m_whose);
    layout->addWidget(m_how);
    layout->addStretch(1);
    m_finding = new FindingStrip(this);
    layout->addWidget(m_finding);
    m_writing = writingLabel(this);
    layout->addWidget(m_writing);
    layout->addWidget(wrapped(tr("This screen moves nothing and stops nothing."), "strong", this));
    m_take = worded(tr("Ta&ke over the run"), "main", this);
    m_take->setObjectName(QStringLiteral("answer"));
    layout->addWidget(m_take);
    connect(m_take, &QPushButton::clicked, this, &OtherHandsCard::takeOver);
}

void OtherHandsCard::show(const run::Run& run, const PersonChoice& actor)
{
    m_system = unitsOf(run);
    m_finding->clear();
    const QString whose = dataText(run.operatorName());
    m_whose->setText(tr("This run is in the hands of %1").arg(whose));
    const bool may = people::may(actor.role, people::Act::AnswerStep);
    m_take->setVisible(may);
    m_how->setText(may ? tr("Speak with %1 first: where the work stands, who is at the press, which stops are held. "
                            "Then take it over: the vital steps of this stage are asked again, and a stop that was "
                            "held is held anew.\n\nIf it goes on with %1: lock the screen, and let %1 sign in. Steps, "
                            "targets and the sheet may be looked at meanwhile.")
                             .arg(whose)
                       : tr("%1 signs in here and goes on with it. Steps, targets and the sheet may be looked at "
                            "meanwhile.")
                             .arg(whose));
}

void OtherHandsCard::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    m_take->setEnabled(!busy);
}

void OtherHandsCard::refuse(const Finding& finding) { m_finding->say(finding, m_system); }

QWidget* OtherHandsCard::first() const { return m_take; }

WithdrawnCard::WithdrawnCard(QWidget* parent) : PhaseCard(parent)
{
    auto* layout = cardLayout(this);
    layout->addWidget(wrapped(tr("This press is withdrawn from use"), "say", this));
    m_why = wrapped({}, "strong", this);
    m_how = wrapped({}, "", this);
    layout->addWidget(m_why);
    layout->addWidget(m_how);
    auto* label = new QLabel(tr("What was &done to put it right"), this);
    m_done = new ProseField(this);
    m_done->setObjectName(QStringLiteral("done"));
    named(m_done, tr("What was done to put it right"));
    label->setBuddy(m_done);
    layout->addWidget(label);
    layout->addWidget(m_done);
    m_finding = new FindingStrip(this);
    connect(m_finding, &FindingStrip::understood, this, [this] { first()->setFocus(); });
    layout->addWidget(m_finding);
    m_writing = writingLabel(this);
    layout->addWidget(m_writing);
    layout->addStretch(1);
    m_give = worded(tr("&Give the press back"), "main", this);
    m_give->setObjectName(QStringLiteral("answer"));
    layout->addWidget(m_give);
    connect(m_give, &QPushButton::clicked, this, [this] {
        m_done->setFocus();
        const QString done = m_done->text().trimmed();
        if (done.isEmpty())
            refuse(taut::refuse("ask.empty", {}, "It was not said what was put right.", "Say it in a few words."));
        else
            emit giveBack(done);
    });
    connect(m_done, &ProseField::entered, m_give, &QPushButton::click);
    connect(m_done, &ProseField::textChanged, m_finding, [this] {
        if (run::saysSomething(m_done->text().toStdString())) m_finding->clear();
    });
}

void WithdrawnCard::show(const run::Run& run, const PersonChoice& actor)
{
    m_system = unitsOf(run);
    m_finding->clear();
    const run::Event* event = lastOf<run::Withdrawn>(run);
    if (!event) return;
    const run::Stamp& stamp = event->stamp();
    m_why->setText(tr("%1, by %2, %3")
                       .arg(QString::fromStdString(std::get<run::Withdrawn>(event->happening()).reason),
                            QString::fromStdString(stamp.byName), momentText(stamp.utcMs, stamp.offsetMinutes)));
    const bool may = !actor.id.isEmpty() && people::may(actor.role, people::Act::ReturnPress) &&
                     actor.id.toStdString() != stamp.by.value;
    m_how->setText(may ? tr("Look at it, and say what was done before you give it back.")
                       : tr("A supervisor other than %1 signs in here and gives it back.")
                             .arg(QString::fromStdString(stamp.byName)));
    m_done->setEnabled(may);
    m_give->setEnabled(may);
}

void WithdrawnCard::forgetTyped() { m_done->clear(); }

void WithdrawnCard::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    setEnabled(!busy);
}

QWidget* WithdrawnCard::first() { return m_done->isEnabled() ? static_cast<QWidget*>(m_done) : this; }

void WithdrawnCard::refuse(const Finding& finding) { m_finding->say(finding, m_system); }

}  // namespace taut::app
