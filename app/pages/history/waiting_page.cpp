// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/waiting_page.h"

#include <algorithm>
#include <utility>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/pages/history/record_acts.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/history/names.h"
#include "core/records/sheet.h"

namespace taut::app {

namespace {

const QString kRun = QStringLiteral("run:"), kPress = QStringLiteral("press:"), kPerson = QStringLiteral("person:"),
              kConstant = QStringLiteral("constant:"), kCheck = QStringLiteral("check:");

}  // namespace

WaitingPage::WaitingPage(Session* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_asker(session, this)
{
    m_list = new RowList(this);
    m_list->setObjectName(QStringLiteral("waiting"));
    m_list->setAccessibleName(tr("What waits"));
    m_accept = worded(tr("Accept those looked through"), "main", this);
    m_accept->setObjectName(QStringLiteral("acceptOpened"));
    m_said = wrapped(QString(), "soft", this);
    m_said->setObjectName(QStringLiteral("waitingSaid"));
    auto* left = new QVBoxLayout;
    left->addWidget(m_list, 1);
    left->addWidget(m_said);
    left->addWidget(m_accept);

    m_paper = new ReportPane(tr("The sheet of the chosen run"), this);
    m_shop = worded(tr("To the shop"), "quiet", m_paper);
    m_shop->setObjectName(QStringLiteral("toShop"));
    m_take = worded(tr("Look at the new edition"), "", m_paper);
    m_take->setObjectName(QStringLiteral("newEdition"));
    m_through = worded(tr("I have looked it through"), "", m_paper);
    m_through->setObjectName(QStringLiteral("lookedThrough"));
    m_through->setCheckable(true);
    for (QPushButton* button : {m_shop, m_take, m_through}) m_paper->addButton(button);
    m_acts = new RecordActs(session, this);
    auto* paperBox = new QWidget(this);
    auto* paper = new QVBoxLayout(paperBox);
    paper->setContentsMargins(0, 0, 0, 0);
    paper->addWidget(m_paper, 1);
    paper->addWidget(m_acts);
    auto* askBox = new QWidget(this);
    auto* ask = new QVBoxLayout(askBox);
    ask->setContentsMargins(20, 10, 20, 10);
    m_ask = new AskPanel(askBox);
    ask->addWidget(m_ask);
    m_right = new QStackedWidget(this);
    for (QWidget* page : {paperBox, m_acts->panel(), askBox}) m_right->addWidget(page);

    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addLayout(left, 2);
    all->addSpacing(sizes().gap);
    all->addWidget(m_right, 3);

    connect(m_list, &QListWidget::currentItemChanged, this, &WaitingPage::openCurrent);
    connect(m_acts, &RecordActs::asking, this, [this](bool asks) { m_right->setCurrentIndex(asks ? 1 : 0); });
    connect(m_accept, &QPushButton::clicked, this, &WaitingPage::askAccept);
    connect(m_ask, &AskPanel::cancelled, this, [this] {
        m_right->setCurrentIndex(0);
        m_accept->setFocus();
    });
    connect(m_ask, &AskPanel::given, this, [this](const QStringList& values, const QString&, const QString& secret) {
        m_session->acceptAll(acceptable(), values.value(0).toStdString(), m_opened, secret);
    });
    connect(m_shop, &QPushButton::clicked, this, &WaitingPage::shopWanted);
    connect(m_through, &QPushButton::clicked, this, &WaitingPage::lookedThrough);
    connect(m_take, &QPushButton::clicked, this, [this] {
        for (const Constant& one : m_constants)
            if (m_list->chosen() == kConstant + QString::fromStdString(one.refit.press + '/' + one.refit.zone)) {
                const auto text = history::refitted(one.press.text, one.refit);
                if (!text) return m_paper->say(words(text.error(), one.units));
                emit editionWanted(one.press.text, *text, one.refit.zone);
            }
    });
    connect(session, &Session::busyChanged, this, [this](bool busy) {
        m_ask->setBusy(busy);
        settle();
    });
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (m_ask->isVisible()) m_ask->refuse(finding, UnitSystem::Metric);
    });
    connect(session, &Session::actorChanged, this, [this] {
        m_opened.forget();
        m_right->setCurrentIndex(0);
        settle();
    });
    connect(session, &Session::recordChanged, this, [this] {
        if (m_right->currentIndex() == 2) m_right->setCurrentIndex(0);
        if (isVisible()) refill();
    });
    settle();
}

void WaitingPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refill();
    askRecord();
}

void WaitingPage::add(const QString& id, const QString& text, const QString& value, const QString& more, bool done)
{
    m_list->add({id, text, value, more,
                 id.isEmpty() ? MarkShape::None
                 : done       ? MarkShape::Tick
                              : MarkShape::DashedBox});
}

void WaitingPage::addRuns(const QString& head, const std::vector<records::RunRow>& runs)
{
    if (runs.empty()) return;
    add({}, head, {}, {}, false);
    for (const records::RunRow& row : runs) {
        const bool seen = m_opened.has(row.run);
        add(kRun + QString::fromStdString(row.run), tr("%1 \u00B7 Roll %2").arg(dataText(row.job), dataText(row.roll)),
            seen                  ? tr("looked through")
            : row.deviations == 1 ? tr("1 deviation")
            : row.deviations > 1  ? tr("%1 deviations").arg(row.deviations)
                                  : QString(),
            QStringList{momentHereText(row.begunMs), dataText(row.operatorName), dataText(row.run)}.join(
                QStringLiteral(" \u00B7 ")),
            seen);
    }
}

void WaitingPage::addChecks()
{
    const Instant now = SystemClock().now();
    const auto overdue = history::overdueOf(m_checks, now.utcMs);
    if (overdue.empty()) return;
    add({}, tr("Overdue checks"), {}, {}, false);
    for (const history::CheckStanding& one : overdue) {
        const auto due = one.dueMs();
        add(kCheck + QString::fromStdString(one.press + '/' + one.check.id),
            tr("%1 \u00B7 %2").arg(dataText(one.pressName), dataText(one.check.name)),
            due ? tr("since %1").arg(dataText(history::dayText(*due, now.offsetMinutes))) : tr("not seen done"),
            due ? tr("last in the run %1").arg(dataText(one.run)) : QString(), false);
    }
}

void WaitingPage::addConstants()
{
    if (m_constants.empty()) return;
    add({}, tr("Constants that drift"), {}, {}, false);
    for (const Constant& one : m_constants)
        add(kConstant + QString::fromStdString(one.refit.press + '/' + one.refit.zone),
            tr("%1 \u00B7 %2").arg(dataText(one.refit.pressName), dataText(one.refit.zoneName)),
            quantityText(one.refit.now.torquePerSetting, one.units),
            tr("by %1 signed runs").arg(one.refit.pulls.size()), false);
}

void WaitingPage::refill()
{
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr) return m_paper->showNothing(tr("The logbook is not open in this window."));
    auto waiting = history::waitingOf(*reader);
    if (!waiting) return m_paper->showNothing(words(waiting.error(), UnitSystem::Metric));
    m_waiting = *std::move(waiting);
    const QString before = m_list->chosen();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        if (!m_waiting.withdrawn.empty()) add({}, tr("Presses out of use"), {}, {}, false);
        for (const records::Withdrawal& one : m_waiting.withdrawn)
            add(kPress + QString::fromStdString(one.press), dataText(one.press),
                tr("since %1").arg(momentHereText(one.atMs)),
                tr("%1: %2").arg(dataText(one.byName), dataText(one.reason)), false);
        addChecks();
        addConstants();
        std::vector<const logbook::DoorState*> shut;
        for (const logbook::DoorState& door : m_session->doors())
            if (door.door.failures > 0) shut.push_back(&door);
        addRuns(tr("To be reviewed: something outside was accepted"), m_waiting.deviations);
        if (!m_waiting.sentBack.empty()) add({}, tr("Sent back, not corrected yet"), {}, {}, false);
        for (const history::SentBack& one : m_waiting.sentBack)
            add(kRun + QString::fromStdString(one.run.run), dataText(one.note), dataText(one.run.operatorName),
                QStringList{momentHereText(one.atMs), dataText(one.byName), dataText(one.run.run)}.join(
                    QStringLiteral(" \u00B7 ")),
                false);
        if (!shut.empty()) add({}, tr("Wrong tries at the door"), {}, {}, false);
        for (const logbook::DoorState* door : shut) {
            QString name = QString::fromStdString(door->person.value);
            for (const people::PersonRecord& person : m_session->people())
                if (person.id == door->person) name = dataText(person.name);
            add(kPerson + QString::fromStdString(door->person.value), name,
                tr("wrong tries: %1").arg(door->door.failures), {}, false);
        }
        addRuns(tr("To be reviewed"), m_waiting.others);
        if (!m_list->choose(before)) m_list->choose(m_list->first());
    }
    openCurrent();
}

void WaitingPage::askRecord()
{
    m_asker.ask([this](const records::Reader& reader, const Asker::GoOn& goOn) -> std::function<void()> {
        const auto presses = reader.definitions("press");
        if (!presses) return {};
        std::vector<Constant> drifted;
        for (const run::Source& source : *presses) {
            Findings notes;
            const auto press = inputs::readPress(source.text, source.id, notes);
            if (!press || !goOn()) continue;
            for (const std::string& zone : history::refittable(*press)) {
                auto refit = history::refitOf(reader, *press, zone, 40);
                if (refit && refit->drifted) drifted.push_back({*std::move(refit), source, press->units});
            }
        }
        return [this, drifted = std::move(drifted), checks = history::checksOf(reader, goOn)] {
            m_constants = drifted;
            if (checks) m_checks = *checks;
            refill();
            if (!checks) m_paper->say(words(checks.error(), UnitSystem::Metric));
        };
    });
}

void WaitingPage::openCurrent()
{
    const QString id = m_list->chosen();
    m_shop->setVisible(id.startsWith(kPress) || id.startsWith(kPerson));
    m_take->setVisible(id.startsWith(kConstant));
    m_through->setVisible(false);
    m_acts->setVisible(id.startsWith(kRun));
    if (id.startsWith(kRun)) {
        openRun(id.mid(kRun.size()).toStdString());
    } else if (id.startsWith(kCheck)) {
        const Instant now = SystemClock().now();
        m_paper->show(history::checksReport(m_checks, now.utcMs, now.offsetMinutes), tr("checks"));
    } else if (id.startsWith(kConstant)) {
        for (const Constant& one : m_constants)
            if (id == kConstant + QString::fromStdString(one.refit.press + '/' + one.refit.zone))
                m_paper->show(history::refitReport(one.refit, one.units, SystemClock().now().offsetMinutes),
                              QString::fromStdString(one.refit.press + '-' + one.refit.zone));
    } else {
        m_acts->showRun({});
        m_paper->showNothing(id.isEmpty() ? tr("Nothing waits.") : tr("This is looked after in the shop."));
    }
    settle();
}

void WaitingPage::openRun(const std::string& run)
{
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr) return;
    auto report = records::sheetOf(*reader, run);
    m_acts->showRun(QString::fromStdString(run));
    if (!report) return m_paper->showNothing(words(report.error(), UnitSystem::Metric));
    m_paper->show(*std::move(report), QString::fromStdString(run));
    const auto waits = [&](const auto& rows) {
        return std::any_of(rows.begin(), rows.end(), [&](const records::RunRow& row) { return row.run == run; });
    };
    m_through->setVisible(waits(m_waiting.deviations) || waits(m_waiting.others));
    m_through->setChecked(m_opened.has(run));
}

/// To be accepted with the others, or not after all: who chose a run has not looked through its sheet yet.
void WaitingPage::lookedThrough(bool through)
{
    const records::Reader* reader = m_session->reader();
    const std::string run = m_list->chosen().mid(kRun.size()).toStdString();
    if (reader == nullptr) return;
    if (!through) {
        m_opened.leaveOut(run);
    } else if (const auto opened = m_opened.open(*reader, run); !opened) {
        m_through->setChecked(false);
        return m_paper->say(words(opened.error(), UnitSystem::Metric));
    }
    refill();
    m_list->setFocus();
}

std::vector<std::string> WaitingPage::acceptable() const
{
    std::vector<std::string> runs;
    for (const auto* list : {&m_waiting.deviations, &m_waiting.others})
        for (const records::RunRow& row : *list)
            if (m_opened.has(row.run)) runs.push_back(row.run);
    return runs;
}

void WaitingPage::settle()
{
    const std::size_t many = acceptable().size();
    const bool may = m_session->actor() && people::may(m_session->actor()->role(), people::Act::Review);
    m_accept->setEnabled(many > 0 && may && !m_session->busy());
    m_accept->setText(many > 1 ? tr("Accept the %1 looked through").arg(many) : tr("Accept the one looked through"));
    m_accept->setVisible(many > 0);
    m_said->setText(
        m_waiting.toReview > 0
            ? tr("To be reviewed: %1. Each is looked through before it is accepted.").arg(m_waiting.toReview)
            : QString());
}

void WaitingPage::askAccept()
{
    const std::vector<std::string> runs = acceptable();
    if (runs.empty()) return;
    AskPanel::Question q;
    q.title = tr("Accept %1 runs").arg(runs.size());
    QStringList named;
    for (const std::string& run : runs) named << dataText(run);
    q.text = tr("Your name, the time and your signature stand beside each of them for good: %1")
                 .arg(named.join(QStringLiteral(", ")));
    q.fields = {AskPanel::prose(tr("Remark"), false)};
    q.secret = AskPanel::Question::Secret::Passphrase;
    q.accept = tr("Sign the reviews");
    m_ask->ask(q);
    m_right->setCurrentIndex(2);
    m_ask->first()->setFocus();
}

}  // namespace taut::app
