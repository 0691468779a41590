// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/record_acts.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/records/texts.h"
#include "core/report/parts.h"
#include "core/run/words.h"
#include "core/seal/document.h"

namespace taut::app {

namespace {

using Question = AskPanel::Question;

/// What stands for the words that nobody has typed yet, when it is asked whether they could be said at all.
constexpr const char* kWords = "words";

}  // namespace

RecordActs::RecordActs(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_review = worded(tr("Review"), "", this);
    m_correct = worded(tr("Correct"), "", this);
    m_void = worded(tr("Make void"), "", this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    foldBelow(this, row, 70);
    m_whyNot = wrapped({}, "soft", this);
    row->addWidget(m_whyNot, 1);
    auto* acts = new FlowRow;
    for (QPushButton* button : {m_review, m_correct, m_void}) {
        button->setMinimumHeight(sizes().control);
        acts->addWidget(button);
    }
    row->addLayout(acts);
    m_frame = new QWidget(parent);
    m_ask = new AskPanel(m_frame);
    auto* frame = new QVBoxLayout(m_frame);
    frame->setContentsMargins(20, 10, 20, 10);
    frame->addWidget(m_ask);
    connect(m_review, &QPushButton::clicked, this, [this] {
        m_from = m_review;
        askReview();
    });
    connect(m_correct, &QPushButton::clicked, this, [this] {
        m_from = m_correct;
        askCorrection();
    });
    connect(m_void, &QPushButton::clicked, this, [this] {
        m_from = m_void;
        askVoid();
    });
    connect(m_ask, &AskPanel::cancelled, this, &RecordActs::back);
    connect(m_ask, &AskPanel::given, this,
            [this](const QStringList& values, const QString&, const QString& secret) { m_given(values, secret); });
    connect(session, &Session::busyChanged, this, [this](bool busy) {
        m_ask->setBusy(busy);
        settle();
    });
    connect(session, &Session::actorChanged, this, &RecordActs::personChanged);
    connect(session, &Session::shopChanged, this, &RecordActs::settle);
    connect(session, &Session::recordChanged, this, &RecordActs::back);
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (m_ask->isVisible()) m_ask->refuse(finding, m_units);
    });
    settle();
}

void RecordActs::showRun(const QString& runId)
{
    if (runId != m_run) drop();
    m_run = runId;
    look();
    settle();
}

/// What of the run can be corrected, as it stands now.
void RecordActs::look()
{
    m_steps.clear();
    m_sealed.reset();
    const records::Reader* reader = m_session->reader();
    if (m_run.isEmpty() || reader == nullptr) return;
    const std::string id = m_run.toStdString();
    const auto sealed = reader->sealOfRun(id);
    const auto story = reader->sealsAbout(id);
    if (!sealed || !story) return;
    const auto document = seal::read(sealed->document);
    if (!document) return;
    const auto events = seal::eventsOf(*document, records::textsOf(*reader));
    if (!events) return;
    m_sealed = seal::sealedRun(*sealed, *document);
    for (const seal::Sealing& later : *story)
        if (later.sequel) m_sealed = seal::after(*std::move(m_sealed), *later.sequel, later.byId, later.byName);
    const run::Run run = run::Run::fold(*events);
    m_units = run.began().units;
    for (const procedure::Step& step : run.plan().steps) {
        const std::string stands = seal::saidNow(run, *story, step.id.value);
        const bool open = step.kind == procedure::StepKind::Motion || step.kind == procedure::StepKind::Hold;
        if (stands.empty() || open) continue;
        m_steps.push_back({QString::fromStdString(step.id.value),
                           words(report::nameOf(step, run.targets().find(step.target)), m_units), dataText(stands)});
    }
}

std::optional<Finding> RecordActs::whyNot(const seal::Sequel& sequel) const
{
    for (const people::PersonRecord& person : m_session->people())
        if (m_session->actor() && person.id == m_session->actor()->id()) return seal::whyNot(*m_sealed, sequel, person);
    return refuse("session.not_signed_in", {}, "Nobody is signed in.", "Choose your name and type your PIN.");
}

/// What cannot be said is not asked for, and why stands beside it.
void RecordActs::settle()
{
    setVisible(m_sealed.has_value());
    if (!m_sealed) return;
    auto accept = whyNot(seal::Review{true, {}}), sendBack = whyNot(seal::Review{false, kWords});
    const auto review = accept && sendBack ? accept : std::nullopt;
    const auto correct = whyNot(seal::Correction{{}, kWords, kWords});
    const auto makeVoid = whyNot(seal::Voiding{kWords});
    const bool free = !m_session->busy();
    m_review->setEnabled(free && !review);
    m_correct->setEnabled(free && !correct);
    m_void->setEnabled(free && !makeVoid);
    const std::optional<Finding>& why = correct ? correct : makeVoid ? makeVoid : review;
    m_whyNot->setText(m_session->onlyReads()                 ? tr("The logbook is open to read only.")
                      : !m_session->actor()                  ? tr("Sign in to review or correct this run.")
                      : !why                                 ? QString()
                      : why->code == "gate.role" && !correct ? tr("A supervisor reviews a run and makes it void.")
                                                             : words(*why, m_units));
}

/// Half-typed words wait for the same person, as on every page; a passphrase does not.
void RecordActs::personChanged()
{
    const auto& actor = m_session->actor();
    if (m_given && !actor) {
        m_ask->forgetPin();
        emit asking(false);
    } else if (m_given && actor->id() == m_asked) {
        emit asking(true);
        if (m_ask->isVisible()) m_ask->takeFocus();
    } else if (m_given) {
        drop();
    }
    settle();
}

void RecordActs::drop()
{
    m_given = {};
    emit asking(false);
}

void RecordActs::back()
{
    const bool had = m_ask->isVisible();
    drop();
    if (had && m_from) m_from->setFocus();
}

void RecordActs::ask(const Question& question, std::function<void(const QStringList&, const QString&)> given)
{
    m_given = std::move(given);
    m_asked = m_session->actor()->id();
    m_ask->ask(question);
    emit asking(true);
    m_ask->first()->setFocus();
}

void RecordActs::askReview()
{
    Question q;
    q.title = tr("Review run %1").arg(m_run);
    q.text = tr("Look through its sheet first. Your name, the time and your signature stand beside it for good.");
    q.fields = {{tr("What you say of it"),
                 {{QStringLiteral("accepted"), tr("Seen, and accepted as it stands")},
                  {QStringLiteral("sent_back"), tr("Sent back: something is to be put right")}},
                 true,
                 {},
                 false},
                AskPanel::prose(tr("Remark"), false, tr("must be there when it is sent back"))};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Sign the review");
    ask(q, [this](const QStringList& values, const QString& secret) {
        m_session->review(m_run, {values[0] == QStringLiteral("accepted"), values[1].toStdString()}, secret);
    });
}

void RecordActs::askCorrection()
{
    Question q;
    q.title = tr("Correct run %1").arg(m_run);
    q.text =
        tr("What was signed stays as it is; the correction stands beside it, with what stood, and is reviewed anew.");
    AskPanel::Field steps{tr("What is wrong"), {{QString(), tr("No single step: see the remark")}}, false, {}, false};
    for (const Answered& one : m_steps)
        steps.options.emplace_back(one.step, tr("%1 \u2014 stands: %2").arg(one.say, one.stands));
    q.fields = {steps,
                {tr("What it should be"), {}, false, tr("with its unit, if it has one"), false},
                AskPanel::prose(tr("Remark"), false),
                AskPanel::prose(tr("Why it is corrected"))};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Sign the correction");
    ask(q, [this](const QStringList& values, const QString& secret) {
        seal::Correction correction;
        for (const Answered& one : m_steps)
            if (!one.step.isEmpty() && one.step == values[0])
                correction.steps.push_back(
                    {one.step.toStdString(), one.stands.toStdString(), values[1].toStdString(), {}, {}, {}});
        correction.remark = values[2].toStdString();
        correction.reason = values[3].toStdString();
        m_session->correct(m_run, correction, secret);
    });
}

void RecordActs::askVoid()
{
    Question q;
    q.title = tr("Make run %1 void").arg(m_run);
    q.text =
        tr("It stays in the record, marked void on every page, and nothing can be said of it afterwards. There is no "
           "way back.");
    q.fields = {AskPanel::prose(tr("Why it is void"))};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Make it void");
    ask(q, [this](const QStringList& values, const QString& secret) { m_session->voidRun(m_run, values[0], secret); });
}

}  // namespace taut::app
