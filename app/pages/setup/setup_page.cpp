// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/setup_page.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/pages/setup/competence_card.h"
#include "app/pages/setup/definitions_page.h"
#include "app/pages/setup/logbook_card.h"
#include "app/pages/setup/once_card.h"
#include "app/pages/setup/own_secrets.h"
#include "app/pages/setup/standing.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/seams/kept_settings.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

using Question = AskPanel::Question;
using Field = AskPanel::Field;

Field roleField()
{
    Field field{SetupPage::tr("Role"), {}, true, {}, false};
    for (const people::Role role :
         {people::Role::Operator, people::Role::Supervisor, people::Role::Trainer, people::Role::Trainee})
        field.options.emplace_back(QString::fromLatin1(people::roleWord(role)), roleText(role));
    return field;
}

}  // namespace

SetupPage::SetupPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    auto* root = new QVBoxLayout(this);
    root->setContentsMargins(9, 4, 9, 4);
    m_pages = new QStackedWidget(this);
    m_definitions = new DefinitionsPage(session, m_pages);
    auto* people = new QWidget(m_pages);
    m_thisPc = new ThisPcPage(m_pages);
    for (QWidget* w : std::initializer_list<QWidget*>{people, m_definitions, m_thisPc}) m_pages->addWidget(w);
    root->addWidget(m_pages);
    auto* halves = new QHBoxLayout(people);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->addWidget(new ScrollRoom(buildLeft(), people), 2);
    halves->addSpacing(sizes().gap);
    m_right = new QStackedWidget(people);
    m_home = m_person = new ScrollRoom(buildPerson(), m_right);
    m_ask = new AskPanel(m_right);
    m_once = new OnceCard(m_right);
    m_logbook = new LogbookCard(session, m_right);
    m_competence = new CompetenceCard(session, m_right);
    for (QWidget* w : std::initializer_list<QWidget*>{m_person, m_ask, m_once, m_logbook, m_competence})
        m_right->addWidget(w);
    halves->addWidget(m_right, 3);

    const auto toPerson = [this] {
        m_home = m_person;
        say({});
        back();
        settle();
    };
    connect(m_list, &QListWidget::currentItemChanged, this, toPerson);
    connect(m_list, &QListWidget::itemClicked, this, toPerson);
    connect(m_ask, &AskPanel::cancelled, this, &SetupPage::back);
    connect(m_ask, &AskPanel::given, this,
            [this](const QStringList& values, const QString&, const QString& secret) { m_given(values, secret); });
    connect(m_once, &OnceCard::done, this, &SetupPage::back);
    connect(session, &Session::busyChanged, this, [this](bool busy) {
        m_ask->setBusy(busy);
        settle();
    });
    connect(session, &Session::opened, this, &SetupPage::refill);
    connect(session, &Session::shopChanged, this, [this] {
        back();
        refill();
    });
    connect(session, &Session::actorChanged, this, [this] {
        back();
        showSelf();
    });
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (!isVisible() || m_right->currentWidget() != m_ask) return;
        if (const auto field = m_fieldOf.find(finding.code); field != m_fieldOf.end())
            m_ask->refuseField(field->second, finding, UnitSystem::Metric);
        else
            m_ask->refuse(finding, UnitSystem::Metric);
    });
    connect(session, &Session::invited, this, [this](const QString& name, const QString& code) {
        m_once->showCode(name, code);
        m_right->setCurrentWidget(m_once);
        m_once->first()->setFocus();
    });
    connect(session, &Session::badgeMade, this, [this](const QString& code) {
        m_once->showBadge(m_session->actor() ? dataText(m_session->actor()->name()) : QString(), code);
        m_right->setCurrentWidget(m_once);
        m_once->first()->setFocus();
    });
    connect(session, &Session::secretsChanged, this, [this](bool badgeGone) {
        say(badgeGone ? tr("Changed. The badge of before no longer works: make another.") : tr("Changed."));
    });
    connect(m_definitions, &DefinitionsPage::left, this, [this] {
        m_pages->setCurrentIndex(0);
        m_shop->setFocus();
    });
    connect(m_thisPc, &ThisPcPage::left, this, [this] {
        m_pages->setCurrentIndex(0);
        m_pc->setFocus();
    });
    connect(m_logbook, &LogbookCard::asks, this, &SetupPage::ask);
    connect(m_competence, &CompetenceCard::asks, this, &SetupPage::ask);
    connect(m_logbook, &LogbookCard::came, this, [this] {
        m_home = m_logbook;
        back();
    });
    say({});
    showSelf();
}

QWidget* SetupPage::buildLeft()
{
    auto* box = new QWidget(this);
    auto* left = new QVBoxLayout(box);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(wrapped(tr("Who works here"), "head", box));
    m_list = new RowList(box);
    m_list->setAccessibleName(tr("People"));
    m_list->setObjectName(QStringLiteral("people"));
    m_list->setMinimumHeight(3 * sizes().row);
    left->addWidget(m_list, 1);
    m_enrol = worded(tr("Enrol somebody"), "", box);
    m_shop = worded(tr("Presses, jobs, substrates, procedures"), "", box);
    m_twice = worded(tr("Keep the logbook twice"), "", box);
    m_pc = worded(tr("This PC"), "", box);
    for (QPushButton* button : {m_enrol, m_shop, m_twice, m_pc}) {
        button->setMinimumHeight(sizes().control);
        left->addWidget(button);
    }
    auto* row = new QHBoxLayout;
    foldBelow(box, row, 40);
    auto* label = new QLabel(tr("This PC locks itself after"), box);
    m_idle = new PickList(box);
    named(m_idle, tr("This PC locks itself after"));
    label->setBuddy(m_idle);
    label->setWordWrap(true);
    for (const int minutes : kIdleChoices) m_idle->addItem(tr("%1 minutes").arg(minutes), minutes);
    m_idle->setCurrentIndex(m_idle->findData(idleMinutes()));
    row->addWidget(label);
    row->addWidget(m_idle, 1);
    left->addLayout(row);
    connect(m_enrol, &QPushButton::clicked, this, &SetupPage::enrol);
    connect(m_shop, &QPushButton::clicked, this, &SetupPage::showDefinitions);
    connect(m_twice, &QPushButton::clicked, this, &SetupPage::showLogbook);
    connect(m_pc, &QPushButton::clicked, this, [this] { showThisPc(false); });
    connect(m_idle, &QComboBox::activated, this, [this] {
        keepIdleMinutes(m_idle->currentData().toInt());
        emit idleChosen(idleMinutes());
    });
    return box;
}

QWidget* SetupPage::buildPerson()
{
    auto* card = new QWidget(this);
    auto* layout = new QVBoxLayout(card);
    layout->setContentsMargins(20, 10, 20, 10);
    layout->setSpacing(sizes().gap);
    m_name = wrapped({}, "longSay", card);
    m_standing = wrapped({}, "", card);
    m_whyNot = wrapped({}, "strong", card);
    m_invite = worded(tr("Give a new first-use code"), "answer", card);
    m_role = worded(tr("Change the role"), "answer", card);
    m_service = worded({}, "answer", card);
    m_badge = worded(tr("Make me a badge"), "answer", card);
    m_anew = worded(tr("Change my PIN or passphrase"), "answer", card);
    m_alone = worded(tr("May work alone at\u2026"), "answer", card);
    m_alone->setObjectName(QStringLiteral("toAlone"));
    m_said = wrapped({}, "strong", card);
    layout->addWidget(m_name);
    layout->addWidget(m_standing);
    layout->addWidget(m_whyNot);
    layout->addWidget(m_said);
    layout->addStretch(1);
    for (QPushButton* button : {m_alone, m_invite, m_role, m_service, m_badge, m_anew}) layout->addWidget(button);
    connect(m_invite, &QPushButton::clicked, this, &SetupPage::inviteAgain);
    connect(m_role, &QPushButton::clicked, this, &SetupPage::changeRole);
    connect(m_service, &QPushButton::clicked, this, &SetupPage::changeService);
    connect(m_badge, &QPushButton::clicked, this, &SetupPage::makeBadge);
    connect(m_anew, &QPushButton::clicked, this, &SetupPage::chooseAgain);
    connect(m_alone, &QPushButton::clicked, this, &SetupPage::showCompetence);
    return card;
}

void SetupPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refill();
}

void SetupPage::refill()
{
    const QString before = m_list->chosen();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const people::PersonRecord& person : m_session->people())
            m_list->add({QString::fromStdString(person.id.value), dataText(person.name), roleText(person.role),
                         standingOf(person, doorOf(*m_session, person.id)), MarkShape::None});
        if (!m_list->choose(before)) m_list->choose(m_list->first());
    }
    settle();
}

/// One's own line first: the badge is made there.
void SetupPage::showSelf()
{
    refill();
    if (m_session->actor()) m_list->choose(QString::fromStdString(m_session->actor()->id().value));
}

const people::PersonRecord* SetupPage::chosen() const
{
    const std::string id = m_list->chosen().toStdString();
    for (const people::PersonRecord& person : m_session->people())
        if (person.id.value == id) return &person;
    return nullptr;
}

bool SetupPage::supervises() const
{
    return m_session->actor() && people::may(m_session->actor()->role(), people::Act::EditPeople);
}

void SetupPage::settle()
{
    const people::PersonRecord* person = chosen();
    const bool free = !m_session->busy(), supervisor = free && supervises();
    const bool self = person && m_session->actor() && m_session->actor()->id() == person->id;
    m_enrol->setEnabled(supervisor);
    m_idle->setEnabled(supervises());
    m_invite->setEnabled(supervisor && person && !self);
    m_role->setEnabled(supervisor && person);
    m_service->setEnabled(supervisor && person && !self);
    m_badge->setEnabled(free && self);
    m_anew->setEnabled(free && self);
    m_alone->setEnabled(free && person && m_session->isOpen());
    m_twice->setEnabled(m_session->isOpen());
    m_whyNot->setText(!m_session->actor() ? tr("Sign in to change something here.")
                      : supervises()      ? QString()
                                          : tr("A supervisor changes roles and lets people choose anew."));
    m_whyNot->setVisible(!m_whyNot->text().isEmpty());
    if (!person) {
        m_name->clear();
        m_standing->clear();
        return;
    }
    m_name->setText(tr("%1, %2").arg(dataText(person->name), roleText(person->role)));
    m_standing->setText(
        tr("%1 \u00B7 %2").arg(dataText(person->id.value), standingOf(*person, doorOf(*m_session, person->id))));
    m_service->setText(person->active ? tr("Take out of service") : tr("Back into service"));
    m_service->setAccessibleName(m_service->text());
}

void SetupPage::back()
{
    m_given = {};
    m_fieldOf.clear();
    m_once->forget();
    const bool asked = m_ask->isVisible();
    m_right->setCurrentWidget(m_home);
    QWidget* first = m_home == m_logbook ? m_logbook->first() : m_home == m_competence ? m_competence->first() : m_list;
    if (asked) first->setFocus();
}

void SetupPage::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void SetupPage::ask(const Question& question, Given given)
{
    m_given = std::move(given);
    m_ask->ask(question);
    m_right->setCurrentWidget(m_ask);
    m_ask->first()->setFocus();
}

void SetupPage::enrol()
{
    Question q;
    q.title = tr("Enrol somebody");
    q.text = tr("They get a code, with which they choose a PIN and a passphrase that nobody else knows. The name and "
                "the number stay theirs for ever.");
    q.fields = {{tr("Name"), {}, true, tr("as the crew knows them"), false}, roleField()};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Enrol them");
    ask(q, [this](const QStringList& values, const QString& secret) {
        m_session->enrol(values[0], *people::roleFrom(values[1].toStdString()), secret);
    });
}

void SetupPage::inviteAgain()
{
    const people::PersonRecord* person = chosen();
    if (!person) return;
    Question q;
    q.title = tr("A new first-use code for %1").arg(dataText(person->name));
    q.text = tr("For whoever was shut out, or forgot. What they chose before no longer works; what they signed stays "
                "theirs.");
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Give a new code");
    ask(q, [this, id = QString::fromStdString(person->id.value)](const QStringList&, const QString& secret) {
        m_session->inviteAgain(id, secret);
    });
}

void SetupPage::changeRole()
{
    const people::PersonRecord* person = chosen();
    if (!person) return;
    Question q;
    q.title = tr("Another role for %1").arg(dataText(person->name));
    q.fields = {roleField()};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Change the role");
    ask(q, [this, changed = *person](const QStringList& values, const QString& secret) mutable {
        changed.role = *people::roleFrom(values[0].toStdString());
        m_session->changePerson(changed, secret);
    });
}

void SetupPage::changeService()
{
    const people::PersonRecord* person = chosen();
    if (!person) return;
    Question q;
    q.title = person->active ? tr("Take %1 out of service").arg(dataText(person->name))
                             : tr("Take %1 back into service").arg(dataText(person->name));
    q.text = person->active ? tr("They can no longer sign in. Nothing that they signed goes away, and their number is "
                                 "never given to anybody else.")
                            : QString();
    q.secret = Question::Secret::Passphrase;
    q.accept = m_service->text();
    ask(q, [this, changed = *person](const QStringList&, const QString& secret) mutable {
        changed.active = !changed.active;
        m_session->changePerson(changed, secret);
    });
}

void SetupPage::makeBadge()
{
    Question q;
    q.title = tr("A badge to sign with");
    q.text =
        tr("Its code is printed once. It opens your key together with a PIN of its own, of six digits or more: the "
           "badge alone is worth nothing to a finder.");
    q.fields = {{tr("PIN of the badge"), {}, true, tr("six digits or more"), true},
                {tr("PIN of the badge, once more"), {}, true, {}, true}};
    q.secret = Question::Secret::Passphrase;
    q.accept = tr("Make the badge");
    ask(q, [this](const QStringList& values, const QString& secret) {
        if (values[0] != values[1])
            m_ask->refuseField(1, refuse("choose.differ", {}, "The two PINs are not the same.", "Type it once more."),
                               UnitSystem::Metric);
        else
            m_session->giveBadge(secret, values[0]);
    });
}

void SetupPage::chooseAgain()
{
    ask(ownSecretsQuestion(), [this](const QStringList& values, const QString& secret) {
        if (const auto anew = ownSecretsFrom(values, m_ask))
            m_session->chooseAgain({values[kOldPin].toStdString(), secret.toStdString()}, *anew);
    });
    m_fieldOf = {{"person.weak_pin", kNewPin}, {"person.weak_passphrase", kNewPassphrase}};
}

void SetupPage::showLogbook()
{
    m_home = m_logbook;
    back();
    m_logbook->first()->setFocus();
}

}  // namespace taut::app
