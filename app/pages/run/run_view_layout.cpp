// SPDX-License-Identifier: GPL-3.0-or-later
// How the run page is laid out; what it does stands in run_view.cpp.
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/run/phase_cards.h"
#include "app/pages/run/review_card.h"
#include "app/pages/run/run_view.h"
#include "app/pages/run/step_list.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"

namespace taut::app {

namespace {

/// A panel with the card's margins, so that it lines up with what it replaces.
QWidget* framed(QWidget* panel, QWidget* parent)
{
    auto* frame = new QWidget(parent);
    auto* layout = new QVBoxLayout(frame);
    layout->setContentsMargins(20, 10, 20, 10);
    panel->setParent(frame);
    layout->addWidget(panel);
    return frame;
}

QWidget* upright(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setObjectName(QStringLiteral("uprightLine"));
    return line;
}

}  // namespace

void RunView::build()
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The run"));
    m_line = new TautLineWidget(this);
    m_heading = wrapped({}, "soft", this);
    m_heading->setContentsMargins(20, 0, 20, 4);

    m_left = new QWidget(this);
    m_left->setObjectName(QStringLiteral("steps"));
    auto* leftLayout = new QHBoxLayout(m_left);
    leftLayout->setContentsMargins(0, 0, 0, 0);
    leftLayout->setSpacing(0);
    m_list = new StepList(m_left);
    leftLayout->addWidget(m_list);
    leftLayout->addWidget(upright(m_left));
    m_left->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);

    m_right = new QWidget(this);
    m_right->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
    auto* rightOuter = new QHBoxLayout(m_right);
    rightOuter->setContentsMargins(0, 0, 0, 0);
    rightOuter->setSpacing(0);
    rightOuter->addWidget(upright(m_right));
    auto* rightLayout = new QVBoxLayout;
    rightOuter->addLayout(rightLayout);
    rightLayout->setContentsMargins(12, 8, 12, 0);
    m_elevation = new ElevationWidget(m_right);
    rightLayout->addWidget(m_elevation);
    m_stops = wrapped({}, "strong", m_right);
    m_stops->setObjectName(QStringLiteral("stopsHeld"));
    rightLayout->addWidget(m_stops);
    m_whyBox = new QWidget(m_right);
    auto* whyLayout = new QVBoxLayout(m_whyBox);
    whyLayout->setContentsMargins(0, 0, 0, 0);
    m_why = new WhyPanel(m_whyBox);
    whyLayout->addWidget(ruledLine(m_whyBox));
    whyLayout->addWidget(withRole(new QLabel(tr("Why (F2)"), m_whyBox), "small"));
    whyLayout->addWidget(m_why, 1);
    rightLayout->addWidget(m_whyBox, 1);

    auto* columns = new QHBoxLayout;
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(0);
    columns->addWidget(m_left, 23);
    columns->addWidget(buildMiddle(), 50);
    columns->addWidget(m_right, 27);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 6, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_line);
    layout->addWidget(m_heading);
    m_headRule = ruledLine(this);
    layout->addWidget(m_headRule);
    layout->addLayout(columns, 1);
    layout->addWidget(ruledLine(this));
    layout->addWidget(buildActs());

    connect(m_line, &TautLineWidget::stageChosen, this, &RunView::showStage);
    connect(m_list, &StepList::stepChosen, this,
            [this](const QString& id) { showStep(procedure::StepId{id.toStdString()}); });
}

QWidget* RunView::buildMiddle()
{
    m_middle = new QStackedWidget(this);
    // A card scrolls inside itself: the tallest of them must not push the page off a small screen.
    m_middle->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_card = new StepCard(m_middle);
    m_safe = new MakeSafeCard(m_middle);
    m_others = new OtherHandsCard(m_middle);
    m_withdrawn = new WithdrawnCard(m_middle);
    m_review = new ReviewCard(m_middle);
    m_ask = new AskPanel;
    m_rollForm = new RollForm;
    m_attachments = new AttachmentPanel;
    m_middle->addWidget(m_card);
    m_middle->addWidget(m_safe);
    m_middle->addWidget(m_others);
    m_middle->addWidget(m_withdrawn);
    m_middle->addWidget(m_review);
    m_middle->addWidget(framed(m_ask, m_middle));
    m_middle->addWidget(framed(m_rollForm, m_middle));
    m_middle->addWidget(framed(m_attachments, m_middle));

    connect(m_card, &StepCard::command, this, &RunView::command);
    connect(m_card, &StepCard::commandSigned, this, &RunView::commandSigned);
    connect(m_card, &StepCard::crowded, this, &RunView::placeColumns);
    connect(m_card, &StepCard::firstWanted, this, &RunView::showNext);
    connect(m_card, &StepCard::constantWanted, this, [this](const QString& zone) {
        emit constantWanted(QString::fromStdString(m_run->sources().press.id), zone);
    });
    connect(m_safe, &MakeSafeCard::command, this, &RunView::command);
    connect(m_others, &OtherHandsCard::takeOver, this, &RunView::takeOver);
    connect(m_withdrawn, &WithdrawnCard::giveBack, this,
            [this](const QString& done) { emit giveBack(QString::fromStdString(m_run->sources().press.id), done); });
    connect(m_review, &ReviewCard::command, this, &RunView::command);
    connect(m_review, &ReviewCard::sign, this, &RunView::finish);
    connect(m_review, &ReviewCard::signBeside, this, &RunView::finishBeside);
    connect(m_review, &ReviewCard::stepChosen, this,
            [this](const QString& id) { showStep(procedure::StepId{id.toStdString()}); });
    connect(m_ask, &AskPanel::given, this, &RunView::answered);
    connect(m_ask, &AskPanel::cancelled, this, &RunView::closePanel);
    connect(m_attachments, &AttachmentPanel::closed, this, &RunView::closePanel);
    connect(m_attachments, &AttachmentPanel::chosen, this,
            [this](const QString& file) { emit attach(QString::fromStdString(m_step.value), file); });
    connect(m_rollForm, &RollForm::cancelled, this, &RunView::closePanel);
    connect(m_rollForm, &RollForm::chosen, this, [this](const std::string& toml) {
        if (m_run) m_rollForm->sayEffect(effectOfRoll(*m_run, toml));
    });
    connect(m_rollForm, &RollForm::given, this, [this](const std::string& toml) {
        m_given = true;
        emit command(run::ChangeRoll{toml, std::nullopt});
    });
    return m_middle;
}

QWidget* RunView::buildActs()
{
    auto* row = new QWidget(this);
    row->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(12, 2, 12, 4);
    layout->setSpacing(4);
    // Withdrawing stands first: it must never be hidden under "More".
    for (const RunAct act : {RunAct::Withdraw, RunAct::Note, RunAct::HoldStop, RunAct::NotApplicable, RunAct::Correct,
                             RunAct::Diameter, RunAct::ChangeRoll}) {
        QPushButton* button = worded(actName(act), "quiet", row);
        button->setObjectName(QStringLiteral("act%1").arg(static_cast<int>(act)));
        connect(button, &QPushButton::clicked, this, [this, act] { begin(act); });
        layout->addWidget(button);
        m_actButtons.emplace_back(act, button);
    }
    layout->addStretch(1);
    for (const auto& [beside, name] : {std::pair(Beside::Steps, tr("S&teps")), std::pair(Beside::Why, tr("Why (F2)")),
                                       std::pair(Beside::Press, tr("&View of the press"))}) {
        QPushButton* button = worded(name, "quiet", row);
        button->setObjectName(QStringLiteral("beside%1").arg(static_cast<int>(beside)));
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, b = beside](bool on) { look(on ? b : Beside::Card); });
        layout->addWidget(button);
        m_besideButtons.emplace_back(beside, button);
    }
    m_more = worded(tr("Mo&re\u2026"), "quiet", row);
    m_more->setObjectName(QStringLiteral("more"));
    auto* menu = new QMenu(m_more);
    for (const RunAct act :
         {RunAct::Withdraw, RunAct::Note, RunAct::HoldStop, RunAct::NotApplicable, RunAct::Correct, RunAct::Diameter,
          RunAct::ChangeRoll, RunAct::Review, RunAct::Sheet, RunAct::Attach, RunAct::Helped, RunAct::Repeat,
          RunAct::HandOver, RunAct::Interrupt, RunAct::Abandon, RunAct::Leave}) {
        QAction* action = menu->addAction(actName(act));
        connect(action, &QAction::triggered, this, [this, act] { begin(act); });
        m_moreActions[act] = action;
    }
    m_more->setMenu(menu);
    layout->addWidget(m_more);
    return row;
}

/// With large type, or in a low window, three columns leave no room for what is to be done: then the card has the page
/// to itself, and steps, reasons and press are looked at in its place.
void RunView::fit()
{
    constexpr int kLeastLines = 28, kLeastLetters = 104, kFewLines = 36, kFewLetters = 124;
    const QFontMetrics type(font());
    const auto smaller = [&](int lines, int letters, bool both) {
        const bool low = height() < lines * type.lineSpacing(), narrow = width() < letters * type.averageCharWidth();
        return both ? low && narrow : low || narrow;
    };
    m_close = smaller(kLeastLines, kLeastLetters, false) || smaller(kFewLines, kFewLetters, true);
    m_line->setWords(m_close ? TautWords::ShownOnly : TautWords::All);
    if (!m_close) m_beside = Beside::Card;
    placeColumns();
    fitActs();
}

void RunView::placeColumns()
{
    const bool review = m_middle->currentWidget() == m_review;
    const auto seen = [&](bool here) { return !review && (!m_close || here); };
    m_left->setVisible(seen(m_beside == Beside::Steps));
    m_right->setVisible(seen(m_beside == Beside::Why || m_beside == Beside::Press));
    m_whyBox->setVisible(seen(m_beside == Beside::Why));
    m_elevation->setVisible(seen(m_beside == Beside::Press));
    // Which run and which stage this is stands with its steps, where the card has the page to itself.
    const bool alone = m_close && m_beside == Beside::Card;
    // In a low window they also give way to a card on which something is open or said.
    constexpr int kRoomyLines = 40;
    const bool low = height() < kRoomyLines * QFontMetrics(font()).lineSpacing();
    const bool gives = alone || (low && m_card->isCrowded() && m_middle->currentWidget() == m_card);
    m_heading->setVisible(!gives || review);
    m_line->setVisible(!gives);
    m_headRule->setVisible(!gives);
    m_card->setNamesStage(alone);
    m_middle->setVisible(review || !m_close || m_beside == Beside::Card);
    for (const auto& [beside, button] : m_besideButtons) {
        button->setVisible(m_close && !review);
        button->setChecked(m_beside == beside);
    }
}

/// Shows steps, reasons or press where the card was, or the card again.
void RunView::look(Beside beside)
{
    m_beside = beside;
    placeColumns();
    if (beside == Beside::Steps)
        m_list->setFocus();
    else if (beside == Beside::Why)
        m_why->setFocus();
    else if (beside == Beside::Card)
        m_card->focusAnswer();
}

/// What does not fit beside the others, with large type on a small screen, stands under "More".
void RunView::fitActs()
{
    if (!m_more) return;
    int room = width() - 24 - m_more->sizeHint().width() - 8;
    if (m_close)
        for (const auto& [beside, button] : m_besideButtons) room -= button->sizeHint().width() + 4;
    for (const auto& [act, button] : m_actButtons) {
        room -= button->sizeHint().width() + 4;
        button->setVisible(room >= 0);
        m_moreActions[act]->setVisible(room < 0);
    }
}

}  // namespace taut::app
