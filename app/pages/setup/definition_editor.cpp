// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/definition_editor.h"

#include <algorithm>
#include <utility>

#include <QHBoxLayout>
#include <QShortcut>
#include <QTextBlock>
#include <QVBoxLayout>

#include "app/pages/setup/changed_targets.h"
#include "app/pages/setup/key_table.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kPauseMs = 250;
constexpr std::size_t kMostUndo = 200;

std::string idIn(const std::string& what, const std::string& text)
{
    const auto found = definitionsIn(what, text, "");
    return found.empty() ? std::string() : found.front().id;
}

}  // namespace

DefinitionEditor::DefinitionEditor(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_left = new QStackedWidget(this);
    m_left->addWidget(buildForm());
    m_plain = new QPlainTextEdit(m_left);
    m_plain->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_plain->setTabChangesFocus(true);
    named(m_plain, tr("The text of the file"));
    m_left->addWidget(m_plain);
    m_right = new QStackedWidget(this);
    m_right->addWidget(buildRight());
    m_targets = new ChangedTargets(session, m_right);
    m_right->addWidget(m_targets);
    auto* body = new QWidget;
    auto* halves = new QHBoxLayout(body);
    halves->setContentsMargins(0, 0, 0, 0);
    foldBelow(this, halves, 100);
    halves->addWidget(m_left, 7);
    halves->addSpacing(sizes().gap);
    halves->addWidget(m_right, 4);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildBar());
    m_leaving = new QWidget(this);
    auto* leaving = new QHBoxLayout(m_leaving);
    leaving->setContentsMargins(0, 0, 0, 0);
    auto* stay = worded(tr("Stay"), "", m_leaving);
    auto* go = worded(tr("Let the changes go"), "", m_leaving);
    leaving->addWidget(wrapped(tr("What was changed here is sealed nowhere yet."), "strong", m_leaving), 1);
    leaving->addWidget(go);
    leaving->addWidget(stay);
    m_leaving->hide();
    column->addWidget(m_leaving);
    m_said = wrapped({}, "strong", this);
    m_said->hide();
    column->addWidget(m_said);
    column->addWidget(new ScrollRoom(body, this), 1);

    m_settled = new QTimer(this);
    m_settled->setSingleShot(true);
    m_settled->setInterval(kPauseMs);
    connect(m_settled, &QTimer::timeout, this, [this] {
        const std::string typed = m_plain->toPlainText().toStdString();
        if (typed != m_text) take(typed);
    });
    connect(m_plain, &QPlainTextEdit::textChanged, m_settled, qOverload<>(&QTimer::start));
    connect(stay, &QPushButton::clicked, m_leaving, &QWidget::hide);
    connect(go, &QPushButton::clicked, this, [this] {
        m_leaving->hide();
        m_text = m_opened.text;
        m_opened.isNew = false;
        emit left();
    });
    connect(session, &Session::busyChanged, this, [this] { settle(); });
    connect(session, &Session::shopChanged, this, [this] {
        if (!m_asked.empty()) tellSealed();
        settle();
    });
    connect(session, &Session::refused, this, [this](const Finding& finding) {
        const bool ofTheDoor = finding.code.rfind("sign_in.", 0) == 0;
        if (m_asked.empty() && (!isVisible() || ofTheDoor)) return;
        m_asked.clear();
        say(said(finding));
    });
    // A line that is being written takes back its own letters first.
    auto* undo = new QShortcut(QKeySequence::Undo, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(undo, &QShortcut::activated, m_undoButton, &QPushButton::click);
    connect(session, &Session::actorChanged, this, [this] {
        if (isVisible()) showGroup();
        settle();
    });
}

QWidget* DefinitionEditor::buildBar()
{
    auto* bar = new QWidget(this);
    auto* row = new FlowRow(bar);
    m_title = new OneLine("head", bar);
    m_title->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_textView = worded(tr("As te&xt"), "", bar);
    m_textView->setCheckable(true);
    m_undoButton = worded(tr("&Undo"), "", bar);
    m_compare = worded(tr("Which tar&gets change"), "", bar);
    m_compare->setCheckable(true);
    m_save = worded(tr("&Seal"), "main", bar);
    m_back = worded(tr("&Back to the list"), "", bar);
    row->addWidget(m_title);
    for (QPushButton* button : {m_textView, m_undoButton, m_compare, m_save, m_back}) {
        button->setMinimumHeight(sizes().control);
        row->addWidget(button);
    }
    connect(m_textView, &QPushButton::toggled, this, [this] { read(); });
    connect(m_compare, &QPushButton::toggled, this, [this](bool on) {
        m_right->setCurrentIndex(on ? 1 : 0);
        read();
    });
    connect(m_undoButton, &QPushButton::clicked, this, [this] {
        if (m_undo.empty()) return;
        m_text = std::move(m_undo.back());
        m_undo.pop_back();
        read();
    });
    connect(m_save, &QPushButton::clicked, this, &DefinitionEditor::save);
    connect(m_back, &QPushButton::clicked, this, &DefinitionEditor::leave);
    return bar;
}

QWidget* DefinitionEditor::buildForm()
{
    auto* box = new QWidget(m_left);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    m_groups = new RowList(box);
    m_groups->setAccessibleName(tr("Tables of the file"));
    row->addWidget(m_groups, 1);
    auto* column = new QVBoxLayout;
    m_table = new KeyTable(box);
    m_table->setAccessibleName(tr("Keys and what they say"));
    column->addWidget(m_table, 1);
    m_meaning = wrapped({}, "soft", box);
    m_meaning->setAccessibleName(tr("What the key means"));
    column->addWidget(m_meaning);
    auto* buttons = new FlowRow;
    m_add = worded(tr("Add a row"), "", box);
    m_remove = worded(tr("Take the row out"), "", box);
    m_up = worded(tr("Earlier"), "", box);
    m_down = worded(tr("Later"), "", box);
    for (QPushButton* button : {m_add, m_remove, m_up, m_down}) {
        button->setMinimumHeight(sizes().control);
        buttons->addWidget(button);
    }
    column->addLayout(buttons);
    row->addLayout(column, 4);
    connect(m_groups, &QListWidget::currentItemChanged, this, [this] { showGroup(); });
    // Not at once: the table has just been left, or is about to open the next cell.
    connect(m_table, &KeyTable::typed, this, [this](const inputs::FormCell& cell, const QString& text) {
        QTimer::singleShot(0, this, [this, cell, text] { take(inputs::typedInto(m_text, cell, text.toStdString())); });
    });
    connect(m_table, &KeyTable::typing, this, [this](const inputs::FormCell& cell, const QString& text) {
        if (const auto edited = inputs::typedInto(m_text, cell, text.toStdString())) preview(*edited);
    });
    connect(m_table, &KeyTable::untouched, this, [this] { preview(m_text); });
    connect(m_table, &QTableWidget::currentCellChanged, this, [this] {
        settle();
        markRow();
    });
    connect(m_add, &QPushButton::clicked, this, [this] {
        if (const inputs::FormGroup* g = group())
            take(inputs::addedTo(m_text, *g, std::min(m_table->focused() + 1, g->items.size())));
    });
    connect(m_remove, &QPushButton::clicked, this, [this] {
        const inputs::FormGroup* g = group();
        if (g == nullptr) return;
        inputs::TomlPath path = g->path;
        if (g->list) path.emplace_back(m_table->focused());
        take(inputs::removeToml(m_text, path));
    });
    const auto move = [this](bool up) {
        const inputs::FormGroup* g = group();
        if (g == nullptr || m_table->focused() < (up ? 1U : 0U)) return;
        const std::size_t at = m_table->focused() - (up ? 1 : 0);
        take(inputs::swapToml(m_text, g->path, at));
        m_table->goTo(up ? at : at + 1, g->keys.front());
    };
    connect(m_up, &QPushButton::clicked, this, [move] { move(true); });
    connect(m_down, &QPushButton::clicked, this, [move] { move(false); });
    return box;
}

QWidget* DefinitionEditor::buildRight()
{
    auto* box = new QWidget(m_right);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_drawing = new ElevationWidget(box);
    m_pathWrong = wrapped({}, "strong", box);
    m_pathWrong->setAccessibleName(tr("What is wrong with the path"));
    m_outline = new RowList(box);
    m_outline->setAccessibleName(tr("Steps of the procedure"));
    m_found = new RowList(box);
    m_found->setAccessibleName(tr("What its reader finds"));
    column->addWidget(m_drawing);
    column->addWidget(m_pathWrong);
    column->addWidget(m_found, 1);
    column->addWidget(m_outline, 1);
    connect(m_found, &QListWidget::itemClicked, this, [this] { goTo(m_found->chosen().toInt()); });
    connect(m_found, &QListWidget::itemActivated, this, [this] { goTo(m_found->chosen().toInt()); });
    connect(m_outline, &QListWidget::itemClicked, this, [this] {
        const QTextBlock block = m_plain->document()->findBlockByNumber(m_outline->chosen().toInt() - 1);
        m_plain->setTextCursor(QTextCursor(block));
        m_plain->centerCursor();
    });
    return box;
}

void DefinitionEditor::open(Opened opened)
{
    m_opened = std::move(opened);
    m_text = m_opened.text;
    m_undo.clear();
    m_asked.clear();
    say({});
    m_leaving->hide();
    m_form = {};
    const bool procedure = m_opened.what == "procedure";
    {
        const QSignalBlocker a(m_textView), b(m_compare);
        m_textView->setChecked(procedure);
        m_compare->setChecked(false);
    }
    m_right->setCurrentIndex(0);
    // Which one it is, and that it is not sealed, is read before anything is written.
    constexpr int kTitleLetters = 24;
    m_title->setMinimumWidth(kTitleLetters * m_title->fontMetrics().averageCharWidth());
    m_textView->setVisible(!procedure);
    m_compare->setVisible(!procedure);
    m_outline->setVisible(procedure);
    m_drawing->setVisible(m_opened.what == "press");
    m_pathWrong->hide();
    m_blamed.clear();
    read();
    m_groups->choose(m_groups->first());
}

void DefinitionEditor::showKey(const std::string& group, const std::string& id, const std::string& key)
{
    m_groups->choose(QString::fromStdString(group));
    for (const inputs::FormGroup& one : m_form.groups)
        for (std::size_t i = 0; one.name == group && i < one.items.size(); ++i)
            if (!one.items[i].empty() && one.items[i].front().said == id) m_table->goTo(i, key);
}

QString DefinitionEditor::name() const
{
    const std::string id = idIn(m_opened.what, m_text);
    return id.empty() ? tr("no name yet") : dataText(id);
}

inputs::Around DefinitionEditor::around() const
{
    inputs::Around around;
    if (!m_opened.isNew) around.own = idIn(m_opened.what, m_opened.text);
    for (const logbook::Definition& one : m_session->definitions(m_opened.what.c_str()))
        around.taken.push_back(one.source.id);
    for (const logbook::Definition& one : m_session->definitions("substrate"))
        around.substrates.push_back(one.source.id);
    return around;
}

bool DefinitionEditor::changed() const { return m_opened.isNew || m_text != m_opened.text; }
bool DefinitionEditor::asText() const { return m_textView->isChecked(); }
bool DefinitionEditor::mayWrite() const
{
    return m_session->actor() && people::may(m_session->actor()->role(), people::Act::EditInputs);
}
QWidget* DefinitionEditor::first() const { return asText() ? static_cast<QWidget*>(m_plain) : m_groups; }
QString DefinitionEditor::said(const Finding& finding) const { return words(finding, UnitSystem::Metric); }

const inputs::FormGroup* DefinitionEditor::group() const
{
    const std::string name = m_groups->chosen().toStdString();
    for (const inputs::FormGroup& one : m_form.groups)
        if (one.name == name) return &one;
    return nullptr;
}

void DefinitionEditor::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void DefinitionEditor::take(const Result<std::string>& edited)
{
    if (!edited) {
        say(said(edited.error()));
        return;
    }
    say({});
    if (*edited == m_text) return preview(m_text);
    m_undo.push_back(m_text);
    if (m_undo.size() > kMostUndo) m_undo.erase(m_undo.begin());
    m_text = *edited;
    read();
}

void DefinitionEditor::save()
{
    say({});
    m_asked = m_text;
    m_session->keepText(m_text);
}

void DefinitionEditor::tellSealed()
{
    const std::string asked = std::exchange(m_asked, {}), id = idIn(m_opened.what, asked);
    for (const logbook::Definition& one : m_session->definitions(m_opened.what.c_str())) {
        if (one.source.id != id) continue;
        if (one.source.text != asked) {
            say(tr("This text stands as an earlier edition; the newest stays edition %1. Change something "
                   "in it, if only a comment, to make it the newest.")
                    .arg(one.source.edition));
            return;
        }
        m_opened.text = m_opened.against = asked;
        m_opened.isNew = false;
        say(tr("Sealed as edition %1.").arg(one.source.edition));
        if (m_compare->isChecked()) m_targets->show(m_opened.what, m_opened.against, m_text);
    }
}

void DefinitionEditor::leave()
{
    if (changed() && !m_leaving->isVisible())
        m_leaving->show();
    else if (!changed())
        emit left();
}

}  // namespace taut::app
