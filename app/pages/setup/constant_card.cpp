// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/constant_card.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/inputs/inputs.h"
#include "core/units/parse.h"

namespace taut::app {

namespace {

/// What a setting of a zone's brake, clutch or drive is said in.
const inputs::Setting& settingOf(const inputs::Zone& zone)
{
    return zone.control == inputs::Control::OpenLoop ? zone.setting : zone.actuatorRange;
}

bool hasTorque(const inputs::Zone& zone) { return zone.control != inputs::Control::Draw; }

}  // namespace

ConstantCard::ConstantCard(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    auto* body = new QWidget;
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(new ScrollRoom(body, this));
    auto* halves = new QHBoxLayout(body);
    halves->setContentsMargins(0, 0, 0, 0);
    auto* left = new QVBoxLayout;
    left->setSpacing(sizes().gap);
    left->addWidget(wrapped(tr("What does this setting do?"), "longSay", this));
    auto* caution = new SignalPanel(this);
    caution->setCaution(procedure::SignalWord::Danger,
                        tr("A drive that starts draws in whoever pulls at the web. Isolate the drives and lock them by "
                           "your site's procedure, and tell everybody at the press. Where your site's rules say "
                           "otherwise, they hold."));
    left->addWidget(caution);
    left->addWidget(
        wrapped(tr("1. Let only the brake's air or current on. 2. Clamp the web's end to a spring scale, in "
                   "line with the web. 3. Put on a setting and pull slowly, hands off the roll. 4. Read the "
                   "scale while the roll just turns, and enter both. Then another setting, well apart."),
                "", this));
    auto* form = new QFormLayout;
    form->setVerticalSpacing(sizes().gap);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_zone = new PickList(this);
    named(m_zone, tr("Which setting"));
    m_diameter = new QLineEdit(this);
    named(m_diameter, tr("Diameter of the roll"));
    m_scale = new QLineEdit(this);
    named(m_scale, tr("The scale reads within"));
    form->addRow(tr("Which setting"), m_zone);
    form->addRow(tr("Diameter of the roll, measured now"), m_diameter);
    form->addRow(tr("The scale reads within, plus or minus"), m_scale);
    left->addLayout(form);
    left->addStretch(1);
    halves->addLayout(left, 1);
    halves->addSpacing(2 * sizes().gap);

    auto* right = new QVBoxLayout;
    right->setSpacing(sizes().gap);
    auto* grid = new QGridLayout;
    grid->addWidget(wrapped(tr("Set to"), "head", this), 0, 1);
    grid->addWidget(wrapped(tr("The scale reads"), "head", this), 0, 2);
    int n = 0;
    for (Row& row : m_rows) {
        ++n;
        row = {new QLineEdit(this), new QLineEdit(this)};
        named(row.setting, tr("Setting %1").arg(n));
        named(row.force, tr("Force %1").arg(n));
        grid->addWidget(new QLabel(QString::number(n), this), n, 0);
        grid->addWidget(row.setting, n, 1);
        grid->addWidget(row.force, n, 2);
        for (QLineEdit* line : {row.setting, row.force})
            connect(line, &QLineEdit::textChanged, this, &ConstantCard::work);
    }
    right->addLayout(grid);
    m_result = wrapped({}, "strong", this);
    m_result->setAccessibleName(tr("What was found"));
    right->addWidget(m_result);
    right->addStretch(1);
    m_take = worded(tr("Enter it in the press profile, and look"), "main", this);
    m_back = worded(tr("Back to the list"), "answer", this);
    right->addWidget(m_take);
    right->addWidget(m_back);
    halves->addLayout(right, 1);

    for (QLineEdit* line : {m_diameter, m_scale}) connect(line, &QLineEdit::textChanged, this, &ConstantCard::work);
    connect(m_zone, &QComboBox::currentIndexChanged, this, &ConstantCard::work);
    connect(m_back, &QPushButton::clicked, this, &ConstantCard::left);
    connect(m_take, &QPushButton::clicked, this, [this] {
        if (zone() == nullptr || !m_found) return;
        const auto text = inputs::withConstant(m_text, zone()->id, *m_found);
        if (text)
            emit found(m_text, *text, zone()->id);
        else
            m_result->setText(words(text.error(), m_press.units));
    });
    connect(session, &Session::actorChanged, this, &ConstantCard::work);
}

void ConstantCard::open(const std::string& pressToml, const std::string& zone)
{
    Findings notes;
    const auto press = inputs::readPress(pressToml, "", notes);
    m_text = pressToml;
    m_press = press ? *press : inputs::Press();
    {
        const QSignalBlocker quiet(m_zone);
        m_zone->clear();
        for (const inputs::Zone& one : m_press.zones)
            if (hasTorque(one)) m_zone->addItem(dataText(one.name), QString::fromStdString(one.id));
        const int at = m_zone->findData(QString::fromStdString(zone));
        m_zone->setCurrentIndex(at >= 0 ? at : m_zone->count() > 0 ? 0 : -1);
    }
    for (QLineEdit* line : {m_diameter, m_scale}) line->clear();
    const bool us = m_press.units == UnitSystem::Us;
    hint(m_diameter, tr("like %1").arg(us ? QStringLiteral("16 1/4 in") : QStringLiteral("412 mm")));
    hint(m_scale, tr("like %1").arg(us ? QStringLiteral("1/2 lbf") : QStringLiteral("2 N")));
    for (const Row& row : m_rows)
        for (QLineEdit* line : {row.setting, row.force}) line->clear();
    work();
}

void ConstantCard::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    event->accept();
    emit left();
}

const inputs::Zone* ConstantCard::zone() const { return m_press.zone(m_zone->currentData().toString().toStdString()); }

std::optional<Quantity> ConstantCard::typed(const QLineEdit* line, std::initializer_list<Kind> kinds,
                                            const QString& name)
{
    if (line->text().trimmed().isEmpty()) return std::nullopt;
    std::optional<Finding> why;
    for (const Kind kind : kinds) {
        const auto read = parseQuantity(line->text().toStdString(), kind);
        if (read) return *read;
        if (!why) why = read.error();
    }
    if (!m_wrong) m_result->setText(name + QStringLiteral(": ") + words(*why, m_press.units));
    m_wrong = true;
    return std::nullopt;
}

void ConstantCard::work()
{
    m_found.reset();
    m_wrong = false;
    m_take->setEnabled(false);
    const inputs::Zone* of = zone();
    if (of == nullptr) return m_result->setText(tr("This press has no zone with a brake, a clutch or a drive."));
    const inputs::Setting& range = settingOf(*of);
    std::vector<inputs::Pull> pulls;
    bool half = false;
    for (const Row& row : m_rows) {
        const auto setting =
            typed(row.setting, {Kind::Pressure, Kind::Current, Kind::Share}, row.setting->accessibleName());
        const auto force = typed(row.force, {Kind::Force}, row.force->accessibleName());
        if (setting && force) pulls.push_back({*setting, *force});
        half = half || setting.has_value() != force.has_value();
    }
    const auto diameter = typed(m_diameter, {Kind::Length}, m_diameter->accessibleName());
    const auto scale = typed(m_scale, {Kind::Force}, m_scale->accessibleName());
    if (m_wrong) return;
    if (!diameter || !scale || half || pulls.empty())
        return m_result->setText(tr("Enter the diameter, how well the scale reads, and at least two settings with what "
                                    "it read at each."));
    const auto found =
        inputs::constantOf(diameter->as<Kind::Length>(), pulls, {*scale, range.uncertainty, range.least, range.most});
    if (!found) return m_result->setText(words(found.error(), m_press.units));
    m_found = *found;
    const Quantity share(found->torqueUncertainty, Kind::Share, "%");
    m_result->setText(tr("%1, plus or minus %2, beginning at %3 (plus or minus %4). %5")
                          .arg(quantityText(found->torquePerSetting, m_press.units), quantityText(share, m_press.units),
                               quantityText(found->zeroSetting, m_press.units),
                               quantityText(found->zeroUncertainty, m_press.units),
                               found->byScatter ? tr("The readings scatter by more than scale and gauge explain.")
                                                : tr("As well as scale and gauge can be read.")));
    m_take->setEnabled(true);
}

}  // namespace taut::app
