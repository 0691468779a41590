// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/choose_lesson.h"

#include <algorithm>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QIntValidator>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/pages/practice/scenario_form.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/people/person.h"

namespace taut::app {

namespace {

/// The press at which this PC most likely stands: that of the newest run here, or the only one that the shop has.
std::string pressHere(const Session& shop)
{
    if (shop.reader() == nullptr) return {};
    records::RunQuery newest;
    newest.limit = 1;
    if (const auto page = shop.reader()->runs(newest, {}); page && !page->rows.empty()) return page->rows.front().press;
    const auto presses = shop.definitions("press");
    return presses.size() == 1 ? presses.front().source.id : std::string();
}

/// A press or a job as people call it; its id where it cannot be read.
template <class Read>
QString nameOf(const Session& shop, const char* what, const std::string& id, const Read& read)
{
    std::string text;
    for (const InputFile& file : shopFiles(shop.options().resources, what))
        if (file.id == id) text = file.text;
    for (const logbook::Definition& one : shop.definitions(what))
        if (one.source.id == id) text = one.source.text;
    Findings notes;
    const std::string name = text.empty() ? std::string() : read(text, notes);
    return dataText(name.empty() ? id : name);
}

}  // namespace

ChooseLesson::ChooseLesson(Session* shop, QWidget* parent) : QWidget(parent), m_shop(shop)
{
    auto* body = new QWidget;
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* layout = new QVBoxLayout(body);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->addWidget(wrapped(tr("What do you want to practise?"), "head", this));
    layout->addWidget(wrapped(tr("A press that answers as a real one does. It may not be as its papers say: look, as "
                                 "you would there."),
                              "soft", this));
    m_list = new RowList(this);
    m_list->setObjectName(QStringLiteral("scenarios"));
    m_list->setAccessibleName(tr("Scenarios"));
    layout->addWidget(m_list, 1);
    m_near = wrapped({}, "strong", this);
    m_near->setObjectName(QStringLiteral("pressHere"));
    layout->addWidget(m_near);
    m_finding = new FindingStrip(this);
    layout->addWidget(m_finding);
    m_whyNot = wrapped({}, "soft", this);
    layout->addWidget(m_whyNot);
    m_seed = new QLineEdit(this);
    m_seed->setObjectName(QStringLiteral("seed"));
    constexpr int kMostSeed = 1'000'000'000;
    m_seed->setValidator(new QIntValidator(0, kMostSeed, m_seed));
    named(m_seed, tr("Number of the chances"));
    m_mode = new PickList(this);
    m_mode->setObjectName(QStringLiteral("mode"));
    m_mode->setMinimumHeight(sizes().control);
    named(m_mode, tr("How it is gone through"));
    fillModes(m_mode);
    // The one over the other where both have not the room: what stands in them is read in full.
    auto* settings = new QWidget(this);
    auto* pairs = new QHBoxLayout(settings);
    pairs->setContentsMargins(0, 0, 0, 0);
    pairs->setSpacing(sizes().gap);
    const auto pair = [&](const QString& text, QWidget* of, int share) {
        auto* column = new QVBoxLayout;
        column->setSpacing(2);
        QLabel* label = wrapped(text, "", settings);
        label->setBuddy(of);
        column->addStretch(1);
        column->addWidget(label);
        column->addWidget(of);
        pairs->addLayout(column, share);
    };
    pair(tr("&How it is gone through"), m_mode, 5);
    pair(tr("Number of the &chances: the same number, the same chances"), m_seed, 4);
    constexpr int kBothBeside = 100;  // letters
    foldBelow(settings, pairs, kBothBeside);
    layout->addWidget(settings);
    auto* row = new FlowRow;
    m_build = worded(tr("B&uild a scenario"), "", this);
    m_build->setObjectName(QStringLiteral("buildScenario"));
    connect(m_build, &QPushButton::clicked, this, &ChooseLesson::buildWanted);
    QPushButton* other = worded(tr("Another &file\u2026"), "", this);
    other->setObjectName(QStringLiteral("otherFile"));
    QPushButton* training = worded(tr("Training &record"), "", this);
    training->setObjectName(QStringLiteral("toTraining"));
    connect(training, &QPushButton::clicked, this, &ChooseLesson::trainingWanted);
    m_begin = worded(tr("&Begin to practise"), "main", this);
    m_begin->setObjectName(QStringLiteral("beginLesson"));
    for (QWidget* one : std::initializer_list<QWidget*>{m_begin, training, m_build, other}) row->addWidget(one);
    layout->addLayout(row);
    m_list->setMinimumHeight(3 * sizes().row);
    whole->addWidget(new ScrollRoom(body, this));
    connect(m_list, &QListWidget::currentRowChanged, this, [this] {
        if (const practice::Scenario* scenario = chosen()) {
            m_seed->setText(QString::number(scenario->seed));
            m_mode->setCurrentIndex(m_mode->findData(static_cast<int>(scenario->mode)));
        }
        settle();
    });
    connect(m_list, &QListWidget::itemActivated, this, &ChooseLesson::give);
    connect(m_begin, &QPushButton::clicked, this, &ChooseLesson::give);
    connect(other, &QPushButton::clicked, this, [this] {
        const QString file = QFileDialog::getOpenFileName(this, tr("Another scenario"), {}, tr("Scenarios (*.toml)"));
        if (!file.isEmpty()) open(file.toStdString());
    });
    connect(shop, &Session::actorChanged, this, &ChooseLesson::settle);
}

void ChooseLesson::refresh()
{
    const QString before = m_list->chosen();
    std::vector<LessonFile> own;
    for (LessonFile& one : m_lessons)
        if (one.file.parent_path() != m_shop->options().resources / "demo" / "scenarios") own.push_back(std::move(one));
    m_lessons = lessonsIn(m_shop->options().resources);
    for (LessonFile& one : own) m_lessons.push_back(std::move(one));
    m_list->clear();
    for (const LessonFile& one : m_lessons) {
        const practice::Scenario& s = one.scenario;
        const QString press = nameOf(*m_shop, "press", s.press, [&](const std::string& text, Findings& notes) {
            const auto read = inputs::readPress(text, s.press, notes);
            return read ? read->name : std::string();
        });
        const QString job = nameOf(*m_shop, "job", s.job, [&](const std::string& text, Findings& notes) {
            const auto read = inputs::readJob(text, s.job, notes);
            return read ? read->title : std::string();
        });
        m_list->add({QString::fromStdString(one.file.string()),
                     dataText(s.title.empty() ? s.id : s.title),
                     {},
                     tr("%1 \u00B7 job %2, %3 \u00B7 roll %4").arg(press, dataText(s.job), job, dataText(s.roll))});
    }
    if (before.isEmpty() || !m_list->choose(before)) m_list->choose(m_list->first());
    settle();
}

void ChooseLesson::open(const std::filesystem::path& file)
{
    auto lesson = lessonFrom(file);
    if (!lesson) return refuse(lesson.error());
    std::erase_if(m_lessons, [&](const LessonFile& one) { return one.file == file; });
    m_lessons.push_back(*std::move(lesson));
    refresh();
    m_list->choose(QString::fromStdString(file.string()));
}

void ChooseLesson::refuse(const Finding& finding) { m_finding->say(finding, UnitSystem::Metric); }

QWidget* ChooseLesson::first() const { return m_list; }

const LessonFile* ChooseLesson::chosenFile() const
{
    const std::string file = m_list->chosen().toStdString();
    for (const LessonFile& one : m_lessons)
        if (one.file.string() == file) return &one;
    return nullptr;
}

const practice::Scenario* ChooseLesson::chosen() const
{
    const LessonFile* file = chosenFile();
    return file == nullptr ? nullptr : &file->scenario;
}

void ChooseLesson::settle()
{
    m_finding->clear();
    const practice::Scenario* scenario = chosen();
    const bool near = scenario != nullptr && scenario->press == pressHere(*m_shop);
    m_near->setText(near ? tr("This scenario is about the press at which this PC stands. Nothing on this page is "
                              "that press: what you do here does nothing there.")
                         : QString());
    m_near->setVisible(near);
    QString why;
    if (!m_shop->actor())
        why = tr("Sign in first: a lesson belongs to somebody.");
    else if (scenario == nullptr)
        why = tr("There is no scenario here: open a file that holds one.");
    m_whyNot->setText(why);
    m_whyNot->setVisible(!why.isEmpty());
    m_begin->setEnabled(why.isEmpty());
    // Whoever builds one knows what is hidden in it.
    m_build->setVisible(m_shop->actor() && people::may(m_shop->actor()->role(), people::Act::Observe));
}

void ChooseLesson::give()
{
    const practice::Scenario* scenario = chosen();
    if (scenario == nullptr || !m_begin->isEnabled()) return;
    practice::Scenario wanted = *scenario;
    if (!m_seed->text().isEmpty()) wanted.seed = m_seed->text().toULongLong();
    wanted.mode = static_cast<practice::Mode>(m_mode->currentData().toInt());
    emit begin(wanted, QString::fromStdString(chosenFile()->text));
}

}  // namespace taut::app
