// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/review_card.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/pages/run/countersign.h"
#include "app/pages/run/run_shown.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/held_stops.h"
#include "app/widgets/secret_line.h"
#include "app/widgets/theme.h"
#include "app/widgets/whole_table.h"
#include "core/report/readings.h"
#include "core/run/attention.h"
#include "core/run/pace.h"
#include "core/run/words.h"

namespace taut::app {

namespace {

constexpr int kStepRole = Qt::UserRole;
/// What the logbook refuses whoever may not sign a set-up of this press alone with.
constexpr const char* kNotCompetent = "gate.not_competent";

QString answeredText(const procedure::Step& step, const run::StepStanding& standing, UnitSystem system)
{
    if (standing.state == run::StepState::NotApplicable) return dataText(standing.skipReason);
    if (!standing.answer) return {};
    QString said = words(run::enteredSaid(&step, standing.answer->entered), system);
    if (standing.deviation)
        said += QLatin1Char(' ') + ReviewCard::tr("accepted by %1: %2")
                                       .arg(QString::fromStdString(standing.deviation->byName),
                                            QString::fromStdString(standing.deviation->reason));
    return said;
}

}  // namespace

ReviewCard::ReviewCard(QWidget* parent) : QWidget(parent)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 10, 20, 10);
    layout->setSpacing(6);
    m_title = wrapped(tr("Look through the run, then sign"), "longSay", this);
    layout->addWidget(m_title);
    m_summary = wrapped({}, "strong", this);
    layout->addWidget(m_summary);
    m_table = new WholeTable({tr("State"), tr("Step"), tr("Answer"), tr("By, at")}, {0.18, 0.37, 0.27, 0.18}, this);
    m_table->setObjectName(QStringLiteral("steps"));
    m_table->setAccessibleName(tr("Steps of this run"));
    m_table->setMinimumHeight(2 * sizes().row);
    layout->addWidget(m_table, 1);

    m_remarks = new QLineEdit(this);
    m_remarks->setObjectName(QStringLiteral("remarks"));
    named(m_remarks, tr("Remarks"));
    m_passphrase = new SecretLine(this);
    m_remarksLabel = new QLabel(tr("R&emarks, for whoever comes next"), this);
    m_remarksLabel->setBuddy(m_remarks);
    m_passphraseLabel = new QLabel(tr("Passphrase, or scan your badge"), this);
    m_passphraseLabel->setBuddy(m_passphrase);
    for (QLabel* label : {m_remarksLabel, m_passphraseLabel}) label->setWordWrap(true);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(sizes().gap);
    grid->setVerticalSpacing(2);
    grid->addWidget(m_remarksLabel, 0, 0);
    grid->addWidget(m_passphraseLabel, 0, 1);
    grid->addWidget(m_remarks, 1, 0);
    grid->addWidget(m_passphrase, 1, 1);
    m_sign = worded(tr("&Sign: done as it stands here"), "main", this);
    m_sign->setObjectName(QStringLiteral("answer"));
    grid->addWidget(m_sign, 0, 2, 2, 1);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 4);
    grid->setColumnStretch(2, 3);
    m_held = new HeldStops(this);
    connect(m_held, &HeldStops::command, this, &ReviewCard::command);
    layout->addWidget(m_held);
    m_beside = new Countersign(this);
    layout->addWidget(m_beside);
    m_finding = new FindingStrip(this);
    connect(m_finding, &FindingStrip::understood, this, [this] {
        if (m_passphrase->isEnabled())
            wanted()->setFocus();
        else
            first()->setFocus();
    });
    layout->addWidget(m_finding);
    m_writing = withRole(new QLabel(tr("Sealing\u2026"), this), "strong");
    m_writing->hide();
    layout->addWidget(m_writing);
    layout->addLayout(grid);
    m_meaning = wrapped({}, "small", this);
    layout->addWidget(m_meaning);
    connect(m_sign, &QPushButton::clicked, this, &ReviewCard::give);
    connect(m_passphrase, &QLineEdit::textEdited, m_finding, &FindingStrip::clear);
    connect(m_beside, &Countersign::edited, m_finding, &FindingStrip::clear);
    connect(m_table, &QTableWidget::cellActivated, this, [this](int row, int) {
        if (const QTableWidgetItem* item = m_table->item(row, 0)) emit stepChosen(item->data(kStepRole).toString());
    });
}

void ReviewCard::show(const run::Run& run, const PersonChoice& actor)
{
    m_system = unitsOf(run);
    m_finding->clear();
    m_passphrase->forget();
    m_beside->forgetPin();
    if (m_run != run.id()) m_beside->hide();
    m_run = run.id();
    const int corrected = fill(run);
    const std::size_t open = run.openSteps().size();
    const bool running = run.phase() == run::Phase::Running;
    // Said to be over, but its sealing was kept off: by a power cut, or by a rule. Whoever may sign seals it then.
    m_ended = run.phase() == run::Phase::Completed || run.phase() == run::Phase::Abandoned;
    const bool may = !actor.id.isEmpty() && people::may(actor.role, people::Act::SignOff) &&
                     (m_ended || !isInOtherHands(run, actor));
    const bool held = running && !run.heldStops().empty();
    m_held->show(held && open == 0 ? heldShown(run) : std::vector<run::HeldStop>{});
    m_sign->setEnabled(may && (m_ended || (running && open == 0 && !held)));
    m_passphrase->setEnabled(m_sign->isEnabled());
    m_remarks->setEnabled(m_sign->isEnabled() && !m_ended);
    sayButton();
    m_meaning->setText(run.phase() == run::Phase::Abandoned
                           ? tr("Signing says: abandoned. Your name, the time and your signature, made with your own "
                                "key, stand in the record for good.")
                           : tr("Signing says: performed. Your name, the time and your signature, made with your own "
                                "key, stand in the record for good."));
    if (m_ended) m_beside->hide();
    if (run.phase() == run::Phase::Completed)
        m_summary->setText(tr("This run is done and not sealed yet. Whoever seals it signs for it."));
    else if (run.phase() == run::Phase::Abandoned)
        m_summary->setText(tr("This run was abandoned and is not sealed yet. Whoever seals it signs for it."));
    else if (open > 0)
        m_summary->setText(tr("%1 steps are open: the run cannot be signed yet.").arg(open));
    else if (running && isInOtherHands(run, actor))
        m_summary->setText(
            tr("This run is in the hands of %1, who signs it. Esc leads back to where it can be taken over.")
                .arg(dataText(run.operatorName())));
    else if (held)
        m_summary->setText(tr("A stop is still held: the run can be signed when whoever holds it has given it up."));
    else if (!may)
        m_summary->setText(tr("Whoever signs must be signed in, and their role must allow it."));
    else if (const Text deviations = report::deviationsSaid(run); !deviations.empty())
        m_summary->setText(tr("Nothing is open. Deviations: %1.").arg(words(deviations, m_system)));
    else
        m_summary->setText(tr("Nothing is open, and nothing deviates."));
    if (corrected > 0)
        m_summary->setText(tr("%1 Steps that were corrected: %2.").arg(m_summary->text()).arg(corrected));
    // Whoever signs knows what whoever reviews will see.
    if (const std::size_t hasty = run::hasteOf(run).size(); running && hasty > 0)
        m_summary->setText(tr("%1 Answers given too fast, or before the time was over: %2. The sheet says which.")
                               .arg(m_summary->text())
                               .arg(hasty));
}

/// Returns how many of them were corrected.
int ReviewCard::fill(const run::Run& run)
{
    const std::vector<const procedure::Step*> steps = run::byAttention(run);
    m_table->setRowCount(static_cast<int>(steps.size()));
    int row = 0, corrected = 0;
    for (const procedure::Step* one : steps) {
        const procedure::Step& step = *one;
        const run::StepStanding standing = run.standing(step.id);
        m_table->put(row, 0, standingText(standing));
        m_table->mark(row, 0, markOf(standing));
        m_table->item(row, 0)->setData(kStepRole, QString::fromStdString(step.id.value));
        m_table->put(row, 1, words(step.say, m_system));
        QString answer = answeredText(step, standing, m_system);
        if (const Text cut = report::cutShortSaid(run, step.id); !cut.empty())
            answer += QLatin1Char('\n') + tr("before its time was over: %1").arg(words(cut, m_system));
        if (const QStringList earlier = earlierOf(run, step); !earlier.isEmpty()) {
            answer += QLatin1Char('\n') + earlier.join(QLatin1Char('\n'));
            ++corrected;
        }
        m_table->put(row, 2, answer.trimmed());
        const QString by = standing.n == 0 ? QString()
                                           : tr("%1, %2").arg(QString::fromStdString(standing.byName),
                                                              clockText(standing.at, standing.offset));
        m_table->put(row, 3, by);
        ++row;
    }
    m_table->spread();
    return corrected;
}

/// With large type on a small screen the steps come first: what only heads them gives way, and the two fields say
/// themselves what they are for.
void ReviewCard::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    constexpr int kLeastLines = 20;
    const bool close = height() < kLeastLines * QFontMetrics(currentLook().font).lineSpacing();
    if (close == m_close) return;
    m_close = close;
    // Not while the layout is being settled: what is hidden in it then would not be counted.
    QTimer::singleShot(0, this, [this] {
        for (QWidget* word : std::initializer_list<QWidget*>{m_title, m_remarksLabel, m_passphraseLabel, m_meaning})
            word->setVisible(!m_close);
        m_remarks->setPlaceholderText(m_close ? m_remarks->accessibleName() : QString());
        m_passphrase->setHint(m_close ? tr("Passphrase") : QString());
        sayButton();
    });
}

void ReviewCard::sayButton()
{
    m_sign->setText(m_ended   ? tr("&Seal it as it stands here")
                    : m_close ? tr("&Sign")
                              : tr("&Sign: done as it stands here"));
}

void ReviewCard::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    setEnabled(!busy);
}

void ReviewCard::refuse(const Finding& finding)
{
    m_finding->say(finding, m_system);
    // An ended run takes no further event, so nobody can be told in it: the supervisor seals it themselves.
    if (finding.code == kNotCompetent && !m_ended) m_beside->begin();
    // While it was being written nothing here could hold the focus; a wrong passphrase is typed anew at once.
    if (m_passphrase->isEnabled()) wanted()->setFocus();
}

void ReviewCard::setPeople(const std::vector<PersonChoice>& people, const PersonChoice& actor)
{
    m_beside->setPeople(people, actor);
}

/// What is typed next: whoever countersigns comes before the passphrase of whoever signs.
QWidget* ReviewCard::wanted() const
{
    QWidget* beside = m_beside->isVisibleTo(this) ? m_beside->wanted() : nullptr;
    return beside != nullptr ? beside : m_passphrase;
}

void ReviewCard::forgetTyped()
{
    m_remarks->clear();
    m_beside->hide();
    m_passphrase->forget();
}

QWidget* ReviewCard::first() const
{
    if (m_held->first()) return m_held->first();
    if (!m_sign->isEnabled()) return m_table;
    return m_ended ? static_cast<QWidget*>(m_passphrase) : m_remarks;
}

void ReviewCard::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return QWidget::keyPressEvent(event);
    if (event->isAutoRepeat()) return event->accept();
    give();
    event->accept();
}

void ReviewCard::give()
{
    if (!m_sign->isEnabled()) return;
    const bool beside = m_beside->isVisible();
    const QString passphrase = m_passphrase->secret();
    if (passphrase.isEmpty() || (beside && m_beside->wanted() != nullptr)) {
        wanted()->setFocus();
        return;
    }
    m_passphrase->forget();
    const QString remarks = m_remarks->text().trimmed(), pin = m_beside->pin();
    m_beside->forgetPin();
    if (beside)
        emit signBeside(remarks, m_beside->person(), pin, passphrase);
    else
        emit sign(run::SignOff{remarks.toStdString()}, passphrase);
}

}  // namespace taut::app
