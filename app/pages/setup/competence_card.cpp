// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/competence_card.h"

#include <algorithm>

#include <QDateTime>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/sessions/practice_session.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/inputs/inputs.h"
#include "core/inputs/policy.h"

namespace taut::app {

namespace {

/// So many digits may go on in the next line.
QString breakable(const std::string& digits)
{
    constexpr std::size_t kGroup = 8;
    QString out;
    for (std::size_t i = 0; i < digits.size(); i += kGroup)
        out += (i == 0 ? QString() : QString(QChar(0x200B))) + QString::fromStdString(digits.substr(i, kGroup));
    return out;
}

using Question = AskPanel::Question;

/// For how many months a supervisor may say it; what is not so any more they end at once.
constexpr int kMonths[] = {3, 6, 12, 24};
/// So many set-ups are offered to be ticked, the newest first.
constexpr std::size_t kMostRuns = 20;
/// What stands for what nobody has said yet, when it is asked whether it could be said at all.
constexpr const char* kWords = "words";

/// The end of the day so many months from now.
qint64 untilMs(int months)
{
    return QDateTime(QDate::currentDate().addMonths(months), QTime(23, 59, 59)).toMSecsSinceEpoch();
}

}  // namespace

CompetenceCard::CompetenceCard(Session* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_desk(new TrainingDesk(usualPracticeLogbook(), this))
{
    m_box = new QWidget;
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(new ScrollRoom(m_box, this));
    auto* column = new QVBoxLayout(m_box);
    column->setContentsMargins(20, 10, 20, 10);
    const auto label = [&](const QString& text, const char* role) {
        QLabel* made = wrapped(text, role, m_box);
        column->addWidget(made);
        return made;
    };
    m_title = label({}, "longSay");
    label(tr("Practice alone qualifies nobody. Competence is for one press, wants set-ups there that somebody watched, "
             "and ends. Who may lock out energy is for the site's own procedure and local law, and is not said here."),
          "soft");
    m_presses = new RowList(m_box);
    m_presses->setObjectName(QStringLiteral("alonePresses"));
    m_presses->setAccessibleName(tr("Presses"));
    m_presses->setMinimumHeight(3 * sizes().row);
    column->addWidget(m_presses, 1);
    m_record = label({}, "");
    m_record->setObjectName(QStringLiteral("aloneRecord"));
    m_runsHead = label({}, "head");
    m_runsColumn = new QVBoxLayout;
    column->addLayout(m_runsColumn);
    m_whyNot = label({}, "strong");
    m_whyNot->setObjectName(QStringLiteral("whyNotAlone"));
    auto* acts = new FlowRow;
    m_end = worded(tr("It ends now"), "answer", m_box);
    m_end->setObjectName(QStringLiteral("endAlone"));
    m_grant = worded(tr("May work alone"), "main", m_box);
    m_grant->setObjectName(QStringLiteral("grantAlone"));
    acts->addWidget(m_end);
    acts->addWidget(m_grant);
    column->addLayout(acts);
    connect(m_presses, &QListWidget::currentItemChanged, this, [this] {
        fillRuns();
        settle();
    });
    connect(m_grant, &QPushButton::clicked, this, &CompetenceCard::askGrant);
    connect(m_end, &QPushButton::clicked, this, &CompetenceCard::askEnd);
    connect(m_desk, &TrainingDesk::told, this, [this](const std::shared_ptr<const Training>& training) {
        m_training = training;
        settle();
    });
    connect(session, &Session::competencesTold, this, [this](const auto& all) {
        m_all = all;
        fillPresses();
        fillRuns();
        settle();
    });
    connect(session, &Session::busyChanged, this, &CompetenceCard::settle);
    connect(session, &Session::actorChanged, this, &CompetenceCard::settle);
}

QWidget* CompetenceCard::first() const { return m_presses; }

void CompetenceCard::showFor(const people::PersonRecord& person)
{
    m_person = person;
    m_all.clear();
    m_training.reset();
    m_title->setText(tr("%1 may work alone at").arg(dataText(person.name)));
    lookAtPresses();
    fillPresses();
    fillRuns();
    settle();
    m_session->askCompetences();
    m_desk->ask(QString::fromStdString(person.id.value), QString::fromStdString(person.name));
}

void CompetenceCard::lookAtPresses()
{
    m_known.clear();
    for (const logbook::Definition& one : m_session->definitions("press")) {
        Findings notes;
        const auto read = inputs::readPress(one.source.text, one.source.id, notes);
        if (!read) continue;
        m_known.push_back({one.source.id, dataText(read->name), inputs::policyFigure(*read, "competence_asked") >= 1,
                           static_cast<std::size_t>(inputs::policyFigure(*read, "competence_runs")),
                           seal::safetyStamp(*read)});
    }
}

const logbook::CompetenceStanding* CompetenceCard::standing(const std::string& press) const
{
    for (const logbook::CompetenceStanding& one : m_all)
        if (one.said.press == press && one.said.personId == m_person.id.value) return &one;
    return nullptr;
}

const CompetenceCard::Press* CompetenceCard::press() const
{
    const std::string id = m_presses->chosen().toStdString();
    for (const Press& one : m_known)
        if (one.id == id) return &one;
    return nullptr;
}

/// By whom, or why not.
QString CompetenceCard::standsText(const Press& press) const
{
    const logbook::CompetenceStanding* stands = standing(press.id);
    if (stands != nullptr && !stands->notNow)
        return tr("said by %1, %2").arg(dataText(stands->byName), momentHereText(stands->at.utcMs));
    const auto why = stands != nullptr
                         ? stands->notNow
                         : seal::notCompetent(std::nullopt, 0, m_person.name, press.name.toStdString(), {});
    return why ? words(why->text, UnitSystem::Metric) : QString();
}

void CompetenceCard::fillPresses()
{
    {
        const QSignalBlocker quiet(m_presses);
        const QString before = m_presses->chosen();
        m_presses->clear();
        for (const Press& one : m_known) {
            const logbook::CompetenceStanding* stands = standing(one.id);
            const bool holds = stands != nullptr && !stands->notNow;
            m_presses->add(
                {QString::fromStdString(one.id), one.name,
                 holds ? tr("until %1").arg(momentHereText(stands->said.validUntilMs)) : tr("not alone"),
                 tr("%1 \u00B7 %2")
                     .arg(standsText(one), one.asked ? tr("this press asks it") : tr("this press does not ask it")),
                 holds ? MarkShape::Tick : MarkShape::DashedBox});
        }
        if (before.isEmpty() || !m_presses->choose(before)) m_presses->choose(m_presses->first());
    }
}

/// The set-ups of this press that they finished, the newest first. Nothing is ticked by the program.
void CompetenceCard::fillRuns()
{
    for (const auto& [run, box] : m_runs) {
        box->hide();
        box->deleteLater();
    }
    m_runs.clear();
    const Press* at = press();
    const records::Reader* reader = m_session->reader();
    if (at == nullptr || reader == nullptr) return;
    records::RunQuery query;
    query.press = at->id;
    query.person = m_person.id.value;
    query.state = "completed";
    query.limit = kMostRuns;
    const auto page = reader->runs(query, {});
    if (!page) return;
    for (const records::RunRow& row : page->rows) {
        if (row.seq == 0 || row.present == "void") continue;
        auto* box = new StatementBox(
            tr("Run %1, %2, job %3 %4")
                .arg(dataText(row.run), momentHereText(row.begunMs), dataText(row.job), dataText(row.title)),
            m_box);
        box->setObjectName(QStringLiteral("watched"));
        connect(box, &QCheckBox::toggled, this, &CompetenceCard::settle);
        m_runsColumn->addWidget(box);
        box->show();
        m_runs.emplace_back(row.run, box);
    }
    tabsBefore(m_end, m_box);
}

std::vector<std::string> CompetenceCard::ticked() const
{
    std::vector<std::string> runs;
    for (const auto& [run, box] : m_runs)
        if (box->isChecked()) runs.push_back(run);
    return runs;
}

std::optional<Finding> CompetenceCard::whyNot(bool granted) const
{
    const qint64 now = QDateTime::currentMSecsSinceEpoch();
    seal::Competence asked;
    asked.granted = granted;
    asked.personId = m_person.id.value;
    asked.press = press() == nullptr ? std::string() : press()->id;
    if (m_training) asked.trainingRecord = m_training->sha256;
    asked.validUntilMs = now + 1;
    asked.reason = kWords;
    for (const people::PersonRecord& one : m_session->people())
        if (m_session->actor() && one.id == m_session->actor()->id()) return seal::whyNot(asked, one, now);
    return refuse("session.not_signed_in", {}, "Nobody is signed in.", "Choose your name and type your PIN.");
}

/// What cannot be said is not asked for, and why stands beside it.
void CompetenceCard::settle()
{
    const Press* at = press();
    const std::size_t have = ticked().size();
    m_record->setText(!m_training           ? tr("Reading the practice logbook of this PC\u2026")
                      : m_training->refusal ? words(*m_training->refusal, UnitSystem::Metric)
                      : m_training->record  ? tr("Training record of %1 at this PC: %2 attempts, SHA-256 %3")
                                                 .arg(dataText(m_training->record->who.name))
                                                 .arg(m_training->record->attempts.size())
                                                 .arg(breakable(m_training->sha256))
                                           : tr("The practice logbook of this PC has no attempt of theirs."));
    m_runsHead->setText(m_runs.empty() ? tr("They finished no set-up of this press yet")
                                       : tr("Which of these set-ups did somebody watch?"));
    const auto grant = whyNot(true), end = whyNot(false);
    const bool mayEnd = !end && at != nullptr && standing(at->id) != nullptr && standing(at->id)->said.granted;
    const bool enough = at != nullptr && have >= at->wanted;
    const bool free = !m_session->busy();
    m_end->setEnabled(free && mayEnd);
    m_grant->setEnabled(free && at != nullptr && !grant && enough);
    QString why;
    if (at == nullptr)
        why = tr("No press is kept in this logbook.");
    else if (grant && grant->code == "competence.record")
        why = tr("Without a training record nobody is said to be competent: see what stands above.");
    else if (grant)
        why = words(*grant, UnitSystem::Metric);
    else if (!enough)
        why = tr("Tick the set-ups that were watched: %1 of at least %2.").arg(have).arg(at->wanted);
    m_whyNot->setText(why);
    m_whyNot->setVisible(!why.isEmpty());
}

void CompetenceCard::askGrant()
{
    const Press* at = press();
    if (at == nullptr) return;
    logbook::Qualifying said{m_person.id.value, at->id, m_training->sha256, ticked(), 0};
    Question q;
    q.title = tr("%1 may work alone at %2").arg(dataText(m_person.name), at->name);
    q.text = tr("Set-ups that were watched: %1. Training record: SHA-256 %2. Your name, the time and your signature "
                "stand in the logbook for good. It ends on its day, when what protects people at this press is "
                "changed, when they are long away from it, or when a supervisor ends it.")
                 .arg(said.observed.size())
                 .arg(QString::fromStdString(said.trainingRecord));
    AskPanel::Field until{tr("Valid until"), {}, true, {}, false};
    for (const int months : kMonths)
        until.options.emplace_back(QString::number(untilMs(months)),
                                   tr("%1 months, to %2").arg(months).arg(momentHereText(untilMs(months))));
    q.fields = {until};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Sign that they may");
    emit asks(q, [this, said](const QStringList& values, const QString& secret) mutable {
        said.validUntilMs = values[0].toLongLong();
        m_session->qualify(said, secret);
    });
}

void CompetenceCard::askEnd()
{
    const Press* at = press();
    if (at == nullptr) return;
    Question q;
    q.title = tr("%1 works alone at %2 no longer").arg(dataText(m_person.name), at->name);
    q.text = tr("An accident or a near miss, what an inspection showed, another task: from now on a supervisor signs "
                "beside them, where this press asks it.");
    q.fields = {AskPanel::prose(tr("Why it ends"))};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("End it now");
    emit asks(q, [this, person = m_person.id.value, id = at->id](const QStringList& values, const QString& secret) {
        m_session->endCompetence(person, id, values[0], secret);
    });
}

}  // namespace taut::app
