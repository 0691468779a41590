// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/drift_page.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "app/drawing/control_figure.h"
#include "app/pages/history/narrowing.h"
#include "app/print/report_pane.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/control_view.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/history/drift_report.h"

namespace taut::app {

namespace {

/// As the list says it at its right: how far, and which way.
QString movedWords(const history::Watched& watched, UnitSystem units)
{
    if (!watched.tells()) return DriftPage::tr("too few to tell");
    if (!watched.worth) {
        if (watched.outside == 0) return DriftPage::tr("steady");
        return DriftPage::tr("steady, %1 of %2 outside at first").arg(watched.outside).arg(watched.of);
    }
    const Quantity by(std::abs(watched.moved->by), watched.kind, watched.unit);
    return watched.moved->side > 0 ? DriftPage::tr("%1 higher").arg(quantityText(by, units))
                                   : DriftPage::tr("%1 lower").arg(quantityText(by, units));
}

history::DriftBy driftBy(const PickList* rules)
{
    history::DriftBy by;
    by.rules = static_cast<history::RuleSet>(rules->currentData().toInt());
    return by;
}

QString keyOf(const records::SeriesName& name)
{
    return QString::fromStdString(name.press) + QLatin1Char('\n') + QString::fromStdString(name.target);
}

}  // namespace

DriftPage::DriftPage(Session* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_listAsker(session, this),
      m_seriesAsker(session, this)
{
    // Where it is now is held against where its phase began: so all of it is asked.
    m_narrow = new Narrowing(Narrowing::Press::Any, Narrowing::Time::All, this);
    m_rules = new PickList(this);
    m_rules->setObjectName(QStringLiteral("rules"));
    named(m_rules, tr("Patterns looked for"));
    m_rules->addItem(tr("The usual four"), static_cast<int>(history::RuleSet::Usual));
    m_rules->addItem(tr("Six, warns earlier"), static_cast<int>(history::RuleSet::Early));
    m_rules->addItem(tr("All eight"), static_cast<int>(history::RuleSet::All));
    m_rules->addItem(tr("The older four (1956)"), static_cast<int>(history::RuleSet::WesternElectric));
    m_measure = new PickList(this);
    m_measure->setObjectName(QStringLiteral("measure"));
    named(m_measure, tr("What is followed"));
    m_measure->addItem(tr("As the list has it"), -1);
    m_measure->addItem(tr("What was read"), static_cast<int>(history::Measure::Read));
    m_measure->addItem(tr("How far from its target"), static_cast<int>(history::Measure::FromTarget));
    m_list = new RowList(this);
    m_list->setObjectName(QStringLiteral("series"));
    m_list->setAccessibleName(tr("Readings, what moved most first"));
    for (PickList* list : {m_rules, m_measure}) list->setMinimumHeight(sizes().control);

    auto* left = new QVBoxLayout;
    left->addWidget(m_list, 1);
    auto* narrowBox = new QWidget(this);
    auto* narrow = new QVBoxLayout(narrowBox);
    narrow->setContentsMargins(0, 0, 0, 0);
    narrow->addWidget(m_narrow);
    for (const auto& [name, list] :
         {std::pair(tr("What is followed"), m_measure), std::pair(tr("Patterns looked for"), m_rules)}) {
        auto* label = withRole(new QLabel(name, narrowBox), "soft");
        label->setBuddy(list);
        narrow->addWidget(label);
        narrow->addWidget(list);
    }

    auto* chartBox = new QWidget(this);
    auto* chart = new QVBoxLayout(chartBox);
    chart->setContentsMargins(0, 0, 0, 0);
    m_name = wrapped(QString(), "head", chartBox);
    m_moved = wrapped(QString(), "strong", chartBox);
    m_moved->setObjectName(QStringLiteral("moved"));
    m_chart = new ControlView(chartBox);
    m_point = wrapped(QString(), "", chartBox);
    m_point->setObjectName(QStringLiteral("point"));
    m_open = worded(tr("Open this run"), "main", chartBox);
    m_open->setObjectName(QStringLiteral("openRun"));
    m_sheet = worded(tr("All that is told of it"), "", chartBox);
    m_sheet->setObjectName(QStringLiteral("asSheet"));
    m_picture = worded(tr("Save as picture"), "quiet", chartBox);
    m_picture->setObjectName(QStringLiteral("picture"));
    chart->addWidget(m_name);
    chart->addWidget(m_moved);
    chart->addWidget(m_chart, 1);
    chart->addWidget(m_point);
    auto* row = new FlowRow;
    row->setSpacing(6);
    for (QWidget* w : std::initializer_list<QWidget*>{m_open, m_sheet, m_picture}) row->addWidget(w);
    chart->addLayout(row);

    m_paper = new ReportPane(tr("The sheet of this reading"), this);
    m_chartAgain = worded(tr("Back to the chart"), "quiet", m_paper);
    m_chartAgain->setObjectName(QStringLiteral("backToChart"));
    m_paper->addButton(m_chartAgain);
    m_right = new QStackedWidget(this);
    m_right->addWidget(new ScrollRoom(chartBox, m_right));
    m_right->addWidget(m_paper);

    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    auto* leftBox = new QVBoxLayout;
    m_choose = worded(tr("Choose what is followed"), "", this);
    m_choose->setObjectName(QStringLiteral("chooseFollowed"));
    m_choose->setCheckable(true);
    m_choose->setMinimumHeight(sizes().control);
    narrow->addStretch(1);
    auto* room = new ScrollRoom(narrowBox, this);
    room->hide();
    leftBox->addWidget(m_choose);
    m_only = wrapped(QString(), "strong", this);
    m_only->setObjectName(QStringLiteral("only"));
    leftBox->addWidget(m_only);
    leftBox->addLayout(left, 1);
    leftBox->addWidget(room, 1);
    // The list or what narrows it: there is no room for both.
    connect(m_choose, &QPushButton::toggled, this, [this, room](bool chooses) {
        m_list->setVisible(!chooses);
        room->setVisible(chooses);
        m_choose->setText(chooses ? tr("Back to the list") : tr("Choose what is followed"));
    });
    all->addLayout(leftBox, 2);
    all->addSpacing(sizes().gap);
    all->addWidget(m_right, 4);

    connect(m_narrow, &Narrowing::changed, this, &DriftPage::refill);
    connect(m_list, &QListWidget::currentItemChanged, this, &DriftPage::askSeries);
    for (PickList* list : {m_rules, m_measure})
        connect(list, &QComboBox::currentIndexChanged, this, &DriftPage::askSeries);
    connect(m_chart, &ControlView::dotChosen, this, &DriftPage::tell);
    connect(m_chart, &ControlView::dotOpened, this, &DriftPage::openChosen);
    connect(m_open, &QPushButton::clicked, this, &DriftPage::openChosen);
    connect(m_sheet, &QPushButton::clicked, this, [this] {
        m_right->setCurrentWidget(m_paper);
        m_chartAgain->setFocus();
    });
    connect(m_chartAgain, &QPushButton::clicked, this, [this] {
        m_right->setCurrentIndex(0);
        m_chart->setFocus();
    });
    connect(m_picture, &QPushButton::clicked, this, &DriftPage::savePicture);
    for (Asker* asker : {&m_listAsker, &m_seriesAsker})
        connect(asker, &Asker::refused, this,
                [this](const Finding& finding) { m_name->setText(words(finding, UnitSystem::Metric)); });
}

void DriftPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_session->reader() != nullptr) m_narrow->fill(*m_session->reader());
    refill();
}

void DriftPage::refill()
{
    m_moved->clear();
    m_point->clear();
    const records::CourseQuery only = m_narrow->query();
    QStringList chosen;
    for (const std::string* one : {&only.press, &only.job, &only.substrate})
        if (!one->empty()) chosen << dataText(*one);
    m_only->setText(tr("Only %1").arg(chosen.join(QStringLiteral(" \u00B7 "))));
    m_only->setVisible(!chosen.isEmpty());
    m_name->setText(m_session->reader() == nullptr ? tr("The logbook is not open in this window.")
                                                   : tr("Looking through the readings\u2026"));
    m_listAsker.ask([this, within = m_narrow->query()](const records::Reader& reader,
                                                       const Asker::GoOn& goOn) -> std::function<void()> {
        auto watched = history::watchedOf(reader, within, goOn);
        if (!watched) return [this, why = watched.error()] { m_name->setText(words(why, UnitSystem::Metric)); };
        std::vector<std::pair<history::Watched, Text>> named;
        history::Names names(reader);
        for (history::Watched& one : *watched) {
            Text name = names.target(one.name.press, one.name.target);
            named.emplace_back(std::move(one), std::move(name));
        }
        return [this, named = std::move(named)] {
            std::vector<Item> items;
            for (const auto& [one, name] : named) items.push_back({one, words(name, UnitSystem::Metric)});
            showList(std::move(items));
        };
    });
}

void DriftPage::showList(std::vector<Item> items)
{
    const QString before = m_list->chosen();
    m_items = std::move(items);
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const Item& item : m_items) {
            QStringList more{dataText(item.watched.name.press)};
            if (item.watched.worth) more << tr("since %1").arg(momentHereText(item.watched.sinceMs));
            more << tr("%1 readings").arg(item.watched.points);
            m_list->add({keyOf(item.watched.name), item.name, movedWords(item.watched, UnitSystem::Metric),
                         more.join(QStringLiteral(" \u00B7 ")),
                         item.watched.worth     ? MarkShape::Knot
                         : item.watched.tells() ? MarkShape::Tick
                                                : MarkShape::Dot});
        }
        if (!m_list->choose(before)) m_list->choose(m_list->first());
    }
    if (m_items.empty()) {
        m_drift.reset();
        m_chart->clear();
        m_name->setText(tr("There is no reading in the sealed runs that were chosen."));
        m_paper->showNothing({});
    }
    askSeries();
}

const DriftPage::Item* DriftPage::chosen() const
{
    const QString key = m_list->chosen();
    for (const Item& item : m_items)
        if (keyOf(item.watched.name) == key) return &item;
    return nullptr;
}

void DriftPage::askSeries()
{
    const Item* item = chosen();
    for (QPushButton* button : {m_open, m_sheet, m_picture}) button->setEnabled(item != nullptr && m_drift.has_value());
    if (item == nullptr) return;
    const records::SeriesQuery query = item->watched.query;
    const int wanted = m_measure->currentData().toInt();
    const history::Measure measure = wanted < 0 ? item->watched.measure : static_cast<history::Measure>(wanted);
    const history::DriftBy by = driftBy(m_rules);
    const int offset = SystemClock().now().offsetMinutes;
    m_seriesAsker.ask([this, query, measure, by, offset](const records::Reader& reader,
                                                         const Asker::GoOn& /*goOn*/) -> std::function<void()> {
        const auto failed = [this](const Finding& why) {
            return [this, why] {
                m_drift.reset();
                m_chart->clear();
                m_moved->clear();
                m_point->clear();
                m_name->setText(words(why, UnitSystem::Metric));
                m_paper->showNothing({});
            };
        };
        auto series = history::seriesOf(reader, query, measure);
        if (!series) return failed(series.error());
        auto drift = history::driftOf(*std::move(series), by);
        if (!drift) return failed(drift.error());
        history::Names names(reader);
        auto report = history::driftReport(reader, *drift, names, offset);
        if (!report) return failed(report.error());
        auto figure = history::valuesFigure(*drift, names, offset);
        const UnitSystem units = names.units(query.press);
        return [this, drift = *std::move(drift), report = *std::move(report), units, figure = std::move(figure)] {
            showSeries(drift, report, units, figure);
        };
    });
}

void DriftPage::showSeries(const history::Drift& drift, report::Report report, UnitSystem units,
                           report::ControlFigure figure)
{
    m_drift = drift;
    m_units = units;
    QStringList heading{words(figure.yName, units), dataText(drift.series.press)};
    for (const std::string* one : {&drift.series.job, &drift.series.substrate})
        if (!one->empty()) heading << tr("only %1").arg(dataText(*one));
    m_name->setText(heading.join(QStringLiteral(" \u00B7 ")));
    m_moved->setText(words(history::movedSaid(drift, SystemClock().now().offsetMinutes), units));
    m_chart->show(std::move(figure), units);
    m_paper->show(std::move(report), QString::fromStdString(drift.series.press + '-' + drift.series.target));
    for (QPushButton* button : {m_open, m_sheet, m_picture}) button->setEnabled(true);
    if (m_chart->chosen()) tell(*m_chart->chosen());
}

void DriftPage::tell(std::size_t dot)
{
    if (!m_drift || dot >= m_drift->series.points.size()) return;
    const history::Point& point = m_drift->series.points[dot];
    QStringList said{quantityText(m_drift->series.quantity(point.value), m_units), momentHereText(point.atMs),
                     dataText(point.run), dataText(point.job), tr("Roll %1").arg(dataText(point.roll))};
    if (point.outside) said << tr("outside at first");
    for (const stats::Signal& signal : m_drift->chart.patterns)
        if (std::find(signal.points.begin(), signal.points.end(), dot) != signal.points.end())
            said << words(stats::nameOf(signal.rule), m_units);
    m_point->setText(said.join(QStringLiteral(" \u00B7 ")));
    m_chart->tellChosen(m_point->text());
}

void DriftPage::openChosen()
{
    if (m_drift && m_chart->chosen())
        emit runWanted(QString::fromStdString(m_drift->series.points[*m_chart->chosen()].run));
}

void DriftPage::savePicture()
{
    if (!m_drift) return;
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Save the chart"),
        QString::fromStdString(m_drift->series.press + '-' + m_drift->series.target + ".png"), tr("Pictures (*.png)"));
    if (file.isEmpty()) return;
    // Black on white at twice a screen's size, as it would be printed.
    constexpr int kWidth = 2000, kHeight = 1000;
    constexpr double kUnit = 2;
    QImage picture(kWidth, kHeight, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    QFont font = appFont(11);
    font.setPixelSize(static_cast<int>(14 * kUnit));
    paintControlFigure(painter, QRectF(20, 20, kWidth - 40, kHeight - 40), m_chart->figure(), m_units,
                       Look{paperPalette(), font, kUnit});
    painter.end();
    m_point->setText(picture.save(file)
                         ? tr("Saved: %1").arg(dataText(file))
                         : tr("The picture could not be written to %1. Choose another folder.").arg(dataText(file)));
}

}  // namespace taut::app
