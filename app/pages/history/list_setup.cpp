// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/list_setup.h"

#include <algorithm>

#include <QLabel>
#include <QVBoxLayout>

#include "app/pages/history/narrowing.h"
#include "app/pages/history/run_line.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

std::string whoChooses(const Session& session) { return session.actor() ? session.actor()->id().value : std::string(); }

ListSetup::ListSetup(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_layout = new QVBoxLayout(this);
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(4);
    m_narrow = new Narrowing(Narrowing::Press::Any, Narrowing::Time::Asked, this);
    m_person = new PickList(this);
    m_person->setObjectName(QStringLiteral("ofPerson"));
    m_person->setMinimumHeight(sizes().control);
    named(m_person, tr("Whose run"));
    m_person->addItem(tr("Everybody"), QString());
    auto* whose = withRole(new QLabel(tr("Whose run"), this), "soft");
    whose->setBuddy(m_person);
    m_deviations = new StatementBox(tr("Only runs in which something outside was accepted"), this);
    m_deviations->setObjectName(QStringLiteral("onlyDeviations"));
    head(tr("Which runs"));
    m_layout->addWidget(m_narrow);
    m_layout->addWidget(whose);
    m_layout->addWidget(m_person);
    m_layout->addWidget(m_deviations);

    head(tr("Keep this search"));
    m_name = new QLineEdit(this);
    m_name->setObjectName(QStringLiteral("searchName"));
    m_name->setMinimumHeight(sizes().control);
    named(m_name, tr("Name of the search"));
    auto* name = withRole(new QLabel(tr("Name of the search"), this), "soft");
    name->setBuddy(m_name);
    m_keep = worded(tr("Keep under this name"), "quiet", this);
    m_keep->setObjectName(QStringLiteral("keepSearch"));
    m_forget = worded(tr("Forget it"), "quiet", this);
    m_forget->setObjectName(QStringLiteral("forgetSearch"));
    auto* acts = new FlowRow;
    acts->setSpacing(6);
    acts->addWidget(m_keep);
    acts->addWidget(m_forget);
    m_layout->addWidget(name);
    m_layout->addWidget(m_name);
    m_layout->addLayout(acts);
    m_notKept = wrapped(QString(), "strong", this);
    m_notKept->setObjectName(QStringLiteral("notKept"));
    m_layout->addWidget(m_notKept);

    head(tr("What each line says"));
    auto* parts = new FlowRow;
    parts->setSpacing(6);
    for (const LinePart& part : lineParts()) {
        QPushButton* button = worded(part.name, "quiet", this);
        button->setObjectName(QStringLiteral("line_") + QLatin1String(part.column));
        button->setCheckable(true);
        parts->addWidget(button);
        m_parts.emplace_back(part.column, button);
        connect(button, &QPushButton::clicked, this, [this] {
            keepLine(whoChooses(*m_session), line());
            emit lineChanged();
        });
    }
    m_layout->addLayout(parts);

    auto* save = worded(tr("Save this list"), "", this);
    save->setObjectName(QStringLiteral("saveList"));
    save->setToolTip(tr("Every run that fits, with what each line says"));
    m_layout->addSpacing(sizes().gap);
    m_layout->addWidget(save);
    m_layout->addStretch(1);

    const auto narrowed = [this] {
        tellNotKept({});
        if (!m_filling) emit changed();
    };
    connect(m_narrow, &Narrowing::changed, this, narrowed);
    connect(m_person, &QComboBox::currentIndexChanged, this, narrowed);
    connect(m_deviations, &QCheckBox::toggled, this, narrowed);
    connect(m_name, &QLineEdit::textChanged, this, &ListSetup::settleName);
    connect(m_keep, &QPushButton::clicked, this, [this] {
        // A day that is none narrows nothing: kept, the search would look as if it did.
        const auto ends = endsOf(search().period, SystemClock().now());
        if (ends) emit keepWanted(m_name->text().trimmed());
        settleName();
        if (!ends) tellNotKept(tr("Not kept. %1").arg(words(ends.error(), UnitSystem::Metric)));
    });
    connect(m_name, &QLineEdit::returnPressed, m_keep, &QPushButton::click);
    connect(m_forget, &QPushButton::clicked, this, [this] {
        emit forgetWanted(m_name->text().trimmed());
        m_name->clear();
        m_name->setFocus();  // the button is not enabled any more
    });
    connect(save, &QPushButton::clicked, this, &ListSetup::saveWanted);
    fill();
}

void ListSetup::head(const QString& text)
{
    if (m_layout->count() > 0) m_layout->addSpacing(sizes().gap);
    m_layout->addWidget(wrapped(text, "head", this));
}

void ListSetup::fill()
{
    m_filling = true;
    if (m_session->reader() != nullptr) m_narrow->fill(*m_session->reader());
    const QVariant before = m_person->currentData();
    m_person->clear();
    m_person->addItem(tr("Everybody"), QString());
    for (const people::PersonRecord& person : m_session->people())
        m_person->addItem(dataText(person.name), QString::fromStdString(person.id.value));
    m_person->setCurrentIndex(qMax(0, m_person->findData(before)));
    const records::Columns said = keptLine(whoChooses(*m_session));
    for (const auto& [column, button] : m_parts)
        button->setChecked(std::find(said.begin(), said.end(), column) != said.end());
    m_filling = false;
    settleName();
}

Search ListSetup::search() const
{
    const Narrowing::Choice narrowed = m_narrow->choice();
    return {{},
            {},
            narrowed.press,
            narrowed.job,
            narrowed.substrate,
            m_person->currentData().toString(),
            narrowed.period,
            m_deviations->isChecked()};
}

records::CourseQuery ListSetup::course() const { return m_narrow->query(); }

void ListSetup::choose(const KeptSearch& kept)
{
    m_filling = true;
    const Search& search = kept.search;
    m_narrow->choose({search.press, search.job, search.substrate, search.period});
    if (m_person->findData(search.person) < 0) m_person->addItem(dataText(search.person), search.person);
    m_person->setCurrentIndex(m_person->findData(search.person));
    m_deviations->setChecked(search.withDeviations);
    m_name->setText(kept.name);
    m_filling = false;
    emit changed();
}

records::Columns ListSetup::line() const
{
    records::Columns columns;
    for (const auto& [column, button] : m_parts)
        if (button->isChecked()) columns.push_back(column);
    return columns;
}

void ListSetup::tellNotKept(const QString& why)
{
    m_notKept->setText(why);
    m_notKept->setVisible(!why.isEmpty());
}

void ListSetup::settleName()
{
    tellNotKept({});
    const QString name = m_name->text().trimmed();
    const auto all = keptSearches(whoChooses(*m_session));
    m_keep->setEnabled(!name.isEmpty());
    m_forget->setEnabled(std::any_of(all.begin(), all.end(), [&](const KeptSearch& one) { return one.name == name; }));
}

}  // namespace taut::app
