// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/narrowing.h"

#include <utility>

#include <QLabel>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"

namespace taut::app {

namespace {

constexpr std::int64_t kDayMs = 24 * 3600 * 1000LL;

void fillFrom(PickList* list, const records::Reader& reader, const char* what, const QString& every)
{
    const QVariant before = list->currentData();
    list->clear();
    if (!every.isEmpty()) list->addItem(every, QString());
    if (const auto all = reader.definitions(what))
        for (const run::Source& source : *all) list->addItem(dataText(source.id), QString::fromStdString(source.id));
    list->setCurrentIndex(qMax(0, list->findData(before)));
}

}  // namespace

Narrowing::Narrowing(Press press, QWidget* parent) : QWidget(parent), m_kind(press)
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
    for (const auto& [name, days] :
         {std::pair(tr("From the beginning"), 0), std::pair(tr("Two years"), 730), std::pair(tr("One year"), 365),
          std::pair(tr("Three months"), 91), std::pair(tr("One month"), 30)})
        m_time->addItem(name, days);
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
    if (const int days = m_time->currentData().toInt(); days > 0)
        query.sinceMs = SystemClock().now().utcMs - days * kDayMs;
    return query;
}

void Narrowing::choosePress(const std::string& press)
{
    if (const int at = m_press->findData(QString::fromStdString(press)); at >= 0) m_press->setCurrentIndex(at);
}

}  // namespace taut::app
