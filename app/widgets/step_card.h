// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QWidget>

#include "app/widgets/answer.h"

class QKeyEvent;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace taut::app {

class AskPanel;
class FindingStrip;
class SignalPanel;

/// One step, large: what to do, where, the caution, and how it is answered. It sends the command and waits; the next
/// step is shown only when the run has changed.
class StepCard : public QWidget {
    Q_OBJECT

public:
    explicit StepCard(QWidget* parent = nullptr);
    /// Shows a step; the same one shown anew keeps what was typed.
    void show(const StepContent& content);
    /// As it was shown last.
    [[nodiscard]] const StepContent& content() const { return m_content; }
    /// The card names the stage where the taut line, which does, is not seen.
    void setNamesStage(bool names);
    /// While something is open or said on it that takes much height: what heads the page may give way to the card.
    [[nodiscard]] bool isCrowded() const { return m_crowded; }
    /// While an answer is on its way to the disk nothing here can be touched.
    void setBusy(bool busy);
    /// Somebody left the screen, or came to it: what was typed stays, a PIN does not.
    void forgetPin();
    /// Somebody else came to the screen: nothing that one person began goes out under the name of another.
    void forgetTyped();
    /// Says why an answer was refused; what was entered stays.
    void refuse(const Finding& finding);
    /// Keys that the page did not use: Enter answers, digits go to the field. True when taken.
    bool takeKey(QKeyEvent* event);
    /// To what the step is answered with.
    void focusAnswer();
    /// What answers it; nullptr while it is closed.
    [[nodiscard]] AnswerArea* area() const { return m_area; }

signals:
    /// The step is answered, or a stop given up.
    void command(const taut::run::Command& command);
    /// A deviation, to be signed by this supervisor.
    void commandSigned(const QString& personId, const QString& passphrase, const taut::app::WithSigner& make);
    void constantWanted(const QString& zone);  ///< what its setting does is to be found
    void firstWanted();                        ///< show the step that comes first
    void crowded();                            ///< isCrowded() is otherwise than before

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void showWhere();
    void showStanding();
    void showAnswer();
    void showOutside();
    void settleCrowd();
    void placeAsked(bool above);
    [[nodiscard]] int roomAsked() const;
    void openPad(bool open);
    void addLine(const QString& text, const char* role);
    void askSupervisor(bool ask);
    void showAnswers();
    void placeFoot();
    void pinFoot(bool pinned);
    void followFoot();
    [[nodiscard]] int footWanted() const;
    [[nodiscard]] bool footFits() const;
    void fitSay();
    [[nodiscard]] bool seenWhole() const;
    void refit();
    void share(bool places);
    void showWrong();
    void forgive();
    StepContent m_content;
    QLabel *m_where, *m_number, *m_say, *m_writing;
    SignalPanel* m_caution;
    QWidget* m_linesBox;
    QPointer<QWidget> m_wrong;  ///< the first line that says what was wrong with the answer
    QWidget* m_asked;  ///< the caution and what is to be done: in the scrolled part, or standing still above it
    QVBoxLayout *m_lines, *m_bodyLayout, *m_footLayout;
    QScrollArea* m_scroll;
    FindingStrip* m_finding;
    AnswerArea* m_area = nullptr;
    QWidget *m_foot, *m_answers;
    int m_footHeight = 0;      // that the height was shared for
    bool m_refitting = false;  // it shares its height: what changes by that is not news either
    bool m_fitting = false;    // the card sets its words: what changes by that is not news
    bool m_sayKept = false;    // the size of the words was decided, and stays while somebody types
    bool m_fitsLater = false;  // it will, when the layout has come to rest
    // Sizes that what is asked had since its height was last shared out: it gives way to none twice.
    QList<QSize> m_sharedFor;
    bool m_pinned = true, m_namesStage = false, m_askedAbove = false, m_crowded = false;
    bool m_padOpen = false;  // over one reading after the other, until somebody closes it
    AskPanel* m_supervisor;
    std::optional<std::uint64_t> m_supervisorAsked;  // the answer that it was last asked about
    QPushButton* m_first;
};

}  // namespace taut::app
