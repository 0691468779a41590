// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/run_page.h"

#include <memory>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/pages/run/end_cards.h"
#include "app/pages/run/step_list.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/roll_form.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"
#include "core/run/decide.h"

namespace taut::app {

namespace {

constexpr RunAct kActs[] = {RunAct::Note,       RunAct::NotApplicable, RunAct::Correct,  RunAct::Diameter,
                            RunAct::ChangeRoll, RunAct::Repeat,        RunAct::HandOver, RunAct::Interrupt,
                            RunAct::Withdraw,   RunAct::Review,        RunAct::Abandon,  RunAct::Leave};
constexpr int kActsInRow = 6;

}  // namespace

RunPage::RunPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    build();
    wire();
    showRun();
}

void RunPage::build()
{
    m_head = wrapped(QString(), "strong", this);
    m_line = new TautLineWidget(this);
    m_list = new StepList(this);
    m_card = new StepCard(this);
    m_ask = new AskPanel(this);
    m_roll = new RollForm(this);
    m_safe = new MakeSafeCard(this);
    m_review = new ReviewCard(this);
    m_middle = new QStackedWidget(this);
    for (QWidget* card : std::initializer_list<QWidget*>{m_card, m_ask, m_roll, m_safe, m_review})
        m_middle->addWidget(card);
    // A card scrolls inside itself: the tallest of them must not push the page off a small screen.
    m_middle->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    // Rows are as high as their words need at this width, so the width stays.
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_press = new ElevationWidget(this);
    m_why = new WhyPanel(this);
    auto* reasons = new QScrollArea(this);
    reasons->setWidgetResizable(true);
    reasons->setFrameShape(QFrame::NoFrame);
    reasons->setWidget(m_why);

    // The sides keep their width; the step has what is left.
    constexpr int kListWidth = 270;
    constexpr int kReasonsWidth = 340;
    m_list->setFixedWidth(kListWidth);
    auto* side = new QWidget(this);
    side->setFixedWidth(kReasonsWidth);
    auto* right = new QVBoxLayout(side);
    right->setContentsMargins(0, 0, 0, 0);
    right->addWidget(m_press);
    right->addWidget(reasons, 1);
    auto* middle = new QHBoxLayout;
    middle->addWidget(m_list);
    middle->addWidget(m_middle, 1);
    middle->addWidget(side);
    auto* acts = new QGridLayout;
    acts->setSpacing(2);
    int place = 0;
    for (const RunAct act : kActs) {
        QPushButton* button = worded(actName(act), "quiet", this);
        button->setFixedHeight(sizes().row);
        acts->addWidget(button, place / kActsInRow, place % kActsInRow);
        ++place;
        connect(button, &QPushButton::clicked, this, [this, act] { startAct(act); });
        m_acts[act] = button;
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_head);
    column->addWidget(m_line);
    column->addLayout(middle, 1);
    column->addWidget(ruledLine(this));
    column->addLayout(acts);
}

void RunPage::wire()
{
    connect(m_session, &Session::runChanged, this, &RunPage::showRun);
    connect(m_session, &Session::refused, this, &RunPage::showRefusal);
    connect(m_session, &Session::busyChanged, this, [this](bool busy) {
        m_card->setBusy(busy);
        m_ask->setBusy(busy);
        m_roll->setBusy(busy);
        m_review->setBusy(busy);
    });
    connect(m_list, &StepList::stepChosen, this, [this](const QString& id) { showStep({id.toStdString()}); });
    connect(m_line, &TautLineWidget::stageChosen, this, [this](int stage) {
        if (m_session->run() == nullptr) return;
        if (const procedure::Step* first = firstOfStage(*m_session->run(), static_cast<std::size_t>(stage)))
            showStep(first->id);
    });
    connect(m_card, &StepCard::command, m_session, &Session::perform);
    connect(m_card, &StepCard::commandWith, m_session,
            [this](const QString& person, const QString& pin, const WithSecond& make) {
                m_session->performWith(person, pin, make);
            });
    connect(m_ask, &AskPanel::given, this, &RunPage::giveAct);
    for (auto back : {&AskPanel::cancelled}) connect(m_ask, back, this, [this] { m_middle->setCurrentWidget(m_card); });
    connect(m_roll, &RollForm::cancelled, this, [this] { m_middle->setCurrentWidget(m_card); });
    connect(m_roll, &RollForm::given, this, [this](const std::string& toml) {
        m_session->perform(run::ChangeRoll{toml, std::nullopt});
    });
    connect(m_safe, &MakeSafeCard::said, this, [this](const std::vector<std::string>& stated) {
        m_session->perform(run::Resume{stated, false});
    });
    connect(m_review, &ReviewCard::back, this, [this] { m_middle->setCurrentWidget(m_card); });
    connect(m_review, &ReviewCard::sign, this, [this](const QString& remarks, const QString& pin) {
        if (!m_session->actor()) return;
        // Who signs shows once more who they are; only then is the run ended.
        auto shown = std::make_shared<QMetaObject::Connection>();
        auto refused = std::make_shared<QMetaObject::Connection>();
        *shown = connect(m_session, &Session::actorChanged, this, [this, remarks, shown, refused] {
            disconnect(*shown);
            disconnect(*refused);
            m_session->finish(run::SignOff{remarks.toStdString()});
        });
        *refused = connect(m_session, &Session::refused, this, [shown, refused] {
            disconnect(*shown);
            disconnect(*refused);
        });
        m_session->signIn(QString::fromStdString(m_session->actor()->id().value), pin);
    });
}

std::vector<PersonChoice> RunPage::people() const
{
    std::vector<PersonChoice> list;
    if (m_session->reader() == nullptr) return list;
    if (const auto all = m_session->reader()->people())
        for (const people::PersonRecord& p : *all)
            if (p.active) list.push_back({QString::fromStdString(p.id.value), QString::fromStdString(p.name), p.role});
    return list;
}

const procedure::Step* RunPage::step() const
{
    return m_session->run() ? m_session->run()->plan().find(m_step) : nullptr;
}

void RunPage::showRun()
{
    const run::Run* run = m_session->run();
    if (run == nullptr) {
        m_step = {};
        m_events = 0;
        m_files.reset();
        return;
    }
    if (!m_files || !m_files->isOf(*run)) m_files = filesOf(*run);
    m_head->setText(headingOf(*run, *m_files).join(QStringLiteral("   ")));
    const bool news = run->events().size() != m_events;
    m_events = run->events().size();
    if (run->phase() == run::Phase::Interrupted) {
        m_safe->ask(*run);
        m_middle->setCurrentWidget(m_safe);
    } else if (news) {
        m_middle->setCurrentWidget(m_card);
    }
    const auto next = run->next();
    if (next && (news || run->plan().find(m_step) == nullptr)) m_step = *next;
    if (run->plan().find(m_step) == nullptr) m_step = run->plan().steps.back().id;
    showStep(m_step);
    if (!next && run->phase() == run::Phase::Running) {
        m_review->show(*run, unitsOf(*run));
        m_middle->setCurrentWidget(m_review);
    }
}

void RunPage::showStep(const procedure::StepId& id)
{
    const run::Run* run = m_session->run();
    const procedure::Step* shown = run ? run->plan().find(id) : nullptr;
    if (shown == nullptr) return;
    m_step = id;
    m_line->setSpans(tautSpansOf(*run, run->plan().stageOf(*shown)));
    m_list->show(*run, id);
    m_card->show(stepContentOf(*run, *shown, people()));
    m_card->setBusy(m_session->busy());
    m_press->setView(elevationOfRun(*run, *m_files, shown->at));
    const targets::Target* target = targetOfStep(*run, *shown);
    m_why->show(*shown, target ? std::optional(*target) : std::nullopt, unitsOf(*run));
    settleActs();
    m_card->focusAnswer();
}

void RunPage::settleActs()
{
    for (const auto& [act, button] : m_acts) button->setEnabled(actOffered(act, *m_session->run(), step()));
}

void RunPage::showRefusal(const Finding& finding)
{
    if (m_session->run() == nullptr || !isVisible()) return;
    const UnitSystem units = unitsOf(*m_session->run());
    QWidget* card = m_middle->currentWidget();
    if (card == m_ask)
        m_ask->refuse(finding, units);
    else if (card == m_roll)
        m_roll->refuse(finding);
    else if (card == m_safe)
        m_safe->refuse(finding, units);
    else if (card == m_review)
        m_review->refuse(finding, units);
    else
        m_card->refuse(finding);
}

void RunPage::startAct(RunAct act)
{
    const run::Run* run = m_session->run();
    if (run == nullptr) return;
    m_act = act;
    switch (act) {
    case RunAct::Leave: m_session->leaveRun(); return;
    case RunAct::Review:
        m_review->show(*run, unitsOf(*run));
        m_middle->setCurrentWidget(m_review);
        return;
    case RunAct::ChangeRoll: {
        std::vector<RollAtHand> rolls;
        for (const InputFile& file : shopFiles(m_session->options().resources, "roll"))
            rolls.push_back({QString::fromStdString(file.id), file.text});
        m_roll->ask(tr("Another roll"),
                    tr("Which roll lies at the unwind now? What was answered for the old one is asked again."),
                    std::move(rolls), unitsOf(*run));
        m_middle->setCurrentWidget(m_roll);
        return;
    }
    case RunAct::Note:
    case RunAct::NotApplicable:
    case RunAct::Correct:
    case RunAct::Diameter:
    case RunAct::Withdraw:
    case RunAct::Repeat:
    case RunAct::HandOver:
    case RunAct::Interrupt:
    case RunAct::Abandon: break;
    }
    m_ask->ask(questionFor(act, *run, step(), people()));
    m_middle->setCurrentWidget(m_ask);
    if (QWidget* first = m_ask->first()) first->setFocus();
}

void RunPage::giveAct(const QStringList& values, const QString& person, const QString& pin)
{
    const run::Run* run = m_session->run();
    if (run == nullptr) return;
    auto request = requestFor(m_act, *run, step(), values);
    if (!request) {
        m_ask->refuse(request.error(), unitsOf(*run));
        return;
    }
    if (request->withdrawFor)
        m_session->withdraw(QString::fromStdString(run->sources().press.id),
                            QString::fromStdString(*request->withdrawFor));
    else if (request->finish)
        m_session->finish(*request->finish);
    else if (request->second)
        m_session->performWith(person, pin, request->second);
    else if (request->command)
        m_session->perform(*request->command);
}

void RunPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        m_middle->setCurrentWidget(m_card);
        return;
    }
    if (m_middle->currentWidget() == m_card && m_card->takeKey(event)) return;
    QWidget::keyPressEvent(event);
}

}  // namespace taut::app
