// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/start_page.h"

#include <QHBoxLayout>
#include <QLineEdit>

#include "app/seams/kept_settings.h"
#include "app/text/words.h"
#include "app/widgets/room.h"
#include "app/widgets/scan_catcher.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/inputs/tag_rows.h"
#include "core/records/scanned.h"

namespace taut::app {

namespace {

/// Kept of this PC: that nobody needs to be asked any more whether they want to look round.
QString shownRound() { return QStringLiteral("shown_round"); }

bool nobodyKnown(const Session& session) { return session.isOpen() && session.people().empty(); }

/// As its file calls it; its id where no edition of it stands in the logbook.
QString pressName(const Session& session, const std::string& id)
{
    for (const logbook::Definition& one : session.definitions("press")) {
        if (one.source.id != id) continue;
        Findings notes;
        if (const auto press = inputs::readPress(one.source.text, id, notes); press && !press->name.empty())
            return dataText(press->name);
    }
    return StartPage::tr("Press %1").arg(dataText(id));
}

}  // namespace

StartPage::StartPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_topBox = new QWidget(this);
    m_top = new QVBoxLayout(m_topBox);
    m_top->setContentsMargins(0, 0, 0, 0);
    // Each is a child of what it stands in from the beginning: given to another parent it would be styled again.
    m_stack = new QStackedWidget(this);
    auto* real = new QWidget(m_stack);
    auto* above = new QWidget(real);
    m_choice = new ChoicePanel(session, above);
    // Made in this order, so that the Tab key leads from what is chosen to what begins, and then to the list.
    m_earlier = worded({}, "quiet", above);
    m_earlier->setObjectName(QStringLiteral("earlier"));
    m_earlier->hide();
    m_begin = worded(tr("Begin the run"), "main", real);
    m_targets = new TargetList(real);
    m_begin->setMinimumHeight(sizes().answer);
    m_whyNot = wrapped(QString(), "strong", real);
    m_whyNot->setAccessibleName(tr("Why a run cannot begin yet"));

    auto* whatRuns = new QVBoxLayout(above);
    whatRuns->setContentsMargins(0, 0, 0, 0);
    auto* left = new QVBoxLayout;
    m_head = wrapped(tr("What is to run, and on which press"), "head", above);
    m_tour = worded(tr("Two minutes to look round"), "quiet", above);
    m_tour->setObjectName(QStringLiteral("offerTour"));
    auto* headRow = new QHBoxLayout;
    headRow->addWidget(m_head, 1);
    headRow->addWidget(m_tour);
    whatRuns->addLayout(headRow);
    whatRuns->addWidget(m_choice);
    whatRuns->addStretch(1);
    whatRuns->addWidget(m_earlier);
    left->addWidget(new ScrollRoom(above, real), 1);
    left->addWidget(m_whyNot);
    left->addWidget(m_begin);
    auto* halves = new QHBoxLayout(real);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->addLayout(left, 9);
    halves->addSpacing(sizes().gap);
    halves->addWidget(new ScrollRoom(m_targets, real), 11);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(9, 4, 9, 4);
    column->addWidget(m_topBox);
    m_trial = new TrialPanel(m_stack);
    m_stack->addWidget(real);
    m_stack->addWidget(m_trial);
    m_rollForm = new RollForm(m_stack);
    m_stack->addWidget(m_rollForm);
    m_return = new ReturnPanel(m_stack);
    m_stack->addWidget(m_return);
    column->addWidget(m_stack, 1);

    // Typing a diameter changes every target: wait until the hand rests.
    m_soon.setSingleShot(true);
    m_soon.setInterval(120);
    connect(&m_soon, &QTimer::timeout, this, &StartPage::showTargets);
    connect(m_choice, &ChoicePanel::changed, &m_soon, qOverload<>(&QTimer::start));
    connect(m_choice, &ChoicePanel::troubled, session, &Session::refused);
    connect(m_begin, &QPushButton::clicked, this, &StartPage::begin);
    connect(m_tour, &QPushButton::clicked, this, [this] {
        keptSettings().setValue(shownRound(), true);
        m_tour->hide();
        emit tourWanted();
    });
    connect(m_choice->tryButton(), &QPushButton::clicked, this, &StartPage::beginTrial);
    connect(m_choice, &ChoicePanel::rollWanted, this, [this] { askRoll({}); });
    connect(new ScanCatcher(real), &ScanCatcher::scanned, this, &StartPage::askRoll);
    connect(m_rollForm, &RollForm::given, this, &StartPage::useRoll);
    connect(m_rollForm, &RollForm::cancelled, this, [this] { m_stack->setCurrentIndex(0); });
    connect(m_trial, &TrialPanel::left, this, &StartPage::endTrial);
    connect(m_trial, &TrialPanel::troubled, session, &Session::refused);
    connect(session, &Session::runChanged, this, &StartPage::endTrial);
    connect(m_earlier, &QPushButton::clicked, this, &StartPage::openEarlier);
    connect(m_return, &ReturnPanel::left, this, &StartPage::closeEarlier);
    connect(session, &Session::runChanged, this, &StartPage::closeEarlier);
    connect(session, &Session::recordChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(session, &Session::opened, this, &StartPage::refill);
    connect(session, &Session::shopChanged, this, &StartPage::refill);
    connect(session, &Session::actorChanged, this, [this] {
        showTop();
        // To what is gone on with, or to what is chosen first: the focus of what went would fall on "Lock".
        if (m_session->actor() && isVisible())
            (m_topActs.empty() ? static_cast<QWidget*>(m_choice->first()) : m_topActs.back())->setFocus();
    });
    connect(session, &Session::runChanged, this, [this] {
        if (m_session->run() != nullptr) {
            m_choice->forgetLook();
            keptSettings().setValue(shownRound(), true);  // whoever begins a run needs no showing round
        }
        if (m_stack->currentWidget() == m_rollForm) m_stack->setCurrentIndex(0);
        refill();
    });
    connect(session, &Session::withdrawalsChanged, this, &StartPage::showTop);
    connect(session, &Session::busyChanged, this, [this] { showTop(); });
    if (session->isOpen()) refill();
    showTop();
}

void StartPage::refill()
{
    m_choice->refill();
    showTop();
}

void StartPage::addWithdrawal(const records::Withdrawal& withdrawal)
{
    auto* box = new QWidget(m_topBox);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    auto* sentence = wrapped(tr("%1 is withdrawn from use since %2 by %3: %4")
                                 .arg(pressName(*m_session, withdrawal.press), momentHereText(withdrawal.atMs),
                                      dataText(withdrawal.byName), dataText(withdrawal.reason)),
                             "strong", box);
    row->addWidget(sentence, 1);
    const bool supervisor = m_session->actor() && people::may(m_session->actor()->role(), people::Act::ReturnPress) &&
                            m_session->actor()->id().value != withdrawal.byId;
    if (supervisor) {
        auto* done = new QLineEdit(box);
        done->setPlaceholderText(tr("What was put right"));
        done->setMinimumHeight(sizes().control);
        named(done, tr("What was put right"));
        auto* give = worded(tr("Give it back to use"), "answer", box);
        connect(give, &QPushButton::clicked, this, [this, done, press = QString::fromStdString(withdrawal.press)] {
            done->setFocus();
            m_session->giveBack(press, done->text().trimmed());
        });
        connect(done, &QLineEdit::returnPressed, give, &QPushButton::click);
        row->addWidget(done, 1);
        row->addWidget(give);
        m_topActs.push_back(give);
    }
    m_top->addWidget(box);
}

void StartPage::addOpenRun(const std::string& runId)
{
    auto* box = new QWidget(m_topBox);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    // Whoever comes knows a run by its press, its job and whose it is, not by its number.
    QString sentence = tr("Run %1 has begun and is not signed.").arg(dataText(runId));
    records::RunQuery query;
    query.state = "open";
    std::vector<records::RunRow> rows;
    // While another file takes the logbook's name nothing is read.
    if (m_session->reader() != nullptr)
        if (auto open = m_session->reader()->runs(query, "")) rows = std::move(open->rows);
    for (const records::RunRow& one : rows)
        if (one.run == runId)
            sentence = tr("%1, job %2: the run of %3 has begun and is not signed (%4).")
                           .arg(pressName(*m_session, one.press), dataText(one.job), dataText(one.operatorName),
                                dataText(runId));
    row->addWidget(wrapped(sentence, "strong", box), 1);
    auto* on = worded(tr("Go on with it"), "main", box);
    on->setMinimumHeight(sizes().control);
    connect(on, &QPushButton::clicked, this, [this, id = QString::fromStdString(runId)] { m_session->resume(id); });
    row->addWidget(on);
    m_topActs.push_back(on);
    m_top->addWidget(box);
}

/// What a supervisor asks of whoever signs in, before anything else is begun.
void StartPage::addSentBack(const history::SentBack& back)
{
    auto* box = new QWidget(m_topBox);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(
        wrapped(tr("%1 sent run %2 (job %3) back and asks: %4")
                    .arg(dataText(back.byName), dataText(back.run.run), dataText(back.run.job), dataText(back.note)),
                "strong", box),
        1);
    auto* look = worded(tr("Look at it"), "", box);
    look->setObjectName(QStringLiteral("sentBack"));
    look->setMinimumHeight(sizes().control);
    connect(look, &QPushButton::clicked, this,
            [this, run = QString::fromStdString(back.run.run)] { emit runWanted(run); });
    row->addWidget(look);
    m_topActs.push_back(look);
    m_top->addWidget(box);
}

void StartPage::showTop()
{
    // Rebuilt only when it says something else: a field in it may hold what somebody typed.
    QStringList saying{m_session->actor() ? dataText(m_session->actor()->id().value) : QString()};
    for (const records::Withdrawal& w : m_session->withdrawals()) saying << QString::fromStdString(w.press + w.reason);
    for (const std::string& id : m_session->openRuns()) saying << QString::fromStdString(id);
    std::vector<history::SentBack> asked;
    constexpr std::size_t kMostAsked = 3;
    if (m_session->actor() && m_session->reader() != nullptr)
        if (auto back = history::sentBackTo(*m_session->reader(), m_session->actor()->id().value))
            asked = *std::move(back);
    const std::size_t more = asked.size() > kMostAsked ? asked.size() - kMostAsked : 0;
    asked.resize(asked.size() - more);
    saying << QString::number(more);
    for (const history::SentBack& one : asked) saying << QString::fromStdString(one.run.run + one.note);
    if (m_topBox->property("saying").toStringList() != saying) {
        m_topBox->setProperty("saying", saying);
        m_topActs.clear();
        while (QLayoutItem* item = m_top->takeAt(0)) {
            if (item->widget() != nullptr) item->widget()->deleteLater();
            delete item;
        }
        for (const records::Withdrawal& w : m_session->withdrawals()) addWithdrawal(w);
        for (const std::string& id : m_session->openRuns()) addOpenRun(id);
        for (const history::SentBack& one : asked) addSentBack(one);
        if (more > 0)
            m_top->addWidget(wrapped(
                tr("And %1 more that were asked before: they stand in the history, under \"Sent back\".").arg(more),
                "soft", m_topBox));
    }
    for (QPushButton* act : m_topActs) act->setEnabled(m_session->actor().has_value() && !m_session->busy());
    // Beside a trial nothing is offered that goes on with a run.
    m_topBox->setVisible(m_top->count() > 0 && !onTrial());
    // On a small screen what stands above it takes its place.
    m_head->setVisible(m_top->count() == 0);
    m_tour->setVisible(m_top->count() == 0 && !keptSettings().contains(shownRound()));
    const QString why = whyNot();
    m_whyNot->setText(why);
    m_whyNot->setVisible(!why.isEmpty());
    m_begin->setEnabled(why.isEmpty());
}

QString StartPage::whyNot() const
{
    if (onTrial()) return tr("What is shown is a trial: go back to the real roll first.");
    if (!m_session->isOpen()) return tr("The logbook is not open yet.");
    if (!m_session->actor() && nobodyKnown(*m_session))
        return tr("This logbook knows nobody yet: its first supervisor is enrolled first.");
    if (!m_session->actor()) return tr("Sign in first: a run belongs to somebody.");
    if (!people::may(m_session->actor()->role(), people::Act::AnswerStep))
        return tr("Your role does not begin runs here; practise on the practice press.");
    for (const records::Withdrawal& w : m_session->withdrawals())
        if (w.press == m_choice->pressId()) return tr("This press is withdrawn from use.");
    if (const auto missing = m_choice->missing()) return *missing;
    if (m_stops) return tr("What stands at the top of the list on the right cannot work: change it first.");
    if (m_session->busy()) return tr("Writing to the logbook.");
    return {};
}

void StartPage::showTargets()
{
    m_stops = false;
    bool basisThere = false;
    const auto sources = m_choice->sources();
    if (!sources) {
        m_targets->showNothing(tr("Nothing is chosen yet."));
    } else if (auto basis = run::basisFor(*sources, m_choice->question()); !basis) {
        m_stops = true;
        m_targets->showNothing(words(basis.error(), UnitSystem::Metric));
    } else {
        m_stops = stops(basis->targets.findings);
        m_targets->show(basis->targets, basis->inputs.press->units);
        basisThere = true;
    }
    m_choice->tryButton()->setEnabled(basisThere);
    showEarlier();
    showTop();
}

void StartPage::begin()
{
    const auto sources = m_choice->sources();
    if (!sources || !whyNot().isEmpty()) return;
    m_session->begin({*sources, m_choice->question(), m_choice->parentRun()});
}

/// The trial gets copies: nothing that is tried can reach what a run begins from.
void StartPage::beginTrial()
{
    const auto sources = m_choice->sources();
    if (!sources) return;
    const run::BasisQuestion question = m_choice->question();
    const auto basis = run::basisFor(*sources, question);
    if (!basis) return;
    TrialPanel::Substrates substrates;
    for (const logbook::Definition& d : m_session->definitions("substrate")) {
        Findings notes;
        if (auto read = inputs::readSubstrates(d.source.text, d.source.id, notes))
            for (inputs::Substrate& one : *read)
                if (one.id == d.source.id)
                    substrates.push_back(std::make_shared<const inputs::Substrate>(std::move(one)));
    }
    m_stack->setCurrentWidget(m_trial);
    m_trial->begin({basis->inputs, question.presentDiameter, question.webInPress}, substrates);
    showTop();
}

/// The tag of a roll was scanned here, or its label is to be typed.
void StartPage::askRoll(const QString& scanned)
{
    // Whoever comes with a printed sheet in hand wants its run.
    if (records::isSheetCode(scanned.toStdString())) return emit sheetScanned(scanned);
    const auto sources = m_choice->sources();
    const auto basis = sources ? run::basisFor(*sources, m_choice->question()) : Result<run::Basis>(Finding{});
    const inputs::Inputs around = basis ? basis->inputs : inputs::Inputs();
    m_rollForm->ask(tr("The roll that is to run"), {}, m_choice->rollsAtHand(),
                    around.press ? around.press->units : UnitSystem::Metric);
    m_rollForm->compareWith(around, inputs::dayOf(SystemClock().now()));
    m_stack->setCurrentWidget(m_rollForm);
    m_rollForm->first()->setFocus();
    if (!scanned.isEmpty()) m_rollForm->scan(scanned);
}

void StartPage::useRoll(const std::string& toml)
{
    Findings notes;
    const auto roll = inputs::readRoll(toml, "roll", notes);
    if (!roll || stops(notes)) return m_rollForm->refuse(roll ? notes.front() : roll.error());
    m_stack->setCurrentIndex(0);
    m_choice->use({roll->id, toml, {}});
    m_choice->first()->setFocus();
}

void StartPage::endTrial()
{
    if (!onTrial()) return;
    m_stack->setCurrentIndex(0);
    m_choice->tryButton()->setFocus();
    showTop();
}

void StartPage::showEarlier()
{
    m_earlierRun.reset();
    const auto sources = m_choice->sources();
    if (sources && m_session->reader() != nullptr)
        if (auto run =
                records::lastRunLike(*m_session->reader(), sources->press.id, sources->job.id, sources->substrate.id))
            m_earlierRun = *std::move(run);
    m_earlier->setVisible(m_earlierRun.has_value());
    if (!m_earlierRun) return;
    m_earlier->setText(tr("This job ran here: %1. See what was set").arg(ranHereText(*m_earlierRun)));
    m_earlier->setAccessibleName(m_earlier->text());
}

void StartPage::openEarlier()
{
    const auto sources = m_choice->sources();
    if (!m_earlierRun || !sources || m_session->reader() == nullptr) return;
    // Without a basis the values of then stand alone.
    const auto basis = run::basisFor(*sources, m_choice->question());
    const UnitSystem units = basis ? basis->inputs.press->units : UnitSystem::Metric;
    const auto then = records::whatWasSet(*m_session->reader(), m_earlierRun->run,
                                          basis ? basis->targets : targets::Targets(), units);
    if (!then) return emit m_session->refused(then.error());
    m_return->show(*m_earlierRun, *then, units);
    m_stack->setCurrentWidget(m_return);
    m_return->first()->setFocus();
}

void StartPage::closeEarlier()
{
    if (m_stack->currentWidget() != m_return) return;
    m_stack->setCurrentIndex(0);
    m_earlier->setFocus();
}

}  // namespace taut::app
