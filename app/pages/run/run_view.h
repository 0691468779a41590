// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include <QPointer>
#include <QStringList>
#include <QWidget>

#include "app/pages/run/run_acts.h"
#include "app/pages/run/run_shown.h"
#include "app/widgets/answer.h"
#include "app/widgets/attachment_panel.h"
#include "app/widgets/roll_form.h"
#include "core/run/run.h"

class QPushButton;
class QStackedWidget;

namespace taut::app {

class ElevationWidget;
class MakeSafeCard;
class OtherHandsCard;
class ReviewCard;
class StepCard;
class StepList;
class TautLineWidget;
class WhyPanel;
class WithdrawnCard;

/// The run page without anything that changes a run: it shows a run and says what somebody asked for. RunPage binds it
/// to the session; tests show it runs of their own.
class RunView : public QWidget {
    Q_OBJECT

public:
    explicit RunView(QWidget* parent = nullptr);
    ~RunView() override;

    /// The run as it stands on disk; moves to the next step when what happened calls for it.
    void show(const run::Run& run);
    /// Who is at the screen; an empty id = nobody, and nothing can be answered.
    void setActor(const PersonChoice& actor);
    /// Who may be named, or asked for a PIN.
    void setPeople(std::vector<PersonChoice> people);
    /// What "Change roll" offers.
    void setRollsAtHand(std::vector<RollAtHand> rolls);
    /// Where the bytes of what is attached are had.
    void setAttachments(AttachmentPanel::Load load);
    /// Takes something from every step before it is shown, where somebody is to tell it by heart; what is listed beside
    /// it is then not shown either. {} = nothing.
    using Veil = std::function<void(StepContent&)>;
    void setVeil(Veil veil, bool listed);
    /// While something is being written nothing can be touched.
    void setBusy(bool busy);
    /// Says it where it was asked; what was entered stays.
    void refuse(const Finding& finding);
    /// Whose card is open.
    [[nodiscard]] const procedure::StepId& shownStep() const { return m_step; }
    /// Opens this step's card; one that is not in the plan changes nothing.
    void showStep(const procedure::StepId& step);
    /// Opens the first open step of a stage, else its first.
    void showStage(int stage);
    /// What was typed and not given, and what is looked at: for a page that is made anew.
    struct Kept;
    [[nodiscard]] Kept kept() const;
    void take(const Kept& kept);
    /// Asks what the act needs, or does it at once; nothing when it is not offered.
    void begin(RunAct act);

signals:
    /// To be performed by whoever is signed in.
    void command(const taut::run::Command& command);
    void sheetWanted(const QString& runId);  ///< to be looked at and printed as it stands
    /// By them, with a second person who gives a PIN.
    void commandWith(const QString& personId, const QString& pin, const taut::app::WithSecond& make);
    /// By them, with a second person who signs.
    void commandSigned(const QString& personId, const QString& passphrase, const taut::app::WithSigner& make);
    /// Ends the run, sealed with the passphrase of whoever is signed in.
    void finish(const taut::run::Command& command, const QString& passphrase);
    /// Signed off with a supervisor beside whoever signs.
    void finishBeside(const QString& remarks, const QString& personId, const QString& pin, const QString& passphrase);
    /// Takes the press out of use, for this reason.
    void withdraw(const QString& press, const QString& reason);
    /// Back to use, with what was put right.
    void giveBack(const QString& press, const QString& done);
    /// A file goes to this step of the run, by whoever is signed in.
    void attach(const QString& stepId, const QString& file);
    void constantWanted(const QString& press, const QString& zone);  ///< what the setting of this zone does
    void takeOver();                                                 ///< by whoever is signed in
    /// The page is left, the run kept open.
    void leave();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// What is looked at where there is room for one column only.
    enum class Beside { Card, Steps, Why, Press };
    void build();
    QWidget* buildMiddle();
    QWidget* buildActs();
    void refresh();
    void settleActs();
    void fit();
    void fitActs();
    void placeColumns();
    void look(Beside beside);
    void showCard();
    void showNext();
    void focusCard();
    void giveFocusBack();
    void forgetTyped();
    void closePanel();
    void answered(const QStringList& typed, const QString& person, const QString& pin);
    [[nodiscard]] const procedure::Step* step() const;
    [[nodiscard]] bool movesOn(const run::Run& before, const run::Run& after) const;

    std::optional<run::Run> m_run;
    RunFiles m_files;
    procedure::StepId m_step;
    PersonChoice m_actor;
    QString m_lastPerson;  // who was signed in last, also while nobody is
    std::vector<PersonChoice> m_people;
    std::vector<RollAtHand> m_rolls;
    std::optional<RunAct> m_act;  // the panel that is open
    bool m_given = false;         // and what it gave is on its way
    void ask(RunAct act, const AskPanel::Question& question, const std::string& about);
    void askHolder(const std::string& holder);
    void askHelped();
    void showAttachments();
    void leaveAct(bool given);
    // Whose, in which run, which act, beside which step or of whose stop.
    using DraftKey = std::tuple<QString, std::string, RunAct, std::string>;
    DraftKey m_draft;                          // of the panel that is open
    std::map<DraftKey, QStringList> m_drafts;  // what was typed and not given
    QPointer<QWidget> m_heldFocus;             // what had the focus when writing began
    bool m_busy = false, m_reviewing = false;
    Veil m_veil;
    bool m_close = false;  // room for one column only
    Beside m_beside = Beside::Card;

    TautLineWidget* m_line;
    QLabel* m_heading;
    StepList* m_list;
    QStackedWidget* m_middle;
    StepCard* m_card;
    MakeSafeCard* m_safe;
    OtherHandsCard* m_others;
    WithdrawnCard* m_withdrawn;
    ReviewCard* m_review;
    AskPanel* m_ask;
    RollForm* m_rollForm;
    AttachmentPanel* m_attachments;
    AttachmentPanel::Load m_loadAttached;
    ElevationWidget* m_elevation;
    WhyPanel* m_why;
    QLabel* m_stops;  // who holds the press stopped, all the time that somebody does
    QWidget *m_left, *m_right, *m_whyBox, *m_headRule;
    std::vector<std::pair<RunAct, QPushButton*>> m_actButtons;
    QPushButton* m_more = nullptr;
    std::map<RunAct, QAction*> m_moreActions;
    std::vector<std::pair<Beside, QPushButton*>> m_besideButtons;
};

struct RunView::Kept {
    std::map<DraftKey, QStringList> drafts;
    QString lastPerson;
    procedure::StepId step;
    bool reviewing = false;
};

}  // namespace taut::app
