// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/help_view.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTextCursor>
#include <QVBoxLayout>

#include "app/drawing/help_pictures.h"
#include "app/text/language.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kLetters = 95;  // a line that the eye finds back from

}  // namespace

HelpBrowser::HelpBrowser(QWidget* parent) : QTextBrowser(parent)
{
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setOpenLinks(false);
    setLineWrapMode(QTextEdit::FixedPixelWidth);
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& url) {
        if (const QString file = url.fileName(); file.endsWith(QStringLiteral(".md"))) emit pageWanted(file.chopped(3));
    });
}

int HelpBrowser::lineWidth() const
{
    // Whether the page will scroll is not known yet: room is kept for its bar.
    const int room = width() - verticalScrollBar()->sizeHint().width();
    return std::max(200, std::min(room, fontMetrics().averageCharWidth() * kLetters));
}

QVariant HelpBrowser::loadResource(int, const QUrl& name)
{
    if (name.scheme() != QStringLiteral("picture")) return {};
    // Of a wide page a drawing takes no more than it needs.
    const double room = lineWidth() - 3 * document()->documentMargin();
    return helpPicture(name.path(), currentLook(), std::min(room, lineWidth() * 0.8 + 60), devicePixelRatioF());
}

HelpView::HelpView(const std::filesystem::path& resources, QWidget* parent)
    : QWidget(parent),
      m_texts(helpTexts(resources, language()))
{
    m_find = new QLineEdit(this);
    m_find->setMinimumHeight(sizes().control);
    m_find->setPlaceholderText(tr("Find in the help"));
    m_find->setClearButtonEnabled(true);
    named(m_find, tr("Find in the help"));
    m_list = new RowList(this);
    m_list->setAccessibleName(tr("Pages of the help"));
    m_browser = new HelpBrowser(this);
    m_browser->setAccessibleName(tr("The chosen page of the help"));
    m_tour = worded(tr("Two minutes to look round"), "quiet", this);
    m_tour->setObjectName(QStringLiteral("tour"));
    m_back = worded(tr("Back (Esc)"), "answer", this);
    m_back->setObjectName(QStringLiteral("leaveHelp"));

    auto* left = new QVBoxLayout;
    left->addWidget(m_find);
    left->addWidget(m_list, 1);
    left->addWidget(m_tour);
    left->addWidget(m_back);
    auto* halves = new QHBoxLayout(this);
    halves->addLayout(left, 2);
    halves->addSpacing(sizes().gap);
    halves->addWidget(m_browser, 5);

    connect(m_find, &QLineEdit::textChanged, this, &HelpView::fill);
    connect(m_list, &QListWidget::currentItemChanged, this, [this] {
        if (!m_list->chosen().isEmpty()) m_page = m_list->chosen();
        render();
    });
    connect(m_browser, &HelpBrowser::pageWanted, this, &HelpView::open);
    connect(m_back, &QPushButton::clicked, this, &HelpView::left);
    connect(m_tour, &QPushButton::clicked, this, &HelpView::tourWanted);
    fill();
}

void HelpView::open(const QString& id)
{
    m_find->clear();
    if (!m_list->choose(id)) m_list->choose(m_list->first());
    m_browser->setFocus();
}

void HelpView::find()
{
    m_find->setFocus();
    m_find->selectAll();
}

/// The pages that have what is looked for.
void HelpView::fill()
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const HelpHit& hit : findInHelp(m_texts, m_find->text()))
        for (const HelpText& text : m_texts)
            if (text.id == hit.id) m_list->add({text.id, text.title, {}, hit.line, MarkShape::None});
    const bool isFound = m_list->count() > 0;
    if (!isFound) m_list->add({{}, tr("No page has that in it"), {}, {}, MarkShape::None});
    if (!m_list->choose(m_page)) m_list->choose(m_list->first());
    if (!m_list->chosen().isEmpty()) m_page = m_list->chosen();
    render();
}

void HelpView::render()
{
    for (const HelpText& text : m_texts) {
        if (text.id != m_page) continue;
        m_browser->document()->clear();
        m_browser->document()->setDefaultFont(m_browser->font());
        m_browser->setLineWrapColumnOrWidth(m_browser->lineWidth());
        m_browser->setMarkdown(text.markdown);
        m_browser->verticalScrollBar()->setValue(0);
    }
    markWords();
}

/// What was looked for is marked where it stands, and the first of it is in sight.
void HelpView::markWords()
{
    QList<QTextEdit::ExtraSelection> marks;
    for (const QString& word : m_find->text().simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        QTextCursor at(m_browser->document());
        while (!(at = m_browser->document()->find(word, at)).isNull()) {
            QTextEdit::ExtraSelection mark;
            mark.cursor = at;
            mark.format.setBackground(currentLook().palette.accent);
            mark.format.setForeground(currentLook().palette.onAccent);
            marks << mark;
        }
    }
    m_browser->setExtraSelections(marks);
    if (marks.isEmpty()) return;
    QTextCursor first = marks.front().cursor;
    first.clearSelection();
    m_browser->setTextCursor(first);
    m_browser->ensureCursorVisible();
}

void HelpView::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    event->accept();
    emit left();
}

void HelpView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) render();
}

void HelpView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    // The drawings are as wide as there is room now; whoever reads stays where they were.
    const int at = m_browser->verticalScrollBar()->value();
    render();
    m_browser->verticalScrollBar()->setValue(at);
}

}  // namespace taut::app
