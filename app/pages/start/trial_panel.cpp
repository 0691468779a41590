// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/trial_panel.h"

#include <algorithm>
#include <cmath>

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/drawing/chart_picture.h"
#include "app/pages/start/trial_band.h"
#include "app/text/language.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/base/file.h"

namespace taut::app {

namespace {

/// What an operator sets, and what most asks about: always in sight, moved or not.
bool isSet(const std::string& id)
{
    const auto ends = [&](std::string_view end) {
        return id.size() >= end.size() && id.compare(id.size() - end.size(), end.size(), end) == 0;
    };
    if (id.rfind("tension.", 0) == 0) return ends(".setting") || ends(".total");
    return id == "roll.length" || id == "roll.run_time" || id == "lift.pressure" || id == "stop.diameter";
}

/// The real text of a quantity, as somebody typed it or as this press says it.
QString plainText(const Quantity& q, UnitSystem system)
{
    if (!q.entered().empty()) return QString::fromUtf8(q.entered().c_str());
    const Shown shown = show(q, unitsFor(system));
    return QString::fromStdString(shown.text());
}

}  // namespace

TrialPanel::TrialPanel(QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildBand());

    auto* fieldBody = new QWidget;
    m_fields = new QGridLayout(fieldBody);
    m_fields->setContentsMargins(0, 0, 0, 0);
    m_fields->setHorizontalSpacing(sizes().gap);
    m_fieldRoom = new ScrollRoom(fieldBody, this);
    m_fieldRoom->setMinimumHeight(3 * sizes().control);
    m_diameter = addField(tr("Diameter of the roll"));
    m_width = addField(tr("Width of the web"));
    m_speed = addField(tr("Speed of the job"));
    m_substrate = addField(tr("Substrate"));
    m_material = new PickList(this);
    named(m_material, tr("Substrate to try"));
    m_substrate.name->setBuddy(m_material);
    m_substrate.cell->layout()->addWidget(m_material);
    m_substrate.edit->hide();

    m_list = new RowList(this);
    m_list->setAccessibleName(tr("What would follow from the values tried"));

    auto* chartBody = new QWidget;
    m_charts = new QGridLayout(chartBody);
    m_charts->setContentsMargins(0, 0, 0, 0);
    m_charts->setSpacing(sizes().gap);
    m_chartRoom = new ScrollRoom(chartBody, this);
    m_noCharts = wrapped(tr("Nothing here is set by the diameter of a roll."), "soft", this);

    auto* left = new QVBoxLayout;
    left->addWidget(m_fieldRoom, 3);
    left->addWidget(m_list, 4);
    auto* right = new QVBoxLayout;
    right->addWidget(m_chartRoom, 1);
    right->addWidget(m_noCharts);
    auto* halves = new QHBoxLayout;
    halves->addLayout(left, 2);
    halves->addSpacing(sizes().gap);
    halves->addLayout(right, 3);
    column->addLayout(halves, 1);
    m_list->setMinimumHeight(2 * sizes().control);

    for (const Field* field : {&m_diameter, &m_width, &m_speed})
        connect(field->edit, &QLineEdit::textChanged, this, &TrialPanel::compute);
    connect(m_material, &QComboBox::currentIndexChanged, this, &TrialPanel::compute);
}

QWidget* TrialPanel::buildBand()
{
    auto* band = new TrialBand(this);
    m_bandRow = new QBoxLayout(QBoxLayout::LeftToRight, band);
    const int edge = band->edge();
    m_bandRow->setContentsMargins(edge + 10, edge, edge + 10, edge);
    auto* said = new QVBoxLayout;
    said->setSpacing(0);
    auto* head = wrapped(tr("TRIAL: not the real roll"), "head", band);
    head->setAccessibleName(tr("What is shown is a trial"));
    said->addWidget(head);
    said->addWidget(wrapped(tr("Nothing is stored, and no run begins from here."), "", band));
    m_bandRow->addLayout(said, 1);
    auto* back = worded(tr("Back to the real roll"), "main", band);
    m_again = worded(tr("Real values again"), "", band);
    m_picture = worded(tr("Charts as a picture"), "", band);
    auto* row = new FlowRow;
    for (QPushButton* button : {m_picture, m_again, back}) row->addWidget(button);
    m_bandRow->addLayout(row);
    connect(back, &QPushButton::clicked, this, &TrialPanel::left);
    connect(m_again, &QPushButton::clicked, this, &TrialPanel::reset);
    connect(m_picture, &QPushButton::clicked, this, &TrialPanel::choosePicture);
    return band;
}

TrialPanel::Field TrialPanel::addField(const QString& title)
{
    Field field;
    field.title = title;
    field.cell = new QWidget(this);
    auto* column = new QVBoxLayout(field.cell);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    field.name = wrapped(title, "", field.cell);
    field.edit = new QLineEdit(field.cell);
    field.edit->setMinimumHeight(sizes().control);
    field.wrong = wrapped(QString(), "strong", field.cell);
    field.wrong->hide();
    field.name->setBuddy(field.edit);
    named(field.edit, tr("%1 to try").arg(title));
    column->addWidget(field.name);
    column->addWidget(field.edit);
    column->addWidget(field.wrong);
    return field;
}

void TrialPanel::fillField(Field& field, const std::optional<Quantity>& real)
{
    field.value = real;
    field.real = real ? plainText(*real, m_system) : QString();
    const QString whole = QString(field.real).replace(QLatin1Char(' '), QChar::Nbsp);
    field.name->setText(real ? tr("%1 (real: %2)").arg(field.title, dataText(whole)) : field.title);
    field.edit->setText(field.real);
    field.edit->setPlaceholderText(dataText(field.real));
}

void TrialPanel::begin(targets::Tried real, const Substrates& substrates)
{
    m_base = std::move(real);
    m_substrates = substrates;
    m_system = m_base.inputs.press ? m_base.inputs.press->units : UnitSystem::Metric;
    m_real = m_base.targets();
    reset();
    m_diameter.edit->setFocus();
    m_diameter.edit->selectAll();
}

void TrialPanel::reset()
{
    m_filling = true;
    std::optional<Quantity> diameter, width, speed;
    if (m_base.inputs.roll && m_base.inputs.roll->outerDiameter)
        diameter = m_base.inputs.roll->outerDiameter->quantity();
    if (m_base.present)
        diameter = Quantity(*m_base.present, Kind::Length, diameter ? diameter->unit() : SharedString());
    if (m_base.inputs.roll && m_base.inputs.roll->width)
        width = m_base.inputs.roll->width->quantity();
    else if (m_base.inputs.job && m_base.inputs.job->webWidth)
        width = m_base.inputs.job->webWidth->quantity();
    if (m_base.inputs.job && m_base.inputs.job->speed) speed = m_base.inputs.job->speed->quantity();
    fillField(m_diameter, diameter);
    fillField(m_width, width);
    fillField(m_speed, speed);
    m_material->clear();
    for (std::size_t i = 0; i < m_substrates.size(); ++i) {
        const inputs::Substrate& s = *m_substrates[i];
        const std::string& name = s.name.empty() ? s.id : s.name;
        m_material->addItem(dataText(name), QString::fromStdString(s.id));
        if (m_base.inputs.substrate && s.id == m_base.inputs.substrate->id) {
            m_material->setCurrentIndex(static_cast<int>(i));
            m_substrate.name->setText(tr("%1 (real: %2)").arg(m_substrate.title, dataText(name)));
        }
    }
    m_filling = false;
    compute();
}

/// What stands in a field, when it is another value than the real one; a wrong entry stays and is explained.
template <Kind K>
inputs::Maybe<K> TrialPanel::tried(Field& field, Result<Entry<K>> (*read)(std::string_view))
{
    const QString typed = field.edit->text().trimmed();
    inputs::Maybe<K> value;
    QString wrong;
    if (!typed.isEmpty() && typed != field.real) {
        if (auto entry = read(typed.toStdString())) {
            // The real value said another way is not another value.
            const bool same = field.value && std::abs(entry->si() - field.value->si()) <= 1e-9 * field.value->si();
            if (!same) value = *std::move(entry);
        } else
            wrong = words(entry.error(), m_system) + QLatin1Char(' ') + tr("Until then the real value is shown.");
    }
    field.wrong->setText(wrong);
    field.wrong->setVisible(!wrong.isEmpty());
    return value;
}

void TrialPanel::compute()
{
    if (m_filling) return;
    targets::WhatIf whatIf;
    whatIf.diameter = tried<Kind::Length>(m_diameter, targets::readTriedDiameter);
    whatIf.width = tried<Kind::Length>(m_width, targets::readTriedWidth);
    whatIf.speed = tried<Kind::Speed>(m_speed, targets::readTriedSpeed);
    const std::string material = m_material->currentData().toString().toStdString();
    for (const auto& substrate : m_substrates)
        if (substrate->id == material && (!m_base.inputs.substrate || m_base.inputs.substrate->id != material))
            whatIf.substrate = substrate;
    const targets::Tried tried = targets::tryOut(m_base, whatIf);
    m_tried = tried.targets();
    m_drawn = report::chartsOf(tried.inputs, m_tried);
    m_again->setEnabled(!whatIf.empty() || m_diameter.wrong->isVisibleTo(this) || m_width.wrong->isVisibleTo(this) ||
                        m_speed.wrong->isVisibleTo(this));
    showTargets();
    showCharts();
}

void TrialPanel::showTargets()
{
    QStringList troubles;
    for (const Finding& f : m_tried.findings)
        if (f.severity != Severity::Note) troubles << words(f, m_system);
    const QSignalBlocker quiet(m_list);
    const QString before = m_list->chosen();
    const int scrolled = m_list->verticalScrollBar()->value();
    m_list->clear();
    const std::vector<targets::TargetId> moved = targets::changed(m_real, m_tried);
    const auto has = [&](const std::string& id) { return std::find(moved.begin(), moved.end(), id) != moved.end(); };
    const auto add = [&](const targets::Target& t) {
        const targets::Target* real = m_real.find(t.id);
        QString more = tr("as on the real roll");
        if (has(t.id)) more = real ? tr("real roll: %1").arg(targetValue(*real, m_system)) : tr("not on the real roll");
        if (!t.ready()) more = targetValue(t, m_system) + QLatin1Char('\n') + more;
        m_list->add({QString::fromStdString(t.id), words(t.name, m_system),
                     t.ready() ? targetValue(t, m_system) : QStringLiteral("\u2013"), more, MarkShape::None});
    };
    if (!troubles.isEmpty()) m_list->add({{}, tr("What does not fit"), {}, {}, MarkShape::None});
    for (const Finding& f : m_tried.findings)
        if (f.severity != Severity::Note)
            m_list->add({QStringLiteral("trouble"),
                         words(f, m_system),
                         {},
                         {},
                         f.severity == Severity::Stop ? MarkShape::Octagon : MarkShape::HalfDiamond});
    m_list->add({{}, tr("What is set, in this trial"), {}, {}, MarkShape::None});
    // The controls of the tension first, along the web: they are what the charts are about.
    if (m_base.inputs.press)
        for (const inputs::Zone& zone : m_base.inputs.press->zones)
            for (const char* what : {".setting", ".total"})
                if (const targets::Target* t = m_tried.find("tension." + zone.id + what)) add(*t);
    for (const targets::Target& t : m_tried.all)
        if (isSet(t.id) && t.id.rfind("tension.", 0) != 0) add(t);
    const bool more = std::any_of(moved.begin(), moved.end(), [](const std::string& id) { return !isSet(id); });
    if (more) m_list->add({{}, tr("What else moves"), {}, {}, MarkShape::None});
    for (const targets::Target& t : m_tried.all)
        if (!isSet(t.id) && has(t.id)) add(t);
    if (!m_list->choose(before)) m_list->choose(m_list->first());
    // What has come to stand at the top is to be seen.
    m_list->verticalScrollBar()->setValue(troubles == m_troubles ? scrolled : 0);
    m_troubles = troubles;
}

void TrialPanel::showCharts()
{
    // The widgets stay: typing changes what they show.
    const bool other = m_chartCells.size() != m_drawn.size();
    while (m_chartCells.size() > m_drawn.size()) {
        delete m_chartCells.back();
        m_chartCells.pop_back();
    }
    while (m_chartCells.size() < m_drawn.size()) {
        auto* cell = new QWidget(m_chartRoom->widget());
        auto* column = new QVBoxLayout(cell);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(2);
        column->addWidget(wrapped(QString(), "strong", cell));
        column->addWidget(new ChartWidget(cell), 1);
        m_chartCells.push_back(cell);
    }
    for (std::size_t i = 0; i < m_drawn.size(); ++i) {
        m_chartCells[i]->findChild<QLabel*>()->setText(words(m_drawn[i].caption, m_system));
        m_chartCells[i]->findChild<ChartWidget*>()->setChart(m_drawn[i], m_system);
    }
    m_noCharts->setVisible(m_drawn.empty());
    m_chartRoom->setVisible(!m_drawn.empty());
    m_picture->setEnabled(!m_drawn.empty());
    if (other) m_chartColumns = 0;
    arrange();
}

/// Fields and charts in two columns where there is room for their words, else in one.
void TrialPanel::arrange()
{
    constexpr int kFieldLetters = 50, kBandLetters = 120;
    const int letter = fontMetrics().averageCharWidth();
    m_bandRow->setDirection(width() > kBandLetters * letter ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    const int columns = m_fieldRoom->width() > kFieldLetters * letter ? 2 : 1;
    if (columns != m_columns) {
        m_columns = columns;
        int i = 0;
        for (const Field* field : {&m_diameter, &m_width, &m_speed, &m_substrate}) {
            m_fields->addWidget(field->cell, i / columns, i % columns, Qt::AlignTop);
            ++i;
        }
        for (int row = 0; row <= 4; ++row) m_fields->setRowStretch(row, row == 4 ? 1 : 0);
        for (int c = 0; c < 2; ++c) m_fields->setColumnStretch(c, c < columns ? 1 : 0);
    }
    const int charts = m_chartRoom->width() > 2 * chartSize(currentLook()).width() + 3 * sizes().gap ? 2 : 1;
    if (charts == m_chartColumns) return;
    m_chartColumns = charts;
    for (std::size_t i = 0; i < m_chartCells.size(); ++i)
        m_charts->addWidget(m_chartCells[i], static_cast<int>(i) / charts, static_cast<int>(i) % charts);
    for (int c = 0; c < 2; ++c) m_charts->setColumnStretch(c, c < charts ? 1 : 0);
}

void TrialPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void TrialPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) arrange();
}

void TrialPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        emit left();
    else
        QWidget::keyPressEvent(event);
}

void TrialPanel::choosePicture()
{
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Charts as a picture"), QString(), tr("Pictures (*.png)"));
    if (!file.isEmpty()) writePicture(file);
}

void TrialPanel::writePicture(const QString& file)
{
    ChartPicture picture;
    const auto id = [](const auto& input) { return input ? dataText(input->id) : QString(); };
    picture.title =
        tr("%1, job %2, roll %3").arg(id(m_base.inputs.press), id(m_base.inputs.job), id(m_base.inputs.roll));
    picture.mark = tr("TRIAL: not the real roll");
    picture.charts = m_drawn;
    picture.units = m_system;
    const QString name =
        file.endsWith(QLatin1String(".png"), Qt::CaseInsensitive) ? file : file + QLatin1String(".png");
    const QByteArray bytes = pngOf(picture);
    const auto written = writeFile(name.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!written) emit troubled(written.error());
}

}  // namespace taut::app
