// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/narrowing.h"

#include <utility>

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"

namespace taut::app {

namespace {

/// In the list of how far back: from one day to another.
constexpr int kBetween = -1;

void choose(PickList* list, const QString& id)
{
    if (!id.isEmpty() && list->findData(id) < 0) list->addItem(dataText(id), id);
    list->setCurrentIndex(qMax(0, list->findData(id)));
}

void fillFrom(PickList* list, const records::Reader& reader, const char* what, const QString& every)
{
    const QString before = list->currentData().toString();
    list->clear();
    if (!every.isEmpty()) list->addItem(every, QString());
    if (const auto all = reader.definitions(what))
        for (const run::Source& source : *all) list->addItem(dataText(source.id), QString::fromStdString(source.id));
    choose(list, before);
}

}  // namespace

Narrowing::Narrowing(Press press, Time time, QWidget* parent) : QWidget(parent), m_kind(press)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const auto list = [&](const QString& name, const char* object) {
        auto* label = withRole(new QLabel(name, this), "soft");
        auto* picks = new PickList(this);
        picks->setObjectName(QString::fromLatin1(object));
        picks->setMinimumHeight(sizes().control);
        named(picks, name);
        label->setBuddy(picks);
        layout->addWidget(label);
        layout->addWidget(picks);
        connect(picks, &QComboBox::currentIndexChanged, this, [this] {
            if (!m_filling) emit changed();
        });
        return picks;
    };
    m_press = list(tr("Press"), "ofPress");
    m_job = list(tr("Job"), "ofJob");
    m_substrate = list(tr("Substrate"), "ofSubstrate");
    m_time = list(tr("How far back"), "since");
    m_filling = true;
    for (const auto& [name, days] : {std::pair(tr("From the beginning"), 0), std::pair(tr("Two years"), 730),
                                     std::pair(tr("One year"), 365), std::pair(tr("Three months"), 91),
                                     std::pair(tr("One month"), 30), std::pair(tr("Between two days"), kBetween)})
        m_time->addItem(name, days);
    m_between = new QWidget(this);
    auto* between = new QVBoxLayout(m_between);
    between->setContentsMargins(0, 0, 0, 0);
    between->setSpacing(4);
    m_from = day(tr("First day"), "fromDay");
    m_to = day(tr("Last day"), "toDay");
    m_wrong = wrapped(QString(), "strong", m_between);
    m_wrong->setObjectName(QStringLiteral("wrongDay"));
    between->addWidget(m_wrong);
    layout->addWidget(m_between);
    settleDays();
    connect(m_time, &QComboBox::currentIndexChanged, this, &Narrowing::settleDays);
    m_time->setVisible(time == Time::Asked);
    for (QLabel* label : findChildren<QLabel*>())
        if (label->buddy() == m_time) label->setVisible(time == Time::Asked);
    m_filling = false;
}

void Narrowing::fill(const records::Reader& reader)
{
    m_filling = true;
    fillFrom(m_press, reader, "press", m_kind == Press::Any ? tr("Every press") : QString());
    fillFrom(m_job, reader, "job", tr("Every job"));
    fillFrom(m_substrate, reader, "substrate", tr("Every substrate"));
    m_filling = false;
}

records::CourseQuery Narrowing::query() const
{
    records::CourseQuery query;
    query.press = m_press->currentData().toString().toStdString();
    query.job = m_job->currentData().toString().toStdString();
    query.substrate = m_substrate->currentData().toString().toStdString();
    // A day that is being typed does not narrow yet; what is wrong with it stands below it, and what was before holds.
    const auto ends = endsOf(choice().period, SystemClock().now());
    query.sinceMs = ends ? ends->sinceMs : m_ends.sinceMs;
    query.untilMs = ends ? ends->untilMs : m_ends.untilMs;
    return query;
}

Narrowing::Choice Narrowing::choice() const
{
    const int days = m_time->currentData().toInt();
    Period period{days, days == kBetween};
    if (period.between) period = {0, true, m_from->text().trimmed(), m_to->text().trimmed()};
    return {m_press->currentData().toString(), m_job->currentData().toString(), m_substrate->currentData().toString(),
            period};
}

void Narrowing::choose(const Choice& choice)
{
    m_filling = true;
    app::choose(m_press, choice.press);
    app::choose(m_job, choice.job);
    app::choose(m_substrate, choice.substrate);
    const int days = choice.period.between ? kBetween : choice.period.days;
    m_time->setCurrentIndex(qMax(0, m_time->findData(days)));
    m_from->setText(choice.period.from);
    m_to->setText(choice.period.to);
    settleDays();
    m_filling = false;
    emit changed();
}

QLineEdit* Narrowing::day(const QString& name, const char* object)
{
    auto* label = withRole(new QLabel(name, m_between), "soft");
    auto* line = new QLineEdit(m_between);
    line->setObjectName(QString::fromLatin1(object));
    line->setMinimumHeight(sizes().control);
    named(line, name);
    label->setBuddy(line);
    hint(line, QStringLiteral("2026-11-25"));
    m_between->layout()->addWidget(label);
    m_between->layout()->addWidget(line);
    connect(line, &QLineEdit::textChanged, this, [this] {
        settleDays();
        if (!m_filling && m_wrong->text().isEmpty()) emit changed();
    });
    return line;
}

void Narrowing::settleDays()
{
    m_between->setVisible(m_time->currentData().toInt() == kBetween);
    const auto ends = endsOf(choice().period, SystemClock().now());
    if (ends) m_ends = *ends;
    m_wrong->setText(ends ? QString() : words(ends.error(), UnitSystem::Metric));
    m_wrong->setVisible(!ends);
}

}  // namespace taut::app
