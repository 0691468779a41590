// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/definitions_page.h"

#include <algorithm>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/pages/setup/constant_card.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/inputs/toml_edit.h"

namespace taut::app {

namespace {

struct Shelf {
    const char* what;
    const char* head;
    const char* one;
    const char* begins;  ///< what a new one begins as
};
constexpr Shelf kShelves[] = {{"press", QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "Presses"),
                               QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "a press"),
                               "format = 1\n\n[press]\nid = \"new\"\nname = \"\"\nunits = \"metric\"\n"},
                              {"substrate", QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "Substrates"),
                               QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "a substrate"),
                               "format = 1\n\n[[substrate]]\nid = \"new\"\nname = \"\"\n"},
                              {"job", QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "Jobs"),
                               QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "a job"),
                               "format = 1\n\n[job]\nid = \"new\"\ntitle = \"\"\n"},
                              {"procedure", QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "Procedures"),
                               QT_TRANSLATE_NOOP("taut::app::DefinitionsPage", "a procedure"), ""}};

/// Where this key of it stands.
inputs::TomlPath pathOf(const std::string& what, const std::string& key)
{
    if (what == "substrate") return {std::string("substrate"), std::size_t{0}, key};
    return {what, key};
}

}  // namespace

DefinitionsPage::DefinitionsPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_pages = new QStackedWidget(this);
    m_overview = new QWidget(m_pages);
    auto* halves = new QHBoxLayout(m_overview);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->addWidget(new ScrollRoom(buildList(), m_overview), 2);
    halves->addSpacing(sizes().gap);
    halves->addWidget(new ScrollRoom(buildCard(), m_overview), 3);
    m_editor = new DefinitionEditor(session, m_pages);
    m_constant = new ConstantCard(session, m_pages);
    for (QWidget* w : std::initializer_list<QWidget*>{m_overview, m_editor, m_constant}) m_pages->addWidget(w);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pages);
    const auto back = [this] {
        m_pages->setCurrentWidget(m_overview);
        refill();
        m_list->setFocus();
    };
    connect(m_editor, &DefinitionEditor::left, this, back);
    connect(m_constant, &ConstantCard::left, this, back);
    connect(m_constant, &ConstantCard::found, this, &DefinitionsPage::offerConstant);
    connect(m_list, &QListWidget::currentItemChanged, this, [this] { showChosen(); });
    connect(m_list, &QListWidget::itemActivated, m_open, &QPushButton::click);
    connect(session, &Session::busyChanged, this, [this] { settle(); });
    connect(session, &Session::actorChanged, this, [this] { settle(); });
    connect(m_editions, &QListWidget::currentItemChanged, this, [this] { settle(); });
    connect(m_editions, &QListWidget::itemActivated, m_open, &QPushButton::click);
    connect(session, &Session::shopChanged, this, [this] {
        refill();
        if (m_taking.isOn()) m_said->setText(m_taking.told(*m_session));
    });
    connect(session, &Session::opened, this, [this] { refill(); });
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (!tells(finding) || m_pages->currentWidget() != m_overview) return;
        QStringList all{m_said->text(), m_taking.refused(finding)};
        all.removeAll(QString());
        m_said->setText(all.join(QLatin1Char('\n')));
    });
}

void DefinitionsPage::offerConstant(const std::string& before, const std::string& after, const std::string& zone)
{
    edit({"press", before, before, false});
    m_editor->take(after);
    m_editor->showKey("zone", zone, "torque_per_setting");
}

QWidget* DefinitionsPage::buildList()
{
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_list = new RowList(box);
    m_list->setAccessibleName(tr("What runs are begun from"));
    m_list->setMinimumHeight(4 * sizes().row);
    column->addWidget(m_list, 1);
    auto* row = new QHBoxLayout;
    foldBelow(box, row, 36);
    m_kind = new PickList(box);
    named(m_kind, tr("What is begun anew"));
    for (const Shelf& shelf : kShelves)
        if (*shelf.begins != '\0') m_kind->addItem(tr(shelf.one), QString::fromLatin1(shelf.what));
    m_new = worded(tr("Begin anew:"), "", box);
    row->addWidget(m_new);
    row->addWidget(m_kind, 1);
    column->addLayout(row);
    m_take = worded(tr("Take in files\u2026"), "", box);
    m_back = worded(tr("Back to the people"), "", box);
    for (QPushButton* button : {m_new, m_take, m_back}) button->setMinimumHeight(sizes().control);
    column->addWidget(m_take);
    column->addWidget(m_back);
    connect(m_new, &QPushButton::clicked, this, &DefinitionsPage::begin);
    connect(m_take, &QPushButton::clicked, this, &DefinitionsPage::chooseFiles);
    connect(m_back, &QPushButton::clicked, this, &DefinitionsPage::left);
    return box;
}

QWidget* DefinitionsPage::buildCard()
{
    auto* card = new QWidget(this);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(20, 10, 20, 10);
    column->setSpacing(sizes().gap);
    m_name = wrapped({}, "longSay", card);
    m_whyNot = wrapped({}, "strong", card);
    m_said = wrapped({}, "strong", card);
    m_editions = new RowList(card);
    m_editions->setAccessibleName(tr("Editions"));
    m_open = worded(tr("Open"), "main", card);
    m_copy = worded(tr("Copy it, and adapt the copy"), "answer", card);
    m_find = worded(tr("Find what a setting does"), "answer", card);
    m_out = worded(tr("Write it out to a file\u2026"), "answer", card);
    column->addWidget(m_name);
    column->addWidget(m_whyNot);
    column->addWidget(m_said);
    m_editions->setMinimumHeight(2 * sizes().row);
    column->addWidget(m_editions, 1);
    for (QPushButton* button : {m_open, m_copy, m_find, m_out}) column->addWidget(button);
    connect(m_open, &QPushButton::clicked, this, [this] {
        bool earlier = false;
        if (const auto row = shown(&earlier))
            edit({row->what, row->text, chosen()->text, false, earlier ? row->edition : 0});
    });
    connect(m_copy, &QPushButton::clicked, this, &DefinitionsPage::copy);
    connect(m_out, &QPushButton::clicked, this, &DefinitionsPage::writeOut);
    connect(m_find, &QPushButton::clicked, this, [this] {
        if (const Row* row = chosen()) findConstant(row->id);
    });
    return card;
}

QWidget* DefinitionsPage::first() const { return m_list; }

void DefinitionsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_pages->currentWidget() == m_overview) refill();
}

void DefinitionsPage::refill()
{
    const QString before = m_list->chosen();
    m_rows.clear();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const Shelf& shelf : kShelves) {
            m_list->add({{}, tr(shelf.head), {}, {}, MarkShape::None});
            for (const logbook::Definition& one : m_session->definitions(shelf.what)) {
                const QString name = nameIn(shelf.what, one.source.text), id = dataText(one.source.id);
                m_list->add({QString::number(m_rows.size()), name.isEmpty() ? id : name,
                             tr("edition %1").arg(one.source.edition), id, MarkShape::None});
                m_rows.push_back({shelf.what, one.source.id, one.source.edition, one.source.text});
            }
        }
        if (!m_list->choose(before)) m_list->choose(m_list->first());
    }
    showChosen();
}

const DefinitionsPage::Row* DefinitionsPage::chosen() const
{
    bool is = false;
    const std::size_t at = m_list->chosen().toULong(&is);
    return is && at < m_rows.size() ? &m_rows[at] : nullptr;
}

std::optional<DefinitionsPage::Row> DefinitionsPage::shown(bool* earlier) const
{
    const Row* row = chosen();
    if (row == nullptr) return std::nullopt;
    Row out = *row;
    for (const records::Edition& one : m_known)
        if (one.edition != row->edition && QString::number(one.edition) == m_editions->chosen())
            if (const auto text = m_session->reader()->definition(row->what, one.sha256); text && *text) {
                out.edition = one.edition;
                out.text = (*text)->text;
            }
    if (earlier != nullptr) *earlier = out.edition != row->edition;
    return out;
}

void DefinitionsPage::showChosen()
{
    m_said->clear();
    const QSignalBlocker quiet(m_editions);
    m_editions->clear();
    m_known.clear();
    const Row* row = chosen();
    const QString name = row == nullptr ? QString() : nameIn(row->what, row->text);
    m_name->setText(row == nullptr   ? tr("This logbook knows no press, job, substrate or procedure yet.")
                    : name.isEmpty() ? dataText(row->id)
                                     : name);
    if (row != nullptr && m_session->reader() != nullptr)
        if (const auto editions = m_session->reader()->editions(row->what))
            for (const records::Edition& one : *editions)
                if (one.id == row->id) {
                    m_known.push_back(one);
                    m_editions->add({QString::number(one.edition), tr("Edition %1").arg(one.edition),
                                     momentHereText(one.atMs), tr("sealed by %1").arg(dataText(one.byName)),
                                     MarkShape::None});
                }
    if (row != nullptr) m_editions->choose(QString::number(row->edition));
    settle();
}

void DefinitionsPage::settle()
{
    const Row* row = chosen();
    const bool may =
        !m_session->busy() && m_session->actor() && people::may(m_session->actor()->role(), people::Act::EditInputs);
    m_open->setEnabled(row != nullptr);
    const bool earlier =
        row != nullptr && !m_editions->chosen().isEmpty() && m_editions->chosen() != QString::number(row->edition);
    m_open->setText(earlier ? tr("Open edition %1").arg(m_editions->chosen()) : tr("Open"));
    m_open->setAccessibleName(m_open->text());
    m_out->setEnabled(row != nullptr);
    m_copy->setEnabled(row != nullptr && may);
    m_find->setVisible(row != nullptr && row->what == "press");
    m_new->setEnabled(may);
    m_take->setEnabled(may);
    m_whyNot->setText(!m_session->actor()        ? tr("Sign in to change something here.")
                      : may || m_session->busy() ? QString()
                                                 : tr("A supervisor seals editions; anybody may look."));
}

void DefinitionsPage::edit(DefinitionEditor::Opened opened)
{
    m_editor->open(std::move(opened));
    m_pages->setCurrentWidget(m_editor);
    m_editor->first()->setFocus();
}

bool DefinitionsPage::isTaken(const std::string& what, const std::string& id) const
{
    return std::any_of(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.what == what && row.id == id; });
}

void DefinitionsPage::begin()
{
    const std::string what = m_kind->currentData().toString().toStdString();
    std::string id = "new";
    for (int n = 2; isTaken(what, id); ++n) id = "new_" + std::to_string(n);
    for (const Shelf& shelf : kShelves) {
        if (what != shelf.what) continue;
        const auto text = inputs::setToml(shelf.begins, pathOf(what, "id"), tomlQuoted(id));
        if (!text) return m_said->setText(words(text.error(), UnitSystem::Metric));
        edit({what, *text, {}, true});
    }
}

/// Under an id that is free, and a name by which a list tells the two apart.
void DefinitionsPage::copy()
{
    const auto row = shown();
    if (!row) return;
    std::string id = row->id + "_copy";
    int n = 1;
    while (isTaken(row->what, id)) id = row->id + "_copy_" + std::to_string(++n);
    auto text = inputs::setToml(row->text, pathOf(row->what, "id"), tomlQuoted(id));
    std::string key;
    const QString name = nameIn(row->what, row->text, &key);
    const QString copied = n == 1 ? tr("%1 (copy)").arg(name) : tr("%1 (copy %2)").arg(name).arg(n);
    if (text && !name.isEmpty())
        text = inputs::setToml(*text, pathOf(row->what, key), tomlQuoted(copied.toStdString()));
    if (!text) return m_said->setText(words(text.error(), UnitSystem::Metric));
    edit({row->what, *text, row->text, true});
}

void DefinitionsPage::findConstant(const std::string& press, const std::string& zone)
{
    refill();
    // What somebody writes is not let go for something else.
    if (m_pages->currentWidget() == m_editor && m_editor->changed()) return m_editor->leave();
    for (const Row& row : m_rows)
        if (row.what == "press" && row.id == press) {
            m_constant->open(row.text, zone);
            m_pages->setCurrentWidget(m_constant);
            m_constant->first()->setFocus();
        }
}

bool DefinitionsPage::findsConstant() const { return m_pages->currentWidget() == m_constant; }

void DefinitionsPage::chooseFiles()
{
    std::vector<std::filesystem::path> files;
    for (const QString& file :
         QFileDialog::getOpenFileNames(this, tr("Take in what a run is begun from"), {}, tr("TOML files (*.toml)")))
        files.emplace_back(file.toStdString());
    if (!files.empty()) takeIn(files);
}

void DefinitionsPage::takeIn(const std::vector<std::filesystem::path>& files)
{
    m_said->clear();
    m_taking.begin(*m_session, files);
    m_session->takeIn(files);
}

bool DefinitionsPage::tells(const Finding& refusal) const
{
    return isVisible() && m_session->actor() && refusal.code.rfind("sign_in.", 0) != 0;
}

void DefinitionsPage::writeOut()
{
    const auto row = shown();
    if (!row) return;
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Write it out to a file"), dataText(row->id) + QStringLiteral(".toml"), tr("TOML files (*.toml)"));
    if (file.isEmpty()) return;
    const auto written = writeFile(file.toStdString(), row->text);
    m_said->setText(written ? tr("Written: %1").arg(dataText(file)) : words(written.error(), UnitSystem::Metric));
}

}  // namespace taut::app
