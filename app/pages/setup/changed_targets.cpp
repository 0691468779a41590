// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/changed_targets.h"

#include <array>

#include <QFormLayout>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "app/widgets/whole_table.h"
#include "core/inputs/inputs.h"
#include "core/inputs/usual_cores.h"
#include "core/targets/target.h"
#include "core/units/parse.h"

namespace taut::app {

namespace {

template <class Read>
auto readAs(const Read& read, const std::string& text)
{
    Findings notes;
    return read(text, "", notes);
}

std::shared_ptr<const inputs::Substrate> substrateIn(const std::string& text, const std::string& id)
{
    if (const auto all = readAs(inputs::readSubstrates, text))
        for (const inputs::Substrate& one : *all)
            if (id.empty() || one.id == id) return std::make_shared<const inputs::Substrate>(one);
    return nullptr;
}

/// A roll such as the press takes for this job: nobody has measured it.
inputs::Roll rollFor(const inputs::Press& press, const inputs::Job& job, std::optional<Quantity> diameter)
{
    inputs::Roll roll;
    roll.id = "?";
    roll.substrate = job.substrate;
    roll.width = job.webWidth;
    roll.winding = inputs::Winding::FaceOut;
    if (diameter) roll.outerDiameter = Entry<Kind::Length>(*diameter);
    if (!press.unwind) return roll;
    const inputs::Mandrel& mandrel = press.unwind->mandrel;
    for (const inputs::UsualCore& usual : inputs::kUsualCores)
        if (mandrel.gripsLeast && mandrel.gripsMost && usual.inside >= mandrel.gripsLeast->si() &&
            usual.inside <= mandrel.gripsMost->si())
            roll.core = Entry<Kind::Length>(Length::si(usual.inside), "mm");
    return roll;
}

QString stateText(const targets::Target* target, UnitSystem system)
{
    if (target == nullptr) return QStringLiteral("\u2013");
    const QString window = targetWindow(*target, system);
    const QString value = targetValue(*target, system);
    return window.isEmpty() ? value : value + QStringLiteral(" (") + window + QLatin1Char(')');
}

}  // namespace

ChangedTargets::ChangedTargets(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_press = new PickList(this);
    m_job = new PickList(this);
    m_diameter = new QLineEdit(this);
    m_pressLabel = new QLabel(tr("on the press"), this);
    m_jobLabel = new QLabel(tr("with the job"), this);
    named(m_press, m_pressLabel->text());
    named(m_job, m_jobLabel->text());
    named(m_diameter, tr("for a roll of"));
    m_said = wrapped({}, "strong", this);
    m_table = new WholeTable({tr("Target"), tr("before"), tr("after")}, {0.34, 0.33, 0.33}, this);
    m_table->setAccessibleName(tr("Targets that change"));
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(m_pressLabel, m_press);
    form->addRow(m_jobLabel, m_job);
    form->addRow(tr("for a roll of"), m_diameter);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(form);
    column->addWidget(m_said);
    column->addWidget(m_table, 1);
    connect(m_press, &QComboBox::activated, this, [this] { compare(); });
    connect(m_job, &QComboBox::activated, this, [this] { compare(); });
    connect(m_diameter, &QLineEdit::textEdited, this, [this] { compare(); });
}

void ChangedTargets::show(const std::string& what, const std::string& before, const std::string& after)
{
    const bool other = what != m_what || m_press->count() == 0;
    m_what = what;
    m_before = before;
    m_after = after;
    if (other) refill();
    compare();
}

void ChangedTargets::refill()
{
    for (auto [list, kind] : {std::pair(m_press, "press"), std::pair(m_job, "job")}) {
        list->clear();
        for (const logbook::Definition& one : m_session->definitions(kind))
            list->addItem(dataText(one.source.id), QByteArray::fromStdString(one.source.text));
    }
    for (QWidget* w : std::initializer_list<QWidget*>{m_press, m_pressLabel}) w->setVisible(m_what != "press");
    for (QWidget* w : std::initializer_list<QWidget*>{m_job, m_jobLabel}) w->setVisible(m_what != "job");
    m_diameter->clear();
}

void ChangedTargets::compare()
{
    m_table->setRowCount(0);
    const auto chosen = [](const PickList* list) { return list->currentData().toByteArray().toStdString(); };
    const auto sides = [&](const std::string& text) -> std::optional<std::pair<targets::Targets, UnitSystem>> {
        const auto press = readAs(inputs::readPress, m_what == "press" ? text : chosen(m_press));
        const auto job = readAs(inputs::readJob, m_what == "job" ? text : chosen(m_job));
        if (!press || !job) return std::nullopt;
        std::shared_ptr<const inputs::Substrate> substrate;
        if (m_what == "substrate") substrate = substrateIn(text, {});
        for (const logbook::Definition& one : m_session->definitions("substrate"))
            if (!substrate && one.source.id == job->substrate) substrate = substrateIn(one.source.text, job->substrate);
        if (!substrate) return std::nullopt;
        std::optional<Quantity> diameter;
        if (const auto typed = parseQuantity(m_diameter->text().toStdString(), Kind::Length))
            diameter = *typed;
        else if (press->unwind && press->unwind->largestDiameter)
            diameter = press->unwind->largestDiameter->quantity();
        if (diameter && m_diameter->text().isEmpty())
            hint(m_diameter, tr("%1, the largest").arg(quantityText(*diameter, press->units)));
        inputs::Job as = *job;
        as.substrate = substrate->id;
        const inputs::Roll roll = rollFor(*press, as, diameter);
        return std::pair(targets::computeTargets({std::make_shared<const inputs::Press>(*press),
                                                  std::make_shared<const inputs::Job>(as), substrate,
                                                  std::make_shared<const inputs::Roll>(roll)}),
                         press->units);
    };
    const auto before = m_before.empty() ? std::nullopt : sides(m_before);
    const auto after = sides(m_after);
    if (m_before.empty()) return m_said->setText(tr("There is no edition before it to hold it against."));
    if (!before || !after)
        return m_said->setText(tr("Targets need a press, a job and its substrate that can be read."));
    std::vector<std::array<QString, 3>> rows;
    int finer = 0;
    for (const targets::TargetId& id : targets::changed(before->first, after->first)) {
        const targets::Target* old = before->first.find(id);
        const targets::Target* now = after->first.find(id);
        const QString was = stateText(old, before->second), is = stateText(now, after->second);
        if (was == is)
            ++finer;
        else
            rows.push_back({words((now != nullptr ? now : old)->name, after->second), was, is});
    }
    QString said = rows.empty() ? tr("No target changes.") : tr("Targets that change: %1.").arg(rows.size());
    if (finer > 0) said += QLatin1Char(' ') + tr("By less than is shown: %1.").arg(finer);
    m_said->setText(said);
    m_table->setRowCount(static_cast<int>(rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i)
        for (std::size_t c = 0; c < 3; ++c) m_table->put(static_cast<int>(i), static_cast<int>(c), rows[i][c]);
    m_table->spread();
}

}  // namespace taut::app
