// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/training_page.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/practice/attempt_told.h"
#include "app/text/words.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// What stands for the words that nobody has typed yet, when it is asked whether they could be said at all.
constexpr const char* kWords = "words";

bool isFollowUp(const practice::TrainingRecord& record, const practice::KeptAttempt& kept)
{
    const auto open = practice::followUpsIn(record);
    return std::any_of(open.begin(), open.end(), [&](const auto* one) { return one->seq == kept.seq; });
}

}  // namespace

TrainingPage::TrainingPage(Session* shop, PracticeSession* practice, QWidget* paper, QWidget* parent)
    : QWidget(parent),
      m_shop(shop),
      m_practice(practice),
      m_desk(new TrainingDesk(practice->runs()->options().logbook, this)),
      m_training(std::make_shared<const Training>()),
      m_paper(paper)
{
    auto* halves = new QHBoxLayout(this);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->addWidget(new ScrollRoom(buildLeft(), this), 2);
    halves->addSpacing(sizes().gap);
    m_right = new QStackedWidget(this);
    m_paper->setParent(m_right);
    m_ask = new AskPanel(m_right);
    m_right->addWidget(m_paper);
    m_right->addWidget(m_ask);
    halves->addWidget(m_right, 3);
    connect(m_desk, &TrainingDesk::told, this, &TrainingPage::show);
    connect(m_people, &QListWidget::currentItemChanged, this, [this] {
        back();
        refresh();
    });
    connect(m_attempts, &QListWidget::currentItemChanged, this, [this] {
        back();
        settle();
    });
    connect(m_attempts, &QListWidget::itemActivated, this, &TrainingPage::ask);
    connect(m_sign, &QPushButton::clicked, this, &TrainingPage::ask);
    connect(m_leave, &QPushButton::clicked, this, &TrainingPage::left);
    connect(m_ask, &AskPanel::cancelled, this, &TrainingPage::back);
    connect(m_ask, &AskPanel::given, this,
            [this](const QStringList& values, const QString&, const QString& secret) { give(values, secret); });
    connect(shop, &Session::actorChanged, this, &TrainingPage::personChanged);
    connect(practice->runs(), &Session::observed, this, [this] {
        back();
        refresh();
    });
    for (Session* one : {shop, practice->runs()}) {
        connect(one, &Session::busyChanged, this, &TrainingPage::busyChanged);
        connect(one, &Session::refused, this, [this](const Finding& finding) {
            if (m_ask->isVisible()) m_ask->refuse(finding, UnitSystem::Metric);
        });
    }
}

QWidget* TrainingPage::buildLeft()
{
    auto* box = new QWidget(this);
    auto* left = new QVBoxLayout(box);
    left->setContentsMargins(0, 8, 0, 0);
    m_leave = worded(tr("&Back to the scenarios"), "", box);
    m_leave->setObjectName(QStringLiteral("leaveTraining"));
    left->addWidget(m_leave, 0, Qt::AlignLeft);
    left->addWidget(wrapped(tr("Training record"), "head", box));
    m_people = new RowList(box);
    m_people->setObjectName(QStringLiteral("trainees"));
    m_people->setAccessibleName(tr("Who practised"));
    m_people->setMinimumHeight(2 * sizes().row);
    left->addWidget(m_people, 1);
    left->addWidget(wrapped(tr("Attempts: what still has to be taught again comes first"), "soft", box));
    m_attempts = new RowList(box);
    m_attempts->setObjectName(QStringLiteral("attempts"));
    m_attempts->setAccessibleName(tr("Attempts"));
    m_attempts->setMinimumHeight(2 * sizes().row);
    left->addWidget(m_attempts, 2);
    m_whyNot = wrapped({}, "soft", box);
    m_whyNot->setObjectName(QStringLiteral("whyNotObserved"));
    left->addWidget(m_whyNot);
    m_see = worded(tr("See the attempt"), "", box);
    m_see->setObjectName(QStringLiteral("seeAttempt"));
    connect(m_see, &QPushButton::clicked, this, [this] {
        if (const practice::KeptAttempt* kept = chosen()) emit attemptWanted(kept->attempt);
    });
    m_sign = worded(tr("Look at it and si&gn"), "main", box);
    m_sign->setObjectName(QStringLiteral("observe"));
    left->addWidget(m_see);
    left->addWidget(m_sign);
    return box;
}

QWidget* TrainingPage::first() const { return m_people; }

bool TrainingPage::seesEverybody() const
{
    return m_shop->actor() && people::may(m_shop->actor()->role(), people::Act::Observe);
}

void TrainingPage::refresh()
{
    if (!m_shop->actor()) return show(std::make_shared<const Training>());
    m_desk->ask(seesEverybody() ? m_people->chosen() : QString::fromStdString(m_shop->actor()->id().value),
                seesEverybody() ? QString() : QString::fromStdString(m_shop->actor()->name()));
}

void TrainingPage::show(const std::shared_ptr<const Training>& training)
{
    const bool signedIn = m_shop->actor().has_value();
    m_training = signedIn ? training : std::make_shared<const Training>();
    fillPeople();
    // Whoever comes first is looked at first.
    if (m_training->people.empty() || m_training->record || m_training->refusal || !seesEverybody()) {
        fillAttempts();
    } else if (!m_people->chosen().isEmpty()) {
        return refresh();
    }
    if (m_training->record)
        emit reportMade(practice::trainingReport(*m_training->record),
                        QStringLiteral("training-%1").arg(QString::fromStdString(m_training->record->who.id)));
    else if (m_training->refusal)
        emit nothingToShow(words(*m_training->refusal, UnitSystem::Metric));
    else
        emit nothingToShow(signedIn ? tr("Nobody whose record you may see has finished a lesson at this PC.")
                                    : tr("Sign in first: a record is shown to whose it is, and to trainers."));
    settle();
}

void TrainingPage::fillPeople()
{
    const QSignalBlocker quiet(m_people);
    const QString before = m_people->chosen();
    m_people->clear();
    for (const practice::Who& one : m_training->people) {
        const bool own = m_shop->actor() && m_shop->actor()->id().value == one.id;
        if (own || seesEverybody())
            m_people->add({QString::fromStdString(one.id), dataText(one.name), {}, dataText(one.id), MarkShape::None});
    }
    if (before.isEmpty() || !m_people->choose(before)) m_people->choose(m_people->first());
}

void TrainingPage::fillAttempts()
{
    const QSignalBlocker quiet(m_attempts);
    const QString before = m_attempts->chosen();
    m_attempts->clear();
    if (!m_training->record) return;
    const practice::TrainingRecord& record = *m_training->record;
    std::vector<const practice::KeptAttempt*> order;
    for (const practice::KeptAttempt& kept : record.attempts) order.push_back(&kept);
    std::reverse(order.begin(), order.end());
    std::stable_partition(order.begin(), order.end(), [&](const auto* one) { return isFollowUp(record, *one); });
    for (const practice::KeptAttempt* kept : order) {
        const practice::Attempt& one = kept->attempt;
        QString more = momentText(one.begun.utcMs, one.begun.offsetMinutes);
        if (isFollowUp(record, *kept))
            more = tr("%1 \u00B7 to be taught again").arg(more);
        else if (!kept->observations.empty())
            more = tr("%1 \u00B7 %2 signed").arg(more, dataText(kept->observations.back().by.name));
        more = tr("%1 \u00B7 %2").arg(more, happenedText(one));
        m_attempts->add({QString::number(kept->seq), lessonText(one),
                         one.mode == practice::Mode::Test ? resultText(one.score) : tr("practised"), more,
                         one.score.passed() ? MarkShape::Tick : MarkShape::DashedBox});
    }
    if (before.isEmpty() || !m_attempts->choose(before)) m_attempts->choose(m_attempts->first());
}

const practice::KeptAttempt* TrainingPage::chosen() const
{
    if (!m_training->record) return nullptr;
    const std::uint64_t seq = m_attempts->chosen().toULongLong();
    for (const practice::KeptAttempt& kept : m_training->record->attempts)
        if (kept.seq == seq) return &kept;
    return nullptr;
}

std::optional<Finding> TrainingPage::whyNot(const practice::KeptAttempt& kept) const
{
    for (const people::PersonRecord& person : m_shop->people())
        if (m_shop->actor() && person.id == m_shop->actor()->id())
            return seal::whyNot(
                {kept.attempt.id, kept.link, kept.attempt.who.id, kept.attempt.who.name, kept.attempt.score.passed()},
                {kWords, kWords}, person);
    return refuse("session.not_signed_in", {}, "Nobody is signed in.", "Choose your name and type your PIN.");
}

/// What cannot be said is not asked for, and why stands beside it.
void TrainingPage::settle()
{
    const practice::KeptAttempt* kept = chosen();
    const auto why = kept == nullptr ? std::nullopt : whyNot(*kept);
    m_see->setEnabled(kept != nullptr);
    m_sign->setEnabled(kept != nullptr && !why && !m_shop->busy() && !m_practice->runs()->busy());
    m_whyNot->setText(why ? words(*why, UnitSystem::Metric) : QString());
    m_whyNot->setVisible(why.has_value());
}

void TrainingPage::ask()
{
    const practice::KeptAttempt* kept = chosen();
    if (kept == nullptr || !m_sign->isEnabled()) return;
    const bool passed = kept->attempt.score.passed();
    AskPanel::Question q;
    q.title = tr("An attempt of %1").arg(dataText(kept->attempt.who.name));
    q.text = attemptText(*kept, *m_shop);
    q.fields = {AskPanel::prose(tr("What you saw")),
                AskPanel::prose(tr("What you teach again, and how"), !passed,
                                passed ? QString() : tr("must be there: it was not passed"))};
    q.secret = AskPanel::Question::Secret::Passphrase;
    q.accept = tr("Sign for it");
    m_about = kept->seq;
    m_asked = m_shop->actor()->id();
    m_ask->ask(q);
    m_right->setCurrentWidget(m_ask);
    m_ask->first()->setFocus();
}

void TrainingPage::give(const QStringList& values, const QString& secret)
{
    const seal::Observation said{values[0].toStdString(), values[1].toStdString()};
    m_shop->lendKey(secret, [runs = m_practice->runs(), about = m_about, said](const auto& key) {
        runs->observe(about, said, key);
    });
}

/// Half-typed words wait for the same person; a passphrase does not.
void TrainingPage::personChanged()
{
    const auto& actor = m_shop->actor();
    m_ask->forgetPin();
    if (m_about != 0 && actor && actor->id() != m_asked) back();
    m_right->setCurrentWidget(m_about != 0 && actor ? static_cast<QWidget*>(m_ask) : m_paper);
    if (isVisible()) refresh();
}

void TrainingPage::busyChanged()
{
    m_ask->setBusy(m_shop->busy() || m_practice->runs()->busy());
    settle();
}

void TrainingPage::back()
{
    const bool asked = m_ask->isVisible();
    m_about = 0;
    m_right->setCurrentWidget(m_paper);
    if (asked) m_attempts->setFocus();
}

}  // namespace taut::app
