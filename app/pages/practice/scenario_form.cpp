// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/scenario_form.h"

#include <algorithm>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QIntValidator>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QVBoxLayout>

#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/practice/scenario_text.h"

namespace taut::app {

namespace {

constexpr int kMostSeed = 1'000'000'000, kMostDrawn = 100;

/// Ids and texts of everything of a kind that there is: the shop's before what comes with the program.
std::vector<std::pair<std::string, std::string>> allOf(const Session& shop, const char* what)
{
    std::vector<std::pair<std::string, std::string>> all;
    for (const logbook::Definition& one : shop.definitions(what)) all.emplace_back(one.source.id, one.source.text);
    for (const InputFile& file : shopFiles(shop.options().resources, what))
        if (std::none_of(all.begin(), all.end(), [&](const auto& one) { return one.first == file.id; }))
            all.emplace_back(file.id, file.text);
    std::sort(all.begin(), all.end());
    return all;
}

void fill(PickList* list, const Session& shop, const char* what)
{
    list->clear();
    for (const auto& [id, text] : allOf(shop, what)) list->addItem(dataText(id), QString::fromStdString(id));
}

void choose(PickList* list, const std::string& id)
{
    if (const int at = list->findData(QString::fromStdString(id)); at >= 0) list->setCurrentIndex(at);
}

std::string chosenIn(const PickList* list) { return list->currentData().toString().toStdString(); }

}  // namespace

void fillModes(PickList* list)
{
    using practice::Mode;
    const std::pair<Mode, QString> modes[] = {
        {Mode::Do, ScenarioForm::tr("1. Do it, with everything shown")},
        {Mode::TellSteps, ScenarioForm::tr("2. Again, telling the steps")},
        {Mode::TellKeyPoints, ScenarioForm::tr("3. Again, telling the key points")},
        {Mode::TellReasons, ScenarioForm::tr("4. Again, telling the reasons")},
        {Mode::Free, ScenarioForm::tr("Free practice")},
        {Mode::Test, ScenarioForm::tr("Test: nothing is shown, and it counts")}};
    for (const auto& [mode, name] : modes) list->addItem(name, static_cast<int>(mode));
}

ScenarioForm::ScenarioForm(Session* shop, QWidget* parent) : QWidget(parent), m_shop(shop)
{
    auto* body = new QWidget;
    auto* halves = new QHBoxLayout;
    auto* whole = new QVBoxLayout(body);
    whole->setContentsMargins(0, 4, 6, 4);
    auto* column = new QVBoxLayout;
    column->setSpacing(4);
    const auto labelled = [&](const QString& name, QWidget* field, const char* object) {
        auto* label = withRole(new QLabel(name, body), "soft");
        label->setBuddy(field);
        field->setObjectName(QString::fromLatin1(object));
        field->setMinimumHeight(sizes().control);
        column->addWidget(label);
        column->addWidget(field);
    };
    const auto line = [&](const QString& name, const char* object, int most) {
        auto* edit = new QLineEdit(body);
        named(edit, name);
        if (most > 0) edit->setValidator(new QIntValidator(0, most, edit));
        labelled(name, edit, object);
        return edit;
    };
    const auto pick = [&](const QString& name, const char* object) {
        auto* list = new PickList(body);
        named(list, name);
        labelled(name, list, object);
        return list;
    };
    whole->addWidget(wrapped(tr("A scenario of your own"), "head", body));
    whole->addLayout(halves);
    halves->addLayout(column, 1);
    halves->addSpacing(sizes().gap);
    m_title = line(tr("What it is called"), "scenarioTitle", 0);
    m_press = pick(tr("Press"), "scenarioPress");
    m_job = pick(tr("Job"), "scenarioJob");
    m_roll = pick(tr("Roll"), "scenarioRoll");
    m_mode = pick(tr("How it is gone through"), "scenarioMode");
    fillModes(m_mode);
    m_shown = pick(tr("What the press says otherwise is shown"), "scenarioShown");
    m_shown->addItem(tr("Afterwards"), false);
    m_shown->addItem(tr("At once"), true);
    m_seed = line(tr("Number of the chances"), "scenarioSeed", kMostSeed);
    column->addStretch(1);
    column = new QVBoxLayout;
    column->setSpacing(4);
    halves->addLayout(column, 1);
    column->addWidget(wrapped(tr("What is not as it should be"), "head", body));
    m_faultBox = new QWidget(body);
    m_faultRows = new QVBoxLayout(m_faultBox);
    m_faultRows->setContentsMargins(0, 0, 0, 0);
    m_faultRows->setSpacing(2);
    column->addWidget(m_faultBox);
    m_draw = line(tr("And so many more, by chance"), "scenarioDraw", kMostDrawn);
    column->addStretch(1);
    column = whole;
    m_finding = new FindingStrip(body);
    column->addWidget(m_finding);
    auto* acts = new FlowRow;
    const auto add = [&](const QString& text, const char* role, const char* name) {
        QPushButton* button = worded(text, role, body);
        button->setObjectName(QString::fromLatin1(name));
        acts->addWidget(button);
        return button;
    };
    QPushButton* go = add(tr("Practise it"), "main", "scenarioBegin");
    QPushButton* keep = add(tr("Save it as a file\u2026"), "", "scenarioSave");
    QPushButton* leave = add(tr("To the scenarios"), "quiet", "scenarioLeave");
    column->addLayout(acts);
    column->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new ScrollRoom(body, this));
    connect(m_press, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) fillFaults();
    });
    connect(go, &QPushButton::clicked, this, [this] {
        const practice::Scenario wanted = scenario();
        emit begin(wanted, QString::fromStdString(practice::scenarioText(wanted)));
    });
    connect(keep, &QPushButton::clicked, this, &ScenarioForm::save);
    connect(leave, &QPushButton::clicked, this, &ScenarioForm::left);
}

QWidget* ScenarioForm::first() const { return m_title; }

void ScenarioForm::show(const practice::Scenario* from)
{
    m_filling = true;
    m_finding->clear();
    fill(m_press, *m_shop, "press");
    fill(m_job, *m_shop, "job");
    fill(m_roll, *m_shop, "roll");
    const practice::Scenario scenario = from != nullptr ? *from : practice::Scenario{};
    m_title->setText(dataText(scenario.title));
    choose(m_press, scenario.press);
    choose(m_job, scenario.job);
    choose(m_roll, scenario.roll);
    m_mode->setCurrentIndex(m_mode->findData(static_cast<int>(scenario.mode)));
    m_shown->setCurrentIndex(practice::showsAtOnce(scenario) ? 1 : 0);
    m_draw->setText(QString::number(scenario.draw));
    m_seed->setText(QString::number(scenario.seed));
    m_wanted = scenario.faults;
    m_filling = false;
    fillFaults();
}

/// What can be wrong at the press that is chosen.
void ScenarioForm::fillFaults()
{
    for (const Row& row : m_faults) delete row.button;
    m_faults.clear();
    Findings notes;
    for (const auto& [id, text] : allOf(*m_shop, "press")) {
        if (id != chosenIn(m_press)) continue;
        const auto press = inputs::readPress(text, id, notes);
        if (!press) return m_finding->say(press.error(), UnitSystem::Metric);
        for (const practice::Suspect& suspect : practice::suspectsOf(*press)) {
            auto* button = new StatementBox(words(practice::suspectText(suspect, *press), press->units), m_faultBox);
            button->setObjectName(QStringLiteral("fault_") + QString::fromStdString(suspect.what + '_' + suspect.item));
            button->setChecked(std::any_of(m_wanted.begin(), m_wanted.end(), [&](const practice::Fault& fault) {
                return practice::isMeant(suspect, fault.what, fault.item);
            }));
            m_faultRows->addWidget(button);
            m_faults.push_back({suspect, button});
        }
    }
}

practice::Scenario ScenarioForm::scenario() const
{
    practice::Scenario scenario;
    scenario.id = "own_scenario";
    scenario.title = m_title->text().trimmed().toStdString();
    scenario.press = chosenIn(m_press);
    scenario.job = chosenIn(m_job);
    scenario.roll = chosenIn(m_roll);
    scenario.mode = static_cast<practice::Mode>(m_mode->currentData().toInt());
    scenario.atOnce = m_shown->currentData().toBool();
    scenario.draw = m_draw->text().toInt();
    scenario.seed = m_seed->text().toULongLong();
    for (const Row& row : m_faults)
        if (row.button->isChecked())
            scenario.faults.push_back({row.suspect.what, row.suspect.item, practice::usualAmount(row.suspect.what)});
    return scenario;
}

void ScenarioForm::save()
{
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Save the scenario"), tr("scenario") + QStringLiteral(".toml"), tr("Scenarios (*.toml)"));
    if (file.isEmpty()) return;
    const std::string text = practice::scenarioText(scenario());
    QSaveFile out(file);
    const bool written = out.open(QIODevice::WriteOnly) &&
                         out.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) &&
                         out.commit();
    if (written) return emit saved(file);
    m_finding->say(refuse("file.write", file.toStdString(), {"%1 could not be written.", {file.toStdString()}},
                          "Choose a folder in which you may write."),
                   UnitSystem::Metric);
}

}  // namespace taut::app
