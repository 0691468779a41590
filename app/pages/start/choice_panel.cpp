// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/choice_panel.h"

#include <algorithm>

#include <QEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/seams/translations.h"
#include "app/text/language.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/units/parse.h"

namespace taut::app {

namespace {

constexpr const char* kKinds[] = {"full", "next_roll", "re_web", "restart"};

/// "north · North press": the id by which people know it and what it is called.
QString entry(const run::Source& source, const char* key)
{
    const auto toml = readToml(source.text, source.id);
    QString title;
    if (toml)
        for (const char* table : {"press", "job", "substrate"}) {
            const Toml* t = toml->find(table);
            if (t != nullptr && t->array() != nullptr && !t->array()->empty()) t = &t->array()->front();
            const Toml* value = t ? t->find(key) : nullptr;
            if (value != nullptr && value->text() != nullptr) title = QString::fromStdString(*value->text());
        }
    const QString id = QString::fromStdString(source.id);
    return dataText(title.isEmpty() ? id : QStringLiteral("%1 · %2").arg(id, title));
}

/// Refills a list and keeps what was chosen, if it is still there.
void fill(QComboBox* box, const std::vector<std::pair<QString, QString>>& entries)
{
    const QSignalBlocker quiet(box);
    const QString before = box->currentData().toString();
    box->clear();
    for (const auto& [id, text] : entries) box->addItem(text, id);
    const int index = box->findData(before);
    box->setCurrentIndex(index >= 0 ? index : entries.empty() ? -1 : 0);
}

std::vector<std::pair<QString, QString>> entries(const std::vector<logbook::Definition>& all, const char* key)
{
    std::vector<std::pair<QString, QString>> list;
    list.reserve(all.size());
    for (const logbook::Definition& d : all)
        list.emplace_back(QString::fromStdString(d.source.id), entry(d.source, key));
    return list;
}

/// The substrate that a roll's file names; "" when it cannot be read.
std::string materialOf(const InputFile& file)
{
    Findings notes;
    const auto roll = inputs::readRoll(file.text, file.file, notes);
    return roll ? roll->substrate : std::string();
}

/// "R0042 · paper-label-80"
QString shownName(const std::string& roll, const std::string& material)
{
    return dataText(material.empty() ? roll : roll + " \u00B7 " + material);
}

}  // namespace

ChoicePanel::ChoicePanel(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_grid = new QGridLayout(this);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(sizes().gap);
    m_grid->setVerticalSpacing(2);
    // In the order in which they are gone through; only somebody at the press can say whether a web is in it.
    m_press = addList(tr("Press"), Room::Half);
    m_kind = addList(tr("Kind of run"), Room::Half);
    for (const char* kind : kKinds) m_kind->addItem(runKindText(kind), QString::fromLatin1(kind));
    m_parent = addList(tr("It goes on from"), Room::Whole);
    m_parentCell = m_cells.back().widget;
    m_parentCell->hide();
    m_web = new QButtonGroup(this);
    int id = 0;
    for (const QString& text : {tr("A web is in the press"), tr("The press is empty")}) {
        QPushButton* button = worded(text, "", this);
        button->setCheckable(true);
        m_web->addButton(button, id++);
        m_cells.push_back({button, Room::Half});
    }
    m_job = addList(tr("Job"), Room::Whole);
    m_substrate = addList(tr("Substrate"), Room::Whole);
    m_roll = addList(tr("Roll"), Room::Half);
    m_diameter = new QLineEdit;
    m_diameter->setPlaceholderText(tr("480 mm or 18 3/4 in"));
    addCell(tr("Its diameter, if measured"), m_diameter, Room::Half);
    QPushButton* file = worded(tr("Another roll, from a file"), "quiet", this);
    QPushButton* label = worded(tr("Another roll, scanned or typed"), "quiet", this);
    label->setObjectName(QStringLiteral("otherRoll"));
    m_try = worded(tr("Try other values"), "", this);
    // One below the other they would push the last of them off a small screen.
    auto* others = new QWidget(this);
    m_others = new QBoxLayout(QBoxLayout::LeftToRight, others);
    m_others->setContentsMargins(0, 0, 0, 0);
    m_others->setSpacing(sizes().gap);
    for (QPushButton* button : {file, label, m_try}) m_others->addWidget(button, 1);
    m_cells.push_back({others, Room::Whole});
    arrange();

    for (QComboBox* box : {m_press, m_job, m_substrate, m_roll, m_kind, m_parent})
        connect(box, &QComboBox::currentIndexChanged, this, &ChoicePanel::changed);
    connect(m_job, &QComboBox::currentIndexChanged, this, &ChoicePanel::followJob);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        m_parentCell->setVisible(m_kind->currentIndex() > 0);
        fillRuns();
    });
    connect(m_press, &QComboBox::currentIndexChanged, this, &ChoicePanel::fillRuns);
    connect(m_diameter, &QLineEdit::textChanged, this, &ChoicePanel::changed);
    connect(m_web, &QButtonGroup::idToggled, this, &ChoicePanel::changed);
    connect(file, &QPushButton::clicked, this, &ChoicePanel::openRollFile);
    connect(label, &QPushButton::clicked, this, &ChoicePanel::rollWanted);
}

/// A field that is easy to hit, under its name.
void ChoicePanel::addCell(const QString& name, QWidget* field, Room room)
{
    auto* cell = new QWidget(this);
    auto* column = new QVBoxLayout(cell);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* label = wrapped(name, "", cell);
    label->setBuddy(field);
    named(field, name);
    column->addWidget(label);
    column->addWidget(field);
    m_cells.push_back({cell, room});
}

QComboBox* ChoicePanel::addList(const QString& name, Room room)
{
    auto* box = new PickList(this);
    addCell(name, box, room);
    return box;
}

/// Two columns where there is room for their words, else one.
void ChoicePanel::arrange()
{
    constexpr int kLetters = 50;
    const bool two = width() > kLetters * fontMetrics().averageCharWidth();
    if (m_columns == (two ? 2 : 1)) return;
    m_columns = two ? 2 : 1;
    m_others->setDirection(two ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    for (const Cell& cell : m_cells) m_grid->removeWidget(cell.widget);
    int row = 0, column = 0;
    for (const Cell& cell : m_cells) {
        const bool half = two && cell.room == Room::Half;
        if (!half && column > 0) {
            ++row;
            column = 0;
        }
        m_grid->addWidget(cell.widget, row, column, 1, two && !half ? 2 : 1);
        if (half && column == 0) {
            column = 1;
        } else {
            ++row;
            column = 0;
        }
    }
    for (int i = 0; i < 2; ++i) m_grid->setColumnStretch(i, i < m_columns ? 1 : 0);
    for (int i = 0; i < m_grid->rowCount(); ++i) m_grid->setRowStretch(i, 0);
    m_grid->setRowStretch(row + 1, 1);
}

void ChoicePanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void ChoicePanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) arrange();
}

void ChoicePanel::refill()
{
    m_presses = m_session->definitions("press");
    m_jobs = m_session->definitions("job");
    m_substrates = m_session->definitions("substrate");
    m_procedures = m_session->definitions("procedure");
    if (m_rolls.empty()) m_rolls = shopFiles(m_session->options().resources, "roll");
    fill(m_press, entries(m_presses, "name"));
    fill(m_substrate, entries(m_substrates, "name"));
    const bool first = m_job->currentIndex() < 0;
    fill(m_job, entries(m_jobs, "title"));
    std::vector<std::pair<QString, QString>> rolls;
    for (const InputFile& r : m_rolls) {
        // One that cannot be read is shown, so that it is said what is wrong with it.
        const std::string material = materialOf(r);
        const bool known =
            material.empty() || std::any_of(m_substrates.begin(), m_substrates.end(),
                                            [&](const logbook::Definition& d) { return d.source.id == material; });
        if (!known) continue;
        rolls.emplace_back(QString::fromStdString(r.id), shownName(r.id, material));
    }
    fill(m_roll, rolls);
    if (first && m_job->count() > 0) emit m_job->currentIndexChanged(m_job->currentIndex());
    fillRuns();
    emit changed();
}

/// A job names its substrate, and with it goes a roll of it; another one may still be chosen.
void ChoicePanel::followJob()
{
    const run::Source* job = chosen(m_jobs, m_job);
    Findings notes;
    const auto read = job != nullptr ? inputs::readJob(job->text, job->id, notes) : Result<inputs::Job>(inputs::Job{});
    if (job == nullptr || !read) return;
    if (const int i = m_substrate->findData(QString::fromStdString(read->substrate)); i >= 0)
        m_substrate->setCurrentIndex(i);
    const auto fits = [&](const InputFile& r) { return materialOf(r) == read->substrate; };
    const std::string now = m_roll->currentData().toString().toStdString();
    if (std::any_of(m_rolls.begin(), m_rolls.end(), [&](const InputFile& r) { return r.id == now && fits(r); })) return;
    const auto other = std::find_if(m_rolls.begin(), m_rolls.end(), fits);
    if (other != m_rolls.end()) m_roll->setCurrentIndex(m_roll->findData(QString::fromStdString(other->id)));
}

void ChoicePanel::forgetLook()
{
    m_web->setExclusive(false);
    for (QAbstractButton* button : m_web->buttons()) button->setChecked(false);
    m_web->setExclusive(true);
    m_diameter->clear();
}

void ChoicePanel::fillRuns()
{
    std::vector<std::pair<QString, QString>> runs;
    if (m_session->reader() != nullptr && !pressId().empty()) {
        records::RunQuery query;
        query.press = pressId();
        query.state = "completed";
        query.limit = 20;
        if (auto page = m_session->reader()->runs(query, ""))
            for (const records::RunRow& r : page->rows) {
                const QString id = QString::fromStdString(r.run);
                runs.emplace_back(id, dataText(QStringLiteral("%1 · %2").arg(id, QString::fromStdString(r.job))));
            }
    }
    fill(m_parent, runs);
}

void ChoicePanel::openRollFile()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("A roll's file"), QString(), tr("Roll files (*.toml)"));
    if (path.isEmpty()) return;
    const auto text = readFile(path.toStdString());
    if (!text) {
        emit troubled(text.error());
        return;
    }
    Findings notes;
    const auto roll = inputs::readRoll(*text, path.toStdString(), notes);
    if (!roll || stops(notes)) {
        emit troubled(roll ? notes.front() : roll.error());
        return;
    }
    use({roll->id, *text, path.toStdString()});
}

void ChoicePanel::use(const InputFile& roll)
{
    const auto same = [&](const InputFile& r) { return r.id == roll.id && r.text == roll.text; };
    const QString id = QString::fromStdString(roll.id);
    if (std::none_of(m_rolls.begin(), m_rolls.end(), same)) {
        // What was said of it last counts.
        std::erase_if(m_rolls, [&](const InputFile& r) { return r.id == roll.id; });
        m_rolls.insert(m_rolls.begin(), roll);
        const QSignalBlocker quiet(m_roll);
        if (const int before = m_roll->findData(id); before >= 0) m_roll->removeItem(before);
        m_roll->insertItem(0, shownName(roll.id, materialOf(roll)), id);
        m_roll->setCurrentIndex(-1);
    }
    m_roll->setCurrentIndex(m_roll->findData(id));
}

std::vector<RollAtHand> ChoicePanel::rollsAtHand() const
{
    const run::Source* job = chosen(m_jobs, m_job);
    Findings notes;
    const auto read = job != nullptr ? inputs::readJob(job->text, job->id, notes) : Result<inputs::Job>(inputs::Job{});
    std::vector<RollAtHand> rolls;
    for (const InputFile& roll : m_rolls) {
        const int at = m_roll->findData(QString::fromStdString(roll.id));
        const bool other = read && !read->substrate.empty() && materialOf(roll) != read->substrate;
        if (at >= 0) rolls.push_back({m_roll->itemText(at), roll.text, other});
    }
    return rolls;
}

const run::Source* ChoicePanel::chosen(const std::vector<logbook::Definition>& all, const QComboBox* box) const
{
    const std::string id = box->currentData().toString().toStdString();
    for (const logbook::Definition& d : all)
        if (d.source.id == id) return &d.source;
    return nullptr;
}

std::string ChoicePanel::pressId() const { return m_press->currentData().toString().toStdString(); }

std::optional<run::Sources> ChoicePanel::sources() const
{
    const run::Source* press = chosen(m_presses, m_press);
    const run::Source* job = chosen(m_jobs, m_job);
    const run::Source* substrate = chosen(m_substrates, m_substrate);
    const int roll = m_roll->currentIndex();
    if (!press || !job || !substrate || m_procedures.empty() || roll < 0) return std::nullopt;
    const std::string rollId = m_roll->currentData().toString().toStdString();
    for (const InputFile& r : m_rolls)
        if (r.id == rollId)
            return run::Sources{*press,
                                *job,
                                *substrate,
                                run::sourceOf(r.id, 0, r.text),
                                m_procedures.front().source,
                                spoken(m_procedures.front().source)};
    return std::nullopt;
}

/// A run is read in the language in which it is begun. The files are looked at once for each.
const run::Source& ChoicePanel::spoken(const run::Source& procedure) const
{
    const std::string wanted = procedure.sha256 + language().toStdString();
    if (wanted != m_spokenFor) {
        m_spoken = translationFor(m_session->options().resources, procedure, language().toStdString());
        m_spokenFor = wanted;
    }
    return m_spoken;
}

run::BasisQuestion ChoicePanel::question() const
{
    run::BasisQuestion q;
    q.kind = m_kind->currentData().toString().toStdString();
    q.webInPress = m_web->checkedId() != 1;
    if (const QString typed = m_diameter->text().trimmed(); !typed.isEmpty())
        if (auto d = parseQuantity(typed.toStdString(), Kind::Length)) q.presentDiameter = d->as<Kind::Length>();
    return q;
}

std::string ChoicePanel::parentRun() const
{
    return m_kind->currentIndex() > 0 ? m_parent->currentData().toString().toStdString() : std::string();
}

std::optional<QString> ChoicePanel::missing() const
{
    if (m_presses.empty() || m_jobs.empty() || m_substrates.empty())
        return tr("This logbook knows no press, job or substrate yet: a supervisor takes their files in, on the page "
                  "\"Shop\".");
    if (!sources()) return tr("Choose a press, a job, a substrate and a roll.");
    if (const QString typed = m_diameter->text().trimmed(); !typed.isEmpty())
        if (auto d = parseQuantity(typed.toStdString(), Kind::Length); !d) return words(d.error(), UnitSystem::Metric);
    if (m_kind->currentIndex() > 0 && parentRun().empty())
        return tr("This kind of run goes on from a run that was signed on this press: there is none yet.");
    if (m_web->checkedId() < 0) return tr("Look at the press and say whether a web is in it.");
    return std::nullopt;
}

}  // namespace taut::app
