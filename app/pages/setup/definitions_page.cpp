// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/definitions_page.h"

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

/// What people call it, as its file says.
QString nameIn(const std::string& what, const std::string& text)
{
    const auto root = readToml(text, "");
    if (!root) return {};
    const Toml* table = root->find(what);
    if (table != nullptr && table->array() != nullptr && !table->array()->empty()) table = &table->array()->front();
    if (table == nullptr) return {};
    for (const char* key : {"name", "title"})
        if (const Toml* name = table->find(key); name != nullptr && name->text() != nullptr && !name->text()->empty())
            return dataText(*name->text());
    return {};
}

/// Under which name its copy begins.
inputs::TomlPath idOf(const std::string& what)
{
    if (what == "substrate") return {std::string("substrate"), std::size_t{0}, std::string("id")};
    return {what, std::string("id")};
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
    connect(m_constant, &ConstantCard::found, this, [this](const std::string& before, const std::string& after) {
        edit({"press", after, before, false});
    });
    connect(m_list, &QListWidget::currentItemChanged, this, [this] { showChosen(); });
    connect(m_list, &QListWidget::itemActivated, m_open, &QPushButton::click);
    connect(session, &Session::busyChanged, this, [this] { settle(); });
    connect(session, &Session::actorChanged, this, [this] { settle(); });
    connect(session, &Session::shopChanged, this, [this] { refill(); });
    connect(session, &Session::opened, this, [this] { refill(); });
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        if (isVisible() && m_pages->currentWidget() == m_overview) m_said->setText(words(finding, UnitSystem::Metric));
    });
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
    connect(m_take, &QPushButton::clicked, this, &DefinitionsPage::takeIn);
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
        if (const Row* row = chosen()) edit({row->what, row->text, row->text, false});
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

void DefinitionsPage::showChosen()
{
    m_said->clear();
    m_editions->clear();
    const Row* row = chosen();
    const QString name = row == nullptr ? QString() : nameIn(row->what, row->text);
    m_name->setText(row == nullptr   ? tr("This logbook knows no press, job, substrate or procedure yet.")
                    : name.isEmpty() ? dataText(row->id)
                                     : name);
    if (row != nullptr && m_session->reader() != nullptr)
        if (const auto editions = m_session->reader()->editions(row->what))
            for (const records::Edition& one : *editions)
                if (one.id == row->id)
                    m_editions->add({QString::number(one.edition), tr("Edition %1").arg(one.edition),
                                     momentHereText(one.atMs), tr("sealed by %1").arg(dataText(one.byName)),
                                     MarkShape::None});
    settle();
}

void DefinitionsPage::settle()
{
    const Row* row = chosen();
    const bool may =
        !m_session->busy() && m_session->actor() && people::may(m_session->actor()->role(), people::Act::EditInputs);
    m_open->setEnabled(row != nullptr);
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

void DefinitionsPage::begin()
{
    const std::string what = m_kind->currentData().toString().toStdString();
    for (const Shelf& shelf : kShelves)
        if (what == shelf.what) edit({what, shelf.begins, {}, true});
}

void DefinitionsPage::copy()
{
    const Row* row = chosen();
    if (row == nullptr) return;
    std::string id = row->id + "_copy";
    for (int n = 2;; ++n) {
        bool taken = false;
        for (const Row& other : m_rows) taken = taken || (other.what == row->what && other.id == id);
        if (!taken) break;
        id = row->id + "_copy_" + std::to_string(n);
    }
    const auto text = inputs::setToml(row->text, idOf(row->what), tomlQuoted(id));
    if (!text) return m_said->setText(words(text.error(), UnitSystem::Metric));
    edit({row->what, *text, row->text, true});
}

void DefinitionsPage::findConstant(const std::string& press, const std::string& zone)
{
    refill();
    for (const Row& row : m_rows)
        if (row.what == "press" && row.id == press) {
            m_constant->open(row.text, zone);
            m_pages->setCurrentWidget(m_constant);
            m_constant->first()->setFocus();
        }
}

bool DefinitionsPage::findsConstant() const { return m_pages->currentWidget() == m_constant; }

void DefinitionsPage::takeIn()
{
    m_said->clear();
    std::vector<std::filesystem::path> files;
    for (const QString& file :
         QFileDialog::getOpenFileNames(this, tr("Take in what a run is begun from"), {}, tr("TOML files (*.toml)")))
        files.emplace_back(file.toStdString());
    if (!files.empty()) m_session->takeIn(files);
}

void DefinitionsPage::writeOut()
{
    const Row* row = chosen();
    if (row == nullptr) return;
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Write it out to a file"), dataText(row->id) + QStringLiteral(".toml"), tr("TOML files (*.toml)"));
    if (file.isEmpty()) return;
    const auto written = writeFile(file.toStdString(), row->text);
    m_said->setText(written ? tr("Written: %1").arg(dataText(file)) : words(written.error(), UnitSystem::Metric));
}

}  // namespace taut::app
